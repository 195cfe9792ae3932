//go:build browser

package browser

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	"whorlbench/cmd/whorlbench/site"
	"whorlbench/sandbox/words"
	"whorlbench/web/build/bundle"
)

// below is where the bench is served in these tests: not at the top of a host.
const below = "/harbour/bench/"

// newKeptVisit opens the bench below a path, with what the browser keeps in
// use, and waits until it keeps a whole version.
func newKeptVisit(t *testing.T, h http.Handler) (v *visit, server *httptest.Server) {
	t.Helper()
	return newKeptVisitOn(t, desk, h)
}

func newKeptVisitOn(t *testing.T, s screen, h http.Handler) (v *visit, server *httptest.Server) {
	t.Helper()
	if err := site.Check(dist); err != nil {
		t.Fatalf("%s: %v; run `make dist` first", dist, err)
	}
	mux := http.NewServeMux()
	mux.Handle(below, http.StripPrefix(strings.TrimSuffix(below, "/"), h))
	server = httptest.NewServer(mux)
	t.Cleanup(server.Close)
	v = newBrowser(t, s)
	v.bypassKept(false)
	v.url = server.URL + below
	v.load()
	v.wait(`navigator.serviceWorker.ready.then((r) => r.active.state === "activated")`)
	return v, server
}

// cached are the addresses that the browser keeps, cache by cache.
func (v *visit) cached() map[string][]string {
	v.t.Helper()
	text := v.later(`caches.keys().then((names) => Promise.all(names.map(async (name) =>
		[name, (await (await caches.open(name)).keys()).map((r) => r.url)]))).then((all) => JSON.stringify(Object.fromEntries(all)))`)
	var out map[string][]string
	must(v.t, json.Unmarshal([]byte(text), &out))
	return out
}

// later returns the text that a promise comes to.
func (v *visit) later(promise string) string {
	v.t.Helper()
	eval[bool](v, fmt.Sprintf(`(window.came = undefined, (%s).then((x) => { window.came = String(x); }, (err) => { window.came = "failed: " + err; }), true)`, promise))
	v.wait(`window.came !== undefined`)
	return eval[string](v, `window.came`)
}

// version is that of the page's build, as the browser keeps it.
func version(t *testing.T, dir string) string {
	t.Helper()
	var m bundle.Manifest
	data, err := os.ReadFile(filepath.Join(dir, bundle.ManifestName))
	must(t, err)
	must(t, json.Unmarshal(data, &m))
	return m.Version
}

// Visited once, the bench opens without its server: plainly, by its file's
// name, and by a link with a pattern in it; it can be worked with.
func TestOffline(t *testing.T) {
	v, server := newKeptVisit(t, site.New(dist, nil))
	for name, files := range v.cached() {
		if want := "whorlbench " + below + " " + version(t, dist); name != want {
			t.Errorf("a cache is called %q, want %q", name, want)
		}
		for _, f := range files {
			if !strings.HasPrefix(f, v.url) {
				t.Errorf("kept is %s, want only what lies below %s", f, v.url)
			}
		}
		if len(files) < 10 {
			t.Errorf("kept are %q, want the whole build", files)
		}
	}
	mine := v.pattern()
	v.clean()
	server.CloseClientConnections()
	server.Close()
	if resp, err := http.Get(v.url); err == nil {
		resp.Body.Close()
		t.Fatal("the server still answers")
	}
	for _, rest := range []string{"", "index.html", "?from=mail", "#w1.uHATx8IW8B6JOWm6ufn5eUooAYsz1OjuaEAAAAD__w"} {
		must(t, chromedp.Do(v.ctx, chromedp.Navigate("about:blank")))
		must(t, chromedp.Do(v.ctx, chromedp.Navigate(v.url+rest)))
		v.ready()
		if got := v.later(`fetch("public.json").then((r) => r.json()).then((x) => x.url)`); got != "" {
			t.Errorf("%q: offline the public address is %q, want none", rest, got)
		}
		if rest == "" && v.pattern() != mine {
			t.Errorf("offline the pattern is\n%s\nwant\n%s", v.pattern(), mine)
		}
	}
	v.pause()
	before := v.pattern()
	v.tap("Flip arm")
	if v.pattern() == before {
		t.Error("offline an edit changes nothing")
	}
	if !eval[bool](v, `document.getElementById("update").hidden`) {
		t.Error("offline a new version is said to be there")
	}
}

// nextBuild makes another version of the built bench: the same with another
// line in its style.
func nextBuild(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	must(t, os.CopyFS(dir, os.DirFS(dist)))
	packed, err := filepath.Glob(filepath.Join(dir, "*.[bg][rz]"))
	must(t, err)
	for _, file := range packed {
		must(t, os.Remove(file))
	}
	old := version(t, dist)
	next := strings.Repeat("0", len(old))
	var m bundle.Manifest
	data, err := os.ReadFile(filepath.Join(dir, bundle.ManifestName))
	must(t, err)
	must(t, json.Unmarshal(data, &m))
	m.Version = next
	for _, name := range []string{"sw.js", "style.css"} {
		file := filepath.Join(dir, name)
		text, err := os.ReadFile(file)
		must(t, err)
		changed := strings.ReplaceAll(string(text), old, next)
		if name == "style.css" {
			changed += "\n:root { --made: next; }\n"
		}
		must(t, os.WriteFile(file, []byte(changed), 0o644))
		sum := sha256.Sum256([]byte(changed))
		f := m.Files[name]
		f.SHA256 = hex.EncodeToString(sum[:])
		m.Files[name] = f
	}
	data, err = json.Marshal(m)
	must(t, err)
	must(t, os.WriteFile(filepath.Join(dir, bundle.ManifestName), data, 0o644))
	return dir
}

