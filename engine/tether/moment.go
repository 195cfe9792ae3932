package tether

import (
	"math"

	"whorlbench/engine"
)

// moment is what the tether's figures need of a state, in plane coordinates
// and per beat: the hand's part and the tether's part of the head's movement.
// From round to round the tether's part turns by one angle and the hand's
// stays, so that one evaluation serves all rounds.
type moment struct {
	hand, handVel, handAcc complex128
	out, outVel, outAcc    complex128 // hand to head
}

func momentOf(st engine.State) moment {
	return moment{
		st.Hand, st.HandVel, st.HandAcc,
		st.Head - st.Hand, st.HeadVel - st.HandVel, st.HeadAcc - st.HandAcc,
	}
}

// turned returns the moment with the prop turned on by the angle of a unit
// number.
func (m *moment) turned(by complex128) moment {
	return moment{
		m.hand, m.handVel, m.handAcc,
		engine.Product(by, m.out), engine.Product(by, m.outVel), engine.Product(by, m.outAcc),
	}
}

func (m *moment) head() complex128 { return m.hand + m.out }

// prop returns the angle of the tether in degrees.
func (m *moment) prop() engine.Degrees {
	return engine.ToDegrees(math.Atan2(imag(m.out), real(m.out)))
}

func dot(a, b complex128) float64 {
	return float64(real(a)*real(b)) + float64(imag(a)*imag(b))
}

// gauge reads a lane's moments.
type gauge struct {
	length  float64 // of the tether, m
	down    complex128
	gravity Vec
	wheel   bool
	offset  float64 // along the plane's normal, m
}

func newGauge(l engine.Lane) gauge {
	return gauge{l.Tether, l.Down(), gravity(l), l.Plane == engine.Wheel, l.Offset}
}

// byMotion returns the part of the pull that grows with the square of the
// tempo: A = z″·(h − z)/(Lg) at one beat a second, in multiples of the head's
// weight.
func (g *gauge) byMotion(m *moment) float64 {
	return -dot(m.handAcc+m.outAcc, m.out) / (g.length * engine.Gravity)
}

// byWeight returns the part of the pull that is there at any tempo:
// B = −g·(h − z)/(Lg).
func (g *gauge) byWeight(m *moment) float64 {
	return dot(g.down, m.out) / (g.length * engine.Gravity)
}

// pull returns what the tether would carry at a squared tempo in (beats a
// second)².
func (g *gauge) pull(m *moment, square float64) float64 {
	return float64(square*g.byMotion(m)) + g.byWeight(m)
}

// size bounds how large the parts are that byMotion is the sum of.
func (g *gauge) size(m *moment) float64 {
	return (abs(m.handAcc) + abs(m.outAcc)) / engine.Gravity
}

// speed returns the head's speed in m a beat.
func (g *gauge) speed(m *moment) float64 { return abs(m.handVel + m.outVel) }

// reach returns how far the head is from where the performer stands (m): in
// the wall plane from the body's middle in that plane, in the two others
// √(X² + Z²).
func (g *gauge) reach(m *moment) float64 {
	z := m.head()
	if g.wheel {
		z = complex(real(z), g.offset) // height keeps nobody away
	}
	return abs(z)
}

func abs(z complex128) float64 { return math.Hypot(real(z), imag(z)) }
