package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
)

// closedStar runs an elementary pattern of ratio P/Q as one round of Q turns,
// in q beats.
func closedStar(n string, q int, radius, tether float64, arm string) *engine.Track {
	prop := fr(n).Mul(fr(arm))
	p := stroke(circle(radius), arm, "0", "1", "1")
	p.Prop = prop
	track := engine.NewTrack(lane(tether, 0, p))
	if got := track.Closing().Rounds.Int64(); got != int64(q) {
		panic("fixture: " + n + " does not close as it is said to")
	}
	return track
}

// TestTurningNumber: H. Whitney, "On regular closed curves in the plane",
// Compositio Math. 4 (1937): the turning number of a closed curve does not
// change while it is bent without a cusp. With the prop's speed on the head
// above the arm's, |n|L > R, the curve bends into the prop's circle gone round
// P times; below, into the arm's gone round Q times.
func TestTurningNumber(t *testing.T) {
	for _, test := range []struct {
		n              string
		q              int
		radius, tether float64
		arm            string
		want           int
	}{
		{"-3", 1, 0.6, 0.6, "1", -3},
		{"-3", 1, 1, 0.34, "1", -3},
		{"-3", 1, 1, 0.33, "1", 1},
		{"-2", 1, 0.6, 0.6, "1", -2},
		{"-2", 1, 0.6, 0.2, "1", 1},
		{"-1", 1, 0.6, 0.7, "1", -1},
		{"-1", 1, 0.6, 0.5, "1", 1},
		{"0", 1, 0.6, 0.5, "1", 1},
		{"1", 1, 0.6, 0.6, "1", 1},
		{"2", 1, 0.6, 0.6, "1", 2},
		{"2", 1, 0.6, 0.2, "1", 1},
		{"5", 1, 0.6, 0.6, "1", 5},
		{"3/2", 2, 0.6, 0.6, "1", 3},
		{"3/2", 2, 0.6, 0.3, "1", 2},
		{"-1/2", 2, 0.3, 0.8, "1", -1},
		{"-1/2", 2, 0.6, 0.8, "1", 2},
		{"-7/3", 3, 0.6, 0.6, "1", -7},
		{"-7/3", 3, 0.6, 0.2, "1", 3},
		{"-3", 1, 0.6, 0.6, "-1", 3}, // the arm clockwise: all the other way
		{"2", 1, 0.6, 0.2, "-1", -1},
	} {
		track := closedStar(test.n, test.q, test.radius, test.tether, test.arm)
		const perTurn = 2000
		n := perTurn * test.q
		turned := 0.0
		for k := range n {
			a := track.At(float64(k) / perTurn).HeadVel
			b := track.At(float64(k+1) / perTurn).HeadVel
			step := cmplx.Phase(b / a)
			if math.Abs(step) > math.Pi/2 {
				t.Fatalf("n = %s, R = %v, L = %v: the tangent turns by %v in one step: too coarse", test.n, test.radius, test.tether, step)
			}
			turned += step / (2 * math.Pi)
		}
		if math.Abs(turned-float64(test.want)) > 1e-9 {
			t.Errorf("n = %s, R = %v, L = %v, arm %s: turning number %v, want %d", test.n, test.radius, test.tether, test.arm, turned, test.want)
		}
	}
}
