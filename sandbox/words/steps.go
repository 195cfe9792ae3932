package words

// Steps holds the words for a pattern told as plain steps. Directions count
// anticlockwise from +x of the plane, as step.Toward does; planes as
// engine.Plane does.
type Steps struct {
	Facing, Mirror string // whose left and right it is
	Tempo          string // %s: beats a minute
	Care           string

	Heads    [3]string    // %s: left or right; by plane
	Places   [3][8]string // where a hand is, seen from the middle of its path
	Pointing [3][8]string // where a prop points
	Headings [3][8]string // where a hand goes on a straight line
	Ways     [3][2]string // clockwise, anticlockwise

	// Where a lane begins.
	StartRound, StartOval, StartLine string // %s: place
	StartOnLine, StartStay           string
	StartProp                        string       // %s: where the hand is, %s: where the prop points
	Circle                           string       // %s: centimetres, %s: where its middle is
	AtShoulder                       string       // %s: left or right
	AtChest, FromChest               string       // the body's middle: at it, and as what is measured from
	AtSide, FromSide                 string       // the same in the wheel plane
	Line, Place                      string       // %s: where the middle of a line, or a still hand, is
	Off                              string       // %s: centimetres, %s: where to, %s: from where
	OffBoth                          string       // %s, %s, %s, %s, %s: two of them, from where
	Offs                             [3][4]string // where to, anticlockwise from +x
	LastOne                          string       // a circle's middle
	Level                            string
	LevelOff                         [2]string // %s: centimetres; above, below

	// What the hand does.
	Parts          []Portion // of a circle
	Arc            string    // %s: degrees
	OnceRound      string
	Rounds         string // %s: how often
	FromTo         string // %s: how much, %s: way, %s: from, %s: by, %s: to
	RoundBack      string // %s: how much, %s: way, %s: place
	Down, Up       string // %s: side
	Past           string // %s: side
	Top, Bottom    string // the middle of an upright arc
	Ellipse        string // %s: what is said of a circle
	NewCircle      string // %s: what is said, %s: how far its middle is off the last one
	NewSize        string // %s: what is said, %s: centimetres
	Straight       string // %s: heading, %s: centimetres
	StraightBack   string // the same
	ToAndFro       string // the same, %s: how often
	Stay           string
	Soft           [4]string // %s: what is said; by engine.Law
	Times          []string  // once, twice …
	ManyTimes      string    // %s: a number
	TurnParts      []Portion // of a prop's turn
	BeatParts      []Portion // of a beat
	Turns, Beats   string    // %s: how many
	Rests          []Portion // what is left over a whole number
	AndRest        string    // %s: a whole number as a word, %s: a rest
	FiguresAndRest string    // the same, the number in figures

	// What the prop does.
	PropWay, PropOn          string // %s: turns, %s: way; On: as in the step before
	PropKeeps                string // %s: where it points
	PropOut, PropIn, PropOff string // %s: what it does
	PropSwings               string // %s: degrees, %s: how often

	// A step, and how it joins the next.
	Step                     string // %s: hand, %s: prop, %s: beats
	Repeated                 string // %s: a step, %s: how often
	Number                   string // %d, %s: a step
	OnBeat, OnBeatStay       string // %s: beat, %s: where the hand is, %s: where the prop points; Stay: without the hand
	ThenTurn, ThenCorner     string // %s: where the prop points
	ThenTurnAny, ThenAny     string
	ThenOn, ThenBend         string
	ThenWait, ThenGo, Stayed string
	HandJumps, PropJumps     string // %s: centimetres or degrees
	Stops, Reverses, Jerks   string

	AllAgain             string // %s: how often
	NotAll               string
	Closes, Jumps        string // %s: beats
	ClosesLater, Never   string // %s: rounds, %s: beats; %s: centimetres
	Together, NeverBoth  string // %s: beats
	TogetherBegin        string
	Title                string
	OneRound, ManyRounds string // ManyRounds %s: counted
}

