package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
)

// TestHeading: directions in degrees, from drawing the path.
func TestHeading(t *testing.T) {
	upright := engine.LinePath(0, 0.5, 90)
	oval := engine.EllipsePath(0.3i, 0.8, 0.4, 30)
	across := engine.EllipsePath(0, 0, 0.5, 0) // a stroke along y
	for _, test := range []struct {
		name       string
		path       engine.Path
		arm        string
		cycles     string
		law        engine.Law
		start      engine.Degrees
		from, to   string
		first      engine.Degrees
		last       engine.Degrees
		noHeadings bool
	}{
		{"circle from the top, anticlockwise", circle(0.6), "1", "1/4", engine.Even, 90, "0", "1", 180, 270, false},
		{"circle from the top, clockwise", circle(0.6), "-1", "1/4", engine.Even, 90, "0", "1", 0, 270, false},
		{"circle, eased at both ends", circle(0.6), "1", "1/2", engine.EaseBoth, 0, "0", "1", 90, 270, false},
		{"circle, speed and cycles both count", circle(0.6), "1/3", "3/4", engine.Even, 0, "0", "1", 90, 180, false},
		{"stroke, from its + end to its − end", upright, "1", "1/2", engine.Even, 90, "0", "1", 270, 270, false},
		{"stroke, the same with the arm the other way", upright, "-1", "1/2", engine.Even, 90, "0", "1", 270, 270, false},
		{"stroke, from its − end", upright, "1", "1/2", engine.Even, 270, "0", "1", 90, 90, false},
		{"stroke, to and fro", upright, "1", "1", engine.Even, 90, "0", "1", 270, 90, false},
		{"stroke, from the middle to the end", upright, "1", "1/4", engine.Even, 0, "0", "1", 90, 90, false},
		{"stroke, from the middle past the end", upright, "1", "1/2", engine.Even, 0, "0", "1", 90, 270, false},
		{"stroke, eased into its end", upright, "1", "1/2", engine.EaseEnd, 90, "0", "1", 270, 270, false},
		{"stroke, a part, whose start angle is the part's", upright, "1", "1", engine.Even, 90, "1/4", "3/4", 270, 270, false},
		{"stroke, a later part of an eased one", upright, "1", "1", engine.EaseBoth, 90, "1/2", "1", 270, 270, false},
		{"oval, from the end of its long axis", oval, "1", "1/4", engine.Even, 30, "0", "1", 120, 210, false},
		{"oval, clockwise", oval, "-1", "1/4", engine.Even, 30, "0", "1", 300, 210, false},
		{"oval, eased from rest", oval, "1", "1/2", engine.EaseStart, 30, "0", "1", 120, 300, false},
		{"stroke written as an ellipse, from the middle", across, "1", "1/4", engine.Even, 0, "0", "1", 90, 90, false},
		{"stroke written as an ellipse, from its upper end", across, "1", "1/4", engine.Even, 90, "0", "1", 270, 270, false},
		{"no arm speed", circle(0.6), "0", "1", engine.Even, 90, "0", "1", 0, 0, true},
		{"point", engine.PointPath(1), "1", "1", engine.Even, 90, "0", "1", 0, 0, true},
	} {
		p := stroke(test.path, test.arm, "1", test.cycles, "2")
		p.Law, p.From, p.To = test.law, fr(test.from), fr(test.to)
		leg := &engine.NewTrack(lane(0.5, test.start, p)).Legs[0]
		for _, end := range []struct {
			u    float64
			want engine.Degrees
		}{{0, test.first}, {1, test.last}} {
			got, ok := leg.Heading(end.u)
			if ok == test.noHeadings {
				t.Errorf("%s: Heading(%v) is there: %v, want %v", test.name, end.u, ok, !test.noHeadings)
				continue
			}
			want := cmplx.Rect(1, rad(float64(end.want)))
			if test.noHeadings {
				want = 0
			}
			if cmplx.Abs(got-want) > 1e-12 {
				t.Errorf("%s: Heading(%v) = %v, want %v", test.name, end.u, got, want)
			}
		}
	}
}

// TestHeadingPointsWhereTheHandGoes: a little way inside the piece the hand has
// moved along the heading, at both ends and between.
func TestHeadingPointsWhereTheHandGoes(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 1000 {
		l := r.lane()
		track := engine.NewTrack(l)
		i := r.IntN(len(l.Pieces))
		leg, p := &track.Legs[i], l.Pieces[i]
		for _, u := range []float64{0, 1, r.Float64()} {
			unit, ok := leg.Heading(u)
			if want := !p.Arm.IsZero() && p.Path.Kind != engine.OnPoint; ok != want {
				t.Fatalf("Heading(%v) is there: %v, want %v; piece %+v", u, ok, want, p)
			}
			if !ok {
				continue
			}
			if math.Abs(cmplx.Abs(unit)-1) > 1e-12 {
				t.Fatalf("Heading(%v) = %v, of length %v", u, unit, cmplx.Abs(unit))
			}
			// The step is small against a turn of the arm over the whole piece.
			step := 1e-4 / (1 + math.Abs(p.Arm.Mul(p.Cycles).Float()))
			if u+step > 1 { // beyond the piece an eased arm turns back
				step = -step
			}
			moved := leg.Point(u+step).Hand - leg.Point(u).Hand
			if step < 0 {
				moved = -moved
			}
			if d := cmplx.Abs(moved); d < 1e-9 {
				continue // so near a turning point that rounding hides the way
			}
			along := real(moved*cmplx.Conj(unit)) / cmplx.Abs(moved)
			// Within a step of a turning point the way bends back: seen, not followed.
			if nearTurn(leg, u, step) {
				continue
			}
			if along < 1-1e-3 {
				t.Fatalf("Heading(%v) = %v, but the hand moves %v; piece %+v", u, unit, moved, p)
			}
		}
	}
}

// nearTurn reports whether a stroke's end, or the sharp end of an oval, lies
// within a few steps on from u.
func nearTurn(leg *engine.Leg, u, step float64) bool {
	a, okA := leg.Heading(u)
	for _, k := range []float64{1, 2, 4} {
		b, okB := leg.Heading(min(max(u+k*step, 0), 1))
		if okA != okB || real(a*cmplx.Conj(b)) < 0.99 {
			return true
		}
	}
	return false
}

// TestHeadingByExactHalves: at every whole number of half turns of a stroke,
// however many there were before, the end is known for an end.
func TestHeadingByExactHalves(t *testing.T) {
	r := chance.New(t)
	for range 300 {
		halves := int64(1 + r.IntN(2000))
		tilt := engine.Degrees(r.IntN(3600)) / 10
		p := engine.Stroke(engine.LinePath(0, 0.6, tilt), frac.Int(1), frac.Int(0), frac.New(halves, 2), frac.Int(3))
		leg := &engine.NewTrack(lane(0.5, tilt, p)).Legs[0]
		outward := cmplx.Rect(1, rad(float64(tilt)))
		if got, ok := leg.Heading(0); !ok || cmplx.Abs(got+outward) > 1e-12 {
			t.Fatalf("Heading(0) = %v, want %v", got, -outward)
		}
		want := -outward
		if halves%2 == 0 {
			want = outward
		}
		if got, ok := leg.Heading(1); !ok || cmplx.Abs(got-want) > 1e-9 {
			t.Fatalf("Heading(1) after %d half turns, tilt %v = %v, want %v", halves, tilt, got, want)
		}
	}
}
