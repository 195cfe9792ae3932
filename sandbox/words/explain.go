package words

// Explain holds the words of what explains: the glossary's dialog, whose terms
// stand in a Glossary, and the pattern told as plain steps.
type Explain struct {
	Open, Title, Intro   string // of the glossary
	Search, None         string
	Letters              string // what the jumps by letter are called
	All, Back            string // to the list; Back %s: to a word
	Play, Pause          string
	InBench              string // opens the pattern that is shown
	Judged               string // %s: the open pattern's title
	Used                 string // leads on to words in buttons
	Means, See           string // heads
	Failed               string
	Loose, Exact         string // readings of isolation
	HybridHere           string // readings of hybrid
	HybridApart          string
	HybridBeside         string
	OneHand              string
	Steps, StepsMirror   string // opens the steps; the switch of their view
	Copy, Copied, ByHand string
	Hand                 string // hands the steps over by the device's own sheet
	StepsText            string // names the steps as one text
	StepsFailed          string // %s: why
}

var englishExplain = Explain{
	Open: "Words of the trade…", Title: "Words of the trade",
	Intro:  "Each word with what it means, also where people differ, and a pattern that shows it.",
	Search: "Search", None: "No word like that is here. Try another, such as petal, split or seam.",
	Letters: "Letters",
	All:     "All words", Back: "Back to %s",
	Play: "Play", Pause: "Pause",
	InBench: "Open it in the bench",
	Judged:  "On the bench now: %s",
	Used:    "Words used here:",
	Means:   "What it means", See: "See also",
	Failed: "The words could not be loaded. Check the connection and open this again.",
	Loose:  "Loose sense", Exact: "Exact sense",
	HybridHere:   "Some moment",
	HybridApart:  "Nothing shared",
	HybridBeside: "Flower and simple",
	OneHand:      "This pattern has one hand; a hybrid takes two.",
	Steps:        "Step by step…", StepsMirror: "As in a mirror",
	Copy: "Copy", Copied: "Copied.", ByHand: "This browser does not let the page copy. The text is marked; copy it with the browser’s own menu or keys.",
	Hand: "Hand it on…", StepsText: "The steps as one text", StepsFailed: "The steps could not be told: %s",
}
