//go:build js

package main

import (
	"fmt"
	"syscall/js"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/presets/archive"
	"whorlbench/sandbox/words"
)

// orderFunctions are what the page's running order asks of the program. The page
// holds the order itself, as the texts of pattern files.
func (a *app) orderFunctions() map[string]func(args []js.Value) any {
	return map[string]func(args []js.Value) any{
		"orderFile": a.orderFile,
		"orderPick": a.orderPick,
		"orderPack": a.orderPack,
		"orderShow": a.orderShow,
		"orderAt":   func([]js.Value) any { return a.bench.OrderAt() },
	}
}

// orderFile(name, bytes) reads a file, or a ZIP file of them, and returns the
// items and what is wrong with the others.
func (a *app) orderFile(args []js.Value) any {
	name, data, refused := fileOf(args)
	if refused != "" {
		return ordered(nil, refused)
	}
	if !isZIP(name) {
		p, err := presets.Decode(name, data)
		if err != nil {
			return ordered(nil, err.Error())
		}
		return ordered([]engine.Pattern{p}, "")
	}
	items, problems := archive.Unpack(data)
	var patterns []engine.Pattern
	for _, x := range items {
		patterns = append(patterns, x.Pattern)
	}
	for i, err := range problems {
		problems[i] = fmt.Errorf("%s: %w", name, err)
	}
	return ordered(patterns, lines(problems))
}

// orderPick(kind, id) returns the item of a pattern: of an "own" one, a
// "built-in" one, or what is "open".
func (a *app) orderPick(args []js.Value) any {
	p, err := a.bench.Session.Pattern(), error(nil)
	switch id := args[1].String(); args[0].String() {
	case "own":
		p, err = a.desk.Pattern(id)
	case "built-in":
		p, err = builtIn(id)
	}
	if err != nil {
		return ordered(nil, err.Error())
	}
	return ordered([]engine.Pattern{p}, "")
}

// ordered is how the page takes items: as a list shows them, with their texts.
func ordered(patterns []engine.Pattern, problems string) any {
	out := []any{}
	for _, p := range patterns {
		data, err := presets.Encode(p)
		if err != nil { // what is open may be what no file can hold
			problems += err.Error()
			continue
		}
		x := listed(p)
		x["text"] = string(data)
		out = append(out, x)
	}
	return map[string]any{"items": out, "problems": problems}
}

// orderPatterns reads texts that the page has kept.
func orderPatterns(texts js.Value) (patterns []engine.Pattern, problems []error) {
	for i := range texts.Length() {
		p, err := presets.Decode(words.Said.Order.Head, []byte(texts.Index(i).String()))
		if err != nil {
			problems = append(problems, err)
			continue
		}
		patterns = append(patterns, p)
	}
	return patterns, problems
}

// orderPack(texts) returns them in one ZIP file, in their order.
func (a *app) orderPack(args []js.Value) any {
	patterns, problems := orderPatterns(args[0])
	zip, more := archive.Pack(patterns)
	return packed(words.Said.Order.FileName, zip, append(problems, more...))
}

// orderShow(texts, at) shows them in the big view, from one of them on; it returns
// what is wrong.
func (a *app) orderShow(args []js.Value) any {
	patterns, problems := orderPatterns(args[0])
	if len(problems) == 0 {
		a.bench.StartOrder(patterns, args[1].Int(), !a.page.Frame().Still)
	}
	return lines(problems)
}
