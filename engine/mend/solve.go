package mend

import "math"

// leastJumps returns the pieces' shares of the round, in logarithms of beats,
// at which the sum of the squares of all jumps is least, from the times given;
// the round keeps its length.
//
// With y the logarithms, the jump of a row at piece i is
//
//	(T/T₀)·(next·e^{−y_j} − prev·e^{−y_i}),   T = Σ e^{y}, T₀ the round,
//
// which does not change when all times are scaled alike. The rows touch two
// pieces each, so a general minimiser would be slower than the textbook method
// for sums of squares, and far larger to load: gonum's makes the browser's
// program 0.6 MB larger, packed. This is Levenberg's and Marquardt's method
// (Marquardt, J. SIAM 11, 1963) with its linear systems solved by conjugate
// gradients (Hestenes and Stiefel, J. Res. NBS 49, 1952), which need nothing
// but the rows. The number of steps is bounded, not the time.
func leastJumps(list []row, beats []float64) []float64 {
	const (
		steps   = 60
		enough  = 1e-13 // of the sum of squares: less is rounding
		largest = 1e12  // damping at which nothing moves any more
	)
	p := newProblem(list, beats)
	y := make([]float64, len(beats))
	for i, b := range beats {
		y[i] = math.Log(b)
	}
	cost := p.at(y)
	damp := 1e-3
	next := make([]float64, len(y))
	for range steps {
		p.at(y)
		step := p.step(damp * p.scale())
		for i := range y {
			next[i] = y[i] + step[i]
		}
		c := p.at(next)
		if c < cost {
			done := cost-c <= enough*cost
			copy(y, next)
			cost, damp = c, damp/10
			if done {
				break
			}
			continue
		}
		if damp *= 8; damp > largest {
			break
		}
	}
	p.at(y)
	for i := range y {
		y[i] = p.e[i] * p.round / p.sum
	}
	return y
}

// problem holds the rows at one point y.
type problem struct {
	list       []row
	round      float64   // T₀
	e          []float64 // e^{y}
	sum        float64   // T
	r          []float64 // jumps before the factor T/T₀
	g          []float64 // ∂ ln T/∂y
	dx, res, q []float64
}

func newProblem(list []row, beats []float64) *problem {
	n := len(beats)
	p := &problem{list: list, e: make([]float64, n), g: make([]float64, n), r: make([]float64, len(list))}
	p.dx, p.res, p.q = make([]float64, n), make([]float64, n), make([]float64, n)
	for _, b := range beats {
		p.round += b
	}
	return p
}

// at moves to y and returns the sum of squares.
func (p *problem) at(y []float64) float64 {
	p.sum = 0
	for i, v := range y {
		p.e[i] = math.Exp(v)
		p.sum += p.e[i]
	}
	for i := range y {
		p.g[i] = p.e[i] / p.sum
	}
	cost := 0.0
	for k, x := range p.list {
		p.r[k] = x.across(p.e[x.seam], p.e[p.after(x)])
		cost += float64(p.r[k] * p.r[k])
	}
	s := p.sum / p.round
	return cost * s * s
}

func (p *problem) after(x row) int { return (x.seam + 1) % len(p.e) }

// slopes returns a row's derivatives by the logarithms of the two times. The
// factor T/T₀ is left out here and in all that follows: it scales the rows
// alike, and the steps not at all.
func (p *problem) slopes(x row) (prev, next float64) {
	return x.prev / p.e[x.seam], -x.next / p.e[p.after(x)]
}

// normal sets out = JᵀJ·v + damp·v.
func (p *problem) normal(v, out []float64, damp float64) {
	along := 0.0
	for i := range v {
		along += float64(p.g[i] * v[i])
		out[i] = float64(damp * v[i])
	}
	rest := 0.0
	for k, x := range p.list {
		a, b := p.slopes(x)
		j := p.after(x)
		u := float64(a*v[x.seam]) + float64(b*v[j]) + float64(p.r[k]*along)
		out[x.seam] += float64(a * u)
		out[j] += float64(b * u)
		rest += float64(p.r[k] * u)
	}
	for i := range out {
		out[i] += float64(p.g[i] * rest)
	}
}

// scale returns the mean of JᵀJ's diagonal, nearly: what damping is measured by.
func (p *problem) scale() float64 {
	sum := 0.0
	for _, x := range p.list {
		a, b := p.slopes(x)
		sum += float64(a*a) + float64(b*b)
	}
	return sum / float64(len(p.e))
}

// step solves (JᵀJ + damp)·dx = −Jᵀr.
func (p *problem) step(damp float64) []float64 {
	n := len(p.e)
	total := 0.0
	for i := range n {
		p.dx[i], p.res[i] = 0, 0
	}
	for k, x := range p.list {
		a, b := p.slopes(x)
		p.res[x.seam] -= float64(a * p.r[k])
		p.res[p.after(x)] -= float64(b * p.r[k])
		total += float64(p.r[k] * p.r[k])
	}
	size := 0.0
	dir := make([]float64, n)
	for i := range n {
		p.res[i] -= float64(p.g[i] * total)
		dir[i] = p.res[i]
		size += float64(p.res[i] * p.res[i])
	}
	first := size
	for range 2 * n {
		if size <= 1e-28*first || size == 0 {
			break
		}
		p.normal(dir, p.q, damp)
		bend := 0.0
		for i := range n {
			bend += float64(dir[i] * p.q[i])
		}
		if bend <= 0 {
			break
		}
		a := size / bend
		was := size
		size = 0
		for i := range n {
			p.dx[i] += float64(a * dir[i])
			p.res[i] -= float64(a * p.q[i])
			size += float64(p.res[i] * p.res[i])
		}
		for i := range n {
			dir[i] = p.res[i] + float64(size/was*dir[i])
		}
	}
	return p.dx
}
