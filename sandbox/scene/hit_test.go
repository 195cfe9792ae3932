package scene

import (
	"math"
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// Every place of every curve that is drawn is found where it is seen.
func TestNearestFindsWhatIsSeen(t *testing.T) {
	for _, p := range everyPattern(t) {
		s := seek(session.New(p), 0)
		v := Fit(s.Tracks(), area, 26, false)
		for lane, k := range s.Tracks() {
			for i := range min(len(k.Legs), 3) {
				s.Select(session.Select{Lane: lane, Piece: i})
				for _, u := range []float64{0.13, 0.5, 0.77} {
					at := v.ToScreen(k.PointAt(0, i, u).Head)
					hit, ok := Nearest(s, v, at, 12)
					if !ok || hit.Away > 1.5 {
						t.Errorf("%s: piece %d.%d at %v is seen at %v but found %+v, %v", p.Title, lane, i, u, at, hit, ok)
						continue
					}
					// Curves cross: what is found is seen there too.
					found := v.ToScreen(s.Tracks()[hit.Lane].PointAt(hit.Round, hit.Piece, hit.U).Head)
					if found.Sub(at).Len() > 2.5 {
						t.Errorf("%s: asked for %v, found %+v, which is seen at %v", p.Title, at, hit, found)
					}
				}
			}
		}
		if hit, ok := Nearest(s, v, display.Pt{X: -5000, Y: 0}, 20); ok {
			t.Errorf("%s: far away there is %+v, want nothing", p.Title, hit)
		}
	}
}

func TestOnSegment(t *testing.T) {
	a, b := display.Pt{X: 0, Y: 0}, display.Pt{X: 10, Y: 0}
	for _, tt := range []struct {
		p           display.Pt
		share, away float64
	}{
		{display.Pt{X: 4, Y: 3}, 0.4, 3},
		{display.Pt{X: -3, Y: 4}, 0, 5},
		{display.Pt{X: 13, Y: -4}, 1, 5},
	} {
		if share, away := onSegment(a, b, tt.p); math.Abs(share-tt.share) > 1e-12 || math.Abs(away-tt.away) > 1e-12 {
			t.Errorf("onSegment(%v) = %v, %v, want %v, %v", tt.p, share, away, tt.share, tt.away)
		}
	}
	if share, away := onSegment(a, a, display.Pt{X: 3, Y: 4}); share != 0 || away != 5 {
		t.Errorf("onSegment of a point = %v, %v, want 0, 5", share, away)
	}
}
