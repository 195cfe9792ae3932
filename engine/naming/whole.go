package naming

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// Whole is what the whole of a lane is called. The definitions disagree, so
// there is a ruling for each.
type Whole struct {
	Parts []Part // the sorts of elementary patterns, in the order of the lane
	More  bool   // there are more than MostParts

	Closes  bool
	HandGap float64 // m, from a round's end to its beginning
	Jump    Ruling  // the first join that does not carry on; Yes if there is one

	Elementary, Broad, Strict, C, S, Diamond Ruling
}

// Part is a sort of elementary pattern that a lane is assembled from: one stands
// for all that differ only in where they are and which way they stand.
type Part struct {
	Figure Figure
	Shifts bool // its phase is another in each of many rounds
}

// Shape is the form that the hand's way has.
type Shape uint8

// The shapes.
const (
	NoShape Shape = iota
	CShape
	SShape
	DiamondShape
)

// Shape returns the shape that the rulings amount to; no two exclude another.
func (w *Whole) Shape() Shape {
	switch {
	case w.C.Yes:
		return CShape
	case w.S.Yes:
		return SShape
	case w.Diamond.Yes:
		return DiamondShape
	}
	return NoShape
}

// MostParts bounds how many parts are listed: nobody listens to a longer list.
const MostParts = 12

// mostCurves bounds how many patterns a leg is compared with, so that a lane of
// very many is not slow: what is over is listed without comparing.
const mostCurves = 64

// fewRounds bounds for how many rounds a part is listed as a pattern of its own
// in each of them.
const fewRounds = 4

// Judge says what the whole of a lane is called, given its seams as seam.Of
// returns them, at whatever tempo.
func Judge(t *engine.Track, seams []seam.Seam) Whole {
	c := t.Closing()
	w := Whole{Closes: c.Closes(), HandGap: c.HandGap, Jump: jump(seams)}
	w.patterns(t, seams)
	w.strict(t, seams)
	w.Diamond = diamond(t, seams)
	w.arcs(t, seams)
	return w
}

// jump returns the first join at which something jumps.
func jump(seams []seam.Seam) Ruling {
	for i := range seams {
		s := &seams[i]
		r := Ruling{Yes: true, Piece: s.After, Other: (s.After + 1) % len(seams)}
		switch {
		case s.HandGap > engine.TolGap:
			r.Clause, r.Gap = HandJumps, s.HandGap
		case float64(s.PropGap) > engine.TolPropGap:
			r.Clause, r.Gap = PropJumps, float64(s.PropGap)
		case s.HeadGap > engine.TolGap:
			r.Clause, r.Gap = HeadJumps, s.HeadGap
		default:
			continue
		}
		return r
	}
	return Ruling{}
}

// patterns lists the different patterns and rules whether they are one.
func (w *Whole) patterns(t *engine.Track, seams []seam.Seam) {
	var parts []curve
	one := Ruling{Clause: OnePattern, Count: len(t.Legs)}
	moved, turned := -1, 0
	// Where the hand does not come back there is no second round to speak of.
	perRound := t.PerRound
	if !w.Closes {
		perRound = frac.Frac{}
	}
	for i := range t.Legs {
		g := &t.Legs[i]
		c := curveOf(g)
		if i > 0 && one.Clause == OnePattern {
			if d := parts[0].differ(&c); d != NoDifference {
				one = Ruling{Clause: TwoPatterns, Other: i, Difference: d}
			}
		}
		if has(parts, &c) {
			continue
		}
		if len(parts) < mostCurves {
			parts = append(parts, c)
		}
		back, first := c.rounds(perRound)
		if back > 1 && moved < 0 {
			moved, turned = i, first
		}
		w.list(g, perRound, back)
	}
	switch {
	case one.Clause == TwoPatterns:
		one.Figures = [2]Figure{Of(&t.Legs[0]), Of(&t.Legs[one.Other])}
	case moved >= 0:
		one = Ruling{Clause: NewEachRound, Piece: moved, Other: moved, Round: turned}
		one.Figures[0] = Of(&t.Legs[moved])
	default:
		one.Figures[0] = Of(&t.Legs[0])
		if playedBack(t, seams) {
			one.Clause = ThereAndBack
		}
	}
	assembled := one.Clause == TwoPatterns || one.Clause == NewEachRound

	w.Elementary, w.Broad = one, one
	w.Broad.Yes = assembled
	if !w.Closes {
		w.Broad = Ruling{Clause: NeverCloses, Gap: w.HandGap}
	}
	w.Elementary.Yes = !assembled && !w.Jump.Yes
	if !assembled && w.Jump.Yes {
		w.Elementary = w.Jump
		w.Elementary.Yes = false
	}
}

