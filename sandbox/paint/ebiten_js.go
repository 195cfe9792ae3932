// The tag screenless leaves the engine out of a program that paints in memory only.

//go:build js && !screenless

package paint

import (
	"image"
	"math"

	"github.com/hajimehoshi/ebiten/v2"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
)

// Screen paints display lists with Ebitengine.
type Screen struct {
	mesh    *Mesh
	atlas   *Atlas
	texture *ebiten.Image
	still   *ebiten.Image // what stays of the list
	stillOf stillOf
	buf     []ebiten.Vertex
}

// NewScreen returns a painter; the textures are made at the first frame.
func NewScreen(faces *face.Set) *Screen {
	a := NewAtlas(faces)
	return &Screen{atlas: a, mesh: NewMesh(a)}
}

func newTexture(r image.Rectangle) *ebiten.Image {
	return ebiten.NewImageWithOptions(r, &ebiten.NewImageOptions{Unmanaged: true})
}

// stillOf is what the picture of what stays was painted for.
type stillOf struct {
	version int
	scale   float64
}

// surface is what can be painted on.
type surface interface {
	Bounds() image.Rectangle
	DrawTriangles(vertices []ebiten.Vertex, indices []uint16, img *ebiten.Image, options *ebiten.DrawTrianglesOptions)
}

// Paint draws l over all of dst at scale pixels a CSS pixel, each of which
// takes up coarse device pixels across and down.
func (s *Screen) Paint(dst surface, l *display.List, scale, coarse float64) {
	if s.texture == nil {
		s.texture = newTexture(image.Rect(0, 0, AtlasSize, AtlasSize))
	}
	size := image.Rect(0, 0, int(math.Ceil(float64(dst.Bounds().Dx())/coarse)), int(math.Ceil(float64(dst.Bounds().Dy())/coarse)))
	if s.still == nil || s.still.Bounds() != size {
		if s.still != nil {
			s.still.Deallocate()
		}
		s.still, s.stillOf = newTexture(size), stillOf{}
	}
	if now := (stillOf{l.Version, scale}); s.stillOf != now {
		s.stillOf = now
		s.still.Fill(l.Back)
		s.paint(s.still, func() { s.mesh.BuildStill(l, scale) }, 1)
	}
	s.paint(dst, func() { s.mesh.BuildMoving(l, scale, size.Max) }, coarse)
}

// filter is exact where a pixel is a pixel, else smooth.
func filter(coarse float64) ebiten.Filter {
	if coarse == 1 {
		return ebiten.FilterNearest
	}
	return ebiten.FilterLinear
}

// paint draws the mesh that build makes; where the atlas has been full, it
// makes it once more.
func (s *Screen) paint(dst surface, build func(), coarse float64) {
	build()
	if s.atlas.Full {
		s.atlas.Clear()
		build()
	}
	for _, up := range s.atlas.Fresh {
		s.texture.SubImage(up.In).(*ebiten.Image).WritePixels(up.Pix)
	}
	s.atlas.Fresh = s.atlas.Fresh[:0]
	for _, b := range s.mesh.Batches {
		s.draw(dst, b, coarse)
	}
}

func (s *Screen) draw(dst surface, b Batch, coarse float64) {
	if b.EndIndex == b.FirstIndex {
		return
	}
	k := float32(coarse)
	s.buf = s.buf[:0]
	for _, v := range s.mesh.Vertices[b.FirstVertex:b.EndVertex] {
		s.buf = append(s.buf, ebiten.Vertex{
			DstX: k * v.X, DstY: k * v.Y, SrcX: v.U, SrcY: v.V,
			ColorR: v.R, ColorG: v.G, ColorB: v.B, ColorA: v.A,
		})
	}
	from, blend := s.texture, ebiten.BlendSourceOver
	if b.Still {
		from, blend = s.still, ebiten.BlendCopy
	}
	dst.DrawTriangles(s.buf, s.mesh.Indices[b.FirstIndex:b.EndIndex], from, &ebiten.DrawTrianglesOptions{
		ColorScaleMode: ebiten.ColorScaleModePremultipliedAlpha, Filter: filter(coarse), Blend: blend,
	})
}
