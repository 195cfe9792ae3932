package scene

// Options are what the stage shows; the zero value shows what helps most.
type Options struct {
	Trail        TrailLength
	HideHandPath bool
	HideGrid     bool
	HideArms     bool
	HideLetters  bool
	HideWhole    bool // of the piece in hand, and its slice
	PlainInk     bool // no ticks and double strokes by kind
	ByPiece      bool // a colour for each piece instead of each hand
	HideSlack    bool // where tethers go slack
	Taken        bool // the way of the hand that is really taken
}

// TrailLength is how far back the trail reaches.
type TrailLength uint8

// The lengths of the trail.
const (
	OneRound TrailLength = iota
	HalfRound
	AllRounds // to the closing, mostRounds at most
	NoTrail
)

// mostRounds bounds the trail of a lane that closes late.
const mostRounds = 8
