package engine_test

import (
	"errors"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
)

// cutBeat returns a beat strictly inside a piece of the given length.
func (r randomLanes) cutBeat(length frac.Frac) frac.Frac {
	den := int64(2 + r.IntN(1000))
	return length.Mul(frac.New(1+r.Int64N(den-1), den))
}

// TestCutMovesNothing: 1,000 lanes of every sort, each cut somewhere.
func TestCutMovesNothing(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 1000 {
		l := r.lane()
		i := r.IntN(len(l.Pieces))
		at := r.cutBeat(l.Pieces[i].Length())
		before := clone(l)
		cut, err := l.Cut(i, at)
		if err != nil {
			t.Fatalf("Cut(%d, %v) gives %v; lane %+v", i, at, err, l)
		}
		if !l.Equal(before) {
			t.Fatalf("Cut(%d, %v) changes the lane it is asked of: %+v, was %+v", i, at, l, before)
		}
		a, b := cut.Pieces[i], cut.Pieces[i+1]
		if len(cut.Pieces) != len(l.Pieces)+1 || !a.Length().Equal(at) || !a.Length().Add(b.Length()).Equal(l.Pieces[i].Length()) {
			t.Fatalf("Cut(%d, %v) leaves pieces of %v and %v beats", i, at, a.Length(), b.Length())
		}
		if whole := l.Pieces[i].Steady() && l.Pieces[i].IsWhole(); a.IsWhole() != whole || b.IsWhole() != whole {
			t.Fatalf("Cut(%d, %v) leaves whole strokes %v and %v, want %v", i, at, a.IsWhole(), b.IsWhole(), whole)
		}
		if cut.Pinned() != l.Pinned() {
			t.Fatalf("Cut(%d, %v): pinned %v, want %v", i, at, cut.Pinned(), l.Pinned())
		}
		was, is := engine.NewTrack(l), engine.NewTrack(cut)
		seams := []float64{0, was.Legs[i].Start, is.Legs[i+1].Start, is.Legs[i+1].Start + 3*was.Beats}
		moves(t, "cut", is, was, append(r.beats(was, 60), seams...))

		whole, err := cut.Rejoin(i)
		if err != nil || !whole.Equal(l) {
			t.Fatalf("Cut(%d, %v) then Rejoin = %+v, %v, want %+v", i, at, whole, err, l)
		}
	}
}

// TestCutToShreds cuts one piece many times over and puts it together again in
// another order.
func TestCutToShreds(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 200 {
		l := r.lane()
		l.Pieces = l.Pieces[:1]
		shreds := l
		for range 6 {
			i := r.IntN(len(shreds.Pieces))
			var err error
			if shreds, err = shreds.Cut(i, r.cutBeat(shreds.Pieces[i].Length())); err != nil {
				t.Fatal(err)
			}
		}
		was := engine.NewTrack(l)
		moves(t, "shreds", engine.NewTrack(shreds), was, r.beats(was, 40))
		whole := shreds
		for len(whole.Pieces) > 1 {
			var err error
			if whole, err = whole.Rejoin(r.IntN(len(whole.Pieces) - 1)); err != nil {
				t.Fatalf("Rejoin gives %v; lane %+v", err, whole)
			}
		}
		if !whole.Equal(l) {
			t.Fatalf("shreds put together = %+v, want %+v", whole, l)
		}
	}
}

func TestCutRefuses(t *testing.T) {
	eased := stroke(circle(0.6), "1", "1", "1", "4")
	eased.Law, eased.From = engine.EaseBoth, fr("1/2")
	l := lane(0.6, 90, stroke(circle(0.6), "1", "1", "1", "4"), eased)
	for _, test := range []struct {
		i    int
		at   string
		want error
	}{
		{-1, "1", engine.ErrNoPiece},
		{2, "1", engine.ErrNoPiece},
		{0, "0", engine.ErrCutAtEnd},
		{0, "-1", engine.ErrCutAtEnd},
		{0, "4", engine.ErrCutAtEnd},
		{0, "5", engine.ErrCutAtEnd},
		{1, "2", engine.ErrCutAtEnd}, // two beats are kept
		{1, "1999999/1000000", nil},
		{0, "1/1000000000000000000000000", nil},
	} {
		got, err := l.Cut(test.i, fr(test.at))
		if !errors.Is(err, test.want) {
			t.Errorf("Cut(%d, %s) gives %v, want %v", test.i, test.at, err, test.want)
		}
		if test.want != nil && !got.Equal(l) {
			t.Errorf("Cut(%d, %s) with an error = %+v, want the lane as it was", test.i, test.at, got)
		}
	}
}

