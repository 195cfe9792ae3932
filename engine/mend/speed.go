package mend

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// across returns the parts across the tether, in m a beat, of the hand's
// velocities before and after the seam.
func (s *site) across() (before, after float64) {
	frame := cmplx.Rect(1, -s.before.Prop)
	return imag(engine.Product(s.before.HandVel, frame)), imag(engine.Product(s.after.HandVel, frame))
}

// joined reports whether nothing jumps at the seam but the velocity, and both
// props spin.
func (s *site) joined() bool {
	a, b := s.pieces()
	return s.seam.Verdict > seam.Gap && !s.alone() && a.Swing == 0 && b.Swing == 0
}

// propNext gives the next piece the whole ratio, or the hand at rest the prop
// speed, with which the head goes on without a jump across: after in-spin n at
// a petal tip where the hand turns back, antispin −m with m = n + 2R/L.
func (s *site) propNext() []engine.Lane {
	if !s.joined() {
		return nil
	}
	_, b := s.pieces()
	before, after := s.across()
	rate := s.before.PropRate + (before-after)/s.lane.Tether
	prop, ok := speedFor(b, rate)
	if !ok {
		return nil
	}
	b.Prop = prop
	return []engine.Lane{s.with(s.next, b)}
}

// propBefore does the same to the piece before, if its prop then ends at the
// same angle.
func (s *site) propBefore() []engine.Lane {
	if !s.joined() {
		return nil
	}
	a, _ := s.pieces()
	before, after := s.across()
	was := a.PropTurns()
	rate := s.after.PropRate + (after-before)/s.lane.Tether
	prop, ok := speedFor(a, rate)
	if !ok {
		return nil
	}
	a.Prop = prop
	if !a.PropTurns().Sub(was).IsInt() {
		return nil
	}
	return []engine.Lane{s.with(s.i, a)}
}

// speedFor returns the prop speed in turns a cycle for a rate in radians a
// beat: the nearest whole ratio, or the simplest fraction where the hand rests.
func speedFor(p engine.Piece, rate float64) (frac.Frac, bool) {
	const dens, near = 12, 1e-6 // of a resting hand's prop speed
	turns := rate / (2 * math.Pi) * p.Beats.Float() / p.Cycles.Float()
	if math.Abs(turns) > mostTurns {
		return frac.Frac{}, false
	}
	if rests(p) {
		return frac.Near(turns, near, dens), true
	}
	ratio := math.Round(turns / p.Arm.Float())
	if math.Abs(ratio) > mostTurns*mostTurns {
		return frac.Frac{}, false
	}
	return p.Arm.Mul(frac.Int(int64(ratio))), true
}

// radius gives the circle the size with which the head goes on without a jump
// across: R = (m − n)L/2 for in-spin n into antispin −m. Where the pieces on
// both sides share it, every piece on it goes with them, about its centre;
// else the next piece's circle alone, about the hand.
func (s *site) radius() []engine.Lane {
	a, b := s.pieces()
	path := s.track.Legs[s.next].Path()
	if !s.joined() || !path.IsRound() {
		return nil
	}
	before, after := s.across()
	prop := float64(s.lane.Tether * (s.after.PropRate - s.before.PropRate))
	if a.Path.Same(b.Path) {
		k := -prop / (after - before)
		if !s.sizable(k, path.A) {
			return nil
		}
		l := s.lane
		l.Pieces = append([]engine.Piece(nil), l.Pieces...)
		for i, p := range l.Pieces {
			if p.Path.Same(b.Path) {
				l.Pieces[i] = resized(p, k)
			}
		}
		return []engine.Lane{l}
	}
	k := (before - prop) / after
	if !s.sizable(k, path.A) {
		return nil
	}
	c := resized(b, k)
	c.Path.Centre = tidyPlace(c.Path.Centre + times(1-k, s.after.Hand-path.Centre))
	return []engine.Lane{s.with(s.next, c)}
}

// sizable reports whether a path of radius r may become k times as large: not
// larger than the arm reaches, unless it was larger still. A k that is no
// number may not.
func (s *site) sizable(k, r float64) bool {
	return k*r >= leastRadius && (k <= 1 || k*r <= s.who.Reach)
}

// flipProp turns the next piece's prop the other way.
func (s *site) flipProp() []engine.Lane {
	if s.seam.Verdict != seam.Stop {
		return nil
	}
	_, b := s.pieces()
	b.Prop = b.Prop.Neg()
	return []engine.Lane{s.with(s.next, b)}
}
