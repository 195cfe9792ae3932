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

// toSegment returns the shortest way from the segment a to b to the place p.
func toSegment(p, a, b vec) vec {
	d := b.sub(a)
	u := min(max(p.sub(a).dot(d)/d.dot(d), 0), 1)
	return p.sub(a.add(d.times(u)))
}

// between returns the shortest way from the segment c to d to the segment a
// to b: from an end of one of them, or across both (C. Ericson, Real-Time
// Collision Detection, 2005, section 5.1.9). Neither segment is a point.
func between(a, b, c, d vec) vec {
	way := toSegment(a, c, d)
	least := way.dot(way)
	offer := func(w vec) {
		if l := w.dot(w); l < least {
			way, least = w, l
		}
	}
	offer(toSegment(b, c, d))
	offer(toSegment(c, a, b).times(-1))
	offer(toSegment(d, a, b).times(-1))
	u, v, w := b.sub(a), d.sub(c), a.sub(c)
	uu, uv, vv := u.dot(u), u.dot(v), v.dot(v)
	uw, vw := u.dot(w), v.dot(w)
	det := float64(uu*vv) - float64(uv*uv)
	if det <= parallel*uu*vv {
		return way // an end is as near as any place between
	}
	s := (float64(uv*vw) - float64(vv*uw)) / det
	t := (float64(uu*vw) - float64(uv*uw)) / det
	if s >= 0 && s <= 1 && t >= 0 && t <= 1 {
		offer(a.add(u.times(s)).sub(c.add(v.times(t))))
	}
	return way
}

// parallel is the squared sine of the angle below which two segments are
// taken to be parallel: rounding alone would decide where they are nearest.
const parallel = 1e-24
