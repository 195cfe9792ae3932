package words

import (
	"fmt"
	"math/big"
	"strings"

	"whorlbench/engine/frac"
)

// Quantity holds units with their numbers.
type Quantity struct {
	Round, Rounds string // %s: a number
	Beat, Beats   string
	Seconds       string
	About         string // %s: a rounded number
	Point         string // between a number's whole and its decimals
}

var englishQuantity = Quantity{
	Round:   "%s round",
	Rounds:  "%s rounds",
	Beat:    "%s beat",
	Beats:   "%s beats",
	Seconds: "%s s",
	About:   "about %s",
	Point:   ".",
}

// Longer numbers than this are rounded: a lane may close after more rounds
// than a line has room for.
const maxDigits = 12

// CountRounds writes a number of rounds.
func (t *Table) CountRounds(n *big.Int) string {
	q := &t.Quantity
	return t.counted(frac.FromBig(n), q.Round, q.Rounds)
}

// CountBeats writes a time in beats.
func (t *Table) CountBeats(f frac.Frac) string {
	q := &t.Quantity
	return t.counted(f, q.Beat, q.Beats)
}

// Seconds writes a time given in beats, at a tempo in beats a minute, to the
// millisecond: s = 60·beats/tempo.
func (t *Table) Seconds(beats frac.Frac, tempo float64) string { return t.seconds(beats, tempo, 3) }

// ShortSeconds is Seconds to a tenth, or below one second to a hundredth: nobody
// hears more.
func (t *Table) ShortSeconds(beats frac.Frac, tempo float64) string {
	if beats.Float()*60 < tempo {
		return t.seconds(beats, tempo, 2)
	}
	return t.seconds(beats, tempo, 1)
}

func (t *Table) seconds(beats frac.Frac, tempo float64, places int) string {
	s := beats.Mul(frac.Int(60)).Div(frac.FromFloat(tempo))
	text := Decimals(s.Decimal(places))
	if len(text) > maxDigits {
		text = t.about(s)
	}
	return fmt.Sprintf(t.Quantity.Seconds, text)
}

func (t *Table) counted(f frac.Frac, one, many string) string {
	if f.Equal(frac.Int(1)) {
		many = one
	}
	return fmt.Sprintf(many, t.Fraction(f))
}

// Fraction writes f exactly where it is short, as a decimal of at most six
// places or as p/q, and rounded where it is long.
func (t *Table) Fraction(f frac.Frac) string {
	text := f.String()
	if f.IsDecimal(6) {
		text = Decimals(f.Decimal(6))
	}
	if len(text) > maxDigits {
		text = t.about(f)
	}
	return Minus(text)
}

// Quotient writes a ratio exactly as p/q where that is short, so that the arm
// turns to its closing can be read off, and rounded where it is long.
func (t *Table) Quotient(f frac.Frac) string {
	if text := f.String(); len(text) <= maxDigits {
		return Minus(text)
	}
	return t.Fraction(f)
}

// about writes f to four figures; f may be beyond any float.
func (t *Table) about(f frac.Frac) string {
	x := new(big.Float).SetInt(f.Num())
	text := x.Quo(x, new(big.Float).SetInt(f.Den())).Text('g', 4)
	return fmt.Sprintf(t.Quantity.About, Decimals(strings.Replace(text, "e+", "e", 1)))
}

// Number writes x with at most the given places, no trailing zeros and a true
// minus sign.
func Number(x float64, places int) string { return number(x, places) }

// Metres writes a length to the millimetre, and one below half of that to a
// tenth of a micrometre.
func Metres(x float64) string {
	if s := number(x, 3); s != "0" {
		return s
	}
	return number(x, 7)
}
