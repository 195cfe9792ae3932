package paint

import (
	"image/color"
	"math"
	"slices"
	"testing"

	"whorlbench/sandbox/display"
)

// everything puts every kind of mark on l, in clear and full colours, some of
// them odd.
func everything(l *display.List) {
	half := color.NRGBA{200, 100, 50, 128}
	for i, c := range []color.NRGBA{black, half, {255, 255, 255, 255}, {255, 0, 0, 0}} {
		off := float64(i) * 7.3
		r := display.Rect{X: 10 + off, Y: 12 + off, W: 60, H: 24}
		l.FillRect(r, 0, c)
		l.FillRect(r, 10, c)
		l.FillRect(r, 1e6, c)
		l.FillRect(display.Rect{X: off, Y: off, W: 0.01, H: 1e4}, 3, c)
		l.FillRect(display.Rect{X: off, Y: off, W: -5, H: -5}, 3, c)
		l.StrokeRect(r, 10, 1.25, c)
		l.StrokeRect(r, 0, 2, c)
		l.StrokeRect(r, 10, 200, c) // wider than the rectangle
		l.StrokeRect(display.Rect{}, 10, 1, c)
		l.Disc(display.Pt{X: 30 + off, Y: 40}, 10, c)
		l.Disc(display.Pt{X: 30 + off, Y: 40}, 0, c)
		l.Disc(display.Pt{X: 30 + off, Y: 40}, 0.2, c)
		l.Ring(display.Pt{X: 30 + off, Y: 40}, 8.5, 4, c)
		l.Ring(display.Pt{X: 30 + off, Y: 40}, 0, 4, c)
		l.Poly(c, display.Pt{X: 5, Y: 2.5}, display.Pt{X: 17, Y: 10}, display.Pt{X: 5, Y: 17.5})
		l.Poly(c, display.Pt{X: 5, Y: 5}, display.Pt{X: 5, Y: 5}, display.Pt{X: 5, Y: 5})
		l.Poly(c)
		l.Segment(display.Pt{X: off}, display.Pt{X: 90, Y: 40}, 2.25, c)
		l.Segment(display.Pt{X: off}, display.Pt{X: off}, 2.25, c)
		l.Polyline(0.3, c, true, astroid(50, 45, 0.01, 100)...)
		l.Polyline(1.6, c, true, display.Pt{X: 12, Y: 5}, display.Pt{X: 12, Y: 15}, display.Pt{X: 18, Y: 15})
		l.BeginLine(3, c, true)
		for k, p := range rose(50, 45, 3, 300) {
			l.To(p, float32(k)/299)
		}
		l.Text(display.Pt{X: 4.3 + off, Y: 30.6}, 14, i%2 == 0, c, "Four-petal antispin, −½×°…·")
	}
}

// wellFormed checks what a graphics card needs of a mesh.
func wellFormed(t *testing.T, m *Mesh) {
	t.Helper()
	for i, v := range m.Vertices {
		for _, x := range []float32{v.X, v.Y, v.U, v.V, v.R, v.G, v.B, v.A} {
			if math.IsNaN(float64(x)) || math.IsInf(float64(x), 0) {
				t.Fatalf("Vertices[%d] = %+v, want it finite", i, v)
			}
		}
		// A hair of rounding apart, colours have their opacity multiplied in.
		const hair = 1e-6
		if v.A < 0 || v.A > 1+hair || v.R < 0 || v.G < 0 || v.B < 0 || max(v.R, v.G, v.B) > v.A+hair {
			t.Fatalf("Vertices[%d] = %+v, want 0 ≤ red, green, blue ≤ opacity ≤ 1", i, v)
		}
		if v.U < 0 || v.V < 0 || v.U > AtlasSize || v.V > AtlasSize {
			t.Fatalf("Vertices[%d] = %+v, want its texel in the atlas", i, v)
		}
	}
	vertex, index := 0, 0
	for i, b := range m.Batches {
		if b.FirstVertex != vertex || b.FirstIndex != index {
			t.Fatalf("Batches[%d] = %+v, want it to begin at %d, %d", i, b, vertex, index)
		}
		vertex, index = b.EndVertex, b.EndIndex
		n := b.EndVertex - b.FirstVertex
		if n > math.MaxUint16 { // what one draw call takes
			t.Errorf("Batches[%d] has %d vertices", i, n)
		}
		if (b.EndIndex-b.FirstIndex)%3 != 0 {
			t.Errorf("Batches[%d] has %d indices, want whole triangles", i, b.EndIndex-b.FirstIndex)
		}
		for k, at := range m.Indices[b.FirstIndex:b.EndIndex] {
			if int(at) >= n {
				t.Fatalf("Batches[%d] index %d = %d, want less than %d", i, k, at, n)
			}
		}
	}
	if vertex != len(m.Vertices) || index != len(m.Indices) {
		t.Errorf("batches end at %d, %d, want %d, %d", vertex, index, len(m.Vertices), len(m.Indices))
	}
}

