package session

import (
	"errors"
	"slices"

	"whorlbench/engine"
)

// ErrNothingCopied says that there is nothing to paste.
var ErrNothingCopied = errors.New("nothing has been copied")

// Copy keeps what is selected to be pasted; nothing changes.
func (s *Session) Copy() {
	first, last := s.Range()
	s.clip = slices.Clone(s.pattern.Lanes[s.sel.Lane].Pieces[first : last+1])
}

// CanPaste reports whether there is something to paste.
func (s *Session) CanPaste() bool { return len(s.clip) > 0 }

// CutOut copies what is selected and takes it out.
func (s *Session) CutOut() error {
	before := s.clip
	s.Copy()
	err := s.takeOut(DidCutOut)
	if err != nil {
		s.clip = before
	}
	return err
}

// Paste puts what was copied after what is selected, where it carries on.
func (s *Session) Paste() error {
	if !s.CanPaste() {
		return ErrNothingCopied
	}
	return s.insertAfter(DidPaste, s.clip)
}

// InsertFrom puts the pieces of another pattern's right hand, or of its only
// one, after the piece in hand. The first carries on from there.
func (s *Session) InsertFrom(p engine.Pattern) error {
	l := p.Lanes[0]
	for _, x := range p.Lanes {
		if x.Side == engine.Right {
			l = x
		}
	}
	return s.insertAfter(DidInsert, l.Pieces)
}

// insertAfter puts pieces after what is selected and takes the first in hand.
func (s *Session) insertAfter(what What, pieces []engine.Piece) error {
	_, last := s.Range()
	if err := s.insert(what, last, pieces); err != nil {
		return err
	}
	s.Select(s.sel)
	return nil
}

// insert puts pieces after piece i of the lane in hand, where the first carries
// on, and selects them.
func (s *Session) insert(what What, i int, pieces []engine.Piece) error {
	return s.several(what, i+1, len(pieces), func(l engine.Lane) (engine.Lane, error) {
		var err error
		for k, p := range pieces {
			if k == 0 {
				p.ArmAt, p.PropAt = engine.Opt{}, engine.Opt{}
			}
			if l, err = l.Insert(i+1+k, p); err != nil {
				return l, err
			}
		}
		return l, nil
	})
}

// Placed reports whether the piece in hand has a start of its own.
func (s *Session) Placed() bool {
	p := s.SelectedPiece()
	return p.ArmAt.Set || p.PropAt.Set
}

// Place gives the piece in hand the start that it has now in the first round,
// arm and prop, for its own.
func (s *Session) Place() error {
	i := s.sel.Piece
	g := &s.tracks[s.sel.Lane].Legs[i]
	return s.lane(DidPlace, s.sel, func(l engine.Lane) (engine.Lane, error) {
		return l.Place(i, engine.Some(Written(g.Arm0)), engine.Some(Written(g.Prop0)))
	})
}

// Written returns an angle in radians as a person would write it: within a
// turn, and without the dust of adding up.
func Written(rad float64) engine.Degrees { return engine.ToDegrees(rad).Wrap().Tidy() }

// CarryOn takes the start of its own from the piece in hand.
func (s *Session) CarryOn() error {
	i := s.sel.Piece
	return s.lane(DidCarryOn, s.sel, func(l engine.Lane) (engine.Lane, error) { return l.CarryOn(i) })
}

// MirrorPattern makes the whole pattern its mirror image; the hands change
// places.
func (s *Session) MirrorPattern() error { return s.edit(DidMirror, s.pattern.Mirror(), s.sel) }

// TurnPattern turns the whole pattern about its middle.
func (s *Session) TurnPattern(d engine.Degrees) error {
	return s.edit(DidTurn, s.pattern.Turn(d), s.sel)
}
