//go:build browser

package browser

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// blank finds a place in a dialog's box where nothing but the dialog itself is,
// as between two of its parts, and one beside the box.
const blank = `(() => {
	const d = document.getElementById(%q), r = d.getBoundingClientRect();
	for (let y = r.top + 4; y < r.bottom - 4; y += 3)
		for (const x of [r.left + r.width / 2, r.left + 8, r.right - 24])
			if (document.elementFromPoint(x, y) === d) return [[x, y], [Math.max(r.left / 2, 2), Math.max(r.top / 2, 2)]];
	return [[0, 0], [0, 0]];
})()`

// letter presses a letter's key as a keyboard does: what it types is part of the
// press, and left out where the press is taken.
func (v *visit) letter(key string) {
	v.t.Helper()
	upper := strings.ToUpper(key)
	for _, e := range []input.DispatchKeyEventParams{{Type: input.DispatchKeyEventTypeKeyDown, Text: key}, {Type: input.DispatchKeyEventTypeKeyUp}} {
		e.Key, e.Code, e.WindowsVirtualKeyCode = key, "Key"+upper, int64(upper[0])
		_, err := chromedp.Call(v.ctx, input.DispatchKeyEvent, e)
		must(v.t, err)
	}
}

// TestDialogsCloseBesideThem: a tap closes a dialog where it begins and ends beside its box, and nowhere in it;
// letters are the bench's again once it is closed, whatever has the focus then.
func TestDialogsCloseBesideThem(t *testing.T) {
	v := newVisit(t, desk)
	v.pause()
	for _, d := range v.dialogs() {
		if !slices.Contains([]string{"patterns", "share-dialog", "more", "order", "glossary", "choose", "sheet", "steps", "card"}, d.id) {
			continue
		}
		eval[bool](v, `(document.querySelectorAll("dialog[open]").forEach((d) => d.close()), true)`)
		d.open()
		open := fmt.Sprintf(`document.getElementById(%q).open`, d.id)
		v.wait(open)
		at := eval[[2][2]float64](v, fmt.Sprintf(blank, d.id))
		if at[0] == [2]float64{} {
			t.Errorf("%s: no blank place was found", d.id)
			continue
		}
		v.touch(at[0])
		if !eval[bool](v, open) {
			t.Errorf("%s: a tap on its blank place %v closes it", d.id, at[0])
			continue
		}
		v.touch(at[0], at[1])
		v.touch(at[1], at[0])
		if !eval[bool](v, open) {
			t.Errorf("%s: a drag over its edge closes it", d.id)
			continue
		}
		v.touch(at[1])
		v.wait("!" + open)
	}
	for _, id := range []string{"show-patterns", "show-more", "title"} {
		// As by hand, so that the focus goes back to it.
		eval[bool](v, fmt.Sprintf(`(document.getElementById(%q).focus(), document.getElementById(%q).click(), true)`, id, id))
		v.wait(`!!document.querySelector("dialog[open]")`)
		v.keys(kb.Escape, 0)
		v.wait(fmt.Sprintf(`!document.querySelector("dialog[open]") && document.activeElement.id === %q`, id))
		v.letter("g")
		v.wait(`document.getElementById("glossary").open`)
		if typed := eval[string](v, `document.getElementById("glossary-search").value`); typed != "" {
			t.Errorf("the key is also typed: the search has %q", typed)
		}
		v.keys(kb.Escape, 0)
		v.wait(`!document.querySelector("dialog[open]")`)
	}
	// Space is the focused button's own.
	eval[bool](v, `(document.getElementById("show-more").focus(), true)`)
	v.keys(" ", 0)
	v.wait(`document.getElementById("more").open`)
	v.clean()
}
