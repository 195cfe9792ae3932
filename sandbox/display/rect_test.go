package display

import "testing"

func TestRectCuts(t *testing.T) {
	r := Rect{X: 10, Y: 20, W: 100, H: 60}
	for _, tt := range []struct {
		name       string
		cut        func(float64) (Rect, Rect)
		by         float64
		part, rest Rect
	}{
		{"CutTop", r.CutTop, 15, Rect{10, 20, 100, 15}, Rect{10, 35, 100, 45}},
		{"CutBottom", r.CutBottom, 15, Rect{10, 65, 100, 15}, Rect{10, 20, 100, 45}},
		{"CutLeft", r.CutLeft, 30, Rect{10, 20, 30, 60}, Rect{40, 20, 70, 60}},
		{"CutRight", r.CutRight, 30, Rect{80, 20, 30, 60}, Rect{10, 20, 70, 60}},
		{"CutTop", r.CutTop, 0, Rect{10, 20, 100, 0}, r},
		// More than there is takes all and leaves an empty rest at the far edge.
		{"CutTop", r.CutTop, 200, r, Rect{10, 80, 100, 0}},
		{"CutBottom", r.CutBottom, 200, r, Rect{10, 20, 100, 0}},
		{"CutLeft", r.CutLeft, 200, r, Rect{110, 20, 0, 60}},
		{"CutRight", r.CutRight, 200, r, Rect{10, 20, 0, 60}},
	} {
		if part, rest := tt.cut(tt.by); part != tt.part || rest != tt.rest {
			t.Errorf("%v.%s(%v) = %v, %v, want %v, %v", r, tt.name, tt.by, part, rest, tt.part, tt.rest)
		}
	}
}

func TestRectAtLeast(t *testing.T) {
	for _, tt := range []struct {
		r    Rect
		w, h float64
		want Rect
	}{
		{Rect{0, 0, 50, 50}, 44, 44, Rect{0, 0, 50, 50}},
		{Rect{10, 10, 20, 50}, 44, 44, Rect{-2, 10, 44, 50}},
		{Rect{10, 10, 50, 20}, 44, 44, Rect{10, -2, 50, 44}},
		{Rect{10, 10, 0, 0}, 44, 44, Rect{-12, -12, 44, 44}},
		{Rect{0, 0, 44, 44}, 44, 44, Rect{0, 0, 44, 44}},
	} {
		got := tt.r.AtLeast(tt.w, tt.h)
		if got != tt.want {
			t.Errorf("%v.AtLeast(%v, %v) = %v, want %v", tt.r, tt.w, tt.h, got, tt.want)
		}
		if got.Centre() != tt.r.Centre() {
			t.Errorf("%v.AtLeast(%v, %v).Centre() = %v, want %v", tt.r, tt.w, tt.h, got.Centre(), tt.r.Centre())
		}
	}
}

func TestRectContains(t *testing.T) {
	r := Rect{X: 10, Y: 20, W: 30, H: 40}
	for _, tt := range []struct {
		p    Pt
		want bool
	}{
		{Pt{10, 20}, true}, // the left and upper edges belong to it
		{Pt{39.999, 59.999}, true},
		{Pt{40, 30}, false}, // the right and lower ones to its neighbours
		{Pt{20, 60}, false},
		{Pt{9.999, 30}, false},
		{Pt{20, 19.999}, false},
		{r.Centre(), true},
	} {
		if got := r.Contains(tt.p); got != tt.want {
			t.Errorf("%v.Contains(%v) = %v, want %v", r, tt.p, got, tt.want)
		}
	}
	// Halves of a cut share no place and lose none.
	left, right := r.CutLeft(12.5)
	for x := 9.0; x < 42; x += 0.25 {
		p := Pt{x, 30}
		if n := count(left.Contains(p), right.Contains(p)); n != count(r.Contains(p)) {
			t.Errorf("halves of %v that contain %v = %d, want %d", r, p, n, count(r.Contains(p)))
		}
	}
}

func count(held ...bool) int {
	n := 0
	for _, h := range held {
		if h {
			n++
		}
	}
	return n
}

func TestRectInset(t *testing.T) {
	r := Rect{X: 1, Y: 2, W: 30, H: 40}
	if got, want := r.Inset(3), (Rect{4, 5, 24, 34}); got != want {
		t.Errorf("%v.Inset(3) = %v, want %v", r, got, want)
	}
	if got, want := r.Inset(-2), (Rect{-1, 0, 34, 44}); got != want {
		t.Errorf("%v.Inset(-2) = %v, want %v", r, got, want)
	}
}

func TestPt(t *testing.T) {
	p, q := Pt{3, 4}, Pt{1, -2}
	if got := p.Len(); got != 5 { // the 3-4-5 triangle
		t.Errorf("%v.Len() = %v, want 5", p, got)
	}
	if got, want := p.Add(q), (Pt{4, 2}); got != want {
		t.Errorf("%v.Add(%v) = %v, want %v", p, q, got, want)
	}
	if got, want := p.Sub(q), (Pt{2, 6}); got != want {
		t.Errorf("%v.Sub(%v) = %v, want %v", p, q, got, want)
	}
	if got, want := p.Scale(-2), (Pt{-6, -8}); got != want {
		t.Errorf("%v.Scale(-2) = %v, want %v", p, got, want)
	}
}
