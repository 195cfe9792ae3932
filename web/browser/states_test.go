//go:build browser

package browser

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"whorlbench/cmd/whorlbench/site"
	"whorlbench/sandbox/words"
)

// state is something out of the ordinary that a person may meet.
type state struct {
	name   string
	script string // runs before the page's own
	broken bool   // the program cannot be fetched
	meet   func(t *testing.T, v *visit)
}

// What a browser can be made to lack. Each is told before the page begins.
const (
	noWasm    = `Object.defineProperty(window, "WebAssembly", { value: undefined });`
	noWebGL   = `HTMLCanvasElement.prototype.getContext = () => null;`
	noStorage = `Object.defineProperty(window, "localStorage", { get() { throw new DOMException("denied", "SecurityError"); } });`
	nonsense  = `if (!Object.keys(localStorage).some((k) => k.startsWith("whorlbench.aside"))) localStorage.setItem("whorlbench.pattern.1", "no pattern at all");`
)

// loseGraphics takes the canvas's graphics away, as a phone does that is short
// of memory.
const loseGraphics = `(document.querySelector("canvas").getContext("webgl2").getExtension("WEBGL_lose_context").loseContext(), true)`

var states = []state{
	{name: "no-webassembly", script: noWasm, meet: func(t *testing.T, v *visit) { v.trouble("WebAssembly") }},
	{name: "no-webgl", script: noWebGL, meet: func(t *testing.T, v *visit) { v.trouble("WebGL 2") }},
	{name: "failed-load", broken: true, meet: func(t *testing.T, v *visit) { v.trouble("could not be loaded") }},
	{name: "stopped", meet: func(t *testing.T, v *visit) {
		v.ready()
		v.stop()
		v.trouble("kept in this browser")
	}},
	{name: "stopped-unkept", script: noStorage, meet: func(t *testing.T, v *visit) {
		v.ready()
		v.stop()
		v.trouble("saved as a file")
	}},
	{name: "graphics-lost-often", meet: func(t *testing.T, v *visit) {
		v.ready()
		for range 2 {
			v.loadedAnew(func() { eval[bool](v, loseGraphics) })
		}
		eval[bool](v, loseGraphics)
		v.trouble("losing its graphics")
	}},
	{name: "first-visit", meet: func(t *testing.T, v *visit) {
		v.ready()
		v.says(words.English.Bench.FirstHint)
	}},
	{name: "bad-file", meet: func(t *testing.T, v *visit) {
		v.ready()
		v.open("odd.toml", []byte("format = 1\ntitle = \"Odd\"\ntempo = \"quick\"\n[[hand]]\nside = \"left\"\n[[hand.piece]]\narm = 1\nprop = 1\ncycles = 1\n"))
		v.wait(`document.getElementById("problem").open`)
		if got := eval[string](v, `document.getElementById("problem-lines").textContent`); !strings.HasPrefix(got, "odd.toml:3:") {
			t.Errorf("the page says %q, want the file's name and line 3 first", got)
		}
	}},
	{name: "storage-blocked", script: noStorage, meet: func(t *testing.T, v *visit) {
		v.ready()
		v.tap("Flip arm")
		v.says(words.English.Share.Shelf.Blocked)
	}},
	{name: "kept-unreadable", script: nonsense, meet: func(t *testing.T, v *visit) {
		v.ready()
		v.says(words.English.Share.Shelf.OldUnreadable)
	}},
	{name: "reduced-motion", meet: func(t *testing.T, v *visit) {
		v.ready()
		v.wait("!!" + twin("button", "Play"))
	}},
}

// A state is met at each of the screens, is understood, and is left by the way
// that it offers; with WHORLBENCH_SHOTS pictures stay.
func TestUnusualStates(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			w := newWard(t, s)
			for _, st := range states {
				t.Run(st.name, func(t *testing.T) {
					w.meet(t, st, func(v *visit) {
						v.shot("state-" + st.name)
						if eval[string](v, `document.documentElement.dataset.state`) == "trouble" {
							w.leave(t, v)
						}
					})
				})
			}
		})
	}
}

// ward is one browser in which one state after another is met.
type ward struct {
	v      *visit
	broken atomic.Bool
}

