package engine_test

import (
	"math"
	"math/cmplx"
	"math/rand/v2"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/fixture"
	"whorlbench/engine/frac"
)

var (
	fr     = fixture.Frac
	stroke = fixture.Stroke
	circle = fixture.Circle
)

// lane is a lane of the right hand in the wall plane, arm and prop starting
// at the angle at.
func lane(tether float64, at engine.Degrees, pieces ...engine.Piece) engine.Lane {
	return engine.Lane{Side: engine.Right, Tether: tether, ArmAt: at, PropAt: at, Pieces: pieces}
}

// pattern wraps lanes.
func pattern(lanes ...engine.Lane) engine.Pattern {
	return engine.Pattern{Title: "Lantern parade", Tempo: 90, Performer: engine.DefaultPerformer(), Lanes: lanes}
}

// randomLanes makes lanes of every sort that a person could write.
type randomLanes struct {
	*rand.Rand
	noPlaced, noParts, noSwing, evenOnly bool
}

func (r randomLanes) chance(p float64) bool { return r.Float64() < p }

// decimal returns a multiple of 10^-places in [−most, most].
func (r randomLanes) decimal(most int, places int) float64 {
	unit := int(math.Pow10(places))
	return float64(r.IntN(2*most*unit+1)-most*unit) / float64(unit)
}

func (r randomLanes) angle() engine.Degrees {
	if r.chance(0.5) {
		return engine.Degrees(45 * (r.IntN(17) - 8))
	}
	return engine.Degrees(r.decimal(720, 6))
}

// signed returns a fraction with numerator up to most either way.
func (r randomLanes) signed(most, den int) frac.Frac {
	return frac.New(int64(r.IntN(2*most+1)-most), int64(1+r.IntN(den)))
}

func (r randomLanes) positive(most, den int) frac.Frac {
	return frac.New(int64(1+r.IntN(most)), int64(1+r.IntN(den)))
}

func (r randomLanes) size() float64 { return 0.1 + float64(r.IntN(1200))/1000 }

func (r randomLanes) place() complex128 { return complex(r.decimal(1, 3), r.decimal(1, 3)) }

func (r randomLanes) path() engine.Path {
	switch r.IntN(7) {
	case 0:
		return engine.LinePath(r.place(), r.size(), r.angle())
	case 1:
		return engine.EllipsePath(r.place(), r.size(), r.size(), r.angle())
	case 2:
		return engine.PointPath(r.place())
	case 3: // a circle and a stroke written as ellipses
		a := r.size()
		return engine.EllipsePath(r.place(), a, a, r.angle())
	case 4:
		return engine.EllipsePath(r.place(), 0, r.size(), r.angle())
	}
	return engine.CirclePath(r.place(), r.size())
}

func (r randomLanes) piece() engine.Piece {
	p := engine.Stroke(r.path(), r.signed(12, 6), r.signed(12, 6), r.positive(12, 6), r.positive(20, 7))
	if !r.noParts && r.chance(0.3) {
		den := 2 + r.IntN(11)
		from := r.IntN(den)
		to := from + 1 + r.IntN(den-from)
		p.From, p.To = frac.New(int64(from), int64(den)), frac.New(int64(to), int64(den))
	}
	if !r.evenOnly && r.chance(0.5) {
		p.Law = engine.Law(r.IntN(4))
	}
	if !r.noSwing && r.chance(0.12) {
		p.Swing = engine.Degrees(1 + r.IntN(180))
		p.SwingBack = r.chance(0.5)
	}
	if !r.noPlaced && r.chance(0.2) {
		p.ArmAt = engine.Some(r.angle())
	}
	if !r.noPlaced && r.chance(0.08) {
		p.PropAt = engine.Some(r.angle())
	}
	return p
}

func (r randomLanes) lane() engine.Lane {
	l := engine.Lane{
		Side: engine.Side(r.IntN(2)), Plane: engine.Plane(r.IntN(3)), Offset: r.decimal(1, 3),
		Centre: r.place(), Tether: r.size(), ArmAt: r.angle(), PropAt: r.angle(),
	}
	n := 1 + r.IntN(5)
	if r.chance(0.1) {
		n += 10 // enough that pieces are looked up by halving
	}
	for range n {
		l.Pieces = append(l.Pieces, r.piece())
	}
	return l
}

// beats returns n beats over the rounds −2 to 4.
func (r randomLanes) beats(t *engine.Track, n int) []float64 {
	at := make([]float64, n)
	for i := range at {
		at[i] = t.Beats * (7*r.Float64() - 2)
	}
	return at
}

// apart returns the greater of the distances hand to hand and head to head.
func apart(a, b engine.State) float64 {
	return max(cmplx.Abs(a.Hand-b.Hand), cmplx.Abs(a.Head-b.Head))
}

// moves checks that two tracks put hand and head at the same places.
func moves(t *testing.T, what string, got, want *engine.Track, beats []float64) {
	t.Helper()
	for _, b := range beats {
		g, w := got.At(b), want.At(b)
		if d := apart(g, w); !(d <= 1e-9) {
			t.Fatalf("%s: At(%v) = hand %v, head %v, want hand %v, head %v: %.3g m apart",
				what, b, g.Hand, g.Head, w.Hand, w.Head, d)
		}
	}
}
