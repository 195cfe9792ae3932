package bench_test

import (
	"testing"

	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
	"whorlbench/sandbox/words/texts"
)

// What is written on a button of the canvas stands in its twin's name, in every
// state, so that it can be called by voice (WCAG 2.2, 2.5.3).
func TestTwinsAreCalledWhatIsWritten(t *testing.T) {
	t.Cleanup(func() { words.Use(&words.English) })
	for _, table := range []*words.Table{&words.English, &german.German} {
		words.Use(table)
		judge := func(state string, r *rig) {
			r.b.Draw()
			for _, c := range r.b.Controls() {
				if (c.Kind == widget.Button || c.Kind == widget.Toggle) && !c.Twin && !texts.HasWords(c.Label, c.Caption) {
					t.Errorf("%s: %s: %q is written on %s, whose name is %q", table.Lang, state, c.Caption, c.ID, c.Label)
				}
			}
		}
		for _, f := range frames {
			r := newRig(t, f, twoHands)
			judge("bench", r)
		}
		r := newRig(t, phone, "half-moon")
		r.b.Answer("radius", "0.4", 0)
		r.tap("seam-0-0")
		s := r.sheet()
		r.b.Chosen(s.ID, "fix-0", 0)
		judge("tryout", r)
		for _, over := range []bool{false, true} {
			r = newRig(t, phone, "half-moon")
			r.b.Compare(pattern(t, twoHands))
			if r.b.Draw(); over {
				r.tap("compare-over")
			}
			judge("compare", r)
		}
		for _, f := range bigFrames() {
			r = newRig(t, f, "half-moon")
			r.b.StartOrder(threePatterns(t), 1, false)
			judge("running order", r)
			r.tap("point")
			judge("pointing", r)
		}
	}
}
