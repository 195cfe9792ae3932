//go:build browser

package browser

import (
	"cmp"
	"context"
	"fmt"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"

	"whorlbench/cmd/whorlbench/site"
)

// dist is the built bench; WHORLBENCH_DIST may name another build.
var dist = cmp.Or(os.Getenv("WHORLBENCH_DIST"), "../dist")

// patience bounds a wait for something that does happen, on a machine that
// draws in software; it is no measure of speed.
const patience = 60 * time.Second

// screen is a device to be tried.
type screen struct {
	name          string
	width, height int64
	density       float64
	touch         bool
}

var (
	phone     = screen{"phone", 390, 844, 3, true}
	phoneSide = screen{"phone-side", 844, 390, 3, true}
	desk      = screen{"desk", 1440, 900, 1, false}
	projector = screen{"projector", 1920, 1080, 1, false}
)

// visit is one person's browser, with the bench served from the built folder.
type visit struct {
	t         *testing.T
	ctx       context.Context
	url       string
	screen    screen
	downloads string

	mu       sync.Mutex
	faults   []string
	requests []string
}

// newVisit starts a browser and opens the bench.
func newVisit(t *testing.T, s screen) *visit {
	t.Helper()
	if err := site.Check(dist); err != nil {
		t.Fatalf("%s: %v; run `make dist` first", dist, err)
	}
	server := httptest.NewServer(site.New(dist, nil))
	t.Cleanup(server.Close)
	v := newBrowser(t, s)
	v.url = server.URL + "/"
	v.load()
	return v
}

// newBrowser starts a browser with a profile of its own.
func newBrowser(t *testing.T, s screen) *visit {
	t.Helper()
	v := &visit{t: t, screen: s, downloads: t.TempDir()}

	opts := []chromedp.ExecAllocatorOption{
		chromedp.NoFirstRun, chromedp.NoSandbox, chromedp.Headless, chromedp.NoDefaultBrowserCheck,
		chromedp.UserDataDir(t.TempDir()), chromedp.WindowSize(int(s.width), int(s.height)),
		chromedp.Flag("use-angle", "swiftshader"), chromedp.Flag("enable-unsafe-swiftshader", true),
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-background-networking", true),
		chromedp.Flag("disable-component-update", true), chromedp.Flag("disable-sync", true),
		chromedp.Flag("disable-dev-shm-usage", true),
	}
	if path := os.Getenv("WHORLBENCH_CHROME"); path != "" {
		opts = append(opts, chromedp.ExecPath(path))
	}
	alloc, cancel := chromedp.NewExecAllocator(context.Background(), opts...)
	t.Cleanup(cancel)
	ctx, cancel := chromedp.NewContext(alloc)
	t.Cleanup(cancel)
	v.ctx = ctx

	must(t, chromedp.Do(ctx))
	must(t, chromedp.Listen(ctx, v.hear))
	_, err := chromedp.Call(ctx, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: listening})
	must(t, err)
	_, err = chromedp.Call(ctx, network.Enable, network.EnableParams{})
	must(t, err)
	// Each visit is to the server as it is now; offline_test.go tries the rest.
	v.bypassKept(true)
	yes := true
	_, err = chromedp.CallBrowser(ctx, browser.SetDownloadBehavior, browser.SetDownloadBehaviorParams{
		Behavior: browser.SetDownloadBehaviorBehaviorAllow, DownloadPath: v.downloads, EventsEnabled: &yes,
	})
	must(t, err)
	emulate := []chromedp.EmulateViewportOption{chromedp.EmulateScale(s.density)}
	if s.touch {
		emulate = append(emulate, chromedp.EmulateMobile, chromedp.EmulateTouch)
	}
	must(t, chromedp.Do(ctx, chromedp.EmulateViewport(s.width, s.height, emulate...)))
	return v
}

