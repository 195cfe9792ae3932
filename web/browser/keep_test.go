//go:build browser

package browser

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/target"
	"github.com/chromedp/chromedp"

	"whorlbench/cmd/whorlbench/site"
	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/presets/archive"
	"whorlbench/presets/link"
	"whorlbench/sandbox/words"
)

// hostile is a title that would be a picture with a script if it were taken for
// markup.
const hostile = `<img src=x onerror="window.hurt=1"> & <b>mine</b>`

// opens does what opens a dialog, and waits for it.
func (v *visit) opens(id, expression string) {
	v.t.Helper()
	eval[bool](v, "("+expression+", true)")
	v.wait(fmt.Sprintf(`document.getElementById(%q).open`, id))
}

// own are the titles of the person's own patterns, as the list has them.
func (v *visit) own() []string {
	v.t.Helper()
	v.opens("patterns", `document.getElementById("show-patterns").click()`)
	titles := eval[[]string](v, `[...document.querySelectorAll("#own-list li b")].map((b) => b.textContent)`)
	return titles
}

// ownTool presses a button of one of the person's own patterns, by its name
// in full.
func (v *visit) ownTool(label string) {
	v.t.Helper()
	eval[bool](v, fmt.Sprintf(`([...document.querySelectorAll("#own-list button")].find((b) => b.getAttribute("aria-label") === %q).click(), true)`, label))
}

// openOwn opens the own pattern that has a title.
func (v *visit) openOwn(title string) {
	v.t.Helper()
	v.own()
	v.drawing(func() {
		eval[bool](v, fmt.Sprintf(`([...document.querySelectorAll("#own-list li")].find((li) => li.querySelector("b").textContent === %q).querySelector("button").click(), true)`, title))
	})
}

func (v *visit) rename(title string) {
	v.t.Helper()
	eval[string](v, fmt.Sprintf(`whorlbenchProgram.rename(%q, "")`, title))
}

// records is how many works the browser keeps.
func (v *visit) records() int {
	v.t.Helper()
	return eval[int](v, `Object.keys(localStorage).filter((k) => k.startsWith("whorlbench.own.")).length`)
}

// linkOf asks the page for the link of the open pattern.
func (v *visit) linkOf() string {
	v.t.Helper()
	v.opens("share-dialog", `document.querySelector("#more .show-share").click()`)
	url := eval[string](v, `document.getElementById("share-url").value`)
	return url
}

// equalPatterns fails unless two files hold equal patterns.
func equalPatterns(t *testing.T, what, got, want string) {
	t.Helper()
	p, err := presets.Decode("got", []byte(got))
	must(t, err)
	q, err := presets.Decode("want", []byte(want))
	must(t, err)
	if !p.Equal(q) {
		t.Errorf("%s the pattern is\n%s\nwant\n%s", what, got, want)
	}
}

// TestKeepOnAPhone is a spinner who visits once, goes offline, builds, loses
// the tab, comes back with undo still there, and passes a link to someone else.
func TestKeepOnAPhone(t *testing.T) {
	v, server := newKeptVisitOn(t, phone, site.New(dist, nil).WithPublicURL("https://spin.example/bench/"))
	must(t, chromedp.Do(v.ctx, chromedp.Navigate("about:blank")))
	server.CloseClientConnections()
	server.Close()
	must(t, chromedp.Do(v.ctx, chromedp.Navigate(v.url)))
	v.ready()
	if v.records() != 0 {
		t.Error("a pattern that was only looked at is kept as one's own")
	}
	first := v.pattern()
	v.tap("Flip arm")
	v.rename("Tin roof")
	v.tap("Repeat the piece")
	mine := v.pattern()
	if got := v.records(); got != 1 {
		t.Errorf("%d works are kept, want 1", got)
	}

	_ = chromedp.Do(v.ctx, chromedp.Navigate("chrome://crash"))
	again, cancel := chromedp.NewContext(v.ctx)
	t.Cleanup(cancel)
	v.ctx = again
	must(t, chromedp.Do(v.ctx, chromedp.Navigate(v.url)))
	v.ready()
	if got := v.pattern(); got != mine {
		t.Errorf("after the tab was lost the pattern is\n%s\nwant\n%s", got, mine)
	}
	for range 3 {
		v.tap("Undo")
	}
	if got := v.pattern(); got != first {
		t.Errorf("undone after the tab was lost the pattern is\n%s\nwant\n%s", got, first)
	}
	for range 3 {
		v.tap("Redo")
	}
	if got := v.pattern(); got != mine {
		t.Errorf("redone after the tab was lost the pattern is\n%s\nwant\n%s", got, mine)
	}

	// The public address is kept, too.
	url := v.linkOf()
	v.shot("share-offline")
	fragment, ok := strings.CutPrefix(url, "https://spin.example/bench/#")
	if !ok {
		t.Fatalf("the link is %q, want one of the public address with a fragment", url)
	}
	other := newVisit(t, desk)
	must(t, chromedp.Do(other.ctx, chromedp.Navigate("about:blank")))
	must(t, chromedp.Do(other.ctx, chromedp.Navigate(other.url+"#"+fragment)))
	other.ready()
	other.wait(`location.hash === ""`)
	equalPatterns(t, "opened from the link", other.pattern(), mine)
	other.load()
	equalPatterns(t, "loaded again", other.pattern(), mine)
	other.clean()
}

