package follow

import (
	"cmp"
	"math"
	"slices"

	"whorlbench/engine/seam"
)

// share is how many candidates of a kind are kept where there are more than
// Most in all; they sum up to it.
var share = [kinds]int{Again: 1, GoesOn: 11, OtherSide: 8, TurnsBack: 12, Corner: 8}

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
	left, room := share, Most
	take := func(k int) {
		taken[k] = true
		room--
	}
	for _, k := range order {
		if left[tries[k].kind] > 0 {
			left[tries[k].kind]--
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
		cmp.Compare(a.jump(), b.jump()),
		first(a.kind == Again, b.kind == Again),
		first(a.keepsUp, b.keepsUp),
		first(a.same, b.same),
		cmp.Compare(a.size(), b.size()),
		cmp.Compare(a.move, b.move),
	)
}

// jump returns the size of the jump across the tether in steps; none counts in
// a join that is smooth.
func (y *try) jump() float64 {
	if y.join.Verdict == seam.Smooth {
		return 0
	}
	return math.Round(math.Abs(y.join.JumpAcross) / jumpStep)
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
