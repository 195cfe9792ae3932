package mend_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/mend"
	"whorlbench/engine/seam"
)

// who spins a prop on a tether; each lane has its own.
var who = engine.DefaultPerformer()

// of asks for fixes at 60 beats a minute, so that a beat is a second.
func of(l engine.Lane, i int) []mend.Fix { return mend.Of(l, who, 60, i) }

// find returns the first fix of a kind.
func find(fixes []mend.Fix, k mend.Kind) *mend.Fix {
	for i := range fixes {
		if fixes[i].Kind == k {
			return &fixes[i]
		}
	}
	return nil
}

// wanted is find that must find.
func wanted(t *testing.T, fixes []mend.Fix, k mend.Kind, what string) *mend.Fix {
	t.Helper()
	f := find(fixes, k)
	if f == nil {
		var kinds []mend.Kind
		for _, f := range fixes {
			kinds = append(kinds, f.Kind)
		}
		t.Fatalf("%s: fixes of kinds %v, want kind %d among them", what, kinds, k)
	}
	return f
}

// cCap is a C: half a circle of radius r and back, from above.
func cCap(r, tether float64, out, back, beatsOut, beatsBack string) engine.Lane {
	return lane(tether, 90, 90, stroke(circle(r), "1", out, "1/2", beatsOut), stroke(circle(r), "-1", back, "1/2", beatsBack))
}

// TestThreeWaysForAC: extension and antispin −3 with R ≠ L jump by |2R − 2L|ω.
// With m = n + 2R/L there is none, whence the circle of R = L; at a petal tip
// the sides come with ω₁(R + L) and go with ω₂(3L − R), whence the beats for
// the least jump; and with the hand at rest only the prop counts, of 1/2 and 3/2
// turns, whence beats of 1 to 3.
func TestThreeWaysForAC(t *testing.T) {
	for _, test := range []struct {
		r, l  string
		beats string // of both pieces
	}{{"0.5", "0.6", "2"}, {"0.3", "0.6", "2"}, {"0.9", "0.6", "3"}, {"0.3", "0.2", "4"}} {
		r, l, each := fr(test.r), fr(test.l), fr(test.beats)
		c := cCap(r.Float(), l.Float(), "1", "3", test.beats, test.beats)
		for i := range 2 {
			fixes := of(c, i)
			size := wanted(t, fixes, mend.Radius, test.r)
			for k, p := range size.Lane.Pieces {
				if !close1e9(p.Path.A, l.Float()) || p.Path.Centre != 0 || p.Path.A != p.Path.B {
					t.Errorf("R = %s, L = %s: piece %d has the path %+v, want the circle of radius L", test.r, test.l, k+1, p.Path)
				}
			}
			beats := wanted(t, fixes, mend.LeastJump, test.r)
			// Rates of 3L − R to R + L out: the beats are as the velocities.
			p, q := r.Add(l), l.Mul(frac.Int(3)).Sub(r)
			want := each.Mul(frac.Int(2)).Mul(p).Div(p.Add(q))
			if got := beats.Lane.Pieces[0].Beats; !got.Equal(want) || !beats.Lane.Beats().Equal(c.Beats()) {
				t.Errorf("R = %s, L = %s: %v beats out of %v, want %v of %v", test.r, test.l, got, beats.Lane.Beats(), want, c.Beats())
			}
			ease := wanted(t, fixes, mend.Ease, test.r)
			out, back := ease.Lane.Pieces[0], ease.Lane.Pieces[1]
			if !back.Beats.Equal(out.Beats.Mul(frac.Int(3))) {
				t.Errorf("R = %s, L = %s: eased, %v and %v beats, want 1 to 3", test.r, test.l, out.Beats, back.Beats)
			}
			laws := [2]engine.Law{engine.EaseEnd, engine.EaseStart}
			if i == 1 {
				laws = [2]engine.Law{engine.EaseStart, engine.EaseEnd}
			}
			if out.Law != laws[0] || back.Law != laws[1] {
				t.Errorf("R = %s, L = %s: seam %d has laws %d, %d, want %v", test.r, test.l, i+1, out.Law, back.Law, laws)
			}
			if ease.Bend < 0.01 || ease.Bend > r.Float()+l.Float() {
				t.Errorf("R = %s, L = %s: the curve bends by %v", test.r, test.l, ease.Bend)
			}
			for _, f := range []*mend.Fix{size, beats, ease} {
				if f.After.Verdict != seam.Smooth || f.Before.Verdict != seam.Kink || math.Abs(f.After.JumpAcross) > 1e-8 {
					t.Errorf("R = %s, L = %s: kind %d leaves %+v, want it smooth", test.r, test.l, f.Kind, f.After)
				}
			}
			// Sharing and sizing put the other end right as well.
			if beats.Worsens() || size.Worsens() || len(size.Others) != 1 || size.Bend != 0 {
				t.Errorf("R = %s, L = %s: others %+v and %+v, want both better", test.r, test.l, size.Others, beats.Others)
			}
		}
	}
}

