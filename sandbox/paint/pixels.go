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
	p.build(l, scale)
	p.upload()
	fill(dst, l.Back)
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
func snapped(v *Vertex) (x, y int64) {
	const far = 1 << 20
	snap := func(f float32) int64 {
		f = min(max(f, -far), far) * subPixels
		if f < 0 {
			return int64(f - 0.5)
		}
		return int64(f + 0.5)
	}
	return snap(v.X), snap(v.Y)
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
	k := 1 / float32(whole)
	flat := a.R == b.R && a.R == c.R && a.G == b.G && a.G == c.G && a.B == b.B && a.B == c.B && a.A == b.A && a.A == c.A
	plain := a.U == b.U && a.U == c.U && a.V == b.V && a.V == c.V
	for y := y0; y < y1; y, ea.at, eb.at, ec.at = y+1, ea.at+ea.dy, eb.at+eb.dy, ec.at+ec.dy {
		from, to := ec.within(eb.within(ea.within(0, int64(x1-x0))))
		if from >= to {
			continue
		}
		if flat && plain && a.A == 1 {
			c := [4]uint8{uint8(a.R*255 + 0.5), uint8(a.G*255 + 0.5), uint8(a.B*255 + 0.5), 255}
			for some := dst.Pix[y*dst.Stride+4*(x0+int(from)) : y*dst.Stride+4*(x0+int(to))]; len(some) >= 4; some = some[4:] {
				some[0], some[1], some[2], some[3] = c[0], c[1], c[2], c[3]
			}
			continue
		}
		va, vb, vc := ea.at+from*ea.dx, eb.at+from*eb.dx, ec.at+from*ec.dx
		row := dst.Pix[y*dst.Stride:]
		for x := x0 + int(from); x < x0+int(to); x, va, vb, vc = x+1, va+ea.dx, vb+eb.dx, vc+ec.dx {
			ka, kb, kc := float32(1), float32(0), float32(0)
			if !flat || !plain {
				ka, kb = float32(va)*k, float32(vb)*k
				kc = 1 - ka - kb
			}
			cover := float32(1)
			if !plain {
				u, v := ka*a.U+kb*b.U+kc*c.U, ka*a.V+kb*b.V+kc*c.V
				cover = float32(p.letters[int(v)*p.atlas.side+int(u)]) / 255
			}
			al := (ka*a.A + kb*b.A + kc*c.A) * cover
			if al <= 0 {
				continue
			}
			px := row[4*x : 4*x+4 : 4*x+4]
			rest := 1 - al
			px[0] = uint8((ka*a.R+kb*b.R+kc*c.R)*cover*255 + float32(px[0])*rest + 0.5)
			px[1] = uint8((ka*a.G+kb*b.G+kc*c.G)*cover*255 + float32(px[1])*rest + 0.5)
			px[2] = uint8((ka*a.B+kb*b.B+kc*c.B)*cover*255 + float32(px[2])*rest + 0.5)
			px[3] = uint8(al*255 + float32(px[3])*rest + 0.5)
		}
	}
}
