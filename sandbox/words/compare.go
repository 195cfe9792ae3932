package words

import (
	"fmt"
	"math"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/duet"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/engine/tether"
)

// Compare holds the words for two patterns side by side.
type Compare struct {
	Title                 string
	Said                  string // %s: what about, %s, %s: left and right
	Alike                 string
	Name, Hands, Plane    string // what about
	Joins, Closes, Tempo  string
	Props, HandsTurn      string
	Tangle, Tether        string
	OfHand                string // %s: what about, %s: left or right
	OneHand               string // %s: left or right
	BothHands             string
	Planes                [3]string
	AllSmooth             string
	JoinCount             string    // %s: how many of what; one
	Verdicts              [4]string // %s: a counted number; several
	OneVerdict            [4]string // one of them
	And                   string
	After, Never          string // %s: beats
	ABeat                 string // %s: a tempo
	Rigid                 string
	Together, NotTogether string // %s: beats, of one playhead
	Turns                 string // what about: of the prop, to one of the arm
	With, Against         string // %s: turns
	Carried, NoTurns      string
	ArmSpeed, ArmTurns    string // what about, and %s: how far in a beat
	Circle, Radius        string // what about: the hand's, and %s: how large
	Upto                  string // %s, %s: the least and the most of several
	NoCircle              string
	Senses, SensesText    string // of CAP, where they disagree
	EachHand              string // %s, %s: of the left and the right hand

	Open, Choose, Intro string    // the way in, and over the list to choose from
	Sides               [2]string // the letters by which both are told apart
	Lead                string    // %s, %s: titles
	Pace                string    // %s: the tempo at which both are played
	Begun               string    // %s, %s: titles
	Over, Swap, Differs Named
	Take                Named  // the label %s: a title; the caption %s: a side's letter
	Leave, Playhead     string // labels
	Reads               string // %s: a beat, %s, %s: what the hands of A and of B do
	NoZIP               string
}

var englishCompare = Compare{
	Title: "What differs",
	Said:  "%s. A: %s B: %s",
	Alike: "Nothing was found that differs in name, definitions, arm speed, hand circle, joins, closing, timing or tether.",
	Name:  "Name", Hands: "Hands", Plane: "Plane", Joins: "Joins", Closes: "Closing", Tempo: "Tempo",
	Props: "Props together", HandsTurn: "Hands together", Tangle: "Arms", Tether: "Tether",
	OfHand: "%s, %s hand", OneHand: "The %s hand only.", BothHands: "Both hands.",
	Planes:      [3]string{"The wall plane, in front of you.", "The wheel plane, beside you.", "The floor plane, level."},
	AllSmooth:   "All smooth.",
	JoinCount:   "%s.",
	Verdicts:    [4]string{"%s gaps", "%s stops", "%s kinks", "%s smooth"},
	OneVerdict:  [4]string{"one gap", "one stop", "one kink", "one smooth"},
	And:         ", ",
	After:       "Back at its start after %s.",
	Never:       "It never comes back to its start.",
	ABeat:       "%s beats a minute.",
	Rigid:       "A rigid prop, which has none.",
	Together:    "Played to one beat, both are back at their start together after %s.",
	NotTogether: "Played to one beat, they never come back to their start together.",
	Turns:       "Prop turns to one of the arm",
	With:        "%s the same way",
	Against:     "%s the other way",
	Carried:     "none",
	NoTurns:     "Not counted: the hand goes straight or stays, or the prop swings.",
	ArmSpeed:    "Arm speed", ArmTurns: "%s° a beat.",
	Circle: "Hand circle", Radius: "Radius %s m.", Upto: "%s to %s",
	NoCircle:   "The hand goes on no circle.",
	Senses:     "CAP, broad against strict",
	SensesText: "People use the word in two senses, and here they disagree. This is what each makes of both patterns.",
	EachHand:   "Left hand. %s Right hand. %s",

	Open:     "Compare…",
	Choose:   "Compare with",
	Intro:    "Choose a pattern to see beside the open one, both on one playhead. Nothing of your work changes.",
	Sides:    [2]string{"A", "B"},
	Lead:     "A is %s. B is %s.",
	Pace:     "Both are played at the tempo of A, %s beats a minute.",
	Begun:    "Comparing. A is %s. B is %s. Both follow one playhead.",
	Over:     Named{"Overlay: A in full lines, B in dashes", "Overlay"},
	Swap:     Named{"Swap the sides", "Swap"},
	Differs:  Named{"What differs between the two", "What differs"},
	Take:     Named{"Open %s on the bench: %s", "Open %s"},
	Leave:    "Leave the comparison",
	Playhead: "Playhead of both",
	Reads:    "%s. A: %s. B: %s.",
	NoZIP:    "A ZIP file holds many patterns. Open it first, then compare with one of them.",
}

