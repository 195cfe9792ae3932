package session

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

func halfMoon(t *testing.T) *Session {
	t.Helper()
	p, err := presets.First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	return New(p)
}

func TestHundredsOfEditsUndoneToTheStart(t *testing.T) {
	const seed = 20261125
	t.Logf("seed %d", seed)
	r := rand.New(rand.NewPCG(seed, 0))
	s := halfMoon(t)
	start := s.Pattern()
	done := 0
	for range 400 {
		s.Seek(r.Float64() * s.Round())
		s.Select(Select{Piece: r.IntN(len(s.Pattern().Lanes[0].Pieces))})
		var err error
		switch r.IntN(9) {
		case 0, 1:
			err = s.Cut()
		case 2:
			err = s.Rejoin()
		case 3:
			err = s.Move(r.IntN(len(s.Pattern().Lanes[0].Pieces)))
		case 4:
			err = s.ThereAndBack()
		case 5:
			err = s.Flip()
		case 6:
			err = s.Repeat()
		case 7:
			err = s.Delete()
		case 8:
			s.Hold()
			for range 5 {
				err = errors.Join(err, s.Try("", func(p engine.Piece) engine.Piece {
					p.Prop = frac.New(int64(r.IntN(200)-100), 20)
					return p
				}))
			}
			s.Release()
		}
		if err == nil {
			done++
		}
		if len(s.Pattern().Lanes[0].Pieces) > 60 { // keep the work small
			for s.CanDelete() && len(s.Pattern().Lanes[0].Pieces) > 5 {
				if err := s.Delete(); err != nil {
					t.Fatal(err)
				}
			}
		}
	}
	if done < 200 {
		t.Fatalf("only %d of 400 edits were done: the test tests little", done)
	}
	last := s.Pattern()
	steps := 0
	for _, ok := s.Undo(); ok; _, ok = s.Undo() {
		steps++
	}
	if !s.Pattern().Equal(start) {
		t.Fatalf("after %d undos the pattern is not the first one", steps)
	}
	for _, ok := s.Redo(); ok; _, ok = s.Redo() {
		steps--
	}
	if steps != 0 || !s.Pattern().Equal(last) {
		t.Errorf("redo does not lead back to the last pattern (%d steps left)", steps)
	}
}

func TestDragIsOneUndo(t *testing.T) {
	s := halfMoon(t)
	start := s.Pattern()
	s.Hold()
	for k := int64(20); k <= 60; k++ {
		if err := s.Try("", func(p engine.Piece) engine.Piece { p.Prop = frac.New(k, 20); return p }); err != nil {
			t.Fatal(err)
		}
	}
	if s.CanUndo() {
		t.Error("CanUndo() = true in the middle of a drag, want false")
	}
	s.Release()
	if what, ok := s.Undo(); !ok || what.What != Dialled || !s.Pattern().Equal(start) {
		t.Error("one undo does not take the whole drag back")
	}
	if s.CanUndo() {
		t.Error("CanUndo() = true after the drag was undone, want false")
	}
}

func TestDragThatComesBackIsNoEdit(t *testing.T) {
	s := halfMoon(t)
	s.Hold()
	for _, k := range []int64{3, 2, 1} {
		_ = s.Try("", func(p engine.Piece) engine.Piece { p.Prop = frac.Int(k); return p })
	}
	s.Release()
	if s.CanUndo() {
		t.Error("CanUndo() = true though nothing has changed, want false")
	}
}

func TestCutFallsOnQuarterTurnOfTheArm(t *testing.T) {
	// Half a circle in two beats: the arm passes its quarter turn at beat 1.
	// The playhead a little off it is caught; far from anything it is not.
	for _, tt := range []struct {
		beat float64
		want frac.Frac
	}{
		{0.95, frac.Int(1)}, {1.07, frac.Int(1)}, {0.5, frac.New(1, 2)}, {0.51, frac.New(24, 48)}, {0.37, frac.New(18, 48)},
	} {
		s := halfMoon(t)
		s.Seek(tt.beat)
		_, at, ok := s.CutPlace()
		if !ok || !at.Equal(tt.want) {
			t.Errorf("CutPlace() at beat %v = %v, %v, want %v, true", tt.beat, at, ok, tt.want)
		}
	}
}

func TestCutAtSeamIsRefused(t *testing.T) {
	s := halfMoon(t)
	s.Seek(2)
	if err := s.Cut(); !errors.Is(err, engine.ErrCutAtEnd) {
		t.Errorf("Cut() at a seam = %v, want %v", err, engine.ErrCutAtEnd)
	}
	if s.CanUndo() {
		t.Error("a refused cut left something to undo")
	}
}

func TestRejoinFindsEitherNeighbour(t *testing.T) {
	s := halfMoon(t)
	start := s.Pattern()
	s.Seek(1)
	if err := s.Cut(); err != nil {
		t.Fatal(err)
	}
	if got := s.Selected().Piece; got != 1 {
		t.Fatalf("after Cut, Selected() = %d, want the later half, 1", got)
	}
	if !s.CanRejoin() {
		t.Fatal("CanRejoin() = false for the later half, want true")
	}
	if err := s.Rejoin(); err != nil {
		t.Fatal(err)
	}
	if !s.Pattern().Equal(start) {
		t.Error("cut then rejoin is not the identity")
	}
}

func TestRefusesWhatAFileCannotHold(t *testing.T) {
	s := halfMoon(t)
	before := s.Pattern()
	tooLong := func(p engine.Piece) engine.Piece { p.Beats = frac.Int(20_000); return p }
	if err := s.Try("", tooLong); !errors.Is(err, ErrUnwritable) {
		t.Errorf("Try with 20000 beats = %v, want %v", err, ErrUnwritable)
	}
	if err := s.Rename("", ""); !errors.Is(err, ErrUnwritable) {
		t.Errorf("Rename to nothing = %v, want %v", err, ErrUnwritable)
	}
	if !s.Pattern().Equal(before) {
		t.Error("a refused edit changed the pattern")
	}
}

func TestPlayhead(t *testing.T) {
	s := halfMoon(t) // 4 beats at 120 a minute: 2 s
	s.Advance(0.5)
	if got := s.RoundBeat(); math.Abs(got-1) > 1e-12 {
		t.Errorf("RoundBeat() after half a second = %v, want 1", got)
	}
	s.Speed = 0.5
	s.Advance(1)
	if got := s.RoundBeat(); math.Abs(got-2) > 1e-12 {
		t.Errorf("RoundBeat() after a second at half speed = %v, want 2", got)
	}
	s.Speed = 1
	s.Advance(1.5)
	if got := s.RoundBeat(); math.Abs(got-1) > 1e-12 {
		t.Errorf("RoundBeat() past the end = %v, want 1", got)
	}
	s.Seek(99)
	if got := s.RoundBeat(); got >= 4 || got < 4-1e-9 {
		t.Errorf("RoundBeat() after Seek past the end = %v, want just below 4", got)
	}
	s.Seek(-1)
	if got := s.RoundBeat(); got != 0 {
		t.Errorf("RoundBeat() after Seek before the start = %v, want 0", got)
	}
}

func TestOpenCanBeUndone(t *testing.T) {
	s := halfMoon(t)
	before := s.Pattern()
	other, err := presets.Library()[1].Pattern()
	if err != nil {
		t.Fatal(err)
	}
	if err := s.Open(other); err != nil {
		t.Fatal(err)
	}
	if !s.Pattern().Equal(other) {
		t.Error("Open shows something else")
	}
	s.Undo()
	if !s.Pattern().Equal(before) {
		t.Error("the pattern before Open is lost")
	}
}
