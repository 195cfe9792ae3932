//go:build browser

package browser

import (
	"bytes"
	"image/png"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// black fails unless every pixel of the page is black.
func (v *visit) black() {
	v.t.Helper()
	v.drawing(func() {})
	img, err := png.Decode(bytes.NewReader(v.shot("dark")))
	must(v.t, err)
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			if r, g, b, _ := img.At(x, y).RGBA(); r+g+b > 0 {
				v.t.Fatalf("in the dark the pixel at %d, %d is %v", x, y, img.At(x, y))
			}
		}
	}
}

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
				v.tap("Dark screen")
			} else {
				v.drawing(func() { v.keys("b", 0) })
			}
			v.wait(`!!` + twin("button", "Bring the picture back"))
			v.black()
			if s.touch {
				v.tap("Bring the picture back")
			} else {
				v.drawing(func() { v.keys("b", 0) })
			}
			v.wait(`!!` + twin("button", "Dark screen"))
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
