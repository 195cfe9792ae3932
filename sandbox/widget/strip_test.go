package widget

import (
	"reflect"
	"testing"

	"whorlbench/sandbox/display"
)

// stripControls are two pieces with the edge where they meet, at 100, and a
// third control for the keyboard alone.
func stripControls() []Control {
	return []Control{
		{ID: "a", Kind: Piece, Rect: display.Rect{X: 0, Y: 0, W: 100, H: 46}},
		{ID: "b", Kind: Piece, Rect: display.Rect{X: 100, Y: 0, W: 100, H: 46}},
		{ID: "edge", Kind: Edge, Rect: display.Rect{X: 88, Y: 0, W: 24, H: 46}, Track: display.Rect{X: 100}},
		{ID: "twin", Kind: Edge, Twin: true, Rect: display.Rect{X: 0, Y: 0, W: 60, H: 46}},
	}
}

func TestRouterOnTheStrip(t *testing.T) {
	for _, tt := range []struct {
		name   string
		events []Pointer
		want   []Intent
	}{
		{"edge tapped", []Pointer{at(1, Down, 95, 20, 0), at(1, Move, 98, 20, 20), at(1, Up, 98, 20, 40)}, []Intent{{"edge", Press, 0}}},
		{"edge tapped slowly", []Pointer{at(1, Down, 95, 20, 0), at(1, Up, 95, 20, 900)}, []Intent{{"edge", Press, 0}}},
		{"edge dragged keeps its distance from the finger", []Pointer{at(1, Down, 95, 20, 0), at(1, Move, 125, 20, 20), at(1, Up, 145, 20, 40)},
			[]Intent{{"edge", Hold, 0}, {"edge", Carry, 130}, {"edge", Carry, 150}, {"edge", Release, 0}}},
		{"edge taken away by the system", []Pointer{at(1, Down, 95, 20, 0), at(1, Move, 125, 20, 20), at(1, Cancel, 125, 20, 40)},
			[]Intent{{"edge", Hold, 0}, {"edge", Carry, 130}, {"edge", Release, 0}}},
		{"a piece beside its edge", []Pointer{at(1, Down, 80, 20, 0), at(1, Up, 80, 20, 40)}, []Intent{{"a", Press, 0}}},
		{"what is for the twin alone takes no touch", []Pointer{at(1, Down, 20, 20, 0), at(1, Up, 20, 20, 40)}, []Intent{{"a", Press, 0}}},
		{"piece pressed for long", []Pointer{at(1, Down, 20, 20, 1000), at(1, Up, 22, 20, 1450)}, []Intent{{"a", Menu, 0}}},
		{"piece pressed not quite so long", []Pointer{at(1, Down, 20, 20, 1000), at(1, Up, 22, 20, 1449)}, []Intent{{"a", Press, 0}}},
		{"piece taken away by the system after long", []Pointer{at(1, Down, 20, 20, 0), at(1, Cancel, 22, 20, 900)}, nil},
	} {
		var r Router
		var got []Intent
		for _, ev := range tt.events {
			got, _ = r.Handle(got, ev, stripControls())
		}
		if !reflect.DeepEqual(got, tt.want) {
			t.Errorf("%s: intents = %v, want %v", tt.name, got, tt.want)
		}
	}
}

func TestRouterWaited(t *testing.T) {
	var r Router
	r.Handle(nil, at(1, Down, 20, 20, 0), stripControls())
	if got, want := r.Waited(nil, "a"), []Intent{{"a", Menu, 0}}; !reflect.DeepEqual(got, want) {
		t.Errorf("Waited(a) = %v, want %v", got, want)
	}
	if got := r.Waited(nil, "a"); got != nil {
		t.Errorf("Waited(a) again = %v, want nothing", got)
	}
	if got, _ := r.Handle(nil, at(1, Up, 20, 20, 900), stripControls()); got != nil {
		t.Errorf("the end of a press that has meant something = %v, want nothing", got)
	}
	r.Handle(nil, at(2, Down, 20, 20, 0), stripControls())
	r.Handle(nil, at(2, Move, 40, 20, 10), stripControls())
	if got := r.Waited(nil, "a"); got != nil {
		t.Errorf("Waited of a carried piece = %v, want nothing", got)
	}
	if got, want := r.Drop(nil, func(id string) bool { return id == "a" }, stripControls()), []Intent{{"a", PutBack, 0}}; !reflect.DeepEqual(got, want) {
		t.Errorf("Drop() = %v, want %v", got, want)
	}
}
