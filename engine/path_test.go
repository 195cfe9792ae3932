package engine_test

import (
	"math"
	"testing"

	"whorlbench/engine"
)

func TestPathKinds(t *testing.T) {
	for _, test := range []struct {
		name               string
		path               engine.Path
		point, round, line bool
	}{
		{"circle", engine.CirclePath(1, 0.6), false, true, false},
		{"stroke", engine.LinePath(1, 0.6, 20), false, false, true},
		{"ellipse", engine.EllipsePath(1, 0.6, 0.4, 20), false, false, false},
		{"point", engine.PointPath(1), true, false, false},
		{"circle written as an ellipse", engine.EllipsePath(1, 0.6, 0.6, 20), false, true, false},
		{"all but a circle", engine.EllipsePath(1, 0.6, 0.6+9e-7, 20), false, true, false},
		{"not quite a circle", engine.EllipsePath(1, 0.6, 0.6-1.1e-6, 20), false, false, false},
		{"stroke written as an ellipse", engine.EllipsePath(1, 0, 0.6, 20), false, false, true},
		{"point written as an ellipse", engine.EllipsePath(1, 0, 0, 20), true, false, false},
		{"tiny stroke", engine.LinePath(1, 5e-7, 20), false, false, true},
		{"tiny circle", engine.CirclePath(1, 5e-7), false, true, false},
	} {
		if got := test.path.IsPoint(); got != test.point {
			t.Errorf("%s: IsPoint() = %v, want %v", test.name, got, test.point)
		}
		if got := test.path.IsRound(); got != test.round {
			t.Errorf("%s: IsRound() = %v, want %v", test.name, got, test.round)
		}
		if got := test.path.IsLine(); got != test.line {
			t.Errorf("%s: IsLine() = %v, want %v", test.name, got, test.line)
		}
	}
}

func TestPathSame(t *testing.T) {
	for _, test := range []struct {
		name string
		p, q engine.Path
		want bool
	}{
		{"circle, any tilt", engine.CirclePath(1i, 0.6), engine.EllipsePath(1i, 0.6, 0.6, 77), true},
		{"circle, other radius", engine.CirclePath(1i, 0.6), engine.CirclePath(1i, 0.600002), false},
		{"circle, hardly another radius", engine.CirclePath(1i, 0.6), engine.CirclePath(1i, 0.6000005), true},
		{"circle, other centre", engine.CirclePath(1i, 0.6), engine.CirclePath(1i+2e-6, 0.6), false},
		{"stroke, the other end first", engine.LinePath(0, 0.6, 20), engine.LinePath(0, 0.6, 200), true},
		{"stroke, as an ellipse across", engine.LinePath(0, 0.6, 20), engine.EllipsePath(0, 0, 0.6, -70), true},
		{"stroke, other direction", engine.LinePath(0, 0.6, 20), engine.LinePath(0, 0.6, 21), false},
		{"ellipse, axes the other way", engine.EllipsePath(0, 0.6, 0.4, 20), engine.EllipsePath(0, 0.4, 0.6, 110), true},
		{"ellipse, half a turn on", engine.EllipsePath(0, 0.6, 0.4, 20), engine.EllipsePath(0, 0.6, 0.4, -160), true},
		{"ellipse, mirrored", engine.EllipsePath(0, 0.6, 0.4, 20), engine.EllipsePath(0, 0.6, 0.4, -20), false},
		{"ellipse and circle", engine.EllipsePath(0, 0.6, 0.4, 20), engine.CirclePath(0, 0.6), false},
		{"points", engine.PointPath(1), engine.EllipsePath(1, 0, 0, 30), true},
	} {
		if got := test.p.Same(test.q); got != test.want {
			t.Errorf("%s: Same = %v, want %v", test.name, got, test.want)
		}
		if got := test.q.Same(test.p); got != test.want {
			t.Errorf("%s, the other way round: Same = %v, want %v", test.name, got, test.want)
		}
	}
}

func TestDegrees(t *testing.T) {
	for _, test := range []struct{ in, want engine.Degrees }{
		{0, 0}, {180, 180}, {-180, 180}, {181, -179}, {-181, 179}, {360, 0}, {540, 180}, {-540, 180}, {359.5, -0.5}, {36000, 0}, {-725, -5},
	} {
		if got := test.in.Wrap(); got != test.want {
			t.Errorf("%v.Wrap() = %v, want %v", test.in, got, test.want)
		}
	}
	for _, test := range []struct {
		deg engine.Degrees
		rad float64
	}{{0, 0}, {180, math.Pi}, {-90, -math.Pi / 2}, {720, 4 * math.Pi}} {
		if got := test.deg.Radians(); math.Abs(got-test.rad) > 1e-15 {
			t.Errorf("%v.Radians() = %v, want %v", test.deg, got, test.rad)
		}
		if got := engine.ToDegrees(test.rad); math.Abs(float64(got-test.deg)) > 1e-12 {
			t.Errorf("ToDegrees(%v) = %v, want %v", test.rad, got, test.deg)
		}
	}
}

func TestDefaultOffset(t *testing.T) {
	p := engine.DefaultPerformer() // 0.4 m from shoulder to shoulder
	for _, test := range []struct {
		side  engine.Side
		plane engine.Plane
		want  float64
	}{
		{engine.Right, engine.Wall, 0}, {engine.Left, engine.Floor, 0},
		{engine.Right, engine.Wheel, -0.2}, {engine.Left, engine.Wheel, 0.2},
	} {
		if got := p.DefaultOffset(test.side, test.plane); got != test.want {
			t.Errorf("DefaultOffset(%d, %d) = %v, want %v", test.side, test.plane, got, test.want)
		}
	}
}
