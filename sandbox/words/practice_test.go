package words_test

import (
	"slices"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/tether"
	"whorlbench/sandbox/words"
)

// TestBeforePractice: what is said first, then the usual cautions.
func TestBeforePractice(t *testing.T) {
	cautions := words.English.Practice.Cautions
	window := func(from, to float64) tether.Window {
		return tether.Window{OK: true, From: from, To: to, Open: to == 0}
	}
	for _, test := range []struct {
		name     string
		window   tether.Window
		rigid    bool
		from, to float64
		want     []string
	}{
		{"taut all the way", window(96.04, 0), false, 100, 140, nil},
		{"taut from its very beginning", window(100, 0), false, 100, 100, nil},
		{"rigid", tether.Window{}, true, 40, 50, nil},
		{"never", tether.Window{}, false, 40, 50, []string{"Left hand: the tether goes slack somewhere at every tempo. Practise it with a staff, or mend the pattern first."}},
		{"too slow", window(96.04, 0), false, 60, 90, []string{"Left hand: the tether is slack somewhere below 96.1 beats a minute, and you go no faster than 90. Raise the tempo, or walk it through with a staff."}},
		{"too slow at first", window(96.04, 0), false, 60, 120, []string{"Left hand: the tether is slack somewhere until you reach 96.1 beats a minute. Until then the head falls out of its path there."}},
		{"too fast in the end", window(0, 80.19), false, 60, 120, []string{"Left hand: above 80.1 beats a minute the tether is slack somewhere."}},
		{"both", window(70, 80), false, 60, 120, []string{
			"Left hand: the tether is slack somewhere until you reach 70 beats a minute. Until then the head falls out of its path there.",
			"Left hand: above 80 beats a minute the tether is slack somewhere.",
		}},
	} {
		hands := []words.TautHand{{Side: engine.Left, Rigid: test.rigid, Window: test.window}}
		if got, want := words.English.BeforePractice(hands, test.from, test.to), slices.Concat(test.want, cautions); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", test.name, got, want)
		}
	}
}

func TestTempoPlan(t *testing.T) {
	for _, test := range []struct {
		from, up float64
		rounds   int
		ceiling  float64
		want     string
	}{
		{90, 0, 0, 0, "At 90 beats a minute all through."},
		{90, 5, 2, 90, "At 90 beats a minute all through."},
		{90, 2.5, 4, 120, "From 90 beats a minute, 2.5 more after every four rounds, up to 120."},
		{90, 5, 1, 120, "From 90 beats a minute, 5 more after every round, up to 120."},
	} {
		if got := words.English.TempoPlan(test.from, test.up, test.rounds, test.ceiling); got != test.want {
			t.Errorf("TempoPlan(%v, %v, %d, %v) = %q, want %q", test.from, test.up, test.rounds, test.ceiling, got, test.want)
		}
	}
}
