package follow

import (
	"cmp"
	"math"
	"slices"

	"whorlbench/engine/seam"
)

// The share of each kind, on round paths and on strokes, where there are more
// candidates than Most; what turns the prop back has one by itself. Those that
// occur together sum up to Most.
var share = [kinds][2]int{Again: {1, 1}, GoesOn: {6, 3}, OtherSide: {6, 0}, TurnsBack: {6, 4}, Corner: {2, 4}, SetsOff: {20, 12}}

const shareReversing = 8

// jumpStep (m/s): jumps that differ by less are one, so that rounding does not
// decide the order.
const jumpStep = 1e-6

// pick returns the indices of the tries to be shown, in order: each kind has
// its share, and what one leaves is for the best of the others.
func pick(tries []try) []int {
	order := make([]int, len(tries))
	for k := range order {
		order[k] = k
	}
	slices.SortStableFunc(order, func(i, j int) int { return compare(&tries[i], &tries[j]) })
	if len(order) <= Most {
		return order
	}
	taken := make([]bool, len(tries))
	left, leftReversing, room := share, shareReversing, Most
	take := func(k int) {
		taken[k] = true
		room--
	}
	for _, k := range order {
		y := &tries[k]
		of := &left[y.kind][0]
		switch {
		case y.join.PropReverses:
			of = &leftReversing
		case y.straight:
			of = &left[y.kind][1]
		}
		if *of > 0 && room > 0 {
			*of--
			take(k)
		}
	}
	for _, k := range order {
		if room > 0 && !taken[k] {
			take(k)
		}
	}
	return slices.DeleteFunc(order, func(k int) bool { return !taken[k] })
}

// compare orders tries: by the verdict, by the jump, by plainness. Plainest is
// what keeps the rate and the path and has a small ratio; what is left is as
// the movements were found.
func compare(a, b *try) int {
	return cmp.Or(
		cmp.Compare(b.join.Verdict, a.join.Verdict),
		cmp.Compare(jumpSteps(a.join), jumpSteps(b.join)),
		first(a.kind == Again, b.kind == Again),
		first(a.pace == 1, b.pace == 1),
		first(a.same, b.same),
		cmp.Compare(a.size(), b.size()),
		cmp.Compare(a.move, b.move),
	)
}

// jumpSteps returns the size of the jump across the tether in steps; none counts
// in a join that is smooth.
func jumpSteps(s seam.Seam) float64 {
	if s.Verdict == seam.Smooth {
		return 0
	}
	return math.Round(math.Abs(s.JumpAcross) / jumpStep)
}

func (y *try) size() int { return max(y.speed, -y.speed) }

func first(a, b bool) int {
	switch {
	case a == b:
		return 0
	case a:
		return -1
	}
	return 1
}
