package bench

import (
	"fmt"
	"math"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
)

// window is the part of the strip that is seen: all of it where the pieces
// have room, else a stretch that follows the playhead and the piece in hand.
type window struct {
	zoom    float64 // against what is shown by itself; 0 stands for 1
	from    float64 // beats
	beat    float64 // the playhead that it followed last
	sel     session.Select
	pinch   *pinch
	fingers map[int]display.Pt // that are down on the strip
}

// pinch is two fingers that draw the strip out or together.
type pinch struct {
	a, b   int
	apart  float64 // pixels, at first
	per    float64 // pixels a beat, at first
	anchor float64 // the beat between the fingers at first
}

const (
	// leastAverage is the width in pixels that pieces have on average at least,
	// unless the whole strip is asked for.
	leastAverage = 26
	// mostPerBeat bounds, in pixels a beat, how far the strip is drawn out.
	mostPerBeat = 400
	// zoomStep is what a key does.
	zoomStep = 1.5
)

// IDs of what keys do with the strip.
const (
	idZoomIn  = "strip-zoom-in"
	idZoomOut = "strip-zoom-out"
)

// stripShown returns the part of a strip's row in which beats are seen.
func (b *Bench) stripShown(r display.Rect) display.Rect {
	_, t := r.CutLeft(laneTag)
	t.W -= 6
	return t
}

// stripTrack returns where the beats of a whole round run in a strip's row;
// it may reach beyond what is seen at both ends.
func (b *Bench) stripTrack(r display.Rect) display.Rect {
	t := b.stripShown(r)
	per := b.perBeat()
	return display.Rect{X: t.X - b.window.from*per, Y: t.Y, W: b.Session.Round() * per, H: t.H}
}

// perBeat returns how many pixels a beat has on the strip.
func (b *Bench) perBeat() float64 {
	if b.edge != nil {
		return b.edge.per // what is dragged stays under the finger
	}
	round, w := b.Session.Round(), b.stripShown(b.plan.ruler).W
	fit := w / round
	most := 1
	for _, t := range b.Session.Tracks() {
		most = max(most, len(t.Legs))
	}
	per := max(fit, leastAverage*float64(most)/round)
	if b.window.zoom > 0 {
		per *= b.window.zoom
	}
	return max(fit, min(per, max(mostPerBeat, fit)))
}

// follow moves the window so that the playhead, where it has moved, and the
// piece in hand, where another has been taken, are seen.
func (b *Bench) follow() {
	win, s := &b.window, b.Session
	if b.edge != nil || b.lift != nil || win.pinch != nil {
		return
	}
	width := b.stripShown(b.plan.ruler).W / b.perBeat()
	round := s.Round()
	beat, sel := s.RoundBeat(), s.Selected()
	held, _ := b.router.Grabbed(idPlayhead)
	const ahead = 0.1 // of the window, seen before what is followed
	if beat != win.beat && !held {
		win.beat = beat
		if beat < win.from || beat > win.from+width {
			win.from = beat - ahead*width
		}
	}
	if sel != win.sel && !held {
		win.sel = sel
		g := &s.Tracks()[sel.Lane].Legs[sel.Piece]
		if !s.Playing && (g.Start < win.from || g.Start+g.Span > win.from+width) {
			win.from = g.Start - ahead*width
		}
	}
	win.from = max(min(win.from, round-width), 0)
}

// zoomStrip draws the strip out or together by a factor about a place of it,
// in pixels from the left.
func (b *Bench) zoomStrip(factor, about float64) {
	t := b.stripShown(b.plan.ruler)
	before := b.perBeat()
	anchor := b.window.from + (about-t.X)/before
	b.window.zoom = 1
	natural := b.perBeat()
	fit := t.W / b.Session.Round()
	per := min(max(before*factor, fit), max(mostPerBeat, fit))
	b.window.zoom = per / natural
	b.window.from = anchor - (about-t.X)/per
}

// zoomKey draws the strip out or together about the playhead.
func (b *Bench) zoomKey(in bool, now float64) {
	t := b.stripShown(b.plan.ruler)
	about := t.X + (b.Session.RoundBeat()-b.window.from)*b.perBeat()
	if about < t.X || about > t.X+t.W {
		about = t.X + t.W/2
	}
	factor := zoomStep
	if !in {
		factor = 1 / zoomStep
	}
	b.zoomStrip(factor, about)
	b.follow()
	beats := min(t.W/b.perBeat(), b.Session.Round())
	b.say(fmt.Sprintf(b.Words.Strip.ZoomNow, b.Words.Beats(frac.Near(beats, 0.05, 10))), now)
}

