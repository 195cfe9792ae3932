package session

import (
	"errors"
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

// A hand that begins later is where the first one will be so many beats on,
// or its mirror image is.
func TestMakeHandLater(t *testing.T) {
	for _, id := range []string{"half-moon", "swan", "kite", "net-mender", "wind-in-the-rigging"} {
		var p engine.Pattern
		for _, e := range presets.Library() {
			if e.ID == id {
				var err error
				if p, err = e.Pattern(); err != nil {
					t.Fatal(err)
				}
			}
		}
		for _, beats := range []frac.Frac{frac.New(1, 2), frac.Int(1), frac.New(7, 3), frac.Int(-1)} {
			for _, timing := range []Timing{TogetherSame, TogetherOpposite, SplitSame} {
				s := New(p)
				if err := s.MakeHandLater(0, timing, beats); err != nil {
					t.Fatalf("%s, %v later: %v", id, beats, err)
				}
				first, second := s.Tracks()[0], s.Tracks()[1]
				for _, at := range []float64{0.01, 0.6, 1.3, 2.77, 9.1} {
					want, got := first.At(at+beats.Float()), second.At(at)
					h, z := want.Hand-first.Lane.Centre, want.Head-first.Lane.Centre
					switch timing {
					case TogetherOpposite:
						h, z = complex(-real(h), imag(h)), complex(-real(z), imag(z))
					case SplitSame:
						h, z = -h, -z
					}
					h, z = got.Hand-second.Lane.Centre-h, got.Head-second.Lane.Centre-z
					if d := math.Hypot(real(h), imag(h)) + math.Hypot(real(z), imag(z)); d > 1e-9 {
						t.Errorf("%s, %v beats later, timing %d: at beat %v hand and head are %v m off", id, beats, timing, at, d)
					}
				}
				s.Undo()
				if !s.Pattern().Equal(p) {
					t.Errorf("%s: undone it is not what it was", id)
				}
			}
		}
	}
	if err := New(first(t)).MakeHandLater(3, TogetherSame, frac.Int(1)); !errors.Is(err, engine.ErrNoPiece) {
		t.Errorf("MakeHandLater of a hand that is not there = %v, want ErrNoPiece", err)
	}
}

func first(t *testing.T) engine.Pattern {
	t.Helper()
	p, err := presets.First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	return p
}
