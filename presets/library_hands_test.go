package presets_test

import (
	"math"
	"math/cmplx"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"whorlbench/engine"
	"whorlbench/engine/room"
)

// moment is both hands at one beat, sampled from the pattern alone.
type moment struct {
	beat        float64
	right, left engine.State
}

// together samples both hands over their common closing time.
func together(t *testing.T, id string) (p engine.Pattern, all []moment) {
	t.Helper()
	p = pattern(t, id)
	if len(p.Lanes) != 2 || p.Lanes[0].Side != engine.Right {
		t.Fatalf("%s: want a right and a left hand", id)
	}
	a, b := engine.NewTrack(p.Lanes[0]), engine.NewTrack(p.Lanes[1])
	beats, ok := engine.ClosingTime(a, b)
	if !ok {
		t.Fatalf("%s never closes", id)
	}
	const n = 2400
	for k := range n + 1 {
		beat := beats.Float() * float64(k) / n
		all = append(all, moment{beat, a.At(beat), b.At(beat)})
	}
	return p, all
}

// out returns where a prop points, as a unit vector.
func out(s engine.State) complex128 { return (s.Head - s.Hand) / complex(cmplx.Abs(s.Head-s.Hand), 0) }

// apart returns a difference of angles in degrees, 0 to 180.
func apart(z complex128) float64 { return math.Abs(cmplx.Phase(z)) * 180 / math.Pi }

// TestTwoHandsTiming: how far the props are from pointing alike, throughout:
// for opposite directions with one of them mirrored, x to −x. Split time is
// 180°, together time 0° (common practice).
func TestTwoHandsTiming(t *testing.T) {
	for _, test := range []struct {
		id       string
		opposite bool
		at       func(beat float64) float64 // degrees
	}{
		{"lock-gates", true, func(float64) float64 { return 0 }},
		{"one-gig-two-oars", false, func(float64) float64 { return 0 }},
		{"seesaw", true, func(float64) float64 { return 180 }},
		{"leading-lights", false, func(float64) float64 { return 90 }},
		{"paddle-steamer", false, func(float64) float64 { return 180 }},
		{"two-ferries", false, func(float64) float64 { return 180 }},
		{"two-bell-buoys", false, func(float64) float64 { return 180 }},
		{"crossed-lines", false, func(float64) float64 { return 180 }},
		// Together, quarter, split, quarter, together on each stroke of 2 beats.
		{"pier-end", true, func(beat float64) float64 { return 180 * math.Abs(math.Remainder(beat, 2)) }},
	} {
		_, all := together(t, test.id)
		for i, m := range all[1:] {
			right, left := out(m.right)/out(all[i].right), out(m.left)/out(all[i].left)
			if imag(right) == 0 || (imag(right)*imag(left) < 0) != test.opposite {
				t.Errorf("%s: at beat %v the props turn by %v and %v, want opposite %v", test.id, m.beat, imag(right), imag(left), test.opposite)
				break
			}
			r := out(m.right)
			if test.opposite {
				r = -cmplx.Conj(r)
			}
			if got, want := apart(out(m.left)/r), test.at(m.beat); math.Abs(got-want) > 1e-4 {
				t.Errorf("%s: at beat %v the props are %v° apart, want %v", test.id, m.beat, got, want)
				break
			}
		}
	}
}

// TestTwoHandsTangle: how often the line from hand to hand goes round in the
// wall plane. Split circles wrap the arms once a round; made of C-caps, by
// either switch, they do not (common practice).
func TestTwoHandsTangle(t *testing.T) {
	for _, test := range []struct {
		id   string
		want float64
	}{{"crossed-lines", 1}, {"two-ferries", 0}, {"two-bell-buoys", 0}, {"lock-gates", 0}, {"one-gig-two-oars", 0}, {"seesaw", 0}, {"leading-lights", 0}, {"gangway-and-bell", 0}} {
		p, all := together(t, test.id)
		if p.Lanes[0].Plane != engine.Wall || p.Lanes[1].Plane != engine.Wall {
			t.Errorf("%s: planes %v and %v, want both hands in the wall plane", test.id, p.Lanes[0].Plane, p.Lanes[1].Plane)
		}
		sum := 0.0
		for i, m := range all[1:] {
			sum += cmplx.Phase((m.left.Hand - m.right.Hand) / (all[i].left.Hand - all[i].right.Hand))
		}
		if got := sum / (2 * math.Pi); math.Abs(got-test.want) > 1e-9 {
			t.Errorf("%s: the arms wrap %v times, want %v", test.id, got, test.want)
		}
	}
	for _, l := range pattern(t, "paddle-steamer").Lanes {
		if side := map[engine.Side]float64{engine.Right: -1, engine.Left: 1}[l.Side]; l.Plane != engine.Wheel || l.Offset*side <= 0 {
			t.Errorf("paddle-steamer: plane %v at %v m, want a wheel plane on the hand's own side", l.Plane, l.Offset)
		}
	}
}

// TestTwoHandsKeepClear: the tethers stay a hand's breadth apart.
func TestTwoHandsKeepClear(t *testing.T) {
	const clear = 0.1 // m
	for _, b := range builtIn {
		if len(b.hands) != 2 {
			continue
		}
		p, all := together(t, b.id)
		r, l := p.Lanes[0], p.Lanes[1]
		near := math.Inf(1)
		for _, m := range all {
			from, to := room.Place(l, m.left.Hand), room.Place(l, m.left.Head)
			for k := range 25 {
				at := m.right.Hand + complex(float64(k)/24, 0)*(m.right.Head-m.right.Hand)
				near = min(near, toSegment(room.Place(r, at), from, to))
			}
		}
		if near < clear {
			t.Errorf("%s: the tethers come as near as %v m, want %v at least", b.id, near, clear)
		}
	}
}

// toSegment returns how far p is from the line between a and b.
func toSegment(p, a, b r3.Vec) float64 {
	d := r3.Sub(b, a)
	u := min(max(r3.Dot(r3.Sub(p, a), d)/r3.Norm2(d), 0), 1)
	return r3.Norm(r3.Sub(p, r3.Add(a, r3.Scale(u, d))))
}

// TestBellSwingsTwice: the pendulum beside the triquetra goes through its
// lowest place four times a round, twice to and twice fro, and its prop comes
// as high on one side as on the other.
func TestBellSwingsTwice(t *testing.T) {
	_, all := together(t, "gangway-and-bell")
	if beats := all[len(all)-1].beat; beats != 5 {
		t.Errorf("closes after %v beats, want 5", beats)
	}
	passes, lowest, highest := 0, 0.0, 0.0
	for i, m := range all[1:] {
		// From straight down, radians.
		before, now := cmplx.Phase(out(all[i].left)*1i), cmplx.Phase(out(m.left)*1i)
		if before*now < 0 || now == 0 {
			passes++
		}
		lowest, highest = min(lowest, now), max(highest, now)
	}
	if passes != 4 || math.Abs(highest-math.Pi/3) > 1e-6 || math.Abs(lowest+math.Pi/3) > 1e-6 {
		t.Errorf("the bell passes the bottom %d times between %v and %v, want 4 between ∓60°", passes, lowest, highest)
	}
}
