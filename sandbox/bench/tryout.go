package bench

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// Names of a tryout's controls.
const (
	idTake    = "take"
	idLeave   = "leave"
	idNextWay = "next-way"
)

// proposal is a change that is offered: what it is, what it comes to, and the
// pattern that it makes.
type proposal struct {
	name    string // on a button
	result  string // what it comes to, in a sentence or two
	text    string // all of it
	pattern engine.Pattern
	lane    int
	edit    session.What
	sel     session.Select // what is in hand once it is taken
}

// tryout shows proposals, one at a time, moving beside the pattern as it is,
// until one is taken or all are left. Nothing is changed before.
type tryout struct {
	rev   int // of the pattern that they are made from
	ways  []proposal
	at    int
	track *engine.Track // of the way that is shown
}

// try shows proposals, beginning with one of them.
func (b *Bench) try(ways []proposal, at int) {
	b.tryout = nil
	if len(ways) > 0 {
		b.tryout = &tryout{rev: b.Session.Revision(), ways: ways}
		b.showWay(at)
	}
}

func (b *Bench) showWay(i int) {
	k := b.tryout
	k.at = i
	w := k.ways[i]
	k.track = engine.NewTrack(w.pattern.Lanes[w.lane])
	b.toast = toast{}
	b.host.Announce(b.tryoutText())
}

// trying returns what is being tried out, nil if the pattern has changed since.
func (b *Bench) trying() *tryout {
	if b.tryout != nil && b.tryout.rev != b.Session.Revision() {
		b.tryout = nil
	}
	return b.tryout
}

func (b *Bench) tryoutText() string {
	k := b.tryout
	if n := len(k.ways); n > 1 {
		return fmt.Sprintf(b.Words.Tryout.Way, k.at+1, n, k.ways[k.at].text)
	}
	return k.ways[k.at].text
}

// arrangeTryout puts what can be done with a proposal at the stage's foot.
func (b *Bench) arrangeTryout() {
	k := b.trying()
	if k == nil {
		return
	}
	w := &b.Words.Tryout
	r := b.tryoutRow()
	shares := []float64{1, 1.2}
	if len(k.ways) > 1 {
		shares = []float64{1, 1, 1.2}
	}
	at := spread(r, 6, shares...)
	b.add(widget.Control{ID: idLeave, Label: w.Leave.Label, Caption: w.Leave.Short, Rect: at[0], Keys: "Escape"})
	if len(k.ways) > 1 {
		b.add(widget.Control{ID: idNextWay, Label: w.Next.Label, Caption: w.Next.Short, Rect: at[1], Keys: "W"})
	}
	b.add(widget.Control{ID: idTake, Label: w.Take.Label, Caption: w.Take.Short, Rect: at[len(at)-1], Keys: "Enter", On: true})
}

// tryoutLines is how many lines the words of a tryout have on the stage; all of
// them are spoken.
const tryoutLines = 4

// tryoutWords returns how high they stand, with a gap.
func (b *Bench) tryoutWords() float64 {
	return tryoutLines*b.messageLine() + messagePad + 6
}

func (b *Bench) tryoutRow() display.Rect {
	const inset, most = 8, 460
	st := b.plan.stage
	high := b.plan.taller(theme.Finger, 20)
	w := min(st.W-2*inset, most*b.plan.text)
	return display.Rect{X: st.X + (st.W-w)/2, Y: st.Y + st.H - high - inset, W: w, H: high}
}

// pressTryout does what a tryout's button asks for; ok is false if id is none.
func (b *Bench) pressTryout(id string, now float64) (ok bool) {
	k := b.trying()
	if k == nil {
		return id == idTake || id == idLeave || id == idNextWay
	}
	switch id {
	case idTake:
		w := k.ways[k.at]
		b.tryout = nil
		b.report(b.Session.Adopt(w.edit, w.pattern, w.sel), now, func() string { return b.Words.Tryout.Taken })
	case idLeave:
		b.tryout = nil
		b.say(b.Words.Tryout.Left, now)
	case idNextWay:
		b.showWay((k.at + 1) % len(k.ways))
	default:
		return false
	}
	return true
}

// drawTryout draws the head's way and hand and head at the playhead as they
// would be, in the ink of what is only meant.
func (b *Bench) drawTryout(l *display.List, st *scene.Stage) {
	if k := b.trying(); k != nil {
		st.DrawGhost(l, k.track, b.Session.Beat())
	}
}