// TestShare looks at what the dialog offers: a link that opens, a code or the
// reason why there is none, copying or the link selected, the device's sheet.
func TestShare(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			if got := eval[bool](v, `getComputedStyle(document.getElementById("share")).display !== "none"`); got != (s == desk) {
				t.Errorf("the header has Share: %v, want it at a desk only", got)
			}
			url := v.linkOf()
			if !strings.HasPrefix(url, v.url+"#w1.") {
				t.Errorf("the link is %q, want this page's", url)
			}
			if got := eval[string](v, `document.getElementById("share-no-code").textContent`); !strings.Contains(got, "only to this device") || !eval[bool](v, `document.getElementById("share-code").hidden`) {
				t.Errorf("on a device's own address the page says %q of a code, want why there is none", got)
			}
			v.shot("share-no-code")
			eval[bool](v, `(document.execCommand = () => false, Object.defineProperty(navigator, "clipboard", { configurable: true, value: { writeText: () => Promise.reject(new DOMException("no", "NotAllowedError")) } }), document.getElementById("share-copy").click(), true)`)
			v.wait(`document.getElementById("share-said").textContent === ` + quote(words.English.Share.Dialog.CopyByHand))
			if got := eval[string](v, `(() => { const u = document.getElementById("share-url"); return u.value.slice(u.selectionStart, u.selectionEnd); })()`); got != url {
				t.Errorf("selected is %q, want the whole link", got)
			}
			v.shot("share-by-hand")
			eval[bool](v, `(Object.defineProperty(navigator, "clipboard", { configurable: true, value: { writeText: async (x) => { window.copied = x; } } }), document.getElementById("share-copy").click(), true)`)
			v.wait(`window.copied === ` + quote(url))
			v.wait(`document.getElementById("share-said").textContent === ` + quote(words.English.Share.Dialog.Copied))
			v.shut("share-dialog")
			v.clean()

			// With a public address there is a code, and the sheet where the device has one.
			server := httptest.NewServer(site.New(dist, nil).WithPublicURL("https://spin.example/bench/"))
			t.Cleanup(server.Close)
			w := newBrowser(t, s)
			w.url = server.URL + "/"
			w.before(`navigator.share = async (x) => { window.shared = x; };`)
			w.load()
			w.pause()
			w.rename(hostile)
			public := w.linkOf()
			if !strings.HasPrefix(public, "https://spin.example/bench/#w1.") {
				t.Errorf("the link is %q, want the public address's", public)
			}
			w.wait(`document.querySelector("#share-code svg").getAttribute("aria-label") === ` + quote(fmt.Sprintf(words.English.Share.Link.CodeLabel, hostile)))
			w.shot("share-code")
			eval[bool](w, `(document.documentElement.classList.add("night"), true)`)
			w.shot("share-code-night")
			if got := eval[string](w, `getComputedStyle(document.querySelector("#share-code .ground")).fill`); got != "rgb(255, 255, 255)" {
				t.Errorf("at night the code's ground is %s, want white", got)
			}
			eval[bool](w, `(document.getElementById("share-system").click(), true)`)
			w.wait(`window.shared?.url === ` + quote(public))
			w.clean()
		})
	}
}

