package capture

import (
	"cmp"
	"image"
	"slices"
)

// mostInks is how many colours a GIF's palette has room for, beside the index
// that stands for "as before".
const mostInks = 255

// palette is the colours of a GIF: the ground and the inks, which are seen
// most, as they are, and of the ramps between them, where edges are smooth and
// trails fade, as many steps as there is room for.
type palette struct {
	colours []rgb
	known   [1 << knownBits]known
}

// rgb is an opaque colour, a byte a channel, red the lowest: as pixels have it
// when they are read as one number.
type rgb uint32

func (c rgb) split() (r, g, b int32) { return int32(c & 255), int32(c >> 8 & 255), int32(c >> 16) }

// off returns how far apart two colours are: the sum over the channels.
func off(c, d rgb) int32 {
	r, g, b := c.split()
	x, y, z := d.split()
	return abs(r-x) + abs(g-y) + abs(b-z)
}

func abs(x int32) int32 { return max(x, -x) }

// tally counts colours.
type tally map[rgb]int

// add counts the pixels of a picture that are opaque.
func (t tally) add(m *image.RGBA) {
	was, run := rgb(0), 0
	for i := 0; i+3 < len(m.Pix); i += 4 {
		if m.Pix[i+3] != 255 {
			continue
		}
		c := rgbOf(m.Pix[i : i+4])
		if c != was {
			t[was] += run
			was, run = c, 0
		}
		run++
	}
	t[was] += run
}

// counted is a colour and how often it was seen.
type counted struct {
	rgb
	n int
}

// sorted returns the colours, those that were seen most first.
func (t tally) sorted() []counted {
	var out []counted
	for c, n := range t {
		if n > 0 {
			out = append(out, counted{c, n})
		}
	}
	slices.SortFunc(out, func(a, b counted) int { return cmp.Or(b.n-a.n, cmp.Compare(a.rgb, b.rgb)) })
	return out
}

// How often the colours go to the middle of those nearest, and how many of the
// colours seen count, the most frequent first.
const (
	bettered = 3
	mostSeen = 6000
)

// palette returns the palette whose colours are together nearly least off
// those counted: groups of like colours are divided, always the one that is
// most off, and then each colour takes those seen that are nearest to it, and
// goes to their middle.
func (t tally) palette() *palette {
	seen := t.sorted()
	seen = seen[:min(len(seen), mostSeen)]
	p := &palette{}
	groups := [][]counted{seen}
	faults := []float64{spread(seen).fault}
	for len(groups) < mostInks {
		at, worst := 0, 0.0
		for i, f := range faults {
			if f > worst {
				at, worst = i, f
			}
		}
		if worst == 0 {
			break // every colour has its own
		}
		a, b := divide(groups[at])
		groups[at], faults[at] = a, spread(a).fault
		groups, faults = append(groups, b), append(faults, spread(b).fault)
	}
	for _, g := range groups {
		p.colours = append(p.colours, middle(g))
	}
	p.order()
	for range bettered {
		for i := range groups {
			groups[i] = nil
		}
		for _, c := range seen {
			i, _ := p.nearest(c.rgb)
			groups[i] = append(groups[i], c)
		}
		for i, g := range groups {
			if len(g) > 0 {
				p.colours[i] = middle(g)
			}
		}
		p.order()
	}
	return p
}

// spreadOf is how a group of colours lies: the channel (a shift) in which it is
// widest, its middle there, and the sum of squares about it.
type spreadOf struct {
	shift  int
	middle float64
	fault  float64
}

// spread finds how a group lies.
func spread(g []counted) spreadOf {
	var s spreadOf
	widest := -1.0
	for shift := 16; shift >= 0; shift -= 8 {
		n, sum, sq := 0.0, 0.0, 0.0
		for _, c := range g {
			x, w := float64(c.rgb>>shift&255), float64(c.n)
			n, sum, sq = n+w, sum+w*x, sq+w*x*x
		}
		v := sq - sum*sum/n
		if v > widest {
			widest, s.shift, s.middle = v, shift, sum/n
		}
		s.fault += max(v, 0)
	}
	if len(g) < 2 {
		s.fault = 0
	}
	return s
}

// divide parts a group where it is widest.
func divide(g []counted) (a, b []counted) {
	s := spread(g)
	for _, c := range g {
		if float64(c.rgb>>s.shift&255) <= s.middle {
			a = append(a, c)
		} else {
			b = append(b, c)
		}
	}
	return a, b
}

// middle returns the weighted median of colours, channel by channel.
func middle(of []counted) rgb {
	if len(of) == 1 {
		return of[0].rgb
	}
	all := 0
	for _, c := range of {
		all += c.n
	}
	var out rgb
	for shift := 16; shift >= 0; shift -= 8 {
		slices.SortFunc(of, func(a, b counted) int { return int(a.rgb>>shift&255) - int(b.rgb>>shift&255) })
		sum := 0
		for _, c := range of {
			if sum += c.n; 2*sum >= all {
				out |= c.rgb >> shift & 255 << shift
				break
			}
		}
	}
	return out
}

// order puts the colours in the order of their green, which nearest goes by.
func (p *palette) order() {
	slices.SortFunc(p.colours, func(a, b rgb) int {
		return cmp.Or(cmp.Compare(a>>8&255, b>>8&255), cmp.Compare(a, b))
	})
}

// nearest returns the place of the colour nearest to c, and how far off it is.
// It looks from c's green on and back, until green alone is further off.
func (p *palette) nearest(c rgb) (at int, d int32) {
	green := func(x rgb) int32 { return int32(x >> 8 & 255) }
	from, _ := slices.BinarySearchFunc(p.colours, green(c), func(x rgb, g int32) int { return int(green(x) - g) })
	d = 1 << 30
	for i := from; i < len(p.colours) && green(p.colours[i])-green(c) < d; i++ {
		if o := off(c, p.colours[i]); o < d {
			at, d = i, o
		}
	}
	for i := from - 1; i >= 0 && green(c)-green(p.colours[i]) < d; i-- {
		if o := off(c, p.colours[i]); o < d {
			at, d = i, o
		}
	}
	return at, d
}

// index returns the place of the colour nearest to c, and how far off it is.
func (p *palette) index(c rgb) (uint8, int32) {
	k := &p.known[uint32(c)*2654435769>>(32-knownBits)] // Knuth's multiplicative hash
	if k.of != c|isKnown {
		at, d := p.nearest(c)
		*k = known{c | isKnown, uint16(d), uint8(at)}
	}
	return k.at, int32(k.off)
}

// known is the nearest to a colour, once it is looked for.
type known struct {
	of  rgb // and isKnown
	off uint16
	at  uint8
}

const (
	knownBits = 14
	isKnown   = 1 << 24
)
