package frac_test

import (
	"errors"
	"math"
	"math/big"
	"testing"

	"whorlbench/engine/frac"
)

// mustParse is for fixtures written in the tests themselves.
func mustParse(t *testing.T, s string) frac.Frac {
	t.Helper()
	f, err := frac.Parse(s)
	if err != nil {
		t.Fatalf("Parse(%q): %v", s, err)
	}
	return f
}

func TestArithmetic(t *testing.T) {
	for _, test := range []struct {
		f, g               string
		sum, dif, mul, quo string
		cmp                int
	}{
		{"1/2", "1/3", "5/6", "1/6", "1/6", "3/2", 1},
		{"-1/2", "1/3", "-1/6", "-5/6", "-1/6", "-3/2", -1},
		{"0", "7", "7", "-7", "0", "0", -1},
		{"2/4", "1/2", "1", "0", "1/4", "1", 0},
		{"0.1", "0.2", "3/10", "-1/10", "1/50", "1/2", -1},
		{"-3", "-3/7", "-24/7", "-18/7", "9/7", "7", -1},
		{"1/9007199254740993", "1/9007199254740992", // too near for floating point
			"18014398509481985/81129638414606690702988259885056", "-1/81129638414606690702988259885056",
			"1/81129638414606690702988259885056", "9007199254740992/9007199254740993", -1},
	} {
		f, g := mustParse(t, test.f), mustParse(t, test.g)
		for _, op := range []struct {
			name string
			got  frac.Frac
			want string
		}{
			{"Add", f.Add(g), test.sum},
			{"Sub", f.Sub(g), test.dif},
			{"Mul", f.Mul(g), test.mul},
			{"Div", f.Div(g), test.quo},
		} {
			if got := op.got.String(); got != op.want {
				t.Errorf("%s.%s(%s) = %s, want %s", test.f, op.name, test.g, got, op.want)
			}
		}
		if got := f.Cmp(g); got != test.cmp {
			t.Errorf("%s.Cmp(%s) = %d, want %d", test.f, test.g, got, test.cmp)
		}
		if got := f.Less(g); got != (test.cmp < 0) {
			t.Errorf("%s.Less(%s) = %v, want %v", test.f, test.g, got, test.cmp < 0)
		}
		if got := f.Equal(g); got != (test.cmp == 0) {
			t.Errorf("%s.Equal(%s) = %v, want %v", test.f, test.g, got, test.cmp == 0)
		}
	}
}

func TestOneNumber(t *testing.T) {
	for _, test := range []struct {
		f                     string
		neg, abs, floor, mod1 string
		sign                  int
		isInt                 bool
		num, den              int64
		float                 float64
	}{
		{"0", "0", "0", "0", "0", 0, true, 0, 1, 0},
		{"7/2", "-7/2", "7/2", "3", "1/2", 1, false, 7, 2, 3.5},
		{"-7/2", "7/2", "7/2", "-4", "1/2", -1, false, -7, 2, -3.5},
		{"-2", "2", "2", "-2", "0", -1, true, -2, 1, -2},
		{"-1/3", "1/3", "1/3", "-1", "2/3", -1, false, -1, 3, -1.0 / 3},
		{"6/4", "-3/2", "3/2", "1", "1/2", 1, false, 3, 2, 1.5},
		{"0.999", "-999/1000", "999/1000", "0", "999/1000", 1, false, 999, 1000, 0.999},
	} {
		f := mustParse(t, test.f)
		for _, op := range []struct {
			name string
			got  frac.Frac
			want string
		}{
			{"Neg", f.Neg(), test.neg},
			{"Abs", f.Abs(), test.abs},
			{"Floor", f.Floor(), test.floor},
			{"Mod1", f.Mod1(), test.mod1},
		} {
			if got := op.got.String(); got != op.want {
				t.Errorf("%s.%s() = %s, want %s", test.f, op.name, got, op.want)
			}
		}
		if got := f.Sign(); got != test.sign {
			t.Errorf("%s.Sign() = %d, want %d", test.f, got, test.sign)
		}
		if got := f.IsZero(); got != (test.sign == 0) {
			t.Errorf("%s.IsZero() = %v, want %v", test.f, got, test.sign == 0)
		}
		if got := f.IsInt(); got != test.isInt {
			t.Errorf("%s.IsInt() = %v, want %v", test.f, got, test.isInt)
		}
		if got := f.Num(); got.Cmp(big.NewInt(test.num)) != 0 {
			t.Errorf("%s.Num() = %v, want %d", test.f, got, test.num)
		}
		if got := f.Den(); got.Cmp(big.NewInt(test.den)) != 0 {
			t.Errorf("%s.Den() = %v, want %d", test.f, got, test.den)
		}
		if got := f.Float(); got != test.float {
			t.Errorf("%s.Float() = %v, want %v", test.f, got, test.float)
		}
	}
}

