package words

// Page holds the words of the page round the instrument.
type Page struct {
	AppName, Description                   string
	Bench, Live                            string // names of the bench's region and live region
	Loading                                string
	NoWasm, NoWebGL, LoadFailed, Stopped   string
	Retry                                  string
	Language                               string
	NameAndNotes, Title, Notes             string
	Patterns, PatternsIntro                string
	Search, SearchNone, Families           string // of the patterns
	More, Open, OpenFile, Save             string
	Theme, ThemeAuto, ThemeDay, ThemeNight string
	KeysTitle, SafetyTitle                 string
	Safety                                 []string
	Keys                                   []KeyHelp
	SeeTitle                               string
	MoreTeach, MoreLearn, MoreGive         string // heads over what More leads to
	See                                    []KeyHelp
	Cancel, Done, Close, Set               string
	ProblemTitle, ProblemKept              string
	TooLarge, NotSaved                     string
	DropHere                               string
	Saved                                  string // %s: a file's name
	NameIt, NameItHint                     string // at the first save of what was made of a built-in pattern
	OldNotes                               string // keeps those of the built-in pattern
	Proposed                               string // %s: the built-in pattern's title
}

// KeyHelp is a shortcut, or a thing on the screen, and what it does.
type KeyHelp struct{ Keys, Does string }

