package engine_test

import (
	"errors"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// named returns a piece that can be told from others by its beats.
func named(beats string) engine.Piece { return stroke(circle(0.6), "1", "-3", "1/4", beats) }

func placedArm(p engine.Piece, at engine.Degrees) engine.Piece {
	p.ArmAt = engine.Some(at)
	return p
}

func placedProp(p engine.Piece, at engine.Degrees) engine.Piece {
	p.PropAt = engine.Some(at)
	return p
}

// TestEdits: what is edited is where it should be, placed pieces keep their
// place, and nothing becomes placed by itself.
func TestEdits(t *testing.T) {
	a, b, c := named("1"), placedArm(named("2"), 30), placedProp(named("3"), -60)
	free := named("2")
	bothPlaced := placedProp(placedArm(named("5"), 10), 20)
	l := lane(0.6, 90, a, b, c)
	for _, test := range []struct {
		name string
		edit func(l engine.Lane) (engine.Lane, error)
		want []engine.Piece
		err  error
	}{
		{"Move(0, 2)", func(l engine.Lane) (engine.Lane, error) { return l.Move(0, 2) }, []engine.Piece{b, c, a}, nil},
		{"Move(2, 0)", func(l engine.Lane) (engine.Lane, error) { return l.Move(2, 0) }, []engine.Piece{c, a, b}, nil},
		{"Move(0, 1)", func(l engine.Lane) (engine.Lane, error) { return l.Move(0, 1) }, []engine.Piece{b, a, c}, nil},
		{"Move(1, 1)", func(l engine.Lane) (engine.Lane, error) { return l.Move(1, 1) }, []engine.Piece{a, b, c}, nil},
		{"Move(3, 0)", func(l engine.Lane) (engine.Lane, error) { return l.Move(3, 0) }, nil, engine.ErrNoPiece},
		{"Move(0, 3)", func(l engine.Lane) (engine.Lane, error) { return l.Move(0, 3) }, nil, engine.ErrNoPiece},
		{"Move(-1, 0)", func(l engine.Lane) (engine.Lane, error) { return l.Move(-1, 0) }, nil, engine.ErrNoPiece},
		{"Repeat(0)", func(l engine.Lane) (engine.Lane, error) { return l.Repeat(0) }, []engine.Piece{a, a, b, c}, nil},
		{"Repeat(1)", func(l engine.Lane) (engine.Lane, error) { return l.Repeat(1) }, []engine.Piece{a, b, free, c}, nil},
		{"Repeat(3)", func(l engine.Lane) (engine.Lane, error) { return l.Repeat(3) }, nil, engine.ErrNoPiece},
		{"Delete(0)", func(l engine.Lane) (engine.Lane, error) { return l.Delete(0) }, []engine.Piece{b, c}, nil},
		{"Delete(1)", func(l engine.Lane) (engine.Lane, error) { return l.Delete(1) }, []engine.Piece{a, c}, nil},
		{"Delete(3)", func(l engine.Lane) (engine.Lane, error) { return l.Delete(3) }, nil, engine.ErrNoPiece},
		{"Insert(0)", func(l engine.Lane) (engine.Lane, error) { return l.Insert(0, bothPlaced) }, []engine.Piece{bothPlaced, a, b, c}, nil},
		{"Insert(3)", func(l engine.Lane) (engine.Lane, error) { return l.Insert(3, free) }, []engine.Piece{a, b, c, free}, nil},
		{"Insert(4)", func(l engine.Lane) (engine.Lane, error) { return l.Insert(4, free) }, nil, engine.ErrNoPiece},
		{"Insert(-1)", func(l engine.Lane) (engine.Lane, error) { return l.Insert(-1, free) }, nil, engine.ErrNoPiece},
		{"Replace(1)", func(l engine.Lane) (engine.Lane, error) { return l.Replace(1, free) }, []engine.Piece{a, free, c}, nil},
		{"Replace(3)", func(l engine.Lane) (engine.Lane, error) { return l.Replace(3, free) }, nil, engine.ErrNoPiece},
		{"Flip(1)", func(l engine.Lane) (engine.Lane, error) { return l.Flip(1) },
			[]engine.Piece{a, placedArm(stroke(circle(0.6), "-1", "-3", "1/4", "2"), 30), c}, nil},
		{"Flip(-1)", func(l engine.Lane) (engine.Lane, error) { return l.Flip(-1) }, nil, engine.ErrNoPiece},
		{"ThereAndBack(1)", func(l engine.Lane) (engine.Lane, error) { return l.ThereAndBack(1) },
			[]engine.Piece{a, b, stroke(circle(0.6), "-1", "-3", "1/4", "2"), c}, nil},
		{"ThereAndBack(3)", func(l engine.Lane) (engine.Lane, error) { return l.ThereAndBack(3) }, nil, engine.ErrNoPiece},
		{"Place(0)", func(l engine.Lane) (engine.Lane, error) { return l.Place(0, engine.Some(5), engine.Opt{}) },
			[]engine.Piece{placedArm(a, 5), b, c}, nil},
		{"Place(9)", func(l engine.Lane) (engine.Lane, error) { return l.Place(9, engine.Some(5), engine.Opt{}) }, nil, engine.ErrNoPiece},
		{"CarryOn(1)", func(l engine.Lane) (engine.Lane, error) { return l.CarryOn(1) }, []engine.Piece{a, free, c}, nil},
		{"CarryOn(-2)", func(l engine.Lane) (engine.Lane, error) { return l.CarryOn(-2) }, nil, engine.ErrNoPiece},
	} {
		before := clone(l)
		got, err := test.edit(l)
		if !l.Equal(before) {
			t.Fatalf("%s changes the lane it is asked of: %+v", test.name, l)
		}
		if !errors.Is(err, test.err) {
			t.Errorf("%s gives %v, want %v", test.name, err, test.err)
		}
		want := l
		if test.err == nil {
			want.Pieces = test.want
		}
		if !got.Equal(want) {
			t.Errorf("%s = %+v, want %+v", test.name, got.Pieces, want.Pieces)
		}
		// What was given out is not what is kept.
		for i := range got.Pieces {
			if test.err == nil {
				got.Pieces[i].Swing = 180
			}
		}
		if !l.Equal(before) {
			t.Errorf("%s shares its pieces with the lane it was asked of", test.name)
		}
	}
}

func TestLastPieceStays(t *testing.T) {
	l := lane(0.6, 90, named("1"))
	if got, err := l.Delete(0); !errors.Is(err, engine.ErrLastPiece) || !got.Equal(l) {
		t.Errorf("Delete(0) of one piece = %+v, %v, want it kept and %v", got, err, engine.ErrLastPiece)
	}
}

// TestWhatFollowsCarriesOn: a quarter circle from 90° each. When the first is
// taken out, the second begins where the lane does; the placed third stays.
func TestWhatFollowsCarriesOn(t *testing.T) {
	quarter := func() engine.Piece { return stroke(circle(1), "1", "1", "1/4", "1") }
	l := lane(0.5, 90, quarter(), quarter(), placedArm(quarter(), 0), quarter())
	type start struct{ arm, prop engine.Degrees }
	starts := func(l engine.Lane) (got []start) {
		for _, g := range engine.NewTrack(l).Legs {
			got = append(got, start{engine.ToDegrees(g.Arm0), engine.ToDegrees(g.Prop0)})
		}
		return got
	}
	must := func(l engine.Lane, err error) engine.Lane {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return l
	}
	for _, test := range []struct {
		name string
		lane engine.Lane
		want []start
	}{
		{"as it is", l, []start{{90, 90}, {180, 180}, {0, 270}, {90, 360}}},
		{"Delete(0)", must(l.Delete(0)), []start{{90, 90}, {0, 180}, {90, 270}}},
		{"Repeat(0)", must(l.Repeat(0)), []start{{90, 90}, {180, 180}, {270, 270}, {0, 360}, {90, 450}}},
		{"Repeat(2)", must(l.Repeat(2)), []start{{90, 90}, {180, 180}, {0, 270}, {90, 360}, {180, 450}}},
		{"Flip(0)", must(l.Flip(0)), []start{{90, 90}, {0, 180}, {0, 270}, {90, 360}}},
		{"Move(2, 0)", must(l.Move(2, 0)), []start{{0, 90}, {90, 180}, {180, 270}, {270, 360}}},
		{"CarryOn(2)", must(l.CarryOn(2)), []start{{90, 90}, {180, 180}, {270, 270}, {360, 360}}},
		{"Place(1)", must(l.Place(1, engine.Opt{}, engine.Some(-90))), []start{{90, 90}, {180, -90}, {0, 0}, {90, 90}}},
		{"ThereAndBack(1)", must(l.ThereAndBack(1)), []start{{90, 90}, {180, 180}, {270, 270}, {0, 360}, {90, 450}}},
	} {
		got := starts(test.lane)
		if len(got) != len(test.want) {
			t.Errorf("%s has %d pieces, want %d", test.name, len(got), len(test.want))
			continue
		}
		for i, want := range test.want {
			arm, prop := (got[i].arm - want.arm).Wrap(), (got[i].prop - want.prop).Wrap()
			if max(arm, -arm) > 1e-9 || max(prop, -prop) > 1e-9 {
				t.Errorf("%s: piece %d starts at arm %v, prop %v, want %v, %v", test.name, i+1, got[i].arm, got[i].prop, want.arm, want.prop)
			}
		}
	}
}

// TestFlipTwice and the sense in which a flipped piece goes.
func TestFlipTwice(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 300 {
		l := r.lane()
		i := r.IntN(len(l.Pieces))
		once, err := l.Flip(i)
		if err != nil {
			t.Fatal(err)
		}
		was, is := engine.NewTrack(l).Legs[i], engine.NewTrack(once).Legs[i]
		for _, u := range []float64{0, 0.3, 1} {
			a, b := was.State(u), is.State(u)
			// The same turn from the same start, the other way.
			if d := (a.Arm - was.Arm0) + (b.Arm - is.Arm0); abs(d) > 1e-9 || abs(was.Arm0-is.Arm0) > 1e-9 {
				t.Fatalf("Flip(%d): arm from %v to %v, before it from %v to %v", i, is.Arm0, b.Arm, was.Arm0, a.Arm)
			}
			if abs(a.Prop-b.Prop) > 1e-9 {
				t.Fatalf("Flip(%d): prop at %v, before it at %v", i, b.Prop, a.Prop)
			}
		}
		if twice, err := once.Flip(i); err != nil || !twice.Equal(l) {
			t.Fatalf("Flip(%d) twice = %+v, %v, want %+v", i, twice, err, l)
		}
	}
}

// TestThereAndBack: on the way back the hand is, at every moment, where it was
// as long before the turn, and the prop turns on as fast as before.
func TestThereAndBack(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 1000 {
		l := r.lane()
		i := r.IntN(len(l.Pieces))
		both, err := l.ThereAndBack(i)
		if err != nil {
			t.Fatal(err)
		}
		track := engine.NewTrack(both)
		there, back := &track.Legs[i], &track.Legs[i+1]
		if there.Span != back.Span {
			t.Fatalf("ThereAndBack(%d): %v beats there, %v back", i, there.Span, back.Span)
		}
		if back.Piece.ArmAt.Set || back.Piece.PropAt.Set {
			t.Fatalf("ThereAndBack(%d): the way back is placed", i)
		}
		for _, u := range []float64{0, 0.1, 0.25, 0.5, r.Float64(), 0.9, 1} {
			a, b := there.State(u), back.State(1-u)
			if d := a.Hand - b.Hand; abs(real(d))+abs(imag(d)) > 1e-9 {
				t.Fatalf("ThereAndBack(%d): hand at %v there, %v back, at share %v; piece %+v", i, a.Hand, b.Hand, u, there.Piece)
			}
		}
		if p := there.Piece; p.Swing == 0 {
			want := p.Prop.Mul(p.Cycles).Div(p.Beats).Float() * 6.283185307179586
			for _, u := range []float64{0, 0.4, 1} {
				if got := back.State(u).PropRate; abs(got-want) > 1e-9*(1+abs(want)) {
					t.Fatalf("ThereAndBack(%d): prop at %v radians a beat on the way back, want %v", i, got, want)
				}
			}
			if a, b := there.State(1), back.State(0); apart(a, b) > 1e-9 {
				t.Fatalf("ThereAndBack(%d): the way back begins %v m away", i, apart(a, b))
			}
		}
	}
}

// TestCInOneStep: half an extension, there and back with the prop's sense kept,
// is a C of extension and two-petal antispin flower that closes in one round:
// the prop turns half a turn each way of the arm.
func TestCInOneStep(t *testing.T) {
	l := lane(0.6, 90, stroke(circle(0.6), "1", "1", "1/2", "2"))
	l, err := l.ThereAndBack(0)
	if err != nil {
		t.Fatal(err)
	}
	want := stroke(circle(0.6), "-1", "1", "1/2", "2")
	if !l.Pieces[1].Equal(want) {
		t.Errorf("ThereAndBack(0) adds %+v, want %+v", l.Pieces[1], want)
	}
	track := engine.NewTrack(l)
	if c := track.Closing(); !c.Closes() || c.Rounds.Int64() != 1 || c.HandGap > 1e-12 {
		t.Errorf("Closing() = %v rounds, gap %v, want 1, 0", c.Rounds, c.HandGap)
	}
}

func abs(x float64) float64 { return max(x, -x) }
