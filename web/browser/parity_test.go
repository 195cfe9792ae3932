//go:build browser

package browser

import (
	"fmt"
	"math"
	"math/rand/v2"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"whorlbench/cmd/whorlbench/report"
	"whorlbench/cmd/whorlbench/site"
	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/web/browser/parity/sample"
)

// TestNativeAndWebAssemblyAgree asks both for the same patterns: the report
// must agree to the byte, samples to 1e-12 of their size.
func TestNativeAndWebAssemblyAgree(t *testing.T) {
	v := programVisit(t, "parity", "")
	const seed, random, beats = 7, 60, 40
	t.Logf("seed %d", seed)
	var patterns []engine.Pattern
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		must(t, err)
		patterns = append(patterns, p)
	}
	r := rand.New(rand.NewPCG(seed, seed))
	for range random {
		patterns = append(patterns, randomPattern(r))
	}
	for i, p := range patterns {
		name := fmt.Sprintf("pattern %d, %s", i, p.Title)
		text, err := presets.Encode(p)
		must(t, err)
		want, err := report.JSON([]report.Report{report.Of(name, p)}, false)
		must(t, err)
		if got := eval[string](v, fmt.Sprintf("parityCheck(%s, %s)", quote(name), quote(string(text)))); got != string(want) {
			t.Errorf("%s: in WebAssembly the report is\n%s\nnatively\n%s", name, got, want)
		}
		wants := sample.Of(p, beats)
		gots := eval[[]float64](v, fmt.Sprintf("paritySample(%s, %s, %d)", quote(name), quote(string(text)), beats))
		if len(gots) != len(wants) {
			t.Fatalf("%s: %d samples in WebAssembly, %d natively", name, len(gots), len(wants))
		}
		for k := range wants {
			if d := math.Abs(gots[k] - wants[k]); d > 1e-12*(1+math.Abs(wants[k])) {
				t.Errorf("%s: sample %d is %v in WebAssembly and %v natively", name, k, gots[k], wants[k])
				break
			}
		}
	}
}

// programVisit builds one of the programs beside these tests and opens it in a
// browser in which a script has run before.
func programVisit(t *testing.T, program, script string) *visit {
	t.Helper()
	dir := t.TempDir()
	build := exec.Command("go", "build", "-o", filepath.Join(dir, "program.wasm"), "./"+program)
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	out, err := build.CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	must(t, err)
	glue, err := os.ReadFile(filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "wasm_exec.js"))
	must(t, err)
	for name, text := range map[string]string{
		"wasm_exec.js": string(glue),
		"index.html":   `<!doctype html><title>program</title><link rel="icon" href="data:,"><script src="wasm_exec.js"></script><script src="start.js"></script>`,
		"start.js": `const go = new Go(); WebAssembly.instantiateStreaming(fetch("program.wasm"), go.importObject)` +
			`.then(({ instance }) => go.run(instance));`,
	} {
		must(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	server := httptest.NewServer(site.New(dir, nil))
	t.Cleanup(server.Close)
	v := newBrowser(t, desk)
	v.url = server.URL + "/"
	v.before(script)
	must(t, chromedp.Do(v.ctx, chromedp.Navigate(v.url)))
	v.wait("window." + program + "Ready === true")
	return v
}

// randomPattern draws on everything that a file can say.
func randomPattern(r *rand.Rand) engine.Pattern {
	p := engine.Pattern{Title: "random", Tempo: float64(40 + r.IntN(200)), Performer: engine.DefaultPerformer()}
	number := func(most int64) frac.Frac { return frac.New(r.Int64N(2*most*12+1)-most*12, 12) }
	positive := func() frac.Frac { return frac.New(1+r.Int64N(36), 12) }
	angle := func() engine.Degrees { return engine.Degrees(r.IntN(7200)) / 10 }
	for _, side := range []engine.Side{engine.Left, engine.Right}[:1+r.IntN(2)] {
		l := engine.Lane{Side: side, Plane: engine.Plane(r.IntN(3)), Tether: 0.6, ArmAt: angle(), PropAt: angle()}
		l.Offset = p.Performer.DefaultOffset(side, l.Plane)
		for range 1 + r.IntN(5) {
			centre := complex(float64(r.IntN(9)-4)/10, float64(r.IntN(9)-4)/10)
			size := 0.1 + float64(r.IntN(8))/10
			paths := []engine.Path{engine.CirclePath(centre, size), engine.LinePath(centre, size, angle()),
				engine.EllipsePath(centre, size, size/3, angle()), engine.PointPath(centre)}
			q := engine.Stroke(paths[r.IntN(len(paths))], number(3), number(6), positive(), positive())
			q.Law = engine.Law(r.IntN(4))
			if r.IntN(3) == 0 {
				q.From, q.To = frac.New(1, 3), frac.New(5, 6)
			}
			if r.IntN(4) == 0 {
				q.ArmAt = engine.Some(angle())
			}
			if r.IntN(5) == 0 {
				q.PropAt = engine.Some(angle())
			}
			if r.IntN(6) == 0 {
				q.Swing, q.SwingBack = angle()/5+1, r.IntN(2) == 0
			}
			l.Pieces = append(l.Pieces, q)
		}
		p.Lanes = append(p.Lanes, l)
	}
	return p
}
