package host

import (
	"encoding/json"
	"fmt"
	"math"

	"whorlbench/sandbox/widget"
)

// Twin is a control as the page holds it: a real, labelled, focusable element
// at the control's place.
type Twin struct {
	ID       string     `json:"id"`
	Kind     string     `json:"kind"` // button | toggle | slider | piece | seam
	Label    string     `json:"label"`
	Rect     [4]float64 `json:"rect"` // CSS pixels: x, y, width, height
	Value    float64    `json:"value"`
	Min      float64    `json:"min"`
	Max      float64    `json:"max"`
	Step     float64    `json:"step"`
	KeyStep  float64    `json:"keyStep,omitempty"`
	Text     string     `json:"text,omitempty"`
	Keys     string     `json:"keys,omitempty"`
	Group    string     `json:"group,omitempty"`
	On       bool       `json:"on"`
	Disabled bool       `json:"disabled"`
	Index    int        `json:"index"`
}

// pieceWindow is how many pieces on either side of the chosen one have a twin
// at a time: ten thousand elements would help nobody.
const pieceWindow = 24

var kinds = map[widget.Kind]string{
	widget.Button: "button", widget.Toggle: "toggle", widget.Slider: "slider", widget.Ruler: "slider", widget.Piece: "piece", widget.Edge: "seam",
}

// Twins returns the twins of controls whose places are in bench pixels of
// zoom CSS pixels each.
func Twins(controls []widget.Control, zoom float64) []Twin {
	chosen := map[int]int{}
	for _, c := range controls {
		if c.Kind == widget.Piece && c.On {
			chosen[c.Lane] = c.Index
		}
	}
	out := make([]Twin, 0, len(controls))
	for _, c := range controls {
		if (c.Kind == widget.Piece || c.Kind == widget.Edge) && abs(c.Index-chosen[c.Lane]) > pieceWindow {
			continue
		}
		label := c.Label
		if c.Kind == widget.Button && c.Text != "" {
			label = fmt.Sprintf("%s: %s", c.Label, c.Text)
		}
		out = append(out, Twin{
			ID: c.ID, Kind: kinds[c.Kind], Label: label, Text: c.Text, Keys: c.Keys, Group: c.Group,
			Rect:  [4]float64{tidy(c.Rect.X * zoom), tidy(c.Rect.Y * zoom), tidy(c.Rect.W * zoom), tidy(c.Rect.H * zoom)},
			Value: c.Value, Min: c.Min, Max: c.Max, Step: c.Step, KeyStep: c.KeyStep, On: c.On || c.Along, Disabled: c.Disabled, Index: c.Index,
		})
	}
	return out
}

func abs(n int) int { return max(n, -n) }

// tidy rounds to a tenth of a pixel, so that the page's list changes only
// when something has moved.
func tidy(x float64) float64 { return math.Round(x*10) / 10 }

// EncodeTwins writes twins as the page reads them.
func EncodeTwins(twins []Twin) string {
	data, err := json.Marshal(twins)
	if err != nil { // only a number that is not finite could do it
		panic(fmt.Sprintf("host: twins: %v", err))
	}
	return string(data)
}
