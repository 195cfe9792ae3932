package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// pattern of one or two lanes of every sort.
func (r randomLanes) pattern() engine.Pattern {
	p := pattern(r.lane())
	if r.chance(0.5) {
		p.Lanes = append(p.Lanes, r.lane())
		p.Lanes[1].Side = p.Lanes[0].Side.Other()
	}
	return p
}

// carried checks that lane i of got does what lane i of was does, changed by
// hand and by prop (the vector from hand to head).
func carried(t *testing.T, what string, r randomLanes, got, was engine.Lane, hand, prop func(complex128) complex128) {
	t.Helper()
	a, b := engine.NewTrack(was), engine.NewTrack(got)
	for _, beat := range r.beats(a, 25) {
		from, to := a.At(beat), b.At(beat)
		wantHand := hand(from.Hand)
		wantHead := wantHand + prop(from.Head-from.Hand)
		if d := max(cmplx.Abs(to.Hand-wantHand), cmplx.Abs(to.Head-wantHead)); !(d <= 1e-9) {
			t.Fatalf("%s at beat %v: hand %v, head %v, want %v, %v; lane %+v", what, beat, to.Hand, to.Head, wantHand, wantHead, was)
		}
	}
}

func same(z complex128) complex128 { return z }

func TestMirror(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	flip := func(z complex128) complex128 { return complex(-real(z), imag(z)) }
	for range 500 {
		p := r.pattern()
		before := p.WithLane(0, clone(p.Lanes[0]))
		m := p.Mirror()
		if !p.Equal(before) {
			t.Fatalf("Mirror() changes the pattern it is asked of: %+v", p)
		}
		for i, l := range p.Lanes {
			got := m.Lanes[i]
			if got.Side == l.Side {
				t.Errorf("Mirror() leaves lane %d on side %d", i, l.Side)
			}
			if l.Plane == engine.Wheel {
				if got.Offset != -l.Offset {
					t.Errorf("Mirror() in the wheel plane: offset %v, want %v", got.Offset, -l.Offset)
				}
				carried(t, "mirrored wheel", r, got, l, same, same)
				continue
			}
			if got.Offset != l.Offset {
				t.Errorf("Mirror(): offset %v, want %v", got.Offset, l.Offset)
			}
			carried(t, "mirrored", r, got, l, flip, flip)
		}
		if back := m.Mirror(); !back.Equal(p) {
			t.Fatalf("Mirror() twice = %+v, want %+v", back, p)
		}
	}
}

// TestMirrorSenses: a right-handed anticlockwise flower with a pendulum after
// it, as the other hand does it in the mirror.
func TestMirrorSenses(t *testing.T) {
	l := lane(0.5, 90, stroke(circle(0.6), "1", "-3", "1/2", "2"), stroke(engine.LinePath(0.25, 0.5, 30), "1", "1", "1", "2"))
	l.Pieces[1].Swing = 60
	l.Pieces[1].ArmAt = engine.Some(10.1)
	got := pattern(l).Mirror().Lanes[0]

	want := lane(0.5, 90, stroke(circle(0.6), "-1", "3", "1/2", "2"), stroke(engine.LinePath(-0.25, 0.5, -30), "-1", "-1", "1", "2"))
	want.Side = engine.Left
	want.Pieces[1].Swing, want.Pieces[1].SwingBack = 60, true
	want.Pieces[1].ArmAt = engine.Some(169.9)
	if !got.Equal(want) {
		t.Errorf("Mirror() = %+v, want %+v", got, want)
	}
}

func TestTurn(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 400 {
		p := r.pattern()
		d := r.angle()
		before := p.WithLane(0, clone(p.Lanes[0]))
		turned := p.Turn(d)
		if !p.Equal(before) {
			t.Fatalf("Turn(%v) changes the pattern it is asked of: %+v", d, p)
		}
		spin := cmplx.Rect(1, rad(float64(d)))
		by := func(z complex128) complex128 { return z * spin }
		for i, l := range p.Lanes {
			swings := false
			for _, piece := range l.Pieces {
				swings = swings || piece.Swing != 0
			}
			if swings {
				a, b := engine.NewTrack(l), engine.NewTrack(turned.Lanes[i])
				for _, beat := range r.beats(a, 10) {
					if from, to := a.At(beat), b.At(beat); cmplx.Abs(by(from.Hand)-to.Hand) > 1e-9 {
						t.Fatalf("Turn(%v) at beat %v: hand %v, want %v", d, beat, to.Hand, by(from.Hand))
					}
				}
				continue
			}
			carried(t, "turned", r, turned.Lanes[i], l, by, by)
		}
	}
}

