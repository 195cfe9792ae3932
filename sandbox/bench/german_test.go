package bench_test

import (
	"slices"
	"strings"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
	"whorlbench/sandbox/words/texts"
)

// TestCanvasIsGerman: nothing that is written on the canvas, or said by a control,
// in German is a text of the English table alone.
func TestCanvasIsGerman(t *testing.T) {
	words.Use(&german.German)
	t.Cleanup(func() { words.Use(&words.English) })
	var ours []string
	texts.Each("", german.German, func(_, text string) { ours = append(ours, text) })
	theirs := map[string]bool{}
	texts.Each("", words.English, func(_, text string) {
		if !slices.Contains(ours, text) && len(text) > 2 {
			theirs[text] = true
		}
	})
	for _, e := range presets.Library() {
		for _, f := range []int{0, 4, 8, 9} {
			r := newRig(t, frames[f], e.ID)
			for r.b.Learn() {
			}
			r.b.ShowHint(0)
			l := r.b.Draw()
			var said []string
			for _, m := range l.Marks {
				if m.Kind == display.Text {
					said = append(said, m.Text)
				}
			}
			for _, c := range r.b.Controls() {
				said = append(said, c.Label, c.Caption, c.Text, c.Group)
			}
			for _, text := range said {
				if theirs[strings.TrimSuffix(text, "…")] {
					t.Errorf("%s: %q is English", e.ID, text)
				}
			}
		}
	}
}
