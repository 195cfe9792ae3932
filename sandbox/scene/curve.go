package scene

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
)

// How finely curves are sampled: points a turn of arm and prop together, and
// bounds on the points of one leg and of a whole trail.
const (
	pointsPerTurn = 56
	leastPoints   = 6
	mostPoints    = 4000
)

// legPoints returns how many steps a leg's curve is drawn in, given how many
// its share of the budget allows.
func legPoints(g *engine.Leg, budget int) int {
	n := int(math.Ceil(pointsPerTurn * g.Turns()))
	return min(max(n, leastPoints), max(budget, 1))
}

// jumpLimit (m): consecutive points of a curve further apart than this at a
// seam belong to different lines.
const jumpLimit = 1e-4

// Trail walks a track from one beat to another, in order, and hands each
// point to add, with its leg, its beat and whether the line is broken before it. Legs
// are walked to their very ends, so that corners and cusps stay sharp. It
// walks at most a few rounds' worth of points.
func Trail(t *engine.Track, from, to float64, add func(p engine.Point, leg int, beat float64, broken bool)) {
	if !(to > from) {
		return
	}
	budget := mostPoints / len(t.Legs)
	round, piece, _ := t.Locate(from)
	var last engine.Point
	first := true
	for {
		g := &t.Legs[piece]
		start := float64(round)*t.Beats + g.Start
		if start >= to {
			return
		}
		u0 := min(max((from-start)/g.Span, 0), 1)
		u1 := min((to-start)/g.Span, 1)
		// Points stand still while the ends go on: only the first and the last
		// are where the beats say.
		n := float64(legPoints(g, budget))
		k0, k1 := math.Floor(u0*n)+1, math.Ceil(u1*n)-1
		for k := k0 - 1; k <= k1+1; k++ {
			u := k / n
			switch {
			case k < k0:
				u = u0
			case k > k1:
				u = u1
			}
			p := t.PointAt(round, piece, u)
			broken := first
			if k < k0 && !first {
				if cmplx.Abs(p.Head-last.Head) < jumpLimit && cmplx.Abs(p.Hand-last.Hand) < jumpLimit {
					continue
				}
				broken = true
			}
			add(p, piece, start+u*g.Span, broken)
			last, first = p, false
		}
		if piece++; piece == len(t.Legs) {
			round, piece = round+1, 0
		}
	}
}

// WholePoints returns how many steps the whole elementary pattern of a leg
// is drawn in.
func WholePoints(w engine.Whole) int {
	turns := math.Abs(w.ArmTurns) + math.Abs(w.PropTurns)
	return min(max(int(pointsPerTurn*turns), 64), mostPoints)
}
