package scene

import (
	"image/color"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
)

// DrawGhost draws a lane that is only meant: its head's way over one round,
// with hand, tether and head at a beat, all in dashes and outlines.
func (st *Stage) DrawGhost(l *display.List, t *engine.Track, beat float64) {
	ink, v := st.Theme.Focus, st.View
	round, _, _ := t.Locate(beat)
	start := float64(round) * t.Beats
	d := dashes{list: l, width: 2.5, ink: ink}
	Trail(t, start, start+t.Beats, func(p engine.Point, _ int, _ float64, broken bool) {
		d.to(v.ToScreen(p.Head), broken)
	})
	at := t.At(beat)
	hand, head := v.ToScreen(at.Hand), v.ToScreen(at.Head)
	l.Segment(hand, head, 1.5, ink)
	l.Ring(hand, 6, 2, ink)
	l.Ring(head, 9, 2.5, ink)
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
