package grip

import (
	"math"
	"slices"
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

func ev(id int, phase widget.Phase, x, y, time float64) widget.Pointer {
	return widget.Pointer{ID: id, Phase: phase, At: display.Pt{X: x, Y: y}, Time: time}
}

const (
	down   = widget.Down
	move   = widget.Move
	up     = widget.Up
	cancel = widget.Cancel
)

func TestActs(t *testing.T) {
	for _, tt := range []struct {
		name   string
		events []widget.Pointer
		want   []Act
	}{
		{"a tap", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, up, 10, 10, 40)}, []Act{Tap}},
		{"a long tap", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, up, 10, 10, 2000)}, []Act{Tap}},
		{"a trembling tap", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, move, 15, 14, 20), ev(1, up, 12, 10, 40)}, []Act{Tap}},
		{"a double tap", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, up, 10, 10, 40), ev(2, down, 14, 6, 150), ev(2, up, 14, 6, 200)}, []Act{Tap, DoubleTap}},
		{"three taps", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, up, 10, 10, 40), ev(1, down, 10, 10, 150), ev(1, up, 10, 10, 200),
			ev(1, down, 10, 10, 300), ev(1, up, 10, 10, 340)}, []Act{Tap, DoubleTap, Tap}},
		{"two slow taps", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, up, 10, 10, 40), ev(1, down, 10, 10, 500), ev(1, up, 10, 10, 540)}, []Act{Tap, Tap}},
		{"two taps apart", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, up, 10, 10, 40), ev(1, down, 60, 10, 100), ev(1, up, 60, 10, 140)}, []Act{Tap, Tap}},
		{"a tap, then a drag", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, up, 10, 10, 40), ev(1, down, 10, 10, 100), ev(1, up, 60, 10, 140)},
			[]Act{Tap, Take, Carry, Drop}},
		{"a drag", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, move, 30, 10, 8), ev(1, move, 50, 10, 16), ev(1, up, 50, 10, 20)},
			[]Act{Take, Carry, Carry, Drop}},
		{"a drag that comes back", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, move, 30, 10, 8), ev(1, up, 10, 10, 20)}, []Act{Take, Carry, Carry, Drop}},
		{"a drag taken away", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, move, 30, 10, 8), ev(1, cancel, 0, 0, 20)}, []Act{Take, Carry, PutBack}},
		{"a tap taken away", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, cancel, 10, 10, 20)}, nil},
		{"a drag whose end is lost", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, move, 30, 10, 8), ev(1, down, 90, 90, 99), ev(1, up, 90, 90, 120)},
			[]Act{Take, Carry, PutBack, Tap}},
		{"a pinch", []widget.Pointer{ev(1, down, 10, 10, 0), ev(2, down, 50, 10, 5), ev(2, move, 90, 10, 10), ev(1, up, 10, 10, 20), ev(2, move, 200, 10, 25), ev(2, up, 200, 10, 30)},
			[]Act{Pinch}},
		{"a drag that becomes a pinch", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, move, 30, 10, 3), ev(2, down, 50, 10, 5), ev(2, move, 90, 10, 10)},
			[]Act{Take, Carry, PutBack, Pinch}},
		{"two fingers that rest", []widget.Pointer{ev(1, down, 10, 10, 0), ev(2, down, 50, 10, 5), ev(1, up, 10, 10, 10), ev(2, up, 50, 10, 12)}, nil},
		{"a tap, then two fingers, then a tap", []widget.Pointer{ev(1, down, 10, 10, 0), ev(1, up, 10, 10, 10), ev(1, down, 10, 10, 20), ev(2, down, 50, 10, 25),
			ev(1, up, 10, 10, 30), ev(2, up, 50, 10, 32), ev(1, down, 10, 10, 50), ev(1, up, 10, 10, 60)}, []Act{Tap, Tap}},
		{"a third finger", []widget.Pointer{ev(1, down, 10, 10, 0), ev(2, down, 50, 10, 5), ev(3, down, 90, 90, 6), ev(3, move, 10, 90, 7), ev(3, up, 10, 90, 8)}, nil},
		{"a finger from elsewhere", []widget.Pointer{ev(9, move, 10, 10, 0), ev(9, up, 10, 10, 5)}, nil},
	} {
		var m Machine
		var got []Act
		for _, e := range tt.events {
			for _, g := range m.Handle(nil, e) {
				got = append(got, g.Act)
			}
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: acts = %v, want %v", tt.name, got, tt.want)
		}
	}
}

// A pinch's steps together give what the fingers did: the middle from (30, 10)
// to (60, 30), and the spread from 40 to 80.
func TestPinchAddsUp(t *testing.T) {
	var m Machine
	m.Handle(nil, ev(1, down, 10, 10, 0))
	m.Handle(nil, ev(2, down, 50, 10, 1))
	scale, moved := 1.0, display.Pt{}
	for _, e := range []widget.Pointer{ev(2, move, 90, 15, 2), ev(1, move, 15, 20, 3), ev(2, move, 100, 30, 4), ev(1, up, 20, 30, 5)} {
		for _, g := range m.Handle(nil, e) {
			scale *= g.Scale
			moved = moved.Add(g.At.Sub(g.From))
		}
	}
	if math.Abs(scale-2) > 1e-12 || moved.Sub(display.Pt{X: 30, Y: 20}).Len() > 1e-12 {
		t.Errorf("the pinch scales by %v and moves by %v, want 2 and (30, 20)", scale, moved)
	}
	if !m.Holds() {
		t.Error("Holds() = false with a finger down, want true")
	}
	m.Handle(nil, ev(2, up, 100, 30, 6))
	if m.Holds() {
		t.Error("Holds() = true with no finger down, want false")
	}
}

// Fingers that meet give no scale without bounds.
func TestFingersMeet(t *testing.T) {
	var m Machine
	m.Handle(nil, ev(1, down, 10, 10, 0))
	m.Handle(nil, ev(2, down, 50, 10, 1))
	for _, e := range []widget.Pointer{ev(2, move, 10, 10, 2), ev(2, move, 60, 10, 3)} {
		for _, g := range m.Handle(nil, e) {
			if !(g.Scale >= 0.4 && g.Scale <= 2.6) {
				t.Errorf("scale = %v, want it bounded", g.Scale)
			}
		}
	}
}
