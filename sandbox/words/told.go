package words

import (
	"fmt"

	"whorlbench/engine/naming"
)

// Told holds the words of what is said of the whole pattern.
type Told struct {
	Open                string // what a tap does
	Called, Joins       string // heads
	MoreJoins           string // %d: how many
	Hybrid              string
	Elementary          string
	CCap, SCap, Diamond string
	Cap                 string
	Strict, Broad       string // %s: what it is
}

var englishTold = Told{
	Open:       "What this pattern is",
	Called:     "By each definition",
	Joins:      "Joins that are not smooth",
	MoreJoins:  "and %d more",
	Hybrid:     "Hybrid",
	Elementary: "Elementary",
	CCap:       "C-cap", SCap: "S-cap", Diamond: "Diamond",
	Cap:    "CAP",
	Strict: "%s, strict", Broad: "%s, broad",
}

// Sort says in the fewest words what sort of pattern a lane is, empty if it is
// of none.
func (t *Table) Sort(w *naming.Whole) string {
	say := &t.Told
	is := [...]string{say.Cap, say.CCap, say.SCap, say.Diamond}[w.Shape()]
	switch {
	case w.Diamond.Yes:
		return is
	case w.Strict.Yes:
		return fmt.Sprintf(say.Strict, is)
	case w.Broad.Yes:
		return fmt.Sprintf(say.Broad, is)
	case w.Elementary.Yes:
		return say.Elementary
	}
	return ""
}
