package words

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/tether"
)

// Practice holds the words for practising to a click.
type Practice struct {
	Never       string // %s: hand
	TooSlow     string // %s: hand, %s, %s: the lowest tempo, the fastest that is asked for
	SlowAtFirst string // %s: hand, %s: the lowest tempo
	TooFast     string // %s: hand, %s: the highest tempo
	Cautions    []string
	Ladder      string // %s, %s, %s, %s: from, by how much, every so many rounds, to
	OneTempo    string // %s
	Events      PracticeEvents
	Screen      PracticeScreen
}

// PracticeEvents name what is clicked.
type PracticeEvents struct{ Beat, Round, LeftJoin, RightJoin, CountIn, Faster string }

var englishPractice = Practice{
	Never:       "%s hand: the tether goes slack somewhere at every tempo. Practise it with a staff, or mend the pattern first.",
	TooSlow:     "%s hand: the tether is slack somewhere below %s beats a minute, and you go no faster than %s. Raise the tempo, or walk it through with a staff.",
	SlowAtFirst: "%s hand: the tether is slack somewhere until you reach %s beats a minute. Until then the head falls out of its path there.",
	TooFast:     "%s hand: above %s beats a minute the tether is slack somewhere.",
	Cautions: []string{
		"Clear the space around you: an arm, a tether and a metre more on every side, and nobody in it.",
		"Use soft props until you no longer hit yourself, and stop when something hurts.",
	},
	Ladder:   "From %s beats a minute, %s more after every %s, up to %s.",
	OneTempo: "At %s beats a minute all through.",
	Events: PracticeEvents{
		Beat: "beat", Round: "first beat of a round", LeftJoin: "join of the left hand", RightJoin: "join of the right hand",
		CountIn: "count-in", Faster: "faster from here",
	},
	Screen: englishPracticeScreen,
}

// TautHand is one hand's tether, as far as practising asks for it.
type TautHand struct {
	Side   engine.Side
	Rigid  bool
	Window tether.Window
}

// Taut reports whether the tether is nowhere slack at a tempo (beats a minute).
func (h *TautHand) Taut(tempo float64) bool {
	w := &h.Window
	return h.Rigid || w.OK && tempo >= w.From && (w.Open || tempo <= w.To)
}

// BeforePractice says what to know before practice from one tempo to another
// (beats a minute, from ≤ to) begins: where a tether will be slack, then the usual
// cautions.
func (t *Table) BeforePractice(hands []TautHand, from, to float64) []string {
	w := &t.Practice
	var lines []string
	for _, h := range hands {
		hand := capital(t.Side(h.Side))
		low, high := number(upTenth(h.Window.From), 1), number(-upTenth(-h.Window.To), 1)
		switch {
		case h.Rigid:
			continue
		case !h.Window.OK:
			lines = append(lines, fmt.Sprintf(w.Never, hand))
			continue
		case to < h.Window.From:
			lines = append(lines, fmt.Sprintf(w.TooSlow, hand, low, number(to, 1)))
		case from < h.Window.From:
			lines = append(lines, fmt.Sprintf(w.SlowAtFirst, hand, low))
		}
		if !h.Window.Open && to > h.Window.To {
			lines = append(lines, fmt.Sprintf(w.TooFast, hand, high))
		}
	}
	return append(lines, w.Cautions...)
}

// TempoPlan says how the tempo goes: up by some beats a minute after every so
// many rounds to a ceiling, or not at all where up is 0.
func (t *Table) TempoPlan(from, up float64, rounds int, ceiling float64) string {
	w := &t.Practice
	if up == 0 || from == ceiling {
		return fmt.Sprintf(w.OneTempo, number(from, 1))
	}
	every := fmt.Sprintf(t.Steps.ManyRounds, t.counting(rounds))
	if rounds == 1 {
		every = t.Steps.OneRound
	}
	return fmt.Sprintf(w.Ladder, number(from, 1), number(up, 1), every, number(ceiling, 1))
}
