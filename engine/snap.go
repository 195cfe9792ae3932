package engine

import (
	"math"

	"whorlbench/engine/frac"
)

// CutGrid is the step, in parts of a beat, to which a cut falls that is near
// nothing better.
const CutGrid = 48

// nearFraction (beats): a place on the curve found to this accuracy is taken
// to be the simplest fraction there. maxCutDen keeps cut pieces writable.
const (
	nearFraction = 1e-9
	maxCutDen    = 10_000
)

// SnapCut returns where, in beats from the beginning of piece i, a cut near
// the share u of its kept time falls: on a petal tip, a quarter turn of the
// arm or a whole beat of the lane if one lies within near beats (the nearest
// of them; on a tie the tip, then the quarter), else on the lane's 1/48 beat.
// Near a seam that may be the seam or lie beyond it, where Cut refuses.
func (t *Track) SnapCut(i int, u, near float64) frac.Frac {
	g := &t.Legs[i]
	want := float64(u * g.Span)
	best, dist := frac.Frac{}, near
	offer := func(at frac.Frac) {
		if at.Sign() <= 0 || !at.Less(g.Piece.Length()) {
			return
		}
		if d := math.Abs(at.Float() - want); d <= dist && (best.IsZero() || d < dist-nearFraction) {
			best, dist = at, d
		}
	}
	for _, tip := range g.tips() {
		offer(frac.Near(tip*g.Span, nearFraction, maxCutDen))
	}
	for _, q := range g.quarters() {
		offer(frac.Near(q*g.Span, nearFraction, maxCutDen))
	}
	start := t.starts[i]
	whole := frac.Near(g.Start+want, nearFraction, maxCutDen)
	offer(whole.Round(frac.Int(1)).Sub(start))
	if !best.IsZero() {
		return best
	}
	return whole.Round(frac.New(1, CutGrid)).Sub(start)
}

// Tips returns the beats of a round at which the lane's pieces reach a petal
// tip, in order.
func (t *Track) Tips() []float64 {
	var beats []float64
	for i := range t.Legs {
		g := &t.Legs[i]
		for _, u := range g.tips() {
			beats = append(beats, g.Start+float64(u*g.Span))
		}
	}
	return beats
}

// tips returns the shares of the kept time at which the prop points along
// the arm, on a round path: the petal tips. Where arm or prop stays, or both
// turn alike, there are no petals.
func (g *Leg) tips() []float64 {
	p := g.Piece
	if !g.path.IsRound() || p.Swing != 0 || p.Arm.IsZero() || p.Prop.IsZero() || p.Prop.Equal(p.Arm) {
		return nil
	}
	return crossings(func(u float64) float64 {
		arm, prop := g.angles(u)
		return (prop - arm) / turn
	}, math.Abs(g.propTurn-g.armTurn)/turn*g.kept)
}

// quarters returns the shares of the kept time at which the arm passes a
// quarter turn.
func (g *Leg) quarters() []float64 {
	if g.path.IsPoint() || g.Piece.Arm.IsZero() {
		return nil
	}
	return crossings(func(u float64) float64 {
		arm, _ := g.angles(u)
		return arm / (turn / 4)
	}, math.Abs(g.armTurn)*4/turn)
}

// crossings returns where in [0, 1] f passes a whole number, by bisection
// between samples fine enough for the expected number of crossings.
func crossings(f func(float64) float64, expected float64) []float64 {
	const perCrossing, most = 16, 20_000
	n := int(min(64+float64(perCrossing*expected), most))
	var at []float64
	a, fa := 0.0, f(0)
	for k := 1; k <= n; k++ {
		b := float64(k) / float64(n)
		fb := f(b)
		lo, hi := min(fa, fb), max(fa, fb)
		for w := math.Ceil(lo); w <= hi; w++ {
			at = append(at, bisect(f, w, a, b))
		}
		a, fa = b, fb
	}
	return at
}

func bisect(f func(float64) float64, w, a, b float64) float64 {
	rising := f(b) >= f(a)
	for range 60 {
		mid := (a + b) / 2
		if (f(mid) < w) == rising {
			a = mid
		} else {
			b = mid
		}
	}
	return (a + b) / 2
}
