package paint

import (
	"image/color"
	"math"

	"whorlbench/sandbox/display"
)

// pen is how a line is stroked: how far full ink and the last of it lie from
// the line's middle, in device pixels.
type pen struct {
	inner, outer float64
	ink
}

// newPen returns a pen of a width in device pixels. A line thinner than a
// pixel is drawn as wide as one, but paler.
func newPen(width float64, c color.NRGBA) pen {
	k := inkOf(c)
	if width < 1 {
		k, width = k.times(float32(width)), 1
	}
	return pen{(width - feather) / 2, (width + feather) / 2, k}
}

// line strokes an open or closed line. Its own ends are square; where it turns
// sharply it is broken into ribbons whose ends are round.
func (m *Mesh) line(l *display.List, k display.Mark) {
	m.clean, m.alpha = m.clean[:0], m.alpha[:0]
	for i, p := range l.Of(k) {
		q := p.Scale(m.scale)
		if n := len(m.clean); n > 0 && same(q, m.clean[n-1]) {
			continue
		}
		m.clean = append(m.clean, q)
		a := float32(1)
		if k.Fade {
			a = l.Alpha[k.First+i]
		}
		m.alpha = append(m.alpha, a)
	}
	pts, alpha, w := m.clean, m.alpha, newPen(k.Width*m.scale, k.Color)
	if k.Closed {
		pts = open(pts)
		at := firstSharp(pts)
		if at < 0 {
			m.loop(pts, alpha, w)
			return
		}
		pts, alpha = m.unroll(len(pts), at)
	}
	start, joint := 0, k.Closed
	for i := 1; i < len(pts); i++ {
		last := i+1 == len(pts)
		if !last && !sharp(pts[i-1], pts[i], pts[i+1]) {
			continue
		}
		m.ribbon(pts[start:i+1], alpha[start:i+1], w, joint, !last || k.Closed)
		start, joint = i, true
	}
}

// firstSharp returns a sharp corner of a closed line, −1 if it has none.
func firstSharp(pts []display.Pt) int {
	n := len(pts)
	for i, p := range pts {
		if n > 1 && sharp(pts[(i+n-1)%n], p, pts[(i+1)%n]) {
			return i
		}
	}
	return -1
}

// unroll returns the first n points of the line at hand, and their opacities,
// once round from one of them and back to it.
func (m *Mesh) unroll(n, from int) ([]display.Pt, []float32) {
	pts, alpha := len(m.clean), len(m.alpha)
	for i := range n + 1 {
		m.clean = append(m.clean, m.clean[(from+i)%n])
		m.alpha = append(m.alpha, m.alpha[(from+i)%n])
	}
	return m.clean[pts:], m.alpha[alpha:]
}

// cornerLimit is the cosine of the turn beyond which a line is drawn as two
// ribbons rather than with a mitre: a little more than a right angle, so that
// right angles keep their corner.
const cornerLimit = -0.01

func sharp(a, b, c display.Pt) bool {
	u, v := b.Sub(a), c.Sub(b)
	return u.X*v.X+u.Y*v.Y < cornerLimit*math.Sqrt((u.X*u.X+u.Y*u.Y)*(v.X*v.X+v.Y*v.Y))
}

// section adds a ribbon's cross-section at p, side being the normal there: four
// vertices, the outer two clear. A ribbon that goes on is joined to the section
// before, which is repeated where a batch ends between the two.
func (m *Mesh) section(p, side display.Pt, w pen, alpha float32, joined bool) {
	if m.room(4) && joined {
		m.Vertices = append(m.Vertices, m.Vertices[len(m.Vertices)-4:]...)
	}
	m.vertex(p.Add(side.Scale(w.outer)), w.ink, 0)
	m.vertex(p.Add(side.Scale(w.inner)), w.ink, alpha)
	m.vertex(p.Sub(side.Scale(w.inner)), w.ink, alpha)
	m.vertex(p.Sub(side.Scale(w.outer)), w.ink, 0)
	if !joined {
		return
	}
	m.sections = append(m.sections, len(m.Indices))
	b := m.base() - 4
	a := b - 4
	for s := range uint16(3) {
		m.Indices = append(m.Indices, a+s, b+s, a+s+1, b+s, b+s+1, a+s+1)
	}
}

// loop strokes a closed line without sharp corners; alpha is nil for full ink.
func (m *Mesh) loop(pts []display.Pt, alpha []float32, w pen) {
	n := len(pts)
	if n < 3 {
		return
	}
	for i := range n + 1 {
		j := i % n
		a := float32(1)
		if alpha != nil {
			a = alpha[j]
		}
		m.section(pts[j], corner(pts[(j+n-1)%n], pts[j], pts[(j+1)%n]), w, a, i > 0)
	}
}

// ribbon strokes an open line without sharp corners. A joint is an end where
// another ribbon goes on; the line's own ends are feathered.
func (m *Mesh) ribbon(pts []display.Pt, alpha []float32, w pen, jointA, jointB bool) {
	n := len(pts)
	if n < 2 {
		return
	}
	a, b := normal(pts[0], pts[1]), normal(pts[n-2], pts[n-1])
	from, to := ahead(a), ahead(b)
	// What an end draws back for its feather is at most half of a segment.
	backA, backB := min(feather, pts[1].Sub(pts[0]).Len())/2, min(feather, pts[n-1].Sub(pts[n-2]).Len())/2
	if jointA {
		m.roundEnd(pts[0], from.Scale(-1), w, alpha[0])
		m.section(pts[0], a, w, alpha[0], false)
	} else {
		m.section(pts[0].Sub(from.Scale(feather/2)), a, w, 0, false)
		m.section(pts[0].Add(from.Scale(backA)), a, w, alpha[0], true)
	}
	for i := 1; i < n-1; i++ {
		m.section(pts[i], corner(pts[i-1], pts[i], pts[i+1]), w, alpha[i], true)
	}
	if jointB {
		m.section(pts[n-1], b, w, alpha[n-1], true)
		m.roundEnd(pts[n-1], to, w, alpha[n-1])
	} else {
		m.section(pts[n-1].Sub(to.Scale(backB)), b, w, alpha[n-1], true)
		m.section(pts[n-1].Add(to.Scale(feather/2)), b, w, 0, true)
	}
}

// ahead returns the direction of a line whose normal is n.
func ahead(n display.Pt) display.Pt { return display.Pt{X: -n.Y, Y: n.X} }

// roundEnd rounds a ribbon's end at p with the half of a disc that lies to.
func (m *Mesh) roundEnd(p, to display.Pt, w pen, alpha float32) {
	n := int(min(max(3, math.Ceil(math.Pi*math.Sqrt(w.outer))), 32))
	m.room(2*n + 3)
	first := m.base()
	m.vertex(p, w.ink, alpha)
	for i := range n + 1 {
		s, c := math.Sincos(math.Pi * (float64(i)/float64(n) - 0.5))
		d := display.Pt{X: c*to.X - s*to.Y, Y: s*to.X + c*to.Y}
		m.vertex(p.Add(d.Scale(w.inner)), w.ink, alpha)
		m.vertex(p.Add(d.Scale(w.outer)), w.ink, 0)
	}
	for i := range uint16(n) {
		a := first + 1 + 2*i
		m.Indices = append(m.Indices, first, a, a+2, a, a+1, a+2, a+1, a+3, a+2)
	}
}
