package engine

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