// pinchStrip takes two fingers on the strip as one gesture; it returns
// whether the event is none of the router's business.
func (b *Bench) pinchStrip(ev widget.Pointer, now float64) bool {
	win := &b.window
	if win.fingers == nil {
		win.fingers = map[int]display.Pt{}
	}
	switch ev.Phase {
	case widget.Down:
		delete(win.fingers, ev.ID)
		if !b.onStrip(ev.At) || b.edge != nil || b.lift != nil {
			return false
		}
		win.fingers[ev.ID] = ev.At
		if len(win.fingers) != 2 || win.pinch != nil {
			return win.pinch != nil
		}
		b.intents = b.router.Drop(b.intents[:0], isOnStrip, b.controls)
		for _, in := range b.intents {
			b.Do(in, now)
		}
		b.wait = waiting{}
		k := &pinch{a: -1, per: b.perBeat()}
		for id := range win.fingers {
			if id != ev.ID {
				k.a = id
			}
		}
		k.b = ev.ID
		at, other := ev.At, win.fingers[k.a]
		k.apart = max(math.Abs(at.X-other.X), 1)
		k.anchor = win.from + ((at.X+other.X)/2-b.stripShown(b.plan.ruler).X)/k.per
		win.pinch = k
		return true
	case widget.Move:
		if _, ok := win.fingers[ev.ID]; ok {
			win.fingers[ev.ID] = ev.At
		}
		if k := win.pinch; k != nil && (ev.ID == k.a || ev.ID == k.b) {
			b.pinchTo(win.fingers[k.a], win.fingers[k.b])
			return true
		}
	default:
		_, on := win.fingers[ev.ID]
		delete(win.fingers, ev.ID)
		if k := win.pinch; k != nil && on {
			if ev.ID == k.a || ev.ID == k.b {
				win.pinch = nil
				win.beat, win.sel = b.Session.RoundBeat(), b.Session.Selected() // stays where it was put
			}
			return true
		}
	}
	return false
}

// pinchTo keeps the beats that the two fingers came down on under them.
func (b *Bench) pinchTo(p, q display.Pt) {
	k := b.window.pinch
	t := b.stripShown(b.plan.ruler)
	middle := (p.X + q.X) / 2
	want := k.per * max(math.Abs(p.X-q.X), 1) / k.apart
	b.zoomStrip(want/b.perBeat(), middle)
	per := b.perBeat()
	width := t.W / per
	b.window.from = max(min(k.anchor-(middle-t.X)/per, b.Session.Round()-width), 0)
}

// onStrip reports whether a place lies in the ruler or a lane.
func (b *Bench) onStrip(p display.Pt) bool {
	if b.stripShown(b.plan.ruler).Contains(p) {
		return true
	}
	for _, r := range b.plan.lanes {
		if b.stripShown(r).Contains(p) {
			return true
		}
	}
	return false
}

func isOnStrip(id string) bool {
	return id == idPlayhead || hasPrefix(id, "piece-", seamPrefix)
}

// drawWindow shows over the ruler which part of a long strip is seen.
func (b *Bench) drawWindow(l *display.List) {
	t := b.stripShown(b.plan.ruler)
	round := b.Session.Round()
	share := t.W / b.perBeat() / round
	if share >= 1-1e-9 || b.edge != nil {
		return
	}
	bar := display.Rect{X: t.X, Y: b.plan.ruler.Y - 3, W: t.W, H: 3}
	l.FillRect(bar, 1.5, b.theme.Hair)
	bar.X += t.W * b.window.from / round
	bar.W = max(t.W*share, 8)
	l.FillRect(bar, 1.5, b.theme.Muted)
}

// clip returns the part of r that is seen in a strip's row; its width is 0 if
// there is none, at the end that it lies beyond.
func clip(r, seen display.Rect) display.Rect {
	left := min(max(r.X, seen.X), seen.X+seen.W)
	right := min(max(r.X+r.W, seen.X), seen.X+seen.W)
	r.X, r.W = left, right-left
	return r
}
