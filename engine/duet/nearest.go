package duet

import (
	"math"

	"whorlbench/engine"
)

// tolNearest (m): how far a least distance may be from the true one. A
// quarter of the micrometre that counts as no distance at all.
const tolNearest = engine.TolGap / 4

// ends says which distance is meant.
type ends uint8

const (
	handEnds ends = iota
	headEnds
	tetherEnds
)

// of returns the ends that are looked at.
func (e ends) of() []end {
	switch e {
	case handEnds:
		return []end{hand}
	case headEnds:
		return []end{head}
	}
	return []end{hand, head}
}

// A frame turns about the common normal of the hands' planes with one of their
// angles, which changes no distance, but may still what moves in it. Planes
// of two kinds have no such frame but the one at rest.
type frame uint8

const (
	noFrame frame = iota
	leftArm
	leftProp
	rightArm
	rightProp
	frames
)

// bounds say, for a stretch and as seen from each frame, how much the ways
// from end to end bend at most, m a beat².
type bounds struct {
	frames frame // how many there are to see from
	bend   [frames][2][2]float64
}

// bound reckons the bounds of a stretch for some of the ends.
func (p *pair) bound(s *stretch, of []end) (b bounds) {
	at := [2]engine.State{p.state(s, left, s.from), p.state(s, right, s.from)}
	b.frames = 1
	phases := [frames]phase{noFrame: still}
	if p.parallel {
		b.frames = frames
		for k, f := range [2]frame{leftArm, rightArm} {
			m := p.move(s, k)
			share := m.shareAt(s.from - s.at[k].start)
			phases[f], phases[f+1] = m.arm.in(share), m.prop.in(share)
		}
	}
	for _, i := range of {
		for _, j := range of {
			var l, r terms
			p.hold(&l, s, left, i, &at[left], 1)
			way := &l
			if !p.parallel {
				way = &r
			}
			p.hold(way, s, right, j, &at[right], -1)
			for f := range b.frames {
				b.bend[f][i][j] = l.bend(phases[f]) + r.bend(phases[f])
			}
		}
	}
	return b
}

// look is both hands at one moment of a stretch.
type look struct {
	end, rate [2][2]vec // by hand, by end
	turns     [frames]float64
	way       vec    // the shortest one, from right to left
	at        shares // of the left and right tether, from the hands, where it ends
	distance  float64
}

// look looks at a moment.
func (p *pair) look(s *stretch, e ends, beat float64) (k look) {
	at := [2]engine.State{p.state(s, left, beat), p.state(s, right, beat)}
	for h := range at {
		k.end[h][hand], k.rate[h][hand] = p.put(h, at[h].Hand, at[h].HandVel)
		k.end[h][head], k.rate[h][head] = p.put(h, at[h].Head, at[h].HeadVel)
	}
	k.turns = [frames]float64{0, at[left].ArmRate, at[left].PropRate, at[right].ArmRate, at[right].PropRate}
	switch e {
	case handEnds:
		k.way = k.end[left][hand].sub(k.end[right][hand])
	case headEnds:
		k.way, k.at = k.end[left][head].sub(k.end[right][head]), shares{1, 1}
	default:
		l, r := &k.end[left], &k.end[right]
		k.way, k.at = between(l[hand], l[head].sub(l[hand]), r[hand], r[head].sub(r[hand]))
	}
	k.distance = k.way.size()
	return k
}

// put returns where a place of a hand's plane lies, and how it moves. Planes
// of one kind are laid on the first two coordinates.
func (p *pair) put(h int, at, rate complex128) (place, moves vec) {
	lane := &p.tracks[h].Lane
	if p.parallel {
		return vec{real(at), imag(at), lane.Offset}, vec{real(rate), imag(rate), 0}
	}
	place.x, place.y, place.z = lane.InRoom(at)
	var none vec
	none.x, none.y, none.z = lane.InRoom(0)
	moves.x, moves.y, moves.z = lane.InRoom(rate)
	return place, moves.sub(none)
}

// moves returns the way from right end j to left end i, and how it changes as
// seen from a frame that turns at a rate.
func (k *look) moves(i, j end, turns float64) (way, rate vec) {
	way = k.end[left][i].sub(k.end[right][j])
	rate = k.rate[left][i].sub(k.rate[right][j])
	rate.x += float64(turns * way.y)
	rate.y -= float64(turns * way.x)
	return way, rate
}

