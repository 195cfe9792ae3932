package words

import (
	"fmt"
	"math"
	"math/big"
	"strings"
	"unicode"

	"whorlbench/engine/frac"
)

// span writes a length as a person would pace it out: to the centimetre,
// rounded up.
func (t *Table) span(x float64) string {
	const dust = 1e-9 // m
	cm := math.Ceil(100 * (x - dust))
	switch {
	case cm >= 100:
		return fmt.Sprintf(t.Mend.Metre, number(cm/100, 2))
	case x < 0.01-dust:
		return t.Mend.UnderOne
	}
	return fmt.Sprintf(t.Mend.Centimetre, number(cm, 0))
}

// turns writes how far something turns, either way.
func (t *Table) turns(f frac.Frac) string {
	f = f.Abs()
	switch quarters := f.Mul(frac.Int(4)); {
	case f.IsZero():
		return t.Mend.NoTurn
	case quarters.IsInt() && !frac.Int(4).Less(quarters):
		return t.ArmTurns(f)
	case f.Less(frac.Int(1)):
		return fmt.Sprintf(t.Mend.PartTurn, Mixed(f))
	}
	return fmt.Sprintf(t.Mend.ManyTurns, Mixed(f))
}

// mixedBeats is Beats with a mixed number.
func (t *Table) mixedBeats(f frac.Frac) string {
	switch {
	case f.Equal(frac.Int(1)):
		return t.Bench.OneBeat
	case f.Less(frac.Int(1)):
		return fmt.Sprintf(t.Mend.PartBeat, Mixed(f))
	}
	return fmt.Sprintf(t.Bench.ManyBeats, Mixed(f))
}

// vulgar are the fractions that have a sign of their own.
var vulgar = map[string]string{
	"1/2": "½", "1/3": "⅓", "2/3": "⅔", "1/4": "¼", "3/4": "¾", "1/5": "⅕", "2/5": "⅖", "3/5": "⅗", "4/5": "⅘",
	"1/6": "⅙", "5/6": "⅚", "1/8": "⅛", "3/8": "⅜", "5/8": "⅝", "7/8": "⅞",
}

// Mixed writes f as it is counted: whole ones, and a fraction of a beat or turn
// that can be counted too; else as Value does. The canvas's typeface lacks some
// of the signs: see Spelt.
func Mixed(f frac.Frac) string {
	const most = 12 // denominator
	whole, part := f.Floor(), f.Mod1()
	sign, simple := vulgar[part.String()]
	switch {
	case f.Sign() < 0 || part.IsZero() || part.Den().Cmp(big.NewInt(most)) > 0:
		return Value(f)
	case whole.IsZero() && !simple:
		return part.String()
	case whole.IsZero():
		return sign
	case !simple:
		return whole.String() + " " + part.String()
	}
	return whole.String() + sign
}

// spelt writes out the fractions whose signs the canvas's typeface lacks: all but
// those of Latin-1.
var spelt = func() *strings.Replacer {
	var pairs []string
	for fraction, sign := range vulgar {
		if []rune(sign)[0] > unicode.MaxLatin1 {
			pairs = append(pairs, sign, " "+fraction)
		}
	}
	return strings.NewReplacer(pairs...)
}()

// Spelt writes a text so that the canvas's typeface has every letter of it.
func Spelt(text string) string {
	// A fraction by itself needs no space before it.
	return strings.ReplaceAll(spelt.Replace(text), "  ", " ")
}
