package capture

import (
	"bufio"
	"bytes"
	"compress/lzw"
	"encoding/binary"
	"image"
	"io"
	"math"
)

// asBefore is the index of what stays as it was, or of nothing where nothing is
// behind the pattern; colours come after it.
const asBefore = 0

// pixel is one of a GIF's, from frame to frame.
type pixel struct {
	was   uint8 // its index
	gets  uint8 // the index that it is given now
	off   int16 // how far its colour is off, and how far the palette's nearest is
	least int16
}

// gifWriter writes a GIF frame by frame: of each only the rectangle in which
// something changes, and in it only what does. It looks one frame ahead: a
// colour that goes on changing is given as it will be halfway through the time
// that it is then left alone for.
type gifWriter struct {
	out   *bufio.Writer
	pal   *palette
	w, h  int
	bits  int // of an index
	clear bool

	px          []pixel
	first       []byte // the first frame's pixels, which follow the last
	prev, frame []byte // the frame before the one to be written, and that one
	delay       int    // of that one, in hundredths of a second
	frames      int    // written

	patience   float64
	off, least int // the sums over all pixels

	packing queue
}

// newGIF writes the head of a GIF that plays for ever. Where clear, each frame
// is drawn on nothing, and 0 stands for nothing; else on the one before.
func newGIF(w io.Writer, width, height int, pal *palette, clear bool, workers int) *gifWriter {
	g := &gifWriter{
		out: bufio.NewWriter(w), pal: pal, w: width, h: height, bits: 2, clear: clear,
		px: make([]pixel, width*height), patience: firstPatience,
	}
	g.packing = queue{ahead: workers, take: func(data []byte) error {
		_, err := g.out.Write(data)
		return err
	}}
	for 1<<g.bits <= len(pal.colours) {
		g.bits++
	}
	head := append([]byte("GIF89a"), numbers(width, height)...)
	head = append(head, 0x80|byte(g.bits-1), asBefore, 0)
	table := make([]byte, 3<<g.bits)
	for i, c := range pal.colours {
		r, gr, b := c.split()
		copy(table[3*(i+1):], []byte{byte(r), byte(gr), byte(b)})
	}
	g.out.Write(append(head, table...)) // a fault is told by Flush
	g.out.WriteString("\x21\xff\x0bNETSCAPE2.0\x03\x01\x00\x00\x00")
	return g
}

func numbers(ns ...int) (b []byte) {
	for _, n := range ns {
		b = binary.LittleEndian.AppendUint16(b, uint16(n))
	}
	return b
}

// add takes the next frame, opaque or clear in each pixel, which lasts so many
// hundredths of a second.
func (g *gifWriter) add(m *image.RGBA, delay int) error {
	was := g.delay
	g.delay = delay
	if g.first == nil {
		g.first, g.frame = bytes.Clone(m.Pix), bytes.Clone(m.Pix)
		return nil
	}
	err := g.write(m.Pix, was)
	g.prev, g.frame = g.frame, append(g.prev[:0], m.Pix...)
	return err
}

// close writes the last frame and ends the GIF.
func (g *gifWriter) close() error {
	if err := g.write(g.first, g.delay); err != nil {
		return err
	}
	if err := g.packing.takeAll(0); err != nil {
		return err
	}
	g.out.WriteByte(0x3b)
	return g.out.Flush()
}

// write decides on the frame at hand and has it packed.
func (g *gifWriter) write(ahead []byte, delay int) error {
	r := image.Rectangle{Min: image.Pt(g.w, g.h)}
	for y := range g.h {
		if g.clear {
			g.clearRow(y, &r)
		} else {
			g.row(y, ahead, &r)
		}
	}
	if r.Empty() {
		r = image.Rect(0, 0, 1, 1) // a frame has one pixel at least
	}
	indices := make([]uint8, 0, r.Dx()*r.Dy())
	for y := r.Min.Y; y < r.Max.Y; y++ {
		row := g.px[y*g.w+r.Min.X : y*g.w+r.Max.X]
		for x := range row {
			p := &row[x]
			indices = append(indices, p.gets)
			if p.gets != asBefore {
				p.was, p.gets = p.gets, asBefore
			}
		}
	}
	const keep, toNothing = 1 << 2, 2 << 2
	disposal := byte(keep)
	if g.clear {
		disposal = toNothing
	}
	head := []byte{0x21, 0xf9, 4, disposal | 1, byte(delay), byte(delay >> 8), asBefore, 0, 0x2c}
	head = append(head, numbers(r.Min.X, r.Min.Y, r.Dx(), r.Dy())...)
	g.frames++
	g.settle()
	return g.packing.add(func() ([]byte, error) { return pack(head, g.bits, indices) })
}

