package paint

import (
	"fmt"
	"math"
	"testing"

	"whorlbench/sandbox/display"
)

// TestCover: what is painted has the area that plane geometry gives it, in
// CSS pixels, at any density and wherever it stands between the pixels.
func TestCover(t *testing.T) {
	const x, y = 60.3, 58.85
	at := display.Pt{X: x, Y: y}
	rect := func(w, h float64) display.Rect { return display.Rect{X: x - w/2, Y: y - h/2, W: w, H: h} }
	corners := 4 - math.Pi // what rounding takes off a square of radius 1
	for _, tt := range []struct {
		name string
		want float64
		draw func(l *display.List)
	}{
		{"disc 4", math.Pi * 16, func(l *display.List) { l.Disc(at, 4, black) }},
		{"disc 6", math.Pi * 36, func(l *display.List) { l.Disc(at, 6, black) }},
		{"disc 10", math.Pi * 100, func(l *display.List) { l.Disc(at, 10, black) }},
		{"disc 50", math.Pi * 2500, func(l *display.List) { l.Disc(at, 50, black) }},
		{"ring 5, 3", math.Pi * (6.5*6.5 - 3.5*3.5), func(l *display.List) { l.Ring(at, 5, 3, black) }},
		{"ring 8.5, 4", math.Pi * (10.5*10.5 - 6.5*6.5), func(l *display.List) { l.Ring(at, 8.5, 4, black) }},
		{"ring 40, 2", math.Pi * (41*41 - 39*39), func(l *display.List) { l.Ring(at, 40, 2, black) }},
		{"square", 44 * 44, func(l *display.List) { l.FillRect(rect(44, 44), 0, black) }},
		{"rounded", 80*44 - corners*100, func(l *display.List) { l.FillRect(rect(80, 44), 10, black) }},
		{"pill", 80*24 - corners*144, func(l *display.List) { l.FillRect(rect(80, 24), 12, black) }},
		{"slider's track", 90*6 - corners*9, func(l *display.List) { l.FillRect(rect(90, 6), 3, black) }},
		{"round", math.Pi * 484, func(l *display.List) { l.FillRect(rect(44, 44), 100, black) }},
		{"hair upright", 0.4 * 50, func(l *display.List) { l.FillRect(rect(0.4, 50), 0, black) }},
		{"hair across", 50 * 0.2, func(l *display.List) { l.FillRect(rect(50, 0.2), 2, black) }},
		{"outline", 80*44 - 76*40, func(l *display.List) { l.StrokeRect(rect(80, 44), 0, 2, black) }},
		{"rounded outline", 80*44 - corners*100 - (76*40 - corners*64), func(l *display.List) { l.StrokeRect(rect(80, 44), 10, 2, black) }},
		{"round outline", math.Pi * (30*30 - 27*27), func(l *display.List) { l.StrokeRect(rect(60, 60), 30, 3, black) }},
		{"triangle", 50 * 40 / 2, func(l *display.List) {
			l.Poly(black, display.Pt{X: 20, Y: 90}, display.Pt{X: 70, Y: 90}, display.Pt{X: 45, Y: 50})
		}},
		{"triangle the other way", 50 * 40 / 2, func(l *display.List) {
			l.Poly(black, display.Pt{X: 45, Y: 50}, display.Pt{X: 70, Y: 90}, display.Pt{X: 20, Y: 90})
		}},
		{"line", 80 * 3, func(l *display.List) { l.Segment(display.Pt{X: 20, Y: 58.2}, display.Pt{X: 100, Y: 58.2}, 3, black) }},
		{"slanting line", 100 * 2.25, func(l *display.List) { l.Segment(display.Pt{X: 20, Y: 20}, display.Pt{X: 80, Y: 100}, 2.25, black) }},
		{"thin line", 100 * 0.5, func(l *display.List) { l.Segment(display.Pt{X: 20, Y: 20}, display.Pt{X: 80, Y: 100}, 0.5, black) }},
		{"corner", 2 * 60 * 4, func(l *display.List) { // the mitre fills the square that the two share
			l.Polyline(4, black, false, display.Pt{X: 20, Y: 30}, display.Pt{X: 80, Y: 30}, display.Pt{X: 80, Y: 90})
		}},
		{"closed square", 64*64 - 56*56, func(l *display.List) {
			l.Polyline(4, black, true, display.Pt{X: 30, Y: 30}, display.Pt{X: 90, Y: 30}, display.Pt{X: 90, Y: 90}, display.Pt{X: 30, Y: 90})
		}},
	} {
		for _, scale := range []float64{1, 1.5, 2, 3} {
			t.Run(fmt.Sprintf("%s@%v", tt.name, scale), func(t *testing.T) {
				m := built(t, scale, tt.draw)
				side := int(120 * scale)
				got := newPicture(side, side).draw(m, nil).area() / (scale * scale)
				if math.Abs(got-tt.want) > 0.01*tt.want {
					t.Errorf("area = %.2f, want %.2f within 1%%", got, tt.want)
				}
			})
		}
	}
}