// A link opens with undo, also while the bench is open; a damaged, a too
// long and a newer one say so and change nothing.
func TestShareLinks(t *testing.T) {
	v := newVisit(t, phone)
	v.pause()
	before := v.pattern()
	p := library(t, "three-sails")
	p.Title = hostile
	fragment, err := link.Encode(p)
	must(t, err)
	for name, bad := range map[string]string{
		"damaged": fragment[:len(fragment)-4], "newer": "#w2." + fragment[4:], "long": "#w1." + strings.Repeat("A", link.MaxChars),
	} {
		eval[bool](v, fmt.Sprintf(`(location.hash = %q, true)`, bad))
		v.wait(`document.getElementById("problem").open`)
		v.wait(`location.hash === ""`)
		if got := eval[string](v, `document.getElementById("problem-head").textContent`); got != words.English.Share.Dialog.NotOpened {
			t.Errorf("%s: the page says %q, want %q", name, got, words.English.Share.Dialog.NotOpened)
		}
		v.shot("link-" + name)
		v.shut("problem")
		if v.pattern() != before {
			t.Errorf("%s: the open pattern has changed", name)
		}
	}
	eval[bool](v, `(location.hash = "an-anchor", true)`)
	v.drawing(func() { eval[bool](v, fmt.Sprintf(`(location.hash = %q, true)`, fragment)) })
	v.wait(`location.hash === ""`)
	q, err := presets.Decode("opened", []byte(v.pattern()))
	must(t, err)
	if !q.Equal(p) {
		t.Errorf("the link opens\n%s", v.pattern())
	}
	v.shot("link-opened")
	v.tap("Undo")
	v.wait(`whorlbenchProgram.file().text === ` + quote(before))
	if got := v.own(); len(got) != 1 || got[0] != hostile {
		t.Errorf("one's own patterns are %q, want the one from the link", got)
	}
	if eval[bool](v, `"hurt" in window || !!document.querySelector("img[onerror]")`) {
		t.Error("a title was taken for markup")
	}
	v.clean()
}

// library returns a built-in pattern.
func library(t *testing.T, id string) engine.Pattern {
	t.Helper()
	for _, e := range presets.Library() {
		if e.ID == id {
			p, err := e.Pattern()
			must(t, err)
			return p
		}
	}
	t.Fatalf("there is no pattern %q", id)
	return engine.Pattern{}
}

// TestKeepOwn goes through the list: two works, each by itself; renamed,
// deleted, had back, searched for, all out as a ZIP and in again.
func TestKeepOwn(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			v.own()
			v.shot("own-none")
			v.shut("patterns")
			v.rename("Tin roof")
			roof := v.pattern()
			v.pick("pier-end")
			if got := v.records(); got != 1 {
				t.Errorf("%d works after looking at a built-in pattern, want 1", got)
			}
			v.tap("Flip arm")
			v.rename(hostile)
			if got := v.records(); got != 2 {
				t.Errorf("%d works, want 2", got)
			}
			if got := v.own(); len(got) != 2 || got[0] != hostile || got[1] != "Tin roof" {
				t.Errorf("the list is %q, want the one edited last first", got)
			}
			v.shot("own-two")
			if eval[int](v, `document.querySelectorAll("#own-list svg path").length`) != 3 {
				t.Error("the small pictures are not one curve a hand")
			}
			v.opens("ask", `[...document.querySelectorAll("#own-list button")].find((b) => b.getAttribute("aria-label") === "Rename Tin roof").click()`)
			v.shot("own-rename")
			eval[bool](v, `(document.getElementById("ask-value").value = "Slate roof", document.querySelector("#ask form").requestSubmit(), true)`)
			v.wait(`[...document.querySelectorAll("#own-list li b")].some((b) => b.textContent === "Slate roof")`)
			roof = strings.ReplaceAll(roof, "Tin roof", "Slate roof")

			v.ownTool("Delete Slate roof")
			v.says("Deleted: Slate roof")
			v.shot("own-deleted")
			if got := v.records(); got != 1 {
				t.Errorf("%d works after one was deleted, want 1", got)
			}
			v.ownTool("Undo deleting Slate roof")
			v.wait(`document.querySelectorAll("#own-list li b").length === 2`)
			eval[bool](v, `(document.getElementById("patterns-search").value = "slate", document.getElementById("patterns-search").dispatchEvent(new Event("input")), true)`)
			if got := eval[int](v, `[...document.querySelectorAll("#patterns-list li")].filter((li) => !li.hidden && !li.closest("section").hidden).length`); got != 1 {
				t.Errorf("a search for its title leaves %d, want 1", got)
			}
			eval[bool](v, `(document.getElementById("patterns-search").value = "", document.getElementById("patterns-search").dispatchEvent(new Event("input")), true)`)

			eval[bool](v, `(document.getElementById("own-keep-all").click(), true)`)
			zip := v.download("my-patterns.zip")
			items, problems := archive.Unpack(zip)
			if len(items) != 2 || len(problems) > 0 {
				t.Fatalf("the ZIP holds %d patterns (%v), want 2", len(items), problems)
			}
			v.shut("patterns")

			v.openOwn("Slate roof")
			equalPatterns(t, "opened from the list", v.pattern(), roof)
			v.tap("Undo") // its own last edit
			v.wait(`!whorlbenchProgram.file().text.includes("Slate roof")`)
			v.tap("Redo")
			v.wait(`whorlbenchProgram.file().text.includes("Slate roof")`)
			v.load()
			equalPatterns(t, "loaded again", v.pattern(), roof)

			// Open in the bench and deleted: it stays to be seen, and can be had back.
			v.own()
			v.ownTool("Delete Slate roof")
			v.shut("patterns")
			equalPatterns(t, "deleted while it is open,", v.pattern(), roof)
			v.own()
			v.shut("patterns")

			v.open("all.zip", zip)
			v.says("2 patterns were taken in")
			if got := v.own(); len(got) != 3 {
				t.Errorf("after the ZIP was taken in the list is %q, want 3", got)
			}
			v.shut("patterns")
			v.open("half.zip", zip[:len(zip)/2])
			v.wait(`document.getElementById("problem").open`)
			v.shot("zip-cut-short")
			v.shut("problem")
			if eval[bool](v, `"hurt" in window || !!document.querySelector("img[onerror]")`) {
				t.Error("a title was taken for markup")
			}
			v.clean()
		})
	}
}