const (
	look    = `navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => "", () => "")`
	isNext  = `getComputedStyle(document.documentElement).getPropertyValue("--made").trim() === "next"`
	isAsked = `!document.getElementById("update").hidden`
)

// A new version comes while work is open: it says so, the work stays, it can
// wait, and when it is taken it is there whole and the old one is gone.
func TestUpdateWhileWorkIsOpen(t *testing.T) {
	next := nextBuild(t)
	var now atomic.Pointer[site.Site]
	now.Store(site.New(dist, nil))
	var half atomic.Bool // the new list, the old style
	v, _ := newKeptVisit(t, http.HandlerFunc(func(out http.ResponseWriter, in *http.Request) {
		if half.Load() && in.URL.Path == "/style.css" {
			site.New(dist, nil).ServeHTTP(out, in)
			return
		}
		now.Load().ServeHTTP(out, in)
	}))
	v.pause()
	v.tap("Flip arm")
	mine := v.pattern()

	half.Store(true)
	now.Store(site.New(next, nil))
	v.later(look)
	v.wait(`navigator.serviceWorker.getRegistration().then((r) => !r.installing)`)
	if eval[bool](v, isAsked) || v.later(`navigator.serviceWorker.getRegistration().then((r) => !!r.waiting)`) != "false" {
		t.Error("a version of which half is another's has been kept")
	}

	half.Store(false)
	v.later(look)
	v.wait(isAsked)
	v.says(words.English.Share.Offline.Update)
	v.shot("state-update-ready")
	if got := v.pattern(); got != mine {
		t.Errorf("with a new version ready the pattern is\n%s\nwant\n%s", got, mine)
	}
	v.click("update-later")
	if eval[bool](v, isAsked) {
		t.Error("put off, it is still asked")
	}
	v.tap("Repeat the piece")
	mine = v.pattern()

	// The version that is in use stays in use until it is asked for.
	v.loadedAnew(func() { eval[bool](v, `(location.reload(), true)`) })
	if eval[bool](v, isNext) {
		t.Error("loaded again, the new version has come unasked")
	}
	v.wait(isAsked)
	v.loadedAnew(func() { v.click("update-take") })
	v.ready()
	if !eval[bool](v, isNext) {
		t.Error("taken, the new version is not there")
	}
	if got := v.pattern(); got != mine {
		t.Errorf("in the new version the pattern is\n%s\nwant\n%s", got, mine)
	}
	if eval[bool](v, isAsked) {
		t.Error("in the new version it is asked again")
	}
	all := v.cached()
	for name := range all {
		if want := version(t, next); len(all) != 1 || !strings.HasSuffix(name, want) {
			t.Errorf("kept are %d caches, one of them %q, want one of %s", len(all), name, want)
		}
	}
	v.clean()
}

// The browser finds nothing wrong with the manifest, and draws the icon's SVG
// as the PNGs are drawn.
func TestManifestAndIcons(t *testing.T) {
	v, _ := newKeptVisit(t, site.New(dist, nil))
	m, err := chromedp.Call(v.ctx, page.GetAppManifest, page.GetAppManifestParams{})
	must(t, err)
	for _, e := range m.Errors {
		t.Errorf("the manifest: %s", e.Message)
	}
	if m.URL != v.url+"manifest.webmanifest" || !strings.Contains(m.Data, words.English.Page.Description) {
		t.Errorf("the manifest is %s: %s", m.URL, m.Data)
	}
	faults, err := chromedp.Call(v.ctx, page.GetInstallabilityErrors, cdp.Empty{})
	must(t, err)
	for _, e := range faults.InstallabilityErrors {
		if e.ErrorID == "in-incognito" { // as a browser under test is
			continue
		}
		t.Errorf("the browser would not install it: %s %v", e.ErrorID, e.ErrorArguments)
	}
	// The mean difference of all colours and the share of places that differ
	// much: edges are smoothed in two ways.
	got := v.later(`(async () => {
		const draw = async (src) => {
			const img = new Image(512, 512);
			img.src = src;
			await img.decode();
			const c = document.createElement("canvas");
			c.width = c.height = 512;
			const g = c.getContext("2d");
			g.drawImage(img, 0, 0, 512, 512);
			return g.getImageData(0, 0, 512, 512).data;
		};
		const a = await draw("icon.svg"), b = await draw("icon-512.png");
		let sum = 0, far = 0;
		a.forEach((x, i) => { const d = Math.abs(x - b[i]); sum += d; if (d > 64) far++; });
		return JSON.stringify([sum / a.length, far / a.length]);
	})()`)
	var d [2]float64
	if err := json.Unmarshal([]byte(got), &d); err != nil || d[0] > 0.5 || d[1] > 0.001 {
		t.Errorf("SVG and PNG differ by %s (%v), want at most 0.5 and 0.001", got, err)
	}
	t.Logf("SVG and PNG differ by %v of 255, in %v of all places by much", d[0], d[1])
	v.clean()
}
