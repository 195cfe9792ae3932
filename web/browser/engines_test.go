//go:build browser

package browser

import (
	"encoding/base64"
	"encoding/json"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"whorlbench/cmd/whorlbench/site"
)

// The other tests use Chromium. These hold that the bench does its main things
// in the other two families of browsers; where one is not here, or cannot
// start, its test is left out and says why.

func TestEngineFirefox(t *testing.T) { tryEngine(t, startFirefox) }
func TestEngineWebKit(t *testing.T)  { tryEngine(t, startWebKit) }

// WebDriver does not tell what a page reports, so on a first visit a script
// that hears it stands before the page's own.
const (
	earQuery = "?hear"
	ear      = `window.whorlbenchHeard = [];
for (const kind of ["error", "warn"]) {
	const say = console[kind];
	console[kind] = (...parts) => { whorlbenchHeard.push("console " + kind + ": " + parts.join(" ")); say.apply(console, parts); };
}
addEventListener("error", (e) => whorlbenchHeard.push("error: " + (e.message ?? e.target.src ?? e.target.href)), true);
addEventListener("unhandledrejection", (e) => whorlbenchHeard.push("rejected: " + e.reason));
document.addEventListener("securitypolicyviolation", (e) => whorlbenchHeard.push("forbidden: " + e.violatedDirective + " " + e.blockedURI));
`
)

func withEar(t *testing.T, s http.Handler) http.Handler {
	t.Helper()
	page, err := os.ReadFile(filepath.Join(dist, "index.html"))
	must(t, err)
	const before = `<script src="wasm_exec.js"`
	heard := strings.Replace(string(page), before, `<script src="ear.js"></script>`+before, 1)
	if heard == string(page) {
		t.Fatalf("index.html has no %s", before)
	}
	return http.HandlerFunc(func(out http.ResponseWriter, in *http.Request) {
		kind, text := "text/html; charset=utf-8", heard
		switch {
		case in.URL.Path == "/ear.js":
			kind, text = "text/javascript", ear
		case in.URL.RequestURI() != "/"+earQuery:
			s.ServeHTTP(out, in)
			return
		}
		out.Header().Set("Content-Type", kind)
		out.Header().Set("Content-Security-Policy", site.Policy)
		fmt.Fprint(out, text)
	})
}

// caller is one person's browser, driven by WebDriver.
type caller struct {
	t      *testing.T
	driver driver
	heard  *hearing
	home   string
}

