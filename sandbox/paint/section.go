package paint

import (
	"image"
	"math"
)

// sectionIndices is how many indices a part of a ribbon between two sections has
// in the mesh.
const sectionIndices = 18

// mostFade is by how much opacity may change along a section: triangles share
// more out by their corners, in a way of their own.
const mostFade = 0.02

// A plane is a value that changes evenly from pixel to pixel.
type plane struct{ at, dx, dy float64 }

// inward returns how far the middle of pixel (x, y), and of those about it, is on
// the inner side of the line from a to b, in pixels.
func inward(a, b *Vertex, x, y int) plane {
	dx, dy := float64(b.X)-float64(a.X), float64(b.Y)-float64(a.Y)
	k := 1 / math.Sqrt(dx*dx+dy*dy)
	p := plane{dx: -dy * k, dy: dx * k}
	p.at = p.dx*(float64(x)+0.5-float64(a.X)) + p.dy*(float64(y)+0.5-float64(a.Y))
	return p
}

// of returns the plane's value at a vertex, the plane's pixel being (x, y).
func (p plane) of(v *Vertex, x, y int) float64 {
	return p.at + p.dx*(float64(v.X)-float64(x)-0.5) + p.dy*(float64(v.Y)-float64(y)-0.5)
}

// section paints the part of a ribbon between two of its sections, each with
// its vertices across the ribbon, at once: its triangles have few pixels in a
// row. It reports false where they do not make a plain strip, feathered at
// both sides.
func (p *Pixels) section(dst *image.RGBA, from, to *[4]Vertex) bool {
	// Round the outside, such that the inner side is at the one hand of newEdge.
	c := [4]*Vertex{&from[0], &to[0], &to[3], &from[3]}
	in := [4]*Vertex{&from[1], &to[1], &to[2], &from[2]}
	var at [4][2]int64
	turned := func(i int) int64 {
		a, b, d := at[i], at[(i+1)%4], at[(i+2)%4]
		return (b[0]-a[0])*(d[1]-b[1]) - (b[1]-a[1])*(d[0]-b[0])
	}
	for i, v := range c {
		at[i][0], at[i][1] = snapped(v)
	}
	if turned(0) < 0 {
		at[0], at[1], at[2], at[3] = at[3], at[2], at[1], at[0]
		c = [4]*Vertex{c[3], c[2], c[1], c[0]}
		in = [4]*Vertex{in[3], in[2], in[1], in[0]}
	}
	for i := range c {
		if turned(i) <= 0 {
			return false
		}
	}
	minX, maxX := min(at[0][0], at[1][0], at[2][0], at[3][0]), max(at[0][0], at[1][0], at[2][0], at[3][0])
	minY, maxY := min(at[0][1], at[1][1], at[2][1], at[3][1]), max(at[0][1], at[1][1], at[2][1], at[3][1])
	x0, x1 := max(int(minX/subPixels), 0), min(int(maxX/subPixels)+1, dst.Rect.Dx())
	y0, y1 := max(int(minY/subPixels), 0), min(int(maxY/subPixels)+1, dst.Rect.Dy())

	// Opacity goes up over the feather from either side, and evenly from one
	// section to the other.
	up, down := inward(c[0], c[1], x0, y0), inward(c[2], c[3], x0, y0)
	for i, side := range [4]plane{up, up, down, down} {
		if w := side.of(in[i], x0, y0); w < 0.9*feather || w > 1.1*feather {
			return false
		}
	}
	first, second := inward(c[3], c[0], x0, y0), inward(c[1], c[2], x0, y0)
	full, other := float64(in[0].A), float64(in[1].A)
	if math.Abs(full-other) > mostFade {
		return false
	}
	if x0 >= x1 || y0 >= y1 {
		return true
	}
	ink := inkFrom(in[0])
	if other > full {
		ink = inkFrom(in[1])
	}

	var edges [4]edge
	for i := range edges {
		a, b := at[i], at[(i+1)%4]
		edges[i] = newEdge(a[0], a[1], b[0], b[1], int64(x0), int64(y0))
	}
	rows := newSpans(int64(x1-x0), &edges)
	const one = coatOne / feather
	k := strip{ink: ink, upBy: int64(one * up.dx), downBy: int64(one * down.dx)}
	for y := y0; y < y1; y++ {
		if l, r := rows.next(); l < r {
			k.up, k.down = int64(one*(up.at+float64(l)*up.dx)), int64(one*(down.at+float64(l)*down.dx))
			a := full
			k.by = 0
			if full != other {
				share := func(x int64) float64 {
					d, e := first.at+float64(x)*first.dx, second.at+float64(x)*second.dx
					return full + (other-full)*d/(d+e)
				}
				a = share(l)
				k.by = int64(coatOne * (share(r-1) - a) / float64(max(r-1-l, 1)))
			}
			k.at = int64(coatOne * a)
			k.over(p.run(dst, y, x0+int(l), x0+int(r)))
		}
		up.at, down.at, first.at, second.at = up.at+up.dy, down.at+down.dy, first.at+first.dy, second.at+second.dy
	}
	return true
}

