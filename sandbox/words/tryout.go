package words

// Tryout holds the words of a change that is shown before it is made.
type Tryout struct {
	Take, Leave, Next Named
	Way               string // %d, %d: which and how many, %s: what it is
	Taken, Left       string
	Aside             string    // the pattern has become another
	Edits             [2]string // as session counts from session.DidMend
}

var englishTryout = Tryout{
	Take:  Named{"Take it: make the change that is shown", "Take it"},
	Leave: Named{"Go back: leave everything as it is", "Go back"},
	Next:  Named{"Show the next way", "Next way"},
	Way:   "%d of %d: %s",
	Taken: "Taken. Undo brings back what was.",
	Left:  "Left as it was",
	Aside: "The change that was shown is put aside, as the pattern is another now. Undo shows it again.",
	Edits: [2]string{"the mending", "what was added"},
}
