// Package frac holds exact fractions of any size as immutable values.
//
// Speeds, cycles, beats and cut places are fractions, so that cutting and
// rejoining, and the question when a lane closes, never depend on rounding.
package frac

import (
	"errors"
	"fmt"
	"math/big"
	"strings"
)

// Frac is an exact fraction. The zero value is 0. A Frac is never changed in
// place, so copies may be shared; compare with Equal or Cmp, not with ==.
type Frac struct{ r *big.Rat }

var zero = new(big.Rat)

// MaxDecimals bounds the length of a decimal that Parse takes, so that a
// hostile exponent cannot fill the memory.
const MaxDecimals = 4000

// ErrSyntax says that a text is neither a decimal nor a fraction "p/q".
var ErrSyntax = errors.New("not a number or a fraction")

// New returns num/den. It panics if den is 0.
func New(num, den int64) Frac { return Frac{big.NewRat(num, den)} }

// Int returns the whole number n.
func Int(n int64) Frac { return Frac{new(big.Rat).SetInt64(n)} }

// Parse reads a decimal ("1.25", "-3e-2") or a fraction ("-1/3"), exactly.
// Every number is in base ten, leading zeros or not; a denominator has no sign.
func Parse(s string) (Frac, error) {
	if s == "" || len(s) > MaxDecimals || strings.ContainsAny(s, "_xXpPbBoO") {
		return Frac{}, ErrSyntax
	}
	if num, den, ok := strings.Cut(s, "/"); ok {
		return parseQuotient(num, den)
	}
	if i := strings.IndexAny(s, "eE"); i >= 0 {
		var exp int
		if _, err := fmt.Sscanf(s[i+1:], "%d", &exp); err != nil || exp > MaxDecimals || exp < -MaxDecimals {
			return Frac{}, ErrSyntax
		}
	}
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		return Frac{}, ErrSyntax
	}
	return Frac{r}, nil
}

// parseQuotient reads the two sides of "p/q". The library's own reading of a
// fraction would take a leading zero for a sign of base eight.
func parseQuotient(num, den string) (Frac, error) {
	p, okP := new(big.Int).SetString(num, 10)
	q, okQ := new(big.Int).SetString(den, 10)
	if !okP || !okQ || q.Sign() == 0 || den[0] < '0' || den[0] > '9' {
		return Frac{}, ErrSyntax
	}
	return Frac{new(big.Rat).SetFrac(p, q)}, nil
}

// FromFloat returns the shortest decimal that reads back as x, exactly.
// It panics if x is not finite.
func FromFloat(x float64) Frac {
	f, err := Parse(fmt.Sprint(x))
	if err != nil {
		panic(fmt.Sprintf("frac: FromFloat(%v)", x))
	}
	return f
}

func (f Frac) rat() *big.Rat {
	if f.r == nil {
		return zero
	}
	return f.r
}

// Add returns f + g.
func (f Frac) Add(g Frac) Frac { return Frac{new(big.Rat).Add(f.rat(), g.rat())} }

// Sub returns f − g.
func (f Frac) Sub(g Frac) Frac { return Frac{new(big.Rat).Sub(f.rat(), g.rat())} }

// Mul returns f·g.
func (f Frac) Mul(g Frac) Frac { return Frac{new(big.Rat).Mul(f.rat(), g.rat())} }

// Div returns f/g. It panics if g is 0.
func (f Frac) Div(g Frac) Frac { return Frac{new(big.Rat).Quo(f.rat(), g.rat())} }

// Neg returns −f.
func (f Frac) Neg() Frac { return Frac{new(big.Rat).Neg(f.rat())} }

// Abs returns |f|.
func (f Frac) Abs() Frac { return Frac{new(big.Rat).Abs(f.rat())} }

// Cmp returns −1, 0 or 1 as f is below, equal to or above g.
func (f Frac) Cmp(g Frac) int { return f.rat().Cmp(g.rat()) }

// Equal reports whether f = g. Both are in lowest terms, so that nothing need be
// multiplied, nor memory taken for it.
func (f Frac) Equal(g Frac) bool {
	a, b := f.rat(), g.rat()
	return a.Num().Cmp(b.Num()) == 0 && a.Denom().Cmp(b.Denom()) == 0
}

// Less reports whether f < g.
func (f Frac) Less(g Frac) bool { return f.Cmp(g) < 0 }

// Sign returns −1, 0 or 1.
func (f Frac) Sign() int { return f.rat().Sign() }

// IsZero reports whether f = 0.
func (f Frac) IsZero() bool { return f.Sign() == 0 }

// IsOne reports whether f = 1.
func (f Frac) IsOne() bool { return f.IsInt() && f.Sign() > 0 && f.rat().Num().BitLen() == 1 }

// IsInt reports whether f is whole.
func (f Frac) IsInt() bool { return f.rat().IsInt() }

// Num returns the numerator of f in lowest terms, with f's sign.
func (f Frac) Num() *big.Int { return new(big.Int).Set(f.rat().Num()) }

// Den returns the denominator of f in lowest terms, at least 1.
func (f Frac) Den() *big.Int { return new(big.Int).Set(f.rat().Denom()) }

// Float returns the nearest float64.
func (f Frac) Float() float64 {
	num, den := f.rat().Num(), f.rat().Denom()
	if num.BitLen() <= 53 && den.BitLen() <= 53 {
		// Both are floats exactly, and a quotient of floats is the nearest one.
		return float64(num.Int64()) / float64(den.Int64())
	}
	x, _ := f.rat().Float64()
	return x
}

// Floor returns the greatest whole number not above f.
func (f Frac) Floor() Frac {
	q, m := new(big.Int), new(big.Int)
	q.DivMod(f.rat().Num(), f.rat().Denom(), m) // Euclidean: rounds down as the divisor is positive
	return Frac{new(big.Rat).SetInt(q)}
}

// Mod1 returns f − ⌊f⌋, in [0, 1).
func (f Frac) Mod1() Frac { return f.Sub(f.Floor()) }

// Round returns the whole multiple of step nearest to f, halves upward.
// It panics if step is 0.
func (f Frac) Round(step Frac) Frac {
	return f.Div(step).Add(New(1, 2)).Floor().Mul(step)
}

// IsDecimal reports whether f has a finite decimal form of at most digits
// places after the point.
func (f Frac) IsDecimal(digits int) bool {
	d := f.Den()
	ten := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(digits)), nil)
	return new(big.Int).Mod(ten, d).Sign() == 0
}

// String writes f as a whole number or as "p/q" in lowest terms.
func (f Frac) String() string { return f.rat().RatString() }

// Decimal writes f with the given number of places after the point, rounded,
// trailing zeros dropped.
func (f Frac) Decimal(places int) string {
	s := f.rat().FloatString(places)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		s = "0"
	}
	return s
}

// FromBig returns the whole number n.
func FromBig(n *big.Int) Frac { return Frac{new(big.Rat).SetInt(n)} }

// LCM returns the least positive fraction that is a whole multiple of both f
// and g, which must be positive: with common denominator d,
// lcm(f·d, g·d)/d.
func LCM(f, g Frac) Frac {
	d := new(big.Int).Mul(f.rat().Denom(), g.rat().Denom())
	a := new(big.Int).Mul(f.rat().Num(), g.rat().Denom())
	b := new(big.Int).Mul(g.rat().Num(), f.rat().Denom())
	gcd := new(big.Int).GCD(nil, nil, a, b)
	lcm := a.Mul(a, b)
	lcm.Quo(lcm, gcd)
	return Frac{new(big.Rat).SetFrac(lcm, d)}
}
