package duet_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/duet"
	"whorlbench/engine/frac"
)

// onAC is both hands on one C, both starting at its upper end: the right hand
// extension out and four-petal antispin back, the left hand the other way.
func onAC() (l, r engine.Lane) {
	r = lane(engine.Right, 90, 90, stroke(circle(0.6), "1", "1", "1/2", "2"), stroke(circle(0.6), "-1", "3", "1/2", "2"))
	l = lane(engine.Left, 90, 90, stroke(circle(0.6), "1", "-3", "1/2", "2"), stroke(circle(0.6), "-1", "-1", "1/2", "2"))
	return l, r
}

// TestHandsOnAC: always opposite, together to quarter to split to quarter to
// together on each stroke (common practice). ψ_R runs 180° in two beats, ψ_L
// −540°: δ grows by 180° a beat, so that the edges of the bands come every
// quarter beat from 1/8 on. On the way back it shrinks likewise.
func TestHandsOnAC(t *testing.T) {
	l, r := onAC()
	got := read(l, r)
	timings := []duet.Timing{duet.Together, duet.Between, duet.Quarter, duet.Between, duet.Split, duet.Between, duet.Quarter, duet.Between, duet.Together}
	if len(got.Props) != 18 {
		t.Fatalf("%d spans of props, want 18: %v", len(got.Props), got.Props)
	}
	for i, s := range got.Props {
		stroke, k := i/9, i%9
		sign := float64(1 - 2*stroke)
		from, to := 2*float64(stroke), 2*float64(stroke+1)
		if k > 0 {
			from = 2*float64(stroke) + 0.125 + 0.25*float64(k-1)
		}
		if k < 8 {
			to = 2*float64(stroke) + 0.125 + 0.25*float64(k)
		}
		deltaFrom, deltaTo := degrees(sign*180*(from-2*float64(stroke))), degrees(sign*180*(to-2*float64(stroke)))
		if s.Direction != duet.Opposite || s.Timing != timings[k] || !near(s.From, from, 1e-12) || !near(s.To, to, 1e-12) ||
			!near(float64(s.DeltaFrom), deltaFrom, 1e-9) || !near(float64(s.DeltaTo), deltaTo, 1e-9) {
			t.Errorf("span %d = %v, want %v to %v, opposite, timing %v, δ %v to %v", i+1, s, from, to, timings[k], deltaFrom, deltaTo)
		}
	}
	want := duet.Span{From: 0, To: 4, Direction: duet.Same, Timing: duet.Together}
	if len(got.Hands) != 1 || got.Hands[0] != want {
		t.Errorf("spans of hands = %v, want %v", got.Hands, want)
	}
	// The hands are together all the time.
	if got.Tangle.Why != duet.HandsMeet || !got.Tangle.Meets || got.Tangle.MeetAt != 0 || got.Hand.Distance != 0 {
		t.Errorf("tangle %v, hands %v m apart, want hands that meet at beat 0", got.Tangle, got.Hand.Distance)
	}
}

// degrees wraps to (−180, 180] by itself.
func degrees(x float64) float64 {
	for x > 180 {
		x -= 360
	}
	for x <= -180 {
		x += 360
	}
	return x
}

// TestTimingBands: 22.5° itself is included (the definition).
func TestTimingBands(t *testing.T) {
	for _, test := range []struct {
		delta engine.Degrees
		want  duet.Timing
	}{
		{0, duet.Together}, {22.5, duet.Together}, {-22.5, duet.Together}, {22.6, duet.Between}, {67.4, duet.Between},
		{67.5, duet.Quarter}, {90, duet.Quarter}, {-90, duet.Quarter}, {112.5, duet.Quarter}, {-112.6, duet.Between},
		{157.4, duet.Between}, {157.5, duet.Split}, {180, duet.Split}, {-157.5, duet.Split}, {202.5, duet.Split}, {360, duet.Together},
	} {
		if got := duet.TimingOf(test.delta); got != test.want {
			t.Errorf("TimingOf(%v) = %v, want %v", test.delta, got, test.want)
		}
		// The same of two hands that keep it.
		l := lane(engine.Left, 90, 90+test.delta, stroke(circle(0.6), "1", "1", "1", "4"))
		r := lane(engine.Right, 90, 90, stroke(circle(0.6), "1", "1", "1", "4"))
		if got := read(l, r).Props; len(got) != 1 || got[0].Timing != test.want || got[0].Direction != duet.Same {
			t.Errorf("props %v° apart: %v, want one span with timing %v", test.delta, got, test.want)
		}
		l = lane(engine.Left, 90, 90-test.delta, stroke(circle(0.6), "-1", "-1", "1", "4"))
		if got := read(l, r).Props; len(got) != 1 || got[0].Timing != test.want || got[0].Direction != duet.Opposite {
			t.Errorf("props %v° apart, mirrored: %v, want one span with timing %v", test.delta, got, test.want)
		}
	}
}

