package scene

import (
	"image/color"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// How the way is drawn on which hand and head set off.
const (
	setOffBeats  = 0.5 // at most, and half of the first piece
	setOffPoints = 16
	setOffWidth  = 4.0 // px
)

// DrawSetOff draws, for each hand that is seen, the ways by which hand and head
// set off from a beat, with an arrow at the end of each.
func (st *Stage) DrawSetOff(l *display.List, s *session.Session, beat float64) {
	for _, t := range seen(s) {
		_, piece, u := t.Locate(beat)
		g := &t.Legs[piece]
		to := beat + min(setOffBeats, g.Span*(1-u)/2)
		st.setOff(l, st.Theme.Ink, func(beat float64) complex128 { return t.At(beat).Hand }, beat, to)
		st.setOff(l, st.ink(t), func(beat float64) complex128 { return t.At(beat).Head }, beat, to)
	}
}

func (st *Stage) setOff(l *display.List, ink color.NRGBA, way func(beat float64) complex128, from, to float64) {
	if far := st.View.ToScreen(way(to)).Sub(st.View.ToScreen(way(from))); far.Len() < arrow { // it stays, or nearly so
		return
	}
	l.BeginLine(setOffWidth, ink, false)
	last := from + (to-from)*(1-1.0/setOffPoints) // the arrow has the rest
	for i := range setOffPoints {
		l.To(st.View.ToScreen(way(from+float64((last-from)*float64(i)/(setOffPoints-1)))), 1)
	}
	st.arrowOf(l, ink, way, from, to)
}
