package session

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// rightLane is a pattern of a lane with the given pieces, on a circle of 0.6 m.
func rightLane(pieces ...engine.Piece) engine.Pattern {
	return engine.Pattern{Title: "One", Tempo: 90, Performer: engine.DefaultPerformer(),
		Lanes: []engine.Lane{{Side: engine.Right, Tether: 0.6, ArmAt: 90, PropAt: 90, Pieces: pieces}}}
}

func circular(arm, prop int64, cycles, beats frac.Frac) engine.Piece {
	return engine.Stroke(engine.CirclePath(0, 0.6), frac.Int(arm), frac.Int(prop), cycles, beats)
}

// sameMovement compares where everything is at many beats.
func sameMovement(t *testing.T, a, b engine.Lane) {
	t.Helper()
	x, y := engine.NewTrack(a), engine.NewTrack(b)
	for k := range 200 {
		beat := float64(k) / 200 * y.Beats
		p, q := x.At(beat), y.At(beat)
		if cmplx.Abs(p.Head-q.Head) > 1e-9 || cmplx.Abs(p.Hand-q.Hand) > 1e-9 {
			t.Fatalf("at beat %v the head is at %v, want %v", beat, p.Head, q.Head)
		}
	}
}

// The seam of a stroke that was cut moves, and nothing else does.
func TestStretchMovesTheSeam(t *testing.T) {
	half := frac.New(1, 2)
	eased := circular(1, -3, frac.Int(1), frac.Int(4))
	eased.Law = engine.EaseBoth
	for _, p := range []engine.Piece{circular(1, -3, frac.Int(1), frac.Int(4)), eased} {
		whole := rightLane(p, circular(-1, 1, half, frac.Int(2)))
		l, err := whole.Lanes[0].Cut(0, frac.Int(2))
		if err != nil {
			t.Fatal(err)
		}
		s := New(whole.WithLane(0, l))
		st := s.StretchOf(Select{})
		for _, length := range []frac.Frac{frac.New(10, 3), frac.New(1, 3), frac.Int(3)} {
			if err := s.StretchTo(st, length); err != nil {
				t.Fatal(err)
			}
			got := s.Pattern().Lanes[0]
			if !got.Pieces[0].Length().Equal(length) || !got.Pieces[1].Length().Equal(frac.Int(4).Sub(length)) || len(got.Pieces) != 3 {
				t.Errorf("lengths = %v, %v, want %v and the rest of 4", got.Pieces[0].Length(), got.Pieces[1].Length(), length)
			}
			sameMovement(t, got, whole.Lanes[0])
		}
		if err := s.StretchTo(st, frac.Int(99)); err != nil || !s.Pattern().Lanes[0].Pieces[0].Length().Equal(frac.New(191, 48)) {
			t.Errorf("stretched too far: %v beats, %v, want the neighbour to keep a forty-eighth", s.Pattern().Lanes[0].Pieces[0].Length(), err)
		}
	}
}

// A whole even stroke keeps its speeds a beat: cycles and beats in
// proportion, exact.
func TestStretchOfAWholeStroke(t *testing.T) {
	s := New(rightLane(circular(1, -3, frac.New(1, 2), frac.Int(2)), circular(-1, 1, frac.New(1, 2), frac.Int(2))))
	st := s.StretchOf(Select{})
	for _, tt := range []struct{ length, cycles, beats frac.Frac }{
		{frac.Int(3), frac.New(3, 4), frac.Int(3)},
		{frac.New(4, 3), frac.New(1, 3), frac.New(4, 3)},
		{frac.Int(16), frac.Int(4), frac.Int(16)},
		{frac.Int(99), frac.Int(4), frac.Int(16)},               // four cycles in one go
		{frac.New(1, 1000), frac.New(1, 48*4), frac.New(1, 48)}, // the least
	} {
		if err := s.StretchTo(st, tt.length); err != nil {
			t.Fatal(err)
		}
		p := s.Pattern().Lanes[0].Pieces[0]
		if !p.Cycles.Equal(tt.cycles) || !p.Beats.Equal(tt.beats) || !p.IsWhole() {
			t.Errorf("stretched to %v: %v cycles in %v beats, want %v in %v", tt.length, p.Cycles, p.Beats, tt.cycles, tt.beats)
		}
	}
}

// A part keeps more or less of its stroke, all of it at most.
func TestStretchOfAPart(t *testing.T) {
	p := circular(1, -3, frac.Int(1), frac.Int(4))
	p.From, p.To = frac.New(1, 4), frac.New(1, 2)
	swing := circular(1, 1, frac.Int(1), frac.Int(4))
	swing.Swing = 60
	for _, tt := range []struct {
		p                  engine.Piece
		length, to, cycles frac.Frac
	}{
		{p, frac.Int(2), frac.New(3, 4), frac.Int(1)},
		{p, frac.Int(99), frac.Int(1), frac.Int(1)},
		{swing, frac.Int(3), frac.New(3, 4), frac.Int(1)},
	} {
		s := New(rightLane(tt.p))
		if err := s.StretchTo(s.StretchOf(Select{}), tt.length); err != nil {
			t.Fatal(err)
		}
		if got := s.SelectedPiece(); !got.To.Equal(tt.to) || !got.Cycles.Equal(tt.cycles) || !got.From.Equal(tt.p.From) {
			t.Errorf("stretched to %v: part %v to %v of %v cycles, want to %v", tt.length, got.From, got.To, got.Cycles, tt.to)
		}
	}
}

// The finger is followed along the curve, through its crossings, and caught
// as cuts are. In an extension the head is 1.2 m out at the arm's angle, so
// a place of the plane tells the length (common practice).
func TestStretchFollowsTheFinger(t *testing.T) {
	s := New(rightLane(circular(1, 1, frac.New(1, 4), frac.Int(1)), circular(-1, 1, frac.Int(1), frac.Int(4))))
	st := s.StretchOf(Select{})
	length := 1.0
	for k := 1; k <= 60; k++ { // a turn and a half on, in steps of 9 degrees
		a := math.Pi/2 + math.Pi/2 + float64(k)*math.Pi/20
		length = st.Near(cmplx.Rect(1.2, a), length)
	}
	if math.Abs(length-7) > 0.05 {
		t.Errorf("followed round one and a half turns: %v beats, want 7", length)
	}
	if got := st.Snap(length, 1.0/12); !got.Equal(frac.Int(7)) {
		t.Errorf("Snap(%v) = %v, want 7, a quarter turn of the arm", length, got)
	}
	for range 200 { // far back beyond the start
		length = st.Near(0.1+1i, length)
	}
	if got := st.Snap(-5, 1.0/12); !got.Equal(frac.New(1, 48)) {
		t.Errorf("Snap(-5) = %v, want the least", got)
	}
}

func TestGoTo(t *testing.T) {
	s := New(rightLane(circular(1, 1, frac.New(1, 2), frac.Int(2)), circular(-1, 3, frac.New(1, 2), frac.Int(2))))
	for _, tt := range []struct{ beat, want float64 }{{0, 0}, {3.5, 3.5}, {9, 9}, {-1, 3}, {-4, 0}} {
		if s.GoTo(tt.beat); s.Beat() != tt.want {
			t.Errorf("GoTo(%v): beat = %v, want %v", tt.beat, s.Beat(), tt.want)
		}
	}
}
