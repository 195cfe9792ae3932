package session

import (
	"math/rand/v2"
	"testing"
	"time"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// randomEdit does one edit and reports whether it was done.
func randomEdit(s *Session, r *rand.Rand) bool {
	s.Seek(r.Float64() * s.Round())
	n := len(s.Pattern().Lanes[0].Pieces)
	s.Select(Select{Piece: r.IntN(n)})
	const most = 6 // pieces
	if n > most {
		return s.Delete() == nil
	}
	switch r.IntN(8) {
	case 0:
		return s.Cut() == nil
	case 1:
		return s.Rejoin() == nil
	case 2:
		return s.Move(r.IntN(n)) == nil
	case 3:
		return s.ThereAndBack() == nil
	case 4:
		return s.Flip() == nil
	case 5:
		return s.Repeat() == nil
	case 6:
		return s.Delete() == nil
	default:
		return s.Try("prop", func(p engine.Piece) engine.Piece {
			p.Prop = frac.New(int64(r.IntN(200)-100), 20)
			return p
		}) == nil
	}
}

// Ten thousand edits, undone to the start, give the start.
func TestTenThousandEditsUndone(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	r := rand.New(rand.NewPCG(seed, 0))
	s := halfMoon(t)
	start := s.Pattern()
	for done := 0; done < 10_000; {
		if randomEdit(s, r) {
			done++
		}
	}
	undone := 0
	for s.CanUndo() {
		s.Undo()
		undone++
	}
	if !s.Pattern().Equal(start) || undone < 9000 { // a dial may be put where it stood
		t.Errorf("after %d undone the pattern is %+v, want the start %+v", undone, s.Pattern(), start)
	}
}

// A session that is taken up again from its trail does as the first would
// have done.
func TestResume(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	r := rand.New(rand.NewPCG(seed, 0))
	for range 50 {
		s := halfMoon(t)
		for range r.IntN(40) {
			randomEdit(s, r)
		}
		for range r.IntN(20) {
			s.Undo()
		}
		states, at := s.Trail(1000)
		again := Resume(states, at)
		same := func(when string) {
			t.Helper()
			if !again.Pattern().Equal(s.Pattern()) || again.Selected() != s.Selected() || again.CanUndo() != s.CanUndo() || again.CanRedo() != s.CanRedo() {
				t.Fatalf("%s: the session is at %+v, want %+v", when, again.Pattern(), s.Pattern())
			}
		}
		same("taken up")
		for s.CanUndo() {
			want, _ := s.Undo()
			if got, _ := again.Undo(); got != want {
				t.Fatalf("undone is %v, want %v", got, want)
			}
			same("undone")
		}
		for s.CanRedo() {
			want, _ := s.Redo()
			if got, _ := again.Redo(); got != want {
				t.Fatalf("redone is %v, want %v", got, want)
			}
			same("redone")
		}
		randomEdit(again, r)
		seen := map[int]bool{}
		states, _ = again.Trail(1000)
		for _, x := range states {
			if seen[x.ID] {
				t.Fatalf("two states share the ID %d", x.ID)
			}
			seen[x.ID] = true
		}
	}
}

// The trail is cut on both sides of the present and names each edit.
func TestTrail(t *testing.T) {
	s := halfMoon(t)
	for _, edit := range []func() error{s.Flip, s.Repeat, s.ThereAndBack, s.Flip, s.Delete} {
		if err := edit(); err != nil {
			t.Fatal(err)
		}
	}
	s.Undo()
	s.Undo()
	s.Hold()
	err := s.Try("prop", func(p engine.Piece) engine.Piece { p.Prop = frac.Int(7); return p })
	if err != nil {
		t.Fatal(err)
	}
	states, at := s.Trail(2)
	if len(states) != 5 || at != 2 {
		t.Fatalf("Trail(2) has %d states, the present at %d, want 5 and 2", len(states), at)
	}
	for i, want := range []What{Dialled, DidRepeat, DidThereAndBack, DidFlip, DidDelete} {
		if i > 0 && states[i].By.What != want {
			t.Errorf("state %d was made by %v, want %v", i, states[i].By, want)
		}
	}
	if got := states[at].Pattern.Lanes[0].Pieces; got[s.Selected().Piece].Prop.Equal(frac.Int(7)) {
		t.Error("what is being dragged is in the trail, want it from its Release on")
	}
	s.Release()
	if states, at := s.Trail(2); len(states) != 3 || !states[at].Pattern.Equal(s.Pattern()) {
		t.Errorf("after the drag Trail(2) has %d states, want 3 and the present last", len(states))
	}
}

func TestNamesOfEdits(t *testing.T) {
	for w := Dialled; w <= DidDelete; w++ {
		if got := WhatNamed(w.Name()); got != w {
			t.Errorf("WhatNamed(%q) = %v, want %v", w.Name(), got, w)
		}
	}
	if got := WhatNamed("from another time"); got != Dialled {
		t.Errorf("WhatNamed() of no name = %v, want %v", got, Dialled)
	}
}
