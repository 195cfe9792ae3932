package practice

import (
	"math"
	"slices"
	"sort"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// Kind is what an event is, as a set: one moment may be several.
type Kind uint8

// The kinds.
const (
	Beat      Kind = 1 << iota // a whole beat
	Round                      // the first beat of a round
	LeftJoin                   // the left hand goes over into its next piece
	RightJoin                  // the right hand does
	CountIn                    // a beat before the pattern begins
	Faster                     // the tempo steps up here
)

// Has reports whether k is of one of some kinds.
func (k Kind) Has(some Kind) bool { return k&some != 0 }

// Event is a moment to be heard.
type Event struct {
	Seconds float64 // from the beginning of the count-in
	Beat    frac.Frac
	Kind    Kind
	Tempo   float64 // beats a minute from here on
}

// Schedule has all events of a plan, for as long as anyone practises. It does
// not change.
type Schedule struct {
	plan     Plan
	round    frac.Frac
	voices   []voice
	segments []segment
}

// voice is what comes again and again: every `every` beats, at each of the
// places of its round.
type voice struct {
	every frac.Frac
	at    []frac.Frac // in [0, every)
	kind  Kind
}

// densest (beats): a hand whose pieces or rounds come closer than this, on the
// whole, is not clicked at its joins: nobody could tell the clicks apart.
const densest = 1.0 / 16

// New makes a schedule of a plan.
func New(p Plan) (*Schedule, error) {
	if err := p.Check(); err != nil {
		return nil, err
	}
	s := &Schedule{plan: p, round: p.Round()}
	start := []frac.Frac{{}}
	s.voices = append(s.voices, voice{frac.Int(1), start, Beat})
	if s.round.Float() >= densest {
		s.voices = append(s.voices, voice{s.round, start, Round})
	}
	for _, l := range p.Pattern.Lanes {
		if l.Beats().Float() < float64(densest*float64(len(l.Pieces))) {
			continue
		}
		kind := RightJoin
		if l.Side == engine.Left {
			kind = LeftJoin
		}
		starts := l.Starts()
		s.voices = append(s.voices, voice{l.Beats(), starts[:len(l.Pieces)], kind})
	}
	first := segment{seconds: 0, beat: -float64(p.CountIn), tempo: p.Tempo}
	s.segments = p.climb([]segment{first}, s.round.Float())
	return s, nil
}

// Round returns the round that is counted, in beats.
func (s *Schedule) Round() frac.Frac { return s.round }

// segmentOf returns the segment to which a beat belongs.
func (s *Schedule) segmentOf(beat float64) int {
	i := sort.Search(len(s.segments), func(i int) bool { return s.segments[i].beat > beat })
	return max(i-1, 0)
}

// SecondsAt returns when a beat comes; beats below 0 are the count-in's.
func (s *Schedule) SecondsAt(beat float64) float64 {
	i := s.segmentOf(beat)
	at := s.segments[i].at(beat)
	if i > 0 {
		at = math.Max(at, s.segments[i].seconds)
	}
	if i+1 < len(s.segments) { // rounding takes nothing across a step
		at = math.Min(at, s.segments[i+1].seconds)
	}
	return at
}

// at returns the segment on at a second.
func (s *Schedule) at(seconds float64) int {
	i := sort.Search(len(s.segments), func(i int) bool { return s.segments[i].seconds > seconds })
	return max(i-1, 0)
}

// BeatAt returns where the playhead is at a second: a beat of the pattern, below
// 0 in the count-in.
func (s *Schedule) BeatAt(seconds float64) float64 {
	i := s.at(seconds)
	beat := s.segments[i].beatAt(seconds)
	if i+1 < len(s.segments) {
		beat = math.Min(beat, s.segments[i+1].beat)
	}
	return beat
}

// TempoOn returns the tempo (beats a minute) at which a beat is played: from
// the first beat of a step on, the step's.
func (s *Schedule) TempoOn(beat float64) float64 { return s.segments[s.segmentOf(beat)].tempo }

// Steps returns when the tempo changes, and to what: the beginning first.
func (s *Schedule) Steps() []Step {
	steps := make([]Step, len(s.segments))
	for i, g := range s.segments {
		steps[i] = Step{g.seconds, g.beat, g.tempo}
	}
	return steps
}

// NextStep returns the first change of the tempo after a beat; ok is false if
// there is none.
func (s *Schedule) NextStep(beat float64) (step Step, ok bool) {
	i := s.segmentOf(beat) + 1
	if i >= len(s.segments) {
		return Step{}, false
	}
	g := s.segments[i]
	return Step{g.seconds, g.beat, g.tempo}, true
}

// Step is a change of the tempo.
type Step struct{ Seconds, Beat, Tempo float64 }

// Between returns the events with from ≤ Seconds < to, in their order. An event
// has the same Seconds whatever is asked for, so that stretches that touch
// share out all events between them. There are as many as the music has: ask
// for seconds, not for days.
func (s *Schedule) Between(from, to float64) []Event {
	if !(from < to) || math.IsInf(to, 1) {
		return nil
	}
	from = math.Max(from, 0)
	// A little more on both sides; what is too much is dropped below.
	lo, hi := s.BeatAt(from)-1e-6, s.BeatAt(to)+1e-6
	lo = math.Max(lo, -float64(s.plan.CountIn))
	var events []Event
	for _, v := range s.voices {
		events = append(events, s.of(v, lo, hi)...)
	}
	slices.SortStableFunc(events, func(a, b Event) int { return a.Beat.Cmp(b.Beat) })
	out := events[:0]
	for _, e := range events {
		if n := len(out); n > 0 && out[n-1].Beat.Equal(e.Beat) {
			out[n-1].Kind |= e.Kind
			continue
		}
		out = append(out, e)
	}
	return s.finished(out, from, to)
}

// finished fills in when events are, and drops those outside.
func (s *Schedule) finished(events []Event, from, to float64) []Event {
	out := events[:0]
	for _, e := range events {
		beat := e.Beat.Float()
		e.Seconds = s.SecondsAt(beat)
		if e.Seconds < from || e.Seconds >= to {
			continue
		}
		i := s.segmentOf(beat)
		e.Tempo = s.segments[i].tempo
		if i > 0 && beat == s.segments[i].beat && e.Tempo > s.segments[i-1].tempo {
			e.Kind |= Faster
		}
		out = append(out, e)
	}
	return out
}

// of lists a voice's events from one beat to another.
func (s *Schedule) of(v voice, lo, hi float64) []Event {
	var events []Event
	round := frac.FromFloat(lo).Div(v.every).Floor()
	for {
		base := round.Mul(v.every)
		if base.Float() > hi {
			return events
		}
		for _, at := range v.at {
			beat := base.Add(at)
			x := beat.Float()
			if x < lo || x > hi {
				continue
			}
			switch {
			case x >= 0:
				events = append(events, Event{Beat: beat, Kind: v.kind})
			case v.kind == Beat:
				events = append(events, Event{Beat: beat, Kind: CountIn})
			}
		}
		round = round.Add(frac.Int(1))
	}
}

// Retempo returns the schedule that goes on at another tempo from a moment:
// what is before stays as it was, the playhead does not jump, and the ladder
// climbs on from there, a tempo above its ceiling being its new one. Whoever
// has asked s for all before that moment asks the new one for all from it on,
// and has each event once.
func (s *Schedule) Retempo(seconds, tempo float64) (*Schedule, error) {
	p := s.plan
	p.Tempo = tempo
	if (p.Ladder != Ladder{}) {
		p.Ladder.Ceiling = math.Max(p.Ladder.Ceiling, tempo)
	}
	if err := p.Check(); err != nil {
		return nil, err
	}
	seconds = math.Max(seconds, 0)
	i := s.at(seconds)
	beat := s.BeatAt(seconds)
	// Events that rounding has put on the other side of the moment.
	for _, e := range s.Between(seconds-1e-6, seconds+1e-6) {
		x := e.Beat.Float()
		switch {
		case e.Seconds < seconds && x >= beat:
			beat = math.Nextafter(x, math.Inf(1))
		case e.Seconds >= seconds && x < beat:
			beat = x
		}
	}
	out := &Schedule{plan: p, round: s.round, voices: s.voices}
	out.segments = append(out.segments, s.segments[:i+1]...)
	now := segment{seconds: seconds, beat: beat, tempo: tempo}
	if out.segments[i].seconds == seconds {
		out.segments = out.segments[:i] // the new one takes its place
	}
	out.segments = p.climb(append(out.segments, now), s.round.Float())
	return out, nil
}
