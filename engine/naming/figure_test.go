package naming_test

import (
	"fmt"
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/fixture"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
)

var fr = fixture.Frac

// leg readies one stroke with its start angles.
func leg(path engine.Path, arm, prop string, armAt, propAt engine.Degrees) *engine.Leg {
	p := engine.Stroke(path, fr(arm), fr(prop), frac.Int(1), frac.Int(1))
	return legOf(p, armAt, propAt)
}

func legOf(p engine.Piece, armAt, propAt engine.Degrees) *engine.Leg {
	l := engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: armAt, PropAt: propAt, Pieces: []engine.Piece{p}}
	return &engine.NewTrack(l).Legs[0]
}

// text writes what is known about a figure in one line, so that a table can
// say it as shortly: kind, spin, then ratio, petals, tip, mode and offset where
// there are any.
func text(f naming.Figure) string {
	s := kinds[f.Kind] + " " + spins[f.Spin]
	if f.HasRatio {
		s += " n=" + f.Ratio.String()
	}
	if f.HasPetals {
		s += " petals=" + f.Petals.String()
	}
	if f.HasTip {
		s += fmt.Sprintf(" tip=%.6g", float64(f.FirstTip))
	}
	if f.Mode != naming.NoMode {
		s += map[naming.Mode]string{naming.Diamond: " diamond", naming.Box: " box"}[f.Mode]
	}
	if f.Kind == naming.UnitTurn {
		s += fmt.Sprintf(" offset=%.6g", float64(f.Offset))
	}
	return s
}

var kinds = map[naming.Kind]string{
	naming.Flower: "flower", naming.Star: "star", naming.Extension: "extension", naming.Isolation: "isolation",
	naming.UnitTurn: "unit turn", naming.Carried: "carried", naming.StaticSpin: "static spin", naming.HeldStill: "held still",
	naming.LinearExtension: "linear extension", naming.LinearIsolation: "linear isolation",
	naming.LinearBetween: "linear between", naming.LinearOther: "linear other",
	naming.EllipsePath: "elliptical", naming.Pendulum: "pendulum",
}

var spins = map[naming.Spin]string{
	naming.SpinIn: "in", naming.SpinAnti: "anti", naming.SpinUnit: "unit", naming.SpinCarried: "carried",
	naming.SpinLine: "line", naming.SpinEllipse: "ellipse", naming.SpinStatic: "static", naming.SpinSwing: "swing",
}

