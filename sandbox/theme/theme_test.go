package theme

import (
	"image/color"
	"math"
	"testing"
)

// contrast is the ratio of WCAG 2.2, "contrast ratio" and "relative luminance".
func contrast(a, b color.NRGBA) float64 {
	lum := func(c color.NRGBA) float64 {
		ch := func(v uint8) float64 {
			x := float64(v) / 255
			if x <= 0.04045 {
				return x / 12.92
			}
			return math.Pow((x+0.055)/1.055, 2.4)
		}
		return 0.2126*ch(c.R) + 0.7152*ch(c.G) + 0.0722*ch(c.B)
	}
	hi, lo := lum(a), lum(b)
	if hi < lo {
		hi, lo = lo, hi
	}
	return (hi + 0.05) / (lo + 0.05)
}

func TestContrast(t *testing.T) {
	for _, th := range []Theme{Day, Night} {
		grounds := map[string]color.NRGBA{"ground": th.Ground, "stage": th.Stage, "panel": th.Panel}
		for _, tt := range []struct {
			name string
			c    color.NRGBA
			want float64 // WCAG 2.2, 1.4.3 text, 1.4.11 controls
		}{
			{"ink", th.Ink, 4.5}, {"muted", th.Muted, 4.5}, {"warn", th.Warn, 4.5},
			{"edge", th.Edge, 3}, {"focus", th.Focus, 3}, {"left", th.Left, 3}, {"right", th.Right, 3},
		} {
			for on, g := range grounds {
				if got := contrast(tt.c, g); got < tt.want {
					t.Errorf("night %v: contrast(%s, %s) = %.2f, want at least %v", th.Night, tt.name, on, got, tt.want)
				}
			}
		}
		for i := range th.Pieces {
			if got := contrast(th.Piece(i), th.Stage); got < 3 {
				t.Errorf("night %v: contrast(piece %d, stage) = %.2f, want at least 3", th.Night, i, got)
			}
		}
		if got := contrast(th.Ink, th.Pressed); got < 4.5 {
			t.Errorf("night %v: contrast(ink, pressed) = %.2f, want at least 4.5", th.Night, got)
		}
	}
}

func TestContrastFormula(t *testing.T) {
	// WCAG 2.2: black on white is 21:1, the greatest there is.
	if got := contrast(color.NRGBA{A: 255}, color.NRGBA{255, 255, 255, 255}); math.Abs(got-21) > 1e-9 {
		t.Errorf("contrast(black, white) = %v, want 21", got)
	}
}
