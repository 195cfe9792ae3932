package scene_test

import (
	"math"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
)

// TestMotions: each hand's picture has one time, ends where it begins if the
// pattern closes, keeps the tether's length and stays in its square.
func TestMotions(t *testing.T) {
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		tracks := session.New(p).Tracks()
		hands := scene.Motions(tracks, p.Tempo)
		if len(hands) != len(tracks) {
			t.Errorf("%s: %d pictures of %d hands", e.ID, len(hands), len(tracks))
			continue
		}
		for _, m := range hands {
			n := len(m.Points)
			if n%4 != 0 || n < 8 || n != len(hands[0].Points) || m.Seconds != hands[0].Seconds || m.Seconds <= 0 {
				t.Errorf("%s: %d numbers in %v s, %d in %v s", e.ID, n, m.Seconds, len(hands[0].Points), hands[0].Seconds)
			}
			for i, x := range m.Points {
				if math.Abs(x) > 50 {
					t.Errorf("%s: number %d is %v, want it within 50", e.ID, i, x)
				}
				if d := math.Abs(m.Points[i%4] - m.Points[n-4+i%4]); m.Rest == 0 && d > 0.2 {
					t.Errorf("%s: the end is %v off the beginning", e.ID, d)
				}
			}
		}
	}
}
