//go:build browser

package browser

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"whorlbench/cmd/whorlbench/site"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
	"whorlbench/sandbox/words/texts"
)

// speak chooses a language in More and waits for its page.
func (v *visit) speak(lang string) {
	v.t.Helper()
	v.click("show-more")
	v.wait(`document.getElementById("more").open`)
	v.loadedAnew(func() {
		eval[bool](v, fmt.Sprintf(`{ const s = document.getElementById("language"); s.value = %q; s.dispatchEvent(new Event("change")); true }`, lang))
	})
	if got := eval[string](v, `document.documentElement.lang`); got != lang {
		v.t.Fatalf("the page is in %q, want %q", got, lang)
	}
}

// place is where a text takes a value.
var place = regexp.MustCompile(`%[-+# 0]*\d*(?:\.\d+)?[vTtbcdoOqxXUeEfFgGsp%]|\{\w+\}`)

// filled matches a text of the tables with anything in its places.
func filled(text string) *regexp.Regexp {
	pattern := ""
	for i, part := range place.Split(text, -1) {
		if i > 0 {
			pattern += ".+"
		}
		pattern += regexp.QuoteMeta(part)
	}
	return regexp.MustCompile(`(?is)^` + pattern + `[.:]?$`)
}

// englishText is a text that only the English table has; german is what stands
// in its place, nil where the language has none.
type englishText struct{ english, german *regexp.Regexp }

// reads says whether shown is the English text and cannot be the German one,
// whose words may differ by one alone: "hand %s, prop %s", "Hand %s, Prop nach %s".
func (e englishText) reads(shown string) bool {
	return e.english.MatchString(shown) && (e.german == nil || !e.german.MatchString(shown))
}

var english = func() []englishText {
	told, at := map[string]bool{}, map[string]*regexp.Regexp{}
	texts.Each("", german.German, func(path, text string) {
		told[strings.ToLower(text)] = true
		at[path] = filled(text)
	})
	var list []englishText
	texts.Each("", words.English, func(path, text string) {
		literal := place.ReplaceAllString(text, "")
		letters := 0
		for _, r := range literal {
			if unicode.IsLetter(r) {
				letters++
			}
		}
		// A text of few letters about its places is in many others.
		const few = 6
		if told[strings.ToLower(text)] || letters < 3 || literal != text && letters < few || strings.HasSuffix(path, ".Value") || strings.HasSuffix(path, ".Of") {
			return
		}
		list = append(list, englishText{filled(text), at[path]})
	})
	return list
}()

// libraryTexts are the built-in patterns' titles and notes.
var libraryTexts = func() []string {
	var list []string
	for _, e := range presets.Library() {
		if p, err := e.Pattern(); err == nil {
			list = append(list, p.Title, p.Notes)
		}
	}
	return list
}()

// shownTexts are all texts that can be read or heard of the page, one a line; the
// library's titles and notes are data, and each language is named in itself.
const shownTexts = `(() => {
  const out = new Set();
  for (const e of document.querySelectorAll("*")) {
    for (const a of ["aria-label", "aria-valuetext", "title", "alt", "placeholder"]) if (e.hasAttribute(a)) out.add(e.getAttribute(a));
    for (const [k, t] of Object.entries(e.dataset)) if (/ /.test(t)) out.add(t);
    if (e.type === "application/json") JSON.parse(e.textContent, (_, text) => { if (typeof text === "string") out.add(text); });
    if (["SCRIPT", "STYLE"].includes(e.tagName) || e.matches("option[lang]")) continue;
    for (const n of e.childNodes) if (n.nodeType === Node.TEXT_NODE) out.add(n.textContent.trim());
  }
  return [...out].filter(Boolean).join("\n~\n");
})()`

// allGerman complains about English that can be read or heard now.
func (v *visit) allGerman(where string) {
	v.t.Helper()
	for _, text := range strings.Split(eval[string](v, shownTexts), "\n~\n") {
		if slices.ContainsFunc(libraryTexts, func(data string) bool { return strings.Contains(text, data) }) {
			continue
		}
		for _, e := range english {
			if e.reads(text) {
				v.t.Errorf("%s: %q is English (%s)", where, text, e.english)
				break
			}
		}
	}
}

