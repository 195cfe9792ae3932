package follow

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// movement is one way in which the hand can go from here.
type movement struct {
	path  engine.Path   // as a piece has it: the lane's centre not added
	armAt engine.Opt    // where the arm's number does not carry on
	sense int           // of the arm
	sweep frac.Frac     // turns of the arm, > 0
	bend  int           // anticlockwise positive, 0 for a stroke
	same  bool          // the path of the piece before
	probe [2]complex128 // where the hand is after an eighth and three eighths of a turn
	leg   engine.Leg    // the hand's way in one beat, with the prop turning like the arm
	beats frac.Frac     // in which the arm keeps its mean rate, where it has one
	// What the head's velocity across the tether is at first, in m a beat: of
	// the hand, and of the prop for each of its turns to one of the arm.
	handAcross, propAcross float64

	looked     bool // for what comes later
	laterGap   bool
	comesRound complex128
}

const (
	// reachable (m): a file holds no centre further out, and no greater radius
	// than reachRadius.
	reachable   = 10
	reachRadius = 5
	// sameArm (m): an arm whose carried number puts the hand this near to its
	// place need not be placed; a thousandth of a gap.
	sameArm = engine.TolGap / 1000
	// sweepNear (turns) and sweepDen: the way to where the next piece begins is
	// taken if it is a fraction of a turn that a person would count.
	sweepNear = 1e-9
	sweepDen  = 48
)

// mover collects movements from one place.
type mover struct {
	*ask
	arm   int // the sense of a stroke's arm, which shows nowhere
	moves []movement
}

// movements returns the ways in which the hand can go, each once, in an order
// that a mirror keeps: the path of the piece before, then size by size.
func (a *ask) movements() []movement {
	m := &mover{ask: a, arm: a.before.Piece.Arm.Sign()}
	hand := a.handedness()
	if m.arm == 0 {
		m.arm = hand
	}
	if path := a.before.Path(); !path.IsPoint() {
		m.samePath(m.arm)
		m.samePath(-m.arm)
	}
	ahead, moving := a.before.Heading(1)
	if !moving {
		sin, cos := math.Sincos(a.state.Prop)
		ahead = complex(cos, sin)
	}
	bend := bendOf(a.before)
	if bend == 0 {
		bend = hand
	}
	aside := engine.Product(ahead, complex(0, float64(bend)))
	across := moving && a.before.Path().IsLine()
	for _, r := range sizes(a.pattern, a.track, a.piece) {
		if moving {
			m.circle(aside, r, bend, -bend)
			m.circle(-aside, r, -bend, bend)
		}
		if across || !moving {
			// Round the stroke's end or the prop's: square to the way here.
			m.circle(-ahead, r, hand, -hand)
			m.circle(ahead, r, hand, -hand)
		}
		m.stroke(ahead, r)
		if moving {
			m.stroke(aside, r)
		}
	}
	return m.moves
}

// handedness is the sense by which left is told from right, so that a mirror
// image is dealt with like its original: the prop's, else the arm's.
func (a *ask) handedness() int {
	if s := a.before.Piece.Prop.Sign(); s != 0 {
		return s
	}
	if s := a.before.Piece.Arm.Sign(); s != 0 {
		return s
	}
	return 1
}

// bendOf returns the sense in which a leg's hand path bends, 0 where straight.
func bendOf(g *engine.Leg) int {
	if path := g.Path(); path.IsLine() || path.IsPoint() {
		return 0
	}
	return g.Piece.Arm.Sign()
}

func (m *mover) samePath(sense int) {
	m.add(movement{path: m.before.Piece.Path, sense: sense, same: true}, engine.ToDegrees(m.state.Arm), half, true)
}

// circle adds the circle of radius r whose centre lies from here in the
// direction of the unit inward.
func (m *mover) circle(inward complex128, r float64, senses ...int) {
	path := engine.CirclePath(m.place(inward, r), r)
	for _, sense := range senses {
		m.add(movement{path: path, sense: sense}, toDegrees(-inward), half, false)
	}
}

// stroke adds the straight strokes of half length r along a direction that
// have an end or their middle here.
func (m *mover) stroke(along complex128, r float64) {
	for _, d := range []complex128{along, -along} {
		end := toDegrees(-d)
		m.add(movement{path: engine.LinePath(m.place(d, r), r, end), sense: m.arm}, end, half, false)
	}
	for _, d := range []complex128{along, -along} {
		tilt := toDegrees(d)
		m.add(movement{path: engine.LinePath(m.place(0, r), r, tilt), sense: m.arm},
			tilt-engine.Degrees(90*m.arm), quarter, false)
	}
}

// place returns the centre that lies from here by r in a direction, as a piece
// has it.
func (m *mover) place(d complex128, r float64) complex128 {
	return engine.TidyPlace(m.state.Hand + engine.Product(complex(r, 0), d) - m.track.Lane.Centre)
}

