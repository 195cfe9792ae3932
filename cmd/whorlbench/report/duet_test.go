package report

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"whorlbench/presets"
)

func built(t *testing.T, id string) Report {
	t.Helper()
	for _, e := range presets.Library() {
		if e.ID == id {
			p, err := e.Pattern()
			if err != nil {
				t.Fatal(err)
			}
			return Of(e.File, p)
		}
	}
	t.Fatalf("no built-in pattern %s", id)
	return Report{}
}

// The keys of two hands are a promise too, those that the format fixes first.
func TestEveryKeyOfTwoHandsIsThere(t *testing.T) {
	data, err := json.Marshal(built(t, "lock-gates").Duet)
	if err != nil {
		t.Fatal(err)
	}
	want := strings.Fields(`prop_spans from to direction timing delta_from delta_to
		hand_spans from to direction timing delta_from delta_to
		hybrid arm_winding hands_meet_at min_hand_distance min_head_distance min_tether_distance
		min_hand_at min_head_at min_tether_at tethers_cross read_beats`)
	if got := keys(t, data); !slices.Equal(got, want) {
		t.Errorf("keys = %v, want %v", got, want)
	}
}

// Arms that wrap are a fault of both hands; hands that meet are told, and are
// none, nor is what keeps to the wheel plane (common practice).
func TestTangleFault(t *testing.T) {
	for _, tt := range []struct {
		id      string
		tangled bool
		winding string
		meets   bool
		hybrid  bool
	}{
		{"crossed-lines", true, "1", false, false},
		{"two-ferries", false, "0", false, false},
		{"pier-end", false, "null", true, true},
		{"paddle-steamer", false, "null", false, false},
		{"gangway-and-bell", false, "0", false, true},
	} {
		r := built(t, tt.id)
		has := false
		for _, f := range r.Faults {
			has = has || f.Level == "tangle" && f.Where == "both hands"
		}
		winding, err := json.Marshal(r.Duet.Winding)
		if err != nil {
			t.Fatal(err)
		}
		if has != tt.tangled || string(winding) != tt.winding || (r.Duet.MeetAt != nil) != tt.meets || r.Duet.Hybrid != tt.hybrid {
			t.Errorf("%s: tangle %v, winding %s, meets %v, hybrid %v, want %v, %s, %v, %v", tt.id,
				has, winding, r.Duet.MeetAt != nil, r.Duet.Hybrid, tt.tangled, tt.winding, tt.meets, tt.hybrid)
		}
	}
}