// bypassKept says whether pages come from the server even where the browser
// keeps the bench for when there is none.
func (v *visit) bypassKept(on bool) {
	v.t.Helper()
	_, err := chromedp.Call(v.ctx, network.SetBypassServiceWorker, network.SetBypassServiceWorkerParams{Bypass: on})
	must(v.t, err)
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// hear collects what no visit may cause: console errors, exceptions, and
// requests that leave the origin.
func (v *visit) hear(ev any) {
	v.mu.Lock()
	defer v.mu.Unlock()
	switch e := ev.(type) {
	case *runtime.EventConsoleAPICalled:
		if e.Type == runtime.ConsoleAPICalledTypeError || e.Type == runtime.ConsoleAPICalledTypeWarning {
			v.faults = append(v.faults, fmt.Sprintf("console %s: %s", e.Type, arguments(e.Args)))
		}
	case *runtime.EventExceptionThrown:
		v.faults = append(v.faults, "exception: "+e.ExceptionDetails.Text)
	case *log.EventEntryAdded:
		if e.Entry.Level == log.EntryLevelError {
			v.faults = append(v.faults, "log: "+e.Entry.Text)
		}
	case *network.EventRequestWillBeSent:
		v.requests = append(v.requests, e.Request.URL)
	}
}

func arguments(args []*runtime.RemoteObject) string {
	var parts []string
	for _, a := range args {
		parts = append(parts, string(a.Value)+a.Description)
	}
	return strings.Join(parts, " ")
}

// clean fails the test if the visit caused a fault or a foreign request.
func (v *visit) clean() {
	v.t.Helper()
	v.mu.Lock()
	defer v.mu.Unlock()
	for _, f := range v.faults {
		v.t.Errorf("the page reported: %s", f)
	}
	if len(v.requests) == 0 {
		v.t.Error("no request was seen at all")
	}
	for _, r := range v.requests {
		if !strings.HasPrefix(r, v.url) && !strings.HasPrefix(r, "blob:"+v.url) && !strings.HasPrefix(r, "data:") {
			v.t.Errorf("a request left the origin: %s", r)
		}
	}
}

// load opens the bench, or opens it anew, and waits until it is drawn.
func (v *visit) load() {
	v.t.Helper()
	must(v.t, chromedp.Do(v.ctx, chromedp.Navigate(v.url)))
	v.wait(`document.documentElement.dataset.state === "ready"`)
}

// eval returns the value of a JavaScript expression.
func eval[T any](v *visit, expression string) T {
	v.t.Helper()
	out, err := chromedp.Run(v.ctx, chromedp.Evaluate[T](expression))
	if err != nil {
		v.t.Fatalf("%s: %v", expression, err)
	}
	return out
}

// wait waits until a JavaScript condition holds.
func (v *visit) wait(condition string) {
	v.t.Helper()
	_, err := chromedp.Run(v.ctx, chromedp.Poll[bool](condition, chromedp.WithPollingTimeout(patience)))
	if err != nil {
		v.t.Fatalf("waiting for %s: %v; live region: %q", condition, err, eval[string](v, `document.getElementById("live").textContent`))
	}
}

// frames waits until n more frames have been drawn.
func (v *visit) frames(n int) {
	v.t.Helper()
	v.wait(fmt.Sprintf("whorlbenchProgram.drawn() >= %d", eval[int](v, "whorlbenchProgram.drawn()")+n))
}

// shot keeps a screenshot when WHORLBENCH_SHOTS names a folder.
func (v *visit) shot(name string) []byte {
	v.t.Helper()
	png, err := chromedp.Run(v.ctx, chromedp.CaptureScreenshot())
	must(v.t, err)
	if dir := os.Getenv("WHORLBENCH_SHOTS"); dir != "" {
		must(v.t, os.MkdirAll(dir, 0o755))
		must(v.t, os.WriteFile(filepath.Join(dir, fmt.Sprintf("%s-%s.png", name, v.screen.name)), png, 0o644))
	}
	return png
}
