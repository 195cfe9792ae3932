//go:build browser

package browser

import (
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"whorlbench/cmd/whorlbench/site"
	"whorlbench/sandbox/words"
)

// tapOn touches the middle of an element of the page, as a finger does.
func (v *visit) tapOn(element string) {
	v.t.Helper()
	v.wait(fmt.Sprintf("!!(%s)", element))
	at := eval[box](v, fmt.Sprintf(`(() => {
		const e = %s;
		e.scrollIntoView({ block: "center" });
		const r = e.getBoundingClientRect();
		return { X: r.x, Y: r.y, W: r.width, H: r.height };
	})()`, element))
	x, y := at.middle()
	v.touch([2]float64{x, y})
}

// wordIn returns the link to a word in a part of the page.
func wordIn(part, text string) string {
	return fmt.Sprintf(`[...document.querySelectorAll(%q)].find((b) => b.textContent === %q)`, part+" button", text)
}

// explains waits until the glossary tells of a word.
func (v *visit) explains(word string) {
	v.t.Helper()
	v.wait(fmt.Sprintf(`document.getElementById("glossary").open && document.getElementById("glossary-word").textContent === %q`, word))
}

// head is where the head of the moving picture is.
const head = `["cx", "cy"].map((a) => document.querySelector("#glossary-picture .head").getAttribute(a)).join(" ")`

// moves waits until the moving picture is elsewhere.
func (v *visit) moves() {
	v.t.Helper()
	v.wait(fmt.Sprintf(`%s !== %q`, head, eval[string](v, head)))
}

// TestGlossary: someone with a phone looks up what the bench has just said.
func TestGlossary(t *testing.T) {
	v := newVisit(t, phone)
	v.pause()
	v.act("told")
	v.wait(`document.getElementById("sheet").open`)
	v.wait("!!" + wordIn("#sheet-lead", "C-cap"))
	v.shot("glossary-1-sheet")
	v.tapOn(wordIn("#sheet-lead", "C-cap"))
	v.explains("C-cap")
	v.moves()
	v.wait(`document.getElementById("glossary-says").textContent.includes("like a letter C")`)
	v.wait(`document.getElementById("glossary-judged").textContent.includes("Half-moon")`)
	v.shot("glossary-2-word")

	// On to a related word, where people differ: each sense judges the pattern.
	v.tapOn(wordIn("#glossary-related", "CAP"))
	v.explains("CAP")
	for name, because := range map[string]string{
		"CAP (broad)":  "Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower.",
		"CAP (strict)": "Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
	} {
		v.wait(fmt.Sprintf(`[...document.querySelectorAll("#glossary-judged dt")].some((e) => e.textContent === %q && e.nextSibling.textContent === %q)`, name, because))
	}
	v.shot("glossary-3-judged")
	v.tapOn(wordIn("#glossary-related", "S-cap"))
	v.explains("S-cap")
	v.moves()
	v.tapOn(`document.getElementById("glossary-back")`)
	v.explains("CAP")
	v.tapOn(`document.getElementById("glossary-back")`)
	v.explains("C-cap")
	if !eval[bool](v, `document.getElementById("glossary-back").hidden`) {
		t.Error("there is a way back from the word that was first")
	}
	v.tapOn(wordIn("#glossary-related", "S-cap"))
	v.explains("S-cap")
	v.drawing(func() { v.tapOn(`document.getElementById("glossary-open")`) })
	v.wait(`!document.querySelector("dialog[open]") && whorlbenchProgram.about().title === "Swan in the inner basin"`)

	// The list: by letter, by search, and back to it.
	v.click("show-more")
	v.click("show-glossary")
	v.wait(`document.querySelectorAll("#glossary-words li").length >= ` + fmt.Sprint(len(words.EnglishGlossary.Terms)))
	v.shot("glossary-4-list")
	eval[bool](v, `(() => {
		const s = document.getElementById("glossary-search");
		s.value = "tether taut";
		s.dispatchEvent(new Event("input"));
		return true;
	})()`)
	v.shot("glossary-5-search")
	v.tapOn(wordIn("#glossary-words", "taut"))
	v.explains("taut")
	v.tapOn(`document.getElementById("glossary-all")`)
	v.wait(`getComputedStyle(document.getElementById("glossary-term")).display === "none" && document.activeElement.textContent === "taut"`)
	v.shut("glossary")
	v.clean()
}

