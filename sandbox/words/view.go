package words

import "whorlbench/engine/naming"

// View holds the words for what the stage shows and how it plays.
type View struct {
	Title, Trail, Step, Loop                           string
	Trails                                             [4]string // as scene.TrailLength counts
	StepsBy                                            [2]string // as session.Steps counts
	Loops                                              [3]string // as session.Loop counts
	Strokes                                            [3]string // in a key: in-spin, antispin, prop in step with the arm
	HandPath, Grid, Arms, Letters, Whole, Kinds, Piece string
	Slack, Taken                                       string
	Big, LeaveBig                                      string
	BeatNow                                            string // %d
	BeatAt                                             string // %d, %s: the playing speed
	Leave                                              string // the big view, in short
	Point, LeavePoint                                  Named
	PieceBack, PieceOn                                 string   // while a piece is pointed at
	Previous, Next                                     Named    // pattern of the running order
	Dark                                               Named    // screen
	Blank, Unblank                                     string   // the screen
	StepsNow                                           string   // %s: as StepsBy
	OrderNow, OrderSaid                                string   // %d of %d, %s: title; seen, and spoken
	OrderEnds                                          []string // this is the first, the last
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
	Strokes:  [3]string{"in-spin", "antispin", "unit turn"},
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

	BeatAt:     "beat %d · %s",
	Leave:      "Leave",
	Point:      Named{"Hold and point at one piece", "Point"},
	LeavePoint: Named{"Go on: leave pointing", "Go on"},
	PieceBack:  "Point at the piece before",
	PieceOn:    "Point at the next piece",
	Previous:   Named{"Previous pattern of the running order", "Previous"},
	Next:       Named{"Next pattern of the running order", "Next"},
	Dark:       Named{"Dark screen", "Dark"},
	Blank:      "The screen is dark. Any key or a tap brings it back.",
	Unblank:    "Bring the picture back",
	StepsNow:   "Steps go %s",
	OrderNow:   "%d of %d · %s",
	OrderSaid:  "Pattern %d of %d: %s",
	OrderEnds:  []string{"This is the first pattern", "This is the last pattern"},

	Slack:    "Dots where a tether would go slack",
	Taken:    "The way a hand would really take, in dashes",
	StepBack: "Step back",
	StepOn:   "Step on",
	LoopNow:  "Plays over and over: %s",
	TapTempo: "Tap the beat",
}

// StrokeName says in a key what a stroke drawn as a figure's stands for.
func (t *Table) StrokeName(f naming.Figure) string {
	switch {
	case f.Kind == naming.Extension || f.Kind == naming.Isolation:
		return t.Name(f)
	case f.Spin == naming.SpinUnit:
		return t.View.Strokes[2]
	case f.Spin == naming.SpinAnti:
		return t.View.Strokes[1]
	}
	return t.View.Strokes[0]
}
