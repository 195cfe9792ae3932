package seam_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// alike checks that got is want with lengths k times as large, along jumps v
// and across jumps a times.
func alike(got, want seam.Seam, k, v, a float64) bool {
	return close1e9(got.HandGap, k*want.HandGap) && close1e9(got.HeadGap, k*want.HeadGap) &&
		math.Abs(float64(got.PropGap-want.PropGap)) < 1e-8 && math.Abs(float64(got.Turn-want.Turn)) < 1e-6 &&
		got.HasTurn == want.HasTurn && got.HandTurnsBack == want.HandTurnsBack &&
		got.ArmReverses == want.ArmReverses && got.PropReverses == want.PropReverses &&
		close1e9(got.JumpAlong, v*want.JumpAlong) && close1e9(got.JumpAcross, a*want.JumpAcross)
}

func pattern(l engine.Lane) engine.Pattern {
	return engine.Pattern{Tempo: 60, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}}
}

// TestMirrorKeepsVerdicts: left and right change, and with them anticlockwise
// and clockwise; a wheel stays as it is.
func TestMirrorKeepsVerdicts(t *testing.T) {
	r := lanes{chance.New(t)}
	for range 1000 {
		l := r.lane()
		across := -1.0
		if l.Plane == engine.Wheel {
			across = 1
		}
		want, got := seams(l), seams(pattern(l).Mirror().Lanes[0])
		for i := range want {
			if !alike(got[i], want[i], 1, 1, across) || got[i].Verdict != want[i].Verdict || got[i].After != i {
				t.Fatalf("seam %d in the mirror = %+v, was %+v; lane %+v", i+1, got[i], want[i], l)
			}
		}
	}
}

// TestTurnKeepsSeams: a pattern that has no pendulum knows no up and down.
func TestTurnKeepsSeams(t *testing.T) {
	r := lanes{chance.New(t)}
	for range 1000 {
		l := r.lane()
		for i := range l.Pieces {
			l.Pieces[i].Swing, l.Pieces[i].SwingBack = 0, false
		}
		want, got := seams(l), seams(pattern(l).Turn(r.angle()).Lanes[0])
		for i := range want {
			if !alike(got[i], want[i], 1, 1, 1) || got[i].Verdict != want[i].Verdict {
				t.Fatalf("seam %d turned = %+v, was %+v; lane %+v", i+1, got[i], want[i], l)
			}
		}
	}
}

// TestScaleScalesLengths, and speeds with them; tempo scales speeds alone.
func TestScaleScalesLengths(t *testing.T) {
	r := lanes{chance.New(t)}
	for range 1000 {
		l := r.lane()
		k, tempo := 0.25+2*r.Float64(), 10+390*r.Float64()
		want := seams(l)
		scaled := seams(pattern(l).Scale(k).Lanes[0])
		faster := seam.Of(engine.NewTrack(l), tempo, false)
		for i := range want {
			if !alike(scaled[i], want[i], k, k, k) {
				t.Fatalf("seam %d %v times as large = %+v, was %+v; lane %+v", i+1, k, scaled[i], want[i], l)
			}
			if v := tempo / 60; !alike(faster[i], want[i], 1, v, v) {
				t.Fatalf("seam %d %v times as fast = %+v, was %+v; lane %+v", i+1, v, faster[i], want[i], l)
			}
		}
	}
}

