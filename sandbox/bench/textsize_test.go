package bench_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/widget"
)

// sizes of text that a person may have set, as multiples of the usual.
var textSizes = []float64{1, 1.5, 2}

func larger(f bench.Frame, text float64) bench.Frame {
	f.Text = text
	return f
}

// lasting are the controls that stay however large the text is.
var lasting = []string{"play", "step-back", "step-on", "speed", "mirror", "undo", "redo", "playhead", "piece-0-0",
	"cut", "rejoin", "there-and-back", "flip", "repeat", "delete", "prop", "prop-type", "prop-swap"}

func TestLargeTextFitsEveryScreen(t *testing.T) { inBothLanguages(t, largeTextFitsEveryScreen) }

func largeTextFitsEveryScreen(t *testing.T) {
	for _, f := range frames {
		for _, id := range []string{"half-moon", twoHands} {
			for _, text := range textSizes {
				t.Run(fmt.Sprintf("%vx%v %s %v", f.W, f.H, id, text), func(t *testing.T) {
					r := newRig(t, larger(f, text), id)
					z := r.b.Zoom()
					room := display.Rect{X: f.Left / z, Y: f.Top / z, W: (f.W - f.Left - f.Right) / z, H: (f.H - f.Top - f.Bottom) / z}
					cs := r.b.Controls()
					for i, c := range cs {
						if c.Twin {
							continue
						}
						if c.Kind != widget.Edge && !within(c.Rect, room) {
							t.Errorf("%s stands at %v, outside %v", c.ID, c.Rect, room)
						}
						if h := c.Hit(); c.Kind != widget.Piece && c.Kind != widget.Edge && (h.W < 44 || h.H < 44) {
							t.Errorf("%s is touched in %v, want at least 44 by 44", c.ID, h)
						}
						for _, d := range cs[i+1:] {
							if overlap(c.Rect, d.Rect) && !d.Twin && d.Kind != widget.Edge && c.Kind != widget.Edge {
								t.Errorf("%s %v lies over %s %v", c.ID, c.Rect, d.ID, d.Rect)
							}
						}
					}
					for _, id := range lasting {
						if !slices.ContainsFunc(cs, func(c widget.Control) bool { return c.ID == id }) {
							t.Errorf("%s has no place", id)
						}
					}
				})
			}
		}
	}
}

func within(in, out display.Rect) bool {
	const tol = 0.01
	return in.X > out.X-tol && in.Y > out.Y-tol && in.X+in.W < out.X+out.W+tol && in.Y+in.H < out.Y+out.H+tol
}

// written returns where a line of text is, from its capitals' top to what
// hangs below its base line, as Go's fonts have them (0.72 and 0.21 of the size).
func written(s *face.Set, m display.Mark) display.Rect {
	return display.Rect{X: m.At.X, Y: m.At.Y - 0.72*m.Size, W: s.Width(m.Text, m.Size, m.Bold), H: 0.93 * m.Size}
}

// No line of text lies over another or leaves the screen, nor does one leave
// the button on which it stands.
func TestLargeTextIsNotCut(t *testing.T) { inBothLanguages(t, largeTextIsNotCut) }

func largeTextIsNotCut(t *testing.T) {
	faces, err := face.New()
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range frames {
		for _, id := range []string{"half-moon", twoHands, "bump-at-the-quay"} {
			for _, text := range textSizes {
				t.Run(fmt.Sprintf("%vx%v %s %v", f.W, f.H, id, text), func(t *testing.T) {
					r := newRig(t, larger(f, text), id)
					r.b.ShowHint(0)
					l := r.b.Draw()
					z := r.b.Zoom()
					screen := display.Rect{W: f.W / z, H: f.H / z}
					var lines []display.Mark
					for _, m := range l.Marks {
						if m.Kind == display.Text {
							lines = append(lines, m)
						}
					}
					if len(lines) < 15 {
						t.Fatalf("only %d lines of text are written", len(lines))
					}
					for i, m := range lines {
						at := written(faces, m)
						if !within(at, screen) {
							t.Errorf("%q leaves the screen: %v", m.Text, at)
						}
						for _, n := range lines[i+1:] {
							if overlap(at.Inset(1), written(faces, n).Inset(1)) && !short(m.Text) && !short(n.Text) {
								t.Errorf("%q %v lies over %q %v", m.Text, at, n.Text, written(faces, n))
							}
						}
						for _, c := range r.b.Controls() {
							button := c.Kind == widget.Button || c.Kind == widget.Toggle
							if button && c.Rect.Contains(m.At) && !within(at, c.Rect) {
								t.Errorf("%q %v leaves %s %v", m.Text, at, c.ID, c.Rect)
							}
						}
					}
				})
			}
		}
	}
}

// short texts are the hands' letters, which go where the hands go.
func short(s string) bool { return len([]rune(s)) < 2 }

// Large text is larger: every line at least as large as usual, and the words
// that fit are twice as large.
func TestTextGrows(t *testing.T) {
	for _, f := range frames {
		usual := linesOf(newRig(t, f, twoHands))
		large := linesOf(newRig(t, larger(f, 2), twoHands))
		for text := range large { // grown, but not until it is cut
			whole, cut := strings.CutSuffix(text, "…")
			if strings.Contains(pattern(t, twoHands).Notes, whole) {
				continue // they say that they go on; their dialog has them all
			}
			for was := range usual {
				if cut && strings.HasPrefix(was, whole) && !strings.HasSuffix(was, "…") {
					t.Errorf("%vx%v: %q is cut to %q", f.W, f.H, was, text)
				}
			}
		}
		grown, all := 0, 0
		for text, size := range large {
			was, ok := usual[text]
			if !ok || strings.HasSuffix(text, "…") {
				continue
			}
			all++
			if size < was-0.01 {
				t.Errorf("%vx%v: %q is written at %v, smaller than the usual %v", f.W, f.H, text, size, was)
			}
			if size >= 1.3*was {
				grown++
			}
		}
		want := all / 2
		if f.W > f.H && f.H < 400 { // lying on its side, a phone has no height to give
			want = all / 10
		}
		if all < 10 || grown < want {
			t.Errorf("%vx%v: of %d lines %d have grown by a third or more, want %d of them", f.W, f.H, all, grown, want)
		}
	}
}

func linesOf(r *rig) map[string]float64 {
	out := map[string]float64{}
	for _, m := range r.b.Draw().Marks {
		if m.Kind == display.Text {
			out[m.Text] = m.Size
		}
	}
	return out
}

// On a phone upright the stage keeps a place even beside the largest text.
func TestLargeTextLeavesAStage(t *testing.T) {
	for _, f := range frames {
		if f.W > f.H {
			continue
		}
		r := newRig(t, larger(f, 2), twoHands)
		top := f.H
		for _, c := range r.b.Controls() {
			if c.ID == "play" {
				top = c.Rect.Y
			}
		}
		if got := top - f.Top; got < 150 {
			t.Errorf("%vx%v: %v px are left above the transport, want at least 150", f.W, f.H, got)
		}
	}
}
