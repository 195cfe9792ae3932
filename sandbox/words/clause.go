package words

import (
	"fmt"

	"whorlbench/engine/naming"
)

// Definition is what one of the definitions says of a pattern.
type Definition struct {
	Name    string
	Yes     bool
	Because string // begins with yes or no
}

// The places of the definitions in Definitions.
const (
	DefElementary = iota
	DefBroad
	DefStrict
	DefC
	DefS
	DefDiamond
	DefHybrid
)

// Definitions tells what each definition says of a lane: elementary, CAP in the
// broad and the strict sense, C-cap, S-cap, diamond.
func (t *Table) Definitions(w *naming.Whole) []Definition {
	rulings := [...]naming.Ruling{w.Elementary, w.Broad, w.Strict, w.C, w.S, w.Diamond}
	defs := make([]Definition, len(rulings))
	for i, r := range rulings {
		defs[i] = t.definition(i, r)
	}
	return defs
}

// Reading tells what one reading of a word says of a pattern.
func (t *Table) Reading(name string, r naming.Ruling) Definition {
	d := t.definition(DefElementary, r)
	d.Name = name
	return d
}

// HybridDefinition tells whether two hands do different patterns.
func (t *Table) HybridDefinition(r naming.Ruling) Definition { return t.definition(DefHybrid, r) }

func (t *Table) definition(i int, r naming.Ruling) Definition {
	w := &t.Whole
	format := w.No
	if r.Yes {
		format = w.Yes
	}
	return Definition{w.Names[i], r.Yes, fmt.Sprintf(format, t.clause(r))}
}

// clause says why, of any ruling.
func (t *Table) clause(r naming.Ruling) string {
	w := &t.Whole
	piece, other := r.Piece+1, r.Other+1
	say := fmt.Sprintf
	switch r.Clause {
	case naming.NeverCloses:
		return say(w.NeverCloses, Metres(r.Gap))
	case naming.OnePattern, naming.ThereAndBack:
		return t.onePattern(r)
	case naming.TwoPatterns:
		return t.twoPatterns(r)
	case naming.NewEachRound:
		if r.Yes {
			return say(w.NewRoundCap, r.Round+1)
		}
		return say(w.NewRound, r.Round+1)
	case naming.HandJumps:
		return say(w.Hand, piece, Metres(r.Gap))
	case naming.PropJumps:
		return say(w.Prop, piece, number(r.Gap, 3))
	case naming.HeadJumps:
		return say(w.Head, piece, Metres(r.Gap))
	case naming.NotBroad:
		return w.NotBroad
	case naming.NoFlower:
		return say(w.NoFlower, t.noFlower(r.Figures[0], piece))
	case naming.NeverTurns:
		return w.NeverTurns
	case naming.TurnsBack:
		return say(w.TurnsBack, piece)
	case naming.ArmReverses:
		return say(w.ArmReverses, piece)
	case naming.NotStrict:
		return w.NotStrict
	case naming.OtherCircle:
		return say(w.OtherCircle, piece, other)
	case naming.WholeCircle:
		return say(w.WholeCircle, piece)
	case naming.UnequalArcs:
		return say(w.Unequal, piece)
	case naming.OneArc:
		return w.OneArc
	case naming.OnlyOneArc:
		return w.OnlyOneArc
	case naming.NoTurnBack:
		return w.NoTurnBack
	case naming.NotTwoArcs:
		if r.Count == 1 {
			return w.SingleArc
		}
		return say(w.ArcCount, t.counting(r.Count))
	case naming.BendOneWay:
		return say(w.BendOneWay, piece, other)
	case naming.OtherWayBack:
		return w.OtherWayBack
	case naming.TwoArcs:
		return w.TwoArcs
	case naming.NotStraight:
		return say(w.NotStraight, piece)
	case naming.NotFourSides:
		switch {
		case r.Count == 0:
			return w.NoSide
		case r.Count > 4:
			return w.ManyCorners
		}
		return say(w.FewCorners, t.counting(r.Count))
	case naming.NotSquare:
		return w.NotSquare
	case naming.NotRound:
		return w.NotRound
	case naming.FourSides:
		return w.FourSides
	case naming.HandsAlike:
		return w.HandsAlike
	case naming.HandsSwap:
		return say(w.HandsSwap, t.one(r.Figures[0]), t.one(r.Figures[1]))
	case naming.HandsShare:
		return say(w.HandsShare, t.one(r.Figures[0]))
	case naming.HandsShareNone:
		return w.HandsShareNone
	case naming.NoneBeside:
		return w.NoneBeside
	}
	left, right := t.one(r.Figures[0]), t.one(r.Figures[1])
	switch {
	case left == right:
		return say(w.HandsElsewhere, t.inProse(r.Figures[0]))
	case r.Beat > 0:
		return say(w.HandsDifferAt, left, right, number(r.Beat, 3))
	}
	return say(w.HandsDiffer, left, right)
}

func (t *Table) onePattern(r naming.Ruling) string {
	w := &t.Whole
	name := t.one(r.Figures[0])
	switch {
	case !r.Yes:
		return fmt.Sprintf(w.OnlyOne, name)
	case r.Clause == naming.ThereAndBack:
		return fmt.Sprintf(w.Back, name)
	case r.Count == 1:
		return fmt.Sprintf(w.One, name)
	case r.Count == 2:
		return fmt.Sprintf(w.Pair, name)
	}
	return fmt.Sprintf(w.All, r.Count, name)
}

func (t *Table) twoPatterns(r naming.Ruling) string {
	w := &t.Whole
	two, both := w.Two, w.Both
	if r.Yes {
		two, both = w.TwoCap, w.BothCap
	}
	a, b := t.one(r.Figures[0]), t.one(r.Figures[1])
	if a == b {
		a = t.inProse(r.Figures[0])
		return fmt.Sprintf(both, r.Piece+1, r.Other+1, a, w.Differences[r.Difference])
	}
	return fmt.Sprintf(two, r.Piece+1, a, r.Other+1, b)
}

// noFlower says what a piece is that is no slice of a flower.
func (t *Table) noFlower(f naming.Figure, piece int) string {
	w := &t.Whole
	format := w.Straight
	switch f.Kind {
	case naming.EllipsePath:
		format = w.Oval
	case naming.Star:
		format = w.Star
	case naming.Carried:
		format = w.Carried
	case naming.StaticSpin:
		format = w.Static
	case naming.HeldStill:
		format = w.Still
	case naming.Pendulum:
		format = w.Swings
	}
	return fmt.Sprintf(format, piece)
}

func (t *Table) counting(n int) string {
	if n < len(t.Figure.Counted) {
		return t.Figure.Counted[n]
	}
	return fmt.Sprint(n)
}
