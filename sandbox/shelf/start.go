package shelf

import (
	"errors"

	"whorlbench/presets"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// ErrOldUnreadable says that the one work that earlier benches kept could not
// be read.
var ErrOldUnreadable = words.Fault(func() string { return words.Said.Share.Shelf.OldUnreadable })

// Start returns the work to begin with: what was open last, else what was
// edited last. ok is false if there is none, as at a first visit. The problem
// says what could not be opened, or that nothing can be kept.
//
// The one work that earlier benches kept becomes a work like all others; its
// own key is given up once that has been done.
func (s *Shelf) Start() (o Opened, ok bool, problem error) {
	old, ok, problem := s.old()
	if ok {
		return old, true, problem
	}
	last, _, err := s.store.Get(openName)
	if err != nil {
		return Opened{}, false, ErrBlocked
	}
	var tries []string
	if last != "" {
		tries = append(tries, last)
	}
	entries, problems := s.List()
	for _, e := range entries {
		if e.ID != last {
			tries = append(tries, e.ID)
		}
	}
	problem = errors.Join(append([]error{problem}, problems...)...)
	for _, id := range tries {
		o, err := s.Open(id)
		if err == nil {
			return o, true, problem
		}
		if !errors.Is(err, ErrUnknown) && !errors.Is(err, ErrDamaged) { // those are in the list's problems
			problem = errors.Join(problem, err)
		}
	}
	return Opened{}, false, problem
}

// old takes over the one work of earlier benches.
func (s *Shelf) old() (o Opened, ok bool, problem error) {
	text, ok, err := s.store.Get(oldName)
	if err != nil || !ok || text == "" {
		return Opened{}, false, nil
	}
	p, err := presets.Decode("", []byte(text))
	if err != nil {
		s.putAside(oldName)
		return Opened{}, false, ErrOldUnreadable
	}
	o = Opened{Work: s.Begin(), States: []session.State{{ID: 1, Pattern: p}}}
	if err := o.Work.keep(o.States, 0); err != nil {
		return o, true, err // it stays where it is until there is room
	}
	_ = s.store.Delete(oldName)
	s.remember(o.Work.id)
	return o, true, nil
}
