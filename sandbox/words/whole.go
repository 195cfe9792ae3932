package words

import (
	"fmt"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/naming"
)

// Whole holds the words for what a whole pattern is called. A clause begins
// after yes or no; where it takes values, they are named beside it.
type Whole struct {
	Names   [7]string // of the definitions, in the order of Definitions
	Yes, No string    // %s: the clause
	Spoken  string    // %s, %s: the name of a definition, and what it says
	C, S    string    // shapes

	// The quiet line.
	ThereAndBack            string // %s: pattern
	Of                      string // %s, %s: CAP, C-cap, S-cap or diamond; patterns
	Cap, CCap, SCap         string
	DiamondCap              string
	Broad, Strict           string // %s: what it is
	Places, Ways            string // %s: pattern, that stands in two or more places or ways
	Shifts                  string // %s: pattern, that is another in each round
	And, Comma, More        string
	Never                   string // %s: patterns, %s: metres
	Jumps                   string // %s: what it is, %s: what jumps
	BothHands               string // %s: what both are
	LeftRight, Hybrid, Swap string // %s, %s: left and right; Swap %s: what both are

	LinearOther, EllipsePath             string   // %s: ratio
	Cateye, Triquetra, UnitTurn, Between string   // short names; UnitTurn %s: degrees
	A, An                                string   // %s: short name
	Vowels                               []string // how a name begins that takes An

	// Clauses.
	One, Pair, All, Back                   string // %s: pattern; All %d, %s
	Two, TwoCap                            string // %d, %s, %d, %s: pieces and what they are
	Both, BothCap                          string // %d, %d, %s, %s: pieces, pattern, difference
	Differences                            [6]string
	NewRound, NewRoundCap                  string // %d: round
	Hand, Prop, Head                       string // %d: piece, %s: metres or degrees
	OnlyOne                                string // %s: pattern
	NeverCloses                            string // %s: metres
	NotBroad, NeverTurns                   string
	NoFlower                               string // %s: what the piece is instead
	Straight, Oval, Star, Carried          string // %d: piece
	Static, Still, Swings                  string // %d: piece
	TurnsBack, ArmReverses                 string // %d: piece
	NotStrict                              string
	OtherCircle                            string // %d, %d: pieces
	WholeCircle, Unequal                   string // %d: piece
	OneArc, OnlyOneArc, NoTurnBack         string
	ArcCount                               string // %s: a counted number, not 1
	SingleArc                              string
	BendOneWay                             string // %d, %d: pieces
	OtherWayBack, TwoArcs                  string
	NotStraight                            string // %d: piece
	NoSide, FewCorners, ManyCorners        string // FewCorners %s: a counted number
	NotSquare, NotRound, FourSides         string
	HandsAlike, HandsDiffer, HandsDifferAt string // %s, %s: patterns, left and right; At %s: beat
	HandsSwap                              string // %s, %s: patterns, left and right
	HandsElsewhere                         string // %s: pattern
}

