package words

// State holds the words of what a person meets beside the work itself: a
// first visit, work that cannot be kept or read, graphics that were lost.
type State struct {
	HintAgain                   string
	Returned                    string
	StoppedUnkept, LostAgain    string
	NoScript                    string
	KeptTitle, KeptHere, Unkept string
	Aside, SaveAside            string
	AsideName                   string // of the file, without its ending
}

var englishState = State{
	HintAgain: "Show the first hint again",
	Returned:  "The graphics were lost and have been started anew. Your work is as it was.",
	StoppedUnkept: "The bench has stopped. This browser keeps nothing for this page, so only what you saved as a file is safe; " +
		"in this tab, loading the page again may bring the rest back.",
	LostAgain: "This browser keeps losing its graphics. Close other pages that draw much, or turn graphics acceleration on in its settings, and try again. Your work is as it was.",
	NoScript:  "The bench is a program in this page. This browser has scripts turned off; turn them on for this page to use it.",
	KeptTitle: "Where your work is",
	KeptHere:  "Each edit is kept in this browser, with the fifty before it. Save gives you a file of your own.",
	Unkept:    "This browser keeps nothing for this page, so save your work as a file before you close this tab.",
	Aside:     "Work kept earlier could not be read. It has been put aside as it was.",
	SaveAside: "Save what was put aside",
	AsideName: "put-aside",
}
