package session

import (
	"slices"

	"whorlbench/engine"
)

// State is one state of the work, as undo and redo lead to it.
type State struct {
	ID      int // no two states of a session share one; it stays through undo and redo
	Pattern engine.Pattern
	Select  Select
	By      Edit // the edit that made it of the state before
}

// Trail returns the states that undo and redo lead to, oldest first, with the
// present one at states[at]: at most so many before it and so many after it.
// What is being dragged counts from its Release on.
func (s *Session) Trail(most int) (states []State, at int) {
	past := s.undo[max(0, len(s.undo)-most):]
	for _, m := range past {
		states = append(states, m.state())
	}
	at = len(past)
	present := s.now(Edit{})
	if s.held != nil {
		present = *s.held
	}
	states = append(states, present.state())
	for i := range past {
		states[i+1].By = past[i].left
	}
	ahead := s.redo[max(0, len(s.redo)-most):]
	for _, m := range slices.Backward(ahead) {
		next := m.state()
		next.By = m.left
		states = append(states, next)
	}
	return states, at
}

func (m moment) state() State { return State{ID: m.id, Pattern: m.pattern, Select: m.sel} }

func (x State) moment(left Edit) moment { return moment{x.Pattern, x.Select, left, x.ID} }

// Origin returns the ID of the state that the present one came of by edits:
// the one opened last, or the first of all.
func (s *Session) Origin() int {
	present := s.id
	if s.held != nil {
		present = s.held.id
	}
	for i := len(s.undo) - 1; i >= 0; i-- {
		if s.undo[i].left.What == Opened {
			return present
		}
		present = s.undo[i].id
	}
	return present
}

// State returns the ID of the state that is shown.
func (s *Session) State() int { return s.id }

// LastID returns the greatest ID that a state of this session has had.
func (s *Session) LastID() int { return s.ids }

// Resume returns a session that stands where Trail was taken: states[at] is
// open, and the others can be undone and redone to. There is at least one
// state, and IDs are more than 0.
func Resume(states []State, at int) *Session {
	s := &Session{Speed: 1}
	s.stand(states, at)
	return s
}

// Enter opens work with its own trail, as Resume does. What was open before
// can be brought back by undo, before the first of the states. Their IDs are more
// than LastID.
func (s *Session) Enter(states []State, at int) {
	s.letGo()
	s.undo = append(s.undo, s.now(Edit{What: Opened}))
	s.redo = nil
	s.stand(states, at)
	s.beat = 0
}

func (s *Session) stand(states []State, at int) {
	for i, x := range states {
		s.ids = max(s.ids, x.ID)
		if i < at {
			s.undo = append(s.undo, x.moment(states[i+1].By))
		}
	}
	for _, x := range slices.Backward(states[at+1:]) {
		s.redo = append(s.redo, x.moment(x.By))
	}
	s.show(states[at].moment(Edit{}))
}

// names are what kept work calls the sorts of edit, in the order of the
// constants; they stay when the constants move.
var names = [...]string{"dial", "open", "rename", "cut", "rejoin", "move", "there-and-back", "flip", "repeat", "delete"}

// Name returns what kept work calls a sort of edit.
func (w What) Name() string {
	if int(w) < len(names) {
		return names[w]
	}
	return names[Dialled]
}

// WhatNamed returns the sort of edit that has a name, Dialled for a name that
// none has.
func WhatNamed(name string) What {
	if i := slices.Index(names[:], name); i >= 0 {
		return What(i)
	}
	return Dialled
}
