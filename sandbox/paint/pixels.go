package paint

import (
	"image"
	"image/color"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
)

// Pixels paints display lists into memory, with the triangles that the screen
// is painted with. It is not safe for use from several goroutines.
type Pixels struct {
	mesh    *Mesh
	atlas   *Atlas
	letters []uint8 // opacity, atlas.side a row
	painted *Cells  // which pixels have been, where that is asked for
}

// mostAtlas bounds the texture: a picture with more large letters than fit
// into 64 MB loses some of them.
const mostAtlas = 8 * AtlasSize

// NewPixels returns a painter in memory.
func NewPixels(faces *face.Set) *Pixels {
	a := NewAtlas(faces)
	return &Pixels{atlas: a, mesh: NewMesh(a)}
}

// Paint draws l on dst, whose corner is at 0, 0, at scale pixels a CSS pixel.
// A ground that can be seen through stays so: dst's opacity is multiplied in,
// as package image has it.
func (p *Pixels) Paint(dst *image.RGBA, l *display.List, scale float64) {
	fill(dst, l.Back)
	p.triangles(dst, l, scale)
}

// triangles paints all marks of l over what is there.
func (p *Pixels) triangles(dst *image.RGBA, l *display.List, scale float64) {
	p.build(l, scale)
	p.upload()
	for _, b := range p.mesh.Batches {
		vs := p.mesh.Vertices[b.FirstVertex:b.EndVertex]
		idx := p.mesh.Indices[b.FirstIndex:b.EndIndex]
		for i := 0; i+2 < len(idx); i += 3 {
			p.triangle(dst, &vs[idx[i]], &vs[idx[i+1]], &vs[idx[i+2]])
		}
	}
}

// build makes the mesh. Letters that do not fit are dropped for those of this
// picture, and where even these are too many the texture grows.
func (p *Pixels) build(l *display.List, scale float64) {
	p.mesh.Build(l, scale)
	if !p.atlas.Full {
		return
	}
	p.atlas.Clear()
	for p.mesh.Build(l, scale); p.atlas.Full && p.atlas.side < mostAtlas; p.mesh.Build(l, scale) {
		p.atlas.grow()
	}
}

// upload copies the letters that are new into the texture.
func (p *Pixels) upload() {
	if side := p.atlas.side; len(p.letters) != side*side {
		p.letters = make([]uint8, side*side)
	}
	for _, up := range p.atlas.Fresh {
		w := up.In.Dx()
		for y := range up.In.Dy() {
			row := p.letters[(up.In.Min.Y+y)*p.atlas.side+up.In.Min.X:]
			for x := range w {
				row[x] = up.Pix[4*(y*w+x)+3]
			}
		}
	}
	p.atlas.Fresh = p.atlas.Fresh[:0]
}

func fill(dst *image.RGBA, c color.NRGBA) {
	r, g, b, a := c.RGBA()
	px := [4]uint8{uint8(r >> 8), uint8(g >> 8), uint8(b >> 8), uint8(a >> 8)}
	w, rows := 4*dst.Rect.Dx(), dst.Rect.Dy()
	for x := 0; x < w && rows > 0; x += 4 {
		copy(dst.Pix[x:], px[:])
	}
	if dst.Stride == w {
		for n := w; n < w*rows; n *= 2 { // few large copies, which WebAssembly is better at
			copy(dst.Pix[n:w*rows], dst.Pix[:n])
		}
		return
	}
	for y := 1; y < rows; y++ {
		copy(dst.Pix[y*dst.Stride:][:w], dst.Pix)
	}
}

// Corners are rounded to 256ths of a pixel, as graphics cards do, so that which
// of two neighbours has a pixel is decided exactly.
const subPixels = 256

// snapped returns a vertex's place in subPixels. What lies far outside of any
// picture is brought near enough that products fit.
func snapped(v *Vertex) (x, y int64) { return snap(v.X), snap(v.Y) }

func snap(f float32) int64 {
	const far = 1 << 20
	switch { // not by min and max, which WebAssembly calls
	case f >= far:
		return far * subPixels
	case f >= 0:
		return int64(f*subPixels + 0.5)
	case f > -far:
		return int64(f*subPixels - 0.5)
	}
	return -far * subPixels
}