var englishWhole = Whole{
	Names:  [7]string{"Elementary", "CAP (broad)", "CAP (strict)", "C-cap", "S-cap", "Diamond", "Hybrid"},
	Yes:    "Yes: %s",
	No:     "No: %s",
	Spoken: "%s? %s",

	C: "C", S: "S",

	ThereAndBack: "%s, there and back",
	Of:           "%s of %s",
	Cap:          "CAP", CCap: "C-cap", SCap: "S-cap", DiamondCap: "diamond",
	Broad: "%s, broad sense", Strict: "%s, strict sense",
	Places: "%s in different places", Ways: "%s standing different ways",
	Shifts: "%s (another each round)",
	And:    "%s and %s", Comma: "%s, %s", More: "%s and more",
	Never:     "%s; never closes, the hand ends a round %s m away",
	Jumps:     "%s; not joined up: %s",
	BothHands: "Both hands: %s",
	LeftRight: "Left %s; right %s",
	Hybrid:    "Hybrid: left %s; right %s",
	Swap:      "Hybrid: both hands %s, but not the same part at once",

	Cateye: "cateye", Triquetra: "triquetra", UnitTurn: "unit turn %s° off the arm", Between: "linear in-between",
	LinearOther: "linear path of ratio %s", EllipsePath: "elliptical path of ratio %s",
	A: "a %s", An: "an %s",
	Vowels: []string{"ei", "el", "8", "18-"},

	One:    "it is one pattern, %s, and nothing jumps.",
	Pair:   "both pieces belong to one pattern, %s, and nothing jumps.",
	All:    "all %d pieces belong to one pattern, %s, and nothing jumps.",
	Back:   "it is one pattern, %s, played there and back.",
	Two:    "piece %d is %s and piece %d is %s.",
	TwoCap: "it closes; piece %d is %s and piece %d is %s.",
	Both:   "pieces %d and %d are both %s, but %s.", BothCap: "it closes; pieces %d and %d are both %s, but %s.",
	Differences: [6]string{
		"they differ", "the hand moves in another way", "the hand goes along another path",
		"one swings wider", "the prop turns more in one", "the prop points another way",
	},
	NewRound:    "the prop is not back after a round, so round %d is another pattern.",
	NewRoundCap: "it closes, and round %d is another pattern than the first.",
	Hand:        "after piece %d the hand jumps by %s m.",
	Prop:        "after piece %d the prop jumps by %s°.",
	Head:        "after piece %d the head jumps by %s m.",
	OnlyOne:     "it is only one pattern, %s, and a CAP needs two.",
	NeverCloses: "it never closes; the hand ends a round %s m from where it began.",
	NotBroad:    "it is no CAP in the broad sense.",
	NeverTurns:  "all pieces are slices of flowers, but the hand never changes its direction.",
	NoFlower:    "%s, and this sense takes flowers only.",
	Straight:    "piece %d is a stroke along a straight line",
	Oval:        "in piece %d the hand goes along an ellipse",
	Star:        "piece %d is a star, whose ratio is a fraction",
	Carried:     "in piece %d the prop does not turn",
	Static:      "in piece %d the hand stays where it is",
	Still:       "in piece %d nothing moves",
	Swings:      "in piece %d the prop only swings",
	TurnsBack:   "all pieces are slices of flowers, and the hand turns back after piece %d.",
	ArmReverses: "all pieces are slices of flowers, and the arm reverses after piece %d.",
	NotStrict:   "it is no CAP in the strict sense.",
	OtherCircle: "piece %d lies on another circle than piece %d.",
	WholeCircle: "from piece %d on the hand goes all the way round its circle.",
	Unequal:     "the way that begins with piece %d is not as long as the way before it.",
	OneArc:      "the hand goes to and fro on one arc of one circle.",
	OnlyOneArc:  "the hand stays on one circle, and an S needs two.",
	NoTurnBack:  "the hand never turns back.",
	ArcCount:    "the hand sweeps %s arcs before it turns back, and an S has two.",
	SingleArc:   "the hand sweeps one arc before it turns back, and an S has two.",
	BendOneWay:  "the arcs of pieces %d and %d bend the same way.",

	OtherWayBack: "the hand does not come back along the arcs by which it went.",
	TwoArcs:      "the hand sweeps two arcs that bend opposite ways, to and fro.",
	NotStraight:  "in piece %d the hand does not go straight.",
	NoSide:       "the hand stays where it is.",
	FewCorners:   "the hand turns at %s places, and a diamond has four corners.",
	ManyCorners:  "the hand turns at more than four places, and a diamond has four corners.",
	NotSquare:    "its sides are not equal, or its corners not square.",
	NotRound:     "the hand does not go round all four sides.",
	FourSides:    "the hand goes round four equal straight sides with square corners.",

	HandsAlike:     "both hands do the same pattern at all times.",
	HandsDiffer:    "left is %s while right is %s.",
	HandsDifferAt:  "left is %s while right is %s, from beat %s.",
	HandsElsewhere: "both are %s, but along paths of different kinds.",
	HandsSwap:      "both share their patterns, but left is %s while right is %s.",
}

// Definition is what one of the definitions says of a pattern.
type Definition struct {
	Name    string
	Yes     bool
	Because string // begins with yes or no
}

// The places of the definitions in Definitions.
const (
	DefElementary = iota
	DefBroad
	DefStrict
	DefC
	DefS
	DefDiamond
	DefHybrid
)

