package session

import (
	"errors"
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// Edits of the strip: hands, pieces put elsewhere, the pattern as a whole.
const (
	DidAddHand What = iota + firstStripEdit
	DidTakeHand
	DidCutOut
	DidPaste
	DidPlace
	DidCarryOn
	DidMirror
	DidTurn
	DidInsert
)

// firstStripEdit keeps these apart from the edits that Session counts.
const firstStripEdit = 100

// StripEdit returns which of the strip's edits w is, from 0; ok is false if it
// is another.
func (w What) StripEdit() (i int, ok bool) {
	return int(w) - firstStripEdit, w >= firstStripEdit && w < firstShownEdit
}

// Timing is how a second hand goes with the first: props and hands alike.
type Timing uint8

// The timings. Same direction: the second angle less the first is 0°, 180° or
// 90°. Opposite, one being the mirror image of the other: 180° less both
// angles is 0° or 180°.
const (
	TogetherSame Timing = iota
	SplitSame
	QuarterSame
	TogetherOpposite
	SplitOpposite
	timings
)

// Timings is how many there are.
const Timings = int(timings)

// ErrOneHand says that a pattern keeps one hand at least.
var ErrOneHand = errors.New("a pattern keeps one hand at least")

// SecondHand returns the lane of the other hand that goes with l at a timing:
// a copy or a mirror image, turned about the lane's own middle.
func SecondHand(l engine.Lane, t Timing) engine.Lane {
	out := one(l, func(p engine.Pattern) engine.Pattern {
		if t == TogetherOpposite || t == SplitOpposite {
			p = p.Mirror()
		}
		switch t {
		case SplitSame, SplitOpposite:
			p = p.Turn(180)
		case QuarterSame:
			// The left angle less the right one is to be 90°.
			if l.Side == engine.Left {
				return p.Turn(-90)
			}
			p = p.Turn(90)
		}
		return p
	})
	out.Side, out.Plane = l.Side.Other(), l.Plane
	out.Offset, out.Centre = l.Offset, l.Centre
	if l.Plane == engine.Wheel { // a plane beside each shoulder
		out.Offset = 0 - l.Offset
	} else { // a hand that spins at its own side has the other at the other
		out.Centre = complex(0-real(l.Centre), imag(l.Centre))
	}
	return out
}

// one changes a lane as the only one of a pattern, within its plane and about
// its own middle.
func one(l engine.Lane, change func(engine.Pattern) engine.Pattern) engine.Lane {
	l.Plane, l.Centre, l.Offset = engine.Wall, 0, 0
	return change(engine.Pattern{Lanes: []engine.Lane{l}}).Lanes[0]
}

// MakeHand gives the hand that is not the lane's the lane's movement at a
// timing, in the place of what it did before if it did anything.
func (s *Session) MakeHand(lane int, t Timing) error {
	if lane < 0 || lane >= len(s.pattern.Lanes) || t >= timings {
		return fmt.Errorf("hand %d, timing %d: %w", lane+1, t, engine.ErrNoPiece)
	}
	return s.giveHand(lane, SecondHand(s.pattern.Lanes[lane], t))
}

// MakeHandLater is MakeHand with the movement begun some beats later in its
// round, as in a canon: for TogetherSame the same, for TogetherOpposite its
// mirror image, and so on. The lane may be cut where its round then begins.
func (s *Session) MakeHandLater(lane int, t Timing, beats frac.Frac) error {
	if lane < 0 || lane >= len(s.pattern.Lanes) || t >= timings {
		return fmt.Errorf("hand %d, timing %d: %w", lane+1, t, engine.ErrNoPiece)
	}
	return s.giveHand(lane, SecondHand(s.pattern.Lanes[lane].Later(beats), t))
}

// giveHand puts a lane in the place of the hand that is not the lane's.
func (s *Session) giveHand(lane int, second engine.Lane) error {
	p, sel := s.pattern, s.sel
	p.Lanes = append([]engine.Lane(nil), p.Lanes...)
	if len(p.Lanes) == 1 {
		p.Lanes = append(p.Lanes, second)
	} else {
		p.Lanes[1-lane] = second
	}
	if err := s.edit(DidAddHand, p, sel); err != nil {
		return err
	}
	s.ShowHands()
	return nil
}

// TakeHand takes a lane away; the other stays.
func (s *Session) TakeHand(lane int) error {
	if len(s.pattern.Lanes) < 2 {
		return ErrOneHand
	}
	p := s.pattern
	p.Lanes = []engine.Lane{p.Lanes[1-min(max(lane, 0), 1)]}
	if err := s.edit(DidTakeHand, p, Select{}); err != nil {
		return err
	}
	s.ShowHands()
	return nil
}

// Hidden reports whether a lane is left out of the picture: a matter of the
// view alone. The only hand there is is always seen.
func (s *Session) Hidden(lane int) bool {
	return len(s.tracks) > 1 && s.hidden[s.tracks[lane].Lane.Side]
}

// HideHand leaves a lane out of the picture; the other is seen.
func (s *Session) HideHand(lane int) {
	side := s.tracks[lane].Lane.Side
	s.hidden = [2]bool{}
	s.hidden[side] = true
	if s.Hidden(s.sel.Lane) { // what is in hand is seen
		s.Select(Select{Lane: 1 - s.sel.Lane})
		s.SelectUnderPlayhead()
	}
}

// ShowHands shows both hands.
func (s *Session) ShowHands() { s.hidden = [2]bool{} }
