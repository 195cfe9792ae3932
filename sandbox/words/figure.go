package words

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
)

// Figure holds the trade's words for elementary patterns. Where a word takes
// a value, %s stands for it.
type Figure struct {
	InSpinFlower     string // %s: petals as in Petal
	AntispinFlower   string
	TwoAntispin      string
	ThreeAntispin    string
	InSpinStar       string
	AntispinStar     string
	Petal            string // %s: a counted number
	PetalFigures     string // %s: a number in figures
	ShortIn          string // %s: petals, where there is little room
	ShortAnti        string
	ShortTwo         string
	ShortThree       string
	ShortStar        string
	Counted          []string
	Extension        string
	Isolation        string
	UnitTurn         string // %s: degrees
	Carried          string
	StaticSpin       string
	HeldStill        string
	LinearExtension  string
	LinearIsolation  string
	LinearBetween    string
	LinearOther      string // %s: ratio
	EllipsePath      string // %s: ratio
	Pendulum         string
	Diamond, Box     string
	Left, Right      string
	In, Anti, Unit   string
	CarriedSpin      string
	Line, Ellipse    string
	Static, Swinging string
}

var englishFigure = Figure{
	InSpinFlower:    "%s in-spin flower",
	AntispinFlower:  "%s antispin flower",
	TwoAntispin:     "two-petal antispin flower, cateye",
	ThreeAntispin:   "three-petal antispin flower, triquetra",
	InSpinStar:      "%s in-spin star flower",
	AntispinStar:    "%s antispin star flower",
	Petal:           "%s-petal",
	PetalFigures:    "%s-petal",
	ShortIn:         "%s-petal in-spin",
	ShortAnti:       "%s-petal antispin",
	ShortTwo:        "cateye",
	ShortThree:      "triquetra",
	ShortStar:       "%s-petal star",
	Counted:         []string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"},
	Extension:       "extension",
	Isolation:       "isolation",
	UnitTurn:        "unit turn, %s° off the arm",
	Carried:         "carried prop",
	StaticSpin:      "static spin",
	HeldStill:       "held still",
	LinearExtension: "linear extension",
	LinearIsolation: "linear isolation",
	LinearBetween:   "linear, between",
	LinearOther:     "linear hand path, ratio %s",
	EllipsePath:     "elliptical hand path, ratio %s",
	Pendulum:        "pendulum",
	Diamond:         "diamond",
	Box:             "box",
	Left:            "left",
	Right:           "right",
	In:              "in",
	Anti:            "anti",
	Unit:            "unit",
	CarriedSpin:     "carried",
	Line:            "line",
	Ellipse:         "ellipse",
	Static:          "static",
	Swinging:        "swing",
}

// Name returns what f is called, in lower case, for a person: with a true
// minus sign, and long ratios rounded.
func (t *Table) Name(f naming.Figure) string {
	return t.name(f, t.Quotient, number)
}

// PlainName returns what f is called for another program: numbers as it would
// read them, ratios exact.
func (t *Table) PlainName(f naming.Figure) string {
	return t.name(f, frac.Frac.String, plainNumber)
}

func (t *Table) name(f naming.Figure, ratio func(frac.Frac) string, number func(float64, int) string) string {
	w := &t.Figure
	switch f.Kind {
	case naming.Extension:
		return w.Extension
	case naming.Isolation:
		return w.Isolation
	case naming.UnitTurn:
		return fmt.Sprintf(w.UnitTurn, number(float64(f.Offset), 1))
	case naming.Carried:
		return w.Carried
	case naming.StaticSpin:
		return w.StaticSpin
	case naming.HeldStill:
		return w.HeldStill
	case naming.LinearExtension:
		return w.LinearExtension
	case naming.LinearIsolation:
		return w.LinearIsolation
	case naming.LinearBetween:
		return w.LinearBetween
	case naming.LinearOther:
		return fmt.Sprintf(w.LinearOther, ratio(f.Ratio))
	case naming.EllipsePath:
		return fmt.Sprintf(w.EllipsePath, ratio(f.Ratio))
	case naming.Pendulum:
		return w.Pendulum
	}
	return t.flower(f)
}

func (t *Table) flower(f naming.Figure) string {
	w := &t.Figure
	petals := t.petals(f)
	anti := f.Spin == naming.SpinAnti
	switch {
	case f.Kind == naming.Star && anti:
		return fmt.Sprintf(w.AntispinStar, petals)
	case f.Kind == naming.Star:
		return fmt.Sprintf(w.InSpinStar, petals)
	case !anti:
		return fmt.Sprintf(w.InSpinFlower, petals)
	case f.Petals.Float() == 2:
		return w.TwoAntispin
	case f.Petals.Float() == 3:
		return w.ThreeAntispin
	}
	return fmt.Sprintf(w.AntispinFlower, petals)
}

// ShortName is Name where there is little room: a flower's without its family.
func (t *Table) ShortName(f naming.Figure) string {
	w := &t.Figure
	petals := f.Petals.String()
	switch {
	case f.Kind == naming.Star:
		return fmt.Sprintf(w.ShortStar, petals)
	case f.Kind != naming.Flower:
		return t.Name(f)
	case f.Spin != naming.SpinAnti:
		return fmt.Sprintf(w.ShortIn, petals)
	case f.Petals.Float() == 2:
		return w.ShortTwo
	case f.Petals.Float() == 3:
		return w.ShortThree
	}
	return fmt.Sprintf(w.ShortAnti, petals)
}

func (t *Table) petals(f naming.Figure) string {
	w := &t.Figure
	if n := f.Petals.Float(); n < float64(len(w.Counted)) {
		return fmt.Sprintf(w.Petal, w.Counted[int(n)])
	}
	return fmt.Sprintf(w.PetalFigures, f.Petals.String())
}

// Spin returns the word for the relation of prop to arm.
func (t *Table) Spin(s naming.Spin) string {
	w := &t.Figure
	return [...]string{w.In, w.Anti, w.Unit, w.CarriedSpin, w.Line, w.Ellipse, w.Static, w.Swinging}[s]
}

// Mode returns the word for how four petals stand, empty for none.
func (t *Table) Mode(m naming.Mode) string {
	return [...]string{"", t.Figure.Diamond, t.Figure.Box}[m]
}

// Side returns the word for a hand.
func (t *Table) Side(s engine.Side) string {
	if s == engine.Left {
		return t.Figure.Left
	}
	return t.Figure.Right
}