// edge is where a side of a triangle holds pixels: those at which its value,
// which changes by dx and dy from pixel to pixel, is not negative.
type edge struct{ at, dx, dy int64 }

// newEdge returns the side from a to b at the middle of pixel (px, py). Of a
// pixel's middle that lies on the side itself the triangle on one hand has it.
func newEdge(ax, ay, bx, by, px, py int64) edge {
	e := edge{
		at: (bx-ax)*(py*subPixels+subPixels/2-ay) - (by-ay)*(px*subPixels+subPixels/2-ax),
		dx: -(by - ay) * subPixels, dy: (bx - ax) * subPixels,
	}
	if !(by < ay || by == ay && bx > ax) {
		e.at--
	}
	return e
}

// within returns which of the pixels [from, to) of a row, counted from where
// the edge is, are on its inner side.
func (e *edge) within(from, to int64) (int64, int64) {
	switch {
	case e.dx > 0 && e.at < 0:
		from = max(from, int64((uint64(-e.at)+uint64(e.dx)-1)/uint64(e.dx))) // unsigned, which WebAssembly has
	case e.dx < 0 && e.at >= 0:
		to = min(to, int64(uint64(e.at)/uint64(-e.dx))+1)
	case e.dx <= 0 && e.at < 0:
		to = from
	}
	return from, to
}

// triangle paints one triangle, its corners' colours spread evenly between
// them, over what is there.
func (p *Pixels) triangle(dst *image.RGBA, a, b, c *Vertex) {
	ax, ay := snapped(a)
	bx, by := snapped(b)
	cx, cy := snapped(c)
	whole := (bx-ax)*(cy-ay) - (by-ay)*(cx-ax)
	if whole == 0 {
		return
	}
	if whole < 0 {
		b, c, bx, by, cx, cy, whole = c, b, cx, cy, bx, by, -whole
	}
	bounds := dst.Rect
	x0, x1 := max(int(min(ax, bx, cx)/subPixels), 0), min(int(max(ax, bx, cx)/subPixels)+1, bounds.Dx())
	y0, y1 := max(int(min(ay, by, cy)/subPixels), 0), min(int(max(ay, by, cy)/subPixels)+1, bounds.Dy())
	if x0 >= x1 || y0 >= y1 {
		return
	}
	px, py := int64(x0), int64(y0)
	eb, ec, ea := newEdge(cx, cy, ax, ay, px, py), newEdge(ax, ay, bx, by, px, py), newEdge(bx, by, cx, cy, px, py)
	flat := a.R == b.R && a.R == c.R && a.G == b.G && a.G == c.G && a.B == b.B && a.B == c.B && a.A == b.A && a.A == c.A
	plain := a.U == b.U && a.U == c.U && a.V == b.V && a.V == c.V
	k := 1 / float64(whole)
	var ink spread
	if plain && !(flat && a.A == 1) {
		ink = newSpread(a, b, c, ea, eb, k)
	}
	wide := int64(x1 - x0)
	for y := y0; y < y1; y, ea.at, eb.at, ec.at = y+1, ea.at+ea.dy, eb.at+eb.dy, ec.at+ec.dy {
		from, to := int64(0), wide
		if wide <= narrow {
			from, to = inside(ea, eb, ec, wide)
		} else {
			from, to = ec.within(eb.within(ea.within(0, wide)))
		}
		if from >= to {
			continue
		}
		if p.painted != nil {
			p.painted.mark(y, x0+int(from), x0+int(to))
		}
		some := dst.Pix[y*dst.Stride+4*(x0+int(from)) : y*dst.Stride+4*(x0+int(to))]
		switch {
		case flat && plain && a.A == 1:
			c := [4]uint8{uint8(a.R*255 + 0.5), uint8(a.G*255 + 0.5), uint8(a.B*255 + 0.5), 255}
			for ; len(some) >= 4; some = some[4:] {
				some[0], some[1], some[2], some[3] = c[0], c[1], c[2], c[3]
			}
		case plain:
			ink.over(some, from, int64(y-y0))
		default:
			p.letter(some, a, b, c, [2]int64{ea.at + from*ea.dx, eb.at + from*eb.dx}, [2]int64{ea.dx, eb.dx}, float32(k))
		}
	}
}

