package engine

import (
	"math"

	"whorlbench/engine/frac"
)

// maxArmTurns bounds how many turns of the arm a whole elementary pattern is
// drawn for; a star with more arms than that is a disc to the eye.
const maxArmTurns = 64

// Whole is the whole elementary pattern that a leg is a slice of: the closed
// curve of which the piece keeps a part.
type Whole struct {
	leg       *Leg
	ArmTurns  float64 // signed turns of the arm over the curve; 0 when the arm stays
	PropTurns float64 // signed turns of the prop over the curve; 0 for a pendulum
}

// Whole returns the elementary pattern of which the leg is a slice. With the
// ratio n = P/Q in lowest terms it closes after Q turns of the arm.
func (g *Leg) Whole() Whole {
	p := g.Piece
	w := Whole{leg: g}
	sign := func(f frac.Frac) float64 { return float64(f.Sign()) }
	switch {
	case p.Swing != 0:
		w.ArmTurns = sign(p.Arm)
	case p.Arm.IsZero():
		w.PropTurns = sign(p.Prop)
	default:
		n := p.Prop.Div(p.Arm)
		q := math.Min(frac.FromBig(n.Den()).Float(), maxArmTurns)
		w.ArmTurns = q * sign(p.Arm)
		w.PropTurns = w.ArmTurns * n.Float()
	}
	return w
}

// Point returns hand and head at the share v in [0, 1] of the whole curve,
// which begins where the leg does.
func (w Whole) Point(v float64) Point {
	g := w.leg
	h := g.hand(g.Arm0 + float64(w.ArmTurns*turn*v))
	prop := g.Prop0 + float64(w.PropTurns*turn*v)
	if g.swing != 0 {
		// Down and back once; the arm's share is not tied to it.
		prop = -math.Pi/2 + float64(g.swing*math.Cos(turn*v))
	}
	s, c := math.Sincos(prop)
	return Point{h, h + polar(g.tether, s, c)}
}
