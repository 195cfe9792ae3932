package scene

import (
	"whorlbench/engine"
	"whorlbench/sandbox/display"
)

// DrawGhost draws a lane that is only meant: its head's way over one round,
// with hand, tether and head at a beat, all in dashes and outlines.
func (st *Stage) DrawGhost(l *display.List, t *engine.Track, beat float64) {
	const dash, gap = 9.0, 6.0 // px
	ink, v := st.Theme.Focus, st.View
	round, _, _ := t.Locate(beat)
	start := float64(round) * t.Beats
	var last display.Pt
	gone, begun := 0.0, false
	Trail(t, start, start+t.Beats, func(p engine.Point, _ int, _ float64, broken bool) {
		at := v.ToScreen(p.Head)
		switch {
		case broken || !begun:
			begun = true
			l.BeginLine(2.5, ink, false)
			l.To(at, 1)
			gone = 0
		default:
			// A dash ends where its length is used up; the curve is sampled
			// more finely than that.
			gone += at.Sub(last).Len()
			switch {
			case gone < dash:
				l.To(at, 1)
			case gone >= dash+gap:
				l.BeginLine(2.5, ink, false)
				l.To(at, 1)
				gone = 0
			}
		}
		last = at
	})
	at := t.At(beat)
	hand, head := v.ToScreen(at.Hand), v.ToScreen(at.Head)
	l.Segment(hand, head, 1.5, ink)
	l.Ring(hand, 6, 2, ink)
	l.Ring(head, 9, 2.5, ink)
}
