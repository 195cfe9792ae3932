package capture

// The codes of a GIF (GIF89a, appendix F) have at most widestCode bits. All are
// forgotten when there are mostCodes, fewer than there could be: what edges and
// trails add is seldom seen again, and the longer codes cost more than that.
const (
	widestCode = 12
	mostCodes  = 1 << 11
)

// dot is a part of what is to be packed: a pixel, or a run of pixels that stay as
// they are.
type dot struct {
	at    int32 // the first pixel's place
	run   int32 // how many pixels stay, 0 of one pixel by itself
	to    uint8 // of one pixel: the index that it is to have
	stays bool  // which it has
}

// nearEdge is how many pixels before one that changes those that stay may be
// written anew.
const nearEdge = 7

// dots are the pixels of a frame, in order.
type dots struct {
	list []dot
	n    int32 // pixels
}

// stay adds pixels that stay as they are; is tells the index of each of the
// last nearEdge, by how many come after it.
func (d *dots) stay(n int, is func(after int) uint8) {
	if run := n - nearEdge; run > 0 {
		d.list = append(d.list, dot{at: d.n, run: int32(run)})
		d.n, n = d.n+int32(run), nearEdge
	}
	for n--; n >= 0; n-- {
		d.list = append(d.list, dot{at: d.n, to: is(n), stays: true})
		d.n++
	}
}

// change adds a pixel that is given an index.
func (d *dots) change(to uint8) {
	d.list = append(d.list, dot{at: d.n, to: to})
	d.n++
}

// packer packs dots as LZW codes. What stays as it is can be written as
// asBefore or anew, whichever makes a code go further.
type packer struct {
	bits int // of an index

	// Each code goes one index further than another.
	further [1 << slotBits]slot // found by both
	still   [mostCodes]uint16   // the one that goes further by asBefore; 0: none
	begins  [mostCodes]uint8    // its first index
	used    int
	last    int // the code written last, -1: none
	fresh   int // what a reader will add when it has the next; 0: nothing

	dots []dot
	all  int32 // pixels
	best way

	// zeros are the codes of one, two, three and more times asBefore, one by one.
	zeros []uint16

	out   []byte
	acc   uint32
	held  int // bits in acc
	width int // of a code, in bits
}

// slot holds a code and what it comes of: the one it goes further than, and its
// last index.
type slot struct {
	from uint32 // never 0
	code uint16
}

const slotBits = 13

// place is one in the dots: of a run, so many of its pixels are behind.
type place struct {
	dot    int
	behind int32
}

// way is a code and how far it goes.
type way struct {
	code int
	to   place
	at   int32 // the place as a pixel's
}

// anew reports whether a pixel may be written other than as before.
func (d *dot) anew() bool { return d.run == 0 && d.to != asBefore }

// reset forgets all codes but those of single indices.
func (z *packer) reset() {
	n := 1<<z.bits + 2
	z.further = [1 << slotBits]slot{}
	clear(z.still[:n])
	for i := range 1 << z.bits {
		z.begins[i] = uint8(i)
	}
	z.used, z.width, z.last, z.fresh = n, z.bits+1, -1, 0
	z.zeros = append(z.zeros[:0], asBefore)
}

func (z *packer) emit(code int) {
	z.acc |= uint32(code) << z.held
	for z.held += z.width; z.held >= 8; z.held -= 8 {
		z.out = append(z.out, byte(z.acc))
		z.acc >>= 8
	}
}

// pack returns the codes of dots, which belong to the packer until the next.
func (z *packer) pack(d dots) []byte {
	z.dots, z.all, z.out, z.acc, z.held = d.list, d.n, z.out[:0], 0, 0
	z.reset()
	forget := 1 << z.bits
	z.emit(forget)
	for at := (place{}); at.dot < len(z.dots); {
		z.grow()
		z.look(at)
		z.settle(z.begins[z.best.code])
		z.emit(z.best.code)
		at, z.last = z.best.to, z.best.code
		if z.used == mostCodes-1 && at.dot < len(z.dots) {
			z.widen() // for what a reader adds before it forgets
			z.emit(forget)
			z.reset()
		}
	}
	z.widen()
	z.emit(forget + 1)
	if z.held > 0 {
		z.out = append(z.out, byte(z.acc))
	}
	return z.out
}

