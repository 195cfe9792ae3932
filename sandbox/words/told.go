package words

import (
	"fmt"

	"whorlbench/engine/naming"
)

// Told holds the words of what is said of the whole pattern.
type Told struct {
	Open                string // what a tap does
	Called, Joins       string // heads
	Ways                string // a head
	MendLane, CloseLane TitledText
	OfHand              string // %s, %s: one of the two, a side
	NoMend, NoClose     string
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
	Ways:       "What would mend it",
	MendLane:   TitledText{"Make all joins smooth", "Share the beats out anew and, where that is not enough, let the hand ease into its turns."},
	CloseLane:  TitledText{"Make it close after one round", "Bring hand and prop back to where the round begins."},
	OfHand:     "%s, %s hand",
	NoMend:     "Beats and easing alone cannot mend these joins. Tap one for other ways.",
	NoClose:    "No single change was found that makes it close.",
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
