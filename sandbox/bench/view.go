package bench

import (
	"encoding/json"
	"fmt"

	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
)

// Settings are what the person has chosen to see and how it plays; they
// belong to the person, not to the pattern, and are not undone.
type Settings struct {
	Trail    int  `json:"trail"`
	Step     int  `json:"step"`
	Loop     int  `json:"loop"`
	HandPath bool `json:"handPath"`
	Grid     bool `json:"grid"`
	Arms     bool `json:"arms"`
	Letters  bool `json:"letters"`
	Whole    bool `json:"whole"`
	Kinds    bool `json:"kinds"`
	ByPiece  bool `json:"byPiece"`
	Alone    bool `json:"alone"`
	Slack    bool `json:"slack"`
	Taken    bool `json:"taken"`
}

// Settings returns what holds now.
func (b *Bench) Settings() Settings {
	v, loop := b.view, b.Session.Loop
	if b.point.on {
		loop = b.point.loop
	}
	return Settings{
		Trail: int(v.Trail), Step: int(b.Session.Steps), Loop: int(loop),
		HandPath: !v.HideHandPath, Grid: !v.HideGrid, Arms: !v.HideArms, Letters: !v.HideLetters,
		Whole: !v.HideWhole, Kinds: !v.PlainInk, ByPiece: v.ByPiece, Alone: b.alone, Slack: !v.HideSlack, Taken: v.Taken,
	}
}

// SetSettings takes new ones over; what is out of range stays as it was.
func (b *Bench) SetSettings(n Settings) {
	v := &b.view
	if n.Trail >= 0 && n.Trail < len(b.Words.View.Trails) {
		v.Trail = scene.TrailLength(n.Trail)
	}
	if n.Step >= 0 && n.Step < len(b.Words.View.StepsBy) {
		b.Session.Steps = session.Steps(n.Step)
	}
	if n.Loop >= 0 && n.Loop < len(b.Words.View.Loops) {
		b.Session.Loop = session.Loop(n.Loop)
	}
	v.HideHandPath, v.HideGrid, v.HideArms, v.HideLetters = !n.HandPath, !n.Grid, !n.Arms, !n.Letters
	v.HideWhole, v.PlainInk, v.ByPiece = !n.Whole, !n.Kinds, n.ByPiece
	b.alone, v.HideSlack, v.Taken = n.Alone, !n.Slack, n.Taken
}

// ReadSettings reads what Settings wrote as JSON; anything else changes
// nothing.
func (b *Bench) ReadSettings(text string) {
	n := b.Settings()
	if json.Unmarshal([]byte(text), &n) == nil {
		b.SetSettings(n)
	}
}

// WriteSettings writes the settings as JSON.
func (b *Bench) WriteSettings() string {
	data, err := json.Marshal(b.Settings())
	if err != nil { // whole numbers and yes or no: it cannot
		panic(fmt.Sprintf("bench: settings: %v", err))
	}
	return string(data)
}

// nextLoop goes on to the next thing to play over and over.
func (b *Bench) nextLoop(now float64) {
	w := &b.Words.View
	b.Session.Loop = (b.Session.Loop + 1) % session.Loop(len(w.Loops))
	b.say(fmt.Sprintf(w.LoopNow, w.Loops[b.Session.Loop]), now)
}
