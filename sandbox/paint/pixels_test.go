package paint

import (
	"image"
	"image/color"
	"math"
	"testing"

	"whorlbench/engine/chance"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
)

func newPixels(t testing.TB) *Pixels {
	t.Helper()
	faces, err := face.New()
	if err != nil {
		t.Fatal(err)
	}
	return NewPixels(faces)
}

// painted is what draw puts on a list, in memory.
func painted(t testing.TB, w, h int, back color.NRGBA, scale float64, draw func(l *display.List)) *image.RGBA {
	t.Helper()
	var l display.List
	l.Reset(back)
	draw(&l)
	dst := image.NewRGBA(image.Rect(0, 0, w, h))
	newPixels(t).Paint(dst, &l, scale)
	return dst
}

// cardLimit is how far, in 255ths, a pixel in memory may be from what a
// graphics card makes of the same triangles: a rounding for each layer that
// lies on it, and where an edge runs through a pixel's very middle the 256th
// of a pixel to which corners are rounded.
const cardLimit = 3

// TestPixelsAsCard: what is painted in memory is what picture, which goes by
// the rules of graphics cards in exact arithmetic, has of the same mesh.
func TestPixelsAsCard(t *testing.T) {
	r := chance.New(t)
	ink := func() color.NRGBA {
		return color.NRGBA{uint8(r.IntN(256)), uint8(r.IntN(256)), uint8(r.IntN(256)), uint8(64 + r.IntN(192))}
	}
	at := func() display.Pt { return display.Pt{X: 130*r.Float64() - 5, Y: 130*r.Float64() - 5} }
	for round := range 20 {
		scale := []float64{1, 1.5, 2}[round%3]
		side := int(120 * scale)
		draw := func(l *display.List) {
			l.Disc(at(), 3+10*r.Float64(), ink())
			l.Ring(at(), 8+10*r.Float64(), 3, ink())
			l.FillRect(display.Rect{X: at().X, Y: at().Y, W: 30, H: 20}, 5, ink())
			l.StrokeRect(display.Rect{X: at().X, Y: at().Y, W: 40, H: 30}, 6, 2, ink())
			l.Segment(at(), at(), 2.25, ink())
			l.BeginLine(3, ink(), true)
			for range 8 {
				l.To(at(), r.Float32())
			}
		}
		var l display.List
		draw(&l)
		m := newMesh(t)
		m.Build(&l, scale)
		want := newPicture(side, side).draw(m, nil)
		got := image.NewRGBA(image.Rect(0, 0, side, side))
		newPixels(t).Paint(got, &l, scale)
		off := 0
		for i, px := range want.pix {
			for k := range px {
				if d := math.Abs(float64(got.Pix[4*i+k]) - 255*px[k]); d > cardLimit {
					off++
				}
			}
		}
		// A few pixels' middles lie within the rounding of an edge.
		if most := len(got.Pix) / 2000; off > most {
			t.Errorf("round %d: %d of %d values differ by more than %d, want at most %d", round, off, len(got.Pix), cardLimit, most)
		}
	}
}

// TestPixelsText: letters stand where they stand on the screen.
func TestPixelsText(t *testing.T) {
	faces, err := face.New()
	if err != nil {
		t.Fatal(err)
	}
	got := painted(t, 60, 40, color.NRGBA{255, 255, 255, 255}, 1, func(l *display.List) {
		l.Text(display.Pt{X: 5, Y: 30}, 24, true, black, "L")
	})
	rect, mask, ok := faces.Glyph('L', true, 24, 0)
	if !ok {
		t.Fatal("no letter")
	}
	for y := range 40 {
		for x := range 60 {
			want := 255
			if p := (image.Point{x - 5, y - 30}); p.In(rect) {
				want -= int(mask.AlphaAt(p.X-rect.Min.X, p.Y-rect.Min.Y).A)
			}
			if g := int(got.RGBAAt(x, y).R); g > want+1 || want > g+1 {
				t.Fatalf("pixel %d, %d = %d, want %d", x, y, g, want)
			}
		}
	}
}

// TestPixelsManyLetters: a picture with more large letters than the texture
// begins with has them all, first and last.
func TestPixelsManyLetters(t *testing.T) {
	const size, scale = 50.0, 5.0
	got := painted(t, 3600, 1000, color.NRGBA{255, 255, 255, 255}, scale, func(l *display.List) {
		for row := range 4 {
			l.Text(display.Pt{X: 4.3 * float64(row), Y: 45 * float64(row+1)}, size, row%2 == 0, black, "ABCDEFGHJKMNPQRSTUV"[4*row:4*row+6])
		}
	})
	for row := range 4 {
		dark := 0
		for x := range 3600 {
			if got.RGBAAt(x, int(scale*(45*float64(row+1)-15))).R < 128 {
				dark++
			}
		}
		if dark < 100 {
			t.Errorf("row %d has %d dark pixels across, want its letters", row, dark)
		}
	}
}

// TestPixelsClear: on a ground that can be seen through, ink has its own
// opacity, multiplied in.
func TestPixelsClear(t *testing.T) {
	got := painted(t, 40, 40, color.NRGBA{}, 1, func(l *display.List) {
		l.FillRect(display.Rect{X: 10, Y: 10, W: 20, H: 20}, 0, color.NRGBA{200, 100, 0, 128})
	})
	for _, tt := range []struct {
		x, y int
		want color.RGBA
	}{{2, 2, color.RGBA{}}, {20, 20, color.RGBA{100, 50, 0, 128}}} {
		if g := got.RGBAAt(tt.x, tt.y); g != tt.want {
			t.Errorf("pixel %d, %d = %v, want %v", tt.x, tt.y, g, tt.want)
		}
	}
}
