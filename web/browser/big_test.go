//go:build browser

package browser

import (
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// TestBigView shows the stage and one line on a projector, stepped by a
// clicker's page keys, and by touch on a phone, and comes back.
func TestBigView(t *testing.T) {
	for _, s := range []screen{projector, phone} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			v.drawing(func() { eval[bool](v, `(whorlbenchProgram.act("playhead", "set", 0), true)`) })
			eval[bool](v, `(document.activeElement?.blur(), true)`)
			if s.touch {
				v.click("show-more")
				v.drawing(func() { v.click("show-big") })
			} else {
				v.drawing(func() { v.keys("p", 0) })
			}
			v.wait(`document.documentElement.classList.contains("big") && !!` + twin("button", "Leave the big view"))
			if h := eval[float64](v, `document.getElementById("head").offsetHeight`); h != 0 {
				t.Errorf("the header is %v high in the big view, want it gone", h)
			}
			if !s.touch {
				v.drawing(func() { v.keys(kb.PageDown, 0) })
				v.drawing(func() { v.keys(kb.PageDown, 0) })
				v.drawing(func() { v.keys(kb.PageUp, 0) })
			}
			v.shot("big-1")
			if s.touch {
				v.tap("Leave the big view")
			} else {
				v.drawing(func() { v.keys(kb.Escape, 0) })
				v.wait(`document.querySelector("#bench [data-id=playhead]")?.getAttribute("aria-valuetext") === "beat 1 of 4"`)
			}
			v.wait(`!document.documentElement.classList.contains("big") && !!` + twin("button", "Cut at the playhead"))
			v.clean()
		})
	}
}
