package paint

import (
	"image"
	"image/color"
	"math"
	"testing"

	"whorlbench/sandbox/display"
)

// shelfCheck takes what an atlas uploads and looks after its places.
type shelfCheck struct {
	t    *testing.T
	used []bool
}

func newShelfCheck(t *testing.T) *shelfCheck {
	return &shelfCheck{t, make([]bool, AtlasSize*AtlasSize)}
}

func (s *shelfCheck) take(up Upload) {
	s.t.Helper()
	if !up.In.In(image.Rect(0, 0, AtlasSize, AtlasSize)) {
		s.t.Fatalf("letter at %v, want it in the atlas", up.In)
	}
	if len(up.Pix) != 4*up.In.Dx()*up.In.Dy() {
		s.t.Fatalf("letter at %v has %d bytes, want %d", up.In, len(up.Pix), 4*up.In.Dx()*up.In.Dy())
	}
	for y := up.In.Min.Y; y < up.In.Max.Y; y++ {
		for x := up.In.Min.X; x < up.In.Max.X; x++ {
			if s.used[y*AtlasSize+x] {
				s.t.Fatalf("letter at %v lies over another at %d, %d", up.In, x, y)
			}
			s.used[y*AtlasSize+x] = true
		}
	}
}

const letters = "AbcdefgjlmpqstWXYz0123456789−½×·…°,."

func TestAtlasFillsAndClears(t *testing.T) {
	a := newMesh(t).atlas
	check := newShelfCheck(t)
	placed := 0
	fill := func() {
		for size := 8.0; !a.Full; size += 1.0 / 4 {
			for _, r := range letters {
				for sub := 0.0; sub < 1; sub += 0.25 {
					g, ok := a.Glyph(r, int(size)%2 == 0, size, sub)
					if ok && (!g.In.In(image.Rect(0, 0, AtlasSize, AtlasSize)) || g.In.Empty()) {
						t.Fatalf("Glyph(%q, %v).In = %v, want a place in the atlas", r, size, g.In)
					}
					if ok {
						placed++
					}
				}
			}
			if size > 200 {
				t.Fatal("the atlas never says that it is full")
			}
		}
		for _, up := range a.Fresh {
			check.take(up)
		}
	}
	fill()
	share := func() float64 {
		n := 0
		for _, u := range check.used {
			if u {
				n++
			}
		}
		return float64(n) / float64(len(check.used))
	}
	// Each size asks for rows a little higher than the last, so much is lost.
	if got := share(); got < 0.25 {
		t.Errorf("share in use when full = %.2f, want at least a quarter", got)
	}
	before := placed
	if g, ok := a.Glyph('A', true, 8, 0); !ok || g.In.Empty() {
		t.Error("a full atlas has forgotten the letters that it holds")
	}

	a.Clear()
	if a.Full {
		t.Error("Full after Clear = true, want false")
	}
	if len(a.Fresh) != 1 || a.Fresh[0].In != image.Rect(0, 0, whiteSide, whiteSide) {
		t.Errorf("Fresh after Clear = %d uploads, want the white spot alone", len(a.Fresh))
	}
	check, placed = newShelfCheck(t), 0
	fill()
	if placed != before {
		t.Errorf("letters placed after Clear = %d, want %d as at first", placed, before)
	}
}

func TestAtlasKeeps(t *testing.T) {
	a := newMesh(t).atlas
	g, ok := a.Glyph('q', false, 28, 0.3)
	n := len(a.Fresh)
	if !ok || n != 2 {
		t.Fatalf("Glyph: ok %v, %d uploads, want the white spot and one letter", ok, n)
	}
	if again, _ := a.Glyph('q', false, 28, 0.3); again != g || len(a.Fresh) != n {
		t.Errorf("Glyph again = %v with %d uploads, want %v with %d", again, len(a.Fresh), g, n)
	}
	if _, ok := a.Glyph(' ', false, 28, 0); ok || len(a.Fresh) != n {
		t.Errorf("Glyph of a blank: ok %v, %d uploads, want none", ok, len(a.Fresh)-n)
	}
	if _, ok := a.Glyph('W', true, 4000, 0); ok || !a.Full {
		t.Errorf("Glyph larger than the atlas: ok %v, Full %v, want false, true", ok, a.Full)
	}
}

