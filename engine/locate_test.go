package engine_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
)

// lengths makes a lane of circles that last the given beats.
func lengths(beats ...string) engine.Lane {
	l := lane(0.6, 90)
	for _, b := range beats {
		l.Pieces = append(l.Pieces, stroke(circle(0.6), "1", "-3", "1/4", b))
	}
	return l
}

func TestLocate(t *testing.T) {
	for _, test := range []struct {
		beats  []string
		at     float64
		round  int
		piece  int
		u, tol float64
	}{
		{[]string{"2", "2"}, 0, 0, 0, 0, 0},
		{[]string{"2", "2"}, 1, 0, 0, 0.5, 0},
		{[]string{"2", "2"}, 2, 0, 1, 0, 0}, // a seam belongs to what follows
		{[]string{"2", "2"}, 4, 1, 0, 0, 0},
		{[]string{"2", "2"}, math.Nextafter(4, 0), 1, 0, 0, 0}, // a seam but for rounding
		{[]string{"2", "2"}, 3.999999999, 0, 1, 1, 1e-9},
		{[]string{"2", "2"}, -1, -1, 1, 0.5, 0},
		{[]string{"2", "2"}, -2, -1, 1, 0, 0},
		{[]string{"2", "2"}, -4, -1, 0, 0, 0},
		{[]string{"2", "2"}, -5, -2, 1, 0.5, 0},
		{[]string{"2", "2"}, -1e-300, 0, 0, 0, 0},
		{[]string{"1/3", "1/3", "1/3"}, 1.0 / 3, 0, 1, 0, 0},
		{[]string{"1/3", "1/3", "1/3"}, 2.0 / 3, 0, 2, 0, 0},
		{[]string{"1/3", "1/3", "1/3"}, 4.0 / 3, 1, 1, 0, 0},
		{[]string{"1/3", "1/3", "1/3"}, 5.0 / 3, 1, 2, 0, 1e-12},
		{[]string{"1/3", "1/3", "1/3"}, -1.0 / 3, -1, 2, 0, 1e-12},
		{[]string{"1/3", "1/3", "1/3"}, 1000 + 2.0/3, 1000, 2, 0, 0},
		{[]string{"1/10", "1/5", "2/5"}, 0.1 + 0.2, 0, 2, 0, 0}, // 0.30000000000000004
		{[]string{"1/10", "1/5", "2/5"}, 0.7 * 3, 3, 0, 0, 1e-12},
	} {
		round, piece, u := engine.NewTrack(lengths(test.beats...)).Locate(test.at)
		if round != test.round || piece != test.piece || math.Abs(u-test.u) > test.tol {
			t.Errorf("%v: Locate(%v) = %d, %d, %v, want %d, %d, %v", test.beats, test.at, round, piece, u, test.round, test.piece, test.u)
		}
	}
}

// TestLocateSeams asks for every seam of many rounds by the float nearest to
// its exact beat, and by what a caller reckons.
func TestLocateSeams(t *testing.T) {
	r := chance.New(t)
	for range 300 {
		l := lane(0.6, 90)
		for range 1 + r.IntN(12) {
			p := stroke(circle(0.6), "1", "1", "1", "1")
			p.Beats = frac.New(int64(1+r.IntN(30)), int64(1+r.IntN(14)))
			l.Pieces = append(l.Pieces, p)
		}
		track := engine.NewTrack(l)
		for range 100 {
			round, piece := r.IntN(2000)-1000, r.IntN(len(l.Pieces))
			exact := frac.Int(int64(round)).Mul(l.Beats()).Add(l.Starts()[piece])
			reckoned := float64(round)*l.Beats().Float() + l.Starts()[piece].Float()
			for _, beat := range []float64{exact.Float(), reckoned, exact.Float() / 3 * 3} {
				gotR, gotP, gotU := track.Locate(beat)
				if gotR != round || gotP != piece || gotU > 1e-9 {
					t.Fatalf("Locate(%v = %v) = %d, %d, %v, want %d, %d, 0", exact, beat, gotR, gotP, gotU, round, piece)
				}
			}
		}
	}
}

// TestLocateInside: the place found is the beat that was asked for.
func TestLocateInside(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 300 {
		l := r.lane()
		track := engine.NewTrack(l)
		for _, beat := range r.beats(track, 20) {
			round, piece, u := track.Locate(beat)
			if piece < 0 || piece >= len(l.Pieces) || !(u >= 0 && u <= 1) {
				t.Fatalf("Locate(%v) = %d, %d, %v: out of range", beat, round, piece, u)
			}
			got := float64(round)*l.Beats().Float() + l.Starts()[piece].Float() + u*l.Pieces[piece].Length().Float()
			if math.Abs(got-beat) > 1e-9 {
				t.Fatalf("Locate(%v) = %d, %d, %v, which is beat %v", beat, round, piece, u, got)
			}
		}
	}
}