func tryEngine(t *testing.T, start func(*testing.T, string, *hearing) (driver, error)) {
	must(t, site.Check(dist))
	server := httptest.NewServer(withEar(t, site.New(dist, nil)))
	t.Cleanup(server.Close)
	c := &caller{t: t, heard: &hearing{}, home: t.TempDir()}
	must(t, os.Mkdir(filepath.Join(c.home, "Downloads"), 0o755))
	var err error
	if c.driver, err = start(t, c.home, c.heard); err != nil {
		t.Skipf("the browser cannot be driven here: %v; it wrote: %s", err, c.heard)
	}
	c.do(setRect, map[string]any{"width": 1440, "height": 900})
	c.do(navigate, map[string]any{"url": server.URL + "/" + earQuery})
	if !ask[bool](c, `!!document.createElement("canvas").getContext("webgl2")`) {
		t.Skipf("the browser has no WebGL 2 here; it wrote: %s", c.heard)
	}
	t.Log(ask[string](c, `navigator.userAgent`))
	c.ready()

	// It plays, and is drawn.
	drawn := ask[int](c, `whorlbenchProgram.drawn()`)
	c.wait(fmt.Sprintf(`whorlbenchProgram.drawn() > %d`, drawn+4))
	c.press("Pause")
	c.wait("!!" + twin("button", "Play"))
	if n, err := inked(c.shot("engine-first"), box{X: 20, Y: 70, W: 300, H: 240}, ask[float64](c, `devicePixelRatio`)); err != nil || n < 100 {
		t.Errorf("the stage has %d inked pixels (%v), want a picture", n, err)
	}

	// The prop-speed slider by mouse on the canvas, from 1 to 3.
	r := ask[box](c, fmt.Sprintf(`(() => { const r = %s.getBoundingClientRect(); return {X: r.x, Y: r.y, W: r.width, H: r.height}; })()`, twin("slider", "Prop speed")))
	at := func(value float64) [2]float64 { return propTrack(r, value) }
	c.drag("mouse", at(1), at(1.5), at(2.2), at(3))
	c.wait(twin("slider", "Prop speed") + `.getAttribute("aria-valuetext").startsWith("3 ")`)
	// By finger, back to 2.
	c.drag("touch", at(3), at(2.6), at(2.2), at(2))
	c.wait(twin("slider", "Prop speed") + `.getAttribute("aria-valuetext").startsWith("2 ")`)
	mine := ask[string](c, `whorlbenchProgram.file().text`)

	// Saved, the file holds the pattern.
	ask[bool](c, `(document.getElementById("save").click(), true)`)
	c.wait(`document.getElementById("names").open`)
	ask[bool](c, `(document.getElementById("names-done").click(), true)`)
	var name string
	var saved []byte
	if !within(func() bool {
		found, _ := filepath.Glob(filepath.Join(c.home, "Downloads", "*.toml"))
		if len(found) == 1 {
			name = found[0]
			saved, _ = os.ReadFile(name)
		}
		return len(saved) > 0
	}) {
		t.Fatalf("saving gave no file; the browser wrote: %s", c.heard)
	}
	named := mine
	if mine = ask[string](c, `whorlbenchProgram.file().text`); string(saved) != mine || mine == named {
		t.Errorf("saved is %s:\n%s\nwant, with its new name,\n%s", name, saved, mine)
	}

	// Another pattern, then the file again.
	ask[string](c, `whorlbenchProgram.pick("pier-end")`)
	if ask[string](c, `whorlbenchProgram.file().text`) == mine {
		t.Fatal("another pattern did not open")
	}
	c.openFile(filepath.Base(name), string(saved))
	c.wait(`whorlbenchProgram.file().text === ` + quote(mine))
	c.wait(`document.title === ` + quote("Half-moon, my way"))
	c.shot("engine-opened")

	// Every dialog opens and closes.
	for button, dialog := range map[string]string{"title": "names", "show-patterns": "patterns", "show-more": "more"} {
		ask[bool](c, fmt.Sprintf(`(document.getElementById(%q).click(), true)`, button))
		c.wait(fmt.Sprintf(`document.getElementById(%q).open`, dialog))
		c.shot("engine-" + dialog)
		ask[bool](c, fmt.Sprintf(`(document.getElementById(%q).close(), true)`, dialog))
	}

	c.clean(server.URL)
	// And faults would have been heard: of the console, a file that is not
	// there, a script that is forbidden.
	ask[bool](c, `(() => {
		window.console.error("for trial");
		for (const part of [{src: "none.js"}, {textContent: "0"}]) document.head.append(Object.assign(document.createElement("script"), part));
		return true;
	})()`)
	c.wait(`whorlbenchHeard.length === 3`)

	// Loaded again, the work is there.
	c.do(refresh, map[string]any{})
	c.ready()
	if got := ask[string](c, `whorlbenchProgram.file().text`); got != mine {
		t.Errorf("loaded again the pattern is\n%s\nwant\n%s", got, mine)
	}

	// Kept for when there is no network: without the server the work is there.
	c.wait(`(navigator.serviceWorker.ready.then((r) => { window.isKept = r.active.state; }), window.isKept === "activated")`)
	server.CloseClientConnections()
	server.Close()
	c.do(navigate, map[string]any{"url": "about:blank"})
	c.do(navigate, map[string]any{"url": server.URL + "/"})
	c.ready()
	if got := ask[string](c, `whorlbenchProgram.file().text`); got != mine {
		t.Errorf("without the server the pattern is\n%s\nwant\n%s", got, mine)
	}

	// In another language the work is there too.
	c.do(execute, map[string]any{"args": []any{}, "script": `const s = document.getElementById("language"); s.value = "de"; setTimeout(() => s.dispatchEvent(new Event("change")))`})
	if !within(func() bool {
		out, err := c.driver.command(execute, map[string]any{"args": []any{}, "script": `return document.documentElement.lang === "de" && document.documentElement.dataset.state === "ready"`})
		return err == nil && string(out) == "true"
	}) {
		t.Fatalf("the page did not turn German; the browser wrote: %s", c.heard)
	}
	if got := ask[string](c, `whorlbenchProgram.file().text`); got != mine {
		t.Errorf("in German the pattern is\n%s\nwant\n%s", got, mine)
	}
}

