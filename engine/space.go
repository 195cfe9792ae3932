package engine

// InRoom returns where a place of the lane's plane lies in the room: X to the
// audience's right, Y up, Z toward the audience, from the middle between the
// performer's shoulders (m). The wall plane faces the audience; the wheel
// plane runs fore and aft, its x forward; the floor plane lies flat, its y
// away from the audience.
func (l Lane) InRoom(z complex128) (X, Y, Z float64) {
	x, y := real(z), imag(z)
	switch l.Plane {
	case Wheel:
		return l.Offset, y, x
	case Floor:
		return x, l.Offset, 0 - y
	}
	return x, y, l.Offset
}
