package duet

import (
	"math"
	"math/big"
	"math/cmplx"

	"whorlbench/engine"
)

// Untold says why there is no winding number.
type Untold uint8

// The reasons. Told: there is one.
const (
	Told       Untold = iota
	NotWall           // not both hands are in the wall plane
	NeverBack         // a lane never closes
	HandsMeet         // the hands meet, so that the line between them has no direction
	TooLong           // it takes more rounds to come back than are read
	notYetRead        // while a Reader is at work
)

// Tangle says how often the arms wrap round each other: the winding number of
// the left hand less the right one about 0, over the time after which the
// whole comes back. Where a hand jumps, its way is the straight chord.
type Tangle struct {
	Why     Untold
	Winding *big.Int // turns, anticlockwise positive; nil unless Why is Told
	// Meets reports that the hands meet, nearer than engine.TolMeet: in planes
	// of one kind, as seen along the planes' normal; else in the room. MeetAt is
	// the beat at which they are nearest when they first do.
	Meets  bool
	MeetAt float64
}

// clear (m): the hands are known to keep apart where they are further apart
// than this; the thousandth less than the tolerance keeps hands that stay just
// at it from being looked at without end.
const clear = engine.TolMeet * 0.999

// meetStep (m): how finely the moment of meeting is found, as hands move.
const meetStep = 1e-8

// winding adds up by how much the line from hand to hand turns.
type winding struct {
	pair  *pair
	times *big.Int // of the paths in the period
	back  bool
	out   *Tangle

	begun bool
	walk  walker
	now   stretch
	bend  float64
	stack []interval
	first complex128 // the gap at the beginning
	last  complex128 // the gap where the sum has come to
	sum   float64    // radians
}

func (g *winding) step() (done bool) {
	p := g.pair
	if !g.begun {
		g.begun, g.walk = true, p.walk(p.pathUntil)
		g.out.Why = notYetRead
	}
	if len(g.stack) == 0 {
		s, ok := g.walk.next()
		if !ok {
			g.finish()
			return true
		}
		g.now = s
		g.bend = p.bound(&s, []end{hand}).bend[noFrame][hand][hand]
		if p.parallel {
			d := p.gap(&s, s.from)
			if s.from == 0 {
				g.first, g.last = d, d
			}
			if g.chord(d, s.from) {
				return true
			}
		}
		g.stack = append(g.stack, interval{from: s.from, to: s.to})
		return false
	}
	x := g.stack[len(g.stack)-1]
	g.stack = g.stack[:len(g.stack)-1]
	return g.part(x)
}

// chord takes in a jump of the gap to d. It reports true if the hands meet on
// its way.
func (g *winding) chord(d complex128, beat float64) (met bool) {
	step := d - g.last
	near := g.last
	if l := real(engine.Product(step, cmplx.Conj(step))); l > 0 {
		u := min(max(-real(engine.Product(g.last, cmplx.Conj(step)))/l, 0), 1)
		near += engine.Product(complex(u, 0), step)
	}
	if cmplx.Abs(near) < engine.TolMeet {
		g.meet(beat)
		return true
	}
	g.turn(d)
	return false
}

// turnTo takes in that the gap has kept to a half plane up to a beat.
func (g *winding) turnTo(beat float64) {
	if g.pair.parallel {
		g.turn(g.pair.gap(&g.now, beat))
	}
}

// turn takes in that the gap has gone to d without leaving a half plane.
func (g *winding) turn(d complex128) {
	g.sum += cmplx.Phase(engine.Product(d, cmplx.Conj(g.last)))
	g.last = d
}

func (g *winding) meet(beat float64) {
	g.out.Meets, g.out.MeetAt = true, beat
	g.finish()
}

// part takes in an interval if the gap keeps to a half plane away from 0,
// else halves it.
func (g *winding) part(x interval) (done bool) {
	p := g.pair
	h := x.to - x.from
	m := middle(x.from, x.to)
	k := p.look(&g.now, handEnds, m)
	if p.parallel {
		k.way.z = 0 // as seen along the normal
	}
	size, speed := k.way.size(), 0.0 // of the gap, and of its changing size
	if size > 0 {
		_, rate := k.moves(hand, hand, 0)
		speed = math.Abs(k.way.dot(rate)) / size
	}
	if size-float64(speed*h/2)-float64(g.bend*h*h/8) >= clear {
		g.turnTo(x.to)
		return false
	}
	reach := g.reach(x.from, h)
	switch {
	case size < engine.TolMeet && reach < meetStep || m <= x.from || m >= x.to:
		g.meet(g.closest(x.from))
		return true
	case reach < meetStep && size >= engine.TolMeet: // it comes as near as the tolerance, no nearer
		g.turnTo(x.to)
		return false
	}
	g.stack = append(g.stack, interval{from: m, to: x.to}, interval{from: x.from, to: m})
	return false
}

// closest returns the beat at which hands that come to meet are nearest: from
// the one at which they are within the tolerance, on along the tangents as
// long as that brings them nearer.
func (g *winding) closest(beat float64) float64 {
	const mostTangents = 16 // each one squares what is left
	gap := func(beat float64) (way, rate vec, size float64) {
		k := g.pair.look(&g.now, handEnds, beat)
		way, rate = k.moves(hand, hand, 0)
		if g.pair.parallel {
			way.z = 0
		}
		return way, rate, way.size()
	}
	way, rate, size := gap(beat)
	for range mostTangents {
		speed := rate.dot(rate)
		if speed == 0 {
			break
		}
		next := min(beat-float64(way.dot(rate)/speed), g.now.to)
		w, r, s := gap(next)
		if next <= beat || s >= size {
			break
		}
		beat, way, rate, size = next, w, r, s
	}
	return beat
}

// reach returns a bound on how far the gap goes within h beats from a moment.
func (g *winding) reach(from, h float64) float64 {
	k := g.pair.look(&g.now, handEnds, from)
	_, rate := k.moves(hand, hand, 0)
	return float64(rate.size()*h) + float64(g.bend*h*h/2)
}

func (g *winding) finish() {
	p := g.pair
	switch {
	case p.tracks[left].Lane.Plane != engine.Wall || p.tracks[right].Lane.Plane != engine.Wall:
		g.out.Why = NotWall
	case !g.back:
		g.out.Why = NeverBack
	case g.out.Meets:
		g.out.Why = HandsMeet
	case p.pathUntil != p.paths.Float():
		g.out.Why = TooLong
	default:
		g.turn(g.first) // what a hand may miss and still have come back
		g.out.Why = Told
		turns := big.NewInt(int64(math.Round(g.sum / (2 * math.Pi))))
		g.out.Winding = turns.Mul(turns, g.times)
	}
}