func TestIsOne(t *testing.T) {
	for _, test := range []struct {
		f    string
		want bool
	}{{"1", true}, {"3/3", true}, {"1.0", true}, {"0", false}, {"-1", false}, {"2", false}, {"1/2", false}, {"3/2", false}} {
		if got := mustParse(t, test.f).IsOne(); got != test.want {
			t.Errorf("%s.IsOne() = %v, want %v", test.f, got, test.want)
		}
	}
	if new(frac.Frac).IsOne() {
		t.Error("the zero value is one")
	}
}

// TestFloatIsNearest: for short numerators and denominators too, the float is
// the one that package math/big gives.
func TestFloatIsNearest(t *testing.T) {
	for num := int64(-40); num <= 40; num++ {
		for _, den := range []int64{1, 2, 3, 7, 49, 97, 1e6, 1<<53 - 1, 1 << 53, 1<<53 + 1, 1<<62 + 1} {
			for _, k := range []int64{1, 1 << 40, 1 << 50} {
				want, _ := big.NewRat(num*k, den).Float64()
				if got := frac.New(num*k, den).Float(); got != want {
					t.Errorf("%d/%d = %v, want %v", num*k, den, got, want)
				}
			}
		}
	}
}

func TestRound(t *testing.T) {
	for _, test := range []struct{ f, step, want string }{
		{"0.5", "1", "1"}, // halves upward
		{"-0.5", "1", "0"},
		{"-1.5", "1", "-1"},
		{"1.49", "1", "1"},
		{"1/3", "1/48", "1/3"},
		{"0.34", "1/48", "1/3"},
		{"7/96", "1/48", "1/12"},
		{"13/10", "1/4", "5/4"},
		{"0", "1/7", "0"},
		{"-2/5", "1/3", "-1/3"},
	} {
		if got := mustParse(t, test.f).Round(mustParse(t, test.step)).String(); got != test.want {
			t.Errorf("%s.Round(%s) = %s, want %s", test.f, test.step, got, test.want)
		}
	}
}

func TestLCM(t *testing.T) {
	for _, test := range []struct{ f, g, want string }{
		{"4", "6", "12"},
		{"1/2", "1/3", "1"},
		{"3/4", "5/6", "15/2"},
		{"2/3", "2/3", "2/3"},
		{"1", "1/7", "1"},
		{"0.3", "0.2", "3/5"},
		{"1000000007", "998244353", "998244359987710471"},
	} {
		f, g := mustParse(t, test.f), mustParse(t, test.g)
		if got := frac.LCM(f, g).String(); got != test.want {
			t.Errorf("LCM(%s, %s) = %s, want %s", test.f, test.g, got, test.want)
		}
		if got := frac.LCM(g, f).String(); got != test.want {
			t.Errorf("LCM(%s, %s) = %s, want %s", test.g, test.f, got, test.want)
		}
	}
}

