package duet

import (
	"math"
	"math/big"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// The hands of a pair, as they are counted.
const (
	left = iota
	right
)

// borderDust (share of the beat): borders of the two lanes nearer than this
// are one. It lies above the rounding of a beat reckoned in a few steps and
// far below any piece that could be seen.
const borderDust = 1e-12

// pair is two hands made ready to be read.
type pair struct {
	tracks   [2]*engine.Track
	moves    [2][]moving // of each leg
	parallel bool        // the planes are of one kind
	// handsReturn: no hand drifts away from round to round.
	handsReturn bool
	// paths is the time after which both hands' paths repeat together.
	paths frac.Frac
	// How far props, and hands alone, are read.
	until, pathUntil float64
}

func newPair(l, r *engine.Track) *pair {
	p := &pair{tracks: [2]*engine.Track{l, r}, parallel: l.Lane.Plane == r.Lane.Plane}
	for k, t := range p.tracks {
		p.moves[k] = make([]moving, len(t.Legs))
		for i := range t.Legs {
			p.moves[k][i] = newMoving(&t.Legs[i])
		}
	}
	p.handsReturn = l.Closing().Closes() && r.Closing().Closes()
	p.paths = frac.LCM(l.Lane.Beats(), r.Lane.Beats())
	return p
}

// horizons returns how far there is to read for the whole and for the hands
// alone, before the work is measured.
func (p *pair) horizons(period frac.Frac, closes bool) (whole, paths float64) {
	longer := max(p.tracks[left].Beats, p.tracks[right].Beats)
	if !closes {
		return longer, longer
	}
	most := MostRounds * longer
	return min(period.Float(), most), min(p.paths.Float(), most)
}

// times returns how often the hands' paths repeat in a period.
func (p *pair) times(period frac.Frac, closes bool) *big.Int {
	if !closes {
		return new(big.Int)
	}
	return period.Div(p.paths).Num()
}

// place is where a hand is in its lane during a stretch.
type place struct {
	round, piece int
	start        float64 // beat at which the piece begins in this round
}

// stretch is a time in beats during which both hands keep to one piece.
type stretch struct {
	from, to float64
	at       [2]place
}

func (s *stretch) length() float64 { return s.to - s.from }

// walker goes from stretch to stretch.
type walker struct {
	pair  *pair
	until float64
	beat  float64
	at    [2]place
	dusty int // pieces passed over as too short, in a row
}

// mostDusty bounds how many pieces too short to be told apart are passed over
// in a row: more of them do not add up to a time that could be read.
const mostDusty = 1 << 16

func (p *pair) walk(until float64) walker { return walker{pair: p, until: until} }

// next returns the next stretch; ok is false at the end, or where the pieces
// are too short for the beats that count them.
func (w *walker) next() (s stretch, ok bool) {
	dust := float64(borderDust * (w.beat + w.pair.tracks[left].Beats + w.pair.tracks[right].Beats))
	for w.beat < w.until-dust && w.dusty < mostDusty {
		var ends [2]float64
		for k, t := range w.pair.tracks {
			ends[k] = w.at[k].start + t.Legs[w.at[k].piece].Span
		}
		s = stretch{from: w.beat, to: min(ends[left], ends[right], w.until), at: w.at}
		for k, t := range w.pair.tracks {
			if ends[k] > s.to+dust {
				continue
			}
			a := &w.at[k]
			if a.piece++; a.piece == len(t.Legs) {
				a.piece = 0
				a.round++
			}
			a.start = float64(float64(a.round)*t.Beats) + t.Legs[a.piece].Start
		}
		w.beat = s.to
		if s.length() > dust {
			w.dusty = 0
			return s, true
		}
		w.dusty++
	}
	return s, false
}

// measure finds how far can be read for a bounded amount of work.
type measure struct {
	walk  walker
	most  float64
	until *float64
	work  float64
}

func (m *measure) step() (done bool) {
	s, ok := m.walk.next()
	if !ok {
		*m.until = m.walk.until
		if m.walk.dusty == mostDusty {
			*m.until = m.walk.beat
		}
		return true
	}
	work := 1.0
	for k := range s.at {
		work += float64(m.walk.pair.move(&s, k).turnsPerBeat * s.length())
	}
	if m.work > 0 && m.work+work > m.most {
		*m.until = s.from
		return true
	}
	m.work += work
	return false
}

func (p *pair) move(s *stretch, hand int) *moving { return &p.moves[hand][s.at[hand].piece] }

func (p *pair) leg(s *stretch, hand int) *engine.Leg { return &p.tracks[hand].Legs[s.at[hand].piece] }

// state returns a hand's state at a beat of a stretch: at its ends the limit
// from inside.
func (p *pair) state(s *stretch, hand int, beat float64) engine.State {
	a := &s.at[hand]
	u := (beat - a.start) / p.tracks[hand].Legs[a.piece].Span
	return p.tracks[hand].AtPiece(a.round, a.piece, min(max(u, 0), 1))
}

// gap returns the left hand less the right one in plane coordinates.
func (p *pair) gap(s *stretch, beat float64) complex128 {
	return p.state(s, left, beat).Hand - p.state(s, right, beat).Hand
}

// middle returns the beat half way from a to b.
func middle(a, b float64) float64 { return a + float64((b-a)/2) }

// wrap returns an angle in radians as degrees in (−180°, 180°]; what lies
// within angleDust of −180° is 180°.
func wrap(rad float64) engine.Degrees {
	d := engine.ToDegrees(math.Remainder(rad, 2*math.Pi)).Wrap() + 0 // no −0
	if d <= -180+angleDust {
		return 180
	}
	return d
}

// angleDust (degrees) is how far rounding may move an angle that an exact one
// was meant by; 64,000 turns of arm and prop stay below it.
const angleDust = 1e-7
