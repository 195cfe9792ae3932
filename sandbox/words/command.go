package words

// Command holds the words of the command line.
type Command struct {
	Usage   string
	Unknown string // %s: program, %q: what was asked for
	BadFlag string // %s: program and command, %v: what is wrong
	Stray   string // %s: program and command, %q: the argument
	TryHelp string // %s: program or program and command
	Serve   Serve
	Check   Check
	Sample  Sample
	Link    LinkCommand
	Render  *Render // where it stands, so that the linker can leave all of this out
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
	BadPublic string // %v: what is wrong
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
	Usage        string
	NoFile       string
	CannotRead   string // %s: file, %v: cause
	TooLong      string // %s: file, %d: bytes
	CannotWrite  string // %v: cause
	Stdin        string // what the file on standard input is called
	Hand         string // %s: left or right
	Head         [5]string
	SeamHead     [6]string
	From         string // %d, %d: pieces before and after
	Degrees      string // %s: a number
	HandBack     string
	ArmReverses  string
	PropReverses string
	Fault        string // %s: level, %s: where, %s: what
	NoLevel      string // %q: what was asked for, %s: the levels
	PetalsMode   string // %s: petals, %s: mode
	PetalsTip    string // %s: petals and mode, %s: degrees
	None         string
	LaneCloses   string // %s: rounds, %s: beats, %s: seconds
	LaneNever    string // %s: metres
	WholeCloses  string // %s: beats, %s: seconds
	WholeNever   string
	Caution      string
}

// Sample holds the words of the command that prints places.
type Sample struct {
	Usage       string
	OneFile     string // %d: files given
	PerBeat     string // %d: what was asked for
	TooMany     string // %s: file, %v: rows, %d: most rows
	CannotWrite string // %v: cause
}

// LinkCommand holds the words of the command that prints links.
type LinkCommand struct {
	Usage       string
	NoFile      string
	BadAddress  string // %v: what is wrong
	Refused     string // %s: file, %v: what is wrong
	OnlyHere    string // %s: an address
	CannotWrite string // %v: cause
}

