package words

// View holds the words for what the stage shows and how it plays.
type View struct {
	Title, Trail, Step, Loop                           string
	Trails                                             [4]string // as scene.TrailLength counts
	StepsBy                                            [2]string // as session.Steps counts
	Loops                                              [3]string // as session.Loop counts
	HandPath, Grid, Arms, Letters, Whole, Kinds, Piece string
	Slack, Taken                                       string
	Big, LeaveBig                                      string
	BeatNow                                            string // %d
	StepBack, StepOn                                   string
	LoopNow                                            string // %s: what
	TapTempo                                           string
}

var englishView = View{
	Title:    "View and playing",
	Trail:    "Trail",
	Trails:   [4]string{"one round", "half a round", "all rounds", "none"},
	Step:     "Steps go",
	StepsBy:  [2]string{"from beat to beat", "from petal to petal"},
	Loop:     "Plays over and over",
	Loops:    [3]string{"the whole", "the round", "the piece in hand"},
	HandPath: "Hand path",
	Grid:     "Middle lines",
	Arms:     "Arms and shoulders",
	Letters:  "Letters L and R",
	Whole:    "Piece in hand, and the whole it is cut from",
	Kinds:    "Strokes by kind: antispin with ticks, extension and isolation double",
	Piece:    "A colour for each piece",
	Big:      "Big view",
	LeaveBig: "Leave the big view",
	BeatNow:  "beat %d",
	Slack:    "Dots where a tether would go slack",
	Taken:    "The way a hand would really take, in dashes",
	StepBack: "Step back",
	StepOn:   "Step on",
	LoopNow:  "Plays over and over: %s",
	TapTempo: "Tap the beat",
}
