package tether_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/fixture"
	"whorlbench/engine/tether"
)

var stroke = fixture.Stroke

const g0 = 9.80665

func near(got, want, tolerance float64) bool {
	return got == want || math.Abs(got-want) <= tolerance*(1+math.Abs(want))
}

// lane is a lane of pieces of the right hand, tether 0.6 m.
func lane(plane engine.Plane, at engine.Degrees, pieces ...engine.Piece) engine.Lane {
	return engine.Lane{Side: engine.Right, Plane: plane, Tether: 0.6, ArmAt: at, PropAt: at, Pieces: pieces}
}

// halfMoon is extension down the left half of a circle in two beats and
// four-petal antispin back up in two, from the top.
func halfMoon() engine.Lane {
	c := engine.CirclePath(0, 0.6)
	return lane(engine.Wall, 90, stroke(c, "1", "1", "1/2", "2"), stroke(c, "-1", "3", "1/2", "2"))
}

// TestHalfMoon: the arm makes a quarter turn a beat, ω = 90/60·π/2. In
// extension the head goes round at R + L = 1.2 m: the pull is 1.2ω²/g·(R + L)/L…
// along the tether, which at the top is less the weight; nothing at the top
// when (R + L)ω² = g. In antispin the head is fastest at the tips, (R + 3L)ω,
// and pulls most at the lower end, (9L + R)ω²/g + 1.
func TestHalfMoon(t *testing.T) {
	const w = 90.0 / 60 * math.Pi / 2
	r := tether.Of(engine.NewTrack(halfMoon()), 90, false)
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"least pull", r.Least.Value, 1.2*w*w/g0 - 1},
		{"its beat", r.Least.Beat, 0},
		{"its prop", float64(r.Least.Prop), 90},
		{"greatest pull", r.Greatest.Value, 6*w*w/g0 + 1},
		{"its beat", r.Greatest.Beat, 2},
		{"lowest tempo", r.Window.From, math.Sqrt(g0/1.2) / (math.Pi / 2) * 60},
		{"top speed", r.TopSpeed.Value, 2.4 * w},
		{"clear radius", r.Clear, 2.2},
		// Slack from the top until 1.2ω²/g = sin ψ, ψ = 90° + 90° a beat.
		{"end of slack", r.Spans[0].To, (math.Pi/2 - math.Asin(1.2*w*w/g0)) / (math.Pi / 2)},
		{"beginning of slack", r.Spans[0].From, 0},
	} {
		if !near(x.got, x.want, 1e-8) {
			t.Errorf("%s = %v, want %v", x.name, x.got, x.want)
		}
	}
	if !r.Slack || len(r.Spans) != 1 || !r.Window.OK || !r.Window.Open || r.HasAstray || r.HasGrowth || r.Rounds != 1 {
		t.Errorf("%+v, want slack once, an open window, no hand, no growth, one round", r)
	}
	if !(r.Pieces[0].Slack && !r.Pieces[1].Slack && r.Pieces[0].Least == r.Least && r.Pieces[1].Least.Value > 0) {
		t.Errorf("pieces %+v, want the first alone slack", r.Pieces)
	}
}

