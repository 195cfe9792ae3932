//go:build js

// Command storage is the browser's store for the page, for the test that
// holds it to what the shelf asks of a store.
package main

import (
	"fmt"
	"slices"
	"strings"
	"syscall/js"

	"whorlbench/sandbox/host"
)

func main() {
	// storageTry(key, text) sets, gets, lists and deletes, and says how each went.
	js.Global().Set("storageTry", js.FuncOf(func(_ js.Value, args []js.Value) any {
		key, text := args[0].String(), args[1].String()
		var s host.Storage
		set := s.Set(key, text)
		got, ok, get := s.Get(key)
		keys, list := s.Keys()
		deleted := s.Delete(key)
		_, after, _ := s.Get(key)
		return fmt.Sprintf("set %v, get %v %v %v, listed %v %v, deleted %v %v",
			set, got == text, ok, get, slices.Contains(keys, key), list, deleted, after)
	}))
	// storageFill() keeps doubling a text until it is refused, and says how,
	// and whether the text before is still there.
	js.Global().Set("storageFill", js.FuncOf(func(js.Value, []js.Value) any {
		const key = "whorlbench.test.fill"
		var s host.Storage
		defer s.Delete(key)
		for text := "x"; len(text) < 1<<28; text += text {
			if err := s.Set(key, text); err != nil {
				kept, _, _ := s.Get(key)
				return fmt.Sprintf("%v; the one before is there: %v", err, kept == strings.Repeat("x", len(text)/2))
			}
		}
		return "never full"
	}))
	js.Global().Set("storageReady", true)
	select {}
}