// least returns a bound from below on the distance during the h beats about
// the moment, the best that any frame gives. Along any unit vector n no way
// from one hand's thing to the other's is shorter than the least of those
// from end to end, and those keep to their tangent within bend·(h/2)²/2.
func (k *look) least(of []end, b *bounds, h float64) float64 {
	if k.distance == 0 {
		return 0
	}
	n := k.way.times(1 / k.distance)
	lies := 1.0 // how much of n lies in the planes
	if b.frames > 1 {
		lies = math.Sqrt(float64(n.x*n.x) + float64(n.y*n.y))
	}
	best := 0.0
	for f := range b.frames {
		low := math.Inf(1)
		for _, i := range of {
			for _, j := range of {
				way, rate := k.moves(i, j, k.turns[f])
				low = min(low, n.dot(way)-float64(math.Abs(n.dot(rate))*h/2)-float64(lies*b.bend[f][i][j]*h*h/8))
			}
		}
		best = max(best, low)
	}
	return best
}

// interval is a part of a stretch that is still to be looked at.
type interval struct {
	from, to float64
	least    float64 // the distance is nowhere smaller, as far as is known
}

// search finds a least distance by branch and bound, in order of time, so
// that of equal ones the first is told.
type search struct {
	pair  *pair
	ends  ends
	until *float64
	out   *Nearest

	begun bool
	walk  walker
	now   stretch
	bound bounds
	stack []interval

	best  Nearest
	where stretch // of the best
	width float64 // of the interval whose middle the best is
	looks int
}

func (g *search) step() (done bool) {
	if !g.begun {
		g.begun, g.walk = true, g.pair.walk(*g.until)
		g.best.Distance = math.Inf(1)
	}
	if len(g.stack) == 0 {
		s, ok := g.walk.next()
		if !ok {
			g.end()
			return true
		}
		g.now, g.bound = s, g.pair.bound(&s, g.ends.of())
		g.look(s.from, s.length())
		g.look(s.to, s.length())
		g.stack = append(g.stack, interval{from: s.from, to: s.to})
		return false
	}
	x := g.stack[len(g.stack)-1]
	g.stack = g.stack[:len(g.stack)-1]
	if !g.nearer(x.least) {
		return false
	}
	if g.looks++; g.looks > mostLooks {
		g.best.AtMost = true
		g.end()
		return true
	}
	h := x.to - x.from
	m := middle(x.from, x.to)
	k := g.look(m, h)
	least := k.least(g.ends.of(), &g.bound, h)
	if g.nearer(least) && m > x.from && m < x.to {
		g.stack = append(g.stack, interval{m, x.to, least}, interval{x.from, m, least})
	}
	return false
}

// nearer reports whether a distance is less than the best by enough to matter.
// A best within a gap's tolerance is none that could be bettered.
func (g *search) nearer(distance float64) bool {
	return distance < g.best.Distance-tolNearest && g.best.Distance > engine.TolGap
}

// look looks at a moment and keeps it if it is nearer by more than the tolerance.
func (g *search) look(beat, h float64) look {
	k := g.pair.look(&g.now, g.ends, beat)
	if g.nearer(k.distance) {
		g.best = Nearest{Distance: k.distance, Beat: beat}
		g.where, g.width = g.now, h
	}
	return k
}

// end tells the best; where nothing was read, that is infinitely far.
func (g *search) end() {
	if math.IsInf(g.best.Distance, 1) {
		g.best.AtMost = true
	} else {
		g.polish()
	}
	*g.out = g.best
}

// polish goes down from the best to the bottom of its hollow, by golden
// section.
func (g *search) polish() {
	const golden = 0.6180339887498949
	at := func(beat float64) float64 { return g.pair.look(&g.where, g.ends, beat).distance }
	a, b := max(g.best.Beat-g.width, g.where.from), min(g.best.Beat+g.width, g.where.to)
	c, d := b-float64(golden*(b-a)), a+float64(golden*(b-a))
	fc, fd := at(c), at(d)
	for range 60 {
		if fc <= fd {
			b, d, fd = d, c, fc
			c = b - float64(golden*(b-a))
			fc = at(c)
		} else {
			a, c, fc = c, d, fd
			d = a + float64(golden*(b-a))
			fd = at(d)
		}
	}
	// A constant distance is not bettered by rounding.
	if better := min(fc, fd); better < g.best.Distance-distanceDust {
		g.best.Distance = better
		g.best.Beat = c
		if fd < fc {
			g.best.Beat = d
		}
	}
	if g.best.Distance < distanceDust {
		g.best.Distance = 0
	}
}

// distanceDust (m) is what rounding leaves of a distance.
const distanceDust = 1e-13
