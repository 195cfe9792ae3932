//go:build js

package host

import (
	"fmt"
	"syscall/js"

	"whorlbench/sandbox/shelf"
)

// Storage is the browser's own store for this page, which outlives the tab.
type Storage struct{}

// Get returns the text of a key.
func (Storage) Get(key string) (text string, ok bool, err error) {
	err = storing(func(s js.Value) {
		if v := s.Call("getItem", key); v.Type() == js.TypeString {
			text, ok = v.String(), true
		}
	})
	return text, ok, err
}

// Set keeps a text.
func (Storage) Set(key, text string) error {
	return storing(func(s js.Value) { s.Call("setItem", key, text) })
}

// Delete forgets a key.
func (Storage) Delete(key string) error {
	return storing(func(s js.Value) { s.Call("removeItem", key) })
}

// Keys returns all keys, those of others too.
func (Storage) Keys() (keys []string, err error) {
	err = storing(func(s js.Value) {
		for i := range s.Get("length").Int() {
			if v := s.Call("key", i); v.Type() == js.TypeString {
				keys = append(keys, v.String())
			}
		}
	})
	return keys, err
}

// storing does something with the store. What the browser throws is full if
// that is what it says (HTML standard, section 12.2.1), else blocked: looking
// at the store at all may be forbidden.
func storing(do func(store js.Value)) (err error) {
	defer func() {
		switch thrown := recover().(type) {
		case nil:
		case js.Error:
			err = shelf.ErrBlocked
			if name := thrown.Get("name").String(); name == "QuotaExceededError" || name == "NS_ERROR_DOM_QUOTA_REACHED" {
				err = shelf.ErrFull
			}
		default:
			err = fmt.Errorf("%w (%v)", shelf.ErrBlocked, thrown) // no store to speak of
		}
	}()
	// Through a call, as only what a call throws comes back to Go.
	do(js.Global().Get("Reflect").Call("get", js.Global(), "localStorage"))
	return nil
}
