package seam_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// TestTurningBack: a whole turn of in-spin n₁ and a whole turn of antispin −m
// back, met at a petal tip. With the arm's rate ω the head comes with
// ω(R + n₁L) across the tether and leaves with ω(−R + mL): smooth exactly when
// m = n₁ + 2R/L, else a jump of ω((m − n₁)L − 2R).
func TestTurningBack(t *testing.T) {
	const tether = 0.6
	w := 2 * math.Pi
	for _, radius := range []float64{0.15, 0.3, 0.6, 0.9, 1.2, 0.5, 0.7} {
		for n1 := range int64(5) {
			n1++
			for m := range int64(10) {
				m++
				l := lane(tether, 90, 90,
					engine.Stroke(circle(radius), frac.Int(1), frac.Int(n1), frac.Int(1), frac.Int(1)),
					engine.Stroke(circle(radius), frac.Int(-1), frac.Int(m), frac.Int(1), frac.Int(1)))
				got := seams(l)
				want := w * (float64(m-n1)*tether - 2*radius)
				for i, s := range got {
					jump, verdict := want, seam.Kink
					if i == 1 {
						jump = -want // on the way back in
					}
					if math.Abs(2*radius/tether-float64(m-n1)) < 1e-9 {
						verdict = seam.Smooth
					}
					if !close1e9(s.JumpAcross, jump) || math.Abs(s.JumpAlong) > 1e-9 || s.Verdict != verdict || !s.HandTurnsBack || !s.ArmReverses || s.PropReverses {
						t.Errorf("R = %v, %d into −%d: seam %d = %+v, want a jump of %v across, verdict %d", radius, n1, m, i+1, s, jump, verdict)
					}
				}
			}
		}
	}
}

// TestTurningBackByName: what the rule above says of the patterns that have
// names, at R = L.
func TestTurningBackByName(t *testing.T) {
	for _, test := range []struct {
		name  string
		n1, m string
	}{
		{"extension and four-petal antispin flower", "1", "3"},
		{"two-petal in-spin flower and −5", "3", "5"},
	} {
		l := lane(0.6, 90, 90, stroke(circle(0.6), "1", test.n1, "1/2", "2"), stroke(circle(0.6), "-1", test.m, "1/2", "2"))
		for i, s := range seams(l) {
			if s.Verdict != seam.Smooth || math.Abs(s.JumpAcross) > 1e-12 || math.Abs(s.JumpAlong) > 1e-12 {
				t.Errorf("%s: seam %d = %+v, want smooth", test.name, i+1, s)
			}
		}
	}
}

// TestIsolationTurningBack: isolation into antispin −m where the prop points at
// the centre. Across the tether the head comes with ω₁(L − R) and leaves with
// ω₂(R + mL): at equal rates no whole m is smooth; at ω₂/ω₁ = (L − R)/(R + mL)
// each is.
func TestIsolationTurningBack(t *testing.T) {
	for _, test := range []struct{ radius, tether string }{{"0.3", "0.6"}, {"0.15", "0.6"}, {"0.2", "0.5"}, {"0.45", "0.5"}} {
		r, l := fr(test.radius), fr(test.tether)
		for m := range int64(6) {
			m++
			slower := r.Add(l.Mul(frac.Int(m))).Div(l.Sub(r))
			for _, beats := range []frac.Frac{frac.Int(1), slower} {
				track := lane(l.Float(), 90, 270,
					engine.Stroke(circle(r.Float()), frac.Int(1), frac.Int(1), frac.Int(1), frac.Int(1)),
					engine.Stroke(circle(r.Float()), frac.Int(-1), frac.Int(m), frac.Int(1), beats))
				w1, w2 := 2*math.Pi, 2*math.Pi/beats.Float()
				want := w2*(r.Float()+float64(m)*l.Float()) - w1*(l.Float()-r.Float())
				verdict := seam.Kink
				if beats.Equal(slower) {
					verdict = seam.Smooth
				}
				for i, s := range seams(track) {
					jump := want
					if i == 1 {
						jump = -want
					}
					if !close1e9(s.JumpAcross, jump) || s.Verdict != verdict || !s.HandTurnsBack {
						t.Errorf("R = %v, L = %v, −%d in %v beats: seam %d = %+v, want a jump of %v across, verdict %d",
							r, l, m, beats, i+1, s, jump, verdict)
					}
				}
			}
		}
	}
}

