package presets_test

import (
	"strings"
	"testing"
	"time"

	"github.com/pelletier/go-toml/v2"

	"whorlbench/presets"
	"whorlbench/presets/dice"
)

// TestRoundTrip writes random patterns, reads them back equal and writes the
// same bytes again. The TOML library reads the same bytes as TOML, and
// together they have every key of the format.
func TestRoundTrip(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	d := dice.New(seed)
	seen := map[string]bool{}
	for i := range 500 {
		p := d.Pattern()
		data, err := presets.Encode(p)
		if err != nil {
			t.Fatalf("pattern %d: Encode() gives %v, want no error\n%+v", i, err, p)
		}
		back, err := presets.Decode("x.toml", data)
		if err != nil || !back.Equal(p) {
			t.Fatalf("pattern %d: Decode(Encode()) = %+v, %v, want %+v\n%s", i, back, err, p, data)
		}
		again, err := presets.Encode(back)
		if err != nil || string(again) != string(data) {
			t.Fatalf("pattern %d: Encode(Decode(Encode())) = \n%s\n%v, want\n%s", i, again, err, data)
		}
		var doc map[string]any
		if err := toml.Unmarshal(data, &doc); err != nil {
			t.Fatalf("pattern %d: toml.Unmarshal() gives %v, want no error\n%s", i, err, data)
		}
		if doc["title"] != p.Title {
			t.Fatalf("pattern %d: toml.Unmarshal() has the title %q, want %q", i, doc["title"], p.Title)
		}
		if notes, _ := doc["notes"].(string); notes != p.Notes {
			t.Fatalf("pattern %d: toml.Unmarshal() has the notes %q, want %q", i, notes, p.Notes)
		}
		note(seen, "", doc)
	}
	for _, key := range strings.Fields(`format title notes tempo
		performer.tether performer.rigid performer.shoulders performer.reach performer.head_mass
		hand.side hand.plane hand.offset hand.centre hand.tether hand.arm_at hand.prop_at
		hand.piece.arm hand.piece.prop hand.piece.cycles hand.piece.beats hand.piece.part hand.piece.path
		hand.piece.radius hand.piece.centre hand.piece.tilt hand.piece.arm_at hand.piece.prop_at
		hand.piece.law hand.piece.swing hand.piece.swing_back`) {
		if !seen[key] {
			t.Errorf("no pattern had the key %s, want every key tried", key)
		}
	}
}

// note adds the dotted names of a document's keys to seen.
func note(seen map[string]bool, prefix string, v any) {
	switch v := v.(type) {
	case map[string]any:
		for name, v := range v {
			key := strings.TrimPrefix(prefix+"."+name, ".")
			seen[key] = true
			note(seen, key, v)
		}
	case []any:
		for _, v := range v {
			note(seen, prefix, v)
		}
	}
}
