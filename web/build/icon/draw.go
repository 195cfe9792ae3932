package icon

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"math"
)

// safeShare is how much of a maskable icon's half width a launcher never cuts
// off (Web Application Manifest, "Icon masks and safe zone").
const safeShare = 0.8

// PNG returns the icon as a square PNG of side pixels. Maskable, its ground
// fills the square and the rest lies within the safe zone, so that a launcher
// may cut it to any shape.
func (c Icon) PNG(side int, maskable bool) ([]byte, error) {
	var out bytes.Buffer
	e := png.Encoder{CompressionLevel: png.BestCompression}
	err := e.Encode(&out, c.draw(side, maskable))
	return out.Bytes(), err
}

func (c Icon) draw(side int, maskable bool) *image.NRGBA {
	img := image.NewNRGBA(image.Rect(0, 0, side, side))
	scale, middle := float64(side)/c.side, c.side/2
	grow := 1.0
	if far := c.farthest(); maskable && far > 0 {
		grow = safeShare * middle / far
	}
	for y := range side {
		for x := range side {
			p := pt{(float64(x) + 0.5) / scale, (float64(y) + 0.5) / scale}
			var at color.NRGBA
			for _, s := range c.shapes {
				if maskable && s.box != nil {
					at = s.ink
					continue
				}
				q := pt{middle + (p.x-middle)/grow, middle + (p.y-middle)/grow}
				// Half a pixel to each side of the edge fades.
				cover := math.Min(math.Max(0.5-s.outside(q)*scale*grow, 0), 1)
				at = over(s.ink, cover, at)
			}
			img.SetNRGBA(x, y, at)
		}
	}
	return img
}

// farthest returns how far from the middle anything but the ground reaches.
func (c Icon) farthest() float64 {
	far := 0.0
	for _, s := range c.shapes {
		for _, p := range s.line {
			far = math.Max(far, math.Hypot(p.x-c.side/2, p.y-c.side/2)+s.reach)
		}
	}
	return far
}

// outside returns how far p lies from a shape, negative within it.
func (s shape) outside(p pt) float64 {
	if s.box != nil {
		// To a rectangle that is smaller by its corners' radius.
		dx := math.Abs(p.x-s.box[0]-s.box[2]/2) - s.box[2]/2 + s.round
		dy := math.Abs(p.y-s.box[1]-s.box[3]/2) - s.box[3]/2 + s.round
		return math.Hypot(math.Max(dx, 0), math.Max(dy, 0)) + math.Min(math.Max(dx, dy), 0) - s.round
	}
	nearest := math.Inf(1)
	for i, a := range s.line {
		b := a
		if i+1 < len(s.line) {
			b = s.line[i+1]
		}
		nearest = math.Min(nearest, toSegment(p, a, b))
	}
	return nearest - s.reach
}

func toSegment(p, a, b pt) float64 {
	dx, dy := b.x-a.x, b.y-a.y
	t := 0.0
	if l := dx*dx + dy*dy; l > 0 {
		t = math.Min(math.Max(((p.x-a.x)*dx+(p.y-a.y)*dy)/l, 0), 1)
	}
	return math.Hypot(p.x-a.x-t*dx, p.y-a.y-t*dy)
}

// over lays an ink with some cover over a colour.
func over(ink color.NRGBA, cover float64, under color.NRGBA) color.NRGBA {
	if cover == 0 {
		return under
	}
	below := float64(under.A) / 255 * (1 - cover)
	alpha := cover + below
	mix := func(a, b uint8) uint8 {
		return uint8(math.Round((float64(a)*cover + float64(b)*below) / alpha))
	}
	return color.NRGBA{mix(ink.R, under.R), mix(ink.G, under.G), mix(ink.B, under.B), uint8(math.Round(alpha * 255))}
}
