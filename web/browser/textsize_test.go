//go:build browser

package browser

import (
	"fmt"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// TestLargeText sets the browser's own text size, as a person does in its
// settings, and holds that page and bench grow with it and stay in reach.
func TestLargeText(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			for _, size := range []int64{24, 32} {
				_, err := chromedp.Call(v.ctx, page.SetFontSizes, page.SetFontSizesParams{FontSizes: &page.FontSizes{Standard: size, Fixed: size}})
				must(t, err)
				v.load()
				if got, want := eval[float64](v, `JSON.parse(whorlbenchPage.frame()).Text`), float64(size)/16; got != want {
					t.Errorf("with text of %d px the page asks for %v times the usual, want %v", size, got, want)
				}
				v.pause()
				name := fmt.Sprintf("text-%d", size*100/16)
				v.shot(name)
				v.pick("pier-end")
				v.shot(name + "-two-hands")
				for _, d := range v.dialogs() {
					d.open()
					v.wait(fmt.Sprintf(`document.getElementById(%q).open`, d.id))
					if eval[bool](v, fmt.Sprintf(`(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 1)(document.getElementById(%q))`, d.id)) {
						t.Errorf("text of %d px: the dialog %q has to be scrolled sideways", size, d.id)
					}
					v.shot(name + "-" + d.id)
					eval[bool](v, fmt.Sprintf(`(document.getElementById(%q).close(), true)`, d.id))
				}
				if wide := eval[[]string](v, `[...document.querySelectorAll("header button")].filter((b) => b.checkVisibility()).filter((b) => { const r = b.getBoundingClientRect(); return r.left < 0 || r.right > innerWidth || r.height < 44; }).map((b) => b.id)`); len(wide) > 0 {
					t.Errorf("text of %d px: %v of the header are out of reach", size, wide)
				}
			}
			v.clean()
		})
	}
}
