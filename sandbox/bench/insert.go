package bench

import (
	"fmt"

	"whorlbench/engine"
)

// Insert puts a pattern's pieces, of its right hand or its only one, after the
// piece in hand; it returns why not, if so.
func (b *Bench) Insert(p engine.Pattern, now float64) (refused string) {
	b.lift = nil
	if err := b.Session.InsertFrom(p); err != nil {
		refused = b.reason(err)
	} else {
		b.say(fmt.Sprintf(b.Words.Strip.Inserted, p.Title), now)
	}
	b.settle()
	return refused
}
