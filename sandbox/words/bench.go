package words

import (
	"fmt"
	"math"
	"math/big"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
)

// Bench holds the words of the instrument. Label is what a control is called
// in full; Short is what fits on it.
type Bench struct {
	Play, Pause, Speed, Tempo, Mirror, Undo, Redo           Named
	Cut, Rejoin, ThereBack, Flip, Repeat, Delete, Next      Named
	Less, More, Type                                        string // %s: a slider's label
	Playhead                                                string
	LeftLetter, RightLetter                                 string
	LaneOf                                                  string // %s: a side
	PieceOf                                                 string // %s: a side, then number, count, name
	PieceLine, PieceHead                                    string // which piece, short and in full
	Ratio, OneBeat, ManyBeats, BeatOf                       string
	ClosesOne, ClosesMany, Never, Together, NeverTogether   string
	ClosesShort                                             string // %s, %s: beats, seconds; all joins are smooth
	FirstHint                                               string
	Deleted, CutDone, Rejoined, Moved, Added, Undone, Redid string
	Flipped                                                 string // %d: a piece
	NoCut, NoRejoin, LastPiece, Unwritable                  string
	AskNumber                                               string
	NotNumber, OutOfRange                                   string
	TempoCaution                                            string
	MirrorOn, MirrorOff, Opened                             string
	AllSmooth                                               string
	Edits                                                   [10]string // as session.What counts
	RoundOf                                                 string     // %d, %d: which and how many
	Fits                                                    string     // %s: a prop speed at which the piece joins smoothly
	RoundNow                                                string     // %d: which, of a lane that never closes
	OneTurn, Turns, HalfTurn, QuarterTurn, ThreeQuarters    string
	GapAfter, PropGapAfter, StopAfter, KinkAfter            string // %d: piece, %s: m, °, m/s
	JoinSmooth, JoinKink, JoinStop, JoinGap                 string
}

// Named is a control's name in full and in short.
type Named struct{ Label, Short string }

var englishBench = Bench{
	Play:      Named{"Play", ""},
	Pause:     Named{"Pause", ""},
	Speed:     Named{"Playing speed", "speed"},
	Tempo:     Named{"Tempo", "tempo"},
	Mirror:    Named{"Mirror the view", "Mirror"},
	Undo:      Named{"Undo", "Undo"},
	Redo:      Named{"Redo", "Redo"},
	Cut:       Named{"Cut at the playhead", "Cut"},
	Rejoin:    Named{"Rejoin with its neighbour", "Rejoin"},
	ThereBack: Named{"There and back: add the way back", "And back"},
	Flip:      Named{"Flip arm: sweep the other way", "Flip arm"},
	Repeat:    Named{"Repeat the piece", "Repeat"},
	Delete:    Named{"Delete the piece", "Delete"},
	Next:      Named{"Next: what can follow here?", "Next"},
	Less:      "%s, less",
	More:      "%s, more",
	Type:      "%s, type a value",
	Playhead:  "Playhead",

	LeftLetter: "L", RightLetter: "R",
	LaneOf:    "Pieces of the %s hand",
	PieceOf:   "%s hand, piece %d of %d: %s",
	PieceLine: "%s · %d of %d",
	PieceHead: "%s hand · piece %d of %d",
	Ratio:     "ratio %s",
	OneBeat:   "1 beat", ManyBeats: "%s beats",
	BeatOf: "beat %s of %s",

	ClosesOne:     "Closes every round · %s · %s",
	ClosesShort:   "smooth · %s · %s",
	ClosesMany:    "Closes after %s · %s · %s",
	Never:         "Never closes: a round ends %s m from its start",
	Together:      "Both close together after %s · %s",
	NeverTogether: "Never closes: the %s hand’s round ends %s m from its start",
	FirstHint:     "Tap a little flower, or press Cut",

	Deleted:  "Piece deleted. Undo brings it back.",
	CutDone:  "Cut: pieces %d and %d",
	Rejoined: "Rejoined: piece %d",
	Moved:    "Moved: now piece %d",
	Flipped:  "Flipped: the arm of piece %d sweeps the other way",
	Added:    "Added: piece %d",
	Undone:   "Undone: %s",
	Redid:    "Redone: %s",
	Edits: [10]string{"a change of a number", "opening a pattern", "the new name", "the cut", "rejoining",
		"moving the piece", "the way back", "the flip", "repeating", "deleting"},
	Fits:    "%s, both joins smooth",
	RoundOf: "round %d of %d", RoundNow: "round %d",
	OneTurn: "1 turn", Turns: "%s turns", HalfTurn: "½ turn", QuarterTurn: "¼ turn", ThreeQuarters: "¾ turn",

	NoCut:      "The playhead stands on a seam. Move it into a piece to cut.",
	NoRejoin:   "These pieces are not one stroke continued, so they stay two.",
	LastPiece:  "A lane keeps at least one piece.",
	Unwritable: "Not done: the result could not be saved (%s).",

	AskNumber:  "In%s: a whole number, a decimal or a fraction such as 1/3, from %s to %s.",
	NotNumber:  "“%s” is not a number. Allowed: a whole number, a decimal or a fraction such as -1/3.",
	OutOfRange: "%s is out of range. Allowed: from %s to %s.",
	TempoCaution: "Before you spin it: clear the space around you and above you, begin with soft props, " +
		"and slow down when a move is new. Fire only with a spotter, by the local rules, and taught by people who are practised in it.",

	MirrorOn: "Mirror view on", MirrorOff: "Mirror view off",
	Opened: "Opened: %s",

	AllSmooth:    "All joins are smooth",
	GapAfter:     "Gap after piece %d: the hand jumps %s m",
	PropGapAfter: "Gap after piece %d: the prop jumps %s°",
	StopAfter:    "Stop after piece %d: the prop turns back",
	KinkAfter:    "Kink after piece %d: a jolt of %s m/s sideways",
	JoinSmooth:   "joins smoothly",
	JoinKink:     "joins with a kink",
	JoinStop:     "joins with a stop",
	JoinGap:      "does not join",
}