func TestRejoin(t *testing.T) {
	base := func(change func(p *engine.Piece)) engine.Piece {
		p := stroke(circle(0.6), "1", "-3", "1/2", "2")
		if change != nil {
			change(&p)
		}
		return p
	}
	part := func(from, to string, law engine.Law) engine.Piece {
		return base(func(p *engine.Piece) { p.From, p.To, p.Law = fr(from), fr(to), law })
	}
	for _, test := range []struct {
		name string
		a, b engine.Piece
		want *engine.Piece // nil: they are not one stroke continued
	}{
		{"the same again", base(nil), base(nil), ptr(base(func(p *engine.Piece) { p.Cycles, p.Beats = fr("1"), fr("4") }))},
		{"as fast, shorter", base(nil), base(func(p *engine.Piece) { p.Cycles, p.Beats = fr("1/6"), fr("2/3") }),
			ptr(base(func(p *engine.Piece) { p.Cycles, p.Beats = fr("2/3"), fr("8/3") }))},
		{"as fast, written in other cycles", base(nil), base(func(p *engine.Piece) { p.Arm, p.Prop, p.Cycles = fr("2"), fr("-6"), fr("1/4") }),
			ptr(base(func(p *engine.Piece) { p.Cycles, p.Beats = fr("1"), fr("4") }))},
		{"slower arm", base(nil), base(func(p *engine.Piece) { p.Arm = fr("0.999999999999999999") }), nil},
		{"other prop", base(nil), base(func(p *engine.Piece) { p.Prop = fr("3") }), nil},
		{"slower both", base(nil), base(func(p *engine.Piece) { p.Beats = fr("3") }), nil},
		{"other radius", base(nil), base(func(p *engine.Piece) { p.Path = circle(0.61) }), nil},
		{"other centre", base(nil), base(func(p *engine.Piece) { p.Path.Centre = 0.001 }), nil},
		{"second placed by its arm", base(nil), base(func(p *engine.Piece) { p.ArmAt = engine.Some(270) }), nil},
		{"second placed by its prop", base(nil), base(func(p *engine.Piece) { p.PropAt = engine.Some(270) }), nil},
		{"first placed", base(func(p *engine.Piece) { p.ArmAt = engine.Some(90) }), base(nil),
			ptr(base(func(p *engine.Piece) { p.ArmAt, p.Cycles, p.Beats = engine.Some(90), fr("1"), fr("4") }))},
		{"parts that touch", part("0", "1/3", engine.EaseBoth), part("1/3", "1/2", engine.EaseBoth), ptr(part("0", "1/2", engine.EaseBoth))},
		{"parts that do not touch", part("0", "1/3", engine.EaseBoth), part("1/2", "1", engine.EaseBoth), nil},
		{"parts the wrong way round", part("1/2", "1", engine.EaseBoth), part("0", "1/2", engine.EaseBoth), nil},
		{"parts of two laws", part("0", "1/3", engine.EaseBoth), part("1/3", "1", engine.EaseEnd), nil},
		{"even parts", part("0", "1/3", engine.Even), part("1/3", "1", engine.Even), ptr(part("0", "1", engine.Even))},
		{"eased, one after the other", part("0", "1", engine.EaseBoth), part("0", "1", engine.EaseBoth), nil},
		{"swing and spin", base(func(p *engine.Piece) { p.Swing = 40 }), base(nil), nil},
		{"swings from either end", part("0", "1/2", engine.Even), base(func(p *engine.Piece) { p.From, p.SwingBack = fr("1/2"), true }), nil},
	} {
		l := lane(0.6, 90, test.a, test.b)
		if got := l.CanRejoin(0); got != (test.want != nil) {
			t.Errorf("%s: CanRejoin(0) = %v, want %v", test.name, got, test.want != nil)
		}
		got, err := l.Rejoin(0)
		if test.want == nil {
			if !errors.Is(err, engine.ErrNotOne) || !got.Equal(l) {
				t.Errorf("%s: Rejoin(0) = %+v, %v, want the lane as it was and %v", test.name, got, err, engine.ErrNotOne)
			}
			continue
		}
		if want := lane(0.6, 90, *test.want); err != nil || !got.Equal(want) {
			t.Errorf("%s: Rejoin(0) = %+v, %v, want %+v", test.name, got, err, want)
		}
		moves(t, test.name, engine.NewTrack(got), engine.NewTrack(l), []float64{0, 0.3, 1, 1.7, 2, 2.2, 2.6, 3.9, 4.1, 7.7, -0.4})
	}
	l := lane(0.6, 90, base(nil), base(nil))
	for _, i := range []int{-1, 1, 2} {
		if l.CanRejoin(i) {
			t.Errorf("CanRejoin(%d) of two pieces = true, want false", i)
		}
		if _, err := l.Rejoin(i); !errors.Is(err, engine.ErrNoPiece) {
			t.Errorf("Rejoin(%d) of two pieces gives %v, want %v", i, err, engine.ErrNoPiece)
		}
	}
}

func ptr(p engine.Piece) *engine.Piece { return &p }

// clone copies a lane so that nothing done to the one shows in the other.
func clone(l engine.Lane) engine.Lane {
	l.Pieces = append([]engine.Piece(nil), l.Pieces...)
	return l
}
