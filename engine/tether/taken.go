package tether

import (
	"math"

	"whorlbench/engine"
)

// Taken returns where the hand really has to be for the head to go where it
// is drawn, in the coordinates of the lane's plane: a light tether pulls along
// itself only, so that the hand is at h* = z + L (z″ − g)/|z″ − g|. In the
// floor plane it is above the head. Where nothing pulls on the head, which is
// then in free fall, the hand may be anywhere about it, and the ideal one is
// returned. The tempo is in beats a minute.
func Taken(l engine.Lane, at engine.State, tempo float64) Vec {
	g := newGauge(l)
	m := momentOf(at)
	return g.taken(&m, tempo/60*tempo/60)
}

func (g *gauge) taken(m *moment, square float64) Vec {
	n := g.carried(m, square)
	size := n.norm()
	if size == 0 {
		return flat(m.hand)
	}
	return flat(m.head()).add(n.scale(g.length / size))
}

// carried returns what the tether carries for each kilogram of the head:
// z″ − g (m/s²) at a squared tempo in (beats a second)².
func (g *gauge) carried(m *moment, square float64) Vec {
	return flat(m.handAcc + m.outAcc).scale(square).sub(g.gravity)
}

// astray returns how far the hand that is really taken is from the ideal one (m).
func (g *gauge) astray(m *moment, square float64) float64 {
	return g.taken(m, square).sub(flat(m.hand)).norm()
}

// Line is the way the hand really takes in one piece, to be drawn beside the
// ideal one, from the beginning of the piece to its end.
type Line []Vec

// Lines returns the way of the hand that is really taken in a round, a line a
// piece as it leaps at joins where the acceleration does, of about so many
// points in all, shared out by the turns that arm and prop make. Lines has no
// meaning where the tether is slack.
func Lines(t *engine.Track, tempo float64, round, points int) []Line {
	g := newGauge(t.Lane)
	square := tempo / 60 * tempo / 60
	total := 0.0
	for i := range t.Legs {
		total += turns(&t.Legs[i])
	}
	lines := make([]Line, len(t.Legs))
	for i := range t.Legs {
		n := 1 + int(math.Ceil(float64(points)*turns(&t.Legs[i])/max(total, 1)))
		for k := range n + 1 {
			m := momentOf(t.AtPiece(round, i, float64(k)/float64(n)))
			lines[i] = append(lines[i], g.taken(&m, square))
		}
	}
	return lines
}

// farthest looks in a round for where the hand that is really taken is
// farthest from the ideal one, if it is farther than floor.
func (s *stretch) farthest(g *gauge, by complex128, square, floor float64) (u, value float64, ok bool) {
	f := func(m *moment) float64 { return g.astray(m, square) }
	u, value, ok = s.top(f, by, floor)
	if !ok {
		value = floor
	}
	for k := range len(s.base) - 1 {
		a, b := s.base[k].turned(by), s.base[k+1].turned(by)
		x, y := s.finely(g, by, square, ray{s.shares[k], g.carried(&a, square)}, ray{s.shares[k+1], g.carried(&b, square)}, finest)
		if y > value+tie(value) {
			u, value, ok = x, y, true
		}
	}
	return u, value, ok
}

const (
	// wide (cosine): where little pulls on the head, h* goes round it more
	// quickly than arm and prop do; between moments that see it in directions
	// more than 0.2 rad apart it is looked for more finely,
	wide = 0.98
	// finest times halved at most, by which a pull of a ten-thousandth of the
	// usual is passed in steps of that angle.
	finest = 12
)

// ray is in which direction the tether pulls at a share of the kept time.
type ray struct {
	u    float64
	pull Vec
}

func (s *stretch) finely(g *gauge, by complex128, square float64, a, b ray, halvings int) (u, value float64) {
	if halvings == 0 || a.pull.dot(b.pull) >= float64(wide*a.pull.norm()*b.pull.norm()) {
		if halvings == finest {
			return a.u, 0 // nothing that has not been seen
		}
		return golden(func(u float64) float64 {
			m := s.at(u, by)
			return g.astray(&m, square)
		}, a.u, b.u)
	}
	m := s.at((a.u+b.u)/2, by)
	mid := ray{(a.u + b.u) / 2, g.carried(&m, square)}
	u, value = s.finely(g, by, square, a, mid, halvings-1)
	if x, y := s.finely(g, by, square, mid, b, halvings-1); y > value {
		u, value = x, y
	}
	return u, value
}
