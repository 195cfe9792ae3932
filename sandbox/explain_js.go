//go:build js

package main

import (
	"encoding/json"
	"fmt"
	"syscall/js"

	"whorlbench/presets"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// shown(id) returns a built-in pattern's title and its moving picture.
func (a *app) shown(args []js.Value) any {
	for _, e := range presets.Library() {
		if e.ID != args[0].String() {
			continue
		}
		if p, err := e.Pattern(); err == nil {
			return asJSON(map[string]any{"title": p.Title, "hands": scene.Motions(session.New(p).Tracks(), p.Tempo)})
		}
	}
	return "null"
}

// judged(key) returns what each reading of a word says of the open pattern.
func (a *app) judged(args []js.Value) any {
	head := fmt.Sprintf(words.Said.Explain.Judged, a.bench.Session.Pattern().Title)
	return asJSON(map[string]any{"head": head, "parts": a.bench.Judged(args[0].String())})
}

// asJSON writes what the page's script reads as JSON.
func asJSON(v any) string {
	data, err := json.Marshal(v)
	if err != nil { // only a number that is not finite could do it
		panic(fmt.Sprintf("page: %v", err))
	}
	return string(data)
}
