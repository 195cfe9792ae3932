//go:build browser

package browser

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"whorlbench/sandbox/bench"
)

// compared is what the program tells of two patterns that are compared, as an
// expression of JavaScript: null if nothing is.
const compared = `JSON.parse(whorlbenchProgram.compared())`

func (v *visit) compared() bench.Compared {
	v.t.Helper()
	return eval[bench.Compared](v, compared)
}

// benchState is what a comparison must leave as it is.
type benchState struct {
	Pattern, Own, Playhead, Undo string
	Controls                     []string
}

func (v *visit) benchState() benchState {
	v.t.Helper()
	return benchState{
		Pattern:  v.pattern(),
		Own:      eval[string](v, `JSON.stringify(whorlbenchProgram.own().list.map((p) => p.id))`),
		Playhead: v.value("Playhead"),
		Undo:     eval[string](v, twin("button", "Undo")+`.ariaDisabled ?? "can"`),
		Controls: eval[[]string](v, `[...document.querySelectorAll("#bench [data-id]")].map((e) => e.dataset.id + " " + e.ariaLabel)`),
	}
}

// choose takes a pattern of the list, by its title.
func (v *visit) choosePattern(title string) {
	v.t.Helper()
	v.wait(`document.getElementById("patterns").open`)
	v.drawing(func() {
		eval[bool](v, fmt.Sprintf(`([...document.querySelectorAll("#patterns-list li button:not(.tool)")].find((b) => b.textContent.includes(%q)).click(), true)`, title))
	})
	v.wait(`!!` + twin("button", "Leave the comparison"))
}

// differs waits until what differs is told, in the panel or the sheet, and
// returns it as it reads.
func (v *visit) differs(place string) string {
	v.t.Helper()
	v.wait(fmt.Sprintf(`document.querySelectorAll("#%s-sections dd").length > 0`, place))
	return eval[string](v, fmt.Sprintf(`[...document.querySelectorAll("#%s-sections :is(h3, dd)")].map((e) => e.textContent).join("\n")`, place))
}

// TestCompare: a teacher puts a four-petal in-spin flower and a four-petal
// antispin flower side by side, sees both move on one playhead, reads in what they
// differ, swaps them, lays one over the other and leaves; the bench is as it was.
// Four petals in-spin are n − 1 with n = 5, antispin 1 − n with n = −3 (common
// practice).
func TestCompare(t *testing.T) {
	const buoys, compass = "Four buoys in a ring", "Compass on the harbour wall"
	for _, s := range []screen{desk, phone} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pick("four-buoys")
			v.pause()
			v.tap("Flip arm") // work of one's own, and something to undo
			v.tap("Flip arm")
			v.wait(twin("button", "What this pattern is") + `.ariaLabel.includes(":")`) // all that is said of it is known
			before := v.benchState()
			if s.touch {
				v.click("show-more")
				v.click("show-compare")
			} else {
				eval[bool](v, `(document.activeElement?.blur(), true)`)
				v.keys("d", 0)
			}
			v.wait(`document.getElementById("patterns-head").textContent === "Compare with"`)
			v.shot("compare-0-list")
			v.choosePattern(compass)
			if c := v.compared(); c.Titles != [2]string{buoys, compass} || c.Playing {
				t.Fatalf("compared are %+v, want %s on the left, standing still as the bench did", c, buoys)
			}

			// One playhead, played and stepped, by hand and by key.
			v.drawing(func() { v.tap("Play") })
			v.wait(compared + `.beats[0] > 0.5`)
			v.shot("compare-1-playing")
			v.tap("Pause")
			if c := v.compared(); c.Playing || c.Beats[0] != c.Beats[1] {
				t.Errorf("after Pause: %+v, want both at one beat, still", c)
			}
			whole := math.Floor(v.compared().Beats[0])
			v.drawing(func() { v.tap("Step on") })
			if c := v.compared(); c.Beats[0] != whole+1 || c.Beats[1] != whole+1 {
				t.Errorf("a step on from beat %v leads to %v, want %v for both", whole, c.Beats, whole+1)
			}
			v.drawing(func() { v.keys(kb.Home, 0) })
			v.drawing(func() { v.keys(kb.ArrowRight, 0) })
			if c := v.compared(); c.Beats[0] != 0.25 || c.Beats[1] != 0.25 {
				t.Errorf("Home and → lead to %v, want a quarter beat for both", c.Beats)
			}
			if got, want := v.value("Playhead of both"), "beat 0.25 of 8. A: 4-petal in-spin. B: 4-petal antispin."; got != want {
				t.Errorf("the playhead reads %q, want %q", got, want)
			}

			// What differs.
			place := "differs"
			if s.touch {
				place = "sheet"
				v.tap("What differs between the two")
				v.wait(`document.getElementById("sheet").open`)
			}
			for _, want := range []string{"Name\nFour-petal in-spin flower.\nFour-petal antispin flower.", "Prop turns to one of the arm\n5 the same way.\n3 the other way.", "Closing\n"} {
				if got := v.differs(place); !strings.Contains(got, want) {
					t.Errorf("what differs reads\n%s\nwant %q in it", got, want)
				}
			}
			v.shot("compare-2-differs")
			if s.touch {
				v.shut("sheet")
			}

			// The other side, over each other.
			v.drawing(func() { v.tap("Swap the sides") })
			if c := v.compared(); c.Titles != [2]string{compass, buoys} || c.Beats[0] != 0.25 {
				t.Errorf("after Swap: %+v, want %s on the left, at the same beat", c, compass)
			}
			v.drawing(func() { v.tap("Overlay") })
			if !v.compared().Over {
				t.Error("they do not lie over each other")
			}
			v.shot("compare-3-over")
			v.tap("Leave the comparison")
			v.wait(compared + ` === null && !!` + twin("button", "Cut at the playhead"))
			if after := v.benchState(); fmt.Sprint(after) != fmt.Sprint(before) {
				t.Errorf("the bench is\n%+v\nwant it as before:\n%+v", after, before)
			}
			v.clean()
		})
	}
}

