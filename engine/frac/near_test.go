package frac_test

import (
	"math"
	"testing"

	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
)

func TestNear(t *testing.T) {
	for _, test := range []struct {
		x, tol float64
		maxDen int64
		want   string
	}{
		{0, 1e-9, 100, "0"},
		{2, 1e-9, 100, "2"},
		{-2, 1e-9, 100, "-2"},
		{0.5, 1e-9, 100, "1/2"},
		{1.0 / 3, 1e-9, 100, "1/3"},
		{-1.0 / 3, 1e-9, 100, "-1/3"},
		{0.1 + 0.2, 1e-9, 100, "3/10"},
		{-7.0 / 48, 1e-9, 100, "-7/48"},
		{1234567 + 5.0/7, 1e-9, 100, "8641974/7"},
		{math.Pi, 1e-2, 1000, "22/7"}, // Archimedes
		{math.Pi, 1e-6, 1000, "355/113"},
		{0.15, 0.06, 1000, "1/5"}, // not 1/6, which is nearer
		{0.999999, 0.005, 1000, "1"},
		{math.Pi, 0, 100, "311/99"}, // none so near: a near one of small denominator
	} {
		got := frac.Near(test.x, test.tol, test.maxDen)
		if test.tol == 0 {
			if got.Den().Int64() > test.maxDen || math.Abs(got.Float()-test.x) > 1/float64(test.maxDen) {
				t.Errorf("Near(%v, 0, %d) = %v, want one within 1/%d", test.x, test.maxDen, got, test.maxDen)
			}
			continue
		}
		if got.String() != test.want {
			t.Errorf("Near(%v, %v, %d) = %v, want %s", test.x, test.tol, test.maxDen, got, test.want)
		}
	}
}

// TestNearByCounting tries denominator after denominator.
func TestNearByCounting(t *testing.T) {
	r := chance.New(t)
	for range 5000 {
		x := 20*r.Float64() - 10
		if r.IntN(2) == 0 {
			x = float64(r.IntN(400)-200) / float64(1+r.IntN(60))
		}
		tol := math.Pow(10, -1-5*r.Float64())
		const maxDen = 100
		got := frac.Near(x, tol, maxDen)
		if got.Den().Int64() > maxDen {
			t.Fatalf("Near(%v, %v, %d) = %v: the denominator is greater", x, tol, maxDen, got)
		}
		for q := int64(1); q <= maxDen; q++ {
			if p := math.Round(x * float64(q)); math.Abs(p/float64(q)-x) <= tol*(1-1e-9) {
				if got.Den().Int64() > q || math.Abs(got.Float()-x) > tol {
					t.Fatalf("Near(%v, %v, %d) = %v, want %v/%d", x, tol, maxDen, got, p, q)
				}
				break
			}
		}
		// None is so near as 0: the nearest.
		best := 1.0
		for q := 1.0; q <= maxDen; q++ {
			best = min(best, math.Abs(math.Round(x*q)/q-x))
		}
		if got := frac.Near(x, 0, maxDen); got.Den().Int64() > maxDen || math.Abs(got.Float()-x) > best+1e-14 {
			t.Fatalf("Near(%v, 0, %d) = %v, which is %v away, want %v", x, maxDen, got, math.Abs(got.Float()-x), best)
		}
	}
}

// TestNearLarge: large numbers and denominators, where whole numbers of 64 bits
// would run over.
func TestNearLarge(t *testing.T) {
	for _, x := range []float64{1e15 + 0.5, -1e15 - 0.25, 1 << 52, 123456789012.34567, 1e12 + 1.0/3, 1e-12, -1e-300, 5e-324} {
		got := frac.Near(x, 1e-12, 1_000_000)
		if d := math.Abs(got.Float() - x); d > 1e-6 {
			t.Errorf("Near(%v) = %v, which is %v away", x, got, d)
		}
	}
}
