package words

// Render holds the words of the command that makes pictures and loops.
type Render struct {
	Usage       string
	NoFile      string
	Format      string // %q: found; %s: allowed
	Size        string // %q: found
	Number      string // %s: flag, %q: found, %s: allowed
	Choice      string // %s: flag, %q: found, %s: allowed
	Background  string // %q: found
	Opaque      string // %s: format
	OneOut      string // %d: files given
	Fault       string // %v: what is wrong
	Of          string // %s: file, %v: what is wrong
	There       string // %s: file
	NoFileThere string // %s: place
	AnyNumber   string // what a flag allows
	WholeNumber string
	CannotWrite string // %s: file, %v: cause
	Silent      string // %s: format
	Stopped     string
	Stdout      string
	Whole       string // how all rounds are asked for
	NoVideo     string // %s: format
	VideoFailed string // %v: cause, %s: what the program says
	VideoSaid   string // %s: what the program says
	Working     string
	NotOfCard   string // %s: flag; %s: those that a card takes
	CardOnly    string // %s: flag
	BadPublic   string // %v: what is wrong
	Ending      string // %s: file; %s: endings
	EndingOf    string // %s: file; %s: format; %s: endings
	OneName     string // %s: file; %d: patterns; %s: a folder
}

var englishRender = Render{
	Usage: `usage: whorlbench render [options] FILE...

Makes pictures and loops of patterns. Frames are worked out from the beats, so that a
loop's last frame is followed by its first: none twice, none missing. Where its time is
no whole number of frames, they are spread evenly over it, and the tempo is kept.
- reads standard input. The names of the files made go to standard output.

  -o PLACE             a file, whose ending may stand for the format, a folder, or - for
                       standard output (default: this folder)
  --force              overwrites files that are there

  --format FORMAT      png, svg        one beat
                       sheet           a picture for each beat or petal, numbered (PNG)
                       strobe          several moments in one picture (PNG)
                       sheet-svg, strobe-svg   these two as drawings
                       gif             a loop (the default)
                       apng            a loop, exact, and see-through if asked for
                       frames          a loop's frames as PNG files in a ZIP
                       webm, mp4       a film, by ffmpeg if it is installed
                       card            a lesson card to print, mostly two pages (HTML)
  --size WxH           pixels; of a sheet, of each of its pictures (default 360x360)
  --fps N              frames a second, 1 to 120; of a GIF at most 50 (default 25)
  --rounds N           rounds of the longest hand; whole: until all is as it was
                       (default whole, or one round if that never happens)
  --slow N             so many times as slow (default 1)
  --at BEAT            the beat that png and svg show (default 0)
  --per WHAT           sheet and card: beat or petal (default beat)
  --moments N          strobe: how many (default 8)

  --theme THEME        day or night (default day, on a dark background night)
  --background COLOUR  theme, clear, or a colour such as #ffffff (default theme)
  --mirror             as in a mirror, for learners who face the picture
  --trail LENGTH       round, half, all or none (default round)
  --show LIST          more of: grid, pieces (a colour each), title, names, beats,
                       timing (how the props of two hands stand to each other), slack
                       (dots where a tether would go slack), taken (the way a hand would
                       really take)
  --caption TEXT       a text below
  --hide LIST          less of: path (of the hand), arms, letters, kinds (of stroke)
  --clicks             webm and mp4: a click on each beat, others at joins and rounds
  --same-frame         frames all files alike, so that they can stand side by side
  --public-url URL     card: the address by which others reach the bench, for its link
                       and code; without one the card has the pattern's file instead
`,
	NoFile:      "whorlbench render: no file given; try: whorlbench render half-moon.toml (- reads standard input)",
	Format:      "whorlbench render: --format: found %q, allowed %s",
	Size:        "whorlbench render: --size: found %q, allowed a width and a height such as 360x360",
	Number:      "whorlbench render: --%s: found %q, allowed %s",
	Choice:      "whorlbench render: --%s: found %q, allowed %s",
	Background:  "whorlbench render: --background: found %q, allowed theme, clear, or a colour such as #ffffff",
	Opaque:      "whorlbench render: --background: clear is not to be had in %s",
	OneOut:      "whorlbench render: standard output takes one file, found %d; try: -o FOLDER/",
	Fault:       "whorlbench render: %v",
	Of:          "%s: %v",
	There:       "%s is already there; --force overwrites it",
	NoFileThere: "%s is something other than a file, and stays as it is",
	AnyNumber:   "a number such as 25, 0.5 or 1/3",
	WholeNumber: "a whole number from 1",
	CannotWrite: "%s: cannot be written: %v",
	Silent:      "whorlbench render: --clicks: a click track is to be had in webm and mp4, not in %s",
	Stopped:     "whorlbench render: stopped; what was not finished is not kept",
	Stdout:      "<stdout>",
	Whole:       "whole",
	NoVideo:     "whorlbench render: %s needs ffmpeg, which is not installed (on Debian: apt-get install ffmpeg); gif and apng need nothing",
	VideoFailed: "ffmpeg did not make it: %v: %s",
	VideoSaid:   "ffmpeg did not make it: %s",
	Working:     "drawing",
	NotOfCard:   "whorlbench render: --%s: found with --format card, which is as large as its paper and takes %s, -o and --force",
	CardOnly:    "whorlbench render: --%s: found without --format card, to which it belongs",
	BadPublic:   "whorlbench render: --public-url: %v",
	Ending:      "whorlbench render: -o: found %s, allowed an ending %s; or say --format",
	EndingOf:    "whorlbench render: -o: found %s with --format %s, allowed an ending %s",
	OneName:     "whorlbench render: -o: %s is one file, found %d patterns; try: -o %s/",
}
