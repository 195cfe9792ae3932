// Package step says in bare terms what hand and prop do in a piece: from which
// side to which, which way round, how far, how many turns. It speaks of the
// piece's own plane, in kinds and numbers; the words for them stand in package
// words.
package step

import (
	"math"

	"whorlbench/engine"
)

// Toward is one of eight directions of a plane, each 45° wide.
type Toward uint8

// The directions, anticlockwise from +x.
const (
	East Toward = iota
	NorthEast
	North
	NorthWest
	West
	SouthWest
	South
	SouthEast
)

// TowardOf returns the direction that an angle in radians is nearest to; half
// way between two it is the next one anticlockwise.
func TowardOf(rad float64) Toward {
	// edge (degrees) keeps a direction just half way, but for rounding, on its side.
	const edge = 1e-6
	d := float64(engine.ToDegrees(math.Remainder(rad, 2*math.Pi))) + edge
	return Toward(int(math.Floor(d/45+0.5)+8) % 8)
}

// Mirrored returns the direction with x reversed.
func (d Toward) Mirrored() Toward { return (12 - d) % 8 }

// Way is which way round something turns.
type Way int8

// The ways round. No way: it does not turn.
const (
	Clockwise     Way = -1
	NoWay         Way = 0
	Anticlockwise Way = 1
)

// Mirrored returns the way with x reversed.
func (w Way) Mirrored() Way { return -w }
