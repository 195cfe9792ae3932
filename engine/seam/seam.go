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
	rounds := Rounds(t)
	for i := range seams {
		seams[i] = judge(t, i, rounds, tempo/60, rigid)
	}
	return seams
}

// At judges the one seam after piece i, as Of does.
func At(t *engine.Track, i int, tempo float64, rigid bool) Seam {
	return judge(t, i, Rounds(t), tempo/60, rigid)
}

// Sides returns the states on the two sides of the seam after piece i, where
// "before" lies in the round given.
func Sides(t *engine.Track, i, round int) (before, after engine.State) {
	next := (i + 1) % len(t.Legs)
	then := round
	if next == 0 {
		then++
	}
	return t.AtPiece(round, i, 1), t.AtPiece(then, next, 0)
}

// Rounds returns how many rounds are looked at: the closing rounds, MostRounds
// at most; a lane that never closes shows MostRounds different ones unless it
// is pinned.
func Rounds(t *engine.Track) int {
	if t.Pinned {
		return 1
	}
	c := t.Closing()
	if !c.Closes() || !c.Rounds.IsInt64() {
		return MostRounds
	}
	return int(min(c.Rounds.Int64(), MostRounds))
}

func judge(t *engine.Track, i, rounds int, beatsPerSecond float64, rigid bool) Seam {
	next := (i + 1) % len(t.Legs)
	a, b := &t.Legs[i], &t.Legs[next]
	s := Seam{After: i}
	s.turn(a, b)
	s.ArmReverses = opposed(a.Piece.Arm.Sign(), b.Piece.Arm.Sign()) && closedCurve(a) && closedCurve(b)
	s.PropReverses = opposed(a.Piece.Prop.Sign(), b.Piece.Prop.Sign())
	for r := range rounds {
		before, after := Sides(t, i, r)
		s.figures(before, after, beatsPerSecond)
	}
	s.Verdict = s.verdict(rigid)
	return s
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