// TestEasedTurningBack: two pieces of one prop sense at which the hand turns
// back; eased at that end of both, with beats in proportion to prop turns, the
// head goes on as it was.
func TestEasedTurningBack(t *testing.T) {
	oval := engine.EllipsePath(0.1i, 0.7, 0.3, 20)
	thread := engine.LinePath(0.2, 0.5, 70)
	for _, test := range []struct {
		name                 string
		path                 engine.Path
		arm, out, back       string
		cycles               string
		beatsOut, beatsBack  string
		start                engine.Degrees
		unevenOut, unevenAlt string // beats out of proportion
	}{
		{"extension into triquetra", circle(0.6), "1", "1", "2", "1/2", "2", "4", 90, "2", "2"},
		{"in-spin into antispin", circle(0.3), "1", "3", "2", "1/2", "3", "2", 0, "1", "3"},
		{"antispin into in-spin", circle(0.4), "-1", "5", "3/2", "1/3", "10", "3", 45, "1", "1"},
		{"oval", oval, "1", "2", "3", "1/2", "2", "3", 20, "1", "1"},
		{"thread", thread, "1", "1", "4", "1/3", "1", "4", 10, "1", "1"},
		{"clockwise", circle(0.6), "-1", "-1", "-3", "1/2", "1", "3", 90, "1", "2"},
	} {
		out := eased(stroke(test.path, test.arm, test.out, test.cycles, test.beatsOut), engine.EaseEnd)
		back := eased(stroke(test.path, test.arm, test.back, test.cycles, test.beatsBack), engine.EaseStart)
		back.Arm = back.Arm.Neg()
		l := lane(0.5, test.start, test.start, out, back)
		s := seams(l)[0]
		if s.Verdict != seam.Smooth || math.Abs(s.JumpAcross) > 1e-12 || math.Abs(s.JumpAlong) > 1e-12 || !s.HandTurnsBack {
			t.Errorf("%s: %+v, want smooth with the hand turning back", test.name, s)
		}
		// Out of proportion the prop's own rate jumps, L·Δψ′ across.
		l.Pieces[0].Beats, l.Pieces[1].Beats = fr(test.unevenOut), fr(test.unevenAlt)
		rate := func(p engine.Piece) float64 { return 2 * math.Pi * p.PropTurns().Float() / p.Beats.Float() }
		want := 0.5 * (rate(l.Pieces[1]) - rate(l.Pieces[0]))
		if s := seams(l)[0]; !close1e9(s.JumpAcross, want) || s.Verdict != seam.Kink {
			t.Errorf("%s, out of proportion: %+v, want a kink of %v", test.name, s, want)
		}
	}
}

// TestTriquetraHand: half a circle and its diameter, R = L, met at the
// circle's ends; ω₁ and ω₂ are the arm's rates. Across at both seams: 4ω₁R on the
// circle, ω₂R on the stroke, whence beats of 4 to 1.
func TestTriquetraHand(t *testing.T) {
	const r = 0.6
	for _, test := range []struct {
		circle, stroke string
		verdict        seam.Verdict
	}{{"4", "1", seam.Smooth}, {"8/3", "2/3", seam.Smooth}, {"1", "1", seam.Kink}, {"2", "1", seam.Kink}, {"5", "1", seam.Kink}} {
		l := lane(r, 180, 0,
			stroke(circle(r), "1/2", "-3/2", "1", test.circle),
			stroke(engine.LinePath(0, r, 0), "1/2", "-1/2", "1", test.stroke))
		w1, w2 := math.Pi/fr(test.circle).Float(), math.Pi/fr(test.stroke).Float()
		jump := r * (4*w1 - w2) // the prop turns clockwise: across is negative before
		track := engine.NewTrack(l)
		if c := track.Closing(); c.Rounds.Int64() != 1 {
			t.Errorf("%s to %s: closes after %v rounds, want 1", test.circle, test.stroke, c.Rounds)
		}
		for i, s := range seams(l) {
			want := jump
			if i == 1 {
				want = -jump
			}
			if s.Verdict != test.verdict || !close1e9(s.JumpAcross, want) || !close1e9(float64(s.Turn), 90) || s.HandTurnsBack || s.ArmReverses {
				t.Errorf("%s to %s: seam %d = %+v, want a jump of %v, verdict %d, the hand turning by 90°", test.circle, test.stroke, i+1, s, want, test.verdict)
			}
			if s.HandGap > 1e-12 || s.HeadGap > 1e-12 || s.PropGap > 1e-12 {
				t.Errorf("%s to %s: seam %d has gaps: %+v", test.circle, test.stroke, i+1, s)
			}
		}
	}
}

// TestSCap of extension and triquetra: half circles about (∓R, 0). It closes
// with 3 prop turns; across the tether the head jumps by |2R − L|ω at the ends,
// where the hand turns back, and by Lω in the middle, where the arm reverses
// and the hand goes straight on.
func TestSCap(t *testing.T) {
	for _, test := range []struct{ r, l float64 }{{0.6, 0.6}, {0.5, 0.6}, {0.3, 0.6}, {0.25, 0.6}} {
		left, right := engine.CirclePath(complex(-test.r, 0), test.r), engine.CirclePath(complex(test.r, 0), test.r)
		l := lane(test.l, 180, 180,
			stroke(left, "1", "1", "1/2", "2"), placed(stroke(right, "-1", "2", "1/2", "2"), engine.Some(180), engine.Opt{}),
			stroke(right, "1", "1", "1/2", "2"), placed(stroke(left, "-1", "2", "1/2", "2"), engine.Some(0), engine.Opt{}))
		track := engine.NewTrack(l)
		if c := track.Closing(); c.Rounds.Int64() != 1 || !track.PerRound.Equal(frac.Int(3)) {
			t.Errorf("R = %v: closes after %v rounds with %v prop turns a round, want 1, 3", test.r, c.Rounds, track.PerRound)
		}
		const w = math.Pi / 2
		end := math.Abs(2*test.r-test.l) * w
		for i, s := range seams(l) {
			across, turn, verdict := test.l*w, 0.0, seam.Kink
			if i%2 == 1 {
				across, turn = end, 180
				if end < 0.05 {
					verdict = seam.Smooth
				}
			}
			if !close1e9(math.Abs(s.JumpAcross), across) || math.Abs(s.JumpAlong) > 1e-12 || s.Verdict != verdict {
				t.Errorf("R = %v: seam %d = %+v, want %v across, verdict %d", test.r, i+1, s, across, verdict)
			}
			if math.Abs(float64(s.Turn)-turn) > 1e-9 || s.HandTurnsBack != (turn == 180) || !s.ArmReverses || s.PropReverses {
				t.Errorf("R = %v: seam %d = %+v, want the hand turning by %v°", test.r, i+1, s, turn)
			}
		}
	}
}