// TestDirections: a prop that does not turn has no timing; hands have none
// but on round paths.
func TestDirections(t *testing.T) {
	round := stroke(circle(0.4), "1", "1", "1", "2")
	for _, test := range []struct {
		name         string
		left         engine.Piece
		props, hands duet.Direction
	}{
		{"round alike", round, duet.Same, duet.Same},
		{"prop held", stroke(circle(0.4), "1", "0", "1", "2"), duet.Still, duet.Same},
		{"hand held on its circle", stroke(circle(0.4), "0", "-1", "1", "2"), duet.Opposite, duet.Still},
		{"a straight stroke", stroke(engine.LinePath(0, 0.4, 0), "1", "1", "1", "2"), duet.Same, duet.NoDirection},
		{"a point", stroke(engine.PointPath(0), "0", "1", "1", "2"), duet.Same, duet.NoDirection},
		{"an ellipse", stroke(engine.EllipsePath(0, 0.4, 0.2, 0), "1", "1", "1", "2"), duet.Same, duet.NoDirection},
		{"an ellipse that is a circle", stroke(engine.EllipsePath(0, 0.4, 0.4, 0), "-1", "1", "1", "2"), duet.Same, duet.Opposite},
	} {
		got := read(lane(engine.Left, 0, 0, test.left), lane(engine.Right, 0, 0, round))
		if got.Props[0].Direction != test.props || got.Hands[0].Direction != test.hands {
			t.Errorf("%s: directions %v and %v, want %v and %v", test.name, got.Props[0].Direction, got.Hands[0].Direction, test.props, test.hands)
		}
	}
}

// TestPendulumTurnsBack: ψ = −90° + 60° cos(2πt/2): the prop turns clockwise
// for the first half, anticlockwise for the second, seen against one that goes
// anticlockwise all the time.
func TestPendulumTurnsBack(t *testing.T) {
	bell := stroke(engine.PointPath(0.8), "0", "1", "1", "2")
	bell.Swing = 60
	got := read(lane(engine.Left, 0, 0, bell), lane(engine.Right, 0, 0, stroke(engine.PointPath(-0.8), "0", "1", "1", "2")))
	for _, s := range got.Props {
		want := duet.Opposite
		if s.From >= 1 {
			want = duet.Same
		}
		if s.Direction != want || s.From < 1 && s.To > 1+1e-12 {
			t.Errorf("span %v, want opposite up to beat 1, then same", s)
		}
	}
	checkSpans(t, "pendulum", engine.NewTrack(lane(engine.Left, 0, 0, bell)),
		engine.NewTrack(lane(engine.Right, 0, 0, stroke(engine.PointPath(-0.8), "0", "1", "1", "2"))), got)
}

