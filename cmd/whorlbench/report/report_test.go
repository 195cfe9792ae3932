package report

import (
	"encoding/json"
	"math"
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

func TestNumber(t *testing.T) {
	for _, tt := range []struct {
		x    float64
		want string
	}{
		{0, "0"}, {math.Copysign(0, -1), "0"}, {-1e-9, "0"}, {1, "1"}, {-2.5, "-2.5"}, {1.0 / 3, "0.333333"},
		{-2.0 / 3, "-0.666667"}, {0.0000005001, "0.000001"}, {123456789.5, "123456789.5"}, {1e21, "1000000000000000000000"},
		{math.NaN(), "null"}, {math.Inf(1), "null"}, {math.Inf(-1), "null"},
	} {
		got, err := Number(tt.x).MarshalJSON()
		if err != nil || string(got) != tt.want {
			t.Errorf("Number(%v).MarshalJSON() = %s, %v, want %s", tt.x, got, err, tt.want)
		}
	}
}

// The keys are a promise to other programs: all of them, always, in this order.
func TestEveryKeyIsThere(t *testing.T) {
	p, err := presets.First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	data, err := JSON([]Report{Of("half-moon.toml", p)}, false)
	if err != nil {
		t.Fatal(err)
	}
	want := strings.Fields(`file title period_beats period_seconds hands
		side closes_after pieces
		name ratio petals mode first_tip_deg spin beats name ratio petals mode first_tip_deg spin beats
		seams
		after hand_gap head_gap prop_gap_deg turn_deg hand_turns_back arm_reverses prop_reverses jump_along jump_across verdict
		after hand_gap head_gap prop_gap_deg turn_deg hand_turns_back arm_reverses prop_reverses jump_along jump_across verdict
		elementary yes because cap broad strict shape because
		tether min_pull_g peak_pull_g slack taut_from_tempo taut_to_tempo peak_head_speed hand_offset growth_per_round clear_radius
		duet faults`)
	if got := keys(t, data); !slices.Equal(got, want) {
		t.Errorf("keys = %v, want %v", got, want)
	}
}

// keys returns the keys of all objects in the order in which they stand.
func keys(t *testing.T, data []byte) []string {
	t.Helper()
	var out []string
	dec := json.NewDecoder(strings.NewReader(string(data)))
	var walk func()
	walk = func() {
		tok, err := dec.Token()
		if err != nil {
			t.Fatal(err)
		}
		switch tok {
		case json.Delim('{'):
			for dec.More() {
				key, _ := dec.Token()
				out = append(out, key.(string))
				walk()
			}
			_, _ = dec.Token()
		case json.Delim('['):
			for dec.More() {
				walk()
			}
			_, _ = dec.Token()
		}
	}
	walk()
	return out
}

func TestAtLeast(t *testing.T) {
	for _, tt := range []struct {
		has, asked string
		want       bool
	}{
		{"gap", "gap", true}, {"gap", "tangle", true}, {"stop", "gap", false}, {"kink", "kink", true},
		{"kink", "stop", false}, {"slack", "tangle", true}, {"tangle", "slack", false}, {"", "tangle", false},
	} {
		var r Report
		if tt.has != "" {
			r.Faults = []Fault{{Level: tt.has}}
		}
		if got := r.AtLeast(tt.asked); got != tt.want {
			t.Errorf("a report with %q: AtLeast(%q) = %v, want %v", tt.has, tt.asked, got, tt.want)
		}
	}
}

func TestJSONOfNoFiles(t *testing.T) {
	if got, err := JSON(nil, true); err != nil || string(got) != "[]\n" {
		t.Errorf("JSON(nil, several) = %q, %v, want []", got, err)
	}
}

// fifty returns a pattern of two hands with fifty pieces each, whose prop
// comes back after 20 rounds.
func fifty() engine.Pattern {
	p := engine.Pattern{Title: "fifty", Tempo: 120, Performer: engine.DefaultPerformer()}
	for _, side := range []engine.Side{engine.Left, engine.Right} {
		l := engine.Lane{Side: side, Tether: 0.6, ArmAt: 90, PropAt: 90}
		for i := range int64(50) {
			arm := frac.Int(1 - 2*(i%2))
			l.Pieces = append(l.Pieces, engine.Stroke(engine.CirclePath(0, 0.6), arm, frac.New(i+1, 10), frac.New(1, 2), frac.Int(1)))
		}
		p.Lanes = append(p.Lanes, l)
	}
	return p
}

func BenchmarkReport(b *testing.B) {
	p := fifty()
	for b.Loop() {
		Of("fifty.toml", p)
	}
}
