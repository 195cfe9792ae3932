package session

import (
	"math"
	"slices"
)

// Loop is what plays over and over.
type Loop uint8

// The loops.
const (
	LoopWhole Loop = iota // to the closing of all lanes
	LoopRound             // the round that the playhead is in
	LoopPiece             // the piece in hand
)

// Steps is where a step of the playhead goes.
type Steps uint8

// The steps.
const (
	ByBeat  Steps = iota
	ByPetal       // tips of the lane in hand; beats where it has none
)

// farBeat bounds the playhead of a pattern that never closes, so that beats
// keep their sub-frame accuracy: 2²⁰ rounds leave 2⁻³² of one.
const farBeat = 1 << 20

// Advance moves the playhead on by seconds of real time.
func (s *Session) Advance(seconds float64) {
	next := s.beat + seconds*s.Speed*s.pattern.Tempo/60
	from, length := s.loop()
	if next >= from+length || next < from {
		next = from + math.Mod(math.Mod(next-from, length)+length, length)
	}
	s.beat = next
}

// loop returns where what plays over and over begins, and its length, in beats.
func (s *Session) loop() (from, length float64) {
	switch s.Loop {
	case LoopRound:
		r := s.Round()
		return math.Floor(s.beat/r) * r, r
	case LoopPiece:
		t := s.tracks[s.sel.Lane]
		g := &t.Legs[s.sel.Piece]
		round, _, _ := t.Locate(s.beat)
		return float64(round)*t.Beats + g.Start, g.Span
	}
	return 0, s.whole()
}

// whole returns after how many beats all begins again, or is taken to.
func (s *Session) whole() float64 {
	length := farBeat * s.Round()
	if c := s.closes(); c.ok && c.beats < length {
		length = c.beats
	}
	return length
}

// PlayTo puts the playhead where something else is that has counted the beats
// from the start, on and on; before the start it waits there.
func (s *Session) PlayTo(beat float64) { s.beat = math.Mod(math.Max(beat, 0), s.whole()) }

// Step moves the playhead to the next place that steps go to, on (1) or
// back (−1), and takes the piece there in hand.
func (s *Session) Step(by int) {
	const hair = 1e-6 // beats
	r := s.Round()
	base := math.Floor(s.beat/r) * r
	stops := s.stops()
	if by > 0 {
		next := base + r
		for _, x := range stops {
			if base+x > s.beat+hair {
				next = base + x
				break
			}
		}
		s.beat = next
		if from, length := s.loop(); s.Loop == LoopWhole && s.beat >= from+length {
			s.beat = 0
		}
	} else {
		if s.beat-base < hair && base > 0 {
			base -= r
		}
		next := math.Max(base, 0)
		for _, x := range slices.Backward(stops) {
			if base+x < s.beat-hair {
				next = base + x
				break
			}
		}
		s.beat = next
	}
	s.SelectUnderPlayhead()
}

// stops returns the beats of the longest round at which steps stop, in order.
func (s *Session) stops() []float64 {
	var stops []float64
	r := s.Round()
	if s.Steps == ByPetal {
		t := s.tracks[s.sel.Lane]
		for round := 0.0; round < r; round += t.Beats {
			for _, x := range t.Tips() {
				if round+x < r {
					stops = append(stops, round+x)
				}
			}
		}
	}
	if len(stops) == 0 {
		const most = 100_000
		for x := 0.0; x < r && len(stops) < most; x++ {
			stops = append(stops, x)
		}
	}
	return stops
}