// TestWindows: tempos that follow from one line of paper each.
func TestWindows(t *testing.T) {
	bpm := func(rate float64) float64 { return 60 * rate / (2 * math.Pi) } // one turn a beat
	still := func(plane engine.Plane, at engine.Degrees) engine.Lane {
		return lane(plane, at, stroke(engine.PointPath(0), "0", "0", "1", "1"))
	}
	spin := func(plane engine.Plane) engine.Lane {
		return lane(plane, 90, stroke(engine.PointPath(0), "0", "1", "1", "1"))
	}
	circle := func(prop string, prop0 engine.Degrees, r float64, plane engine.Plane) engine.Lane {
		l := lane(plane, 0, stroke(engine.CirclePath(0, r), "1", prop, "1", "1"))
		l.PropAt = prop0
		return l
	}
	carried := func(path engine.Path, at engine.Degrees) engine.Lane {
		l := lane(engine.Wall, 0, stroke(path, "1", "0", "1", "1"))
		l.PropAt = at
		return l
	}
	open := math.Inf(1)
	for _, x := range []struct {
		name     string
		lane     engine.Lane
		from, to float64 // to < 0: none
	}{
		{"static vertical circle, ω ≥ √(g/L)", spin(engine.Wall), bpm(math.Sqrt(g0 / 0.6)), open},
		{"the same fore and aft", spin(engine.Wheel), bpm(math.Sqrt(g0 / 0.6)), open},
		{"level circle", spin(engine.Floor), 0, open},
		{"hanging still", still(engine.Wall, -90), 0, open},
		{"level and still: nothing along the tether", still(engine.Wall, 0), 0, open},
		{"held up", still(engine.Wall, 90), 0, -1},
		{"a little above level", still(engine.Wall, 1), 0, -1},
		{"extension, (R + L)ω² ≥ g", circle("1", 0, 0.4, engine.Wall), bpm(math.Sqrt(g0 / 1.0)), open},
		{"isolation, (L − R)ω² ≥ g", circle("1", 180, 0.3, engine.Wall), bpm(math.Sqrt(g0 / 0.3)), open},
		{"isolation that pushes in the middle", circle("1", 180, 0.7, engine.Wall), 0, -1},
		{"the same on the floor", circle("1", 180, 0.7, engine.Floor), 0, -1},
		// R = L, n = −1: the head goes to and fro on a line, free at its ends;
		// level, the prop is level there.
		{"line of two circles, upright", circle("-1", 180, 0.6, engine.Wall), 0, -1},
		{"line of two circles on the floor", circle("-1", 180, 0.6, engine.Floor), 0, open},
		// A prop that hangs while its hand goes up and down, or round, at R: the
		// hand must not fall faster than g.
		{"lift, Rω² ≤ g", carried(engine.LinePath(0, 0.5, 90), -90), 0, bpm(math.Sqrt(g0 / 0.5))},
		{"carried round, Rω² ≤ g", carried(engine.CirclePath(0, 0.5), -90), 0, bpm(math.Sqrt(g0 / 0.5))},
		// Level to and fro: along a hanging tether nothing.
		{"tray", carried(engine.LinePath(0, 0.5, 0), -90), 0, open},
		{"level prop on a level stroke", carried(engine.LinePath(0, 0.5, 0), 0), 0, -1},
	} {
		w := tether.Of(engine.NewTrack(x.lane), 100, false).Window
		switch {
		case x.to < 0:
			if w.OK {
				t.Errorf("%s: %+v, want none", x.name, w)
			}
		case !w.OK || !near(w.From, x.from, 1e-8) || w.Open != math.IsInf(x.to, 1) || !w.Open && !near(w.To, x.to, 1e-8):
			t.Errorf("%s: %+v, want from %v to %v", x.name, w, x.from, x.to)
		}
	}
}

// TestBothEnds: two pieces of which one must not be too slow and one not too
// quick, a static spin, Lω² ≥ g, and a lift, Rω² ≤ g with ω a quarter turn a
// beat. With R = 16L/9 that is three quarters of the quickest.
func TestBothEnds(t *testing.T) {
	l := lane(engine.Wall, -90,
		stroke(engine.PointPath(0), "0", "1/4", "4", "4"),
		stroke(engine.LinePath(0, 16.0/9*0.6, 90), "1/4", "0", "4", "4"))
	l.Pieces[1].ArmAt = engine.Some(0)
	slow := 60 * math.Sqrt(g0/0.6) / (math.Pi / 2)
	w := tether.Of(engine.NewTrack(l), 100, false).Window
	if w.OK { // ¾ of the slowest that is quick enough: none
		t.Errorf("%+v, want none", w)
	}
	l.Pieces[1].Path.A = 9.0 / 16 * 0.6
	w = tether.Of(engine.NewTrack(l), 100, false).Window
	if !w.OK || w.Open || !near(w.From, slow, 1e-9) || !near(w.To, slow*4/3, 1e-9) {
		t.Errorf("%+v, want from %v to %v", w, slow, slow*4/3)
	}
	for _, x := range []struct {
		tempo float64
		slack bool
	}{{w.From - 0.001, true}, {w.From, false}, {w.From + 0.001, false}, {w.To - 0.001, false}, {w.To, false}, {w.To + 0.001, true}} {
		if got := tether.Of(engine.NewTrack(l), x.tempo, false); got.Slack != x.slack {
			t.Errorf("at %v of %+v: slack %v, least pull %v", x.tempo, w, got.Slack, got.Least.Value)
		}
	}
}

// TestTwoWeights: at constant speed the pull is two weights greater at the bottom
// of a vertical circle than at the top. Halliday, Resnick & Walker; from memory.
func TestTwoWeights(t *testing.T) {
	for _, tempo := range []float64{60, 123, 240} {
		l := lane(engine.Wheel, 17, stroke(engine.PointPath(0), "0", "-1", "1", "1"))
		r := tether.Of(engine.NewTrack(l), tempo, false)
		if got := r.Greatest.Value - r.Least.Value; !near(got, 2, 1e-12) {
			t.Errorf("tempo %v: bottom − top = %v weights, want 2", tempo, got)
		}
		// From 17°, clockwise: the bottom after 107°, the top after 287°.
		if !near(r.Greatest.Beat, 107.0/360, 1e-7) || !near(r.Least.Beat, 287.0/360, 1e-7) {
			t.Errorf("tempo %v: greatest at beat %v, least at %v", tempo, r.Greatest.Beat, r.Least.Beat)
		}
	}
}

