package bench

import (
	"fmt"
	"image/color"
	"math"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/grip"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// Names of the big view's own controls; the page's keys know them, too.
const (
	idSmall    = "small" // one step back: from the dark, from pointing, from the big view
	idPoint    = "point"
	idPrevious = "previous"
	idAfter    = "next"
	idBlank    = "blank"
	idSlower   = "slower"
	idFaster   = "faster"
	idSteps    = "steps"
)

// arrangeStageOnly declares the one control of a stage that stands alone, in
// its lower right corner, or the two rows of a big view. Who practises has the
// page's.
func (b *Bench) arrangeStageOnly() {
	if b.practising != nil {
		return
	}
	const inset = 4
	st, s := b.plan.stage, b.Session
	if !b.plan.big {
		b.addPlay(display.Rect{X: st.X + st.W - theme.Finger - inset, Y: st.Y + st.H - theme.Finger - inset, W: theme.Finger, H: theme.Finger})
		return
	}
	w, v, o := &b.Words.Bench, &b.Words.View, &b.running
	leave, back, on := words.Named{Label: v.LeaveBig, Short: v.Leave}, v.StepBack, v.StepOn
	if b.point.on {
		leave, back, on = v.LeavePoint, v.PieceBack, v.PieceOn
	}
	play, icon := w.Play.Label, widget.IconPlay
	if s.Playing {
		play, icon = w.Pause.Label, widget.IconPause
	}
	list := []bigKey{
		{id: idStepBack, label: back, icon: widget.IconStepBack, keys: "ArrowLeft"},
		{id: idPlay, label: play, icon: icon, keys: "Space"},
		{id: idStepOn, label: on, icon: widget.IconStepOn, keys: "ArrowRight"},
		{id: idSpeed, label: w.Speed.Label, caption: w.Speed.Short, text: speedText(s.Speed), keys: "S"},
		{id: idPrevious, label: v.Previous.Label, caption: v.Previous.Short, icon: widget.IconPrevious, off: o.at == 0, keys: "PageUp"},
		{id: idAfter, label: v.Next.Label, caption: v.Next.Short, icon: widget.IconNext, off: o.at == len(o.patterns)-1, keys: "PageDown"},
		{id: idPoint, kind: widget.Toggle, label: v.Point.Label, caption: v.Point.Short, icon: widget.IconPoint, keys: "H"},
		{id: idBlank, label: v.Dark.Label, caption: v.Dark.Short, icon: widget.IconDark, keys: "B"},
		{id: idSmall, label: leave.Label, caption: leave.Short, icon: widget.IconDelete, keys: "Escape"},
	}
	rows := [][]float64{{1, 1, 1, 1}, {1, 1, 1, 1, 1}}
	switch {
	case !b.inOrder():
		rows[1] = rows[1][2:]
		list = append(list[:4], list[6:]...)
	case b.plan.bigRows > 2:
		rows = [][]float64{rows[0], rows[1][:2], rows[1][2:]}
	}
	var places []display.Rect
	rest := b.plan.keys
	for _, shares := range rows {
		var r display.Rect
		r, rest = rest.CutTop((b.plan.keys.H+rowGap)/float64(len(rows)) - rowGap)
		_, rest = rest.CutTop(rowGap)
		places = append(places, spread(r, rowGap, shares...)...)
	}
	if b.blank { // the dark is one control, which leads back
		places[0] = display.Rect{W: b.frame.W / b.plan.zoom, H: b.frame.H / b.plan.zoom}
		list = []bigKey{{id: idBlank, label: v.Unblank, keys: "B", bare: true}}
	}
	for i, k := range list {
		b.add(widget.Control{ID: k.id, Kind: k.kind, Label: k.label, Caption: k.caption, Icon: k.icon, Text: k.text,
			Disabled: k.off, Bare: k.bare, On: k.kind == widget.Toggle && b.point.on, Keys: k.keys, Rect: places[i]})
	}
}

// bigKey is what a control of the big view differs in from the others.
type bigKey struct {
	id, label, caption, text, keys string
	icon                           widget.Icon
	kind                           widget.Kind
	off, bare                      bool
}

// pressBig carries out what the big view alone has, or has otherwise than the
// bench; ok is false if the bench does it. In the dark, any press brings the light
// back and no more.
func (b *Bench) pressBig(id string, now float64) (ok bool) {
	s := b.Session
	if b.blank {
		b.blank = false
		return true
	}
	by := 1
	switch id {
	case idStepBack, idPrevious, idSlower:
		by = -1
	}
	switch id {
	case idBlank:
		b.blank = true
		b.host.Announce(b.Words.View.Blank)
	case idPoint, idSmall:
		switch {
		case b.point.on:
			b.endPoint()
		case id == idPoint:
			b.beginPoint()
		default:
			b.host.LeaveBig()
		}
	case idPrevious, idAfter:
		if b.inOrder() {
			b.nextItem(by, now)
		} else { // a clicker's keys step where there is nothing to go on to
			b.stepBig(by)
		}
	case idStepBack, idStepOn:
		b.stepBig(by)
	case idSlower, idFaster:
		// The speeds go from the tempo's down, and the last is twice that.
		n := len(speeds)
		fall := (slices.Index(speeds, s.Speed)+1)%n - by
		s.Speed = speeds[(min(max(fall, 0), n-1)+n-1)%n]
		b.host.Announce(b.beatNow())
	case idSteps:
		v := &b.Words.View
		s.Steps = (s.Steps + 1) % session.Steps(len(v.StepsBy))
		b.say(fmt.Sprintf(v.StepsNow, v.StepsBy[s.Steps]), now)
		b.host.Settled()
	default:
		return false
	}
	return true
}

// stepBig goes a beat or petal on or back or, while a piece is pointed at, a
// piece.
func (b *Bench) stepBig(by int) {
	if b.Session.Playing = false; b.point.on {
		b.pointStep(by)
		return
	}
	b.Session.Step(by)
}

// drawStageOnly draws the pattern and those controls; in a big view also words.
func (b *Bench) drawStageOnly() *display.List {
	l, looks, st := &b.list, b.looks(), b.stageLook()
	if b.blank {
		l.Reset(color.NRGBA{A: 255})
		l.Keep() // else what stayed of the last picture would still be there
		return l
	}
	if b.kept.drawn {
		l.Rewind()
	} else {
		l.Reset(b.theme.Ground)
		b.drawStageStill(l, &st)
		l.Keep()
		b.kept.drawn = b.kept.ok
	}
	if b.point.on {
		st.DrawPointMoving(l, b.Session)
	} else {
		st.DrawMoving(l, b.Session)
	}
	if p := b.practising; p != nil && p.shown.CountIn {
		st.DrawSetOff(l, b.Session, b.Session.Beat())
	}
	if b.plan.big {
		b.drawSay(l)
		looks.Text = max(looks.Text, b.plan.bigText())
		looks.Even(b.controls)
	}
	b.drawDoings(l)
	for i := range b.controls {
		looks.Draw(l, &b.controls[i])
	}
	return l
}

// drawSay writes which pattern this is, what the whole is called, what each hand
// does at the playhead or which piece is pointed at, and the beat; at the foot,
// where that leaves room, which stroke is which. Each has its place, so that
// nothing jumps as the pattern plays.
func (b *Bench) drawSay(l *display.List) {
	s, t, r, st := b.Session, b.theme, b.plan.say, b.stageLook()
	size, least := b.plan.word, b.plan.least
	high := size * wordLine
	title, ink := s.Pattern().Title, t.Muted
	if b.inOrder() {
		title = b.orderSays(b.Words.View.OrderNow)
	}
	if b.toast.text != "" { // in its place for a while
		title, ink = b.toast.text, t.Ink
	}
	titles := b.wrapMost(title, size, r.W, 2)
	hands := 0.0 // lines
	for i := range s.Tracks() {
		if !s.Hidden(i) {
			hands += 2
		}
	}
	if b.point.on {
		hands = 4
	}
	const gaps, beat = 1, 1 // lines
	rest := r.H - (float64(len(titles))+hands+gaps+beat)*high
	whole := b.wholeLines(least, r.W, max(int(rest/(least*wordLine)), 1))
	rest -= float64(len(whole)) * least * wordLine
	entries, lines := b.layKey(&st, least, r.W, s)
	if key := float64(lines) * least * wordLine; key < rest-0.5*high {
		b.drawKey(l, entries, display.Pt{X: r.X, Y: r.Y + r.H - key + 0.9*least}, least, 3.5, t.Ground, t.Muted)
		rest -= key + 0.5*high
	}

	y := r.Y + max(rest/2, 0)
	write := func(lines []string, size, indent float64, ink color.NRGBA) {
		for _, line := range lines {
			l.Text(display.Pt{X: r.X + indent, Y: y + size}, size, true, ink, line)
			y += size * wordLine
		}
	}
	write(titles, size, 0, ink)
	write(whole, least, 0, t.Muted)
	y += gaps * high / 2
	top := y
	if b.point.on {
		write(b.wrapMost(b.pieceSentence(), size, r.W, 4), size, 0, t.Ink)
		y = top + hands*high
	}
	for i, k := range s.Tracks() {
		if s.Hidden(i) || b.point.on {
			continue
		}
		_, piece, _ := k.Locate(s.Beat())
		b.drawHand(l, display.Pt{X: r.X + size*0.5, Y: y + size*0.64}, size*0.4, k.Lane.Side == engine.Left)
		write(b.wrapMost(b.Words.ShortName(s.Figure(session.Select{Lane: i, Piece: piece})), size, r.W-size*1.4, 2), size, size*1.4, t.Ink)
		top += 2 * high
		y = top
	}
	y += gaps * high / 2
	write([]string{b.faces.Fit(b.beatNow(), size, true, r.W)}, size, 0, t.Muted)
}

// wrapMost breaks a text into so many lines at most; what is too much ends in an
// ellipsis.
func (b *Bench) wrapMost(text string, size, room float64, most int) []string {
	lines := b.faces.Wrap(text, size, true, room)
	if len(lines) > most {
		lines = lines[:most]
		lines[most-1] = b.faces.Fit(lines[most-1]+" …", size, true, room)
	}
	return lines
}

// wholeLines is what the whole is called, in so many lines at most: all of it, else
// without what is wrong with it, else in the fewest words.
func (b *Bench) wholeLines(size, room float64, most int) []string {
	full := b.wholeLine()
	if full == "" {
		return nil
	}
	name, _, _ := strings.Cut(full, "; ")
	for _, text := range []string{full, name} {
		if lines := b.faces.Wrap(text, size, true, room); len(lines) <= most {
			return lines
		}
	}
	return b.wrapMost(b.sortLine(), size, room, most)
}

// drawHand draws the sign of a hand as it has on the stage.
func (b *Bench) drawHand(l *display.List, at display.Pt, radius float64, left bool) {
	if left {
		l.Ring(at, radius, radius*0.4, b.theme.Left)
		return
	}
	l.Disc(at, radius, b.theme.Right)
}

// beatNow says at which beat the playhead is, and how fast it goes if not as the
// pattern has it.
func (b *Bench) beatNow() string {
	v, beat := &b.Words.View, int(math.Floor(b.Session.RoundBeat()))+1
	if speed := b.Session.Speed; speed != 1 {
		return fmt.Sprintf(v.BeatAt, beat, speedText(speed))
	}
	return fmt.Sprintf(v.BeatNow, beat)
}

// swipe is how far, in bench pixels, a finger goes across to turn to the next
// pattern, and swipeSlope how much farther than up or down.
const (
	swipe      = 48
	swipeSlope = 1.5
)

// onStageOnly lets a tap anywhere play or pause; a swipe turns to another
// pattern of the running order. While a piece is pointed at, a tap points.
func (b *Bench) onStageOnly(gestures []grip.Gesture, now float64) {
	for _, g := range gestures {
		d := g.At.Sub(g.From)
		switch tap := g.Act == grip.Tap || g.Act == grip.DoubleTap; {
		case tap && b.point.on:
			b.pointTap(g.At)
		case tap:
			b.Do(widget.Intent{ID: idPlay}, now)
		case g.Act == grip.Drop && math.Abs(d.X) >= swipe && math.Abs(d.X) >= swipeSlope*math.Abs(d.Y) && b.inOrder():
			by := 1
			if d.X > 0 {
				by = -1
			}
			b.nextItem(by, now)
		}
	}
	b.settle()
}
