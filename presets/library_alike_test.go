package presets_test

import (
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/presets"
)

// TestLibraryKeepsItsNames: a built-in pattern that is turned, mirrored, resized
// or cut into needless pieces is called what it was, by the same clauses.
func TestLibraryKeepsItsNames(t *testing.T) {
	r := chance.New(t)
	clauses := func(l engine.Lane, p engine.Pattern) [7]naming.Clause {
		tr := engine.NewTrack(l)
		w := naming.Judge(tr, seam.Of(tr, p.Tempo, p.Performer.Rigid))
		return [7]naming.Clause{
			w.Elementary.Clause, w.Broad.Clause, w.Strict.Clause, w.C.Clause, w.S.Clause, w.Diamond.Clause, naming.Clause(w.Shape()),
		}
	}
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		for i, l := range p.Lanes {
			want := clauses(l, p)
			cut := l
			for range 5 {
				k := r.IntN(len(cut.Pieces))
				if cut, err = cut.Cut(k, cut.Pieces[k].Length().Mul(frac.New(1+r.Int64N(11), 12))); err != nil {
					t.Fatal(err)
				}
			}
			for name, changed := range map[string]engine.Lane{
				"mirrored": p.Mirror().Lanes[i],
				"turned":   p.Turn(engine.Degrees(360 * r.Float64())).Lanes[i],
				"scaled":   p.Scale(0.5 + r.Float64()).Lanes[i],
				"cut":      cut,
			} {
				if got := clauses(changed, p); got != want {
					t.Errorf("%s, hand %d, %s: clauses and shape %v, want %v", e.ID, i+1, name, got, want)
				}
			}
		}
	}
}
