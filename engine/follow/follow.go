// Package follow answers the two questions from which a continuous assembly
// pattern grows: what can follow at the end of a piece, and where two
// elementary patterns meet. What a join is worth is for package seam to say.
package follow

import (
	"math"
	"math/big"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
)

// Most bounds how many candidates After returns.
const Most = 40

// MostSpeed is the greatest ratio of prop to arm that is tried, either way.
const MostSpeed = 6

// Kind is what the hand does at the join.
type Kind uint8

// The kinds of going on.
const (
	Again     Kind = iota // the piece's own pattern, continued
	GoesOn                // straight on, bending as before or not at all
	OtherSide             // straight on into a circle that bends the other way
	TurnsBack             // the hand turns back
	Corner                // the hand turns by less than that
	SetsOff               // the hand has been staying
	kinds
)

// Candidate is a piece that can follow.
type Candidate struct {
	Piece    engine.Piece // to be inserted after the piece asked about
	Kind     Kind
	SamePath bool          // the hand keeps to the path of the piece before
	Pace     float64       // the arm's mean rate to that of the piece before; from a hand that stays, the prop's
	Figure   naming.Figure // what it is called
	// Leg is the piece where it begins in round 0 of the lane with it in, at
	// its own beat: Point and Whole draw it.
	Leg engine.Leg

	Join seam.Seam // of the piece before with this one
	Next seam.Seam // of this one with the piece that follows it
	Fits bool      // neither join has a gap

	// The lane with the piece in.
	HandGap float64   // m from the round's end to its beginning
	Later   bool      // a join after Next has a gap
	Rounds  *big.Int  // after which the lane closes, 0 if never
	Beats   frac.Frac // the time of that many rounds, 0 if never
}

// Closes reports whether the lane with the candidate in has no gap from the
// piece before on, and closes.
func (c *Candidate) Closes() bool { return c.Fits && !c.Later && c.Rounds.Sign() > 0 }

// KeepsUp reports whether the arm keeps its pace.
func (c *Candidate) KeepsUp() bool { return c.Pace == 1 }

// After returns what can follow piece i of t, the track of one of p's lanes:
// elementary patterns with whole ratios up to MostSpeed, on the path of the
// piece itself, on circles of the sizes in use that the hand runs into
// straight on or back, and on straight strokes that have an end or their
// middle here. A prop on a tether keeps its sense; a rigid one need not.
//
// None has a gap at the join. They are ordered by the join's verdict, smooth
// first, then by its jump across the tether, then by plainness; no two are one
// slice, and each kind has its share of at most Most. Each begins at the rate
// that makes the join smooth, where there is one that is not far off; else the
// arm keeps up the rate it has. The arm goes to where the next piece begins, if
// that is fixed and on the path, else half a turn, or a quarter from a stroke's
// middle. It panics if there is no piece i.
func After(p engine.Pattern, t *engine.Track, i int) []Candidate {
	a := newAsk(p, t, i)
	tries := a.tries()
	out := make([]Candidate, 0, Most)
	for _, k := range pick(tries) {
		out = append(out, a.candidate(&tries[k]))
	}
	return out
}

// ask is one question: what there is at the end of the piece.
type ask struct {
	pattern engine.Pattern
	track   *engine.Track
	piece   int
	before  *engine.Leg
	state   engine.State // at its end, in round 0
	moves   []movement
	carries []carried
}

func newAsk(p engine.Pattern, t *engine.Track, i int) *ask {
	a := &ask{pattern: p, track: t, piece: i, before: &t.Legs[i]}
	a.state = a.before.State(1)
	a.moves = a.movements()
	return a
}

// next returns the piece that follows, and whether it begins the next round.
func (a *ask) next() (leg *engine.Leg, nextRound bool) {
	k := (a.piece + 1) % len(a.track.Legs)
	return &a.track.Legs[k], k == 0
}

// candidate tells all of a try.
func (a *ask) candidate(y *try) Candidate {
	m := &a.moves[y.move]
	c := Candidate{
		Piece: y.leg.Piece, Kind: y.kind, SamePath: m.same, Pace: y.pace,
		Figure: naming.Of(&y.leg), Leg: y.leg, Join: y.join, Later: m.later(a),
	}
	carry := a.carry(m.sweep, y.speed)
	end := y.leg.State(1)
	was, nextRound := a.next()
	next := *was
	if !nextRound {
		if !next.Piece.ArmAt.Set {
			next.Arm0 = end.Arm
		}
		if !next.Piece.PropAt.Set && next.Piece.Swing == 0 {
			next.Prop0 = end.Prop
		}
	}
	c.Next = seam.Join{Before: &y.leg, After: &next, NextRound: nextRound, Carry: carry}.
		Judge(a.pattern.Tempo, a.pattern.Performer.Rigid)
	c.Join.After, c.Next.After = a.piece, a.piece+1
	c.Later = c.Later || a.track.Pinned && a.propLater(end.Prop-a.state.Prop)
	c.Fits = c.Join.Verdict != seam.Gap && c.Next.Verdict != seam.Gap

	starts := a.track.Starts()
	closing := carry.Closing(a.track.Legs[0].Point(0).Hand, m.roundEnd(a), starts[len(starts)-1].Add(y.leg.Piece.Length()))
	c.HandGap, c.Rounds, c.Beats = closing.HandGap, closing.Rounds, closing.Beats
	return c
}

// propLater reports whether a prop that comes turned on by turned radians out
// of the new piece has a gap somewhere after the join with what follows: at
// the first pendulum or prop angle of a piece's own, in a lane that has one.
func (a *ask) propLater(turned float64) bool {
	legs := a.track.Legs
	for k := a.piece + 1; k <= len(legs); k++ {
		next := &legs[k%len(legs)]
		if k < len(legs) && !next.Piece.PropAt.Set && next.Piece.Swing == 0 {
			continue
		}
		if k == a.piece+1 {
			return false // the next join itself, and nothing beyond it moves
		}
		before := legs[k-1].State(1).Prop + turned
		return math.Abs(math.Remainder(next.Prop0-before, 2*math.Pi)) > engine.Degrees(engine.TolPropGap).Radians()
	}
	return false
}

// carried is how the prop goes from round to round with a try in the lane:
// known by how far the arm goes and the ratio.
type carried struct {
	sweep frac.Frac
	known [2*MostSpeed + 1]bool
	carry [2*MostSpeed + 1]engine.Carry
}

// carry returns how the prop goes on from round to round with a piece in the
// lane that turns it by speed turns for each turn of the arm.
func (a *ask) carry(sweep frac.Frac, speed int) engine.Carry {
	if a.track.Pinned {
		return a.track.Carry
	}
	k := 0
	for k < len(a.carries) && !a.carries[k].sweep.Equal(sweep) {
		k++
	}
	if k == len(a.carries) {
		a.carries = append(a.carries, carried{sweep: sweep})
	}
	c, n := &a.carries[k], speed+MostSpeed
	if !c.known[n] {
		c.known[n] = true
		c.carry[n] = engine.NewCarry(a.track.PerRound.Add(sweep.Mul(whole(speed))))
	}
	return c.carry[n]
}

// wholes are the small whole numbers, which tries use over and over.
var wholes = func() (w [2*MostSpeed + 1]frac.Frac) {
	for k := range w {
		w[k] = frac.Int(int64(k - MostSpeed))
	}
	return w
}()

// whole returns n, |n| ≤ MostSpeed.
func whole(n int) frac.Frac { return wholes[n+MostSpeed] }