// Definitions tells what each definition says of a lane: elementary, CAP in the
// broad and the strict sense, C-cap, S-cap, diamond.
func (t *Table) Definitions(w *naming.Whole) []Definition {
	rulings := [...]naming.Ruling{w.Elementary, w.Broad, w.Strict, w.C, w.S, w.Diamond}
	defs := make([]Definition, len(rulings))
	for i, r := range rulings {
		defs[i] = t.definition(i, r)
	}
	return defs
}

// HybridDefinition tells whether two hands do different patterns.
func (t *Table) HybridDefinition(r naming.Ruling) Definition { return t.definition(DefHybrid, r) }

func (t *Table) definition(i int, r naming.Ruling) Definition {
	w := &t.Whole
	format := w.No
	if r.Yes {
		format = w.Yes
	}
	return Definition{w.Names[i], r.Yes, fmt.Sprintf(format, t.clause(r))}
}

// clause says why, of any ruling.
func (t *Table) clause(r naming.Ruling) string {
	w := &t.Whole
	piece, other := r.Piece+1, r.Other+1
	say := fmt.Sprintf
	switch r.Clause {
	case naming.NeverCloses:
		return say(w.NeverCloses, Metres(r.Gap))
	case naming.OnePattern, naming.ThereAndBack:
		return t.onePattern(r)
	case naming.TwoPatterns:
		return t.twoPatterns(r)
	case naming.NewEachRound:
		if r.Yes {
			return say(w.NewRoundCap, r.Round+1)
		}
		return say(w.NewRound, r.Round+1)
	case naming.HandJumps:
		return say(w.Hand, piece, Metres(r.Gap))
	case naming.PropJumps:
		return say(w.Prop, piece, number(r.Gap, 3))
	case naming.HeadJumps:
		return say(w.Head, piece, Metres(r.Gap))
	case naming.NotBroad:
		return w.NotBroad
	case naming.NoFlower:
		return say(w.NoFlower, t.noFlower(r.Figures[0], piece))
	case naming.NeverTurns:
		return w.NeverTurns
	case naming.TurnsBack:
		return say(w.TurnsBack, piece)
	case naming.ArmReverses:
		return say(w.ArmReverses, piece)
	case naming.NotStrict:
		return w.NotStrict
	case naming.OtherCircle:
		return say(w.OtherCircle, piece, other)
	case naming.WholeCircle:
		return say(w.WholeCircle, piece)
	case naming.UnequalArcs:
		return say(w.Unequal, piece)
	case naming.OneArc:
		return w.OneArc
	case naming.OnlyOneArc:
		return w.OnlyOneArc
	case naming.NoTurnBack:
		return w.NoTurnBack
	case naming.NotTwoArcs:
		if r.Count == 1 {
			return w.SingleArc
		}
		return say(w.ArcCount, t.counting(r.Count))
	case naming.BendOneWay:
		return say(w.BendOneWay, piece, other)
	case naming.OtherWayBack:
		return w.OtherWayBack
	case naming.TwoArcs:
		return w.TwoArcs
	case naming.NotStraight:
		return say(w.NotStraight, piece)
	case naming.NotFourSides:
		switch {
		case r.Count == 0:
			return w.NoSide
		case r.Count > 4:
			return w.ManyCorners
		}
		return say(w.FewCorners, t.counting(r.Count))
	case naming.NotSquare:
		return w.NotSquare
	case naming.NotRound:
		return w.NotRound
	case naming.FourSides:
		return w.FourSides
	case naming.HandsAlike:
		return w.HandsAlike
	case naming.HandsSwap:
		return say(w.HandsSwap, t.one(r.Figures[0]), t.one(r.Figures[1]))
	}
	left, right := t.one(r.Figures[0]), t.one(r.Figures[1])
	switch {
	case left == right:
		return say(w.HandsElsewhere, t.ShortName(r.Figures[0]))
	case r.Beat > 0:
		return say(w.HandsDifferAt, left, right, number(r.Beat, 3))
	}
	return say(w.HandsDiffer, left, right)
}

