package frac_test

import (
	"math"
	"math/big"
	"strings"
	"testing"

	"whorlbench/engine/frac"
)

func TestParse(t *testing.T) {
	for _, test := range []struct{ in, want string }{
		{"0", "0"},
		{"-0", "0"},
		{"-0.0", "0"},
		{"7", "7"},
		{"+7", "7"},
		{"1.25", "5/4"},
		{"-3e-2", "-3/100"},
		{"1E3", "1000"},
		{"1e+3", "1000"},
		{"1e05", "100000"},
		{".5", "1/2"},
		{"1.", "1"},
		{"1/3", "1/3"},
		{"-1/3", "-1/3"},
		{"+2/6", "1/3"},
		{"0/5", "0"},
		{"0.1", "1/10"},
		{"010", "10"}, // base ten in every place
		{"010/3", "10/3"},
		{"1/010", "1/10"},
		{"08/09", "8/9"},
		{"0.3333333333333333", "3333333333333333/10000000000000000"},
		{"123456789012345678901234567891/10", "123456789012345678901234567891/10"},
	} {
		f, err := frac.Parse(test.in)
		if err != nil || f.String() != test.want {
			t.Errorf("Parse(%q) = %v, %v, want %s", test.in, f, err, test.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for _, in := range []string{
		"", " ", "-", "+", ".", "e5", "1e", "1e5.5", "1e 5", "one",
		" 1", "1 ", "1 /3", "1/ 3", "--1", "1,5", "1..2",
		"1/0", "0/0", "1/00", "1/", "/3", "1/3/4", "1/-3", "1/+3", "-1/-3", "1.5/2", "1/2.5", "1e2/3", "1/3e2",
		"0x10", "0b11", "0o17", "0X1", "1p4", "1_0", "1_000/3", "1/1_0",
		"inf", "Inf", "-Inf", "+inf", "nan", "NaN", "infinity",
		"1e4001", "1e-4001", "1e999999999", "1e-999999999", "1e99999999999999999999", "0e1000000000",
		"٣", "１", "½", "1\x00", "−1",
		strings.Repeat("1", frac.MaxDecimals+1),
	} {
		if f, err := frac.Parse(in); err == nil {
			t.Errorf("Parse(%.20q) = %.20v, want an error", in, f)
		} else if !f.IsZero() {
			t.Errorf("Parse(%.20q) = %.20v with an error, want 0", in, f)
		}
	}
}

func TestParseLongest(t *testing.T) {
	for _, in := range []string{
		"1e4000", "1e-4000",
		strings.Repeat("9", frac.MaxDecimals),
		"0." + strings.Repeat("3", frac.MaxDecimals-2),
	} {
		f, err := frac.Parse(in)
		if err != nil {
			t.Errorf("Parse(%.10q…) gives %v, want no error", in, err)
			continue
		}
		back, err := frac.Parse(f.String())
		if len(f.String()) <= frac.MaxDecimals && (err != nil || !back.Equal(f)) {
			t.Errorf("Parse(%.10q…) does not read back", in)
		}
	}
	ten := new(big.Int).Exp(big.NewInt(10), big.NewInt(4000), nil)
	if f, _ := frac.Parse("1e-4000"); f.Den().Cmp(ten) != 0 {
		t.Errorf("Parse(1e-4000) has not the denominator 10^4000")
	}
}

func TestFromFloat(t *testing.T) {
	for _, test := range []struct {
		in   float64
		want string
	}{
		{0, "0"},
		{math.Copysign(0, -1), "0"},
		{0.1, "1/10"},
		{-2.5, "-5/2"},
		{1.0 / 3, "3333333333333333/10000000000000000"},
		{1e21, "1000000000000000000000"},
		{1e-7, "1/10000000"},
	} {
		if got := frac.FromFloat(test.in).String(); got != test.want {
			t.Errorf("FromFloat(%v) = %s, want %s", test.in, got, test.want)
		}
	}
	for _, x := range []float64{math.MaxFloat64, math.SmallestNonzeroFloat64, math.Pi, -1e-300} {
		if got := frac.FromFloat(x).Float(); got != x {
			t.Errorf("FromFloat(%v).Float() = %v, want the same", x, got)
		}
	}
}

// FuzzParse: whatever is read reads back as the same number from its own text.
func FuzzParse(f *testing.F) {
	for _, s := range []string{"1/3", "-0.25", "1e3", "010/3", "0x10", "1/0", "9999999999999999999999/7"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		x, err := frac.Parse(s)
		if err != nil {
			return
		}
		text := x.String()
		if len(text) > frac.MaxDecimals {
			return
		}
		if y, err := frac.Parse(text); err != nil || !y.Equal(x) {
			t.Errorf("Parse(%q) = %v, and its text reads back as %v, %v", s, x, y, err)
		}
	})
}
