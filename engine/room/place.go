// Package room gives places in the room as vectors of a matrix library, which
// the program in the browser does not need and is spared.
package room

import (
	"gonum.org/v1/gonum/spatial/r3"

	"whorlbench/engine"
)

// Place returns the lane's InRoom as a vector.
func Place(l engine.Lane, z complex128) r3.Vec {
	x, y, zz := l.InRoom(z)
	return r3.Vec{X: x, Y: y, Z: zz}
}
