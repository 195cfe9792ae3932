package frac

import "math"

// Near returns the fraction of least denominator, up to maxDen, that lies
// within tol of x, and the nearest one met on the way if none does. It walks
// the continued fraction of x (Hardy and Wright, "An Introduction to the
// Theory of Numbers", chapter 10). x is finite with |x| < 2⁵³.
func Near(x, tol float64, maxDen int64) Frac {
	h0, k0, h1, k1 := int64(0), int64(1), int64(1), int64(0)
	rest := x
	for range 64 {
		whole := math.Floor(rest)
		n := int64(whole)
		h2, k2 := n*h1+h0, n*k1+k0
		if k2 > maxDen || k2 < 0 {
			break
		}
		h0, k0, h1, k1 = h1, k1, h2, k2
		if math.Abs(float64(h1)/float64(k1)-x) <= tol || rest == whole {
			break
		}
		rest = 1 / (rest - whole)
		if rest > 1<<52 {
			break
		}
	}
	return New(h1, k1)
}
