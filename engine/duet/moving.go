package duet

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
)

// A phase is an angle that changes as turn·G(t), where the profile G is
// common to all angles that change alike.
type phase struct {
	turn    float64 // radians, for an even profile radians a beat
	profile profile
}

// profile is how an angle's change is shared out over time: in proportion to
// the beats, by an arm law, or to and fro. Two profiles are one if all fields
// agree; start is the share of the stroke at the beginning of the stretch.
type profile struct {
	kind        profileKind
	law         engine.Law
	swings      float64 // periods of a pendulum over the stroke
	start, rate float64 // share of the stroke; shares a beat
	g1, g2      float64 // bounds on |G′|, |G″| a beat, a beat²
}

type profileKind uint8

const (
	evenly profileKind = iota
	byLaw
	toAndFro
)

// same allows for the rounding of the share that a stretch starts at.
func (f profile) same(g profile) bool {
	const dust = 1e-9
	return f.kind == g.kind && (f.kind == evenly ||
		f.law == g.law && f.swings == g.swings && math.Abs(f.start-g.start) <= dust && math.Abs(f.rate-g.rate) <= dust*g.rate)
}

// bend returns a bound on how fast the phase's rate changes, radians a beat².
func (p phase) bend() float64 { return float64(math.Abs(p.turn) * p.profile.g2) }

// fastest returns a bound on the phase's rate, radians a beat.
func (p phase) fastest() float64 { return float64(math.Abs(p.turn) * p.profile.g1) }

// in returns the phase with its profile as it is where the stretch begins at a
// share of the stroke.
func (p phase) in(share float64) phase {
	if p.profile.kind != evenly {
		p.profile.start = share
	}
	return p
}

// against returns a bound on the second derivative of e^{i(p − frame)}:
// rate² + bend.
func (p phase) against(frame phase) float64 {
	if p.profile.same(frame.profile) {
		w := math.Abs(p.turn - frame.turn)
		if w <= 1e-12*math.Abs(p.turn) {
			return 0
		}
		rate := w * p.profile.g1
		return float64(rate*rate) + float64(w*p.profile.g2)
	}
	rate := p.fastest() + frame.fastest()
	return float64(rate*rate) + p.bend() + frame.bend()
}

// moving is what a leg's movement is made of.
type moving struct {
	arm, prop         phase
	swings            float64 // of a pendulum over the stroke
	share0, shareRate float64 // of the stroke, at the piece's beginning and a beat
	turnsPerBeat      float64
}

func newMoving(g *engine.Leg) moving {
	p := g.Piece
	m := moving{share0: p.From.Float(), shareRate: 1 / p.Beats.Float()}
	armTurn := p.Arm.Mul(p.Cycles).Float() * 2 * math.Pi
	propTurns := p.Prop.Mul(p.Cycles).Float()
	even := profile{kind: evenly, g1: 1}
	m.arm = phase{armTurn * m.shareRate, even}
	if p.Law != engine.Even {
		// Of the laws' first and second derivatives, the greatest over a stroke.
		const d1 = math.Pi / 2
		d2 := d1 * d1
		if p.Law == engine.EaseBoth {
			d2 *= 2
		}
		m.arm = phase{armTurn, profile{kind: byLaw, law: p.Law, rate: m.shareRate, g1: d1 * m.shareRate, g2: d2 * m.shareRate * m.shareRate}}
	}
	m.prop = phase{propTurns * 2 * math.Pi * m.shareRate, even}
	if p.Swing != 0 {
		m.swings = propTurns
		w := math.Abs(propTurns) * 2 * math.Pi * m.shareRate
		swing := p.Swing.Radians()
		if p.SwingBack {
			swing = -swing
		}
		m.prop = phase{swing, profile{kind: toAndFro, swings: math.Abs(propTurns), rate: m.shareRate, g1: w, g2: w * w}}
	}
	m.turnsPerBeat = (math.Abs(armTurn)/(2*math.Pi) + math.Abs(propTurns)) * m.shareRate
	return m
}

// shareAt returns the share of the stroke at some beats after the piece's
// beginning.
func (m *moving) shareAt(beats float64) float64 { return m.share0 + float64(beats*m.shareRate) }

// term is a vector that turns: amp·e^{i·phase}, with the phase counted from
// the beginning of the stretch.
type term struct {
	amp complex128
	phase
}

// still is the phase of what does not turn.
var still = phase{0, profile{kind: evenly, g1: 1}}

// terms are the vectors that a place, or the way between two, is the sum of:
// for each of two hands a centre, an ellipse's two turning vectors and a prop.
type terms struct {
	list [8]term
	n    int
}

// add adds a term to those with the same phase.
func (t *terms) add(amp complex128, p phase) {
	if amp == 0 {
		return
	}
	for i := range t.list[:t.n] {
		if u := &t.list[i]; u.against(p) == 0 {
			u.amp += amp
			return
		}
	}
	t.list[t.n] = term{amp, p}
	t.n++
}

// bend returns a bound on the second derivative of the sum as seen from a
// frame that turns by a phase, m a beat².
func (t *terms) bend(frame phase) float64 {
	sum := 0.0
	for i := range t.list[:t.n] {
		u := &t.list[i]
		if size := cmplx.Abs(u.amp); size > amplitudeDust {
			sum += float64(size * u.against(frame))
		}
	}
	return sum
}

// amplitudeDust (m): vectors that cancel leave no more than this by rounding.
const amplitudeDust = 1e-12

// end is an end of a tether: hand or head.
type end uint8

const (
	hand end = iota
	head
)

// hold adds what a hand's end is the sum of during a stretch, times sign;
// at is the hand's state at the beginning of it.
func (p *pair) hold(t *terms, s *stretch, k int, e end, at *engine.State, sign float64) {
	m, path := p.move(s, k), p.leg(s, k).Path()
	share := m.shareAt(s.from - s.at[k].start)
	arm := m.arm.in(share)
	back := arm
	back.turn = -arm.turn
	t.add(engine.Product(complex(sign, 0), path.Centre), still)
	t.add(cmplx.Rect(sign*(path.A+path.B)/2, at.Arm), arm)
	t.add(cmplx.Rect(sign*(path.A-path.B)/2, float64(2*path.Tilt.Radians())-at.Arm), back)
	if e == head {
		t.add(engine.Product(complex(sign, 0), at.Head-at.Hand), m.prop.in(share))
	}
}
