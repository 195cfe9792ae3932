//go:build js

package main

import (
	"errors"
	"fmt"
	"syscall/js"

	"github.com/hajimehoshi/ebiten/v2"

	"whorlbench/presets"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// functions are what the page's script can ask of the program. Each returns
// at once; texts it returns are in the person's language. What changes
// something to be seen asks for a frame; what only tells does not.
func (a *app) functions() map[string]func(args []js.Value) any {
	type function = func(args []js.Value) any
	seen := func(f function) function {
		return func(args []js.Value) any {
			ebiten.ScheduleFrame()
			return f(args)
		}
	}
	return map[string]function{
		"wake":   seen(func([]js.Value) any { return nil }),
		"resize": seen(func([]js.Value) any { a.resize(); return nil }),
		"act":    seen(a.act),
		"focus":  seen(func(args []js.Value) any { a.bench.SetFocus(args[0].String()); return nil }),
		"answer": seen(func(args []js.Value) any {
			return a.bench.Answer(args[0].String(), args[1].String(), a.now())
		}),
		"chosen": seen(func(args []js.Value) any {
			a.bench.Chosen(args[0].String(), args[1].String(), a.now())
			return nil
		}),
		"wheel":    seen(a.wheel),
		"zoom":     seen(func(args []js.Value) any { a.bench.ZoomKey(args[0].Float()); return nil }),
		"open":     seen(a.open),
		"pick":     seen(a.pick),
		"insert":   seen(a.insert),
		"rename":   seen(a.rename),
		"saved":    seen(a.saved),
		"loop":     seen(func([]js.Value) any { a.bench.Do(widget.Intent{ID: "loop", Act: widget.Press}, a.now()); return nil }),
		"settings": func([]js.Value) any { return a.bench.WriteSettings() },
		"setSettings": seen(func(args []js.Value) any {
			a.bench.ReadSettings(args[0].String())
			return nil
		}),
		"hint":     seen(func([]js.Value) any { a.bench.ShowHint(a.now()); return nil }),
		"returned": seen(func([]js.Value) any { a.bench.Say(words.English.State.Returned, a.now()); return nil }),
		"value":    func(args []js.Value) any { return a.bench.Value(args[0].String()) },
		"library":  a.library,
		"file":     a.file,
		"about":    a.about,
		"drawn":    func([]js.Value) any { return a.drawn },
	}
}

// twinActs are the acts that the page knows by name.
var twinActs = map[string]widget.Act{"press": widget.Press, "set": widget.Set, "menu": widget.Menu, "extend": widget.Extend}

// act(id, act, value) carries out what a twin was asked.
func (a *app) act(args []js.Value) any {
	act, ok := twinActs[args[1].String()]
	if !ok {
		return nil
	}
	a.bench.Do(widget.Intent{ID: args[0].String(), Act: act, Value: args[2].Float()}, a.now())
	return nil
}

// wheel(x, y, pixels) looks closer or from further away at a place; it returns
// whether the place is on the stage.
func (a *app) wheel(args []js.Value) any {
	return a.bench.Wheel(display.Pt{X: args[0].Float(), Y: args[1].Float()}, args[2].Float())
}

// open(name, bytes) opens a file; it returns what is wrong, line by line.
func (a *app) open(args []js.Value) any {
	name, w := args[0].String(), &words.English.Page
	if n := args[1].Get("byteLength").Int(); n > presets.MaxFileSize {
		const mb = 1 << 20
		return fmt.Sprintf(w.TooLarge, name, fmt.Sprint((n+mb-1)/mb), fmt.Sprint(presets.MaxFileSize/mb))
	}
	data := make([]byte, args[1].Get("byteLength").Int())
	js.CopyBytesToGo(data, args[1])
	return a.openBytes(name, data)
}

func (a *app) openBytes(name string, data []byte) string {
	p, err := presets.Decode(name, data)
	if err == nil {
		err = a.bench.Session.Open(p)
	}
	if err != nil {
		return err.Error()
	}
	a.bench.Opened(a.now())
	return ""
}

// library() lists the built-in patterns with their families, pictures and what
// the trade calls them.
func (a *app) library([]js.Value) any {
	if a.patterns != nil {
		return a.patterns
	}
	w := &words.English
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			continue // a test holds that there is none
		}
		s := session.New(p)
		var heads []any
		for _, t := range scene.Thumbs(s.Tracks()) {
			heads = append(heads, map[string]any{"left": t.Left, "path": t.Path})
		}
		a.patterns = append(a.patterns, map[string]any{
			"id": e.ID, "title": p.Title, "notes": p.Notes, "heads": heads,
			"trade":  study.Line(w, s),
			"family": w.Library.Family(e.Family),
			"insert": w.Strip.InsertShort, "insertLabel": fmt.Sprintf(w.Strip.InsertLabel, p.Title),
		})
	}
	return a.patterns
}

// pick(id) opens a built-in pattern.
func (a *app) pick(args []js.Value) any {
	for _, e := range presets.Library() {
		if e.ID == args[0].String() {
			return a.openBytes(e.File, e.Data)
		}
	}
	return ""
}

// insert(id) puts a built-in pattern's pieces after the piece in hand.
func (a *app) insert(args []js.Value) any {
	for _, e := range presets.Library() {
		if e.ID != args[0].String() {
			continue
		}
		if p, err := e.Pattern(); err == nil {
			return a.bench.Insert(p, a.now())
		}
	}
	return ""
}

// file(first) returns the open pattern as a file, or what stands in the way. At
// the first go, what was made of a built-in pattern and still bears its title
// is to be given a name of its own, and one is proposed.
func (a *app) file(args []js.Value) any {
	p := a.bench.Session.Pattern()
	if len(args) > 0 && args[0].Truthy() && presets.Borrowed(p) {
		return map[string]any{"propose": fmt.Sprintf(words.English.Page.Proposed, p.Title), "notes": presets.OwnNotes(p)}
	}
	data, err := presets.Encode(p)
	if err != nil {
		return map[string]any{"error": fmt.Sprintf(words.English.Page.NotSaved, err)}
	}
	return map[string]any{"name": words.FileName(p.Title) + ".toml", "text": string(data)}
}

// saved(name) says that the page has given the file out.
func (a *app) saved(args []js.Value) any {
	a.bench.Say(fmt.Sprintf(words.English.Page.Saved, args[0].String()), a.now())
	return nil
}

// about() returns title and notes.
func (a *app) about([]js.Value) any {
	p := a.bench.Session.Pattern()
	return map[string]any{"title": p.Title, "notes": p.Notes}
}

// rename(title, notes) changes them; it returns what is wrong.
func (a *app) rename(args []js.Value) any {
	if err := a.bench.Rename(args[0].String(), args[1].String()); err != nil {
		return err.Error()
	}
	return ""
}

// keep stores the work in the browser after each edit.
func (a *app) keep() {
	data, err := presets.Encode(a.bench.Session.Pattern())
	if err == nil && !a.page.Keep(string(data)) {
		err = errors.New(words.English.Page.StorageBlocked)
	}
	if err != nil && !a.warned {
		a.warned = true
		a.bench.Say(err.Error(), a.now())
	}
}