// row says what each pixel of a row is given, and makes r hold all that change.
func (g *gifWriter) row(y int, ahead []byte, r *image.Rectangle) {
	from, to := 4*y*g.w, 4*(y+1)*g.w
	row, next := g.frame[from:to], ahead[from:to]
	var was []byte
	if g.frames > 0 {
		if was = g.prev[from:to]; bytes.Equal(was, row) {
			return
		}
	}
	for x := range g.w {
		c := row[4*x : 4*x+4 : 4*x+4]
		if was != nil && binary.LittleEndian.Uint32(was[4*x:]) == binary.LittleEndian.Uint32(c) {
			continue
		}
		if g.change(&g.px[y*g.w+x], rgbOf(c), rgbOf(next[4*x:4*x+4])) {
			hold(r, x, y)
		}
	}
}

// clearRow gives each pixel of a row that is not clear its colour.
func (g *gifWriter) clearRow(y int, r *image.Rectangle) {
	row := g.frame[4*y*g.w : 4*(y+1)*g.w]
	for x := range g.w {
		if c := row[4*x : 4*x+4 : 4*x+4]; c[3] != 0 {
			at, _ := g.pal.index(rgbOf(c))
			g.px[y*g.w+x].gets = at + 1
			hold(r, x, y)
		}
	}
}

// hold makes r hold a pixel.
func hold(r *image.Rectangle, x, y int) {
	r.Min.X, r.Min.Y = min(r.Min.X, x), min(r.Min.Y, y)
	r.Max.X, r.Max.Y = max(r.Max.X, x+1), max(r.Max.Y, y+1)
}

func rgbOf(c []byte) rgb { return rgb(c[0])<<16 | rgb(c[1])<<8 | rgb(c[2]) }

// How far a pixel may be off before it is given another colour: its patience
// times the square root of how far its colour goes in a frame. What changes
// slowly costs little to leave, what changes fast much to write; the root makes
// the whole least for what is off in all. Patience is kept such that all
// pixels together are off by mostOff times what the palette makes inevitable,
// which is less than dithering costs; and none is off by more than mostLoose,
// 8 in each channel, that moving edges stay clean.
const (
	mostLoose     = 24
	firstPatience = 1.5
	leastPatience = 0.5
	mostPatience  = 4
	patienceStep  = 1.04
	mostOff       = 1.40
)

// settle makes patience longer or shorter by what is off after a frame.
func (g *gifWriter) settle() {
	if float64(g.off) > mostOff*float64(g.least) {
		g.patience = max(g.patience/patienceStep, leastPatience)
	} else {
		g.patience = min(g.patience*patienceStep, mostPatience)
	}
}

// change decides what a pixel whose colour has changed is given, and reports
// whether that is anything.
func (g *gifWriter) change(p *pixel, c, next rgb) bool {
	step := off(c, next)
	loose := min(int32(g.patience*roots[step]), mostLoose)
	_, nearest := g.pal.index(c)
	stays := int32(math.MaxInt16)
	if g.frames > 0 {
		stays = off(g.pal.colours[p.was-1], c)
	}
	g.off, g.least = g.off-int(p.off), g.least-int(p.least)
	if stays > max(loose, nearest) {
		aim := c
		if step > 0 && 2*loose >= step {
			aim = along(c, next, loose/step) // it is then left for 2·loose/step frames
		}
		at, _ := g.pal.index(aim)
		p.gets = at + 1
		stays = off(g.pal.colours[at], c)
	}
	p.off, p.least = int16(stays), int16(nearest)
	g.off, g.least = g.off+int(p.off), g.least+int(p.least)
	return p.gets != asBefore
}

// roots are the square roots of all distances between colours.
var roots = func() (t [3*255 + 1]float64) {
	for d := range t {
		t[d] = math.Sqrt(float64(d))
	}
	return t
}()

// along returns what is k times as far from a as b is.
func along(a, b rgb, k int32) rgb {
	f := func(shift int) rgb {
		x, y := int32(a>>shift&255), int32(b>>shift&255)
		return rgb(min(max(x+k*(y-x), 0), 255)) << shift
	}
	return f(16) | f(8) | f(0)
}

// pack returns a frame's bytes: its head, which it takes, and the indices
// coded, in blocks of at most 255 bytes.
func pack(head []byte, bits int, indices []uint8) ([]byte, error) {
	var coded bytes.Buffer
	z := lzw.NewWriter(&coded, lzw.LSB, bits)
	if _, err := z.Write(indices); err != nil {
		return nil, err
	}
	if err := z.Close(); err != nil {
		return nil, err
	}
	out := append(head, 0, byte(bits))
	for coded.Len() > 0 {
		block := coded.Next(255)
		out = append(append(out, byte(len(block))), block...)
	}
	return append(out, 0), nil
}
