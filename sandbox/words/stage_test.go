package words

import (
	"testing"

	"whorlbench/engine/frac"
)

func TestStageReads(t *testing.T) {
	w := &English
	for _, tt := range []struct{ got, want string }{
		{w.EndOfPiece(frac.New(-1, 2), frac.Int(3), frac.Int(2)), "½ turn · 2 beats"},
		{w.EndOfPiece(frac.Int(0), frac.Int(-3), frac.Int(1)), "3 turns · 1 beat"},
		{w.EndOfPiece(frac.New(1, 3), frac.Int(0), frac.New(4, 3)), "1/3 turns · 4/3 beats"},
		{w.StagePlace(0.25, -0.1), "centre 0.25, −0.1 m"},
		{w.StageNumber(w.Stage.Radius, 0.6), "radius 0.6 m"},
		{w.StageNumber(w.Stage.Tilt, -45), "tilt −45°"},
		{w.StageNumber(w.Stage.Prop, 180), "prop at 180°"},
	} {
		if tt.got != tt.want {
			t.Errorf("reads %q, want %q", tt.got, tt.want)
		}
	}
}
