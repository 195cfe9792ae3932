package tether

import (
	"math"

	"whorlbench/engine"
)

// Trace is the pull over one piece of a round, to be drawn: at moments evenly
// spread from its beginning to its end, both included, in multiples of the
// head's weight. Where a piece ends and the next begins the pull may leap.
type Trace struct {
	From, To float64 // beats from the beginning of the round
	Pull     []float64
}

// Graph returns the pull over a round at a tempo in beats a minute, a trace a
// piece, at about so many points in all, shared out by the pieces' beats; each
// has two at least.
func Graph(t *engine.Track, tempo float64, round, points int) []Trace {
	traces := make([]Trace, len(t.Legs))
	for i := range t.Legs {
		leg := &t.Legs[i]
		n := max(int(math.Round(float64(points)*leg.Span/t.Beats)), 2)
		tr := Trace{From: leg.Start, To: leg.Start + leg.Span, Pull: make([]float64, n)}
		for k := range tr.Pull {
			tr.Pull[k] = Pull(t.Lane, t.AtPiece(round, i, float64(k)/float64(n-1)), tempo)
		}
		traces[i] = tr
	}
	return traces
}
