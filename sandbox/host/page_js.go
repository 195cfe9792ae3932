//go:build js

package host

import (
	"encoding/json"
	"fmt"
	"syscall/js"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/widget"
)

// Page is the page's script, window.whorlbenchPage.
type Page struct {
	script js.Value
	raw    []byte
	twins  string
	title  string

	// OnChange is called when an edit is complete.
	OnChange func()
	// OnTake is called to open the pattern that is compared with the open one.
	OnTake func()
}

// NewPage finds the page's script.
func NewPage() *Page { return &Page{script: js.Global().Get("whorlbenchPage")} }

// Words returns the page's language as words.Read takes it, empty for English.
func (p *Page) Words() string { return p.script.Get("words").String() }

// Announce says a text through the live region.
func (p *Page) Announce(text string) { p.script.Call("announce", text) }

// Ask opens a question.
func (p *Page) Ask(q bench.Question) {
	p.script.Call("ask", map[string]any{"id": q.ID, "label": q.Label, "value": q.Value, "hint": q.Hint, "note": q.Note})
}

// Choose opens a list to pick from.
func (p *Page) Choose(c bench.Choice) { p.script.Call("choose", encode(c)) }

// ShowSheet opens something to be read.
func (p *Page) ShowSheet(s bench.Sheet) { p.script.Call("showSheet", encode(s)) }

// SheetOpen reports whether a sheet can be seen.
func (p *Page) SheetOpen(id string) bool { return p.script.Call("sheetOpen", id).Bool() }

// encode writes what the page's script reads as JSON.
func encode(v any) string {
	data, err := json.Marshal(v)
	if err != nil { // only a number that is not finite could do it
		panic(fmt.Sprintf("host: %v", err))
	}
	return string(data)
}

// Changed says that an edit is complete.
func (p *Page) Changed() {
	if p.OnChange != nil {
		p.OnChange()
	}
}

// Comparing gives two patterns the whole page, or the bench its own again.
func (p *Page) Comparing(on bool) { p.script.Call("comparing", on) }

// TakeCompared opens the pattern that is compared.
func (p *Page) TakeCompared() {
	if p.OnTake != nil {
		p.OnTake()
	}
}

// Problem says what is wrong, under a head, line by line.
func (p *Page) Problem(wrong map[string]any) { p.script.Call("problem", wrong) }

// LeaveBig shows all of the bench again.
func (p *Page) LeaveBig() { p.script.Call("leaveBig") }

// Settled lets the page keep the person's settings.
func (p *Page) Settled() { p.script.Call("settled") }

// Heard returns how many seconds of practice have been heard.
func (p *Page) Heard() float64 { return p.script.Call("heard").Float() }

// Count shows where practice is.
func (p *Page) Count(c bench.Count) {
	p.script.Call("count", map[string]any{
		"beat": c.Beat, "first": c.First, "countIn": c.CountIn,
		"number": c.Number, "round": c.Round, "tempo": c.Tempo, "next": c.Next, "slack": c.Slack,
	})
}

// Pointers takes the pointer events that have come since the last call and
// appends them to dst.
func (p *Page) Pointers(dst []widget.Pointer) []widget.Pointer {
	data := p.script.Call("takePointers")
	n := data.Get("byteLength").Int()
	if n == 0 {
		return dst
	}
	if cap(p.raw) < n {
		p.raw = make([]byte, n)
	}
	p.raw = p.raw[:n]
	js.CopyBytesToGo(p.raw, data)
	return DecodePointers(dst, p.raw)
}

// ShowTwins gives the page the controls, if they have changed.
func (p *Page) ShowTwins(controls []widget.Control, zoom float64) {
	if s := EncodeTwins(Twins(controls, zoom)); s != p.twins {
		p.twins = s
		p.script.Call("showTwins", s)
	}
}

// MoveTwin gives the page the value of a slider's twin, where nothing else has
// changed.
func (p *Page) MoveTwin(c widget.Control) {
	p.twins = "" // no longer what the page has
	p.script.Call("moveTwin", c.ID, c.Value, c.Text)
}

// ShowTitle gives the page the pattern's title, if it has changed.
func (p *Page) ShowTitle(title string) {
	if title != p.title {
		p.title = title
		p.script.Call("showTitle", title)
	}
}

// Noted returns the text that Note has kept, empty if there is none.
func (p *Page) Noted() string { return p.script.Call("noted").String() }

// Note keeps a text in this tab's history, which outlives a reload even where
// nothing can be stored; an empty one takes it away.
func (p *Page) Note(text string) { p.script.Call("noteWork", text) }

// The notices that Notify shows, each with a thing to do about it.
const (
	NoticeUnkept = "unkept" // save as a file
	NoticeStale  = "stale"  // load what another tab has kept
)

// Notify shows a notice until it is done, put away or withdrawn by an empty
// text.
func (p *Page) Notify(notice, text string) { p.script.Call("notify", notice, text) }

// FirstKept says that work has been kept for the first time at this visit.
func (p *Page) FirstKept() { p.script.Call("firstKept") }

// WakeAfter schedules a frame in some milliseconds.
func (p *Page) WakeAfter(ms float64) { p.script.Call("wakeAfter", ms) }

// Ready says that the bench can be used.
func (p *Page) Ready() { p.script.Call("ready") }

// Fail says that the program has to stop.
func (p *Page) Fail(text string) { p.script.Call("fail", text) }

// Frame is what the page says about the room for the bench.
type Frame struct {
	W, H                     float64
	Top, Right, Bottom, Left float64
	Text                     float64 // how much larger than usual text is wanted
	Night, Still             bool
	StageOnly, Line          bool
	Practice                 bool
	Beside                   bool // what differs is shown beside two patterns
}

// Frame reads the room for the bench, and what the person prefers.
func (p *Page) Frame() (f Frame) {
	_ = json.Unmarshal([]byte(p.script.Call("frame").String()), &f) // our own script wrote it
	return f
}

// Serve gives the page's script the program's functions.
func (p *Page) Serve(functions map[string]func(args []js.Value) any) {
	program := js.Global().Get("Object").New()
	for name, f := range functions {
		program.Set(name, js.FuncOf(func(_ js.Value, args []js.Value) any { return f(args) }))
	}
	js.Global().Set("whorlbenchProgram", program)
}
