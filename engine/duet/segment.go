package duet

import "math"

// vec is a place or a way in three dimensions, m.
type vec struct{ x, y, z float64 }

func (a vec) add(b vec) vec { return vec{a.x + b.x, a.y + b.y, a.z + b.z} }

func (a vec) sub(b vec) vec { return vec{a.x - b.x, a.y - b.y, a.z - b.z} }

func (a vec) times(k float64) vec {
	return vec{float64(a.x * k), float64(a.y * k), float64(a.z * k)}
}

func (a vec) dot(b vec) float64 {
	return float64(a.x*b.x) + float64(a.y*b.y) + float64(a.z*b.z)
}

func (a vec) size() float64 { return math.Sqrt(a.dot(a)) }

// shares says where on two segments a way ends: the share of each, from its
// beginning.
type shares struct{ first, second float64 }

// share returns the share of the segment from a along d that is nearest to p.
func share(p, a, d vec) float64 { return min(max(p.sub(a).dot(d)/d.dot(d), 0), 1) }

// between returns the shortest way to the segment from a along u from the one
// from c along v, and where on both it lies: at an end of one of them, or
// across both (C. Ericson, Real-Time Collision Detection, 2005, section
// 5.1.9). Neither segment is a point.
func between(a, u, c, v vec) (way vec, at shares) {
	least := math.Inf(1)
	offer := func(s, t float64) {
		w := a.add(u.times(s)).sub(c.add(v.times(t)))
		if l := w.dot(w); l < least {
			way, least, at = w, l, shares{s, t}
		}
	}
	offer(0, share(a, c, v))
	offer(1, share(a.add(u), c, v))
	offer(share(c, a, u), 0)
	offer(share(c.add(v), a, u), 1)
	w := a.sub(c)
	uu, uv, vv := u.dot(u), u.dot(v), v.dot(v)
	uw, vw := u.dot(w), v.dot(w)
	det := float64(uu*vv) - float64(uv*uv)
	if det <= parallel*uu*vv {
		return way, at // an end is as near as any place between
	}
	s := (float64(uv*vw) - float64(vv*uw)) / det
	t := (float64(uu*vw) - float64(uv*uw)) / det
	if s >= 0 && s <= 1 && t >= 0 && t <= 1 {
		offer(s, t)
	}
	return way, at
}

// parallel is the squared sine of the angle below which two segments are
// taken to be parallel: rounding alone would decide where they are nearest.
const parallel = 1e-24
