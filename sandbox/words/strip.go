package words

import (
	"fmt"
	"math"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// Strip holds the words of the strip and its sheets: hands, pieces, joins.
type Strip struct {
	// Hands.
	AddHand, HandsOf, AddLabel, AnewLabel string        // %s: a side; a side and a timing
	Timings                               [5]TitledText // as session.Timing counts
	HideHand                              TitledText    // %s: a side
	SoloHand, BothHands, TakeHand         TitledText    // %s: a side
	HandAdded, HandTaken                  string        // %s: a side
	HandHidden, HandShown, HandSolo       string        // %s: a side
	HiddenTag                             string        // follows a label
	Later                                 TitledText    // %s: a side
	LaterHint, LaterDone                  string        // LaterDone %s, %s: a side, beats
	Edits                                 [9]string     // as session counts from session.DidAddHand
	Copy, CutOut, Paste, PlaceHere, Carry TitledText    // of a piece
	CopyNothing                           string        // nothing to paste
	Copied, CutOutDone, Pasted            string        // %d: a piece
	Placed, CarriesOn                     string        // %d: a piece
	MirrorAll, TurnAll                    TitledText    // of the pattern
	Mirrored, Turned                      string        // what was done
	Plain                                 [4]string     // what repeat, back, flip, delete do
	JoinNext                              string        // a choice: the piece's join with the next
	JoinOf                                string        // %s side, %d, %d pieces, %s verdict
	JoinTitle                             string        // %s side, %d, %d
	JoinSelf                              string        // %s side, %s verdict: a lane's only piece
	JoinSelfTitle                         string        // %s side
	JoinLabels                            JoinLabels    // of a join's lines
	Verdicts                              [4]string     // as seam.Verdict counts
	Meanings                              [4]string     // one sentence for each
	None, Reverses, Keeps                 string        // what a line says
	Straight, TurnsBy, TurnsBack, Stays   string        // %s: degrees
	Outward, Inward, Sideways             string        // %s: m/s
	LengthNow                             string        // %d piece, %s beats
	Inserted                              string        // %s: title
	InsertShort, InsertLabel, InsertGap   string        // %s: title
	ZoomNow                               string        // %s: beats
	Several, AllPieces                    TitledText    // %d: how many
	SeveralNow                            string
	OneInHand, SeveralInHand              string // %d, %d: first and last
	MovedAll, AddedAll, CopiedAll         string // %d, %d
	DeletedAll, CutOutAll                 string // %d: how many
}

// TitledText is a choice: what it is called, and what it does.
type TitledText struct{ Label, Detail string }

// JoinLabels name the lines of a join's sheet.
type JoinLabels struct {
	HandGap, HeadGap, PropGap string
	Turn, Arm, Prop           string
	Along, Across             string
}

var englishStrip = Strip{
	AddHand:   "Add the %s hand",
	HandsOf:   "%s hand",
	AddLabel:  "Add the %s hand: %s",
	AnewLabel: "The %s hand anew: %s",
	Timings: [5]TitledText{
		{"together, same direction", "A copy. Both props turn the same way and point the same way all the time."},
		{"split, same direction", "A copy turned by half a turn. Both props turn the same way, one always opposite the other: one up, one down."},
		{"quarter, same direction", "A copy turned by a quarter turn. Both props turn the same way, always a quarter turn apart."},
		{"together, opposite", "The mirror image. The props turn opposite ways and meet above and below, like the two wings of a gate."},
		{"split, opposite", "The mirror image, turned by half a turn. The props turn opposite ways; when one is above, the other is below, and they cross at the sides."},
	},
	HideHand:  TitledText{"Hide the %s hand", "It stays in the pattern and plays on unseen."},
	SoloHand:  TitledText{"Only the %s hand", "The other hand is hidden until you show both."},
	BothHands: TitledText{"Show both hands", "One of them is hidden now."},
	TakeHand:  TitledText{"Take the %s hand away", "The other hand stays as it is. Undo brings it back."},
	HandAdded: "The %s hand: %s", HandTaken: "The %s hand is taken away. Undo brings it back.",
	HandHidden: "The %s hand is hidden", HandShown: "Both hands are shown", HandSolo: "Only the %s hand is shown",
	HiddenTag: ", hidden",
	Later:     TitledText{"The %s hand some beats later", "A copy that begins elsewhere in its round, as when one hand follows the other."},
	LaterHint: "How many beats later: a whole number, a decimal or a fraction such as 1/2.",
	LaterDone: "The %s hand follows %s later",
	Edits: [9]string{"adding a hand", "taking a hand away", "cutting out", "pasting", "placing the piece", "letting it carry on",
		"the mirror image", "the turn", "adding a pattern"},

	Copy:        TitledText{"Copy", "To be pasted after any piece, of either hand."},
	CutOut:      TitledText{"Cut out", "Copy it and take it away."},
	Paste:       TitledText{"Paste after", "The copy carries on from where this piece ends."},
	PlaceHere:   TitledText{"Place here", "It begins here from now on, arm and prop, whatever comes before."},
	Carry:       TitledText{"Let it carry on", "It begins where the piece before ends."},
	CopyNothing: "There is nothing to paste yet. Copy a piece first.",
	Copied:      "Copied: piece %d", CutOutDone: "Cut out. Paste puts it elsewhere.", Pasted: "Pasted: piece %d",
	Placed: "Placed: piece %d", CarriesOn: "Piece %d carries on",
	MirrorAll: TitledText{"Mirror the whole pattern", "Left and right change places, and so do the hands."},
	TurnAll:   TitledText{"Turn the whole by 45°", "A diamond becomes a box, a box a diamond."},
	Mirrored:  "The whole pattern is mirrored", Turned: "The whole pattern is turned by 45°",
	Plain: [4]string{"The same again after it.", "The same path the other way, so half a circle becomes a C.",
		"The hand sweeps the other way from where it is, the prop turns as before.", "Take it out; what follows carries on."},
	JoinNext: "How it joins the next",

	JoinOf: "%s hand, join of piece %d and %d: %s", JoinTitle: "%s hand: from piece %d into piece %d",
	JoinSelf: "%s hand, join of the piece with itself: %s", JoinSelfTitle: "%s hand: from one round into the next",
	JoinLabels: JoinLabels{
		HandGap: "Gap of the hand", HeadGap: "Gap of the head", PropGap: "Gap of the prop’s angle",
		Turn: "The hand", Arm: "The arm", Prop: "The prop",
		Along: "Jump along the tether", Across: "Jump across the tether",
	},
	Verdicts: [4]string{"Gap", "Stop", "Kink", "Smooth"},
	Meanings: [4]string{
		"The next piece begins somewhere else than this one ends, so nobody can spin it: something would have to jump.",
		"The prop would have to stop and turn back. A poi on a tether cannot: it goes slack and falls; a stick or a staff can.",
		"The head’s speed would have to change sideways at once. A tether pulls only along itself, so in the hand it snatches and the poi wobbles.",
		"Hand and prop go on without a jolt, and whoever watches sees one movement.",
	},
	None: "none", Reverses: "changes its direction", Keeps: "keeps its direction",
	Straight: "goes straight on", TurnsBy: "turns by %s°", TurnsBack: "turns back, by %s°", Stays: "stays where it is",
	Outward: "%s m/s outward: the pull grows at once", Inward: "%s m/s inward: the pull slackens at once", Sideways: "%s m/s; more than %s is a kink",
	LengthNow: "Piece %d: %s",
	Inserted:  "Added: %s", InsertGap: "It does not join on: tap the mark where it tears to mend that, or undo and see Next for what can follow", InsertShort: "Add after", InsertLabel: "Add after the piece in hand: %s",
	ZoomNow:    "The strip shows %s",
	Several:    TitledText{"Select several", "Then tap the piece up to which you want them."},
	AllPieces:  TitledText{"Select all", "The %d pieces of this hand, to copy, move, repeat or take out at once."},
	SeveralNow: "Now tap the piece up to which you want them",
	OneInHand:  "Piece %d in hand", SeveralInHand: "Pieces %d to %d selected",
	MovedAll: "Moved: now pieces %d to %d", AddedAll: "Added: pieces %d to %d", CopiedAll: "Copied: pieces %d to %d",
	DeletedAll: "%d pieces deleted. Undo brings them back.", CutOutAll: "Cut out: %d pieces. Paste puts them elsewhere.",
}

// Line is one line of a sheet: what it is about, and what there is to say.
type Line struct {
	Name string `json:"name"`
	Text string `json:"text"`
}

// HandName names a hand, as a heading does.
func (t *Table) HandName(side engine.Side) string {
	return capital(fmt.Sprintf(t.Strip.HandsOf, t.Side(side)))
}

// TimingTitle names a timing, as the head of a choice does.
func (t *Table) TimingTitle(i int) string { return capital(t.Strip.Timings[i].Label) }

// JoinName says which join it is, in full, and what it is.
func (t *Table) JoinName(side engine.Side, n int, s seam.Seam) string {
	w := &t.Strip
	if n == 1 {
		return capital(fmt.Sprintf(w.JoinSelf, t.Side(side), t.Verdict(s.Verdict)))
	}
	return capital(fmt.Sprintf(w.JoinOf, t.Side(side), s.After+1, (s.After+1)%n+1, t.Verdict(s.Verdict)))
}

// JoinTitle heads a join's sheet.
func (t *Table) JoinTitle(side engine.Side, n int, s seam.Seam) string {
	if n == 1 {
		return capital(fmt.Sprintf(t.Strip.JoinSelfTitle, t.Side(side)))
	}
	return capital(fmt.Sprintf(t.Strip.JoinTitle, t.Side(side), s.After+1, (s.After+1)%n+1))
}

// JoinLines tells all of a join: how far hand, head and prop jump, which way
// they turn, and what the head's speed does.
func (t *Table) JoinLines(s seam.Seam) []Line {
	w := &t.Strip
	gap := func(x, tol float64, unit string, places int) string {
		if x <= tol {
			return w.None
		}
		if places == 0 {
			return Metres(x) + unit
		}
		return number(x, places) + unit
	}
	turn := w.Stays
	switch {
	case s.HandTurnsBack:
		turn = fmt.Sprintf(w.TurnsBack, number(float64(s.Turn), 1))
	case s.HasTurn && s.Turn < 0.05:
		turn = w.Straight
	case s.HasTurn:
		turn = fmt.Sprintf(w.TurnsBy, number(float64(s.Turn), 1))
	}
	way := func(reverses bool) string {
		if reverses {
			return w.Reverses
		}
		return w.Keeps
	}
	along := w.None
	if x := number(math.Abs(s.JumpAlong), 2); x != "0" {
		along = fmt.Sprintf(w.Outward, x)
		if s.JumpAlong < 0 {
			along = fmt.Sprintf(w.Inward, x)
		}
	}
	across := w.None
	if x := number(math.Abs(s.JumpAcross), 2); x != "0" {
		across = fmt.Sprintf(w.Sideways, x, number(engine.TolKink, 2))
	}
	k := &w.JoinLabels
	return []Line{
		{k.HandGap, gap(s.HandGap, engine.TolGap, " m", 0)},
		{k.HeadGap, gap(s.HeadGap, engine.TolGap, " m", 0)},
		{k.PropGap, gap(float64(s.PropGap), engine.TolPropGap, "°", 1)},
		{k.Turn, turn},
		{k.Arm, way(s.ArmReverses)},
		{k.Prop, way(s.PropReverses)},
		{k.Along, along},
		{k.Across, across},
	}
}
