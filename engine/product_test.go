package engine_test

import (
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

func TestProduct(t *testing.T) {
	for _, test := range []struct{ a, b, want complex128 }{
		{0, 3 + 4i, 0},
		{1i, 1i, -1},
		{2 + 3i, 5 - 7i, 31 + 1i},
		{-1.5, 2 - 4i, -3 + 6i},
	} {
		if got := engine.Product(test.a, test.b); got != test.want {
			t.Errorf("Product(%v, %v) = %v, want %v", test.a, test.b, got, test.want)
		}
	}
	r := chance.New(t)
	for range 1000 {
		a, b := complex(r.NormFloat64(), r.NormFloat64()), complex(r.NormFloat64(), r.NormFloat64())
		if got, want := engine.Product(a, b), a*b; cmplx.Abs(got-want) > 1e-15*cmplx.Abs(a)*cmplx.Abs(b) {
			t.Fatalf("Product(%v, %v) = %v, want %v", a, b, got, want)
		}
	}
}

// TestProductRoundsEach: with e = 2⁻³⁰, (1 + e)² rounds to 1 + 2e, so that the
// real part is nothing; fused, it would be the e² that rounding leaves out.
func TestProductRoundsEach(t *testing.T) {
	const e = 1.0 / (1 << 30)
	x := 1 + e
	if got := engine.Product(complex(x, 1+2*e), complex(x, 1)); real(got) != 0 {
		t.Errorf("Product = %v, want the real part 0", got)
	}
}
