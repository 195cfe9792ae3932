package words

// Dial holds the words of a number that a slider turns: its name in full and
// in short, and how its value reads (%s).
type Dial struct{ Label, Short, Reads string }

// Dials are all the numbers that can be turned.
type Dials struct {
	Arm, Prop, Cycles, Length, Radius, Tilt Dial
	CentreX, CentreY, ArmStart, PropStart   Dial
	From, To, Tether, Tempo, Turn, Scale    Dial
	Swap                                    string // %s: a dial's label
	SwapTitle                               string
	PathTitle, LawTitle                     string
	Paths                                   [4]string // as engine.PathKind counts
	Laws                                    [4]string // as engine.Law counts
	None                                    string
	Edit                                    string // undo: %s, a dial's label
	PathEdit, LawEdit, EndEdit, CentreEdit  string // undo
	Together, TogetherOn, TogetherOff       string // whether pieces on one path change together
}

var englishDials = Dials{
	Arm:       Dial{"Arm speed", "Arm", "%s turns a cycle"},
	Prop:      Dial{"Prop speed", "Prop", "%s turns a cycle"},
	Cycles:    Dial{"Cycles made", "Cycles", "%s cycles"},
	Length:    Dial{"Beats of the piece", "Beats", "%s beats"},
	Radius:    Dial{"Radius of the hand path", "Radius", "%s m"},
	Tilt:      Dial{"Tilt of the hand path", "Tilt", "%s°"},
	CentreX:   Dial{"Centre, to the side", "Side", "%s m"},
	CentreY:   Dial{"Centre, up", "Up", "%s m"},
	ArmStart:  Dial{"Arm at the beginning of the piece", "Arm at", "%s°"},
	PropStart: Dial{"Prop at the beginning of the piece", "Prop at", "%s°"},
	From:      Dial{"Kept from", "From", "%s of the stroke"},
	To:        Dial{"Kept to", "To", "%s of the stroke"},
	Tether:    Dial{"Tether, hand to head", "Tether", "%s m"},
	Tempo:     Dial{"Tempo", "Tempo", "%s beats a minute"},
	Turn:      Dial{"Turn the whole: arm angle at the start", "Turn", "%s°"},
	Scale:     Dial{"Size of the whole: tether", "Size", "%s m"},
	Swap:      "%s: show another slider here",
	SwapTitle: "Which slider stands here?",
	PathTitle: "Hand path",
	LawTitle:  "How the arm shares its turn",
	Paths:     [4]string{"circle", "straight line", "ellipse", "stays at a point"},
	Laws:      [4]string{"evenly", "eases out of the start", "eases into the end", "eases at both ends"},
	None:      "–",
	Edit:      "“%s” changed",
	PathEdit:  "another hand path", LawEdit: "another sharing of the arm’s turn",
	EndEdit: "moving the end", CentreEdit: "moving the centre",
	Together:    "Pieces on one hand path",
	TogetherOn:  "change together, so the circle stays whole",
	TogetherOff: "change one by one",
}
