package bench

import (
	"fmt"
	"image/color"
	"strings"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// drawMessage writes what was just done over the foot of the stage, where it
// goes by itself, or the first visitor's hint.
func (b *Bench) drawMessage(l *display.List) {
	text := b.toast.text
	if text == "" && b.hintUntil > 0 {
		text = b.Words.Bench.FirstHint
	}
	if text == "" {
		return
	}
	const size, pad, high = theme.TextBody, 14.0, 30.0
	st := b.plan.stage
	text = b.faces.Fit(text, size, false, st.W-24-2*pad)
	w := b.faces.Width(text, size, false) + 2*pad
	box := display.Rect{X: st.X + (st.W-w)/2, Y: st.Y + st.H - high - 6, W: w, H: high}
	l.FillRect(box, high/2, b.theme.Ink)
	l.Text(display.Pt{X: box.X + pad, Y: box.Y + high/2 + 5}, size, false, b.theme.Ground, text)
}

// drawName says what the piece in hand is, and when the whole closes.
func (b *Bench) drawName(l *display.List) {
	s, t := b.Session, b.theme
	sel := s.Selected()
	track := s.Tracks()[sel.Lane]
	name := b.Words.Name(s.Figure(sel))
	closing, closes := b.Words.Closing(s.Pattern().Tempo, s.Tracks()...), true
	for _, k := range s.Tracks() {
		closes = closes && k.Closing().Closes()
	}
	_, worst, faulty := s.WorstSeam()
	fault := b.Words.SeamFault(worst)
	ink := func(good bool) color.NRGBA {
		if good {
			return t.Muted
		}
		return t.Warn
	}
	r := b.plan.name
	write := func(x, y, size float64, bold bool, c color.NRGBA, text string, room float64) {
		l.Text(display.Pt{X: x, Y: y}, size, bold, c, b.faces.Fit(text, size, bold, room))
	}
	if b.plan.desk {
		write(r.X, r.Y+18, theme.TextBody, true, t.Of(track.Lane.Side == engine.Left), b.Words.PieceHeading(track.Lane.Side, sel.Piece, len(track.Legs)), r.W)
		size := b.shrink(name, 26, theme.TextLarge, r.W)
		write(r.X, r.Y+52, size, true, t.Ink, name, r.W)
		write(r.X, r.Y+80, 16, false, t.Ink, b.figureLine(), r.W)
		write(r.X, r.Y+108, theme.TextBody, false, ink(closes), closing, r.W)
		write(r.X, r.Y+132, theme.TextBody, false, ink(!faulty), fault, r.W)
		b.drawNotes(l)
		return
	}
	tag := b.Words.PieceTag(track.Lane.Side, sel.Piece, len(track.Legs))
	w := b.faces.Width(tag, theme.TextBody, true)
	write(r.X+2, r.Y+18, theme.TextBody, true, t.Of(track.Lane.Side == engine.Left), tag, r.W)
	size := b.shrink(name, theme.TextLarge-1, theme.TextSmall, r.W-w-14)
	write(r.X+w+10, r.Y+18, size, true, t.Ink, name, r.W-w-14)
	if r.H < headRow-4 { // room for one line only
		return
	}
	// One line is left: the first of what is wrong, or that all is well.
	line, good := b.sweep()+" · "+closing, closes
	if !closes {
		line = closing
	} else if faulty {
		line, good = fault, false
	}
	write(r.X+2, r.Y+39, 13, false, ink(good), line, r.W-6)
}

// shrink returns the largest size between two at which a bold text fits, the
// least if it never does.
func (b *Bench) shrink(text string, size, least, room float64) float64 {
	for size > least && b.faces.Width(text, size, true) > room {
		size -= 0.5
	}
	return size
}

// drawNotes writes the pattern's notes where a desk has room for them.
func (b *Bench) drawNotes(l *display.List) {
	const size, high = 15.0, 23.0
	r := b.plan.notes
	y := r.Y + size
	for para := range strings.SplitSeq(b.Session.Pattern().Notes, "\n") {
		for _, line := range b.faces.Wrap(para, size, false, r.W) {
			if y+high > r.Y+r.H {
				l.Text(display.Pt{X: r.X, Y: y}, size, false, b.theme.Muted, "…")
				return
			}
			l.Text(display.Pt{X: r.X, Y: y}, size, false, b.theme.Muted, line)
			y += high
		}
		y += high / 3
	}
}

// drawStrip draws what lies under the pieces: a row for each lane with the
// hand's letter.
func (b *Bench) drawStrip(l *display.List) {
	t := b.theme
	for i, k := range b.Session.Tracks() {
		row := b.plan.lanes[i]
		left := k.Lane.Side == engine.Left
		mid := row.Y + row.H/2
		hue := t.Of(left)
		at := display.Pt{X: row.X + 10, Y: mid}
		letter := b.Words.Letter(k.Lane.Side)
		if !left { // a disc for the right hand, a ring for the left
			l.Disc(at, 9, display.Mix(t.Ground, hue, 0.3))
		}
		l.Ring(at, 9, 2, hue)
		w := b.faces.Width(letter, theme.TextSmall, true)
		l.Text(display.Pt{X: at.X - w/2, Y: at.Y + 4.5}, theme.TextSmall, true, t.Ink, letter)
		track := b.stripTrack(row)
		l.FillRect(display.Rect{X: track.X, Y: track.Y + 2, W: track.W, H: track.H - 4}, 6, display.Mix(t.Ground, t.Hair, 0.6))
	}
}

// drawRound says, over the ruler's end, which round of several is playing.
func (b *Bench) drawRound(l *display.List) {
	round, of := b.Session.RoundOf()
	if of < 2 {
		return
	}
	text := fmt.Sprintf(b.Words.Bench.RoundOf, round, of)
	w := b.faces.Width(text, theme.TextSmall, false)
	r := b.plan.ruler
	l.Text(display.Pt{X: r.X + r.W - w - 6, Y: r.Y + 11}, theme.TextSmall, false, b.theme.Muted, text)
}

// drawCut marks where Cut would divide, while the pattern stands still.
func (b *Bench) drawCut(l *display.List) {
	s := b.Session
	if s.Playing || b.lift != nil {
		return
	}
	piece, at, ok := s.CutPlace()
	if !ok {
		return
	}
	lane := s.Selected().Lane
	row := b.plan.lanes[lane]
	track := b.stripTrack(row)
	x := track.X + track.W*(s.Tracks()[lane].Legs[piece].Start+at.Float())/s.Round()
	for y := row.Y + 3; y < row.Y+row.H-3; y += 7 {
		l.Segment(display.Pt{X: x, Y: y}, display.Pt{X: x, Y: y + 4}, 2, b.theme.Focus)
	}
}

// drawPieces draws the lanes' pieces, the lifted one last and raised.
func (b *Bench) drawPieces(l *display.List, looks *widget.Looks) {
	var top *widget.Control
	for i := range b.controls {
		c := &b.controls[i]
		if c.Kind != widget.Piece {
			continue
		}
		if b.lift != nil && c.Lane == b.lift.lane && c.Index == b.lift.from {
			top = c
			continue
		}
		looks.Draw(l, c)
	}
	if b.lift == nil {
		b.drawSeams(l)
	}
	if top != nil {
		raised := *top
		raised.Rect.Y -= 8
		shade := raised.Rect
		shade.Y += 10
		l.FillRect(shade, 8, display.Clear(b.theme.Ink, 0.18))
		looks.Draw(l, &raised)
	}
}

// drawPlayhead draws where each lane stands in its own round.
func (b *Bench) drawPlayhead(l *display.List) {
	s := b.Session
	for i, k := range s.Tracks() {
		row := b.plan.lanes[i]
		track := b.stripTrack(row)
		_, piece, u := k.Locate(s.Beat())
		g := &k.Legs[piece]
		x := track.X + track.W*(g.Start+u*g.Span)/s.Round()
		l.Segment(display.Pt{X: x, Y: row.Y - 2}, display.Pt{X: x, Y: row.Y + row.H + 1}, 4, b.theme.Ground)
		l.Segment(display.Pt{X: x, Y: row.Y - 2}, display.Pt{X: x, Y: row.Y + row.H + 1}, 2, b.theme.Ink)
	}
}
