package duet_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/duet"
	"whorlbench/engine/frac"
)

// moved puts a lane's middle elsewhere.
func moved(l engine.Lane, c complex128) engine.Lane {
	l.Centre = c
	return l
}

// TestTangle: split-time same-direction circles tangle in the wall plane, the
// same made of C-caps do not, by either switch (common practice). In the wheel
// plane the question does not arise.
func TestTangle(t *testing.T) {
	whole := func(side engine.Side, at engine.Degrees, arm string) engine.Lane {
		return lane(side, at, at, stroke(circle(0.5), arm, arm, "1", "4"))
	}
	// A C of extension or isolation one way and four-petal antispin back.
	cap := func(side engine.Side, at, prop engine.Degrees) engine.Lane {
		return lane(side, at, at+prop, stroke(circle(0.3), "1", "1", "1/2", "2"), stroke(circle(0.3), "-1", "3", "1/2", "2"))
	}
	wheel := func(l engine.Lane, offset float64) engine.Lane {
		l.Plane, l.Offset = engine.Wheel, offset
		return l
	}
	for _, test := range []struct {
		name string
		l, r engine.Lane
		why  duet.Untold
		want int64
	}{
		{"split circles, anticlockwise", whole(engine.Left, 270, "1"), whole(engine.Right, 90, "1"), duet.Told, 1},
		{"split circles, clockwise", whole(engine.Left, 270, "-1"), whole(engine.Right, 90, "-1"), duet.Told, -1},
		{"split circles apart", moved(whole(engine.Left, 270, "1"), 0.2), moved(whole(engine.Right, 90, "1"), -0.2), duet.Told, 1},
		{"split circles far apart", moved(whole(engine.Left, 270, "1"), 0.6), moved(whole(engine.Right, 90, "1"), -0.6), duet.Told, 0},
		{"C-caps, antispin with extension", moved(cap(engine.Left, 270, 0), 0.4), moved(cap(engine.Right, 90, 0), -0.4), duet.Told, 0},
		{"C-caps, antispin with extension, one middle", cap(engine.Left, 270, 0), cap(engine.Right, 90, 0), duet.Told, 0},
		{"C-caps, antispin with isolation", cap(engine.Left, 270, 180), cap(engine.Right, 90, 180), duet.Told, 0},
		{"wheel plane", wheel(whole(engine.Left, 270, "-1"), 0.3), wheel(whole(engine.Right, 90, "-1"), -0.3), duet.NotWall, 0},
		{"wall and wheel", whole(engine.Left, 270, "1"), wheel(whole(engine.Right, 90, "1"), -0.3), duet.NotWall, 0},
		{"never back", lane(engine.Left, 270, 270, stroke(circle(0.5), "1", "1", "3/4", "4"), stroke(circle(0.4), "1", "1", "1/2", "1")), whole(engine.Right, 90, "1"), duet.NeverBack, 0},
		// The left hand goes round three times while the right one goes once.
		{"three to one", lane(engine.Left, 0, 0, stroke(circle(0.6), "3", "1", "1", "4")), lane(engine.Right, 0, 0, stroke(circle(0.3), "1", "1", "1", "4")), duet.Told, 3},
		// The paths repeat after 12 beats, the prop of one only after 5 rounds of 4.
		{"a longer period than the paths'", lane(engine.Left, 0, 0, stroke(circle(0.6), "1", "2/5", "1", "4")), lane(engine.Right, 0, 0, stroke(circle(0.3), "1", "1", "1", "3")), duet.Told, 15},
	} {
		got := read(test.l, test.r)
		if got.Tangle.Why != test.why {
			t.Errorf("%s: why = %v, want %v", test.name, got.Tangle.Why, test.why)
			continue
		}
		if test.why == duet.Told && (!got.Tangle.Winding.IsInt64() || got.Tangle.Winding.Int64() != test.want) {
			t.Errorf("%s: winding = %v, want %d", test.name, got.Tangle.Winding, test.want)
		}
	}
}

