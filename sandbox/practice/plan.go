// Package practice says when to click while a pattern is practised: on the
// beats, at the joins of either hand, at the beginning of a round; after a
// count-in, and faster by steps where that is asked for. It makes no sound and
// knows no clock: whoever plays asks for a stretch of seconds.
package practice

import (
	"errors"
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

// Part is a number of a plan.
type Part uint8

// The parts.
const (
	OfTempo Part = iota
	OfCountIn
	OfUp
	OfRounds
	OfCeiling
)

var partNames = [...]string{"tempo", "count-in", "ladder: up by", "ladder: rounds", "ladder: ceiling"}

// Fault is a part of a plan that is out of its range.
type Fault struct {
	Part               Part
	Found, Least, Most float64
}

// Error says what was found and what is allowed.
func (f *Fault) Error() string {
	return fmt.Sprintf("practice: %s: found %v, allowed %v to %v", partNames[f.Part], f.Found, f.Least, f.Most)
}

// Check says what is wrong with a plan: the first *Fault, or that there is no
// hand.
func (p Plan) Check() error {
	if len(p.Pattern.Lanes) == 0 {
		return errors.New("practice: found no hand, allowed one or two")
	}
	parts := []Fault{{OfTempo, p.Tempo, LeastTempo, MostTempo}, {OfCountIn, float64(p.CountIn), 0, MostCountIn}}
	if l := p.Ladder; l != (Ladder{}) {
		parts = append(parts, Fault{OfUp, l.Up, LeastUp, MostTempo}, Fault{OfRounds, float64(l.Rounds), 1, MostRounds},
			Fault{OfCeiling, l.Ceiling, p.Tempo, MostTempo})
	}
	for _, f := range parts {
		if !(f.Found >= f.Least && f.Found <= f.Most) { // nor is what is no number
			return &f
		}
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
