package follow_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/follow"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
)

// after asks what follows the last piece of a lane at a beat a second.
func after(l engine.Lane) []follow.Candidate {
	return follow.After(pattern(l), engine.NewTrack(l), len(l.Pieces)-1)
}

// back returns the candidate with the ratio −m on the same path, the hand
// turning back, or nil.
func back(cs []follow.Candidate, m int64) *follow.Candidate {
	for k := range cs {
		c := &cs[k]
		if c.Kind == follow.TurnsBack && c.SamePath && c.Figure.Ratio.Equal(frac.Int(-m)) {
			return c
		}
	}
	return nil
}

// TestTurningBack: from in-spin n₁ at a petal tip, antispin −m back is smooth at
// the arm's own rate exactly when m = n₁ + 2R/L. From the head's velocity across
// the tether, ω(R + n₁L) before and ω₂(mL − R) after, the rate that makes
// another m smooth is ω₂/ω = (R + n₁L)/(mL − R). Whole turns, so that every
// round is like the first.
func TestTurningBack(t *testing.T) {
	for _, test := range []struct{ radius, tether string }{{"0.6", "0.6"}, {"0.3", "0.6"}, {"0.9", "0.6"}, {"0.5", "0.5"}, {"0.25", "0.4"}} {
		r, l := fr(test.radius), fr(test.tether)
		for n1 := int64(1); n1 <= 4; n1++ {
			cs := after(lane(l.Float(), 90, 90, engine.Stroke(circle(r.Float()), frac.Int(1), frac.Int(n1), frac.Int(1), frac.Int(4))))
			for m := int64(1); m <= 6; m++ {
				across := l.Mul(frac.Int(m)).Sub(r)
				c := back(cs, m)
				if across.Sign() <= 0 {
					if c != nil && (c.Join.Verdict == seam.Smooth || !c.KeepsUp()) {
						t.Errorf("R = %v, L = %v, %d into −%d: %+v, want a kink at the arm's own rate, if anything", r, l, n1, m, c.Join)
					}
					continue
				}
				slower := across.Div(r.Add(l.Mul(frac.Int(n1))))
				if c == nil || c.Join.Verdict != seam.Smooth {
					t.Errorf("R = %v, L = %v, %d into −%d: %+v, want smooth", r, l, n1, m, c)
					continue
				}
				own := frac.Int(n1).Add(frac.Int(2).Mul(r).Div(l)).Equal(frac.Int(m))
				want := frac.Int(4).Mul(slower)
				exact := c.Piece.Beats.Equal(want)
				if want.Den().Int64() > 12 { // beyond counting: simpler, and by half the tolerance still smooth
					comes := (r.Float() + float64(n1)*l.Float()) * math.Pi / 2
					exact = near(c.Piece.Beats.Float()/want.Float(), 1, 0.5*0.05/comes) && c.Piece.Beats.Den().Cmp(want.Den()) <= 0
				}
				if !exact || c.KeepsUp() != own {
					t.Errorf("R = %v, L = %v, %d into −%d: %v beats, keeps up %v, want %v, %v", r, l, n1, m, c.Piece.Beats, c.KeepsUp(), want, own)
				}
			}
		}
	}
}

// TestExtensionFirst: with R = L the first that turns back from extension is the
// four-petal antispin flower, and from the two-petal in-spin flower it is m = 5.
func TestExtensionFirst(t *testing.T) {
	for _, test := range []struct{ n1, ratio, petals int64 }{{1, -3, 4}, {3, -5, 6}} {
		cs := after(lane(0.6, 90, 90, engine.Stroke(circle(0.6), frac.Int(1), frac.Int(test.n1), frac.New(1, 2), frac.Int(2))))
		c := firstOf(cs, follow.TurnsBack)
		if c == nil || !c.Figure.Ratio.Equal(frac.Int(test.ratio)) || !c.Figure.Petals.Equal(frac.Int(test.petals)) ||
			c.Join.Verdict != seam.Smooth || !c.KeepsUp() || !c.SamePath || c.Figure.Spin != naming.SpinAnti {
			t.Errorf("after ratio %d: first turning back = %+v, want ratio %d, smooth at its rate", test.n1, c, test.ratio)
		}
	}
}