// TestReach: a circle that the arm does not reach round is not offered.
func TestReach(t *testing.T) {
	l := cCap(0.6, 0.6, "1", "5", "2", "2") // smooth with R = (5 − 1)L/2 = 1.2 m
	if f := find(of(l, 0), mend.Radius); f != nil {
		t.Errorf("a circle of radius %v m offered for a reach of %v m", f.Lane.Pieces[0].Path.A, who.Reach)
	}
	if f := wanted(t, mend.Of(l, far, 60, 0), mend.Radius, "far"); !close1e9(f.Lane.Pieces[0].Path.A, 1.2) || f.After.Verdict != seam.Smooth {
		t.Errorf("radius %v, verdict %d, want 1.2 and smooth", f.Lane.Pieces[0].Path.A, f.After.Verdict)
	}
}

// TestRatioThatFits: in-spin n into antispin −m at a petal tip is smooth when
// m = n + 2R/L, if that is whole.
func TestRatioThatFits(t *testing.T) {
	for _, test := range []struct {
		r, l      float64
		n, m, fit string
	}{
		{0.6, 0.6, "1", "5", "3"}, {0.6, 0.6, "1", "1", "3"}, {0.6, 0.6, "3", "1", "5"},
		{0.6, 0.6, "1", "-1", "3"}, // the prop would have to stop
		{0.5, 0.6, "1", "5", ""},
	} {
		l := cCap(test.r, test.l, test.n, test.m, "2", "2")
		fixes := of(l, 0)
		if test.fit == "" {
			if f := find(fixes, mend.PropNext); f != nil {
				t.Errorf("R = %v, L = %v: ratio %v offered, want none", test.r, test.l, f.Lane.Pieces[1].Prop)
			}
			continue
		}
		f := wanted(t, fixes, mend.PropNext, test.m)
		if got := f.Lane.Pieces[1].Prop; !got.Equal(fr(test.fit)) || f.After.Verdict != seam.Smooth {
			t.Errorf("R = %v, L = %v, %s into −%s: prop speed %v, verdict %d, want %s and smooth", test.r, test.l, test.n, test.m, got, f.After.Verdict, test.fit)
		}
		if len(f.Changes) != 1 || f.Changes[0].Piece != 1 || f.Changes[0].What != mend.Prop || !f.Changes[0].From.Frac.Equal(fr(test.m)) || !f.Changes[0].To.Frac.Equal(fr(test.fit)) {
			t.Errorf("changes %+v, want the prop of piece 2 alone", f.Changes)
		}
	}
}

// TestIsolationIntoAntispin where the prop points at the centre:
// ω₂/ω₁ = (L − R)/(R + mL).
func TestIsolationIntoAntispin(t *testing.T) {
	for _, test := range []struct{ r, l string }{{"0.3", "0.6"}, {"0.15", "0.6"}, {"0.2", "0.5"}} {
		for m := int64(1); m <= 4; m++ {
			r, l := fr(test.r), fr(test.l)
			c := lane(l.Float(), 90, 270,
				engine.Stroke(circle(r.Float()), frac.Int(1), frac.Int(1), frac.Int(1), frac.Int(2)),
				engine.Stroke(circle(r.Float()), frac.Int(-1), frac.Int(m), frac.Int(1), frac.Int(2)))
			f := wanted(t, of(c, 0), mend.LeastJump, test.r)
			slower := r.Add(l.Mul(frac.Int(m))).Div(l.Sub(r))
			if got := f.Lane.Pieces[1].Beats.Div(f.Lane.Pieces[0].Beats); !got.Equal(slower) || f.After.Verdict != seam.Smooth {
				t.Errorf("R = %s, L = %s, −%d: beats of 1 to %v, verdict %d, want 1 to %v and smooth", test.r, test.l, m, got, f.After.Verdict, slower)
			}
		}
	}
}