func TestMeshWellFormed(t *testing.T) {
	for _, scale := range []float64{0.5, 1, 1.25, 2, 3} {
		wellFormed(t, built(t, scale, everything))
	}
	wellFormed(t, built(t, 1, func(*display.List) {}))
}

// TestMeshOpacity: where many marks lie over each other, nothing grows
// brighter than full.
func TestMeshOpacity(t *testing.T) {
	m := built(t, 2, everything)
	for i, c := range newPicture(240, 160).draw(m, nil).pix {
		if max(c[0], c[1], c[2]) > c[3]+1e-6 || c[3] > 1+1e-6 {
			t.Fatalf("pixel %d, %d = %v, want colours ≤ opacity ≤ 1", i%240, i/240, c)
		}
	}
}

func TestMeshSame(t *testing.T) {
	var l display.List
	everything(&l)
	m := newMesh(t)
	m.Build(&l, 2)
	vertices, indices, batches := slices.Clone(m.Vertices), slices.Clone(m.Indices), slices.Clone(m.Batches)
	fresh := len(m.atlas.Fresh)
	m.Build(&l, 2)
	if !slices.Equal(m.Vertices, vertices) || !slices.Equal(m.Indices, indices) || !slices.Equal(m.Batches, batches) {
		t.Error("a second Build of one list differs from the first")
	}
	if got := len(m.atlas.Fresh); got != fresh {
		t.Errorf("letters after a second Build = %d, want the %d of the first", got, fresh)
	}
	if got := testing.AllocsPerRun(20, func() { m.Build(&l, 2) }); got != 0 {
		t.Errorf("allocations of a later Build = %v, want 0", got)
	}
}

// spiral puts n points on a line that neither crosses itself nor turns sharply.
func spiral(l *display.List, width float64, n int) (length float64) {
	l.BeginLine(width, black, false)
	var last display.Pt
	for i := range n {
		phi := 0.02 * float64(i)
		s, c := math.Sincos(phi)
		r := 5 + phi
		p := display.Pt{X: 2500 + r*c, Y: 2500 + r*s}
		l.To(p, 1)
		if i > 0 {
			length += p.Sub(last).Len()
		}
		last = p
	}
	return length
}

// TestMeshSplits: a line of 100,000 points takes several batches and loses
// nothing at their ends: its triangles, each with its mean opacity, add up to
// width times length.
func TestMeshSplits(t *testing.T) {
	var l display.List
	const width = 2.0
	length := spiral(&l, width, 100_000)
	m := newMesh(t)
	m.Build(&l, 1)
	wellFormed(t, m)
	if len(m.Batches) < 100_000*4/math.MaxUint16 {
		t.Errorf("%d batches, want room for 400,000 vertices", len(m.Batches))
	}
	sum := 0.0
	for k, b := range m.Batches {
		if n := b.FirstVertex; k > 0 && !slices.Equal(m.Vertices[n:n+4], m.Vertices[n-4:n]) {
			t.Errorf("Batches[%d] begins with %v, want the section %v that ended the last", k, m.Vertices[n:n+4], m.Vertices[n-4:n])
		}
		idx := m.Indices[b.FirstIndex:b.EndIndex]
		for i := 0; i < len(idx); i += 3 {
			a, b, c := m.Vertices[b.FirstVertex+int(idx[i])], m.Vertices[b.FirstVertex+int(idx[i+1])], m.Vertices[b.FirstVertex+int(idx[i+2])]
			sum += math.Abs(cross(a, b, float64(c.X), float64(c.Y))) / 2 * float64(a.A+b.A+c.A) / 3
		}
	}
	if want := width * length; math.Abs(sum-want) > 0.001*want {
		t.Errorf("area of all triangles = %v, want %v", sum, want)
	}
}

// TestMeshSplitsText: letters, discs and short lines are kept whole where a
// batch ends.
func TestMeshSplitsText(t *testing.T) {
	m := built(t, 1, func(l *display.List) {
		for i := range 1500 {
			x := float64(i % 100)
			l.Text(display.Pt{X: x, Y: 20}, 12, false, black, "antispin flower")
			l.Disc(display.Pt{X: x, Y: 30}, 6, black)
			l.StrokeRect(display.Rect{X: x, Y: 30, W: 20, H: 10}, 4, 1, black)
			l.Segment(display.Pt{X: x}, display.Pt{X: 90, Y: 40}, 2, black)
		}
	})
	wellFormed(t, m)
	if len(m.Batches) < 3 {
		t.Errorf("%d batches, want several", len(m.Batches))
	}
	// No triangle reaches from one mark into another.
	for _, b := range m.Batches {
		idx := m.Indices[b.FirstIndex:b.EndIndex]
		for i := 0; i < len(idx); i += 3 {
			lo, hi := min(idx[i], idx[i+1], idx[i+2]), max(idx[i], idx[i+1], idx[i+2])
			if hi-lo > 40 { // a disc of radius 6 has 16 corners
				t.Fatalf("triangle %v spans %d vertices", idx[i:i+3], hi-lo)
			}
		}
	}
}
