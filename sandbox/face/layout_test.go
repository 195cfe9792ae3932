package face

import (
	"math"
	"slices"
	"strings"
	"testing"
)

func TestWidth(t *testing.T) {
	s := newSet(t)
	for _, bold := range []bool{false, true} {
		if got := s.Width("", 14, bold); got != 0 {
			t.Errorf("Width of nothing = %v, want 0", got)
		}
		for _, pair := range [][2]string{{"four-petal ", "antispin"}, {"−", "½×"}, {"L", " 3/12"}} {
			a, b := s.Width(pair[0], 14, bold), s.Width(pair[1], 14, bold)
			if got := s.Width(pair[0]+pair[1], 14, bold); math.Abs(got-a-b) > 1e-9 {
				t.Errorf("Width(%q) = %v, want %v + %v", pair[0]+pair[1], got, a, b)
			}
			if got := s.Width(pair[0], 42, bold); math.Abs(got-3*a) > 1e-9 {
				t.Errorf("Width(%q, 42) = %v, want thrice the %v at 14", pair[0], got, a)
			}
		}
		for _, d := range "123456789" { // figures that change must not make their line dance
			if got, want := s.Advance(d, bold), s.Advance('0', bold); got != want {
				t.Errorf("Advance(%q) = %v, want that of 0, %v", d, got, want)
			}
		}
	}
}

// TestAdvanceHoldsInk: a letter's ink stays about within its advance, so that
// what is measured is what is seen.
func TestAdvanceHoldsInk(t *testing.T) {
	s := newSet(t)
	const size = 100
	for _, r := range "AbgLR0123456789…·−×½" {
		rect, _, ok := s.Glyph(r, false, size, 0)
		adv := s.Advance(r, false) * size
		if !ok || float64(rect.Min.X) < -0.05*size || float64(rect.Max.X) > adv+0.05*size {
			t.Errorf("Glyph(%q) = %v (ok %v), want it within its advance of %.1f", r, rect, ok, adv)
		}
	}
}

func TestFit(t *testing.T) {
	s := newSet(t)
	texts := []string{
		"", "L", "four-petal antispin flower", "Closes every round · 4 beats · 2.67 s",
		"two-petal antispin flower, cateye", "unit turn, −12.5° off the arm", "灯灯灯",
	}
	for _, text := range texts {
		for _, bold := range []bool{false, true} {
			whole := s.Width(text, 13, bold)
			for room := -5.0; room < whole+20; room += 0.5 {
				got := s.Fit(text, 13, bold, room)
				if w := s.Width(got, 13, bold); w > max(room, 0) {
					t.Fatalf("Fit(%q, room %v) = %q, %v wide", text, room, got, w)
				}
				if whole <= room {
					if got != text {
						t.Fatalf("Fit(%q, room %v) = %q, want it whole: it is %v wide", text, room, got, whole)
					}
					continue
				}
				kept, cut := strings.CutSuffix(got, "…")
				if got != "" && (!cut || !strings.HasPrefix(text, kept)) {
					t.Fatalf("Fit(%q, room %v) = %q, want a beginning and an ellipsis", text, room, got)
				}
			}
			if got := s.Fit(text, 13, bold, whole); got != text {
				t.Errorf("Fit(%q, its own width) = %q, want it whole", text, got)
			}
		}
	}
}

// TestFitKeepsMuch: no more is cut away than must be: one letter more, less
// the blanks and commas before the ellipsis, would not fit.
func TestFitKeepsMuch(t *testing.T) {
	s := newSet(t)
	const text = "linear hand path, ratio 7/3"
	for room := 20.0; room < s.Width(text, 14, false); room += 3 {
		got := s.Fit(text, 14, false, room)
		kept := strings.TrimSuffix(got, "…")
		rest := strings.TrimPrefix(text, kept)
		trimmed := strings.TrimLeft(rest, " ,·")
		more := kept + rest[:len(rest)-len(trimmed)] + trimmed[:1] + "…"
		if w := s.Width(more, 14, false); w <= room {
			t.Errorf("Fit(%q, room %v) = %q, though %q is only %v wide", text, room, got, more, w)
		}
	}
}

func TestWrap(t *testing.T) {
	s := newSet(t)
	const notes = "Four lamps come on in the corners of the square, one after another.\n" +
		"Hint: stand square to a door frame.\n\nThen turn round."
	words := strings.Fields(notes)
	widest := 0.0
	for _, w := range words {
		widest = max(widest, s.Width(w, 15, false))
	}
	for room := math.Ceil(widest); room < 700; room += 7 {
		lines := s.Wrap(notes, 15, false, room)
		for i, line := range lines {
			if w := s.Width(line, 15, false); w > room {
				t.Errorf("Wrap(room %v)[%d] = %q, %v wide", room, i, line, w)
			}
		}
		if got := strings.Fields(strings.Join(lines, " ")); !slices.Equal(got, words) {
			t.Errorf("Wrap(room %v) words = %q, want %q", room, got, words)
		}
		// No line is broken where its next word would still have had room.
		para := 0
		for i, line := range lines[:len(lines)-1] {
			next := lines[i+1]
			if line == "" || next == "" || strings.HasPrefix(next, "Hint:") {
				para++
				continue
			}
			first, _, _ := strings.Cut(next, " ")
			if s.Width(line+" "+first, 15, false) <= room {
				t.Errorf("Wrap(room %v)[%d] = %q, though %q had room too", room, i, line, first)
			}
		}
		if para != 3 { // before the hint, and either side of the blank line
			t.Errorf("Wrap(room %v) = %q, want its line ends kept", room, lines)
		}
	}
}

func TestWrapLongWord(t *testing.T) {
	s := newSet(t)
	const long = "lanternlanternlanternlantern"
	room := s.Width("lantern", 15, false) + s.Width("…", 15, false)
	lines := s.Wrap("a "+long+" b", 15, false, room)
	if want := []string{"a", "lantern…", "b"}; !slices.Equal(lines, want) {
		t.Errorf("Wrap(a long word) = %q, want %q", lines, want)
	}
	if got, want := s.Wrap("", 15, false, 100), []string{""}; !slices.Equal(got, want) {
		t.Errorf("Wrap of nothing = %q, want %q", got, want)
	}
}
