package tether

import (
	"math"

	"whorlbench/engine"
)

// Vec is a place or a direction in the coordinates of a lane's plane: X and Y
// in the plane, N along its normal, which in the floor plane points up (m).
type Vec struct{ X, Y, N float64 }

// flat returns a place in the plane as a vector.
func flat(z complex128) Vec { return Vec{X: real(z), Y: imag(z)} }

// gravity returns standard gravity (m/s²) in the coordinates of a lane's plane.
func gravity(l engine.Lane) Vec {
	if l.Plane == engine.Floor {
		return Vec{N: -engine.Gravity}
	}
	return flat(l.Down())
}

func (a Vec) add(b Vec) Vec { return Vec{a.X + b.X, a.Y + b.Y, a.N + b.N} }
func (a Vec) sub(b Vec) Vec { return Vec{a.X - b.X, a.Y - b.Y, a.N - b.N} }

func (a Vec) scale(k float64) Vec {
	return Vec{float64(k * a.X), float64(k * a.Y), float64(k * a.N)}
}

func (a Vec) dot(b Vec) float64 {
	return float64(a.X*b.X) + float64(a.Y*b.Y) + float64(a.N*b.N)
}

func (a Vec) cross(b Vec) Vec {
	return Vec{
		float64(a.Y*b.N) - float64(a.N*b.Y),
		float64(a.N*b.X) - float64(a.X*b.N),
		float64(a.X*b.Y) - float64(a.Y*b.X),
	}
}

func (a Vec) norm() float64 { return math.Sqrt(a.dot(a)) }

// across returns the part of a that is square to the unit vector n.
func (a Vec) across(n Vec) Vec { return a.sub(n.scale(a.dot(n))) }

// rotation is the least rotation that takes one unit vector to another.
type rotation struct{ from, to Vec }

// of returns v rotated. With c = from·to and k = from × to it is
// cv + k × v + k(k·v)/(1 + c), Rodrigues' formula without an angle; a half
// turn is one about the plane's normal.
func (s rotation) of(v Vec) Vec {
	c := s.from.dot(s.to)
	if 1+c < opposite {
		return Vec{-v.X, -v.Y, v.N}
	}
	k := s.from.cross(s.to)
	return v.scale(c).add(k.cross(v)).add(k.scale(k.dot(v) / (1 + c)))
}

// opposite: below this 1 + cos of the angle between them, 1e-6 short of a half
// turn, two directions do not say about which axis to turn.
const opposite = 1e-12
