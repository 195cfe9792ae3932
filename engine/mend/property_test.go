package mend_test

import (
	"math"
	"slices"
	"strconv"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/mend"
	"whorlbench/engine/seam"
)

// nearly makes lanes as a person does: circles and strokes of few sizes,
// simple speeds, sometimes one piece placed wrong.
func (r lanes) nearly() engine.Lane {
	l := engine.Lane{Side: engine.Right, Tether: 0.3 * float64(1+r.IntN(3)), ArmAt: engine.Degrees(45 * r.IntN(8))}
	l.PropAt = l.ArmAt + engine.Degrees(90*r.IntN(4))
	sense := int64(1 - 2*r.IntN(2))
	for range 1 + r.IntN(5) {
		path := engine.CirclePath(0, 0.3*float64(1+r.IntN(2)))
		if r.IntN(6) == 0 {
			path = engine.LinePath(0, path.A, engine.Degrees(45*r.IntN(4)))
		}
		prop := sense * int64(1+r.IntN(5))
		if r.IntN(12) == 0 {
			prop = -prop
		}
		p := engine.Stroke(path, frac.Int(int64(1-2*r.IntN(2))), frac.Int(prop), frac.New(int64(1+r.IntN(4)), 2), frac.Int(int64(1+r.IntN(4))))
		switch r.IntN(12) {
		case 0:
			p.PropAt = engine.Some(engine.Degrees(90 * r.IntN(4)))
		case 1:
			p.ArmAt = engine.Some(engine.Degrees(90 * r.IntN(4)))
		case 2:
			p.Law = engine.Law(r.IntN(4))
		case 3:
			p.From, p.To = frac.New(1, 4), frac.New(3, 4)
		}
		l.Pieces = append(l.Pieces, p)
	}
	return l
}

func (r lanes) any() engine.Lane {
	switch r.IntN(6) {
	case 0, 1:
		return r.lane()
	case 2: // a C that does not quite fit
		n, m := strconv.Itoa(1+2*r.IntN(3)), strconv.Itoa(1+2*r.IntN(4))
		return cCap(0.2*float64(1+r.IntN(4)), 0.6, n, m, "2", strconv.Itoa(1+r.IntN(3)))
	}
	return r.nearly()
}

// far reaches so far that no circle is refused for its size: each kind of fix
// is to turn up among few lanes.
var far = func() engine.Performer {
	p := engine.DefaultPerformer()
	p.Reach = 2
	return p
}()

// says is what each kind of fix may change, of the pieces at the seam.
var says = map[mend.Kind][]mend.What{
	mend.CarryOn:        {mend.ArmAt, mend.PropAt},
	mend.StartElsewhere: {mend.ArmAt, mend.PropAt},
	mend.StartFitting:   {mend.ArmAt, mend.PropAt, mend.Centre},
	mend.StartProp:      {mend.PropAt},
	mend.MovePath:       {mend.Centre},
	mend.TurnPath:       {mend.Tilt, mend.ArmAt},
	mend.ResizePath:     {mend.Size, mend.ArmAt},
	mend.SteadyBeats:    {mend.Beats},
	mend.LeastJump:      {mend.Beats},
	mend.Ease:           {mend.Law, mend.Beats, mend.Cycles, mend.From, mend.To},
	mend.PropNext:       {mend.Prop},
	mend.PropBefore:     {mend.Prop},
	mend.Radius:         {mend.Size, mend.Centre},
	mend.FlipProp:       {mend.Prop},
	mend.ShareAll:       {mend.Beats},
	mend.EaseAll:        {mend.Law, mend.Beats, mend.Cycles, mend.From, mend.To},
	mend.LastCycles:     {mend.Cycles, mend.Beats, mend.From, mend.To},
	mend.LastArm:        {mend.Arm, mend.Cycles, mend.Beats, mend.From, mend.To},
	mend.CloseProp:      {mend.Prop},
	mend.RepeatRound:    {mend.Pieces},
}

