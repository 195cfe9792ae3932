package paint

import (
	"image"
	"image/color"
	"testing"

	"whorlbench/sandbox/display"
)

// TestStillAndMoving: what stays and, over its picture, what moves is the
// whole list, pixel by pixel; where what stays is asked for again, it is seen
// alone.
func TestStillAndMoving(t *testing.T) {
	m := newMesh(t)
	var l display.List
	l.FillRect(display.Rect{X: -9, Y: -9, W: 99, H: 99}, 0, color.NRGBA{R: 90, A: 255})
	l.Disc(display.Pt{X: 20, Y: 20}, 12, black)
	l.Text(display.Pt{X: 8, Y: 24}, 14, true, display.Clear(black, 0.5), "still")
	l.Keep()
	l.Segment(display.Pt{X: 4, Y: 30}, display.Pt{X: 40, Y: 12}, 5, display.Clear(black, 0.4))
	l.Text(display.Pt{X: 6, Y: 34}, 11, false, black, "moving")
	again := display.Rect{X: 22, Y: 5, W: 20, H: 41}
	for _, scale := range []float64{1, 3} {
		side := int(48 * scale)
		m.Build(&l, scale)
		letters := texture(m.atlas)
		all := newPicture(side, side).draw(m, letters)
		m.BuildStill(&l, scale)
		still := newPicture(side, side).draw(m, letters)
		paint := func(l *display.List) *picture {
			p := newPicture(side, side)
			p.still = still
			m.BuildMoving(l, scale, image.Pt(side, side))
			return p.draw(m, letters)
		}
		twice := l
		twice.Again(again)
		twice.Disc(display.Pt{X: 30, Y: 30}, 4, display.Clear(black, 0.3))
		over, covered := paint(&l), paint(&twice)
		moved := 0
		for i := range all.pix {
			x, y := i%side, i/side
			if over.pix[i] != all.pix[i] {
				t.Fatalf("scale %v: pixel %d, %d is %v, want %v", scale, x, y, over.pix[i], all.pix[i])
			}
			if all.pix[i] != still.pix[i] {
				moved++
			}
			at := display.Pt{X: (float64(x) + 0.5) / scale, Y: (float64(y) + 0.5) / scale}
			want := all.pix[i]
			if again.Contains(at) {
				want = still.pix[i]
			}
			if at.Sub(display.Pt{X: 30, Y: 30}).Len() > 6 && covered.pix[i] != want {
				t.Fatalf("scale %v: with what stays again, pixel %d, %d is %v, want %v", scale, x, y, covered.pix[i], want)
			}
		}
		if moved < 100 {
			t.Errorf("scale %v: %d pixels moved, want a hundred for the test to mean something", scale, moved)
		}
	}
}
