package card

// place is where a card's second page begins.
type place uint8

const (
	anywhere place = iota // where the first is full
	beforeMade
	beforeSteps
)

// Heights on paper (mm), of common cards as they are printed: what a page of
// Letter, the lower of the two, holds, and what stands on it.
const (
	pageHeight  = 255
	headHeight  = 27
	topHeight   = 118
	topOfTwo    = 94
	titleHeight = 14  // a head and a line under it
	lineHeight  = 5.6 // of a table
)

// rowHeight returns how high a row of so many pictures is.
func rowHeight(columns int, two bool) float64 {
	height := map[int]float64{4: 46, 5: 42, 6: 38}[columns]
	if two {
		height += 13 // another hand and how both go together
	}
	return height
}

// second returns where the second page is to begin, so that neither pictures nor
// steps are torn.
func (c *Card) second() place {
	hands := len(c.session.Tracks())
	n := len(c.lesson.Beats)
	of := columns(n)
	top := float64(topHeight)
	if hands > 1 {
		top = topOfTwo
	}
	room := pageHeight - headHeight - top
	room -= titleHeight + float64((n+of-1)/of)*rowHeight(of, hands > 1)
	if hands > 1 {
		room -= lineHeight // how they are told apart
	}
	made := titleHeight + 2.0*lineHeight // the heads and a meaning of a verdict
	for _, t := range c.session.Tracks() {
		made += lineHeight * float64(1+min(len(t.Legs), c.most()))
	}
	switch {
	case room >= made:
		return beforeSteps
	case room >= 0:
		return beforeMade
	}
	return anywhere
}

// turnPage begins the second page here, if it is to, with the pattern's title.
func (c *Card) turnPage(h *writer, here place) {
	if c.second() != here {
		return
	}
	h.text("p", "running", c.pattern().Title)
}
