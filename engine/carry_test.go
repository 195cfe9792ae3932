package engine_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// TestCarry: a prop that turns on by p/q a round is back after q rounds.
func TestCarry(t *testing.T) {
	for _, test := range []struct {
		perRound string
		most     int
		rounds   int
		turned   []float64 // turns by rounds 0, 1, 2, 3
	}{
		{"0", 64, 1, []float64{0, 0, 0, 0}},
		{"3", 64, 1, []float64{0, 0, 0, 0}},
		{"3/2", 64, 2, []float64{0, 0.5, 0, 0.5}},
		{"-1/3", 64, 3, []float64{0, 2. / 3, 1. / 3, 0}},
		{"1/100", 64, 64, []float64{0, 0.01, 0.02, 0.03}},
		{"1/5000000000", 64, 64, []float64{0, 2e-10, 4e-10, 6e-10}},
	} {
		c := engine.NewCarry(fr(test.perRound))
		if got := c.Rounds(test.most); got != test.rounds {
			t.Errorf("NewCarry(%s).Rounds(%d) = %d, want %d", test.perRound, test.most, got, test.rounds)
		}
		for r, want := range test.turned {
			if got := c.TurnedBy(r) / (2 * math.Pi); math.Abs(got-want) > 1e-15 {
				t.Errorf("NewCarry(%s).TurnedBy(%d) = %v turns, want %v", test.perRound, r, got, want)
			}
		}
	}
}

// TestNewLeg: a leg by itself moves as it does in its lane.
func TestNewLeg(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 300 {
		l := r.lane()
		track := engine.NewTrack(l)
		for i := range track.Legs {
			want := &track.Legs[i]
			got := engine.NewLeg(l.Pieces[i], l, want.Arm0, want.Prop0)
			for _, u := range []float64{0, 0.3, 1} {
				if a, b := got.State(u), want.State(u); a != b {
					t.Fatalf("piece %d of %+v: State(%v) = %+v, want %+v", i+1, l, u, a, b)
				}
			}
		}
	}
}
