//go:build js

package main

import (
	"fmt"
	"image/color"
	"maps"
	"time"

	"github.com/hajimehoshi/ebiten/v2"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/host"
	"whorlbench/sandbox/paint"
	"whorlbench/sandbox/shelf"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// app joins page, bench and painter in Ebitengine's loop. A frame is drawn
// only when a pointer, a twin or the page asks for one, or while the pattern
// plays.
type app struct {
	page           *host.Page
	bench          *bench.Bench
	screen         *paint.Screen
	list           *display.List
	events         []widget.Pointer
	last           time.Time
	twinsAt        time.Time
	arranged       int // of the controls that the twins show
	drawn          int
	ready          bool
	desk           *shelf.Desk
	stageOnly      bool             // within another page
	problemAtStart error            // of what was kept; told once all is there
	unkept         bool             // the page shows that work is not kept
	kept           bool             // some work has been, at this visit
	patterns       []any            // the built-in ones, as the page lists them
	own            map[string]shown // the person's, likewise
	openCompared   func() any       // opens what is compared with the open pattern
}

// mostScale is the finest pixel density that is drawn: beyond it the eye sees
// no gain and a phone only heat.
const mostScale = 3

// longestFrame bounds the time that one frame moves the playhead on, so that
// a tab that was hidden does not jump.
const longestFrame = 100 * time.Millisecond

// learnTime is how much of a frame goes into what there is to say of the
// pattern.
const learnTime = 5 * time.Millisecond

func run(page *host.Page) error {
	faces, err := face.New()
	if err != nil {
		return err
	}
	f := page.Frame()
	desk, problem, known := begin(page, f)
	s := desk.Session
	a := &app{page: page, desk: desk, bench: bench.New(s, words.Said, faces, page), screen: paint.NewScreen(faces), last: time.Now(), own: map[string]shown{}}
	s.Playing = !f.Still
	if !known && !f.StageOnly {
		a.bench.ShowHint(a.now())
	}
	a.problemAtStart, a.stageOnly = problem, f.StageOnly
	page.OnChange, page.OnTake = a.keep, a.takeCompared
	functions := a.functions()
	maps.Copy(functions, a.practising())
	page.Serve(functions)
	a.resize()

	ebiten.SetFPSMode(ebiten.FPSModeVsyncOffMinimum)
	ebiten.SetTPS(ebiten.SyncWithFPS)
	ebiten.SetScreenClearedEveryFrame(false)
	ebiten.ScheduleFrame()
	if err := ebiten.RunGameWithOptions(a, &ebiten.RunGameOptions{InitUnfocused: true, DisableHiDPI: false}); err != nil {
		return fmt.Errorf("failed to run the bench: %w", err)
	}
	return nil
}

// now returns the time in milliseconds on the clock that messages go by.
func (a *app) now() float64 { return float64(time.Now().UnixMicro()) / 1000 }

// resize takes over the room and the palette that the page has.
func (a *app) resize() {
	f := a.page.Frame()
	a.bench.SetFrame(bench.Frame{W: f.W, H: f.H, Top: f.Top, Right: f.Right, Bottom: f.Bottom, Left: f.Left, Text: f.Text, StageOnly: f.StageOnly, Line: f.Line, Practice: f.Practice, Beside: f.Beside})
	a.bench.SetTheme(&theme.Day)
	if f.Night {
		a.bench.SetTheme(&theme.Night)
	}
}

// Update takes what has happened since the last frame.
func (a *app) Update() error {
	t := time.Now()
	step := min(t.Sub(a.last), longestFrame)
	a.last = t
	a.events = a.page.Pointers(a.events[:0])
	a.bench.Pointers(a.events, a.now())
	moving := a.bench.Step(step.Seconds(), a.now())
	learning := true
	for learning && time.Since(t) < learnTime {
		learning = a.bench.Learn()
	}
	a.list = a.bench.Draw()
	a.showTwins(t, moving)
	a.page.ShowTitle(a.bench.Session.Pattern().Title)
	if moving || learning {
		ebiten.ScheduleFrame()
	} else if at, ok := a.bench.NextChange(); ok {
		a.page.WakeAfter(at - a.now() + 1)
	}
	return nil
}

// twinPause is how long the playhead's twin may lag while the pattern plays: a
// screen reader has no use for sixty of it a second.
const twinPause = 500 * time.Millisecond

func (a *app) showTwins(t time.Time, moving bool) {
	if n := a.bench.Arranged(); n != a.arranged {
		a.arranged = n
		a.page.ShowTwins(a.bench.Controls(), a.bench.Zoom())
	} else if !moving || t.Sub(a.twinsAt) >= twinPause {
		if c, ok := a.bench.Playhead(); ok {
			a.page.MoveTwin(c)
		}
	} else {
		return
	}
	a.twinsAt = t
}

// Draw is given a picture that the engine would copy to the screen. It is but a
// pixel, changed to say that there is something new: all is painted straight on
// the screen.
func (a *app) Draw(pixel *ebiten.Image) { pixel.Fill(color.White) }

// DrawFinalScreen paints the list that Update has made.
func (a *app) DrawFinalScreen(screen ebiten.FinalScreen, _ *ebiten.Image, _ ebiten.GeoM) {
	if a.list == nil {
		return
	}
	density := ebiten.Monitor().DeviceScaleFactor()
	scale := min(density, mostScale)
	a.screen.Paint(screen, a.list, scale*a.bench.Zoom(), density/scale)
	a.drawn++
	if !a.ready {
		a.ready = true
		a.page.Ready()
		a.tell(a.problemAtStart)
	}
}

// Layout gives the picture that Draw gets a single pixel.
func (a *app) Layout(int, int) (int, int) { return 1, 1 }
