package face

import (
	"image"
	"strings"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
	"whorlbench/sandbox/words/texts"
)

func newSet(t testing.TB) *Set {
	t.Helper()
	s, err := New()
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// TestHas: every letter that the program itself writes on the canvas can be
// shown in both weights. What a person types may hold others.
func TestHas(t *testing.T) {
	s := newSet(t)
	drawn := map[string]string{
		"digits":        "0123456789",
		"number signs":  "−½¼×°…·./-",
		"capital begun": "ABCDEFGHIJKLMNOPQRSTUVWXYZ",
	}
	n := 0
	collect := func(path, text string) {
		drawn[path] += text
		n++
	}
	for _, w := range []*words.Table{&words.English, &german.German} {
		for part, v := range map[string]any{"Bench": w.Bench, "Figure": w.Figure, "Whole": w.Whole, "Dials": w.Dials, "Stage": w.Stage, "Strip": w.Strip, "Tryout": w.Tryout} {
			texts.Each(w.Lang+part, v, collect)
		}
	}
	if n < 200 {
		t.Errorf("only %d strings found, want what both languages have", n)
	}
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		drawn[e.ID] = p.Title + p.Notes
	}
	for path, text := range drawn {
		for _, r := range text {
			for _, bold := range []bool{false, true} {
				if r != '\n' && !s.Has(r, bold) {
					t.Errorf("%s: Has(%q, bold %v) = false, want true", path, r, bold)
				}
			}
		}
	}
}

func TestHasNot(t *testing.T) {
	s := newSet(t)
	for _, r := range "\U0001F600灯" { // no text face has all of Unicode
		if s.Has(r, false) {
			t.Errorf("Has(%q) = true, want false", r)
		}
	}
}

func TestGlyph(t *testing.T) {
	s := newSet(t)
	for _, tt := range []struct {
		r    rune
		bold bool
		size float64
		sub  float64
		ok   bool
	}{
		{'A', false, 12, 0, true},
		{'A', true, 12, 0.75, true},
		{'−', false, 40, 0.25, true},
		{'…', true, 14, 0.5, true},
		{' ', false, 12, 0, false},
		{' ', true, 40, 0.5, false},
	} {
		rect, mask, ok := s.Glyph(tt.r, tt.bold, tt.size, tt.sub)
		if ok != tt.ok {
			t.Errorf("Glyph(%q, %v, %v, %v) ok = %v, want %v", tt.r, tt.bold, tt.size, tt.sub, ok, tt.ok)
			continue
		}
		if !ok {
			continue
		}
		if mask.Rect != image.Rect(0, 0, rect.Dx(), rect.Dy()) || len(mask.Pix) != rect.Dx()*rect.Dy() {
			t.Errorf("Glyph(%q) mask = %v with %d bytes for %v", tt.r, mask.Rect, len(mask.Pix), rect)
		}
		if cover(mask) == 0 {
			t.Errorf("Glyph(%q, %v, %v, %v) is empty", tt.r, tt.bold, tt.size, tt.sub)
		}
	}
}

// TestGlyphStands: a capital A rises from the base line to about its height
// of seven tenths of the size, and a minus sign hangs in between.
func TestGlyphStands(t *testing.T) {
	s := newSet(t)
	const size = 100
	a, _, _ := s.Glyph('A', false, size, 0)
	if a.Max.Y < -1 || a.Max.Y > 2 || a.Min.Y > -60 || a.Min.Y < -85 {
		t.Errorf("Glyph('A') = %v, want its foot at 0 and its top near −70", a)
	}
	m, _, _ := s.Glyph('−', false, size, 0)
	if m.Max.Y > -15 || m.Min.Y < -60 {
		t.Errorf("Glyph('−') = %v, want it between base line and top", m)
	}
}

// TestGlyphSub: a quarter pixel to the right shifts the middle of the ink by
// as much, and takes none away.
func TestGlyphSub(t *testing.T) {
	s := newSet(t)
	middle := func(sub float64) (x, ink float64) {
		rect, mask, _ := s.Glyph('o', false, 24, sub)
		for i, c := range mask.Pix {
			x += float64(c) * (float64(rect.Min.X+i%mask.Stride) + 0.5)
			ink += float64(c)
		}
		return x / ink, ink
	}
	x0, ink0 := middle(0)
	for _, sub := range []float64{0.25, 0.5, 0.75} {
		x, ink := middle(sub)
		if d := x - x0; d < sub-0.02 || d > sub+0.02 {
			t.Errorf("Glyph('o', sub %v) shifts its ink by %.3f, want %v", sub, d, sub)
		}
		if ink < 0.99*ink0 || ink > 1.01*ink0 {
			t.Errorf("Glyph('o', sub %v) has ink %v, want %v", sub, ink, ink0)
		}
	}
}

func TestGlyphBold(t *testing.T) {
	s := newSet(t)
	for _, r := range "Lo8" {
		_, plain, _ := s.Glyph(r, false, 40, 0)
		_, bold, _ := s.Glyph(r, true, 40, 0)
		if cover(bold) <= cover(plain) {
			t.Errorf("Glyph(%q) ink bold = %d, want more than the plain %d", r, cover(bold), cover(plain))
		}
	}
}

// TestGlyphOwns: the mask of one letter outlives the next.
func TestGlyphOwns(t *testing.T) {
	s := newSet(t)
	_, a, _ := s.Glyph('A', false, 30, 0)
	before := cover(a)
	for _, r := range strings.Repeat("WMQ", 3) {
		s.Glyph(r, false, 30, 0)
	}
	if got := cover(a); got != before {
		t.Errorf("ink of 'A' after other letters = %d, want %d", got, before)
	}
}

func cover(m *image.Alpha) int {
	n := 0
	for _, c := range m.Pix {
		n += int(c)
	}
	return n
}
