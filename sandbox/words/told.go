package words

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/duet"
	"whorlbench/engine/naming"
	"whorlbench/engine/tether"
)

// Told holds the words of what is said of the whole pattern.
type Told struct {
	Open                string // what a tap does
	Called, Joins       string // heads
	Ways, Else          string // heads
	SameSize            string // of a pattern that another is held against
	MendLane, CloseLane TitledText
	OfHand              string // %s, %s: one of the two, a side
	NoMend, NoClose     string
	Working             string // while something is still worked out
	Hands, Tangle       string // heads
	Nearest, Mind       string
	HeadsHit, HeadsNear string // %s: a beat; %s, %s: metres, a beat
	Slack               string // %s: the tempos at which it is taut
	Tangles             string
	BothHands           string
	Apart               TitledText // what would keep the hands from meeting
	Tether              string
	TakenDetail         string // what the switch for the way that a hand would really take does
	Around              string // what the drawing of one hand about the other shows
	PullPlot            string // %s, %s: least and greatest
	Band                string // %s, %s: direction and timing
	Hybrid              string
	Elementary          string
	CCap, SCap, Diamond string
	Cap                 string
	Strict, Broad       string // %s: what it is
}

var englishTold = Told{
	Open:      "What this pattern is",
	Called:    "By each definition",
	Joins:     "Joins that are not smooth",
	SameSize:  "The second is taken as large as the first.",
	Ways:      "What would mend it",
	Else:      "Go on from here",
	MendLane:  TitledText{"Make all joins smooth", "Share the beats out anew and, where that is not enough, let the hand ease into its turns."},
	CloseLane: TitledText{"Make it close after one round", "Bring hand and prop back to where the round begins."},
	OfHand:    "%s, %s hand",
	NoMend:    "Beats and easing alone cannot mend these joins. Tap one for other ways.",
	NoClose:   "No single change was found that makes it close.",
	HeadsHit:  "The heads hit each other at beat %s", HeadsNear: "The heads come within %s m at beat %s",
	Slack:     "A tether goes slack. %s",
	Tangles:   "The arms wrap round each other",
	BothHands: "Both hands",
	Apart:     TitledText{"Move the hands apart", "Each hand spins before its own shoulder, so that they do not meet in the middle."},
	Working:   "Still being worked out …",
	Hands:     "The two hands",
	Tangle:    "Do the arms tangle?",
	Nearest:   "Nearest", Mind: "Take care",
	TakenDetail: "Beside the hand path as drawn. Tap to show it, or to hide it again.",
	Tether:      "Would a real tether do it?",
	Around:      "The way of the left hand as the right one sees it, which is the cross in the middle",
	Band:        "%s, %s",
	PullPlot:    "The pull over one round, in times the weight of the head: from %s to %s; below the line the tether is slack",
	Hybrid:      "Hybrid",
	Elementary:  "Elementary",
	CCap:        "C-cap", SCap: "S-cap", Diamond: "Diamond",
	Cap:    "CAP",
	Strict: "%s, strict sense", Broad: "%s, broad sense",
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

// PullPlot says what the drawing of the pull over a round shows.
func (t *Table) PullPlot(r *tether.Result) string {
	return fmt.Sprintf(t.Told.PullPlot, number(r.Least.Value, 1), number(r.Greatest.Value, 1))
}

// HeadsNearShort says in few words that two heads hit each other or may, empty
// if they keep apart.
func (t *Table) HeadsNearShort(d *duet.Reading) string {
	switch near := d.Head; {
	case near.Distance < engine.TolMeet:
		return fmt.Sprintf(t.Told.HeadsHit, beat(near.Beat))
	case near.Distance < HeadsNear:
		return fmt.Sprintf(t.Told.HeadsNear, Metres(near.Distance), beat(near.Beat))
	}
	return ""
}

// BandText says in few words how two props turn and stand to each other.
func (t *Table) BandText(s duet.Span) string {
	return fmt.Sprintf(t.Told.Band, t.Direction(s.Direction), t.Timing(s.Timing))
}
