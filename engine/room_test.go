package engine_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/room"
)

// TestPlace: X to the audience's right, Y up, Z toward the audience. The
// performer faces the audience, so the right hand's side is X < 0, forward is
// +Z, and what lies above a picture with the audience below it is −Z.
func TestPlace(t *testing.T) {
	for _, test := range []struct {
		name   string
		plane  engine.Plane
		offset float64
		at     complex128
		want   r3.Vec
	}{
		{"wall, to the audience's right", engine.Wall, 0, 1, r3.Vec{X: 1}},
		{"wall, up", engine.Wall, 0, 1i, r3.Vec{Y: 1}},
		{"wall, in front of the body", engine.Wall, 0.3, -0.2 + 0.5i, r3.Vec{X: -0.2, Y: 0.5, Z: 0.3}},
		{"wheel, forward", engine.Wheel, -0.2, 1, r3.Vec{X: -0.2, Z: 1}},
		{"wheel, up", engine.Wheel, -0.2, 1i, r3.Vec{X: -0.2, Y: 1}},
		{"wheel, back and down at the left side", engine.Wheel, 0.2, -0.5 - 0.25i, r3.Vec{X: 0.2, Y: -0.25, Z: -0.5}},
		{"floor, to the audience's right", engine.Floor, 0, 1, r3.Vec{X: 1}},
		{"floor, away from the audience", engine.Floor, 0, 1i, r3.Vec{Z: -1}},
		{"floor, toward the audience at waist height", engine.Floor, -0.4, 0.1 - 0.6i, r3.Vec{X: 0.1, Y: -0.4, Z: 0.6}},
	} {
		l := engine.Lane{Plane: test.plane, Offset: test.offset}
		if got := room.Place(l, test.at); got != test.want {
			t.Errorf("%s: Place(%v) = %v, want %v", test.name, test.at, got, test.want)
		}
	}
	if z := room.Place(engine.Lane{Plane: engine.Floor}, 1).Z; math.Signbit(z) {
		t.Errorf("Place(1).Z in the floor plane = −0, want 0")
	}
}

// TestPlaceKeepsLengths: a plane stands in the room as it is, and the place of
// the two sides' wheels is beside their own shoulders.
func TestPlaceKeepsLengths(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 300 {
		l, a, b := r.lane(), r.place(), r.place()
		got := r3.Norm(r3.Sub(room.Place(l, a), room.Place(l, b)))
		if want := math.Hypot(real(a-b), imag(a-b)); math.Abs(got-want) > 1e-12 {
			t.Fatalf("plane %d: %v and %v are %v m apart, want %v", l.Plane, a, b, got, want)
		}
	}
}

// TestDown: 9.80665 m/s² downwards in both upright planes, nothing in the
// floor (3rd CGPM, 1901, resolution 2).
func TestDown(t *testing.T) {
	for _, test := range []struct {
		plane engine.Plane
		want  complex128
	}{{engine.Wall, -9.80665i}, {engine.Wheel, -9.80665i}, {engine.Floor, 0}} {
		l := engine.Lane{Plane: test.plane}
		if got := l.Down(); got != test.want {
			t.Errorf("plane %d: Down() = %v, want %v", test.plane, got, test.want)
		}
		// In the room it is straight down, as far as the plane can feel it.
		zero, down := room.Place(l, 0), room.Place(l, l.Down())
		if got := r3.Sub(down, zero); got.X != 0 || got.Z != 0 || got.Y != imag(test.want) {
			t.Errorf("plane %d: down in the room is %v, want along −Y", test.plane, got)
		}
	}
}
