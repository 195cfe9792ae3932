package words

import (
	"math/big"
	"testing"

	"whorlbench/engine/frac"
)

func TestFraction(t *testing.T) {
	power := new(big.Int).Exp(big.NewInt(10), big.NewInt(400), nil) // beyond any float
	for _, tt := range []struct {
		f    frac.Frac
		want string
	}{
		{frac.Int(0), "0"},
		{frac.Int(-3), "−3"},
		{frac.New(1, 2), "0.5"},
		{frac.New(-1, 3), "−1/3"},
		{frac.New(1, 64), "0.015625"},
		{frac.New(1, 128), "1/128"},
		{frac.New(999983, 1000000), "0.999983"},
		{frac.New(1234567, 1234568), "about 1"},
		{frac.FromBig(power), "about 1e400"},
	} {
		if got := English.Fraction(tt.f); got != tt.want {
			t.Errorf("Fraction(%v) = %q, want %q", tt.f, got, tt.want)
		}
	}
}

func TestCounted(t *testing.T) {
	for _, tt := range []struct{ got, want string }{
		{English.Quotient(frac.New(-5, 2)), "−5/2"},
		{English.Quotient(frac.New(1000001, 1000000)), "1.000001"},
		{English.CountRounds(big.NewInt(1)), "1 round"},
		{English.CountRounds(big.NewInt(3)), "3 rounds"},
		{English.CountBeats(frac.Int(1)), "1 beat"},
		{English.CountBeats(frac.New(1, 2)), "0.5 beats"},
		{English.Seconds(frac.Int(4), 90), "2.667 s"}, // 4 beats of 2/3 s
		{English.Seconds(frac.Int(4), 120), "2 s"},
		{English.Seconds(frac.Int(1), 59.5), "1.008 s"}, // 60/59.5 = 1.00840…
		{English.Seconds(frac.Int(9e15), 60), "about 9e15 s"},
		{Metres(0.3124), "0.312"},
		{Metres(1), "1"},
		{Metres(0.0000123), "0.0000123"},
	} {
		if tt.got != tt.want {
			t.Errorf("got %q, want %q", tt.got, tt.want)
		}
	}
}
