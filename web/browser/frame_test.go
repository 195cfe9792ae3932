//go:build browser

package browser

import (
	"context"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/performance"
	"github.com/chromedp/chromedp"

	"whorlbench/cmd/whorlbench/site"
	"whorlbench/web/build/bundle"
)

// rival is a page whose frame is held against the bench's; drawn counts its
// frames.
type rival struct{ name, path, drawn string }

var rivals = []rival{
	{"bench, playing", "/", "whorlbenchProgram.drawn()"},
	{"empty program", "/rival/empty.html", "window.framesSeen"},
	{"canvas 2D trails", "/rival/canvas.html", "window.framesSeen"},
	{"p5 trails", "/rival/p5.html", "window.framesSeen"},
}

// countFrames counts a page's refreshes.
const countFrames = `window.framesSeen = 0; { const tick = () => { window.framesSeen++; requestAnimationFrame(tick); }; requestAnimationFrame(tick); }`

// TestFrameTime measures, it does not judge: the main thread's time for a frame
// of the whole bench, next to pages that draw less, all in one browser,
// turn by turn. `make bench-frame` runs it.
func TestFrameTime(t *testing.T) {
	if os.Getenv("WHORLBENCH_FRAMES") == "" {
		t.Skip("a measurement, not a test: make bench-frame runs it")
	}
	library := module(t, "p5/lib/p5.min.js")
	empty := filepath.Join(t.TempDir(), "empty.wasm")
	must(t, bundle.Compile(context.Background(), "../size/empty", empty))

	mux := http.NewServeMux()
	mux.Handle("/", site.New(dist, nil))
	mux.Handle("/rival/", http.StripPrefix("/rival/", http.FileServer(http.Dir("frame"))))
	mux.HandleFunc("/rival/empty.wasm", func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "application/wasm")
		http.ServeFile(w, r, empty)
	})
	mux.HandleFunc("/rival/wasm_exec.js", func(w http.ResponseWriter, r *http.Request) {
		http.ServeFile(w, r, filepath.Join(dist, bundle.WasmExecName))
	})
	mux.HandleFunc("/rival/p5.min.js", func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/javascript")
		fmt.Fprint(w, library)
	})
	server := httptest.NewServer(mux)
	defer server.Close()

	const rounds = 5
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newBrowser(t, s)
			v.url = server.URL + "/"
			_, err := chromedp.Call(v.ctx, performance.Enable, performance.EnableParams{})
			must(t, err)
			defer v.before(countFrames)()
			cost := map[string][]frameCost{}
			for range rounds {
				for _, r := range rivals {
					cost[r.name] = append(cost[r.name], v.cost(r))
				}
			}
			printCosts(s, cost)
		})
	}
}

// frameCost is what a frame takes of the main thread, in milliseconds: all
// tasks, and script alone; and how many frames a second there were.
type frameCost struct{ task, script, rate float64 }

func (v *visit) cost(r rival) frameCost {
	v.t.Helper()
	must(v.t, chromedp.Do(v.ctx, chromedp.Navigate(v.url+r.path[1:])))
	if r.path == "/" {
		v.ready()
		v.pick("pier-end")
		if !eval[bool](v, "!!"+twin("button", "Pause")) {
			v.press("button", "Play", " ")
		}
	}
	v.wait(r.drawn + " > 3")
	const warm, long = 1500 * time.Millisecond, 2500 * time.Millisecond
	time.Sleep(warm)
	frames, before := eval[float64](v, r.drawn), v.metrics()
	time.Sleep(long)
	after := v.metrics()
	n := max(eval[float64](v, r.drawn)-frames, 1)
	of := func(key string) float64 { return (after[key] - before[key]) * 1000 / n }
	return frameCost{of("TaskDuration"), of("ScriptDuration"), n / (after["Timestamp"] - before["Timestamp"])}
}

func (v *visit) metrics() map[string]float64 {
	v.t.Helper()
	got, err := chromedp.Call(v.ctx, performance.GetMetrics, cdp.Empty{})
	must(v.t, err)
	out := map[string]float64{}
	for _, m := range got.Metrics {
		out[m.Name] = m.Value
	}
	return out
}

func printCosts(s screen, cost map[string][]frameCost) {
	bench := median(cost[rivals[0].name], func(c frameCost) float64 { return c.task })
	fmt.Printf("%s, %d × %d at density %v: medians of %d rounds, main thread, ms a frame\n", s.name, s.width, s.height, s.density, len(cost[rivals[0].name]))
	fmt.Printf("%-18s %8s %8s %14s %8s %14s\n", "", "task", "script", "task, range", "per s", "bench / it")
	for _, r := range rivals {
		of := cost[r.name]
		task := func(c frameCost) float64 { return c.task }
		all := make([]float64, 0, len(of))
		for _, c := range of {
			all = append(all, c.task)
		}
		fmt.Printf("%-18s %8.2f %8.2f %6.2f – %5.2f %8.1f %14.2f\n", r.name, median(of, task), median(of, func(c frameCost) float64 { return c.script }),
			slices.Min(all), slices.Max(all), median(of, func(c frameCost) float64 { return c.rate }), bench/median(of, task))
	}
}

func median(of []frameCost, part func(frameCost) float64) float64 {
	all := make([]float64, 0, len(of))
	for _, c := range of {
		all = append(all, part(c))
	}
	slices.Sort(all)
	return all[len(all)/2]
}
