package bench

import (
	"whorlbench/engine"
	"whorlbench/sandbox/session"
)

// start is where a piece begins in the first round.
type start struct{ arm, prop engine.Degrees }

// startOf returns where the piece in hand begins, wherever that is written.
func startOf(s *session.Session) start {
	at := s.Selected()
	return startIn(s.Tracks()[at.Lane], at.Piece)
}

func startIn(t *engine.Track, piece int) start {
	g := &t.Legs[piece]
	return start{session.Written(g.Arm0), session.Written(g.Prop0)}
}

// An angle is the arm's or the prop's: where it is written for a piece, and
// what it comes to at the piece's beginning.
type angle struct {
	own func(p *engine.Piece) *engine.Opt
	all func(l *engine.Lane) *engine.Degrees
	now func(start) engine.Degrees
}

var (
	armStart = angle{
		func(p *engine.Piece) *engine.Opt { return &p.ArmAt },
		func(l *engine.Lane) *engine.Degrees { return &l.ArmAt },
		func(s start) engine.Degrees { return s.arm },
	}
	propStart = angle{
		func(p *engine.Piece) *engine.Opt { return &p.PropAt },
		func(l *engine.Lane) *engine.Degrees { return &l.PropAt },
		func(s start) engine.Degrees { return s.prop },
	}
)

// written returns where the angle that a piece begins at is written: with the
// piece itself, with the last one before it that has a place of its own, or
// with the lane. What is written there is what turns them all.
func (a angle) written(l *engine.Lane, piece int) *engine.Degrees {
	for i := piece; i >= 0; i-- {
		if a.own(&l.Pieces[i]).Set {
			l.Pieces = append([]engine.Piece(nil), l.Pieces...)
			return &a.own(&l.Pieces[i]).At
		}
	}
	return a.all(l)
}

// beginAt lets a piece begin at an angle: what it carries on from is turned
// with it.
func beginAt(l *engine.Lane, at session.Select, a angle, want engine.Degrees) {
	now := a.now(startIn(engine.NewTrack(*l), at.Piece))
	w := a.written(l, at.Piece)
	if *w == now { // written here, to the letter
		*w = want
		return
	}
	*w = (*w + want - now).Wrap().Tidy()
}
