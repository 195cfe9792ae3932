package session

import "whorlbench/engine"

// closing is when all lanes are back at their start together, in beats, and
// after how many rounds each is, 0 where it never is: worked out exactly, and
// only once a revision.
type closing struct {
	ok     bool
	beats  float64
	rounds []float64
}

func (s *Session) closes() *closing {
	if s.closing != nil {
		return s.closing
	}
	c := &closing{}
	if beats, ok := engine.ClosingTime(s.tracks...); ok {
		c.beats, c.ok = beats.Float(), true
	}
	for _, t := range s.tracks {
		n, _ := t.Closing().Rounds.Float64()
		c.rounds = append(c.rounds, n)
	}
	s.closing = c
	return c
}

// Rounds returns after how many of its rounds a lane is back at its start; ok
// is false if it never is.
func (s *Session) Rounds(lane int) (n float64, ok bool) {
	n = s.closes().rounds[lane]
	return n, n > 0
}
