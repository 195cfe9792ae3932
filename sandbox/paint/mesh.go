// Package paint turns a display list into pixels.
//
// The mesh is built here, without a window: every mark becomes triangles with
// a feathered edge, letters become quads into an atlas, and all share one
// texture, so that a whole frame is one draw call.
package paint

import (
	"image"
	"image/color"
	"math"

	"whorlbench/sandbox/display"
)

// Vertex is a corner of a triangle: device pixels, the place in the atlas,
// and a colour with its opacity multiplied in.
type Vertex struct {
	X, Y, U, V float32
	R, G, B, A float32
}

// feather is the width in device pixels over which an edge fades out.
const feather = 1.0

// maxVertices is what one draw call takes with 16-bit indices.
const maxVertices = 1<<16 - 1

// Mesh is a display list as triangles, in batches of at most maxVertices.
// Its slices are reused.
type Mesh struct {
	Vertices []Vertex
	Indices  []uint16
	Batches  []Batch
	sections []int // where in Indices the parts of ribbons begin

	atlas *Atlas
	scale float64
	clean []display.Pt // scratch: a line's points without doubles
	alpha []float32
	ring  []display.Pt // scratch: outlines
}

// Batch is one draw call's part of the mesh: its indices count from FirstVertex.
type Batch struct {
	FirstVertex, FirstIndex, EndVertex, EndIndex int
	// Still says that U and V are places of the picture of what stays, which
	// replaces what is there.
	Still bool
}

// NewMesh returns a mesh whose letters come from atlas.
func NewMesh(atlas *Atlas) *Mesh { return &Mesh{atlas: atlas} }

// Build fills the mesh from l at scale device pixels a CSS pixel.
func (m *Mesh) Build(l *display.List, scale float64) { m.build(l, l.Marks, scale, image.Point{}) }

// BuildStill fills the mesh from what stays of l.
func (m *Mesh) BuildStill(l *display.List, scale float64) {
	m.build(l, l.Marks[:l.Still], scale, image.Point{})
}

// BuildMoving fills the mesh from what moves of l, over the picture of what
// stays, whose size is in device pixels.
func (m *Mesh) BuildMoving(l *display.List, scale float64, size image.Point) {
	m.build(l, l.Marks[l.Still:], scale, size)
}

func (m *Mesh) build(l *display.List, marks []display.Mark, scale float64, over image.Point) {
	m.Vertices, m.Indices, m.Batches = m.Vertices[:0], m.Indices[:0], append(m.Batches[:0], Batch{})
	m.sections = m.sections[:0]
	m.scale = scale
	if over != (image.Point{}) {
		m.from(true)
		m.again(0, 0, float64(over.X), float64(over.Y))
		m.from(false)
	}
	for _, k := range marks {
		m.from(k.Kind == display.Again)
		switch k.Kind {
		case display.Again:
			r := k.Rect
			m.again(r.X*scale, r.Y*scale, (r.X+r.W)*scale, (r.Y+r.H)*scale)
		case display.FillRect:
			m.fillRect(k)
		case display.StrokeRect:
			m.loop(m.rounded(k.Rect.Inset(k.Width/2), k.Radius-k.Width/2), nil, newPen(k.Width*scale, k.Color))
		case display.Disc:
			m.convex(m.circle(k.At, k.Radius), inkOf(k.Color))
		case display.Ring:
			m.loop(m.circle(k.At, k.Radius), nil, newPen(k.Width*scale, k.Color))
		case display.Poly:
			m.ring = m.ring[:0]
			for _, p := range l.Of(k) {
				m.ring = append(m.ring, p.Scale(scale))
			}
			m.convex(m.ring, inkOf(k.Color))
		case display.Line:
			m.line(l, k)
		case display.Text:
			m.text(k)
		}
	}
	b := &m.Batches[len(m.Batches)-1]
	b.EndVertex, b.EndIndex = len(m.Vertices), len(m.Indices)
}

// from makes sure that the batch is one from what stays, or is not.
func (m *Mesh) from(still bool) {
	b := &m.Batches[len(m.Batches)-1]
	if b.Still == still {
		return
	}
	b.EndVertex, b.EndIndex = len(m.Vertices), len(m.Indices)
	m.Batches = append(m.Batches, Batch{FirstVertex: len(m.Vertices), FirstIndex: len(m.Indices), Still: still})
}