// TestGermanJob: who chooses German in More does the main job in it, at each of
// the four screens: picks two flowers, cuts, reads the joins, the name and why,
// and saves. What was open stays open.
func TestGermanJob(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			v.tap("Flip arm")
			mine := v.pattern()
			v.speak("de")
			if got := v.pattern(); got != mine {
				t.Errorf("in German the pattern is\n%s\nwant\n%s", got, mine)
			}
			w := &german.German
			v.tap(w.Bench.Pause.Label)
			v.still()
			v.shot("german-1-bench")
			v.allGerman("the bench")
			v.tap(w.Bench.Undo.Label)
			if v.pattern() == mine {
				t.Error("the edit made in English cannot be undone in German")
			}

			// Two flowers, by the list of what can follow and by the prop's speed.
			v.tap(w.Bench.Cut.Label)
			v.shot("german-2-cut")
			v.tap(w.Bench.Next.Label)
			v.wait(`document.querySelector("dialog[open]") !== null`)
			v.shot("german-3-follow")
			v.allGerman("what can follow")
			v.closeAll()
			for i, open := range []struct {
				button, dialog string
			}{{"title", "names"}, {"show-patterns", "patterns"}, {"share", "share-dialog"}, {"show-more", "more"}} {
				v.click(open.button)
				v.wait(fmt.Sprintf(`document.getElementById(%q).open`, open.dialog))
				v.shot(fmt.Sprintf("german-4-%d-%s", i, open.dialog))
				v.allGerman(open.dialog)
				v.closeAll()
			}
			// All that More leads to.
			const leads = `document.querySelectorAll("#more .tiles button[aria-haspopup=dialog]")`
			for i := range eval[int](v, leads+`.length`) {
				v.click("show-more")
				eval[bool](v, fmt.Sprintf(`(%s[%d].click(), true)`, leads, i))
				v.wait(`document.querySelector("dialog[open]:not(#more)") !== null`)
				for _, wait := range []string{w.Film.Said.Loading, w.Card.Making} {
					v.wait(`!document.querySelector("dialog[open]:not(#more)").textContent.includes(` + quote(wait) + `)`)
				}
				v.shot(fmt.Sprintf("german-5-lead-%d", i))
				v.allGerman(eval[string](v, `document.querySelector("dialog[open]:not(#more)").id`))
				v.closeAll()
			}

			v.press("button", w.Dials.Tempo.Label, " ")
			v.wait(`document.getElementById("ask").open`)
			v.shot("german-5-tempo")
			v.allGerman("the tempo")
			v.closeAll()

			// What it is called and why; two hands.
			for _, id := range []string{"half-moon", "bump-at-the-quay", "pier-end"} {
				v.pick(id)
				v.shot("german-6-" + id)
				v.tap(w.Told.Open)
				v.wait(`document.getElementById("sheet").open && !document.getElementById("sheet").textContent.includes(` + quote(w.Told.Working) + `)`)
				v.shot("german-7-told-" + id)
				v.allGerman("what " + id + " is")
				v.closeAll()
			}

			// A number with a comma.
			v.press("button", w.Dials.Tempo.Label, " ")
			v.wait(`document.getElementById("ask").open`)
			eval[bool](v, `(document.getElementById("ask-value").value = "100,5", document.querySelector("#ask .main").click(), true)`)
			v.wait(`whorlbenchProgram.file().text.includes("tempo = 100.5")`)

			// Saved under a name, in German.
			eval[bool](v, `(document.getElementById("save").click(), true)`)
			v.wait(`document.getElementById("names").open`)
			v.shot("german-8-save")
			name, _ := v.saving("names-done")
			if name != "both-hands-to-the-end-of-the-pier-auf-meine-art.toml" {
				t.Errorf("saved as %s, want the proposed German name", name)
			}

			// It is remembered, and English comes back.
			v.load()
			v.wait(`document.documentElement.lang === "de" && document.documentElement.dataset.state === "ready"`)
			v.speak("en")
			v.place("button", words.English.Bench.Cut.Label)
			v.clean()
		})
	}
}

func (v *visit) closeAll() {
	v.t.Helper()
	eval[bool](v, `(document.querySelectorAll("dialog[open]").forEach((d) => d.close()), true)`)
}

// TestGermanAtFirst: at a first visit the page speaks German where the browser
// asks for it first, and the address's fragment and query come along.
func TestGermanAtFirst(t *testing.T) {
	for languages, want := range map[string]string{"de-AT,en": "de", "fr,de": "en", "en-GB,de": "en"} {
		v := newVisit(t, desk)
		_, err := chromedp.Call(v.ctx, emulation.SetLocaleOverride, emulation.SetLocaleOverrideParams{})
		must(t, err)
		_, err = chromedp.Call(v.ctx, emulation.SetUserAgentOverride, emulation.SetUserAgentOverrideParams{UserAgent: "Mozilla/5.0", AcceptLanguage: languages})
		must(t, err)
		v.load()
		v.wait(fmt.Sprintf(`document.documentElement.lang === %q && document.documentElement.dataset.state === "ready"`, want))
		at := v.url
		must(t, chromedp.Do(v.ctx, chromedp.Navigate(at+"?view=stage#w1.uHATx8IW8B6JOWm6ufn5eUooAYsz1OjuaEAAAAD__w")))
		v.wait(fmt.Sprintf(`document.documentElement.lang === %q && document.documentElement.dataset.state === "ready"`, want))
		if got := eval[string](v, `location.search + (location.hash.startsWith("#w1.") ? "#w1." : location.hash)`); got != "?view=stage#w1." {
			t.Errorf("%s: the address ends in %s", languages, got)
		}
		v.clean()
	}
}

// TestGermanUnkept: where a browser keeps nothing, the tab still has the language
// and the work.
func TestGermanUnkept(t *testing.T) {
	v := newVisit(t, desk)
	t.Cleanup(v.before(noStorage))
	v.load()
	v.tap("Flip arm")
	mine := v.pattern()
	v.speak("de")
	if got := v.pattern(); got != mine {
		t.Errorf("in German the pattern is\n%s\nwant\n%s", got, mine)
	}
	v.loadedAnew(func() { eval[bool](v, `(location.reload(), true)`) })
	if got := eval[string](v, `document.documentElement.lang`); got != "de" {
		t.Errorf("loaded again the page is in %q, want German", got)
	}
	if got := v.pattern(); got != mine {
		t.Errorf("loaded again the pattern is\n%s\nwant\n%s", got, mine)
	}
}

// TestGermanOffline: the German page opens without its server, and its sheet of
// pictures speaks German too.
func TestGermanOffline(t *testing.T) {
	v, server := newKeptVisit(t, site.New(dist, nil))
	server.CloseClientConnections()
	server.Close()
	v.speak("de")
	v.tap(german.German.Bench.Cut.Label)
	v.load()
	v.wait(`document.documentElement.lang === "de" && document.documentElement.dataset.state === "ready"`)
	eval[bool](v, `(document.getElementById("show-film").click(), true)`)
	v.wait(`document.getElementById("film-about").textContent.includes("Bilder in")`)
	v.shot("german-9-film")
	v.allGerman("the sheet of pictures")
}
