package follow

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// try is a movement with a prop speed and a rate.
type try struct {
	move     int     // index of the movement
	speed    int     // turns of the prop for each turn of the arm, signed in itself
	pace     float64 // the rate to the steady one
	same     bool    // on the path of the piece before
	straight bool
	kind     Kind
	leg      engine.Leg
	join     seam.Seam
}

const (
	// farOff bounds how many times as fast or as slow the arm may become: from
	// an isolation of half a tether into the greatest antispin it is 13. The
	// small excess keeps 16 itself in, however it is rounded.
	farOff = 16 + 1e-9
	// beatsNear (share of the beats) and countable: beats that are a fraction
	// with this denominator at most are taken exactly.
	beatsNear = 1e-9
	countable = 12
	// ofKink is the share of the kink's tolerance that is given away for the
	// simplest beats where the exact ones cannot be counted.
	ofKink = 0.5
	// manyBeats: a file holds no longer stroke.
	manyBeats = 10_000
	// nothing (m/s): a velocity below it is rounding.
	nothing = 1e-9
)

// tries returns every movement with every prop speed that the prop allows.
func (a *ask) tries() []try {
	sense := a.before.Piece.Prop.Sign()
	out := make([]try, 0, len(a.moves)*MostSpeed)
	for k := range a.moves {
		for n := 1; n <= MostSpeed; n++ {
			for _, s := range []int{a.handedness(), -a.handedness()} {
				if sense*s < 0 && !a.pattern.Performer.Rigid {
					continue
				}
				if y, ok := a.try(k, n*s); ok {
					out = append(out, y)
				}
			}
		}
	}
	return out
}

// try gives a movement a prop speed, and the rate that makes its join smooth,
// where there is one; else, or where the join is smooth so, the arm keeps up
// its rate.
func (a *ask) try(move, speed int) (try, bool) {
	steady := a.steadyBeats(move, speed)
	better, has := a.smoothBeats(&a.moves[move], speed, steady)
	if has {
		if y, ok := a.at(move, speed, better); ok && y.join.Verdict == seam.Smooth {
			y.pace = steady.Float() / better.Float()
			return y, true
		}
	}
	y, ok := a.at(move, speed, steady)
	y.pace = 1
	return y, ok
}

// at makes a try of the given beats; ok is false where it cannot be written or
// leaves a gap.
func (a *ask) at(move, speed int, beats frac.Frac) (y try, ok bool) {
	m := &a.moves[move]
	p := engine.Stroke(m.path, whole(m.sense), whole(speed), m.sweep, beats)
	p.ArmAt = m.armAt
	p.Law = a.law()
	y = try{move: move, speed: speed, same: m.same, straight: m.path.IsLine(), leg: engine.NewLeg(p, a.track.Lane, m.leg.Arm0, a.state.Prop)}
	y.leg.Start = a.track.Starts()[a.piece+1].Float()
	y.join = seam.Join{Before: a.before, After: &y.leg, Carry: a.carry(m.sweep, speed)}.
		Judge(a.pattern.Tempo, a.pattern.Performer.Rigid)
	y.kind = a.kind(m, &y)
	long := beats.Float()
	return y, long > 0 && long <= manyBeats && y.join.Verdict > seam.Stop
}

// law returns how the arm sets off: from rest, where the piece before eases to
// its end.
func (a *ask) law() engine.Law {
	p := a.before.Piece
	if a.armMoves() && p.To.IsOne() && (p.Law == engine.EaseEnd || p.Law == engine.EaseBoth) {
		return engine.EaseStart
	}
	return engine.Even
}

func (a *ask) armMoves() bool { return !a.before.Piece.Arm.IsZero() && !a.before.Piece.Path.IsPoint() }

// steadyBeats returns the beats in which the arm keeps its mean rate, or the
// prop where the arm has been staying; a quarter turn a beat where nothing has
// moved.
func (a *ask) steadyBeats(move, speed int) frac.Frac {
	m, p := &a.moves[move], a.before.Piece
	switch {
	case a.armMoves():
		return m.beats
	case !p.Prop.IsZero():
		return m.sweep.Mul(p.Beats).Div(p.Prop.Mul(p.Cycles).Abs()).Mul(whole(max(speed, -speed)))
	}
	return m.sweep.Div(quarter)
}

// smoothBeats returns the beats in place of the steady ones at which the head
// would go on across the tether as it came, ok false where there are none or no
// need: all its velocity goes with the rate. They are the simplest fraction that the
// kink's tolerance allows, exact where that can be counted.
func (a *ask) smoothBeats(m *movement, speed int, steady frac.Frac) (beats frac.Frac, ok bool) {
	bps := a.pattern.Tempo / 60
	comes := float64(across(a.state.HeadVel, a.state.Prop) * bps)
	inOne := (m.handAcross + float64(m.propAcross*float64(speed))) * bps // m/s, if it took one beat
	now := steady.Float()
	if math.Abs(inOne/now-comes) <= engine.TolKink || math.Abs(comes) < nothing {
		return frac.Frac{}, false
	}
	want := inOne / comes
	if want < now/farOff || want > now*farOff {
		return frac.Frac{}, false
	}
	if f := frac.Near(want, want*beatsNear, countable); math.Abs(f.Float()-want) <= want*beatsNear {
		return f, true
	}
	const fine = 10_000 // of a beat; more is beyond any tolerance
	return frac.Near(want, want*ofKink*engine.TolKink/max(math.Abs(comes), engine.TolKink), fine), true
}

// across returns the part of a velocity that is square to the prop, counted
// anticlockwise.
func across(velocity complex128, prop float64) float64 {
	return imag(engine.Product(velocity, cmplx.Rect(1, -prop)))
}

// kind says what the hand does at the join.
func (a *ask) kind(m *movement, y *try) Kind {
	const straight = 0.1 // degrees; well above a circle's rounding, below any corner
	p := a.before.Piece
	switch {
	case !y.join.HasTurn:
		return SetsOff
	case m.same && m.sense == p.Arm.Sign() && p.Swing == 0 && p.Prop.Equal(p.Arm.Mul(whole(y.speed*m.sense))):
		return Again
	case y.join.HandTurnsBack:
		return TurnsBack
	case y.join.Turn > straight:
		return Corner
	case bendOf(a.before)*m.bend < 0:
		return OtherSide
	}
	return GoesOn
}
