package engine

import "math"

// Law says how the arm shares out its turn over the time of a stroke. The
// prop is always steady.
type Law uint8

// The arm laws, with f the share of the turn done at the share s of the time.
const (
	Even      Law = iota // f = s
	EaseStart            // f = 1 − cos(πs/2)
	EaseEnd              // f = sin(πs/2)
	EaseBoth             // f = (1 − cos πs)/2
)

// Share returns f(s) and its first and second derivatives, for s in [0, 1].
func (l Law) Share(s float64) (f, f1, f2 float64) {
	const h, p = math.Pi / 2, math.Pi
	switch l {
	case EaseStart:
		sin, cos := math.Sincos(h * s)
		return 1 - cos, h * sin, h * h * cos
	case EaseEnd:
		sin, cos := math.Sincos(h * s)
		return sin, h * cos, -h * h * sin
	case EaseBoth:
		sin, cos := math.Sincos(p * s)
		return (1 - cos) / 2, p / 2 * sin, p * p / 2 * cos
	}
	return s, 1, 0
}

// Reversed returns the law of the same movement run backwards:
// g(s) = 1 − f(1 − s).
func (l Law) Reversed() Law {
	switch l {
	case EaseStart:
		return EaseEnd
	case EaseEnd:
		return EaseStart
	}
	return l
}
