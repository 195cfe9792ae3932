package words

import (
	"fmt"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
)

// Why holds the words for why a piece is, or is not, what a word of the
// glossary names.
type Why struct {
	Yes string // %d: piece, %s: what decides
	No  string // %s: what it takes
	In  string // %d: piece, %s: what is so there instead

	// Facts, to be put in a row.
	Alike, Apart          string // %s: way round of both; %s, %s: of arm and prop
	Ratio                 string // %s: how often
	Round, Straight, Oval string // where the hand goes
	Stays, Still          string
	Carried, Turning      string
	Swings                string
	Out, Back, Off        string // where the prop points; Off %s: degrees
	EndOut, EndBack       string // the same at the ends of a straight line
	EndOff                string
	Petals                string // %s: how many, %s: degrees
	NoPetals              string

	Others string // there are more pieces

	// Takes says what each word takes, in the order of judging.
	Takes [len(judging)]string

	OneCircle, TwoCircles string // %d: piece, %s: metres
}

// judging are the glossary's words that name pieces, by key.
var judging = [...]string{
	"extension", "isolation", "unit-turn", "flower", "star-flower", "in-spin", "antispin", "cateye", "triquetra", "box-mode", "diamond-mode",
	"static-spin", "pendulum", "linear-extension", "linear-isolation",
}

var englishWhy = Why{
	Yes: "piece %d is one: %s.",
	No:  "no piece is one. It takes %s.",
	In:  "In piece %d: %s.",

	Alike: "arm and prop both %s", Apart: "arm %s, prop %s",
	Ratio: "the prop turns %s to one of the arm",
	Round: "the hand goes round a circle", Straight: "the hand goes along a straight line", Oval: "the hand goes along an ellipse",
	Stays: "the hand stays where it is", Still: "nothing moves",
	Carried: "the prop does not turn", Turning: "the prop goes all the way round",
	Swings: "the prop swings to and fro",
	Out:    "it points straight out from the middle", Back: "it points back at the middle", Off: "it stands %s° off the arm",
	EndOut: "it points outward at the ends", EndBack: "it points inward at the ends", EndOff: "it points neither outward nor inward at the ends",
	Petals: "petals: %s, the first tip at %s°", NoPetals: "no petals",

	Others: "The other pieces are none either.",

	Takes: [...]string{
		"a circle, the prop turning once to one of the arm, the same way, and pointing straight out from the middle",
		"a circle, the prop turning once to one of the arm, the same way, and pointing back at the middle",
		"a circle, the prop turning once to one of the arm, the same way",
		"a circle, the prop turning a whole number of times to one of the arm: twice or more the same way, or once or more the other way",
		"a circle, the prop turning a fraction to one of the arm",
		"a circle, arm and prop turning the same way, the prop not just once to one of the arm",
		"a circle, arm and prop turning opposite ways",
		"a circle, the prop turning once to one of the arm, the other way",
		"a circle, the prop turning twice to one of the arm, the other way",
		"a circle and four petals, the first tip at 45°",
		"a circle and four petals, the first tip at 0°",
		"a hand that stays where it is, and a prop that turns",
		"a prop that swings to and fro",
		"a straight line, the prop turning once to one of the arm and pointing outward at the ends",
		"a straight line, the prop turning once to one of the arm and pointing inward at the ends",
	},

	OneCircle:  "in piece %d hand and head share one circle: %s m from its middle to its edge, half the tether of %s m.",
	TwoCircles: "in piece %d the hand’s circle is %s m from middle to edge and the head’s %s m; half the tether, %s m, would make them one.",
}

// mostFacts is how many pieces that are none of a sort are told of.
const mostFacts = 3

// PieceReading tells what one reading of a word that names pieces, by its key in
// the glossary, says of a track, and what decides.
func (t *Table) PieceReading(name, key string, r naming.Ruling, k *engine.Track) Definition {
	w := &t.Why
	g := &k.Legs[r.Piece]
	hand, tether := g.Path().A, g.Tether()
	var why string
	switch r.Clause {
	case naming.OneCircle:
		why = fmt.Sprintf(w.OneCircle, r.Piece+1, Metres(hand), Metres(tether))
	case naming.TwoCircles:
		why = fmt.Sprintf(w.TwoCircles, r.Piece+1, Metres(hand), Metres(max(hand-tether, tether-hand)), Metres(tether/2))
	case naming.PieceIsOne:
		why = fmt.Sprintf(w.Yes, r.Piece+1, t.fact(key, k, g))
	default:
		why = t.whyNone(key, k)
	}
	format := t.Whole.No
	if r.Yes {
		format = t.Whole.Yes
	}
	return Definition{name, r.Yes, fmt.Sprintf(format, why)}
}

