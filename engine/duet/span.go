package duet

import (
	"math"
	"slices"

	"whorlbench/engine"
)

// Direction is how two turnings go together.
type Direction uint8

// The directions. NoDirection: hands that are not both on round paths. Still:
// one of the two does not turn.
const (
	NoDirection Direction = iota
	Same
	Opposite
	Still
)

// Timing is how two turning things stand to each other. With δ = ψ_L − ψ_R
// for the same direction and δ = 180° − ψ_L − ψ_R for opposite ones (one of
// them mirrored): within Band of 0 together, of 180° split, of ±90° quarter,
// else between.
type Timing uint8

// The timings. NoTiming: one of the two is still, or there is no direction.
const (
	NoTiming Timing = iota
	Together
	Quarter
	Split
	Between
)

// Band is how far δ may be from a timing and still be called so; Band itself
// included.
const Band engine.Degrees = 22.5

// Span is a time during which direction and timing stay. It ends where either
// changes, where δ jumps, or where a piece begins in which δ goes on at
// another rate.
type Span struct {
	From, To           float64 // beats
	Direction          Direction
	Timing             Timing
	DeltaFrom, DeltaTo engine.Degrees // (−180°, 180°]; 0 without a timing
}

// TimingOf returns the timing of a δ.
func TimingOf(delta engine.Degrees) Timing {
	const reach = Band + angleDust
	switch d := engine.Degrees(math.Abs(float64(delta.Wrap()))); {
	case d <= reach:
		return Together
	case d >= 180-reach:
		return Split
	case math.Abs(float64(d-90)) <= float64(reach):
		return Quarter
	}
	return Between
}

// turning is what spans are of.
type turning uint8

const (
	props turning = iota
	hands
)

// Spans that go on alike are one: δ continuous within angleDust, its rate
// within rateDust of itself.
const rateDust = 1e-9

// spanning finds the spans of props or hands, a stretch a step.
type spanning struct {
	pair  *pair
	of    turning
	out   *[]Span
	begun bool
	walk  walker
	rate  float64 // of δ at the end of the last span, radians a beat
	cuts  []float64
}

func (g *spanning) step() (done bool) {
	if !g.begun {
		g.begun, g.walk = true, g.pair.walk(g.pair.until)
	}
	s, ok := g.walk.next()
	if !ok {
		return true
	}
	from, end := s.from, g.reversals(&s)
	for _, to := range append(g.cuts, end) {
		if to = min(to, end); !g.steadySigns(&s, from, to) {
			return true
		}
		from = to
	}
	return end < s.to
}

// reversals finds the beats inside a stretch at which a pendulum turns back:
// where sin(prop turn · share of the stroke) passes 0. It returns how far all
// of them are known, as there may be more than are told.
func (g *spanning) reversals(s *stretch) (until float64) {
	g.cuts = g.cuts[:0]
	until = s.to
	if g.of == hands {
		return until
	}
	for k := range s.at {
		leg := g.pair.leg(s, k)
		m := g.pair.move(s, k)
		if leg.Piece.Swing == 0 || m.swings == 0 {
			continue
		}
		// Half swings since the stroke's beginning, at both ends.
		half := math.Abs(2 * m.swings)
		start := s.at[k].start
		first, last := float64(half*m.shareAt(s.from-start)), float64(half*m.shareAt(s.to-start))
		n := math.Floor(first) + 1
		for range MostSpans {
			if n >= last {
				break
			}
			g.cuts = append(g.cuts, start+(n/half-m.share0)/m.shareRate)
			n++
		}
		if n < last {
			until = min(until, g.cuts[len(g.cuts)-1])
		}
	}
	slices.Sort(g.cuts)
	return until
}

// rates returns how fast the two angles turn, radians a beat.
func (g *spanning) rates(l, r engine.State) (float64, float64) {
	if g.of == hands {
		return l.ArmRate, r.ArmRate
	}
	return l.PropRate, r.PropRate
}

func (g *spanning) direction(s *stretch, mid float64) Direction {
	if g.of == hands && !(g.pair.leg(s, left).Path().IsRound() && g.pair.leg(s, right).Path().IsRound()) {
		return NoDirection
	}
	l, r := g.rates(g.pair.state(s, left, mid), g.pair.state(s, right, mid))
	switch {
	case l == 0 || r == 0:
		return Still
	case (l > 0) == (r > 0):
		return Same
	}
	return Opposite
}