// Facts are what two patterns are compared by.
type Facts struct {
	Tempo   float64
	Hands   []HandFacts // left before right
	Hybrid  naming.Ruling
	Closes  bool
	Beats   frac.Frac    // of the closing time
	Reading duet.Reading // of two hands
}

// HandFacts are one hand's.
type HandFacts struct {
	Side   engine.Side
	Plane  engine.Plane
	Whole  naming.Whole
	Seams  []seam.Seam
	Rigid  bool
	Window tether.Window
	Pieces []engine.Piece
}

// Contrast is one thing in which two patterns differ.
type Contrast struct{ What, Left, Right string }

// Said tells a contrast in one line.
func (t *Table) Said(c Contrast) string {
	return fmt.Sprintf(t.Compare.Said, c.What, c.Left, c.Right)
}

// Differences tells in what the pattern on the left and the one on the right
// differ, and nothing of what they share.
func (t *Table) Differences(left, right *Facts) []Contrast {
	w := &t.Compare
	var out []Contrast
	differ := func(what, l, r string) {
		if l != r {
			out = append(out, Contrast{what, l, r})
		}
	}
	differ(w.Name, t.whatItIs(left), t.whatItIs(right))
	differ(w.Hands, t.whichHands(left), t.whichHands(right))
	for i := range left.Hands {
		for j := range right.Hands {
			a, b := &left.Hands[i], &right.Hands[j]
			lone := len(left.Hands) == 1 && len(right.Hands) == 1
			if a.Side == b.Side || lone {
				t.handsDiffer(a, b, lone, differ)
			}
		}
	}
	if len(left.Hands) == 2 && len(right.Hands) == 2 {
		a, b := t.HybridDefinition(left.Hybrid), t.HybridDefinition(right.Hybrid)
		if a.Yes != b.Yes {
			differ(a.Name, a.Because, b.Because)
		}
		l, r := &left.Reading, &right.Reading
		differ(w.Props, t.SpansSaid(t.Duet.Props, l.Props), t.SpansSaid(t.Duet.Props, r.Props))
		differ(w.HandsTurn, t.SpansSaid(t.Duet.Hands, l.Hands), t.SpansSaid(t.Duet.Hands, r.Hands))
		differ(w.Tangle, t.TangleSaid(l), t.TangleSaid(r))
	}
	differ(w.Closes, t.backAfter(left), t.backAfter(right))
	differ(w.Tempo, fmt.Sprintf(w.ABeat, number(left.Tempo, 1)), fmt.Sprintf(w.ABeat, number(right.Tempo, 1)))
	return out
}

// handsDiffer tells in what two hands do; where each pattern has one hand only,
// nobody need be told which.
func (t *Table) handsDiffer(a, b *HandFacts, lone bool, differ func(what, l, r string)) {
	w := &t.Compare
	of := func(what string) string {
		if lone {
			return what
		}
		return fmt.Sprintf(w.OfHand, what, t.Side(a.Side))
	}
	differ(of(w.Plane), w.Planes[a.Plane], w.Planes[b.Plane])
	as, bs := t.Definitions(&a.Whole), t.Definitions(&b.Whole)
	for i := range as {
		if (i == DefBroad || i == DefStrict) && (disagree(&a.Whole) || disagree(&b.Whole)) {
			continue // Senses tells more
		}
		if as[i].Yes != bs[i].Yes {
			differ(of(as[i].Name), as[i].Because, bs[i].Because)
		}
	}
	differ(of(w.Turns), t.turnsSaid(&a.Whole), t.turnsSaid(&b.Whole))
	differ(of(w.ArmSpeed), t.armSaid(a.Pieces), t.armSaid(b.Pieces))
	differ(of(w.Circle), t.circleSaid(a.Pieces), t.circleSaid(b.Pieces))
	differ(of(w.Joins), t.joinsSaid(a.Seams), t.joinsSaid(b.Seams))
	differ(of(w.Tether), t.tautSaid(a), t.tautSaid(b))
}

// disagree reports whether the two senses of CAP do, of a lane.
func disagree(w *naming.Whole) bool { return w.Broad.Yes != w.Strict.Yes }

// Senses tells what the broad and the strict sense of CAP make of both
// patterns; nothing where they agree about each hand.
func (t *Table) Senses(left, right *Facts) []Contrast {
	differ := false
	for _, f := range []*Facts{left, right} {
		for i := range f.Hands {
			differ = differ || disagree(&f.Hands[i].Whole)
		}
	}
	if !differ {
		return nil
	}
	return []Contrast{
		{t.Whole.Names[DefBroad], t.judged(left, DefBroad), t.judged(right, DefBroad)},
		{t.Whole.Names[DefStrict], t.judged(left, DefStrict), t.judged(right, DefStrict)},
	}
}

// judged tells what a definition says of each hand, once where it is the same.
func (t *Table) judged(f *Facts, def int) string {
	said := make([]string, len(f.Hands))
	for i := range f.Hands {
		said[i] = t.Definitions(&f.Hands[i].Whole)[def].Because
	}
	if len(said) == 2 && said[0] != said[1] {
		return fmt.Sprintf(t.Compare.EachHand, said[0], said[1])
	}
	return said[0]
}

