package scene

import (
	"fmt"
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/fixture"
	"whorlbench/engine/frac"
)

var fr = fixture.Frac

// step is a point as Trail hands it out.
type step struct {
	engine.Point
	beat   float64
	broken bool
}

func walk(t *engine.Track, from, to float64) []step {
	var out []step
	Trail(t, from, to, func(p engine.Point, _ int, beat float64, broken bool) {
		out = append(out, step{p, beat, broken})
	})
	return out
}

// breaks counts the places where a line ends and another begins.
func breaks(steps []step) int {
	n := 0
	for _, s := range steps[1:] {
		if s.broken {
			n++
		}
	}
	return n
}

func circular(arm, prop, cycles string) engine.Piece {
	return engine.Stroke(engine.CirclePath(0, 0.5), fr(arm), fr(prop), fr(cycles), frac.Int(2))
}

func at(p engine.Piece, arm engine.Degrees) engine.Piece {
	p.ArmAt = engine.Some(arm)
	return p
}

func track(pieces ...engine.Piece) *engine.Track {
	return engine.NewTrack(engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: 90, PropAt: 90, Pieces: pieces})
}

// eased is a lane with each arm law, a part and a pendulum.
func eased() *engine.Track {
	a, b, c, d := circular("1", "-2", "1"), circular("-1", "3", "1/2"), circular("1", "3", "3"), circular("1", "2", "1")
	a.Law, b.Law, c.Law = engine.EaseStart, engine.EaseEnd, engine.EaseBoth
	c.From, c.To = fr("1/8"), fr("5/7")
	d.Swing = 50
	return track(a, b, c, d)
}

var trails = []struct {
	name  string
	track *engine.Track
	// breaks in the middle of a round, and at its end
	within, wrap int
}{
	{"one circle", track(circular("1", "1", "1")), 0, 0},
	{"C", track(circular("1", "1", "1/2"), circular("-1", "3", "1/2")), 0, 0},
	{"prop comes round late", track(circular("1", "1/3", "1")), 0, 0},
	{"never closes", track(circular("1", "-3", "1/2")), 0, 1},
	{"never closes, two", track(circular("1", "1", "1/2"), circular("1", "-3", "1/4")), 0, 1},
	{"placed where it is", track(circular("1", "1", "1/2"), at(circular("-1", "3", "1/2"), 270)), 0, 0},
	{"placed elsewhere", track(circular("1", "1", "1/2"), at(circular("1", "3", "1/2"), 180)), 1, 1},
	{"placed twice", track(circular("1", "1", "1"), at(circular("1", "3", "1"), 180), at(circular("1", "3", "1"), 90)), 2, 0},
	{"eased", eased(), 1, 1}, // where the pendulum begins
}

// TestTrail: points come in order, each where the track is at its beat, from
// one end to the other, in rounds below 0 too; and the line is broken just
// where hand or head jump.
func TestTrail(t *testing.T) {
	for _, tt := range trails {
		b := tt.track.Beats
		for _, run := range []struct {
			from, to float64
			breaks   int
		}{
			{0, b, tt.within},
			{-b, 0, tt.within},
			{-3 * b, -2 * b, tt.within},
			{0.3, b - 0.1, tt.within},
			{-0.3, b - 0.3, tt.within + tt.wrap},
			{-2*b - 0.25, 0.25, 2*tt.within + 3*tt.wrap},
			{1000*b - 0.7, 1001*b - 0.7, tt.within + tt.wrap},
		} {
			t.Run(fmt.Sprintf("%s %v to %v", tt.name, run.from, run.to), func(t *testing.T) {
				steps := walk(tt.track, run.from, run.to)
				if len(steps) < 2 || !steps[0].broken {
					t.Fatalf("Trail gave %d points, want a line that begins", len(steps))
				}
				if got := breaks(steps); got != run.breaks {
					t.Errorf("breaks = %d, want %d", got, run.breaks)
				}
				checkSteps(t, tt.track, steps, run.from, run.to)
			})
		}
	}
}

