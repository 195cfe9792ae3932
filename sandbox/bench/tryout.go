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
// until one is taken or all are left. Nothing is changed before. When the pattern
// becomes another one they are put aside, until it is again what they are made from.
type tryout struct {
	of     engine.Pattern // what they are made from
	rev    int            // of the session, when that was last open
	looked int            // the revision that of was last held against
	aside  bool           // and the person was told
	ways   []proposal
	at     int
	track  *engine.Track // of the way that is shown
}

// try shows proposals, beginning with one of them.
func (b *Bench) try(ways []proposal, at int) {
	b.tryout = nil
	if len(ways) > 0 {
		rev := b.Session.Revision()
		b.tryout = &tryout{of: b.Session.Pattern(), rev: rev, looked: rev, ways: ways}
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

// trying returns what is being tried out, nil while the pattern is another one.
func (b *Bench) trying() *tryout {
	k, rev := b.tryout, b.Session.Revision()
	if k == nil || b.inOrder() {
		return nil
	}
	if k.looked != rev {
		if k.looked = rev; k.of.Equal(b.Session.Pattern()) {
			k.rev = rev
		}
	}
	if k.rev != rev {
		return nil
	}
	return k
}

// tellAside says when what was shown is put aside, and shows it again when an
// undo has brought back what it is made from.
func (b *Bench) tellAside(now float64) {
	k := b.tryout
	if k == nil || b.plan.stageOnly || b.Session.Holding() || k.aside == (b.trying() == nil) {
		return
	}
	if k.aside = !k.aside; !k.aside {
		b.toast = toast{}
		b.host.Announce(b.tryoutText())
		return
	}
	text := b.Words.Tryout.Aside
	if b.Session.CanRedo() { // it was undone on purpose
		text = b.Words.Tryout.Left
	}
	did := b.toast.text
	b.say(text, now)
	b.toast.text = sentences([]string{did, text})
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