// Portion is what a part of a whole is called.
type Portion struct {
	Of   string // the part, as a fraction is written
	Name string
}

var englishSteps = Steps{
	Facing: "Left, right and the way round are as someone facing you sees them. Hands and shoulders are your own.",
	Mirror: "Left, right and the way round are as you see yourself in a mirror. Hands and shoulders are your own.",
	Tempo:  "Count an even beat, about %s to the minute. With an empty hand go as slowly as you like; a poi needs its speed.",
	Care:   "Clear the space around you, take soft props first, and walk the hand through it empty before you add the prop.",

	Heads: [3]string{
		"%s hand, flat in front of you like a picture on a wall.",
		"%s hand, beside you like the wheel of a cart.",
		"%s hand, level like a table top.",
	},
	Places: [3][8]string{
		{"right", "upper right", "top", "upper left", "left", "lower left", "bottom", "lower right"},
		{"front", "upper front", "top", "upper back", "back", "lower back", "bottom", "lower front"},
		{"right", "right back", "back", "left back", "left", "left front", "front", "right front"},
	},
	Pointing: [3][8]string{
		{"right", "up and right", "up", "up and left", "left", "down and left", "down", "down and right"},
		{"forward", "up and forward", "up", "up and back", "back", "down and back", "down", "down and forward"},
		{"right", "back and right", "back", "back and left", "left", "forward and left", "forward", "forward and right"},
	},
	Headings: [3][8]string{
		{"straight across to the right", "straight up to the right", "straight up", "straight up to the left",
			"straight across to the left", "straight down to the left", "straight down", "straight down to the right"},
		{"straight forward", "straight up and forward", "straight up", "straight up and back",
			"straight back", "straight down and back", "straight down", "straight down and forward"},
		{"straight across to the right", "straight back to the right", "straight back", "straight back to the left",
			"straight across to the left", "straight forward to the left", "straight forward", "straight forward to the right"},
	},
	Ways: [3][2]string{
		{"clockwise", "anticlockwise"},
		{"forward over the top", "backward over the top"},
		{"clockwise as seen from above", "anticlockwise as seen from above"},
	},

	StartRound: "at the %s of its circle", StartOval: "at the %s of its ellipse",
	StartLine: "at the %s end of its straight line", StartOnLine: "on its straight line", StartStay: "where it will stay",
	StartProp:  "Start with the hand %s and the prop pointing %s.",
	Circle:     "The circle is %s cm from its middle to its edge; its middle is %s.",
	AtShoulder: "at your %s shoulder", AtChest: "midway between your shoulders", FromChest: "the point midway between your shoulders",
	AtSide: "beside you, at the height of your shoulders", FromSide: "the height of your shoulders, beside you",
	Line: "The middle of that line is %s.", Place: "The hand is %s.",
	Off: "%s cm %s %s", OffBoth: "%s cm %s and %s cm %s %s",
	Offs: [3][4]string{
		{"to the right of", "above", "to the left of", "below"},
		{"in front of", "above", "behind", "below"},
		{"to the right of", "behind", "to the left of", "in front of"},
	},
	LastOne:  "the last one’s",
	Level:    "The level is that of your shoulders.",
	LevelOff: [2]string{"The level is %s cm above your shoulders.", "The level is %s cm below your shoulders."},

	Parts: []Portion{{"1/8", "an eighth of a circle"}, {"1/4", "a quarter of a circle"}, {"1/3", "a third of a circle"},
		{"1/2", "half a circle"}, {"2/3", "two thirds of a circle"}, {"3/4", "three quarters of a circle"}},
	Arc: "an arc of %s°", OnceRound: "once round the circle", Rounds: "%s times round the circle",
	FromTo: "%s %s, from the %s %s to the %s", RoundBack: "%s %s, from the %s and back to it",
	Down: "down the %s side", Up: "up the %s side", Past: "past the %s", Top: "over the top", Bottom: "round the bottom",
	Ellipse:      "%s, the circle squashed to an ellipse",
	NewCircle:    "%s, on a circle whose middle is %s",
	NewSize:      "%s, on a circle of %s cm from middle to edge",
	Straight:     "%s for %s cm",
	StraightBack: "%s for %s cm and back again",
	ToAndFro:     "to and fro, setting out %s for %s cm, %s",
	Stay:         "the hand stays where it is",
	Soft:         [4]string{"%s", "%s, starting softly", "%s, ending softly", "%s, starting and ending softly"},
	Times:        []string{"not at all", "once", "twice"}, ManyTimes: "%s times",
	TurnParts: []Portion{{"1/8", "an eighth of a turn"}, {"1/6", "a sixth of a turn"}, {"1/4", "a quarter turn"}, {"1/3", "a third of a turn"},
		{"1/2", "half a turn"}, {"2/3", "two thirds of a turn"}, {"3/4", "three quarters of a turn"}, {"1", "one turn"}},
	Turns: "%s turns",
	BeatParts: []Portion{{"1/4", "a quarter of a beat"}, {"1/3", "a third of a beat"}, {"1/2", "half a beat"}, {"2/3", "two thirds of a beat"},
		{"3/4", "three quarters of a beat"}, {"1", "one beat"}},
	Beats: "%s beats", Rests: []Portion{{"1/4", "a quarter"}, {"1/3", "a third"}, {"1/2", "a half"}, {"2/3", "two thirds"}, {"3/4", "three quarters"}},
	AndRest: "%s and %s", FiguresAndRest: "%s and %s",

	PropWay: "the prop makes %s %s", PropOn: "the prop makes %s %s, as before",
	PropKeeps: "the prop does not turn and keeps pointing %s",
	PropOut:   "%s, always pointing straight out from the middle", PropIn: "%s, always pointing back at the middle",
	PropOff:    "%s, always at the same slant to the arm",
	PropSwings: "the prop swings below the hand like a pendulum, %s° to each side, %s to and fro",

	Step: "%s; %s; %s.", Repeated: "%s Do this %s.", Number: "%d. %s",
	OnBeat: "Beat %s: hand %s, prop %s.", OnBeatStay: "Beat %s: prop %s.",
	ThenTurn: "Then turn the hand back while the prop points %s.", ThenCorner: "Then turn the corner while the prop points %s.",
	ThenTurnAny: "Then turn the hand back.", ThenAny: "Then turn the corner.",
	ThenOn: "Then go straight on.", ThenBend: "Then go straight on into a bend the other way.",
	ThenWait: "Then stop the hand and wait.", ThenGo: "Then set off.", Stayed: "The hand still waits.",
	HandJumps: "Then the hand would have to jump %s cm, so this cannot be spun as it stands.",
	PropJumps: "Then the prop would have to jump %s°, so this cannot be spun as it stands.",
	Stops:     "There the prop would have to stop and turn back: a staff can, a poi cannot.",
	Reverses:  "The prop stops and turns back there too.",
	Jerks:     "Expect a jerk there, as the prop would have to change its speed at once.",

	AllAgain:      "Do all of that %s.",
	NotAll:        "There are more steps than can be told here; watch the rest.",
	Closes:        "Now hand and prop are back where they began, after %s: begin again.",
	Jumps:         "A round takes %s, if something could jump like that.",
	ClosesLater:   "Now the hand is back where it began, but the prop is not: go on until you have done %s, which is %s.",
	Never:         "The hand ends %s cm from where it began, so it has to be brought back before you can begin again.",
	TogetherBegin: "Both hands start at the same moment.",
	Together:      "Both hands are back where they began together after %s.",
	NeverBoth:     "The two hands never come back to their start together.",
	Title:         "Step by step",
	OneRound:      "round", ManyRounds: "%s rounds",
}
