package engine

import (
	"math"
	"math/cmplx"
	"slices"
)

// WithLane returns p with lane i replaced, in a slice of its own.
func (p Pattern) WithLane(i int, l Lane) Pattern {
	p.Lanes = slices.Clone(p.Lanes)
	p.Lanes[i] = l
	return p
}

// mapAngles returns l with every start angle and path changed.
func (l Lane) mapAngles(angle func(Degrees) Degrees, path func(Path) Path) Lane {
	l.ArmAt, l.PropAt = angle(l.ArmAt), angle(l.PropAt)
	l.Pieces = slices.Clone(l.Pieces)
	for i := range l.Pieces {
		p := &l.Pieces[i]
		p.Path = path(p.Path)
		if p.ArmAt.Set {
			p.ArmAt.At = angle(p.ArmAt.At)
		}
		if p.PropAt.Set {
			p.PropAt.At = angle(p.PropAt.At)
		}
	}
	return l
}

// Mirror returns the pattern as its reflection left to right: the hands
// change sides, x → −x in the wall and floor planes, angles α → 180° − α,
// speeds change sign. In the wheel plane x runs fore and aft, so there only
// the offset changes sign. A pendulum starts from its other end.
func (p Pattern) Mirror() Pattern {
	p.Lanes = slices.Clone(p.Lanes)
	for i, l := range p.Lanes {
		p.Lanes[i] = l.mirror()
	}
	return p
}

func (l Lane) mirror() Lane {
	l.Side = l.Side.Other()
	if l.Plane == Wheel {
		l.Offset = negate(l.Offset)
		return l
	}
	l.Centre = complex(negate(real(l.Centre)), imag(l.Centre))
	l = l.mapAngles(
		func(d Degrees) Degrees { return (180 - d).Tidy() },
		func(h Path) Path {
			h.Centre = complex(negate(real(h.Centre)), imag(h.Centre))
			h.Tilt = Degrees(negate(float64(h.Tilt))) // the tilt counts modulo 180°
			return h
		})
	for i := range l.Pieces {
		p := &l.Pieces[i]
		p.Arm, p.Prop = p.Arm.Neg(), p.Prop.Neg()
		if p.Swing != 0 {
			p.SwingBack = !p.SwingBack
		}
	}
	return l
}

func negate(x float64) float64 { return 0 - x }

// Turn returns the pattern turned by d about its origin: diamond mode
// becomes box mode by 45°. Pendulums hang down as before.
func (p Pattern) Turn(d Degrees) Pattern {
	spin := cmplx.Rect(1, d.Radians())
	p.Lanes = slices.Clone(p.Lanes)
	for i, l := range p.Lanes {
		l.Centre = TidyPlace(Product(l.Centre, spin))
		p.Lanes[i] = l.mapAngles(
			func(a Degrees) Degrees { return (a + d).Tidy() },
			func(h Path) Path {
				h.Centre = TidyPlace(Product(h.Centre, spin))
				if h.A != h.B { // the tilt of a circle or a point shows nowhere
					h.Tilt = (h.Tilt + d).Tidy()
				}
				return h
			})
	}
	return p
}

// Scale returns the pattern with hand paths and tethers k times as large,
// k > 0. The performer's body stays.
func (p Pattern) Scale(k float64) Pattern {
	p.Performer.Tether *= k
	p.Lanes = slices.Clone(p.Lanes)
	for i, l := range p.Lanes {
		l.Tether *= k
		l.Centre = scale(k, l.Centre)
		p.Lanes[i] = l.mapAngles(
			func(a Degrees) Degrees { return a },
			func(h Path) Path {
				h.Centre = scale(k, h.Centre)
				h.A, h.B = h.A*k, h.B*k
				return h
			})
	}
	return p
}

// placeDust (m) plays degreeDust's part for places.
const placeDust = 1e-12

// TidyPlace rounds a place to whole multiples of 1e-12 m. It divides by 1/placeDust rather than multiply by placeDust, as only
// the quotient of two whole numbers is the decimal that a person would write.
func TidyPlace(z complex128) complex128 {
	tidy := func(x float64) float64 { return math.Round(x/placeDust)/(1/placeDust) + 0 }
	return complex(tidy(real(z)), tidy(imag(z)))
}
