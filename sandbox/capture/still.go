package capture

import (
	"fmt"
	"image"
	"image/png"
	"io"
	"sync"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/paint"
)

// picture is one as a display list, with its size.
type picture struct {
	list          display.List
	width, height int     // pixels
	unit          float64 // pixels a CSS pixel
}

// still draws the picture of one beat.
func (a *artist) still() *picture {
	p := &picture{width: a.Width, height: a.Height, unit: a.unit()}
	p.list.Reset(a.ground())
	a.draw(&p.list, a.At.Float())
	return p
}

// strobe draws several moments of the captured beats, evenly apart, in one
// picture.
func (a *artist) strobe() *picture {
	p := &picture{width: a.Width, height: a.Height, unit: a.unit()}
	p.list.Reset(a.ground())
	r := a.rows()
	if a.Show.Title {
		a.title(&p.list, r.head, "")
	}
	a.caption(&p.list, r.caption)
	beats := make([]float64, a.Moments)
	for k := range beats {
		beats[k] = a.beats.Mul(frac.New(int64(k), int64(a.Moments))).Float()
	}
	st := a.stage(r.figure)
	st.DrawStrobe(&p.list, a.session, beats, a.beats.Float())
	a.drawTethers(&p.list, st, 0)
	return p
}

// writePNG writes a picture as PNG.
func (a *artist) writePNG(w io.Writer, p *picture) error {
	dst := image.NewRGBA(image.Rect(0, 0, p.width, p.height))
	a.pixels.Paint(dst, &p.list, p.unit)
	return encoder.Encode(w, straight(dst))
}

// writeSVG writes a picture as SVG.
func (a *artist) writeSVG(w io.Writer, p *picture) error {
	about := fmt.Sprintf(a.words.Capture.About, a.pattern.Title)
	return paint.SVG(w, &p.list, a.faces, float64(p.width)/p.unit, float64(p.height)/p.unit, p.unit, about)
}

// encoder packs as it does unasked: as tightly as it can takes many times as
// long for a twenty-fifth less. What it works with it uses again.
var encoder = png.Encoder{BufferPool: &buffers{}}

// buffers are those of encoders that have none to do.
type buffers struct{ sync.Pool }

// Get returns one, or nil where there is none.
func (b *buffers) Get() *png.EncoderBuffer {
	e, _ := b.Pool.Get().(*png.EncoderBuffer)
	return e
}

// Put takes one back.
func (b *buffers) Put(e *png.EncoderBuffer) { b.Pool.Put(e) }

// straight returns a picture whose opacity is multiplied in as one where it is
// not, which is what PNG holds; an opaque one is both.
func straight(m *image.RGBA) image.Image {
	if m.Opaque() {
		return m
	}
	return unmultiplied(m)
}

// unmultiplied returns a picture's colours as they are without their opacity.
func unmultiplied(src *image.RGBA) *image.NRGBA {
	dst := image.NewNRGBA(image.Rect(0, 0, src.Rect.Dx(), src.Rect.Dy()))
	for y := range src.Rect.Dy() {
		s, d := src.Pix[y*src.Stride:][:4*src.Rect.Dx()], dst.Pix[y*dst.Stride:]
		for i := 0; i < len(s); i += 4 {
			unmultiply(d[i:i+4:i+4], s[i:i+4:i+4])
		}
	}
	return dst
}

// unmultiply writes a pixel's colour as it is without its opacity.
func unmultiply(dst, src []byte) {
	a := uint32(src[3])
	if a == 0 {
		copy(dst, src)
		return
	}
	for k := range 3 {
		dst[k] = uint8(min((uint32(src[k])*255+a/2)/a, 255))
	}
	dst[3] = uint8(a)
}

// Unmultiply writes what of a frame has changed into dst, with its colours as
// they are without their opacity, and returns it as a frame.
func (f Frame) Unmultiply(dst *image.RGBA) Frame {
	f.eachRun(func(from, to int) {
		for i := from; i < to; i += 4 {
			unmultiply(dst.Pix[i:i+4:i+4], f.Pix[i:i+4:i+4])
		}
	})
	return Frame{dst, f.Changed}
}

// Straight returns a frame's pixels with their colours as they are without
// their opacity: red, green, blue, opacity, row by row.
func (f Frame) Straight() []byte {
	if f.Opaque() {
		return f.Pix
	}
	return unmultiplied(f.RGBA).Pix
}
