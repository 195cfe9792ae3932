package words

// Command holds the words of the command line.
type Command struct {
	Usage    string
	Unknown  string // %s: program, %q: what was asked for
	BadFlag  string // %s: program and command, %v: what is wrong
	Stray    string // %s: program and command, %q: the argument
	TryHelp  string // %s: program or program and command
	Serve    Serve
	Check    Check
	Quantity Quantity
}

// Serve holds the words of the command that serves the page.
type Serve struct {
	Usage     string
	At        string // %s: address
	Stop      string
	Exposed   string // %s: address
	PortTaken string // %s: address, %s: another to try
	NoListen  string // %s: address, %v: cause
	NoFolder  string
	NoDist    string // %s: folder, %v: cause
	Failed    string // %v: cause
	Missing   string
	NoIndex   string

	ForeignHost string // %q: the Host header
	ReadOnly    string
	NotFound    string
	NoEncoding  string
	Unreadable  string
}

// Check holds the words of the command that tells what a pattern is made of.
type Check struct {
	Usage       string
	NoFile      string
	CannotRead  string // %s: file, %v: cause
	TooLong     string // %s: file, %d: bytes
	CannotWrite string // %v: cause
	Stdin       string // what the file on standard input is called
	Hand        string // %s: left or right
	Head        [5]string
	PetalsMode  string // %s: petals, %s: mode
	PetalsTip   string // %s: petals and mode, %s: degrees
	None        string
	LaneCloses  string // %s: rounds, %s: beats, %s: seconds
	LaneNever   string // %s: metres
	WholeCloses string // %s: beats, %s: seconds
	WholeNever  string
	Caution     string
}

// Quantity holds units with their numbers.
type Quantity struct {
	Round, Rounds string // %s: a number
	Beat, Beats   string
	Seconds       string
	About         string // %s: a rounded number
}

var englishCommand = Command{
	Usage: `whorlbench: build and understand compound poi patterns

usage:
  whorlbench serve [--addr HOST:PORT] [--dir FOLDER]
  whorlbench check FILE...

commands:
  serve   opens the bench to a browser on this machine
  check   tells what a pattern is made of and when it closes; - is standard input

for example:
  $ whorlbench check half-moon.toml
` + sampleAnswer + `
exit status: 0 fine, 2 the input could not be used
`,
	Unknown: "%s: there is no command %q",
	BadFlag: "%s: %v",
	Stray:   "%s: unexpected argument %q",
	TryHelp: "try: %s --help",

	Serve: Serve{
		Usage: `usage: whorlbench serve [--addr HOST:PORT] [--dir FOLDER]

Serves the built bench until it is interrupted.

  --addr HOST:PORT   where to listen (default 127.0.0.1:8377; port 0 takes a free one)
  --dir FOLDER       the built bench (default web/dist; make dist builds it)
`,
		At:        "the bench is at %s",
		Stop:      "Ctrl+C stops it",
		Exposed:   "WARNING: listening at %s, beyond this machine: everyone who can reach it can open the bench",
		PortTaken: "whorlbench serve: %s is taken; try: whorlbench serve --addr %s (or port 0 for a free one)",
		NoListen:  "whorlbench serve: cannot listen at %s: %v",
		NoFolder:  "the bench is being built anew; try again in a moment",
		NoDist:    "whorlbench serve: %s: %v; to build the bench, run: make dist",
		Failed:    "whorlbench serve: %v",
		Missing:   "no such folder",
		NoIndex:   "the folder has no index.html",

		ForeignHost: "this server answers only to its own address, not to %q",
		ReadOnly:    "this server only gives files: use GET or HEAD",
		NotFound:    "there is no such file here",
		NoEncoding:  "this file is not to be had in any encoding that you accept",
		Unreadable:  "this file cannot be read",
	},

	Check: Check{
		Usage: `usage: whorlbench check FILE...

Tells, for each hand, which elementary patterns its pieces are slices of, and
when the whole closes. - reads standard input.
`,
		NoFile:      "whorlbench check: no file given; try: whorlbench check half-moon.toml (- reads standard input)",
		CannotRead:  "%s: cannot be read: %v",
		TooLong:     "%s:1:1: longer than %d bytes, which is no pattern",
		CannotWrite: "whorlbench check: cannot write the answer: %v",
		Stdin:       "<stdin>",
		Hand:        "%s hand",
		Head:        [5]string{"piece", "pattern", "ratio", "beats", "petals"},
		PetalsMode:  "%s, %s mode",
		PetalsTip:   "%s, first tip at %s°",
		None:        "–",
		LaneCloses:  "closes after %s, %s, %s",
		LaneNever:   "the hand ends a round %s m from where it began: the lane never closes",
		WholeCloses: "the whole closes after %s, %s",
		WholeNever:  "the whole never closes",
		Caution: `Take care: spin in clear space, soft props first. Fire needs a spotter, and
local rules apply. These are numbers, not lessons: learn from people who are
experienced and, where it is asked for, licensed.
`,
	},

	Quantity: Quantity{
		Round:   "%s round",
		Rounds:  "%s rounds",
		Beat:    "%s beat",
		Beats:   "%s beats",
		Seconds: "%s s",
		About:   "about %s",
	},
}

// sampleAnswer is what check says of a C-cap; a test holds it to that.
const sampleAnswer = `  half-moon.toml: Half-moon
  right hand
    piece  pattern                     ratio  beats  petals
        1  extension                       1      2  0
        2  four-petal antispin flower     −3      2  4, diamond mode, first tip at 0°
    closes after 1 round, 4 beats, 2 s
  the whole closes after 4 beats, 2 s
`
