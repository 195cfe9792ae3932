//go:build browser

package browser

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// openCard opens the lesson card as a person does, and waits until it is there.
func (v *visit) openCard() {
	v.t.Helper()
	v.click("show-more")
	v.click("show-card")
	v.wait(`document.getElementById("card").open && document.querySelector("#card-look article") !== null`)
}

var aPage = regexp.MustCompile(`/Type\s*/Page\b`)

// TestCard: the card opens from More, is what is printed while it is open, and is
// printed alone on one or two pages of A4, from the night theme too.
func TestCard(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		for _, theme := range []string{"day", "night"} {
			t.Run(s.name+" "+theme, func(t *testing.T) {
				v := newVisit(t, s)
				eval[bool](v, `(document.getElementById("theme").value = `+quote(theme)+`, document.getElementById("theme").dispatchEvent(new Event("change")), true)`)
				v.openCard()
				eval[bool](v, `(document.getElementById("card").close(), true)`)
				v.wait(`!document.documentElement.classList.contains("has-card")`)
				v.openCard()
				v.shot("card-" + theme)
				a4w, a4h, yes := 8.27, 11.69, true // inches
				out, err := chromedp.Call(v.ctx, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: a4w, PaperHeight: a4h, PrintBackground: &yes, PreferCSSPageSize: &yes})
				must(t, err)
				if n := len(aPage.FindAll(out.Data, -1)); n < 1 || n > 2 {
					t.Errorf("%d pages, want one or two", n)
				}
				if dir := os.Getenv("WHORLBENCH_SHOTS"); dir != "" {
					must(t, os.WriteFile(filepath.Join(dir, "card-"+s.name+"-"+theme+".pdf"), out.Data, 0o644))
				}
				v.clean()
			})
		}
	}
}