func (t *Table) onePattern(r naming.Ruling) string {
	w := &t.Whole
	name := t.one(r.Figures[0])
	switch {
	case !r.Yes:
		return fmt.Sprintf(w.OnlyOne, name)
	case r.Clause == naming.ThereAndBack:
		return fmt.Sprintf(w.Back, name)
	case r.Count == 1:
		return fmt.Sprintf(w.One, name)
	case r.Count == 2:
		return fmt.Sprintf(w.Pair, name)
	}
	return fmt.Sprintf(w.All, r.Count, name)
}

func (t *Table) twoPatterns(r naming.Ruling) string {
	w := &t.Whole
	two, both := w.Two, w.Both
	if r.Yes {
		two, both = w.TwoCap, w.BothCap
	}
	a, b := t.one(r.Figures[0]), t.one(r.Figures[1])
	if a == b {
		a = t.ShortName(r.Figures[0])
		return fmt.Sprintf(both, r.Piece+1, r.Other+1, a, w.Differences[r.Difference])
	}
	return fmt.Sprintf(two, r.Piece+1, a, r.Other+1, b)
}

// noFlower says what a piece is that is no slice of a flower.
func (t *Table) noFlower(f naming.Figure, piece int) string {
	w := &t.Whole
	format := w.Straight
	switch f.Kind {
	case naming.EllipsePath:
		format = w.Oval
	case naming.Star:
		format = w.Star
	case naming.Carried:
		format = w.Carried
	case naming.StaticSpin:
		format = w.Static
	case naming.HeldStill:
		format = w.Still
	case naming.Pendulum:
		format = w.Swings
	}
	return fmt.Sprintf(format, piece)
}

func (t *Table) counting(n int) string {
	if n < len(t.Figure.Counted) {
		return t.Figure.Counted[n]
	}
	return fmt.Sprint(n)
}

// ShortName returns what f is called among others, with no comma in it.
func (t *Table) ShortName(f naming.Figure) string {
	w := &t.Whole
	switch {
	case f.Kind == naming.Flower && f.Spin == naming.SpinAnti && f.Petals.Float() == 2:
		return w.Cateye
	case f.Kind == naming.Flower && f.Spin == naming.SpinAnti && f.Petals.Float() == 3:
		return w.Triquetra
	case f.Kind == naming.UnitTurn:
		return fmt.Sprintf(w.UnitTurn, number(float64(f.Offset), 1))
	case f.Kind == naming.LinearBetween:
		return w.Between
	case f.Kind == naming.LinearOther:
		return fmt.Sprintf(w.LinearOther, t.Quotient(f.Ratio.Abs())) // either sign is one pattern
	case f.Kind == naming.EllipsePath:
		return fmt.Sprintf(w.EllipsePath, t.Quotient(f.Ratio))
	}
	return t.Name(f)
}

// one returns f's short name as it stands in a sentence, with an article where
// it takes one.
func (t *Table) one(f naming.Figure) string {
	name := t.ShortName(f)
	switch f.Kind {
	case naming.Flower, naming.Star, naming.UnitTurn, naming.Carried, naming.LinearOther, naming.EllipsePath, naming.Pendulum:
	default:
		return name
	}
	for _, vowel := range t.Whole.Vowels {
		if strings.HasPrefix(name, vowel) {
			return fmt.Sprintf(t.Whole.An, name)
		}
	}
	return fmt.Sprintf(t.Whole.A, name)
}

// mostNames bounds how many patterns a quiet line names.
const mostNames = 3

// parts names the patterns that a lane is assembled from, each name once.
func (t *Table) parts(w *naming.Whole) string {
	say := &t.Whole
	names := t.names(w)
	if len(names) == 1 {
		switch {
		case !w.Broad.Yes || w.Diamond.Yes:
			return names[0]
		case w.Broad.Difference == naming.DiffersInPath:
			return fmt.Sprintf(say.Places, names[0])
		}
		return fmt.Sprintf(say.Ways, names[0])
	}
	return t.list(names, w.More)
}

func (t *Table) names(w *naming.Whole) []string {
	say := &t.Whole
	var names []string
	seen := map[string]bool{}
	for _, p := range w.Parts {
		name := t.ShortName(p.Figure)
		if p.Shifts {
			if p.Figure.Spin == naming.SpinUnit {
				name = t.unitTurn()
			}
			name = fmt.Sprintf(say.Shifts, name)
		}
		if !seen[name] {
			seen[name] = true
			names = append(names, name)
		}
	}
	return names
}

