package tether

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mathext"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// hanging is the lead of a pendulum whose hand stays.
func hanging(t *testing.T, length float64) lead {
	t.Helper()
	l, ok := leading(length, Vec{Y: 9.80665}, Vec{}, Vec{})
	if !ok {
		t.Fatal("a hanging head leads nothing")
	}
	return l
}

// let returns the pendulum that is let go at an angle from hanging, in radians.
func let(l lead, angle, rate float64) pendulum {
	return l.with(wobble{Vec{X: -angle}, Vec{X: -rate}})
}

// angleOf is the way back: the pendulum's angle from hanging.
func angleOf(l lead, p pendulum) float64 { return -l.off(p).angle.X }

// TestPendulumPeriod: a pendulum let go at α takes 4√(L/g)·K(sin²(α/2)); NIST
// Digital Library of Mathematical Functions §22.19. It passes hanging after a
// quarter of that.
func TestPendulumPeriod(t *testing.T) {
	const g = 9.80665
	for _, length := range []float64{0.3, 0.6, 2} {
		for _, degrees := range []float64{1, 30, 90, 150, 179} {
			alpha := degrees * math.Pi / 180
			period := 4 * math.Sqrt(length/g) * mathext.CompleteK(math.Pow(math.Sin(alpha/2), 2))
			l := hanging(t, length)
			const steps = 4000
			p := let(l, alpha, 0)
			drift := 0.0
			for k := 1; k <= 4*steps; k++ {
				p = p.step(period/(4*steps), &l, &l, &l)
				drift = math.Max(drift, math.Abs(p.energy()-p.work))
				if k%steps != 0 {
					continue
				}
				want := []float64{alpha, 0, -alpha, 0}[k/steps%4]
				if got := angleOf(l, p); math.Abs(got-want) > 1e-8*(1+alpha) {
					t.Errorf("L = %v, %v°: after %d quarters at %v rad, want %v", length, degrees, k/steps, got, want)
				}
			}
			// Energy per kilogram over L²: the fall from α to hanging.
			if fall := g / length * (1 - math.Cos(alpha)); drift > 1e-10*fall {
				t.Errorf("L = %v, %v°: energy and work differ by %v of %v", length, degrees, drift, fall)
			}
		}
	}
}

// TestFreeHead: a head that passes the top at √(gL), where the tether just
// carries nothing, keeps its energy and passes the bottom with a pull six weights
// greater. Halliday, Resnick & Walker, Fundamentals of Physics, on vertical
// circles; from memory, the speed at the bottom confirmed by v² = 5gL.
func TestFreeHead(t *testing.T) {
	const g = 9.80665
	for _, length := range []float64{0.3, 0.6, 2} {
		l := hanging(t, length)
		// Pull over weight: what turns the head round, and the weight's part along it.
		pull := func(p pendulum) float64 { return length*p.v.dot(p.v)/g + p.d.Y }
		const h = 1e-4
		p := pendulum{d: Vec{Y: -1}, v: Vec{X: math.Sqrt(g / length)}}
		least, most, fastest := pull(p), pull(p), 0.0
		for range 40000 {
			p = p.step(h, &l, &l, &l)
			least, most = math.Min(least, pull(p)), math.Max(most, pull(p))
			fastest = math.Max(fastest, length*p.v.norm())
		}
		if math.Abs(least) > 1e-6 || math.Abs(most-6) > 1e-6 {
			t.Errorf("L = %v: pull from %v to %v weights, want from 0 to 6", length, least, most)
		}
		if want := math.Sqrt(5 * g * length); math.Abs(fastest-want) > 1e-6 {
			t.Errorf("L = %v: passes the bottom at %v m/s, want %v", length, fastest, want)
		}
	}
}

