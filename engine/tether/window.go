package tether

import "math"

// Window is the range of tempos, in beats a minute, at which the tether is
// nowhere slack. It is not clipped to what a file allows.
type Window struct {
	OK   bool    // there is such a tempo
	From float64 // the lowest; 0 where any slowness will do
	Open bool    // any higher tempo will do
	To   float64 // the highest, unless Open
}

// window is the same while it is being found, in (beats a second)². At each
// moment pull = KA + B ≥ 0 is a bound on the squared tempo K, from below where
// A > 0 and from above where A < 0. The least pull over all moments is
// concave in K, a least of straight lines, so that either end of the window is
// its root, to which Newton's steps along the line of the least moment lead
// from outside, faster and faster and never past it (W. Dinkelbach, "On
// nonlinear fractional programming", Management Science 13, 1967).
type window struct {
	low, high float64
	none      bool
}

func newWindow() window { return window{high: math.Inf(1)} }

const (
	// reckoned (share of the parts it is the sum of): a pull is known to this.
	reckoned = 1e-12
	// mostMotion (multiples of the head's weight): a tether that would be taut
	// only where the movement pulls harder than this never is. It keeps out
	// what becomes taut only without end, such as a head that stands still above
	// the hand for a moment.
	mostMotion = 1e4
	// leastTempo (beats a minute): nor is one that would be taut only below it.
	leastTempo = 1e-3
	// mostSteps is far more than such steps ever take.
	mostSteps = 100
)

// narrow takes a stretch in a round in, whose movement has the given size.
func (w *window) narrow(s *stretch, g *gauge, by complex128, size float64) {
	if w.none {
		return
	}
	w.raise(s, g, by, size)
	if !w.none {
		w.lower(s, g, by, size)
	}
	if w.high < w.low-float64(reckoned*(1+w.low)) || 60*math.Sqrt(w.high) < leastTempo {
		w.none = true
	}
}

// worst returns the moment of least pull at a squared tempo; ok is false
// where none is below nothing.
func (w *window) worst(s *stretch, g *gauge, by complex128, square, size float64) (m moment, ok bool) {
	u, _, ok := s.top(func(m *moment) float64 { return -g.pull(m, square) }, by, reckoned*(1+float64(square*size)))
	if ok {
		m = s.at(u, by)
	}
	return m, ok
}

func (w *window) raise(s *stretch, g *gauge, by complex128, size float64) {
	for range mostSteps {
		m, ok := w.worst(s, g, by, w.low, size)
		if !ok {
			return
		}
		a, b := g.byMotion(&m), g.byWeight(&m)
		if a <= reckoned*size { // no tempo helps here
			w.none = true
			return
		}
		next := -b / a
		if next <= w.low { // as near as numbers are
			return
		}
		w.low = next
		if next*size > mostMotion {
			w.none = true
			return
		}
	}
}

func (w *window) lower(s *stretch, g *gauge, by complex128, size float64) {
	u, v, ok := s.top(func(m *moment) float64 { return -g.byMotion(m) }, by, reckoned*size)
	if !ok {
		return
	}
	m := s.at(u, by)
	w.high = min(w.high, max(g.byWeight(&m), 0)/v)
	for range mostSteps {
		m, ok := w.worst(s, g, by, w.high, size)
		if !ok {
			return
		}
		a, b := g.byMotion(&m), g.byWeight(&m)
		if a >= -reckoned*size { // it would have to be faster
			w.none = true
			return
		}
		next := max(b, 0) / -a
		if next >= w.high {
			return
		}
		w.high = next
	}
}

// perMinute returns the window in beats a minute.
func (w *window) perMinute() Window {
	if w.none {
		return Window{}
	}
	out := Window{OK: true, From: 60 * math.Sqrt(w.low), Open: math.IsInf(w.high, 1)}
	if !out.Open {
		out.To = 60 * math.Sqrt(w.high)
	}
	return out
}
