//go:build js

package main

import (
	"encoding/json"
	"fmt"

	"whorlbench/presets"
	"whorlbench/sandbox/card"
	"whorlbench/sandbox/words"
)

// makeCard posts the lesson card of a pattern as {card, name}. The wish says where
// the page was opened, by which address others reach it, and whether left and
// right are to be as in a mirror.
func makeCard(toml, wish []byte) {
	html, name, err := cardOf(toml, wish)
	if err != nil {
		post(map[string]any{"failed": err.Error()})
		return
	}
	post(map[string]any{"card": html, "name": name})
}

func cardOf(toml, wish []byte) (html, name string, err error) {
	w := words.Said
	p, err := presets.Decode(w.Film.Pattern, toml)
	if err != nil {
		return "", "", err
	}
	var o struct {
		Page   string `json:"page"`
		Public string `json:"public"`
		Mirror bool   `json:"mirror"`
	}
	if err := json.Unmarshal(wish, &o); err != nil {
		return "", "", fmt.Errorf("failed to read the wish: %w", err)
	}
	c, err := card.New(p, card.Options{Page: o.Page, Public: o.Public, Mirror: o.Mirror}, w)
	if err != nil {
		return "", "", err
	}
	data, err := c.HTML()
	return string(data), c.FileName(), err
}
