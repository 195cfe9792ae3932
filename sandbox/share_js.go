//go:build js

package main

import (
	"fmt"
	"syscall/js"

	"whorlbench/presets/link"
	"whorlbench/sandbox/qr"
	"whorlbench/sandbox/words"
)

// share(page, public) returns the link of the open pattern, and its code or why
// there is none.
func (a *app) share(args []js.Value) any {
	p := a.bench.Session.Pattern()
	shared, err := link.Share(p, args[0].String(), args[1].String())
	if err != nil {
		return map[string]any{"refused": err.Error()}
	}
	out := map[string]any{"url": shared.URL, "title": p.Title}
	code, err := qr.Of(shared)
	if err != nil {
		out["noCode"] = err.Error()
		return out
	}
	out["code"] = code.Path()
	out["width"] = code.Width()
	out["label"] = fmt.Sprintf(words.Said.Share.Link.CodeLabel, p.Title)
	return out
}

// openLink(fragment) opens the pattern in the fragment of a link; it returns
// nothing if there is none meant to be in it, else what is wrong.
func (a *app) openLink(args []js.Value) any {
	w, fragment := &words.Said.Share.Dialog, args[0].String()
	if !link.Holds(fragment) {
		return nil
	}
	p, err := link.Decode(fragment)
	if err == nil && p.Equal(a.bench.Session.Pattern()) {
		a.bench.Say(w.AlreadyOpen, a.now())
		return map[string]any{}
	}
	if err == nil {
		err = a.desk.Take(p)
	}
	if err != nil {
		return wrong(w.NotOpened, err.Error())
	}
	a.bench.Opened(a.now())
	if a.desk.ID() != "" && !a.stageOnly {
		a.bench.Say(fmt.Sprintf(w.Opened, p.Title), a.now())
	}
	return map[string]any{}
}
