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
	sections := p.mesh.sections
	for _, b := range p.mesh.Batches {
		vs := p.mesh.Vertices[b.FirstVertex:b.EndVertex]
		for i := b.FirstIndex; i+2 < b.EndIndex; {
			idx := p.mesh.Indices[i:b.EndIndex]
			if len(sections) > 0 && sections[0] == i {
				sections = sections[1:]
				if p.section(dst, (*[4]Vertex)(vs[idx[0]:]), (*[4]Vertex)(vs[idx[1]:])) {
					i += sectionIndices
					continue
				}
			}
			p.triangle(dst, &vs[idx[0]], &vs[idx[1]], &vs[idx[2]])
			i += 3
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
	k, wide := 1/float64(whole), int64(x1-x0)
	letters := a.U != b.U || a.U != c.U || a.V != b.V || a.V != c.V
	ink := newCoat(a, b, c, &ea, &eb, k)
	for y := y0; y < y1; y, ea.at, eb.at, ec.at = y+1, ea.at+ea.dy, eb.at+eb.dy, ec.at+ec.dy {
		if from, to := ec.within(eb.within(ea.within(0, wide))); from < to {
			pix := p.run(dst, y, x0+int(from), x0+int(to))
			if letters {
				p.letter(pix, a, b, c, [2]int64{ea.at + from*ea.dx, eb.at + from*eb.dx}, [2]int64{ea.dx, eb.dx}, float32(k))
			} else {
				ink.over(pix, ink.at+from*ink.dx)
			}
		}
		ink.at += ink.dy
	}
}

// run returns the pixels [from, to) of row y, which will be painted.
func (p *Pixels) run(dst *image.RGBA, y, from, to int) []uint8 {
	if p.painted != nil {
		p.painted.mark(y, from, to)
	}
	return dst.Pix[y*dst.Stride+4*from : y*dst.Stride+4*to]
}

// A coat is what a triangle without letters is painted with: one ink, as all
// of them have, whose opacity changes evenly with each pixel across and down
// from the first. Opacity is in 65536ths.
type coat struct {
	rgb
	at, dx, dy int64
}

// rgb is an ink without its opacity, 0 to 255.
type rgb struct{ r, g, b int64 }

// inkFrom returns a vertex's ink.
func inkFrom(v *Vertex) rgb {
	if v.A == 0 {
		return rgb{}
	}
	whole := 255 / v.A
	return rgb{int64(v.R*whole + 0.5), int64(v.G*whole + 0.5), int64(v.B*whole + 0.5)}
}

const (
	coatBits = 16
	coatOne  = 1 << coatBits
)

func newCoat(a, b, c *Vertex, ea, eb *edge, k float64) coat {
	full := a
	if b.A > full.A {
		full = b
	}
	if c.A > full.A {
		full = c
	}
	ink := coat{rgb: inkFrom(full), at: int64(coatOne * float64(full.A))}
	if a.A == b.A && a.A == c.A {
		return ink
	}
	// The corners' shares add up to one, so that one of the three follows.
	va, vb := coatOne*(float64(a.A)-float64(c.A)), coatOne*(float64(b.A)-float64(c.A))
	ink.dx = int64(k * (float64(ea.dx)*va + float64(eb.dx)*vb))
	ink.dy = int64(k * (float64(ea.dy)*va + float64(eb.dy)*vb))
	ink.at = int64(k*(float64(ea.at)*va+float64(eb.at)*vb) + coatOne*float64(c.A))
	return ink
}

// over paints a run of pixels, the first with the given opacity.
func (k *coat) over(pix []uint8, al int64) {
	if al >= coatOne && k.dx == 0 {
		r, g, b := uint8(k.r), uint8(k.g), uint8(k.b)
		for ; len(pix) >= 4; pix = pix[4:] {
			pix[0], pix[1], pix[2], pix[3] = r, g, b, 255
		}
		return
	}
	r, g, b, dx := k.r, k.g, k.b, k.dx
	const half = coatOne / 2
	for ; len(pix) >= 4; pix, al = pix[4:], al+dx {
		if al <= 0 {
			continue
		}
		w := min(al, coatOne)
		rest := coatOne - w
		pix[0] = uint8((r*w + int64(pix[0])*rest + half) >> coatBits)
		pix[1] = uint8((g*w + int64(pix[1])*rest + half) >> coatBits)
		pix[2] = uint8((b*w + int64(pix[2])*rest + half) >> coatBits)
		pix[3] = uint8((255*w + int64(pix[3])*rest + half) >> coatBits)
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