// TestCompareTakes opens the other pattern on the bench, with undo, and compares
// with a file and with one's own.
func TestCompareTakes(t *testing.T) {
	v := newVisit(t, desk)
	v.pause()
	first := v.pattern()
	v.keys("d", 0)
	v.choosePattern("Three sails at the quay")
	v.tap("Open B on the bench")
	v.wait(compared + ` === null && whorlbenchProgram.about().title === "Three sails at the quay"`)
	sails := v.pattern()
	v.tap("Undo")
	if got := v.pattern(); got != first {
		t.Errorf("undone, the pattern is\n%s\nwant\n%s", got, first)
	}

	v.tap("Flip arm")
	v.keys("d", 0)
	v.wait(`document.getElementById("patterns").open`)
	eval[bool](v, `(document.querySelector("#own-list button").click(), true)`)
	v.wait(compared + `?.known`)
	if c := v.compared(); c.Titles[0] != c.Titles[1] {
		t.Errorf("one's own is compared with itself as %q", c.Titles)
	}
	v.keys(kb.Escape, 0)
	v.wait(compared + ` === null`)

	v.keys("d", 0)
	v.wait(`document.getElementById("patterns").open`)
	for _, f := range []struct{ name, text, wrong string }{
		{"broken.toml", "format = 1\nnonsense", "broken.toml:2"},
		{"many.zip", "PK", "many.zip"},
		{"sails.toml", sails, ""},
	} {
		// The device's own way to choose a file is left out.
		eval[bool](v, `(document.getElementById("file").click = () => {}, document.querySelector("#patterns .choose-file").click(), true)`)
		v.open(f.name, []byte(f.text))
		if f.wrong != "" {
			v.wait(`document.getElementById("problem").open && document.getElementById("problem-lines").textContent.includes(` + quote(f.wrong) + `)`)
			v.shut("problem")
			v.keys("d", 0)
			v.wait(`document.getElementById("patterns").open`)
		}
	}
	v.wait(compared + `?.titles[1] === "Three sails at the quay"`)
	v.keys(kb.Escape, 0)
	v.wait(compared + ` === null`)
	v.clean()
}

// TestCompareStates: a comparison of two hands with one, on all four screens, by day
// and by night, over each other, with what differs to be read, and in large text:
// nothing is reported, axe-core finds nothing serious, and what stands beside the
// stages covers none of them.
func TestCompareStates(t *testing.T) {
	axe := module(t, "axe-core/axe.min.js")
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			for _, text := range []int64{16, 32} {
				_, err := chromedp.Call(v.ctx, page.SetFontSizes, page.SetFontSizesParams{FontSizes: &page.FontSizes{Standard: text, Fixed: text}})
				must(t, err)
				v.load()
				v.pick("pier-end")
				v.pause()
				name := fmt.Sprintf("compare-states-%d", text)
				eval[bool](v, `(whorlbenchProgram.compare("library", "gangway"), true)`)
				v.wait(compared + `?.known`)
				v.drawing(func() { eval[bool](v, `(whorlbenchProgram.act("playhead", "set", 1.5), true)`) })
				v.shot(name + "-beside")
				v.judge(axe, "compared")
				v.drawing(func() {
					eval[bool](v, `(document.getElementById("theme").value = "night", document.getElementById("theme").dispatchEvent(new Event("change")), true)`)
				})
				v.drawing(func() { v.tap("Overlay") })
				v.shot(name + "-over-night")
				v.judge(axe, "laid over each other, night")
				if wide := eval[float64](v, `document.getElementById("differs").offsetWidth`); wide > 0 {
					if right := eval[float64](v, `Math.max(...[...document.querySelectorAll("#bench [data-id]")].map((e) => e.getBoundingClientRect().right))`); right > float64(s.width)-wide {
						t.Errorf("a control reaches to %v, under what differs, which is %v wide", right, wide)
					}
				} else {
					v.tap("What differs between the two")
					v.wait(`document.getElementById("sheet").open`)
					v.shot(name + "-differs")
					v.judge(axe, "what differs")
					v.shut("sheet")
				}
				eval[bool](v, `(document.getElementById("theme").value = "day", document.getElementById("theme").dispatchEvent(new Event("change")), true)`)
				v.tap("Leave the comparison")
				v.wait(compared + ` === null`)
			}
			v.clean()
		})
	}
}
