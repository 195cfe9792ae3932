package session

import (
	"errors"
	"testing"

	"whorlbench/engine"
	"whorlbench/presets"
)

func open(t *testing.T, id string) *Session {
	t.Helper()
	for _, e := range presets.Library() {
		if e.ID == id {
			p, err := e.Pattern()
			if err != nil {
				t.Fatal(err)
			}
			return New(p)
		}
	}
	t.Fatalf("no pattern %s", id)
	return nil
}

func TestCopyPaste(t *testing.T) {
	s := open(t, "half-moon")
	before := s.Pattern()
	if err := s.Paste(); !errors.Is(err, ErrNothingCopied) {
		t.Errorf("Paste of nothing = %v, want ErrNothingCopied", err)
	}
	if err := s.Place(); err != nil { // what is placed carries on when pasted
		t.Fatal(err)
	}
	s.Copy()
	if s.Undo(); !s.Pattern().Equal(before) {
		t.Fatal("copying has changed the pattern")
	}
	if err := s.MakeHand(0, TogetherOpposite); err != nil {
		t.Fatal(err)
	}
	s.Select(Select{Lane: 1, Piece: 1})
	if err := s.Paste(); err != nil {
		t.Fatal(err)
	}
	got := s.Pattern().Lanes[1].Pieces
	if len(got) != 3 || !got[2].Equal(before.Lanes[0].Pieces[0]) {
		t.Errorf("pasted on the other hand: %d pieces, the third %+v, want the copy carrying on, %+v", len(got), got[2], before.Lanes[0].Pieces[0])
	}
	if s.Selected() != (Select{1, 2}) {
		t.Errorf("in hand after Paste: %v, want the copy", s.Selected())
	}
	g := s.Tracks()[1].Legs
	if end := g[1].State(1); !near(apart(end.Arm-g[2].Arm0), 0) || !near(apart(end.Prop-g[2].Prop0), 0) {
		t.Errorf("the copy begins at %v, %v, want where the piece before ends, %v, %v", g[2].Arm0, g[2].Prop0, end.Arm, end.Prop)
	}
}

func TestCutOut(t *testing.T) {
	s := open(t, "half-moon")
	before := s.Pattern()
	s.Select(Select{0, 1})
	if err := s.CutOut(); err != nil {
		t.Fatal(err)
	}
	if err := s.CutOut(); !errors.Is(err, engine.ErrLastPiece) {
		t.Errorf("CutOut of the last piece = %v, want ErrLastPiece", err)
	}
	if err := s.Paste(); err != nil {
		t.Fatal(err)
	}
	if !s.Pattern().Equal(before) {
		t.Error("cutting out and pasting at its place is not the identity")
	}
}

// Placing a piece where it is moves nothing in the first round, and letting it
// carry on gives back the pattern.
func TestPlaceAndCarryOn(t *testing.T) {
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		s := New(p)
		for i := range p.Lanes[0].Pieces {
			s.Select(Select{0, i})
			if s.Placed() {
				continue
			}
			was := s.Tracks()[0].AtPiece(0, i, 0.5)
			if err := s.Place(); err != nil {
				t.Fatalf("%s: Place() = %v", e.ID, err)
			}
			is := s.Tracks()[0].AtPiece(0, i, 0.5)
			if d := is.Head - was.Head; real(d)*real(d)+imag(d)*imag(d) > 1e-16 {
				t.Errorf("%s, piece %d: placed where it is, its head moved by %v", e.ID, i+1, d)
			}
			if !s.Placed() {
				t.Errorf("%s, piece %d: Placed() = false after Place()", e.ID, i+1)
			}
			if err := s.CarryOn(); err != nil {
				t.Fatal(err)
			}
			if !s.Pattern().Equal(p) {
				t.Errorf("%s, piece %d: Place then CarryOn is not the identity", e.ID, i+1)
			}
		}
	}
}

func TestWholePattern(t *testing.T) {
	s := open(t, "half-moon")
	before := s.Pattern()
	for range 2 {
		if err := s.MirrorPattern(); err != nil {
			t.Fatal(err)
		}
	}
	if !s.Pattern().Equal(before) {
		t.Error("mirrored twice it is another pattern")
	}
	for range 8 {
		if err := s.TurnPattern(45); err != nil {
			t.Fatal(err)
		}
	}
	a, b := engine.NewTrack(before.Lanes[0]).At(0.7).Head, s.Tracks()[0].At(0.7).Head
	if d := a - b; real(d)*real(d)+imag(d)*imag(d) > 1e-16 {
		t.Errorf("turned eight times by 45° the head is %v off", d)
	}
}

func TestInsertFrom(t *testing.T) {
	s := open(t, "half-moon")
	other := open(t, "pier-end").Pattern()
	want := other.Lanes[0]
	for _, l := range other.Lanes {
		if l.Side == engine.Right {
			want = l
		}
	}
	if err := s.InsertFrom(other); err != nil {
		t.Fatal(err)
	}
	got := s.Pattern().Lanes[0].Pieces
	if len(got) != 2+len(want.Pieces) || s.Selected().Piece != 1 {
		t.Fatalf("%d pieces, number %d in hand, want %d, the first added in hand", len(got), s.Selected().Piece+1, 2+len(want.Pieces))
	}
	for i, p := range want.Pieces {
		if i == 0 {
			p.ArmAt, p.PropAt = engine.Opt{}, engine.Opt{}
		}
		if !got[1+i].Equal(p) {
			t.Errorf("piece %d = %+v, want %+v", i+2, got[1+i], p)
		}
	}
	if what, ok := s.Undo(); !ok || what.What != DidInsert {
		t.Errorf("Undo() = %v, %v, want one step, DidInsert", what, ok)
	}
}