// download waits for a file that the page gives out.
func (v *visit) download(name string) []byte {
	v.t.Helper()
	path := filepath.Join(v.downloads, name)
	for range 200 {
		if data, err := os.ReadFile(path); err == nil && len(data) > 0 {
			must(v.t, os.Remove(path))
			return data
		}
		must(v.t, chromedp.Do(v.ctx, chromedp.Sleep(50e6)))
	}
	v.t.Fatalf("no file %s came", name)
	return nil
}

// A browser that is full says so once, offers the file, and loses nothing.
func TestKeepWhereThereIsNoRoom(t *testing.T) {
	w := newWard(t, phone)
	st := state{name: "full", meet: func(t *testing.T, v *visit) { v.ready() }}
	w.meet(t, st, func(v *visit) {
		v.pause()
		v.tap("Flip arm")
		kept := eval[string](v, `JSON.stringify(Object.entries(localStorage).filter(([k]) => k.startsWith("whorlbench.own.")))`)
		eval[bool](v, `(() => { let part = "x".repeat(1 << 20); for (let i = 0; part; ) { try { localStorage.setItem("other." + i++, part); } catch { part = part.slice(part.length / 2 + 0.5); } } return true; })()`)
		eval[string](v, fmt.Sprintf(`whorlbenchProgram.rename("Long", %q)`, strings.Repeat("Long notes. ", 800)))
		v.says(words.English.Share.Shelf.Full)
		v.wait(`!document.getElementById("notice-unkept").hidden`)
		v.shot("state-full")
		mine := v.pattern()
		if got := eval[string](v, `JSON.stringify(Object.entries(localStorage).filter(([k]) => k.startsWith("whorlbench.own.")))`); got != kept {
			t.Error("what was kept before is not as it was")
		}
		eval[bool](v, `(document.querySelector("#notice-unkept .main").click(), true)`)
		v.download("long.toml")
		v.load()
		if got := v.pattern(); got != mine {
			t.Errorf("loaded again the pattern is\n%s\nwant\n%s", got, mine)
		}
		eval[bool](v, `(Object.keys(localStorage).filter((k) => k.startsWith("other.")).forEach((k) => localStorage.removeItem(k)), true)`)
		v.tap("Flip arm")
		if got := eval[bool](v, `document.getElementById("notice-unkept").hidden`); !got {
			t.Error("with room again it still says that there is none")
		}
	})
}

