package engine

import (
	"whorlbench/engine/frac"
)

// Side says which hand a lane belongs to.
type Side uint8

// The two hands.
const (
	Left Side = iota
	Right
)

// Other returns the other hand.
func (s Side) Other() Side { return Left + Right - s }

// Plane is the plane in which a lane is spun.
type Plane uint8

// The planes: wall faces the audience, wheel runs fore and aft, floor lies flat.
const (
	Wall Plane = iota
	Wheel
	Floor
)

// Piece is a stroke, or the part of one that is kept.
//
// Over the whole stroke the arm turns Arm·Cycles and the prop Prop·Cycles
// turns (signed, anticlockwise positive, both in absolute terms), in Beats.
// Of the stroke's time, [From, To] with 0 ≤ From < To ≤ 1 is kept.
// Swing ≠ 0 makes the prop a pendulum of that amplitude, 0° to 180°, about
// straight down: ψ = −90° + swing·cos(2π·Prop·Cycles·s). SwingBack starts it
// from the other end, which is what a mirrored pendulum needs.
// ArmAt and PropAt place the piece; absent, it carries on.
type Piece struct {
	Path          Path
	Arm, Prop     frac.Frac
	Cycles, Beats frac.Frac
	From, To      frac.Frac
	ArmAt, PropAt Opt
	Law           Law
	Swing         Degrees
	SwingBack     bool
}

// Stroke returns a whole stroke on path that carries on, with the even law:
// arm and prop in turns a cycle, for cycles > 0, in beats > 0.
func Stroke(path Path, arm, prop, cycles, beats frac.Frac) Piece {
	return Piece{Path: path, Arm: arm, Prop: prop, Cycles: cycles, Beats: beats, To: frac.Int(1)}
}

// Kept returns the share of the stroke that is kept, To − From.
func (p Piece) Kept() frac.Frac {
	if p.From.IsZero() {
		return p.To
	}
	return p.To.Sub(p.From)
}

// Length returns the kept time in beats.
func (p Piece) Length() frac.Frac {
	if p.IsWhole() {
		return p.Beats
	}
	return p.Beats.Mul(p.Kept())
}

// IsWhole reports whether the whole stroke is kept.
func (p Piece) IsWhole() bool { return p.From.IsZero() && p.To.IsOne() }

// Steady reports whether arm and prop both turn at one rate throughout.
func (p Piece) Steady() bool { return p.Law == Even && p.Swing == 0 }

// PropTurns returns the signed turns of the prop over the kept part, for a
// spinning prop.
func (p Piece) PropTurns() frac.Frac { return p.Prop.Mul(p.Cycles).Mul(p.Kept()) }

// Equal reports whether p and q are written alike.
func (p Piece) Equal(q Piece) bool {
	return p.Path == q.Path && p.Arm.Equal(q.Arm) && p.Prop.Equal(q.Prop) &&
		p.Cycles.Equal(q.Cycles) && p.Beats.Equal(q.Beats) &&
		p.From.Equal(q.From) && p.To.Equal(q.To) &&
		p.ArmAt == q.ArmAt && p.PropAt == q.PropAt && p.Law == q.Law && p.Swing == q.Swing && p.SwingBack == q.SwingBack
}

// Lane is one hand's pieces in order; it repeats.
//
// Tether is the length hand to head (m); Offset (m) lies along the plane's
// normal; Centre (m) is added to every piece's centre. ArmAt and PropAt are
// the start of a round for what is not placed.
type Lane struct {
	Side          Side
	Plane         Plane
	Offset        float64
	Centre        complex128
	Tether        float64
	ArmAt, PropAt Degrees
	Pieces        []Piece
}

// Beats returns the length of one round.
func (l Lane) Beats() frac.Frac {
	var sum frac.Frac
	for _, p := range l.Pieces {
		sum = sum.Add(p.Length())
	}
	return sum
}

// Starts returns the beat at which each piece begins, and the round's end last.
func (l Lane) Starts() []frac.Frac {
	starts := make([]frac.Frac, len(l.Pieces)+1)
	for i, p := range l.Pieces {
		starts[i+1] = starts[i].Add(p.Length())
	}
	return starts
}

// Pinned reports whether every round repeats the first exactly, prop too:
// some piece has its own prop angle or swings.
func (l Lane) Pinned() bool {
	for _, p := range l.Pieces {
		if p.PropAt.Set || p.Swing != 0 {
			return true
		}
	}
	return false
}

// Equal reports whether l and m are written alike.
func (l Lane) Equal(m Lane) bool {
	if l.Side != m.Side || l.Plane != m.Plane || l.Offset != m.Offset || l.Centre != m.Centre ||
		l.Tether != m.Tether || l.ArmAt != m.ArmAt || l.PropAt != m.PropAt || len(l.Pieces) != len(m.Pieces) {
		return false
	}
	for i := range l.Pieces {
		if !l.Pieces[i].Equal(m.Pieces[i]) {
			return false
		}
	}
	return true
}

// Performer is who spins: lengths in metres, HeadMass in kilograms.
type Performer struct {
	Tether    float64
	Rigid     bool
	Shoulders float64
	Reach     float64
	HeadMass  float64
}

// DefaultPerformer returns the performer that a file without one means.
func DefaultPerformer() Performer {
	return Performer{Tether: 0.6, Shoulders: 0.4, Reach: 0.7, HeadMass: 0.15}
}

// DefaultOffset returns where a side's plane stands when a file does not say:
// in the wheel plane before its own shoulder, else through the middle.
func (p Performer) DefaultOffset(s Side, plane Plane) float64 {
	if plane != Wheel {
		return 0
	}
	if s == Right {
		return -p.Shoulders / 2
	}
	return p.Shoulders / 2
}

// Pattern is what a file holds: one or two lanes, a tempo in beats a minute,
// and a performer.
type Pattern struct {
	Title, Notes string
	Tempo        float64
	Performer    Performer
	Lanes        []Lane
}

// Equal reports whether p and q are written alike.
func (p Pattern) Equal(q Pattern) bool {
	if p.Title != q.Title || p.Notes != q.Notes || p.Tempo != q.Tempo || p.Performer != q.Performer || len(p.Lanes) != len(q.Lanes) {
		return false
	}
	for i := range p.Lanes {
		if !p.Lanes[i].Equal(q.Lanes[i]) {
			return false
		}
	}
	return true
}
