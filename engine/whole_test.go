package engine_test

import (
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// TestWhole: the whole curve closes, begins where the piece does, and the
// piece runs along it. A star of more than 64 arm turns is not drawn to its end.
func TestWhole(t *testing.T) {
	r := randomLanes{Rand: chance.New(t), noSwing: true, evenOnly: true}
	for range 500 {
		l := r.lane()
		track := engine.NewTrack(l)
		i := r.IntN(len(l.Pieces))
		leg := &track.Legs[i]
		whole := leg.Whole()
		a, b := whole.Point(0), whole.Point(1)
		few := leg.Piece.Arm.IsZero() || leg.Piece.Prop.Div(leg.Piece.Arm).Den().Int64() <= 64
		if d := max(cmplx.Abs(a.Hand-b.Hand), cmplx.Abs(a.Head-b.Head)); few && !(d <= 1e-9) {
			t.Fatalf("Whole() ends %v m from where it began; piece %+v", d, leg.Piece)
		}
		p := leg.Piece
		turns, over := p.Arm, whole.ArmTurns
		if p.Arm.IsZero() {
			turns, over = p.Prop, whole.PropTurns
		}
		for _, u := range []float64{0, 0.2, 0.7, 1} {
			v := 0.0
			if over != 0 {
				v = turns.Mul(p.Cycles).Mul(p.Kept()).Float() * u / over
			}
			on, at := whole.Point(v), leg.Point(u)
			if d := max(cmplx.Abs(on.Hand-at.Hand), cmplx.Abs(on.Head-at.Head)); !(d <= 1e-9) {
				t.Fatalf("Whole().Point(%v) is %v m from the piece at share %v; piece %+v", v, d, u, p)
			}
		}
	}
}

func TestWholeTurns(t *testing.T) {
	for _, test := range []struct {
		arm, prop         string
		swing             engine.Degrees
		wantArm, wantProp float64
	}{
		{"1", "-3", 0, 1, -3},
		{"-1", "3", 0, -1, 3},
		{"2", "3", 0, 2, 3},
		{"-1/2", "5/3", 0, -3, 10}, // n = −10/3
		{"0", "5", 0, 0, 1},
		{"0", "-1/3", 0, 0, -1},
		{"0", "0", 0, 0, 0},
		{"3", "0", 0, 1, 0},
		{"-3", "1", 40, -1, 0},
	} {
		p := stroke(circle(0.6), test.arm, test.prop, "1/3", "1")
		p.Swing = test.swing
		w := engine.NewTrack(lane(0.6, 90, p)).Legs[0].Whole()
		if abs(w.ArmTurns-test.wantArm) > 1e-12 || abs(w.PropTurns-test.wantProp) > 1e-12 {
			t.Errorf("arm %s, prop %s: Whole() = %v arm turns, %v prop turns, want %v, %v", test.arm, test.prop, w.ArmTurns, w.PropTurns, test.wantArm, test.wantProp)
		}
	}
}
