package step

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

var whole = frac.Int(1)

// Hand is what a hand does in a piece.
type Hand uint8

// What a hand does: it goes round a circle or an ellipse, to and fro on a
// straight line, or stays.
const (
	Round Hand = iota
	Oval
	Line
	Stay
)

// Move is what hand and prop do in a piece in round 0, in the piece's own
// plane.
type Move struct {
	Hand  Hand
	Way   Way     // of the arm; of little meaning on a line
	Turns float64 // of the arm, ≥ 0

	// Where the hand begins and ends, seen from the middle of its path; Over is
	// the side by which it goes where it turns no more than once.
	From, Over, To Toward

	// Of a line: the direction in which the hand sets out, and how often it
	// turns back on the way. Span (m) is how far it goes before it first does.
	Heading Toward
	Backs   int
	Span    float64

	// Of a circle: its radius (m).
	Radius float64

	Law engine.Law // what is left of it in the kept part: Even where it is none

	Prop      Way
	PropTurns float64 // ≥ 0; 0 where the prop swings
	Swing     engine.Degrees
	Swings    float64 // how often to and fro
	Start     Toward  // where the prop points at the beginning
	End       Toward  // and at the end, in round 0
	Beats     float64
}

// sameTurn is how far from a whole number (turns) of half swings on a line a
// hand may be and still end there.
const sameTurn = 1e-9

// Of says what hand and prop do in a leg.
func Of(g *engine.Leg) Move {
	p := g.Piece
	a, b := g.State(0), g.State(1)
	m := Move{
		Beats: g.Span,
		Start: TowardOf(a.Prop), End: TowardOf(b.Prop),
		Prop: Way(p.Prop.Sign()), PropTurns: p.PropTurns().Abs().Float(),
	}
	if p.Swing != 0 {
		m.Swing, m.Swings = p.Swing, m.PropTurns
		m.Prop, m.PropTurns = NoWay, 0
	}
	path := g.Path()
	if path.IsPoint() || p.Arm.IsZero() {
		m.Hand = Stay
		return m
	}
	arm := b.Arm - a.Arm
	m.Way, m.Turns = Way(p.Arm.Sign()), math.Abs(arm)/(2*math.Pi)
	m.From, m.To = from(path, a.Hand), from(path, b.Hand)
	m.Over = from(path, g.Point(half(g)).Hand)
	m.Law = eased(p)
	switch {
	case path.IsRound():
		m.Hand, m.Radius = Round, path.A
	case path.IsLine():
		m.Hand = Line
		m.line(g, path, a, b)
	default:
		m.Hand = Oval
	}
	return m
}

// from returns the direction of a place from the middle of a path.
func from(p engine.Path, z complex128) Toward { return TowardOf(cmplx.Phase(z - p.Centre)) }

// half returns the share of the kept time at which half of the kept turn of
// the arm is done. Under each law the share done grows with time.
func half(g *engine.Leg) float64 {
	lo, hi := 0.0, 1.0
	first, last := g.State(0).Arm, g.State(1).Arm
	for range 40 {
		u := (lo + hi) / 2
		if math.Abs(g.State(u).Arm-first) < math.Abs(last-first)/2 {
			lo = u
		} else {
			hi = u
		}
	}
	return hi
}

// line fills in what a hand does on a straight line: h = c + e^{iδ} A cos(α − δ)
// turns back where α − δ is a whole number of half turns.
func (m *Move) line(g *engine.Leg, path engine.Path, a, b engine.State) {
	if unit, ok := g.Heading(0); ok {
		m.Heading = TowardOf(cmplx.Phase(unit))
	}
	along := path.Tilt.Radians()
	if path.A == 0 { // the + end is that of the other axis
		along += math.Pi / 2
	}
	lo, hi := (a.Arm-along)/math.Pi, (b.Arm-along)/math.Pi
	if lo > hi {
		lo, hi = hi, lo
	}
	first, last := math.Floor(lo+sameTurn)+1, math.Ceil(hi-sameTurn)-1
	m.Backs = max(int(last-first)+1, 0)
	end := b.Arm
	if m.Backs > 0 {
		turn := first
		if m.Way == Clockwise {
			turn = last
		}
		end = float64(turn*math.Pi) + along
	}
	m.Span = max(path.A, path.B) * math.Abs(math.Cos(end-along)-math.Cos(a.Arm-along))
}

// eased returns which ends of a kept part are eased.
func eased(p engine.Piece) engine.Law {
	begins := p.From.IsZero() && (p.Law == engine.EaseStart || p.Law == engine.EaseBoth)
	ends := p.To.Equal(whole) && (p.Law == engine.EaseEnd || p.Law == engine.EaseBoth)
	switch {
	case begins && ends:
		return engine.EaseBoth
	case begins:
		return engine.EaseStart
	case ends:
		return engine.EaseEnd
	}
	return engine.Even
}
