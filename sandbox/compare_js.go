//go:build js

package main

import (
	"encoding/json"
	"fmt"
	"syscall/js"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

// Where the other pattern of a comparison comes from, as the page names it.
const (
	fromLibrary = "library" // an ID
	fromOwn     = "own"     // an ID
	fromFile    = "file"    // a name, and the bytes
)

// compare(from, which, bytes) shows another pattern beside the open one. It
// makes no work, and touches no undo.
func (a *app) compare(args []js.Value) any {
	which := args[1].String()
	var p engine.Pattern
	var err error
	var open func() any
	switch args[0].String() {
	case fromLibrary:
		p, err = builtIn(which)
		open = func() any { return a.pick(args[1:2]) }
	case fromOwn:
		p, err = a.desk.Pattern(which)
		open = func() any { return a.openOwn(args[1:2]) }
	case fromFile:
		if isZIP(which) {
			return wrong(words.Said.Compare.NoZIP, which)
		}
		_, data, refused := fileOf(args[1:])
		if refused != "" {
			return wrong(words.Said.Page.ProblemTitle, refused)
		}
		p, err = presets.Decode(which, data)
		open = func() any { return a.opened(a.desk.Take(p)) }
	}
	if err != nil {
		return wrong(words.Said.Page.ProblemTitle, err.Error())
	}
	a.openCompared = open
	a.bench.Compare(p)
	return nil
}

// takeCompared opens what is compared with the open pattern, with undo, as the
// list that it came from would have.
func (a *app) takeCompared() {
	if x, ok := a.openCompared().(map[string]any); ok {
		a.page.Problem(x)
	}
}

// compared() tells what is compared as JSON, bench.Compared; null if nothing is.
func (a *app) compared([]js.Value) any {
	c, ok := a.bench.Compared()
	if !ok {
		return nil
	}
	data, err := json.Marshal(c)
	if err != nil { // its numbers are finite
		panic(fmt.Sprintf("compared: %v", err))
	}
	return string(data)
}
