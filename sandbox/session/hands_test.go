package session

import (
	"errors"
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

// apart wraps an angle in radians to (−180°, 180°].
func apart(rad float64) float64 { return float64(engine.ToDegrees(rad).Wrap()) }

// timingOf is the definition of timing: of same direction the left angle less
// the right one, of opposite, one being mirrored, 180° less both.
func timingOf(opposite bool, left, right float64) float64 {
	if opposite {
		return apart(math.Pi - left - right)
	}
	return apart(left - right)
}

func near(got, want float64) bool {
	return math.Abs(math.Remainder(got-want, 360)) < 1e-6
}

// what each timing is, in degrees.
var timingTable = []struct {
	timing   Timing
	opposite bool
	want     float64
}{
	{TogetherSame, false, 0}, {SplitSame, false, 180}, {QuarterSame, false, 90}, {TogetherOpposite, true, 0}, {SplitOpposite, true, 180},
}

// Every built-in pattern's first hand with a second one: at the beginning, and
// as both do the same at the same time all along, props are at the timing asked
// for, and hands on round paths too.
func TestSecondHandTiming(t *testing.T) {
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		first := p.Lanes[0]
		for _, tt := range timingTable {
			p.Lanes = []engine.Lane{first}
			s := New(p)
			if err := s.MakeHand(0, tt.timing); err != nil {
				t.Errorf("%s: MakeHand(%d) = %v", e.ID, tt.timing, err)
				continue
			}
			left, right := s.Tracks()[0], s.Tracks()[1]
			if right.Lane.Side == engine.Left {
				left, right = right, left
			}
			if left.Lane.Side != engine.Left || right.Lane.Side != engine.Right {
				t.Fatalf("%s: the hands are %d and %d, want one of each", e.ID, left.Lane.Side, right.Lane.Side)
			}
			for _, beat := range []float64{0, 0.3, 0.77} {
				a, b := left.At(beat), right.At(beat)
				_, i, _ := right.Locate(beat)
				piece := right.Legs[i].Piece
				if piece.Swing == 0 { // a pendulum hangs down whatever is asked for
					if got := timingOf(tt.opposite, a.Prop, b.Prop); !near(got, tt.want) {
						t.Errorf("%s, timing %d, beat %v: props are %v° apart, want %v°", e.ID, tt.timing, beat, got, tt.want)
					}
				}
				if piece.Path.Kind == engine.OnCircle {
					if got := timingOf(tt.opposite, a.Arm, b.Arm); !near(got, tt.want) {
						t.Errorf("%s, timing %d, beat %v: hands are %v° apart, want %v°", e.ID, tt.timing, beat, got, tt.want)
					}
				}
			}
		}
	}
}

// The same seen in places: together and opposite is the mirror image, split
// and same direction the other end of the circle.
func TestSecondHandPlaces(t *testing.T) {
	l := engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: 20, PropAt: 35, Centre: -0.3 + 0.1i, Pieces: []engine.Piece{
		engine.Stroke(engine.CirclePath(0, 0.5), frac.Int(1), frac.Int(3), frac.New(1, 2), frac.Int(2)),
		engine.Stroke(engine.EllipsePath(0, 0.5, 0.3, 30), frac.Int(-1), frac.Int(-2), frac.Int(1), frac.Int(3)),
	}}
	a := engine.NewTrack(l)
	for _, tt := range []struct {
		timing Timing
		place  func(z complex128) complex128 // of the second hand, from its own middle
	}{
		{TogetherSame, func(z complex128) complex128 { return z }},
		{SplitSame, func(z complex128) complex128 { return -z }},
		{QuarterSame, func(z complex128) complex128 { return 1i * z }},
		{TogetherOpposite, func(z complex128) complex128 { return -cmplx.Conj(z) }},
		{SplitOpposite, func(z complex128) complex128 { return cmplx.Conj(z) }},
	} {
		second := SecondHand(l, tt.timing)
		if second.Centre != 0.3+0.1i {
			t.Errorf("timing %d: centre = %v, want the other side, 0.3+0.1i", tt.timing, second.Centre)
		}
		b := engine.NewTrack(second)
		for beat := 0.0; beat < 5; beat += 0.37 {
			p, q := a.At(beat), b.At(beat)
			if want := tt.place(p.Head-l.Centre) + second.Centre; cmplx.Abs(q.Head-want) > 1e-9 {
				t.Errorf("timing %d, beat %v: head at %v, want %v", tt.timing, beat, q.Head, want)
			}
		}
	}
}

// In the wheel plane each hand has its own side (common practice), and
// opposite is fore against aft.
func TestSecondHandInTheWheelPlane(t *testing.T) {
	l := engine.Lane{Side: engine.Right, Plane: engine.Wheel, Offset: -0.2, Tether: 0.6, Pieces: []engine.Piece{
		engine.Stroke(engine.CirclePath(0.1, 0.5), frac.Int(1), frac.Int(1), frac.Int(1), frac.Int(2))}}
	for _, tt := range timingTable {
		second := SecondHand(l, tt.timing)
		if second.Plane != engine.Wheel || second.Offset != 0.2 || second.Side != engine.Left {
			t.Errorf("timing %d: side %d, plane %d, offset %v, want left, wheel, 0.2", tt.timing, second.Side, second.Plane, second.Offset)
		}
		if got := timingOf(tt.opposite, engine.NewTrack(second).At(0.4).Prop, engine.NewTrack(l).At(0.4).Prop); !near(got, tt.want) {
			t.Errorf("timing %d: props are %v° apart, want %v°", tt.timing, got, tt.want)
		}
	}
}

func TestHandsUndoAndView(t *testing.T) {
	p, err := presets.First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	s := New(p)
	if err := s.TakeHand(0); !errors.Is(err, ErrOneHand) {
		t.Errorf("TakeHand of the only hand = %v, want ErrOneHand", err)
	}
	s.HideHand(0)
	if s.Hidden(0) {
		t.Error("Hidden(0) = true with one hand, want it always seen")
	}
	if err := s.MakeHand(0, SplitSame); err != nil {
		t.Fatal(err)
	}
	rev := s.Revision()
	s.HideHand(0)
	if !s.Hidden(0) || s.Hidden(1) || s.Selected().Lane != 1 || s.Revision() != rev {
		t.Errorf("after HideHand(0): hidden %v %v, in hand %v, edits %d, want the other hand seen and in hand, no edit",
			s.Hidden(0), s.Hidden(1), s.Selected(), s.Revision()-rev)
	}
	if err := s.MakeHand(0, TogetherOpposite); err != nil {
		t.Fatal(err)
	}
	if n := len(s.Pattern().Lanes); n != 2 || s.Hidden(0) {
		t.Errorf("a hand anew: %d hands, hidden %v, want 2, seen", n, s.Hidden(0))
	}
	if err := s.TakeHand(1); err != nil {
		t.Fatal(err)
	}
	if got := s.Pattern(); !got.Equal(p) {
		t.Error("adding a hand and taking it away is not the identity")
	}
	for s.CanUndo() {
		s.Undo()
	}
	if !s.Pattern().Equal(p) {
		t.Error("undone to the start it is not the first pattern")
	}
	if err := s.MakeHand(1, SplitSame); err == nil {
		t.Error("MakeHand from a hand that is not there gives no error")
	}
}
