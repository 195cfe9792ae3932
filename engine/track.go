package engine

import (
	"math"
	"sort"

	"whorlbench/engine/frac"
)

const turn = 2 * math.Pi

// State is where hand and prop are at one moment and how they move, in plane
// coordinates (m) and per beat. Arm and Prop are angles in radians, not reduced.
type State struct {
	Arm, Prop         float64
	ArmRate, PropRate float64 // radians a beat
	Hand, Head        complex128
	HandVel, HeadVel  complex128 // m a beat
	HandAcc, HeadAcc  complex128 // m a beat²
}

// Point is where hand and head are.
type Point struct{ Hand, Head complex128 }

// Leg is a piece made ready to be evaluated: it knows where it starts.
type Leg struct {
	Piece       Piece
	Start, Span float64 // beats from the round's start; kept beats, > 0
	Arm0, Prop0 float64 // radians, at the beginning of the kept part
	path        Path
	tether      float64
	cosT, sinT  float64 // of the path's tilt
	from, kept  float64
	f0          float64 // law's share at from
	armTurn     float64 // radians over the whole stroke
	propTurn    float64
	swing       float64 // radians, negative when it starts from the other end
	turns       float64 // of arm and prop together over the kept part, both counted up
}

// Track is a lane made ready: evaluating it is cheap and allocates nothing.
// It does not change when the lane it was made from does.
type Track struct {
	Lane   Lane
	Legs   []Leg
	Beats  float64 // one round
	Pinned bool
	Carry
	starts []frac.Frac
}

// angle is a sum kept in the three currencies that angles come in, so that
// exact turns stay exact.
type angle struct {
	deg   Degrees
	turns frac.Frac
	rad   float64
}

func (a angle) radians() float64 {
	return a.deg.Radians() + float64(a.turns.Mod1().Float()*turn) + a.rad
}

// NewTrack makes lane ready. The lane has at least one piece.
func NewTrack(lane Lane) *Track {
	t := &Track{Lane: lane, Pinned: lane.Pinned(), starts: lane.Starts(), Legs: make([]Leg, len(lane.Pieces))}
	arm, prop := angle{deg: lane.ArmAt}, angle{deg: lane.PropAt}
	var turned frac.Frac
	for i, p := range lane.Pieces {
		if p.ArmAt.Set {
			arm = angle{deg: p.ArmAt.At}
		}
		if p.PropAt.Set {
			prop = angle{deg: p.PropAt.At}
		}
		g := &t.Legs[i]
		*g = NewLeg(p, lane, arm.radians(), prop.radians())
		g.Start = t.starts[i].Float()
		if p.Swing != 0 {
			prop = angle{rad: g.swingAt(p.To.Float())}
		} else {
			prop.turns = prop.turns.Add(p.PropTurns())
			turned = turned.Add(p.PropTurns())
		}
		if p.Law == Even {
			arm.turns = arm.turns.Add(p.Arm.Mul(p.Cycles).Mul(p.Kept()))
		} else {
			f1, _, _ := p.Law.Share(p.To.Float())
			arm.rad += float64(g.armTurn * (f1 - g.f0))
		}
	}
	t.Beats = t.starts[len(lane.Pieces)].Float()
	if t.Pinned {
		turned = frac.Frac{}
	}
	t.Carry = NewCarry(turned)
	return t
}

// NewLeg makes a piece of the lane ready by itself, beginning its kept part at
// the given arm and prop angles (radians) and at beat 0 of the round. A
// pendulum has its own prop angle.
func NewLeg(p Piece, lane Lane, arm, prop float64) Leg {
	g := Leg{Piece: p, Arm0: arm, Prop0: prop, path: p.Path, tether: lane.Tether}
	g.path.Centre += lane.Centre
	g.sinT, g.cosT = math.Sincos(p.Path.Tilt.Radians())
	g.Span = p.Length().Float()
	g.from, g.kept = p.From.Float(), p.Kept().Float()
	g.f0, _, _ = p.Law.Share(g.from)
	g.armTurn = p.Arm.Mul(p.Cycles).Float() * turn
	g.propTurn = p.Prop.Mul(p.Cycles).Float() * turn
	g.swing = p.Swing.Radians()
	if p.SwingBack {
		g.swing = -g.swing
	}
	g.turns = p.Arm.Abs().Add(p.Prop.Abs()).Mul(p.Cycles).Mul(p.Kept()).Float()
	if g.swing != 0 {
		g.Prop0 = g.swingAt(g.from)
	}
	return g
}

