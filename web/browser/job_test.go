//go:build browser

package browser

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"whorlbench/presets"
)

// TestMainJob is what a spinner does on a first visit, by touch on a phone
// and by mouse at a desk: watch, drag, cut, reorder, rejoin, undo, save, come
// back, open.
func TestMainJob(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) { mainJob(t, newVisit(t, s)) })
	}
}

func mainJob(t *testing.T, v *visit) {
	first := v.pattern()

	// It plays: two pictures differ, and neither is blank.
	stage := box{X: 20, Y: 70, W: 300, H: 240}
	a := v.shot("job-1-playing")
	v.frames(4)
	b := v.shot("job-1-playing-later")
	if n, err := inked(a, stage, v.screen.density); err != nil || n < 100 {
		t.Fatalf("the stage has %d inked pixels (%v), want a picture", n, err)
	}
	if bytes.Equal(a, b) {
		t.Fatal("the picture does not move")
	}
	v.pause()

	// The prop-speed slider by hand on the canvas: from 1 to 3.
	if got := v.pieces()[0]; !strings.Contains(got, "extension") {
		t.Fatalf("the first piece is %q, want an extension", got)
	}
	r := v.place("slider", "Prop speed")
	at := func(value float64) [2]float64 { return propTrack(r, value) }
	v.touch(at(1), at(1.5), at(2.2), at(3))
	v.wait(twin("slider", "Prop speed") + `.getAttribute("aria-valuetext").startsWith("3 ")`)
	if got := v.pieces()[0]; !strings.Contains(got, "two-petal in-spin flower") {
		t.Errorf("at prop speed 3 the first piece is %q, want a two-petal in-spin flower", got)
	}
	v.shot("job-2-dragged")

	// By keyboard on its twin: a quarter turn up, and a whole number of them.
	v.press("slider", "Prop speed", kb.ArrowRight)
	if got := v.value("Prop speed"); !strings.HasPrefix(got, "3.25 ") {
		t.Errorf("after one arrow the prop speed reads %q, want 3.25", got)
	}
	v.press("slider", "Prop speed", kb.PageUp)
	if got := v.value("Prop speed"); !strings.HasPrefix(got, "4.25 ") {
		t.Errorf("after page up the prop speed reads %q, want 4.25", got)
	}

	// Cut at beat 1, by hand on the ruler and the button.
	ruler := v.place("slider", "Playhead")
	v.touch([2]float64{ruler.X + (ruler.W-6)*0.25, ruler.Y + ruler.H/2})
	v.tap("Cut at the playhead")
	v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === 3`)
	v.shot("job-3-cut")

	// Carry the last piece to the front.
	last := v.place("button", "Right hand, piece 3")
	front := v.place("button", "Right hand, piece 1")
	x, y := last.middle()
	v.touch([2]float64{x, y}, [2]float64{x - 15, y}, [2]float64{x - 60, y}, [2]float64{front.X + 4, y})
	v.wait(twin("button", "Right hand, piece 1") + `.getAttribute("aria-label").includes("four-petal antispin")`)
	v.shot("job-4-carried")

	// Rejoin the two halves that were cut.
	v.tap("Right hand, piece 2")
	v.tap("Rejoin with its neighbour")
	v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === 2`)

	// Undo to the start.
	for eval[string](v, twin("button", "Undo")+`.ariaDisabled ?? ""`) != "true" {
		v.tap("Undo")
	}
	if got := v.pattern(); got != first {
		t.Fatalf("undone to the start the pattern is\n%s\nwant\n%s", got, first)
	}

	// Make something of one's own, save it.
	v.tap("There and back")
	v.press("button", "Flip arm", " ")
	mine := v.pattern()
	if mine == first {
		t.Fatal("the edits have changed nothing")
	}
	// What is no longer the built-in pattern is offered a name of its own.
	eval[bool](v, `(document.getElementById("save").click(), true)`)
	v.wait(`document.getElementById("names").open && document.getElementById("names-title").value === "Half-moon, my way"`)
	v.shot("job-5-name")
	// The built-in pattern's notes tell of another pattern, and are there to be had back.
	const notes = `document.getElementById("names-notes").value`
	if got := eval[string](v, notes); got != "" {
		t.Errorf("the notes are %q, want none", got)
	}
	if got := eval[string](v, `(document.getElementById("names-old").click(), `+notes+`)`); !strings.HasPrefix(got, "A C-cap.") {
		t.Errorf("the old notes are %q, want the built-in pattern's", got)
	}
	eval[string](v, "("+notes+` = "")`)
	name, saved := v.saving("names-done")
	if mine = v.pattern(); name != "half-moon-my-way.toml" || string(saved) != mine {
		t.Errorf("saved %s:\n%s\nwant half-moon-my-way.toml:\n%s", name, saved, mine)
	}

	// Come back: the work is there.
	v.load()
	if got := v.pattern(); got != mine {
		t.Errorf("after loading again the pattern is\n%s\nwant\n%s", got, mine)
	}

	// Open another, then the saved file: equal.
	eval[bool](v, `(document.getElementById("show-patterns").click(), true)`)
	v.shot("job-5-patterns")
	v.drawing(func() {
		eval[bool](v, `(document.querySelectorAll("#patterns-list section:not(#own) button:not(.tool)")[1].click(), true)`)
	})
	if v.pattern() == mine {
		t.Fatal("the library's second pattern did not open")
	}
	v.open(name, saved)
	v.wait(`whorlbenchProgram.file().text === ` + quote(mine))
	p, err := presets.Decode(name, saved)
	if err != nil {
		t.Fatal(err)
	}
	q, err := presets.Decode("open", []byte(v.pattern()))
	if err != nil || !p.Equal(q) {
		t.Errorf("the opened file is not equal to the saved one (%v)", err)
	}
	v.clean()
}

