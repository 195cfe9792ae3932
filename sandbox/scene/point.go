package scene

import (
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// What is drawn of a pattern while one of its pieces is pointed at: that piece
// in full ink, strong enough for the back row, the whole that it is cut from in
// dashes, and all else dim, under a veil.
const (
	veil        = 0.7 // how much of the rest is hidden
	restStroke  = 2.5 // px
	ghostInk    = 0.6 // of the piece's own, over the stage
	ghostStroke = 2   // px
	pointStroke = 5.5 // px
)

// DrawPointStill adds what of the rest the playhead moves no further than by the
// round that it is in.
func (st *Stage) DrawPointStill(l *display.List, s *session.Session) {
	st.performer(l, s)
	for lane, t := range s.Tracks() {
		if s.Hidden(lane) {
			continue
		}
		if !st.HideHandPath {
			st.handPath(l, t)
		}
		round, _, _ := t.Locate(s.Beat())
		start := float64(round) * t.Beats
		st.draw(l, s, course{lane, start, start + t.Beats, restStroke, func(float64) float64 { return 1 }})
	}
}

// DrawPointMoving adds the other hand, the veil, and the piece.
func (st *Stage) DrawPointMoving(l *display.List, s *session.Session) {
	sel, beat, all := s.Selected(), s.Beat(), seen(s)
	own := s.Tracks()[sel.Lane]
	for _, t := range all {
		if t != own {
			st.arms(l, t, t.At(beat), s.Pattern().Performer)
			st.ends(l, t, t.At(beat), all, beat)
		}
	}
	l.FillRect(st.Area, 0, display.Clear(st.Theme.Stage, veil))
	d := dashes{list: l, width: ghostStroke, ink: display.Mix(st.Theme.Stage, st.inkOf(s, sel), ghostInk)}
	st.wholeTo(s, sel, func(at display.Pt) { d.to(at, false) })
	width := pointStroke
	if st.isDouble(s, sel) { // as much ink as a plain stroke has
		width /= 1 - coreShare
	}
	st.sliceIn(l, s, sel, width, 1)
	st.arms(l, own, own.At(beat), s.Pattern().Performer)
	st.ends(l, own, own.At(beat), all, beat)
}
