package qr

// grid is a code in the making.
type grid struct {
	Code
	version int
	set     []bool // modules that carry no data
}

func (g *grid) put(x, y int, dark bool) {
	g.dark[y*g.size+x], g.set[y*g.size+x] = dark, true
}

// made returns the code of a text in a version at a level.
func made(text string, version int, l level) Code {
	size := 17 + 4*version
	g := &grid{Code{size, make([]bool, size*size)}, version, make([]bool, size*size)}
	g.patterns()
	g.format(l, 0) // its place is taken
	g.data(interleaved(codewords(text, version, l), version, l))
	best, least := 0, -1
	for m := range masks {
		g.mask(m)
		g.format(l, m)
		if p := g.penalty(); least < 0 || p < least {
			best, least = m, p
		}
		g.mask(m) // takes it away again
	}
	g.mask(best)
	g.format(l, best)
	return g.Code
}

// patterns puts down what is the same in every code of a version (section 6.3).
func (g *grid) patterns() {
	n := g.size
	for i := range n { // timing
		g.put(6, i, i%2 == 0)
		g.put(i, 6, i%2 == 0)
	}
	for _, c := range [][2]int{{3, 3}, {n - 4, 3}, {3, n - 4}} {
		g.rings(c[0], c[1], 4)
	}
	at := g.alignment()
	for i, x := range at {
		for j, y := range at {
			last := len(at) - 1
			if !(i == 0 && j == 0 || i == 0 && j == last || i == last && j == 0) {
				g.rings(x, y, 2)
			}
		}
	}
	if g.version < 7 {
		return
	}
	bits := g.version<<12 | check(g.version, 12, 0x1F25) // section 7.10
	for i := range 18 {
		dark := bits>>i&1 == 1
		a, b := n-11+i%3, i/3
		g.put(a, b, dark)
		g.put(b, a, dark)
	}
}

// rings puts down squares in each other about a place: light ones are the second
// and, of a finder, the outermost.
func (g *grid) rings(cx, cy, reach int) {
	for dy := -reach; dy <= reach; dy++ {
		for dx := -reach; dx <= reach; dx++ {
			x, y := cx+dx, cy+dy
			if x < 0 || y < 0 || x >= g.size || y >= g.size {
				continue
			}
			d := max(dx, -dx, dy, -dy)
			g.put(x, y, d != 4 && (reach == 4 && d != 2 || reach == 2 && d != 1))
		}
	}
}

// alignment returns where the alignment patterns stand, across and down
// (annex E): evenly from the far end, the rest before the first.
func (g *grid) alignment() []int {
	if g.version == 1 {
		return nil
	}
	k := g.version/7 + 2
	step := (g.version*8 + k*3 + 5) / (k*4 - 4) * 2
	at := make([]int, k)
	at[0] = 6
	for i := 1; i < k; i++ {
		at[i] = g.size - 7 - (k-1-i)*step
	}
	return at
}

// check returns the bits that let errors in a number be put right: what is
// left of it, moved on, by a generator of n bits.
func check(number, n, generator int) int {
	r := number
	for range n {
		r = r<<1 ^ r>>(n-1)*generator
	}
	return r
}

// format puts down level and mask, twice (section 7.9).
func (g *grid) format(l level, mask int) {
	number := [4]int{1, 0, 3, 2}[l]<<3 | mask
	bits := number<<10 | check(number, 10, 0x537)
	bits ^= 0x5412
	n := g.size
	for i := range 15 {
		dark := bits>>i&1 == 1
		switch { // beside the upper left finder
		case i < 6:
			g.put(8, i, dark)
		case i < 8:
			g.put(8, i+1, dark)
		case i == 8:
			g.put(7, 8, dark)
		default:
			g.put(14-i, 8, dark)
		}
		if i < 8 { // beside the other two
			g.put(n-1-i, 8, dark)
		} else {
			g.put(8, n-15+i, dark)
		}
	}
	g.put(8, n-8, true)
}

// data puts codewords down, up and down in columns of two (section 7.7.3).
func (g *grid) data(words []byte) {
	i, up := 0, true
	for right := g.size - 1; right > 0; right -= 2 {
		if right == 6 { // timing
			right--
		}
		for k := range g.size {
			y := k
			if up {
				y = g.size - 1 - k
			}
			for x := right; x > right-2; x-- {
				if at := y*g.size + x; !g.set[at] && i < 8*len(words) {
					g.dark[at] = words[i/8]>>(7-i%8)&1 == 1
					i++
				}
			}
		}
		up = !up
	}
}

// masks are the conditions of table 10, for a column and a row.
var masks = [8]func(x, y int) bool{
	func(x, y int) bool { return (x+y)%2 == 0 },
	func(_, y int) bool { return y%2 == 0 },
	func(x, _ int) bool { return x%3 == 0 },
	func(x, y int) bool { return (x+y)%3 == 0 },
	func(x, y int) bool { return (x/3+y/2)%2 == 0 },
	func(x, y int) bool { return x*y%2+x*y%3 == 0 },
	func(x, y int) bool { return (x*y%2+x*y%3)%2 == 0 },
	func(x, y int) bool { return ((x+y)%2+x*y%3)%2 == 0 },
}

func (g *grid) mask(m int) {
	for at := range g.dark {
		if !g.set[at] && masks[m](at%g.size, at/g.size) {
			g.dark[at] = !g.dark[at]
		}
	}
}

// penalty weighs what makes a code hard to read (section 7.8.3): long runs,
// squares of one colour, what looks like a finder, and too much of one colour.
func (g *grid) penalty() int {
	sum, dark, n := 0, 0, g.size
	line := make([]bool, n)
	for i := range n {
		for k := range n {
			line[k] = g.dark[i*n+k]
			if line[k] {
				dark++
			}
		}
		sum += linePenalty(line)
		for k := range n {
			line[k] = g.dark[k*n+i]
		}
		sum += linePenalty(line)
	}
	for y := range n - 1 {
		for x := range n - 1 {
			at := y*n + x
			if c := g.dark[at]; c == g.dark[at+1] && c == g.dark[at+n] && c == g.dark[at+n+1] {
				sum += 3
			}
		}
	}
	off := 20*dark - 10*n*n // twentieths of all, from a half
	return sum + ((max(off, -off)+n*n-1)/(n*n)-1)*10
}

// linePenalty weighs one row or column: its runs, and the stretches that are
// dark and light as 1 : 1 : 3 : 1 : 1 with four light ones at a side. The border
// counts as light.
func linePenalty(line []bool) int {
	sum := 0
	runs := []int{0} // light first, by turns
	for _, dark := range line {
		if dark != (len(runs)%2 == 0) {
			runs = append(runs, 0)
		}
		runs[len(runs)-1]++
	}
	for _, r := range runs {
		if r >= 5 {
			sum += r - 2
		}
	}
	if len(runs)%2 == 0 {
		runs = append(runs, 0)
	}
	runs[0] += len(line)
	runs[len(runs)-1] += len(line)
	for i := 1; i+5 < len(runs); i += 2 {
		w := runs[i]
		if runs[i+1] != w || runs[i+2] != 3*w || runs[i+3] != w || runs[i+4] != w {
			continue
		}
		before, after := runs[i-1], runs[i+5]
		if before >= 4*w && after >= w {
			sum += 40
		}
		if after >= 4*w && before >= w {
			sum += 40
		}
	}
	return sum
}
