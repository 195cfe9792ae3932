// Package bench is the whole screen: it lays the controls out, turns intents
// into session operations and draws everything as one display list. It needs
// neither a window nor a browser; what only a browser can do it asks of a Host.
package bench

import (
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// Host is what the bench asks of the page around it.
type Host interface {
	// Announce says a text through the page's live region.
	Announce(text string)
	// Ask opens a question; its answer comes back through Bench.Answer.
	Ask(q Question)
	// Choose opens a list to pick from; the pick comes back through
	// Bench.Chosen.
	Choose(c Choice)
	// ShowSheet opens something to be read.
	ShowSheet(s Sheet)
	// SheetOpen reports whether a sheet can be seen: to show it again fills it
	// anew.
	SheetOpen(id string) bool
	// Comparing says that two patterns are compared, for which the whole page is
	// wanted, or no longer.
	Comparing(on bool)
	// TakeCompared asks to open the pattern that is compared with the open one.
	TakeCompared()
	// LeaveBig asks the page to show all of the bench again.
	LeaveBig()
	// Changed says that an edit is complete: the time to keep the work.
	Changed()
	// Settled says that the person's settings have changed: the time to keep
	// them.
	Settled()
	// Heard returns how many seconds of practice have been heard, by the clock of
	// what sounds.
	Heard() float64
	// Count shows where practice is; it has changed.
	Count(c Count)
}

// Question is a value to be typed.
type Question struct {
	ID    string // of the control
	Label string
	Value string
	Hint  string
	Note  string // a caution to be shown with it
}

// Choice is a list to pick one thing from.
type Choice struct {
	ID      string   `json:"id"` // of the control
	Label   string   `json:"label"`
	Text    string   `json:"text"` // what is to be known before
	Options []Option `json:"options"`
}

// Option is one thing to pick; On says that it is what holds now.
type Option struct {
	ID      string        `json:"id"`
	Label   string        `json:"label"`
	Detail  string        `json:"detail"`
	Head    string        `json:"head"` // of the options that follow, where another begins
	On      bool          `json:"on"`
	Picture *scene.Motion `json:"picture"` // nil for none
}

// Bench is the instrument.
type Bench struct {
	Session *session.Session
	Words   *words.Table

	host      Host
	faces     *face.Set
	theme     *theme.Theme
	frame     Frame
	plan      plan
	planned   planFor
	kept      kept
	arranged  int // how often the controls were
	router    widget.Router
	controls  []widget.Control
	intents   []widget.Intent
	list      display.List
	focus     string
	lift      *lift
	edge      *border
	window    window
	wait      waiting
	toast     toast
	hintUntil float64 // milliseconds
	seen      seen
	told      told
	study     study.Study
	fits      fitting
	notes     noteLines
	pictures  map[pictureKey][]display.Pt
	dials     []dial
	view      scene.Options
	stage     onStage
	slots     []string // the dials that have sliders, first to last
	alone     bool     // pieces on one path change one by one
	tryout    *tryout
	following followed
	ways      []proposal      // that the sheet opened last offers
	several   *session.Select // from which the next tap on a piece selects
	compare   *comparing      // nil: nothing is compared
	beside    comparePlan
	running   runningOrder
	point     point
	blank     bool // the big view is dark

	practising *practising // nil: not
	openings   int         // how often a pattern was opened
}

// Frame is the room that the bench has, in CSS pixels: the size of the page
// and what is taken at its edges by the header and the screen's own shape.
type Frame struct {
	W, H                     float64
	Top, Right, Bottom, Left float64
	// Text is how many times the usual size text is wanted, 1 to 2; 0 is 1.
	Text float64
	// StageOnly leaves everything out but the stage, to be looked at within another
	// page.
	StageOnly bool
	// Line adds to that words that can be read from the last row, controls, and a
	// way back.
	Line bool
	// Practice adds to StageOnly what each hand does, to be read from afar.
	Practice bool
	// Beside says that the page shows what differs, beside two patterns that are
	// compared.
	Beside bool
}

// seen is what the last announcement was about.
type seen struct {
	rev   int
	sel   session.Select
	said  string
	whole string
	told  int // the revision of which whole says all there is
}

// toast is a short message over the stage.
type toast struct {
	text  string
	until float64 // milliseconds
}

// How long a message stays, and the first visitor's hint, in milliseconds.
const (
	toastTime   = 2800
	toastLetter = 60 // for each letter of a long one
	hintTime    = 10_000
)

// New returns a bench for a session.
func New(s *session.Session, w *words.Table, faces *face.Set, host Host) *Bench {
	b := &Bench{Session: s, Words: w, faces: faces, host: host, theme: &theme.Day}
	b.dials = b.makeDials(&w.Dials)
	b.slots = firstSlots()
	b.seen = seen{rev: s.Revision(), sel: s.Selected()}
	return b
}

// firstSlots returns the dials that have sliders at first.
func firstSlots() []string { return []string{idArm, idProp, idLength, idRadius} }

// SetTheme chooses the palette.
func (b *Bench) SetTheme(t *theme.Theme) { b.theme = t }

// SetFrame says how much room there is. Out of the big view, what it has shown
// gives way to what is open.
func (b *Bench) SetFrame(f Frame) {
	if b.frame.Line && !f.Line {
		b.leaveBig()
	}
	if !b.frame.Line && f.Line {
		b.toast = toast{} // it was about what is not seen there
		b.enterBig()
	}
	appears := f.Beside && !b.frame.Beside
	if b.frame = f; appears && b.compare != nil {
		b.fillDiffers()
	}
}

// SetFocus says which control's twin has the keyboard, empty for none.
func (b *Bench) SetFocus(id string) { b.focus = id }

// ShowHint lets the first visitor's line be seen until the first act, or for
// a while; now is in milliseconds.
func (b *Bench) ShowHint(now float64) {
	b.hintUntil = now + hintTime
	b.host.Announce(b.Words.Bench.FirstHint)
}

// Value returns what a slider stands at now, drawn or not; 0 if there is none.
func (b *Bench) Value(id string) float64 {
	if d := b.dial(id); d != nil {
		return d.get(b.Session).Float()
	}
	switch id {
	case idPlayhead:
		if b.compare != nil {
			return b.compare.along()
		}
		return b.Session.RoundBeat()
	case idEnd:
		return b.Session.SelectedPiece().Length().Float()
	case idBegin:
		at := b.Session.Selected()
		return b.Session.Pattern().Lanes[at.Lane].Pieces[max(at.Piece-1, 0)].Length().Float()
	}
	if at, ok := b.seamOf(id); ok {
		return b.Session.Tracks()[at.Lane].Legs[at.Piece].Span
	}
	return 0
}

// Zoom returns how many CSS pixels a bench pixel takes: more than one on a
// screen that is seen from afar.
func (b *Bench) Zoom() float64 { return b.plan.zoom }

// Controls returns the controls as laid out last, in bench pixels.
func (b *Bench) Controls() []widget.Control {
	b.Playhead()
	return b.controls
}

// Pointers works the controls with pointer events in CSS pixels; now is in
// milliseconds.
func (b *Bench) Pointers(events []widget.Pointer, now float64) {
	for _, ev := range events {
		b.arrange()
		ev.At = ev.At.Scale(1 / b.plan.zoom)
		if b.compare == nil && b.pinchStrip(ev, now) {
			continue
		}
		var captured bool
		b.intents, captured = b.router.Handle(b.intents[:0], ev, b.controls)
		for _, in := range b.intents {
			b.Do(in, now)
		}
		if !captured {
			b.onStageEvent(ev, now)
		}
		b.await(ev, now)
	}
}

// Step moves time on by seconds and returns whether the picture goes on
// changing by itself.
func (b *Bench) Step(seconds, now float64) (moving bool) {
	switch {
	case b.practising != nil:
		b.followSound()
	case b.compare != nil:
		b.compare.advance(seconds)
	case b.Session.Playing:
		b.Session.Advance(seconds)
	}
	b.waited(now)
	b.tellAside(now)
	if b.toast.text != "" && now >= b.toast.until {
		b.toast = toast{}
	}
	if now >= b.hintUntil {
		b.hintUntil = 0
	}
	return b.playing()
}

// playing reports whether what is seen plays.
func (b *Bench) playing() bool {
	if b.compare != nil {
		return b.compare.playing
	}
	return b.Session.Playing
}

// NextChange returns when, in milliseconds, the picture changes by itself
// though nothing moves; ok is false if it does not.
func (b *Bench) NextChange() (at float64, ok bool) {
	switch {
	case b.wait.id != "":
		return b.wait.at, true
	case b.toast.text != "":
		return b.toast.until, true
	case b.hintUntil > 0:
		return b.hintUntil, true
	}
	return 0, false
}

// Draw returns everything that is to be seen, in bench pixels. The list is
// the bench's own, good until the next call.
func (b *Bench) Draw() *display.List {
	b.arrange()
	if b.compare != nil {
		return b.drawCompare()
	}
	if b.plan.stageOnly {
		return b.drawStageOnly()
	}
	l, looks, st := &b.list, b.looks(), b.stageLook()
	looks.Even(b.controls)
	// What is seen closer lies over its surroundings until these cover it again.
	closer := b.stage.zoom.On() || b.stage.drag != nil
	if b.kept.drawn {
		l.Rewind()
	} else {
		l.Reset(b.theme.Ground)
		b.drawStageStill(l, &st)
		if closer {
			b.coverSurroundings(func(r display.Rect) { l.FillRect(r, 0, b.theme.Ground) })
		}
		b.drawPanel(l, &looks)
		l.Keep()
		b.kept.drawn = b.kept.ok
	}
	b.drawStageMoving(l, &st)
	if closer {
		b.coverSurroundings(l.Again)
	}
	b.drawMessage(l)
	for i := range b.controls {
		if b.isOnStage(&b.controls[i]) {
			looks.Draw(l, &b.controls[i])
		}
	}
	b.drawCut(l)
	b.drawRound(l)
	if c := b.ruler(); c != nil {
		looks.DrawGrip(l, c)
	}
	b.drawPlayhead(l)
	if b.lift == nil { // over the playhead, which often stands on a seam
		b.drawSeams(l)
		b.drawSeamFocus(l, &looks)
	}
	b.drawWindow(l)
	b.drawEdge(l)
	return l
}

// drawPanel draws all round the stage but what the playhead moves.
func (b *Bench) drawPanel(l *display.List, looks *widget.Looks) {
	b.drawName(l)
	b.drawStrip(l)
	for i := range b.controls {
		if c := &b.controls[i]; c.Kind != widget.Piece && !b.isOnStage(c) {
			looks.Draw(l, c)
		}
	}
	b.drawPieces(l, looks)
	b.drawSlackOnStrip(l)
	b.drawBand(l)
	b.drawTags(l)
}

// isOnStage reports whether a control stands over the pattern.
func (b *Bench) isOnStage(c *widget.Control) bool { return b.plan.stage.Contains(c.Rect.Centre()) }

func (b *Bench) pressed(id string) bool {
	held, tap := b.router.Grabbed(id)
	return held && (tap || b.lift == nil)
}

// stageMargin is the clear space round the widest reach, in pixels.
const stageMargin = 26
