package tether

import (
	"math"

	"whorlbench/engine"
)

const (
	// holdRounds is over how many rounds a disturbance is followed.
	holdRounds = 8
	// disturbed is how far the prop is put off, and small how far the wobble
	// may go before it is brought back to that: within 2° the sine of an angle
	// is the angle but for a part in 5000.
	disturbed = engine.Degrees(1)
	small     = 2 * disturbed
	// firstSteps are taken for each turn of arm, prop and pendulum, and halved
	// until the energy fits, so often at most.
	firstSteps   = 64
	mostHalvings = 4
	// mostParts of a step are taken where the lead turns quickly.
	mostParts = 64
	// energyFits (share of the energy that moves about): by so much the energy
	// that a pendulum has gained may differ from the work done on it. Steps that
	// fit to a ten-thousandth of this give a growth that differs by less than a
	// thousandth.
	energyFits = 1e-7
	// mostHeldTurns (of all these in a round) are followed; a longer round is
	// given no growth, so that an answer comes in a bounded time.
	mostHeldTurns = 2000
)

// hold drives the head by a hand that follows h* and sees what becomes of a
// small disturbance. It can be left off after any step.
//
// The prop is put off by 1° in the pattern's plane, once either way, and half
// the difference of the two is the wobble: what they have in common is no part
// of it, and a mirrored pattern gives the same. At joins, where h* leaps,
// the impulse is left out and the wobble is carried on as it is: angle and
// rate against the lead, turned with it. Whenever it has grown, and after each
// piece, it is brought back to 1° and the factor kept, so that the answer is
// about small wobbles however much they grow. Its size counts angle and rate
// alike (see wobble.size): a wobble that is just passing through the middle
// has not gone. The rounds are those that are looked at, over and over.
//
// Nothing is lost in this, to the air or the give of tether and wrist, so that
// no wobble dies for good: one that keeps its size comes out near 1, at up to
// a sixth more or less, by where in its to and fro the eight rounds end.
type hold struct {
	track  *engine.Track
	gauge  *gauge
	tempo  float64 // beats a second
	rounds int     // that are looked at
	rate   float64 // a pendulum's, 1/s: the root of the mean of ρ/L

	start  wobble  // at the round's beginning
	unit   float64 // its size, to which it is brought back
	round  int     // 0 to holdRounds, which is the end
	halved int     // how often the steps are
	logs   float64 // of the factors of the rounds before
	grown  float64 // of those of this round
	failed bool

	leg      leg
	now      [2]pendulum // put off one way and the other
	mismatch float64     // of energies in the round so far, 1/s²
	about    float64     // the energy that moves about, 1/s²
}

// leg is a piece that a pendulum is on its way through.
type leg struct {
	piece       int
	done, steps int
	at          lead       // after the steps that are done
	energy      [2]float64 // of the pendulums as they were last put off
}

func newHold(t *engine.Track, g *gauge, tempo float64, rounds int, rate float64) *hold {
	h := &hold{track: t, gauge: g, tempo: tempo, rounds: rounds, rate: rate}
	sum := 0.0
	for i := range t.Legs {
		sum += h.turns(i)
	}
	h.failed = sum > mostHeldTurns || !(rate > 0)
	at := h.lead(0, 0)
	aside := Vec{N: 1}.cross(at.n)
	if aside.norm() == 0 { // straight up from a level plane
		in := t.AtPiece(0, 0, 0)
		aside = Vec{N: 1}.cross(flat(in.Hand - in.Head))
	}
	h.unit = disturbed.Radians()
	h.start.angle = aside.scale(h.unit / aside.norm())
	h.begin()
	return h
}

// turns bounds how many turns arm, prop and the pendulum's own to and fro make
// together in a piece.
func (h *hold) turns(piece int) float64 {
	g := &h.track.Legs[piece]
	return turns(g) + float64(g.Span/h.tempo*h.rate/(2*math.Pi))
}

// begin starts the round.
func (h *hold) begin() {
	h.mismatch, h.about, h.grown = 0, 0, 0
	h.enter(0, h.lead(0, 0), h.start)
}

// enter starts a piece.
func (h *hold) enter(piece int, at lead, w wobble) {
	n := max(math.Ceil(h.turns(piece)*firstSteps), 2)
	h.leg = leg{piece: piece, steps: int(n) << h.halved, at: at}
	h.set(w)
}