// widen makes codes as wide as they are when one more is there.
func (z *packer) widen() {
	if z.used == 1<<z.width && z.width < widestCode {
		z.width++
	}
}

// grow makes room for what a reader adds when it has the next code: the last,
// and the index with which the next begins.
func (z *packer) grow() {
	if z.last < 0 {
		return
	}
	z.widen()
	z.fresh = z.used
	z.used++
	z.still[z.fresh], z.begins[z.fresh] = 0, z.begins[z.last]
}

// settle gives the newest code its last index.
func (z *packer) settle(ends uint8) {
	if z.last < 0 {
		return
	}
	from := uint32(z.last)<<8 | uint32(ends)
	s := z.slot(from)
	if s.from == 0 {
		*s = slot{from, uint16(z.fresh)}
		if ends == asBefore {
			z.still[z.last] = uint16(z.fresh)
			if z.last == int(z.zeros[len(z.zeros)-1]) {
				z.zeros = append(z.zeros, uint16(z.fresh))
			}
		}
	}
	z.fresh = 0
}

// slot returns where what comes of a code and an index is, or is to be.
func (z *packer) slot(from uint32) *slot {
	at := from * 2654435769 >> (32 - slotBits) // Knuth's multiplicative hash
	for {
		s := &z.further[at]
		if s.from == from || s.from == 0 {
			return s
		}
		at = (at + 1) % (1 << slotBits)
	}
}

// on returns the code that goes further by an index, 0 where there is none. The
// newest, whose last index is not known yet, is the last and its own first if
// it comes next itself.
func (z *packer) on(code int, by uint8) int {
	c := 0
	if by == asBefore {
		c = int(z.still[code])
	} else if s := z.slot(uint32(code)<<8 | uint32(by)); s.from != 0 {
		c = int(s.code)
	}
	if c == 0 && code == z.last && by == z.begins[code] {
		return z.fresh
	}
	return c
}

// look finds the code that goes furthest from a place.
func (z *packer) look(at place) {
	z.best = way{}
	d := &z.dots[at.dot]
	if d.run > 0 {
		n := min(d.run-at.behind, int32(len(z.zeros)))
		z.follow(int(z.zeros[n-1]), place{at.dot, at.behind + n})
		return
	}
	next := place{dot: at.dot + 1}
	if d.stays {
		z.follow(asBefore, next)
	}
	if d.anew() {
		z.follow(int(d.to), next)
	}
}

// follow goes on from a code that ends before a place.
func (z *packer) follow(code int, at place) {
	for {
		if at.dot < len(z.dots) && z.dots[at.dot].run > 0 {
			left := z.dots[at.dot].run - at.behind
			for left > 0 && z.still[code] != 0 {
				code, left = int(z.still[code]), left-1
			}
			if left > 0 {
				at.behind = z.dots[at.dot].run - left
				z.reach(code, at)
				if fresh := z.on(code, asBefore); fresh != 0 {
					if at.behind++; left == 1 {
						at = place{dot: at.dot + 1}
					}
					z.reach(fresh, at)
				}
				return
			}
			at = place{dot: at.dot + 1}
			continue
		}
		z.reach(code, at)
		if at.dot == len(z.dots) {
			return
		}
		d := &z.dots[at.dot]
		still, anew := 0, 0
		if d.stays {
			still = z.on(code, asBefore)
		}
		if d.anew() {
			anew = z.on(code, d.to)
		}
		at.dot++
		switch {
		case still != 0 && anew != 0:
			z.follow(anew, at)
			code = still
		case still != 0:
			code = still
		case anew != 0:
			code = anew
		default:
			return
		}
	}
}

// reach keeps a code that goes further than all before.
func (z *packer) reach(code int, to place) {
	at := z.all
	if to.dot < len(z.dots) {
		at = z.dots[to.dot].at + to.behind
	}
	if at > z.best.at {
		z.best = way{code, to, at}
	}
}