// TestCircles: petals n − 1 for in-spin and 1 − n for antispin flowers, the
// cateye, the triquetra and the two-petal in-spin flower are common practice.
// The tips are worked out by hand: α = (nα₀ − ψ₀)/(n − 1) modulo 360° by the
// number of petals.
func TestCircles(t *testing.T) {
	circle := engine.CirclePath(0.1+0.2i, 0.6)
	for _, test := range []struct {
		arm, prop     string
		armAt, propAt engine.Degrees
		want          string
	}{
		{"1", "2", 90, 90, "flower in n=2 petals=1 tip=90"},
		{"1", "2", 0, 30, "flower in n=2 petals=1 tip=330"},
		{"1", "3", 90, 90, "flower in n=3 petals=2 tip=90"},
		{"1", "4", 90, 90, "flower in n=4 petals=3 tip=90"},
		{"1", "5", 90, 90, "flower in n=5 petals=4 tip=0 diamond"},
		{"1", "5", 0, 180, "flower in n=5 petals=4 tip=45 box"},
		{"1", "7", 0, 0, "flower in n=7 petals=6 tip=0"},
		{"1", "1", 90, 90, "extension unit n=1 petals=0"},
		{"-1", "-1", 90, 90, "extension unit n=1 petals=0"},
		{"1", "1", 90, 450, "extension unit n=1 petals=0"},
		{"1", "1", 90, 270, "isolation unit n=1 petals=0"},
		{"1", "1", 90, -90, "isolation unit n=1 petals=0"},
		{"1", "1", 90, 180, "unit turn unit n=1 petals=0 offset=90"},
		{"1", "1", 90, 0, "unit turn unit n=1 petals=0 offset=-90"},
		{"1", "1", 350, 10, "unit turn unit n=1 petals=0 offset=20"},
		{"1", "0", 90, 90, "carried carried n=0 petals=0"},
		{"1", "0", 90, 0, "carried carried n=0 petals=0"},
		{"1", "-1", 90, 90, "flower anti n=-1 petals=2 tip=90"},
		{"1", "-1", 0, 60, "flower anti n=-1 petals=2 tip=30"},
		{"1", "-2", 90, 90, "flower anti n=-2 petals=3 tip=90"},
		{"1", "-2", 180, 0, "flower anti n=-2 petals=3 tip=0"},
		{"1", "-2", 0, 180, "flower anti n=-2 petals=3 tip=60"},
		{"1", "-3", 90, 90, "flower anti n=-3 petals=4 tip=0 diamond"},
		{"1", "-3", 90, 270, "flower anti n=-3 petals=4 tip=45 box"},
		{"1", "-3", 0, 20, "flower anti n=-3 petals=4 tip=5"},
		{"-1", "3", 90, 270, "flower anti n=-3 petals=4 tip=45 box"}, // whatever the arm's sign
		{"1/2", "-3/2", 180, 0, "flower anti n=-3 petals=4 tip=45 box"},
		{"1", "-4", 90, 90, "flower anti n=-4 petals=5 tip=18"},
		{"-2", "10", 90, 90, "flower anti n=-5 petals=6 tip=30"},
		{"1", "1/2", 90, 90, "star in n=1/2 petals=1 tip=90"},
		{"2", "3", 90, 90, "star in n=3/2 petals=1 tip=90"},
		{"1", "5/2", 90, 90, "star in n=5/2 petals=3 tip=90"},
		{"2", "-1", 90, 90, "star anti n=-1/2 petals=3 tip=90"},
		{"3", "-5", 90, 90, "star anti n=-5/3 petals=8 tip=0"},
		{"3", "7", 90, 90, "star in n=7/3 petals=4 tip=0 diamond"},
		{"3", "-1", 0, 60, "star anti n=-1/3 petals=4 tip=45 box"},
		{"0", "1", 90, 90, "static spin static petals=0"},
		{"0", "-2", 90, 0, "static spin static petals=0"},
		{"0", "0", 90, 90, "held still static petals=0"},
	} {
		if got := text(naming.Of(leg(circle, test.arm, test.prop, test.armAt, test.propAt))); got != test.want {
			t.Errorf("circle, arm %s from %v, prop %s from %v: %q, want %q", test.arm, test.armAt, test.prop, test.propAt, got, test.want)
		}
	}
}

