package capture

import (
	"math/big"

	"whorlbench/engine/frac"
)

// Timeline is the frames of a loop. Frame k shows the beat k/N of the way, so
// that none is shown twice and the one after the last would be the first. Where
// the time is no whole number of frames, the nearest number of them is spread
// evenly over it: the tempo is kept, not the frames a second.
type Timeline struct {
	N       int
	Beats   frac.Frac // of the whole loop
	Seconds frac.Frac // that it lasts
}

// frames returns the whole number of frames nearest to a rate, one at least.
func frames(seconds, rate frac.Frac) *big.Int {
	n := seconds.Mul(rate).Round(frac.Int(1)).Num()
	if n.Sign() < 1 {
		n.SetInt64(1)
	}
	return n
}

// Beat returns what frame k shows, in beats from the start.
func (l Timeline) Beat(k int) float64 {
	return l.Beats.Mul(frac.New(int64(k), int64(l.N))).Float()
}

// Rate returns the frames a second, exactly.
func (l Timeline) Rate() frac.Frac { return frac.Int(int64(l.N)).Div(l.Seconds) }

// Clock counts a loop's time in whole ticks.
type Clock struct{ ticks, n int64 }

// Clock returns the loop's time in so many ticks a second; in all they are as
// many as whole ticks can be to its time.
func (l Timeline) Clock(perSecond int64) Clock {
	return Clock{l.Seconds.Mul(frac.Int(perSecond)).Round(frac.Int(1)).Num().Int64(), int64(l.N)}
}

// Delay returns how many ticks frame k lasts. The delays differ by one at
// most, and add up to the whole.
func (c Clock) Delay(k int) int { return int(c.At(int64(k)+1) - c.At(int64(k))) }

// At returns how many ticks there are before frame k.
func (c Clock) At(k int64) int64 { return (2*c.ticks*k + c.n) / (2 * c.n) }
