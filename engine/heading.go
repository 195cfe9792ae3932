package engine

import "math/cmplx"

// cornerShare is how small the hand path's slope must be, as a share of the
// path's size, to count as the end of a straight stroke, where it vanishes.
// Rounding of an angle leaves 1e-15 of it; a real piece begins further away.
const cornerShare = 1e-9

// Heading returns the unit tangent of the hand path in the sense of the
// hand's movement, at the share u of the kept time: the limit from inside the
// piece, so that the end of a straight stroke and an eased end have one too.
// u = 1 is approached from before, anything less from after. ok is false
// where the hand stays: no arm speed, or a point.
func (g *Leg) Heading(u float64) (unit complex128, ok bool) {
	p := &g.path
	sense := float64(g.Piece.Arm.Sign())
	if sense == 0 || p.IsPoint() {
		return 0, false
	}
	arm, _ := g.angles(u)
	slope := scale(sense, g.slope(arm))
	if cmplx.Abs(slope) > cornerShare*max(p.A, p.B) {
		return scale(1/cmplx.Abs(slope), slope), true
	}
	// h'(α ∓ ε) = ∓ε·h''(α) with h'' = −(h − c): inward after the end of a
	// stroke, outward before it, whichever way the arm turns.
	inward := p.Centre - g.hand(arm)
	if u == 1 {
		inward = -inward
	}
	return scale(1/cmplx.Abs(inward), inward), true
}