// unitTurn is the unit turn's name without an offset.
func (t *Table) unitTurn() string {
	name, _, _ := strings.Cut(t.Figure.UnitTurn, ",")
	return name
}

// list writes names one after the other, the longest lists cut short.
func (t *Table) list(names []string, more bool) string {
	w := &t.Whole
	more = more || len(names) > mostNames
	out := names[0]
	for i, name := range names[1:min(len(names), mostNames)] {
		format := w.Comma
		if i+2 == len(names) && !more {
			format = w.And
		}
		out = fmt.Sprintf(format, out, name)
	}
	if more {
		return fmt.Sprintf(w.More, out)
	}
	return out
}

// LaneLine says quietly, in one line, what a lane is called.
func (t *Table) LaneLine(w *naming.Whole) string { return capital(t.laneLine(w)) }

func (t *Table) laneLine(w *naming.Whole) string {
	say := &t.Whole
	is := t.parts(w)
	switch {
	case !w.Closes:
		return fmt.Sprintf(say.Never, is, Metres(w.HandGap))
	case w.Broad.Yes:
		is = t.assembled(w, is)
	case w.Elementary.Clause == naming.ThereAndBack:
		is = fmt.Sprintf(say.ThereAndBack, is)
	}
	if w.Jump.Yes {
		return fmt.Sprintf(say.Jumps, is, strings.TrimSuffix(t.clause(w.Jump), "."))
	}
	return is
}

func (t *Table) assembled(w *naming.Whole, parts string) string {
	say := &t.Whole
	sort := [...]string{say.Cap, say.CCap, say.SCap, say.DiamondCap}[w.Shape()]
	is := fmt.Sprintf(say.Of, sort, parts)
	switch {
	case w.Strict.Yes:
		return fmt.Sprintf(say.Strict, is)
	case w.Diamond.Yes:
		return is
	}
	return fmt.Sprintf(say.Broad, is)
}

// HandsLine says quietly, in one line, what two hands do, given the ruling on
// both.
func (t *Table) HandsLine(left, right *naming.Whole, hybrid naming.Ruling) string {
	w := &t.Whole
	l, r := t.laneLine(left), t.laneLine(right)
	switch {
	case hybrid.Clause == naming.HandsSwap && t.alike(left, right):
		return fmt.Sprintf(w.Swap, r)
	case hybrid.Yes:
		return fmt.Sprintf(w.Hybrid, l, r)
	case l == r:
		return fmt.Sprintf(w.BothHands, l)
	}
	return fmt.Sprintf(w.LeftRight, l, r)
}

// alike reports whether two hands are called one thing, but for the order of the
// patterns in it.
func (t *Table) alike(a, b *naming.Whole) bool {
	names, others := t.names(a), t.names(b)
	slices.Sort(names)
	slices.Sort(others)
	return a.Shape() == b.Shape() && a.Strict.Yes == b.Strict.Yes && a.Broad.Yes == b.Broad.Yes &&
		!a.Jump.Yes && !b.Jump.Yes && slices.Equal(names, others)
}

// Shape returns the word for a shape, empty for none.
func (t *Table) Shape(s naming.Shape) string {
	return [...]string{"", t.Whole.C, t.Whole.S, t.Figure.Diamond}[s]
}

// LaneAloud is what a screen reader says of a lane: the quiet line, then each
// definition.
func (t *Table) LaneAloud(w *naming.Whole) string {
	return t.LaneLine(w) + "." + t.aloud(t.Definitions(w)...)
}

// HandsAloud is the same of two hands, the left one first.
func (t *Table) HandsAloud(left, right *naming.Whole, hybrid naming.Ruling) string {
	out := t.HandsLine(left, right, hybrid) + "." + t.aloud(t.HybridDefinition(hybrid))
	for i, hand := range [...]*naming.Whole{left, right} {
		out += " " + t.HandName(engine.Left+engine.Side(i)) + "." + t.aloud(t.Definitions(hand)...)
	}
	return out
}

func (t *Table) aloud(defs ...Definition) string {
	out := ""
	for _, d := range defs {
		out += " " + fmt.Sprintf(t.Whole.Spoken, d.Name, d.Because)
	}
	return out
}