// Two tabs on the same work: the first is told and can load the other's; who
// goes on keeps a work of its own.
func TestKeepTwoTabs(t *testing.T) {
	v := newVisit(t, desk)
	v.pause()
	v.rename("Shared")
	ctx, cancel := chromedp.NewContext(v.ctx)
	t.Cleanup(cancel)
	b := &visit{t: t, ctx: ctx, url: v.url, screen: v.screen, downloads: v.downloads}
	b.load()
	if eval[bool](b, `document.visibilityState !== "visible"`) {
		t.Log("the second tab is hidden")
	}
	eval[string](b, `whorlbenchProgram.rename("Theirs", "")`)
	front(v)
	v.wait(`!document.getElementById("notice-stale").hidden`)
	v.shot("state-two-tabs")
	v.drawing(func() { eval[bool](v, `(document.querySelector("#notice-stale .main").click(), true)`) })
	if got := v.pattern(); !strings.Contains(got, "Theirs") {
		t.Errorf("loaded the other's, the pattern is\n%s", got)
	}
	if v.records() != 1 {
		t.Errorf("%d works, want 1", v.records())
	}
	eval[string](b, `whorlbenchProgram.rename("Theirs again", "")`)
	v.wait(`!document.getElementById("notice-stale").hidden`)
	v.rename("Mine")
	v.says(words.English.Share.Shelf.ChangedElsewhere)
	if got := strings.Join(v.own(), ", "); got != "Mine, Theirs again" {
		t.Errorf("the list is %q, want both", got)
	}
	v.clean()
}

func front(v *visit) {
	v.t.Helper()
	_, err := chromedp.CallBrowser(v.ctx, target.ActivateTarget, target.ActivateTargetParams{TargetID: chromedp.FromContext(v.ctx).Target.TargetID})
	must(v.t, err)
}

// The stage alone in another page, of another origin too: it plays, a tap and
// the space key stop it, and nothing is kept. The whole bench cannot be framed.
func TestStageInAnotherPage(t *testing.T) {
	v := newVisit(t, phone)
	p := library(t, "three-sails")
	fragment, err := link.Encode(p)
	must(t, err)
	must(t, chromedp.Do(v.ctx, chromedp.Navigate(v.url+"?view=stage"+fragment)))
	v.ready()
	v.wait(fmt.Sprintf(`document.getElementById("bench").getAttribute("aria-label") === %q`, p.Title))
	v.wait("!!" + twin("button", "Pause"))
	v.shot("stage-only")
	v.touch([2]float64{150, 300})
	v.wait("!!" + twin("button", "Play"))
	v.shot("stage-only-paused")
	must(t, chromedp.Do(v.ctx, chromedp.KeyEvent(" ")))
	v.wait("!!" + twin("button", "Pause"))
	if n := eval[int](v, `localStorage.length`); n != 0 {
		t.Errorf("%d things are kept, want none", n)
	}
	if got := eval[string](v, `location.hash`); got != fragment {
		t.Errorf("the address ends in %q, want the pattern still in it", got)
	}

	pages := httptest.NewServer(http.HandlerFunc(func(out http.ResponseWriter, _ *http.Request) {
		out.Header().Set("Content-Type", "text/html")
		fmt.Fprintf(out, `<!doctype html><title>Lesson</title><link rel=icon href="data:,"><h1>Lesson</h1>`+
			`<iframe width=560 height=420 src="%s?view=stage%s"></iframe><iframe width=560 height=420 src="%s"></iframe>`, v.url, fragment, v.url)
	}))
	t.Cleanup(pages.Close)
	lesson := newBrowser(t, desk)
	must(t, chromedp.Do(lesson.ctx, chromedp.Navigate(pages.URL)))
	tree, err := chromedp.Call(lesson.ctx, page.GetFrameTree, cdp.Empty{})
	must(t, err)
	if frames := tree.FrameTree.ChildFrames; len(frames) != 2 || frames[0].Frame.UnreachableURL != "" || frames[1].Frame.UnreachableURL == "" {
		t.Errorf("of the frames %+v the stage should be there and the whole bench refused", frames)
	}
	must(t, chromedp.Do(lesson.ctx, chromedp.Sleep(5e9))) // another page is not asked when it is ready
	if n, err := inked(lesson.shot("stage-in-lesson"), box{X: 20, Y: 100, W: 480, H: 340}, 1); err != nil || n < 500 {
		t.Errorf("the frame has %d inked pixels (%v), want a pattern", n, err)
	}
}

// Where downloads cannot be relied on, the device's sheet takes the file.
func TestKeepFileThroughTheSheet(t *testing.T) {
	w := newWard(t, phone)
	st := state{name: "sheet", script: `navigator.standalone = true; navigator.canShare = (x) => x.files?.length === 1; navigator.share = async (x) => { window.given = x.files[0].name; };`,
		meet: func(t *testing.T, v *visit) { v.ready() }}
	w.meet(t, st, func(v *visit) {
		v.pause()
		v.click("save")
		v.wait(`window.given === "half-moon.toml"`)
	})
}
