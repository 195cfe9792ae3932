package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/mend"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
)

// Remedy is what there is to read of a fix: its button, what is no longer as
// it was, what is left of the fault, what it costs, and what else is better.
type Remedy struct {
	Label       string
	Does        []string
	Left        string
	Costs, Also []string
}

// Remedy puts a fix into words; was is the lane that it was asked for.
func (t *Table) Remedy(was engine.Lane, f mend.Fix) Remedy {
	r := Remedy{Label: t.mendLabel(was, f), Does: t.mendDoes(was, f), Left: t.mendLeft(f)}
	r.Costs, r.Also = t.mendCosts(f)
	return r
}

func (t *Table) mendLabel(was engine.Lane, f mend.Fix) string {
	w := &t.Mend
	before := f.Seam + 1
	next := before%len(was.Pieces) + 1
	last := len(was.Pieces)
	of := func(form string, piece int) string { return fmt.Sprintf(form, piece) }
	switch f.Kind {
	case mend.CarryOn:
		return w.carry(f.Changes, next)
	case mend.StartElsewhere:
		label := w.StartRound
		if next != 1 && f.Seam != mend.Whole {
			label = of(w.StartElsewhere, next)
		}
		if changes(f, mend.PropAt) {
			label = fmt.Sprintf(w.WithProp, label)
		}
		return label
	case mend.StartFitting:
		return of(w.StartFitting, next)
	case mend.StartProp:
		return w.StartProp
	case mend.MovePath:
		return of(w.Move, next)
	case mend.TurnPath:
		return of(w.Turn, next)
	case mend.ResizePath:
		return of(choose(grows(f.Changes), w.Larger, w.Smaller), next)
	case mend.SteadyBeats:
		return w.counted(f, w.Steady)
	case mend.LeastJump:
		return w.counted(f, w.Least)
	case mend.Ease:
		return w.counted(f, choose(f.Before.HandTurnsBack, w.EaseTurn, w.EaseJoin))
	case mend.PropNext:
		return t.into(next, f.Lane)
	case mend.PropBefore:
		return t.into(before, f.Lane)
	case mend.Radius:
		return of(choose(grows(f.Changes), w.LargerCircle, w.SmallerCircle), next)
	case mend.FlipProp:
		return of(w.Flip, next)
	case mend.ShareAll:
		return w.ShareAll
	case mend.EaseAll:
		return w.EaseAll
	case mend.LastCycles:
		longer := was.Pieces[last-1].Length().Less(f.Lane.Pieces[last-1].Length())
		return of(choose(longer, w.GoOn, w.StopThere), last)
	case mend.LastArm:
		return of(w.BringBack, last)
	case mend.CloseProp:
		return t.into(f.Changes[0].Piece+1, f.Lane)
	}
	return of(w.Repeat, len(f.Lane.Pieces)/len(was.Pieces))
}

// counted tells fixes that take more or less time, to be counted, from the same
// in the time there was.
func (w *Mend) counted(f mend.Fix, label string) string {
	if f.Stretches() {
		return fmt.Sprintf(w.Counted, label)
	}
	return label
}

// changes reports whether a fix changes a thing.
func changes(f mend.Fix, what mend.What) bool {
	return slices.ContainsFunc(f.Changes, func(c mend.Change) bool { return c.What == what })
}

func choose(yes bool, a, b string) string {
	if yes {
		return a
	}
	return b
}

// carry tells which start angles were taken away.
func (w *Mend) carry(list []mend.Change, next int) string {
	form := w.CarryProp
	for _, c := range list {
		if c.Piece != next-1 {
			return w.CarryRound
		}
	}
	switch {
	case len(list) > 1:
		form = w.CarryBoth
	case list[0].What == mend.ArmAt:
		form = w.CarryArm
	}
	return fmt.Sprintf(form, next)
}

// grows reports whether a path became larger.
func grows(list []mend.Change) bool {
	for _, c := range list {
		if c.What == mend.Size {
			return real(c.To.Place)+imag(c.To.Place) > real(c.From.Place)+imag(c.From.Place)
		}
	}
	return false
}

// into says what a piece becomes with another prop speed: its name, where that
// is a name for the whole of it.
func (t *Table) into(piece int, l engine.Lane) string {
	f := naming.Of(&engine.NewTrack(l).Legs[piece-1])
	switch f.Kind {
	case naming.Flower, naming.Star, naming.Extension, naming.Isolation, naming.UnitTurn:
		name := t.Name(f)
		// An eight-petal flower, an extension; a one-petal flower, a unit turn.
		form := t.Mend.Into
		if strings.ContainsRune("aei", rune(name[0])) {
			form = t.Mend.IntoAn
		}
		return fmt.Sprintf(form, piece, name)
	}
	return fmt.Sprintf(t.Mend.Speed, piece)
}