// triquetraHand is half a circle and its diameter, R = L: without a jump at
// either seam when the beats are as 4 to 1.
func triquetraHand(circleBeats, strokeBeats string) engine.Lane {
	return lane(0.6, 180, 0,
		stroke(circle(0.6), "1/2", "-3/2", "1", circleBeats),
		stroke(engine.LinePath(0, 0.6, 0), "1/2", "-1/2", "1", strokeBeats))
}

func TestTriquetraHandBeats(t *testing.T) {
	l := triquetraHand("1", "1")
	for i := range 2 {
		fixes := of(l, i)
		f := wanted(t, fixes, mend.LeastJump, "total kept")
		if got := f.Lane.Pieces[0].Beats; !got.Equal(frac.New(8, 5)) || !f.Lane.Beats().Equal(frac.Int(2)) || f.After.Verdict != seam.Smooth || f.Worsens() {
			t.Errorf("seam %d: %v of %v beats, verdict %d, want 8/5 of 2 and smooth", i+1, got, f.Lane.Beats(), f.After.Verdict)
		}
		// Fifths of a beat cannot be counted; 4 and 1 can.
		counted := false
		for _, f := range fixes {
			a, b := f.Lane.Pieces[0].Beats, f.Lane.Pieces[1].Beats
			counted = counted || f.Kind == mend.LeastJump && a.Equal(frac.Int(4)) && b.Equal(frac.Int(1))
		}
		if !counted {
			t.Errorf("seam %d: no fix with 4 beats and 1", i+1)
		}
	}
	whole := mend.SmoothLane(l, who, 60)
	if len(whole) == 0 || whole[0].Kind != mend.ShareAll || !whole[0].Lane.Pieces[0].Beats.Equal(frac.New(8, 5)) || whole[0].After.Verdict != seam.Smooth {
		t.Errorf("SmoothLane = %+v, want 8/5 and 2/5 of a beat", whole)
	}
}

// sCap is the S of extension and triquetra, arcs of radius r about (∓r, 0).
func sCap(r, tether float64) engine.Lane {
	left, right := engine.CirclePath(complex(-r, 0), r), engine.CirclePath(complex(r, 0), r)
	return lane(tether, 180, 180,
		stroke(left, "1", "1", "1/2", "2"), placed(stroke(right, "-1", "2", "1/2", "2"), engine.Some(180), engine.Opt{}),
		stroke(right, "1", "1", "1/2", "2"), placed(stroke(left, "-1", "2", "1/2", "2"), engine.Some(0), engine.Opt{}))
}

// TestSCap: the jumps that a fix starts from are |2R − L|ω at the ends and Lω
// in the middle, and what makes one end worse says so.
func TestSCap(t *testing.T) {
	const w = math.Pi / 2
	for _, r := range []float64{0.3, 0.5, 0.6} {
		l := sCap(r, 0.6)
		for i := range 4 {
			want := 0.6 * w
			if i%2 == 1 {
				want = math.Abs(2*r-0.6) * w
			}
			fixes := of(l, i)
			if want < 0.05 {
				if len(fixes) > 0 {
					t.Errorf("R = %v: %d fixes for seam %d, which is smooth", r, len(fixes), i+1)
				}
				continue
			}
			f := wanted(t, fixes, mend.Ease, "S")
			if !close1e9(math.Abs(f.Before.JumpAcross), want) || f.After.Verdict != seam.Smooth || f.Bend == 0 {
				t.Errorf("R = %v: seam %d goes from %+v to %+v, bend %v, want from %v to smooth", r, i+1, f.Before, f.After, f.Bend, want)
			}
			if f.Closing.Rounds.Int64() != 1 || f.Unclosed() {
				t.Errorf("R = %v: closes after %v rounds, want 1", r, f.Closing.Rounds)
			}
		}
		whole := mend.SmoothLane(l, who, 60)
		if len(whole) == 0 {
			t.Fatalf("R = %v: nothing for the whole lane", r)
		}
		best := whole[len(whole)-1]
		for i, s := range seam.Of(engine.NewTrack(best.Lane), 60, false) {
			if s.Verdict != seam.Smooth {
				t.Errorf("R = %v: seam %d of the whole is %+v, want smooth; %+v", r, i+1, s, best.Changes)
			}
		}
		if !best.Lane.Beats().Equal(l.Beats()) {
			t.Errorf("R = %v: the round takes %v beats, want %v", r, best.Lane.Beats(), l.Beats())
		}
	}
}

