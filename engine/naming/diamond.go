package naming

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// corners is how many a square has.
const corners = 4

// diamond rules whether the hand goes round the four sides of a square,
// whichever way the square stands. It may wait on the way, and turn round once
// it has gone all round.
func diamond(t *engine.Track, seams []seam.Seam) Ruling {
	moves := 0
	for i := range t.Legs {
		g := &t.Legs[i]
		if stays(g) {
			continue
		}
		moves++
		if !g.Path().IsLine() {
			return Ruling{Clause: NotStraight, Piece: i, Figures: [2]Figure{Of(g)}}
		}
	}
	if moves == 0 {
		return Ruling{Clause: NotFourSides}
	}
	if r, jumps := handJump(seams); jumps {
		return r
	}
	ends, once := turningPoints(t)
	r := square(ends)
	if r.Yes && !once {
		r = Ruling{Clause: NotRound}
	}
	return r
}

func stays(g *engine.Leg) bool { return g.Path().IsPoint() || g.Piece.Arm.IsZero() }

// turningPoints returns the places where the hand changes its heading, in
// order, once round. Of a piece along which the hand goes to and fro more often
// than anyone who goes round a square it gives two or three; then once is false.
func turningPoints(t *engine.Track) (ends []complex128, once bool) {
	once = true
	for i := range t.Legs {
		g := &t.Legs[i]
		if stays(g) {
			continue
		}
		from, to := g.State(0).Arm, g.State(1).Arm
		ends = append(ends, g.Point(0).Hand)
		end := plusEnd(g.Path()).Radians()
		// The hand turns at the ends of the stroke, every half turn of the arm.
		low, high := math.Min(from, to)-end, math.Max(from, to)-end
		first, last := math.Floor(low/math.Pi)+1, math.Ceil(high/math.Pi)-1
		turns := last - first + 1
		if turns > 1 {
			once = false
			turns = 2 + math.Mod(turns, 2) // the last one stays at its end
		}
		k, step := first, 1.0
		if to < from {
			k, step = last, -1
		}
		long := max(g.Path().A, g.Path().B)
		sin, cos := math.Sincos(end)
		for ; turns > 0; turns-- {
			side := long
			if math.Mod(k, 2) != 0 {
				side = -long
			}
			ends = append(ends, g.Path().Centre+complex(float64(side*cos), float64(side*sin)))
			k += step
		}
	}
	return straightened(ends), once
}

// straightened leaves out the places that the hand goes straight through, and
// those where it has not moved.
func straightened(ends []complex128) []complex128 {
	var apart []complex128
	for _, z := range ends {
		if len(apart) == 0 || !near(z, apart[len(apart)-1]) {
			apart = append(apart, z)
		}
	}
	if len(apart) > 1 && near(apart[0], apart[len(apart)-1]) {
		apart = apart[:len(apart)-1]
	}
	n := len(apart)
	var out []complex128
	for i, z := range apart {
		before, after := z-apart[(i+n-1)%n], apart[(i+1)%n]-z
		along := engine.Product(after, cmplx.Conj(before))
		if real(along) > 0 && math.Abs(imag(along)) < engine.TolPath*cmplx.Abs(before) {
			continue
		}
		out = append(out, z)
	}
	return out
}

func near(a, b complex128) bool { return cmplx.Abs(a-b) < engine.TolPath }

// square rules on a hand that goes straight from one place to the next.
func square(ends []complex128) Ruling {
	var at []complex128 // the different places
	for _, z := range ends {
		found := false
		for _, c := range at {
			found = found || near(c, z)
		}
		if found {
			continue
		}
		if len(at) == corners {
			return Ruling{Clause: NotFourSides, Count: corners + 1}
		}
		at = append(at, z)
	}
	if len(at) < corners {
		return Ruling{Clause: NotFourSides, Count: len(at)}
	}
	middle := (at[0] + at[1] + at[2] + at[3]) / corners
	out := at[0] - middle
	where := make([]int, len(ends)) // quarter turns about the middle
	for i, z := range ends {
		q, right := quarters(z-middle, out)
		if !right {
			return Ruling{Clause: NotSquare}
		}
		where[i] = q
	}
	steps := make([]int, len(ends)) // to the next place
	for i, q := range where {
		steps[i] = (where[(i+1)%len(where)] - q + corners) % corners
		if steps[i] == corners/2 {
			return Ruling{Clause: NotRound}
		}
	}
	if !roundAndRound(steps) {
		return Ruling{Clause: NotRound}
	}
	return Ruling{Yes: true, Clause: FourSides, Count: len(ends)}
}

// quarters returns the quarter turns from a corner to z, both from the middle;
// ok is false if z is not the place of a square's corner.
func quarters(z, corner complex128) (n int, ok bool) {
	place := corner
	for n = range corners {
		if cmplx.Abs(z-place) < engine.TolPath {
			return n, true
		}
		place = complex(-imag(place), real(place))
	}
	return 0, false
}

// roundAndRound reports whether the hand goes at least once all round before
// it changes its sense, if it does.
func roundAndRound(steps []int) bool {
	n := len(steps)
	first := -1
	for i := range steps {
		if steps[i] != steps[(i+n-1)%n] {
			first = i
			break
		}
	}
	if first < 0 {
		return true
	}
	for k := 0; k < n; {
		run := 1
		for k+run < n && steps[(first+k+run)%n] == steps[(first+k)%n] {
			run++
		}
		if run < corners {
			return false
		}
		k += run
	}
	return true
}