func newWard(t *testing.T, s screen) *ward {
	t.Helper()
	if err := site.Check(dist); err != nil {
		t.Fatalf("%s: %v; run `make dist` first", dist, err)
	}
	w := &ward{}
	whole := site.New(dist, nil)
	server := httptest.NewServer(http.HandlerFunc(func(out http.ResponseWriter, in *http.Request) {
		if w.broken.Load() && strings.HasSuffix(in.URL.Path, ".wasm") {
			http.NotFound(out, in)
			return
		}
		whole.ServeHTTP(out, in)
	}))
	t.Cleanup(server.Close)
	w.v = newBrowser(t, s)
	w.v.url = server.URL + "/"
	return w
}

// meet brings a state about in a browser that has never been here, does
// something in it, and takes it away again.
func (w *ward) meet(t *testing.T, st state, do func(v *visit)) {
	t.Helper()
	v := w.v
	v.t = t
	w.broken.Store(st.broken)
	motion := "no-preference"
	if st.name == "reduced-motion" {
		motion = "reduce"
	}
	_, err := chromedp.Call(v.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
		Features: []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: motion}},
	})
	must(t, err)
	must(t, chromedp.Do(v.ctx, chromedp.Navigate(v.url+"icon.svg"))) // the same origin without the bench
	eval[bool](v, `(localStorage.clear(), true)`)
	remove := v.before(st.script)
	defer remove()
	must(t, chromedp.Do(v.ctx, chromedp.Navigate(v.url)))
	st.meet(t, v)
	do(v)
}

// leave presses Try again where what was lacking has come, and holds that the
// bench is there.
func (w *ward) leave(t *testing.T, v *visit) {
	t.Helper()
	w.broken.Store(false)
	if eval[bool](v, `typeof WebAssembly !== "object" || !document.createElement("canvas").getContext("webgl2")`) {
		return // it does not come
	}
	if got := eval[string](v, `document.activeElement.id`); got != "retry" {
		t.Errorf("the keyboard is at %q, want Try again", got)
	}
	v.loadedAnew(func() { must(t, chromedp.Do(v.ctx, chromedp.KeyEvent(kb.Enter))) })
}

// before runs a script before those of every page that follows, until remove.
func (v *visit) before(script string) (remove func()) {
	v.t.Helper()
	if script == "" {
		return func() {}
	}
	added, err := chromedp.Call(v.ctx, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: script})
	must(v.t, err)
	return func() {
		_, err := chromedp.Call(v.ctx, page.RemoveScriptToEvaluateOnNewDocument, page.RemoveScriptToEvaluateOnNewDocumentParams{Identifier: added.Identifier})
		must(v.t, err)
	}
}

func (v *visit) ready() {
	v.t.Helper()
	v.wait(`document.documentElement.dataset.state === "ready"`)
	v.frames(1)
}

// loadedAnew does what makes the page load itself again, and waits until it is
// there.
func (v *visit) loadedAnew(do func()) {
	v.t.Helper()
	eval[bool](v, `(window.before = true)`)
	do()
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(50 * time.Millisecond) {
		// While one page gives way to the next, there is none to ask.
		there, err := chromedp.Run(v.ctx, chromedp.Evaluate[bool](`!window.before && document.documentElement?.dataset.state === "ready"`))
		if err == nil && there {
			return
		}
	}
	v.t.Fatal("the page did not come back")
}

// trouble waits for the page that stands in for the bench, and holds that it
// says something and that nothing else can be reached.
func (v *visit) trouble(part string) {
	v.t.Helper()
	v.wait(`document.documentElement.dataset.state === "trouble"`)
	if got := eval[string](v, `document.getElementById("trouble").innerText`); !strings.Contains(got, part) {
		v.t.Errorf("the page says %q, want %q in it", got, part)
	}
	if !eval[bool](v, `document.getElementById("head").inert && document.getElementById("bench").inert`) {
		v.t.Error("header and bench can still be reached, want them inert")
	}
}

// stop brings the program down, as a fault in it would.
func (v *visit) stop() {
	v.t.Helper()
	// In one breath: a bench that plays would meet the fault before it is asked.
	eval[bool](v, `(window.whorlbenchPage.showTwins = () => { throw new Error("a fault made by the test"); }, whorlbenchProgram.act("mirror", "press", 0), true)`)
}

