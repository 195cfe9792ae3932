package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// slope is the central difference of fourth order of f at 0 with step h.
func slope(f func(x float64) complex128, h float64) complex128 {
	near := f(h) - f(-h)
	far := f(2*h) - f(-2*h)
	return (8*near - far) / complex(12*h, 0)
}

// TestRates holds every rate against the slope of what it is the rate of.
func TestRates(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 1000 {
		l := r.lane()
		track := engine.NewTrack(l)
		i := r.IntN(len(l.Pieces))
		p := l.Pieces[i]
		span := p.Length().Float()
		// The fastest that anything turns here, radians a beat, and the size of it.
		w := (1 + abs(p.Arm.Float()) + abs(p.Prop.Float())*(1+rad(float64(p.Swing)))) * p.Cycles.Float() * 2 * math.Pi / p.Beats.Float()
		w += 2 / p.Beats.Float()
		size := 1 + p.Path.A + p.Path.B + l.Tether
		h := min(1e-3/w, span/10)
		u := 0.25 + r.Float64()/2
		round := r.IntN(4)
		state := func(dt float64) engine.State { return track.AtPiece(round, i, u+dt/span) }
		at := state(0)
		for _, check := range []struct {
			name      string
			got       complex128
			of        func(s engine.State) complex128
			tolerance float64
		}{
			{"ArmRate", complex(at.ArmRate, 0), func(s engine.State) complex128 { return complex(s.Arm, 0) }, w},
			{"PropRate", complex(at.PropRate, 0), func(s engine.State) complex128 { return complex(s.Prop, 0) }, w},
			{"HandVel", at.HandVel, func(s engine.State) complex128 { return s.Hand }, w * size},
			{"HeadVel", at.HeadVel, func(s engine.State) complex128 { return s.Head }, w * size},
			{"HandAcc", at.HandAcc, func(s engine.State) complex128 { return s.HandVel }, w * w * size},
			{"HeadAcc", at.HeadAcc, func(s engine.State) complex128 { return s.HeadVel }, w * w * size},
		} {
			want := slope(func(dt float64) complex128 { return check.of(state(dt)) }, h)
			if d := cmplx.Abs(check.got - want); !(d <= 1e-8*check.tolerance) {
				t.Fatalf("%s = %v, want the slope %v (%.3g off, step %.3g); piece %+v", check.name, check.got, want, d, h, p)
			}
		}
	}
}

// TestEndRates: at both ends of a piece the rate is the limit from inside.
func TestEndRates(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 300 {
		l := r.lane()
		track := engine.NewTrack(l)
		i := r.IntN(len(l.Pieces))
		for _, end := range []struct{ at, in float64 }{{0, 1e-9}, {1, 1 - 1e-9}} {
			a, b := track.AtPiece(0, i, end.at), track.AtPiece(0, i, end.in)
			scale := 1 + cmplx.Abs(a.HeadAcc) + cmplx.Abs(a.HandAcc)
			if d := cmplx.Abs(a.HeadVel-b.HeadVel) + cmplx.Abs(a.HandVel-b.HandVel); !(d <= 1e-6*scale*(1+l.Pieces[i].Length().Float())) {
				t.Fatalf("HandVel, HeadVel at share %v = %v, %v, just inside %v, %v; piece %+v", end.at, a.HandVel, a.HeadVel, b.HandVel, b.HeadVel, l.Pieces[i])
			}
		}
	}
}

// TestCarryingOn: over a seam the arm angle and the prop angle go on as they
// are, unless what follows is placed or hangs as a pendulum; where path and
// angles go on, so do hand and head.
func TestCarryingOn(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 1000 {
		l := r.lane()
		track := engine.NewTrack(l)
		round := r.IntN(5)
		for i := range l.Pieces {
			next, nextRound := i+1, round
			if next == len(l.Pieces) {
				next, nextRound = 0, round+1
			}
			a, b := track.AtPiece(round, i, 1), track.AtPiece(nextRound, next, 0)
			p := l.Pieces[next]
			if next == 0 {
				// The hand begins every round in the same place, a pinned prop too.
				first := track.AtPiece(0, 0, 0)
				if d := cmplx.Abs(b.Hand - first.Hand); d > 1e-12 {
					t.Fatalf("round %d begins with the hand %v m off", nextRound, d)
				}
				if d := apart(b, first); l.Pinned() && d > 1e-12 {
					t.Fatalf("round %d of a pinned lane begins %v m off", nextRound, d)
				}
			}
			armOn := !p.ArmAt.Set && next != 0
			propOn := !p.PropAt.Set && p.Swing == 0 && !(next == 0 && l.Pinned())
			if d := math.Abs(math.Remainder(a.Arm-b.Arm, 2*math.Pi)); armOn && d > 1e-9 {
				t.Fatalf("seam %d: arm %v before, %v after; lane %+v", i+1, a.Arm, b.Arm, l)
			}
			if d := math.Abs(math.Remainder(a.Prop-b.Prop, 2*math.Pi)); propOn && d > 1e-9 {
				t.Fatalf("seam %d: prop %v before, %v after; lane %+v", i+1, a.Prop, b.Prop, l)
			}
			if armOn && propOn && p.Path == l.Pieces[i].Path && apart(a, b) > 1e-9 {
				t.Fatalf("seam %d: hand and head jump %v m; lane %+v", i+1, apart(a, b), l)
			}
		}
	}
}

// TestCircleByHand: R = 0.6 at half a turn a beat, L = 0.4 at one and a half the
// other way. Speeds ωR and ω²R from any mechanics text.
func TestCircleByHand(t *testing.T) {
	track := engine.NewTrack(lane(0.4, 0, stroke(circle(0.6), "1", "-3", "1", "2")))
	w, v := math.Pi, -3*math.Pi
	got := track.At(0)
	want := engine.State{
		ArmRate: w, PropRate: v,
		Hand: 0.6, Head: 1,
		HandVel: complex(0, 0.6*w), HeadVel: complex(0, 0.6*w+0.4*v),
		HandAcc: complex(-0.6*w*w, 0), HeadAcc: complex(-0.6*w*w-0.4*v*v, 0),
	}
	for _, check := range []struct {
		name      string
		got, want complex128
	}{
		{"Hand", got.Hand, want.Hand}, {"Head", got.Head, want.Head},
		{"HandVel", got.HandVel, want.HandVel}, {"HeadVel", got.HeadVel, want.HeadVel},
		{"HandAcc", got.HandAcc, want.HandAcc}, {"HeadAcc", got.HeadAcc, want.HeadAcc},
		{"ArmRate", complex(got.ArmRate, 0), complex(want.ArmRate, 0)},
		{"PropRate", complex(got.PropRate, 0), complex(want.PropRate, 0)},
	} {
		if cmplx.Abs(check.got-check.want) > 1e-12 {
			t.Errorf("At(0).%s = %v, want %v", check.name, check.got, check.want)
		}
	}
}
