package duet

// tracePoints is how many places, evenly in time, a small drawing of one hand
// about the other has; where there are no more stretches than that, each one
// begins with a place of its own, so that corners are sharp.
const tracePoints = 1024

// tracing draws the left hand less the right one.
type tracing struct {
	pair  *pair
	out   *[]complex128
	begun bool
	walk  walker
	sharp bool
	next  int // of the even places
	last  complex128
}

func (g *tracing) step() (done bool) {
	p := g.pair
	if !p.parallel {
		return true
	}
	if !g.begun {
		g.begun, g.walk = true, p.walk(p.pathUntil)
		g.sharp = g.few()
	}
	s, ok := g.walk.next()
	if !ok {
		if len(*g.out) > 0 {
			*g.out = append(*g.out, g.last)
		}
		return true
	}
	if g.sharp {
		*g.out = append(*g.out, p.gap(&s, s.from))
	}
	for ; g.next < tracePoints; g.next++ {
		beat := p.pathUntil * float64(g.next) / tracePoints
		if beat >= s.to {
			break
		}
		if g.sharp && beat <= s.from {
			continue
		}
		*g.out = append(*g.out, p.gap(&s, max(beat, s.from)))
	}
	g.last = p.gap(&s, s.to)
	return false
}

// few reports whether there are no more stretches than even places.
func (g *tracing) few() bool {
	walk := g.walk
	for range tracePoints {
		if _, ok := walk.next(); !ok {
			return true
		}
	}
	_, ok := walk.next()
	return !ok
}
