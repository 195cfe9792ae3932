package seam_test

import (
	"math"
	"math/rand/v2"

	"whorlbench/engine"
	"whorlbench/engine/fixture"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

var (
	fr     = fixture.Frac
	stroke = fixture.Stroke
	circle = fixture.Circle
)

// lane starts with arm and prop at the angles given.
func lane(tether float64, arm, prop engine.Degrees, pieces ...engine.Piece) engine.Lane {
	return engine.Lane{Side: engine.Right, Tether: tether, ArmAt: arm, PropAt: prop, Pieces: pieces}
}

// seams judges a lane at 60 beats a minute, so that a beat is a second, with a
// prop on a tether.
func seams(l engine.Lane) []seam.Seam { return seam.Of(engine.NewTrack(l), 60, false) }

func eased(p engine.Piece, law engine.Law) engine.Piece {
	p.Law = law
	return p
}

func placed(p engine.Piece, arm, prop engine.Opt) engine.Piece {
	p.ArmAt, p.PropAt = arm, prop
	return p
}

func close1e9(a, b float64) bool { return math.Abs(a-b) <= 1e-9*(1+math.Abs(b)) }

// lanes makes lanes of every sort, half of which come back to their start.
type lanes struct{ *rand.Rand }

func (r lanes) angle() engine.Degrees {
	if r.IntN(2) == 0 {
		return engine.Degrees(45 * (r.IntN(17) - 8))
	}
	return engine.Degrees(r.IntN(7200)-3600) / 10
}

func (r lanes) fraction(most, den int) frac.Frac {
	return frac.New(int64(r.IntN(2*most+1)-most), int64(1+r.IntN(den)))
}

func (r lanes) size() float64 { return 0.1 + float64(r.IntN(120))/100 }

func (r lanes) place() complex128 {
	return complex(float64(r.IntN(200)-100)/100, float64(r.IntN(200)-100)/100)
}

func (r lanes) path() engine.Path {
	switch r.IntN(6) {
	case 0, 1:
		return engine.LinePath(r.place(), r.size(), r.angle())
	case 2:
		return engine.EllipsePath(r.place(), r.size(), r.size(), r.angle())
	case 3:
		return engine.PointPath(r.place())
	}
	return engine.CirclePath(r.place(), r.size())
}

func (r lanes) piece() engine.Piece {
	p := engine.Stroke(r.path(), r.fraction(6, 4), r.fraction(8, 4), frac.New(int64(1+r.IntN(8)), 4), frac.New(int64(1+r.IntN(12)), 3))
	if r.IntN(4) == 0 {
		p.From, p.To = frac.New(int64(r.IntN(3)), 6), frac.New(int64(3+r.IntN(4)), 6)
	}
	if r.IntN(2) == 0 {
		p.Law = engine.Law(r.IntN(4))
	}
	if r.IntN(10) == 0 {
		p.Swing, p.SwingBack = engine.Degrees(1+r.IntN(180)), r.IntN(2) == 0
	}
	if r.IntN(5) == 0 {
		p.ArmAt = engine.Some(r.angle())
	}
	if r.IntN(12) == 0 {
		p.PropAt = engine.Some(r.angle())
	}
	return p
}

func (r lanes) lane() engine.Lane {
	l := engine.Lane{
		Side: engine.Side(r.IntN(2)), Plane: engine.Plane(r.IntN(3)), Centre: r.place(),
		Tether: r.size(), ArmAt: r.angle(), PropAt: r.angle(),
	}
	for range 1 + r.IntN(4) {
		l.Pieces = append(l.Pieces, r.piece())
	}
	if r.IntN(2) == 0 {
		// A whole turn on the path where the round begins brings the hand back.
		first := &l.Pieces[0]
		first.Law, first.From, first.To = engine.Even, frac.Frac{}, frac.Int(1)
		start := l.ArmAt
		if first.ArmAt.Set {
			start = first.ArmAt.At
		}
		back := engine.Stroke(first.Path, frac.Int(1), r.fraction(8, 4), frac.Int(1), frac.Int(2))
		back.ArmAt = engine.Some(start)
		l.Pieces = append(l.Pieces, back)
	}
	return l
}
