//go:build browser

package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// TestStripByTouch works the strip with a thumb: a second hand, a join told of,
// an edge dragged, a piece's sheet by a long press, a pattern added.
func TestStripByTouch(t *testing.T) {
	for _, s := range []screen{phone, phoneSide} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			first := v.pattern()

			v.tap("Add the left hand")
			v.wait(`document.getElementById("choose").open`)
			v.shot("strip-1-add-hand")
			v.take("Together, opposite")
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-1-]").length === 2`)
			v.shot("strip-2-two-hands")
			v.tap("Left hand")
			v.wait(`document.getElementById("choose").open`)
			v.shot("strip-3-hands")
			v.take("Hide the left hand")
			v.wait("!!" + twin("button", "Left hand, hidden"))
			v.still()
			v.shot("strip-4-hidden")

			v.tap("Right hand, join of piece 1 and 2")
			v.wait(`document.getElementById("sheet").open`)
			if got := eval[string](v, `document.getElementById("sheet").innerText`); !strings.Contains(got, "Smooth") || !strings.Contains(got, "turns back, by 180°") {
				t.Errorf("the join's sheet says %q", got)
			}
			v.shot("strip-5-join")
			v.shut("sheet")

			// The edge of the first piece, one beat on: a beat is a quarter of the strip.
			e, r := v.place("button", "Right hand, join of piece 1 and 2"), v.place("slider", "Playhead")
			x, y := e.middle()
			beat := (r.W - 6) / 4
			v.finger(input.DispatchTouchEventTypeTouchStart, [2]float64{x, y})
			for _, part := range []float64{0.3, 0.6, 0.9, 1} {
				v.drawing(func() { v.finger(input.DispatchTouchEventTypeTouchMove, [2]float64{x + part*beat, y}) })
			}
			v.shot("strip-6-edge")
			v.finger(input.DispatchTouchEventTypeTouchEnd)
			v.wait(fmt.Sprintf(`whorlbenchProgram.value("seam-0-0") === 3`))
			v.tap("Undo")
			v.wait(`whorlbenchProgram.value("seam-0-0") === 2`)
			v.tap("Undo")
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === 2`)
			if got := v.pattern(); got != first {
				t.Errorf("edge and second hand undone, the pattern is\n%s\nwant\n%s", got, first)
			}

			// A long press; the finger leaves after the sheet has come, which stays.
			p := v.place("button", "Right hand, piece 2")
			x, y = p.middle()
			v.finger(input.DispatchTouchEventTypeTouchStart, [2]float64{x, y})
			v.wait(`document.getElementById("choose").open`)
			v.finger(input.DispatchTouchEventTypeTouchEnd)
			v.refreshes(10)
			v.shot("strip-7-piece")
			v.take("Copy")
			v.press("button", "Right hand, piece 2", kb.Enter) // now that it is in hand
			v.take("Paste after")
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === 3`)

			v.click("show-patterns")
			v.shot("strip-8-patterns")
			v.drawing(func() {
				eval[bool](v, `(document.querySelector("#patterns-list section:not(#own) li:nth-child(2) .tool").click(), true)`)
			})
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length > 3`)
			v.still()
			v.shot("strip-9-inserted")
			v.clean()
		})
	}
}

// TestStripByKeyboard does the same at a desk with mouse and keyboard.
func TestStripByKeyboard(t *testing.T) {
	for _, s := range []screen{desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			first := v.pattern()

			v.press("button", "Add the left hand", " ")
			v.take("Split, same direction")
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-1-]").length === 2`)
			v.still()
			v.shot("strip-2-two-hands")

			v.press("button", "Left hand, join of piece 1 and 2", kb.ArrowRight)
			if got := eval[float64](v, `whorlbenchProgram.value("seam-1-0")`); got != 2.25 {
				t.Errorf("after one arrow on the join the piece is %v beats long, want 2.25", got)
			}
			v.shot("strip-3-join-in-focus")
			v.press("button", "Left hand, join of piece 1 and 2", " ")
			v.wait(`document.getElementById("sheet").open`)
			v.shot("strip-5-join")
			v.shut("sheet")
			v.tap("Undo")
			v.wait(`whorlbenchProgram.value("seam-1-0") === 2`)

			v.press("button", "Left hand, piece 2", " ")
			v.keys("c", chromedp.ModifierCtrl)
			v.press("button", "Right hand, piece 1", " ")
			v.keys("v", chromedp.ModifierCtrl)
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-0-]").length === 3`)
			v.keys("x", chromedp.ModifierCtrl)
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-0-]").length === 2`)
			v.press("button", "Right hand, piece 1", kb.F10, chromedp.KeyModifiers(chromedp.ModifierShift))
			v.wait(`document.getElementById("choose").open`)
			v.shot("strip-7-piece")
			v.shut("choose")

			// A right click does the same.
			x, y := v.place("button", "Right hand, piece 1").middle()
			_, err := chromedp.Call(v.ctx, input.DispatchMouseEvent, input.DispatchMouseEventParams{
				Type: input.DispatchMouseEventTypeMousePressed, X: x, Y: y, Button: input.MouseButtonRight, Buttons: 2, ClickCount: 1})
			must(t, err)
			v.wait(`document.getElementById("choose").open`)
			_, err = chromedp.Call(v.ctx, input.DispatchMouseEvent, input.DispatchMouseEventParams{
				Type: input.DispatchMouseEventTypeMouseReleased, X: x, Y: y, Button: input.MouseButtonRight, ClickCount: 1})
			must(t, err)
			v.shut("choose")

			for eval[string](v, twin("button", "Undo")+`.ariaDisabled ?? ""`) != "true" {
				v.tap("Undo")
			}
			if got := v.pattern(); got != first {
				t.Errorf("undone to the start the pattern is\n%s\nwant\n%s", got, first)
			}
			v.clean()
		})
	}
}

// TestLongStrip looks at a lane of many pieces, whose strip has a window.
func TestLongStrip(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			first := v.pattern()
			piece := first[strings.Index(first, "[[hand.piece]]"):]
			v.open("long.toml", []byte(first+strings.Repeat("\n"+piece, 30)))
			v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length > 20`)
			v.still()
			v.shot("strip-10-long")
			v.press("button", "Right hand, piece 20", " ")
			v.still()
			v.shot("strip-11-long-middle")
			v.drawing(func() { v.keys("-", 0) })
			v.drawing(func() { v.keys("-", 0) })
			v.drawing(func() { v.keys("-", 0) })
			v.shot("strip-12-long-whole")
			v.clean()
		})
	}
}

// take picks an option of the list that is open.
func (v *visit) take(label string) {
	v.t.Helper()
	v.wait(`document.getElementById("choose").open`)
	v.drawing(func() {
		eval[bool](v, fmt.Sprintf(`([...document.querySelectorAll("#choose-list button")].find((b) => b.querySelector("b")?.textContent === %q).click(), true)`, label))
	})
}

// shut closes a dialog.
func (v *visit) shut(id string) {
	v.t.Helper()
	eval[bool](v, fmt.Sprintf(`(document.getElementById(%q).close(), true)`, id))
}

// keys gives a key to whatever has the focus.
func (v *visit) keys(key string, mod chromedp.Modifier) {
	v.t.Helper()
	must(v.t, chromedp.Do(v.ctx, chromedp.KeyEvent(key, chromedp.KeyModifiers(mod))))
}