// again takes all pixels that a rectangle touches, in device pixels, from what
// stays.
func (m *Mesh) again(x0, y0, x1, y1 float64) {
	m.room(4)
	first := m.base()
	x0, y0, x1, y1 = math.Floor(x0), math.Floor(y0), math.Ceil(x1), math.Ceil(y1)
	for _, p := range [4]display.Pt{{X: x0, Y: y0}, {X: x1, Y: y0}, {X: x0, Y: y1}, {X: x1, Y: y1}} {
		x, y := float32(p.X), float32(p.Y)
		m.Vertices = append(m.Vertices, Vertex{x, y, x, y, 1, 1, 1, 1})
	}
	m.Indices = append(m.Indices, first, first+1, first+2, first+1, first+3, first+2)
}

// room makes sure that n more vertices fit into the batch, and reports
// whether it had to begin another.
func (m *Mesh) room(n int) (begun bool) {
	b := &m.Batches[len(m.Batches)-1]
	if len(m.Vertices)+n-b.FirstVertex <= maxVertices {
		return false
	}
	b.EndVertex, b.EndIndex = len(m.Vertices), len(m.Indices)
	m.Batches = append(m.Batches, Batch{FirstVertex: len(m.Vertices), FirstIndex: len(m.Indices), Still: b.Still})
	return true
}

func (m *Mesh) base() uint16 {
	return uint16(len(m.Vertices) - m.Batches[len(m.Batches)-1].FirstVertex)
}

// ink is a colour multiplied by its opacity.
type ink struct{ r, g, b, a float32 }

func inkOf(c color.NRGBA) ink {
	a := float32(c.A) / 255
	return ink{float32(c.R) / 255 * a, float32(c.G) / 255 * a, float32(c.B) / 255 * a, a}
}

func (k ink) times(a float32) ink { return ink{k.r * a, k.g * a, k.b * a, k.a * a} }

func (m *Mesh) vertex(p display.Pt, k ink, alpha float32) {
	u, v := m.atlas.White()
	k = k.times(alpha)
	m.Vertices = append(m.Vertices, Vertex{float32(p.X), float32(p.Y), u, v, k.r, k.g, k.b, k.a})
}

// circle returns an outline in device pixels, with enough corners that none
// can be seen, and as much area as the circle has: small discs are small enough
// that the segments between chord and arc would be missed.
func (m *Mesh) circle(at display.Pt, radius float64) []display.Pt {
	r := radius * m.scale
	n := int(min(max(8, math.Ceil(math.Pi*math.Sqrt(r)*2)), 256))
	step := 2 * math.Pi / float64(n)
	r *= math.Sqrt(step / math.Sin(step))
	m.ring = m.ring[:0]
	for i := range n {
		s, c := math.Sincos(step * float64(i))
		m.ring = append(m.ring, display.Pt{X: at.X*m.scale + r*c, Y: at.Y*m.scale + r*s})
	}
	return m.ring
}

// fillRect fills a rectangle. One thinner than a pixel is drawn as wide as
// one, but paler: its feathered edges would else lie over each other.
func (m *Mesh) fillRect(k display.Mark) {
	pale := min(k.Rect.W*m.scale, 1) * min(k.Rect.H*m.scale, 1)
	if !(k.Rect.W > 0 && k.Rect.H > 0) {
		return
	}
	r := k.Rect.AtLeast(1/m.scale, 1/m.scale)
	m.convex(m.rounded(r, k.Radius), inkOf(k.Color).times(float32(pale)))
}

// rounded returns the outline of a rectangle with rounded corners, in device
// pixels, each corner of the outline once.
func (m *Mesh) rounded(r display.Rect, radius float64) []display.Pt {
	k := m.scale
	x0, y0, x1, y1 := r.X*k, r.Y*k, (r.X+r.W)*k, (r.Y+r.H)*k
	rad := min(max(radius*k, 0), (x1-x0)/2, (y1-y0)/2)
	m.ring = m.ring[:0]
	if rad < 0.5 {
		return append(m.ring, display.Pt{X: x0, Y: y0}, display.Pt{X: x1, Y: y0}, display.Pt{X: x1, Y: y1}, display.Pt{X: x0, Y: y1})
	}
	n := int(min(max(3, math.Ceil(math.Sqrt(rad)*1.5)), 32))
	for q, c := range [4]display.Pt{{X: x1 - rad, Y: y1 - rad}, {X: x0 + rad, Y: y1 - rad}, {X: x0 + rad, Y: y0 + rad}, {X: x1 - rad, Y: y0 + rad}} {
		for i := 0; i <= n; i++ {
			s, cos := math.Sincos(math.Pi / 2 * (float64(q) + float64(i)/float64(n)))
			p := display.Pt{X: c.X + rad*cos, Y: c.Y + rad*s}
			if len(m.ring) == 0 || !same(p, m.ring[len(m.ring)-1]) {
				m.ring = append(m.ring, p)
			}
		}
	}
	return open(m.ring)
}

