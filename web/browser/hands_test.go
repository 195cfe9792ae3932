//go:build browser

package browser

import (
	"bytes"
	"fmt"
	"image"
	_ "image/png"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// box is where an element stands, in CSS pixels.
type box struct{ X, Y, W, H float64 }

func (b box) middle() (x, y float64) { return b.X + b.W/2, b.Y + b.H/2 }

// twin returns a JavaScript expression for the accessible control of a role
// and a name, as assistive technology finds it.
func twin(role, name string) string {
	selector := map[string]string{
		"slider": "input[type=range]", "button": "button",
	}[role]
	return fmt.Sprintf(`[...document.querySelectorAll("#bench %s")].find((e) => { const l = e.getAttribute("aria-label"); return l === %q || l.match(/^(.*?)(?: of \d+)?(?:: .*)?$/)[1] === %q; })`, selector, name, name)
}

func (v *visit) place(role, name string) box {
	v.t.Helper()
	v.wait("!!" + twin(role, name))
	return eval[box](v, fmt.Sprintf(`(() => { const r = %s.getBoundingClientRect(); return {X: r.x, Y: r.y, W: r.width, H: r.height}; })()`, twin(role, name)))
}

// propTrack is where a value stands on the track of the prop-speed slider.
func propTrack(slider box, value float64) [2]float64 {
	const pad, reach, low = 16, 6, 22 // of the track within its box, its ends, its middle from below
	return [2]float64{slider.X + pad + (slider.W-2*pad)*(value+reach)/(2*reach), slider.Y + slider.H - low}
}

// touch goes down at the first place and up at the last, by finger or mouse
// as the screen has it, and waits until the page has heard the end: the browser
// says that an event is sent before a busy page has seen it.
func (v *visit) touch(places ...[2]float64) {
	v.t.Helper()
	before := eval[int](v, `(() => {
		if (window.pointersEnded === undefined) {
			window.pointersEnded = 0;
			for (const type of ["pointerup", "pointercancel"]) addEventListener(type, () => { window.pointersEnded++; }, true);
		}
		return window.pointersEnded;
	})()`)
	v.reach(places...)
	v.wait(fmt.Sprintf("window.pointersEnded > %d", before))
}

func (v *visit) reach(places ...[2]float64) {
	v.t.Helper()
	first, last := places[0], places[len(places)-1]
	if v.screen.touch && len(places) == 1 {
		v.brief(first)
		return
	}
	if v.screen.touch {
		v.finger(input.DispatchTouchEventTypeTouchStart, first)
		for _, p := range places[1:] {
			v.finger(input.DispatchTouchEventTypeTouchMove, p)
		}
		v.finger(input.DispatchTouchEventTypeTouchEnd)
		return
	}
	v.mouse(input.DispatchMouseEventTypeMousePressed, first)
	for _, p := range places[1:] {
		v.mouse(input.DispatchMouseEventTypeMouseMoved, p)
	}
	v.mouse(input.DispatchMouseEventTypeMouseReleased, last)
}

// brief taps: the end of the touch is sent without waiting for the page to have
// taken its beginning, or a slow page would see a long press.
func (v *visit) brief(at [2]float64) {
	v.t.Helper()
	begun := make(chan error, 1)
	send := func(kind input.DispatchTouchEventType, points []*input.TouchPoint) error {
		_, err := chromedp.Call(v.ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
		return err
	}
	go func() {
		begun <- send(input.DispatchTouchEventTypeTouchStart, []*input.TouchPoint{{X: at[0], Y: at[1]}})
	}()
	must(v.t, chromedp.Do(v.ctx, chromedp.Sleep(30*time.Millisecond)))
	must(v.t, send(input.DispatchTouchEventTypeTouchEnd, []*input.TouchPoint{}))
	must(v.t, <-begun)
}

func (v *visit) finger(kind input.DispatchTouchEventType, at ...[2]float64) {
	v.t.Helper()
	points := []*input.TouchPoint{}
	for _, p := range at {
		points = append(points, &input.TouchPoint{X: p[0], Y: p[1]})
	}
	_, err := chromedp.Call(v.ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
	must(v.t, err)
}

func (v *visit) mouse(kind input.DispatchMouseEventType, at [2]float64) {
	v.t.Helper()
	_, err := chromedp.Call(v.ctx, input.DispatchMouseEvent, input.DispatchMouseEventParams{
		Type: kind, X: at[0], Y: at[1], Button: input.MouseButtonLeft, Buttons: 1, ClickCount: 1,
	})
	must(v.t, err)
}

// tap touches the middle of a control on the canvas, briefly.
func (v *visit) tap(name string) {
	v.t.Helper()
	x, y := v.place("button", name).middle()
	v.drawing(func() { v.touch([2]float64{x, y}) })
}

// drawing does something and waits until a frame has been drawn that was begun
// since: while the pattern plays, one that is under way knows nothing of it.
func (v *visit) drawing(do func()) {
	v.t.Helper()
	do()
	before := eval[int](v, "(whorlbenchProgram.wake(), whorlbenchProgram.drawn())")
	v.wait(fmt.Sprintf("whorlbenchProgram.drawn() > %d", before))
}

// press focuses a control's twin and gives it a key.
func (v *visit) press(role, name, key string, opts ...chromedp.KeyOption) {
	v.t.Helper()
	v.wait("!!" + twin(role, name))
	eval[bool](v, fmt.Sprintf(`(%s.focus(), true)`, twin(role, name)))
	v.drawing(func() { must(v.t, chromedp.Do(v.ctx, chromedp.KeyEvent(key, opts...))) })
}

// value returns how a slider's twin reads.
func (v *visit) value(name string) string {
	v.t.Helper()
	return eval[string](v, twin("slider", name)+`.getAttribute("aria-valuetext")`)
}

// pieces returns what the pieces on the strip are called, in order.
func (v *visit) pieces() []string {
	v.t.Helper()
	return eval[[]string](v, `[...document.querySelectorAll("#bench [data-id^=piece-]")].map((e) => e.getAttribute("aria-label"))`)
}

// pattern returns the open pattern as it would be saved.
func (v *visit) pattern() string {
	v.t.Helper()
	return eval[string](v, `whorlbenchProgram.file().text`)
}

// pause stops the playing and waits until nothing is drawn any more.
func (v *visit) pause() {
	v.t.Helper()
	v.tap("Pause")
	v.wait("!!" + twin("button", "Play"))
	v.still()
}

// still waits until no frame is asked for, messages gone too.
func (v *visit) still() {
	v.t.Helper()
	for range 100 {
		before := eval[int](v, "whorlbenchProgram.drawn()")
		v.refreshes(20)
		if eval[int](v, "whorlbenchProgram.drawn()") == before {
			return
		}
	}
	v.t.Fatal("the paused bench goes on drawing")
}

// refreshes waits for n refreshes of the screen.
func (v *visit) refreshes(n int) {
	v.t.Helper()
	_, err := chromedp.Run(v.ctx, chromedp.Evaluate[bool](fmt.Sprintf(
		`new Promise((done) => { let n = %d; const tick = () => n-- > 0 ? requestAnimationFrame(tick) : done(true); tick(); })`, n),
		chromedp.EvalAwaitPromise))
	must(v.t, err)
}

// saving presses a button of the page and returns the file it gives.
func (v *visit) saving(button string) (name string, data []byte) {
	v.t.Helper()
	v.click(button)
	for range 200 {
		files, _ := filepath.Glob(filepath.Join(v.downloads, "*.toml"))
		if len(files) == 1 {
			if data, err := os.ReadFile(files[0]); err == nil && len(data) > 0 {
				must(v.t, os.Remove(files[0]))
				return filepath.Base(files[0]), data
			}
		}
		must(v.t, chromedp.Do(v.ctx, chromedp.Sleep(50e6)))
	}
	v.t.Fatalf("%s gave no file", button)
	return "", nil
}

// open gives a file to the page's file input.
func (v *visit) open(name string, data []byte) {
	v.t.Helper()
	path := filepath.Join(v.t.TempDir(), name)
	must(v.t, os.WriteFile(path, data, 0o644))
	must(v.t, chromedp.Do(v.ctx, chromedp.SetUploadFiles(chromedp.ID("file"), []string{path})))
}

// inked returns how many pixels of a screenshot's part differ from the part's
// first pixel: 0 for a blank picture.
func inked(png []byte, part box, density float64) (n int, err error) {
	img, _, err := image.Decode(bytes.NewReader(png))
	if err != nil {
		return 0, err
	}
	x0, y0 := int(part.X*density), int(part.Y*density)
	first := img.At(x0, y0)
	for y := y0; y < int((part.Y+part.H)*density); y += 2 {
		for x := x0; x < int((part.X+part.W)*density); x += 2 {
			if img.At(x, y) != first {
				n++
			}
		}
	}
	return n, nil
}

func contains(list []string, part string) bool {
	return slices.ContainsFunc(list, func(s string) bool { return strings.Contains(s, part) })
}
