package tether

import (
	"math"

	"whorlbench/engine"
)

// How finely a movement is looked at.
const (
	// perTurn moments a turn of arm and prop together: everything that is
	// looked for is made of waves no shorter than such a turn (for h*, see
	// turnsQuickly), so that between two of them a wave rises above both
	// by at most (2π/perTurn)²/8 = 0.5 % of its height.
	perTurn = 32
	// fewest moments a stretch: of a part of a wave whose top lies within,
	// the rise between two is at most 1/256 of the difference seen.
	fewest = 16
	// rise (share of the difference between the greatest and the least value
	// seen) is more than either.
	rise = 0.01
	// stretchTurns is how much is looked at in one go.
	stretchTurns = 8
	// mostTurns of a piece are looked at, from its beginning. All of an
	// elementary pattern is in that many turns of arm and prop, unless its
	// ratio has a numerator and a denominator of hundreds.
	mostTurns = 1000
)

// turns bounds how many turns arm and prop make together over a leg's kept
// time, at the fastest that they go.
func turns(g *engine.Leg) float64 {
	p := g.Piece
	kept := p.Kept().Float() * p.Cycles.Float()
	prop := math.Abs(p.Prop.Float()) * kept
	if p.Swing != 0 {
		prop *= 1 + p.Swing.Radians()
	}
	if p.Path.IsPoint() {
		return prop
	}
	arm := math.Abs(p.Arm.Float()) * kept
	if p.Law != engine.Even {
		arm = float64(arm*math.Pi/2) + 1 // the laws' greatest slope, and their own wave
	}
	return arm + prop
}

// A measure reads a figure off a moment.
type measure func(m *moment) float64

// stretch is a part of a piece made ready to be looked at in any round.
type stretch struct {
	leg    *engine.Leg
	shares []float64 // of the piece's kept time, rising
	base   []moment  // in round 0
	values []float64 // of the measure that was read last
}

// set makes the part [from, to] of a leg's kept time ready, in which arm and
// prop make the given turns.
func (s *stretch) set(leg *engine.Leg, from, to, turns float64) {
	n := max(int(math.Ceil(turns*perTurn)), fewest)
	s.leg = leg
	s.shares, s.base, s.values = s.shares[:0], s.base[:0], s.values[:0]
	for k := range n + 1 {
		u := from + float64((to-from)*float64(k)/float64(n))
		if k == n {
			u = to
		}
		s.shares = append(s.shares, u)
		s.base = append(s.base, momentOf(leg.State(u)))
		s.values = append(s.values, 0)
	}
}

// at returns the moment at a share of the kept time, in the round before which
// the prop has turned by a unit number's angle.
func (s *stretch) at(u float64, by complex128) moment {
	m := momentOf(s.leg.State(u))
	return m.turned(by)
}

// read fills in a measure's values in a round and returns the least and the
// greatest.
func (s *stretch) read(f measure, by complex128) (least, greatest float64) {
	least, greatest = math.Inf(1), math.Inf(-1)
	for k := range s.base {
		m := s.base[k].turned(by)
		v := f(&m)
		s.values[k] = v
		least, greatest = min(least, v), max(greatest, v)
	}
	return least, greatest
}

// top returns the greatest value of a measure in a round and the share at
// which it is reached, the earliest of equal ones; ok is false where it is not
// above a floor.
func (s *stretch) top(f measure, by complex128, floor float64) (u, value float64, ok bool) {
	least, greatest := s.read(f, by)
	above := float64(rise * (greatest - least))
	if greatest+above <= floor {
		return 0, 0, false
	}
	value = floor
	for k, v := range s.values {
		if v > value+tie(value) {
			u, value, ok = s.shares[k], v, true
		}
	}
	if above <= steady*(math.Abs(least)+math.Abs(greatest)) {
		return u, value, ok
	}
	same := tie(value)
	for k, v := range s.values {
		if v+above <= value || !s.peak(k) {
			continue
		}
		x, y := s.refine(f, by, k)
		if y > value+same || y > value && (!ok || x < u) {
			u, value, ok = x, y, true
		}
	}
	return u, value, ok
}

// steady (share of the values): what changes by less than rounding does not
// change.
const steady = 1e-13

// tie is how much greater a value must be to be greater.
func tie(x float64) float64 { return float64(1e-12 * (1 + math.Abs(x))) }

// peak reports whether the values next to the k-th are not above it.
func (s *stretch) peak(k int) bool {
	return (k == 0 || s.values[k-1] < s.values[k]) && (k+1 == len(s.values) || s.values[k+1] <= s.values[k])
}

// refine finds the greatest value between the neighbours of the k-th moment.
func (s *stretch) refine(f measure, by complex128, k int) (u, value float64) {
	a, b := s.shares[max(k-1, 0)], s.shares[min(k+1, len(s.shares)-1)]
	u, value = golden(func(u float64) float64 {
		m := s.at(u, by)
		return f(&m)
	}, a, b)
	if value <= s.values[k] {
		return s.shares[k], s.values[k]
	}
	return u, value
}

// golden returns the greatest value of a function with one top between a and
// b, by golden section: forty steps leave 4·10⁻⁹ of the way, and of the
// value's height the square of that.
func golden(f func(float64) float64, a, b float64) (x, y float64) {
	const section = 0.6180339887498949 // (√5 − 1)/2
	c, d := b-float64(section*(b-a)), a+float64(section*(b-a))
	fc, fd := f(c), f(d)
	for range 40 {
		if fc >= fd {
			b, d, fd = d, c, fc
			c = b - float64(section*(b-a))
			fc = f(c)
		} else {
			a, c, fc = c, d, fd
			d = a + float64(section*(b-a))
			fd = f(d)
		}
	}
	if fc >= fd {
		return c, fc
	}
	return d, fd
}
