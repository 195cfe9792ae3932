package bench_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// TestKeptIsWhatIsDrawnAnew: whatever happens, before, while or after the
// pattern plays, a frame that keeps what stays is the frame drawn anew.
func TestKeptIsWhatIsDrawnAnew(t *testing.T) {
	const seed, frames = 20261126, 700
	t.Logf("seed %d", seed)
	g := rand.New(rand.NewPCG(seed, 11))
	kept := 0
	for _, e := range presets.Library() {
		r := newRig(t, phone, e.ID)
		r.s.Playing = true
		for k := range frames / len(presets.Library()) * 3 {
			said := ""
			if g.IntN(3) == 0 {
				said = r.anything(g)
			}
			r.now += 16
			for range g.IntN(40) {
				r.b.Learn()
			}
			r.b.Step(0.016+g.Float64()*0.4*float64(g.IntN(2)), r.now)
			if g.IntN(12) > 0 && !r.s.Playing {
				r.s.Playing = g.IntN(3) == 0
			}
			if r.b.Keeps() {
				kept++
			}
			got, gotControls := copyOf(r.b.Draw()), slices.Clone(r.b.Controls())
			r.b.Forget()
			want, wantControls := r.b.Draw(), r.b.Controls()
			if d := differs(got, want); d != "" {
				t.Fatalf("%s: frame %d after %q: kept and drawn anew differ: %s", e.ID, k, said, d)
			}
			if !reflect.DeepEqual(gotControls, wantControls) {
				t.Fatalf("%s: frame %d after %q: the controls are not those arranged anew", e.ID, k, said)
			}
			if got.Version > want.Version {
				t.Fatalf("%s: frame %d: version went from %d to %d", e.ID, k, got.Version, want.Version)
			}
			if got.Version == want.Version && got.Still != want.Still {
				t.Fatalf("%s: frame %d: of one version %d and %d marks stay", e.ID, k, got.Still, want.Still)
			}
			r.b.Step(0.016, r.now)
			before := r.b.Draw().Version
			r.b.Draw()
			if after := r.b.Draw().Version; after != before {
				t.Fatalf("%s: frame %d: with nothing changed the version went from %d to %d", e.ID, k, before, after)
			}
		}
	}
	if kept < 100 {
		t.Errorf("%d frames kept anything, want at least 100 for the test to mean something", kept)
	}
}

// TestPlayingPaintsLittle: while a pattern plays within a round, what stays
// is not painted again.
func TestPlayingPaintsLittle(t *testing.T) {
	for _, f := range []bench.Frame{phone, {W: 844, H: 390, Top: 48}, {W: 1440, H: 900, Top: 48}} {
		r := newRig(t, f, twoHands)
		r.s.Playing = true
		for r.b.Draw(); !r.b.Keeps(); r.b.Draw() { // until all is known that is said of the pattern
			r.b.Step(0.016, 16)
		}
		first := r.b.Draw().Version
		for i := range 60 {
			r.b.Step(0.016, float64(32+16*i))
			l := r.b.Draw()
			if l.Version != first {
				t.Fatalf("%vx%v: frame %d paints what stays anew", f.W, f.H, i)
			}
			if l.Still < len(l.Marks)/2 {
				t.Fatalf("%vx%v: %d of %d marks stay, want most", f.W, f.H, l.Still, len(l.Marks))
			}
		}
	}
}

