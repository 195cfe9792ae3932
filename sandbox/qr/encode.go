package qr

// level is how much of a code may be lost: L, M, Q, H, of which about 7, 15,
// 25 and 30 % can be put right.
type level uint8

const (
	low level = iota
	medium
	quartile
	high
)

// What ISO/IEC 18004, table 9, says of versions 1 to 25 at the levels L, M, Q and H:
// the codewords for putting errors right in each block, and the blocks.
var (
	checkWords = [4][mostVersion]uint8{
		{7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28, 28, 28, 30, 30, 26},
		{10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26, 26, 28, 28, 28, 28},
		{13, 22, 18, 26, 18, 24, 18, 22, 20, 24, 28, 26, 24, 20, 30, 24, 28, 28, 26, 30, 28, 30, 30, 30, 30},
		{17, 28, 22, 16, 22, 28, 26, 26, 24, 28, 24, 28, 22, 24, 24, 30, 28, 28, 26, 28, 30, 24, 30, 30, 30},
	}
	blocks = [4][mostVersion]uint8{
		{1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8, 8, 9, 9, 10, 12},
		{1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16, 17, 17, 18, 20, 21},
		{1, 1, 2, 2, 4, 4, 6, 6, 8, 8, 8, 10, 12, 16, 12, 17, 16, 18, 21, 20, 23, 23, 25, 27, 29},
		{1, 1, 2, 4, 4, 4, 5, 6, 8, 8, 11, 11, 16, 16, 18, 16, 19, 21, 25, 25, 25, 34, 30, 32, 35},
	}
)

// allWords returns how many codewords a version has, of both sorts: what the
// patterns of section 6.3 leave of its modules, in eights.
func allWords(version int) int {
	n := (16*version+128)*version + 64
	if version >= 2 {
		k := version/7 + 2 // alignment patterns a side
		n -= (25*k-10)*k - 55
		if version >= 7 {
			n -= 36
		}
	}
	return n / 8
}

// room returns how many codewords are left for data.
func room(version int, l level) int {
	return allWords(version) - int(checkWords[l][version-1])*int(blocks[l][version-1])
}

// fits reports whether n bytes have room, with the 4 bits of the mode and the
// 8 or 16 of the count (tables 2 and 3).
func fits(n, version int, l level) bool { return 4+countBits(version)+8*n <= 8*room(version, l) }

func countBits(version int) int {
	if version < 10 {
		return 8
	}
	return 16
}

// choose returns the least version up to most that holds n bytes at a level,
// and the best level that it holds them at.
func choose(n int, l level, most int) (version int, best level, ok bool) {
	for version = 1; version <= most; version++ {
		if fits(n, version, l) {
			for best = l; best < high && fits(n, version, best+1); best++ {
			}
			return version, best, true
		}
	}
	return 0, l, false
}

// codewords returns the bytes of a text as codewords (section 7.4), filled up.
func codewords(text string, version int, l level) []byte {
	var out []byte
	used := 0
	add := func(value, bits int) {
		for i := bits - 1; i >= 0; i-- {
			if used%8 == 0 {
				out = append(out, 0)
			}
			out[used/8] |= byte(value>>i&1) << (7 - used%8)
			used++
		}
	}
	const byteMode = 4
	add(byteMode, 4)
	add(len(text), countBits(version))
	for i := range len(text) {
		add(int(text[i]), 8)
	}
	most := room(version, l)
	add(0, min(4, 8*most-used))
	for pad := byte(0xEC); len(out) < most; pad ^= 0xEC ^ 0x11 {
		out = append(out, pad)
	}
	return out
}

// times multiplies in the field of 256 elements over x⁸+x⁴+x³+x²+1.
func times(a, b byte) byte {
	p := 0
	for i := 7; i >= 0; i-- {
		p = p<<1 ^ p>>7*0x11D
		p ^= int(b>>i&1) * int(a)
	}
	return byte(p)
}

// divisor returns the product of x − 2ⁱ for i from 0 to n − 1, without its
// first coefficient, which is 1.
func divisor(n int) []byte {
	d := make([]byte, n)
	d[n-1] = 1
	root := byte(1)
	for range n {
		for i := range d {
			d[i] = times(d[i], root)
			if i+1 < n {
				d[i] ^= d[i+1]
			}
		}
		root = times(root, 2)
	}
	return d
}

// remainder returns what data leaves when it is divided.
func remainder(data, divisor []byte) []byte {
	r := make([]byte, len(divisor))
	for _, b := range data {
		f := b ^ r[0]
		copy(r, r[1:])
		r[len(r)-1] = 0
		for i, d := range divisor {
			r[i] ^= times(d, f)
		}
	}
	return r
}

// interleaved divides data into blocks, adds what puts errors right, and takes
// the codewords of all blocks in turn (section 7.6).
func interleaved(data []byte, version int, l level) []byte {
	n, check := int(blocks[l][version-1]), int(checkWords[l][version-1])
	short := len(data) / n
	long := len(data) % n // blocks at the end that are longer by one
	d := divisor(check)
	var parts, checks [][]byte
	for i := range n {
		size := short
		if i >= n-long {
			size++
		}
		parts, checks = append(parts, data[:size]), append(checks, remainder(data[:size], d))
		data = data[size:]
	}
	var out []byte
	for i := range short + 1 {
		for _, p := range parts {
			if i < len(p) {
				out = append(out, p[i])
			}
		}
	}
	for i := range check {
		for _, c := range checks {
			out = append(out, c[i])
		}
	}
	return out
}