// TestHandsMeet: two hands that go round one circle opposite ways, from above
// and from below: at α_L = 90° + 90°t and α_R = 270° − 90°t they meet first
// where these agree, at beat 1.
func TestHandsMeet(t *testing.T) {
	l := lane(engine.Left, 90, 90, stroke(circle(0.6), "1", "1", "1", "4"))
	r := lane(engine.Right, 270, 270, stroke(circle(0.6), "-1", "1", "1", "4"))
	got := read(l, r)
	if !got.Tangle.Meets || !near(got.Tangle.MeetAt, 1, 1e-9) || got.Tangle.Why != duet.HandsMeet {
		t.Errorf("tangle %+v, want hands that meet at beat 1", got.Tangle)
	}
	if !near(got.Hand.Distance, 0, 1e-9) || !near(got.Hand.Beat, 1, 1e-6) {
		t.Errorf("hands nearest %+v, want 0 at beat 1", got.Hand)
	}
	// One passes in front of the other: seen from the front they still meet.
	l.Offset = 0.2
	if got := read(l, r); !got.Tangle.Meets || !near(got.Hand.Distance, 0.2, 1e-9) {
		t.Errorf("with 0.2 m between the planes: tangle %+v, hands %+v, want them to meet in the picture, 0.2 m apart", got.Tangle, got.Hand)
	}
}

// wound is the winding number from samples alone, how near the hands come, and
// how far one is seen to go round the other from one sample to the next, at a
// jump up to half a turn.
func wound(l, r *engine.Track, beats float64, n int) (turns, near, widest float64) {
	near = math.Inf(1)
	last := l.At(0).Hand - r.At(0).Hand
	for k := 1; k <= n; k++ {
		beat := beats * float64(k) / float64(n)
		d := l.At(beat).Hand - r.At(beat).Hand
		step := cmplx.Phase(d/last) / (2 * math.Pi)
		turns += step
		widest = max(widest, math.Abs(step))
		near = min(near, cmplx.Abs(d))
		last = d
	}
	return turns, near, widest
}

// TestWindingOfRandomPatterns: a whole number, that of finely sampled hands
// (the definition), the same however the pattern is turned, scaled, cut or
// when it starts, and the opposite in the mirror.
func TestWindingOfRandomPatterns(t *testing.T) {
	r := chance.New(t)
	told := 0
	for range 60 {
		p := engine.Pattern{Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{
			closedLane(r, engine.Left, engine.Wall), closedLane(r, engine.Right, engine.Wall),
		}}
		winding := func(q engine.Pattern) (int64, bool) {
			a, b := q.Lanes[0], q.Lanes[1]
			if a.Side == engine.Right {
				a, b = b, a
			}
			got := read(a, b).Tangle
			if got.Why != duet.Told {
				return 0, false
			}
			return got.Winding.Int64(), true
		}
		got, ok := winding(p)
		if !ok {
			continue
		}
		a, b := engine.NewTrack(p.Lanes[0]), engine.NewTrack(p.Lanes[1])
		beats, _ := engine.ClosingTime(a, b)
		paths := frac.LCM(p.Lanes[0].Beats(), p.Lanes[1].Beats())
		const perBeat = 1000
		want, apart, widest := wound(a, b, paths.Float(), int(paths.Float()*perBeat))
		if apart < 0.03 || widest > 0.45 {
			// Too near for samples, or a jump so nearly straight through the other
			// hand that they cannot tell on which side.
			continue
		}
		told++
		want *= beats.Div(paths).Float()
		if math.Abs(float64(got)-want) > 1e-6*(1+math.Abs(want)) {
			t.Errorf("winding %d, want %v by samples of %+v", got, want, p.Lanes)
		}
		if m, ok := winding(p.Mirror()); !ok || m != -got {
			t.Errorf("winding of the mirror image %d (%v), want %d", m, ok, -got)
		}
		// Pendulums hang down as before, which no hand minds.
		if m, ok := winding(p.Turn(33).Scale(1.5)); !ok || m != got {
			t.Errorf("winding turned and scaled %d (%v), want %d", m, ok, got)
		}
		cut, err := p.Lanes[0].Cut(0, p.Lanes[0].Pieces[0].Length().Mul(frac.New(2, 7)))
		if err != nil {
			t.Fatal(err)
		}
		if m, ok := winding(p.WithLane(0, cut)); !ok || m != got {
			t.Errorf("winding with a piece cut %d (%v), want %d", m, ok, got)
		}
		// Not at a seam: a round that begins where the hand jumps does not end
		// where it began.
		shift := frac.New(int64(7*r.IntN(4)+1+r.IntN(6)), 7)
		later := p
		later.Lanes = []engine.Lane{p.Lanes[0].Later(shift), p.Lanes[1].Later(shift)}
		if m, ok := winding(later); !ok || m != got {
			t.Errorf("winding %v beats later %d (%v), want %d", shift, m, ok, got)
		}
	}
	if told < 8 {
		t.Errorf("only %d windings told, want more to hold", told)
	}
}