// A list of more pieces than this says how many more there are.
const mostTold = 4

func (t *Table) mendDoes(was engine.Lane, f mend.Fix) []string {
	w := &t.Mend
	lines := t.mendBeats(was, f)
	for k, c := range f.Changes {
		s := t.mendChange(was, f, c)
		if c.What == mend.Law || c.What == mend.Size {
			s = t.mendAlike(f.Changes, k)
		}
		if s != "" {
			lines = append(lines, s)
		}
		if len(lines) >= 2*mostTold {
			break
		}
	}
	if n := len(f.Lane.Pieces); n != len(was.Pieces) {
		lines = append(lines, fmt.Sprintf(w.HasPieces, n, len(was.Pieces)))
	}
	return lines
}

// mendBeats says how long pieces take that took another time.
func (t *Table) mendBeats(was engine.Lane, f mend.Fix) []string {
	w := &t.Mend
	text, told, more := "", 0, 0
	for i := range min(len(was.Pieces), len(f.Lane.Pieces)) {
		beats := f.Lane.Pieces[i].Length()
		switch {
		case beats.Equal(was.Pieces[i].Length()):
		case told == mostTold:
			more++
		case told == 0:
			text, told = fmt.Sprintf(w.Takes, i+1, t.mixedBeats(beats)), 1
		default:
			text += fmt.Sprintf(w.TakesToo, i+1, Mixed(beats))
			told++
		}
	}
	if told == 0 {
		return nil
	}
	if more > 0 {
		text += fmt.Sprintf(w.AndMore, more)
	}
	return []string{text}
}

// mendAlike says in one line of all pieces what has become of the one that
// change k is about: of an eased hand, or a path's size. It says nothing where a
// piece before has said it.
func (t *Table) mendAlike(list []mend.Change, k int) string {
	w := &t.Mend
	var pieces []string
	for i, c := range list {
		if c.What != list[k].What || c.To.Law != list[k].To.Law || c.From.Place != list[k].From.Place || c.To.Place != list[k].To.Place {
			continue
		}
		if i < k {
			return ""
		}
		pieces = append(pieces, fmt.Sprint(c.Piece+1))
	}
	one := len(pieces) == 1
	which := pieces[len(pieces)-1]
	if !one {
		which = fmt.Sprintf(w.And, strings.Join(pieces[:len(pieces)-1], ", "), which)
	}
	if c := list[k]; c.What == mend.Size {
		a, b := math.Max(real(c.From.Place), imag(c.From.Place)), math.Max(real(c.To.Place), imag(c.To.Place))
		return fmt.Sprintf(choose(b > a, w.Grows, w.Shrinks), fmt.Sprintf(choose(one, w.PathGets, w.PathsGet), which), t.span(b), t.span(a))
	}
	return fmt.Sprintf(choose(one, w.HandDoes, w.HandsDo), which, t.Dials.Laws[list[k].To.Law])
}

func (t *Table) mendChange(was engine.Lane, f mend.Fix, c mend.Change) string {
	w := &t.Mend
	deg := func(d engine.Degrees) string { return number(float64(d), 1) }
	piece := c.Piece + 1
	if c.Piece == mend.Whole {
		switch c.What {
		case mend.ArmAt:
			return fmt.Sprintf(w.RoundArm, deg(c.To.Angle.At))
		case mend.PropAt:
			return fmt.Sprintf(w.RoundProp, deg(c.To.Angle.At))
		}
		return ""
	}
	old, now := was.Pieces[c.Piece], f.Lane.Pieces[c.Piece]
	switch c.What {
	case mend.ArmAt:
		if !c.To.Angle.Set {
			return fmt.Sprintf(w.ArmGoesOn, piece)
		}
		return fmt.Sprintf(w.ArmStarts, piece, deg(c.To.Angle.At))
	case mend.PropAt:
		if !c.To.Angle.Set {
			return fmt.Sprintf(w.PropGoesOn, piece)
		}
		return fmt.Sprintf(w.PropStarts, piece, deg(c.To.Angle.At))
	case mend.Centre:
		d := c.To.Place - c.From.Place
		return fmt.Sprintf(w.Moves, piece, t.span(math.Hypot(real(d), imag(d))))
	case mend.Tilt:
		return fmt.Sprintf(w.Turns, piece, deg((c.To.Angle.At - c.From.Angle.At).Wrap()))
	case mend.Prop:
		a, b := old.PropTurns(), now.PropTurns()
		if a.Sign()*b.Sign() < 0 {
			return fmt.Sprintf(w.PropOther, piece, t.turns(b))
		}
		return fmt.Sprintf(w.PropMakes, piece, t.turns(b), t.turns(a))
	case mend.Arm:
		a, b := old.Arm.Mul(old.Cycles), now.Arm.Mul(now.Cycles)
		if a.Sign()*b.Sign() < 0 {
			return fmt.Sprintf(w.HandOther, piece, t.turns(b))
		}
		return fmt.Sprintf(w.HandMakes, piece, t.turns(b), t.turns(a))
	case mend.Cycles:
		// A part of a stroke written as a stroke of its own goes as far.
		a, b := old.Arm.Mul(old.Cycles).Mul(old.Kept()), now.Arm.Mul(now.Cycles).Mul(now.Kept())
		if f.Kind == mend.LastCycles && !a.Equal(b) {
			return fmt.Sprintf(w.HandGoes, piece, t.turns(b), t.turns(a))
		}
	}
	return ""
}