// TestGlossaryFinds holds the page's script to the program: the same words in
// the same texts.
func TestGlossaryFinds(t *testing.T) {
	var table any
	data, err := json.Marshal(words.English)
	must(t, err)
	must(t, json.Unmarshal(data, &table))
	texts := []string{
		"A sailor’s cap is no CAP, nor are CAPs caps.", "box-mode four-petal antispin, petals’ ends", "ſmooth and \u212aink, smooth",
		"Anti-Spin ANTISPIN anti spin", "cat’s eyes, Cat eye; CATEYE", "𝐩etal petal𝐩 é-petal petalé", "C-cap c-cap S-caps", "", "-", "a round of the hand",
	}
	var gather func(x any)
	gather = func(x any) {
		switch x := x.(type) {
		case string:
			texts = append(texts, x)
		case []any:
			for _, y := range x {
				gather(y)
			}
		case map[string]any:
			for _, y := range x {
				gather(y)
			}
		}
	}
	gather(table)
	for _, term := range words.EnglishGlossary.Terms {
		texts = append(texts, term.Says...)
	}
	if len(texts) < 500 {
		t.Fatalf("only %d texts are tried", len(texts))
	}
	v := newVisit(t, desk)
	data, err = json.Marshal(texts)
	must(t, err)
	var found [][]string
	must(t, json.Unmarshal([]byte(v.later(fmt.Sprintf(`Promise.all([import("./mention.js"), fetch("glossary.en.json").then((r) => r.json())]).then(([m, said]) => {
		const find = m.finder(said);
		return JSON.stringify(%s.map((text) => find(text).map(({ from, to, key }) => text.slice(from, to) + " " + key)));
	})`, data))), &found))
	n := 0
	for i, text := range texts {
		var want []string
		for _, m := range words.EnglishGlossary.Find(text) {
			want = append(want, text[m.From:m.To]+" "+m.Key)
		}
		if n += len(want); !slices.Equal(found[i], want) {
			t.Errorf("%q: the page finds %q, want %q", text, found[i], want)
		}
	}
	if n < 500 {
		t.Errorf("only %d words stand in the texts", n)
	}
	v.clean()
}

// TestGlossaryKeepsStill: where motion is not wanted the picture waits to be asked.
func TestGlossaryKeepsStill(t *testing.T) {
	v := newVisit(t, desk)
	_, err := chromedp.Call(v.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
		Features: []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: "reduce"}},
	})
	must(t, err)
	v.keys("g", 0)
	v.wait(`document.getElementById("glossary").open && !!document.querySelector("#glossary-picture .head")`)
	v.wait(`document.getElementById("glossary-play").textContent === "Play"`)
	before := eval[string](v, head)
	v.refreshes(20)
	if got := eval[string](v, head); got != before {
		t.Errorf("the head has gone from %s to %s", before, got)
	}
	v.click("glossary-play")
	v.moves()
	v.click("glossary-play")
	v.wait(`document.getElementById("glossary-play").textContent === "Play"`)
	before = eval[string](v, head)
	v.refreshes(20)
	if got := eval[string](v, head); got != before {
		t.Errorf("put to rest, the head has gone from %s to %s", before, got)
	}
	v.keys("\x1b", 0)
	v.wait(`!document.querySelector("dialog[open]")`)
	v.clean()
}

// TestGlossaryOpens: a word can be opened where it stands, at every size, and the
// finger has room.
func TestGlossaryOpens(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			for _, theme := range []string{"day", "night"} {
				eval[bool](v, fmt.Sprintf(`(document.getElementById("theme").value = %q, document.getElementById("theme").dispatchEvent(new Event("change")), true)`, theme))
				v.pick("one-gig-two-oars")
				v.act("told")
				v.wait("!!" + wordIn("#sheet-sections", "same direction") + " || !!document.querySelector('#sheet-sections .word')")
				v.shot("glossary-look-1-sheet-" + theme)
				v.tapOn(`document.querySelector("#sheet-sections .word")`)
				v.wait(`document.getElementById("glossary").open && !!document.querySelector("#glossary-picture svg")`)
				v.refreshes(5)
				v.shot("glossary-look-2-word-" + theme)
				v.shut("glossary")
				v.wait(`document.activeElement.className === "word"`)
				v.shut("sheet")
				v.act("follow")
				v.wait(`document.getElementById("choose").open && document.querySelectorAll("#choose .used .word").length > 0`)
				eval[bool](v, `(document.getElementById("choose").scrollTo(0, 1e6), true)`)
				v.shot("glossary-look-3-choose-" + theme)
				v.shut("choose")
				v.click("show-more")
				v.shot("glossary-look-4-more-" + theme)
				v.click("show-glossary")
				v.wait(`document.querySelectorAll("#glossary-words li").length > 0`)
				v.shot("glossary-look-5-list-" + theme)
				for i, word := range []string{"isolation", "hybrid", "fountain"} {
					eval[bool](v, fmt.Sprintf(`(document.querySelector("#glossary-words [data-key=%s]").click(), true)`, word))
					v.explains(word)
					v.refreshes(5)
					v.shot(fmt.Sprintf("glossary-look-%d-%s-%s", 6+i, word, theme))
					eval[bool](v, `(document.getElementById("glossary").scrollTo(0, 1e6), document.getElementById("glossary-term").scrollTo(0, 1e6), true)`)
					v.shot(fmt.Sprintf("glossary-look-%d-%s-%s-foot", 6+i, word, theme))
				}
				v.shut("glossary")
				v.click("show-more")
				v.click("show-steps")
				v.wait(`document.querySelectorAll("#steps-told li").length > 0 && !!document.querySelector("#steps-told .word")`)
				v.shot("glossary-look-9-steps-" + theme)
				v.shut("steps")
			}
			v.clean()
		})
	}
}

