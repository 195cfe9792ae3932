package session

import "whorlbench/engine"

// Selected returns the piece in hand: what sliders and handles change.
func (s *Session) Selected() Select { return s.sel }

// Select takes a piece in hand, and no other.
func (s *Session) Select(at Select) {
	at.Lane = min(max(at.Lane, 0), len(s.pattern.Lanes)-1)
	at.Piece = min(max(at.Piece, 0), len(s.pattern.Lanes[at.Lane].Pieces)-1)
	s.sel, s.also = at, at.Piece
}

// Extend selects all pieces from the one in hand to piece i of its lane: what
// copies, moves, repeats or takes out does so with all of them.
func (s *Session) Extend(i int) {
	s.also = min(max(i, 0), len(s.pattern.Lanes[s.sel.Lane].Pieces)-1)
}

// Range returns the first and the last piece that is selected, on the lane in
// hand.
func (s *Session) Range() (first, last int) {
	return min(s.sel.Piece, s.also), max(s.sel.Piece, s.also)
}

// InRange reports whether a piece is selected, in hand or along with it.
func (s *Session) InRange(at Select) bool {
	first, last := s.Range()
	return at.Lane == s.sel.Lane && first <= at.Piece && at.Piece <= last
}

// Edits that were shown before they were made.
const (
	DidMend What = iota + firstShownEdit
	DidFollow
)

// firstShownEdit keeps these apart from the others.
const firstShownEdit = 200

// ShownEdit returns which of the shown edits w is, from 0; ok is false if it is
// another.
func (w What) ShownEdit() (i int, ok bool) {
	return int(w) - firstShownEdit, w >= firstShownEdit
}

// Follow puts a piece after what is selected, with a start of its own if it has
// one.
func (s *Session) Follow(p engine.Piece) error {
	_, last := s.Range()
	return s.lane(DidFollow, Select{s.sel.Lane, last + 1}, func(l engine.Lane) (engine.Lane, error) { return l.Insert(last+1, p) })
}

// Adopt makes p, which was made from the open pattern, the open one.
func (s *Session) Adopt(what What, p engine.Pattern, sel Select) error { return s.edit(what, p, sel) }

// several edits the lane in hand and selects n pieces of the result from first
// on.
func (s *Session) several(what What, first, n int, change func(engine.Lane) (engine.Lane, error)) error {
	err := s.lane(what, Select{s.sel.Lane, first}, change)
	if err == nil {
		s.Extend(first + n - 1)
	}
	return err
}