func (t *Table) mendLeft(f mend.Fix) string {
	w := &t.Mend
	speed := func(s seam.Seam) string { return number(math.Abs(s.JumpAcross), 2) }
	after := f.After.After + 1
	if f.Kind >= mend.LastCycles && f.After.Verdict == f.Before.Verdict && f.After.Verdict == seam.Smooth {
		return w.BackAtOnce
	}
	switch {
	case f.Seam == mend.Whole:
		switch f.After.Verdict {
		case seam.Gap:
			return fmt.Sprintf(w.WorstGap, after)
		case seam.Stop:
			return fmt.Sprintf(w.WorstStop, after)
		case seam.Kink:
			return fmt.Sprintf(w.WorstKink, speed(f.After), after)
		}
		return w.AllSmooth
	case f.After.Verdict == seam.Smooth:
		return w.Smooth
	case f.After.Verdict == seam.Kink && f.Before.Verdict == seam.Kink:
		return fmt.Sprintf(w.StillKink, speed(f.After), speed(f.Before))
	case f.After.Verdict == seam.Kink && f.Before.Verdict == seam.Gap:
		return fmt.Sprintf(w.NowKink, speed(f.After))
	case f.After.Verdict == seam.Kink:
		return fmt.Sprintf(w.StopKink, speed(f.After))
	case f.After.Verdict == seam.Stop:
		return choose(f.Before.Verdict == seam.Gap, w.NowStop, w.StillStop)
	case f.After.HandGap > engine.TolGap:
		return fmt.Sprintf(w.StillHand, t.span(f.After.HandGap))
	}
	return fmt.Sprintf(w.StillProp, number(float64(f.After.PropGap), 1))
}

func (t *Table) mendCosts(f mend.Fix) (costs, also []string) {
	w := &t.Mend
	if f.Bend > 0 {
		costs = append(costs, fmt.Sprintf(w.Bends, t.span(f.Bend)))
	}
	if f.Kind == mend.Ease && !f.Before.HandTurnsBack && f.Before.HasTurn {
		costs = append(costs, w.Rests)
	}
	if f.Stretches() {
		costs = append(costs, fmt.Sprintf(w.Stretches, t.mixedBeats(f.Lane.Beats()), t.mixedBeats(f.RoundWas)))
	}
	switch {
	case f.Unclosed() && !f.Closing.Closes():
		costs = append(costs, w.Never)
	case f.Unclosed():
		costs = append(costs, fmt.Sprintf(w.Later, t.CountRounds(f.Closing.Rounds)))
	case f.Closing.Closes() && !f.Closed.Closes():
		also = append(also, w.NowCloses)
	}
	told := 0
	for _, o := range f.Others {
		if told++; told > 2*mostTold {
			break
		}
		if o.Better {
			if f.Seam == mend.Whole && f.After.Verdict == seam.Smooth {
				continue // every join is smooth, and that is said
			}
			also = append(also, w.better(o))
		} else {
			costs = append(costs, w.worse(o))
		}
	}
	return costs, also
}

func (w *Mend) worse(o mend.Other) string {
	after := o.After.After + 1
	switch {
	case o.After.Verdict == o.Before.Verdict && o.After.Verdict == seam.Gap:
		return fmt.Sprintf(w.GapGrows, after)
	case o.After.Verdict == o.Before.Verdict:
		return fmt.Sprintf(w.KinkGrows, after, number(math.Abs(o.After.JumpAcross), 2))
	}
	return fmt.Sprintf([...]string{w.GetsGap, w.GetsStop, w.GetsKink}[o.After.Verdict], after)
}

func (w *Mend) better(o mend.Other) string {
	after := o.After.After + 1
	switch {
	case o.After.Verdict == seam.Smooth:
		return fmt.Sprintf(w.GetsSmooth, after)
	case o.After.Verdict == o.Before.Verdict && o.After.Verdict == seam.Kink:
		return fmt.Sprintf(w.KinkShrink, after, number(math.Abs(o.After.JumpAcross), 2))
	}
	return fmt.Sprintf(w.GetsBetter, after)
}