var englishPage = Page{
	AppName:     "Whorlbench",
	Description: "A sandbox for compound poi patterns: drag speeds, cut and rejoin pieces, and watch what it becomes.",
	Bench:       "Bench",
	Live:        "What changed",
	Loading:     "Loading the bench",
	NoWasm:      "This browser has no WebAssembly, which the bench is made of. A current Chrome, Edge, Firefox or Safari has it; some lock-down modes turn it off.",
	NoWebGL:     "This browser offers no WebGL 2, with which the bench draws. Turn graphics acceleration on in the browser's settings, or try another browser or device.",
	LoadFailed:  "The bench could not be loaded. Check the connection and try again.",
	Stopped:     "The bench has stopped. Your work is kept in this browser; loading the page again brings it back.",
	Retry:       "Try again",
	Language:    "Language",

	NameAndNotes:  "Title and notes",
	Title:         "Title",
	Notes:         "Notes",
	Patterns:      "Patterns",
	Search:        "Search, by a trade word or a title",
	SearchNone:    "Nothing here is called that. Try a trade word, such as antispin, triquetra or pendulum.",
	Families:      "Families",
	PatternsIntro: "Your own and, below, starting points: first the single figures, then what is put together of them, easier ones before harder. Opening one can be undone. Add after puts one behind the piece in hand; what joins on smoothly there is under Next, on the bench.",
	More:          "More",
	Open:          "Open",
	OpenFile:      "Open a file…",
	Save:          "Save",
	Theme:         "Colours",
	ThemeAuto:     "As the device",
	ThemeDay:      "Day",
	ThemeNight:    "Night",
	KeysTitle:     "Keys",
	SafetyTitle:   "Before you spin it",
	Safety: []string{
		"Clear the space around you and above you; others keep a metre beyond your reach.",
		"Begin with soft props, and slowly when a move is new.",
		"Fire only with a spotter, by the local rules, and taught by people who are practised in it; this program is no substitute for them.",
	},
	Keys: []KeyHelp{
		{"Space", "play or pause"},
		{"← →", "move the playhead, or the slider in focus"},
		{"Home", "back to the start"},
		{"C, J", "cut at the playhead, rejoin"},
		{"B, F, R", "there and back, flip, repeat"},
		{"Delete", "delete the piece"},
		{"Alt ← →", "move the piece in focus along its lane"},
		{"Shift ← →, Shift click", "on a piece, select several"},
		{"Enter, menu key", "on the piece in hand, what can be done with it"},
		{"← →, Enter", "on a join, the length of the piece before it; what the join is like"},
		{"Ctrl C, X, V", "copy, cut out, paste what is selected"},
		{"+ −", "draw the strip out, together"},
		{"Ctrl Z, Ctrl Shift Z", "undo, redo"},
		{"Comma, full stop", "step back, step on"},
		{"N", "what can follow the piece in hand"},
		{"Escape, W, Enter", "leave what is tried out, see the next way, take it"},
		{"I", "what this pattern is, by each definition"},
		{"G", "words of the trade"},
		{"S, L", "playing speed, what plays over and over"},
		{"D", "compare with another pattern; there O lays one over the other, X swaps them, D tells what differs, Escape leaves"},
		{"P", "the big view, for a projector; there the page keys step, as a clicker does, or turn to the next pattern of a running order, and Escape leaves"},
		{"H, − +, T, B", "in the big view: hold and point at a piece; slower, faster; steps by beat or petal; a dark screen"},
		{"K", "practise to a click; there Space pauses and goes on, the arrows change the tempo by 2, the page keys by 5, and Escape ends it"},
		{"M", "mirror the view"},
		{"Z, Shift Z, 0", "look closer at the head, from further away, fit the view"},
		{"?", "this list"},
		{"Tab", "go from control to control"},
		{"Shift ← →", "on a slider, in small steps"},
		{"Page up, down", "on a slider, in large steps"},
	},
	MoreTeach: "Show it", MoreLearn: "Learn it", MoreGive: "Take in and hand out",
	SeeTitle: "What you see",
	See: []KeyHelp{
		{"Disc, ring", "right hand, left hand, and the head of each poi; the line between is the tether"},
		{"Full ink", "the piece in hand; tap another on the strip to take it"},
		{"Pale curve", "the whole elementary pattern that the piece is cut from"},
		{"Tap a curve", "the head goes there and the piece is in hand; tap twice to cut it there"},
		{"Drag a head", "the prop goes with your finger, to any moment of the pattern"},
		{"Marks on the stage", "when paused, drag the cross to move the hand path, the knob on it for its size, the square to tilt it, a bar to make the piece, or the one before it, longer or shorter, the head at its start to turn the prop"},
		{"Two fingers, or the wheel", "look closer; tap twice beside the curves to look closer or to see all again"},
		{"Arm, Prop", "turns in one cycle; minus is clockwise; the prop counts by itself, not with the arm"},
		{"Little flowers", "what each prop speed would give: tap one. A dot below one: with it the piece joins smoothly at both ends"},
		{"Dot, chevron, square, broken bar", "how pieces join: smoothly, with a kink, with a stop of the prop, not at all"},
		{"Plain, ticked, double stroke", "in-spin, antispin, prop in step with the arm"},
		{"Mirror", "as in a mirror, for learners who face the screen; it is also how the performer sees it"},
		{"+, R, L", "left of the strip: add the other hand, hide one, take one away"},
		{"Long press", "on a piece, or a right click: select several, copy, paste, place, mirror, turn"},
		{"Joins", "tap one to be told what it is like, drag it to change the length of the piece before it"},
		{"Cut, Rejoin", "divide the piece under the playhead; make two halves one again"},
		{"Next", "what can follow the piece in hand, smooth ones first: take one to add it"},
		{"And back", "add the same path the other way, so half a circle becomes a C"},
		{"Flip arm", "the hand sweeps the other way from where it is, the prop turns as before"},
	},
	Cancel: "Cancel", Done: "Done", Close: "Close", Set: "Set",
	ProblemTitle: "This file could not be opened",
	ProblemKept:  "Your open pattern is as it was.",
	TooLarge:     "%s: %s MB is too large; a pattern file has at most %s MB",
	NotSaved:     "Not saved: %s",
	DropHere:     "Drop a pattern file, or a ZIP of them, to open it; several, or a folder, go into the running order",
	NameIt:       "A name for what you have made",
	NameItHint:   "It began as a built-in pattern. With a name of its own you find it again. The old notes told of the old pattern; write your own if you like.",
	OldNotes:     "Keep the old notes",
	Proposed:     "%s, my way",
	Saved:        "Saved as %s",
}
