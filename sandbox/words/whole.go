package words

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

	LinearOther, EllipsePath string   // %s: ratio
	UnitTurn, Between        string   // as in a sentence; UnitTurn %s: degrees
	A, An                    string   // %s: short name
	Vowels                   []string // how a name begins that takes An

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
	HandsShare                             string // %s: pattern
	HandsShareNone, NoneBeside             string
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

	UnitTurn: "unit turn %s° off the arm", Between: "linear in-between",
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
	HandsShare:     "both hands do %s, at the same moment or at different ones.",
	HandsShareNone: "the hands share no pattern at any time.",
	NoneBeside:     "at no moment does one hand do a flower beside something simpler.",
	HandsSwap:      "both share their patterns, but left is %s while right is %s.",
}
