package presets

import (
	"errors"
	"fmt"
	"math"
	"math/big"
	"strconv"
	"strings"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/words"
)

// beyond is a decimal greater than every float64.
const beyond = "1e999"

// digits returns a TOML number's digits as Go and big numbers read them: base
// ten, no underscores. The parser has checked the grammar.
func (n *node) digits() string {
	s := strings.ReplaceAll(n.text, "_", "")
	if len(s) > 2 && s[0] == '0' && (s[1] == 'x' || s[1] == 'o' || s[1] == 'b') {
		i, err := strconv.ParseUint(s, 0, 64)
		if err != nil {
			return beyond
		}
		return strconv.FormatUint(i, 10)
	}
	return s
}

// isNumber reports whether the node is a TOML number, infinities included.
func (n *node) isNumber() bool { return n.kind == isWhole || n.kind == isDecimal }

// float returns the nearest float64, never −0. Beyond all numbers it is
// infinite, which no range has.
func (n *node) float() float64 {
	x, err := strconv.ParseFloat(n.digits(), 64)
	if err != nil && !errors.Is(err, strconv.ErrRange) {
		return math.NaN()
	}
	return x + 0
}

// exact returns a number's own digits, or a text's fraction, exactly. If that
// cannot be, or it is not in the range, it says what was found and what is
// allowed instead.
func (n *node) exact(s span) (f frac.Frac, found, allowed string) {
	w := &words.Said.Preset
	switch {
	case n.kind == isText:
		if f, ok := fraction(n.text); ok {
			return within(f, s, n.found())
		}
		return f, n.found(), fmt.Sprintf(w.AFraction, MaxDenominator, s)
	case !n.isNumber():
		return f, n.found(), fmt.Sprintf(w.AFraction, MaxDenominator, s)
	}
	// The float64 comes first: it keeps hostile exponents, and infinities,
	// from the exact arithmetic.
	x := n.float()
	switch {
	case math.IsNaN(x) || math.Abs(x) > math.Max(-s.lo, s.hi):
		return f, n.found(), s.String()
	case x == 0 && !strings.ContainsAny(mantissa(n.digits()), "123456789"):
		return within(f, s, n.found())
	case x == 0:
		return f, fmt.Sprintf(w.TooSmall, n.found()), s.String()
	}
	d := n.digits()
	f, err := frac.Parse(d)
	if err != nil {
		return f, fmt.Sprintf(w.TooLong, short(n.text), len(d)), fmt.Sprintf(w.Digits, MaxDigits)
	}
	return within(f, s, n.found())
}

// mantissa returns a decimal without its exponent.
func mantissa(s string) string {
	if i := strings.IndexAny(s, "eE"); i >= 0 {
		return s[:i]
	}
	return s
}

// within passes f on if it is in the range and, unless 0, also as a float64
// not 0: what is shared out by it must not be shared out by nothing.
func within(f frac.Frac, s span, shown string) (g frac.Frac, found, allowed string) {
	switch {
	case !s.hasExactly(f):
		return g, shown, s.String()
	case !f.IsZero() && f.Float() == 0:
		return g, fmt.Sprintf(words.Said.Preset.TooSmall, shown), s.String()
	}
	return f, "", ""
}

// fraction reads "p/q" or a whole number. The denominator counts as written.
func fraction(s string) (frac.Frac, bool) {
	num, den, ok := strings.Cut(s, "/")
	if ok {
		q, err := strconv.ParseUint(den, 10, 32)
		if err != nil || q > MaxDenominator {
			return frac.Frac{}, false
		}
	}
	if strings.Trim(strings.TrimLeft(num, "+-"), "0123456789") != "" {
		return frac.Frac{}, false // a decimal in a text
	}
	f, err := frac.Parse(s)
	return f, err == nil
}

// niceDecimals is up to how many places a decimal is easier to read than a
// fraction.
const niceDecimals = 6

// literal writes f as a TOML value that reads back exactly: a short decimal
// if there is one, else a fraction in quotes, else a long decimal. ok is
// false if there is none of these.
func literal(f frac.Frac) (s string, ok bool) {
	if f.IsDecimal(niceDecimals) {
		s = f.Decimal(niceDecimals)
		return s, len(s) <= MaxDigits
	}
	den := f.Den()
	if den.Cmp(big.NewInt(MaxDenominator)) <= 0 {
		s = f.String()
		return `"` + s + `"`, len(s) <= MaxDigits
	}
	places, ok := decimals(den)
	if !ok {
		return "", false
	}
	s = f.Decimal(places)
	return s, len(s) <= MaxDigits
}

// decimals returns how many places a decimal with the denominator den has:
// with den = 2^a·5^b that is the greater of a and b, and any other
// denominator has no finite decimal.
func decimals(den *big.Int) (places int, ok bool) {
	if den.BitLen() > 4*MaxDigits { // above 10^MaxDigits, and slow to handle
		return 0, false
	}
	a := int(den.TrailingZeroBits())
	odd := new(big.Int).Rsh(den, uint(a))
	// 5^b has ⌊b·log₂5⌋ + 1 bits, so its length leaves one b to try.
	b := int(math.Ceil(float64(odd.BitLen()-1) / math.Log2(5)))
	power := new(big.Int).Exp(big.NewInt(5), big.NewInt(int64(b)), nil)
	return max(a, b), power.Cmp(odd) == 0
}

// decimal writes a finite float64 as a TOML number, in the shortest form that
// reads back.
func decimal(x float64) string {
	x += 0 // no −0
	if a := math.Abs(x); a != 0 && a < 1e-6 {
		return strconv.FormatFloat(x, 'e', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}