// TestCutAddsSmoothSeams: nothing moves, so the new seam asks for nothing, under
// any arm law, and the others are as they were.
func TestCutAddsSmoothSeams(t *testing.T) {
	r := lanes{chance.New(t)}
	for range 1000 {
		l := r.lane()
		i := r.IntN(len(l.Pieces))
		cut, err := l.Cut(i, l.Pieces[i].Length().Mul(frac.New(int64(1+r.IntN(96)), 97)))
		if err != nil {
			t.Fatal(err)
		}
		want, got := seams(l), seams(cut)
		s := got[i]
		if s.Verdict != seam.Smooth || s.HandGap > 1e-9 || s.HeadGap > 1e-9 || s.PropGap > 1e-8 ||
			math.Abs(s.JumpAlong) > 1e-8 || math.Abs(s.JumpAcross) > 1e-8 || s.HandTurnsBack || s.ArmReverses || s.PropReverses {
			t.Fatalf("the cut of piece %d = %+v, want nothing; lane %+v", i+1, s, l)
		}
		for j, rest := range append(append([]seam.Seam{}, got[:i]...), got[i+1:]...) {
			if !alike(rest, want[j], 1, 1, 1) || rest.Verdict != want[j].Verdict {
				t.Fatalf("seam %d after a cut of piece %d = %+v, was %+v; lane %+v", j+1, i+1, rest, want[j], l)
			}
		}
	}
}

// TestAgainstPlaces reckons gaps and jumps from hand's and head's places alone:
// speeds by one-sided differences of fourth order, rounds by counting.
func TestAgainstPlaces(t *testing.T) {
	r := lanes{chance.New(t)}
	for range 500 {
		l := r.lane()
		track := engine.NewTrack(l)
		got := seams(l)
		rounds := roundsByCounting(l, track)
		for i := range l.Pieces {
			next := (i + 1) % len(l.Pieces)
			var hand, head, along, across, speed float64
			for round := range rounds {
				after := round
				if next == 0 {
					after++
				}
				a, va := endOf(track, round, i, 1)
				b, vb := endOf(track, after, next, 0)
				jump := (vb - va) / (a.Head - a.Hand) * complex(l.Tether, 0)
				hand = max(hand, cmplx.Abs(b.Hand-a.Hand))
				head = max(head, cmplx.Abs(b.Head-a.Head))
				along, across = max(along, math.Abs(real(jump))), max(across, math.Abs(imag(jump)))
				speed = max(speed, cmplx.Abs(va), cmplx.Abs(vb))
			}
			s := got[i]
			if math.Abs(s.HandGap-hand) > 1e-9 || math.Abs(s.HeadGap-head) > 1e-9 ||
				math.Abs(math.Abs(s.JumpAlong)-along) > 1e-6*(1+speed) || math.Abs(math.Abs(s.JumpAcross)-across) > 1e-6*(1+speed) {
				t.Fatalf("seam %d = %+v, want gaps %v and %v, jumps of size %v and %v; lane %+v", i+1, s, hand, head, along, across, l)
			}
		}
	}
}

// endOf returns the places at one end of a piece and the head's velocity in m a
// beat there, as the limit from inside.
func endOf(track *engine.Track, round, piece int, u float64) (engine.Point, complex128) {
	p := track.Lane.Pieces[piece]
	span := p.Length().Float()
	// Small against the time in which arm or prop turns by a radian.
	turns := math.Abs(p.Arm.Mul(p.Cycles).Float()) + math.Abs(p.Prop.Mul(p.Cycles).Float())*(1+p.Swing.Radians())
	step := 2e-4 / (1 + turns)
	if u == 1 {
		step = -step
	}
	at := func(k float64) complex128 { return track.PointAt(round, piece, u+k*step).Head }
	sum := -25*at(0) + 48*at(1) - 36*at(2) + 16*at(3) - 3*at(4)
	return track.PointAt(round, piece, u), sum / complex(12*step*span, 0)
}

// roundsByCounting plays rounds until hand and head are where they began, 64 at
// most; a lane that never closes has as many as that, or one if it is pinned.
func roundsByCounting(l engine.Lane, track *engine.Track) int {
	if l.Pinned() {
		return 1
	}
	first := track.PointAt(0, 0, 0)
	for k := 1; k < 64; k++ {
		end, begin := track.PointAt(k-1, len(l.Pieces)-1, 1), track.PointAt(k, 0, 0)
		if cmplx.Abs(end.Hand-first.Hand) > 1e-6 {
			return 64
		}
		if cmplx.Abs(begin.Head-first.Head) < 1e-9 {
			return k
		}
	}
	return 64
}