// TestConicalPendulum: a head that goes round level under a hand that stays, at
// the angle θ, does so at √(g/(L cos θ)); any mechanics text, from memory,
// confirmed by the forces: the pull's level part is all that turns the head.
// The wobble is then no small one, and in all three dimensions.
func TestConicalPendulum(t *testing.T) {
	const g, length = 9.80665, 0.6
	for _, theta := range []float64{0.1, 0.7, 1.3} {
		w := math.Sqrt(g / (length * math.Cos(theta)))
		if a, b := math.Tan(theta)*g, w*w*length*math.Sin(theta); math.Abs(a-b) > 1e-12*a {
			t.Fatalf("%v m/s² across, %v wanted", a, b)
		}
		l := hanging(t, length)
		at := func(time float64) Vec {
			s, c := math.Sincos(w * time)
			return Vec{math.Sin(theta) * c, math.Cos(theta), math.Sin(theta) * s}
		}
		p := pendulum{d: at(0), v: Vec{N: math.Sin(theta) * w}}
		const h = 1e-3
		for k := 1; k <= 3000; k++ {
			p = p.step(h, &l, &l, &l)
			if d := p.d.sub(at(h * float64(k))).norm(); d > 1e-7 {
				t.Fatalf("θ = %v: %v off its circle after %v s", theta, d, h*float64(k))
			}
		}
	}
}

// TestOff: a wobble that a pendulum is given is the one that is read off it.
func TestOff(t *testing.T) {
	r := chance.New(t)
	vec := func() Vec { return Vec{r.NormFloat64(), r.NormFloat64(), r.NormFloat64()} }
	for range 1000 {
		l, _ := leading(0.3+r.Float64(), vec(), vec(), vec())
		w := wobble{vec().across(l.n), vec().across(l.n)}
		w.angle = w.angle.scale(3 * r.Float64() / w.angle.norm())
		p := l.with(w)
		if math.Abs(p.d.norm()-1) > 1e-12 || math.Abs(p.d.dot(p.v)) > 1e-11*(1+p.v.norm()) {
			t.Fatalf("with(%+v) = %+v, want a unit direction and a rate across it", w, p)
		}
		got := l.off(p)
		if d := got.angle.sub(w.angle).norm() + got.rate.sub(w.rate).norm(); d > 1e-8*(1+l.n1.norm()) {
			t.Fatalf("off(with(%+v)) = %+v", w, got)
		}
		if d := (rotation{l.n, p.d}).of(l.n).sub(p.d).norm(); d > 1e-12 {
			t.Fatalf("the rotation takes n %v past d", d)
		}
	}
}

// TestLeading: direction and rates are those of the unit vector along F, by
// differences of fourth order.
func TestLeading(t *testing.T) {
	r := chance.New(t)
	vec := func() Vec { return Vec{r.NormFloat64(), r.NormFloat64(), r.NormFloat64()} }
	for range 200 {
		f, f1, f2 := vec().add(Vec{Y: 5}), vec(), vec()
		n := func(x float64) Vec {
			v := f.add(f1.scale(x)).add(f2.scale(x * x / 2))
			return v.scale(1 / v.norm())
		}
		const h = 1e-2
		near, far := n(h).sub(n(-h)), n(2*h).sub(n(-2*h))
		n1 := near.scale(8).sub(far).scale(1 / (12 * h))
		near, far = n(h).add(n(-h)), n(2*h).add(n(-2*h))
		n2 := near.scale(16).sub(far).sub(n(0).scale(30)).scale(1 / (12 * h * h))
		l, ok := leading(2, f, f1, f2)
		if !ok || l.n.sub(n(0)).norm() > 1e-12 || l.n1.sub(n1).norm() > 1e-5 || l.n2.sub(n2).norm() > 1e-5 || math.Abs(l.rate-f.norm()/2) > 1e-12 {
			t.Fatalf("leading(%v, %v, %v) = %+v, want %v, %v, %v", f, f1, f2, l, n(0), n1, n2)
		}
	}
	if _, ok := leading(1, Vec{}, Vec{X: 1}, Vec{}); ok {
		t.Error("nothing carried leads")
	}
}

// TestGravity: standard gravity is 9.80665 m/s², exactly; 3rd CGPM (1901),
// resolution 2. In the floor plane it pulls along the normal.
func TestGravity(t *testing.T) {
	for plane, want := range map[engine.Plane]Vec{
		engine.Wall: {Y: -9.80665}, engine.Wheel: {Y: -9.80665}, engine.Floor: {N: -9.80665},
	} {
		if got := gravity(engine.Lane{Plane: plane}); got != want {
			t.Errorf("plane %d: gravity %v, want %v", plane, got, want)
		}
	}
}
