package follow

import (
	"math"

	"whorlbench/engine"
)

// mostSizes bounds how many sizes of circles and strokes are tried.
const mostSizes = 5

// sizes returns the radii (m) that are tried after piece i: its own, the
// tether's length, half of it, where an isolation is exact, and then what else
// is in use, the pieces that follow first.
func sizes(p engine.Pattern, t *engine.Track, i int) []float64 {
	out := make([]float64, 0, mostSizes)
	add := func(r float64) {
		if r <= 0 || r > reachRadius || len(out) == mostSizes {
			return
		}
		for _, x := range out {
			if math.Abs(x-r) < engine.TolPath {
				return
			}
		}
		out = append(out, r)
	}
	of := func(h engine.Path) {
		if h.IsRound() || h.IsLine() {
			add(max(h.A, h.B))
		}
	}
	own := t.Lane.Pieces
	of(own[i].Path)
	add(t.Lane.Tether)
	add(float64(t.Lane.Tether / 2))
	for k := range own {
		of(own[(i+1+k)%len(own)].Path)
	}
	for _, l := range p.Lanes {
		for k := range l.Pieces {
			of(l.Pieces[k].Path)
		}
	}
	return out
}