func TestOtherPaths(t *testing.T) {
	for _, test := range []struct {
		name          string
		path          engine.Path
		arm, prop     string
		armAt, propAt engine.Degrees
		want          string
	}{
		{"stroke from its + end", engine.LinePath(0, 0.6, 30), "1", "1", 30, 30, "linear extension line n=1"},
		{"stroke, the other sense", engine.LinePath(0, 0.6, 30), "1", "-1", 30, 30, "linear extension line n=-1"},
		{"stroke, arm backwards", engine.LinePath(0, 0.6, 30), "-1", "1", 30, 30, "linear extension line n=-1"},
		{"stroke from its middle", engine.LinePath(0, 0.6, 30), "1", "1", 120, 120, "linear extension line n=1"},
		// A quarter before the + end at α = 300°; the prop goes back 90° till 30°.
		{"stroke from its middle, the other sense", engine.LinePath(0, 0.6, 30), "1", "-1", 300, 120, "linear extension line n=-1"},
		{"stroke from its − end", engine.LinePath(0, 0.6, 30), "1", "1", 210, 210, "linear extension line n=1"},
		{"stroke, inward", engine.LinePath(0, 0.6, 30), "1", "1", 30, 210, "linear isolation line n=1"},
		{"the triquetra hand's stroke", engine.LinePath(0, 0.6, 0), "1/2", "-1/2", 0, 180, "linear isolation line n=-1"},
		{"stroke, across", engine.LinePath(0, 0.6, 30), "1", "1", 30, 120, "linear between line n=1"},
		{"stroke, faster prop", engine.LinePath(0, 0.6, 30), "1", "3", 30, 30, "linear other line n=3"},
		{"stroke, slower prop", engine.LinePath(0, 0.6, 30), "2", "-1", 30, 30, "linear other line n=-1/2"},
		{"stroke, carried prop", engine.LinePath(0, 0.6, 30), "1", "0", 30, 30, "carried carried n=0"},
		{"stroke, arm still", engine.LinePath(0, 0.6, 30), "0", "1", 30, 30, "static spin static"},
		{"stroke, all still", engine.LinePath(0, 0.6, 30), "0", "0", 30, 30, "held still static"},
		{"stroke written as an ellipse", engine.EllipsePath(0, 0.6, 0, 30), "1", "1", 30, 30, "linear extension line n=1"},
		{"stroke written as an ellipse across", engine.EllipsePath(0, 0, 0.6, 30), "1", "1", 120, 120, "linear extension line n=1"},
		{"the same, inward", engine.EllipsePath(0, 0, 0.6, 30), "1", "-1", 120, 300, "linear isolation line n=-1"},
		{"ellipse", engine.EllipsePath(0, 0.6, 0.4, 30), "1", "-3", 30, 30, "elliptical ellipse n=-3"},
		{"ellipse, unit turn", engine.EllipsePath(0, 0.6, 0.4, 30), "1", "1", 30, 30, "elliptical ellipse n=1"},
		{"ellipse, carried prop", engine.EllipsePath(0, 0.6, 0.4, 30), "1", "0", 30, 30, "carried carried n=0"},
		{"ellipse, arm still", engine.EllipsePath(0, 0.6, 0.4, 30), "0", "1", 30, 30, "static spin static"},
		{"circle written as an ellipse", engine.EllipsePath(0, 0.6, 0.6, 30), "1", "-3", 90, 90, "flower anti n=-3 petals=4 tip=0 diamond"},
		{"all but a circle", engine.EllipsePath(0, 0.6, 0.6+0.9e-6, 30), "1", "1", 90, 90, "extension unit n=1 petals=0"},
		{"not quite a circle", engine.EllipsePath(0, 0.6, 0.6+1.1e-6, 30), "1", "1", 90, 90, "elliptical ellipse n=1"},
		{"point", engine.PointPath(1i), "1", "2", 90, 90, "static spin static"},
		{"point, arm still", engine.PointPath(1i), "0", "2", 90, 90, "static spin static"},
		{"point, prop still", engine.PointPath(1i), "1", "0", 90, 90, "held still static"},
		{"point written as an ellipse", engine.EllipsePath(1i, 0, 0, 0), "1", "2", 90, 90, "static spin static"},
	} {
		if got := text(naming.Of(leg(test.path, test.arm, test.prop, test.armAt, test.propAt))); got != test.want {
			t.Errorf("%s: %q, want %q", test.name, got, test.want)
		}
	}
}

func TestPendulum(t *testing.T) {
	for _, path := range []engine.Path{engine.CirclePath(0, 0.6), engine.LinePath(0, 0.6, 0), engine.PointPath(0), engine.EllipsePath(0, 0.6, 0.3, 0)} {
		for _, arm := range []string{"0", "1", "-2"} {
			p := engine.Stroke(path, fr(arm), fr("1"), frac.Int(1), frac.Int(1))
			p.Swing = 40
			if got, want := text(naming.Of(legOf(p, 90, 90))), "pendulum swing"; got != want {
				t.Errorf("swing on path %v, arm %s: %q, want %q", path, arm, got, want)
			}
		}
	}
}

