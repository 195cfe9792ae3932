package tether

import "math"

// lead is the movement of the direction from head to hand that a pendulum is
// led through: n of unit length, its first and second derivative in time, and
// what the tether carries for each metre of its length, ρ/L (1/s²).
//
// The hand is at z + Ln, which is h*, so that it drives the pendulum with the
// acceleration z″ + Ln″; with ρn = z″ − g the pendulum that hangs from it, its
// head at −Ld from the hand, obeys
//
//	d″ = (ρ/L n + n″) across d − |d′|² d,
//
// of which d = n is a solution: the head goes where it is drawn. Hanging from
// a hand that stays, n is straight up, ρ = g, and this is the plain pendulum.
type lead struct {
	n, n1, n2 Vec
	rate      float64
}

// leading returns the lead of what the tether carries for each kilogram,
// F = z″ − g = ρn, from its first and second derivative in time; ok is false
// where nothing is carried.
func leading(length float64, f, f1, f2 Vec) (l lead, ok bool) {
	rho := f.norm()
	if rho == 0 {
		return l, false
	}
	l.n = f.scale(1 / rho)
	along := l.n.dot(f1)
	l.n1 = f1.across(l.n).scale(1 / rho)
	l.n2 = f2.across(l.n).sub(l.n1.scale(2 * along)).scale(1 / rho).sub(l.n.scale(l.n1.dot(l.n1)))
	l.rate = rho / length
	return l, true
}

// pendulum is the tether's direction from head to hand, how it changes (1/s),
// and the work done on it so far: half the square of its rate gained (1/s²).
type pendulum struct {
	d, v Vec
	work float64
}

// energy is half the square of the direction's rate (1/s²): the head's energy
// as the hand sees it, for each kilogram, over L².
func (p pendulum) energy() float64 { return float64(p.v.dot(p.v) / 2) }

// change is a pendulum's rate of change.
func (l *lead) change(p pendulum) pendulum {
	drive := l.n.scale(l.rate).add(l.n2)
	acc := drive.across(p.d).sub(p.d.scale(p.v.dot(p.v)))
	return pendulum{p.v, acc, drive.dot(p.v)}
}

func (p pendulum) plus(h float64, c pendulum) pendulum {
	return pendulum{p.d.add(c.d.scale(h)), p.v.add(c.v.scale(h)), p.work + float64(h*c.work)}
}

// step moves the pendulum on by h seconds, led from a over mid to b, with the
// classical method of Runge and Kutta of fourth order. What rounding has done
// to the length of d is taken out, as upside down it would grow.
func (p pendulum) step(h float64, a, mid, b *lead) pendulum {
	k1 := a.change(p)
	k2 := mid.change(p.plus(h/2, k1))
	k3 := mid.change(p.plus(h/2, k2))
	k4 := b.change(p.plus(h, k3))
	p = p.plus(h/6, k1).plus(h/3, k2).plus(h/3, k3).plus(h/6, k4)
	p.d = p.d.scale(1 / p.d.norm())
	p.v = p.v.across(p.d)
	return p
}

// wobble is how far a pendulum is off its lead: an angle with its direction as
// a vector square to n (radians), and how much too fast it turns, brought back
// to n (1/s). In one plane they are ψ − ψ₀ and ψ′ − ψ₀′.
type wobble struct{ angle, rate Vec }

// off returns the pendulum's wobble.
func (l *lead) off(p pendulum) wobble {
	c, s := l.n.dot(p.d), l.n.cross(p.d).norm()
	w := wobble{rate: rotation{p.d, l.n}.of(p.v).sub(l.n1)}
	if s > 0 {
		w.angle = p.d.across(l.n).scale(math.Atan2(s, c) / s)
	}
	return w
}

// with returns the pendulum that is off its lead by a wobble.
func (l *lead) with(w wobble) pendulum {
	angle := w.angle.norm()
	d := l.n
	if angle > 0 {
		sin, cos := math.Sincos(angle)
		d = l.n.scale(cos).add(w.angle.scale(sin / angle))
	}
	v := rotation{l.n, d}.of(l.n1.add(w.rate))
	return pendulum{d: d, v: v.across(d)}
}

// size is the wobble as an angle (radians): what it would come to with all its
// rate turned into angle, at a pendulum's rate ν (1/s).
func (w wobble) size(rate float64) float64 {
	return math.Sqrt(w.angle.dot(w.angle) + float64(w.rate.dot(w.rate)/(rate*rate)))
}

func (w wobble) scale(k float64) wobble { return wobble{w.angle.scale(k), w.rate.scale(k)} }

func (w wobble) less(x wobble) wobble { return wobble{w.angle.sub(x.angle), w.rate.sub(x.rate)} }

// turned carries the wobble over a leap of the direction.
func (w wobble) turned(s rotation) wobble { return wobble{s.of(w.angle), s.of(w.rate)} }
