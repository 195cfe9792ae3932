// Package practice says when to click while a pattern is practised: on the
// beats, at the joins of either hand, at the beginning of a round; after a
// count-in, and faster by steps where that is asked for. It makes no sound and
// knows no clock: whoever plays asks for a stretch of seconds.
package practice

import (
	"fmt"
	"math"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// Plan is what is to be practised, and how.
type Plan struct {
	Pattern engine.Pattern
	Tempo   float64 // beats a minute to begin with
	CountIn int     // beats before the pattern begins, 0 to MostCountIn
	Ladder  Ladder
}

// Ladder raises the tempo by Up beats a minute after every Rounds rounds, to
// Ceiling at most. The zero Ladder stays at one tempo.
type Ladder struct {
	Up      float64
	Rounds  int
	Ceiling float64
}

// The ranges of a plan.
const (
	// LeastTempo and MostTempo (beats a minute) are those of a pattern's file.
	LeastTempo, MostTempo = 10, 400
	// LeastUp (beats a minute) is the smallest step that anyone can tell.
	LeastUp     = 0.5
	MostCountIn = 32
	MostRounds  = 1000
)

// Check says what is wrong with a plan.
func (p Plan) Check() error {
	l := p.Ladder
	switch {
	case len(p.Pattern.Lanes) == 0:
		return fmt.Errorf("practice: found no hand, want one or two")
	case !(p.Tempo >= LeastTempo && p.Tempo <= MostTempo):
		return fmt.Errorf("practice: tempo %v, want %v to %v", p.Tempo, LeastTempo, MostTempo)
	case p.CountIn < 0 || p.CountIn > MostCountIn:
		return fmt.Errorf("practice: count-in of %d beats, want 0 to %d", p.CountIn, MostCountIn)
	case l == Ladder{}:
		return nil
	case !(l.Up >= LeastUp && l.Up <= MostTempo):
		return fmt.Errorf("practice: up by %v, want %v to %v", l.Up, LeastUp, MostTempo)
	case l.Rounds < 1 || l.Rounds > MostRounds:
		return fmt.Errorf("practice: up every %d rounds, want 1 to %d", l.Rounds, MostRounds)
	case !(l.Ceiling >= p.Tempo && l.Ceiling <= MostTempo):
		return fmt.Errorf("practice: up to %v, want %v to %v", l.Ceiling, p.Tempo, MostTempo)
	}
	return nil
}

// mostTogether bounds how many of the longer hand's rounds may pass until both
// hands begin one together, for that to be the round that is counted.
const mostTogether = 16

// Round returns the round that is counted, in beats: a hand's own; of two, the
// time until both begin one together, where that is not long, else the longer
// of both.
func (p Plan) Round() frac.Frac {
	round := p.Pattern.Lanes[0].Beats()
	if len(p.Pattern.Lanes) < 2 {
		return round
	}
	other := p.Pattern.Lanes[1].Beats()
	both := frac.LCM(round, other)
	if round.Less(other) {
		round = other
	}
	if both.Float() <= float64(mostTogether*round.Float())+dust {
		return both
	}
	return round
}

// dust (beats) is what rounding leaves of a beat.
const dust = 1e-9

// segment is a time at one tempo. It has the pattern's beats from Beat on,
// those before it the segment before.
type segment struct {
	seconds, beat float64
	tempo         float64
}

// at returns the second of a beat, reckoned at the segment's tempo.
func (s segment) at(beat float64) float64 {
	return s.seconds + float64((beat-s.beat)*(60/s.tempo))
}

// beatAt returns the beat at a second, likewise.
func (s segment) beatAt(seconds float64) float64 {
	return s.beat + float64((seconds-s.seconds)*(s.tempo/60))
}

// climb appends the ladder's steps that follow the last segment: each after
// Rounds whole rounds at the tempo before.
func (p Plan) climb(segments []segment, round float64) []segment {
	l := p.Ladder
	if l.Up <= 0 || l.Rounds < 1 {
		return segments
	}
	last := segments[len(segments)-1]
	begun := math.Ceil(last.beat/round - dust) // the first whole round at this tempo
	begun = math.Max(begun, 0)
	for n := 1; last.tempo < l.Ceiling; n++ {
		beat := (begun + float64(n*l.Rounds)) * round
		next := segment{seconds: last.at(beat), beat: beat, tempo: math.Min(last.tempo+l.Up, l.Ceiling)}
		segments = append(segments, next)
		last = next
	}
	return segments
}
