package naming_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/fixture"
	"whorlbench/engine/naming"
)

// hand is a lane of pieces with a tether of 0.6 m, from arm and prop angles.
func hand(arm, prop engine.Degrees, pieces ...engine.Piece) *engine.Track {
	return engine.NewTrack(engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: arm, PropAt: prop, Pieces: pieces})
}

func circling(r float64, arm, prop string) engine.Piece {
	return fixture.Stroke(fixture.Circle(r), arm, prop, "1", "2")
}

// TestExactIsolation holds the ruling to what is seen: whether hand and head are
// equally far from the middle all the time.
func TestExactIsolation(t *testing.T) {
	for _, tt := range []struct {
		radius float64
		prop   engine.Degrees
		want   bool
		clause naming.Clause
	}{
		{0.3, 180, true, naming.OneCircle},
		{0.31, 180, false, naming.TwoCircles},
		{0.5, 180, false, naming.TwoCircles},
		{0.8, 180, false, naming.TwoCircles},
		{0.3, 0, false, naming.NoPieceIs}, // an extension
	} {
		k := hand(0, tt.prop, circling(tt.radius, "1", "1"))
		r := naming.ExactIsolation(k)
		if r.Yes != tt.want || r.Clause != tt.clause {
			t.Errorf("radius %v: %+v, want %v by clause %d", tt.radius, r, tt.want, tt.clause)
		}
		if tt.prop != 180 {
			continue
		}
		most := 0.0
		for i := range 32 {
			p := k.PointAt(0, 0, float64(i)/32)
			most = math.Max(most, math.Abs(cmplx.Abs(p.Hand)-cmplx.Abs(p.Head)))
		}
		if math.Abs(most-r.Gap) > 1e-9 {
			t.Errorf("radius %v: the circles differ by %v m, seen are %v", tt.radius, r.Gap, most)
		}
	}
}

// TestOtherHybrids: the two other uses of the word that the glossary tells of.
func TestOtherHybrids(t *testing.T) {
	extension, flower := hand(90, 90, circling(0.6, "1", "1")), hand(90, 90, circling(0.6, "1", "-3"))
	half := func(arm, prop string) engine.Piece {
		return fixture.Stroke(fixture.Circle(0.6), arm, prop, "1/2", "2")
	}
	c, swapped := hand(90, 90, half("1", "1"), half("-1", "3")), hand(90, 90, half("1", "-3"), half("-1", "-1"))
	for _, tt := range []struct {
		name          string
		left, right   *engine.Track
		apart, beside bool
	}{
		{"extension twice", extension, extension, false, false},
		{"flower and extension", flower, extension, true, true},
		{"two flowers", flower, hand(90, 90, circling(0.6, "1", "3")), true, false},
		{"one C, parts changed over", swapped, c, false, true},
		{"extension and isolation", extension, hand(90, 270, circling(0.3, "1", "1")), true, false},
		{"stroke and flower", hand(0, 0, fixture.Stroke(engine.LinePath(0, 0.6, 0), "1", "1", "1", "2")), flower, true, false},
	} {
		if got := naming.Apart(tt.left, tt.right); got.Yes != tt.apart {
			t.Errorf("%s: apart is %+v, want %v", tt.name, got, tt.apart)
		}
		if got := naming.Beside(tt.left, tt.right); got.Yes != tt.beside {
			t.Errorf("%s: beside is %+v, want %v", tt.name, got, tt.beside)
		}
	}
}
