package words

import "fmt"

// PracticeScreen holds the words of the page's practice sheet and of what is seen
// while practising.
type PracticeScreen struct {
	Open, Head, Intro            string
	Tempo, CountIn               string // labels
	Ladder, Up, Rounds, Ceiling  string
	Sounds, Beats, Seams, Volume string
	Vibrate, Mirror              string
	Before                       string // heads what to know first
	Awake, NotAwake, Silent      string
	Start                        string
	Refused, RefusedWhole        string // %s: label, %s: found, %s, %s: allowed
	View                         string // names the practice view
	Beat, GetReady               string // over the counter
	Round                        string // %s: its number
	PerMinute                    string // under the tempo
	Slower, Faster               string // %d: beats a minute
	Pause, Resume, Stop          string
	Keep                         string
	Kept                         string // %s: tempo
	NextStep, NextStepLater      string // %s: tempo; later: %s: rounds as counted
	TopTempo, SlackNow           string
	Paused, Interrupted, NoSound string
	MirrorOn                     string
}

var englishPracticeScreen = PracticeScreen{
	Open:         "Practise…",
	Head:         "Practise to a click",
	Intro:        "The pattern plays in step with what you hear, and stays as it is.",
	Tempo:        "Starting tempo",
	CountIn:      "Count-in beats",
	Ladder:       "Get faster by steps",
	Up:           "Faster by",
	Rounds:       "Rounds each",
	Ceiling:      "Up to",
	Sounds:       "What you hear and see",
	Beats:        "Click on the beat",
	Seams:        "Another sound where pieces join",
	Volume:       "How loud",
	Vibrate:      "Vibrate on the beat",
	Mirror:       "As in a mirror",
	Before:       "Before you start",
	Awake:        "The screen stays on while you practise.",
	NotAwake:     "This browser cannot keep the screen on. Let it stay on for longer in the device's settings.",
	Silent:       "This browser cannot make sounds. The beats are counted on the screen only.",
	Start:        "Start",
	Refused:      "%s: found “%s”, allowed %s to %s.",
	RefusedWhole: "%s: found “%s”, allowed a whole number from %s to %s.",
	View:         "Practising",
	Beat:         "Beat",
	GetReady:     "Get ready",
	Round:        "Round %s",
	PerMinute:    "beats a minute",
	Slower:       "Slower by %d",
	Faster:       "Faster by %d",
	Pause:        "Pause", Resume: "Go on", Stop: "Stop",
	Keep:          "Keep this tempo in the pattern",
	Kept:          "The pattern now goes at %s beats a minute. Undo on the bench takes that back.",
	NextStep:      "Next: %s, after this round",
	NextStepLater: "Next: %s, after %s",
	TopTempo:      "No faster than this",
	SlackNow:      "The tether goes slack at this tempo.",
	Paused:        "Paused. When you go on, you are counted in again and this round begins anew.",
	Interrupted:   "Something else took the sound, so this is paused. Go on when you are ready.",
	NoSound:       "No sound comes from this device just now. The beats are counted on the screen.",
	MirrorOn:      "As in a mirror",
}

// PracticeRefused says that a number of a plan, by its label, cannot be taken.
func (t *Table) PracticeRefused(label, found string, least, most float64, whole bool) string {
	format := t.Practice.Screen.Refused
	if whole {
		format = t.Practice.Screen.RefusedWhole
	}
	return fmt.Sprintf(format, label, found, number(least, 1), number(most, 1))
}

// NextTempo says which tempo comes after how many rounds more, 1 or more.
func (t *Table) NextTempo(tempo float64, rounds int) string {
	w := &t.Practice.Screen
	if rounds == 1 {
		return fmt.Sprintf(w.NextStep, number(tempo, 1))
	}
	return fmt.Sprintf(w.NextStepLater, number(tempo, 1), fmt.Sprintf(t.Steps.ManyRounds, t.counting(rounds)))
}
