package engine_test

import (
	"testing"

	"whorlbench/engine"
)

func TestSnapCut(t *testing.T) {
	antispin := stroke(circle(0.6), "1", "-3", "1", "4") // tips and quarters at whole beats
	triquetra := stroke(circle(0.6), "1", "-2", "1", "3")
	extension := stroke(circle(0.6), "1", "1", "1", "4")
	eased := stroke(circle(0.6), "1", "-3", "1/2", "6")
	eased.Law = engine.EaseBoth
	easedExtension := extension
	easedExtension.Law = engine.EaseBoth
	carried := stroke(circle(0.6), "1", "0", "1/8", "4")
	still := stroke(circle(0.6), "0", "1/4", "1", "4")
	point := stroke(engine.PointPath(0), "1", "1/2", "1", "4")
	swing := stroke(circle(0.6), "1/16", "1", "1", "4")
	swing.Swing = 90
	for _, test := range []struct {
		name  string
		lane  engine.Lane
		piece int
		beat  float64 // from the piece's beginning
		near  float64
		want  string
	}{
		{"on a tip", lane(0.6, 90, antispin), 0, 1.03, 0.05, "1"},
		{"beside it, but not near enough", lane(0.6, 90, antispin), 0, 1.03, 0.02, "49/48"},
		{"nothing near", lane(0.6, 90, antispin), 0, 1.4, 0.05, "67/48"},
		// Tips of the triquetra from α = ψ = 90° lie a third of a turn on: at
		// whole beats. Quarters of the arm lie at 3/4, 3/2 and 9/4.
		{"tip at a beat", lane(0.6, 90, triquetra), 0, 2.04, 0.1, "2"},
		{"a quarter turn", lane(0.6, 90, triquetra), 0, 0.8, 0.1, "3/4"},
		{"the nearer of tip and quarter", lane(0.6, 90, triquetra), 0, 0.86, 0.5, "3/4"},
		{"the other way", lane(0.6, 90, triquetra), 0, 0.9, 0.5, "1"},
		// From ψ = 90°, α = 0°: the first tip at α = (2·0 + 90)/3 = 30°, that is a
		// twelfth of a turn, a quarter beat, on.
		{"a tip off the beat", startAt(0, 90, lane(0.6, 0, triquetra)), 0, 0.27, 0.05, "1/4"},
		{"its fellow", startAt(0, 90, lane(0.6, 0, triquetra)), 0, 1.2, 0.06, "5/4"},
		// With a start of 10° neither tips nor quarters fall on beats.
		{"a beat", startAt(10, 10, lane(0.6, 10, triquetra)), 0, 1.01, 0.02, "1"},
		{"a quarter turn off the beat", startAt(10, 10, lane(0.6, 10, triquetra)), 0, 0.68, 0.03, "2/3"},
		{"an extension has no tips", lane(0.6, 90, extension), 0, 1.35, 0.05, "65/48"},
		{"nor has a slanting one", startAt(10, 10, lane(0.6, 10, extension)), 0, 1.35, 0.05, "65/48"},
		{"nor an eased one", lane(0.6, 90, easedExtension), 0, 1.6, 0.05, "77/48"},
		// The eased arm is a quarter on after a third of the time: (1 − cos π/3)/2 is
		// a quarter of the half turn, an eighth, and its middle a quarter of a turn.
		{"eased, the middle", lane(0.6, 90, eased), 0, 2.96, 0.05, "3"},
		{"a carried prop has no tips", startAt(100, 110, lane(0.6, 90, carried)), 0, 0.9, 0.05, "43/48"},
		{"an arm that stays has neither", startAt(90, 70, lane(0.6, 90, still)), 0, 0.9, 0.05, "43/48"},
		{"a hand that stays has neither", lane(0.6, 90, point), 0, 1.35, 0.05, "65/48"},
		{"a pendulum has no tips", startAt(100, 0, lane(0.6, 90, swing)), 0, 1.35, 0.05, "65/48"},
		{"the lane's beat, not the piece's", lane(0.6, 90, named("1/3"), startless(extension)), 1, 0.7, 0.05, "2/3"},
		{"the lane's 1/48 beat", lane(0.6, 90, named("1/100"), startless(extension)), 1, 0.3, 0.001, "121/400"},
	} {
		track := engine.NewTrack(test.lane)
		u := test.beat / track.Legs[test.piece].Span
		got := track.SnapCut(test.piece, u, test.near)
		if !got.Equal(fr(test.want)) {
			t.Errorf("%s: SnapCut at beat %v, near %v = %v, want %s", test.name, test.beat, test.near, got, test.want)
		}
		if _, err := test.lane.Cut(test.piece, got); err != nil {
			t.Errorf("%s: Cut at beat %v gives %v", test.name, got, err)
		}
	}
}

func startAt(arm, prop engine.Degrees, l engine.Lane) engine.Lane {
	l.ArmAt, l.PropAt = arm, prop
	return l
}

// startless is a piece that starts at 10° on its circle, away from anything.
func startless(p engine.Piece) engine.Piece {
	p.ArmAt = engine.Some(10)
	return p
}
