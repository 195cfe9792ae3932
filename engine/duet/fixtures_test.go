package duet_test

import (
	"math"
	"math/rand/v2"

	"whorlbench/engine"
	"whorlbench/engine/duet"
	"whorlbench/engine/fixture"
	"whorlbench/engine/frac"
)

var (
	fr     = fixture.Frac
	stroke = fixture.Stroke
	circle = fixture.Circle
)

// lane is a lane in the wall plane, tether 0.6 m, arm and prop starting at the
// angles given.
func lane(side engine.Side, arm, prop engine.Degrees, pieces ...engine.Piece) engine.Lane {
	return engine.Lane{Side: side, Tether: 0.6, ArmAt: arm, PropAt: prop, Pieces: pieces}
}

// read reads two lanes, left and right.
func read(l, r engine.Lane) duet.Reading { return duet.Read(engine.NewTrack(l), engine.NewTrack(r)) }

// closedLane returns a random lane whose hand comes back: pieces of whole
// turns on circles, ellipses, strokes and points, of which the last has the
// path of the first, eased or not, some of them pendulums. Between the pieces
// the hand may jump.
func closedLane(r *rand.Rand, side engine.Side, plane engine.Plane) engine.Lane {
	l := engine.Lane{
		Side: side, Plane: plane, Tether: 0.3 + float64(r.IntN(50))/100,
		Offset: float64(r.IntN(41)-20) / 100, Centre: complex(float64(r.IntN(81)-40)/100, float64(r.IntN(41)-20)/100),
		ArmAt: engine.Degrees(15 * r.IntN(24)), PropAt: engine.Degrees(15 * r.IntN(24)),
	}
	for range 1 + r.IntN(4) {
		var path engine.Path
		size := 0.1 + float64(r.IntN(60))/100
		switch r.IntN(5) {
		case 0:
			path = engine.LinePath(0, size, engine.Degrees(15*r.IntN(24)))
		case 1:
			path = engine.EllipsePath(0, size, size/2, engine.Degrees(15*r.IntN(24)))
		case 2:
			path = engine.PointPath(0.1)
		default:
			path = circle(size)
		}
		p := engine.Stroke(path, frac.New(int64(r.IntN(7)-3), 2), frac.New(int64(r.IntN(13)-6), 2), frac.Int(2), frac.New(int64(1+r.IntN(8)), 2))
		p.Law = engine.Law(max(0, r.IntN(7)-3))
		if r.IntN(6) == 0 {
			p.Swing = engine.Degrees(10 + r.IntN(120))
			p.SwingBack = r.IntN(2) == 0
		}
		l.Pieces = append(l.Pieces, p)
	}
	last := &l.Pieces[len(l.Pieces)-1] // back to where the round begins
	last.Path = l.Pieces[0].Path
	return l
}

// fifty returns a hand of fifty pieces.
func fifty(side engine.Side, law engine.Law, step int64) engine.Lane {
	l := engine.Lane{Side: side, Tether: 0.6, ArmAt: 90, PropAt: 90}
	if side == engine.Left {
		l.Centre = 0.1
	}
	for i := range int64(50) {
		p := engine.Stroke(circle(0.6), frac.Int(1-2*(i%2)), frac.New(i%5*step+1, 1), frac.New(1, 2), frac.Int(1))
		p.Law = law
		l.Pieces = append(l.Pieces, p)
	}
	return l
}

func near(a, b, tol float64) bool { return math.Abs(a-b) <= tol }