func firstOf(cs []follow.Candidate, kind follow.Kind) *follow.Candidate {
	for k := range cs {
		if cs[k].Kind == kind {
			return &cs[k]
		}
	}
	return nil
}

// TestMakeC: extension with the first that turns back is a C of two flowers that
// closes after a round, smooth at both joins (common practice: a C-cap of
// extension and four-petal antispin), from half a circle, a quarter or a whole.
func TestMakeC(t *testing.T) {
	for _, cycles := range []string{"1/2", "1/4", "1"} {
		l := lane(0.6, 90, 90, stroke(circle(0.6), "1", "1", cycles, "2"))
		c := firstOf(after(l), follow.TurnsBack)
		if !c.Fits || !c.Closes() {
			t.Errorf("%s: fits %v, closes %v, want both", cycles, c.Fits, c.Closes())
		}
		l, err := l.Insert(1, c.Piece)
		if err != nil {
			t.Fatal(err)
		}
		track := engine.NewTrack(l)
		if got := track.Closing(); got.Rounds.Int64() < 1 || got.Beats.Cmp(c.Beats) != 0 {
			t.Errorf("%s: closes after %v rounds, %v beats, want %v beats", cycles, got.Rounds, got.Beats, c.Beats)
		}
		if cycles == "1/2" || cycles == "1" {
			for _, s := range seam.Of(track, 60, false) {
				if s.Verdict != seam.Smooth {
					t.Errorf("%s: %+v, want smooth", cycles, s)
				}
			}
		}
	}
}

// TestIsolation: isolation into antispin −m where the prop points at the centre:
// smooth at ω₂/ω₁ = (L − R)/(R + mL), R < L, and at no other rate.
func TestIsolation(t *testing.T) {
	for _, test := range []struct{ radius, tether string }{{"0.3", "0.6"}, {"0.2", "0.5"}, {"0.15", "0.3"}} {
		r, l := fr(test.radius), fr(test.tether)
		cs := after(lane(l.Float(), 90, 270, engine.Stroke(circle(r.Float()), frac.Int(1), frac.Int(1), frac.Int(1), frac.Int(4))))
		for m := int64(1); m <= 6; m++ {
			slower := r.Add(l.Mul(frac.Int(m))).Div(l.Sub(r))
			c := back(cs, m)
			if slower.Float() > 16 {
				continue // further off than is tried
			}
			if c == nil {
				continue // crowded out by plainer ones
			}
			if c.Join.Verdict != seam.Smooth || !c.Piece.Beats.Equal(frac.Int(4).Mul(slower)) || c.KeepsUp() {
				t.Errorf("R = %v, L = %v, −%d: %v beats, %+v, want smooth in %v", r, l, m, c.Piece.Beats, c.Join, frac.Int(4).Mul(slower))
			}
		}
		if c := back(cs, 1); c == nil {
			t.Errorf("R = %v, L = %v: no antispin −1 among %d", r, l, len(cs))
		}
	}
}

// TestTriquetraHand: from half a circle, three petals' worth of antispin with
// R = L, the straight stroke from its + end closes the round with no gap, and is
// smooth in a quarter of the circle's beats.
func TestTriquetraHand(t *testing.T) {
	l := lane(0.6, 180, 0, stroke(circle(0.6), "1/2", "-3/2", "1", "4"))
	for _, c := range after(l) {
		if c.Kind != follow.Corner || c.Piece.Path.Kind != engine.OnLine || !c.Closes() || !c.Figure.Ratio.Equal(frac.Int(-1)) {
			continue
		}
		if !near(float64(c.Join.Turn), 90, 1e-9) || c.Join.Verdict != seam.Smooth || c.Next.Verdict != seam.Smooth ||
			!c.Piece.Beats.Equal(frac.Int(1)) || c.Rounds.Int64() != 1 {
			t.Errorf("the stroke across: %v beats, %+v, %+v, want smooth in one beat, closing after one round", c.Piece.Beats, c.Join, c.Next)
		}
		if c.Figure.Kind != naming.LinearIsolation {
			t.Errorf("the stroke across is of kind %d, want a linear isolation", c.Figure.Kind)
		}
		return
	}
	t.Error("no stroke across closes the round")
}