// narrow is how many pixels are tried one by one sooner than reckoned by
// divisions.
const narrow = 12

// inside returns which of the first wide pixels of a row are on the inner side
// of three edges.
func inside(a, b, c edge, wide int64) (from, to int64) {
	va, vb, vc := a.at, b.at, c.at
	for from < wide && va|vb|vc < 0 {
		from, va, vb, vc = from+1, va+a.dx, vb+b.dx, vc+c.dx
	}
	for to = from; to < wide && va|vb|vc >= 0; {
		to, va, vb, vc = to+1, va+a.dx, vb+b.dx, vc+c.dx
	}
	return from, to
}

// A spread is the colours of a triangle, opacity multiplied in: from the first
// pixel on they change evenly with each across and down. Its numbers are in
// 65536ths, colours of a 255th, opacity of the whole.
type spread struct{ at, dx, dy [4]int64 }

const (
	spreadBits = 16
	spreadOne  = 1 << spreadBits
)

func newSpread(a, b, c *Vertex, ea, eb edge, k float64) (s spread) {
	for i, v := range [4][3]float32{{a.R, b.R, c.R}, {a.G, b.G, c.G}, {a.B, b.B, c.B}, {a.A, b.A, c.A}} {
		one := 255 * k * spreadOne
		if i == 3 {
			one = k * spreadOne
		}
		// The corners' shares add up to one, so that one of the three follows.
		va, vb, vc := float64(v[0])-float64(v[2]), float64(v[1])-float64(v[2]), float64(v[2])
		s.dx[i] = int64(one * (float64(ea.dx)*va + float64(eb.dx)*vb))
		s.dy[i] = int64(one * (float64(ea.dy)*va + float64(eb.dy)*vb))
		s.at[i] = int64(one*(float64(ea.at)*va+float64(eb.at)*vb) + one/k*vc)
	}
	return s
}

// over paints a run of pixels, so many across and down from the first.
func (s *spread) over(pix []uint8, x, y int64) {
	at := func(i int) int64 { return s.at[i] + x*s.dx[i] + y*s.dy[i] }
	r, g, b, al := at(0), at(1), at(2), at(3)
	const half = spreadOne / 2
	for ; len(pix) >= 4; pix = pix[4:] {
		if rest := spreadOne - al; rest < spreadOne {
			pix[0] = uint8((r + int64(pix[0])*rest + half) >> spreadBits)
			pix[1] = uint8((g + int64(pix[1])*rest + half) >> spreadBits)
			pix[2] = uint8((b + int64(pix[2])*rest + half) >> spreadBits)
			pix[3] = uint8((255*al + int64(pix[3])*rest + half) >> spreadBits)
		}
		r, g, b, al = r+s.dx[0], g+s.dx[1], b+s.dx[2], al+s.dx[3]
	}
}

// letter paints a run of pixels of a triangle that covers part of a letter; v
// is how far the first is inside the edges opposite of a and b, which changes by
// dv to the next.
func (p *Pixels) letter(pix []uint8, a, b, c *Vertex, v, dv [2]int64, k float32) {
	for ; len(pix) >= 4; pix, v[0], v[1] = pix[4:], v[0]+dv[0], v[1]+dv[1] {
		ka, kb := float32(v[0])*k, float32(v[1])*k
		kc := 1 - ka - kb
		at := int(ka*a.V+kb*b.V+kc*c.V)*p.atlas.side + int(ka*a.U+kb*b.U+kc*c.U)
		cover := float32(p.letters[at]) / 255
		al := (ka*a.A + kb*b.A + kc*c.A) * cover
		if al <= 0 {
			continue
		}
		rest := 1 - al
		pix[0] = uint8((ka*a.R+kb*b.R+kc*c.R)*cover*255 + float32(pix[0])*rest + 0.5)
		pix[1] = uint8((ka*a.G+kb*b.G+kc*c.G)*cover*255 + float32(pix[1])*rest + 0.5)
		pix[2] = uint8((ka*a.B+kb*b.B+kc*c.B)*cover*255 + float32(pix[2])*rest + 0.5)
		pix[3] = uint8(al*255 + float32(pix[3])*rest + 0.5)
	}
}