// EnglishCommand belongs to English, but stands by itself: the program in the
// browser does without it.
var EnglishCommand = Command{
	Usage: `whorlbench: build and understand compound poi patterns

usage:
  whorlbench serve [--addr HOST:PORT] [--dir FOLDER] [--public-url URL]
  whorlbench check [--json] [--strict LEVEL] FILE...
  whorlbench sample [--per-beat N] FILE
  whorlbench link [--public-url URL] FILE...
  whorlbench render [-o PLACE] [--format FORMAT] [--size WxH] [...] FILE...

commands:
  serve   opens the bench to a browser on this machine
  check   tells what a pattern is made of and called, how its pieces join, what a tether would do
  sample  prints where hands and heads are, as CSV
  link    prints links that open patterns in the bench
  render  makes stills, contact sheets and loops: PNG, SVG, GIF, APNG, film

- as FILE is standard input

for example:
  $ whorlbench check half-moon.toml
` + sampleAnswer + `
WHORLBENCH_LANG=de in the environment: answers in German, else in English
exit status: 0 fine, 1 check --strict found a fault, 2 the input could not be used
`,
	Unknown: "%s: there is no command %q",
	BadFlag: "%s: %v",
	Stray:   "%s: unexpected argument %q",
	TryHelp: "try: %s --help",

	Serve: Serve{
		Usage: `usage: whorlbench serve [--addr HOST:PORT] [--dir FOLDER] [--public-url URL]

Serves the built bench until it is interrupted.

  --addr HOST:PORT   where to listen (default 127.0.0.1:8377; port 0 takes a free one)
  --dir FOLDER       the built bench (default web/dist; make dist builds it)
  --public-url URL   the address by which others reach this bench, for the links and
                     codes that it makes (default the address it was opened at)
`,
		At:        "the bench is at %s",
		Stop:      "Ctrl+C stops it",
		Exposed:   "WARNING: listening at %s, beyond this machine: everyone who can reach it can open the bench",
		PortTaken: "whorlbench serve: %s is taken; try: whorlbench serve --addr %s (or port 0 for a free one)",
		NoListen:  "whorlbench serve: cannot listen at %s: %v",
		NoFolder:  "the bench is being built anew; try again in a moment",
		NoDist:    "whorlbench serve: %s: %v; to build the bench, run: make dist",
		Failed:    "whorlbench serve: %v",
		BadPublic: "whorlbench serve: --public-url: %v",
		Missing:   "no such folder",
		NoIndex:   "the folder has no index.html",

		ForeignHost: "this server answers only to its own address, not to %q",
		ReadOnly:    "this server only gives files: use GET or HEAD",
		NotFound:    "there is no such file here",
		NoEncoding:  "this file is not to be had in any encoding that you accept",
		Unreadable:  "this file cannot be read",
	},

	Check: Check{
		Usage: `usage: whorlbench check [--json] [--strict LEVEL] FILE...

Tells, for each hand, which elementary patterns its pieces are slices of, how
they join, what the whole is called by each definition, what a real tether
would do, and when it closes. - reads standard input.

  --json           one object a file, for other programs; several files: an array
  --strict LEVEL   exit status 1 if this fault or a worse one is found; worst first:
                   gap, stop, kink, slack, tangle
`,
		NoFile:       "whorlbench check: no file given; try: whorlbench check half-moon.toml (- reads standard input)",
		CannotRead:   "%s: cannot be read: %v",
		TooLong:      "%s:1:1: longer than %d bytes, which is no pattern",
		CannotWrite:  "whorlbench check: cannot write the answer: %v",
		Stdin:        "<stdin>",
		Hand:         "%s hand",
		Head:         [5]string{"piece", "pattern", "ratio", "beats", "petals"},
		SeamHead:     [6]string{"seam", "verdict", "hand turns", "along m/s", "across m/s", ""},
		From:         "%d → %d",
		Degrees:      "%s°",
		HandBack:     "hand turns back",
		ArmReverses:  "arm reverses",
		PropReverses: "prop reverses",
		Fault:        "%s, %s: %s",
		NoLevel:      "whorlbench check: --strict: found %q, allowed %s",
		PetalsMode:   "%s, %s mode",
		PetalsTip:    "%s, first tip at %s°",
		None:         "–",
		LaneCloses:   "closes after %s, %s, %s",
		LaneNever:    "the hand ends a round %s m from where it began: the lane never closes",
		WholeCloses:  "the whole closes after %s, %s",
		WholeNever:   "the whole never closes",
		Caution: `Take care: spin in clear space, soft props first. Fire needs a spotter, and
local rules apply. These are numbers, not lessons: learn from people who are
experienced and, where it is asked for, licensed.
`,
	},

	Sample: Sample{
		Usage: `usage: whorlbench sample [--per-beat N] FILE

Prints, as CSV, where hand and head are in the room (m, X to the audience's
right, Y up, Z toward the audience) and what the tether would carry (multiples of the
head's weight), from beat 0 to the closing time, or over one round if it never closes.

  --per-beat N   rows a beat (default 24)
`,
		OneFile:     "whorlbench sample: found %d files, allowed one; try: whorlbench sample half-moon.toml",
		PerBeat:     "whorlbench sample: --per-beat: found %d, allowed 1 or more",
		TooMany:     "%s: %v rows are too many, at most %d: ask for fewer rows a beat",
		CannotWrite: "whorlbench sample: cannot write the answer: %v",
	},

	Link: LinkCommand{
		Usage: `usage: whorlbench link [--public-url URL] FILE...

Prints, for each file, a link that opens its pattern in the bench. The whole pattern is in
the part behind the #, which no browser sends anywhere. - reads standard input.

  --public-url URL   the address by which others reach the bench (default
                     http://127.0.0.1:8377/, which is good on this device only)
`,
		NoFile:      "whorlbench link: no file given; try: whorlbench link --public-url https://spin.example/ half-moon.toml",
		BadAddress:  "whorlbench link: --public-url: %v",
		Refused:     "%s: %v",
		OnlyHere:    "whorlbench link: links to %s open on this device only; --public-url makes them for others",
		CannotWrite: "whorlbench link: cannot write the answer: %v",
	},

	Render: &englishRender,
}

// sampleAnswer is what check says of a C-cap; a test holds it to that.
const sampleAnswer = `  half-moon.toml: Half-moon
  right hand
    piece  pattern                     ratio  beats  petals
        1  extension                       1      2  0
        2  four-petal antispin flower     −3      2  4, diamond mode, first tip at 0°
    seam   verdict  hand turns  along m/s  across m/s
    1 → 2  smooth         180°          0           0  hand turns back, arm reverses
    2 → 1  smooth         180°          0           0  hand turns back, arm reverses
    closes after 1 round, 4 beats, 2 s
    Elementary    No: piece 1 is extension and piece 2 is a four-petal antispin flower.
    CAP (broad)   Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower.
    CAP (strict)  Yes: all pieces are slices of flowers, and the hand turns back after piece 1.
    C-cap         Yes: the hand goes to and fro on one arc of one circle.
    S-cap         No: the hand stays on one circle, and an S needs two.
    Diamond       No: in piece 1 the hand does not go straight.
    Tether  Taut from 109.2 bpm; at 120 it stays taut.
    Pull    From 0.2 to 7 times the head's weight.
    Speed   The head reaches 7.5 m/s, which is 27 km/h.
    Room    Keep everyone 2.2 m away; a metre for them is in it.
    Hand    It would really move up to 56 cm off this path, as a tether pulls along itself only.
    Wobble  A small wobble grows 9.3 times each round if the hand does not answer it.
  the whole closes after 4 beats, 2 s
  C-cap of extension and four-petal antispin flower, strict sense
`
