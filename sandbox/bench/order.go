package bench

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
)

// runningOrder is patterns that the big view shows one after another,
// in sessions of their own, so that the work that is open stays as it is.
type runningOrder struct {
	patterns []engine.Pattern // none: the big view shows what is open
	at       int
	shown    int              // how many have been, ever
	home     *session.Session // what is open, and what of it was seen
	zoom     scene.Zoom
	window   window
	hand     [2]session.Select // what is selected of what is open: in hand, and up to where
}

// StartOrder shows a running order in the big view, from the pattern at a place
// on. It ends when the big view is left, which gives back
// what was open, as it was.
func (b *Bench) StartOrder(patterns []engine.Pattern, at int, playing bool) {
	if at < 0 || at >= len(patterns) {
		return
	}
	b.leaveBig()
	o := &b.running
	o.patterns, o.home, o.zoom, o.window = patterns, b.Session, b.stage.zoom, b.window
	b.showItem(at, playing)
}

// OrderAt returns the place of the pattern of the running order that was shown
// last, from 0.
func (b *Bench) OrderAt() int { return b.running.at }

// inOrder reports whether a running order is shown.
func (b *Bench) inOrder() bool { return len(b.running.patterns) > 0 }

// nextItem goes on to the next (1) or back to the previous (−1) pattern; at either
// end it stays, and says so.
func (b *Bench) nextItem(by int, now float64) {
	switch at := b.running.at + by; {
	case at < 0:
		b.say(b.Words.View.OrderEnds[0], now)
	case at == len(b.running.patterns):
		b.say(b.Words.View.OrderEnds[1], now)
	default:
		b.endPoint()
		b.showItem(at, b.Session.Playing)
	}
}

func (b *Bench) showItem(at int, playing bool) {
	o := &b.running
	o.at = at
	o.shown++
	s := b.Session.Beside(o.patterns[at], o.shown)
	s.Playing = playing
	b.showSession(s)
	b.host.Announce(b.orderSays(b.Words.View.OrderSaid))
}

// showSession lets the bench show another session, in which nothing has happened yet.
func (b *Bench) showSession(s *session.Session) {
	b.Session, b.toast = s, toast{}
	b.seen = seen{rev: s.Revision(), sel: s.Selected()}
	b.fitAgain()
}

// leaveBig ends what the big view alone has; what is open is seen again.
func (b *Bench) leaveBig() {
	b.blank = false
	b.endPoint()
	if b.frame.Line && !b.inOrder() {
		b.Session.Select(b.running.hand[0])
		b.Session.Extend(b.running.hand[1].Piece)
	}
	if o := &b.running; b.inOrder() {
		o.home.Steps = b.Session.Steps // the person's, not the pattern's
		b.showSession(o.home)
		b.stage.zoom, b.window = o.zoom, o.window
		o.patterns, o.home = nil, nil
	}
}

// enterBig notes what is in hand: in the big view that is what the playhead is in.
func (b *Bench) enterBig() {
	at := b.Session.Selected()
	first, last := b.Session.Range()
	b.running.hand = [2]session.Select{at, {Lane: at.Lane, Piece: first + last - at.Piece}}
}

// followBig has the piece under the playhead in hand, so that the whole that is
// drawn pale is that of the piece which the words name; of two hands, one that is
// seen.
func (b *Bench) followBig() {
	if !b.plan.big || b.point.on {
		return
	}
	s := b.Session
	at := s.Selected()
	if s.Hidden(at.Lane) && len(s.Tracks()) > 1 {
		at.Lane = 1 - at.Lane
	}
	if _, at.Piece, _ = s.Tracks()[at.Lane].Locate(s.Beat()); at != s.Selected() {
		s.Select(at)
	}
}

// orderSays says which of how many patterns is shown, and its title.
func (b *Bench) orderSays(format string) string {
	return fmt.Sprintf(format, b.running.at+1, len(b.running.patterns), b.Session.Pattern().Title)
}
