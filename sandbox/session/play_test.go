package session

import (
	"math"
	"testing"
)

func TestLoops(t *testing.T) {
	for _, tt := range []struct {
		name  string
		loop  Loop
		piece int
		from  float64
		beats float64
		want  float64
	}{
		{"whole", LoopWhole, 0, 3.5, 1, 0.5},
		{"round", LoopRound, 0, 3.5, 1, 0.5},
		{"first piece", LoopPiece, 0, 1.5, 1, 0.5},
		{"second piece", LoopPiece, 1, 3.5, 1, 2.5},
		{"a piece that the playhead is not in", LoopPiece, 1, 0.5, 0.25, 2.75},
	} {
		s := halfMoon(t)
		s.Loop = tt.loop
		s.Seek(tt.from)
		s.Select(Select{Piece: tt.piece})
		s.Advance(tt.beats * 60 / s.Pattern().Tempo)
		if got := s.RoundBeat(); math.Abs(got-tt.want) > 1e-9 {
			t.Errorf("%s: from beat %v on by %v the playhead stands at %v, want %v", tt.name, tt.from, tt.beats, got, tt.want)
		}
	}
}

// The half-moon has beats 0 to 3; its second piece, four-petal antispin over
// half a circle, has tips where prop and arm meet: at both ends and in the
// middle (common practice: a half circle of four petals shows two halves and
// a whole).
func TestSteps(t *testing.T) {
	for _, tt := range []struct {
		name  string
		steps Steps
		from  float64
		by    []int
		want  float64
	}{
		{"on by a beat", ByBeat, 0.5, []int{1}, 1},
		{"on from a beat", ByBeat, 1, []int{1, 1}, 3},
		{"on round the end", ByBeat, 3, []int{1}, 0},
		{"back to the beat", ByBeat, 1.5, []int{-1}, 1},
		{"back from a beat", ByBeat, 1, []int{-1}, 0},
		{"back at the start stays", ByBeat, 0, []int{-1}, 0},
		{"on to the tip in the middle", ByPetal, 2.2, []int{1}, 3},
	} {
		s := halfMoon(t)
		s.Steps = tt.steps
		s.Seek(tt.from)
		for _, by := range tt.by {
			s.Step(by)
		}
		if got := s.RoundBeat(); math.Abs(got-tt.want) > 1e-6 {
			t.Errorf("%s: the playhead stands at %v, want %v", tt.name, got, tt.want)
		}
	}
}

// After Delete the piece that is left is seen where it was, not a round on,
// where its prop may point elsewhere.
func TestDeleteStaysInTheFirstRound(t *testing.T) {
	s := halfMoon(t)
	s.Seek(3)
	s.Select(Select{Piece: 1})
	before := s.Tracks()[0].PointAt(0, 0, 0)
	if err := s.Delete(); err != nil {
		t.Fatal(err)
	}
	if round, _ := s.RoundOf(); round != 1 {
		t.Errorf("after Delete the playhead is in round %d, want 1", round)
	}
	at := s.Tracks()[0].At(s.Beat())
	if math.Hypot(real(at.Head-before.Head), imag(at.Head-before.Head)) > 1e-9 {
		t.Errorf("the head stands at %v, want where the piece began, %v", at.Head, before.Head)
	}
}