// redo makes the changes that a fix says it made.
func redo(l engine.Lane, changes []mend.Change) engine.Lane {
	l.Pieces = slices.Clone(l.Pieces)
	for _, c := range changes {
		if c.Piece == mend.Whole {
			switch c.What {
			case mend.ArmAt:
				l.ArmAt = c.To.Angle.At
			case mend.PropAt:
				l.PropAt = c.To.Angle.At
			}
			continue
		}
		p := &l.Pieces[c.Piece]
		switch c.What {
		case mend.Beats:
			p.Beats = c.To.Frac
		case mend.Arm:
			p.Arm = c.To.Frac
		case mend.Prop:
			p.Prop = c.To.Frac
		case mend.Cycles:
			p.Cycles = c.To.Frac
		case mend.From:
			p.From = c.To.Frac
		case mend.To:
			p.To = c.To.Frac
		case mend.Law:
			p.Law = c.To.Law
		case mend.ArmAt:
			p.ArmAt = c.To.Angle
		case mend.PropAt:
			p.PropAt = c.To.Angle
		case mend.Centre:
			p.Path.Centre = c.To.Place
		case mend.Size:
			p.Path.A, p.Path.B = real(c.To.Place), imag(c.To.Place)
		case mend.Tilt:
			p.Path.Tilt = c.To.Angle.At
		}
	}
	return l
}

// held checks what must hold of every fix of a lane.
func held(t *testing.T, l engine.Lane, f mend.Fix) {
	t.Helper()
	for _, c := range f.Changes {
		if !slices.Contains(says[f.Kind], c.What) {
			t.Errorf("kind %d changes %d of piece %d, which it does not say; %+v", f.Kind, c.What, c.Piece+1, l)
		}
		shared := f.Kind == mend.Radius || f.Kind == mend.CarryOn
		if n := len(l.Pieces); f.Seam != mend.Whole && c.Piece != mend.Whole && c.Piece != f.Seam && c.Piece != (f.Seam+1)%n && !shared {
			t.Errorf("kind %d at seam %d changes piece %d", f.Kind, f.Seam+1, c.Piece+1)
		}
	}
	if f.Kind != mend.RepeatRound {
		if again := redo(l, f.Changes); !again.Equal(f.Lane) {
			t.Errorf("kind %d: the changes %+v lead to %+v, want %+v", f.Kind, f.Changes, again, f.Lane)
		}
	}
	if len(f.Changes) == 0 {
		t.Errorf("kind %d changes nothing", f.Kind)
	}
	if f.Bend < 0 || f.Bend > 0 && f.Kind != mend.Ease && f.Kind != mend.EaseAll {
		t.Errorf("kind %d bends the curve by %v", f.Kind, f.Bend)
	}
}

// TestFixes: a fix never worsens what it fixes, touches only what it says,
// does nothing when used again and leaves the lane it was asked for alone.
func TestFixes(t *testing.T) {
	rnd := lanes{chance.New(t)}
	counts := map[mend.Kind]int{}
	for range 250 {
		l := rnd.any()
		kept := l
		kept.Pieces = slices.Clone(l.Pieces)
		was := seam.Of(engine.NewTrack(l), 90, false)
		for i := range l.Pieces {
			for _, f := range mend.Of(l, far, 90, i) {
				counts[f.Kind]++
				held(t, l, f)
				now := seam.Of(engine.NewTrack(f.Lane), 90, false)
				if now[i] != f.After || was[i] != f.Before {
					t.Errorf("kind %d: from %+v to %+v, want from %+v to %+v", f.Kind, f.Before, f.After, was[i], now[i])
				}
				if f.After.Verdict < f.Before.Verdict {
					t.Errorf("kind %d: from verdict %d to %d", f.Kind, f.Before.Verdict, f.After.Verdict)
				}
				if f.After.Verdict == f.Before.Verdict {
					switch f.After.Verdict {
					case seam.Gap:
						if f.After.HandGap > f.Before.HandGap+engine.TolGap || f.After.PropGap > f.Before.PropGap+engine.TolPropGap {
							t.Errorf("kind %d: gaps from %+v to %+v", f.Kind, f.Before, f.After)
						}
					case seam.Kink:
						if math.Abs(f.After.JumpAcross) >= math.Abs(f.Before.JumpAcross) {
							t.Errorf("kind %d: jump from %v to %v", f.Kind, f.Before.JumpAcross, f.After.JumpAcross)
						}
					}
				}
				for _, o := range f.Others {
					k := o.Before.After
					if k == i || o.Before != was[k] || o.After != now[k] {
						t.Errorf("kind %d: other seam %+v, want from %+v to %+v", f.Kind, o, was[k], now[k])
					}
				}
				// What is not told of is as it was.
				for k := range now {
					told := k == i || slices.ContainsFunc(f.Others, func(o mend.Other) bool { return o.Before.After == k })
					if !told && now[k].Verdict != was[k].Verdict {
						t.Errorf("kind %d: seam %d goes from verdict %d to %d unsaid", f.Kind, k+1, was[k].Verdict, now[k].Verdict)
					}
				}
				for _, again := range mend.Of(f.Lane, far, 90, i) {
					if again.Kind == f.Kind {
						t.Errorf("kind %d at seam %d is offered again: %+v, then %+v; lane %+v", f.Kind, i+1, f.Changes, again.Changes, l)
					}
				}
			}
		}
		if !l.Equal(kept) {
			t.Fatalf("the lane has become %+v, want it left as %+v", l, kept)
		}
		if t.Failed() {
			return
		}
	}
	t.Logf("fixes by kind: %v", counts)
	for k := mend.CarryOn; k <= mend.FlipProp; k++ {
		if counts[k] == 0 {
			t.Errorf("no fix of kind %d among them", k)
		}
	}
}

