// Package dice makes random patterns for tests; no program imports it.
package dice

import (
	"math/rand/v2"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

// Dice makes random valid patterns in which every key of a file turns up.
type Dice struct{ *rand.Rand }

// New returns dice that fall the same for the same seed.
func New(seed uint64) Dice { return Dice{rand.New(rand.NewPCG(seed, 1))} }

func (d Dice) chance() bool { return d.IntN(3) == 0 }

// In returns a number from lo to hi, often a short one.
func (d Dice) In(lo, hi float64) float64 {
	x := lo + (hi-lo)*d.Float64()
	if d.chance() {
		return x
	}
	short := float64(int(x*100)) / 100
	return min(max(short, lo), hi)
}

func (d Dice) or(x, def float64) float64 {
	if d.chance() {
		return x
	}
	return def
}

// frac returns a fraction from lo to hi, never 0 if lo is, in every form that
// can be written: whole, short decimal, fraction, long decimal.
func (d Dice) frac(lo, hi int64) frac.Frac {
	for {
		var f frac.Frac
		switch d.IntN(4) {
		case 0:
			f = frac.Int(lo + d.Int64N(hi-lo+1))
		case 1:
			f = frac.New(lo*1000+d.Int64N((hi-lo)*1000), 1000)
		case 2:
			den := 1 + d.Int64N(presets.MaxDenominator)
			f = frac.New(lo*den+d.Int64N((hi-lo)*den), den)
		case 3:
			den := frac.Int(1 << 40).Mul(frac.Int(1 << 40)) // 80 places
			f = frac.Int(lo).Add(frac.Int(1 + d.Int64N(1<<60)).Div(den))
		}
		if lo != 0 || !f.IsZero() {
			return f
		}
	}
}

var letters = []rune("abc XYZ 0\"\"\"\\\\\n\n\t\r\b\f\x00\x1f\x7f\u0085éß–漢😀\u200d\ufeff\u202e#='[]{}")

func (d Dice) text(least, most int) string {
	n := least + d.IntN(most-least+1)
	var b strings.Builder
	for range n {
		b.WriteRune(letters[d.IntN(len(letters))])
	}
	return b.String()
}

func (d Dice) centre() complex128 {
	if d.chance() {
		return complex(d.In(-7, 7), d.In(-7, 7))
	}
	return 0
}

func (d Dice) angle() engine.Degrees { return engine.Degrees(d.In(-36000, 36000)) }

func (d Dice) opt() engine.Opt {
	if d.chance() {
		return engine.Some(d.angle())
	}
	return engine.Opt{}
}

func (d Dice) path(tether float64) engine.Path {
	r := d.or(d.In(0.01, 5), tether)
	p := engine.Path{Kind: engine.PathKind(d.IntN(4)), Centre: d.centre(), Tilt: engine.Degrees(d.or(d.In(-36000, 36000), 0))}
	switch p.Kind {
	case engine.OnCircle:
		p.A, p.B = r, r
	case engine.OnLine:
		p.A = r
	case engine.OnEllipse:
		p.A, p.B = r, d.In(0.01, 5)
	}
	return p
}

func (d Dice) piece(tether float64) engine.Piece {
	p := engine.Piece{
		Path: d.path(tether), Arm: d.frac(-64, 64), Prop: d.frac(-64, 64), Cycles: d.frac(0, 1000),
		Beats: frac.Int(1), To: frac.Int(1), ArmAt: d.opt(), PropAt: d.opt(), Law: engine.Law(d.IntN(4)),
	}
	if !d.chance() {
		p.Beats = d.frac(0, 10_000)
	}
	for d.chance() {
		a, b := d.frac(0, 1), d.frac(0, 1)
		if a.Less(b) {
			p.From, p.To = a, b
			break
		}
	}
	if d.chance() {
		p.Swing = engine.Degrees(d.In(0.01, 180))
		p.SwingBack = d.chance()
	}
	return p
}

// Pattern returns a pattern of one or two hands with up to eight pieces each.
func (d Dice) Pattern() engine.Pattern {
	def := engine.DefaultPerformer()
	p := engine.Pattern{Title: d.text(1, presets.MaxTitle), Tempo: d.In(10, 400), Performer: engine.Performer{
		Tether: d.or(d.In(0.05, 3), def.Tether), Rigid: d.chance(), Shoulders: d.or(d.In(0.1, 1), def.Shoulders),
		Reach: d.or(d.In(0.2, 2), def.Reach), HeadMass: d.or(d.In(0.01, 5), def.HeadMass),
	}}
	if d.chance() {
		p.Notes = d.text(0, 500)
	}
	side := engine.Side(d.IntN(2))
	for i := range 1 + d.IntN(2) {
		l := engine.Lane{Side: side, Plane: engine.Plane(d.IntN(3)), Centre: d.centre(), Tether: d.or(d.In(0.05, 3), p.Performer.Tether)}
		if i == 1 {
			l.Side = side.Other()
		}
		l.Offset = d.or(d.In(-10, 10), p.Performer.DefaultOffset(l.Side, l.Plane))
		l.ArmAt = engine.Degrees(d.or(float64(d.angle()), 90))
		l.PropAt = engine.Degrees(d.or(float64(d.angle()), float64(l.ArmAt)))
		for range 1 + d.IntN(8) {
			l.Pieces = append(l.Pieces, d.piece(l.Tether))
		}
		p.Lanes = append(p.Lanes, l)
	}
	return p
}
