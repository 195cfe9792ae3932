package engine

import (
	"math"
	"math/cmplx"
)

// PathKind is the form of a hand path.
type PathKind uint8

// The kinds of hand path. A line and a point are ellipses with one or both
// axes zero; the kind keeps what the person meant.
const (
	OnCircle PathKind = iota
	OnLine
	OnEllipse
	OnPoint
)

// Path is where a hand goes: the ellipse with semi-axes A and B (m, A, B ≥ 0)
// about Centre, its A axis turned by Tilt.
//
// A circle has A = B, a line B = 0, a point A = B = 0. The arm angle α
// includes the tilt: h = c + e^{iδ}(A cos(α−δ) + i B sin(α−δ)), so on a
// circle h = c + A e^{iα} whatever the tilt.
type Path struct {
	Kind   PathKind
	Centre complex128
	A, B   float64
	Tilt   Degrees
}

// CirclePath returns the circle of radius r (m) about c.
func CirclePath(c complex128, r float64) Path { return Path{OnCircle, c, r, r, 0} }

// LinePath returns the straight stroke of half length r (m) about c whose
// + end lies in the direction tilt.
func LinePath(c complex128, r float64, tilt Degrees) Path { return Path{OnLine, c, r, 0, tilt} }

// EllipsePath returns the ellipse with semi-axes a along tilt and b across it.
func EllipsePath(c complex128, a, b float64, tilt Degrees) Path {
	return Path{OnEllipse, c, a, b, tilt}
}

// PointPath returns the path of a hand that stays at c.
func PointPath(c complex128) Path { return Path{OnPoint, c, 0, 0, 0} }

// IsPoint reports whether the hand stays put.
func (p Path) IsPoint() bool { return p.A == 0 && p.B == 0 }

// IsRound reports whether the path is a circle of more than no size, however
// it was written.
func (p Path) IsRound() bool { return p.A > 0 && p.B > 0 && math.Abs(p.A-p.B) < TolRound }

// IsLine reports whether the path is a straight stroke, however it was written.
func (p Path) IsLine() bool { return (p.A == 0) != (p.B == 0) }

// Same reports whether p and q are the same set of places, within TolPath.
func (p Path) Same(q Path) bool {
	if cmplx.Abs(p.Centre-q.Centre) >= TolPath {
		return false
	}
	pa, pb, pt := p.axes()
	qa, qb, qt := q.axes()
	if math.Abs(pa-qa) >= TolPath || math.Abs(pb-qb) >= TolPath {
		return false
	}
	if pa-pb < TolPath {
		return true
	}
	// The far ends of the long axis must agree, whichever end is called +.
	turn := math.Abs(math.Sin((pt - qt).Radians()))
	return pa*turn < TolPath
}

// axes returns the semi-axes, the longer first, with the longer one's tilt.
func (p Path) axes() (long, short float64, tilt Degrees) {
	if p.B > p.A {
		return p.B, p.A, p.Tilt + 90
	}
	return p.A, p.B, p.Tilt
}
