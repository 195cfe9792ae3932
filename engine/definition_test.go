package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// definition puts hand and head of a lane at a share of a piece's kept time in
// a round ≥ 0, by walking there from the beginning of round 0 and reading the
// definitions as they stand, in degrees and turns. It is slow and knows
// nothing of the engine but the fields that a person writes.
func definition(l engine.Lane, round, piece int, u float64) (hand, head complex128) {
	arm, prop := float64(l.ArmAt), float64(l.PropAt)
	pinned := false
	for _, p := range l.Pieces {
		pinned = pinned || p.PropAt.Set || p.Swing != 0
	}
	for r := 0; ; r++ {
		arm = float64(l.ArmAt)
		if pinned {
			prop = float64(l.PropAt)
		}
		for i, p := range l.Pieces {
			if p.ArmAt.Set {
				arm = float64(p.ArmAt.At)
			}
			if p.PropAt.Set {
				prop = float64(p.PropAt.At)
			}
			here := r == round && i == piece
			from, to := p.From.Float(), p.To.Float()
			s := to
			if here {
				s = from + (to-from)*u
			}
			turns := p.Cycles.Float()
			a := arm + 360*p.Arm.Float()*turns*(share(p.Law, s)-share(p.Law, from))
			b := prop + 360*p.Prop.Float()*turns*(s-from)
			if p.Swing != 0 {
				swing := float64(p.Swing)
				if p.SwingBack {
					swing = -swing
				}
				b = -90 + swing*math.Cos(2*math.Pi*p.Prop.Float()*turns*s)
			}
			if here {
				hand = l.Centre + p.Path.Centre + onPath(p.Path, a)
				return hand, hand + cmplx.Rect(l.Tether, rad(b))
			}
			// Whole turns change nothing and only cost digits.
			arm, prop = math.Mod(a, 360), math.Mod(b, 360)
		}
	}
}

func rad(deg float64) float64 { return deg / 180 * math.Pi }

// onPath is e^{iδ}(A cos(α − δ) + i B sin(α − δ)).
func onPath(p engine.Path, alpha float64) complex128 {
	th := rad(alpha - float64(p.Tilt))
	return cmplx.Rect(1, rad(float64(p.Tilt))) * complex(p.A*math.Cos(th), p.B*math.Sin(th))
}

func share(law engine.Law, s float64) float64 {
	switch law {
	case engine.EaseStart:
		return 1 - math.Cos(math.Pi*s/2)
	case engine.EaseEnd:
		return math.Sin(math.Pi * s / 2)
	case engine.EaseBoth:
		return (1 - math.Cos(math.Pi*s)) / 2
	}
	return s
}

func TestDefinition(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 1000 {
		l := r.lane()
		track := engine.NewTrack(l)
		for range 12 {
			round, piece, u := r.IntN(5), r.IntN(len(l.Pieces)), r.Float64()
			hand, head := definition(l, round, piece, u)
			at := track.AtPiece(round, piece, u)
			if d := max(cmplx.Abs(at.Hand-hand), cmplx.Abs(at.Head-head)); !(d <= 1e-9) {
				t.Fatalf("AtPiece(%d, %d, %v) = hand %v, head %v, want hand %v, head %v; lane %+v",
					round, piece, u, at.Hand, at.Head, hand, head, l)
			}
			beat := float64(round)*track.Beats + l.Starts()[piece].Float() + u*l.Pieces[piece].Length().Float()
			if d := apart(track.At(beat), at); !(d <= 1e-9) {
				t.Fatalf("At(%v) is %.3g m away from AtPiece(%d, %d, %v); lane %+v", beat, d, round, piece, u, l)
			}
		}
	}
}

// TestLawEnds: every law does the whole turn, and the reversed one does it backwards.
func TestLawEnds(t *testing.T) {
	for _, law := range []engine.Law{engine.Even, engine.EaseStart, engine.EaseEnd, engine.EaseBoth} {
		for s := 0.0; s <= 1; s += 1.0 / 64 {
			f, _, _ := law.Share(s)
			back, _, _ := law.Reversed().Share(1 - s)
			if want := share(law, s); math.Abs(f-want) > 1e-15 {
				t.Errorf("Law(%d).Share(%v) = %v, want %v", law, s, f, want)
			}
			if math.Abs(f+back-1) > 1e-15 {
				t.Errorf("Law(%d).Share(%v) = %v, and reversed at %v = %v, want a sum of 1", law, s, f, 1-s, back)
			}
		}
		if got := law.Reversed().Reversed(); got != law {
			t.Errorf("Law(%d).Reversed().Reversed() = %d, want %d", law, got, law)
		}
	}
}
