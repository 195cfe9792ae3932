package paint

import (
	"image"
	"math"

	"whorlbench/sandbox/face"
)

// AtlasSize is the side of the square texture that holds letters and a white
// spot, in device pixels.
const AtlasSize = 1024

// Atlas is where rasterised letters are kept. When it is full it is emptied
// and filled anew by the frames that follow.
type Atlas struct {
	faces  *face.Set
	side   int
	glyphs map[glyphKey]Glyph
	shelf  image.Rectangle // free part of the row in use
	next   int             // where the next row begins
	// Fresh are the letters not yet uploaded.
	Fresh []Upload
	// Full says that no room was left for a letter: the frame is to be built
	// once more after Clear.
	Full bool
}

type glyphKey struct {
	r    rune
	bold bool
	size int // 64ths of a device pixel
	sub  int // quarters of a device pixel
}

// Glyph is a letter in the atlas; Off is where its corner lies from the pen.
type Glyph struct {
	In   image.Rectangle
	Off  image.Point
	some bool
}

// Upload is a letter to be copied into the texture: white, opacity multiplied in.
type Upload struct {
	In  image.Rectangle
	Pix []byte // RGBA
}

// whiteSide is the side of the white spot; its middle is sampled, away from
// its edges.
const whiteSide = 3

// NewAtlas returns an atlas with its white spot.
func NewAtlas(faces *face.Set) *Atlas {
	a := &Atlas{faces: faces, side: AtlasSize}
	a.Clear()
	return a
}

// grow makes the texture twice as wide and high, and forgets all letters.
func (a *Atlas) grow() {
	a.side *= 2
	a.Clear()
}

// Clear forgets all letters.
func (a *Atlas) Clear() {
	a.glyphs = map[glyphKey]Glyph{}
	a.next, a.Full = whiteSide+1, false
	a.shelf = image.Rect(whiteSide+1, 0, a.side, whiteSide+1)
	a.Fresh = a.Fresh[:0]
	pix := make([]byte, 4*whiteSide*whiteSide)
	for i := range pix {
		pix[i] = 255
	}
	a.Fresh = append(a.Fresh, Upload{image.Rect(0, 0, whiteSide, whiteSide), pix})
}

// White returns the place of the white spot's middle.
func (a *Atlas) White() (u, v float32) { return whiteSide / 2.0, whiteSide / 2.0 }

// Glyph returns a letter at a size in device pixels with the pen at the
// fraction sub of one; ok is false where nothing is to be painted.
func (a *Atlas) Glyph(r rune, bold bool, size, sub float64) (Glyph, bool) {
	key := glyphKey{r, bold, int(math.Round(size * 64)), int(sub * 4)}
	g, ok := a.glyphs[key]
	if !ok {
		g = a.add(key)
	}
	return g, g.some
}

func (a *Atlas) add(key glyphKey) Glyph {
	rect, mask, ok := a.faces.Glyph(key.r, key.bold, float64(key.size)/64, float64(key.sub)/4)
	if !ok {
		a.glyphs[key] = Glyph{}
		return Glyph{}
	}
	in, ok := a.place(rect.Dx(), rect.Dy())
	if !ok {
		a.Full = true
		return Glyph{}
	}
	pix := make([]byte, 0, 4*len(mask.Pix))
	for _, c := range mask.Pix {
		pix = append(pix, c, c, c, c)
	}
	a.Fresh = append(a.Fresh, Upload{in, pix})
	g := Glyph{In: in, Off: rect.Min, some: true}
	a.glyphs[key] = g
	return g
}

// place finds room for w by h pixels and a clear pixel beside them.
func (a *Atlas) place(w, h int) (image.Rectangle, bool) {
	if w+1 > a.shelf.Dx() || h+1 > a.shelf.Dy() {
		// A new row, a little higher so that like letters share it.
		high := h + 1 + h/8
		if a.next+high > a.side || w+1 > a.side {
			return image.Rectangle{}, false
		}
		a.shelf = image.Rect(0, a.next, a.side, a.next+high)
		a.next += high
	}
	in := image.Rect(a.shelf.Min.X, a.shelf.Min.Y, a.shelf.Min.X+w, a.shelf.Min.Y+h)
	a.shelf.Min.X += w + 1
	return in, true
}