// Turns returns how many turns arm and prop make together over the kept part,
// whichever way they go: how much there is to be drawn.
func (g *Leg) Turns() float64 { return g.turns }

// Path returns the leg's hand path with the lane's centre added.
func (g *Leg) Path() Path { return g.path }

// Tether returns the length hand to head in metres.
func (g *Leg) Tether() float64 { return g.tether }

// StrokeStart returns arm and prop angle (radians, not reduced) at the
// beginning of the whole stroke, of which the leg may keep a later part. Under
// an eased arm and a steady prop the phase between the two drifts within a
// stroke and is back at its end, so that it is judged there, and the parts of
// one stroke are judged alike.
func (g *Leg) StrokeStart() (arm, prop float64) {
	return g.Arm0 - float64(g.armTurn*g.f0), g.Prop0 - float64(g.propTurn*g.from)
}

// swingAt returns a pendulum's prop angle at the share s of its stroke.
func (g *Leg) swingAt(s float64) float64 {
	return -math.Pi/2 + float64(g.swing*math.Cos(g.propTurn*s))
}

// angles returns arm and prop angle at the share u of the kept time.
func (g *Leg) angles(u float64) (arm, prop float64) {
	if g.Piece.Steady() {
		u *= g.kept
		return g.Arm0 + float64(g.armTurn*u), g.Prop0 + float64(g.propTurn*u)
	}
	s := g.from + float64(g.kept*u)
	f, _, _ := g.Piece.Law.Share(s)
	arm = g.Arm0 + float64(g.armTurn*(f-g.f0))
	if g.swing != 0 {
		return arm, g.swingAt(s)
	}
	return arm, g.Prop0 + float64(g.propTurn*(s-g.from))
}

// Point returns hand and head at the share u of the kept time, in round 0.
// Shares outside [0, 1] run on with the same movement when it is steady.
func (g *Leg) Point(u float64) Point { return g.point(u, 0) }

func (g *Leg) point(u, turned float64) Point {
	arm, prop := g.angles(u)
	h := g.hand(arm)
	s, c := math.Sincos(prop + turned)
	return Point{h, h + polar(g.tether, s, c)}
}

func (g *Leg) hand(arm float64) complex128 {
	p := &g.path
	if p.A == p.B {
		if p.A == 0 {
			return p.Centre
		}
		s, c := math.Sincos(arm)
		return p.Centre + polar(p.A, s, c)
	}
	s, c := math.Sincos(arm - p.Tilt.Radians())
	return p.Centre + turnBy(p.A*c, p.B*s, g.sinT, g.cosT)
}

// slope returns dh/dα, in m a radian.
func (g *Leg) slope(arm float64) complex128 {
	sin, cos := math.Sincos(arm - g.path.Tilt.Radians())
	return turnBy(-g.path.A*sin, g.path.B*cos, g.sinT, g.cosT)
}

// State returns everything about the share u in [0, 1] of the kept time, in
// round 0: the limit from inside the piece at both ends. Rates are in closed
// form: with θ = α − δ, dh/dα = e^{iδ}(−A sin θ + iB cos θ) and
// d²h/dα² = −(h − c); the head adds L e^{iψ}.
func (g *Leg) State(u float64) State { return g.StateAfter(u, 0) }

// StateAfter returns what State does, in a round before which the prop has
// turned on by turned radians.
func (g *Leg) StateAfter(u, turned float64) State {
	arm, prop := g.angles(u)
	st := State{Arm: arm, Prop: prop + turned}
	s := g.from + float64(g.kept*u)
	perBeat := g.kept / g.Span // stroke shares a beat
	_, f1, f2 := g.Piece.Law.Share(s)
	st.ArmRate = g.armTurn * f1 * perBeat
	armAcc := g.armTurn * f2 * perBeat * perBeat
	st.PropRate = g.propTurn * perBeat
	propAcc := 0.0
	if g.swing != 0 {
		sin, cos := math.Sincos(g.propTurn * s)
		w := st.PropRate
		st.PropRate = -g.swing * w * sin
		propAcc = -g.swing * w * w * cos
	}

	st.Hand = g.hand(arm)
	d1 := g.slope(arm)
	d2 := g.path.Centre - st.Hand
	st.HandVel = scale(st.ArmRate, d1)
	st.HandAcc = scale(armAcc, d1) + scale(st.ArmRate*st.ArmRate, d2)

	ps, pc := math.Sincos(st.Prop)
	out, across := polar(g.tether, ps, pc), polar(g.tether, pc, -ps)
	st.Head = st.Hand + out
	st.HeadVel = st.HandVel + scale(st.PropRate, across)
	st.HeadAcc = st.HandAcc + scale(propAcc, across) - scale(st.PropRate*st.PropRate, out)
	return st
}

