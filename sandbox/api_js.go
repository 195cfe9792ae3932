//go:build js

package main

import (
	"fmt"
	"syscall/js"

	"github.com/hajimehoshi/ebiten/v2"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/presets/archive"
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
	all := map[string]function{
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
		"returned": seen(func([]js.Value) any { a.bench.Say(words.Said.State.Returned, a.now()); return nil }),
		"value":    func(args []js.Value) any { return a.bench.Value(args[0].String()) },
		"library":  a.library,

		"own":       a.listOwn,
		"openOwn":   seen(a.openOwn),
		"insertOwn": seen(a.insertOwn),
		"renameOwn": seen(a.renameOwn),
		"delete":    a.deleteOwn,
		"undelete":  a.undeleteOwn,
		"pack":      a.pack,
		"asides":    a.asides,
		"stored":    seen(a.stored),
		"loadOther": seen(a.loadOther),
		"share":     a.share,
		"compare":   seen(a.compare),
		"compared":  a.compared,
		"openLink":  seen(a.openLink),

		"shown":  a.shown,
		"judged": a.judged,

		"file":  a.file,
		"about": a.about,
		"drawn": func([]js.Value) any { return a.drawn },
	}
	for name, f := range a.orderFunctions() {
		all[name] = f
	}
	return all
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

// fileOf(name, bytes) takes a file over from the page, or says why it is too
// large.
func fileOf(args []js.Value) (name string, data []byte, refused string) {
	name = args[0].String()
	n, most := args[1].Get("byteLength").Int(), presets.MaxFileSize
	if isZIP(name) {
		most = archive.MaxFile
	}
	if n > most {
		const mb = 1 << 20
		return name, nil, fmt.Sprintf(words.Said.Page.TooLarge, name, fmt.Sprint((n+mb-1)/mb), fmt.Sprint(most/mb))
	}
	data = make([]byte, n)
	js.CopyBytesToGo(data, args[1])
	return name, data, ""
}

// open(name, bytes) opens a file, or takes the patterns of a ZIP file in.
func (a *app) open(args []js.Value) any {
	w := &words.Said.Page
	name, data, refused := fileOf(args)
	if refused != "" {
		return wrong(w.ProblemTitle, refused)
	}
	if isZIP(name) {
		return a.takeIn(name, data)
	}
	p, err := presets.Decode(name, data)
	if err == nil {
		err = a.desk.Take(p)
	}
	return a.opened(err)
}

// opened tells the bench of what the session has opened, or says why it has not.
func (a *app) opened(err error) any {
	if err != nil {
		return wrong(words.Said.Page.ProblemTitle, err.Error())
	}
	a.bench.Opened(a.now())
	return nil
}

// builtIn returns a pattern of the library.
func builtIn(id string) (p engine.Pattern, err error) {
	for _, e := range presets.Library() {
		if e.ID == id {
			return e.Pattern()
		}
	}
	return p, fmt.Errorf("no built-in pattern %q", id) // a page asks for what it was given
}

// wrong is what a problem dialog says, line by line, under a head.
func wrong(head, lines string) map[string]any { return map[string]any{"head": head, "lines": lines} }

// library() lists the built-in patterns with their families, pictures and what
// the trade calls them.
func (a *app) library([]js.Value) any {
	if a.patterns != nil {
		return a.patterns
	}
	w := words.Said
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			continue // a test holds that there is none
		}
		x := listed(p)
		x["id"], x["family"] = e.ID, w.Library.Family(e.Family)
		a.patterns = append(a.patterns, x)
	}
	return a.patterns
}

// listed is how a list shows a pattern: with a picture, and what the trade
// calls it.
func listed(p engine.Pattern) map[string]any {
	w, s := words.Said, session.New(p)
	var heads []any
	for _, t := range scene.Thumbs(s.Tracks()) {
		heads = append(heads, map[string]any{"left": t.Left, "path": t.Path})
	}
	return map[string]any{
		"title": p.Title, "notes": p.Notes, "heads": heads, "trade": study.Listed(w, s),
		"insert": w.Strip.InsertShort, "insertLabel": fmt.Sprintf(w.Strip.InsertLabel, p.Title),
	}
}

// pick(id) opens a built-in pattern.
func (a *app) pick(args []js.Value) any {
	p, err := builtIn(args[0].String())
	if err == nil {
		err = a.bench.Session.Open(p)
	}
	return a.opened(err)
}

// insert(id) puts a built-in pattern's pieces after the piece in hand.
func (a *app) insert(args []js.Value) any {
	p, err := builtIn(args[0].String())
	if err != nil {
		return ""
	}
	return a.bench.Insert(p, a.now())
}

// file(first) returns the open pattern as a file, or what stands in the way. At
// the first go, what was made of a built-in pattern and still bears its title
// is to be given a name of its own, and one is proposed.
func (a *app) file(args []js.Value) any {
	p := a.bench.Session.Pattern()
	if len(args) > 0 && args[0].Truthy() && presets.Borrowed(p) {
		about := aboutNotes(p)
		about["propose"] = fmt.Sprintf(words.Said.Page.Proposed, p.Title)
		return about
	}
	data, err := presets.Encode(p)
	if err != nil {
		return map[string]any{"error": fmt.Sprintf(words.Said.Page.NotSaved, err)}
	}
	return map[string]any{"name": words.FileName(p.Title) + ".toml", "text": string(data)}
}

// saved(name) says that the page has given the file out.
func (a *app) saved(args []js.Value) any {
	a.bench.Say(fmt.Sprintf(words.Said.Page.Saved, args[0].String()), a.now())
	return nil
}

// about() returns title and notes.
func (a *app) about([]js.Value) any {
	p := a.bench.Session.Pattern()
	about := aboutNotes(p)
	about["title"] = p.Title
	about["trade"] = study.Line(words.Said, a.bench.Session)
	about["opening"] = a.bench.Openings()
	return about
}

// aboutNotes has a pattern's notes and, if they tell of the built-in pattern that
// it was made of, none, but those to be had back.
func aboutNotes(p engine.Pattern) map[string]any {
	own := presets.OwnNotes(p)
	about := map[string]any{"notes": own}
	if own != p.Notes {
		about["old"] = p.Notes
	}
	return about
}

// rename(title, notes) changes them; it returns what is wrong.
func (a *app) rename(args []js.Value) any {
	if err := a.bench.Rename(args[0].String(), args[1].String()); err != nil {
		return err.Error()
	}
	return ""
}
