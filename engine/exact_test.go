package engine_test

import (
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
)

// near reports whether two states are the same but for rounding, rates by the
// size that they have.
func near(a, b engine.State) bool {
	size := 1 + cmplx.Abs(b.HeadVel) + cmplx.Abs(b.HandVel)
	bend := 1 + cmplx.Abs(b.HeadAcc) + cmplx.Abs(b.HandAcc)
	return apart(a, b) <= 1e-9*size &&
		cmplx.Abs(a.HandVel-b.HandVel)+cmplx.Abs(a.HeadVel-b.HeadVel) <= 1e-9*(size+bend) &&
		cmplx.Abs(a.HandAcc-b.HandAcc)+cmplx.Abs(a.HeadAcc-b.HeadAcc) <= 1e-8*(size*bend)
}

// TestAtExact: at beats that a float can hold and that lie inside a piece, the
// exact state is what At gives.
func TestAtExact(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 500 {
		l := r.lane()
		track := engine.NewTrack(l)
		for range 20 {
			round, piece := int64(r.IntN(9)-3), r.IntN(len(l.Pieces))
			den := int64(2 + r.IntN(1000))
			inside := l.Pieces[piece].Length().Mul(frac.New(1+r.Int64N(den-1), den))
			beat := l.Beats().Mul(frac.Int(round)).Add(l.Starts()[piece]).Add(inside)
			if got, want := track.AtExact(beat), track.At(beat.Float()); !near(got, want) {
				t.Fatalf("AtExact(%v) = %+v, want %+v; lane %+v", beat, got, want, l)
			}
		}
	}
}

// TestAtExactSeams: a seam is the start of what follows, in any round, before
// beat 0 too, and however small the pieces.
func TestAtExactSeams(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 500 {
		l := r.lane()
		for range r.IntN(3) {
			p := r.piece()
			p.Beats = frac.New(1, int64(1+r.IntN(1_000_000_000)))
			l.Pieces = append(l.Pieces, p)
		}
		track := engine.NewTrack(l)
		for range 20 {
			round, piece := r.IntN(2_000_001)-1_000_000, r.IntN(len(l.Pieces))
			beat := l.Beats().Mul(frac.Int(int64(round))).Add(l.Starts()[piece])
			if got, want := track.AtExact(beat), track.AtPiece(round, piece, 0); got != want {
				t.Fatalf("AtExact(%v) = %+v, want the start of piece %d in round %d, %+v", beat, got, piece+1, round, want)
			}
		}
	}
}

// TestAtExactFar: beats that no float tells apart. A lane that closes is, a
// whole number of closing times later, where it was.
func TestAtExactFar(t *testing.T) {
	r := randomLanes{Rand: chance.New(t), noParts: true}
	times, err := frac.Parse("1000000000000000000000000000057")
	if err != nil {
		t.Fatal(err)
	}
	for range 200 {
		l := r.closedLane()
		track := engine.NewTrack(l)
		later := track.Closing().Beats.Mul(times)
		beat := l.Beats().Mul(frac.New(int64(r.IntN(1000)), 777))
		if got, want := track.AtExact(beat.Add(later)), track.AtExact(beat); !near(got, want) {
			t.Fatalf("AtExact(%v + %v) = %+v, want %+v", beat, later, got, want)
		}
		if got, want := track.AtExact(beat.Sub(later)), track.AtExact(beat); !near(got, want) {
			t.Fatalf("AtExact(%v − %v) = %+v, want %+v", beat, later, got, want)
		}
	}
}
