package engine_test

import (
	"math"
	"slices"
	"testing"
)

// segment is one step of a sampled curve, its left end first.
type segment struct {
	a, b complex128
	k    int
}

// crossings counts the pairs of segments of a closed polygon that cross, by a
// sweep from left to right.
func crossings(points []complex128) int {
	segments := make([]segment, len(points))
	for k, a := range points {
		b := points[(k+1)%len(points)]
		if real(b) < real(a) {
			a, b = b, a
		}
		segments[k] = segment{a, b, k}
	}
	slices.SortFunc(segments, func(s, t segment) int {
		switch {
		case real(s.a) < real(t.a):
			return -1
		case real(s.a) > real(t.a):
			return 1
		}
		return 0
	})
	side := func(a, b, c complex128) bool {
		return real(b-a)*imag(c-a) > imag(b-a)*real(c-a)
	}
	count := 0
	for i, s := range segments {
		for _, u := range segments[i+1:] {
			if real(u.a) > real(s.b) {
				break
			}
			apart := max(s.k-u.k, u.k-s.k)
			if apart == 1 || apart == len(points)-1 {
				continue // neighbours share an end
			}
			if side(s.a, s.b, u.a) != side(s.a, s.b, u.b) && side(u.a, u.b, s.a) != side(u.a, u.b, s.b) {
				count++
			}
		}
	}
	return count
}

// TestSelfCrossings. A flower of ratio P/Q has N = |P − Q| petals. Two reasons
// make its head's track cross itself, and they add up:
//
//   - Going round. If the hand's circle is the greater (R > L), the track goes
//     round the middle Q times while its distance from there swells and shrinks
//     N times: drawn taut it is the star polygon {N/Q}, which crosses itself
//     N(Q − 1) times, so never when Q = 1. If the prop's circle is the greater
//     (R < L), it goes round |P| times: N(|P| − 1).
//   - Loops. If the hand's circle is the greater and yet the prop's speed on the
//     head the higher (L < R < |n|L), every petal is a loop of its own: N more.
//     Below that (R > |n|L) the petals are bulges, without a loop. If the
//     prop's circle is the greater the petals are the points of the star and
//     have been counted.
//
// So the triquetra crosses itself three times for R < L by the star {3/2}, three
// times for L < R < 2L by its loops, and not at all for R > 2L. Near R = L new
// pairs may arise as the inner ends of the petals pass each other; those sizes
// and the cusps themselves are left out.
func TestSelfCrossings(t *testing.T) {
	for _, test := range []struct {
		n              string
		q              int
		radius, tether float64
		want           int
	}{
		{"-1", 1, 0.6, 0.3, 0},
		{"-1", 1, 0.3, 0.6, 0},
		{"-2", 1, 0.7, 0.3, 0},
		{"-2", 1, 0.5, 0.3, 3},
		{"-2", 1, 0.3, 0.5, 3},
		{"-3", 1, 0.7, 0.2, 0},
		{"-3", 1, 0.4, 0.2, 4},
		{"-3", 1, 0.2, 0.4, 8},
		{"-4", 1, 0.9, 0.2, 0},
		{"-4", 1, 0.4, 0.2, 5},
		{"-4", 1, 0.2, 0.4, 15},
		{"-5", 1, 0.5, 0.2, 6},
		{"-5", 1, 0.2, 0.4, 24},
		{"2", 1, 0.7, 0.3, 0},
		{"2", 1, 0.5, 0.3, 1},
		{"2", 1, 0.3, 0.5, 1},
		{"3", 1, 0.7, 0.2, 0},
		{"3", 1, 0.4, 0.2, 2},
		{"3", 1, 0.2, 0.4, 4},
		{"4", 1, 0.4, 0.2, 3},
		{"4", 1, 0.2, 0.4, 9},
		{"5", 1, 0.5, 0.2, 4},
		{"5", 1, 0.2, 0.4, 16},
		{"3/2", 2, 0.6, 0.3, 1},
		{"3/2", 2, 0.6, 0.5, 2},
		{"3/2", 2, 0.3, 0.6, 2},
		{"5/2", 2, 0.6, 0.2, 3},
		{"5/2", 2, 0.3, 0.6, 12},
		{"-1/2", 2, 0.6, 0.3, 3},
		{"-3/2", 2, 0.6, 0.2, 5},
		{"-3/2", 2, 0.3, 0.6, 10},
		{"-7/3", 3, 0.6, 0.2, 20},
	} {
		track := closedStar(test.n, test.q, test.radius, test.tether, "1")
		// A prime number of points from an odd place: no point on an axis of the
		// curve, where the crossings lie.
		const n = 4001
		points := make([]complex128, n)
		for k := range points {
			points[k] = track.At(math.Sqrt2 + float64(test.q)*float64(k)/n).Head
		}
		if got := crossings(points); got != test.want {
			t.Errorf("n = %s, R = %v, L = %v: %d self-crossings, want %d", test.n, test.radius, test.tether, got, test.want)
		}
	}
}

// TestCrossingsCount holds the counter itself: star polygons {N/k} cross N(k − 1) times.
func TestCrossingsCount(t *testing.T) {
	for _, test := range []struct{ points, step, want int }{{5, 1, 0}, {5, 2, 5}, {7, 2, 7}, {7, 3, 14}, {8, 3, 16}, {11, 5, 44}} {
		star := make([]complex128, test.points)
		for k := range star {
			a := 2*math.Pi*float64(k*test.step)/float64(test.points) + 0.1
			star[k] = complex(math.Cos(a), math.Sin(a))
		}
		if got := crossings(star); got != test.want {
			t.Errorf("crossings of the star {%d/%d} = %d, want %d", test.points, test.step, got, test.want)
		}
	}
}
