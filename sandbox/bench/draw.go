package bench

import (
	"image/color"
	"strings"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// message is what stands in for the closing line for a while: what was just
// done, or the first visitor's hint. It keeps off the stage, which may be
// filmed.
func (b *Bench) message() string {
	if b.toast.text != "" {
		return b.toast.text
	}
	if b.hint {
		return b.Words.Bench.FirstHint
	}
	return ""
}

// pill writes a line in a rounded box whose base line is at y, and returns
// whether there was one to write.
func (b *Bench) pill(l *display.List, text string, x, y, room float64) bool {
	if text == "" {
		return false
	}
	const size, pad, high = 13, 10.0, 24.0
	text = b.faces.Fit(text, size, true, room-2*pad)
	w := b.faces.Width(text, size, true) + 2*pad
	l.FillRect(display.Rect{X: x, Y: y - high + 7, W: w, H: high}, high/2, b.theme.Ink)
	l.Text(display.Pt{X: x + pad, Y: y}, size, true, b.theme.Ground, text)
	return true
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
		size := 26.0
		for size > theme.TextLarge && b.faces.Width(name, size, true) > r.W {
			size--
		}
		write(r.X, r.Y+52, size, true, t.Ink, name, r.W)
		write(r.X, r.Y+80, 16, false, t.Ink, b.figureLine(), r.W)
		write(r.X, r.Y+108, theme.TextBody, false, ink(closes), closing, r.W)
		if !b.pill(l, b.message(), r.X, r.Y+132, r.W) {
			write(r.X, r.Y+132, theme.TextBody, false, ink(!faulty), fault, r.W)
		}
		b.drawNotes(l)
		return
	}
	tag := b.Words.PieceTag(track.Lane.Side, sel.Piece, len(track.Legs))
	low := r.H < headRow-4 // room for one line only
	if low && b.pill(l, b.message(), r.X, r.Y+18, r.W) {
		return
	}
	w := b.faces.Width(tag, theme.TextBody, true)
	write(r.X+2, r.Y+18, theme.TextBody, true, t.Of(track.Lane.Side == engine.Left), tag, r.W)
	write(r.X+w+10, r.Y+18, theme.TextLarge-1, true, t.Ink, name, r.W-w-14)
	if low {
		return
	}
	// One line is left: the first of what is wrong, or that all is well.
	line, good := closing, closes
	if closes && faulty {
		line, good = fault, false
	}
	if !b.pill(l, b.message(), r.X, r.Y+39, r.W) {
		write(r.X+2, r.Y+39, 13, false, ink(good), line, r.W-6)
	}
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