func has(parts []curve, c *curve) bool {
	for i := range parts {
		if parts[i].differ(c) == NoDifference {
			return true
		}
	}
	return false
}

// list adds the pattern of a leg to the parts. One that is called by its phase
// is added in each round's form, if it has few of them.
func (w *Whole) list(g *engine.Leg, perRound frac.Frac, back int) {
	f := Of(g)
	if !f.calledByPhase() {
		w.add(Part{f, back > fewRounds})
		return
	}
	if back > fewRounds {
		w.add(Part{shifting(f), true})
		return
	}
	w.add(Part{Figure: f})
	for r := 1; r < back; r++ {
		w.add(Part{Figure: inRound(g, perRound, r)})
	}
}

// calledByPhase reports whether a figure has another name in another phase.
func (f *Figure) calledByPhase() bool {
	switch f.Kind {
	case Extension, Isolation, UnitTurn, LinearExtension, LinearIsolation, LinearBetween:
		return true
	}
	return false
}

func (w *Whole) add(p Part) {
	for i := range w.Parts {
		if q := &w.Parts[i]; q.Shifts == p.Shifts && alike(&q.Figure, &p.Figure) {
			return
		}
	}
	if len(w.Parts) == MostParts {
		w.More = true
		return
	}
	w.Parts = append(w.Parts, p)
}

// shifting returns a figure as it is called when its phase is another each
// round: now extension, say, now isolation, mostly neither.
func shifting(f Figure) Figure {
	switch f.Kind {
	case Extension, Isolation:
		f.Kind = UnitTurn
	case LinearExtension, LinearIsolation:
		f.Kind = LinearBetween
	}
	f.Offset = 0
	return f
}

// inRound names a leg as it is in a round.
func inRound(g *engine.Leg, perRound frac.Frac, round int) Figure {
	later := *g
	if round > 0 {
		later.Prop0 += float64(perRound.Mul(frac.Int(int64(round))).Mod1().Float() * 2 * math.Pi)
	}
	return Of(&later)
}

// playedBack reports whether a lane that is one pattern plays it forward and
// back: the prop turns back, or the hand does with the prop carried.
func playedBack(t *engine.Track, seams []seam.Seam) bool {
	for i := range seams {
		p := t.Legs[i].Piece
		carried := p.Prop.IsZero() && !t.Legs[i].Path().IsLine() // a stroke turns back by itself
		if p.Swing == 0 && (seams[i].PropReverses || carried && seams[i].ArmReverses) {
			return true
		}
	}
	return false
}

// strict rules on the CAP in the strict sense.
func (w *Whole) strict(t *engine.Track, seams []seam.Seam) {
	if !w.Broad.Yes {
		w.Strict = w.Broad
		w.Strict.Clause = NotBroad
		return
	}
	for i := range t.Legs {
		if !isFlower(&t.Legs[i]) {
			w.Strict = Ruling{Clause: NoFlower, Piece: i, Figures: [2]Figure{Of(&t.Legs[i])}}
			return
		}
	}
	w.Strict = Ruling{Clause: NeverTurns}
	for i := range seams {
		switch {
		case seams[i].HandTurnsBack:
			w.Strict = Ruling{Yes: true, Clause: TurnsBack, Piece: i}
			return
		case seams[i].ArmReverses && !w.Strict.Yes:
			w.Strict = Ruling{Yes: true, Clause: ArmReverses, Piece: i}
		}
	}
}

// isFlower reports whether a leg is a slice of a flower, one without petals
// included: circular hand path, whole ratio other than 0.
func isFlower(g *engine.Leg) bool {
	p := g.Piece
	return p.Swing == 0 && !p.Arm.IsZero() && !p.Prop.IsZero() && g.Path().IsRound() && p.Prop.Div(p.Arm).IsInt()
}