func toDegrees(z complex128) engine.Degrees {
	return engine.ToDegrees(math.Atan2(imag(z), real(z))).Tidy()
}

var (
	quarter = frac.New(1, 4)
	half    = frac.New(1, 2)
)

// add takes a movement in, unless the hand moves so in one that is there. It
// begins at the arm angle begins, by the number that carries on if there is no
// difference, and goes as far as is usual where the next piece does not say.
func (m *mover) add(v movement, begins engine.Degrees, usual frac.Frac, carries bool) {
	if c := v.path.Centre; max(math.Abs(real(c)), math.Abs(imag(c))) > reachable || cmplx.Abs(c) > reachable {
		return
	}
	arm := m.state.Arm
	size := max(v.path.A, v.path.B)
	if off := math.Remainder(begins.Radians()-arm, turn); !carries && math.Abs(off)*size > sameArm {
		v.armAt = engine.Some(begins.Wrap().Tidy())
		arm = v.armAt.At.Radians()
	}
	if v.path.Kind != engine.OnLine {
		v.bend = v.sense
	}
	if v.same && m.before.Path().IsLine() {
		v.bend = 0
	}
	v.leg = engine.NewLeg(engine.Stroke(v.path, whole(v.sense), whole(v.sense), whole(1), whole(1)), m.track.Lane, arm, m.state.Prop)
	v.probe = [2]complex128{v.leg.Point(1. / 8).Hand, v.leg.Point(3. / 8).Hand}
	for k := range m.moves {
		if v.alike(&m.moves[k]) {
			return
		}
	}
	v.sweep = m.sweep(&v, usual)
	p := engine.Stroke(v.path, whole(v.sense), whole(v.sense), v.sweep, whole(1))
	p.Law = m.law()
	v.leg = engine.NewLeg(p, m.track.Lane, arm, m.state.Prop)
	at := v.leg.State(0)
	v.handAcross = across(at.HandVel, at.Prop)
	v.propAcross = float64(across(at.HeadVel-at.HandVel, at.Prop) * float64(v.sense))
	if q := m.before.Piece; m.armMoves() {
		v.beats = v.sweep.Mul(q.Beats).Div(q.Arm.Mul(q.Cycles).Abs())
	}
	m.moves = append(m.moves, v)
}

// alike reports whether the hand moves alike in v and w.
func (v *movement) alike(w *movement) bool {
	return cmplx.Abs(v.probe[0]-w.probe[0]) < engine.TolPath && cmplx.Abs(v.probe[1]-w.probe[1]) < engine.TolPath &&
		v.path.Same(w.path)
}

// sweep returns how far the arm should go: to where the next piece begins, if
// that is fixed and the path leads there, else as far as otherwise.
func (m *mover) sweep(v *movement, otherwise frac.Frac) frac.Frac {
	next, nextRound := m.next()
	if !nextRound && !next.Piece.ArmAt.Set {
		return otherwise
	}
	want := next.Point(0).Hand
	least, found := whole(2), false
	for _, arm := range armsAt(v.leg.Path(), want) {
		turns := (arm - v.leg.Arm0) * float64(v.sense) / turn
		turns -= math.Floor(turns)
		if turns < 0.5/sweepDen || turns > 1-0.5/sweepDen {
			turns = 1
		}
		f := frac.Near(turns, sweepNear, sweepDen)
		if cmplx.Abs(v.leg.Point(f.Float()).Hand-want) < sameArm && f.Less(least) {
			least, found = f, true
		}
	}
	if !found {
		return otherwise
	}
	return least
}

// look finds out how the rest of the round would run after the movement: what
// is not placed starts further on by as much as the arm ends elsewhere.
func (v *movement) look(a *ask) {
	if v.looked {
		return
	}
	v.looked = true
	end := v.leg.State(1)
	v.comesRound = end.Hand
	legs := a.track.Legs
	shift := end.Arm - a.state.Arm
	for k := a.piece + 1; k < len(legs); k++ {
		if legs[k].Piece.ArmAt.Set {
			shift = 0
		}
		leg := legs[k]
		leg.Arm0 += shift
		begins, ends := leg.Point(0).Hand, leg.Point(1).Hand
		if k > a.piece+1 && cmplx.Abs(begins-v.comesRound) > engine.TolGap {
			v.laterGap = true
		}
		v.comesRound = ends
	}
	if a.piece+1 < len(legs) && cmplx.Abs(legs[0].Point(0).Hand-v.comesRound) > engine.TolGap {
		v.laterGap = true
	}
}

// later reports whether the hand has a gap in the round after the join of the
// movement with what follows it.
func (v *movement) later(a *ask) bool {
	v.look(a)
	return v.laterGap
}

// roundEnd returns where the hand ends the round.
func (v *movement) roundEnd(a *ask) complex128 {
	v.look(a)
	return v.comesRound
}
