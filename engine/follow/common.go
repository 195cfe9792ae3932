package follow

import (
	"math"
	"math/cmplx"
	"slices"

	"whorlbench/engine"
)

// axes returns a path's semi-axes along and across its frame, with the frame's
// direction; a stroke lies along it however it was written.
func axes(p engine.Path) (a, b float64, frame complex128) {
	tilt := p.Tilt
	a, b = p.A, p.B
	if a == 0 {
		a, b, tilt = b, 0, tilt+90
	}
	return a, b, cmplx.Rect(1, tilt.Radians())
}

// armsAt returns the arm angles (radians) at which the hand is at a place: none
// off the path, two inside a stroke. Within a gap's tolerance the end of a
// stroke is the end, as the angle changes fast there.
func armsAt(p engine.Path, hand complex128) []float64 {
	a, b, frame := axes(p)
	w := engine.Product(hand-p.Centre, cmplx.Conj(frame))
	x, y := real(w), imag(w)
	tilt := cmplx.Phase(frame)
	if b == 0 {
		switch {
		case math.Abs(y) > engine.TolGap || math.Abs(x) > a+engine.TolGap:
			return nil
		case x >= a-engine.TolGap:
			return []float64{tilt}
		case x <= engine.TolGap-a:
			return []float64{tilt + math.Pi}
		}
		theta := math.Acos(x / a)
		return []float64{tilt + theta, tilt - theta}
	}
	theta := math.Atan2(y/b, x/a)
	sin, cos := math.Sincos(theta)
	if math.Hypot(x-float64(a*cos), y-float64(b*sin)) > engine.TolGap {
		return nil
	}
	return []float64{tilt + theta}
}

// common returns the places that two different paths share, other than strokes
// in one line: at most four.
func common(p, q engine.Path) []complex128 {
	// A stroke is the easier one to be on, then a circle.
	if p.IsLine() && !q.IsLine() || p.IsRound() && !q.IsRound() && !q.IsLine() {
		p, q = q, p
	}
	a, b, frame := axes(p)
	at := func(theta float64) complex128 {
		sin, cos := math.Sincos(theta)
		return p.Centre + engine.Product(complex(float64(a*cos), float64(b*sin)), frame)
	}
	var thetas []float64
	c, d, other := axes(q)
	inQ := func(theta float64) complex128 { return engine.Product(at(theta)-q.Centre, cmplx.Conj(other)) }
	switch {
	case q.IsLine():
		thetas = firstHarmonic(func(theta float64) float64 { return imag(inQ(theta)) }, engine.TolPath)
	case p.IsRound() && q.IsRound():
		// d² + a² + 2ad·cos(θ − φ) = c²; to touch within a tolerance is to miss
		// by 2c times as much.
		thetas = firstHarmonic(func(theta float64) float64 {
			w := inQ(theta)
			return float64(real(w)*real(w)) + float64(imag(w)*imag(w)) - float64(c*c)
		}, 2*c*engine.TolPath)
	default:
		thetas = secondHarmonic(func(theta float64) float64 {
			w := inQ(theta)
			x, y := real(w)/c, imag(w)/d
			return float64(x*x) + float64(y*y) - 1
		})
	}
	var places []complex128
	for _, theta := range thetas {
		z := at(theta)
		near := func(w complex128) bool { return cmplx.Abs(z-w) < engine.TolPath }
		if len(armsAt(q, z)) > 0 && !slices.ContainsFunc(places, near) {
			places = append(places, z)
		}
	}
	return places
}

// harmonics returns the Fourier coefficients f₀, f₁, f₂ of a real trigonometric
// polynomial of degree 2 at most.
func harmonics(f func(float64) float64) (f0 float64, f1, f2 complex128) {
	const n = 8
	for k := range n {
		theta := turn * float64(k) / n
		y := float64(f(theta) / n)
		f0 += y
		for h, dst := range []*complex128{&f1, &f2} {
			sin, cos := math.Sincos(float64(h+1) * theta)
			*dst += complex(float64(y*cos), -float64(y*sin))
		}
	}
	return f0, f1, f2
}

// firstHarmonic returns the zeros of f₀ + 2|f₁|cos(θ + arg f₁): two, or one
// where they touch within tol.
func firstHarmonic(f func(float64) float64, tol float64) []float64 {
	f0, f1, _ := harmonics(f)
	size, phase := 2*cmplx.Abs(f1), -cmplx.Phase(f1)
	switch {
	case math.Abs(f0) > size+tol:
		return nil
	case math.Abs(f0) >= size-tol && f0 < 0:
		return []float64{phase}
	case math.Abs(f0) >= size-tol:
		return []float64{phase + math.Pi}
	}
	off := math.Acos(-f0 / size)
	return []float64{phase + off, phase - off}
}

const (
	// offCircle is how far from the unit circle a root may lie that stands for
	// an angle: paths that touch give double ones, known to the root of 1e-16.
	offCircle = 1e-4
	// oneRoot (radians): roots nearer than this are a double one, whose two
	// halves are wrong by as much either way.
	oneRoot = 1e-4
	// rootSteps is enough for four roots from anywhere, double ones too.
	rootSteps = 200
)

