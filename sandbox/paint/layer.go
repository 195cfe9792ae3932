package paint

import (
	"image"

	"whorlbench/sandbox/display"
)

// Layer is a picture that is painted time and again over the same ground: the
// rest of it stays from one time to the next.
type Layer struct {
	*image.RGBA
	Painted *Cells // which may be other than the ground
}

// NewLayer returns a layer as large as its ground, which it is as yet.
func NewLayer(ground *image.RGBA) *Layer {
	c := &Layer{image.NewRGBA(ground.Rect), NewCells(ground.Rect.Size())}
	copy(c.Pix, ground.Pix)
	return c
}

// PaintOver makes c what its ground and, over that, the marks of l are.
func (p *Pixels) PaintOver(c *Layer, ground *image.RGBA, l *display.List, scale float64) {
	for y := range c.Rect.Dy() {
		at := y * c.Stride
		c.Painted.Runs(y, 1, func(from, to int) { copy(c.Pix[at+4*from:at+4*to], ground.Pix[at+4*from:]) })
	}
	c.Painted.Clear()
	p.painted = c.Painted
	p.triangles(c.RGBA, l, scale)
	p.painted = nil
}
