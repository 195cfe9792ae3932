package shelf

import (
	"whorlbench/engine"
	"whorlbench/presets/archive"
	"whorlbench/sandbox/session"
)

// PackAll returns all works as one ZIP file, the one edited last first, and
// what could not be put into it.
func (s *Shelf) PackAll() (zip []byte, problems []error) {
	entries, problems := s.List()
	var patterns []engine.Pattern
	for _, e := range entries {
		p, err := s.Pattern(e.ID)
		if err != nil {
			problems = append(problems, err)
			continue
		}
		patterns = append(patterns, p)
	}
	zip, more := archive.Pack(patterns)
	return zip, append(problems, more...)
}

// Add keeps a pattern as a work of its own, without opening it.
func (s *Shelf) Add(p engine.Pattern) (id string, err error) {
	w := s.Begin()
	if err := w.keep([]session.State{{ID: 1, Pattern: p}}, 0); err != nil {
		return "", err
	}
	return w.id, nil
}

// TakeIn keeps every pattern of a ZIP file as a work of its own. The problems
// say of everything that was not taken why.
func (s *Shelf) TakeIn(zip []byte) (ids []string, problems []error) {
	items, problems := archive.Unpack(zip)
	for _, item := range items {
		id, err := s.Add(item.Pattern)
		if err != nil {
			problems = append(problems, Problem{item.Name, err})
			continue
		}
		ids = append(ids, id)
	}
	return ids, problems
}
