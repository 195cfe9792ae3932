package host

import (
	"encoding/json"
	"fmt"
	"reflect"
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

func TestTwins(t *testing.T) {
	rect := display.Rect{X: 10, Y: 20, W: 44, H: 44}
	at := [4]float64{10, 20, 44, 44}
	for _, tt := range []struct {
		name string
		c    widget.Control
		want Twin
	}{
		{
			"button",
			widget.Control{ID: "cut", Label: "Cut at the playhead", Caption: "Cut", Rect: rect, Keys: "C", Disabled: true},
			Twin{ID: "cut", Kind: "button", Label: "Cut at the playhead", Rect: at, Keys: "C", Disabled: true},
		},
		{
			"button with a value", // a button's role has no value of its own to be read
			widget.Control{ID: "tempo", Label: "Tempo", Caption: "tempo", Text: "90", Rect: rect},
			Twin{ID: "tempo", Kind: "button", Label: "Tempo: 90", Rect: at, Text: "90"},
		},
		{
			"toggle",
			widget.Control{ID: "mirror", Kind: widget.Toggle, Label: "Mirror the view", Rect: rect, On: true},
			Twin{ID: "mirror", Kind: "toggle", Label: "Mirror the view", Rect: at, On: true},
		},
		{
			"slider",
			widget.Control{ID: "arm", Kind: widget.Slider, Label: "Arm speed", Rect: rect, Value: -1.5, Min: -4, Max: 4, Step: 0.05, Text: "−1.5 turns a cycle"},
			Twin{ID: "arm", Kind: "slider", Label: "Arm speed", Rect: at, Value: -1.5, Min: -4, Max: 4, Step: 0.05, Text: "−1.5 turns a cycle"},
		},
		{
			"ruler",
			widget.Control{ID: "playhead", Kind: widget.Ruler, Label: "Playhead", Rect: rect, Value: 1, Max: 4, Step: 1.0 / 48, Text: "beat 1 of 4"},
			Twin{ID: "playhead", Kind: "slider", Label: "Playhead", Rect: at, Value: 1, Max: 4, Step: 1.0 / 48, Text: "beat 1 of 4"},
		},
		{
			"piece",
			widget.Control{ID: "piece-1-3", Kind: widget.Piece, Label: "Left hand, piece 4 of 6: extension", Rect: rect, Group: "Pieces of the left hand", Lane: 1, Index: 3},
			Twin{ID: "piece-1-3", Kind: "piece", Label: "Left hand, piece 4 of 6: extension", Rect: at, Group: "Pieces of the left hand", Index: 3},
		},
	} {
		got := Twins([]widget.Control{tt.c}, 1)
		if len(got) != 1 || got[0] != tt.want {
			t.Errorf("%s: Twins(%+v) = %+v, want %+v", tt.name, tt.c, got, tt.want)
		}
	}
}

func TestTwinRect(t *testing.T) {
	for _, tt := range []struct {
		r    display.Rect
		zoom float64
		want [4]float64
	}{
		{display.Rect{X: 10, Y: 20, W: 30, H: 40}, 1, [4]float64{10, 20, 30, 40}},
		{display.Rect{X: 10, Y: 20, W: 30, H: 40}, 1.25, [4]float64{12.5, 25, 37.5, 50}},
		{display.Rect{X: 1.0 / 3, Y: 2.0 / 3, W: 99.96, H: 0.04}, 1, [4]float64{0.3, 0.7, 100, 0}},
		{display.Rect{X: 1.0 / 3, Y: -0.26, W: 10, H: 10}, 1.5, [4]float64{0.5, -0.4, 15, 15}},
	} {
		if got := Twins([]widget.Control{{Rect: tt.r}}, tt.zoom)[0].Rect; got != tt.want {
			t.Errorf("Twins(%v, zoom %v) rect = %v, want %v", tt.r, tt.zoom, got, tt.want)
		}
	}
}

// pieces are the controls of lanes of n pieces each, one of one lane chosen.
func pieces(lanes, n, lane, chosen int) []widget.Control {
	cs := []widget.Control{{ID: "play"}}
	for l := range lanes {
		for i := range n {
			cs = append(cs, widget.Control{
				ID: fmt.Sprintf("piece-%d-%d", l, i), Kind: widget.Piece, Lane: l, Index: i,
				On: l == lane && i == chosen,
			})
		}
	}
	return append(cs, widget.Control{ID: "prop", Kind: widget.Slider, Min: -8, Max: 8})
}

// TestTwinWindow: of many pieces those near the chosen one have twins, never
// more than some fifty a lane; other controls keep theirs, in their order.
func TestTwinWindow(t *testing.T) {
	for _, tt := range []struct {
		lanes, n, lane, chosen int
		first, last            [2]int // piece with a twin, by lane
	}{
		{1, 5, 0, 2, [2]int{0, 0}, [2]int{4, 0}},
		{1, 10_000, 0, 0, [2]int{0, 0}, [2]int{24, 0}},
		{1, 10_000, 0, 5000, [2]int{4976, 0}, [2]int{5024, 0}},
		{1, 10_000, 0, 9999, [2]int{9975, 0}, [2]int{9999, 0}},
		{2, 10_000, 1, 5000, [2]int{0, 4976}, [2]int{24, 5024}},
		{2, 10_000, 0, 12, [2]int{0, 0}, [2]int{36, 24}},
	} {
		got := Twins(pieces(tt.lanes, tt.n, tt.lane, tt.chosen), 1)
		var ids []string
		for _, w := range got {
			ids = append(ids, w.ID)
		}
		want := []string{"play"}
		for l := range tt.lanes {
			for i := tt.first[l]; i <= tt.last[l]; i++ {
				want = append(want, fmt.Sprintf("piece-%d-%d", l, i))
			}
			if n := tt.last[l] - tt.first[l] + 1; n > 49 {
				t.Errorf("lane %d: %d twins wanted, which is too many to ask for", l, n)
			}
		}
		want = append(want, "prop")
		if !reflect.DeepEqual(ids, want) {
			t.Errorf("%d lanes of %d, %d of lane %d chosen: twins = %v, want %v", tt.lanes, tt.n, tt.chosen, tt.lane, ids, want)
		}
	}
}

// TestEncodeTwins: what the page reads is JSON under its own short keys, with
// every key that it relies on, whatever stands in a label.
func TestEncodeTwins(t *testing.T) {
	c := widget.Control{
		ID: "prop", Kind: widget.Slider, Label: `Prop “speed” </script> & "so on"` + "\n\u2028", Rect: display.Rect{X: 1, Y: 2, W: 3, H: 4},
		Value: -0.05, Min: -8, Max: 8, Step: 0.05, Text: "−0.05 turns a cycle", Keys: "P", Group: "g", On: true, Disabled: true, Index: 7,
	}
	text := EncodeTwins(Twins([]widget.Control{c, {ID: "cut"}}, 1))
	var got []map[string]any
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatalf("EncodeTwins = %s: %v", text, err)
	}
	if len(got) != 2 {
		t.Fatalf("EncodeTwins gave %d twins, want 2", len(got))
	}
	want := map[string]any{
		"id": "prop", "kind": "slider", "label": c.Label, "rect": []any{1.0, 2.0, 3.0, 4.0},
		"value": -0.05, "min": -8.0, "max": 8.0, "step": 0.05, "text": c.Text, "keys": "P", "group": "g",
		"on": true, "disabled": true, "index": 7.0,
	}
	if !reflect.DeepEqual(got[0], want) {
		t.Errorf("EncodeTwins = %v, want %v", got[0], want)
	}
	for _, key := range []string{"id", "kind", "label", "rect", "value", "min", "max", "step", "on", "disabled", "index"} {
		if _, ok := got[1][key]; !ok {
			t.Errorf("a plain button's twin = %v, want it to have %q", got[1], key)
		}
	}
	if got := EncodeTwins(Twins(nil, 1)); got != "[]" {
		t.Errorf("EncodeTwins of none = %s, want []", got)
	}
}
