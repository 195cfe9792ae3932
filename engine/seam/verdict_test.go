package seam_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// TestVerdictOrder: a gap counts before a stop, a stop before a kink; a rigid
// prop may stop and turn back.
func TestVerdictOrder(t *testing.T) {
	at := func(d engine.Degrees) engine.Opt { return engine.Some(d) }
	whole := func(arm, prop string) engine.Piece { return stroke(circle(0.6), arm, prop, "1", "1") }
	moved := func(p engine.Piece, by complex128) engine.Piece { p.Path.Centre += by; return p }
	swing := stroke(engine.PointPath(0), "0", "-1", "1", "2")
	swing.Swing = 40
	for _, test := range []struct {
		name            string
		first, second   engine.Piece
		tethered, rigid seam.Verdict
	}{
		{"one movement", whole("1", "1"), whole("1", "1"), seam.Smooth, seam.Smooth},
		{"prop angle placed where it is", whole("1", "2"), placed(whole("1", "2"), engine.Opt{}, at(90)), seam.Smooth, seam.Smooth},
		{"prop off by 0.9 millionths of a degree", whole("1", "2"), placed(whole("1", "2"), engine.Opt{}, at(90+0.9e-6)), seam.Smooth, seam.Smooth},
		{"prop off by 1.1 millionths of a degree", whole("1", "2"), placed(whole("1", "2"), engine.Opt{}, at(90+1.1e-6)), seam.Gap, seam.Gap},
		{"prop off by half a turn", whole("1", "2"), placed(whole("1", "2"), engine.Opt{}, at(270)), seam.Gap, seam.Gap},
		{"hand off by 0.9 µm", whole("1", "1"), moved(whole("1", "1"), 0.9e-6), seam.Smooth, seam.Smooth},
		{"hand off by 1.1 µm", whole("1", "1"), moved(whole("1", "1"), 1.1e-6), seam.Gap, seam.Gap},
		{"hand off, and the prop reverses", whole("1", "1"), moved(whole("1", "-1"), 0.1i), seam.Gap, seam.Gap},
		{"prop reverses", whole("1", "1"), whole("1", "-1"), seam.Stop, seam.Kink},
		{"prop reverses, hardly turning", whole("1", "0.001"), whole("1", "-0.001"), seam.Stop, seam.Smooth},
		{"prop comes to a stand", whole("1", "1"), whole("1", "0"), seam.Kink, seam.Kink},
		{"prop sets off", whole("1", "0"), whole("1", "-1"), seam.Kink, seam.Kink},
		// L·Δψ′ = 0.5·2π·Δprop: 0.049 m/s and 0.0509 m/s.
		{"prop a little faster", whole("1", "1"), whole("1", "1.0156"), seam.Smooth, seam.Smooth},
		{"prop faster than a wrist gives", whole("1", "1"), whole("1", "1.0162"), seam.Kink, seam.Kink},
		{"prop slower than a wrist gives", whole("1", "1.0162"), whole("1", "1"), seam.Kink, seam.Kink},
		// The sign as written counts, though the cosine knows none.
		{"a pendulum written backwards", stroke(engine.PointPath(0), "0", "1", "1", "1"), placed(swing, engine.Opt{}, engine.Opt{}), seam.Gap, seam.Gap},
	} {
		l := lane(0.5, 90, 90, test.first, test.second)
		for _, prop := range []struct {
			rigid bool
			want  seam.Verdict
		}{{false, test.tethered}, {true, test.rigid}} {
			got := seam.Of(engine.NewTrack(l), 60, prop.rigid)[0]
			if got.Verdict != prop.want {
				t.Errorf("%s, rigid %v: %+v, want verdict %d", test.name, prop.rigid, got, prop.want)
			}
		}
	}
}

