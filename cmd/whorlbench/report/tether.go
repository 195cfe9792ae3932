package report

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/tether"
	"whorlbench/sandbox/words"
)

// Tether is what a real tether would do. TautFrom is 0 where it is taut
// however slow, and TautTo null where it is taut however fast; both are null
// where no tempo will do, and for a rigid prop, which cannot go slack.
type Tether struct {
	MinPull   Number  `json:"min_pull_g"`
	PeakPull  Number  `json:"peak_pull_g"`
	Slack     bool    `json:"slack"`
	TautFrom  *Number `json:"taut_from_tempo"`
	TautTo    *Number `json:"taut_to_tempo"`
	PeakSpeed Number  `json:"peak_head_speed"`
	Offset    *Number `json:"hand_offset"`
	Growth    *Number `json:"growth_per_round"`
	Clear     Number  `json:"clear_radius"`

	Result tether.Result `json:"-"`
}

func tetherOf(t *engine.Track, p engine.Pattern) Tether {
	r := tether.Of(t, p.Tempo, p.Performer.Rigid)
	out := Tether{
		MinPull: Number(r.Least.Value), PeakPull: Number(r.Greatest.Value), Slack: r.Slack,
		PeakSpeed: Number(r.TopSpeed.Value), Clear: Number(r.Clear), Result: r,
	}
	if w := r.Window; w.OK {
		out.TautFrom = num(w.From)
		if !w.Open {
			out.TautTo = num(w.To)
		}
	}
	if r.HasAstray {
		out.Offset = num(r.Astray.Value)
	}
	if r.HasGrowth {
		out.Growth = num(r.Growth)
	}
	return out
}

// findSlack reports each piece in which the tether goes slack.
func (r *Report) findSlack() {
	w := words.Said
	for _, h := range r.Hands {
		for i, p := range h.Tether.Result.Pieces {
			if !p.Slack {
				continue
			}
			r.Faults = append(r.Faults, Fault{
				Where: fmt.Sprintf(w.Tether.Piece, h.Side, i+1),
				Level: "slack",
				What:  w.SlackFault(p.Least.Value),
			})
		}
	}
}
