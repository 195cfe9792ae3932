package presets_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"whorlbench/engine"
	"whorlbench/engine/room"
	"whorlbench/engine/seam"
	"whorlbench/engine/tether"
	"whorlbench/sandbox/words"
)

func TestLibraryCloses(t *testing.T) {
	for _, b := range builtIn {
		for _, l := range pattern(t, b.id).Lanes {
			c := engine.NewTrack(l).Closing()
			if c.HandGap > engine.TolGap || c.Rounds.Int64() != b.rounds {
				t.Errorf("%s: %s hand closes after %v rounds with a gap of %v m, want %d and 0", b.id, words.English.Side(l.Side), c.Rounds, c.HandGap, b.rounds)
			}
		}
	}
}

// rough are the seams that are not smooth, with the reason. Every other seam
// of the library is.
var rough = map[string]struct {
	verdicts []seam.Verdict
	reason   string
}{
	"swan":             {[]seam.Verdict{seam.Kink, seam.Smooth, seam.Kink, seam.Smooth}, "equal speeds leave the middle of an S-cap with a kink; two-bends does without"},
	"missing-plank":    {[]seam.Verdict{seam.Gap, seam.Gap}, "exists to show a gap"},
	"turned-back":      {[]seam.Verdict{seam.Stop, seam.Stop}, "exists to show a stop"},
	"bump-at-the-quay": {[]seam.Verdict{seam.Kink, seam.Kink}, "exists to show a kink"},
}

// TestLibrarySeams: what is called smooth is smooth by far more than the
// tolerance asks for, so that another tempo does not make it a kink.
func TestLibrarySeams(t *testing.T) {
	for _, b := range builtIn {
		p := pattern(t, b.id)
		for _, l := range p.Lanes {
			for i, s := range seam.Of(engine.NewTrack(l), p.Tempo, p.Performer.Rigid) {
				want, reason := seam.Smooth, "every other seam is smooth"
				if r, ok := rough[b.id]; ok {
					want, reason = r.verdicts[i], r.reason
				}
				if s.Verdict != want {
					t.Errorf("%s: verdict on seam %d is %v, want %v: %s", b.id, i+1, s.Verdict, want, reason)
				}
				if want == seam.Smooth && math.Abs(s.JumpAcross) > 1e-3 {
					t.Errorf("%s: at seam %d the head jumps by %v m/s across the tether, want 0", b.id, i+1, s.JumpAcross)
				}
			}
		}
	}
}

// everyMoment hands moment all closing rounds of a lane, 720 steps a piece.
func everyMoment(l engine.Lane, moment func(engine.State)) {
	track := engine.NewTrack(l)
	for round := range int(track.Closing().Rounds.Int64()) {
		for i := range track.Legs {
			for k := range 721 {
				moment(track.AtPiece(round, i, float64(k)/720))
			}
		}
	}
}

// leastPull returns the least pull of an ideal tether over the closing
// rounds, in multiples of the head's weight.
func leastPull(l engine.Lane, tempo float64) float64 {
	least := math.Inf(1)
	everyMoment(l, func(s engine.State) { least = min(least, tether.Pull(l, s, tempo)) })
	return least
}

// notTaut are the patterns whose tether is not taut throughout, with the
// least pull and the reason.
var notTaut = map[string]struct {
	least  float64
	reason string
}{
	"slack-water":      {-0.463243, "exists to show a slack tether"},
	"gangway-and-bell": {0, "a linear isolation as long as the tether asks no pull at its ends, whatever the tempo"},
}

// TestLibraryIsTaut: at its tempo an ideal tether pulls throughout.
func TestLibraryIsTaut(t *testing.T) {
	for _, b := range builtIn {
		p := pattern(t, b.id)
		if p.Tempo < 60 || p.Tempo > 160 {
			t.Errorf("%s: tempo %v, want 60 to 160", b.id, p.Tempo)
		}
		least := math.Inf(1)
		for _, l := range p.Lanes {
			least = min(least, leastPull(l, p.Tempo))
		}
		if want, ok := notTaut[b.id]; ok {
			if math.Abs(least-want.least) > 1e-6 {
				t.Errorf("%s: least pull %v, want %v: %s", b.id, least, want.least, want.reason)
			}
		} else if least <= 0 {
			t.Errorf("%s: least pull %v, want more than 0", b.id, least)
		}
	}
}

// TestSlackWater: extension with hand circle and tether of 0.6 m needs
// ω²(R + L) > g at the top, so that 4 beats a turn need a tempo of
// 240/2π·√(g/(R + L)) = 109.2 (any mechanics text; from memory).
func TestSlackWater(t *testing.T) {
	l := pattern(t, "slack-water").Lanes[0]
	edge := 240 / (2 * math.Pi) * math.Sqrt(9.80665/1.2)
	if below, above := leastPull(l, edge-0.1), leastPull(l, edge+0.1); below >= 0 || above <= 0 {
		t.Errorf("least pull about tempo %v is %v and %v, want a change from slack to taut", edge, below, above)
	}
}

// TestTriquetraHandBearsNothingAtTheEnds: the hand's acceleration ω²A along
// the stroke takes away just what the prop's ω²L gives where A = L, and
// gravity stands across a level tether: no tempo helps, none hurts.
func TestTriquetraHandBearsNothingAtTheEnds(t *testing.T) {
	l := pattern(t, "gangway-and-bell").Lanes[0]
	for _, tempo := range []float64{114, 160, 400} {
		if got := leastPull(l, tempo); math.Abs(got) > 1e-9 {
			t.Errorf("least pull at tempo %v = %v, want 0", tempo, got)
		}
	}
}

// TestLibraryIsInReach: no hand is further from its shoulder than the arm is
// long.
func TestLibraryIsInReach(t *testing.T) {
	for _, b := range builtIn {
		p := pattern(t, b.id)
		for _, l := range p.Lanes {
			shoulder := r3.Vec{X: -p.Performer.Shoulders / 2} // seen from the audience
			if l.Side == engine.Left {
				shoulder.X = -shoulder.X
			}
			far := 0.0
			everyMoment(l, func(s engine.State) { far = max(far, r3.Norm(r3.Sub(room.Place(l, s.Hand), shoulder))) })
			if far > p.Performer.Reach {
				t.Errorf("%s: %s hand is %v m from its shoulder, want at most %v", b.id, words.English.Side(l.Side), far, p.Performer.Reach)
			}
		}
	}
}
