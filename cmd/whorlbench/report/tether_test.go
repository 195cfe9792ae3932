package report

import (
	"encoding/json"
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// TestTetherKeys: what has no answer is null. A prop that hangs while its hand
// goes up and down by R once a beat is taut up to √(g/R) radians a second.
func TestTetherKeys(t *testing.T) {
	hanging := func(path engine.Path, prop engine.Degrees, rigid bool) engine.Pattern {
		p := engine.Pattern{Title: "Lift", Tempo: 30, Performer: engine.DefaultPerformer()}
		p.Performer.Rigid = rigid
		p.Lanes = []engine.Lane{{Side: engine.Right, Tether: 0.6, PropAt: prop, Pieces: []engine.Piece{
			engine.Stroke(path, frac.Int(1), frac.Int(0), frac.Int(1), frac.Int(1)),
		}}}
		return p
	}
	lift := engine.LinePath(0, 0.25, 90)
	top := math.Sqrt(9.80665/0.25) / (2 * math.Pi) * 60
	for _, tt := range []struct {
		name         string
		p            engine.Pattern
		from, to     any
		offset, grow bool // there is one
		faults       int
	}{
		{"lift", hanging(lift, -90, false), 0.0, math.Round(top*1e6) / 1e6, true, true, 0},
		{"hanging still", hanging(engine.PointPath(0), -90, false), 0.0, nil, true, true, 0},
		{"held up", hanging(engine.PointPath(0), 90, false), nil, nil, false, false, 1},
		{"held up, rigid", hanging(engine.PointPath(0), 90, true), nil, nil, false, false, 0},
	} {
		r := Of("lift.toml", tt.p)
		data, err := json.Marshal(r.Hands[0].Tether)
		if err != nil {
			t.Fatal(err)
		}
		var got map[string]any
		if err := json.Unmarshal(data, &got); err != nil {
			t.Fatal(err)
		}
		if got["taut_from_tempo"] != tt.from || got["taut_to_tempo"] != tt.to || (got["hand_offset"] != nil) != tt.offset || (got["growth_per_round"] != nil) != tt.grow {
			t.Errorf("%s: %s, want from %v to %v, an offset %v, a growth %v", tt.name, data, tt.from, tt.to, tt.offset, tt.grow)
		}
		if len(r.Faults) != tt.faults || tt.faults > 0 && (r.Faults[0].Where != "right, piece 1" || r.Faults[0].Level != "slack") {
			t.Errorf("%s: faults %+v, want %d", tt.name, r.Faults, tt.faults)
		}
	}
}
