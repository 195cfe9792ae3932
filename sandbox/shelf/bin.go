package shelf

import (
	"sort"
	"strings"
)

// mostBin is how many deleted works can be had back after their tab is closed.
const mostBin = 10

// Delete takes a work off the shelf. Undelete brings it back, with its edits:
// in this tab always, later while it is among the last ten that were deleted
// and the room was not needed.
func (s *Shelf) Delete(id string) error {
	text, ok, err := s.store.Get(ownKey(id))
	switch {
	case err != nil:
		return ErrBlocked
	case !ok:
		return ErrUnknown
	}
	// The work goes first: where it stood is the room for its copy.
	if err := s.store.Delete(ownKey(id)); err != nil {
		return ErrBlocked
	}
	s.bin[id] = text
	_ = s.store.Set(binPrefix+id, text) // without it, this tab still has it
	s.thinBin()
	return nil
}

// Undelete puts a deleted work back. It may fail with ErrFull, ErrBlocked, and
// with ErrUnknown if it is not to be had any more.
func (s *Shelf) Undelete(id string) error {
	text, ok := s.bin[id]
	if !ok {
		kept, found, err := s.store.Get(binPrefix + id)
		switch {
		case err != nil:
			return ErrBlocked
		case !found:
			return ErrUnknown
		}
		text = kept
	}
	if _, taken, _ := s.store.Get(ownKey(id)); taken {
		return nil // another tab was quicker
	}
	// Its copy makes the room; if there is none all the same, it goes back.
	_ = s.store.Delete(binPrefix + id)
	if err := s.store.Set(ownKey(id), text); err != nil {
		_ = s.store.Set(binPrefix+id, text)
		return storing(err)
	}
	delete(s.bin, id)
	return nil
}

// Deleted returns what Undelete can bring back, the one edited last first.
func (s *Shelf) Deleted() []Entry {
	texts := map[string]string{}
	keys, _ := s.keys(binPrefix)
	for _, key := range keys {
		if text, ok, err := s.store.Get(key); ok && err == nil {
			texts[strings.TrimPrefix(key, binPrefix)] = text
		}
	}
	for id, text := range s.bin {
		texts[id] = text
	}
	var entries []Entry
	for id, text := range texts {
		if _, back, _ := s.store.Get(ownKey(id)); back { // by another tab
			continue
		}
		r, _ := parse(text)
		entries = append(entries, entry(id, r))
	}
	sortEntries(entries)
	return entries
}

// thinBin lets go of all but the last deleted ones.
func (s *Shelf) thinBin() {
	keys, _ := s.keys(binPrefix)
	if len(keys) <= mostBin {
		return
	}
	edited := map[string]int64{}
	for _, key := range keys {
		text, _, _ := s.store.Get(key)
		r, _ := parse(text)
		edited[key] = r.Edited
	}
	sort.Slice(keys, func(i, k int) bool { return edited[keys[i]] < edited[keys[k]] })
	for _, key := range keys[:len(keys)-mostBin] {
		_ = s.store.Delete(key)
	}
}

// emptyBin makes room.
func (s *Shelf) emptyBin() {
	keys, _ := s.keys(binPrefix)
	for _, key := range keys {
		_ = s.store.Delete(key)
	}
}
