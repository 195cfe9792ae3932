package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// jump is the head's change of velocity over a seam, m a beat, in the frame of
// the prop before it: the real part along the tether, the imaginary part
// across.
func jump(before, after engine.State) complex128 {
	return (after.HeadVel - before.HeadVel) / cmplx.Rect(1, before.Prop)
}

// TestTriquetraHand: the hand's own track is half a circle and its diameter.
// That a triquetra stands against a pendulum as box-mode four-petal antispin
// with linear isolation is common practice; that it closes in one round, and
// is smooth at beats of 4 to 1, follows from the speeds at the seams.
func TestTriquetraHand(t *testing.T) {
	const r = 0.6
	l := lane(r, 180,
		stroke(circle(r), "1/2", "-3/2", "1", "4"),
		stroke(engine.LinePath(0, r, 0), "1/2", "-1/2", "1", "1"))
	l.PropAt = 0
	track := engine.NewTrack(l)
	if c := track.Closing(); c.Rounds.Int64() != 1 || !c.Beats.Equal(frac.Int(5)) || c.HandGap > 1e-12 {
		t.Errorf("Closing() = %v rounds, %v beats, gap %v, want 1, 5, 0", c.Rounds, c.Beats, c.HandGap)
	}
	for _, seam := range []struct {
		name          string
		before, after engine.State
		hand, head    complex128
		vel           complex128
	}{
		// ω = π/4: the hand comes at ωR and the prop adds 3ωR; on the stroke the
		// hand stands and the prop alone gives 4ωR.
		{"circle to stroke", track.AtPiece(0, 0, 1), track.AtPiece(0, 1, 0), r, 0, complex(0, math.Pi*r)},
		{"stroke to circle", track.AtPiece(0, 1, 1), track.AtPiece(1, 0, 0), -r, 0, complex(0, -math.Pi*r)},
	} {
		for _, s := range []struct {
			side  string
			state engine.State
		}{{"before", seam.before}, {"after", seam.after}} {
			if d := cmplx.Abs(s.state.Hand-seam.hand) + cmplx.Abs(s.state.Head-seam.head); d > 1e-12 {
				t.Errorf("%s, %s: hand %v, head %v, want %v, %v", seam.name, s.side, s.state.Hand, s.state.Head, seam.hand, seam.head)
			}
			if d := cmplx.Abs(s.state.HeadVel - seam.vel); d > 1e-12 {
				t.Errorf("%s, %s: head velocity %v, want %v", seam.name, s.side, s.state.HeadVel, seam.vel)
			}
		}
	}
	// Petal tips on the half circle at 225° and 315°, and on the stroke straight up.
	for _, tip := range []struct {
		piece int
		u     float64
		want  complex128
	}{{0, 0.25, cmplx.Rect(2*r, rad(225))}, {0, 0.75, cmplx.Rect(2*r, rad(315))}, {1, 0.5, complex(0, r)}} {
		if got := track.AtPiece(0, tip.piece, tip.u).Head; cmplx.Abs(got-tip.want) > 1e-12 {
			t.Errorf("piece %d at share %v: head %v, want the tip %v", tip.piece+1, tip.u, got, tip.want)
		}
	}
}

// TestTurningBackSmoothly: two halves of a circle, there and back, met at a
// petal tip. With the arm's rate ω the head comes with ω(R + n₁L) across the
// tether and leaves with ω(−R + mL): no jump exactly when m = n₁ + 2R/L.
func TestTurningBackSmoothly(t *testing.T) {
	for _, test := range []struct {
		n1, m          string
		radius, tether float64
		want           float64 // across, in ω
	}{
		{"1", "3", 0.6, 0.6, 0},         // extension, four-petal antispin flower
		{"3", "5", 0.6, 0.6, 0},         // two-petal in-spin flower
		{"1", "2", 0.3, 0.6, 0},         // R = L/2
		{"1", "5", 1.2, 0.6, 0},         // R = 2L
		{"1", "3", 0.5, 0.6, 0.2},       // 2L − 2R
		{"1", "3", 0.75, 0.6, -0.3},     // 2L − 2R
		{"2", "3", 0.6, 0.6, 0.6 - 1.2}, // one L too few
	} {
		l := lane(test.tether, 90, stroke(circle(test.radius), "1", test.n1, "1", "1"), stroke(circle(test.radius), "-1", test.m, "1", "1"))
		track := engine.NewTrack(l)
		got := jump(track.AtPiece(0, 0, 1), track.AtPiece(0, 1, 0))
		if want := complex(0, 2*math.Pi*test.want); cmplx.Abs(got-want) > 1e-12 {
			t.Errorf("n = %s into −%s, R = %v, L = %v: jump %v, want %v", test.n1, test.m, test.radius, test.tether, got, want)
		}
	}
}

// TestIsolationIntoAntispin: the prop points at the centre; smooth when the
// arm's rates are as (L − R) to (R + mL).
func TestIsolationIntoAntispin(t *testing.T) {
	for _, test := range []struct{ m int64 }{{1}, {2}, {3}, {4}} {
		const radius, tether = 0.3, 0.6
		// (L − R)/(R + mL) = 0.3/(0.3 + 0.6m) = 1/(1 + 2m): so much slower back.
		back := engine.Stroke(circle(radius), frac.Int(-1), frac.Int(test.m), frac.Int(1), frac.Int(1+2*test.m))
		l := lane(tether, 90, stroke(circle(radius), "1", "1", "1", "1"), back)
		l.PropAt = 270
		track := engine.NewTrack(l)
		if got := jump(track.AtPiece(0, 0, 1), track.AtPiece(0, 1, 0)); cmplx.Abs(got) > 1e-12 {
			t.Errorf("isolation into −%d: jump %v, want 0", test.m, got)
		}
	}
}

// TestSCap of extension and triquetra: four half circles about (∓R, 0).
func TestSCap(t *testing.T) {
	for _, size := range []struct{ r, l float64 }{{0.3, 0.6}, {0.5, 0.6}} {
		left, right := engine.CirclePath(complex(-size.r, 0), size.r), engine.CirclePath(complex(size.r, 0), size.r)
		l := lane(size.l, 180,
			stroke(left, "1", "1", "1/2", "1"), placedArm(stroke(right, "-1", "2", "1/2", "1"), 180),
			stroke(right, "1", "1", "1/2", "1"), placedArm(stroke(left, "-1", "2", "1/2", "1"), 0))
		track := engine.NewTrack(l)
		if got := track.Closing(); got.Rounds.Int64() != 1 || !track.PerRound.Equal(frac.Int(3)) {
			t.Errorf("R = %v, L = %v: Closing() = %v rounds, %v prop turns, want 1, 3", size.r, size.l, got.Rounds, track.PerRound)
		}
		// ω is half a turn a beat: |2R − L|ω at the ends, Lω in the middle.
		for i, want := range []float64{size.l, math.Abs(2*size.r - size.l), size.l, math.Abs(2*size.r - size.l)} {
			round, next := 0, i+1
			if next == 4 {
				round, next = 1, 0
			}
			before, after := track.AtPiece(0, i, 1), track.AtPiece(round, next, 0)
			if apart(before, after) > 1e-12 {
				t.Errorf("R = %v, L = %v: gap of %v m after piece %d", size.r, size.l, apart(before, after), i+1)
			}
			if got := math.Abs(imag(jump(before, after))) / math.Pi; math.Abs(got-want) > 1e-12 {
				t.Errorf("R = %v, L = %v: jump across after piece %d = %vω, want %vω", size.r, size.l, i+1, got, want)
			}
		}
	}
}