// listening keeps what the live region says: on a slow machine the next text may
// take a text's place before a test has looked.
const listening = `window.heard = "";
document.addEventListener("DOMContentLoaded", () => {
	const live = document.getElementById("live");
	if (live) new MutationObserver(() => { window.heard += "\n" + live.textContent; }).observe(live, { childList: true, subtree: true, characterData: true });
});`

// says waits until the live region has said a text since it was last asked, and the
// bench shows a message.
func (v *visit) says(text string) {
	v.t.Helper()
	v.wait(fmt.Sprintf(`window.heard.includes(%q)`, text))
	v.drawing(func() { eval[bool](v, `(window.heard = "", true)`) })
}

// The engine loads the page anew when the graphics are lost; the work comes
// back, even where nothing can be stored.
func TestGraphicsLost(t *testing.T) {
	for _, st := range []state{{name: "stored"}, {name: "storage blocked", script: noStorage}} {
		t.Run(st.name, func(t *testing.T) {
			w := newWard(t, phone)
			st.meet = func(t *testing.T, v *visit) { v.ready() }
			w.meet(t, st, func(v *visit) {
				v.pause()
				v.tap("Flip arm")
				v.tap("Repeat the piece")
				v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === 3`)
				mine := v.pattern()
				v.loadedAnew(func() { eval[bool](v, loseGraphics) })
				v.says(words.English.State.Returned)
				v.shot("state-graphics-lost-" + strings.ReplaceAll(st.name, " ", "-"))
				if got := v.pattern(); got != mine {
					t.Errorf("after the graphics were lost the pattern is\n%s\nwant\n%s", got, mine)
				}
			})
		})
	}
}

// Kept work that cannot be read is put aside, and can be had as it was even
// after an edit has taken its place.
func TestUnreadableWorkCanBeSaved(t *testing.T) {
	w := newWard(t, phone)
	st := state{name: "kept-unreadable", script: nonsense, meet: func(t *testing.T, v *visit) { v.ready() }}
	w.meet(t, st, func(v *visit) {
		v.tap("Flip arm")
		v.click("show-more")
		v.wait(`!document.getElementById("aside").hidden`)
		name, data := v.saving("save-aside")
		if name != "put-aside.toml" || string(data) != "no pattern at all" {
			t.Errorf("saved %s: %q, want put-aside.toml with the text that was kept", name, data)
		}
	})
}

// The first visitor's hint can be had again, and more says whether work is kept.
func TestMoreTellsOfTheState(t *testing.T) {
	w := newWard(t, phone)
	for _, st := range []state{{name: "plain"}, {name: "storage blocked", script: noStorage}} {
		st.meet = func(t *testing.T, v *visit) { v.ready() }
		w.meet(t, st, func(v *visit) {
			v.pause()
			v.click("show-more")
			want := words.English.State.KeptHere
			if st.script != "" {
				want = words.English.State.Unkept
			}
			if got := eval[string](v, `document.querySelector("[data-kept]:not([hidden])").textContent`); got != want {
				t.Errorf("%s: more says %q, want %q", st.name, got, want)
			}
			eval[bool](v, `(window.heard = "", true)`)
			v.click("hint-again")
			v.says(words.English.Bench.FirstHint)
			if eval[bool](v, `document.getElementById("more").open`) {
				t.Error("the dialog still covers the hint")
			}
			v.shot("state-hint-again")
		})
	}
}

// Who wants less motion is shown a bench that stands still until Play.
func TestReducedMotion(t *testing.T) {
	w := newWard(t, desk)
	st := state{name: "reduced-motion", meet: func(t *testing.T, v *visit) { v.ready() }}
	w.meet(t, st, func(v *visit) {
		v.wait("!!" + twin("button", "Play"))
		at := v.value("Playhead")
		v.refreshes(30)
		if got := v.value("Playhead"); got != at {
			t.Errorf("the playhead went from %q to %q by itself, want it still", at, got)
		}
		v.press("button", "Play", " ")
		v.wait("!!" + twin("button", "Pause"))
	})
}
