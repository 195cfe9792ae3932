// Package seam judges where two pieces meet: how far hand and prop jump, which
// way the hand turns, and whether a tether could pass on what it asks for.
//
// A lane of n pieces has n seams, the last piece into the first included. At
// that closing seam "before" lies in one round and "after" in the next.
package seam

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
)

// Verdict is what a seam is, worst first.
type Verdict uint8

// The verdicts. Gap: hand, head or prop jump. Stop: a tethered prop would
// have to stop and turn back. Kink: the head's velocity jumps across the
// tether, which passes no such pull. Smooth: none of these.
const (
	Gap Verdict = iota
	Stop
	Kink
	Smooth
)

// Seam is what there is to say of one seam. Where rounds differ, each figure
// by itself is the one of greatest size over the rounds looked at, the
// earliest on a tie, with its sign.
type Seam struct {
	After         int            // index of the piece before the seam
	HandGap       float64        // m
	HeadGap       float64        // m
	PropGap       engine.Degrees // 0 to 180
	HasTurn       bool           // false where the hand stays on one side
	Turn          engine.Degrees // of the hand's heading, 0 to 180
	HandTurnsBack bool           // Turn exceeds engine.TurnBack
	ArmReverses   bool           // signs of the arm speeds differ, both paths closed curves
	PropReverses  bool           // signs of the prop speeds differ
	JumpAlong     float64        // m/s, after less before, outward along the tether before
	JumpAcross    float64        // m/s, likewise, anticlockwise across it
	Verdict       Verdict
}

// MostRounds bounds how many rounds are looked at.
const MostRounds = 64

// A later round must exceed an earlier one by more than tie (in the figure's
// own unit) to replace it: sizes that differ by rounding alone are equal. Of a
// velocity, rounding takes the share dust for each radian that arm and prop
// have turned.
const (
	tie  = 1e-9
	dust = 1e-15
)

// Of judges the seams of a lane at a tempo in beats a minute, in the lane's
// order. A rigid prop may stop and turn back.
func Of(t *engine.Track, tempo float64, rigid bool) []Seam {
	seams := make([]Seam, len(t.Legs))
	for i := range seams {
		seams[i] = At(t, i, tempo, rigid)
	}
	return seams
}

// At judges the one seam after piece i, as Of does.
func At(t *engine.Track, i int, tempo float64, rigid bool) Seam {
	s := joinAt(t, i).Judge(tempo, rigid)
	s.After = i
	return s
}

// Sides returns the states on the two sides of the seam after piece i, where
// "before" lies in the round given.
func Sides(t *engine.Track, i, round int) (before, after engine.State) {
	return joinAt(t, i).sides(round)
}

func joinAt(t *engine.Track, i int) Join {
	next := (i + 1) % len(t.Legs)
	return Join{Before: &t.Legs[i], After: &t.Legs[next], NextRound: next == 0, Carry: t.Carry}
}

// Rounds returns how many rounds are looked at: those after which the prop's
// angles repeat, MostRounds at most.
func Rounds(t *engine.Track) int { return t.Carry.Rounds(MostRounds) }

// Join is one seam of a lane by itself: two legs, each where round 0 has it.
type Join struct {
	Before, After *engine.Leg
	NextRound     bool         // After begins the round after the one that Before ends
	Carry         engine.Carry // how the lane's prop goes on from round to round
}

// Judge judges the seam at a tempo in beats a minute; Seam.After is left 0. A
// rigid prop may stop and turn back.
func (j Join) Judge(tempo float64, rigid bool) Seam {
	a, b := j.Before, j.After
	var s Seam
	s.turn(a, b)
	s.ArmReverses = opposed(a.Piece.Arm.Sign(), b.Piece.Arm.Sign()) && closedCurve(a) && closedCurve(b)
	s.PropReverses = opposed(a.Piece.Prop.Sign(), b.Piece.Prop.Sign())
	// A lane whose hand never comes back repeats its prop's angles all the same.
	for r := range j.Carry.Rounds(MostRounds) {
		before, after := j.sides(r)
		s.figures(before, after, tempo/60)
	}
	s.Verdict = s.verdict(rigid)
	return s
}

func (j Join) sides(round int) (before, after engine.State) {
	then := round
	if j.NextRound {
		then++
	}
	return j.Before.StateAfter(1, j.Carry.TurnedBy(round)), j.After.StateAfter(0, j.Carry.TurnedBy(then))
}

func opposed(a, b int) bool { return a*b < 0 }

// closedCurve reports whether the arm goes round on the leg's path, as it was
// written.
func closedCurve(g *engine.Leg) bool {
	k := g.Piece.Path.Kind
	return k == engine.OnCircle || k == engine.OnEllipse
}

func (s *Seam) turn(a, b *engine.Leg) {
	u, okA := a.Heading(1)
	v, okB := b.Heading(0)
	if !okA || !okB {
		return
	}
	s.HasTurn = true
	z := engine.Product(v, cmplx.Conj(u))
	s.Turn = engine.ToDegrees(math.Atan2(math.Abs(imag(z)), real(z)))
	s.HandTurnsBack = float64(s.Turn) > engine.TurnBack
}

// figures takes one round's jumps in.
func (s *Seam) figures(before, after engine.State, beatsPerSecond float64) {
	keep(&s.HandGap, cmplx.Abs(after.Hand-before.Hand), tie)
	keep(&s.HeadGap, cmplx.Abs(after.Head-before.Head), tie)
	prop := float64(s.PropGap)
	keep(&prop, math.Abs(float64(engine.ToDegrees(math.Remainder(after.Prop-before.Prop, 2*math.Pi)))), tie)
	s.PropGap = engine.Degrees(prop)
	// In the frame of the tether before the seam: real along, imaginary across.
	jump := engine.Product(after.HeadVel-before.HeadVel, cmplx.Rect(beatsPerSecond, -before.Prop))
	within := max(tie, dust*beatsPerSecond*blur(before, after))
	keep(&s.JumpAlong, real(jump), within)
	keep(&s.JumpAcross, imag(jump), within)
}

// blur is how far rounding can move a part of the jump from a to b, in dust.
func blur(a, b engine.State) float64 {
	const few = 8 // roundings besides those of the angles
	turned := few + math.Abs(a.Arm) + math.Abs(a.Prop) + math.Abs(b.Arm) + math.Abs(b.Prop)
	speeds := cmplx.Abs(a.HandVel) + cmplx.Abs(a.HeadVel) + cmplx.Abs(b.HandVel) + cmplx.Abs(b.HeadVel)
	return turned * speeds
}

// keep puts x in worst's place if it is greater in size by more than within.
func keep(worst *float64, x, within float64) {
	if math.Abs(x)-math.Abs(*worst) > within || *worst == 0 {
		*worst = x
	}
}

func (s *Seam) verdict(rigid bool) Verdict {
	switch {
	case s.HandGap > engine.TolGap || s.HeadGap > engine.TolGap || s.PropGap > engine.TolPropGap:
		return Gap
	case s.PropReverses && !rigid:
		return Stop
	case math.Abs(s.JumpAcross) > engine.TolKink:
		return Kink
	}
	return Smooth
}
