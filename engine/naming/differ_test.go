package naming_test

import (
	"math"
	"math/cmplx"
	"math/rand/v2"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
)

// drawn reports whether the closed curve of which one leg is a slice lies on the
// other's, hand and head together: what it means to belong to one elementary
// pattern, found by looking and not by numbers.
func drawn(on, leg *engine.Leg) bool {
	const perTurn = 1500
	w := on.Whole()
	n := int(perTurn * (1 + math.Abs(w.ArmTurns) + math.Abs(w.PropTurns)))
	points := make([]engine.Point, n)
	step := 0.0
	for i := range points {
		points[i] = w.Point(float64(i) / float64(n))
		if i > 0 {
			step = max(step, apart(points[i], points[i-1]))
		}
	}
	for k := range 20 {
		p := leg.Whole().Point((float64(k) + 0.3) / 20)
		near := false
		for i, q := range points {
			if apart(p, q) > step+1e-6 {
				continue
			}
			// It may lie between two points, or be another strand's that is near.
			const finer = 50
			for j := -finer; j <= finer && !near; j++ {
				near = apart(p, w.Point((float64(i)+float64(j)/finer)/float64(n))) <= step/finer+1e-6
			}
			if near {
				break
			}
		}
		if !near {
			return false
		}
	}
	return true
}

func apart(p, q engine.Point) float64 { return cmplx.Abs(p.Hand-q.Hand) + cmplx.Abs(p.Head-q.Head) }

// otherwise returns a lane's piece as another slice of its pattern, or as a slice
// of one that is a little different.
func otherwise(r *rand.Rand, l engine.Lane) engine.Lane {
	leg := engine.NewTrack(l).Legs[0]
	p := l.Pieces[0]
	// From its middle on, at another speed.
	l.ArmAt = engine.ToDegrees(leg.State(0.5).Arm)
	l.PropAt = engine.ToDegrees(leg.State(0.5).Prop)
	p.Cycles, p.Beats = p.Cycles.Mul(frac.New(2, 3)), frac.Int(7)
	if r.IntN(3) == 0 { // played backwards
		p.Arm, p.Prop = p.Arm.Neg(), p.Prop.Neg()
	}
	if p.Path.Kind == engine.OnLine && r.IntN(2) == 0 {
		p.Path.Tilt += 180
	}
	switch r.IntN(9) {
	case 0:
		l.PropAt += 20
	case 1:
		p.Prop = p.Prop.Add(frac.New(1, 2))
	case 2:
		p.Path.Centre += 0.07
	case 3:
		p.Path.Tilt += 10
	case 4:
		p.Path.A *= 1.2
	case 5: // α and −α are one place of a straight stroke
		if p.Path.Kind == engine.OnLine {
			l.ArmAt = 2*p.Path.Tilt - l.ArmAt
			p.Arm = p.Arm.Neg()
		}
	}
	l.Pieces = []engine.Piece{p}
	return l
}

// TestDiffer: two slices belong to one elementary pattern exactly when their
// curves are one.
func TestDiffer(t *testing.T) {
	r := chance.New(t)
	seen := map[naming.Difference]int{}
	for range 200 {
		l := randomPattern(r).Lanes[0]
		p := &l.Pieces[0]
		p.Law, p.Swing = engine.Even, 0
		almostRound := p.Path.Kind == engine.OnEllipse && math.Abs(p.Path.A-p.Path.B) < 0.1 // a tilt is too fine to be seen
		if p.Arm.IsZero() && p.Prop.IsZero() || almostRound {
			continue
		}
		m := otherwise(r, l)
		a, b := engine.NewTrack(l), engine.NewTrack(m)
		got := naming.Differ(&a.Legs[0], &b.Legs[0])
		seen[got]++
		want := drawn(&a.Legs[0], &b.Legs[0]) && drawn(&b.Legs[0], &a.Legs[0])
		if (got == naming.NoDifference) != want {
			t.Fatalf("difference %d, want one curve: %v\n%+v\n%+v", got, want, l, m)
		}
		if back := naming.Differ(&b.Legs[0], &a.Legs[0]); back != got {
			t.Fatalf("difference %d, the other way about %d\n%+v\n%+v", got, back, l, m)
		}
	}
	for _, d := range []naming.Difference{naming.NoDifference, naming.DiffersInPath, naming.DiffersInRatio, naming.DiffersInPhase} {
		if seen[d] < 5 {
			t.Errorf("difference %d was seen %d times only", d, seen[d])
		}
	}
}

// TestDifferPendulum: of a pendulum, place, width and where it is in its swing at
// a place of the path count; which end it begins at does not.
func TestDifferPendulum(t *testing.T) {
	swing := func(path engine.Path, arm, prop string, at engine.Degrees, width engine.Degrees, back bool) *engine.Leg {
		p := engine.Stroke(path, fr(arm), fr(prop), frac.Int(1), frac.Int(1))
		p.Swing, p.SwingBack = width, back
		return legOf(p, at, 0)
	}
	circle, point := engine.CirclePath(0, 0.6), engine.PointPath(0)
	for _, test := range []struct {
		name string
		a, b *engine.Leg
		want naming.Difference
	}{
		{"the same", swing(point, "0", "1", 90, 40, false), swing(point, "0", "1", 90, 40, false), naming.NoDifference},
		{"from the other end", swing(point, "0", "1", 90, 40, false), swing(point, "0", "2", 0, 40, true), naming.NoDifference},
		{"wider", swing(point, "0", "1", 90, 40, false), swing(point, "0", "1", 90, 60, false), naming.DiffersInSwing},
		{"hand on the circle", swing(point, "0", "1", 90, 40, false), swing(circle, "0", "1", 90, 40, false), naming.DiffersInPath},
		{"hand moving", swing(point, "0", "1", 90, 40, false), swing(circle, "1", "1", 90, 40, false), naming.DiffersInSort},
		{"a swing backwards is the same swing", swing(circle, "1", "1", 90, 40, false), swing(circle, "1", "-1", 90, 40, false), naming.NoDifference},
		{"half a round later", swing(circle, "1", "1", 90, 40, false), swing(circle, "1", "1", 270, 40, true), naming.NoDifference},
		{"half a round later, at the wrong end", swing(circle, "1", "1", 90, 40, false), swing(circle, "1", "1", 270, 40, false), naming.DiffersInPhase},
		{"faster", swing(circle, "1", "1", 90, 40, false), swing(circle, "1", "2", 90, 40, false), naming.DiffersInRatio},
		{"a spin", swing(point, "0", "1", 90, 40, false), swing(point, "0", "1", 90, 0, false), naming.DiffersInSort},
	} {
		if got := naming.Differ(test.a, test.b); got != test.want {
			t.Errorf("%s: difference %d, want %d", test.name, got, test.want)
		}
	}
}
