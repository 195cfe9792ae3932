package duet

import (
	"math"

	"whorlbench/engine"
)

// touching finds when the tethers touch: when they are nearer than
// engine.TolMeet. In one plane that is as long as they cross.
type touching struct {
	pair *pair
	near *Nearest
	out  *[]Crossing

	begun bool
	walk  walker
	now   stretch
	bound bounds
	stack []interval
	looks int
}

// grazing (m): tethers that, as ends move, touch for less than this and part
// again are not said to touch.
const grazing = engine.TolMeet / 2

func (g *touching) step() (done bool) {
	p := g.pair
	if !g.begun {
		if g.near.Distance >= engine.TolMeet {
			return true
		}
		g.begun, g.walk = true, p.walk(p.until)
	}
	if len(g.stack) == 0 {
		s, ok := g.walk.next()
		if !ok {
			return true
		}
		g.now, g.bound = s, p.bound(&s, tetherEnds.of())
		g.stack = append(g.stack, interval{from: s.from, to: s.to})
		return false
	}
	x := g.stack[len(g.stack)-1]
	g.stack = g.stack[:len(g.stack)-1]
	if g.looks++; g.looks > mostTouchLooks {
		return true
	}
	h := x.to - x.from
	m := middle(x.from, x.to)
	k := p.look(&g.now, tetherEnds, m)
	if k.least(tetherEnds.of(), &g.bound, h) >= clear {
		return false
	}
	slips := g.slips(&k, h)
	touch := k.distance < engine.TolMeet
	switch {
	case touch && (k.deep(p) > slips || k.distance+k.reach(&g.bound, h) < engine.TolMeet):
		return g.touch(x)
	case slips < grazing || m <= x.from || m >= x.to:
		return g.border(x)
	}
	g.stack = append(g.stack, interval{from: m, to: x.to}, interval{from: x.from, to: m})
	return false
}

// border adds the part of a short interval in which the tethers touch: all,
// none, or up to or from where they come to touch.
func (g *touching) border(x interval) (done bool) {
	touch := func(beat float64) bool { return g.pair.look(&g.now, tetherEnds, beat).distance < engine.TolMeet }
	before, after := touch(x.from), touch(x.to)
	if before == after {
		return before && g.touch(x)
	}
	a, b := x.from, x.to
	for b-a > borderDust*(1+b) {
		m := middle(a, b)
		if m <= a || m >= b {
			break
		}
		if touch(m) == before {
			a = m
		} else {
			b = m
		}
	}
	if before {
		x.to = a
	} else {
		x.from = b
	}
	return g.touch(x)
}

// touch adds an interval, to the last crossing if that goes on. It reports
// true when there are enough.
func (g *touching) touch(x interval) (done bool) {
	all := *g.out
	n := len(all)
	if n > 0 && x.from-all[n-1].To <= borderDust*(1+x.from) {
		all[n-1].To = x.to
		return false
	}
	if n == MostCrossings {
		return true
	}
	*g.out = append(all, Crossing{x.from, x.to})
	return false
}

// reach returns how much longer the shortest way may grow within half of h
// beats either way: no more than the way between the same places of both
// tethers does, as seen from the frame in which that moves least.
func (k *look) reach(b *bounds, h float64) float64 {
	l := [2]float64{hand: 1 - k.at.first, head: k.at.first}
	r := [2]float64{hand: 1 - k.at.second, head: k.at.second}
	least := math.Inf(1)
	for f := range b.frames {
		var rate vec
		bend := 0.0
		for _, i := range tetherEnds.of() {
			for _, j := range tetherEnds.of() {
				part := l[i] * r[j]
				_, v := k.moves(i, j, k.turns[f])
				rate = rate.add(v.times(part))
				bend += float64(part * b.bend[f][i][j])
			}
		}
		least = min(least, float64(rate.size()*h/2)+float64(bend*h*h/8))
	}
	return least
}

// deep returns how far (m), in one plane, the nearest end of a tether is from
// the other's line while the two cross; 0 if they do not.
func (k *look) deep(p *pair) float64 {
	if !p.parallel || math.Abs(k.end[left][hand].z-k.end[right][hand].z) >= engine.TolMeet {
		return 0
	}
	least := math.Inf(1)
	for h := range 2 {
		a, b := k.end[h][hand], k.end[h][head]
		along := b.sub(a)
		side := func(q vec) float64 {
			w := q.sub(a)
			return (float64(along.x*w.y) - float64(along.y*w.x)) / along.size()
		}
		c, d := side(k.end[1-h][hand]), side(k.end[1-h][head])
		if float64(c*d) >= 0 {
			return 0
		}
		least = min(least, math.Abs(c), math.Abs(d))
	}
	return least
}

// slips returns a bound on how far an end may move off the other's line
// within half of h beats: an end's own speed, and the line's, which turns.
func (g *touching) slips(k *look, h float64) float64 {
	p := g.pair
	moves, turns, far := 0.0, 0.0, k.end[left][hand].sub(k.end[right][hand]).size()
	for i := range 2 {
		m, leg := p.move(&g.now, i), p.leg(&g.now, i)
		path := leg.Path()
		moves += float64(max(path.A, path.B) * m.arm.fastest())
		turns += m.prop.fastest()
		far += leg.Tether()
	}
	far += float64(moves * h / 2)
	return float64((moves + float64(turns*far)) * h / 2)
}
