package report

import (
	"math/big"

	"whorlbench/engine/duet"
	"whorlbench/sandbox/words"
)

// Duet is what there is to say of two hands together.
type Duet struct {
	PropSpans []Span   `json:"prop_spans"`
	HandSpans []Span   `json:"hand_spans"`
	Hybrid    bool     `json:"hybrid"`
	Winding   *big.Int `json:"arm_winding"`
	MeetAt    *Number  `json:"hands_meet_at"`
	MinHand   *Number  `json:"min_hand_distance"`
	MinHead   *Number  `json:"min_head_distance"`
	MinTether *Number  `json:"min_tether_distance"`
	// The beats of these, when the tethers cross, and how far was read.
	HandAt    *Number `json:"min_hand_at"`
	HeadAt    *Number `json:"min_head_at"`
	TetherAt  *Number `json:"min_tether_at"`
	Crossings []Cross `json:"tethers_cross"`
	ReadBeats Number  `json:"read_beats"`

	Reading duet.Reading `json:"-"`
}

// Span is a time of one direction and timing, in beats and degrees.
type Span struct {
	From      Number  `json:"from"`
	To        Number  `json:"to"`
	Direction *string `json:"direction"`
	Timing    *string `json:"timing"`
	DeltaFrom *Number `json:"delta_from"`
	DeltaTo   *Number `json:"delta_to"`
}

// Cross is a time during which the tethers cross, in beats.
type Cross struct {
	From Number `json:"from"`
	To   Number `json:"to"`
}

// together says what there is to say of two hands, if there are two; arms
// that wrap are a fault.
func (r *Report) together() {
	left, right, ok := r.LeftRight()
	if !ok {
		return
	}
	read := duet.Read(r.Hands[left].Track, r.Hands[right].Track)
	r.Duet = &Duet{
		PropSpans: spans(read.Props), HandSpans: spans(read.Hands), Hybrid: r.Hybrid.Yes, Winding: read.Tangle.Winding,
		Crossings: []Cross{}, ReadBeats: Number(read.Until), Reading: read,
	}
	r.Duet.MinHand, r.Duet.HandAt = nearest(read.Hand)
	r.Duet.MinHead, r.Duet.HeadAt = nearest(read.Head)
	r.Duet.MinTether, r.Duet.TetherAt = nearest(read.Tether)
	if read.Tangle.Meets {
		r.Duet.MeetAt = num(read.Tangle.MeetAt)
	}
	for _, c := range read.Crossings {
		r.Duet.Crossings = append(r.Duet.Crossings, Cross{Number(c.From), Number(c.To)})
	}
	if n := read.Tangle.Winding; n != nil && n.Sign() != 0 {
		w := words.Said
		r.Faults = append(r.Faults, Fault{Where: w.Duet.BothHands, Level: "tangle", What: w.TangleFault(n)})
	}
}

// nearest returns a least distance and its beat, none if there may be a
// smaller one.
func nearest(n duet.Nearest) (distance, beat *Number) {
	if n.AtMost {
		return nil, nil
	}
	return num(n.Distance), num(n.Beat)
}

func spans(list []duet.Span) []Span {
	w := words.Said
	out := make([]Span, len(list))
	for i, s := range list {
		out[i] = Span{From: Number(s.From), To: Number(s.To)}
		if s.Direction != duet.NoDirection {
			out[i].Direction = text(w.Direction(s.Direction))
		}
		if s.Timing != duet.NoTiming {
			out[i].Timing = text(w.Timing(s.Timing))
			out[i].DeltaFrom, out[i].DeltaTo = num(float64(s.DeltaFrom)), num(float64(s.DeltaTo))
		}
	}
	return out
}
