package mend

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// lasting returns p with its kept part taking a time in beats.
func lasting(p engine.Piece, beats frac.Frac) engine.Piece {
	p.Beats = beats.Div(p.Kept())
	return p
}

// countable reports whether a person can count a time in beats: in halves,
// thirds, quarters, sixths, eighths or twelfths of one.
func countable(f frac.Frac) bool {
	return f.Den().IsInt64() && f.Den().Int64() <= 12 && 24%f.Den().Int64() == 0
}

// shared returns the lane with pieces a and b in place of those at the seam
// and their time shared out so that a takes the given share of it. If that
// cannot be counted, a lane follows in which it can, though the round gets
// longer or shorter: one keeps its beats and the other takes more, or both take
// the whole or half beats that come nearest.
func (s *site) shared(a, b engine.Piece, share frac.Frac) []engine.Lane {
	one := frac.Int(1)
	if share.Sign() <= 0 || !share.Less(one) {
		return nil
	}
	rest := one.Sub(share)
	la, lb := a.Length(), b.Length()
	total := la.Add(lb)
	as := func(x, y frac.Frac) engine.Lane { return s.withBoth(lasting(a, x), lasting(b, y)) }
	lanes := []engine.Lane{as(total.Mul(share), total.Mul(rest))}
	if countable(total.Mul(share)) && countable(total.Mul(rest)) {
		return lanes
	}
	// With share = p/d a unit of s beats makes p·s and (d − p)·s.
	p, q := frac.FromBig(share.Num()), frac.FromBig(rest.Mul(frac.FromBig(share.Den())).Num())
	unit := total.Div(frac.FromBig(share.Den()))
	most := lb.Div(q)
	if other := la.Div(p); most.Less(other) {
		most = other
	}
	for _, u := range []frac.Frac{most, unit.Round(one), unit.Round(frac.New(1, 2))} {
		if x, y := u.Mul(p), u.Mul(q); u.Sign() > 0 && countable(x) && countable(y) {
			return append(lanes, as(x, y))
		}
	}
	return lanes
}

// propShare returns the share of the time of a and b in which a turns its prop
// if both turn it at one rate; ok is false if they turn it opposite ways, or
// one of them does not, or swings.
func propShare(a, b engine.Piece) (frac.Frac, bool) {
	if a.Swing != 0 || b.Swing != 0 || a.Prop.Sign()*b.Prop.Sign() <= 0 {
		return frac.Frac{}, false
	}
	x, y := a.PropTurns().Abs(), b.PropTurns().Abs()
	return x.Div(x.Add(y)), true
}

// shareOf returns the share of the time of a and b that a takes.
func shareOf(a, b engine.Piece) frac.Frac { return a.Length().Div(a.Length().Add(b.Length())) }

// steadyBeats gives both pieces beats in proportion to their prop turns.
func (s *site) steadyBeats() []engine.Lane {
	a, b := s.pieces()
	share, ok := propShare(a, b)
	if !ok || s.alone() || s.seam.Verdict != seam.Kink || shareOf(a, b).Equal(share) {
		return nil
	}
	return s.shared(a, b, share)
}

// leastJump shares the time of both pieces out for the least jump across.
// Without a jump the beats are as the two sides' velocities times beats,
// whence an isolation into antispin −m where the prop points at the centre:
// ω₂/ω₁ = (L − R)/(R + mL).
func (s *site) leastJump() []engine.Lane {
	if s.alone() || s.seam.Verdict != seam.Kink {
		return nil
	}
	a, b := s.pieces()
	total := a.Length().Add(b.Length())
	list := rows(s.track, s.i, s.tempo)
	beats := total.Float()
	jump := func(share float64) float64 {
		worst := 0.0
		for _, r := range list {
			worst = math.Max(worst, math.Abs(r.across(share*beats, (1-share)*beats)))
		}
		return worst
	}
	share, ok := leastShare(list, jump)
	if !ok || jump(shareOf(a, b).Float()) <= jump(share)+2*slack(jump(share)) {
		return nil
	}
	near, exact := nearShare(share, total, jump)
	lanes := s.shared(a, b, near)
	if !exact {
		lanes = lanes[:1] // another length of the round would want another fraction
	}
	return lanes
}

// A piece that would take a smaller share of two pieces' time than edge is
// gone before anyone has seen it.
const edge = 1.0 / 64

// leastShare returns the share of the piece before at which the greatest jump
// is least; ok is false if that lies beyond an edge.
func leastShare(list []row, jump func(float64) float64) (share float64, ok bool) {
	if len(list) == 1 {
		// No jump where next/(1−x) = prev/x; of opposite signs, least where the
		// derivative |next|/(1−x)² − |prev|/x² is none.
		p, q := math.Abs(list[0].prev), math.Abs(list[0].next)
		if list[0].prev*list[0].next < 0 {
			p, q = math.Sqrt(p), math.Sqrt(q)
		}
		share = p / (p + q)
		return share, share >= edge && share <= 1-edge
	}
	const (
		steps    = 128
		sections = 48 // 0.618⁴⁸ = 1e-10 of two steps
	)
	best := 1
	for k := 2; k < steps; k++ {
		if jump(float64(k)/steps) < jump(float64(best)/steps) {
			best = k
		}
	}
	share = least(jump, float64(best-1)/steps, float64(best+1)/steps, sections)
	return share, share >= edge && share <= 1-edge
}

// least returns where f, which falls and then rises between lo and hi, is
// least, by golden sections (Kiefer, "Sequential minimax search for a
// maximum", Proc. AMS 4, 1953).
func least(f func(float64) float64, lo, hi float64, sections int) float64 {
	golden := (math.Sqrt(5) - 1) / 2
	x, y := hi-float64(golden*(hi-lo)), lo+float64(golden*(hi-lo))
	fx, fy := f(x), f(y)
	for range sections {
		if fx <= fy {
			hi, y, fy = y, x, fx
			x = hi - float64(golden*(hi-lo))
			fx = f(x)
		} else {
			lo, x, fx = x, y, fy
			y = lo + float64(golden*(hi-lo))
			fy = f(y)
		}
	}
	return (lo + hi) / 2
}

// nearShare returns a fraction for a share: itself if it is a simple one, else
// the first that costs no more than slack, sought among countable times
// before all others.
func nearShare(x float64, total frac.Frac, jump func(float64) float64) (f frac.Frac, exact bool) {
	const (
		simple   = 360   // greatest denominator of a simple fraction
		rounding = 1e-12 // of velocities and their quotients
		ranging  = 96    // denominators to try
	)
	if f := frac.Near(x, rounding, simple); math.Abs(f.Float()-x) <= rounding {
		return f, true
	}
	most := jump(x) + slack(jump(x))
	beats := total.Float()
	try := func(unit frac.Frac) (frac.Frac, bool) {
		f := frac.Near(x*beats/unit.Float(), 0, 1).Mul(unit).Div(total)
		return f, f.Sign() > 0 && f.Less(frac.Int(1)) && jump(f.Float()) <= most
	}
	for _, den := range []int64{1, 2, 3, 4, 6, 8, 12} {
		if f, ok := try(frac.New(1, den)); ok {
			return f, false
		}
	}
	for den := int64(2); den <= ranging; den++ {
		if f, ok := try(total.Div(frac.Int(den))); ok {
			return f, false
		}
	}
	return frac.Near(x, 1e-9, 1000), false
}