// TestSwingSigns: two pendulums that meet at rest, the signs of prop as they
// are written.
func TestSwingSigns(t *testing.T) {
	swing := func(prop string) engine.Piece {
		p := stroke(engine.PointPath(0), "0", prop, "1", "2")
		p.Swing = 40
		return p
	}
	for _, test := range []struct {
		first, second string
		want          seam.Verdict
	}{{"1", "1", seam.Smooth}, {"1", "-1", seam.Stop}, {"-1", "1", seam.Stop}, {"-2", "-1", seam.Smooth}} {
		for i, s := range seams(lane(0.5, 0, 0, swing(test.first), swing(test.second))) {
			if s.Verdict != test.want || s.PropReverses != (test.want == seam.Stop) || s.HasTurn {
				t.Errorf("prop %s into %s: seam %d = %+v, want verdict %d", test.first, test.second, i+1, s, test.want)
			}
		}
	}
}

// TestTurns: how far the hand's way turns, and what reverses. The second
// piece is placed so that its path begins where it is wanted.
func TestTurns(t *testing.T) {
	at := engine.Some
	line := func(tilt engine.Degrees) engine.Path { return engine.LinePath(0, 0.5, tilt) }
	oval := engine.EllipsePath(0, 0.8, 0.4, 30)
	none := math.NaN()
	for _, test := range []struct {
		name                 string
		first, second        engine.Piece
		start                engine.Degrees
		turn                 float64
		back, armRev, popRev bool
	}{
		{"round and round", stroke(circle(0.6), "1", "1", "1/2", "1"), stroke(circle(0.6), "1", "1", "1/2", "1"), 90, 0, false, false, false},
		{"there and back", stroke(circle(0.6), "1", "1", "1/2", "1"), stroke(circle(0.6), "-1", "1", "1/2", "1"), 90, 180, true, true, false},
		{"there and back at rest", eased(stroke(circle(0.6), "1", "1", "1/2", "1"), engine.EaseBoth), eased(stroke(circle(0.6), "-1", "-1", "1/2", "1"), engine.EaseBoth), 90, 180, true, true, true},
		// In the middle of an S the arm reverses and the hand goes straight on.
		{"S", stroke(engine.CirclePath(-0.5, 0.5), "1", "1", "1/2", "1"), placed(stroke(engine.CirclePath(0.5, 0.5), "-1", "2", "1/2", "1"), at(180), engine.Opt{}), 180, 0, false, true, false},
		// Two circles that touch from inside: the hand turns back, the arm does not reverse.
		{"cusp", stroke(circle(0.6), "1", "1", "1", "1"), placed(stroke(engine.CirclePath(0.9, 0.3), "1", "1", "1", "1"), at(180), engine.Opt{}), 0, 180, true, false, false},
		{"arm comes to a stand", stroke(circle(0.6), "1", "1", "1", "1"), stroke(circle(0.6), "0", "1", "1", "1"), 0, none, false, false, false},
		{"on a point", stroke(circle(0.6), "1", "1", "1", "1"), stroke(engine.PointPath(0.6), "-1", "-1", "1", "1"), 0, none, false, false, true},
		{"an oval's arm reverses", stroke(oval, "1", "1", "1/4", "1"), stroke(oval, "-1", "1", "1/4", "1"), 30, 180, true, true, false},
		{"a stroke's arm does not", stroke(line(0), "1", "1", "1/2", "1"), stroke(line(0), "-1", "1", "1/2", "1"), 0, 180, true, false, false},
		{"a stroke that goes straight on", stroke(line(0), "1", "1", "1/4", "1"), stroke(line(0), "1", "1", "1/4", "1"), 0, 0, false, false, false},
		{"circle into its diameter", stroke(circle(0.6), "1", "1", "1/2", "1"), stroke(engine.LinePath(0, 0.6, 0), "-1", "1", "1/2", "1"), 180, 90, false, false, false},
		// Strokes that start from their − ends: the way turns by the tilt.
		{"corner of 90°", stroke(line(0), "1", "1", "1/2", "1"), placed(stroke(line(90), "1", "1", "1/2", "1"), at(270), engine.Opt{}), 180, 90, false, false, false},
		{"corner of 135°", stroke(line(0), "1", "1", "1/2", "1"), placed(stroke(line(135), "1", "1", "1/2", "1"), at(315), engine.Opt{}), 180, 135, false, false, false},
		{"corner of 135.0000005°", stroke(line(0), "1", "1", "1/2", "1"), placed(stroke(line(135.0000005), "1", "1", "1/2", "1"), at(315.0000005), engine.Opt{}), 180, 135.0000005, false, false, false},
		{"corner of 135.000002°", stroke(line(0), "1", "1", "1/2", "1"), placed(stroke(line(135.000002), "1", "1", "1/2", "1"), at(315.000002), engine.Opt{}), 180, 135.000002, true, false, false},
		{"corner of 200°, which is 160°", stroke(line(0), "1", "1", "1/2", "1"), placed(stroke(line(200), "1", "1", "1/2", "1"), at(20), engine.Opt{}), 180, 160, true, false, false},
		{"a quarter circle into a level stroke", stroke(circle(0.6), "1", "1", "1/4", "1"), placed(stroke(line(0), "-1", "1", "1/2", "1"), at(0), engine.Opt{}), 0, 0, false, false, false},
		{"prop without a sign", stroke(circle(0.6), "1", "0", "1", "1"), stroke(circle(0.6), "1", "-2", "1", "1"), 0, 0, false, false, false},
	} {
		s := seams(lane(0.5, test.start, test.start, test.first, test.second))[0]
		if s.HasTurn == math.IsNaN(test.turn) || s.HasTurn && math.Abs(float64(s.Turn)-test.turn) > 1e-7 {
			t.Errorf("%s: turn %v (there: %v), want %v", test.name, s.Turn, s.HasTurn, test.turn)
		}
		if s.HandTurnsBack != test.back || s.ArmReverses != test.armRev || s.PropReverses != test.popRev {
			t.Errorf("%s: hand turns back %v, arm reverses %v, prop reverses %v, want %v, %v, %v", test.name,
				s.HandTurnsBack, s.ArmReverses, s.PropReverses, test.back, test.armRev, test.popRev)
		}
	}
}

