package follow_test

import (
	"fmt"
	"math"
	"math/cmplx"
	"math/rand/v2"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/follow"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// leg is a whole turn of a path that starts with arm and prop at the angles
// given, in one beat.
func leg(tether float64, path engine.Path, ratio string, arm, prop engine.Degrees) *engine.Leg {
	return &engine.NewTrack(lane(tether, arm, prop, stroke(path, "1", ratio, "1", "1"))).Legs[0]
}

func between(a, b *engine.Leg) follow.Meetings { return follow.Between(a, b, 60, false) }

// TestMeetOnOneCircle: flowers n_a and n_b on one circle meet where
// (n_b − n_a)α ≡ φ_a − φ_b: extension and the four-petal antispin flower in
// diamond mode at its four tips, up, down, left and right (common practice: the
// petals' tips are where one changes over).
func TestMeetOnOneCircle(t *testing.T) {
	for _, test := range []struct {
		a, b       string
		propA      engine.Degrees
		propB      engine.Degrees
		arms       []float64
		relation   follow.Relation
		turn, then float64 // of b's prop; meetings then
	}{
		{a: "1", b: "-3", arms: []float64{0, 90, 180, 270}},
		{a: "1", b: "-3", propB: 180, arms: []float64{45, 135, 225, 315}},
		{a: "1", b: "-2", arms: []float64{0, 120, 240}},
		{a: "1", b: "3", propB: 90, arms: []float64{135, 315}},
		{a: "-1", b: "-2", propA: 20, arms: []float64{340}}, // −α + 20 = −2α
		{a: "3", b: "-5", arms: []float64{0, 45, 90, 135, 180, 225, 270, 315}},
		{a: "1", b: "1", relation: follow.One},
		{a: "1", b: "1", propB: 180, relation: follow.Pass, turn: 180},
		{a: "2", b: "2", propB: -30, relation: follow.Pass, turn: 30},
		{a: "3/2", b: "3/2", propB: 180, relation: follow.One}, // the other turn of one star
		{a: "3/2", b: "3/2", propB: 100, relation: follow.Pass, turn: 80},
	} {
		t.Run(fmt.Sprint(test.a, " and ", test.b, " from ", test.propA, test.propB), func(t *testing.T) {
			m := between(leg(0.6, circle(0.5), test.a, 0, test.propA), leg(0.6, circle(0.5), test.b, 0, test.propB))
			if m.Relation != test.relation || len(m.At) != len(test.arms) {
				t.Fatalf("relation %d, %d meetings, want %d, %d", m.Relation, len(m.At), test.relation, len(test.arms))
			}
			for k, at := range m.At {
				if !near(float64(at.A.Arm), test.arms[k], 1e-9) || at.A.Arm != at.B.Arm {
					t.Errorf("meeting %d at %v and %v, want %v", k, at.A.Arm, at.B.Arm, test.arms[k])
				}
			}
			if m.Relation == follow.Pass && (!near(float64(m.Turn), test.turn, 1e-9) || m.Then == nil || m.Then.Relation != follow.One) {
				t.Errorf("turn %v, then %+v, want %v, one pattern", m.Turn, m.Then, test.turn)
			}
		})
	}
}

// TestMeetingsHaveSeams: extension and antispin −3 with R = L, at a tip: a prop
// that keeps its sense has the hand turn back, smooth both ways.
func TestMeetingsHaveSeams(t *testing.T) {
	m := between(leg(0.6, circle(0.6), "1", 0, 0), leg(0.6, circle(0.6), "-3", 0, 0))
	for _, at := range m.At {
		if len(at.Ways) != 4 {
			t.Fatalf("%d ways, want there and back, either sense of the prop", len(at.Ways))
		}
		for _, w := range at.Ways {
			// With the arm anticlockwise extension's prop is too, antispin's not.
			if w.BackA == w.BackB || w.Seam.Verdict != seam.Smooth || !w.Seam.HandTurnsBack {
				t.Errorf("way %+v, want smooth, turning back", w)
			}
		}
	}
	rigid := follow.Between(leg(0.6, circle(0.6), "1", 0, 0), leg(0.6, circle(0.6), "-3", 0, 0), 60, true)
	if got := len(rigid.At[0].Ways); got != 8 {
		t.Errorf("%d ways for a rigid prop, want 8", got)
	}
}

// TestMeetElsewhere: what hands on different paths share.
func TestMeetElsewhere(t *testing.T) {
	point := leg(0.6, engine.PointPath(0.5), "1", 0, 0)
	line := func(c complex128, r float64, tilt engine.Degrees) engine.Path { return engine.LinePath(c, r, tilt) }
	for _, test := range []struct {
		name     string
		a, b     *engine.Leg
		relation follow.Relation
		n        int
	}{
		{"circles that touch, extension and isolation", leg(0.6, circle(0.5), "1", 0, 0), leg(0.6, engine.CirclePath(1, 0.5), "1", 180, 0), follow.Meet, 1},
		{"circles that touch, the props opposed", leg(0.6, circle(0.5), "1", 0, 0), leg(0.6, engine.CirclePath(1, 0.5), "1", 0, 0), follow.Pass, 0},
		{"circles apart", leg(0.6, circle(0.5), "1", 0, 0), leg(0.6, engine.CirclePath(3, 0.5), "1", 0, 0), follow.Apart, 0},
		{"one circle in another", leg(0.6, circle(0.5), "1", 0, 0), leg(0.6, circle(0.4), "1", 0, 0), follow.Apart, 0},
		{"a stroke across its circle, carried along", leg(0.6, circle(0.5), "1", 0, 0), leg(0.6, line(0, 0.5, 0), "1", 0, 0), follow.Meet, 2},
		{"static spin on a circle", leg(0.6, circle(0.5), "3", 0, 0), point, follow.Meet, 1},
		{"static spin at a star's place", leg(0.6, circle(0.5), "3/2", 0, 0), point, follow.Meet, 2},
		{"static spin off the circle", leg(0.6, circle(0.4), "3", 0, 0), point, follow.Apart, 0},
		{"static spins", point, leg(0.6, engine.PointPath(0.5), "-2", 0, 77), follow.One, 0},
		{"other tethers", leg(0.6, circle(0.5), "1", 0, 0), leg(0.7, circle(0.5), "1", 0, 0), follow.Unequal, 0},
		{"one stroke both ways", leg(0.6, line(0, 0.5, 30), "2", 30, 10), leg(0.6, line(0, 0.5, 210), "-2", 30, 10), follow.One, 0},
	} {
		m := between(test.a, test.b)
		if m.Relation != test.relation || len(m.At) != test.n {
			t.Errorf("%s: relation %d, %d meetings, want %d, %d", test.name, m.Relation, len(m.At), test.relation, test.n)
		}
	}
	carried := between(leg(0.6, line(0, 0.5, 0), "0", 0, 40), leg(0.6, line(0.3, 0.5, 0), "0", 0, 40))
	if n := len(carried.At); !carried.Stretch || n == 0 || !near(real(carried.At[0].Hand), 0.5, 1e-9) || !near(real(carried.At[n-1].Hand), -0.2, 1e-9) {
		t.Errorf("props carried alike on strokes in one line: %+v, want a stretch from 0.5 to −0.2", carried)
	}
	swing := stroke(circle(0.5), "1", "1", "1", "1")
	swing.Swing = 40
	if m := between(&engine.NewTrack(lane(0.6, 0, 0, swing)).Legs[0], point); m.Relation != follow.Unclear {
		t.Errorf("a pendulum: relation %d, want unclear", m.Relation)
	}
}

// TestWaysAreSeams: each way of changing over is the seam of a lane that does
// so: the first pattern up to the meeting, the second placed there.
func TestWaysAreSeams(t *testing.T) {
	r := couple{chance.New(t)}
	ways := 0
	for range 60 {
		a, b := r.legs()
		if !r.meetsHere(a, b) {
			continue
		}
		for _, at := range between(a, b).At {
			for _, w := range at.Ways {
				from, to, onFrom, onTo := a.Piece, b.Piece, at.A, at.B
				backFrom, backTo := w.BackA, w.BackB
				if w.FromB {
					from, to, onFrom, onTo = to, from, onTo, onFrom
					backFrom, backTo = backTo, backFrom
				}
				if backFrom {
					from.Arm, from.Prop = from.Arm.Neg(), from.Prop.Neg()
				}
				if backTo {
					to.Arm, to.Prop = to.Arm.Neg(), to.Prop.Neg()
				}
				turned := func(speed frac.Frac) engine.Degrees { return engine.Degrees(360 * speed.Mul(from.Cycles).Float()) }
				from.ArmAt, from.PropAt = engine.Some(onFrom.Arm-turned(from.Arm)), engine.Some(at.Prop-turned(from.Prop))
				to.ArmAt, to.PropAt = engine.Some(onTo.Arm), engine.Some(at.Prop)
				want := seam.Of(engine.NewTrack(lane(0.6, 0, 0, from, to)), 60, false)[0]
				if want.Verdict <= seam.Stop || want.Verdict != w.Seam.Verdict || want.HandTurnsBack != w.Seam.HandTurnsBack ||
					!near(want.JumpAcross, w.Seam.JumpAcross, 1e-6) || !near(want.JumpAlong, w.Seam.JumpAlong, 1e-6) {
					t.Fatalf("way %+v, in a lane %+v; from %+v into %+v", w, want, from, to)
				}
				ways++
			}
		}
	}
	if ways < 100 {
		t.Errorf("only %d ways looked at", ways)
	}
}

// couple makes two patterns that have a fair chance to meet.
type couple struct{ *rand.Rand }

func (r couple) path() engine.Path {
	size := 0.3 + 0.1*float64(r.IntN(4))
	place := complex(0.1*float64(r.IntN(9)-4), 0.1*float64(r.IntN(9)-4))
	tilt := engine.Degrees(45 * r.IntN(8))
	switch r.IntN(6) {
	case 0:
		return engine.LinePath(place, size, tilt)
	case 1:
		return engine.LinePath(complex(real(place), 0), size, engine.Degrees(180*r.IntN(2)))
	case 2:
		return engine.EllipsePath(place, size, 0.2+0.1*float64(r.IntN(3)), tilt)
	case 3:
		return engine.CirclePath(0, size)
	}
	return engine.CirclePath(place, size)
}

func (r couple) ratio() frac.Frac { return frac.New(int64(r.IntN(9)-4), int64(1+r.IntN(2))) }

func (r couple) legs() (a, b *engine.Leg) {
	var legs [2]*engine.Leg
	path := r.path()
	for k := range legs {
		if k == 1 && r.IntN(3) > 0 {
			path = r.path()
		}
		arm := frac.Int(int64(2*r.IntN(2) - 1))
		p := engine.Stroke(path, arm, r.ratio(), frac.New(int64(1+r.IntN(4)), 4), frac.Int(1))
		legs[k] = &engine.NewTrack(lane(0.6, engine.Degrees(15*r.IntN(24)), engine.Degrees(15*r.IntN(24)), p)).Legs[0]
	}
	return legs[0], legs[1]
}

// meetsHere makes b meet a somewhere: their props are turned alike at a place
// that both hands reach.
func (r couple) meetsHere(a, b *engine.Leg) bool {
	m := between(a, b)
	if m.Relation != follow.Pass {
		return m.Relation == follow.Meet
	}
	b.Prop0 += m.Turn.Radians()
	return true
}

// TestMeetingsByTrying compares with what is found by walking along both closed
// curves and closing in wherever they come near.
func TestMeetingsByTrying(t *testing.T) {
	r := couple{chance.New(t)}
	met := 0
	for range 60 {
		a, b := r.legs()
		if !r.meetsHere(a, b) {
			continue
		}
		m := between(a, b)
		if m.Relation != follow.Meet || m.Stretch {
			continue
		}
		wa, wb := a.Whole(), b.Whole()
		for k, at := range m.At {
			x, y := wa.Point(at.A.Share), wb.Point(at.B.Share)
			if cmplx.Abs(x.Hand-y.Hand) > 1e-6 || cmplx.Abs(x.Head-y.Head) > 2e-6 || cmplx.Abs(x.Hand-at.Hand) > 1e-6 {
				t.Fatalf("meeting %d of %+v and %+v: %v and %v, want one place", k, a.Piece, b.Piece, x, y)
			}
			if d := cmplx.Rect(0.6, at.Prop.Radians()) - (x.Head - x.Hand); cmplx.Abs(d) > 1e-6 {
				t.Fatalf("meeting %d: the prop is not at %v", k, at.Prop)
			}
		}
		for _, v := range tried(wa, wb) {
			found := false
			for _, at := range m.At {
				found = found || nearShare(v[0], at.A.Share) && nearShare(v[1], at.B.Share)
			}
			if !found {
				t.Fatalf("not told: they meet at the shares %v of %+v (from %v, %v) and %+v (from %v, %v); told %d",
					v, a.Piece, a.Arm0, a.Prop0, b.Piece, b.Arm0, b.Prop0, len(m.At))
			}
			met++
		}
	}
	if met < 20 {
		t.Errorf("only %d meetings found by trying", met)
	}
}

// nearShare allows for two curves that touch, where places are known less well.
func nearShare(a, b float64) bool { return math.Abs(math.Remainder(a-b, 1)) < 1e-3 }

// tried walks in steps and closes in from each pair of steps that is nearer
// than its neighbours.
func tried(a, b engine.Whole) (shares [][2]float64) {
	const n = 600
	off := func(u, v float64) float64 {
		x, y := a.Point(u), b.Point(v)
		return cmplx.Abs(x.Hand-y.Hand) + cmplx.Abs(x.Head-y.Head)
	}
	var as, bs [n]engine.Point
	for k := range n {
		as[k], bs[k] = a.Point(float64(k)/n), b.Point(float64(k)/n)
	}
	d := func(i, j int) float64 {
		x, y := as[(i+n)%n], bs[(j+n)%n]
		return cmplx.Abs(x.Hand-y.Hand) + cmplx.Abs(x.Head-y.Head)
	}
	for i := range n {
		for j := range n {
			here := d(i, j)
			if here > 0.1 || here > d(i-1, j) || here > d(i+1, j) || here > d(i, j-1) || here > d(i, j+1) {
				continue
			}
			u, v, step := float64(i)/n, float64(j)/n, 1./n
			for range 400 {
				bestU, bestV, best := u, v, off(u, v)
				for _, s := range [][2]float64{{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}, {1, 2}, {2, 1}, {-1, 2}, {2, -1}, {1, -2}, {-2, 1}, {-1, -2}, {-2, -1}} {
					if x := off(u+step*s[0], v+step*s[1]); x < best {
						bestU, bestV, best = u+step*s[0], v+step*s[1], x
					}
				}
				if bestU == u && bestV == v {
					step /= 2
				}
				u, v = bestU, bestV
			}
			if off(u, v) < 1e-9 {
				shares = append(shares, [2]float64{u, v})
			}
		}
	}
	return shares
}
