package bench

import (
	"fmt"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// arrangeCompare declares what can be done with two patterns that are compared.
func (b *Bench) arrangeCompare() {
	c, at := b.compare, &b.beside
	w, v, k := &b.Words.Compare, &b.Words.View, &b.Words.Bench
	r := spread(at.play, actionGap, 44, 58, 44, 54)
	b.button(idStepBack, words.Named{Label: v.StepBack}, ",", r[0]).Icon = widget.IconStepBack
	b.addPlay(r[1])
	b.button(idStepOn, words.Named{Label: v.StepOn}, ".", r[2]).Icon = widget.IconStepOn
	b.button(idSpeed, k.Speed, "S", r[3]).Text = speedText(c.speed)
	_, track := at.ruler.CutLeft(12)
	_, track = track.CutRight(12)
	b.addRuler(w.Playhead, c.shown, at.ruler, track)
	shares := []float64{80, 62, 76}
	if !b.frame.Beside { // where the page has what differs beside the stages, it is there to be read
		shares = append(shares, 108)
	}
	r = at.spread(shares...)
	over := b.button(idOver, w.Over, "O", r[0])
	over.Kind, over.On = widget.Toggle, c.over
	b.button(idSwap, w.Swap, "X", r[1])
	take := words.Named{Label: fmt.Sprintf(w.Take.Label, w.Sides[c.other], c.sides[c.other].Pattern().Title), Short: fmt.Sprintf(w.Take.Short, w.Sides[c.other])}
	b.button(idTakeIn, take, "", r[2])
	if len(r) > 3 {
		b.button(idDiffers, w.Differs, "D", r[3])
	}
	b.button(idUnpair, words.Named{Label: w.Leave}, "Escape", at.leave).Icon = widget.IconDelete
}

// button adds a button and returns it, good until the next is added. As with what
// is drawn, it is called and not copied.
//
//go:noinline
func (b *Bench) button(id string, name words.Named, keys string, r display.Rect) *widget.Control {
	b.add(widget.Control{ID: id, Label: name.Label, Caption: name.Short, Keys: keys, Rect: r})
	return &b.controls[len(b.controls)-1]
}

// compareReads says where the playhead of both stands, and what each hand does
// there.
func (b *Bench) compareReads() string {
	c := b.compare
	at := fmt.Sprintf(b.Words.Bench.BeatOf, words.Value(frac.Near(c.along(), 0.005, 1000)), words.Value(frac.Near(c.shown, 1e-9, 1_000_000)))
	return fmt.Sprintf(b.Words.Compare.Reads, at, b.doing(0), b.doing(1))
}

// compareLook returns how one side is drawn: both at one scale, and each with
// its middle in the middle of its stage.
func (b *Bench) compareLook(side int) scene.Stage {
	c := b.compare
	reach := max(scene.Reach(c.sides[0].Tracks()), scene.Reach(c.sides[1].Tracks()))
	r := b.beside.stages[side]
	st := b.stageLook()
	st.Area, st.View, st.HideWhole = r, scene.FitReach(reach, r, stageMargin, b.Session.Mirror), true
	return st
}

// drawCompare draws both patterns, what each is called, and the controls.
func (b *Bench) drawCompare() *display.List {
	c, l, looks := b.compare, &b.list, b.looks()
	looks.Even(b.controls)
	st := [2]scene.Stage{b.compareLook(0), b.compareLook(1)}
	if b.kept.drawn {
		l.Rewind()
	} else {
		l.Reset(b.theme.Ground)
		l.FillRect(b.plan.stage, 0, b.theme.Stage)
		st[0].DrawStill(l, c.sides[0])
		if c.over {
			st[0].DrawOverStill(l, c.sides[1])
		} else {
			b.drawBetween(l)
			st[1].DrawStill(l, c.sides[1])
		}
		for i := range c.sides {
			b.drawTitle(l, i)
		}
		for i := range b.controls {
			if !b.isOnStage(&b.controls[i]) {
				looks.Draw(l, &b.controls[i])
			}
		}
		l.Keep()
		b.kept.drawn = b.kept.ok
	}
	st[0].DrawMoving(l, c.sides[0])
	if c.over {
		st[0].DrawOverMoving(l, c.sides[1])
	} else {
		st[1].DrawMoving(l, c.sides[1])
	}
	for i := range c.sides {
		b.drawNow(l, i)
	}
	b.drawCompareKey(l, &st[0])
	for i := range b.controls {
		if b.isOnStage(&b.controls[i]) {
			looks.Draw(l, &b.controls[i])
		}
	}
	if r := b.ruler(); r != nil {
		looks.DrawGrip(l, r)
	}
	return l
}

// drawCompareKey says in the margin over the first stage which stroke is which;
// what is laid over it is all in dashes.
func (b *Bench) drawCompareKey(l *display.List, st *scene.Stage) {
	c, r := b.compare, b.beside.stages[0]
	shown := c.sides[:]
	if c.over {
		shown = c.sides[:1]
	}
	room := r.W - 3*edge
	if leave := b.beside.leave; r.Contains(leave.Centre()) {
		room = leave.X - r.X - 3*edge
	}
	size := theme.TextSmall * min(b.plan.text, foldActions)
	if b.plan.desk {
		size = theme.TextBody * min(b.plan.text, foldActions)
	}
	entries, _ := b.layKey(st, size, room, shown...)
	b.drawKey(l, entries, display.Pt{X: r.X + 2*edge, Y: r.Y + 6 + size}, size, 2.5, b.theme.Stage, b.theme.Muted)
}

// drawBetween draws a line between two stages that stand beside each other; one
// above the other, the names lie between.
func (b *Bench) drawBetween(l *display.List) {
	left, right := b.beside.stages[0], b.beside.stages[1]
	if left.Y == right.Y {
		l.Segment(display.Pt{X: right.X, Y: left.Y}, display.Pt{X: right.X, Y: left.Y + left.H}, 1, b.theme.Hair)
		return
	}
	name := display.Rect{X: left.X, Y: left.Y + left.H, W: left.W, H: right.Y - left.Y - left.H}
	l.FillRect(name, 0, b.theme.Ground)
}

// titleAt returns where a side's letter and its title begin, on one line: the
// letter is alone at the left, as both lines of what is said stand beyond it.
func (b *Bench) titleAt(side int) (letter, title display.Pt, room float64) {
	r := b.beside.names[side]
	wide := 24 * b.plan.text
	if b.compare.over {
		wide += sampleWide
	}
	y := r.Y + 19*b.plan.text
	return display.Pt{X: r.X, Y: y}, display.Pt{X: r.X + wide, Y: y}, r.W - wide
}

// sampleWide is the room for a sample of a pattern's stroke, where both are on
// one stage.
const sampleWide = 42.0

// drawTitle writes a side's letter and title, with a sample of its stroke where
// both are on one stage.
func (b *Bench) drawTitle(l *display.List, side int) {
	c, t := b.compare, b.theme
	letter, at, room := b.titleAt(side)
	size := theme.TextLarge * b.plan.text
	l.Text(letter, size, true, t.Ink, b.Words.Compare.Sides[side])
	title := c.sides[side].Pattern().Title
	size = b.shrink(title, size, theme.TextBody, room)
	l.Text(at, size, true, t.Ink, b.faces.Fit(title, size, true, room))
	if !c.over {
		return
	}
	y := at.Y - 0.34*theme.TextLarge*b.plan.text
	from, to := display.Pt{X: at.X - sampleWide, Y: y}, display.Pt{X: at.X - 14, Y: y}
	left := c.sides[side].Tracks()[0].Lane.Side == engine.Left
	if side == 1 {
		const dash, gap = 7.0, 4.0 // px
		for x := from.X; x < to.X-dash/2; x += dash + gap {
			l.Segment(display.Pt{X: x, Y: y}, display.Pt{X: min(x+dash, to.X), Y: y}, 2.5, t.Focus)
		}
		scene.Diamond(l, display.Pt{X: to.X - 6, Y: y}, 7, t.Focus, !left)
		return
	}
	l.Segment(from, to, 3, t.Of(left))
	if left {
		l.Ring(display.Pt{X: to.X - 6, Y: y}, 5, 2.5, t.Of(left))
	} else {
		l.Disc(display.Pt{X: to.X - 6, Y: y}, 6, t.Of(left))
	}
}

// drawNow writes what each hand of a side does at the playhead.
func (b *Bench) drawNow(l *display.List, side int) {
	_, at, room := b.titleAt(side)
	text := b.doing(side)
	size := theme.TextBody * b.plan.text
	for size > theme.TextSmall && b.faces.Width(text, size, false) > room {
		size -= 0.5
	}
	at.Y += 20 * b.plan.text
	l.Text(at, size, false, b.theme.Muted, b.faces.Fit(text, size, false, room))
}

// doing says in one line what a side's hands do at the playhead.
func (b *Bench) doing(side int) string { return strings.Join(b.doings(b.compare.sides[side]), " · ") }

// doings says what each hand that is shown does at the playhead.
func (b *Bench) doings(s *session.Session) []string {
	var parts []string
	for i, t := range s.Tracks() {
		if s.Hidden(i) {
			continue
		}
		_, piece, _ := t.Locate(s.Beat())
		name := b.Words.ShortName(s.Figure(session.Select{Lane: i, Piece: piece}))
		if len(s.Tracks()) > 1 {
			name = b.Words.Letter(t.Lane.Side) + " " + name
		}
		parts = append(parts, name)
	}
	return parts
}