// Starts returns the exact beat at which each piece begins, and the round's
// end last. The slice belongs to the track.
func (t *Track) Starts() []frac.Frac { return t.starts }

// Locate returns the round, the piece and the share of its kept time at a
// beat, counted from the beginning of round 0; a beat at a seam belongs to
// the piece that follows, also when rounding has put it a hair before. Beats
// before 0 lie in rounds below 0.
func (t *Track) Locate(beat float64) (round, piece int, u float64) {
	dust := t.dust(beat)
	r := math.Floor((beat + dust) / t.Beats)
	local := beat - float64(r*t.Beats)
	i := t.pieceAt(local + dust)
	return int(r), i, t.Legs[i].shareAt(local)
}

// dust returns how far before a seam a beat still counts as the seam itself.
func (t *Track) dust(beat float64) float64 { return float64(seamDust * (math.Abs(beat) + t.Beats)) }

// pieceAt returns the last piece that has begun at a beat of the round.
func (t *Track) pieceAt(local float64) int {
	legs := t.Legs
	if len(legs) > 8 {
		return max(sort.Search(len(legs), func(k int) bool { return legs[k].Start > local })-1, 0)
	}
	i := 0
	for i+1 < len(legs) && legs[i+1].Start <= local {
		i++
	}
	return i
}

// shareAt returns the share of the kept time at a beat of the round.
func (g *Leg) shareAt(local float64) float64 {
	return min(max((local-g.Start)/g.Span, 0), 1)
}

// At returns the state at a beat.
func (t *Track) At(beat float64) State {
	r, i, u := t.Locate(beat)
	return t.Legs[i].StateAfter(u, t.TurnedBy(r))
}

// AtExact returns the state at an exact beat, however far from the start, and
// with no doubt about which side of a seam it lies on: it is the start of
// what follows. It allocates.
func (t *Track) AtExact(beat frac.Frac) State {
	whole := t.starts[len(t.starts)-1]
	round := beat.Div(whole).Floor()
	local := beat.Sub(round.Mul(whole))
	i := sort.Search(len(t.Legs), func(k int) bool { return local.Less(t.starts[k]) }) - 1
	u := local.Sub(t.starts[i]).Div(t.Legs[i].Piece.Length())
	turned := t.PerRound.Mul(round).Mod1().Float() * turn
	return t.Legs[i].StateAfter(u.Float(), turned)
}

// AtPiece returns the state at the share u of a piece in a round.
func (t *Track) AtPiece(round, piece int, u float64) State {
	return t.Legs[piece].StateAfter(u, t.TurnedBy(round))
}

// stay is a leg in a round with the beats that surely belong to it, so that
// sampling need not look each beat up.
type stay struct {
	leg      *Leg
	turned   float64 // prop turns of the rounds before, radians
	base     float64 // beat at which the round begins
	from, to float64 // from ≤ beat < to
}

func (t *Track) stayAt(beat float64) stay {
	r, i, _ := t.Locate(beat)
	g := &t.Legs[i]
	s := stay{leg: g, turned: t.TurnedBy(r), base: float64(float64(r) * t.Beats)}
	s.from = s.base + g.Start
	s.to = s.from + g.Span
	s.to -= 2 * t.dust(s.to) // beats nearer to the seam are looked up
	return s
}

// Sample fills dst with hand and head at len(dst) beats, evenly from `from`
// in steps of step. It allocates nothing, but where the prop's turns a round
// have a denominator of 2³¹ or more.
func (t *Track) Sample(dst []Point, from, step float64) {
	s := t.stayAt(from)
	for k := range dst {
		beat := from + float64(float64(k)*step)
		if beat < s.from || beat >= s.to {
			s = t.stayAt(beat)
			beat = max(beat, s.from) // a hair before the seam is the seam
		}
		dst[k] = s.leg.point((beat-s.base-s.leg.Start)/s.leg.Span, s.turned)
	}
}

// PointAt returns hand and head at the share u of a piece in a round.
func (t *Track) PointAt(round, piece int, u float64) Point {
	return t.Legs[piece].point(u, t.TurnedBy(round))
}