// whyNone tells what a word takes, and what the pieces are instead: each fact
// once.
func (t *Table) whyNone(key string, k *engine.Track) string {
	w := &t.Why
	said := []string{fmt.Sprintf(w.No, w.Takes[slices.Index(judging[:], key)])}
	var facts []string
	for i := range k.Legs {
		fact := t.fact(key, k, &k.Legs[i])
		switch {
		case slices.Contains(facts, fact):
			continue
		case len(facts) == mostFacts:
			return strings.Join(append(said, w.Others), " ")
		}
		facts = append(facts, fact)
		said = append(said, fmt.Sprintf(w.In, i+1, fact))
	}
	return strings.Join(said, " ")
}

// fact tells of a piece what decides whether a word names it.
func (t *Table) fact(key string, k *engine.Track, g *engine.Leg) string {
	w := &t.Why
	f, path := naming.Of(g), g.Path()
	linear := strings.HasPrefix(key, "linear")
	switch {
	case f.Kind == naming.Pendulum:
		return w.Swings
	case f.Kind == naming.HeldStill:
		return w.Still
	case key == "pendulum" && f.Kind != naming.Carried:
		return w.Turning
	case f.Kind == naming.StaticSpin:
		return w.Stays
	case path.IsLine() && !linear:
		return w.Straight
	case !path.IsLine() && !path.IsRound():
		return w.Oval
	case path.IsRound() && (linear || key == "static-spin"):
		return w.Round
	case f.Kind == naming.Carried:
		return w.Carried
	}
	var said []string
	if path.IsRound() {
		said = append(said, t.waysRound(k.Lane.Plane, g.Piece))
	}
	if key == "antispin" || key == "in-spin" && f.Spin == naming.SpinAnti { // the ways round decide
		return said[0]
	}
	said = append(said, fmt.Sprintf(w.Ratio, t.toOne(f.Ratio.Abs())))
	if more := t.factMore(key, f); more != "" {
		said = append(said, more)
	}
	return strings.Join(said, ", ")
}

// factMore tells of a circle or a line what its ratio leaves open.
func (t *Table) factMore(key string, f naming.Figure) string {
	w := &t.Why
	switch {
	case strings.HasSuffix(key, "-mode") && f.HasTip:
		return fmt.Sprintf(w.Petals, Value(f.Petals), number(float64(f.FirstTip), 1))
	case strings.HasSuffix(key, "-mode"):
		return w.NoPetals
	}
	switch f.Kind {
	case naming.Extension, naming.Isolation, naming.UnitTurn:
		if !slices.Contains(judging[:3], key) {
			return ""
		}
	}
	switch f.Kind {
	case naming.Extension:
		return w.Out
	case naming.Isolation:
		return w.Back
	case naming.UnitTurn:
		return fmt.Sprintf(w.Off, number(float64(f.Offset), 1))
	case naming.LinearExtension:
		return w.EndOut
	case naming.LinearIsolation:
		return w.EndBack
	case naming.LinearBetween:
		return w.EndOff
	}
	return ""
}

// toOne writes how often the prop turns to one turn of the arm.
func (t *Table) toOne(ratio frac.Frac) string {
	if ratio.IsInt() {
		return t.turnsOften(ratio.Float())
	}
	return fmt.Sprintf(t.Steps.ManyTimes, Mixed(ratio))
}

func (t *Table) waysRound(p engine.Plane, piece engine.Piece) string {
	way := func(f frac.Frac) string {
		if f.Sign() > 0 {
			return t.Steps.Ways[p][1]
		}
		return t.Steps.Ways[p][0]
	}
	if arm, prop := way(piece.Arm), way(piece.Prop); arm != prop {
		return fmt.Sprintf(t.Why.Apart, arm, prop)
	}
	return fmt.Sprintf(t.Why.Alike, way(piece.Arm))
}
