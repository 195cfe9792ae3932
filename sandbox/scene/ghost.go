package scene

import (
	"image/color"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// DrawGhost draws a lane that is only meant: its head's way over one round,
// with hand, tether and head at a beat, all in dashes and outlines.
func (st *Stage) DrawGhost(l *display.List, t *engine.Track, beat float64) {
	ink, v := st.Theme.Focus, st.View
	st.dashed(l, t, beat, 2.5)
	at := t.At(beat)
	hand, head := v.ToScreen(at.Hand), v.ToScreen(at.Head)
	l.Segment(hand, head, 1.5, ink)
	l.Ring(hand, 6, 2, ink)
	l.Ring(head, 9, 2.5, ink)
}

// dashed draws a head's way over the round that a beat is in.
func (st *Stage) dashed(l *display.List, t *engine.Track, beat, width float64) {
	round, _, _ := t.Locate(beat)
	start := float64(round) * t.Beats
	d := dashes{list: l, width: width, ink: st.Theme.Focus}
	Trail(t, start, start+t.Beats, func(p engine.Point, _ int, _ float64, broken bool) {
		d.to(st.View.ToScreen(p.Head), broken)
	})
}

// DrawOverStill adds the heads' and hands' ways of a second pattern that is laid
// over the stage's own, in dashes.
func (st *Stage) DrawOverStill(l *display.List, s *session.Session) {
	for _, t := range seen(s) {
		if !st.HideHandPath {
			d := dashes{list: l, width: 1.25, ink: display.Mix(st.Theme.Stage, st.Theme.Focus, 0.7)}
			Trail(t, 0, t.Beats, func(p engine.Point, _ int, _ float64, broken bool) {
				d.to(st.View.ToScreen(p.Hand), broken)
			})
		}
		st.dashed(l, t, s.Beat(), 2)
	}
}

// DrawOverMoving adds its arms, tethers, hands and heads: diamonds, full for the right
// hand and open for the left, so that no hue is needed to tell both patterns, or
// the hands, apart.
func (st *Stage) DrawOverMoving(l *display.List, s *session.Session) {
	for _, t := range seen(s) {
		ink, at := st.Theme.Focus, t.At(s.Beat())
		hand, head := st.View.ToScreen(at.Hand), st.View.ToScreen(at.Head)
		if shoulder, ok := st.shoulder(t, s.Pattern().Performer); ok {
			arm := dashes{list: l, width: 5, ink: display.Clear(ink, 0.4)}
			arm.to(shoulder, true)
			arm.to(hand, false)
		}
		d := dashes{list: l, width: 1.75, ink: ink}
		d.to(hand, true)
		d.to(head, false)
		full := t.Lane.Side == engine.Right
		Diamond(l, hand, 8, ink, full)
		Diamond(l, head, 13, ink, full)
	}
}

// Diamond draws a square that stands on a corner, each of which is so far (px)
// from its middle.
func Diamond(l *display.List, at display.Pt, reach float64, c color.NRGBA, full bool) {
	up, side := display.Pt{Y: reach}, display.Pt{X: reach}
	corners := []display.Pt{at.Add(up), at.Add(side), at.Sub(up), at.Sub(side)}
	if full {
		l.Poly(c, corners...)
		return
	}
	l.Polyline(2.5, c, true, corners...)
}

// dashes is a line of dashes while it is drawn.
type dashes struct {
	list  *display.List
	width float64
	ink   color.NRGBA
	last  display.Pt
	gone  float64 // px since a dash began
	begun bool
}

// to goes on to a place, or anew from it.
func (d *dashes) to(at display.Pt, anew bool) {
	const dash, period = 9.0, 15.0 // px
	if anew || !d.begun {
		d.begun, d.gone, d.last = true, 0, at
		d.list.BeginLine(d.width, d.ink, false)
		d.list.To(at, 1)
		return
	}
	way := at.Sub(d.last)
	for left := way.Len(); left > 0; {
		unit := way.Scale(1 / way.Len())
		step := dash - d.gone
		on := step > 0
		if !on {
			step = period - d.gone
		}
		step = min(step, left)
		d.last, d.gone, left = d.last.Add(unit.Scale(step)), d.gone+step, left-step
		if on {
			d.list.To(d.last, 1)
		}
		if d.gone >= period-1e-9 {
			d.gone = 0
			d.list.BeginLine(d.width, d.ink, false)
			d.list.To(d.last, 1)
		}
	}
	d.last = at
}
