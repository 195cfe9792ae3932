package paint

import (
	"image/color"
	"math"
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
)

var black = color.NRGBA{A: 255}

// picture is what a graphics card makes of a mesh: each sample takes the
// triangles that hold its place, corner colours interpolated linearly, times
// the texel under it, laid over what is there. On an edge that two triangles
// share just one of them has the sample.
type picture struct {
	w, h   int
	x0, y0 float64 // of the first sample
	step   float64 // between samples, device pixels
	pix    []texel
	still  *picture // what stays
}

// texel is red, green, blue and opacity, the opacity multiplied in.
type texel [4]float64

func newPicture(w, h int) *picture { return sampled(0.5, 0.5, 1, w, h) }

func sampled(x0, y0, step float64, w, h int) *picture {
	return &picture{w: w, h: h, x0: x0, y0: y0, step: step, pix: make([]texel, w*h)}
}

// draw paints the mesh batch by batch; texture is nil where all is white.
func (p *picture) draw(m *Mesh, texture func(u, v float64) texel) *picture {
	for _, b := range m.Batches {
		idx, texture := m.Indices[b.FirstIndex:b.EndIndex], texture
		if b.Still {
			texture = func(u, v float64) texel { return p.still.pix[int(v)*p.still.w+int(u)] }
		}
		for i := 0; i+2 < len(idx); i += 3 {
			at := func(k int) Vertex { return m.Vertices[b.FirstVertex+int(idx[i+k])] }
			p.triangle(at(0), at(1), at(2), texture)
		}
	}
	return p
}

// cross is twice the signed area of a, b, (x, y).
func cross(a, b Vertex, x, y float64) float64 {
	return float64(b.X-a.X)*(y-float64(a.Y)) - float64(b.Y-a.Y)*(x-float64(a.X))
}

// holds reports whether a sample at distance d of the edge from a to b is
// inside; one on the edge itself belongs to the triangle on one side.
func holds(d float64, a, b Vertex) bool {
	return d > 0 || d == 0 && (b.Y < a.Y || b.Y == a.Y && b.X > a.X)
}

func (p *picture) triangle(a, b, c Vertex, texture func(u, v float64) texel) {
	column := func(x float32) float64 { return (float64(x) - p.x0) / p.step }
	row := func(y float32) float64 { return (float64(y) - p.y0) / p.step }
	i0, i1 := max(int(math.Floor(column(min(a.X, b.X, c.X)))), 0), min(int(math.Ceil(column(max(a.X, b.X, c.X)))), p.w-1)
	j0, j1 := max(int(math.Floor(row(min(a.Y, b.Y, c.Y)))), 0), min(int(math.Ceil(row(max(a.Y, b.Y, c.Y)))), p.h-1)
	if i0 > i1 || j0 > j1 {
		return
	}
	whole := cross(a, b, float64(c.X), float64(c.Y))
	if whole < 0 {
		b, c, whole = c, b, -whole
	}
	if whole == 0 {
		return
	}
	for j := j0; j <= j1; j++ {
		for i := i0; i <= i1; i++ {
			x, y := p.x0+float64(i)*p.step, p.y0+float64(j)*p.step
			wc, wa, wb := cross(a, b, x, y), cross(b, c, x, y), cross(c, a, x, y)
			if !holds(wc, a, b) || !holds(wa, b, c) || !holds(wb, c, a) {
				continue
			}
			mix := func(f func(v Vertex) float32) float64 {
				return (wa*float64(f(a)) + wb*float64(f(b)) + wc*float64(f(c))) / whole
			}
			over := texel{
				mix(func(v Vertex) float32 { return v.R }), mix(func(v Vertex) float32 { return v.G }),
				mix(func(v Vertex) float32 { return v.B }), mix(func(v Vertex) float32 { return v.A }),
			}
			if texture != nil {
				t := texture(mix(func(v Vertex) float32 { return v.U }), mix(func(v Vertex) float32 { return v.V }))
				for k := range over {
					over[k] *= t[k]
				}
			}
			under := &p.pix[j*p.w+i]
			for k := range under {
				under[k] = over[k] + under[k]*(1-over[3])
			}
		}
	}
}

// area is the sum of all opacity, in square device pixels.
func (p *picture) area() float64 {
	sum := 0.0
	for _, t := range p.pix {
		sum += t[3]
	}
	return sum * p.step * p.step
}

// opacity is that of the mesh at one place.
func opacity(m *Mesh, x, y float64) float64 { return sampled(x, y, 1, 1, 1).draw(m, nil).pix[0][3] }

func newMesh(t testing.TB) *Mesh {
	t.Helper()
	faces, err := face.New()
	if err != nil {
		t.Fatal(err)
	}
	return NewMesh(NewAtlas(faces))
}

// built is a mesh of what draw puts on a list.
func built(t testing.TB, scale float64, draw func(l *display.List)) *Mesh {
	t.Helper()
	m := newMesh(t)
	var l display.List
	draw(&l)
	m.Build(&l, scale)
	return m
}
