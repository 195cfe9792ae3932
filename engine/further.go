package engine

import "math"

// Further returns what AtPiece does, and the third and fourth derivative of
// the head's place (m a beat³, m a beat⁴): what a tether does to the hand that
// would lead the head asks for them.
//
// Both come in closed form by the chain rule. An angle θ that is steady, eased
// or swung obeys θ‴ = −k²θ′ and θ⁗ = −k²θ″ with the k of its sine; of hand and
// tether alike, the third and fourth derivative in θ are minus the first and
// second.
func (t *Track) Further(round, piece int, u float64) (st State, third, fourth complex128) {
	return t.Legs[piece].further(u, t.TurnedBy(round))
}

func (g *Leg) further(u, turned float64) (st State, third, fourth complex128) {
	st = g.StateAfter(u, turned)
	perBeat := g.kept / g.Span // stroke shares a beat
	s := g.from + float64(g.kept*u)
	_, _, f2 := g.Piece.Law.Share(s)
	arm := turning{st.ArmRate, g.armTurn * f2 * perBeat * perBeat, g.Piece.Law.wave() * perBeat}
	prop := turning{rate: st.PropRate}
	if g.swing != 0 {
		prop.wave = g.propTurn * perBeat
		prop.acc = -g.swing * prop.wave * prop.wave * math.Cos(g.propTurn*s)
	}
	out := st.Head - st.Hand
	h3, h4 := arm.further(g.slope(st.Arm), g.path.Centre-st.Hand)
	o3, o4 := prop.further(complex(-imag(out), real(out)), -out)
	return st, h3 + o3, h4 + o4
}

// turning is how an angle changes: radians a beat, a beat², and the k of its
// sine (radians a beat).
type turning struct{ rate, acc, wave float64 }

// further returns the third and fourth derivative in time of a place whose
// first and second in the angle are d1 and d2, and whose third and fourth are
// −d1 and −d2.
func (w turning) further(d1, d2 complex128) (third, fourth complex128) {
	rr, kk := float64(w.rate*w.rate), float64(w.wave*w.wave)
	third = scale(-w.rate*(rr+kk), d1) + scale(3*w.rate*w.acc, d2)
	fourth = scale(-w.acc*(float64(6*rr)+kk), d1) + scale(float64(3*w.acc*w.acc)-float64(rr*(float64(4*kk)+rr)), d2)
	return third, fourth
}

// wave returns the k for which the share's derivatives obey f‴ = −k²f′ and
// f⁗ = −k²f″, in radians over the stroke.
func (l Law) wave() float64 {
	switch l {
	case EaseStart, EaseEnd:
		return math.Pi / 2
	case EaseBoth:
		return math.Pi
	}
	return 0
}
