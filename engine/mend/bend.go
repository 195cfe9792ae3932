package mend

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// How finely curves are held against each other: points for each turn of arm
// and prop together, and how many at most; and over how many rounds, where
// rounds differ.
const (
	bendPoints = 32
	bendMost   = 512
	bendRounds = 8
	closely    = 12 // golden sections: 0.3 % of a step between points
)

// bend returns the greatest distance in metres by which the head's curve of an
// eased piece leaves the same piece's curve before: of the new curve's points
// from the old curve, not the other way round.
func bend(was, now *engine.Track) float64 {
	if len(was.Legs) != len(now.Legs) {
		return 0
	}
	worst := 0.0
	rounds := min(seam.Rounds(now), bendRounds)
	var c curves
	for i := range was.Legs {
		if was.Legs[i].Piece.Law == now.Legs[i].Piece.Law {
			continue
		}
		p := now.Legs[i].Piece
		turns := math.Abs(p.Arm.Mul(p.Cycles).Float()) + math.Abs(p.Prop.Mul(p.Cycles).Float())
		n := int(min(bendPoints*(1+turns), bendMost))
		for r := range rounds {
			c.set(was, now, r, i, n)
			worst = c.farthest(worst)
		}
	}
	return worst
}

// curves are the head's curves of one piece in one round without and with a
// fix, the former also as n + 1 places.
type curves struct {
	was, now     *engine.Track
	round, piece int
	n            int
	old          []complex128
	off          []float64 // of n + 1 new places, each from the nearest old one
}

func (c *curves) set(was, now *engine.Track, round, piece, n int) {
	c.was, c.now, c.round, c.piece, c.n = was, now, round, piece, n
	c.old, c.off = c.old[:0], c.off[:0]
	for k := range n + 1 {
		c.old = append(c.old, was.PointAt(round, piece, c.share(k)).Head)
	}
	for k := range n + 1 {
		_, off := c.nearest(now.PointAt(round, piece, c.share(k)).Head)
		c.off = append(c.off, off)
	}
}

func (c *curves) share(k int) float64 { return max(0, min(1, float64(k)/float64(c.n))) }

// nearest returns the old place nearest to one, and how far it is.
func (c *curves) nearest(place complex128) (k int, off float64) {
	best := math.Inf(1)
	for i, h := range c.old {
		x, y := real(h)-real(place), imag(h)-imag(place)
		if q := float64(x*x) + float64(y*y); q < best {
			best, k = q, i
		}
	}
	return k, math.Sqrt(best)
}

// farthest returns the greatest distance of the new curve from the old one, roughly first, then more closely where it is
// greatest. There two branches of the old curve may be equally near, so that
// the greatest is a sharp one.
func (c *curves) farthest(most float64) float64 {
	at := -1
	for {
		// Between its places the old curve is nearer than they are.
		far := 0
		for k, off := range c.off {
			if off > c.off[far] {
				far = k
			}
		}
		if c.off[far] <= most {
			break
		}
		c.off[far] = 0
		if d := c.distance(c.share(far)); d > most {
			most, at = d, far
		}
	}
	if at < 0 {
		return most
	}
	less := func(u float64) float64 { return -c.distance(u) }
	return math.Max(most, c.distance(least(less, c.share(at-1), c.share(at+1), closely)))
}

// distance returns how far the new curve at the share u lies from the old one.
func (c *curves) distance(u float64) float64 {
	place := c.now.PointAt(c.round, c.piece, u).Head
	near, _ := c.nearest(place)
	off := func(u float64) float64 { return cmplx.Abs(c.was.PointAt(c.round, c.piece, u).Head - place) }
	return off(least(off, c.share(near-1), c.share(near+1), closely))
}