// TestGaps: sizes of what is missing, from drawing it.
func TestGaps(t *testing.T) {
	whole := stroke(circle(0.6), "1", "1", "1", "1")
	away := stroke(engine.CirclePath(0.3+0.4i, 0.6), "1", "1", "1", "1")
	for _, test := range []struct {
		name       string
		second     engine.Piece
		hand, head float64
		prop       engine.Degrees
	}{
		{"none", whole, 0, 0, 0},
		{"another centre", away, 0.5, 0.5, 0},
		// Chords: 2R sin 30° and, the prop as it was, the same.
		{"60° on", placed(whole, engine.Some(60), engine.Opt{}), 0.6, 0.6, 0},
		{"prop 60° on", placed(whole, engine.Opt{}, engine.Some(60)), 0, 0.5, 60},
		{"prop 60° back, many turns on", placed(whole, engine.Opt{}, engine.Some(3600-60)), 0, 0.5, 60},
		{"prop opposite", placed(whole, engine.Opt{}, engine.Some(-180)), 0, 1, 180},
		{"hand and prop 60° on", placed(whole, engine.Some(60), engine.Some(60)), 0.6, 1.1, 60},
		// Both turn about, hand and prop in line: 1.2 and 1 the same way.
		{"hand opposite, prop opposite", placed(whole, engine.Some(180), engine.Some(180)), 1.2, 2.2, 180},
	} {
		s := seams(lane(0.5, 0, 0, whole, test.second))[0]
		if !close1e9(s.HandGap, test.hand) || !close1e9(s.HeadGap, test.head) || !close1e9(float64(s.PropGap), float64(test.prop)) {
			t.Errorf("%s: gaps %v, %v, %v, want %v, %v, %v", test.name, s.HandGap, s.HeadGap, s.PropGap, test.hand, test.head, test.prop)
		}
	}
}

// TestOnePiece meets itself.
func TestOnePiece(t *testing.T) {
	got := seams(lane(0.5, 0, 0, stroke(engine.LinePath(0, 0.6, 0), "1", "2", "1", "1")))
	if len(got) != 1 || got[0].After != 0 || !got[0].HandTurnsBack || got[0].Verdict != seam.Smooth {
		t.Errorf("seams = %+v, want one, smooth, the hand turning back", got)
	}
}