// anything does one thing that a person, the page or the system may do; it
// returns what.
func (r *rig) anything(g *rand.Rand) string {
	frames := []bench.Frame{phone, {W: 844, H: 390, Top: 48}, {W: 1440, H: 900, Top: 48}, larger(phone, 1.5), {W: 1920, H: 1080, Top: 48}}
	any := func() widget.Control {
		cs := r.b.Controls()
		return cs[g.IntN(len(cs))]
	}
	place := func() display.Pt { return display.Pt{X: g.Float64() * 1440, Y: g.Float64() * 900} }
	switch g.IntN(18) {
	case 0:
		r.b.SetTheme([]*theme.Theme{&theme.Day, &theme.Night}[g.IntN(2)])
		return "theme"
	case 1:
		r.b.SetFrame(frames[g.IntN(len(frames))])
		return "frame"
	case 2:
		c := any()
		r.b.SetFocus(c.ID)
		return "focus " + c.ID
	case 3:
		n := r.b.Settings()
		flip := []*bool{&n.HandPath, &n.Grid, &n.Arms, &n.Letters, &n.Whole, &n.Kinds, &n.ByPiece, &n.Alone, &n.Slack, &n.Taken}
		p := flip[g.IntN(len(flip))]
		*p, n.Trail, n.Loop = !*p, g.IntN(4), g.IntN(3)
		r.b.SetSettings(n)
		return "settings"
	case 4:
		r.b.Wheel(place(), g.NormFloat64()*300)
		return "wheel"
	case 5:
		r.b.ZoomKey([]float64{0.5, 2}[g.IntN(2)])
		return "zoom key"
	case 6:
		if g.IntN(2) == 0 {
			r.s.Select(session.Select{Lane: g.IntN(2), Piece: g.IntN(8)})
		} else {
			r.s.Extend(g.IntN(8))
		}
		return "select"
	case 7:
		r.s.Speed = []float64{1, 0.5, 2}[g.IntN(3)]
		return "speed"
	case 8:
		r.s.Seek(g.Float64() * r.s.Round())
		return "seek"
	case 9:
		if g.IntN(2) == 0 {
			r.s.HideHand(g.IntN(len(r.s.Tracks())))
		} else {
			r.s.ShowHands()
		}
		return "hide a hand"
	case 10:
		r.b.Chosen("arm-swap", []string{"arm", "tilt", "cycles", "tempo"}[g.IntN(4)], r.now)
		return "another dial"
	case 11:
		r.b.Say("A message of some length, over the foot of the stage", r.now)
		return "message"
	case 14:
		r.s.Mirror = !r.s.Mirror
		return "mirror"
	case 15:
		id := []string{"strip-zoom-in", "strip-zoom-out"}[g.IntN(2)]
		r.b.Do(widget.Intent{ID: id, Act: widget.Press}, r.now)
		return id
	case 12, 13:
		at := place()
		down := widget.Pointer{ID: 1, At: at, Time: r.now}
		r.b.Pointers([]widget.Pointer{down}, r.now)
		down.Phase, down.At = widget.Move, at.Add(display.Pt{X: g.NormFloat64() * 30, Y: g.NormFloat64() * 30})
		r.b.Pointers([]widget.Pointer{down}, r.now)
		if g.IntN(4) > 0 {
			down.Phase = widget.Up
			r.b.Pointers([]widget.Pointer{down}, r.now)
		}
		return fmt.Sprintf("pointer at %v", at)
	default:
		c := any()
		act := widget.Press
		v := 0.0
		if c.Kind == widget.Slider || c.Kind == widget.Ruler {
			act, v = widget.Set, c.Min+g.Float64()*(c.Max-c.Min)
		}
		r.b.Do(widget.Intent{ID: c.ID, Act: act, Value: v}, r.now)
		return "press " + c.ID
	}
}

// copyOf returns a list that the next frame does not change.
func copyOf(l *display.List) display.List {
	c := *l
	c.Marks, c.Points, c.Alpha = slices.Clone(l.Marks), slices.Clone(l.Points), slices.Clone(l.Alpha)
	return c
}

func differs(got display.List, want *display.List) string {
	for i := range min(len(got.Marks), len(want.Marks)) {
		if got.Marks[i] != want.Marks[i] {
			return fmt.Sprintf("mark %d is %+v, want %+v", i, got.Marks[i], want.Marks[i])
		}
	}
	switch {
	case got.Back != want.Back || len(got.Marks) != len(want.Marks) || got.Still != want.Still:
		return fmt.Sprintf("%d marks of which %d stay on %v, want %d of which %d on %v", len(got.Marks), got.Still, got.Back, len(want.Marks), want.Still, want.Back)
	case !slices.Equal(got.Points, want.Points) || !slices.Equal(got.Alpha, want.Alpha):
		return "points or their opacities"
	}
	return ""
}

// TestKeptKnowsAllState: each field that the bench, the session and the view
// have has been thought of in what a kept frame is drawn for. A new field is
// added to `given` in kept.go, unless it can be seen in no frame or only while
// nothing is kept, and then here.
func TestKeptKnowsAllState(t *testing.T) {
	for _, s := range []struct {
		of   any
		want string
	}{
		{bench.Bench{}, "Session Words host faces theme frame plan planned kept arranged router controls intents list focus lift edge window wait toast" +
			" hintUntil seen told study fits notes pictures dials view stage slots alone tryout following ways several compare beside running point blank practising openings"},
		{session.Session{}, "pattern sel also undo redo held holds rev id ids tracks figures seams closing beat Playing Speed Loop Steps Mirror hidden clip"},
		{scene.Options{}, "Trail HideHandPath HideGrid HideArms HideLetters HideWhole PlainInk ByPiece HideSlack Taken"},
	} {
		var got []string
		for i := range reflect.TypeOf(s.of).NumField() {
			got = append(got, reflect.TypeOf(s.of).Field(i).Name)
		}
		if g := strings.Join(got, " "); g != s.want {
			t.Errorf("%T has fields\n%s, this test knows\n%s", s.of, g, s.want)
		}
	}
}
