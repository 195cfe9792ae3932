package naming

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// together (beats, as a share of both rounds): a time in which the hands differ
// that is shorter is the rounding of a moment at which both change.
const together = 1e-12

// mostSpans bounds how many spans are looked at where a round of one hand is
// very much shorter than one of the other.
const mostSpans = 1 << 16

// Hybrid rules whether the hands do different patterns at any time, over the
// time in which both close, seam.MostRounds of the longer round at most. Where
// a pattern stands, its size and which way it is played make no difference
// between hands.
func Hybrid(left, right *engine.Track) Ruling {
	r := Ruling{Clause: HandsAlike}
	eachMoment(left, right, func(beat float64, a, b *walker) bool {
		f, g := a.figure(), b.figure()
		if beat == 0 {
			r.Figures = [2]Figure{f, g}
		}
		if alike(&f, &g) {
			return true
		}
		r = Ruling{
			Yes: true, Clause: HandsDiffer, Beat: beat,
			Piece: a.piece, Other: b.piece, Figures: [2]Figure{f, g},
		}
		if a.madeOf(b) && b.madeOf(a) {
			r.Clause = HandsSwap
		}
		return false
	})
	return r
}

// eachMoment hands over the beats from which on a hand does something else,
// with where both are, over the time in which both close, until look returns
// false.
func eachMoment(left, right *engine.Track, look func(beat float64, a, b *walker) bool) {
	a, b := walkerOf(left), walkerOf(right)
	dust := float64(together * (left.Beats + right.Beats))
	until := float64(seam.MostRounds * math.Max(left.Beats, right.Beats))
	if both, ok := engine.ClosingTime(left, right); ok {
		until = math.Min(until, both.Float())
	}
	beat := 0.0
	for range mostSpans {
		next := math.Min(a.end(), b.end())
		if next-beat > dust && !look(beat, &a, &b) {
			return
		}
		beat = next
		if beat > until-dust {
			return
		}
		a.to(beat + dust)
		b.to(beat + dust)
	}
}

// alike reports whether two hands do one pattern, wherever it stands.
func alike(f, g *Figure) bool {
	switch {
	case f.Kind != g.Kind:
		return false
	case f.Kind == StaticSpin || f.Kind == HeldStill || f.Kind == Pendulum:
		return true
	case f.Spin == SpinLine && f.Kind != LinearOther:
		return true // ratio 1 or −1 is one pattern on a straight stroke
	case f.Kind == LinearOther:
		return f.Ratio.Abs().Equal(g.Ratio.Abs())
	case f.Kind == UnitTurn:
		return math.Abs(math.Abs(float64(f.Offset))-math.Abs(float64(g.Offset))) <= engine.TolPhase
	}
	return f.HasPetals == g.HasPetals && f.Ratio.Equal(g.Ratio)
}

// walker goes along a lane piece by piece, round by round.
type walker struct {
	track        *engine.Track
	figures      []Figure // of round 0
	turns        []bool   // whether the figure is another from round to round
	round, piece int
}

func walkerOf(t *engine.Track) walker {
	w := walker{track: t, figures: make([]Figure, len(t.Legs)), turns: make([]bool, len(t.Legs))}
	for i := range t.Legs {
		g := &t.Legs[i]
		f := Of(g)
		w.figures[i] = f
		w.turns[i] = !t.PerRound.IsInt() && f.calledByPhase()
	}
	return w
}

func (w *walker) figure() Figure {
	if w.round > 0 && w.turns[w.piece] {
		return inRound(&w.track.Legs[w.piece], w.track.PerRound, w.round)
	}
	return w.figures[w.piece]
}

// end returns the beat at which the piece ends.
func (w *walker) end() float64 {
	g := &w.track.Legs[w.piece]
	return float64(float64(w.round)*w.track.Beats) + (g.Start + g.Span)
}

// to goes on to the piece that is on at a beat.
func (w *walker) to(beat float64) {
	for w.end() <= beat {
		w.piece++
		if w.piece == len(w.figures) {
			w.piece = 0
			w.round++
		}
	}
}

// madeOf reports whether each of w's patterns is one of o's.
func (w *walker) madeOf(o *walker) bool {
	for i := range w.figures {
		found := false
		for k := range o.figures {
			if alike(&w.figures[i], &o.figures[k]) {
				found = true
				break
			}
		}
		if !found {
			return false
		}
	}
	return true
}
