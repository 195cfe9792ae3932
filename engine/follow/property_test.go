package follow_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/follow"
	"whorlbench/engine/seam"
)

// TestCandidatesHold: every candidate put into its lane has the joins that were
// announced, neither more nor less, begins where it was said to, and the lane
// closes as was said.
func TestCandidatesHold(t *testing.T) {
	r := lanes{chance.New(t)}
	fits, closes, smooth, all := 0, 0, 0, 0
	for range 150 {
		p := r.pattern()
		l := p.Lanes[0]
		track := engine.NewTrack(l)
		i := r.IntN(len(l.Pieces))
		cs := follow.After(p, track, i)
		if len(cs) == 0 || len(cs) > follow.Most {
			t.Fatalf("%d candidates, want 1 to %d; pattern %+v", len(cs), follow.Most, p)
		}
		for k := range cs {
			c := &cs[k]
			all++
			in, err := l.Insert(i+1, c.Piece)
			if err != nil {
				t.Fatal(err)
			}
			now := engine.NewTrack(in)
			seams := seam.Of(now, p.Tempo, p.Performer.Rigid)
			got, next := seams[i], seams[i+1]
			if got.Verdict <= seam.Stop || got.HandGap > 1e-8 || got.HeadGap > 1e-8 {
				t.Fatalf("candidate %d has a gap or stops: %+v; piece %+v after %d of %+v", k, got, c.Piece, i, l)
			}
			if !sameSeam(got, c.Join) || !sameSeam(next, c.Next) {
				t.Fatalf("candidate %d: joins %+v and %+v, announced %+v and %+v; piece %+v after %d of %+v", k, got, next, c.Join, c.Next, c.Piece, i, l)
			}
			if c.Fits != (got.Verdict != seam.Gap && next.Verdict != seam.Gap) {
				t.Fatalf("candidate %d: fits %v, but the joins are %+v and %+v", k, c.Fits, got, next)
			}
			closing := now.Closing()
			if closing.Rounds.Cmp(c.Rounds) != 0 || !closing.Beats.Equal(c.Beats) || !near(closing.HandGap, c.HandGap, 1e-9) {
				t.Fatalf("candidate %d: closes after %v rounds, gap %v, announced %v, %v; lane %+v", k, closing.Rounds, closing.HandGap, c.Rounds, c.HandGap, in)
			}
			later := false
			for j := (i + 2) % len(in.Pieces); j != i; j = (j + 1) % len(in.Pieces) {
				if j > i+1 {
					later = later || seams[j].Verdict == seam.Gap
				}
			}
			if later != c.Later {
				t.Fatalf("candidate %d after %d: later gaps %v, announced %v; lane %+v", k, i, later, c.Later, in)
			}
			if d := apart(&c.Leg, &now.Legs[i+1]); d > 1e-9 || c.Leg.Start != now.Legs[i+1].Start {
				t.Fatalf("candidate %d: its leg is %v m off", k, d)
			}
			if c.Piece.PropAt.Set {
				t.Fatalf("candidate %d has its own prop angle", k)
			}
			if c.Fits {
				fits++
			}
			if c.Closes() {
				closes++
			}
			if c.Join.Verdict == seam.Smooth {
				smooth++
			}
		}
		inOrder(t, cs)
	}
	if fits == 0 || closes == 0 || smooth == 0 {
		t.Errorf("of %d, %d fit, %d close, %d are smooth: want some of each", all, fits, closes, smooth)
	}
}

func sameSeam(a, b seam.Seam) bool {
	return a.After == b.After && a.Verdict == b.Verdict && near(a.HandGap, b.HandGap, 1e-9) && near(a.HeadGap, b.HeadGap, 1e-9) &&
		near(float64(a.PropGap), float64(b.PropGap), 1e-7) && near(float64(a.Turn), float64(b.Turn), 1e-6) &&
		a.HandTurnsBack == b.HandTurnsBack && a.ArmReverses == b.ArmReverses && a.PropReverses == b.PropReverses &&
		near(math.Abs(a.JumpAcross), math.Abs(b.JumpAcross), 1e-7) && near(math.Abs(a.JumpAlong), math.Abs(b.JumpAlong), 1e-7)
}

// inOrder checks that smooth ones come first, then by jump, and that no two
// are one slice.
func inOrder(t *testing.T, cs []follow.Candidate) {
	t.Helper()
	for k := range cs {
		for j := range k {
			a, b := &cs[j], &cs[k]
			if a.Join.Verdict < b.Join.Verdict {
				t.Fatalf("candidate %d is worse than %d", j, k)
			}
			if a.Join.Verdict == seam.Kink && b.Join.Verdict == seam.Kink && math.Abs(a.Join.JumpAcross) > math.Abs(b.Join.JumpAcross)+2e-6 {
				t.Fatalf("candidate %d jumps by more than %d", j, k)
			}
			if apart(&a.Leg, &b.Leg) < 1e-6 && math.Abs(a.Leg.Span-b.Leg.Span) < 1e-9 {
				t.Fatalf("candidates %d and %d are one slice: %+v, %+v", j, k, a.Piece, b.Piece)
			}
		}
	}
}

// TestMirroredAlike: the list of a mirrored or turned pattern is the list
// mirrored or turned.
func TestMirroredAlike(t *testing.T) {
	r := lanes{chance.New(t)}
	for range 150 {
		p := r.pattern()
		l := &p.Lanes[0]
		for i := range l.Pieces { // a pendulum knows up and down
			l.Pieces[i].Swing, l.Pieces[i].SwingBack = 0, false
		}
		if l.Plane == engine.Wheel {
			l.Plane = engine.Wall // the wheel's mirror image is itself
		}
		i := r.IntN(len(l.Pieces))
		if q := l.Pieces[i]; q.Prop.IsZero() {
			continue // nothing says which side comes first
		}
		was := follow.After(p, engine.NewTrack(*l), i)
		d := r.angle()
		for _, test := range []struct {
			name string
			p    engine.Pattern
			map_ func(engine.Pattern) engine.Pattern
		}{
			{"mirrored", p.Mirror(), engine.Pattern.Mirror},
			{"turned", p.Turn(d), func(q engine.Pattern) engine.Pattern { return q.Turn(d) }},
		} {
			got := follow.After(test.p, engine.NewTrack(test.p.Lanes[0]), i)
			if len(got) != len(was) {
				t.Fatalf("%s: %d candidates, were %d; pattern %+v", test.name, len(got), len(was), p)
			}
			for k := range was {
				in, err := p.Lanes[0].Insert(i+1, was[k].Piece)
				if err != nil {
					t.Fatal(err)
				}
				want := engine.NewTrack(test.map_(p.WithLane(0, in)).Lanes[0]).Legs[i+1]
				if d := apart(&got[k].Leg, &want); d > 1e-6 || got[k].Kind != was[k].Kind || !got[k].Piece.Beats.Equal(was[k].Piece.Beats) {
					t.Fatalf("%s: candidate %d = %+v, want it %v m nearer: %+v; pattern %+v, piece %d", test.name, k, got[k].Piece, d, want.Piece, p, i)
				}
			}
		}
	}
}
