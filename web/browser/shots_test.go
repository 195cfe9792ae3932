//go:build browser

package browser

import (
	"fmt"
	"testing"
)

// TestStates walks through what a person may see at each of the four screens
// and holds that nothing is reported; with WHORLBENCH_SHOTS it leaves pictures.
func TestStates(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.frames(3)
			v.shot("1-first")
			v.pause()
			v.shot("2-paused")
			v.tap("Cut at the playhead")
			v.shot("3-cut")
			for _, d := range []struct{ button, dialog string }{{"title", "names"}, {"show-patterns", "patterns"}, {"show-more", "more"}} {
				v.click(d.button)
				v.wait(fmt.Sprintf(`document.getElementById(%q).open`, d.dialog))
				v.shot("4-" + d.dialog)
				eval[bool](v, fmt.Sprintf(`(document.getElementById(%q).close(), true)`, d.dialog))
			}
			v.press("button", "Tempo", " ")
			v.shot("5-tempo")
			eval[bool](v, `(document.getElementById("ask").close(), true)`)
			v.pick("pier-end")
			v.shot("6-two-hands")
			v.pick("rounds-of-the-watch")
			v.shot("7-many-pieces")
			v.pick("bump-at-the-quay")
			v.shot("8-kink")
			eval[bool](v, `(document.getElementById("theme").value = "night", document.getElementById("theme").dispatchEvent(new Event("change")), true)`)
			v.pick("pier-end")
			v.shot("9-night")
			v.clean()
		})
	}
}

func (v *visit) click(id string) {
	v.t.Helper()
	eval[bool](v, fmt.Sprintf(`(document.getElementById(%q).click(), true)`, id))
}

// pick opens a built-in pattern.
func (v *visit) pick(id string) {
	v.t.Helper()
	v.drawing(func() { eval[bool](v, fmt.Sprintf(`(whorlbenchProgram.pick(%q), true)`, id)) })
}
