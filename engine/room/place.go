// Package room places what a lane draws in its plane in the room. It stands
// apart from package engine because its vectors bring a matrix library with
// them, which the program in the browser does not need.
package room

import (
	"gonum.org/v1/gonum/spatial/r3"

	"whorlbench/engine"
)

// Place returns where a place of the lane's plane lies in the room: X to the
// audience's right, Y up, Z toward the audience, from the middle between the
// performer's shoulders (m). The wall plane faces the audience; the wheel
// plane runs fore and aft, its x forward; the floor plane lies flat, its y
// away from the audience.
func Place(l engine.Lane, z complex128) r3.Vec {
	x, y := real(z), imag(z)
	switch l.Plane {
	case engine.Wheel:
		return r3.Vec{X: l.Offset, Y: y, Z: x}
	case engine.Floor:
		return r3.Vec{X: x, Y: l.Offset, Z: 0 - y}
	}
	return r3.Vec{X: x, Y: y, Z: l.Offset}
}
