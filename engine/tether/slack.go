package tether

import (
	"math"
	"slices"
)

// Span is a time in which the tether is slack, in beats from the beginning of
// round 0. One that runs over the end of the closing rounds into their
// beginning is one span, whose To lies beyond that end.
type Span struct{ From, To float64 }

// Beats returns how long it is.
func (s Span) Beats() float64 { return s.To - s.From }

// mostSpans bounds how many are kept; what is slack so often is shown well
// enough by them.
const mostSpans = 4096

// slack appends the spans of shares in which a measure is below a level in a
// round. The values are those of the measure as it was read last.
func (s *stretch) slack(dst []Span, f measure, by complex128, level float64) []Span {
	least, greatest := s.read(f, by)
	above := float64(rise * (greatest - least))
	if least-above >= level {
		return dst
	}
	below := func(v float64) bool { return v < level }
	start := s.shares[0]
	u, v := s.shares[0], s.values[0]
	to := func(x, y float64) {
		switch {
		case !below(v) && below(y):
			start = s.crossing(f, by, level, u, x)
		case below(v) && !below(y):
			dst = append(dst, Span{start, s.crossing(f, by, level, x, u)})
		}
		u, v = x, y
	}
	for k, y := range s.values {
		// A dip or a bump that may cross the level between two moments.
		if x, top, ok := s.between(f, by, level, above, k); ok {
			if x < s.shares[k] {
				to(x, top)
				to(s.shares[k], y)
				continue
			}
			to(s.shares[k], y)
			to(x, top)
			continue
		}
		to(s.shares[k], y)
	}
	if below(v) {
		dst = append(dst, Span{start, s.shares[len(s.shares)-1]})
	}
	return dst
}

// between returns the end of a dip or bump about the k-th moment, where all
// moments near it lie on the other side of the level.
func (s *stretch) between(f measure, by complex128, level, above float64, k int) (u, v float64, ok bool) {
	y := s.values[k]
	sign := 1.0
	switch {
	case y >= level && y-above < level:
		sign = -1
	case y < level && y+above >= level:
	default:
		return 0, 0, false
	}
	beside := func(k int) float64 { return sign * s.values[min(max(k, 0), len(s.values)-1)] }
	if beside(k-1) > sign*y || beside(k+1) > sign*y {
		return 0, 0, false
	}
	a, b := s.shares[max(k-1, 0)], s.shares[min(k+1, len(s.shares)-1)]
	u, v = golden(func(u float64) float64 {
		m := s.at(u, by)
		return sign * f(&m)
	}, a, b)
	v *= sign
	return u, v, u != s.shares[k] && (v < level) != (y < level)
}

// crossing returns the share between one where a measure is not below a level
// and one where it is, by halving down to the nearest numbers.
func (s *stretch) crossing(f measure, by complex128, level, out, in float64) float64 {
	for range 60 {
		u := (out + in) / 2
		if u == out || u == in {
			break
		}
		m := s.at(u, by)
		if f(&m) < level {
			in = u
		} else {
			out = u
		}
	}
	return in
}

// merge puts spans in order and makes one of those that meet; of a movement
// that comes back after a time, also the last and the first.
func merge(spans []Span, total float64, comesBack bool) []Span {
	near := float64(1e-9 * total)
	slices.SortFunc(spans, func(a, b Span) int {
		switch {
		case a.From < b.From:
			return -1
		case a.From > b.From:
			return 1
		}
		return 0
	})
	out := spans[:0]
	for _, s := range spans {
		if n := len(out); n > 0 && s.From <= out[n-1].To+near {
			out[n-1].To = max(out[n-1].To, s.To)
			continue
		}
		out = append(out, s)
	}
	if n := len(out); comesBack && n > 1 && out[0].From <= near && out[n-1].To >= total-near {
		out[n-1].To = total + out[0].To
		out = out[1:]
	}
	return out
}

// InRound returns when the tether is slack in one round of a lane, which has so
// many beats, in beats counted from the start; later rounds are as the first
// that were looked at.
func (r *Result) InRound(beats float64, round int) []Span {
	known := round % max(r.Rounds, 1)
	from, to := float64(float64(known)*beats), float64(float64(known+1)*beats)
	shift, total := float64(float64(round-known)*beats), float64(float64(r.Rounds)*beats)
	var out []Span
	for _, s := range r.Spans {
		for _, lap := range []float64{0, -total} { // one over the end is also at the beginning
			a, z := math.Max(s.From+lap, from), math.Min(s.To+lap, to)
			if a < z {
				out = append(out, Span{From: a + shift, To: z + shift})
			}
		}
	}
	return out
}
