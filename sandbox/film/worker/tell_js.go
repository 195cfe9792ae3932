//go:build js

package main

import (
	"encoding/json"

	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

// steps posts a pattern told as plain steps: {told, text}, as JSON. The wish is
// {mirror}.
func steps(toml, wish []byte) {
	w := words.Said
	fail := func(err error) { post(map[string]any{"failed": err.Error()}) }
	var how struct{ Mirror bool }
	if err := json.Unmarshal(wish, &how); err != nil {
		fail(err)
		return
	}
	p, err := presets.Decode(w.Film.Pattern, toml)
	if err != nil {
		fail(err)
		return
	}
	told := w.StepByStep(p, how.Mirror)
	data, err := json.Marshal(map[string]any{"told": told, "text": p.Title + "\n\n" + told.Text(), "title": p.Title})
	if err != nil {
		fail(err)
		return
	}
	post(map[string]any{"steps": string(data)})
}