// stepsOf are the steps of a built-in pattern as they were read beside its file.
func stepsOf(t *testing.T, id string) []string {
	t.Helper()
	data, err := os.ReadFile("../../sandbox/words/testdata/steps.txt")
	must(t, err)
	_, rest, ok := strings.Cut(string(data), "["+id+"]\n")
	text, _, _ := strings.Cut(rest, "\n\n")
	if !ok {
		t.Fatalf("there are no steps of %s", id)
	}
	return strings.Split(strings.TrimSpace(text), "\n")
}

// TestGlossarySteps: the pattern is told as plain steps, and the steps are copied
// as one text.
func TestGlossarySteps(t *testing.T) {
	v := newVisit(t, phone)
	_, err := chromedp.Call(v.ctx, emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true})
	must(t, err)
	for _, name := range []string{"clipboard-read", "clipboard-write"} {
		_, err := chromedp.CallBrowser(v.ctx, browser.SetPermission, browser.SetPermissionParams{
			Permission: &browser.PermissionDescriptor{Name: name}, Setting: browser.PermissionSettingGranted, Origin: strings.TrimSuffix(v.url, "/"),
		})
		must(t, err)
	}
	want := stepsOf(t, "half-moon")
	v.click("show-more")
	v.click("show-steps")
	v.wait(`document.querySelectorAll("#steps-told > ul > li").length === 2`)
	if got := eval[[]string](v, `[...document.querySelectorAll("#steps-told :is(p, h3, li li)")].map((e) => e.textContent)`); !slices.Equal(got, want) {
		t.Errorf("the steps are\n%q\nwant\n%q", got, want)
	}
	v.shot("glossary-steps")
	v.tapOn(`document.getElementById("steps-copy")`)
	v.wait(`document.getElementById("steps-said").textContent !== ""`)
	if got, want := eval[string](v, `document.getElementById("steps-said").textContent`), words.English.Explain.Copied; got != want {
		t.Fatalf("after copying it says %q, want %q", got, want)
	}
	if got, want := v.later(`navigator.clipboard.readText()`), "Half-moon\n\n"+strings.Join(want, "\n")+"\n"; got != want {
		t.Errorf("copied is\n%s\nwant\n%s", got, want)
	}
	// In a mirror the first half circle goes down the other side.
	v.click("steps-mirror")
	v.wait(`document.querySelector("#steps-told li").textContent.includes("clockwise, from the top down the right side to the bottom")`)

	// Where the newer way to copy is forbidden the older one does.
	mirrored := eval[string](v, `(navigator.clipboard.writeText = () => Promise.reject(new DOMException("", "NotAllowedError")), document.getElementById("steps-text").value)`)
	v.tapOn(`document.getElementById("steps-copy")`)
	v.wait(`document.getElementById("steps-said").textContent === ` + quote(words.English.Explain.Copied))
	if got := v.later(`navigator.clipboard.readText()`); got != mirrored || !strings.Contains(got, "the right side") || !eval[bool](v, `document.getElementById("steps-text").hidden`) {
		t.Errorf("copied is\n%s\nwant\n%s", got, mirrored)
	}

	// Where copying is forbidden the text is marked, in place of the one with links.
	eval[bool](v, `(document.execCommand = () => false, document.getElementById("steps-copy").click(), true)`)
	v.wait(`document.getElementById("steps-said").textContent === ` + quote(words.English.Explain.ByHand))
	v.wait(`document.activeElement.id === "steps-text" && document.activeElement.selectionStart === 0 && document.activeElement.selectionEnd === document.activeElement.value.length`)
	if !eval[bool](v, `document.getElementById("steps-told").hidden && document.getElementById("steps-text").scrollTop === 0`) {
		t.Error("the text to be copied by hand does not stand in place of the other, from its beginning")
	}
	v.shot("glossary-steps-by-hand")
	v.clean()
}

// TestGlossaryOffline: words and steps are there without a network.
func TestGlossaryOffline(t *testing.T) {
	v, server := newKeptVisitOn(t, phone, site.New(dist, nil))
	v.clean()
	server.CloseClientConnections()
	server.Close()
	must(t, chromedp.Do(v.ctx, chromedp.Navigate("about:blank")))
	must(t, chromedp.Do(v.ctx, chromedp.Navigate(v.url)))
	v.ready()
	v.click("show-more")
	v.click("show-glossary")
	v.wait("!!" + wordIn("#glossary-words", "weave"))
	v.tapOn(wordIn("#glossary-words", "weave"))
	v.explains("weave")
	v.moves()
	v.shut("glossary")
	v.click("show-more")
	v.click("show-steps")
	v.wait(`document.querySelectorAll("#steps-told > ul > li").length === 2`)
}
