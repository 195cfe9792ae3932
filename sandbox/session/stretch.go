package session

import (
	"errors"
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

// Stretch is the end of a piece that is being moved along its stroke. Where
// the piece continues into the next, the seam between the two moves and
// nothing else does; else a whole even stroke goes on as it was, longer or
// shorter, and a part keeps more or less of its stroke.
type Stretch struct {
	at    Select
	way   way
	lane  engine.Lane   // with the piece as long as it may become
	track *engine.Track // of that lane
	most  frac.Frac     // greatest length, in beats
}

type way uint8

const (
	seamMoves way = iota
	strokeGrows
	partGrows
)

// How much further than it is an end may be taken in one go: so many times
// as far, and so many cycles at least.
const (
	stretchTimes  = 4
	stretchCycles = 4
)

// OfEnd is what undo knows the move of a piece's end by.
const OfEnd = "end"

// oneGrid is the least length of a piece, in beats.
var oneGrid = frac.New(1, engine.CutGrid)

// StretchOf makes a piece ready to be stretched.
func (s *Session) StretchOf(at Select) *Stretch {
	l := s.pattern.Lanes[at.Lane]
	p := l.Pieces[at.Piece]
	st := &Stretch{at: at}
	switch {
	case l.CanRejoin(at.Piece):
		st.way = seamMoves
		st.lane, _ = l.Rejoin(at.Piece) // as it can
		whole := st.lane.Pieces[at.Piece].Length()
		st.most = whole.Sub(oneGrid)
		if !p.Length().Less(st.most) { // the neighbour is a sliver
			st.most = p.Length()
		}
		st.track = engine.NewTrack(st.lane)
		return st
	case p.Steady() && p.IsWhole():
		st.way = strokeGrows
		k := frac.Int(max(stretchTimes, int64(math.Min(math.Ceil(stretchCycles/p.Cycles.Float()), 1000))))
		const mostCycles, mostBeats = 1000, 10_000 // of the file
		for _, room := range []frac.Frac{frac.Int(mostCycles).Div(p.Cycles), frac.Int(mostBeats).Div(p.Beats)} {
			if room.Less(k) {
				k = room
			}
		}
		p.Cycles, p.Beats = p.Cycles.Mul(k), p.Beats.Mul(k)
	default:
		st.way = partGrows
		p.To = frac.Int(1)
	}
	st.most = p.Length()
	st.lane, _ = l.Replace(at.Piece, p) // it is there
	st.track = engine.NewTrack(st.lane)
	return st
}

// Most returns the greatest length in beats.
func (st *Stretch) Most() frac.Frac { return st.most }

// Near returns the length in beats at which the head is nearest to z (m), as
// one gets there along the curve from a length that it has now: half a turn of arm or
// prop on or back at most, so that a curve which crosses itself is followed.
func (st *Stretch) Near(z complex128, from float64) float64 {
	g := &st.track.Legs[st.at.Piece]
	p := g.Piece
	turns := math.Max(math.Abs(p.Arm.Float()), math.Abs(p.Prop.Float())) * p.Cycles.Float() / p.Beats.Float()
	reach := st.most.Float()
	if turns > 0 {
		reach = math.Min(0.5/turns, reach)
	}
	const steps = 240
	const along = 0.15 // how much the way along the curve counts against nearness
	best, at := math.Inf(1), from
	for _, sign := range []float64{1, -1} {
		last, gone := g.Point(from/g.Span).Head, 0.0
		for k := range steps + 1 {
			b := from + sign*reach*float64(k)/steps
			if b < 0 || b > st.most.Float() {
				break
			}
			h := g.Point(b / g.Span).Head
			gone += cmplx.Abs(h - last)
			last = h
			if cost := cmplx.Abs(h-z) + along*gone; cost < best {
				best, at = cost, b
			}
		}
	}
	return at
}

// Snap returns the length that is meant by one in beats: caught as cuts are
// within near beats, and within bounds.
func (st *Stretch) Snap(length, near float64) frac.Frac {
	g := &st.track.Legs[st.at.Piece]
	v := st.track.SnapCut(st.at.Piece, math.Min(length/g.Span, 1), near)
	if st.way != seamMoves && math.Abs(length-st.most.Float()) < near {
		v = st.most
	}
	return st.within(v)
}

func (st *Stretch) within(v frac.Frac) frac.Frac {
	if v.Less(oneGrid) {
		v = oneGrid
	}
	if st.most.Less(v) {
		v = st.most
	}
	return v
}

// StretchTo gives a piece a length in beats; while it is held, as part of the
// drag.
func (s *Session) StretchTo(st *Stretch, length frac.Frac) error {
	length = st.within(length)
	l := st.lane
	p := l.Pieces[st.at.Piece]
	var err error
	switch st.way {
	case seamMoves:
		l, err = l.Cut(st.at.Piece, length)
	case strokeGrows:
		p.Cycles, p.Beats = p.Cycles.Mul(length).Div(p.Beats), length
		l, err = l.Replace(st.at.Piece, p)
	default:
		p.To = p.From.Add(length.Div(p.Beats))
		l, err = l.Replace(st.at.Piece, p)
	}
	if err != nil {
		return err
	}
	next := s.pattern.WithLane(st.at.Lane, l)
	if err := presets.Validate(next); err != nil {
		return errors.Join(ErrUnwritable, err)
	}
	return s.TryPattern(OfEnd, func(engine.Pattern) engine.Pattern { return next })
}