// set puts the pendulums off their lead by a wobble.
func (h *hold) set(w wobble) {
	for i, sign := range [2]float64{1, -1} {
		h.now[i] = h.leg.at.with(w.scale(sign))
		h.leg.energy[i] = h.now[i].energy()
		h.about = max(h.about, h.leg.energy[i], h.leg.at.rate)
	}
}

// back holds the energy against the work done and returns the wobble brought
// back to its first size.
func (h *hold) back() wobble {
	for i, p := range h.now {
		h.mismatch = max(h.mismatch, math.Abs(p.energy()-h.leg.energy[i]-p.work))
	}
	w := h.leg.at.off(h.now[0]).less(h.leg.at.off(h.now[1])).scale(0.5)
	factor := w.size(h.rate) / h.unit
	if !(factor > 0) || math.IsInf(factor, 1) {
		h.failed = true
		return w
	}
	h.grown += math.Log(factor)
	return w.scale(1 / factor)
}

// lead returns the lead at a share of a piece in the round.
func (h *hold) lead(piece int, u float64) lead {
	round := h.round % h.rounds
	k := h.tempo
	at, third, fourth := h.track.Further(round, piece, u)
	m := momentOf(at)
	l, ok := leading(h.gauge.length, h.gauge.carried(&m, k*k), flat(third).scale(k*k*k), flat(fourth).scale(k*k*k*k))
	h.failed = h.failed || !ok
	return l
}

// advance takes so many steps or little more and reports whether all is done.
func (h *hold) advance(steps int) bool {
	for steps > 0 && !h.ended() {
		if h.leg.done == h.leg.steps {
			h.leave()
			continue
		}
		steps -= h.step()
	}
	return h.ended()
}

// step takes one of the piece's steps, in parts where the lead turns quickly,
// and returns how many.
func (h *hold) step() int {
	l := &h.leg
	n := float64(l.steps)
	share := func(parts float64) float64 { return (float64(l.done) + parts) / n }
	dt := h.track.Legs[l.piece].Span / (n * h.tempo)
	end := h.lead(l.piece, share(1))
	parts := h.parts(&l.at, &end, dt)
	size := 1 / float64(parts)
	for k := range parts {
		mid, to := h.lead(l.piece, share(float64((float64(k)+0.5)*size))), end
		if k+1 < parts {
			to = h.lead(l.piece, share(float64(float64(k+1)*size)))
		}
		apart := 0.0
		for i := range h.now {
			p := &h.now[i]
			*p = p.step(dt*size, &l.at, &mid, &to)
			h.about = max(h.about, p.energy(), to.rate)
			apart = max(apart, p.d.sub(to.n).norm())
		}
		l.at = to
		if apart > small.Radians() {
			h.set(h.back())
		}
	}
	l.done++
	return parts
}

// parts returns into how many parts a step is divided, so that the lead, which
// turns more quickly than arm and prop where little is carried, turns no
// further in one than these do in a step.
func (h *hold) parts(from, to *lead, dt float64) int {
	turned := max(from.n1.norm(), to.n1.norm()) * dt
	atMost := 2 * math.Pi / float64(int(firstSteps)<<h.halved)
	if !(turned > atMost) {
		return 1
	}
	return int(math.Ceil(min(turned/atMost, mostParts)))
}

func (h *hold) ended() bool { return h.failed || h.round == holdRounds }

// leave ends a piece and, with the last one, the round.
func (h *hold) leave() {
	last := h.leg
	w := h.back()
	next := last.piece + 1
	if next < len(h.track.Legs) {
		at := h.lead(next, 0)
		h.enter(next, at, w.turned(rotation{last.at.n, at.n}))
		return
	}
	if !(h.mismatch <= float64(energyFits*h.about)) {
		h.halved++
		h.failed = h.failed || h.halved > mostHalvings
		h.begin()
		return
	}
	h.logs += h.grown
	h.round++
	h.start = w.turned(rotation{last.at.n, h.lead(0, 0).n})
	h.begin()
}

// growth returns the factor by which the wobble grew per round, the geometric
// mean; ok is false where it could not be followed.
func (h *hold) growth() (factor float64, ok bool) {
	if h.failed {
		return 0, false
	}
	return math.Exp(h.logs / holdRounds), true
}
