package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/mathext"

	"whorlbench/engine"
)

// Sources, all quoted from memory and confirmed here by quadrature of the
// head's own track: J. D. Lawrence, A Catalog of Special Plane Curves, Dover
// 1972 (deltoid, astroid, cardioid, nephroid, rhodonea); CRC Standard
// Mathematical Tables (astroid); NIST Digital Library of Mathematical
// Functions, ch. 19 (perimeter of the ellipse, §19.30).

// flower is a whole elementary pattern: one turn of the arm a beat, prop n to
// one, arm and prop starting together at 0.
func flower(n string, radius, tether float64) *engine.Track {
	return engine.NewTrack(lane(tether, 0, stroke(circle(radius), "1", n, "1", "1")))
}

// area is the shoelace integral ½∮ (x dy − y dx) of the head over the given
// beats. The rule of equal steps is exact for a trigonometric polynomial.
func area(t *engine.Track, beats float64) float64 {
	const n = 512
	sum := 0.0
	for k := range n {
		s := t.At(beats * float64(k) / n)
		sum += imag(cmplx.Conj(s.Head) * s.HeadVel)
	}
	return sum / 2 * beats / n
}

// length is the way of the head, by Gauss's rule from cusp to cusp, where the
// speed is smooth.
func length(t *engine.Track, cusps ...float64) float64 {
	speed := func(beat float64) float64 { return cmplx.Abs(t.At(beat).HeadVel) }
	sum := 0.0
	for i := 1; i < len(cusps); i++ {
		sum += quad.Fixed(speed, cusps[i-1], cusps[i], 60, quad.Legendre{}, 0)
	}
	return sum
}

func TestCuspedCurves(t *testing.T) {
	const b = 0.21 // the rolling circle's radius
	const a = 4 * b
	third := 1.0 / 3
	for _, test := range []struct {
		name           string
		n              string
		radius, tether float64
		cusps          []float64 // beats, the round's end included
		length, area   float64
	}{
		{"deltoid", "-2", 2 * b, b, []float64{0, third, 2 * third, 1}, 16 * b, 2 * math.Pi * b * b},
		{"astroid", "-3", 3 * b, b, []float64{0, 0.25, 0.5, 0.75, 1}, 6 * a, 3 * math.Pi * a * a / 8},
		{"cardioid", "2", 2 * b, b, []float64{-0.5, 0.5}, 16 * b, 6 * math.Pi * b * b},
		{"nephroid", "3", 3 * b, b, []float64{-0.25, 0.25, 0.75}, 24 * b, 12 * math.Pi * b * b},
	} {
		track := flower(test.n, test.radius, test.tether)
		for _, c := range test.cusps {
			if v := cmplx.Abs(track.At(c).HeadVel); v > 1e-12 {
				t.Errorf("%s: speed at beat %v = %v, want 0: a cusp", test.name, c, v)
			}
		}
		if got := length(track, test.cusps...); math.Abs(got-test.length) > 1e-12 {
			t.Errorf("%s: length = %.15g, want %.15g", test.name, got, test.length)
		}
		// A hypocycloid's arm goes round anticlockwise, and so does the area.
		if got := area(track, 1); math.Abs(got-test.area) > 1e-12 {
			t.Errorf("%s: area = %.15g, want %.15g", test.name, got, test.area)
		}
	}
}

func TestRoses(t *testing.T) {
	const r = 0.6
	for _, test := range []struct {
		n    string
		k    float64 // r = 2R cos kφ
		area float64
	}{
		{"-2", 3, math.Pi * (2 * r) * (2 * r) / 4},
		{"-3", 2, math.Pi * (2 * r) * (2 * r) / 2},
	} {
		track := flower(test.n, r, r)
		for i := range 200 {
			z := track.At(float64(i) / 200).Head
			// A negative cosine is the same distance the other way.
			want := math.Abs(2 * r * math.Cos(test.k*cmplx.Phase(z)))
			if got := cmplx.Abs(z); got > 1e-9 && math.Abs(got-want) > 1e-12 {
				t.Errorf("n = %s: the head at %v is %v m out, want %v", test.n, z, got, want)
			}
		}
		// The head goes round its rose clockwise.
		if got := -area(track, 1); math.Abs(got-test.area) > 1e-12 {
			t.Errorf("n = %s: area = %.15g, want %.15g", test.n, got, test.area)
		}
	}
}

func TestCateyeIsAnEllipse(t *testing.T) {
	for _, test := range []struct{ radius, tether float64 }{{0.6, 0.35}, {0.3, 0.6}, {0.6, 0.55}} {
		a, b := test.radius+test.tether, math.Abs(test.radius-test.tether)
		track := flower("-1", test.radius, test.tether)
		perimeter := 0.0
		const n = 4000 // equal steps: fast on a smooth closed curve
		for k := range n {
			s := track.At(float64(k) / n)
			perimeter += cmplx.Abs(s.HeadVel) / n
			x, y := real(s.Head)/a, imag(s.Head)/b
			if got := x*x + y*y; math.Abs(got-1) > 1e-12 {
				t.Fatalf("R = %v, L = %v: (x/a)² + (y/b)² = %v at %v, want 1", test.radius, test.tether, got, s.Head)
			}
		}
		m := 4 * test.radius * test.tether / (a * a)
		if want := 4 * a * mathext.CompleteE(m); math.Abs(perimeter-want) > 1e-11 {
			t.Errorf("R = %v, L = %v: perimeter = %.15g, want %.15g", test.radius, test.tether, perimeter, want)
		}
	}
}

// TestTusiCouple: with R = L the ellipse is flat, a straight line.
func TestTusiCouple(t *testing.T) {
	const r, along = 0.6, 35
	track := engine.NewTrack(lane(r, along, stroke(circle(r), "1", "-1", "1", "1")))
	axis := cmplx.Rect(1, rad(along))
	farthest := 0.0
	for k := range 360 {
		z := track.At(float64(k)/360).Head / axis
		if math.Abs(imag(z)) > 1e-12 {
			t.Errorf("At(%d/360).Head is %v m beside the line", k, imag(z))
		}
		farthest = max(farthest, math.Abs(real(z)))
	}
	if math.Abs(farthest-2*r) > 1e-12 {
		t.Errorf("the line reaches %v m, want %v", farthest, 2*r)
	}
}

// TestStrokeIsTwoCircles: a straight stroke is the sum of two circles of half
// its size turning opposite ways.
func TestStrokeIsTwoCircles(t *testing.T) {
	const r, tilt = 0.6, 25
	track := engine.NewTrack(lane(0.4, tilt, stroke(engine.LinePath(0, r, tilt), "1", "2", "1", "1")))
	for k := range 100 {
		beat := float64(k) / 100
		turned := 2 * math.Pi * beat
		want := cmplx.Rect(r/2, rad(tilt)+turned) + cmplx.Rect(r/2, rad(tilt)-turned)
		if got := track.At(beat).Hand; cmplx.Abs(got-want) > 1e-12 {
			t.Errorf("At(%v).Hand = %v, want %v", beat, got, want)
		}
	}
}
