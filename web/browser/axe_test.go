//go:build browser

package browser

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// module returns a file of an npm package that web/package-lock.json names,
// and has npm install it first where it is missing. A machine without npm
// skips the test and says so.
func module(t *testing.T, file string) string {
	t.Helper()
	path := filepath.Join("../node_modules", file)
	if _, err := os.Stat(path); errors.Is(err, os.ErrNotExist) {
		npm, err := exec.LookPath("npm")
		if err != nil {
			t.Skipf("%s is not here and npm is not installed: this check is left out", file)
		}
		out, err := exec.Command(npm, "ci", "--prefix", "..", "--ignore-scripts", "--no-audit", "--no-fund").CombinedOutput()
		if err != nil {
			t.Fatalf("npm ci: %v\n%s", err, out)
		}
	}
	data, err := os.ReadFile(path)
	must(t, err)
	return string(data)
}

// complaint is what axe-core finds at one place or several.
type complaint struct {
	ID, Impact, Help string
	Places           []string
}

// runAxe asks for violations of every rule, best practices too.
const runAxe = `axe.run(document, { resultTypes: ["violations"] }).then(({ violations, passes }) => {
	if (passes.length < 10) throw new Error("only " + passes.length + " rules could be tried");
	return violations.map((v) => ({ ID: v.id, Impact: v.impact, Help: v.help, Places: v.nodes.map((n) => n.target.join(" ") + ": " + n.failureSummary) }));
})`

// unnamed are the buttons in whose accessible name does not stand what is written
// on them, so that they could not be called by voice (WCAG 2.2, 2.5.3); axe-core
// does not ask for it unless told to.
const unnamed = `(() => {
	const words = (text) => " " + text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ").trim() + " ";
	return [...document.querySelectorAll("button[aria-label]")].filter((b) => b.textContent && !words(b.getAttribute("aria-label")).includes(words(b.textContent)))
		.map((b) => b.textContent + " / " + b.getAttribute("aria-label"));
})()`

// judge fails the test for what axe-core finds serious or critical; the rest
// is told.
func (v *visit) judge(axe, where string) {
	v.t.Helper()
	if !eval[bool](v, `typeof axe === "object"`) {
		eval[bool](v, axe+"\n;true")
	}
	found, err := chromedp.Run(v.ctx, chromedp.Evaluate[[]complaint](runAxe, chromedp.EvalAwaitPromise))
	must(v.t, err)
	for _, text := range eval[[]string](v, unnamed) {
		v.t.Errorf("%s: what is written does not stand in the name: %s", where, text)
	}
	for _, c := range found {
		text := fmt.Sprintf("%s: %s (%s): %s\n\t%s", where, c.ID, c.Impact, c.Help, strings.Join(c.Places, "\n\t"))
		if c.Impact == "serious" || c.Impact == "critical" {
			v.t.Error(text)
		} else {
			v.t.Log(text)
		}
	}
}

// No state of the page has anything that axe-core (Deque Systems) finds
// serious or critical.
func TestAxe(t *testing.T) {
	axe := module(t, "axe-core/axe.min.js")
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.judge(axe, "first")
			v.pause()
			v.judge(axe, "paused")
			for _, d := range v.dialogs() {
				d.open()
				v.wait(fmt.Sprintf(`document.getElementById(%q).open`, d.id))
				v.judge(axe, d.id)
				eval[bool](v, fmt.Sprintf(`(document.getElementById(%q).close(), true)`, d.id))
			}
			v.pick("pier-end")
			v.judge(axe, "two hands")
			v.click("show-more")
			v.drawing(func() { v.click("show-big") })
			v.judge(axe, "big view")
			v.act("small")
			v.wait(`!document.documentElement.classList.contains("big")`)
			eval[bool](v, `(document.getElementById("theme").value = "night", document.getElementById("theme").dispatchEvent(new Event("change")), true)`)
			v.judge(axe, "night")
			for _, d := range v.dialogs() {
				d.open()
				v.wait(fmt.Sprintf(`document.getElementById(%q).open`, d.id))
				v.judge(axe, "night, "+d.id)
				eval[bool](v, fmt.Sprintf(`(document.getElementById(%q).close(), true)`, d.id))
			}
		})
		t.Run(s.name+" states", func(t *testing.T) {
			w := newWard(t, s)
			for _, st := range states {
				w.meet(t, st, func(v *visit) { v.judge(axe, st.name) })
			}
		})
	}
}

// dialog is one of the page's and the way to it.
type dialog struct {
	id   string
	open func()
}

func (v *visit) dialogs() []dialog {
	return []dialog{
		{"names", func() { v.click("title") }},
		{"patterns", func() { v.click("show-patterns") }},
		{"share-dialog", func() { eval[bool](v, `(document.querySelector("#more .show-share").click(), true)`) }},
		{"more", func() { v.click("show-more") }},
		{"film", func() { v.click("show-more"); v.click("show-film") }},
		{"card", v.openCard},
		{"order", func() { v.click("show-more"); v.click("show-order") }},
		{"practise", func() { v.click("show-more"); v.click("show-practise") }},
		{"practise-view", func() { v.click("show-more"); v.click("show-practise"); v.click("practise-start") }},
		{"glossary", func() {
			v.click("show-glossary")
			v.wait(`document.querySelectorAll("#glossary-words button").length > 0`)
		}},
		{"steps", func() {
			v.click("show-steps")
			v.wait(`document.querySelectorAll("#steps-told li").length > 0`)
		}},
		{"ask", func() { v.act("prop-type") }},
		{"choose", func() { v.act("prop-swap") }},
		{"sheet", func() { v.act("seam-0-0") }},
		{"problem", func() {
			v.open("empty.toml", nil)
			v.wait(`document.getElementById("problem").open`)
		}},
	}
}

// act presses a control through its twin's own way in.
func (v *visit) act(id string) {
	v.t.Helper()
	eval[bool](v, fmt.Sprintf(`(whorlbenchProgram.act(%q, "press", 0), true)`, id))
}

// Every dialog of the page is one that the check opens.
func TestEveryDialogIsJudged(t *testing.T) {
	v := newVisit(t, phone)
	known := map[string]bool{}
	for _, d := range v.dialogs() {
		known[d.id] = true
	}
	for _, id := range eval[[]string](v, `[...document.querySelectorAll("dialog")].map((d) => d.id)`) {
		if !known[id] {
			t.Errorf("the dialog %q has no place in visit.dialogs", id)
		}
	}
}
