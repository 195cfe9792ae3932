// Package mend offers ways to put a bad seam right.
//
// A fix is a whole new lane beside what it changed, what it cost and what is
// left. It is offered, never done: the person chooses. The lane that a fix was
// asked for is left alone, and a placed piece's own start angles are touched
// only by the fixes that say so.
package mend

import (
	"iter"
	"slices"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// Kind is what a fix does.
type Kind uint8

// The kinds of fix. "Next" is the piece after the seam, "before" the one
// before it.
const (
	CarryOn        Kind = iota // the next piece's own start angles are taken away
	StartElsewhere             // the next piece starts where its path meets the hand
	StartFitting               // … where in its pattern the prop points as it comes, and is moved to the hand
	StartProp                  // the round starts with the prop where the last piece leaves it
	MovePath                   // the next piece's path is moved to begin at the hand
	TurnPath                   // … turned about its own centre
	ResizePath                 // … made larger or smaller
	SteadyBeats                // beats in proportion to prop turns
	LeastJump                  // beats for the least jump across the tether
	Ease                       // the hand eases into the seam and out of it
	PropNext                   // the next piece takes the whole ratio that joins smoothly
	PropBefore                 // the piece before does
	Radius                     // the circle takes the size that joins smoothly
	FlipProp                   // the next piece's prop turns the other way
	ShareAll                   // all beats of the lane for the least jumps
	EaseAll                    // the same, with hands eased where beats are not enough
	LastCycles                 // the last piece goes on, or stops, where the hand began
	LastArm                    // the last piece's arm speed brings the hand back
	CloseProp                  // a piece takes the prop speed that brings the prop back
	RepeatRound                // the round is written out until the prop is back
	Kinds                      // how many there are
)

// Whole stands for the lane as a whole where a seam's index is wanted.
const Whole = -1

// Fix is one way to put something right.
type Fix struct {
	Kind Kind
	Seam int         // index of the piece before the seam, or Whole
	Lane engine.Lane // the lane with the fix done
	// Before and After are the seam without and with the fix; for Whole, the
	// lane's worst seam of each.
	Before, After seam.Seam
	Others        []Other // other seams that got better or worse
	// Closed and Closing say how the lane closes without and with the fix.
	Closed, Closing engine.Closing
	RoundWas        frac.Frac // the round's length in beats without the fix
	// Bend (m) is how far the head's curve leaves the one before: the greatest
	// distance of a point of an eased piece's curve from the same piece's
	// curve uneased, over bendRounds rounds at most; 0 where no piece is eased.
	Bend    float64
	Changes []Change
}

// Other is a seam other than the one fixed that is not as it was.
type Other struct {
	Before, After seam.Seam
	Better        bool
}

// Worsens reports whether a seam other than the one fixed got worse.
func (f *Fix) Worsens() bool {
	return slices.ContainsFunc(f.Others, func(o Other) bool { return !o.Better })
}

// Unclosed reports whether the lane closed without the fix and no longer does,
// or takes more rounds to.
func (f *Fix) Unclosed() bool {
	return f.Closed.Closes() && (!f.Closing.Closes() || f.Closing.Rounds.Cmp(f.Closed.Rounds) > 0)
}

// Stretches reports whether the round takes another time than without the
// fix, so that the other hand, if there is one, would no longer be with it. A round
// written out several times is played as before.
func (f *Fix) Stretches() bool {
	return f.Kind != RepeatRound && !f.Lane.Beats().Equal(f.RoundWas)
}

// Of returns the fixes that would help the seam after piece i of a lane, at a
// tempo in beats a minute; none if it is smooth. First come those that make it
// smooth and no other seam worse, then those that make it smooth, then the
// rest; among equals, those that keep the round, then
// the curve, and change least.
func Of(lane engine.Lane, who engine.Performer, tempo float64, i int) []Fix {
	fixes := slices.Collect(Each(lane, who, tempo, i))
	slices.SortStableFunc(fixes, order)
	return fixes
}

// Each is Of one at a time, each worked out when it is asked for, in the order
// of the kinds: for long lanes, of which Of takes too long for one frame.
func Each(lane engine.Lane, who engine.Performer, tempo float64, i int) iter.Seq[Fix] {
	return func(yield func(Fix) bool) {
		if i < 0 || i >= len(lane.Pieces) {
			return
		}
		s := newSite(lane, who, tempo, i)
		if s.seam.Verdict == seam.Smooth {
			return
		}
		var seen []engine.Lane
		for _, way := range ways {
			for _, l := range way.lanes(s) {
				if slices.ContainsFunc(seen, l.Equal) {
					continue
				}
				seen = append(seen, l)
				f, ok := s.weigh(way.kind, l)
				if ok && way.does(f.After) && !yield(f) {
					return
				}
			}
		}
	}
}

// ways are the kinds of fix for one seam: the lanes that each may lead to, and
// what it must do to be worth offering beside making the seam better.
var ways = []struct {
	kind  Kind
	lanes func(*site) []engine.Lane
	does  func(after seam.Seam) bool
}{
	{CarryOn, (*site).carryOn, helps},
	{StartElsewhere, (*site).startElsewhere, meetsHand},
	{StartFitting, (*site).startFitting, meetsAll},
	{StartProp, (*site).startProp, meetsProp},
	{MovePath, (*site).movePath, meetsHand},
	{TurnPath, (*site).turnPath, meetsHand},
	{ResizePath, (*site).resizePath, meetsHand},
	{SteadyBeats, (*site).steadyBeats, helps},
	{LeastJump, (*site).leastJump, helps},
	{Ease, (*site).ease, helps},
	{PropNext, (*site).propNext, smooths},
	{PropBefore, (*site).propBefore, smooths},
	{Radius, (*site).radius, smooths},
	{FlipProp, (*site).flipProp, helps},
}

func helps(seam.Seam) bool       { return true }
func smooths(s seam.Seam) bool   { return s.Verdict == seam.Smooth }
func meetsHand(s seam.Seam) bool { return s.HandGap <= engine.TolGap }
func meetsAll(s seam.Seam) bool  { return s.Verdict > seam.Gap }
func meetsProp(s seam.Seam) bool { return s.PropGap <= engine.TolPropGap }

// site is a seam with all that a fix needs to know of it.
type site struct {
	judge
	i, next       int
	seam          seam.Seam
	before, after engine.State // on the two sides, in round 0
}

func newSite(lane engine.Lane, who engine.Performer, tempo float64, i int) *site {
	s := &site{judge: newJudge(lane, who, tempo), i: i, next: (i + 1) % len(lane.Pieces)}
	s.seam = seam.At(s.track, i, tempo, who.Rigid)
	s.before, s.after = seam.Sides(s.track, i, 0)
	return s
}

// pieces returns copies of the pieces before and after the seam.
func (s *site) pieces() (a, b engine.Piece) { return s.lane.Pieces[s.i], s.lane.Pieces[s.next] }

// alone reports whether a piece meets itself.
func (s *site) alone() bool { return s.i == s.next }

// with returns the lane with piece i replaced.
func (s *site) with(i int, p engine.Piece) engine.Lane {
	l := s.lane
	l.Pieces = slices.Clone(l.Pieces)
	l.Pieces[i] = p
	return l
}

// withBoth returns the lane with both pieces of the seam replaced.
func (s *site) withBoth(a, b engine.Piece) engine.Lane {
	l := s.with(s.i, a)
	l.Pieces[s.next] = b
	return l
}

// weigh returns the fix that leads to a lane; ok is false if no file could
// hold it or it does not help the seam.
func (s *site) weigh(kind Kind, lane engine.Lane) (f Fix, ok bool) {
	if !fits(lane) {
		return f, false
	}
	t := engine.NewTrack(lane)
	after := seam.At(t, s.i, s.tempo, s.who.Rigid)
	if compare(s.seam, after) <= 0 {
		return f, false
	}
	f = s.judge.fix(kind, t)
	f.Seam, f.Before, f.After = s.i, s.seam, after
	f.Others = slices.DeleteFunc(f.Others, func(o Other) bool { return o.After.After == s.i })
	return f, true
}
