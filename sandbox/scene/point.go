package scene

import (
	"image/color"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// What is drawn of a pattern while one of its pieces is pointed at: that piece
// in full ink, strong enough for the back row, the whole that it is cut from in
// dashes, and all else dim.
const (
	dim         = 0.3 // of an ink, over the stage
	dimStroke   = 2.5 // px
	ghostInk    = 0.6
	ghostStroke = 2   // px
	pointStroke = 5.5 // px
)

// DrawPointStill adds what of that the playhead moves no further than by the
// round that it is in.
func (st *Stage) DrawPointStill(l *display.List, s *session.Session) {
	st.performer(l, s)
	pale := st.dimmed()
	for lane, t := range s.Tracks() {
		if s.Hidden(lane) {
			continue
		}
		if !st.HideHandPath {
			pale.handPath(l, t)
		}
		round, _, _ := t.Locate(s.Beat())
		start := float64(round) * t.Beats
		pale.draw(l, s, course{lane, start, start + t.Beats, dimStroke, func(float64) float64 { return 1 }})
	}
	sel := s.Selected()
	d := dashes{list: l, width: ghostStroke, ink: display.Mix(st.Theme.Stage, st.inkOf(s, sel), ghostInk)}
	st.wholeTo(s, sel, func(at display.Pt) { d.to(at, false) })
}

// DrawPointMoving adds the rest: the piece itself, and hands and heads.
func (st *Stage) DrawPointMoving(l *display.List, s *session.Session) {
	sel := s.Selected()
	st.sliceIn(l, s, sel, pointStroke, 1)
	pale := st.dimmed()
	all := seen(s)
	for pass := range 2 { // arms and tethers lie under all hands and heads
		for lane, t := range s.Tracks() {
			if s.Hidden(lane) {
				continue
			}
			as := &pale
			if lane == sel.Lane {
				as = st
			}
			if at := t.At(s.Beat()); pass == 0 {
				as.arms(l, t, at, s.Pattern().Performer)
			} else {
				as.ends(l, t, at, all, s.Beat())
			}
		}
	}
}

// dimmed is the stage in pale inks.
func (st *Stage) dimmed() Stage {
	out, t := *st, *st.Theme
	pale := func(c color.NRGBA) color.NRGBA { return display.Mix(t.Stage, c, dim) }
	t.Pieces = make([]color.NRGBA, len(st.Theme.Pieces))
	for i, c := range st.Theme.Pieces {
		t.Pieces[i] = pale(c)
	}
	t.Left, t.Right, t.Ink, t.Muted = pale(t.Left), pale(t.Right), pale(t.Ink), pale(t.Muted)
	out.Theme = &t
	return out
}