func (t *Table) whatItIs(f *Facts) string {
	if len(f.Hands) == 2 {
		return t.HandsLine(&f.Hands[0].Whole, &f.Hands[1].Whole, f.Hybrid) + "."
	}
	return t.LaneLine(&f.Hands[0].Whole) + "."
}

func (t *Table) whichHands(f *Facts) string {
	if len(f.Hands) == 2 {
		return t.Compare.BothHands
	}
	return fmt.Sprintf(t.Compare.OneHand, t.Side(f.Hands[0].Side))
}

func (t *Table) backAfter(f *Facts) string {
	if !f.Closes {
		return t.Compare.Never
	}
	return fmt.Sprintf(t.Compare.After, t.beatCount(f.Beats))
}

func (t *Table) tautSaid(h *HandFacts) string {
	if h.Rigid {
		return t.Compare.Rigid
	}
	return t.TautWindow(h.Window) + "."
}

// turnsSaid tells how often the prop turns while the arm does once, and which
// way, most in-spin first whatever the order of the pieces. A straight stroke is
// as much the one way as the other, and tells nothing.
func (t *Table) turnsSaid(whole *naming.Whole) string {
	w := &t.Compare
	var ratios []frac.Frac // the greatest first
	for _, p := range whole.Parts {
		f := p.Figure
		if !f.HasRatio || f.Spin == naming.SpinLine {
			continue
		}
		ratios = append(ratios, f.Ratio)
		for i := len(ratios) - 1; i > 0 && ratios[i-1].Less(ratios[i]); i-- {
			ratios[i-1], ratios[i] = ratios[i], ratios[i-1]
		}
	}
	if len(ratios) == 0 {
		return w.NoTurns
	}
	var parts []string
	for i, n := range ratios {
		if i > 0 && n.Equal(ratios[i-1]) {
			continue
		}
		switch n.Sign() {
		case 1:
			parts = append(parts, fmt.Sprintf(w.With, Value(n)))
		case -1:
			parts = append(parts, fmt.Sprintf(w.Against, Value(n.Neg())))
		default:
			parts = append(parts, w.Carried)
		}
	}
	text := capital(strings.Join(parts, w.And))
	if whole.More {
		text = fmt.Sprintf(t.Whole.More, text)
	}
	return text + "."
}

// armSaid tells how far the arm goes in a beat, on the mean of each piece.
func (t *Table) armSaid(pieces []engine.Piece) string {
	least, most := math.Inf(1), -1.0 // degrees
	for _, p := range pieces {
		if p.Path.IsPoint() || p.Path.IsLine() {
			continue
		}
		goes := 360 * p.Arm.Mul(p.Cycles).Mul(p.Kept()).Abs().Div(p.Length()).Float()
		least, most = math.Min(least, goes), math.Max(most, goes)
	}
	if most < 0 {
		return t.Compare.NoCircle
	}
	return fmt.Sprintf(t.Compare.ArmTurns, t.fromTo(number(least, 1), number(most, 1)))
}

// circleSaid tells how large the circles are that the hand goes on.
func (t *Table) circleSaid(pieces []engine.Piece) string {
	least, most := math.Inf(1), 0.0
	for _, p := range pieces {
		if p.Path.IsRound() {
			least, most = math.Min(least, p.Path.A), math.Max(most, p.Path.A)
		}
	}
	if most == 0 {
		return t.Compare.NoCircle
	}
	return fmt.Sprintf(t.Compare.Radius, t.fromTo(number(least, 2), number(most, 2)))
}

// fromTo writes the least and the most of several, once where they are one.
func (t *Table) fromTo(least, most string) string {
	if least == most {
		return least
	}
	return fmt.Sprintf(t.Compare.Upto, least, most)
}

// joinsSaid counts joins by their verdict; how many smooth ones there are tells
// nothing where there are no others.
func (t *Table) joinsSaid(seams []seam.Seam) string {
	w := &t.Compare
	var count [4]int
	for i := range seams {
		count[seams[i].Verdict]++
	}
	if count[seam.Smooth] == len(seams) {
		return w.AllSmooth
	}
	var parts []string
	for v, n := range count {
		switch n {
		case 0:
		case 1:
			parts = append(parts, w.OneVerdict[v])
		default:
			parts = append(parts, fmt.Sprintf(w.Verdicts[v], t.counting(n)))
		}
	}
	return fmt.Sprintf(w.JoinCount, capital(strings.Join(parts, w.And)))
}

// OnePlayhead says when two patterns that are played to one beat are back at
// their start together.
func (t *Table) OnePlayhead(left, right *Facts) string {
	if !left.Closes || !right.Closes {
		return t.Compare.NotTogether
	}
	return fmt.Sprintf(t.Compare.Together, t.beatCount(frac.LCM(left.Beats, right.Beats)))
}
