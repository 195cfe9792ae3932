package words

import "fmt"

// Capture holds the words of pictures and loops made of a pattern: those in
// them, and why one cannot be made.
type Capture struct {
	BeatOf      string // %d, %d: which beat and how many
	BeatAt      string // %s: a beat, counted from 1
	About       string // %s: title; what a picture that is read out is called
	Size        string // %d, %d: found; %d, %d: allowed, pixels
	Even        string // %d, %d: found; %s: format
	FPS         string // %s: found; %d, %d: allowed
	GIFRate     string // %s: found; %d: allowed
	Slow        string // %s: found; %s, %s: allowed
	Rounds      string // %d: found; %d: allowed
	Moments     string // %d: found; %d: allowed
	At          string // %s: found
	Caption     string // %d: characters found; %d: allowed
	TooMany     string // %d: frames; %d: allowed
	TooManyWays string // %s: rounds after which it closes; %d: frames allowed
	TooLarge    string // %d: pictures on a sheet; %d, %d: pixels
	SheetMost   string // %d: pictures; %d: allowed
	NeverJoins  string // %s: title
	NotYet      string // %s: title, %s: rounds to its closing
}

var englishCapture = Capture{
	BeatOf:      "beat %d of %d",
	BeatAt:      "beat %s",
	About:       "Poi pattern: %s",
	Size:        "size: found %dx%d, allowed %d to %d pixels each way",
	Even:        "size: found %dx%d, allowed even numbers only for %s",
	FPS:         "frames a second: found %s, allowed %d to %d",
	GIFRate:     "frames a second: found %s, allowed at most %d in a GIF, whose frames last whole hundredths of a second",
	Slow:        "slow motion: found %s, allowed %s to %s times as slow",
	Rounds:      "rounds: found %d, allowed 1 to %d, or whole",
	Moments:     "moments: found %d, allowed 2 to %d",
	At:          "beat: found %s, allowed 0 or more",
	Caption:     "caption: found %d characters, allowed at most %d",
	TooMany:     "%d frames are too many, at most %d: ask for fewer rounds or frames a second",
	TooManyWays: "it closes only after %s, more than %d frames: ask for some of its rounds",
	TooLarge:    "a sheet of %d pictures, each %d by %d pixels, is too large: ask for smaller ones",
	SheetMost:   "a sheet of %d pictures is too long, at most %d: ask for fewer rounds",
	NeverJoins:  "%s: the hand does not come back to where it began, so the loop jumps at its end",
	NotYet:      "%s: it is not yet back where it began, so the loop jumps at its end; it closes after %s",
}

// BeatCount writes which beat of how many it is, counted from 1.
func (t *Table) BeatCount(beat, of int) string { return fmt.Sprintf(t.Capture.BeatOf, beat, of) }