// Value writes an exact number for a person: a short decimal where there is
// one, else a fraction; what has neither is rounded, but never to 0.
func Value(f frac.Frac) string {
	switch {
	case f.IsDecimal(3):
		return Minus(Decimals(f.Decimal(3)))
	case f.Den().Cmp(big.NewInt(1000)) <= 0:
		return Minus(f.String())
	case f.IsDecimal(6):
		return Minus(Decimals(f.Decimal(6)))
	}
	text := f.Decimal(3)
	for places := 4; text == "0" && places < 16; places++ {
		text = f.Decimal(places)
	}
	return Minus(Decimals(text))
}

// Beats writes a length of time in beats.
func (t *Table) Beats(f frac.Frac) string {
	if f.Equal(frac.Int(1)) {
		return t.Bench.OneBeat
	}
	return fmt.Sprintf(t.Bench.ManyBeats, Value(f))
}

// ArmTurns writes how far the arm goes in a piece, in turns either way.
func (t *Table) ArmTurns(f frac.Frac) string {
	b := &t.Bench
	f = f.Abs()
	for _, x := range []struct {
		turns frac.Frac
		text  string
	}{{frac.New(1, 4), b.QuarterTurn}, {frac.New(1, 2), b.HalfTurn}, {frac.New(3, 4), b.ThreeQuarters}, {frac.Int(1), b.OneTurn}} {
		if f.Equal(x.turns) {
			return x.text
		}
	}
	return fmt.Sprintf(b.Turns, Value(f))
}

// PieceName says which piece of which hand, and what it is.
func (t *Table) PieceName(side engine.Side, i, n int, f naming.Figure) string {
	return capital(fmt.Sprintf(t.Bench.PieceOf, t.Side(side), i+1, n, t.Name(f)))
}

// SeamFault says in one line what is wrong with a seam; smooth ones have
// nothing wrong.
func (t *Table) SeamFault(s seam.Seam) string {
	b := &t.Bench
	after := s.After + 1
	switch {
	case s.Verdict == seam.Stop:
		return fmt.Sprintf(b.StopAfter, after)
	case s.Verdict == seam.Kink:
		return fmt.Sprintf(b.KinkAfter, after, number(math.Abs(s.JumpAcross), 2))
	case s.Verdict == seam.Gap && s.HandGap > engine.TolGap:
		return fmt.Sprintf(b.GapAfter, after, Metres(s.HandGap))
	case s.Verdict == seam.Gap:
		return fmt.Sprintf(b.PropGapAfter, after, number(float64(s.PropGap), 1))
	}
	return b.AllSmooth
}

// Join says how a piece joins the next.
func (t *Table) Join(v seam.Verdict) string {
	b := &t.Bench
	return [...]string{b.JoinGap, b.JoinStop, b.JoinKink, b.JoinSmooth}[v]
}

// PieceTag says which piece of which hand in the fewest letters.
func (t *Table) PieceTag(side engine.Side, i, n int) string {
	return fmt.Sprintf(t.Bench.PieceLine, t.Letter(side), i+1, n)
}

// PieceHeading says which piece of which hand.
func (t *Table) PieceHeading(side engine.Side, i, n int) string {
	return capital(fmt.Sprintf(t.Bench.PieceHead, t.Side(side), i+1, n))
}

// Letter returns the letter that stands for a hand.
func (t *Table) Letter(s engine.Side) string {
	if s == engine.Left {
		return t.Bench.LeftLetter
	}
	return t.Bench.RightLetter
}

// ClosingShort says in few words after what time all lanes have come back,
// empty if they never do.
func (t *Table) ClosingShort(tempo float64, tracks ...*engine.Track) string {
	beats, ok := engine.ClosingTime(tracks...)
	if !ok {
		return ""
	}
	return fmt.Sprintf(t.Bench.ClosesShort, t.CountBeats(beats), t.ShortSeconds(beats, tempo))
}

// Closing says in one line when the lanes come back.
func (t *Table) Closing(tempo float64, tracks ...*engine.Track) string {
	b := &t.Bench
	for _, k := range tracks {
		if c := k.Closing(); !c.Closes() {
			gap := Metres(c.HandGap)
			if len(tracks) == 1 {
				return fmt.Sprintf(b.Never, gap)
			}
			return fmt.Sprintf(b.NeverTogether, t.Side(k.Lane.Side), gap)
		}
	}
	if len(tracks) == 1 {
		c := tracks[0].Closing()
		beats, seconds := t.CountBeats(c.Beats), t.ShortSeconds(c.Beats, tempo)
		if c.Rounds.IsInt64() && c.Rounds.Int64() == 1 {
			return fmt.Sprintf(b.ClosesOne, beats, seconds)
		}
		return fmt.Sprintf(b.ClosesMany, t.CountRounds(c.Rounds), beats, seconds)
	}
	beats, _ := engine.ClosingTime(tracks...)
	return fmt.Sprintf(b.Together, t.CountBeats(beats), t.ShortSeconds(beats, tempo))
}