// TestOtherSide: the S-cap's middle, extension into triquetra on the circle that
// bends the other way, hand straight on: a jump of Lω, at ω₂/ω = (R + L)/(R + 2L)
// none. The centre lies 2R on, and the arm is placed.
func TestOtherSide(t *testing.T) {
	const r, tether = 0.3, 0.6
	l := lane(tether, 180, 180, stroke(engine.CirclePath(-r, r), "1", "1", "1", "4"))
	found := false
	for _, c := range after(l) {
		// A whole turn ends at 180°, so the other circle is on the left.
		if c.Kind == follow.OtherSide && c.Figure.Ratio.Equal(frac.Int(-2)) && near(c.Piece.Path.A, r, 1e-12) {
			found = true
			want := engine.CirclePath(-3*r, r)
			if !c.Piece.Path.Same(want) || !c.Piece.ArmAt.Set || !near(float64(c.Piece.ArmAt.At), 0, 1e-9) || c.Piece.PropAt.Set ||
				!c.Piece.Arm.Equal(frac.Int(-1)) || c.Join.Turn > 1e-6 || !c.Join.ArmReverses {
				t.Errorf("other side: %+v, want on %+v from 0°", c.Piece, want)
			}
			// A whole turn, to where the round begins, takes (R + 2L)/(R + L) times as long.
			if want := fr("20/3"); c.Join.Verdict != seam.Smooth || !c.Piece.Beats.Equal(want) {
				t.Errorf("other side: %v beats, %+v, want smooth in %v", c.Piece.Beats, c.Join, want)
			}
		}
	}
	if !found {
		t.Error("no triquetra on the other side")
	}
}

// TestSenseOfProp: a prop on a tether keeps its sense; a rigid one need not.
func TestSenseOfProp(t *testing.T) {
	l := lane(0.6, 90, 90, stroke(circle(0.6), "1", "1", "1/2", "2"))
	p := pattern(l)
	for _, rigid := range []bool{false, true} {
		p.Performer.Rigid = rigid
		reverses := 0
		for _, c := range follow.After(p, engine.NewTrack(l), 0) {
			if c.Join.PropReverses {
				reverses++
			}
		}
		if (reverses > 0) != rigid {
			t.Errorf("rigid %v: %d candidates turn the prop back", rigid, reverses)
		}
	}
}

// TestFromRest: after an eased end the arm sets off from rest, and the prop
// goes on at its own rate: beats in proportion to prop turns are smooth.
func TestFromRest(t *testing.T) {
	p := stroke(circle(0.6), "1", "1", "1", "2")
	p.Law = engine.EaseEnd
	for _, c := range after(lane(0.6, 90, 90, p)) {
		if c.Piece.Law != engine.EaseStart {
			t.Fatalf("%+v does not set off from rest", c.Piece)
		}
		if c.Join.Verdict == seam.Smooth {
			got := c.Piece.Prop.Mul(c.Piece.Cycles).Div(c.Piece.Beats).Float()
			if !near(got, 0.5, 0.05/0.6/(2*math.Pi)) {
				t.Errorf("%v prop turns a beat, want 1/2", got)
			}
		}
	}
}

// TestAfterPoint: from a hand that stays, circles begin in extension or in
// isolation.
func TestAfterPoint(t *testing.T) {
	cs := after(lane(0.6, 90, 0, stroke(engine.PointPath(0.2), "0", "1", "1", "1")))
	kinds := map[naming.Kind]bool{}
	for _, c := range cs {
		if c.Kind != follow.SetsOff {
			t.Errorf("kind %d, want setting off", c.Kind)
		}
		kinds[c.Figure.Kind] = true
	}
	if !kinds[naming.Extension] || !kinds[naming.Isolation] || !kinds[naming.LinearExtension] {
		t.Errorf("kinds %v, want extension and isolation and a stroke among them", kinds)
	}
}
