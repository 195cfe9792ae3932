package bench_test

import (
	"math/rand/v2"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// Whatever hands do on the stage, the pattern can be saved, and undone to the
// start it is what it was.
func TestHandsAtRandom(t *testing.T) {
	const seed = 20261125
	t.Logf("seed %d", seed)
	g := rand.New(rand.NewPCG(seed, 7))
	for _, e := range presets.Library() {
		r := newRig(t, phone, e.ID)
		first := r.s.Pattern()
		down := map[int]display.Pt{}
		for range 220 {
			id := g.IntN(3)
			at, held := down[id]
			ev := widget.Pointer{ID: id}
			switch {
			case !held:
				ev.At = display.Pt{X: g.Float64() * 390, Y: 48 + g.Float64()*360}
				// Half of the time where there is something.
				if hs := r.s.Tracks(); g.IntN(2) == 0 {
					k := hs[g.IntN(len(hs))]
					ev.At = r.on(k.PointAt(0, g.IntN(len(k.Legs)), g.Float64()).Head)
				}
				down[id] = ev.At
			case g.IntN(4) == 0:
				ev.Phase, ev.At = widget.Up, at
				if g.IntN(8) == 0 {
					ev.Phase = widget.Cancel
				}
				delete(down, id)
			default:
				ev.Phase, ev.At = widget.Move, at.Add(display.Pt{X: g.NormFloat64() * 25, Y: g.NormFloat64() * 25})
				down[id] = ev.At
			}
			r.now += float64(g.IntN(200))
			ev.Time = r.now
			r.b.Pointers([]widget.Pointer{ev}, r.now)
			if g.IntN(6) == 0 {
				r.b.Draw()
			}
			if err := presets.Validate(r.s.Pattern()); err != nil {
				t.Fatalf("%s: after %+v the pattern cannot be saved: %v", e.ID, ev, err)
			}
		}
		for id, at := range down {
			r.b.Pointers([]widget.Pointer{{ID: id, Phase: widget.Up, At: at, Time: r.now}}, r.now)
		}
		if r.s.Holding() {
			t.Errorf("%s: with no finger down something is held", e.ID)
		}
		for r.s.CanUndo() {
			r.s.Undo()
		}
		if !r.s.Pattern().Equal(first) {
			t.Errorf("%s: undone to the start the pattern is not what it was", e.ID)
		}
	}
}