// TestAtlasWhite: what is not a letter samples the middle of a spot that is
// white all round.
func TestAtlasWhite(t *testing.T) {
	a := newMesh(t).atlas
	u, v := a.White()
	up := a.Fresh[0]
	in := image.Rect(int(u)-1, int(v)-1, int(u)+2, int(v)+2)
	if !in.In(up.In) {
		t.Errorf("White() = %v, %v, want a texel between it and the edge of %v", u, v, up.In)
	}
	for _, c := range up.Pix {
		if c != 255 {
			t.Fatalf("white spot = %v, want 255 throughout", up.Pix)
		}
	}
}

// texture is the atlas as a graphics card holds it.
func texture(a *Atlas) func(u, v float64) texel {
	pix := make([]byte, 4*AtlasSize*AtlasSize)
	for _, up := range a.Fresh {
		for i, c := range up.Pix {
			x, y := up.In.Min.X+i/4%up.In.Dx(), up.In.Min.Y+i/4/up.In.Dx()
			pix[4*(y*AtlasSize+x)+i%4] = c
		}
	}
	return func(u, v float64) (c texel) {
		at := 4 * (int(math.Floor(v))*AtlasSize + int(math.Floor(u)))
		for k := range c {
			c[k] = float64(pix[at+k]) / 255
		}
		return c
	}
}

// TestLetterPainted: a letter whose pen stands on a whole pixel is its own mask,
// pixel for pixel, in its colour.
func TestLetterPainted(t *testing.T) {
	red := color.NRGBA{R: 255, A: 255}
	for _, scale := range []float64{1, 2, 3} {
		m := built(t, scale, func(l *display.List) { l.Text(display.Pt{X: 20, Y: 40}, 24, false, red, "q") })
		const side = 200
		p := newPicture(side, side).draw(m, texture(m.atlas))
		rect, mask, _ := m.atlas.faces.Glyph('q', false, 24*scale, 0)
		rect = rect.Add(image.Pt(int(20*scale), int(40*scale)))
		for i, got := range p.pix {
			want := 0.0
			if at := image.Pt(i%side, i/side); at.In(rect) {
				want = float64(mask.AlphaAt(at.X-rect.Min.X, at.Y-rect.Min.Y).A) / 255
			}
			if math.Abs(got[3]-want) > 1e-5 || math.Abs(got[0]-want) > 1e-5 || got[1] != 0 {
				t.Fatalf("scale %v: pixel %d, %d = %v, want opacity and red %v", scale, i%side, i/side, got, want)
			}
		}
	}
}

// TestTextPainted: a line of text stands on its base line, as wide as it was
// measured, with just the ink that its letters have, at any density.
func TestTextPainted(t *testing.T) {
	const text, size = "Petals −3½", 20.0
	for _, scale := range []float64{1, 2, 3} {
		m := built(t, scale, func(l *display.List) { l.Text(display.Pt{X: 20, Y: 40}, size, true, black, text) })
		w, h := int(160*scale), int(60*scale)
		p := newPicture(w, h).draw(m, texture(m.atlas))
		ink := 0.0
		for _, r := range text {
			if _, mask, ok := m.atlas.faces.Glyph(r, true, size*scale, 0); ok {
				for _, c := range mask.Pix {
					ink += float64(c) / 255
				}
			}
		}
		if got := p.area(); math.Abs(got-ink) > 0.01*ink {
			t.Errorf("scale %v: ink of %q = %.1f, want the %.1f of its letters", scale, text, got, ink)
		}
		box := image.Rectangle{}
		for i, c := range p.pix {
			if c[3] > 0.5 {
				box = box.Union(image.Rect(i%w, i/w, i%w+1, i/w+1))
			}
		}
		width := m.atlas.faces.Width(text, size, true) * scale
		left, right, foot := float64(box.Min.X)-20*scale, float64(box.Max.X)-20*scale-width, float64(box.Max.Y)-40*scale
		if left < -1 || left > 0.15*size*scale || right > 1 || right < -0.15*size*scale || math.Abs(foot) > 1.5*scale {
			t.Errorf("scale %v: ink of %q in %v, want it on (%v, %v), %.1f wide", scale, text, box, 20*scale, 40*scale, width)
		}
	}
}
