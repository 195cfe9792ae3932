//go:build browser

package browser

import (
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// TestMakeACap builds a C-cap from two flowers: extension's circle is cut in
// half, one half is deleted, and what can follow gives the way back. The name
// and the clauses appear on the sheet and are heard through the live region. By
// touch on a phone, by keys at a desk.
func TestMakeACap(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			v.pick("beam-from-the-mole")
			v.still()
			half := eval[float64](v, `Number(document.querySelector("#bench [data-id=playhead]").max) / 2`)
			v.drawing(func() {
				eval[bool](v, `(whorlbenchProgram.act("playhead", "set", `+strconv.FormatFloat(half, 'g', -1, 64)+`), true)`)
			})
			do := func(button, key string) {
				if s.touch {
					v.tap(button)
				} else {
					v.keys(key, 0)
				}
			}
			do("Cut at the playhead", "c")
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === 2`)
			do("Delete the piece", kb.Delete)
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === 1`)
			do("Next", "n")
			v.wait(`document.getElementById("choose").open && document.querySelectorAll("#choose .motion").length > 3`)
			v.shot("follow-1-list")
			first := eval[string](v, `document.querySelector("#choose-list b").textContent`)
			if head := eval[string](v, `document.querySelector("#choose-list h3").textContent`); head != "Smooth" || strings.Contains(first, "kink") {
				t.Errorf("under %q the first that can follow is %q, want a smooth one", head, first)
			}
			back := eval[string](v, `[...document.querySelectorAll("#choose-list b")].map((b) => b.textContent).find((x) => x.endsWith("turning back")) ?? ""`)
			if !strings.HasPrefix(back, "Four-petal antispin flower") {
				t.Fatalf("what turns back smoothly is %q, want the four-petal antispin flower", back)
			}
			v.take(back)
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === 2`)
			v.wait(`heard.includes("C-cap of extension and four-petal antispin flower, strict sense") && heard.includes("C-cap. Yes: the hand goes to and fro on one arc of one circle.")`)
			v.shot("follow-2-added")
			v.act("told")
			v.wait(`document.getElementById("sheet").open && document.getElementById("sheet-lead").textContent.startsWith("C-cap of extension")`)
			v.wait(`[...document.querySelectorAll("#sheet dt")].some((e) => e.textContent === "CAP (strict)" && e.nextSibling.textContent.startsWith("Yes: "))`)
			v.shut("sheet")
			v.clean()
		})
	}
}
