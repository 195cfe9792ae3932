package mend

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// row is what the jump across the tether at a seam is made of in one round.
// At fixed geometry each side's velocity goes inversely with the time its
// piece takes, so the jump is linear in the two rates:
//
//	across = next/(beats of the next piece) − prev/(beats of the one before)
type row struct {
	seam       int
	prev, next float64 // m/s times beats
}

func (r row) across(prevBeats, nextBeats float64) float64 {
	return r.next/nextBeats - r.prev/prevBeats
}

// rows returns the different rows of the seam after piece i.
func rows(t *engine.Track, i int, tempo float64) []row {
	// Of velocities up to some tens of m/s, far above rounding and far below
	// what counts.
	const alike = 1e-9
	var list []row
	a, b := &t.Legs[i], &t.Legs[(i+1)%len(t.Legs)]
	for round := range seam.Rounds(t) {
		before, after := seam.Sides(t, i, round)
		frame := cmplx.Rect(tempo/60, -before.Prop)
		r := row{
			seam: i,
			prev: float64(imag(engine.Product(before.HeadVel, frame)) * a.Span),
			next: float64(imag(engine.Product(after.HeadVel, frame)) * b.Span),
		}
		if !hasRow(list, r, alike) {
			list = append(list, r)
		}
	}
	return list
}

func hasRow(list []row, r row, within float64) bool {
	for _, x := range list {
		if math.Abs(x.prev-r.prev) <= within && math.Abs(x.next-r.next) <= within {
			return true
		}
	}
	return false
}
