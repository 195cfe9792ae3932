package bench

import (
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
)

// point is that the playing is held and one piece, the one in hand, is pointed
// at: it alone is in full ink, and what plays then is that piece over and over.
type point struct {
	on      bool
	loop    session.Loop // what plays over and over otherwise
	playing bool         // when it was held
}

// beginPoint holds the playing and points at the piece under the playhead.
func (b *Bench) beginPoint() {
	s := b.Session
	b.point = point{on: true, loop: s.Loop, playing: s.Playing}
	s.Playing, s.Loop = false, session.LoopPiece
	s.SelectUnderPlayhead()
	at := s.Selected()
	if s.Hidden(at.Lane) { // then the other hand is seen
		at.Lane = 1 - at.Lane
	}
	b.pointAt(at)
}

// endPoint goes on from where the playhead is, if a piece is pointed at.
func (b *Bench) endPoint() {
	if !b.point.on {
		return
	}
	b.Session.Loop, b.Session.Playing = b.point.loop, b.point.playing
	b.point = point{}
}

// pointAt points at a piece: the head stands at its start.
func (b *Bench) pointAt(at session.Select) {
	s := b.Session
	t := s.Tracks()[at.Lane]
	round, _, _ := t.Locate(s.Beat())
	s.GoTo(float64(round)*t.Beats + t.Legs[at.Piece].Start)
	s.Select(at)
}

// pointStep goes on (1) or back (−1) by a piece, through each hand that is
// seen.
func (b *Bench) pointStep(by int) {
	s := b.Session
	at := s.Selected()
	at.Piece += by
	if at.Piece < 0 || at.Piece == len(s.Tracks()[at.Lane].Legs) {
		if other := 1 - at.Lane; other < len(s.Tracks()) && !s.Hidden(other) {
			at.Lane = other
		}
		at.Piece = 0
		if by < 0 {
			at.Piece = len(s.Tracks()[at.Lane].Legs) - 1
		}
	}
	b.pointAt(at)
}

// pointTap points at the piece whose curve was tapped; a tap beside the curves
// leaves pointing.
func (b *Bench) pointTap(at display.Pt) {
	if hit, ok := scene.NearestInRound(b.Session, b.StageView(), at, curveReach); ok {
		b.pointAt(hit.Select)
		return
	}
	b.endPoint()
}
