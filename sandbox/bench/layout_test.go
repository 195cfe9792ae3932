package bench_test

import (
	"fmt"
	"slices"
	"testing"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// twoHands is the library pattern with a lane for each hand.
const twoHands = "pier-end"

// frames are the screens that the bench must fit, between them too.
var frames = []bench.Frame{
	{W: 390, H: 844, Top: 48}, {W: 390, H: 700, Top: 48}, {W: 360, H: 640, Top: 48}, {W: 430, H: 932, Top: 48 + 59, Bottom: 34},
	{W: 844, H: 390, Top: 48, Left: 47, Right: 47, Bottom: 21}, {W: 740, H: 360, Top: 48}, {W: 768, H: 1024, Top: 48}, {W: 1024, H: 768, Top: 48},
	{W: 1440, H: 900, Top: 48}, {W: 1920, H: 1080, Top: 48}, {W: 2560, H: 1440, Top: 48},
}

// framed are those of a stage that stands alone within another page.
var framed = []bench.Frame{
	{W: 560, H: 420, StageOnly: true}, {W: 160, H: 120, StageOnly: true}, {W: 1920, H: 1080, StageOnly: true, Text: 2}, {W: 390, H: 844, Top: 59, Bottom: 34, StageOnly: true},
}

func TestControlsFitEveryScreen(t *testing.T) { inBothLanguages(t, controlsFitEveryScreen) }

func controlsFitEveryScreen(t *testing.T) {
	for _, f := range slices.Concat(frames, framed) {
		for _, id := range []string{"half-moon", twoHands} {
			t.Run(fmt.Sprintf("%vx%v %s", f.W, f.H, id), func(t *testing.T) {
				r := newRig(t, f, id)
				z := r.b.Zoom()
				room := display.Rect{X: f.Left / z, Y: f.Top / z, W: (f.W - f.Left - f.Right) / z, H: (f.H - f.Top - f.Bottom) / z}
				cs := r.b.Controls()
				for i, c := range cs {
					if c.Rect.X < room.X-0.01 || c.Rect.Y < room.Y-0.01 || c.Rect.X+c.Rect.W > room.X+room.W+0.01 || c.Rect.Y+c.Rect.H > room.Y+room.H+0.01 {
						t.Errorf("%s stands at %v, outside %v", c.ID, c.Rect, room)
					}
					if h := c.Hit(); c.Kind != widget.Piece && c.Kind != widget.Edge && (h.W < 44 || h.H < 44) {
						t.Errorf("%s is touched in %v, want at least 44 by 44", c.ID, h)
					}
					for _, d := range cs[i+1:] {
						// A seam lies over the ends of its two pieces; seam_test holds how far.
						if overlap(c.Rect, d.Rect) && (c.Kind != widget.Piece || d.Kind != widget.Edge) {
							t.Errorf("%s %v lies over %s %v", c.ID, c.Rect, d.ID, d.Rect)
						}
					}
				}
			})
		}
	}
}

func overlap(a, b display.Rect) bool {
	const tol = 0.01
	return a.X+a.W > b.X+tol && b.X+b.W > a.X+tol && a.Y+a.H > b.Y+tol && b.Y+b.H > a.Y+tol
}

func TestEveryControlIsNamed(t *testing.T) { inBothLanguages(t, everyControlIsNamed) }

func everyControlIsNamed(t *testing.T) {
	r := newRig(t, frames[0], twoHands)
	seen := map[string]bool{}
	for _, c := range r.b.Controls() {
		if c.Label == "" {
			t.Errorf("%s has no name", c.ID)
		}
		if seen[c.ID] {
			t.Errorf("%s stands twice", c.ID)
		}
		seen[c.ID] = true
	}
}

// What is drawn must stay on the screen: nothing of the display list may lie
// outside the frame.
func TestNothingIsDrawnOffTheScreen(t *testing.T) { inBothLanguages(t, nothingIsDrawnOffTheScreen) }

func nothingIsDrawnOffTheScreen(t *testing.T) {
	for _, f := range slices.Concat(frames, framed) {
		r := newRig(t, f, twoHands)
		z := r.b.Zoom()
		l := r.b.Draw()
		for _, m := range l.Marks {
			if m.Kind == display.Text && (m.At.X < 0 || m.At.X*z > f.W || m.At.Y*z > f.H) {
				t.Errorf("%vx%v: %q is written at %v", f.W, f.H, m.Text, m.At)
			}
			for _, p := range l.Of(m) {
				if p.X < -1 || p.Y < -1 || p.X*z > f.W+1 || p.Y*z > f.H+1 {
					t.Errorf("%vx%v: a mark of kind %d has a point at %v", f.W, f.H, m.Kind, p)
					break
				}
			}
		}
	}
}
