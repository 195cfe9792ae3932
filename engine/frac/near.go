package frac

import (
	"math"
	"sort"
)

// Near returns the fraction of least denominator, up to maxDen ≥ 1, that lies
// within tol ≥ 0 of x, and the nearest one of such a denominator if none does.
// It walks the continued fraction of x with its intermediate fractions (Hardy
// and Wright, "An Introduction to the Theory of Numbers", chapter 10). x is
// finite with |x| < 2⁵³.
func Near(x, tol float64, maxDen int64) Frac {
	whole := math.Floor(x)
	part := x - whole
	off := func(p, q int64) float64 { return math.Abs(float64(p)/float64(q) - part) }
	is := func(p, q int64) Frac { return Int(int64(whole)).Add(New(p, q)) }

	p0, q0, p1, q1 := int64(1), int64(0), int64(0), int64(1)
	for rest := 1 / part; off(p1, q1) > tol; {
		n := math.Floor(rest)
		room := (maxDen - q0) / q1
		most := room
		if n < float64(room) {
			most = int64(n)
		}
		// (m·p1 + p0)/(m·q1 + q0) comes nearer as m grows to n.
		m := int64(sort.Search(int(most), func(k int) bool {
			m := int64(k) + 1
			return off(m*p1+p0, m*q1+q0) <= tol
		})) + 1
		if m <= most {
			return is(m*p1+p0, m*q1+q0)
		}
		p0, q0, p1, q1 = p1, q1, most*p1+p0, most*q1+q0
		if n > float64(room) { // the denominator ends it
			if q1 == 0 || off(p0, q0) <= off(p1, q1) {
				return is(p0, q0)
			}
			break
		}
		if rest == n { // all that floating point knows of x
			break
		}
		rest = 1 / (rest - n)
	}
	return is(p1, q1)
}
