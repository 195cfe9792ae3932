package mend

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// What a pattern file holds; a fix that leads beyond is not offered.
const (
	mostTurns  = 64        // turns a cycle, of arm and prop
	mostCycles = 1000      //
	mostBeats  = 10_000    //
	mostRadius = 5         // m
	mostCentre = 10        // m
	mostDen    = 1_000_000 // of a fraction
	mostPieces = 10_000    //
	mostAngle  = 36_000    // degrees
)

// fits reports whether a file could hold what fixes change in a lane.
func fits(l engine.Lane) bool {
	if len(l.Pieces) > mostPieces {
		return false
	}
	for _, p := range l.Pieces {
		if !exact(p.Arm, mostTurns) || !exact(p.Prop, mostTurns) || !exact(p.Cycles, mostCycles) || !exact(p.Beats, mostBeats) ||
			p.Cycles.Sign() <= 0 || p.Beats.Sign() <= 0 || cmplx.Abs(p.Path.Centre) > mostCentre || math.Abs(float64(p.Path.Tilt)) > mostAngle {
			return false
		}
		if long, short := math.Max(p.Path.A, p.Path.B), math.Min(p.Path.A, p.Path.B); long > mostRadius || short < 0 ||
			long == 0 && p.Path.Kind != engine.OnPoint {
			return false
		}
	}
	return true
}

// exact reports whether f can be written and is not above most in size. A
// long decimal that a person wrote stays.
func exact(f frac.Frac, most int64) bool {
	return !frac.Int(most).Less(f.Abs()) && (f.Den().Cmp(frac.Int(mostDen).Num()) <= 0 || f.IsDecimal(frac.MaxDecimals/2))
}

// Fixes that reckon an angle or a length round it to what a person could read;
// both are a thousandth of engine.TolGap on the largest path.
const (
	angleStep = 1e-8 // degrees
	placeStep = 1e-9 // m
)

// degrees returns radians as a tidy angle in [0°, 360°).
func degrees(rad float64) engine.Degrees {
	d := tidy(math.Mod(float64(engine.ToDegrees(rad)), 360), angleStep)
	if d < 0 {
		d += 360
	}
	if d >= 360 {
		d -= 360
	}
	return engine.Degrees(d)
}

// tidy rounds to a multiple of step, the reciprocal of a whole number. The
// quotient of two whole numbers is the decimal that a person would write.
func tidy(x, step float64) float64 { return math.Round(x/step)/math.Round(1/step) + 0 }

func tidyPlace(z complex128) complex128 {
	return complex(tidy(real(z), placeStep), tidy(imag(z), placeStep))
}

// times returns k·z.
func times(k float64, z complex128) complex128 {
	return complex(float64(k*real(z)), float64(k*imag(z)))
}