// TestWholeLanes: the same for what smooths or closes a lane as a whole.
func TestWholeLanes(t *testing.T) {
	rnd := lanes{chance.New(t)}
	counts := map[mend.Kind]int{}
	smoothed, asked := 0, 0
	for range 120 {
		l := rnd.any()
		kept := l
		kept.Pieces = slices.Clone(l.Pieces)
		smooth := mend.SmoothLane(l, far, 90)
		for k, f := range smooth {
			counts[f.Kind]++
			held(t, l, f)
			if !f.Lane.Beats().Equal(l.Beats()) {
				t.Errorf("kind %d: the round takes %v beats, want %v", f.Kind, f.Lane.Beats(), l.Beats())
			}
			if k == 0 {
				asked++
			}
			if f.After.Verdict == seam.Smooth {
				smoothed++
			}
			for _, again := range mend.SmoothLane(f.Lane, far, 90) {
				if again.Kind == f.Kind {
					t.Errorf("kind %d is offered again: %+v, then %+v with %+v; lane %+v", f.Kind, f.Changes, again.Changes, again.Others, l)
				}
			}
		}
		for _, f := range mend.CloseLane(l, far, 90) {
			counts[f.Kind]++
			if f.Kind != mend.StartElsewhere {
				held(t, l, f)
			}
			if !f.Closing.Closes() {
				t.Errorf("kind %d does not close %+v", f.Kind, l)
			}
		}
		if !l.Equal(kept) {
			t.Fatalf("the lane has become %+v, want it left as %+v", l, kept)
		}
		if t.Failed() {
			return
		}
	}
	t.Logf("fixes by kind: %v; %d of %d lanes all smooth", counts, smoothed, asked)
	for k := mend.ShareAll; k < mend.Kinds; k++ {
		if counts[k] == 0 {
			t.Errorf("no fix of kind %d among them", k)
		}
	}
}

// TestSteadyBeatsCount: whatever the beats of two pieces of simple speeds, the
// beats that keep the prop steady are as the prop turns, and add up.
func TestSteadyBeatsCount(t *testing.T) {
	for _, test := range []struct{ out, back, beats, wantOut, wantBack string }{
		{"1", "3", "2", "1", "3"}, {"1", "2", "2", "4/3", "8/3"}, {"2", "3", "1", "4/5", "6/5"}, {"1", "5", "3", "1", "5"},
	} {
		still := engine.PointPath(0)
		l := lane(0.6, 90, 90, stroke(still, "0", test.out, "1/2", test.beats), stroke(still, "0", test.back, "1/2", test.beats))
		for _, f := range of(l, 0) {
			if f.Kind != mend.SteadyBeats {
				continue
			}
			a, b := f.Lane.Pieces[0].Beats, f.Lane.Pieces[1].Beats
			if !a.Equal(fr(test.wantOut)) || !b.Equal(fr(test.wantBack)) {
				t.Errorf("%s and %s: %v and %v beats, want %s and %s", test.out, test.back, a, b, test.wantOut, test.wantBack)
			}
			break
		}
		wanted(t, of(l, 0), mend.SteadyBeats, test.out+" and "+test.back)
	}
}
