package shelf

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"whorlbench/presets"
	"whorlbench/sandbox/session"
)

// Work is what is open in this tab, and where it is kept.
type Work struct {
	shelf *Shelf
	id    string // empty: not kept yet
	stamp string // of the record as this tab wrote or read it

	texts   map[int]string    // files of states, by their ID: of the present and what is near
	changes map[[2]int]change // between neighbouring states
	last    []int             // the identity of what was kept
}

// ID returns under which ID the work is kept, empty if it is not yet.
func (w *Work) ID() string { return w.id }

// Stale reports whether another tab has written or deleted the work since
// this one did; the next Keep makes a work of its own of this one.
func (w *Work) Stale() bool {
	return w.id != "" && w.elsewhere() != nil
}

// Keep writes the session's work with the edits about it. It is called after
// each complete edit, undo and redo.
//
// With ErrChangedElsewhere or ErrGoneElsewhere it has been kept too, but as a
// work of its own. With ErrFull or ErrBlocked it has not: what was kept before
// is as it was, and the next Keep tries again. What presets.Encode refuses
// is refused.
//
// Only the edits of this work are kept: what was open before it, or was opened
// after, is another.
func (w *Work) Keep(s *session.Session) error {
	states, at := since(s.Trail(MaxSteps))
	err := w.keep(states, at)
	if err == nil || errors.Is(err, ErrChangedElsewhere) || errors.Is(err, ErrGoneElsewhere) {
		w.shelf.remember(w.id)
	}
	return err
}

// since leaves of a trail what was not opened as other work.
func since(states []session.State, at int) ([]session.State, int) {
	from, to := at, at+1
	for from > 0 && states[from].By.What != session.Opened {
		from--
	}
	for to < len(states) && states[to].By.What != session.Opened {
		to++
	}
	return states[from:to], at - from
}

// know takes over what reading the work has brought to light.
func (w *Work) know(states []session.State, at int, files []string) {
	w.last = identity(states, at)
	w.texts = map[int]string{states[at].ID: files[at]}
	w.changes = map[[2]int]change{}
	for i := 1; i < len(states); i++ {
		w.changes[[2]int{states[i-1].ID, states[i].ID}] = between(files[i-1], files[i])
	}
}

// identity tells one Trail from another: the present's ID and what is in hand,
// then all IDs.
func identity(states []session.State, at int) []int {
	ids := []int{states[at].ID, states[at].Select.Lane, states[at].Select.Piece}
	for _, x := range states {
		ids = append(ids, x.ID)
	}
	return ids
}

func (w *Work) keep(states []session.State, at int) error {
	ids := identity(states, at)
	var elsewhere error
	if w.id != "" {
		if elsewhere = w.elsewhere(); errors.Is(elsewhere, ErrBlocked) {
			return elsewhere
		}
	}
	if elsewhere == nil && w.id != "" && slices.Equal(ids, w.last) {
		return nil
	}
	r := record{header: header{Title: states[at].Pattern.Title, Edited: w.shelf.now().UnixMilli()}}
	work, err := w.text(states[at])
	if err != nil {
		return err
	}
	t, err := w.trail(states, at)
	if err != nil {
		return err
	}
	r.work = work
	id, number := w.id, count(w.stamp)
	if id == "" || elsewhere != nil {
		if id, err = w.shelf.freshID(); err != nil {
			return err
		}
		number = 0
	}
	r.Stamp = fmt.Sprintf("%d-%s", number+1, w.shelf.tab)
	if err := w.shelf.write(ownKey(id), r, t); err != nil {
		return err
	}
	w.id, w.stamp, w.last = id, r.Stamp, ids
	return elsewhere
}

// elsewhere says what another tab has done to the work, nil if nothing.
func (w *Work) elsewhere() error {
	text, ok, err := w.shelf.store.Get(ownKey(w.id))
	switch {
	case err != nil:
		return ErrBlocked
	case !ok:
		return ErrGoneElsewhere
	}
	// One that has been damaged is left as it is as well, unless it is only the
	// trail: that has been put aside.
	if r, _ := parse(text); r.Stamp != w.stamp || r.work == "" {
		return ErrChangedElsewhere
	}
	return nil
}

// count returns how many times a record with a stamp has been written.
func count(stamp string) int {
	number, _, _ := strings.Cut(stamp, "-")
	n, err := strconv.Atoi(number)
	if err != nil {
		return 0
	}
	return n
}

// text returns the file of a state.
func (w *Work) text(x session.State) (string, error) {
	if t, ok := w.texts[x.ID]; ok {
		return t, nil
	}
	data, err := presets.Encode(x.Pattern)
	if err != nil {
		return "", err
	}
	if w.texts == nil {
		w.texts = map[int]string{}
	}
	w.texts[x.ID] = string(data)
	return string(data), nil
}

// trail returns the steps about the present, and forgets what no trail needs.
func (w *Work) trail(states []session.State, at int) (trail, error) {
	changes := map[[2]int]change{}
	for i := 1; i < len(states); i++ {
		key := [2]int{states[i-1].ID, states[i].ID}
		c, ok := w.changes[key]
		if !ok {
			a, err := w.text(states[i-1])
			if err != nil {
				return trail{}, err
			}
			b, err := w.text(states[i])
			if err != nil {
				return trail{}, err
			}
			c = between(a, b)
		}
		changes[key] = c
	}
	w.changes = changes
	near := map[int]string{}
	for i := max(0, at-1); i <= min(len(states)-1, at+1); i++ {
		if t, ok := w.texts[states[i].ID]; ok {
			near[states[i].ID] = t
		}
	}
	w.texts = near

	t := trail{Here: held(step{}, states[at])}
	across := func(i int) change { return changes[[2]int{states[i-1].ID, states[i].ID}] }
	for i := at; i > 0 && !across(i).large; i-- {
		s := held(across(i).back(), states[i-1])
		s.By, s.Of = states[i].By.What.Name(), states[i].By.Of
		t.Back = append(t.Back, s)
	}
	for i := at + 1; i < len(states) && !across(i).large; i++ {
		s := held(across(i).on(), states[i])
		s.By, s.Of = states[i].By.What.Name(), states[i].By.Of
		t.On = append(t.On, s)
	}
	return t, nil
}

// held notes in a step which piece is in hand.
func held(s step, x session.State) step {
	s.Lane, s.Piece = x.Select.Lane, x.Select.Piece
	return s
}