// steadySigns adds the spans of a part of a stretch in which no turning
// changes its sense. It reports false when there are enough.
func (g *spanning) steadySigns(s *stretch, from, to float64) bool {
	tiny := float64(borderDust * (1 + to))
	if to-from <= tiny {
		return true
	}
	d := delta{g: g, s: s, dir: g.direction(s, (from+to)/2)}
	if d.dir == Still || d.dir == NoDirection {
		return g.add(Span{From: from, To: to, Direction: d.dir}, 0, 0)
	}
	d.bend = g.bend(s)
	at := from
	v, w := d.at(from)
	// The edges of the bands are the odd multiples of Band.
	for at < to {
		end := max(d.leaves(at, to, tiny), at+tiny) // bands that fly past are not told
		if to-end <= tiny {
			end = to
		}
		mid, _ := d.at((at + end) / 2)
		v1, w1 := d.at(end)
		if end-at > tiny && !g.add(Span{
			From: at, To: end, Direction: d.dir, Timing: TimingOf(wrap(mid)),
			DeltaFrom: wrap(v), DeltaTo: wrap(v1),
		}, w, w1) {
			return false
		}
		at, v, w = end, v1, w1
	}
	return true
}

// bend returns a bound on how fast δ's rate changes, radians a beat².
func (g *spanning) bend(s *stretch) float64 {
	l, r := g.pair.move(s, left), g.pair.move(s, right)
	if g.of == hands {
		return l.arm.bend() + r.arm.bend()
	}
	return l.prop.bend() + r.prop.bend()
}

// add appends a span, or lengthens the last one by it; from and to are δ's
// rate at its ends.
func (g *spanning) add(s Span, from, to float64) bool {
	if n := len(*g.out); n > 0 {
		last := &(*g.out)[n-1]
		goesOn := math.Abs(float64((last.DeltaTo-s.DeltaFrom).Wrap())) <= angleDust &&
			math.Abs(g.rate-from) <= rateDust*(1+math.Abs(from))
		if last.Direction == s.Direction && last.Timing == s.Timing && goesOn {
			last.To, last.DeltaTo = s.To, s.DeltaTo
			g.rate = to
			return true
		}
		if n == MostSpans {
			return false
		}
	}
	*g.out = append(*g.out, s)
	g.rate = to
	return true
}

// delta is δ over a part of a stretch, in radians, not reduced.
type delta struct {
	g    *spanning
	s    *stretch
	dir  Direction
	bend float64
}

// at returns δ and its rate.
func (d *delta) at(beat float64) (value, rate float64) {
	l, r := d.g.pair.state(d.s, left, beat), d.g.pair.state(d.s, right, beat)
	a, b := l.Prop, r.Prop
	if d.g.of == hands {
		a, b = l.Arm, r.Arm
	}
	v, w := d.g.rates(l, r)
	if d.dir == Same {
		return a - b, v - w
	}
	return math.Pi - a - b, -v - w
}

// edgeStep is the angle between two edges of bands, of which the first is at
// half of it.
const edgeStep = math.Pi / 4

// band returns the number of the band in which δ lies.
func band(value float64) float64 { return math.Floor(value/edgeStep + 0.5) }

// leaves returns the first beat after `from` at which δ comes to an edge of
// its band, or to.
func (d *delta) leaves(from, to, tiny float64) float64 {
	v, w := d.at(from)
	if d.bend == 0 {
		if w == 0 {
			return to
		}
		k := band(v)
		edge := (k + 0.5) * edgeStep
		if w < 0 {
			edge = (k - 0.5) * edgeStep
		}
		at := from + (edge-v)/w
		if at-from <= tiny { // it starts on an edge
			at += edgeStep / math.Abs(w)
		}
		return min(at, to)
	}
	return d.search(from, to, tiny)
}

// search finds the first edge under a bend by halving: a part is done with
// when δ cannot come to an edge in it, or goes one way only and ends in the
// band in which it starts.
func (d *delta) search(from, to, tiny float64) float64 {
	inside := func(v float64) float64 { // distance to the nearest edge
		return math.Abs(v - float64((math.Floor(v/edgeStep)+0.5)*edgeStep))
	}
	at := from
	for at < to {
		h := to - at
		for {
			m := middle(at, at+h)
			v, w := d.at(m)
			reach := float64(math.Abs(w)*h/2) + float64(d.bend*h*h/8)
			if inside(v) > reach {
				break
			}
			if math.Abs(w) > float64(d.bend*h/2) { // one way only
				a, _ := d.at(at)
				b, _ := d.at(at + h)
				if at-from <= tiny { // the edge it may start on does not count
					a, _ = d.at(at + min(tiny, h/2))
				}
				if band(a) == band(b) {
					break
				}
				if cross := d.edge(at, at+h, a); cross-from > tiny {
					return cross
				}
			}
			if h <= tiny {
				break // it touches an edge and turns back
			}
			h /= 2
		}
		at += h
	}
	return to
}

// edge returns where δ, going one way from a to b, leaves the band that it
// has the value v in, by bisection.
func (d *delta) edge(a, b, v float64) float64 {
	k := band(v)
	for range 64 {
		m := middle(a, b)
		if m <= a || m >= b {
			break
		}
		if x, _ := d.at(m); band(x) == k {
			a = m
		} else {
			b = m
		}
	}
	return b
}