// TestOnlyLaterRounds: a prop that is a third of a turn on after each round
// hangs, stands at 30° and at 150°: the pull is 1, −1/2 and −1/2.
func TestOnlyLaterRounds(t *testing.T) {
	still, jump := stroke(engine.PointPath(0), "0", "0", "1", "8"), stroke(engine.PointPath(0), "0", "4/3", "1", "1/16")
	l := lane(engine.Wall, -90, still, jump)
	r := tether.Of(engine.NewTrack(l), 100, false)
	const round = 8 + 1.0/16
	if r.Rounds != 3 || !near(r.Pieces[0].Least.Value, -0.5, 1e-12) || !near(r.Pieces[0].Least.Beat, round, 1e-12) || !near(float64(r.Pieces[0].Least.Prop), 30, 1e-9) {
		t.Errorf("%d rounds, least of the first piece %+v; want 3, −0.5 at beat %v", r.Rounds, r.Pieces[0], round)
	}
	if len(r.Spans) != 2 || !near(r.Spans[0].From, round, 1e-9) || !near(r.Spans[0].To, round+8, 1e-9) || !near(r.Spans[1].Beats(), 8, 1e-9) {
		t.Errorf("slack in %v, want in all of the second and third stillness", r.Spans)
	}
	l.Pieces[0].PropAt = engine.Some(-90) // pinned: hangs always
	if r := tether.Of(engine.NewTrack(l), 100, false); r.Rounds != 1 || r.Slack {
		t.Errorf("pinned: %d rounds, slack %v; want one, taut", r.Rounds, r.Slack)
	}
}

// TestNeverCloses: over one round, although the next would be elsewhere.
func TestNeverCloses(t *testing.T) {
	l := lane(engine.Wall, 0, stroke(engine.CirclePath(0, 0.6), "1", "1/3", "1/4", "4"))
	if r := tether.Of(engine.NewTrack(l), 60, false); r.Rounds != 1 || r.Least.Beat > 4 {
		t.Errorf("%d rounds, least %+v; want one", r.Rounds, r.Least)
	}
}

// TestManyRounds: of a lane that closes after 101 rounds 64 are looked at.
func TestManyRounds(t *testing.T) {
	l := lane(engine.Wall, 90, stroke(engine.CirclePath(0, 0.6), "1", "102/101", "1", "1"))
	if r := tether.Of(engine.NewTrack(l), 90, false); r.Rounds != 64 {
		t.Errorf("%d rounds, want 64", r.Rounds)
	}
}

// TestSpanOverTheEnd: a static spin from 80° that is slack about the top is
// slack once a round, over the round's end.
func TestSpanOverTheEnd(t *testing.T) {
	l := lane(engine.Wall, 80, stroke(engine.PointPath(0), "0", "1", "1", "1"))
	const tempo = 30
	w := 2 * math.Pi * tempo / 60
	half := math.Acos(0.6*w*w/g0) / (2 * math.Pi) // beats either side of the top
	r := tether.Of(engine.NewTrack(l), tempo, false)
	top := 10.0 / 360
	if len(r.Spans) != 1 || !near(r.Spans[0].From, 1+top-half, 1e-8) || !near(r.Spans[0].To, 1+top+half, 1e-8) {
		t.Errorf("slack in %v, want from %v to %v", r.Spans, 1+top-half, 1+top+half)
	}
}

// TestRigid: what can push is never slack, and has no window and no hand to
// compare with; pull, speed and room are as they are.
func TestRigid(t *testing.T) {
	track := engine.NewTrack(halfMoon())
	soft, rigid := tether.Of(track, 90, false), tether.Of(track, 90, true)
	if rigid.Slack || rigid.Spans != nil || rigid.Window.OK || rigid.HasAstray || rigid.HasGrowth || !rigid.Rigid {
		t.Errorf("%+v, want neither slack nor window nor hand", rigid)
	}
	if rigid.Least != soft.Least || rigid.Greatest != soft.Greatest || rigid.TopSpeed != soft.TopSpeed || rigid.Clear != soft.Clear {
		t.Errorf("rigid %+v, want pull, speed and room of %+v", rigid, soft)
	}
}

// TestClear: room for the arm, the tether and a metre for others.
func TestClear(t *testing.T) {
	spin := stroke(engine.PointPath(0.3+0.4i), "0", "1", "1", "1")
	for _, x := range []struct {
		plane engine.Plane
		want  float64
	}{
		{engine.Wall, 0.5 + 0.6 + 1},             // to the middle, in the plane
		{engine.Wheel, math.Hypot(0.9, 0.2) + 1}, // level: forward, and aside by the offset
		{engine.Floor, 0.5 + 0.6 + 1},
	} {
		l := lane(x.plane, 0, spin)
		l.Offset = -0.2
		if got := tether.Of(engine.NewTrack(l), 100, false).Clear; !near(got, x.want, 1e-12) {
			t.Errorf("plane %d: %v m, want %v", x.plane, got, x.want)
		}
	}
}
