package naming

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// Difference is what first tells two slices apart as elementary patterns.
type Difference uint8

// The differences, in the order in which they are looked for.
const (
	NoDifference   Difference = iota
	DiffersInSort             // one is a stroke, spin, swing or hold and the other is not
	DiffersInPath             // the hand goes elsewhere
	DiffersInSwing            // the pendulum swings wider or less wide
	DiffersInRatio            // the prop turns more or less to one turn of the arm
	DiffersInPhase            // the prop stands otherwise at one place of the path
)

// Differ says whether two slices of one lane belong to one elementary pattern
// as they are in round 0, and if not what tells them apart. Speed of play, its
// sense, and the place where a slice starts tell nothing apart.
func Differ(a, b *engine.Leg) Difference {
	x, y := curveOf(a), curveOf(b)
	return x.differ(&y)
}

// sort is how hand and prop go together, as geometry has it.
type sort uint8

const (
	onCircle sort = iota
	onLine
	onEllipse
	spinning // the hand stays, the prop turns
	holding  // nothing moves
	swinging // the hand stays, the prop swings
)

// curve is the elementary pattern of which a leg is a slice, in a form that
// two slices of one pattern share: the prop's angle is ψ = nα + phase along
// the path, where only phase modulo period counts, as α counts modulo 360°. Of
// a pendulum n and phase are those of the angle whose cosine it follows.
type curve struct {
	sort   sort
	path   engine.Path // with the lane's centre; a point where the hand stays
	ratio  frac.Frac   // n = P/Q
	n      float64
	period float64 // 360/Q degrees; 0: there is no phase
	phase  float64 // degrees; on a straight stroke α is taken from its + end
	swing  float64 // degrees, of a pendulum
}

func curveOf(g *engine.Leg) curve {
	p := g.Piece
	c := curve{path: g.Path()}
	arm, prop := g.StrokeStart()
	// A pendulum whose prop does not run on hangs at one angle.
	swings := p.Swing != 0 && !p.Prop.IsZero()
	if swings {
		c.swing = math.Abs(float64(p.Swing))
		prop = 0
		if p.SwingBack {
			prop = math.Pi
		}
	}
	if c.path.IsPoint() || p.Arm.IsZero() {
		c.path = engine.PointPath(g.Point(0).Hand)
		switch {
		case swings:
			c.sort = swinging
		case p.Prop.IsZero():
			c.sort, c.period, c.phase = holding, 360, float64(engine.ToDegrees(prop))
		default:
			c.sort = spinning
		}
		return c
	}
	switch {
	case c.path.IsRound():
		c.sort = onCircle
	case c.path.IsLine():
		c.sort = onLine
		arm -= plusEnd(c.path).Radians()
	default:
		c.sort = onEllipse
	}
	c.ratio = p.Prop.Div(p.Arm)
	c.n = c.ratio.Float()
	c.period = 360
	if !c.ratio.IsInt() {
		c.period /= frac.FromBig(c.ratio.Den()).Float()
	}
	c.phase = float64(engine.ToDegrees(prop - float64(c.n*arm)))
	return c
}

func (c *curve) differ(d *curve) Difference {
	switch {
	case c.sort != d.sort || (c.swing == 0) != (d.swing == 0):
		return DiffersInSort
	case !c.path.Same(d.path):
		return DiffersInPath
	case math.Abs(c.swing-d.swing) > engine.TolPhase:
		return DiffersInSwing
	case c.sort >= spinning:
		if c.period > 0 && c.off(d.phase) > engine.TolPhase {
			return DiffersInPhase
		}
		return NoDifference
	}
	same := c.n == d.n && c.ratio.Equal(d.ratio)
	opposite := c.n == -d.n && c.ratio.Equal(d.ratio.Neg())
	// On a straight stroke α and −α are one place; a pendulum's cosine is the
	// same forward and back.
	line, swing := c.sort == onLine, c.swing > 0
	if !same && !(opposite && (line || swing)) {
		return DiffersInRatio
	}
	phase := d.phase
	if line {
		// Both phases from one end, whichever end each was written from.
		ends := math.Round(float64(plusEnd(d.path)-plusEnd(c.path)) / 180)
		phase -= float64(d.n * (180 * ends))
	}
	if (same || line) && c.off(phase) <= engine.TolPhase ||
		swing && (opposite || line) && c.off(-phase) <= engine.TolPhase {
		return NoDifference
	}
	return DiffersInPhase
}

// off returns how far a phase (degrees) is from c's, 0 to half a period.
func (c *curve) off(phase float64) float64 {
	if c.period <= 2*engine.TolPhase {
		return 0
	}
	return math.Abs(math.Remainder(phase-c.phase, c.period))
}

// rounds returns after how many rounds the curve is what it was in round 0, when
// the prop is perRound turns further with each; and the first round in which
// it is another. Phases that never leave the tolerance are one.
func (c *curve) rounds(perRound frac.Frac) (back, first int) {
	if c.period <= 2*engine.TolPhase || perRound.IsInt() {
		return 1, 0
	}
	step := perRound
	if c.sort < spinning && !c.ratio.IsInt() {
		step = perRound.Mul(frac.FromBig(c.ratio.Den()))
	}
	den := step.Den()
	if den.IsInt64() && den.Int64() == 1 {
		return 1, 0
	}
	back = manyRounds
	if den.IsInt64() {
		back = int(min(den.Int64(), manyRounds))
	}
	// The phases of all rounds stand evenly over the period.
	if float64(back/2)/float64(back)*c.period <= engine.TolPhase {
		return 1, 0
	}
	off := math.Abs(math.Remainder(step.Mod1().Float(), 1)) * c.period
	return back, int(min(engine.TolPhase/off, manyRounds)) + 1
}

// manyRounds is as good as never for someone who looks on.
const manyRounds = 1 << 20
