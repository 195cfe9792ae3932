package engine

import (
	"math"
	"sort"

	"whorlbench/engine/frac"
)

// Later returns the lane that does at beat 0 what l does at the beat b, and
// so on: the same movement, begun later in the round; b may have any sign and
// size. A piece that b falls into is cut there. Pieces that begin a round of l
// keep the place where they begin it: where carrying on would not bring hand
// or, in a pinned lane, prop there, they become placed. Start angles are
// rounded as Turn rounds them.
func (l Lane) Later(b frac.Frac) Lane {
	if b.IsZero() {
		return l
	}
	t := NewTrack(l)
	whole := t.starts[len(t.starts)-1]
	local := b.Sub(b.Div(whole).Floor().Mul(whole))
	at := t.AtExact(b)
	i := sort.Search(len(t.Legs), func(k int) bool { return local.Less(t.starts[k]) }) - 1
	inside := !local.Equal(t.starts[i])

	if inside || i > 0 {
		out := l
		if inside {
			// A cut inside a piece does not fail.
			out, _ = l.Cut(i, local.Sub(t.starts[i]))
			i++
		}
		// The end of the round into its beginning, as the pieces carry on.
		last := t.Legs[len(t.Legs)-1].State(1)
		first := t.Legs[0].State(0)
		begin := out.Pieces[0]
		if !begin.ArmAt.Set && !sameAngle(last.Arm, first.Arm) {
			begin.ArmAt = Some(l.ArmAt)
		}
		if t.Pinned && !begin.PropAt.Set && begin.Swing == 0 && !sameAngle(last.Prop, first.Prop) {
			begin.PropAt = Some(l.PropAt)
		}
		turned := make([]Piece, 0, len(out.Pieces))
		turned = append(turned, out.Pieces[i:]...)
		turned = append(turned, begin)
		l.Pieces = append(turned, out.Pieces[1:i]...)
	}
	l.ArmAt, l.PropAt = startAngle(at.Arm), startAngle(at.Prop)
	return l
}

// startAngle returns an angle in radians as a person would write it.
func startAngle(rad float64) Degrees { return ToDegrees(math.Remainder(rad, turn)).Tidy() }

// sameAngle reports whether two angles in radians are one within TolPropGap.
func sameAngle(a, b float64) bool {
	return math.Abs(float64(ToDegrees(math.Remainder(a-b, turn)))) < TolPropGap
}
