package capture

import "math"

// The codes of a GIF (GIF89a, appendix F) have at most widestCode bits. All are
// forgotten when there are mostCodes, fewer than there could be: what edges and
// trails add is seldom seen again, and the longer codes cost more than that.
const (
	widestCode = 12
	mostCodes  = 1 << 11
)

// dot is a pixel to be packed: the index that it has and the one that it is to
// have. Where it stays as it is, so do as many from it on as stays says.
type dot struct {
	is, to uint8
	stays  uint16
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
	best way

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

// way is a code and how far it goes.
type way struct{ code, to int }

// nearEdge is how many pixels before one that changes those that stay may be
// written anew.
const nearEdge = 8

// anew reports whether a pixel may be written other than as before.
func (d dot) anew() bool { return d.stays < nearEdge && d.to != asBefore }

// reset forgets all codes but those of single indices.
func (z *packer) reset() {
	n := 1<<z.bits + 2
	z.further = [1 << slotBits]slot{}
	clear(z.still[:n])
	for i := range 1 << z.bits {
		z.begins[i] = uint8(i)
	}
	z.used, z.width, z.last, z.fresh = n, z.bits+1, -1, 0
}

func (z *packer) emit(code int) {
	z.acc |= uint32(code) << z.held
	for z.held += z.width; z.held >= 8; z.held -= 8 {
		z.out = append(z.out, byte(z.acc))
		z.acc >>= 8
	}
}

// pack returns the codes of dots, which belong to the packer until the next.
func (z *packer) pack(dots []dot) []byte {
	run := uint16(0)
	for i := len(dots) - 1; i >= 0; i-- {
		if d := &dots[i]; d.stays > 0 {
			run = min(run, math.MaxUint16-1) + 1
			d.stays = run
		} else {
			run = 0
		}
	}
	z.dots, z.out, z.acc, z.held = dots, z.out[:0], 0, 0
	z.reset()
	forget := 1 << z.bits
	z.emit(forget)
	for at := 0; at < len(dots); {
		z.grow()
		z.look(at)
		z.settle(z.begins[z.best.code])
		z.emit(z.best.code)
		at, z.last = z.best.to, z.best.code
		if z.used == mostCodes-1 && at < len(dots) {
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
func (z *packer) look(at int) {
	z.best = way{}
	d := z.dots[at]
	if d.stays > 0 {
		z.follow(asBefore, at+1)
	}
	if d.anew() {
		z.follow(int(d.to), at+1)
	}
}

// follow goes on from a code that ends before a place.
func (z *packer) follow(code, at int) {
	for {
		for at < len(z.dots) && z.dots[at].stays >= nearEdge && z.still[code] != 0 {
			code, at = int(z.still[code]), at+1
		}
		if at > z.best.to {
			z.best = way{code, at}
		}
		if at == len(z.dots) {
			return
		}
		d := z.dots[at]
		still, anew := 0, 0
		if d.stays > 0 {
			still = z.on(code, asBefore)
		}
		if d.anew() {
			anew = z.on(code, d.to)
		}
		at++
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
