package step_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/step"
)

// leg returns the first leg of a lane of one piece.
func leg(arm, prop engine.Degrees, p engine.Piece) *engine.Leg {
	return &engine.NewTrack(engine.Lane{Tether: 0.6, ArmAt: arm, PropAt: prop, Pieces: []engine.Piece{p}}).Legs[0]
}

func stroke(path engine.Path, arm, prop, cycles int64, den int64) engine.Piece {
	return engine.Stroke(path, frac.Int(arm), frac.Int(prop), frac.New(cycles, den), frac.Int(1))
}

// TestToward: the compass, from the definition of an angle.
func TestToward(t *testing.T) {
	for _, test := range []struct {
		deg  engine.Degrees
		want step.Toward
	}{
		{0, step.East}, {22, step.East}, {22.5, step.NorthEast}, {45, step.NorthEast}, {90, step.North}, {180, step.West},
		{-180, step.West}, {-90, step.South}, {-23, step.SouthEast}, {-22.5, step.East}, {359, step.East}, {225, step.SouthWest},
	} {
		if got := step.TowardOf(test.deg.Radians()); got != test.want {
			t.Errorf("TowardOf(%v°) = %d, want %d", test.deg, got, test.want)
		}
	}
	for d := step.East; d <= step.SouthEast; d++ {
		// x reversed is 180° less the angle.
		if got, want := d.Mirrored(), step.TowardOf(math.Pi-float64(d)*math.Pi/4); got != want {
			t.Errorf("%d.Mirrored() = %d, want %d", d, got, want)
		}
	}
}

// TestMoves: read off drawings of each movement.
func TestMoves(t *testing.T) {
	circle, line := engine.CirclePath(0, 0.5), engine.LinePath(0, 0.4, 0)
	for _, test := range []struct {
		name           string
		leg            *engine.Leg
		hand           step.Hand
		way            step.Way
		turns          float64
		from, over, to step.Toward
	}{
		{"down the left half", leg(90, 90, stroke(circle, 1, 1, 1, 2)), step.Round, step.Anticlockwise, 0.5, step.North, step.West, step.South},
		{"down the right half", leg(90, 90, stroke(circle, -1, 1, 1, 2)), step.Round, step.Clockwise, 0.5, step.North, step.East, step.South},
		{"a quarter under", leg(225, 0, stroke(circle, 1, 0, 1, 4)), step.Round, step.Anticlockwise, 0.25, step.SouthWest, step.South, step.SouthEast},
		{"straight across", leg(0, 0, stroke(line, 1, 1, 1, 2)), step.Line, step.Anticlockwise, 0.5, step.East, step.East, step.West},
		{"stays", leg(0, 0, stroke(engine.PointPath(0), 0, 1, 1, 1)), step.Stay, step.NoWay, 0, 0, 0, 0},
	} {
		m := step.Of(test.leg)
		if m.Hand != test.hand || m.Way != test.way || math.Abs(m.Turns-test.turns) > 1e-12 || m.From != test.from || m.To != test.to ||
			m.Hand == step.Round && m.Over != test.over {
			t.Errorf("%s: Of() = %+v, want %+v", test.name, m, test)
		}
	}
}

// TestLines: on a line of half length 0.4 m a hand that begins at an end goes
// 0.8 m before it turns back, and turns back once in a whole to and fro.
func TestLines(t *testing.T) {
	line := engine.LinePath(0, 0.4, 0)
	upright := engine.Path{Kind: engine.OnEllipse, B: 0.4} // the same upright, written as an ellipse
	for _, test := range []struct {
		name    string
		leg     *engine.Leg
		heading step.Toward
		backs   int
		span    float64
	}{
		{"across", leg(0, 0, stroke(line, 1, 1, 1, 2)), step.West, 0, 0.8},
		{"there and back", leg(0, 0, stroke(line, 1, 1, 1, 1)), step.West, 1, 0.8},
		{"there and back, arm the other way", leg(0, 0, stroke(line, -1, 1, 1, 1)), step.West, 1, 0.8},
		{"twice to and fro", leg(180, 0, stroke(line, 1, 1, 2, 1)), step.East, 3, 0.8},
		{"from the middle", leg(90, 0, stroke(line, 1, 1, 1, 4)), step.West, 0, 0.4},
		{"from the middle and back", leg(90, 0, stroke(line, -1, 1, 1, 2)), step.East, 1, 0.4},
		{"upright", leg(90, 0, stroke(upright, 1, 1, 1, 2)), step.South, 0, 0.8},
	} {
		m := step.Of(test.leg)
		if m.Hand != step.Line || m.Heading != test.heading || m.Backs != test.backs || math.Abs(m.Span-test.span) > 1e-9 {
			t.Errorf("%s: Of() = %+v, want heading %d, %d times back, %v m", test.name, m, test.heading, test.backs, test.span)
		}
	}
}

// TestProps: turns and swings of a prop, and what is left of easing in a part.
func TestProps(t *testing.T) {
	p := stroke(engine.CirclePath(0, 0.5), 1, -3, 1, 2)
	p.Law = engine.EaseBoth
	m := step.Of(leg(90, 90, p))
	if m.Prop != step.Clockwise || m.PropTurns != 1.5 || m.Start != step.North || m.End != step.South || m.Law != engine.EaseBoth || m.Over != step.West {
		t.Errorf("Of() = %+v, want one turn and a half clockwise from up to down, eased at both ends", m)
	}
	p.From = frac.New(1, 3)
	if m := step.Of(leg(90, 90, p)); m.Law != engine.EaseEnd {
		t.Errorf("the later part of a stroke eased at both ends has law %d, want the end eased", m.Law)
	}
	s := stroke(engine.PointPath(0), 0, 2, 1, 1)
	s.Swing = 50
	if m := step.Of(leg(0, 0, s)); m.Swing != 50 || m.Swings != 2 || m.PropTurns != 0 || m.Prop != step.NoWay {
		t.Errorf("Of() = %+v, want two swings of 50°", m)
	}
}