// do gives a command that must succeed.
func (c *caller) do(what command, params any) json.RawMessage {
	c.t.Helper()
	out, err := c.driver.command(what, params)
	if err != nil {
		c.t.Fatalf("%v; the browser wrote: %s", err, c.heard)
	}
	return out
}

// ask returns the value of a JavaScript expression.
func ask[T any](c *caller, expression string) (out T) {
	c.t.Helper()
	text := c.do(execute, map[string]any{"script": "return " + expression, "args": []any{}})
	if err := json.Unmarshal(text, &out); err != nil {
		c.t.Fatalf("%s gives %s: %v", expression, text, err)
	}
	return out
}

func (c *caller) wait(condition string) {
	c.t.Helper()
	if !within(func() bool { return ask[bool](c, condition) }) {
		c.t.Fatalf("waiting for %s; state %q, %q; the browser wrote: %s", condition,
			ask[string](c, `document.documentElement.dataset.state ?? ""`), ask[string](c, `document.getElementById("trouble-detail").textContent`), c.heard)
	}
}

func (c *caller) ready() {
	c.t.Helper()
	c.wait(`document.documentElement.dataset.state !== undefined`)
	c.wait(`document.documentElement.dataset.state === "ready"`)
}

// press touches the middle of a button on the canvas.
func (c *caller) press(name string) {
	c.t.Helper()
	c.wait("!!" + twin("button", name))
	r := ask[[2]float64](c, fmt.Sprintf(`(() => { const r = %s.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]; })()`, twin("button", name)))
	c.drag("mouse", r)
}

// drag goes down at the first place and up at the last.
func (c *caller) drag(kind string, places ...[2]float64) {
	c.t.Helper()
	move := func(p [2]float64) map[string]any {
		return map[string]any{"type": "pointerMove", "duration": 20, "origin": "viewport", "x": int(p[0] + 0.5), "y": int(p[1] + 0.5)}
	}
	steps := []any{move(places[0]), map[string]any{"type": "pointerDown", "button": 0}}
	for _, p := range places[1:] {
		steps = append(steps, move(p))
	}
	steps = append(steps, map[string]any{"type": "pointerUp", "button": 0})
	c.do(actions, map[string]any{"actions": []any{map[string]any{
		"type": "pointer", "id": kind, "parameters": map[string]any{"pointerType": kind}, "actions": steps,
	}}})
}

func (c *caller) shot(name string) []byte {
	c.t.Helper()
	var text string
	must(c.t, json.Unmarshal(c.do(screenshot, map[string]any{"full": false}), &text))
	png, err := base64.StdEncoding.DecodeString(text)
	must(c.t, err)
	if dir := os.Getenv("WHORLBENCH_SHOTS"); dir != "" {
		must(c.t, os.MkdirAll(dir, 0o755))
		must(c.t, os.WriteFile(filepath.Join(dir, name+"-"+strings.TrimPrefix(c.t.Name(), "TestEngine")+".png"), png, 0o644))
	}
	return png
}

// openFile gives the page's file input a file as a person's choice does.
func (c *caller) openFile(name, text string) {
	c.t.Helper()
	ask[bool](c, fmt.Sprintf(`(() => {
		const all = new DataTransfer(), input = document.getElementById("file");
		all.items.add(new File([%s], %q));
		input.files = all.files;
		input.dispatchEvent(new Event("change"));
		return true;
	})()`, quote(text), name))
}

// clean fails the test if the page reported a fault, or reached elsewhere.
func (c *caller) clean(origin string) {
	c.t.Helper()
	for _, line := range ask[[]string](c, `whorlbenchHeard`) {
		c.t.Errorf("the page reported: %s", line)
	}
	requests := ask[[]string](c, `performance.getEntriesByType("resource").map((e) => e.name)`)
	if len(requests) == 0 {
		c.t.Error("no request was seen at all")
	}
	for _, r := range requests {
		if !strings.HasPrefix(r, origin+"/") && !strings.HasPrefix(r, "blob:"+origin) && !strings.HasPrefix(r, "data:") {
			c.t.Errorf("a request left the origin: %s", r)
		}
	}
}
