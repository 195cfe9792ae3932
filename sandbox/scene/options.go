package scene

import (
	"math"

	"whorlbench/sandbox/session"
)

// Options are what the stage shows; the zero value shows what helps most.
type Options struct {
	Trail        TrailLength
	HideHandPath bool
	HideGrid     bool
	HideArms     bool
	HideLetters  bool
	HideWhole    bool // of the piece in hand, and its slice
	PlainInk     bool // no ticks and double strokes by kind
	ByPiece      bool // a colour for each piece instead of each hand
	HideSlack    bool // where tethers go slack
	Taken        bool // the way of the hand that is really taken
}

// TrailLength is how far back the trail reaches.
type TrailLength uint8

// The lengths of the trail.
const (
	OneRound TrailLength = iota
	HalfRound
	AllRounds // to the closing, mostRounds at most
	NoTrail
)

// mostRounds bounds the trail of a lane that closes late.
const mostRounds = 8

// Beats returns how far back a lane's trail reaches.
func (l TrailLength) Beats(s *session.Session, lane int) float64 {
	round := s.Tracks()[lane].Beats
	switch l {
	case NoTrail:
		return 0
	case HalfRound:
		return round / 2
	case AllRounds:
		if n, ok := s.Rounds(lane); ok {
			return round * math.Min(n, mostRounds)
		}
	}
	return round
}