// TestCoverNothing: what has no size is not painted.
func TestCoverNothing(t *testing.T) {
	for _, tt := range []struct {
		name string
		draw func(l *display.List)
	}{
		{"no width", func(l *display.List) { l.FillRect(display.Rect{X: 10, Y: 10, W: 0, H: 6}, 3, black) }},
		{"less than none", func(l *display.List) { l.FillRect(display.Rect{X: 10, Y: 10, W: -4, H: 6}, 2, black) }},
		{"one point", func(l *display.List) { l.Polyline(3, black, false, display.Pt{X: 10, Y: 10}) }},
		{"one point, twice", func(l *display.List) { l.Segment(display.Pt{X: 10, Y: 10}, display.Pt{X: 10, Y: 10}, 3, black) }},
		{"one point, closed", func(l *display.List) { l.Polyline(3, black, true, display.Pt{X: 10, Y: 10}) }},
		{"no points", func(l *display.List) { l.BeginLine(3, black, true) }},
		{"two corners", func(l *display.List) { l.Poly(black, display.Pt{X: 1, Y: 1}, display.Pt{X: 9, Y: 9}) }},
		{"blanks", func(l *display.List) { l.Text(display.Pt{X: 5, Y: 15}, 12, false, black, "   ") }},
	} {
		m := built(t, 2, tt.draw)
		if got := newPicture(60, 60).draw(m, nil).area(); got != 0 {
			t.Errorf("%s: area = %v, want 0", tt.name, got)
		}
	}
}

// TestFeather: an edge goes from clear to full within one device pixel, half
// of it on either side, whatever the density.
func TestFeather(t *testing.T) {
	for _, scale := range []float64{1, 2, 3} {
		for _, tt := range []struct {
			name string
			edge float64 // its X, in CSS pixels, ink to its right
			draw func(l *display.List)
		}{
			{"rectangle", 20, func(l *display.List) { l.FillRect(display.Rect{X: 20, Y: 10, W: 40, H: 40}, 0, black) }},
			{"rounded", 20, func(l *display.List) { l.FillRect(display.Rect{X: 20, Y: 10, W: 40, H: 40}, 8, black) }},
			{"outline", 20, func(l *display.List) { l.StrokeRect(display.Rect{X: 20, Y: 10, W: 40, H: 40}, 8, 6, black) }},
			{"line's flank", 20, func(l *display.List) { l.Segment(display.Pt{X: 25, Y: 5}, display.Pt{X: 25, Y: 55}, 10, black) }},
			{"line's end", 20, func(l *display.List) { l.Segment(display.Pt{X: 20, Y: 30}, display.Pt{X: 50, Y: 30}, 10, black) }},
		} {
			m := built(t, scale, tt.draw)
			for off := -1.5; off <= 1.5; off += 1.0 / 16 {
				got := opacity(m, tt.edge*scale+off, 30.2*scale)
				if want := min(max(off+0.5, 0), 1); math.Abs(got-want) > 0.01 {
					t.Errorf("%s@%v: opacity %v px inside the edge = %.3f, want %.3f", tt.name, scale, off, got, want)
				}
			}
		}
	}
}