// TestGaps: what closes a gap of the hand or the prop, with the numbers that a
// ruler gives.
func TestGaps(t *testing.T) {
	half := stroke(circle(0.5), "1", "1", "1/2", "1") // from above to below
	at := func(p engine.Piece, c complex128, r float64) engine.Piece {
		p.Path.Centre, p.Path.A, p.Path.B = c, r, r
		return p
	}
	for _, test := range []struct {
		name  string
		kind  mend.Kind
		lane  engine.Lane
		seam  int
		check func(engine.Lane) bool
	}{
		{"prop placed", mend.CarryOn, lane(0.5, 90, 90, half, placed(half, engine.Opt{}, engine.Some(300))), 0,
			func(l engine.Lane) bool { return !l.Pieces[1].PropAt.Set }},
		{"arm placed", mend.CarryOn, lane(0.5, 90, 90, half, placed(half, engine.Some(10), engine.Opt{})), 0,
			func(l engine.Lane) bool { return !l.Pieces[1].ArmAt.Set }},
		// The hand is at (0, −0.5), which a circle about (0, −1) has at its top.
		{"elsewhere", mend.StartElsewhere, lane(0.5, 90, 90, half, at(half, -1i, 0.5)), 0,
			func(l engine.Lane) bool { return l.Pieces[1].ArmAt == engine.Some(90) }},
		{"moved", mend.MovePath, lane(0.5, 90, 90, half, at(half, 0.2-1i, 0.5)), 0,
			func(l engine.Lane) bool { return l.Pieces[1].Path.Centre == 0 }},
		{"resized", mend.ResizePath, lane(0.5, 90, 90, half, at(half, 0.1i, 0.5)), 0,
			func(l engine.Lane) bool { return l.Pieces[1].Path.A == 0.6 && l.Pieces[1].Path.B == 0.6 }},
		// A stroke along 0° from a circle that ends at 45° has to lie along 45°.
		{"turned", mend.TurnPath, lane(0.5, -45, 0, stroke(circle(0.5), "1", "1", "1/4", "1"),
			stroke(engine.LinePath(0, 0.5, 0), "1/2", "1/2", "1", "1")), 0,
			func(l engine.Lane) bool { return l.Pieces[1].Path.Tilt == 45 }},
		// As it is the round leaves the prop at 120°; nobody has to place it.
		{"prop placed elsewhere", mend.CarryOn, lane(0.5, 90, 90, half, placed(half, engine.Opt{}, engine.Some(300))), 1,
			func(l engine.Lane) bool { return !l.Pinned() }},
		// An extension that is placed at 0° comes with its prop at 270°, where
		// it is itself at 270°: the bottom of its circle, which is where the hand is.
		{"fitting", mend.StartFitting, lane(0.5, 90, 90, half, placed(at(half, 1, 0.5), engine.Some(0), engine.Some(0))), 0,
			func(l engine.Lane) bool {
				p := l.Pieces[1]
				return p.ArmAt == engine.Some(270) && !p.PropAt.Set && cmplx.Abs(p.Path.Centre) < 1e-9
			}},
		// The round leaves the prop at 90° + 180° and all repeat the first.
		{"round's prop", mend.StartProp, lane(0.5, 90, 0, stroke(circle(0.5), "1", "1", "1/2", "1"),
			placed(stroke(circle(0.5), "1", "3", "1/2", "1"), engine.Opt{}, engine.Some(90))), 1,
			func(l engine.Lane) bool { return l.PropAt == 270 }},
	} {
		f := wanted(t, of(test.lane, test.seam), test.kind, test.name)
		if !test.check(f.Lane) || f.After.Verdict == seam.Gap || f.Before.Verdict != seam.Gap {
			t.Errorf("%s: %+v from %+v, lane %+v", test.name, f.After, f.Before, f.Lane)
		}
	}
}

// TestFlip: extension there and back must stop its prop; turned the other way
// the way back is a cateye.
func TestFlip(t *testing.T) {
	l := cCap(0.6, 0.6, "1", "-1", "2", "2")
	f := wanted(t, of(l, 0), mend.FlipProp, "flip")
	if got := f.Lane.Pieces[1].Prop; !got.Equal(frac.Int(1)) || f.Before.Verdict != seam.Stop || f.After.Verdict != seam.Kink {
		t.Errorf("prop %v, %d to %d, want 1, from stop to kink", got, f.Before.Verdict, f.After.Verdict)
	}
	stick := who
	stick.Rigid = true
	if fixes := mend.Of(l, stick, 60, 0); find(fixes, mend.FlipProp) != nil {
		t.Error("a stick's prop is turned round, want it left: it may stop")
	}
}