// secondHarmonic returns the zeros of a trigonometric polynomial of degree 2:
// with z = e^{iθ} the roots on the unit circle of f₂z⁴ + f₁z³ + f₀z² + f̄₁z + f̄₂,
// all four found at once (Durand and Kerner).
func secondHarmonic(f func(float64) float64) []float64 {
	f0, f1, f2 := harmonics(f)
	poly := func(z complex128) complex128 {
		v := f2
		for _, c := range [...]complex128{f1, complex(f0, 0), cmplx.Conj(f1), cmplx.Conj(f2)} {
			v = engine.Product(v, z) + c
		}
		return v
	}
	if cmplx.Abs(f2) < 1e-12*(math.Abs(f0)+cmplx.Abs(f1)) {
		return firstHarmonic(f, engine.TolPath)
	}
	z := [4]complex128{1, 0.4 + 0.9i, -0.65 + 0.72i, -0.908 + 0.297i} // powers of a number that is no root of anything
	for range rootSteps {
		for k := range z {
			below := f2
			for j := range z {
				if j != k {
					below = engine.Product(below, z[k]-z[j])
				}
			}
			if below != 0 {
				z[k] -= poly(z[k]) / below
			}
		}
	}
	var thetas []float64
	for _, root := range z {
		if math.Abs(cmplx.Abs(root)-1) > offCircle {
			continue
		}
		theta := cmplx.Phase(root)
		k := slices.IndexFunc(thetas, func(x float64) bool { return math.Abs(math.Remainder(x-theta, turn)) < oneRoot })
		if k < 0 {
			thetas = append(thetas, theta)
			continue
		}
		thetas[k] += float64(math.Remainder(theta-thetas[k], turn) / 2)
	}
	return thetas
}

// overlap reports whether two strokes lie in one line and share more than a
// place.
func overlap(p, q engine.Path) bool {
	a, _, frame := axes(p)
	b, _, other := axes(q)
	w := engine.Product(q.Centre-p.Centre, cmplx.Conj(frame))
	skew := imag(engine.Product(other, cmplx.Conj(frame)))
	return math.Abs(skew)*b < engine.TolPath && math.Abs(imag(w)) < engine.TolPath &&
		math.Abs(real(w)) < a+b-engine.TolPath
}

// inLine finds the meetings of two strokes that lie in one line and are not one:
// there the props agree where a function of the place passes a whole number,
// which is looked for between samples and halved down to.
func (f *finder) inLine() {
	const perTurn = 64
	a, b := &f.a, &f.b
	ra, _, frame := axes(a.path)
	rb, _, other := axes(b.path)
	toB := real(engine.Product(b.path.Centre-a.path.Centre, cmplx.Conj(frame)))
	flip := real(engine.Product(other, cmplx.Conj(frame))) // 1 or −1: which end is +
	lo, hi := max(-ra, toB-rb), min(ra, toB+rb)
	tiltA, tiltB := cmplx.Phase(frame), cmplx.Phase(other)
	angle := func(x float64) float64 { return math.Acos(min(max(x, -1), 1)) }
	q := lcm(a.q, b.q)

	// Places dense where either arm is near an end, as the angles run fast there.
	n := perTurn * int(1+max(a.p, -a.p)*(q/a.q)+max(b.p, -b.p)*(q/b.q))
	xs := []float64{lo, hi}
	for k := range n {
		c := math.Cos(math.Pi * float64(k) / float64(n))
		for _, x := range []float64{float64(ra * c), toB + float64(rb*c)} {
			if x > lo && x < hi {
				xs = append(xs, x)
			}
		}
	}
	slices.Sort(xs)
	for _, s := range []float64{1, -1} {
		for _, r := range []float64{1, -1} {
			arms := func(x float64) (armA, armB float64) {
				return tiltA + float64(s*angle(x/ra)), tiltB + float64(r*angle(float64(flip*(x-toB))/rb))
			}
			turns := func(x float64) float64 {
				armA, armB := arms(x)
				return (b.prop(armB) - a.prop(armA)) * float64(q) / turn
			}
			f.ask(arms(lo))
			f.ask(arms(hi))
			if f.stretch = a.p == 0 && b.p == 0; f.stretch {
				continue
			}
			for k := 1; k < len(xs); k++ {
				x, y := xs[k-1], xs[k]
				fx, fy := turns(x), turns(y)
				for w := math.Ceil(min(fx, fy)); w <= max(fx, fy); w++ {
					f.ask(arms(halve(turns, w, x, y, fx)))
				}
				f.ask(arms(y))
			}
		}
	}
}

// halve returns where f, which is fx at x, passes w between x and y.
func halve(f func(float64) float64, w, x, y, fx float64) float64 {
	for range 60 {
		mid := (x + y) / 2
		if (f(mid) < w) == (fx < w) {
			x = mid
		} else {
			y = mid
		}
	}
	return (x + y) / 2
}
