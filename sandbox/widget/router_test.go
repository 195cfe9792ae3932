package widget

import (
	"reflect"
	"testing"

	"whorlbench/sandbox/display"
)

// bench is a small instrument: a slider 200 px long, a button, two pieces.
func testControls() []Control {
	return []Control{
		{ID: "speed", Kind: Slider, Rect: display.Rect{X: 0, Y: 0, W: 240, H: 44},
			Track: display.Rect{X: 20, Y: 0, W: 200, H: 44}, Min: -2, Max: 2, Step: 0.05, Catch: 0.15, Value: 1},
		{ID: "cut", Kind: Button, Rect: display.Rect{X: 300, Y: 10, W: 20, H: 20}},
		{ID: "off", Kind: Button, Disabled: true, Rect: display.Rect{X: 400, Y: 0, W: 44, H: 44}},
		{ID: "a", Kind: Piece, Rect: display.Rect{X: 0, Y: 100, W: 100, H: 44}},
		{ID: "b", Kind: Piece, Rect: display.Rect{X: 100, Y: 100, W: 100, H: 44}},
	}
}

func at(id int, p Phase, x, y, ms float64) Pointer {
	return Pointer{ID: id, Phase: p, At: display.Pt{X: x, Y: y}, Time: ms}
}

func TestRouterGestures(t *testing.T) {
	for _, tt := range []struct {
		name   string
		events []Pointer
		want   []Intent
	}{
		{"tap", []Pointer{at(1, Down, 310, 20, 0), at(1, Up, 310, 20, 40)}, []Intent{{"cut", Press, 0}}},
		{"tap shorter than any frame", []Pointer{at(1, Down, 310, 20, 0), at(1, Up, 310, 20, 0.4)}, []Intent{{"cut", Press, 0}}},
		{"tap beside a small button, within a finger", []Pointer{at(1, Down, 291, 30, 0), at(1, Up, 291, 30, 40)}, []Intent{{"cut", Press, 0}}},
		{"press that slides off", []Pointer{at(1, Down, 310, 20, 0), at(1, Move, 310, 90, 20), at(1, Up, 310, 90, 40)}, nil},
		{"press that slides off and comes back", []Pointer{at(1, Down, 310, 20, 0), at(1, Move, 310, 90, 20), at(1, Move, 310, 20, 30), at(1, Up, 310, 20, 40)}, []Intent{{"cut", Press, 0}}},
		{"press taken away by the system", []Pointer{at(1, Down, 310, 20, 0), at(1, Cancel, 310, 20, 40)}, nil},
		{"disabled", []Pointer{at(1, Down, 420, 20, 0), at(1, Up, 420, 20, 40)}, nil},
		{"nothing there", []Pointer{at(1, Down, 600, 600, 0), at(1, Up, 600, 600, 40)}, nil},
		{"knob held still", []Pointer{at(1, Down, 172, 20, 0), at(1, Move, 174, 21, 20), at(1, Up, 174, 21, 40)},
			[]Intent{{"speed", Hold, 0}, {"speed", Release, 0}}},
		{"knob dragged keeps its distance from the finger", []Pointer{at(1, Down, 172, 20, 0), at(1, Move, 147, 20, 20), at(1, Up, 147, 20, 40)},
			[]Intent{{"speed", Hold, 0}, {"speed", Set, 0.5}, {"speed", Release, 0}}},
		{"drag caught by a whole number", []Pointer{at(1, Down, 170, 20, 0), at(1, Move, 214, 20, 20), at(1, Up, 214, 20, 40)},
			[]Intent{{"speed", Hold, 0}, {"speed", Set, 2}, {"speed", Release, 0}}},
		{"drag beyond the end", []Pointer{at(1, Down, 170, 20, 0), at(1, Move, 900, 20, 20), at(1, Up, 900, 20, 40)},
			[]Intent{{"speed", Hold, 0}, {"speed", Set, 2}, {"speed", Release, 0}}},
		{"tap on the track goes to the nearest whole number", []Pointer{at(1, Down, 55, 20, 0), at(1, Up, 57, 20, 40)},
			[]Intent{{"speed", Hold, 0}, {"speed", Set, -1}, {"speed", Release, 0}}},
		{"tap that goes on as a drag", []Pointer{at(1, Down, 55, 20, 0), at(1, Move, 45, 20, 20), at(1, Up, 45, 20, 40)},
			[]Intent{{"speed", Hold, 0}, {"speed", Set, -1}, {"speed", Set, -1.5}, {"speed", Release, 0}}},
		{"double tap", []Pointer{at(1, Down, 172, 20, 0), at(1, Up, 172, 20, 60), at(1, Down, 174, 20, 200), at(1, Up, 174, 20, 260)},
			[]Intent{{"speed", Hold, 0}, {"speed", Release, 0}, {"speed", Hold, 0}, {"speed", Release, 0}, {"speed", Reset, 0}}},
		{"two slow taps", []Pointer{at(1, Down, 172, 20, 0), at(1, Up, 172, 20, 60), at(1, Down, 174, 20, 900), at(1, Up, 174, 20, 960)},
			[]Intent{{"speed", Hold, 0}, {"speed", Release, 0}, {"speed", Hold, 0}, {"speed", Release, 0}}},
		{"piece chosen", []Pointer{at(1, Down, 50, 120, 0), at(1, Move, 54, 122, 20), at(1, Up, 54, 122, 40)}, []Intent{{"a", Press, 0}}},
		{"piece carried", []Pointer{at(1, Down, 50, 120, 0), at(1, Move, 90, 120, 20), at(1, Up, 170, 120, 40)},
			[]Intent{{"a", Lift, 0}, {"a", Carry, 40}, {"a", Carry, 120}, {"a", Drop, 120}}},
		{"piece put back when the system takes the finger", []Pointer{at(1, Down, 50, 120, 0), at(1, Move, 90, 120, 20), at(1, Cancel, 90, 120, 40)},
			[]Intent{{"a", Lift, 0}, {"a", Carry, 40}, {"a", PutBack, 0}}},
		{"two fingers at once", []Pointer{at(1, Down, 170, 20, 0), at(2, Down, 310, 20, 5), at(1, Move, 120, 20, 10), at(2, Up, 310, 20, 15), at(1, Up, 120, 20, 20)},
			[]Intent{{"speed", Hold, 0}, {"speed", Set, 0}, {"cut", Press, 0}, {"speed", Release, 0}}},
		{"second finger on the same slider is left out", []Pointer{at(1, Down, 170, 20, 0), at(2, Down, 45, 20, 5), at(2, Up, 45, 20, 10), at(1, Up, 170, 20, 20)},
			[]Intent{{"speed", Hold, 0}, {"speed", Release, 0}}},
		{"an up that was lost", []Pointer{at(1, Down, 170, 20, 0), at(1, Down, 310, 20, 50), at(1, Up, 310, 20, 60)},
			[]Intent{{"speed", Hold, 0}, {"speed", Release, 0}, {"cut", Press, 0}}},
	} {
		var r Router
		var got []Intent
		for _, ev := range tt.events {
			got, _ = r.Handle(got, ev, testControls())
		}
		if !reflect.DeepEqual(got, tt.want) {
			t.Errorf("%s: intents = %v, want %v", tt.name, got, tt.want)
		}
		if held, _ := r.Grabbed("speed"); held {
			t.Errorf("%s: Grabbed(speed) = true after the last finger left", tt.name)
		}
	}
}

