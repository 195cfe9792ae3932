// Package duet reads two hands together over the whole round: the direction
// and timing of props and of hands as spans of beats, how often the arms wrap,
// and how near hands, heads and tethers come.
//
// Directions and angles are those of each hand's own plane. What there is to
// read may be long, so that a Reader does it in small steps; how the steps are
// shared out over calls does not change what is read.
package duet

import (
	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// What is read is bounded, as a closing time may be of any length: at most
// MostRounds rounds of the longer lane, and at most mostWork units, one for
// each stretch in which both hands keep to one piece and one for each turn
// that an arm or a prop makes in it; but one stretch at least. A lane that
// never closes is read for one round of the longer lane. Hands alone, whose
// path repeats with each round, are bounded likewise by themselves.
const (
	MostRounds = 64
	mostWork   = 1 << 16
	// MostSpans bounds each list of spans: as many as a round of a thousand
	// pieces has where the timing goes through everything in each.
	MostSpans = 8192
	// MostCrossings bounds how many crossings of the tethers are told.
	MostCrossings = 32
	// mostLooks bounds the moments looked at for one least distance; two hands
	// that turn as much as mostWork allows take half of it. Only distances
	// that stay the same within the tolerance, in planes of two kinds, take more.
	mostLooks = 1 << 22
	// mostTouchLooks bounds those for the crossings: tethers that stay just as
	// near as the tolerance take more, and are not told any further.
	mostTouchLooks = 1 << 18
)

// Nearest is a least distance and a beat at which it is come to: the first,
// but for tethers that cross, whose times Crossings tells.
type Nearest struct {
	Distance float64 // m
	Beat     float64
	// AtMost reports that there may be a smaller distance: that work was
	// bounded before all smaller ones were ruled out.
	AtMost bool
}

// Crossing is a time during which the tethers touch, in beats.
type Crossing struct{ From, To float64 }

// Reading is what there is to say of two hands.
type Reading struct {
	// Period is the time after which both hands are back at their start
	// together; Closes is false if one never is.
	Period frac.Frac
	Closes bool
	// Until is how far, in beats, props, heads and tethers were read; Whole
	// reports that this is the Period.
	Until float64
	Whole bool

	Props, Hands []Span // MostSpans at most; the last one's To says how far they go
	Tangle       Tangle
	// Least distances in the room: hand to hand, head to head, tether to tether.
	Hand, Head, Tether Nearest
	Crossings          []Crossing // MostCrossings at most

	// Around is the left hand less the right one over the time after which
	// both hands' paths repeat, as a line of at most 2·tracePoints + 1 places;
	// empty if the hands' planes are not of one kind.
	Around []complex128
}

// Reader reads two hands bit by bit.
type Reader struct {
	pair  *pair
	tasks []task
	out   Reading
}

// task is a part of the reading. A step is a small piece of it, about as much
// work as looking at both hands at one moment or at the ends of one stretch.
type task interface{ step() (done bool) }

// NewReader begins to read a left and a right hand.
func NewReader(left, right *engine.Track) *Reader {
	r := &Reader{pair: newPair(left, right)}
	p := r.pair
	r.out.Period, r.out.Closes = engine.ClosingTime(left, right)
	whole, paths := p.horizons(r.out.Period, r.out.Closes)
	r.tasks = []task{
		&measure{walk: p.walk(whole), most: mostWork, until: &p.until},
		&measure{walk: p.walk(paths), most: mostWork, until: &p.pathUntil},
		&spanning{pair: p, of: props, out: &r.out.Props},
		&spanning{pair: p, of: hands, out: &r.out.Hands},
		&winding{pair: p, times: p.times(r.out.Period, r.out.Closes), out: &r.out.Tangle, back: p.handsReturn},
		&search{pair: p, ends: handEnds, until: &p.pathUntil, out: &r.out.Hand},
		&search{pair: p, ends: headEnds, until: &p.until, out: &r.out.Head},
		&search{pair: p, ends: tetherEnds, until: &p.until, out: &r.out.Tether},
		&touching{pair: p, near: &r.out.Tether, out: &r.out.Crossings},
		&tracing{pair: p, out: &r.out.Around},
	}
	return r
}

// Step does at most n small steps and reports whether all is read.
func (r *Reader) Step(n int) (done bool) {
	for ; n > 0 && len(r.tasks) > 0; n-- {
		if r.tasks[0].step() {
			r.tasks = r.tasks[1:]
		}
	}
	if len(r.tasks) > 0 {
		return false
	}
	r.out.Until = r.pair.until
	r.out.Whole = r.out.Closes && r.pair.until == r.out.Period.Float()
	return true
}

// Reading returns what was read; it is whole once Step has said that it is done.
func (r *Reader) Reading() Reading { return r.out }

// Read reads two hands in one go.
func Read(left, right *engine.Track) Reading {
	r := NewReader(left, right)
	for !r.Step(1 << 20) {
	}
	return r.out
}
