package engine

import (
	"math"
	"math/big"

	"whorlbench/engine/frac"
)

// Carry is how the prop goes on from round to round.
type Carry struct {
	PerRound frac.Frac // prop turns a round; 0 when pinned
	num, den int64     // PerRound modulo 1 as num/den where both are small, else 0/0
}

// NewCarry makes ready a prop that turns on by perRound turns each round.
func NewCarry(perRound frac.Frac) Carry {
	c := Carry{PerRound: perRound}
	if part := perRound.Mod1(); part.Den().BitLen() < 32 {
		c.num, c.den = part.Num().Int64(), part.Den().Int64()
	}
	return c
}

// TurnedBy returns how far the prop has turned (radians, reduced by whole
// turns) by the beginning of a round, beyond the start of round 0.
func (c Carry) TurnedBy(round int) float64 {
	if round == 0 {
		return 0
	}
	if c.den > 0 { // the same without big numbers, which allocate
		k := int64(round) % c.den * c.num % c.den
		if k < 0 {
			k += c.den
		}
		return float64(k) / float64(c.den) * turn
	}
	return c.PerRound.Mul(frac.Int(int64(round))).Mod1().Float() * turn
}

// Rounds returns after how many rounds the prop is back at its angle, most at
// the most.
func (c Carry) Rounds(most int) int {
	if c.den > 0 {
		return int(min(c.den, int64(most)))
	}
	return most
}

// Closing says when a lane's movement comes back to its start.
type Closing struct {
	// Rounds is the least number of rounds after which hand and prop are
	// back, 0 if they never are. It is big as a prop speed may have any
	// denominator.
	Rounds *big.Int
	// Beats is the time of that many rounds, 0 if never.
	Beats frac.Frac
	// HandGap is how far (m) the hand ends a round from where it began it.
	HandGap float64
}

// Closes reports whether the lane ever closes.
func (c Closing) Closes() bool { return c.Rounds.Sign() > 0 }

// Closing finds the least number of rounds in which the prop turns a whole
// number of turns; a lane whose hand does not come back never closes.
func (t *Track) Closing() Closing {
	first, last := &t.Legs[0], &t.Legs[len(t.Legs)-1]
	return t.Carry.Closing(first.Point(0).Hand, last.Point(1).Hand, t.starts[len(t.starts)-1])
}

// Closing finds the closing of a lane whose hand begins a round at one place
// (m) and ends it at another, after the given beats.
func (c Carry) Closing(begins, ends complex128, beats frac.Frac) Closing {
	gap := math.Hypot(real(ends-begins), imag(ends-begins))
	closing := Closing{Rounds: new(big.Int), HandGap: gap}
	if gap >= TolGap {
		return closing
	}
	closing.Rounds = c.PerRound.Den()
	closing.Beats = beats.Mul(frac.FromBig(closing.Rounds))
	return closing
}

// ClosingTime returns the least time in beats after which all tracks are back
// at their start together; ok is false if one never closes.
func ClosingTime(tracks ...*Track) (beats frac.Frac, ok bool) {
	for i, t := range tracks {
		c := t.Closing()
		if !c.Closes() {
			return frac.Frac{}, false
		}
		if i == 0 {
			beats = c.Beats
			continue
		}
		beats = frac.LCM(beats, c.Beats)
	}
	return beats, len(tracks) > 0
}
