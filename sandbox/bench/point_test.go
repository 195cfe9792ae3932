package bench_test

import (
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// inkLength returns how long, in bench pixels, what is drawn in a colour and a
// width of stroke is.
func inkLength(l *display.List, is func(m display.Mark) bool) (length float64) {
	for _, m := range l.Marks {
		if m.Kind != display.Line || !is(m) {
			continue
		}
		pts := l.Of(m)
		for i := 1; i < len(pts); i++ {
			length += pts[i].Sub(pts[i-1]).Len()
		}
	}
	return length
}

// Pointing holds the playing; the piece alone is in full ink, as long as its own
// curve, all else is dim, and its whole is there in dashes.
func TestPointing(t *testing.T) {
	for _, th := range []*theme.Theme{&theme.Day, &theme.Night} {
		f := bigFrames()[0]
		r := newRig(t, f, "half-moon")
		r.b.SetTheme(th)
		r.s.Playing = true
		r.s.GoTo(2.5)
		r.tap("point")
		if r.s.Playing || r.s.Selected() != (session.Select{Piece: 1}) || r.s.Beat() != 2 {
			t.Fatalf("it plays: %v; piece %v is in hand at beat %v, want the second, held at its start", r.s.Playing, r.s.Selected(), r.s.Beat())
		}
		l := r.b.Draw()
		full := inkLength(l, func(m display.Mark) bool { return m.Color == th.Right && m.Width > 5 })
		v := r.b.StageView()
		k := r.s.Tracks()[0]
		want, was := 0.0, v.ToScreen(k.PointAt(0, 1, 0).Head)
		for i := 1; i <= 2000; i++ {
			at := v.ToScreen(k.PointAt(0, 1, float64(i)/2000).Head)
			want, was = want+at.Sub(was).Len(), at
		}
		if full < 0.98*want || full > 1.02*want {
			t.Errorf("%v px are in full ink, want the piece's %v", full, want)
		}
		// Both pieces are there, under a veil.
		dim, veiled := 0.0, false
		for i, m := range l.Marks {
			if m.Kind == display.FillRect && m.Color == display.Clear(th.Stage, 0.7) {
				veiled = true
				dim = inkLength(&display.List{Marks: l.Marks[:i], Points: l.Points}, func(m display.Mark) bool { return m.Color == th.Right })
			}
		}
		if !veiled || dim < 1.5*want {
			t.Errorf("%v px are under a veil, want both pieces' at least", dim)
		}
		ghost := display.Mix(th.Stage, th.Right, 0.6)
		if whole := inkLength(l, func(m display.Mark) bool { return m.Color == ghost }); whole < want {
			t.Errorf("%v px are in dashes, want two thirds of twice the piece's %v", whole, want)
		}

		r.tap("step-on")
		if r.s.Selected() != (session.Select{}) {
			t.Errorf("after the last piece comes %v, want the first", r.s.Selected())
		}
		r.tap("play") // the piece alone, over and over
		for range 10 {
			r.b.Step(0.4, 0)
			r.b.Draw()
			if beat := r.s.Beat(); beat < 0 || beat > 2 {
				t.Fatalf("it plays at beat %v, want within the piece", beat)
			}
		}
		if n := r.b.Settings(); n.Loop != 0 {
			t.Errorf("the person's setting of what plays over and over has become %d", n.Loop)
		}
		r.tap("point")
		if !r.s.Playing || r.s.Loop != session.LoopWhole {
			t.Error("after pointing it does not go on as before")
		}
		if r.host.Changes != 0 || r.s.CanUndo() {
			t.Error("pointing has changed the pattern")
		}
	}
}

// A tap on a curve points at its piece, with either hand; one beside it leaves
// pointing.
func TestPointingByTap(t *testing.T) {
	f := bigFrames()[2]
	r := newRig(t, f, twoHands)
	r.tap("point")
	tap := func(at display.Pt) {
		at = at.Scale(r.b.Zoom())
		r.now += 1000
		r.b.Pointers([]widget.Pointer{{ID: 1, Phase: widget.Down, At: at, Time: r.now}, {ID: 1, Phase: widget.Up, At: at, Time: r.now + 40}}, r.now)
		r.b.Draw()
	}
	for lane, k := range r.s.Tracks() {
		for i := range k.Legs {
			at := session.Select{Lane: lane, Piece: i}
			// A place of its curve that no other curve is near to.
			for u := 0.02; u < 1; u += 0.02 {
				p := r.b.StageView().ToScreen(k.PointAt(0, i, u).Head)
				hit, ok := scene.NearestInRound(r.s, r.b.StageView(), p, 1)
				if !ok || hit.Select != at {
					continue
				}
				tap(p)
				if r.s.Selected() != at {
					t.Errorf("a tap on %v points at %v", at, r.s.Selected())
				}
				break
			}
		}
	}
	tap(display.Pt{X: 6, Y: 6})
	if r.control("point").On {
		t.Error("a tap beside the curves does not leave pointing")
	}
}
