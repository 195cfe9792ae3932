// Package face measures and rasterises the bench's letters, the same in the
// browser and natively, so that layout can be tested without a window.
package face

import (
	"fmt"
	"image"
	"strings"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// Set is the bench's two weights. It is not safe for use from several
// goroutines.
type Set struct {
	fonts  [2]*sfnt.Font
	buf    sfnt.Buffer
	widths [2]map[rune]float64 // at size 1
	faces  map[faceKey]font.Face
}

type faceKey struct {
	bold bool
	size int // 64ths of a pixel
}

// measureSize is the size at which advances are read: large, so that they
// scale without rounding.
const measureSize = 1024

// New reads the fonts, which are part of the program.
func New() (*Set, error) {
	s := &Set{faces: map[faceKey]font.Face{}}
	for i, ttf := range [][]byte{goregular.TTF, gobold.TTF} {
		f, err := opentype.Parse(ttf)
		if err != nil {
			return nil, fmt.Errorf("failed to read the built-in font: %w", err)
		}
		s.fonts[i], s.widths[i] = f, map[rune]float64{}
	}
	return s, nil
}

func weight(bold bool) int {
	if bold {
		return 1
	}
	return 0
}

// Advance returns how far r moves the pen at size 1.
func (s *Set) Advance(r rune, bold bool) float64 {
	w := s.widths[weight(bold)]
	if a, ok := w[r]; ok {
		return a
	}
	f := s.fonts[weight(bold)]
	a := 0.5
	if g, err := f.GlyphIndex(&s.buf, r); err == nil {
		if adv, err := f.GlyphAdvance(&s.buf, g, fixed.I(measureSize), font.HintingNone); err == nil {
			a = float64(adv) / 64 / measureSize
		}
	}
	w[r] = a
	return a
}

// Has reports whether the font can show r.
func (s *Set) Has(r rune, bold bool) bool {
	g, err := s.fonts[weight(bold)].GlyphIndex(&s.buf, r)
	return err == nil && g != 0
}

// Width returns the width of text at a size, both in pixels.
func (s *Set) Width(text string, size float64, bold bool) float64 {
	w := 0.0
	for _, r := range text {
		w += s.Advance(r, bold)
	}
	return w * size
}

// Fit returns text, shortened with an ellipsis if it is wider than room, and
// nothing where there is not even room for the ellipsis.
func (s *Set) Fit(text string, size float64, bold bool, room float64) string {
	if s.Width(text, size, bold) <= room {
		return text
	}
	const dots = "…"
	room -= s.Width(dots, size, bold)
	if room < 0 {
		return ""
	}
	w := 0.0
	for i, r := range text {
		w += s.Advance(r, bold) * size
		if w > room {
			return strings.TrimRight(text[:i], " ,·") + dots
		}
	}
	return text
}

// Wrap breaks text into lines no wider than room at spaces; line ends in the
// text stay. A word wider than room has a line of its own.
func (s *Set) Wrap(text string, size float64, bold bool, room float64) []string {
	var lines []string
	for para := range strings.SplitSeq(text, "\n") {
		line := ""
		for _, word := range strings.Fields(para) {
			longer := line + " " + word
			if line == "" {
				longer = word
			}
			if line != "" && s.Width(longer, size, bold) > room {
				lines = append(lines, s.Fit(line, size, bold, room))
				longer = word
			}
			line = longer
		}
		lines = append(lines, s.Fit(line, size, bold, room))
	}
	return lines
}

// Glyph returns the coverage of r at a size in device pixels, with the pen at
// the fraction sub of a pixel: the rectangle is relative to the pen's whole
// pixel on the base line. ok is false where nothing is to be painted.
func (s *Set) Glyph(r rune, bold bool, size, sub float64) (rect image.Rectangle, mask *image.Alpha, ok bool) {
	key := faceKey{bold, int(size * 64)}
	f := s.faces[key]
	if f == nil {
		var err error
		f, err = opentype.NewFace(s.fonts[weight(bold)], &opentype.FaceOptions{Size: size, DPI: 72, Hinting: font.HintingNone})
		if err != nil {
			return rect, nil, false
		}
		s.faces[key] = f
	}
	dot := fixed.Point26_6{X: fixed.Int26_6(sub * 64)}
	rect, m, at, _, ok := f.Glyph(dot, r)
	if !ok || rect.Empty() {
		return rect, nil, false
	}
	src, isAlpha := m.(*image.Alpha)
	if !isAlpha {
		return rect, nil, false
	}
	out := image.NewAlpha(image.Rect(0, 0, rect.Dx(), rect.Dy()))
	for y := range rect.Dy() {
		from := src.PixOffset(at.X, at.Y+y)
		copy(out.Pix[y*out.Stride:][:rect.Dx()], src.Pix[from:from+rect.Dx()])
	}
	return rect, out, true
}
