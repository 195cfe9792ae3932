package follow_test

import (
	"math"
	"math/cmplx"
	"math/rand/v2"

	"whorlbench/engine"
	"whorlbench/engine/fixture"
	"whorlbench/engine/frac"
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

// pattern is one lane at a beat a second.
func pattern(l engine.Lane) engine.Pattern {
	return engine.Pattern{Tempo: 60, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}}
}

// lanes makes lanes of every sort.
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
	switch r.IntN(7) {
	case 0, 1:
		return engine.LinePath(r.place(), r.size(), r.angle())
	case 2:
		return engine.EllipsePath(r.place(), r.size(), r.size(), r.angle())
	case 3:
		return engine.PointPath(r.place())
	case 4:
		return engine.EllipsePath(r.place(), 0, r.size(), r.angle())
	}
	return engine.CirclePath(r.place(), r.size())
}

func (r lanes) piece() engine.Piece {
	p := engine.Stroke(r.path(), r.fraction(6, 4), r.fraction(8, 4), frac.New(int64(1+r.IntN(8)), 4), frac.New(int64(1+r.IntN(12)), 3))
	if r.IntN(4) == 0 {
		p.From, p.To = frac.New(int64(r.IntN(3)), 6), frac.New(int64(3+r.IntN(4)), 6)
	}
	if r.IntN(3) == 0 {
		p.Law = engine.Law(r.IntN(4))
	}
	if r.IntN(12) == 0 {
		p.Swing, p.SwingBack = engine.Degrees(1+r.IntN(180)), r.IntN(2) == 0
	}
	if r.IntN(4) == 0 {
		p.ArmAt = engine.Some(r.angle())
	}
	if r.IntN(15) == 0 {
		p.PropAt = engine.Some(r.angle())
	}
	return p
}

func (r lanes) pattern() engine.Pattern {
	l := engine.Lane{
		Side: engine.Side(r.IntN(2)), Plane: engine.Plane(r.IntN(3)), Centre: r.place(),
		Tether: r.size(), ArmAt: r.angle(), PropAt: r.angle(),
	}
	for range 1 + r.IntN(4) {
		l.Pieces = append(l.Pieces, r.piece())
	}
	p := pattern(l)
	p.Tempo = float64(30 + r.IntN(200))
	p.Performer.Rigid = r.IntN(4) == 0
	return p
}

// apart returns the greatest distance of hands or heads on two legs, at uneven
// shares: at even ones props some whole turns apart would look alike.
func apart(a, b *engine.Leg) float64 {
	var most float64
	for _, u := range []float64{0, 0.0391, 0.1273, 0.2718, 0.3183, 0.4529, 0.618, 0.7071, 0.8663, 1} {
		p, q := a.Point(u), b.Point(u)
		most = max(most, cmplx.Abs(p.Hand-q.Hand), cmplx.Abs(p.Head-q.Head))
	}
	return most
}

func near(a, b, within float64) bool { return math.Abs(a-b) <= within }
