package presets_test

import (
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/presets"
)

// called says what a lane is in one word: its shape, or how far the definitions
// go.
func called(w *naming.Whole) string {
	switch {
	case w.Shape() == naming.CShape:
		return "C"
	case w.Shape() == naming.SShape:
		return "S"
	case w.Shape() == naming.DiamondShape:
		return "diamond"
	case w.Strict.Yes:
		return "strict"
	case w.Broad.Yes:
		return "broad"
	case w.Elementary.Yes:
		return "elementary"
	}
	return "none"
}

// TestLibraryIsCalled: what each family is for says what its patterns are called
// (common practice). The hand that draws a triquetra by half a circle and its
// diameter stands with the S-caps as it draws the same triquetra; a stroke keeps
// it out of the strict sense.
func TestLibraryIsCalled(t *testing.T) {
	families := map[string]string{
		"c-caps": "C", "s-caps": "S", "diamonds": "diamond",
		"units": "elementary", "points-and-lines": "elementary",
		"in-spin": "elementary", "antispin": "elementary", "stars": "elementary",
	}
	hands := map[string][]string{
		"gangway":          {"broad"},
		"lock-gates":       {"elementary", "elementary"},
		"one-gig-two-oars": {"elementary", "elementary"},
		"seesaw":           {"elementary", "elementary"},
		"leading-lights":   {"elementary", "elementary"},
		"paddle-steamer":   {"elementary", "elementary"},
		"pier-end":         {"C", "C"},
		"two-ferries":      {"C", "C"},
		"two-bell-buoys":   {"C", "C"},
		"gangway-and-bell": {"broad", "elementary"},
		"missing-plank":    {"C"},
		"turned-back":      {"elementary"},
		"bump-at-the-quay": {"C"},
		"slack-water":      {"elementary"},
		"crossed-lines":    {"elementary", "elementary"},
	}
	hybrid := map[string]naming.Clause{"pier-end": naming.HandsSwap, "gangway-and-bell": naming.HandsDiffer}
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		want, ok := hands[e.ID]
		if !ok {
			want = []string{families[e.Family]}
		}
		if len(want) != len(p.Lanes) {
			t.Errorf("%s: %d hands, want %d", e.ID, len(p.Lanes), len(want))
			continue
		}
		var tracks []*engine.Track
		for i, l := range p.Lanes {
			tr := engine.NewTrack(l)
			tracks = append(tracks, tr)
			w := naming.Judge(tr, seam.Of(tr, p.Tempo, p.Performer.Rigid))
			if got := called(&w); got != want[i] {
				t.Errorf("%s, hand %d: %s, want %s", e.ID, i+1, got, want[i])
			}
			if got := w.Jump.Yes; got != (e.ID == "missing-plank") {
				t.Errorf("%s, hand %d: jumps %v", e.ID, i+1, got)
			}
		}
		if len(tracks) != 2 {
			continue
		}
		wantClause, differ := hybrid[e.ID]
		if !differ {
			wantClause = naming.HandsAlike
		}
		if r := naming.Hybrid(tracks[0], tracks[1]); r.Clause != wantClause || r.Yes != differ {
			t.Errorf("%s: hybrid %v by clause %d, want %v by %d", e.ID, r.Yes, r.Clause, differ, wantClause)
		}
	}
}