func checkSteps(t *testing.T, k *engine.Track, steps []step, from, to float64) {
	t.Helper()
	for i, s := range steps {
		if i > 0 {
			prev := steps[i-1].beat
			if s.broken && math.Abs(s.beat-prev) > 1e-9 {
				t.Fatalf("break from beat %v to %v, want the same", prev, s.beat)
			}
			if !s.broken && s.beat <= prev {
				t.Fatalf("point %d at beat %v after %v, want them in order", i, s.beat, prev)
			}
		}
		// A beat at a seam is the start of what follows; the line still ends
		// where the piece before does.
		if i+1 == len(steps) || steps[i+1].broken {
			continue
		}
		near(t, fmt.Sprintf("point %d at %v", i, s.beat), s.Point, k.At(s.beat), 1e-9)
	}
	first, last := steps[0], steps[len(steps)-1]
	if math.Abs(first.beat-from) > 1e-9 || math.Abs(last.beat-to) > 1e-9 {
		t.Errorf("beats from %v to %v, want %v to %v", first.beat, last.beat, from, to)
	}
	// Beats of a thousand rounds carry 1e-13 of rounding; near 0 there is none.
	tol := 1e-12 * max(1, math.Abs(to))
	near(t, "first point", first.Point, k.At(from), tol)
	if math.Mod(to, k.Beats) != 0 {
		near(t, "last point", last.Point, k.At(to), tol)
		return
	}
	end := len(k.Legs) - 1
	round := int(math.Round(to/k.Beats)) - 1
	near(t, "last point", last.Point, k.AtPiece(round, end, 1), tol)
}

func near(t *testing.T, what string, got engine.Point, want engine.State, tol float64) {
	t.Helper()
	if d := max(cmplx.Abs(got.Hand-want.Hand), cmplx.Abs(got.Head-want.Head)); !(d <= tol) {
		t.Errorf("%s = %v, want hand %v, head %v: %.3g m apart", what, got, want.Hand, want.Head, d)
	}
}

// TestTrailIsFine: no chord leaves the true curve by more than a millimetre,
// which is less than a pixel at three pixels a centimetre.
func TestTrailIsFine(t *testing.T) {
	for _, tt := range trails {
		steps := walk(tt.track, 0, tt.track.Beats)
		for i := 1; i < len(steps); i++ {
			a, b := steps[i-1], steps[i]
			if b.broken || b.beat-a.beat < 1e-6 {
				continue
			}
			mid := tt.track.At((a.beat + b.beat) / 2).Head
			if d := offChord(mid, a.Head, b.Head); d > 1e-3 {
				t.Errorf("%s: at beat %v the curve is %.2g m off its chord", tt.name, (a.beat+b.beat)/2, d)
			}
		}
	}
}

// offChord is the distance of z from the straight line between a and b.
func offChord(z, a, b complex128) float64 {
	d := b - a
	if d == 0 {
		return cmplx.Abs(z - a)
	}
	u := (z - a) / d
	return cmplx.Abs(u-complex(min(max(real(u), 0), 1), 0)) * cmplx.Abs(d)
}

func TestTrailOfNothing(t *testing.T) {
	k := trails[0].track
	for _, run := range [][2]float64{{1, 1}, {2, 1}, {math.NaN(), 1}, {0, math.NaN()}} {
		if got := walk(k, run[0], run[1]); got != nil {
			t.Errorf("Trail(%v, %v) = %d points, want none", run[0], run[1], len(got))
		}
	}
}

// TestTrailOfMany: ten thousand pieces, and the fastest that a file may hold,
// still give a line that can be drawn in a frame.
func TestTrailOfMany(t *testing.T) {
	many := make([]engine.Piece, 10_000)
	for i := range many {
		many[i] = circular("1", "-3", "1/4")
	}
	for _, tt := range []struct {
		name  string
		track *engine.Track
		most  int
	}{
		{"10,000 pieces", track(many...), 20_000},
		{"1000 cycles of 64 turns", track(circular("64", "-64", "1000")), 4_010},
		{"three fast ones", track(circular("64", "-64", "1000"), circular("64", "64", "1000"), circular("1", "64", "1000")), 4_010},
	} {
		if got := len(walk(tt.track, -tt.track.Beats/3, tt.track.Beats*2/3)); got < 1000 || got > tt.most {
			t.Errorf("%s: points = %d, want at most %d", tt.name, got, tt.most)
		}
	}
}

func TestWholePoints(t *testing.T) {
	for _, tt := range []struct {
		name        string
		arm, prop   string
		least, most int
	}{
		{"circle", "1", "1", 64, 200},
		{"four petals", "1", "-3", 200, 400},
		{"hand at rest", "0", "1", 64, 200},
		{"carried", "1", "0", 64, 200},
		{"star of many arms", "1000003/1000000", "1", 1000, 4000},
	} {
		k := track(circular(tt.arm, tt.prop, "1"))
		if got := WholePoints(k.Legs[0].Whole()); got < tt.least || got > tt.most {
			t.Errorf("%s: WholePoints = %d, want %d to %d", tt.name, got, tt.least, tt.most)
		}
	}
}