// nearest is how close, in device pixels, points may be and still be two:
// from closer ones no direction can be told that the eye would agree with.
const nearest = 0.05

func same(p, q display.Pt) bool {
	d := p.Sub(q)
	return d.X*d.X+d.Y*d.Y < nearest*nearest
}

// open returns a closed outline without a last point that repeats the first.
func open(pts []display.Pt) []display.Pt {
	for len(pts) > 1 && same(pts[0], pts[len(pts)-1]) {
		pts = pts[:len(pts)-1]
	}
	return pts
}

// convex fills a convex outline, feathered half inside and half outside.
func (m *Mesh) convex(pts []display.Pt, k ink) {
	n := len(pts)
	if n < 3 {
		return
	}
	m.room(2 * n)
	first := m.base()
	side := 1.0
	if area(pts) < 0 {
		side = -1
	}
	for i, p := range pts {
		out := corner(pts[(i+n-1)%n], p, pts[(i+1)%n]).Scale(side * feather / 2)
		m.vertex(p.Sub(out), k, 1)
		m.vertex(p.Add(out), k, 0)
	}
	for i := 2; i < n; i++ {
		m.Indices = append(m.Indices, first, first+uint16(2*i-2), first+uint16(2*i))
	}
	for i := range n {
		a, b := first+uint16(2*i), first+uint16(2*((i+1)%n))
		m.Indices = append(m.Indices, a, b, a+1, b, b+1, a+1)
	}
}

func area(pts []display.Pt) float64 {
	sum := 0.0
	for i, p := range pts {
		q := pts[(i+1)%len(pts)]
		sum += p.X*q.Y - q.X*p.Y
	}
	return sum
}

// corner returns the outward normal at p of an outline run in the positive
// sense, lengthened so that offset edges keep their distance, up to twice.
func corner(prev, p, next display.Pt) display.Pt {
	a, b := normal(prev, p), normal(p, next)
	sum := a.Add(b)
	l2 := sum.X*sum.X + sum.Y*sum.Y
	if l2 < 1 { // more than 120° of turn: do not let the corner run away
		return a
	}
	return sum.Scale(2 / l2)
}

func normal(a, b display.Pt) display.Pt {
	d := b.Sub(a)
	l := math.Sqrt(d.X*d.X + d.Y*d.Y) // places on a screen need no guard against overflow
	if l == 0 {
		return display.Pt{}
	}
	return display.Pt{X: d.Y / l, Y: -d.X / l}
}

// text lays letters out from the pen's place, each on a whole device pixel
// down and a quarter of one across.
func (m *Mesh) text(k display.Mark) {
	in := inkOf(k.Color)
	x, y := k.At.X*m.scale, math.Round(k.At.Y*m.scale)
	size := k.Size * m.scale
	for _, r := range k.Text {
		if g, ok := m.atlas.Glyph(r, k.Bold, size, x-math.Floor(x)); ok {
			m.room(4)
			first := m.base()
			x0, y0 := float32(math.Floor(x))+float32(g.Off.X), float32(y)+float32(g.Off.Y)
			w, h := float32(g.In.Dx()), float32(g.In.Dy())
			u, v := float32(g.In.Min.X), float32(g.In.Min.Y)
			for _, c := range [4][2]float32{{0, 0}, {1, 0}, {0, 1}, {1, 1}} {
				m.Vertices = append(m.Vertices, Vertex{x0 + c[0]*w, y0 + c[1]*h, u + c[0]*w, v + c[1]*h, in.r, in.g, in.b, in.a})
			}
			m.Indices = append(m.Indices, first, first+1, first+2, first+1, first+3, first+2)
		}
		x += m.atlas.faces.Advance(r, k.Bold) * size
	}
}
