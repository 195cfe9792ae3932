package mend

import (
	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// ease lets the hand come to rest at the seam on both sides, so that only the
// prop counts there, and gives the pieces beats in proportion to their prop
// turns. An ease at a piece's other end stays.
func (s *site) ease() []engine.Lane {
	if s.seam.Verdict != seam.Kink {
		return nil
	}
	l, ok := eased(s.lane, s.i)
	if !ok {
		return nil
	}
	a, b := l.Pieces[s.i], l.Pieces[s.next]
	share, ok := propShare(a, b)
	if !ok || s.alone() || shareOf(a, b).Equal(share) {
		return []engine.Lane{l}
	}
	return s.shared(a, b, share)
}

// eased returns the lane with the hand at rest at the seam after piece i; ok
// is false if it cannot be, or is already.
func eased(l engine.Lane, i int) (engine.Lane, bool) {
	l.Pieces = append([]engine.Piece(nil), l.Pieces...)
	a := &l.Pieces[i]
	was := *a
	okA := easeEnd(a)
	b := &l.Pieces[(i+1)%len(l.Pieces)]
	changed := !a.Equal(was)
	was = *b
	okB := easeStart(b)
	return l, okA && okB && (changed || !b.Equal(was))
}

func easeEnd(p *engine.Piece) bool {
	if rests(*p) {
		return true
	}
	*p = asWhole(*p)
	switch p.Law {
	case engine.Even:
		p.Law = engine.EaseEnd
	case engine.EaseStart:
		p.Law = engine.EaseBoth
	}
	return p.To.Equal(frac.Int(1))
}

func easeStart(p *engine.Piece) bool {
	if rests(*p) {
		return true
	}
	*p = asWhole(*p)
	switch p.Law {
	case engine.Even:
		p.Law = engine.EaseStart
	case engine.EaseEnd:
		p.Law = engine.EaseBoth
	}
	return p.From.IsZero()
}

// rests reports whether the hand does not move at all.
func rests(p engine.Piece) bool { return p.Arm.IsZero() || p.Path.IsPoint() }

// asWhole writes a part of an even spinning stroke as a stroke of its own, for
// an ease belongs to the ends of a stroke. Nothing moves.
func asWhole(p engine.Piece) engine.Piece {
	if p.Steady() && !p.IsWhole() {
		p.Cycles, p.Beats = p.Cycles.Mul(p.Kept()), p.Length()
		p.From, p.To = frac.Frac{}, frac.Int(1)
	}
	return p
}
