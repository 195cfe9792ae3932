// Package naming says which elementary pattern a piece is a slice of, in the
// trade's terms. It judges by geometry, never by how a piece was written, and
// speaks in kinds and numbers; the words for them stand in package words.
package naming

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// Kind is a sort of elementary pattern.
type Kind uint8

// The kinds of elementary pattern.
const (
	Flower          Kind = iota // whole ratio other than 0 and 1, in-spin or antispin
	Star                        // ratio a fraction
	Extension                   // ratio 1, prop in line with the arm and outward
	Isolation                   // ratio 1, prop in line with the arm and inward
	UnitTurn                    // ratio 1, at another offset
	Carried                     // the prop does not turn while the hand goes round
	StaticSpin                  // the hand stays, the prop turns
	HeldStill                   // nothing moves
	LinearExtension             // straight stroke, in line and outward at its + end
	LinearIsolation             // straight stroke, in line and inward at its + end
	LinearBetween               // straight stroke at the same speeds, out of phase
	LinearOther                 // straight stroke at other speeds
	EllipsePath                 // elliptical hand path
	Pendulum                    // the prop swings
)

// Spin is the relation of prop to arm.
type Spin uint8

// The relations of prop to arm.
const (
	SpinIn Spin = iota
	SpinAnti
	SpinUnit
	SpinCarried
	SpinLine
	SpinEllipse
	SpinStatic
	SpinSwing
)

// Mode is how four petals stand.
type Mode uint8

// Diamond has petals up, down, left and right, Box on the diagonals.
const (
	NoMode Mode = iota
	Diamond
	Box
)

// Figure is what an elementary pattern is called.
type Figure struct {
	Kind      Kind
	Spin      Spin
	HasRatio  bool
	Ratio     frac.Frac // prop turns to one arm turn
	HasPetals bool
	Petals    frac.Frac // a whole number
	HasTip    bool
	FirstTip  engine.Degrees // arm angle of the first petal tip, [0, 360°/petals)
	Mode      Mode
	Offset    engine.Degrees // unit turn: prop angle less arm angle, (−180°, 180°]
}

// Of names the elementary pattern of which leg is a slice.
func Of(leg *engine.Leg) Figure {
	p, path := leg.Piece, leg.Path()
	if p.Swing != 0 {
		return Figure{Kind: Pendulum, Spin: SpinSwing}
	}
	if path.IsPoint() || p.Arm.IsZero() {
		f := Figure{Kind: StaticSpin, Spin: SpinStatic}
		if p.Prop.IsZero() {
			f.Kind = HeldStill
		}
		f.HasPetals = path.IsRound()
		return f
	}
	n := p.Prop.Div(p.Arm)
	f := Figure{HasRatio: true, Ratio: n}
	switch {
	case path.IsRound():
		f.round(leg)
	case path.IsLine():
		f.line(leg)
	default:
		f.Kind, f.Spin = EllipsePath, SpinEllipse
	}
	if n.IsZero() {
		f.Kind, f.Spin = Carried, SpinCarried
	}
	return f
}

// round names a slice with a circular hand path. With n = P/Q in lowest terms
// the head closes after Q arm turns with |P − Q| petals, whose tips are where
// ψ ≡ α: α = (nα₀ − ψ₀)/(n − 1).
func (f *Figure) round(leg *engine.Leg) {
	n := f.Ratio
	one := frac.Int(1)
	arm, prop := leg.StrokeStart()
	f.HasPetals = true
	switch {
	case n.Equal(one):
		f.Spin = SpinUnit
		f.Offset = engine.ToDegrees(prop - arm).Wrap()
		switch off := math.Abs(float64(f.Offset)); {
		case off <= engine.TolPhase:
			f.Kind = Extension
		case off >= 180-engine.TolPhase:
			f.Kind = Isolation
		default:
			f.Kind = UnitTurn
		}
		return
	case n.IsZero():
		return
	case n.IsInt():
		f.Kind = Flower
	default:
		f.Kind = Star
	}
	f.Spin = SpinIn
	if n.Sign() < 0 {
		f.Spin = SpinAnti
	}
	f.Petals = frac.FromBig(n.Num()).Sub(frac.FromBig(n.Den())).Abs()
	f.HasTip = true
	f.FirstTip = firstTip(n.Float(), f.Petals.Float(), arm, prop)
	if f.Petals.Equal(frac.Int(4)) {
		switch {
		case f.FirstTip <= engine.TolPhase:
			f.Mode = Diamond
		case math.Abs(float64(f.FirstTip)-45) <= engine.TolPhase:
			f.Mode = Box
		}
	}
}

func firstTip(n, petals, arm, prop float64) engine.Degrees {
	step := 360 / petals
	a := math.Mod(float64(engine.ToDegrees((float64(n*arm)-prop)/(n-1))), step)
	if a < 0 {
		a += step
	}
	if a <= engine.TolPhase || a >= step-engine.TolPhase {
		return 0
	}
	return engine.Degrees(a)
}

// line names a slice of a straight stroke by the prop's angle at its + end,
// where α = tilt.
func (f *Figure) line(leg *engine.Leg) {
	f.Spin, f.Kind = SpinLine, LinearOther
	if !f.Ratio.Abs().Equal(frac.Int(1)) {
		return
	}
	arm, prop := leg.StrokeStart()
	end := plusEnd(leg.Path())
	at := prop + float64(f.Ratio.Float()*(end.Radians()-arm))
	switch off := math.Abs(float64((engine.ToDegrees(at) - end).Wrap())); {
	case off <= engine.TolPhase:
		f.Kind = LinearExtension
	case off >= 180-engine.TolPhase:
		f.Kind = LinearIsolation
	default:
		f.Kind = LinearBetween
	}
}

// plusEnd returns the arm angle at the + end of a straight stroke, also of
// one written as an ellipse with A = 0.
func plusEnd(p engine.Path) engine.Degrees {
	if p.A == 0 {
		return p.Tilt + 90
	}
	return p.Tilt
}
