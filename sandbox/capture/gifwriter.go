package capture

import (
	"bufio"
	"bytes"
	"encoding/binary"
	"image"
	"io"
	"math"
	"sync"

	"whorlbench/sandbox/paint"
)

// asBefore is the index of what stays as it was, or of nothing where nothing is
// behind the pattern; colours come after it.
const asBefore = 0

// pixel is one of a GIF's, from frame to frame.
type pixel struct {
	was   uint8 // its index
	off   int16 // how far its colour is off, and how far the palette's nearest is
	least int16
}

// given is a pixel that is given an index.
type given struct {
	at int32 // its place, row by row
	to uint8
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
	first       []byte       // the first frame's pixels, which follow the last
	prev, frame []byte       // the frame before the one to be written, and that one
	changed     *paint.Cells // where these may differ
	delay       int          // of that one, in hundredths of a second
	frames      int          // written

	patience   float64
	off, least int // the sums over all pixels

	changes []change // of a row
	written []given  // of the frame
	alone   tolerance
	beside  tolerance

	packing queue
}

// newGIF writes the head of a GIF that plays for ever. Where clear, each frame
// is drawn on nothing, and 0 stands for nothing; else on the one before.
func newGIF(w io.Writer, width, height int, pal *palette, clear bool, workers int) *gifWriter {
	g := &gifWriter{
		out: bufio.NewWriter(w), pal: pal, w: width, h: height, bits: 2, clear: clear,
		px: make([]pixel, width*height), written: make([]given, 0, width*height), patience: firstPatience, changed: paint.NewCells(image.Pt(width, height)),
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
func (g *gifWriter) add(f Frame, delay int) error {
	was := g.delay
	g.delay = delay
	if g.first == nil {
		g.first, g.frame = bytes.Clone(f.Pix), bytes.Clone(f.Pix)
		g.changed.Copy(f.Changed)
		return nil
	}
	err := g.write(f.Pix, was)
	next := g.prev
	if next == nil {
		next = bytes.Clone(f.Pix)
	} else { // it is two frames old
		g.changed.Union(g.changed, f.Changed)
		Frame{f.RGBA, g.changed}.eachRun(func(from, to int) { copy(next[from:to], f.Pix[from:to]) })
	}
	g.prev, g.frame = g.frame, next
	g.changed.Copy(f.Changed)
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
	g.written = g.written[:0]
	g.tolerate()
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
	dots := g.dots(r)
	const keep, toNothing = 1 << 2, 2 << 2
	disposal := byte(keep)
	if g.clear {
		disposal = toNothing
	}
	head := []byte{0x21, 0xf9, 4, disposal | 1, byte(delay), byte(delay >> 8), asBefore, 0, 0x2c}
	head = append(head, numbers(r.Min.X, r.Min.Y, r.Dx(), r.Dy())...)
	g.frames++
	g.settle()
	return g.packing.add(func() ([]byte, error) { return pack(head, g.bits, dots), nil })
}

// dots returns the pixels in r, which holds all that are written, and keeps what
// these are given.
func (g *gifWriter) dots(r image.Rectangle) dots {
	d := dots{list: *lists.Get().(*[]dot)}
	next := 0 // the first pixel of r that is not there yet, in the order of rows
	stay := func(to int) {
		if n := to - next; n > 0 {
			d.stay(n, func(after int) uint8 {
				i := to - 1 - after
				return g.px[(r.Min.Y+i/r.Dx())*g.w+r.Min.X+i%r.Dx()].was
			})
		}
	}
	for _, w := range g.written {
		y, x := int(w.at)/g.w, int(w.at)%g.w
		at := (y-r.Min.Y)*r.Dx() + x - r.Min.X
		stay(at)
		d.change(w.to)
		next = at + 1
	}
	stay(r.Dx() * r.Dy())
	if !g.clear {
		for _, w := range g.written {
			g.px[w.at].was = w.to
		}
	}
	return d
}

// row says what each pixel of a row is given, and makes r hold all that change.
func (g *gifWriter) row(y int, ahead []byte, r *image.Rectangle) {
	g.changes = g.changes[:0]
	at := 4 * y * g.w
	row, next := g.frame[at:at+4*g.w], ahead[at:at+4*g.w]
	var was []byte
	if g.frames > 0 {
		was = g.prev[at : at+4*g.w]
	}
	g.changed.Runs(y, 1, func(from, to int) {
		for x := from; x < to; x++ {
			for was != nil && x+1 < to && binary.LittleEndian.Uint64(was[4*x:]) == binary.LittleEndian.Uint64(row[4*x:]) {
				x += 2 // eight bytes at once
			}
			if x == to {
				return
			}
			c := row[4*x : 4*x+4 : 4*x+4]
			if was == nil || binary.LittleEndian.Uint32(was[4*x:]) != binary.LittleEndian.Uint32(c) {
				g.weigh(x, g.px[y*g.w+x].was, rgbOf(c), rgbOf(next[4*x:4*x+4]))
			}
		}
	})
	g.choose()
	for i := range g.changes {
		c := &g.changes[i]
		if g.change(&g.px[y*g.w+c.x], c) {
			g.written = append(g.written, given{int32(y*g.w + c.x), c.to})
			hold(r, c.x, y)
		}
	}
}

// clearRow gives each pixel of a row that is not clear its colour.
func (g *gifWriter) clearRow(y int, r *image.Rectangle) {
	row := g.frame[4*y*g.w : 4*(y+1)*g.w]
	for x := range g.w {
		if c := row[4*x : 4*x+4 : 4*x+4]; c[3] != 0 {
			at, _ := g.pal.index(rgbOf(c))
			g.written = append(g.written, given{int32(y*g.w + x), at + 1})
			hold(r, x, y)
		}
	}
}

// hold makes r hold a pixel.
func hold(r *image.Rectangle, x, y int) {
	r.Min.X, r.Min.Y = min(r.Min.X, x), min(r.Min.Y, y)
	r.Max.X, r.Max.Y = max(r.Max.X, x+1), max(r.Max.Y, y+1)
}

func rgbOf(c []byte) rgb { return rgb(binary.LittleEndian.Uint32(c)) & 0xffffff }

// How far a pixel may be off before it is given another colour: its patience
// times the square root of how far its colour goes in a frame. What changes
// slowly costs little to leave, what changes fast much to write; the root makes
// the whole least for what is off in all. Patience is kept such that all
// pixels together are off by mostOff times what the palette makes inevitable,
// which is less than dithering costs; and none is off by more than
// looseAlone times mostLoose, 10 in each channel, that moving edges stay clean.
const (
	mostLoose     = 20
	firstPatience = 1.8
	leastPatience = 0.5
	mostPatience  = 10
	patienceStep  = 1.1
	mostOff       = 1.38
)

// settle makes patience longer or shorter by what is off after a frame.
func (g *gifWriter) settle() {
	if float64(g.off) > mostOff*float64(g.least) {
		g.patience = max(g.patience/patienceStep, leastPatience)
	} else {
		g.patience = min(g.patience*patienceStep, mostPatience)
	}
}

// tolerance is how far a pixel may be off before it is written, by how far its
// colour goes in a frame.
type tolerance [3*255 + 1]int32

// A pixel that is written costs much less beside one that is, so that the
// first of a row's neighbours may be further off than the others.
const (
	looseAlone  = 1.5
	looseBeside = 0.7
)

// tolerate makes the tolerances what patience is now.
func (g *gifWriter) tolerate() {
	for step := range g.alone {
		loose := min(g.patience*roots[step], mostLoose)
		g.alone[step], g.beside[step] = int32(looseAlone*loose), int32(looseBeside*loose)
	}
}

// change is a pixel whose colour changes.
type change struct {
	x       int
	c, next rgb
	step    int32 // from one to the other
	stays   int32 // how far off it is if it is left
	nearest int32 // how far off the palette is
	to      uint8 // the index of the palette's nearest, then the one that it is given
	write   bool
}

// weigh adds what there is to know of a change before it is decided on.
func (g *gifWriter) weigh(x int, was uint8, c, next rgb) {
	at, nearest := g.pal.index(c)
	stays := int32(math.MaxInt16)
	if g.frames > 0 {
		stays = off(g.pal.colours[was-1], c)
	}
	g.changes = append(g.changes, change{x: x, c: c, next: next, step: off(c, next), stays: stays, nearest: nearest, to: at + 1})
}

// choose decides which pixels of a row are written.
func (g *gifWriter) choose() {
	row := g.changes
	for i := range row {
		c := &row[i]
		beside := i > 0 && row[i-1].write && row[i-1].x == c.x-1
		c.write = c.beyond(&g.alone) || beside && c.beyond(&g.beside)
	}
	for i := len(row) - 2; i >= 0; i-- {
		if c := &row[i]; !c.write && row[i+1].write && row[i+1].x == c.x+1 {
			c.write = c.beyond(&g.beside)
		}
	}
}

// beyond reports whether a pixel that is left would be off by more than is
// tolerated, and than is inevitable.
func (c *change) beyond(t *tolerance) bool { return c.stays > max(t[c.step], c.nearest) }

// change decides what a pixel is given, and reports whether that is anything.
func (g *gifWriter) change(p *pixel, c *change) bool {
	g.off, g.least = g.off-int(p.off), g.least-int(p.least)
	stays := c.stays
	if c.write {
		stays = c.nearest
		if loose := g.beside[c.step]; c.step > 0 && 2*loose >= c.step {
			at, _ := g.pal.index(along(c.c, c.next, loose/c.step)) // it is then left for 2·loose/step frames
			c.to = at + 1
			stays = off(g.pal.colours[at], c.c)
		}
	}
	p.off, p.least = int16(stays), int16(c.nearest)
	g.off, g.least = g.off+int(p.off), g.least+int(p.least)
	return c.write
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

// packers and lists are those that nobody uses.
var (
	packers = sync.Pool{New: func() any { return new(packer) }}
	lists   = sync.Pool{New: func() any { return new([]dot) }}
)

// pack returns a frame's bytes: its head, which it takes, and the pixels coded,
// in blocks of at most 255 bytes.
func pack(head []byte, bits int, d dots) []byte {
	z := packers.Get().(*packer)
	defer packers.Put(z)
	defer func() { d.list = d.list[:0]; lists.Put(&d.list) }()
	z.bits = bits
	out := append(head, 0, byte(bits))
	for coded := z.pack(d); len(coded) > 0; {
		n := min(len(coded), 255)
		out = append(append(out, byte(n)), coded[:n]...)
		coded = coded[n:]
	}
	return append(out, 0)
}
