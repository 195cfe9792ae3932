package words

// Mend holds the words for ways to put a bad join right.
type Mend struct {
	// Labels, as on a button. %d: a piece.
	CarryProp, CarryArm, CarryBoth string
	CarryRound                     string
	StartElsewhere, StartRound     string
	StartFitting                   string
	WithProp, Counted              string // %s: another label
	StartProp, Move, Turn          string
	Larger, Smaller                string
	Steady, Least                  string
	EaseTurn, EaseJoin             string
	Into, IntoAn                   string // %d piece, %s: what it is called
	Speed                          string
	LargerCircle, SmallerCircle    string
	Flip                           string
	ShareAll, EaseAll              string
	GoOn, StopThere, BringBack     string
	Repeat                         string // %d: times
	// What is not as it was. %d: a piece, where there is one.
	Takes, TakesToo, AndMore     string // %d, %s: beats; %d: further pieces
	HandDoes, HandsDo            string // %s: pieces, %s: as Dials.Laws
	And                          string // %s, %s: the last two of several
	ArmStarts, PropStarts        string // %d, %s: degrees
	ArmGoesOn, PropGoesOn        string
	RoundArm, RoundProp          string // %s: degrees
	Moves, Turns                 string // %d, %s: a length; degrees
	PathGets, PathsGet           string // %s: pieces
	Grows, Shrinks               string // %s as PathGets, %s, %s: lengths
	PropMakes, PropOther         string // %d, %s, %s: turns; %d, %s: turns
	HandMakes, HandOther         string
	HandGoes                     string // %d, %s, %s: turns
	HasPieces                    string // %d, %d
	ManyTurns, PartTurn, NoTurn  string // %s: a number
	PartBeat                     string // %s: a number
	Metre, Centimetre, UnderOne  string // %s: a number
	Smooth, AllSmooth            string
	StopKink, StillKink, NowKink string // %s m/s; %s, %s m/s; %s m/s
	WorstKink                    string // %s m/s, %d
	StillHand, StillProp         string // %s: a length; degrees
	StillStop, NowStop           string
	WorstGap, WorstStop          string // %d
	BackAtOnce                   string
	// What it costs, and what else it is good for.
	Bends                              string // %s: a length
	Rests                              string
	Stretches                          string // %s, %s: beats
	Never, Later, NowCloses            string // Later: %s rounds
	GetsGap, GetsStop, GetsKink        string // %d
	GapGrows                           string // %d
	KinkGrows                          string // %d, %s m/s
	GetsSmooth, GetsBetter, KinkShrink string // %d; %d; %d, %s m/s
}

var englishMend = Mend{
	CarryProp: "Let the prop carry on into piece %d", CarryArm: "Let the hand carry on into piece %d", CarryBoth: "Let piece %d carry on",
	CarryRound: "Let the prop carry on all the way round",
	WithProp:   "%s, and let the prop carry on", Counted: "%s, in beats that can be counted",
	StartFitting:   "Start piece %d where its own prop points as it comes",
	StartElsewhere: "Start piece %d where the hand is", StartRound: "Start the round where the hand is",
	StartProp: "Start the round with the prop where it ends", Move: "Move the path of piece %d to the hand", Turn: "Turn the path of piece %d to the hand",
	Larger: "Make the path of piece %d larger, to reach the hand", Smaller: "Make the path of piece %d smaller, to begin at the hand",
	Steady: "Share the beats so that the prop turns steadily", Least: "Share the beats for the least jolt",
	EaseTurn: "Let the hand ease into the turn", EaseJoin: "Let the hand rest for a moment at the join",
	Into: "Turn piece %d into a %s", IntoAn: "Turn piece %d into an %s", Speed: "Give the prop in piece %d a speed that fits",
	LargerCircle: "Make the circle of piece %d larger", SmallerCircle: "Make the circle of piece %d smaller",
	Flip:     "Turn the prop the other way in piece %d",
	ShareAll: "Share out all the beats anew", EaseAll: "Share out all the beats and ease the hand where it helps",
	GoOn: "Let piece %d go on until the hand is back", StopThere: "End piece %d where the round began",
	BringBack: "Let piece %d bring the hand back",
	Repeat:    "Write the round out %d times",

	Takes: "Piece %d takes %s", TakesToo: ", piece %d takes %s", AndMore: ", and %d more pieces change too",
	HandDoes: "In piece %s the hand %s", HandsDo: "In pieces %s the hand %s", And: "%s and %s",
	ArmStarts: "Piece %d starts with the arm at %s°", PropStarts: "Piece %d starts with the prop at %s°",
	ArmGoesOn: "Piece %d starts where the hand comes from", PropGoesOn: "In piece %d the prop goes on as it comes",
	RoundArm: "The round starts with the arm at %s°", RoundProp: "The round starts with the prop at %s°",
	Moves: "The path of piece %d moves by %s", Turns: "The path of piece %d turns by %s°",
	Grows: "%s larger: a radius of %s instead of %s", Shrinks: "%s smaller: a radius of %s instead of %s",
	PathGets: "The path of piece %s gets", PathsGet: "The paths of pieces %s get",
	PropMakes: "In piece %d the prop makes %s instead of %s", PropOther: "In piece %d the prop makes %s the other way",
	HandMakes: "In piece %d the hand makes %s instead of %s", HandOther: "In piece %d the hand makes %s the other way",
	HandGoes:  "Piece %d now goes on for %s instead of %s",
	HasPieces: "The round has %d pieces instead of %d",
	ManyTurns: "%s turns", PartTurn: "%s of a turn", NoTurn: "no turn", PartBeat: "%s of a beat",
	Metre: "%s m", Centimetre: "%s cm", UnderOne: "less than 1 cm",

	Smooth: "Smooth now", AllSmooth: "Every join is smooth now",
	StopKink: "The prop no longer turns back; %s m/s sideways are left", StillKink: "Still %s m/s sideways; it was %s", NowKink: "Nothing jumps out of place any more; %s m/s sideways are left",
	WorstKink: "At worst %s m/s sideways are left, after piece %d",
	StillHand: "The hand still jumps by %s", StillProp: "The prop still jumps by %s°",
	StillStop: "The prop would still have to stop and turn back", NowStop: "Nothing jumps out of place any more, but the prop would have to stop and turn back",
	WorstGap: "The gap after piece %d is left", WorstStop: "After piece %d the prop would still have to stop and turn back",
	BackAtOnce: "Hand and prop are back after one round",

	Bends:     "The curve bends by up to %s",
	Rests:     "The hand stands still for a moment where it went on before",
	Stretches: "The round takes %s instead of %s, so a second hand would no longer keep time with it",
	Never:     "The hand no longer comes back to where the round began", Later: "It takes %s to come back to its start", NowCloses: "Hand and prop now come back to their start",
	GetsGap: "The join after piece %d gets a gap", GetsStop: "After piece %d the prop would have to stop and turn back",
	GetsKink: "The join after piece %d gets a kink", GapGrows: "The gap after piece %d gets larger",
	KinkGrows:  "The kink after piece %d grows to %s m/s",
	GetsSmooth: "The join after piece %d becomes smooth too", GetsBetter: "The join after piece %d gets better too", KinkShrink: "The kink after piece %d goes down to %s m/s",
}
