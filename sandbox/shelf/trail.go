package shelf

import (
	"slices"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/session"
)

// trail is the way to the present and on from it, nearest first; By is the
// edit between a step's state and the nearer one.
type trail struct {
	Here step   `json:"here"` // only what is in hand
	Back []step `json:"back"`
	On   []step `json:"on"`
}

// within returns a trail of at most so many bytes as JSON: the steps that are
// furthest from the present go first, those that can be redone before those
// that can be undone.
func (t trail) within(most int) string {
	size := len(marshal(trail{Here: t.Here})) + len("[][]")
	fit := func(steps []step) []step {
		for i, s := range steps {
			size += len(marshal(s)) + len(",")
			if size > most {
				return steps[:i]
			}
		}
		return steps
	}
	t.Back = fit(t.Back)
	t.On = fit(t.On)
	return marshal(t)
}

// states goes along a trail from the present and its file, and returns the
// file of each state beside it. What lies beyond a step that does not fit is
// left out, and broken is true. IDs count from the one after last.
func (t trail) states(here engine.Pattern, file string, last int) (states []session.State, at int, files []string, broken bool) {
	present := session.State{Pattern: here, Select: session.Select{Lane: t.Here.Lane, Piece: t.Here.Piece}}
	back, backFiles, ok := walk(t.Back, file)
	on, onFiles, ok2 := walk(t.On, file)
	// A step back names the edit that leads on from the state it makes.
	for i := range back {
		by := back[i].By
		if i == 0 {
			present.By = by
		} else {
			back[i-1].By = by
		}
		back[i].By = session.Edit{}
	}
	slices.Reverse(back)
	slices.Reverse(backFiles)
	states = slices.Concat(back, []session.State{present}, on)
	files = slices.Concat(backFiles, []string{file}, onFiles)
	for i := range states {
		states[i].ID = last + i + 1
	}
	return states, len(back), files, !ok || !ok2
}

// walk goes along steps as far as they fit, and reports whether all did.
func walk(steps []step, file string) (states []session.State, files []string, ok bool) {
	for i, s := range steps {
		next, err := s.from(file)
		if err != nil || i == MaxSteps {
			return states, files, false
		}
		p, err := presets.Decode("", []byte(next))
		if err != nil {
			return states, files, false
		}
		states = append(states, session.State{Pattern: p, Select: session.Select{Lane: s.Lane, Piece: s.Piece}, By: session.Edit{What: session.WhatNamed(s.By), Of: s.Of}})
		files = append(files, next)
		file = next
	}
	return states, files, true
}
