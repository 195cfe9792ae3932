package seam_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// TestWorstOverRounds: figures worked out on paper. Each figure is by itself
// the one of greatest size, with its sign.
func TestWorstOverRounds(t *testing.T) {
	const w = math.Pi / 2
	quarter := stroke(circle(0.6), "1", "4/3", "1/4", "1")
	pinned := quarter
	pinned.PropAt = engine.Some(90)
	// One arm turn in 1 s, then two, with the prop turning 1/512 in each: before
	// the first seam of round r it stands at r/256 of a turn. The hand's jump
	// 2πR points up, so that it is sin 2πr/256 along and cos 2πr/256 across.
	slow := lane(0.5, 0, -360.0/512, stroke(circle(0.6), "1", "1/512", "1", "1"), stroke(circle(0.6), "2", "1/512", "1", "1"))
	slowPinned := lane(0.5, 0, -360.0/512, slow.Pieces[0], slow.Pieces[1])
	slowPinned.Pieces[0].PropAt = engine.Some(-360.0 / 512)
	oval := engine.EllipsePath(0, 0.8, 0.4, 30)
	tide := lane(0.6, 30, 30,
		eased(stroke(oval, "1", "2/3", "1/4", "1"), engine.EaseStart),
		eased(stroke(oval, "1", "2/3", "1/4", "1"), engine.EaseEnd),
		stroke(oval, "1", "2/3", "1/2", "2"))
	for _, test := range []struct {
		name          string
		lane          engine.Lane
		seam          int
		along, across float64
		hand, head    float64 // gaps
	}{
		// Rw(−1 + i) seen from 210°, 330° and 90°: the greatest along in the
		// second round, the greatest across in the first. Never closes.
		{"quarter turn over and over", lane(0.5, 90, 90, quarter), 0, -0.6 * w * math.Sqrt2 * math.Cos(math.Pi/12), -0.6 * w * math.Sqrt2 * math.Cos(math.Pi/12), 0.6 * math.Sqrt2, 0.6 * math.Sqrt2},
		// Pinned, every round is the first, seen from 210°; the prop at 2π/3 a second
		// is put back from 210° to 90°, which adds L·2π/3·(sin 120°, cos 120° − 1) to
		// the jump, and L(√3/2, 3/2) to the head's gap.
		{"quarter turn, pinned", lane(0.5, 90, 90, pinned), 0, 0.6*w*math.Sqrt2*math.Cos(5*math.Pi/12) + math.Pi/3*math.Sqrt(3)/2, -0.6*w*math.Sqrt2*math.Cos(math.Pi/12) - math.Pi/2, 0.6 * math.Sqrt2, math.Hypot(0.6+0.5*math.Sqrt(3)/2, 0.6+0.75)},
		// Of 256 rounds the first 64 are looked at: r = 63 at most.
		{"slow prop", slow, 0, 2 * math.Pi * 0.6 * math.Sin(2*math.Pi*63/256), 2 * math.Pi * 0.6, 0, 0},
		{"slow prop, pinned", slowPinned, 0, 0, 2 * math.Pi * 0.6, 0, 0},
		// 0.4w along −60°, seen from 150°, 30°, 270°: along −√3/2, 0, √3/2, of
		// which the earlier counts; across 1/2, −1, 1/2.
		{"setting off on an oval", tide, 1, -0.4 * w * math.Sqrt(3) / 2, -0.4 * w, 0, 0},
		// The same seen from 270°, 150°, 30°.
		{"stopping on an oval", tide, 2, 0.4 * w * math.Sqrt(3) / 2, -0.4 * w, 0, 0},
		{"in the middle of the eased half", tide, 0, 0, 0, 0, 0},
	} {
		s := seams(test.lane)[test.seam]
		if !close1e9(s.JumpAlong, test.along) || !close1e9(s.JumpAcross, test.across) || !close1e9(s.HandGap, test.hand) || !close1e9(s.HeadGap, test.head) {
			t.Errorf("%s: %+v, want %v along, %v across, gaps %v and %v", test.name, s, test.along, test.across, test.hand, test.head)
		}
	}
}

// TestTieAtSpeed: nearly 64,000 turns of the prop in a beat, of which rounding
// leaves 1e-10 radians. From round to round the prop stands the other way
// about, so that the hand's jump is as much along it as it was against it: the
// first round's sign counts, whatever rounding adds.
func TestTieAtSpeed(t *testing.T) {
	for _, test := range []struct{ cycles, prop string }{{"1000", "63.9995"}, {"800", "61.000625"}, {"999", "127873/1998"}} {
		for start := engine.Degrees(3); start < 180; start += 7 {
			l := lane(0.6, 90, start,
				stroke(circle(0.3), "1", test.prop, test.cycles, "1"),
				stroke(circle(0.3), "2", "0", "1", "1"))
			if got := engine.NewTrack(l).Closing().Rounds.Int64(); got != 2 {
				t.Fatalf("prop %s: closes after %d rounds, want 2", test.prop, got)
			}
			// Arm rates 2π·cycles and 4π; the hand goes along 180° at the top. In
			// the first round the prop there is half a turn from where it started.
			dv := 0.3 * (4*math.Pi - 2*math.Pi*fr(test.cycles).Float())
			want := dv * math.Cos(float64(start)*math.Pi/180)
			if got := seams(l)[0].JumpAlong; math.Abs(got-want) > 1e-4 {
				t.Errorf("%s cycles of prop %s from %v°: JumpAlong = %v, want %v", test.cycles, test.prop, start, got, want)
			}
		}
	}
}

// TestDenominatorsBeyondCounting: a lane that closes after more rounds than a
// machine word counts is looked at like any other.
func TestDenominatorsBeyondCounting(t *testing.T) {
	l := lane(0.5, 0, 0, stroke(circle(0.6), "1", "0.30000000000000000000000000000000000001", "1", "1"))
	l.Pieces = append(l.Pieces, engine.Stroke(circle(0.6), frac.Int(2), frac.Int(0), frac.Int(1), frac.Int(1)))
	s := seams(l)[0]
	// The jump 2πR − L·0.3·2π i is seen from ten directions, 36° apart, the
	// hand's part pointing up.
	want := 0.0
	for r := range 10 {
		if x := 2 * math.Pi * 0.6 * math.Sin(2*math.Pi*0.3*float64(r+1)); math.Abs(x) > math.Abs(want)+1e-9 {
			want = x
		}
	}
	if !close1e9(s.JumpAlong, want) {
		t.Errorf("JumpAlong = %v, want %v", s.JumpAlong, want)
	}
}
