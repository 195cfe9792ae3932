package mend

import (
	"cmp"
	"math"
	"math/cmplx"
	"slices"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// meets (m) is how near a path must come to the hand to begin there; half of
// engine.TolGap leaves the other half to rounding.
const meets = engine.TolGap / 2

// leastRadius (m): a circle that would become smaller than this is no circle
// that anyone means.
const leastRadius = 0.01

// carryOn takes the next piece's start angles away: the prop's, the arm's or
// both, whichever is best, and as few as will do. Where the last piece meets
// the first of a lane whose rounds all repeat the first, the prop carries on
// only if no piece has a prop angle of its own.
func (s *site) carryOn() []engine.Lane {
	_, b := s.pieces()
	prop, arm := b, b
	prop.PropAt, arm.ArmAt = engine.Opt{}, engine.Opt{}
	both := prop
	both.ArmAt = engine.Opt{}
	var lanes []engine.Lane
	for _, p := range []engine.Piece{prop, arm, both} {
		if !p.Equal(b) {
			lanes = append(lanes, s.with(s.next, p))
		}
	}
	if s.next == 0 && s.track.Pinned && s.seam.PropGap > engine.TolPropGap {
		l := s.lane
		l.Pieces = slices.Clone(l.Pieces)
		for i := range l.Pieces {
			l.Pieces[i].PropAt = engine.Opt{}
		}
		lanes = append(lanes, l)
		l.Pieces = slices.Clone(l.Pieces)
		l.Pieces[0].ArmAt = engine.Opt{}
		lanes = append(lanes, l)
	}
	return s.best(lanes)
}

// startAt returns the lane with the next piece beginning at an arm angle in
// radians. The first piece, unless it is placed, begins where the lane does.
func (s *site) startAt(arm float64) engine.Lane {
	_, b := s.pieces()
	at := degrees(arm)
	if s.next == 0 && !b.ArmAt.Set {
		l := s.lane
		l.ArmAt = at
		return l
	}
	b.ArmAt = engine.Some(at)
	return s.with(s.next, b)
}

// startElsewhere lets the next piece begin at the nearest place of its path
// where the hand is: also with the prop carried on, where it is placed.
func (s *site) startElsewhere() []engine.Lane {
	if s.seam.HandGap <= engine.TolGap {
		return nil
	}
	arms := armsAt(s.track.Legs[s.next].Path(), s.before.Hand)
	off := func(arm float64) float64 { return math.Abs(math.Remainder(arm-s.after.Arm, 2*math.Pi)) }
	slices.SortStableFunc(arms, func(a, b float64) int { return cmp.Compare(off(a), off(b)) })
	var lanes []engine.Lane
	for _, arm := range arms {
		lanes = append(lanes, s.startAt(arm))
	}
	// A straight stroke has two such places, one for each way the hand can go.
	lanes = s.best(lanes)
	if _, b := s.pieces(); b.PropAt.Set && len(lanes) > 0 {
		l := lanes[0]
		l.Pieces = slices.Clone(l.Pieces)
		l.Pieces[s.next].PropAt = engine.Opt{}
		lanes = append(lanes, l)
	}
	return lanes
}

// best returns the lane of which this seam is best, the first on a tie.
func (s *site) best(lanes []engine.Lane) []engine.Lane {
	if len(lanes) < 2 {
		return lanes
	}
	at := func(l engine.Lane) seam.Seam { return seam.At(engine.NewTrack(l), s.i, s.tempo, s.who.Rigid) }
	best, is := 0, at(lanes[0])
	for k, l := range lanes[1:] {
		if x := at(l); compare(is, x) > 0 {
			best, is = k+1, x
		}
	}
	return lanes[best : best+1]
}

// armsAt returns the arm angles in radians at which a path meets a place.
func armsAt(p engine.Path, place complex128) []float64 {
	tilt := p.Tilt.Radians()
	w := engine.Product(place-p.Centre, cmplx.Rect(1, -tilt))
	x, y := real(w), imag(w)
	switch {
	case p.IsPoint():
		return nil
	case p.A > 0 && p.B > 0:
		// On a circle this is the angle itself.
		if off := math.Abs(math.Hypot(x/p.A, y/p.B)-1) * math.Max(p.A, p.B); off > meets {
			return nil
		}
		return []float64{tilt + math.Atan2(y/p.B, x/p.A)}
	case p.B == 0:
		return onStroke(tilt, x/p.A, y, p.A)
	}
	return onStroke(tilt+math.Pi/2, y/p.B, x, p.B)
}

// onStroke returns the angles at which a straight stroke of half length r with
// its + end at the angle end passes the share x of it; aside is how far the
// place lies beside the stroke.
func onStroke(end, x, aside, r float64) []float64 {
	// So near to an end the place differs by r·near²/2, nothing; and the end
	// itself is where the stroke's direction is known to be found.
	const near = 1e-5
	if math.Abs(aside) > meets || (math.Abs(x)-1)*r > meets {
		return nil
	}
	switch a := math.Acos(max(-1, min(1, x))); {
	case a < near:
		return []float64{end}
	case a > math.Pi-near:
		return []float64{end + math.Pi}
	default:
		return []float64{end + a, end - a}
	}
}

// startFitting keeps a piece with a prop angle of its own a slice of the same
// elementary pattern, of one ψ − nα, and lets it begin at the nearest place where
// that has the prop as it comes; its path is moved so that the hand is there.
func (s *site) startFitting() []engine.Lane {
	_, b := s.pieces()
	if !b.PropAt.Set || s.seam.PropGap <= engine.TolPropGap || b.Swing != 0 || rests(b) || b.Prop.IsZero() {
		return nil
	}
	off := math.Remainder(s.before.Prop-s.after.Prop, 2*math.Pi)
	l := s.startAt(s.after.Arm + off/b.Prop.Div(b.Arm).Float())
	l.Pieces = slices.Clone(l.Pieces)
	p := &l.Pieces[s.next]
	p.PropAt = engine.Opt{}
	before, after := seam.Sides(engine.NewTrack(l), s.i, 0)
	p.Path.Centre = tidyPlace(p.Path.Centre + before.Hand - after.Hand)
	return []engine.Lane{l}
}

// startProp lets the round start with the prop where its last piece leaves it,
// in a lane whose rounds all repeat the first.
func (s *site) startProp() []engine.Lane {
	if s.next != 0 || !s.track.Pinned || s.seam.PropGap <= engine.TolPropGap {
		return nil
	}
	_, b := s.pieces()
	at := degrees(s.before.Prop)
	if b.PropAt.Set {
		b.PropAt = engine.Some(at)
		return []engine.Lane{s.with(0, b)}
	}
	l := s.lane
	l.PropAt = at
	return []engine.Lane{l}
}

// movePath moves the next piece's path so that it begins where the hand is.
func (s *site) movePath() []engine.Lane {
	if s.seam.HandGap <= engine.TolGap {
		return nil
	}
	_, b := s.pieces()
	b.Path.Centre = tidyPlace(b.Path.Centre + s.before.Hand - s.after.Hand)
	return []engine.Lane{s.with(s.next, b)}
}

// turnPath turns the next piece's path about its own centre: by its tilt
// alone where that brings its beginning to the hand, else together with its
// start angle. With the arm at α the place is
//
//	c + (A+B)/2·e^{iα} + (A−B)/2·e^{i(2δ−α)},
//
// which runs round a circle as the tilt δ goes round.
func (s *site) turnPath() []engine.Lane {
	g := &s.track.Legs[s.next]
	p := g.Path()
	if s.seam.HandGap <= engine.TolGap || p.A == p.B {
		return nil
	}
	_, b := s.pieces()
	to, from := s.before.Hand-p.Centre, s.after.Hand-p.Centre
	q := to - times((p.A+p.B)/2, cmplx.Rect(1, s.after.Arm))
	if math.Abs(cmplx.Abs(q)-float64(math.Abs(p.A-p.B)/2)) <= meets {
		at := cmplx.Phase(q)
		if p.A < p.B {
			at += math.Pi
		}
		b.Path.Tilt = nearTilt((at+s.after.Arm)/2, p.Tilt)
		return []engine.Lane{s.with(s.next, b)}
	}
	if math.Abs(cmplx.Abs(to)-cmplx.Abs(from)) > meets || cmplx.Abs(from) < leastRadius {
		return nil
	}
	by := cmplx.Phase(to) - cmplx.Phase(from)
	l := s.startAt(s.after.Arm + by)
	l.Pieces = slices.Clone(l.Pieces)
	l.Pieces[s.next].Path.Tilt = engine.Degrees(tidy(float64((p.Tilt + engine.ToDegrees(by)).Wrap()), angleStep))
	return []engine.Lane{l}
}

// nearTilt returns a tilt in radians as the angle nearest to the one before,
// as half a turn changes nothing in where the path lies.
func nearTilt(rad float64, was engine.Degrees) engine.Degrees {
	d := float64(engine.ToDegrees(rad))
	d -= float64(180 * math.Round((d-float64(was))/180))
	return engine.Degrees(tidy(d, angleStep))
}

// resizePath makes the next piece's path larger or smaller about its centre,
// and a circle begin in the hand's direction where that is another one.
func (s *site) resizePath() []engine.Lane {
	p := s.track.Legs[s.next].Path()
	to, from := s.before.Hand-p.Centre, s.after.Hand-p.Centre
	if s.seam.HandGap <= engine.TolGap || cmplx.Abs(from) < leastRadius || cmplx.Abs(to) < leastRadius {
		return nil
	}
	_, b := s.pieces()
	k := cmplx.Abs(to) / cmplx.Abs(from)
	if !s.sizable(k, max(p.A, p.B)) {
		return nil
	}
	// The hand lies on the ray through the path's beginning, or beside it.
	aside := cmplx.Abs(to - times(k, from))
	switch {
	case aside <= meets:
		return []engine.Lane{s.with(s.next, resized(b, k))}
	case p.IsRound():
		l := s.startAt(cmplx.Phase(to))
		l.Pieces = slices.Clone(l.Pieces)
		l.Pieces[s.next].Path = resized(b, k).Path
		return []engine.Lane{l}
	}
	return nil
}

// resized returns a piece with its path k times as large.
func resized(p engine.Piece, k float64) engine.Piece {
	p.Path.A, p.Path.B = tidy(float64(k*p.Path.A), placeStep), tidy(float64(k*p.Path.B), placeStep)
	return p
}
