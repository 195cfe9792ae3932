package mend

import (
	"math"
	"slices"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// CloseLane returns what would make a lane come back to its start after one
// round: first the hand, then the prop. None if it does already.
func CloseLane(lane engine.Lane, who engine.Performer, tempo float64) []Fix {
	j := newJudge(lane, who, tempo)
	c := j.track.Closing()
	var fixes []Fix
	offer := func(kind Kind, l engine.Lane) {
		if !fits(l) {
			return
		}
		f := j.fix(kind, engine.NewTrack(l))
		better := f.Closing.Closes() && (!c.Closes() || f.Closing.Rounds.Cmp(c.Rounds) < 0)
		if better && !slices.ContainsFunc(fixes, func(x Fix) bool { return x.Lane.Equal(l) }) {
			fixes = append(fixes, f)
		}
	}
	switch {
	case !c.Closes():
		last := len(lane.Pieces) - 1
		s := newSite(lane, who, tempo, last)
		for _, l := range s.startElsewhere() {
			offer(StartElsewhere, l)
		}
		for _, l := range lastCycles(j.track) {
			offer(LastCycles, l)
		}
		for _, l := range lastArm(j.track) {
			offer(LastArm, l)
		}
	case !isOne(c):
		for _, l := range closeProp(j.track) {
			offer(CloseProp, l)
		}
		if l, ok := repeated(j.track, c); ok {
			offer(RepeatRound, l)
		}
	}
	slices.SortStableFunc(fixes, order)
	return fixes
}

func isOne(c engine.Closing) bool { return c.Rounds.IsInt64() && c.Rounds.Int64() == 1 }

// shortfalls returns by how many turns, signed, the arm of the last piece
// would have to go further to end where the round begins: the least way each
// way round.
func shortfalls(t *engine.Track) []frac.Frac {
	// Turns: of the angles that a person writes, and of quarters, thirds and
	// the like; far below engine.TolGap on any path.
	const near, dens = 1e-10, 36_000
	last := &t.Legs[len(t.Legs)-1]
	begin, end := t.Legs[0].State(0), last.State(1)
	var list []frac.Frac
	for _, arm := range armsAt(last.Path(), begin.Hand) {
		turns := (arm - end.Arm) / (2 * math.Pi)
		part := frac.Near(turns-math.Floor(turns), near, dens)
		list = append(list, part, part.Sub(frac.Int(1)))
	}
	slices.SortStableFunc(list, func(a, b frac.Frac) int { return a.Abs().Cmp(b.Abs()) })
	return list
}

// lastCycles lets the last piece go on, or stop earlier, at its own speeds,
// until the hand is where the round begins.
func lastCycles(t *engine.Track) []engine.Lane {
	p := t.Lane.Pieces[len(t.Legs)-1]
	if rests(p) || !asWhole(p).IsWhole() {
		return nil
	}
	p = asWhole(p)
	var lanes []engine.Lane
	for _, more := range shortfalls(t) {
		q := p
		q.Cycles = p.Cycles.Add(more.Div(p.Arm))
		if q.Cycles.Sign() > 0 {
			q.Beats = p.Beats.Mul(q.Cycles).Div(p.Cycles)
			lanes = append(lanes, withLast(t.Lane, q))
		}
	}
	return lanes[:min(len(lanes), 2)]
}

// lastArm gives the last piece the arm speed that brings the hand back, its
// prop and its time left as they are.
func lastArm(t *engine.Track) []engine.Lane {
	p := t.Lane.Pieces[len(t.Legs)-1]
	if p.Path.IsPoint() || !asWhole(p).IsWhole() {
		return nil
	}
	p = asWhole(p)
	var lanes []engine.Lane
	for _, more := range shortfalls(t) {
		q := p
		q.Arm = p.Arm.Add(more.Div(p.Cycles))
		if !q.Arm.IsZero() {
			lanes = append(lanes, withLast(t.Lane, q))
		}
	}
	return lanes[:min(len(lanes), 2)]
}

func withLast(l engine.Lane, p engine.Piece) engine.Lane {
	l.Pieces = slices.Clone(l.Pieces)
	l.Pieces[len(l.Pieces)-1] = p
	return l
}

// closeProp gives one piece the prop speed with which the prop turns a whole
// number of turns in a round, its sense kept: each piece that then has a whole
// ratio, or the last if none has; the least change comes first.
func closeProp(t *engine.Track) []engine.Lane {
	over := t.PerRound.Mod1()
	var whole, last []engine.Lane
	for _, more := range []frac.Frac{over.Neg(), frac.Int(1).Sub(over)} {
		for i, p := range t.Lane.Pieces {
			q := p
			q.Prop = p.Prop.Add(more.Div(p.Cycles.Mul(p.Kept())))
			if q.Prop.Sign() != p.Prop.Sign() {
				continue
			}
			l := t.Lane
			l.Pieces = slices.Clone(l.Pieces)
			l.Pieces[i] = q
			if !rests(p) && q.Prop.Div(q.Arm).IsInt() {
				whole = append(whole, l)
			} else if i == len(t.Legs)-1 {
				last = append(last, l)
			}
		}
	}
	if len(whole) == 0 {
		whole = last
	}
	return whole[:min(len(whole), 4)]
}

// repeated writes the round out as often as it takes to close, few times at
// most. The first piece of a copy is placed where the round begins if carrying
// on would not bring it there.
func repeated(t *engine.Track, c engine.Closing) (engine.Lane, bool) {
	const rounds, pieces = 8, 64
	l := t.Lane
	if !c.Rounds.IsInt64() || c.Rounds.Int64() > rounds || int(c.Rounds.Int64())*len(l.Pieces) > pieces {
		return l, false
	}
	again := slices.Clone(l.Pieces)
	begin, end := t.Legs[0].State(0).Arm, t.Legs[len(t.Legs)-1].State(1).Arm
	if math.Abs(math.Remainder(end-begin, 2*math.Pi)) > math.Abs(engine.Degrees(engine.TolPropGap).Radians()) && !again[0].ArmAt.Set {
		again[0].ArmAt = engine.Some(l.ArmAt)
	}
	l.Pieces = slices.Clone(l.Pieces)
	for range c.Rounds.Int64() - 1 {
		l.Pieces = append(l.Pieces, again...)
	}
	return l, seam.Rounds(engine.NewTrack(l)) == 1
}
