package report

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/words"
)

// Elementary says whether a lane is one elementary pattern.
type Elementary struct {
	Yes     bool   `json:"yes"`
	Because string `json:"because"`
}

// Cap says in which senses a lane is a continuous assembly pattern, and why:
// a sentence for each definition but the elementary one.
type Cap struct {
	Broad   bool     `json:"broad"`
	Strict  bool     `json:"strict"`
	Shape   *string  `json:"shape"`
	Because []string `json:"because"`
}

// judge fills in what the whole of a lane is called.
func (h *Hand) judge(seams []seam.Seam) {
	w := words.Said
	h.Whole = naming.Judge(h.Track, seams)
	defs := w.Definitions(&h.Whole)
	one := defs[words.DefElementary]
	h.Elementary = Elementary{Yes: one.Yes, Because: one.Because}
	h.Cap = Cap{Broad: h.Whole.Broad.Yes, Strict: h.Whole.Strict.Yes}
	if shape := h.Whole.Shape(); shape != naming.NoShape {
		h.Cap.Shape = text(w.Shape(shape))
	}
	for _, d := range defs[words.DefBroad:] {
		h.Cap.Because = append(h.Cap.Because, fmt.Sprintf(w.Whole.Spoken, d.Name, d.Because))
	}
}

// LeftRight returns the two hands' places in r.Hands, left first; ok is false
// with one hand.
func (r *Report) LeftRight() (left, right int, ok bool) {
	if len(r.Hands) != 2 {
		return 0, 0, false
	}
	if r.Hands[0].Track.Lane.Side == engine.Right {
		return 1, 0, true
	}
	return 0, 1, true
}

// Called says in one line what the pattern is called.
func (r *Report) Called() string {
	left, right, ok := r.LeftRight()
	if !ok {
		return words.Said.LaneLine(&r.Hands[0].Whole)
	}
	return words.Said.HandsLine(&r.Hands[left].Whole, &r.Hands[right].Whole, r.Hybrid)
}
