package follow

import (
	"cmp"
	"math"
	"math/cmplx"
	"slices"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// MostMeetings bounds how many meetings are told.
const MostMeetings = 64

// mostArmTurns: a star that closes after more turns of the arm is a disc, and
// meets everything everywhere.
const mostArmTurns = 64

// Relation is how two elementary patterns lie to each other.
type Relation uint8

// The relations of two elementary patterns.
const (
	Meet    Relation = iota // at the places told
	One                     // one and the same pattern: everywhere
	Pass                    // the hands share places, the props never point alike there
	Apart                   // the hands share no place
	Unequal                 // the tethers have different lengths
	Unclear                 // a pendulum, or a star that closes after more than 64 turns
)

// On is a point of an elementary pattern.
type On struct {
	Arm   engine.Degrees // on the hand path, [0, 360)
	Share float64        // of the closed curve that Leg.Whole draws, [0, 1)
}

// Meeting is a place at which hand and prop of two patterns agree.
type Meeting struct {
	Hand complex128     // m, with the lane's centre
	Prop engine.Degrees // [0, 360)
	A, B On
	Ways []Way // of changing from one to the other here, best first
}

// Way is one way of changing over at a meeting. A pattern may be run through
// backwards, arm and prop the other way. A way that would need a tethered prop
// to stop and turn back is none.
type Way struct {
	FromB        bool // from B into A
	BackA, BackB bool // run through backwards
	Seam         seam.Seam
}

// Meetings is all about where two patterns meet.
type Meetings struct {
	Relation Relation
	At       []Meeting // in order of A's arm angle; MostMeetings at most
	// Stretch: two strokes in one line, on which the props are carried alike,
	// meet all along what they share; At has its ends.
	Stretch bool
	// Turn is what B's prop would have to be turned by, at the least, so that
	// patterns that pass meet, and Then how they would.
	Turn engine.Degrees
	Then *Meetings
}

// Between finds where the elementary patterns of which a and b are slices meet:
// the same hand place, the same prop angle. Seams are judged with each pattern
// at its own leg's mean rate, at a tempo in beats a minute. The phase of an eased
// leg is that of its stroke's beginning.
func Between(a, b *engine.Leg, tempo float64, rigid bool) Meetings {
	m := between(a, b, tempo, rigid)
	if m.Relation == Pass {
		turned := *b
		turned.Prop0 += m.Turn.Radians()
		then := between(a, &turned, tempo, rigid)
		m.Then = &then
	}
	return m
}

func between(a, b *engine.Leg, tempo float64, rigid bool) Meetings {
	ca, okA := newCurve(a)
	cb, okB := newCurve(b)
	switch {
	case !okA || !okB:
		return Meetings{Relation: Unclear}
	case math.Abs(a.Tether()-b.Tether()) > engine.TolGap:
		return Meetings{Relation: Unequal}
	}
	f := &finder{a: ca, b: cb, tempo: tempo, rigid: rigid, least: math.Inf(1)}
	f.find()
	m := Meetings{Relation: Meet, At: f.sorted(), Stretch: f.stretch && len(f.at) > 0}
	switch {
	case f.one:
		m = Meetings{Relation: One}
	case len(m.At) == 0 && math.IsInf(f.least, 1):
		m.Relation = Apart
	case len(m.At) == 0:
		m.Relation, m.Turn = Pass, engine.ToDegrees(f.least)
	}
	return m
}

// finder collects meetings.
type finder struct {
	a, b    curve
	tempo   float64
	rigid   bool
	one     bool
	at      []Meeting
	stretch bool    // what is found is the ends of a stretch
	least   float64 // the least turn of b's prop (radians) that makes a meeting
}

// samePropAt (radians) is how far two prop angles may be apart and still be one.
var samePropAt = engine.Degrees(engine.TolPropGap).Radians()

// find looks for places and asks at each of them.
func (f *finder) find() {
	a, b := &f.a, &f.b
	switch {
	case a.still && b.still:
		f.bothStill()
	case a.still:
		for _, arm := range armsAt(b.path, a.path.Centre) {
			f.ask(a.arm, arm)
		}
	case b.still:
		for _, arm := range armsAt(a.path, b.path.Centre) {
			f.ask(arm, b.arm)
		}
	case a.path.Same(b.path):
		f.along(1, 0)
		if a.path.IsLine() {
			// The same place once more, by the other half turn of the arm.
			_, _, frame := axes(a.path)
			f.along(-1, 2*cmplx.Phase(frame))
		}
	case a.path.IsLine() && b.path.IsLine() && overlap(a.path, b.path):
		f.inLine()
	default:
		for _, hand := range common(a.path, b.path) {
			for _, x := range armsAt(a.path, hand) {
				for _, y := range armsAt(b.path, hand) {
					f.ask(x, y)
				}
			}
		}
	}
}

func (f *finder) bothStill() {
	if cmplx.Abs(f.a.path.Centre-f.b.path.Centre) > engine.TolGap {
		return
	}
	same := math.Abs(math.Remainder(f.a.phase-f.b.phase, turn)) <= samePropAt
	if f.a.any == f.b.any && (f.a.any || same) {
		f.one = true
		return
	}
	f.ask(f.a.arm, f.b.arm)
}

// along finds the meetings on one path, where b's arm is at s·α + c when a's is
// at α. With the least common multiple q of the turns that close them, the props
// agree where q(ψ_b − ψ_a) is a whole number of turns: a linear congruence k·α + d ≡ 0
// with a whole k, which has |k| solutions, or all or none for k = 0.
func (f *finder) along(s int64, c float64) {
	a, b := &f.a, &f.b
	q := lcm(a.q, b.q)
	k := s*b.p*(q/b.q) - a.p*(q/a.q)
	d := float64(float64(q) * (b.prop(c) - a.phase))
	if k == 0 {
		off := math.Remainder(d, turn) / float64(q)
		if math.Abs(off) <= samePropAt {
			f.one = true
		}
		f.offer(-off, q)
		return
	}
	n := max(k, -k)
	for j := range min(n, 2*MostMeetings) {
		arm := (float64(turn*float64(j)) - math.Remainder(d, turn)) / float64(k)
		f.ask(arm, float64(float64(s)*arm)+c)
	}
}

// ask takes in what there is at a place which a reaches at one arm angle and b
// at another.
func (f *finder) ask(armA, armB float64) {
	a, b := &f.a, &f.b
	first, q := a.prop(armA), a.q
	if a.still {
		first = a.phase
	}
	other := b.prop(armB)
	if b.still {
		other = b.phase
	}
	switch {
	case a.any: // b's angles are the ones
		f.meetings(other, b.q, armA, armB)
		return
	case b.any:
		f.meetings(first, q, armA, armB)
		return
	}
	common := lcm(q, b.q)
	off := math.Remainder((other-first)*float64(common), turn) / float64(common)
	if math.Abs(off) > samePropAt {
		f.offer(-off, common)
		return
	}
	for k := range q {
		prop := first + float64(turn*float64(k))/float64(q)
		if math.Abs(math.Remainder((prop-other)*float64(b.q), turn)) <= samePropAt*float64(2*b.q) {
			f.take(prop, armA, armB)
		}
	}
}

// meetings takes in q prop angles at one place.
func (f *finder) meetings(first float64, q int64, armA, armB float64) {
	for k := range q {
		f.take(first+float64(turn*float64(k))/float64(q), armA, armB)
	}
}

// offer notes that a turn of b's prop by the given angle (radians) makes a
// meeting, and so does one by a whole multiple of a turn/q more or less. Of two
// that are alike the one anticlockwise is told.
func (f *finder) offer(by float64, q int64) {
	const tie = 1e-9
	period := turn / float64(q)
	by = math.Remainder(by, period)
	if by < tie-float64(period/2) {
		by += period
	}
	if math.Abs(by) < math.Abs(f.least)-tie || math.Abs(by) < math.Abs(f.least)+tie && by > f.least {
		f.least = by
	}
}

func (f *finder) take(prop, armA, armB float64) {
	a, b := &f.a, &f.b
	m := Meeting{Prop: unsigned(prop), A: a.on(armA, prop), B: b.on(armB, prop)}
	m.Hand = a.leg.Whole().Point(m.A.Share).Hand
	for k := range f.at { // a straight stroke's ends are found twice
		o := &f.at[k]
		if cmplx.Abs(o.Hand-m.Hand) < engine.TolGap && close(o.Prop, m.Prop) && close(o.A.Arm, m.A.Arm) && close(o.B.Arm, m.B.Arm) {
			return
		}
	}
	m.Ways = f.ways(armA, armB, prop)
	f.at = append(f.at, m)
}

func close(a, b engine.Degrees) bool { return math.Abs(float64((a - b).Wrap())) <= engine.TolPropGap }

func (f *finder) sorted() []Meeting {
	slices.SortStableFunc(f.at, func(x, y Meeting) int {
		return cmp.Or(cmp.Compare(x.A.Arm, y.A.Arm), cmp.Compare(x.Prop, y.Prop), cmp.Compare(x.B.Arm, y.B.Arm))
	})
	return f.at[:min(len(f.at), MostMeetings)]
}

// ways judges the ways of changing over at a meeting.
func (f *finder) ways(armA, armB, prop float64) []Way {
	var ways []Way
	for _, fromB := range []bool{false, true} {
		for _, backA := range []bool{false, true} {
			for _, backB := range []bool{false, true} {
				if backA && f.a.lies() || backB && f.b.lies() {
					continue
				}
				x, y := f.a.passing(armA, prop, backA, !fromB), f.b.passing(armB, prop, backB, fromB)
				if fromB {
					x, y = y, x
				}
				s := seam.Join{Before: &x, After: &y, Carry: standing}.Judge(f.tempo, f.rigid)
				if s.Verdict != seam.Stop {
					ways = append(ways, Way{FromB: fromB, BackA: backA, BackB: backB, Seam: s})
				}
			}
		}
	}
	slices.SortStableFunc(ways, func(v, w Way) int {
		return cmp.Or(
			cmp.Compare(w.Seam.Verdict, v.Seam.Verdict),
			cmp.Compare(jumpSteps(v.Seam), jumpSteps(w.Seam)),
		)
	})
	return ways
}

// standing is the carry of a prop that no round turns on.
var standing = engine.NewCarry(frac.Frac{})

func lcm(a, b int64) int64 {
	x, y := a, b
	for y != 0 {
		x, y = y, x%y
	}
	return a / x * b
}