func TestRouterCapture(t *testing.T) {
	var r Router
	if _, got := r.Handle(nil, at(1, Down, 310, 20, 0), testControls()); !got {
		t.Error("captured = false on a button, want true: the stage must leave it alone")
	}
	if _, got := r.Handle(nil, at(2, Down, 600, 600, 0), testControls()); got {
		t.Error("captured = true beside all controls, want false")
	}
	if held, tap := r.Grabbed("cut"); !held || !tap {
		t.Errorf("Grabbed(cut) = %v, %v, want true, true", held, tap)
	}
}

func TestControlValueAt(t *testing.T) {
	c := testControls()[0]
	for _, tt := range []struct{ x, want float64 }{
		{20, -2}, {220, 2}, {0, -2}, {300, 2}, {120, 0}, {126, 0}, {127.4, 0}, {130, 0.2}, {145, 0.5}, {163, 1},
	} {
		if got := c.ValueAt(tt.x); got != tt.want {
			t.Errorf("ValueAt(%v) = %v, want %v", tt.x, got, tt.want)
		}
	}
	for _, v := range []float64{-2, -0.5, 0, 1.35, 2} {
		if got := c.ValueAt(c.At(v)); got != v {
			t.Errorf("ValueAt(At(%v)) = %v, want the same", v, got)
		}
	}
}

func TestHitIsFingerSized(t *testing.T) {
	c := testControls()[1]
	if r := c.Hit(); r.W < 44 || r.H < 44 { // WCAG 2.2, 2.5.5
		t.Errorf("Hit() = %v, want at least 44 by 44", r)
	}
}
