package display

import (
	"image/color"
	"testing"
)

// TestKeepAndRewind: the version changes just where what stays does, and what
// moves is dropped whole.
func TestKeepAndRewind(t *testing.T) {
	ink, day, night := color.NRGBA{A: 255}, color.NRGBA{R: 250, A: 255}, color.NRGBA{R: 10, A: 255}
	var l List
	draw := func(back color.NRGBA, x float64, alpha float32) {
		l.Reset(back)
		l.Text(Pt{1, 2}, 12, false, ink, "still")
		l.BeginLine(2, ink, true)
		l.To(Pt{x, 1}, 1)
		l.To(Pt{x, 9}, alpha)
		l.Keep()
		l.Disc(Pt{x, x}, 3, ink)
		l.Segment(Pt{}, Pt{x, x}, 1, ink)
	}
	for _, tt := range []struct {
		name  string
		back  color.NRGBA
		x     float64
		alpha float32
		fresh bool
	}{
		{"first", day, 5, 1, true},
		{"the same", day, 5, 1, false},
		{"another point", day, 6, 1, true},
		{"another opacity", day, 6, 0.5, true},
		{"another ground", night, 6, 0.5, true},
		{"the same ground", night, 6, 0.5, false},
	} {
		before := l.Version
		draw(tt.back, tt.x, tt.alpha)
		if got := l.Version != before; got != tt.fresh {
			t.Errorf("%s: version changed = %v, want %v", tt.name, got, tt.fresh)
		}
		if l.Still != 2 || len(l.Marks) != 4 {
			t.Errorf("%s: %d of %d marks stay, want 2 of 4", tt.name, l.Still, len(l.Marks))
		}
		l.Rewind()
		if len(l.Marks) != 2 || len(l.Points) != 2 || len(l.Alpha) != 2 {
			t.Errorf("%s: after Rewind %d marks, %d points, %d opacities, want 2 each", tt.name, len(l.Marks), len(l.Points), len(l.Alpha))
		}
		l.Disc(Pt{}, 1, ink)
		if l.Still != 2 {
			t.Errorf("%s: what moves changed what stays", tt.name)
		}
	}
}
