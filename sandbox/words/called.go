package words

import (
	"fmt"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/naming"
)

// inProse returns what f is called in a sentence among others: with no comma in it.
func (t *Table) inProse(f naming.Figure) string {
	w := &t.Whole
	switch {
	case f.Kind == naming.Flower && f.Spin == naming.SpinAnti && f.Petals.Float() == 2:
		return t.Figure.ShortTwo
	case f.Kind == naming.Flower && f.Spin == naming.SpinAnti && f.Petals.Float() == 3:
		return t.Figure.ShortThree
	case f.Kind == naming.UnitTurn:
		return fmt.Sprintf(w.UnitTurn, number(float64(f.Offset), 1))
	case f.Kind == naming.LinearBetween:
		return w.Between
	case f.Kind == naming.LinearOther:
		return fmt.Sprintf(w.LinearOther, t.Quotient(f.Ratio.Abs())) // either sign is one pattern
	case f.Kind == naming.EllipsePath:
		return fmt.Sprintf(w.EllipsePath, t.Quotient(f.Ratio))
	}
	return t.Name(f)
}

// one returns f's short name as it stands in a sentence, with an article where
// it takes one.
func (t *Table) one(f naming.Figure) string {
	name := t.inProse(f)
	switch f.Kind {
	case naming.Flower, naming.Star, naming.UnitTurn, naming.Carried, naming.LinearOther, naming.EllipsePath, naming.Pendulum:
	default:
		return name
	}
	for _, vowel := range t.Whole.Vowels {
		if strings.HasPrefix(name, vowel) {
			return fmt.Sprintf(t.Whole.An, name)
		}
	}
	return fmt.Sprintf(t.Whole.A, name)
}

// mostNames bounds how many patterns a quiet line names.
const mostNames = 3

// parts names the patterns that a lane is assembled from, each name once.
func (t *Table) parts(w *naming.Whole) string {
	say := &t.Whole
	names := t.names(w)
	if len(names) == 1 {
		switch {
		case !w.Broad.Yes || w.Diamond.Yes:
			return names[0]
		case w.Broad.Difference == naming.DiffersInPath:
			return fmt.Sprintf(say.Places, names[0])
		}
		return fmt.Sprintf(say.Ways, names[0])
	}
	return t.list(names, w.More)
}

func (t *Table) names(w *naming.Whole) []string {
	say := &t.Whole
	var names []string
	seen := map[string]bool{}
	for _, p := range w.Parts {
		name := t.inProse(p.Figure)
		if p.Shifts {
			if p.Figure.Spin == naming.SpinUnit {
				name = t.unitTurn()
			}
			name = fmt.Sprintf(say.Shifts, name)
		}
		if !seen[name] {
			seen[name] = true
			names = append(names, name)
		}
	}
	return names
}

// unitTurn is the unit turn's name without an offset.
func (t *Table) unitTurn() string {
	name, _, _ := strings.Cut(t.Figure.UnitTurn, ",")
	return name
}

// list writes names one after the other, the longest lists cut short.
func (t *Table) list(names []string, more bool) string {
	w := &t.Whole
	more = more || len(names) > mostNames
	out := names[0]
	for i, name := range names[1:min(len(names), mostNames)] {
		format := w.Comma
		if i+2 == len(names) && !more {
			format = w.And
		}
		out = fmt.Sprintf(format, out, name)
	}
	if more {
		return fmt.Sprintf(w.More, out)
	}
	return out
}

// LaneLine says quietly, in one line, what a lane is called.
func (t *Table) LaneLine(w *naming.Whole) string { return capital(t.laneLine(w)) }

func (t *Table) laneLine(w *naming.Whole) string {
	say := &t.Whole
	is := t.parts(w)
	switch {
	case !w.Closes:
		return fmt.Sprintf(say.Never, is, Metres(w.HandGap))
	case w.Broad.Yes:
		is = t.assembled(w, is)
	case w.Elementary.Clause == naming.ThereAndBack:
		is = fmt.Sprintf(say.ThereAndBack, is)
	}
	if w.Jump.Yes {
		return fmt.Sprintf(say.Jumps, is, strings.TrimSuffix(t.clause(w.Jump), "."))
	}
	return is
}

func (t *Table) assembled(w *naming.Whole, parts string) string {
	say := &t.Whole
	sort := [...]string{say.Cap, say.CCap, say.SCap, say.DiamondCap}[w.Shape()]
	is := fmt.Sprintf(say.Of, sort, parts)
	switch {
	case w.Strict.Yes:
		return fmt.Sprintf(say.Strict, is)
	case w.Diamond.Yes:
		return is
	}
	return fmt.Sprintf(say.Broad, is)
}

// HandsLine says quietly, in one line, what two hands do, given the ruling on
// both.
func (t *Table) HandsLine(left, right *naming.Whole, hybrid naming.Ruling) string {
	w := &t.Whole
	l, r := t.laneLine(left), t.laneLine(right)
	switch {
	case hybrid.Clause == naming.HandsSwap && t.alike(left, right):
		return fmt.Sprintf(w.Swap, r)
	case hybrid.Yes:
		return fmt.Sprintf(w.Hybrid, l, r)
	case l == r:
		return fmt.Sprintf(w.BothHands, l)
	}
	return fmt.Sprintf(w.LeftRight, l, r)
}

// alike reports whether two hands are called one thing, but for the order of the
// patterns in it.
func (t *Table) alike(a, b *naming.Whole) bool {
	names, others := t.names(a), t.names(b)
	slices.Sort(names)
	slices.Sort(others)
	return a.Shape() == b.Shape() && a.Strict.Yes == b.Strict.Yes && a.Broad.Yes == b.Broad.Yes &&
		!a.Jump.Yes && !b.Jump.Yes && slices.Equal(names, others)
}

// Shape returns the word for a shape, empty for none.
func (t *Table) Shape(s naming.Shape) string {
	return [...]string{"", t.Whole.C, t.Whole.S, t.Figure.Diamond}[s]
}

// LaneAloud is what a screen reader says of a lane: the quiet line, then each
// definition.
func (t *Table) LaneAloud(w *naming.Whole) string {
	return t.LaneLine(w) + "." + t.aloud(t.Definitions(w)...)
}

// HandsAloud is the same of two hands, the left one first.
func (t *Table) HandsAloud(left, right *naming.Whole, hybrid naming.Ruling) string {
	out := t.HandsLine(left, right, hybrid) + "." + t.aloud(t.HybridDefinition(hybrid))
	for i, hand := range [...]*naming.Whole{left, right} {
		out += " " + t.HandName(engine.Left+engine.Side(i)) + "." + t.aloud(t.Definitions(hand)...)
	}
	return out
}

func (t *Table) aloud(defs ...Definition) string {
	out := ""
	for _, d := range defs {
		out += " " + fmt.Sprintf(t.Whole.Spoken, d.Name, d.Because)
	}
	return out
}