func quote(s string) string {
	return "`" + strings.NewReplacer("\\", "\\\\", "`", "\\`", "${", "\\${").Replace(s) + "`"
}

// TestWorkSurvivesAKilledTab ends the renderer, not the page, after an edit.
func TestWorkSurvivesAKilledTab(t *testing.T) {
	v := newVisit(t, phone)
	v.tap("Flip arm")
	mine := v.pattern()
	killed := chromedp.Do(v.ctx, chromedp.Navigate("chrome://crash"))
	t.Logf("the tab ended with: %v", killed)
	again, cancel := chromedp.NewContext(v.ctx)
	defer cancel()
	v.ctx = again
	v.load()
	if got := v.pattern(); got != mine {
		t.Errorf("after the tab was killed the pattern is\n%s\nwant\n%s", got, mine)
	}
}

func TestPausedBenchDrawsNothing(t *testing.T) {
	for _, s := range []screen{phone, desk} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.pause()
			before := eval[int](v, "whorlbenchProgram.drawn()")
			v.refreshes(60)
			if got := eval[int](v, "whorlbenchProgram.drawn()") - before; got != 0 {
				t.Errorf("%d frames were drawn in 60 refreshes of an untouched, paused bench, want 0", got)
			}
			v.clean()
		})
	}
}

// A bad file gives one clear message and leaves the open pattern as it was.
func TestBadFiles(t *testing.T) {
	v := newVisit(t, phone)
	v.pause()
	before := v.pattern()
	type bad struct {
		name string
		data []byte
		want string
	}
	million := append([]byte("format = 1\ntitle = \"x\"\ntempo = 90\n[[hand]]\nside = \"left\"\n"),
		bytes.Repeat([]byte("[[hand.piece]]\narm=1\nprop=1\ncycles=1\n"), 190_000)...)
	noise := make([]byte, 10<<20)
	for i := range noise {
		noise[i] = byte(i*i>>3 ^ i)
	}
	files := []bad{
		{"many.toml", million, "10000"},
		{"noise.toml", noise, "too large"},
		{"empty.toml", nil, "the file is empty"},
	}
	for _, name := range []string{"truncated", "wrong-type", "unknown-key", "nan", "binary"} {
		data, err := os.ReadFile(filepath.Join("../../testdata/presets/bad", name+".toml"))
		must(t, err)
		files = append(files, bad{name + ".toml", data, name + ".toml"})
	}
	for _, f := range files {
		v.open(f.name, f.data)
		v.wait(`document.getElementById("problem").open`)
		lines := eval[string](v, `document.getElementById("problem-lines").textContent`)
		if !strings.Contains(lines, f.want) || !strings.HasPrefix(lines, f.name) {
			t.Errorf("%s: the page says %q, want the file's name and %q", f.name, lines, f.want)
		}
		v.shot("bad-" + strings.TrimSuffix(f.name, ".toml"))
		eval[bool](v, `(document.querySelector("#problem [data-close]").click(), true)`)
		if got := v.pattern(); got != before {
			t.Errorf("%s: the open pattern has changed", f.name)
		}
	}
	v.clean()
}

// Taps far shorter than a frame all count: none is lost to the frame loop.
func TestShortTaps(t *testing.T) {
	v := newVisit(t, phone)
	v.pause()
	x, y := v.place("button", "Mirror the view").middle()
	const taps = 15
	for range taps {
		v.touch([2]float64{x, y})
	}
	v.refreshes(10)
	v.still()
	// An odd number of them turns the mirror on.
	if got := eval[string](v, twin("button", "Mirror the view")+`.getAttribute("aria-pressed")`); got != "true" {
		t.Errorf("after %d short taps aria-pressed = %q, want true", taps, got)
	}
	v.clean()
}

// Keys that come faster than frames all count: each steps from what the slider
// stands at, not from what was drawn last.
func TestQuickKeys(t *testing.T) {
	v := newVisit(t, phone)
	for _, playing := range []bool{true, false} {
		if !playing {
			v.pause()
		}
		v.wait("!!" + twin("slider", "Prop speed"))
		eval[bool](v, `(whorlbenchProgram.act("prop", "set", 1), `+twin("slider", "Prop speed")+`.focus(), true)`)
		for range 3 {
			must(t, chromedp.Do(v.ctx, chromedp.KeyEvent(kb.PageDown)))
		}
		if got := eval[float64](v, `whorlbenchProgram.value("prop")`); got != -2 {
			t.Errorf("playing %v: three page downs from 1 give %v, want -2", playing, got)
		}
	}
	v.clean()
}
