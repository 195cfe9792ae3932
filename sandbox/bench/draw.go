package bench

import (
	"fmt"
	"image/color"
	"math"
	"strings"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// drawMessage writes over the foot of the stage what was just done, where it
// goes by itself, or what is being tried out, or the first visitor's hint.
func (b *Bench) drawMessage(l *display.List) {
	text, foot, limit := b.toast.text, b.plan.stage.Y+b.plan.stage.H, math.MaxInt
	switch {
	case b.trying() != nil:
		text, foot, limit = b.tryoutText(), b.tryoutRow().Y, tryoutLines
	case text == "" && b.hintUntil > 0:
		text = b.Words.Bench.FirstHint
	}
	if text == "" {
		return
	}
	size := theme.TextBody * b.plan.text
	line, pad := b.messageLine(), size
	st := b.plan.stage
	room := min(st.W-24-2*pad, 560*b.plan.text)
	lines := b.faces.Wrap(words.Spelt(text), size, false, room)
	most := min(max(int((foot-st.Y-messagePad)/line)-1, 1), limit)
	for len(lines) > most { // what matters most comes first: the last sentences are left out
		end := strings.LastIndex(strings.TrimRight(text, "."), ". ")
		if end < 0 {
			break
		}
		text = text[:end+1]
		lines = b.faces.Wrap(words.Spelt(text), size, false, room)
	}
	if len(lines) > most { // the live region has it all
		lines = append(lines[:most-1], b.faces.Fit(strings.Join(lines[most-1:], " "), size, false, room))
	}
	w := 0.0
	for _, s := range lines {
		w = max(w, b.faces.Width(s, size, false))
	}
	high := line*float64(len(lines)) + messagePad
	box := display.Rect{X: st.X + (st.W-w)/2 - pad, Y: foot - high - 6, W: w + 2*pad, H: high}
	if b.trying() == nil && box.W+24 <= st.W/2 { // a corner is free, where the figure's foot is not
		box.X = st.X + 12
	}
	l.FillRect(box, min(high/2, 16), b.theme.Ink)
	for i, s := range lines {
		l.Text(display.Pt{X: box.X + pad, Y: box.Y + 6 + line*(float64(i)+0.76)}, size, false, b.theme.Ground, s)
	}
}

// messagePad is what a message has above and below its lines, together.
const messagePad = 12.0

// messageLine is how high a message's lines stand.
func (b *Bench) messageLine() float64 { return theme.TextBody * b.plan.text * 1.3 }

// drawName says what the piece in hand is, and when the whole closes.
func (b *Bench) drawName(l *display.List) {
	s, t := b.Session, b.theme
	sel := s.Selected()
	track := s.Tracks()[sel.Lane]
	name := b.Words.Name(s.Figure(sel))
	told := b.tell()
	closing, closes := told.closing, told.closes
	fault := b.warning()
	faulty := fault != ""
	if !faulty {
		fault = b.Words.Bench.AllSmooth
	}
	ink := func(good bool) color.NRGBA {
		if good {
			return t.Muted
		}
		return t.Warn
	}
	r := b.plan.name
	// Lines stand on a grid that grows with the text, and are written as large
	// as they fit across.
	write := func(x, y, size float64, bold bool, c color.NRGBA, text string, room float64) (end float64) {
		size = b.grow(text, size, bold, room, size*b.plan.text*1.05)
		text = b.faces.Fit(text, size, bold, room)
		l.Text(display.Pt{X: x, Y: y}, size, bold, c, text)
		return x + b.faces.Width(text, size, bold)
	}
	k := b.plan.text
	if b.plan.desk {
		write(r.X, r.Y+18*k, theme.TextBody, true, t.Of(track.Lane.Side == engine.Left), b.Words.PieceHeading(track.Lane.Side, sel.Piece, len(track.Legs)), r.W)
		size := b.shrink(name, 26, theme.TextLarge, r.W)
		write(r.X, r.Y+52*k, size, true, t.Ink, name, r.W)
		wide := b.plan.tempo.X + b.plan.tempo.W - r.X // below the tempo
		write(r.X, r.Y+80*k, 16, false, t.Ink, b.figureLine(), wide)
		if k > 1 {
			closing = b.shorter(closing, theme.TextBody*k, wide)
		}
		y := r.Y + 108*k
		if line := b.wholeLine(); line != "" {
			// It may take two lines, the only one that does.
			lines := b.faces.Wrap(line, theme.TextBody*k, true, wide-wedgeRoom)
			if len(lines) > 2 {
				lines = []string{lines[0], strings.Join(lines[1:], " ")}
			}
			for i, part := range lines {
				end := write(r.X, y, theme.TextBody, true, t.Ink, part, wide-wedgeRoom)
				if i == len(lines)-1 {
					b.drawWedge(l, end, y)
				}
				y += 21 * k
			}
			y += 3 * k
		}
		write(r.X, y, theme.TextBody, false, ink(closes), closing, wide)
		write(r.X, y+23*k, theme.TextBody, false, ink(!faulty), fault, wide)
		b.drawNotes(l)
		return
	}
	v := min(max(r.H/headRow, 1), k)
	twoLines := r.H >= b.plan.taller(headRow, 30)-4
	y, high := r.Y+18*k, r.H-6 // of the first line, and what it may take
	if twoLines {
		y, high = r.Y+18*v, 23*v
	} else {
		y = r.Y + min(18*k, r.H*0.75)
	}
	tag := b.Words.PieceTag(track.Lane.Side, sel.Piece, len(track.Legs))
	small := b.grow(tag, theme.TextBody, true, r.W/3, high)
	w := b.faces.Width(tag, small, true)
	l.Text(display.Pt{X: r.X + 2, Y: y}, small, true, t.Of(track.Lane.Side == engine.Left), tag)
	size := b.shrink(name, theme.TextLarge-1, theme.TextSmall, r.W-w-14-wedgeRoom)
	size = b.grow(name, size, true, r.W-w-14-wedgeRoom, high)
	name = b.faces.Fit(name, size, true, r.W-w-14-wedgeRoom)
	l.Text(display.Pt{X: r.X + w + 10, Y: y}, size, true, t.Ink, name)
	b.drawWedge(l, r.X+w+10+b.faces.Width(name, size, true), y)
	if !twoLines { // room for one line only
		return
	}
	// One line is left: the first of what is wrong, or what the whole is.
	line, good := closing, closes
	if closes && faulty {
		line, good = fault, false
	} else if sort := b.sortLine(); closes && sort != "" {
		line = sort + " · " + told.short
	}
	if k > 1 && good {
		line = b.shorter(line, 13*k, r.W-6)
	}
	write(r.X+2, r.Y+39*v, 13, false, ink(good), line, r.W-6)
}

// wedgeRoom is what the wedge takes that says that a text leads further.
const wedgeRoom = 18

// drawWedge draws it after a text that ends at x on the line y.
func (b *Bench) drawWedge(l *display.List, x, y float64) {
	l.Poly(b.theme.Muted, display.Pt{X: x + 7, Y: y - 8}, display.Pt{X: x + 17, Y: y - 8}, display.Pt{X: x + 12, Y: y - 2})
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
	size, high := 15*b.plan.text, 23*b.plan.text
	n := b.breakNotes(b.plan.notes, size, high)
	for i, at := range n.at {
		l.Text(at, size, false, b.theme.Muted, n.texts[i])
	}
}

// drawStrip draws what lies under the pieces: a row for each lane.
func (b *Bench) drawStrip(l *display.List) {
	t := b.theme
	for i := range b.Session.Tracks() {
		track := b.stripShown(b.plan.lanes[i])
		l.FillRect(display.Rect{X: track.X, Y: track.Y + 2, W: track.W, H: track.H - 4}, 6, display.Mix(t.Ground, t.Hair, 0.6))
	}
}

// drawRound says, over the ruler's end, which round of several is playing.
func (b *Bench) drawRound(l *display.List) {
	round, of := b.Session.RoundOf()
	if of == 1 || b.edge != nil {
		return
	}
	text := fmt.Sprintf(b.Words.Bench.RoundOf, round, of)
	if of == 0 {
		text = fmt.Sprintf(b.Words.Bench.RoundNow, round)
	}
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
	if !b.stripShown(row).Contains(display.Pt{X: x, Y: row.Y}) {
		return
	}
	for y := row.Y + 3; y < row.Y+row.H-3; y += 7 {
		l.Segment(display.Pt{X: x, Y: y}, display.Pt{X: x, Y: y + 4}, 2, b.theme.Focus)
	}
}

// drawPieces draws the lanes' pieces, the lifted ones last and raised.
func (b *Bench) drawPieces(l *display.List, looks *widget.Looks) {
	var top []*widget.Control
	for i := range b.controls {
		c := &b.controls[i]
		if c.Kind != widget.Piece || c.Twin {
			continue
		}
		if b.lift.has(c.Lane, c.Index) {
			top = append(top, c)
			continue
		}
		looks.Draw(l, c)
	}
	for _, c := range top {
		raised := *c
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
		if seen := b.stripShown(row); x < seen.X-0.5 || x > seen.X+seen.W+0.5 {
			continue
		}
		l.Segment(display.Pt{X: x, Y: row.Y - 2}, display.Pt{X: x, Y: row.Y + row.H + 1}, 4, b.theme.Ground)
		l.Segment(display.Pt{X: x, Y: row.Y - 2}, display.Pt{X: x, Y: row.Y + row.H + 1}, 2, b.theme.Ink)
	}
}
