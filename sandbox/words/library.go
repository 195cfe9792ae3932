package words

// Library holds what the families of built-in patterns are called.
type Library struct {
	CCaps, Units, Lines     string
	InSpin, Antispin, Stars string
	SCaps, Diamonds         string
	TwoHands, Faults        string
	InMode                  string // %s: what a flower is called, %s: its mode
}

var englishLibrary = Library{
	CCaps:    "C-caps",
	Units:    "Extension, isolation and unit turns",
	Lines:    "A still hand and straight lines",
	InSpin:   "In-spin flowers",
	Antispin: "Antispin flowers",
	Stars:    "Star flowers",
	SCaps:    "S-caps and other assemblies",
	Diamonds: "Diamonds",
	TwoHands: "Two hands",
	Faults:   "What can go wrong",
	InMode:   "%s, %s mode",
}

// Family returns the name of the family of built-in patterns that is kept
// under an id, empty if there is none.
func (l *Library) Family(id string) string {
	switch id {
	case "c-caps":
		return l.CCaps
	case "units":
		return l.Units
	case "points-and-lines":
		return l.Lines
	case "in-spin":
		return l.InSpin
	case "antispin":
		return l.Antispin
	case "stars":
		return l.Stars
	case "s-caps":
		return l.SCaps
	case "diamonds":
		return l.Diamonds
	case "two-hands":
		return l.TwoHands
	case "faults":
		return l.Faults
	}
	return ""
}