// TestLCMByCounting steps through the multiples one by one.
func TestLCMByCounting(t *testing.T) {
	for p := int64(1); p <= 6; p++ {
		for q := int64(1); q <= 5; q++ {
			for r := int64(1); r <= 6; r++ {
				f, g := frac.New(p, q), frac.New(r, 4)
				// k·p/q is a multiple of r/4 when 4kp is one of qr.
				k := int64(1)
				for 4*k*p%(q*r) != 0 {
					k++
				}
				if got, want := frac.LCM(f, g), frac.New(k*p, q); !got.Equal(want) {
					t.Errorf("LCM(%v, %v) = %v, want %v", f, g, got, want)
				}
			}
		}
	}
}

func TestDecimal(t *testing.T) {
	for _, test := range []struct {
		f      string
		places int
		want   string
	}{
		{"1/3", 3, "0.333"},
		{"2/3", 3, "0.667"},
		{"5/2", 6, "2.5"},
		{"100", 2, "100"},
		{"100", 0, "100"},
		{"-1/1000", 2, "0"},
		{"-1/4", 1, "-0.3"},
		{"0", 6, "0"},
		{"19999/10000", 3, "2"},
	} {
		if got := mustParse(t, test.f).Decimal(test.places); got != test.want {
			t.Errorf("%s.Decimal(%d) = %q, want %q", test.f, test.places, got, test.want)
		}
	}
}

func TestIsDecimal(t *testing.T) {
	for _, test := range []struct {
		f      string
		digits int
		want   bool
	}{
		{"3", 0, true},
		{"1/2", 0, false},
		{"1/2", 1, true},
		{"1/8", 2, false},
		{"1/8", 3, true},
		{"1/3", 30, false},
		{"-7/20", 2, true},
	} {
		if got := mustParse(t, test.f).IsDecimal(test.digits); got != test.want {
			t.Errorf("%s.IsDecimal(%d) = %v, want %v", test.f, test.digits, got, test.want)
		}
	}
}

// TestNeverChanges holds every operand and every handed-out number still.
func TestNeverChanges(t *testing.T) {
	f, g := frac.New(-7, 6), frac.New(5, 4)
	n := big.NewInt(3)
	whole := frac.FromBig(n)
	n.SetInt64(99)

	f.Num().SetInt64(1)
	f.Den().SetInt64(1)
	_ = []frac.Frac{f.Add(g), f.Sub(g), f.Mul(g), f.Div(g), f.Neg(), f.Abs(), f.Floor(), f.Mod1(), f.Round(g), frac.LCM(f.Abs(), g)}
	frac.FromBig(whole.Den()).Add(g)
	var zero frac.Frac
	zero.Add(g).Mul(g)

	for _, test := range []struct {
		name, want string
		f          frac.Frac
	}{
		{"f", "-7/6", f},
		{"g", "5/4", g},
		{"whole", "3", whole},
		{"zero", "0", zero},
		{"the zero value", "0", frac.Frac{}},
	} {
		if got := test.f.String(); got != test.want {
			t.Errorf("%s = %s, want %s", test.name, got, test.want)
		}
	}
}

func TestPanics(t *testing.T) {
	for _, test := range []struct {
		name string
		call func()
	}{
		{"New(1, 0)", func() { frac.New(1, 0) }},
		{"Div(0)", func() { frac.Int(1).Div(frac.Frac{}) }},
		{"Round(0)", func() { frac.Int(1).Round(frac.Frac{}) }},
		{"FromFloat(NaN)", func() { frac.FromFloat(math.NaN()) }},
		{"FromFloat(+Inf)", func() { frac.FromFloat(math.Inf(1)) }},
		{"FromFloat(-Inf)", func() { frac.FromFloat(math.Inf(-1)) }},
	} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s does not panic", test.name)
				}
			}()
			test.call()
		}()
	}
}

func TestErrSyntaxIsOne(t *testing.T) {
	if _, err := frac.Parse("one"); !errors.Is(err, frac.ErrSyntax) {
		t.Errorf("Parse(one) = %v, want %v", err, frac.ErrSyntax)
	}
}
