package bench

import (
	"fmt"
	"math"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// border is the boundary between two pieces being dragged: it changes the
// length of the piece before it, and the others move along.
type border struct {
	at  session.Select
	per float64 // pixels a beat, as long as it is held
}

// seamPrefix begins the ID of a seam's control.
const seamPrefix = "seam-"

// seamID names the control of the seam after a piece.
func seamID(lane, i int) string { return fmt.Sprintf("%s%d-%d", seamPrefix, lane, i) }

// A seam is touched in a finger's width where its pieces are long, in less
// where they are shorter, and not at all where they are so short that they
// need it for themselves: edgeShare of the shorter of the two is given.
const (
	edgeShare = 0.4
	edgeLeast = 24
)

// edgeGrid is the finest length that an edge is dragged to, in parts of a
// beat; edgeCatch is how near, in beats, a whole number of beats catches.
const (
	edgeGrid  = 4
	edgeCatch = 0.2
)

// arrangeSeams adds the seams of a lane, over its pieces. A seam that has no
// room for a finger, or none to be seen, has a twin alone.
func (b *Bench) arrangeSeams(lane int, t *engine.Track, group string) {
	if b.lift != nil {
		return
	}
	row := b.plan.lanes[lane]
	track, seen, per := b.stripTrack(row), b.stripShown(row), b.perBeat()
	n := len(t.Legs)
	for i, s := range b.Session.Seams()[lane] {
		g := &t.Legs[i]
		x := track.X + (g.Start+g.Span)*per
		short := g.Span * per
		if i < n-1 {
			short = min(short, t.Legs[i+1].Span*per)
		}
		w := min(short*edgeShare, theme.Finger)
		c := widget.Control{
			ID: seamID(lane, i), Kind: widget.Edge, Group: group, Lane: lane, Index: i,
			Label: b.Words.JoinName(t.Lane.Side, n, s),
			Value: g.Span,
			Track: display.Rect{X: x},
			Rect:  display.Rect{X: min(x-w/2, row.X+row.W-w), Y: row.Y, W: w, H: row.H},
			Twin:  w < edgeLeast || x < seen.X+w/2 || x > seen.X+seen.W+1,
		}
		if b.edge != nil && b.edge.at == (session.Select{Lane: lane, Piece: i}) {
			c.Twin = false // it stays held
		}
		c.Rect = clip(c.Rect, display.Rect{X: seen.X, W: row.X + row.W - seen.X})
		b.add(c)
	}
}

// seamOf returns which seam a control stands for.
func (b *Bench) seamOf(id string) (at session.Select, ok bool) {
	rest, ok := strings.CutPrefix(id, seamPrefix)
	if !ok {
		return at, false
	}
	return b.pieceOf("piece-" + rest)
}

func (b *Bench) doSeam(in widget.Intent, now float64) {
	s := b.Session
	at, ok := b.seamOf(in.ID)
	if !ok {
		b.dropEdge(now)
		return
	}
	switch in.Act {
	case widget.Press:
		b.showSeam(at)
	case widget.Hold:
		if b.edge != nil {
			return // one edge at a time
		}
		per := b.perBeat()
		s.Select(at)
		s.Hold()
		b.edge = &border{at: at, per: per}
	case widget.Carry:
		if b.edge != nil {
			track := b.stripTrack(b.plan.lanes[at.Lane])
			b.setLength(at, edgeLength((in.Value-track.X)/b.edge.per-s.Tracks()[at.Lane].Legs[at.Piece].Start))
		}
	case widget.Release:
		b.dropEdge(now)
	case widget.Set: // from the twin: the length in beats
		s.Select(at)
		b.setLength(at, edgeLength(in.Value))
		b.sayLength(now)
	}
}

// edgeLength returns the length in beats that an edge is caught by.
func edgeLength(beats float64) frac.Frac {
	if whole := math.Round(beats); whole >= 1 && math.Abs(beats-whole) <= edgeCatch {
		return frac.Int(int64(min(whole, 10_000)))
	}
	parts := min(max(math.Round(beats*edgeGrid), 1), 10_000*edgeGrid)
	return frac.New(int64(parts), edgeGrid)
}

func (b *Bench) setLength(at session.Select, beats frac.Frac) {
	if b.Session.Selected() == at {
		_ = b.turn(b.dial(idLength), beats) // within the file's range, so it can be written
	}
}

// dropEdge lets the edge go; all of the drag is one edit.
func (b *Bench) dropEdge(now float64) {
	if b.edge == nil {
		return
	}
	b.edge = nil
	b.Session.Release()
	b.sayLength(now)
}

func (b *Bench) sayLength(now float64) {
	s := b.Session
	b.say(fmt.Sprintf(b.Words.Strip.LengthNow, s.Selected().Piece+1, b.Words.Beats(s.SelectedPiece().Length())), now)
}

// drawEdge marks the boundary that is dragged, and says the length.
func (b *Bench) drawEdge(l *display.List) {
	k := b.edge
	if k == nil {
		return
	}
	row := b.plan.lanes[k.at.Lane]
	seen := b.stripShown(row)
	g := &b.Session.Tracks()[k.at.Lane].Legs[k.at.Piece]
	x := b.stripTrack(row).X + (g.Start+g.Span)*k.per
	if x > seen.X+seen.W {
		x = seen.X + seen.W
	}
	l.Segment(display.Pt{X: x, Y: row.Y - 3}, display.Pt{X: x, Y: row.Y + row.H + 2}, 4, b.theme.Focus)
	text := b.Words.Beats(b.Session.SelectedPiece().Length())
	const high, pad = 26.0, 10.0
	w := b.faces.Width(text, theme.TextBody, true) + 2*pad
	box := display.Rect{X: min(max(x-w/2, seen.X), seen.X+seen.W-w), Y: row.Y - high - 8, W: w, H: high}
	l.FillRect(box, high/2, b.theme.Ink)
	l.Text(display.Pt{X: box.X + pad, Y: box.Y + high/2 + 5}, theme.TextBody, true, b.theme.Ground, text)
}

func hasPrefix(s string, prefixes ...string) bool {
	for _, p := range prefixes {
		if strings.HasPrefix(s, p) {
			return true
		}
	}
	return false
}

// drawSeamFocus rings the seam whose twin has the keyboard.
func (b *Bench) drawSeamFocus(l *display.List, looks *widget.Looks) {
	for i := range b.controls {
		if c := &b.controls[i]; c.Kind == widget.Edge && c.ID == b.focus && c.Rect.W > 0 {
			looks.Draw(l, c)
		}
	}
}
