package shelf

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
)

// Aside is a text that was kept and could not be read, as it was.
type Aside struct {
	Key  string
	Text string
}

// Asides returns what was put aside.
func (s *Shelf) Asides() []Aside {
	keys, _ := s.keys(asidePrefix)
	var out []Aside
	for _, key := range append(keys, oldAside) {
		if text, ok, err := s.store.Get(key); ok && err == nil && text != "" {
			out = append(out, Aside{key, text})
		}
	}
	return out
}

// Discard forgets something that was put aside.
func (s *Shelf) Discard(key string) error {
	if !slices.ContainsFunc(s.Asides(), func(a Aside) bool { return a.Key == key }) {
		return ErrUnknown
	}
	return storing(s.store.Delete(key))
}

// putAside moves the text of a key out of the way. If it cannot be moved it
// stays, as nothing writes over what cannot be read.
func (s *Shelf) putAside(key string) {
	text, ok, err := s.store.Get(key)
	if !ok || err != nil {
		return
	}
	// Where there is no room for two, the second may have the room of the first.
	to := asideKey(key, text)
	if err := s.store.Set(to, text); errors.Is(err, ErrFull) {
		if s.store.Delete(key) == nil && s.store.Set(to, text) != nil {
			_ = s.store.Set(key, text)
		}
		return
	} else if err != nil {
		return
	}
	_ = s.store.Delete(key)
}

// copyAside keeps a copy of the text of a key and reports whether there was
// room.
func (s *Shelf) copyAside(key string) bool {
	text, ok, err := s.store.Get(key)
	return ok && err == nil && s.store.Set(asideKey(key, text), text) == nil
}

// asideKey is the same for the same text, so that it is put aside once.
func asideKey(key, text string) string {
	return fmt.Sprintf("%s%s-%08x", asidePrefix, strings.TrimPrefix(key, ownPrefix), sum(text))
}

// storing names what a store fails with.
func storing(err error) error {
	if err == nil || errors.Is(err, ErrFull) {
		return err
	}
	return ErrBlocked
}

// readTrail reads a record's trail and reports whether it could.
func readTrail(text string, t *trail) bool {
	if json.Unmarshal([]byte(text), t) != nil {
		*t = trail{}
		return false
	}
	return true
}
