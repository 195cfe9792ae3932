package bench

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// Insert puts a pattern's pieces, of its right hand or its only one, after the
// piece in hand; it returns why not, if so.
func (b *Bench) Insert(p engine.Pattern, now float64) (refused string) {
	b.lift = nil
	if err := b.Session.InsertFrom(p); err != nil {
		refused = b.reason(err)
	} else {
		said := fmt.Sprintf(b.Words.Strip.Inserted, p.Title)
		if b.tornOff() {
			said = sentences([]string{said, b.Words.Strip.InsertGap})
		}
		b.say(said, now)
	}
	b.settle()
	return refused
}

// tornOff reports whether what is selected does not join on to what comes before
// or after it.
func (b *Bench) tornOff() bool {
	first, last := b.Session.Range()
	seams := b.Session.Seams()[b.Session.Selected().Lane]
	n := len(seams)
	return seams[(first+n-1)%n].Verdict == seam.Gap || seams[last].Verdict == seam.Gap
}
