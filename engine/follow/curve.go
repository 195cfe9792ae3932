package follow

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

const turn = 2 * math.Pi

// curve is an elementary pattern as a set of states: at the arm angle α the
// prop may be at phase + ratio·α, and at any whole multiple of a turn/q from
// there.
type curve struct {
	leg   *engine.Leg
	path  engine.Path
	p, q  int64   // ratio p/q in lowest terms; q turns of the arm close it
	phase float64 // radians
	arm   float64 // where the leg starts
	still bool    // the hand stays
	any   bool    // and the prop turns: it is at every angle
	sense float64 // of the arm
}

func newCurve(g *engine.Leg) (curve, bool) {
	piece := g.Piece
	c := curve{leg: g, path: g.Path(), q: 1, sense: float64(piece.Arm.Sign())}
	c.arm, c.phase = g.Arm0, g.Prop0
	if piece.Swing != 0 {
		return c, false
	}
	if piece.Arm.IsZero() || c.path.IsPoint() {
		c.path = engine.PointPath(g.Point(0).Hand)
		c.still, c.any = true, !piece.Prop.IsZero()
		return c, true
	}
	n := piece.Prop.Div(piece.Arm)
	num, den := n.Num(), n.Den()
	if !num.IsInt64() || !den.IsInt64() || den.Int64() > mostArmTurns {
		return c, false
	}
	c.p, c.q = num.Int64(), den.Int64()
	arm, prop := g.StrokeStart()
	c.phase = prop - float64(n.Float()*arm)
	return c, true
}

// prop returns one prop angle at the arm angle α.
func (c *curve) prop(arm float64) float64 {
	return c.phase + float64(float64(c.p)/float64(c.q)*arm)
}

// on returns the point of the curve at an arm angle and one of its prop angles
// there.
func (c *curve) on(arm, prop float64) On {
	o := On{Arm: unsigned(arm)}
	if c.still {
		if c.any {
			o.Share = wrapShare((prop - c.phase) * float64(c.leg.Piece.Prop.Sign()) / turn)
		}
		return o
	}
	for k := range c.q {
		at := arm + float64(turn*float64(k))
		if math.Abs(math.Remainder(c.prop(at)-prop, turn)) < turn/2/float64(c.q) {
			o.Share = wrapShare((at - c.arm) * c.sense / (turn * float64(c.q)))
			break
		}
	}
	return o
}

// shareDust: a share this near to a whole curve is its beginning.
const shareDust = 1e-12

func wrapShare(v float64) float64 {
	v -= math.Floor(v)
	if v > 1-shareDust {
		return 0
	}
	return v
}

// unsigned returns an angle in degrees in [0, 360).
func unsigned(rad float64) engine.Degrees {
	d := math.Mod(float64(engine.ToDegrees(rad).Tidy()), 360)
	if d < 0 {
		d += 360
	}
	return engine.Degrees(d).Tidy()
}

// lies reports whether nothing moves: backwards is forwards.
func (c *curve) lies() bool { return c.still && !c.any }

// passing returns the curve's stroke, run through forwards or backwards, that
// ends or begins at the given arm and prop angles.
func (c *curve) passing(arm, prop float64, back, ends bool) engine.Leg {
	q := c.leg.Piece
	p := engine.Stroke(c.path, q.Arm, q.Prop, q.Cycles, q.Beats)
	if c.still {
		p.Arm = frac.Frac{}
	}
	if back {
		p.Arm, p.Prop = p.Arm.Neg(), p.Prop.Neg()
	}
	if ends {
		arm -= float64(p.Arm.Mul(p.Cycles).Float() * turn)
		prop -= float64(p.Prop.Mul(p.Cycles).Float() * turn)
	}
	return engine.NewLeg(p, engine.Lane{Tether: c.leg.Tether()}, arm, prop)
}