// TestLaterPiece: a piece is judged from where it starts, by carrying on.
func TestLaterPiece(t *testing.T) {
	half := func(arm, prop string) engine.Piece {
		return engine.Stroke(engine.CirclePath(0, 0.6), fr(arm), fr(prop), fr("1/2"), frac.Int(2))
	}
	l := engine.Lane{Tether: 0.6, ArmAt: 90, PropAt: 90, Pieces: []engine.Piece{half("1", "1"), half("-1", "3"), half("1", "1"), half("-1", "2")}}
	// After the first half the prop has turned by 180°, after the second by 540°
	// more: in line again, and so the third is an extension too, not an isolation.
	want := []string{
		"extension unit n=1 petals=0",
		"flower anti n=-3 petals=4 tip=0 diamond",
		"extension unit n=1 petals=0",
		"flower anti n=-2 petals=3 tip=30",
	}
	track := engine.NewTrack(l)
	for i, want := range want {
		if got := text(naming.Of(&track.Legs[i])); got != want {
			t.Errorf("piece %d: %q, want %q", i+1, got, want)
		}
	}
}

// TestPhaseTolerance: half a degree off is still in line, itself included.
func TestPhaseTolerance(t *testing.T) {
	circle, line := engine.CirclePath(0, 0.6), engine.LinePath(0, 0.6, 30)
	for _, test := range []struct {
		path      engine.Path
		arm, prop string
		off       float64 // of the prop from the arm
		want      naming.Kind
	}{
		{circle, "1", "1", 0.5, naming.Extension},
		{circle, "1", "1", -0.5, naming.Extension},
		{circle, "1", "1", 0.501, naming.UnitTurn},
		{circle, "1", "1", -0.501, naming.UnitTurn},
		{circle, "1", "1", 359.5, naming.Extension},
		{circle, "1", "1", 179.5, naming.Isolation},
		{circle, "1", "1", 180.5, naming.Isolation},
		{circle, "1", "1", 179.499, naming.UnitTurn},
		{circle, "1", "1", -179.499, naming.UnitTurn},
		{line, "1", "1", 0.5, naming.LinearExtension},
		{line, "1", "1", -0.501, naming.LinearBetween},
		{line, "1", "1", 180.5, naming.LinearIsolation},
		{line, "1", "1", 179.499, naming.LinearBetween},
	} {
		for _, at := range []engine.Degrees{30, 390, -690, 36000 + 30} {
			if got := naming.Of(leg(test.path, test.arm, test.prop, at, at+engine.Degrees(test.off))).Kind; got != test.want {
				t.Errorf("prop %v° off the arm at %v: %s, want %s", test.off, at, kinds[got], kinds[test.want])
			}
		}
	}
}

// TestTipTolerance: for four antispin petals from α₀ = 0 the tip is at ψ₀/4.
func TestTipTolerance(t *testing.T) {
	for _, test := range []struct {
		tip, want float64
		mode      naming.Mode
	}{
		{0, 0, naming.Diamond},
		{0.5, 0, naming.Diamond},
		{0.501, 0.501, naming.NoMode},
		{-0.5, 0, naming.Diamond},
		{-0.501, 89.499, naming.NoMode},
		{89.6, 0, naming.Diamond},
		{44.5, 44.5, naming.Box},
		{45.5, 45.5, naming.Box},
		{44.499, 44.499, naming.NoMode},
		{45.501, 45.501, naming.NoMode},
		{135.25, 45.25, naming.Box},
	} {
		got := naming.Of(leg(engine.CirclePath(0, 0.6), "1", "-3", 0, engine.Degrees(4*test.tip)))
		if math.Abs(float64(got.FirstTip)-test.want) > 1e-9 || got.Mode != test.mode {
			t.Errorf("tip at %v: first tip %v, mode %d, want %v, %d", test.tip, got.FirstTip, got.Mode, test.want, test.mode)
		}
	}
}
