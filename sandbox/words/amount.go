package words

import (
	"fmt"
	"math"

	"whorlbench/engine/frac"
)

// turnDust is how far (turns) a number of turns may be off a plain one and be
// called by it: a part of an eased arm is no exact fraction.
const turnDust = 0.005

// spelled writes a small whole number as a word, anything else in figures.
func (t *Table) spelled(f frac.Frac) string {
	if x := f.Float(); f.IsInt() && x >= 0 && x < float64(len(t.Figure.Counted)) {
		return t.Figure.Counted[int(x)]
	}
	return t.Fraction(f)
}

// often writes how many times.
func (t *Table) often(n int) string {
	if n < len(t.Steps.Times) {
		return t.Steps.Times[n]
	}
	return fmt.Sprintf(t.Steps.ManyTimes, t.spelled(frac.Int(int64(n))))
}

// turnsOften writes how many times, a number that need not be whole.
func (t *Table) turnsOften(x float64) string {
	if n := math.Round(x); math.Abs(x-n) < turnDust && n < math.MaxInt32 {
		return t.often(int(n))
	}
	return fmt.Sprintf(t.Steps.ManyTimes, number(x, 2))
}

// howMany writes a number that need not be whole.
func (t *Table) howMany(x float64) string {
	n := math.Floor(x + turnDust)
	if n >= mostSpelled {
		return number(x, 2)
	}
	whole := t.spelled(frac.Int(int64(n)))
	if math.Abs(x-n) < turnDust {
		return whole
	}
	if rest, ok := portion(t.Steps.Rests, x-n); ok && n > 0 {
		if n >= float64(len(t.Figure.Counted)) {
			return fmt.Sprintf(t.Steps.FiguresAndRest, whole, rest)
		}
		return fmt.Sprintf(t.Steps.AndRest, whole, rest)
	}
	return number(x, 2)
}

// portion finds what a part is called.
func portion(of []Portion, x float64) (name string, ok bool) {
	for _, s := range of {
		if f, err := frac.Parse(s.Of); err == nil && math.Abs(f.Float()-x) < turnDust {
			return s.Name, true
		}
	}
	return "", false
}

// turnCount writes turns of a prop.
func (t *Table) turnCount(x float64) string {
	return t.much(x, t.Steps.TurnParts, t.Steps.Turns)
}

// beatCount writes a time in beats in words.
func (t *Table) beatCount(f frac.Frac) string {
	if x := f.Float(); x < mostSpelled {
		return t.much(x, t.Steps.BeatParts, t.Steps.Beats)
	}
	return fmt.Sprintf(t.Steps.Beats, t.Fraction(f))
}

// mostSpelled is beyond what is called by a word.
const mostSpelled = 1000

// much writes an amount: as a part where it is one, else as a number.
func (t *Table) much(x float64, parts []Portion, many string) string {
	if name, ok := portion(parts, x); ok {
		return name
	}
	return fmt.Sprintf(many, t.howMany(x))
}
