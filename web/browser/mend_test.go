//go:build browser

package browser

import (
	"fmt"
	"testing"
)

// TestMendAKink takes a C-cap whose circle is smaller than its tether is long,
// and so kinks at both ends, to smooth in three ways, each looked at on the
// stage first: by touch on a phone, by mouse at a desk.
func TestMendAKink(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			v.drawing(func() { eval[string](v, `whorlbenchProgram.answer("radius", "0.4")`) })
			kinked := v.pattern()
			join := `document.querySelector("[data-id=seam-0-0]").getAttribute("aria-label")`
			v.wait(join + `.endsWith("kink")`)
			for i, way := range []string{"Let the hand ease into the turn", "Share the beats for the least jolt", "Make the circle of piece 2 larger"} {
				v.act("seam-0-0")
				v.wait(`document.getElementById("sheet").open && document.getElementById("sheet-lead").textContent === "Kink"`)
				v.shot("mend-1-sheet")
				v.pickAction(way)
				v.wait("!!" + twin("button", "Take it"))
				v.shot(fmt.Sprintf("mend-2-tryout-%d", i+1))
				if v.pattern() != kinked {
					t.Fatalf("%s: shown only, it has changed the pattern", way)
				}
				v.tap("Take it")
				v.wait(join + `.endsWith("smooth")`)
				v.act("seam-0-0")
				v.wait(`document.getElementById("sheet").open && document.getElementById("sheet-lead").textContent === "Smooth"`)
				v.shut("sheet")
				v.tap("Undo")
				v.wait(`whorlbenchProgram.file().text === ` + quote(kinked))
			}
			v.clean()
		})
	}
}

// pickAction takes what a sheet offers.
func (v *visit) pickAction(label string) {
	v.t.Helper()
	v.drawing(func() {
		eval[bool](v, fmt.Sprintf(`([...document.querySelectorAll("#sheet-actions button")].find((b) => b.querySelector("b")?.textContent === %q).click(), true)`, label))
	})
}
