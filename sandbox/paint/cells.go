package paint

import (
	"image"
	"math/bits"
)

// cellShift is how wide a cell is: 1<<cellShift pixels of one row.
const cellShift = 3

// Cells are a set of the pixels of a picture, cell by cell: a few more than
// were put in.
type Cells struct {
	size   image.Point
	perRow int      // words
	words  []uint64 // a bit a cell, row by row
}

// NewCells returns no cells of a picture so large.
func NewCells(size image.Point) *Cells {
	perRow := (size.X>>cellShift + 64) / 64
	return &Cells{size: size, perRow: perRow, words: make([]uint64, perRow*size.Y)}
}

// mark puts the pixels [from, to) of row y in; from < to.
func (c *Cells) mark(y, from, to int) {
	row := c.words[y*c.perRow : (y+1)*c.perRow]
	for i := from >> cellShift; i <= (to-1)>>cellShift; i++ {
		row[i>>6] |= 1 << (i & 63)
	}
}

// Clear takes all out.
func (c *Cells) Clear() { clear(c.words) }

// Fill puts all pixels in.
func (c *Cells) Fill() {
	for i := range c.words {
		c.words[i] = ^uint64(0)
	}
}

// Union makes c those that are in a, b or both.
func (c *Cells) Union(a, b *Cells) {
	for i := range c.words {
		c.words[i] = a.words[i] | b.words[i]
	}
}

// Copy makes c those that are in a.
func (c *Cells) Copy(a *Cells) { copy(c.words, a.words) }

// Runs hands the pixels of rows y to y+rows−1 that are in one of these rows to
// use, from left to right, as [from, to).
func (c *Cells) Runs(y, rows int, use func(from, to int)) {
	from, to := -1, -1 // cells
	flush := func() {
		if from >= 0 {
			use(from<<cellShift, min(to<<cellShift, c.size.X))
		}
	}
	for i := range c.perRow {
		w := c.words[y*c.perRow+i]
		for k := 1; k < rows; k++ {
			w |= c.words[(y+k)*c.perRow+i]
		}
		for w != 0 {
			a := bits.TrailingZeros64(w)
			n := bits.TrailingZeros64(^(w >> a)) // at most 64−a, as zeros come in from above
			if at := i<<6 + a; at != to {
				flush()
				from = at
			}
			to = i<<6 + a + n
			if a+n == 64 {
				break
			}
			w &= ^uint64(0) << (a + n)
		}
	}
	flush()
}