// checkSpans holds spans to the definition at moments all along: by the
// turning of the sampled angles, not by how the pieces were written.
func checkSpans(t *testing.T, what string, l, r *engine.Track, got duet.Reading) {
	t.Helper()
	for k, spans := range [][]duet.Span{got.Props, got.Hands} {
		at := 0.0
		for i, s := range spans {
			if !near(s.From, at, 1e-9*(1+at)) || s.To <= s.From {
				t.Fatalf("%s: span %d of list %d is %v, want it to begin at %v", what, i+1, k, s, at)
			}
			at = s.To
			for j := range 7 {
				beat := s.From + (s.To-s.From)*(float64(j)+0.5)/7
				const h = 1e-6
				if s.To-s.From < 100*h {
					break
				}
				a, b, turnA, turnB := l.At(beat).Prop, r.At(beat).Prop, turned(l.At(beat).Prop, l.At(beat+h).Prop), turned(r.At(beat).Prop, r.At(beat+h).Prop)
				if k == 1 {
					if s.Direction == duet.NoDirection {
						break
					}
					a, b, turnA, turnB = l.At(beat).Arm, r.At(beat).Arm, turned(l.At(beat).Arm, l.At(beat+h).Arm), turned(r.At(beat).Arm, r.At(beat+h).Arm)
				}
				const small = 1e-9 // a turning that is too slow to be seen so
				want, delta := duet.Same, a-b
				switch {
				case s.Direction == duet.Still:
					if math.Abs(turnA) > 1e-12 && math.Abs(turnB) > 1e-12 {
						t.Fatalf("%s: span %v of list %d at %v, but both turn", what, s, k, beat)
					}
					continue
				case math.Abs(turnA) < small || math.Abs(turnB) < small:
					continue
				case turnA*turnB < 0:
					want, delta = duet.Opposite, math.Pi-a-b
				}
				d := degrees(math.Remainder(delta*180/math.Pi, 360))
				if s.Direction != want || s.Timing != timing(d) && !onEdge(d) {
					t.Fatalf("%s: span %v of list %d at %v: direction %v, δ %v, want it so", what, s, k, beat, want, d)
				}
			}
		}
		if len(spans) < duet.MostSpans && !near(at, got.Until, 1e-9*(1+at)) {
			t.Errorf("%s: spans of list %d go to %v, want %v", what, k, at, got.Until)
		}
	}
}

func turned(a, b float64) float64 { return math.Remainder(b-a, 2*math.Pi) }

// timing is the definition by itself.
func timing(d float64) duet.Timing {
	d = math.Abs(d)
	switch {
	case d <= 22.5:
		return duet.Together
	case d >= 157.5:
		return duet.Split
	case d >= 67.5 && d <= 112.5:
		return duet.Quarter
	}
	return duet.Between
}

func onEdge(d float64) bool {
	d = math.Abs(d)
	for _, e := range []float64{22.5, 67.5, 112.5, 157.5} {
		if math.Abs(d-e) < 1e-5 {
			return true
		}
	}
	return false
}

func TestSpansOfRandomPatterns(t *testing.T) {
	r := chance.New(t)
	for range 60 {
		l := engine.NewTrack(closedLane(r, engine.Left, engine.Wall))
		m := engine.NewTrack(closedLane(r, engine.Right, engine.Wall))
		checkSpans(t, "random", l, m, duet.Read(l, m))
	}
}

// TestCutChangesNoSpan: nothing moves when a piece is cut, so nothing is told
// otherwise.
func TestCutChangesNoSpan(t *testing.T) {
	l, r := onAC()
	l.Pieces[0].Law, r.Pieces[1].Law = engine.EaseBoth, engine.EaseStart
	want := read(l, r)
	cut, err := l.Cut(0, frac.New(7, 10))
	if err != nil {
		t.Fatal(err)
	}
	other, err := r.Cut(1, frac.New(4, 3))
	if err != nil {
		t.Fatal(err)
	}
	got := read(cut, other)
	if len(got.Props) != len(want.Props) || len(got.Hands) != len(want.Hands) {
		t.Fatalf("%d and %d spans after cutting, want %d and %d", len(got.Props), len(got.Hands), len(want.Props), len(want.Hands))
	}
	for i, s := range got.Props {
		w := want.Props[i]
		if s.Direction != w.Direction || s.Timing != w.Timing || !near(s.From, w.From, 1e-9) || !near(s.To, w.To, 1e-9) {
			t.Errorf("span %d = %v, want %v", i+1, s, w)
		}
	}
}
