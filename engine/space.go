package engine

import "gonum.org/v1/gonum/spatial/r3"

// World returns where a place of the lane's plane lies in the room: X to the
// audience's right, Y up, Z toward the audience, from the middle between the
// performer's shoulders (m). The wall plane faces the audience; the wheel
// plane runs fore and aft, its x forward; the floor plane lies flat, its y
// away from the audience.
func (l Lane) World(z complex128) r3.Vec {
	x, y := real(z), imag(z)
	switch l.Plane {
	case Wheel:
		return r3.Vec{X: l.Offset, Y: y, Z: x}
	case Floor:
		return r3.Vec{X: x, Y: l.Offset, Z: 0 - y}
	}
	return r3.Vec{X: x, Y: y, Z: l.Offset}
}

// Down returns standard gravity (m/s²) as far as it acts within the lane's
// plane: the floor plane feels none of it. 9.80665 m/s² is exact (3rd CGPM,
// 1901, resolution 2).
func (l Lane) Down() complex128 {
	if l.Plane == Floor {
		return 0
	}
	return complex(0, -Gravity)
}

// Gravity is standard gravity in m/s².
const Gravity = 9.80665
