package capture

import (
	"bytes"
	"context"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"image"
	"io"
	"math"

	"whorlbench/engine/frac"
)

// apng writes the loop as an animated PNG that plays for ever (APNG, as the
// third edition of the PNG specification has it): the exact pixels of each
// frame, in the rectangle in which it differs from the one before.
func (t *Take) apng(ctx context.Context, w io.Writer, tell Progress) error {
	l := t.Timeline()
	a := &apngWriter{out: w, timing: newTiming(l), clear: t.Ground == Clear}
	q := queue{ahead: max(t.Workers, 1), take: a.write}
	if err := a.head(t.Width, t.Height, l.N); err != nil {
		return err
	}
	var was *image.RGBA
	err := t.EachFrame(ctx, l, tell, func(k int, f Frame) error {
		now := f.clone()
		r := f.Rect
		if was != nil {
			r = differs(was, Frame{now, f.Changed})
		}
		was = now
		a.rects = append(a.rects, r)
		return q.add(func() ([]byte, error) { return a.encode(now.SubImage(r).(*image.RGBA)) })
	})
	if err == nil {
		err = q.takeAll(0)
	}
	if err != nil {
		return err
	}
	return a.chunk("IEND", nil)
}

// differs returns the least rectangle that holds every difference between a
// frame and the one before it, a pixel where there is none.
func differs(was *image.RGBA, now Frame) image.Rectangle {
	r := image.Rectangle{Min: now.Rect.Max}
	now.eachRun(func(from, to int) {
		for i := from; i < to; i += 4 {
			if binary.LittleEndian.Uint32(was.Pix[i:]) != binary.LittleEndian.Uint32(now.Pix[i:]) {
				hold(&r, i%now.Stride/4, i/now.Stride)
			}
		}
	})
	if r.Empty() {
		return image.Rect(0, 0, 1, 1)
	}
	return r
}

// timing is how long the frames of an APNG last, each a fraction of a second
// whose parts have 16 bits.
type timing struct {
	num, den uint16 // of every frame, where that can be written
	clock    Clock  // else in milliseconds
}

func newTiming(l Timeline) timing {
	each := frac.Int(1).Div(l.Rate())
	num, den := each.Num(), each.Den()
	if num.IsInt64() && den.IsInt64() && num.Int64() <= math.MaxUint16 && den.Int64() <= math.MaxUint16 {
		return timing{num: uint16(num.Int64()), den: uint16(den.Int64())}
	}
	return timing{den: 1000, clock: l.Clock(1000)}
}

func (t timing) of(k int) (num, den uint16) {
	if t.num > 0 {
		return t.num, t.den
	}
	return uint16(t.clock.Delay(k)), t.den
}

// apngWriter writes an APNG frame by frame.
type apngWriter struct {
	out    io.Writer
	timing timing
	clear  bool
	rects  []image.Rectangle // of the frames
	frames int               // written
	seq    uint32            // the next control or data chunk's number
}

const (
	pngHead   = "\x89PNG\r\n\x1a\n"
	trueRGB   = 2 // colour types
	trueRGBA  = 6
	chunkRest = 12 // a chunk's bytes beside its data: length, name, checksum
)

func (a *apngWriter) head(w, h, frames int) error {
	kind := byte(trueRGB)
	if a.clear {
		kind = trueRGBA
	}
	ihdr := binary.BigEndian.AppendUint32(nil, uint32(w))
	ihdr = binary.BigEndian.AppendUint32(ihdr, uint32(h))
	ihdr = append(ihdr, 8, kind, 0, 0, 0)
	const forEver = 0
	actl := binary.BigEndian.AppendUint32(nil, uint32(frames))
	actl = binary.BigEndian.AppendUint32(actl, forEver)
	_, err := io.WriteString(a.out, pngHead)
	return errors.Join(err, a.chunk("IHDR", ihdr), a.chunk("acTL", actl))
}

func (a *apngWriter) chunk(name string, data []byte) error {
	b := binary.BigEndian.AppendUint32(make([]byte, 0, len(data)+chunkRest), uint32(len(data)))
	b = append(append(b, name...), data...)
	b = binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(b[4:]))
	_, err := a.out.Write(b)
	return err
}

// numbered begins the data of a chunk that has a number.
func (a *apngWriter) numbered() []byte {
	a.seq++
	return binary.BigEndian.AppendUint32(nil, a.seq-1)
}

// seeThrough keeps a part that happens to be opaque from being written
// without opacity, which all frames must have alike.
type seeThrough struct{ *image.NRGBA }

// Opaque reports that it is not.
func (seeThrough) Opaque() bool { return false }

// encode returns a part of a frame as its PNG's packed data.
func (a *apngWriter) encode(m *image.RGBA) ([]byte, error) {
	var file bytes.Buffer
	var part image.Image = m
	if a.clear {
		part = seeThrough{unmultiplied(m)}
	}
	if err := encoder.Encode(&file, part); err != nil {
		return nil, err
	}
	var out []byte
	for b := file.Bytes()[len(pngHead):]; len(b) >= chunkRest; {
		n := int(binary.BigEndian.Uint32(b))
		if string(b[4:8]) == "IDAT" {
			out = append(out, b[8:8+n]...)
		}
		b = b[chunkRest+n:]
	}
	return out, nil
}

// write writes a frame's packed data.
func (a *apngWriter) write(data []byte) error {
	r := a.rects[a.frames]
	num, den := a.timing.of(a.frames)
	b := a.numbered()
	for _, n := range []int{r.Dx(), r.Dy(), r.Min.X, r.Min.Y} {
		b = binary.BigEndian.AppendUint32(b, uint32(n))
	}
	b = binary.BigEndian.AppendUint16(binary.BigEndian.AppendUint16(b, num), den)
	const keep, replace = 0, 0
	if err := a.chunk("fcTL", append(b, keep, replace)); err != nil {
		return err
	}
	a.frames++
	if a.frames == 1 {
		return a.chunk("IDAT", data)
	}
	return a.chunk("fdAT", append(a.numbered(), data...))
}
