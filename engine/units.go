package engine

import "math"

// Degrees is an angle as a person writes it.
type Degrees float64

// Radians returns d in radians.
func (d Degrees) Radians() float64 { return float64(float64(d) * (math.Pi / 180)) }

// ToDegrees turns radians into degrees.
func ToDegrees(rad float64) Degrees { return Degrees(rad * (180 / math.Pi)) }

// degreeDust is the step to which an edit rounds angles it has added or
// subtracted, so that doing it twice gives back the decimal that a person
// wrote: 180 − (180 − 0.1) = 0.1. At 2 m it moves nothing by more than 1e-11 m.
const degreeDust = 1e-10

// Tidy rounds to whole multiples of 1e-10° and turns −0 into 0.
func (d Degrees) Tidy() Degrees {
	return Degrees(math.Round(float64(d)/degreeDust)/(1/degreeDust)) + 0
}

// Wrap returns d reduced to (−180, 180].
func (d Degrees) Wrap() Degrees {
	x := math.Mod(float64(d), 360)
	if x > 180 {
		x -= 360
	} else if x <= -180 {
		x += 360
	}
	return Degrees(x)
}

// Opt is a start angle that may be absent; the zero value is absent.
type Opt struct {
	Set bool
	At  Degrees
}

// Some returns an angle that is present.
func Some(d Degrees) Opt { return Opt{Set: true, At: d} }