// TestTurnPendulum: the hand's path turns, the pendulum still hangs down.
func TestTurnPendulum(t *testing.T) {
	l := lane(0.5, 0, stroke(engine.LinePath(0, 0.5, 0), "1", "1", "1", "4"))
	l.Pieces[0].Swing = 40
	r := randomLanes{Rand: chance.New(t)}
	carried(t, "turned pendulum", r, pattern(l).Turn(90).Lanes[0], l, func(z complex128) complex128 { return z * 1i }, same)
}

// TestTurnRoundAndRound: quarter turns are exact, four of them are none.
func TestTurnRoundAndRound(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 200 {
		p := r.pattern()
		once := p.Turn(90)
		for i, l := range p.Lanes {
			for j, piece := range l.Pieces {
				c := piece.Path.Centre
				if got, want := once.Lanes[i].Pieces[j].Path.Centre, complex(-imag(c), real(c)); got != want {
					t.Fatalf("Turn(90) puts the centre %v at %v, want %v", c, got, want)
				}
			}
		}
		round := once.Turn(90).Turn(90).Turn(-270)
		if !round.Equal(p) {
			t.Fatalf("turned by 90, 90, 90 and −270 = %+v, want %+v", round, p)
		}
	}
}

// TestTurnNearlyRound: an ellipse that passes for a circle is turned all the same.
func TestTurnNearlyRound(t *testing.T) {
	l := lane(0.5, 0, stroke(engine.EllipsePath(0, 0.6, 0.6+9e-7, 0), "1", "-3", "1", "4"))
	r := randomLanes{Rand: chance.New(t)}
	by := func(z complex128) complex128 { return z * 1i }
	carried(t, "turned", r, pattern(l).Turn(90).Lanes[0], l, by, by)
}

// TestBoxFromDiamond: four petals up, down, left and right stand on the
// diagonals after an eighth of a turn: the head is at its farthest there.
func TestBoxFromDiamond(t *testing.T) {
	l := lane(0.5, 90, stroke(circle(0.5), "1", "-3", "1", "4"))
	box := engine.NewTrack(pattern(l).Turn(45).Lanes[0])
	for k := range 4 {
		tip := cmplx.Rect(1, math.Pi/4+float64(k)*math.Pi/2)
		if got := box.At(float64(k)).Head; math.Abs(cmplx.Abs(got)-1) > 1e-12 {
			t.Errorf("At(%d).Head = %v, %v m out, want 1", k, got, cmplx.Abs(got))
		}
		found := false
		for j := range 4 {
			found = found || cmplx.Abs(box.At(float64(j)).Head-tip) < 1e-12
		}
		if !found {
			t.Errorf("no petal tip at %v", tip)
		}
	}
}

func TestScale(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 300 {
		p := r.pattern()
		k := 0.2 + 3*r.Float64()
		before := p.WithLane(0, clone(p.Lanes[0]))
		scaled := p.Scale(k)
		if !p.Equal(before) {
			t.Fatalf("Scale(%v) changes the pattern it is asked of: %+v", k, p)
		}
		by := func(z complex128) complex128 { return z * complex(k, 0) }
		for i, l := range p.Lanes {
			carried(t, "scaled", r, scaled.Lanes[i], l, by, by)
		}
		if got, want := scaled.Performer.Tether, k*p.Performer.Tether; got != want {
			t.Errorf("Scale(%v): tether %v, want %v", k, got, want)
		}
		if got, want := scaled.Performer.Shoulders, p.Performer.Shoulders; got != want {
			t.Errorf("Scale(%v): shoulders %v, want %v: the body stays", k, got, want)
		}
	}
	if p := r.pattern(); !p.Scale(2).Scale(0.5).Equal(p) {
		t.Errorf("Scale(2) then Scale(1/2) is not the pattern as it was")
	}
}

func TestWithLane(t *testing.T) {
	p := pattern(lane(0.5, 90, named("1")), lane(0.5, 90, named("2")))
	q := p.WithLane(1, lane(0.7, 0, named("3")))
	if !p.Lanes[1].Equal(lane(0.5, 90, named("2"))) {
		t.Errorf("WithLane changes the pattern it is asked of: %+v", p)
	}
	if !q.Lanes[0].Equal(p.Lanes[0]) || !q.Lanes[1].Equal(lane(0.7, 0, named("3"))) {
		t.Errorf("WithLane(1) = %+v", q)
	}
	if p.Equal(q) || !p.Equal(p.WithLane(1, p.Lanes[1])) {
		t.Errorf("Equal does not tell the lanes apart")
	}
}