// A strip is what a run of pixels across a ribbon is painted with: its opacity
// at the first and by how much it changes, in 65536ths, and likewise how far
// the feathers let it through.
type strip struct {
	ink          rgb
	at, by       int64
	up, upBy     int64
	down, downBy int64
}

func (k *strip) over(pix []uint8) {
	r, g, b := k.ink.r, k.ink.g, k.ink.b
	at, up, down := k.at, k.up, k.down
	const half = coatOne / 2
	for ; len(pix) >= 4; pix, at, up, down = pix[4:], at+k.by, up+k.upBy, down+k.downBy {
		w := at
		if c := min(up, down); c < coatOne {
			w = at * c >> coatBits
		}
		if w <= 0 {
			continue
		}
		rest := coatOne - w
		pix[0] = uint8((r*w + int64(pix[0])*rest + half) >> coatBits)
		pix[1] = uint8((g*w + int64(pix[1])*rest + half) >> coatBits)
		pix[2] = uint8((b*w + int64(pix[2])*rest + half) >> coatBits)
		pix[3] = uint8((255*w + int64(pix[3])*rest + half) >> coatBits)
	}
}

// bound is where an edge's inner side begins or ends in a row: the quotient of
// a number that changes by the same from row to row, rounded down, kept exact by
// its remainder, so that no row costs a division.
type bound struct{ q, r, dq, dr, by int64 }

// newBound returns the quotient of n by a positive number, n changing by dn.
func newBound(n, dn, by int64) bound {
	b := bound{by: by}
	b.q, b.r = divide(n, by)
	b.dq, b.dr = divide(dn, by)
	return b
}

// divide rounds down.
func divide(n, by int64) (q, r int64) {
	q = n / by
	if r = n - q*by; r < 0 {
		q, r = q-1, r+by
	}
	return q, r
}

// next goes to the next row.
func (b *bound) next() {
	b.q += b.dq
	if b.r += b.dr; b.r >= b.by {
		b.q, b.r = b.q+1, b.r-b.by
	}
}

// spans are the pixels inside of four edges, row by row.
type spans struct {
	from, to   [4]bound // the inner side begins and ends at all of these
	froms, tos int
	level      [4]edge // those that go along the rows
	levels     int
	right      int64
}

func newSpans(wide int64, edges *[4]edge) (s spans) {
	s.right = wide
	for _, e := range edges {
		switch {
		case e.dx > 0:
			s.from[s.froms] = newBound(-e.at+e.dx-1, -e.dy, e.dx)
			s.froms++
		case e.dx < 0:
			s.to[s.tos] = newBound(e.at-e.dx, e.dy, -e.dx)
			s.tos++
		default:
			s.level[s.levels] = e
			s.levels++
		}
	}
	return s
}

// next returns a row's pixels [from, to) and goes to the next row.
func (s *spans) next() (from, to int64) {
	to = s.right
	for i := range s.froms {
		b := &s.from[i&3]
		from = max(from, b.q)
		b.next()
	}
	for i := range s.tos {
		b := &s.to[i&3]
		to = min(to, b.q)
		b.next()
	}
	for i := range s.levels {
		e := &s.level[i&3]
		if e.at < 0 {
			to = from
		}
		e.at += e.dy
	}
	return from, to
}
