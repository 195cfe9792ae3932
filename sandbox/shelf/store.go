// Package shelf keeps the person's own patterns in the browser: each as one
// record, with the edits that led to it, so that a closed tab costs nothing.
//
// A record that cannot be read is never written over: it is put aside as it
// is. Two tabs that open the same work never overwrite each other's: who comes
// second gets a record of their own. When the browser has no room or no
// permission the errors say so, and the session still has everything.
package shelf

import (
	"slices"
	"unicode/utf16"

	"whorlbench/sandbox/words"
)

// Errors of storing; their text is for the person.
var (
	ErrFull    = words.Fault(func() string { return words.Said.Share.Shelf.Full })
	ErrBlocked = words.Fault(func() string { return words.Said.Share.Shelf.Blocked })
)

// Store is where texts are kept under keys. Every method may fail with
// ErrBlocked, and Set with ErrFull, in which case the key has its old text.
type Store interface {
	Get(key string) (text string, ok bool, err error)
	Set(key, text string) error
	Delete(key string) error // of a key that is not there, too
	Keys() ([]string, error) // in any order
}

// Memory is a store without a browser. Several shelves may share one, as tabs
// do.
type Memory struct {
	Quota   int // UTF-16 units of all keys and texts, as browsers count; 0: no end
	Blocked bool

	texts map[string]string
}

// Get returns the text of a key.
func (m *Memory) Get(key string) (string, bool, error) {
	if m.Blocked {
		return "", false, ErrBlocked
	}
	text, ok := m.texts[key]
	return text, ok, nil
}

// Set keeps a text.
func (m *Memory) Set(key, text string) error {
	if m.Blocked {
		return ErrBlocked
	}
	used := units(key) + units(text)
	for k, t := range m.texts {
		if k != key {
			used += units(k) + units(t)
		}
	}
	if m.Quota > 0 && used > m.Quota {
		return ErrFull
	}
	if m.texts == nil {
		m.texts = map[string]string{}
	}
	m.texts[key] = text
	return nil
}

// Delete forgets a key.
func (m *Memory) Delete(key string) error {
	if m.Blocked {
		return ErrBlocked
	}
	delete(m.texts, key)
	return nil
}

// Keys returns the keys in order.
func (m *Memory) Keys() ([]string, error) {
	if m.Blocked {
		return nil, ErrBlocked
	}
	keys := make([]string, 0, len(m.texts))
	for k := range m.texts {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys, nil
}

func units(s string) int { return len(utf16.Encode([]rune(s))) }
