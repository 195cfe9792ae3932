//go:build browser

package browser

import "testing"

// TestToldSheet reads what the bench says of a pattern, one hand and two.
func TestToldSheet(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			for i, id := range []string{"half-moon", "two-ferries"} {
				v.pick(id)
				v.still()
				v.shot([]string{"told-1-bench", "told-3-bench-two"}[i])
				v.act("told")
				v.wait(`document.getElementById("sheet").open && document.querySelectorAll("#sheet .plot").length > 0 && !document.getElementById("sheet").textContent.includes("worked out")`)
				v.wait(`document.getElementById("sheet-lead").textContent.includes("C-cap")`)
				v.shot([]string{"told-2-sheet", "told-4-sheet-two"}[i])
				v.wait(`[...document.querySelectorAll("#sheet dt")].some((e) => e.textContent === "C-cap" && e.nextSibling.textContent.startsWith("Yes: "))`)
				eval[bool](v, `(document.getElementById("sheet").scrollTo(0, 1e6), true)`)
				v.shot([]string{"told-2b-sheet", "told-4b-sheet-two"}[i])
				v.shut("sheet")
			}
			v.clean()
		})
	}
}
