//go:build js

package main

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"strconv"
	"strings"
	"syscall/js"
	"time"

	"whorlbench/presets"
	"whorlbench/sandbox/host"
	"whorlbench/sandbox/shelf"
	"whorlbench/sandbox/words"
)

// shown is one of the person's patterns as the list shows it, as long as it is
// not edited.
type shown struct {
	edited time.Time
	as     map[string]any
}

// begin returns what the bench starts with: what is kept, and over it what this
// tab showed before a reload though nothing had kept it. known is false at a
// first visit. A stage within another page keeps nothing and knows nothing.
func begin(page *host.Page, f host.Frame) (desk *shelf.Desk, problem error, known bool) {
	first, err := presets.First().Pattern()
	if err != nil {
		panic(fmt.Sprintf("the built-in library: %v", err)) // a test holds it
	}
	var store shelf.Store = host.Storage{}
	if f.StageOnly {
		store = &shelf.Memory{}
	}
	token := func() string { return strconv.FormatUint(rand.Uint64(), 36) }
	desk, known, problem = shelf.NewDesk(shelf.New(store, time.Now, token), first)
	if text := page.Noted(); text != "" {
		p, err := presets.Decode("", []byte(text))
		if err == nil && !p.Equal(desk.Session.Pattern()) {
			err = desk.Session.Open(p)
		}
		known = known || err == nil
	}
	if errors.Is(problem, shelf.ErrBlocked) {
		problem = nil // it is said when there is something to keep
	}
	return desk, problem, known
}

// keep keeps the work after each edit, and notes in this tab what the shelf
// does not have.
func (a *app) keep() {
	err := a.desk.Keep()
	note := ""
	if !a.desk.Kept() {
		if data, err := presets.Encode(a.bench.Session.Pattern()); err == nil {
			note = string(data)
		}
	} else if !a.kept {
		a.kept = true
		a.page.FirstKept()
	}
	a.page.Note(note)
	a.page.Notify(host.NoticeStale, "")
	if errors.Is(err, shelf.ErrFull) || errors.Is(err, shelf.ErrBlocked) {
		if !a.unkept {
			a.page.Notify(host.NoticeUnkept, err.Error())
		}
		a.unkept = true
		return
	}
	if err == nil && a.unkept && note == "" {
		a.unkept = false
		a.page.Notify(host.NoticeUnkept, "")
	}
	a.tell(err)
}

// tell says what is wrong, if something is.
func (a *app) tell(err error) {
	if err != nil {
		a.bench.Say(strings.ReplaceAll(err.Error(), "\n", " "), a.now())
	}
}

// text is what is wrong, or nothing.
func text(err error) any {
	if err == nil {
		return ""
	}
	return err.Error()
}

// own() lists the person's patterns, the one edited last first, and says what
// could not be read.
func (a *app) listOwn([]js.Value) any {
	w := &words.Said.Share.Own
	entries, problems := a.desk.List()
	list, known, open := []any{}, map[string]shown{}, a.desk.ID()
	for _, e := range entries {
		x, ok := a.own[e.ID]
		if !ok || !x.edited.Equal(e.Edited) {
			p, err := a.desk.Pattern(e.ID)
			if err != nil {
				problems = append(problems, err)
				continue
			}
			x = shown{e.Edited, listed(p)}
			x.as["id"], x.as["edited"] = e.ID, e.Edited.UnixMilli()
			for key, format := range map[string]string{"renameLabel": w.RenameLabel, "deleteLabel": w.DeleteLabel, "undoLabel": w.UndoLabel, "deleted": w.Deleted} {
				x.as[key] = fmt.Sprintf(format, p.Title)
			}
		}
		x.as["open"] = e.ID == open
		known[e.ID] = x
		list = append(list, x.as)
	}
	a.own = known
	return map[string]any{"list": list, "problems": lines(problems)}
}

func lines(problems []error) string {
	var out []string
	for _, err := range problems {
		if !errors.Is(err, shelf.ErrBlocked) { // the page says where nothing can be kept
			out = append(out, err.Error())
		}
	}
	return strings.Join(out, "\n")
}

// openOwn(id) opens one of them.
func (a *app) openOwn(args []js.Value) any {
	note, err := a.desk.Enter(args[0].String())
	if err != nil {
		return wrong(words.Said.Page.ProblemTitle, err.Error())
	}
	a.bench.Opened(a.now())
	a.tell(note)
	return nil
}

// insertOwn(id) puts its pieces after the piece in hand.
func (a *app) insertOwn(args []js.Value) any {
	p, err := a.desk.Pattern(args[0].String())
	if err != nil {
		return wrong(words.Said.Page.ProblemTitle, err.Error())
	}
	a.bench.Insert(p, a.now())
	return nil
}

// renameOwn(id, title) gives it another title; it returns what is wrong.
func (a *app) renameOwn(args []js.Value) any {
	id, title := args[0].String(), args[1].String()
	if id == a.desk.ID() {
		return text(a.bench.Rename(title, a.bench.Session.Pattern().Notes))
	}
	return text(a.desk.Rename(id, title))
}

// delete(id) takes it off the shelf, undelete(id) puts it back; both return what
// is wrong.
func (a *app) deleteOwn(args []js.Value) any   { return text(a.desk.Delete(args[0].String())) }
func (a *app) undeleteOwn(args []js.Value) any { return text(a.desk.Undelete(args[0].String())) }

// pack() returns all of them in one ZIP file.
func (a *app) pack([]js.Value) any {
	zip, problems := a.desk.PackAll()
	return packed(words.Said.Share.Own.AllName, zip, problems)
}

// packed is how the page is given a ZIP file to hand out.
func packed(name string, zip []byte, problems []error) any {
	data := js.Global().Get("Uint8Array").New(len(zip))
	js.CopyBytesToJS(data, zip)
	return map[string]any{"name": name + zipEnding, "data": data, "problems": lines(problems)}
}

const zipEnding = ".zip"

// isZIP goes by the name, as the kinds of files on a device do.
func isZIP(name string) bool { return strings.HasSuffix(strings.ToLower(name), zipEnding) }

// takeIn keeps the patterns of a ZIP file.
func (a *app) takeIn(name string, data []byte) any {
	w := &words.Said.Share.Own
	ids, problems := a.desk.TakeIn(data)
	switch n := len(ids); n {
	case 0:
	case 1:
		a.bench.Say(w.TakenInOne, a.now())
	default:
		a.bench.Say(fmt.Sprintf(w.TakenIn, n), a.now())
	}
	if len(problems) == 0 {
		return nil
	}
	var all []string
	for _, err := range problems {
		all = append(all, name+": "+err.Error())
	}
	return wrong(w.SomeLeft, strings.Join(all, "\n"))
}

// asides() returns the texts that were put aside as they could not be read.
func (a *app) asides([]js.Value) any {
	out := []any{}
	for _, x := range a.desk.Asides() {
		out = append(out, x.Text)
	}
	return out
}

// stored() is called when another tab has kept or deleted something.
func (a *app) stored([]js.Value) any {
	if a.desk.ID() != "" && a.desk.Stale() {
		a.page.Notify(host.NoticeStale, words.Said.Share.Own.OtherChanged)
	}
	return nil
}

// loadOther() opens what another tab has made of this work.
func (a *app) loadOther([]js.Value) any {
	note, err := a.desk.Enter(a.desk.ID())
	if err != nil {
		a.tell(err)
		return nil
	}
	a.bench.Opened(a.now())
	a.bench.Say(words.Said.Share.Own.OtherLoaded, a.now())
	a.tell(note)
	return nil
}
