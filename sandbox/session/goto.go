package session

import (
	"math"

	"whorlbench/engine"
)

// GoTo puts the playhead at a beat counted from the very start, in whatever
// round that is. One before the start is taken from the end of the whole.
func (s *Session) GoTo(beat float64) {
	if beat < 0 {
		whole := math.Ceil(-beat/s.Round()) * s.Round()
		if c, ok := engine.ClosingTime(s.tracks...); ok {
			whole = math.Ceil(-beat/c.Float()) * c.Float()
		}
		beat += whole
	}
	s.beat = math.Max(beat, 0)
}
