package scene

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/tether"
	"whorlbench/sandbox/display"
)

// DrawSlack marks on a head's way, in the round that begins at a beat, where
// its tether would go slack: by dots beside the curve.
func (st *Stage) DrawSlack(l *display.List, t *engine.Track, spans []tether.Span) {
	const between, radius = 7.0, 1.8 // px
	for _, s := range spans {
		var last display.Pt
		far := math.Inf(1)
		Trail(t, s.From, s.To, func(p engine.Point, _ int, _ float64, _ bool) {
			at := st.View.ToScreen(p.Head)
			if far += at.Sub(last).Len(); far >= between {
				far = 0
				l.Disc(at, radius+1, st.Theme.Stage)
				l.Disc(at, radius, st.Theme.Warn)
			}
			last = at
		})
	}
}

// takenPoints is how finely the way of the hand that is really taken is drawn.
const takenPoints = 240

// DrawTaken draws, in dashes, where the hand would have to be for a light
// tether to pull the head along its way, over one round.
func (st *Stage) DrawTaken(l *display.List, t *engine.Track, tempo float64, round int) {
	for _, line := range tether.Lines(t, tempo, round, takenPoints) {
		d := dashes{list: l, width: 1.75, ink: st.ink(t)}
		for k, h := range line {
			d.to(st.View.ToScreen(complex(h.X, h.Y)), k == 0)
		}
	}
}