// TestOrder: what is smooth and worsens nothing comes first.
func TestOrder(t *testing.T) {
	for _, l := range []engine.Lane{cCap(0.5, 0.6, "1", "3", "2", "2"), sCap(0.5, 0.6), triquetraHand("1", "1")} {
		for i := range l.Pieces {
			last := 0
			for _, f := range of(l, i) {
				class := 0
				if f.Worsens() {
					class = 1
				}
				if f.After.Verdict != seam.Smooth {
					class += 2
				}
				if class < last {
					t.Errorf("kind %d of class %d after class %d", f.Kind, class, last)
				}
				last = class
			}
		}
	}
}

// TestBend holds the bend against a plain search over both curves: a C whose
// hand eases at one end. With the arm's share f the new curve is
// Re^{iα(f)} + Le^{iψ(s)}.
func TestBend(t *testing.T) {
	const r, tether, n = 0.5, 0.6, 3000
	f := wanted(t, of(cCap(r, tether, "1", "3", "2", "2"), 0), mend.Ease, "C")
	head := func(share, s, arm, prop, arm0, prop0 float64) (x, y float64) {
		a, p := arm0+arm*math.Pi*share, prop0+prop*math.Pi*s
		return r*math.Cos(a) + tether*math.Cos(p), r*math.Sin(a) + tether*math.Sin(p)
	}
	want := 0.0
	for piece, law := range []func(float64) float64{
		func(s float64) float64 { return math.Sin(math.Pi / 2 * s) },
		func(s float64) float64 { return 1 - math.Cos(math.Pi/2*s) },
	} {
		arm, prop, start := 1.0, 1.0, math.Pi/2
		if piece == 1 {
			arm, prop, start = -1, 3, 3*math.Pi/2
		}
		for k := 0; k <= n; k += 10 {
			s := float64(k) / n
			x, y := head(law(s), s, arm, prop, start, start)
			least := math.Inf(1)
			for m := range n + 1 {
				u := float64(m) / n
				ox, oy := head(u, u, arm, prop, start, start)
				least = min(least, math.Hypot(x-ox, y-oy))
			}
			want = max(want, least)
		}
	}
	if math.Abs(f.Bend-want) > 0.002 {
		t.Errorf("bend %v m, want %v by plain search", f.Bend, want)
	}
}

// TestCloseLane: hands and props that do not come back.
func TestCloseLane(t *testing.T) {
	for _, test := range []struct {
		name  string
		lane  engine.Lane
		kind  mend.Kind
		check func(engine.Lane) bool
	}{
		// Half a turn out, a quarter back: a quarter more.
		{"cycles", lane(0.5, 90, 90, stroke(circle(0.5), "1", "1", "1/2", "2"), stroke(circle(0.5), "-1", "3", "1/4", "1")), mend.LastCycles,
			func(l engine.Lane) bool {
				return l.Pieces[1].Cycles.Equal(frac.New(1, 2)) && l.Pieces[1].Beats.Equal(frac.Int(2))
			}},
		{"arm", lane(0.5, 90, 90, stroke(circle(0.5), "1", "1", "1/2", "2"), stroke(circle(0.5), "-1", "6", "1/4", "1")), mend.LastArm,
			func(l engine.Lane) bool { return l.Pieces[1].Arm.Equal(frac.Int(-2)) }},
		// 1/2 + 1 prop turns a round: half a turn less makes −1 of the half
		// circle's 2, half a turn more −3.
		{"prop", cCap(0.6, 0.6, "1", "2", "2", "2"), mend.CloseProp,
			func(l engine.Lane) bool {
				return l.Pieces[0].Prop.Equal(frac.Int(2)) || l.Pieces[1].Prop.Equal(frac.Int(1)) || l.Pieces[1].Prop.Equal(frac.Int(3))
			}},
		{"twice", cCap(0.6, 0.6, "1", "2", "2", "2"), mend.RepeatRound, func(l engine.Lane) bool { return len(l.Pieces) == 4 }},
	} {
		fixes := mend.CloseLane(test.lane, who, 60)
		f := wanted(t, fixes, test.kind, test.name)
		if c := f.Closing; !test.check(f.Lane) || !c.Closes() || c.Rounds.Int64() != 1 {
			t.Errorf("%s: closes after %v rounds, lane %+v", test.name, c.Rounds, f.Lane.Pieces)
		}
	}
	if fixes := mend.CloseLane(cCap(0.6, 0.6, "1", "3", "2", "2"), who, 60); len(fixes) > 0 {
		t.Errorf("%d fixes for a lane that closes", len(fixes))
	}
}
