//go:build js

package paint

import (
	"image"

	"github.com/hajimehoshi/ebiten/v2"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
)

// Screen paints display lists with Ebitengine.
type Screen struct {
	mesh    *Mesh
	atlas   *Atlas
	texture *ebiten.Image
	buf     []ebiten.Vertex
}

// NewScreen returns a painter; the texture is made at the first frame.
func NewScreen(faces *face.Set) *Screen {
	a := NewAtlas(faces)
	return &Screen{atlas: a, mesh: NewMesh(a)}
}

// Paint draws l on dst at scale device pixels a CSS pixel.
func (s *Screen) Paint(dst *ebiten.Image, l *display.List, scale float64) {
	if s.texture == nil {
		s.texture = ebiten.NewImageWithOptions(image.Rect(0, 0, AtlasSize, AtlasSize), &ebiten.NewImageOptions{Unmanaged: true})
	}
	s.mesh.Build(l, scale)
	if s.atlas.Full {
		s.atlas.Clear()
		s.mesh.Build(l, scale)
	}
	for _, up := range s.atlas.Fresh {
		s.texture.SubImage(up.In).(*ebiten.Image).WritePixels(up.Pix)
	}
	s.atlas.Fresh = s.atlas.Fresh[:0]

	dst.Fill(l.Back)
	for _, b := range s.mesh.Batches {
		s.buf = s.buf[:0]
		for _, v := range s.mesh.Vertices[b.FirstVertex:b.EndVertex] {
			s.buf = append(s.buf, ebiten.Vertex{
				DstX: v.X, DstY: v.Y, SrcX: v.U, SrcY: v.V,
				ColorR: v.R, ColorG: v.G, ColorB: v.B, ColorA: v.A,
			})
		}
		dst.DrawTriangles(s.buf, s.mesh.Indices[b.FirstIndex:b.EndIndex], s.texture, &ebiten.DrawTrianglesOptions{
			ColorScaleMode: ebiten.ColorScaleModePremultipliedAlpha,
		})
	}
}
