package bench

import (
	"slices"

	"whorlbench/engine/duet"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// kept is what the controls were arranged for and the still part of the
// picture drawn for. While the pattern plays and nothing else happens, both
// stay, and a frame draws only what the playhead moves.
type kept struct {
	ok    bool // arranged for: else nothing is kept
	drawn bool // the still part, too
	given given
	slots []string
}

// given is all that the controls and the still part of the picture depend on,
// but for what a hand holds: then nothing is kept. What is added to Bench or to
// Session and can be seen is added here; a test holds that it has been thought of.
type given struct {
	session     *session.Session
	rev         int
	sel         session.Select
	first, last int // of what is selected
	round       int // of the lane in hand, by which the prop is turned
	speed       float64
	loop        session.Loop
	steps       session.Steps
	mirror      bool
	hidden      [2]bool
	undo, redo  bool
	words       *words.Table
	theme       *theme.Theme
	frame       Frame
	focus       string
	view        scene.Options
	alone       bool
	tryout      *tryout
	named       bool // of what the study has found out so far
	read        *duet.Reading
	tethers     int
	lap         float64 // beats: where the strip's round begins
	rounds      [2]int  // of each lane, where slack is marked
	zoom        scene.Zoom
	reach       float64
	perBeat     float64 // pixels
	from        float64 // beats: the strip's left end
	compared    compared
	at, of      int // of the running order
	pointing    bool
	blank       bool
	practising  bool
}

// compared is what is seen of a comparison and stays while it plays.
type compared struct {
	sides  [2]*session.Session
	over   bool
	speed  float64
	rounds [2][2]int // of each side's lanes, by which a prop may be turned
}

// still returns what holds now; ok is false while it may change with every
// frame.
func (b *Bench) still() (g given, ok bool) {
	if b.compare != nil {
		return b.stillCompared()
	}
	s := b.Session
	if !s.Playing || s.Holding() || !b.router.Idle() || b.lift != nil || b.edge != nil || b.window.pinch != nil || b.stage.drag != nil || b.stage.scrub != nil {
		return g, false
	}
	b.study.Of(s)
	sel := s.Selected()
	round, _, _ := s.Tracks()[sel.Lane].Locate(s.Beat())
	g = given{
		session: s,
		rev:     s.Revision(), sel: sel, round: round, speed: s.Speed, loop: s.Loop, steps: s.Steps, mirror: s.Mirror,
		undo: s.CanUndo(), redo: s.CanRedo(), words: b.Words, theme: b.theme, frame: b.frame, focus: b.focus,
		view: b.view, alone: b.alone, tryout: b.trying(), zoom: b.stage.zoom, reach: b.stage.reach, perBeat: b.perBeat(), from: b.window.from,
		at: b.running.at, of: len(b.running.patterns), pointing: b.point.on, blank: b.blank,
		practising: b.practising != nil,
	}
	g.first, g.last = s.Range()
	g.named, g.read, g.tethers, g.lap = b.study.Named(), b.study.Duet, len(b.study.Tethers), b.lapStart()
	for i, t := range s.Tracks() {
		g.rounds[i%len(g.rounds)], _, _ = t.Locate(s.Beat())
	}
	for i := range min(len(s.Tracks()), len(g.hidden)) {
		g.hidden[i] = s.Hidden(i)
	}
	return g, true
}

// stillCompared is still while two patterns are compared.
func (b *Bench) stillCompared() (g given, ok bool) {
	c := b.compare
	if !c.playing || !b.router.Idle() {
		return g, false
	}
	g = given{words: b.Words, theme: b.theme, frame: b.frame, focus: b.focus, view: b.view, mirror: b.Session.Mirror}
	g.compared = compared{sides: c.sides, over: c.over, speed: c.speed}
	for i, s := range c.sides {
		for k, t := range s.Tracks() {
			g.compared.rounds[i][k], _, _ = t.Locate(c.beat)
		}
	}
	return g, true
}

// keeps reports whether the controls stay as arranged, but for the playhead,
// and if not, notes what they are arranged for.
func (b *Bench) keeps() bool {
	k := &b.kept
	g, ok := b.still()
	if ok && k.ok && g == k.given && slices.Equal(k.slots, b.slots) {
		return true
	}
	b.arranged++
	*k = kept{ok: ok, given: g, slots: append(k.slots[:0], b.slots...)}
	return false
}

// Arranged changes whenever the controls are arranged anew; else, the playhead's
// value is all of them that may have changed.
func (b *Bench) Arranged() int { return b.arranged }

// Playhead returns the playhead's control as it is now.
func (b *Bench) Playhead() (c widget.Control, ok bool) {
	r := b.ruler()
	if r == nil {
		return c, false
	}
	r.Text = b.playheadReads()
	return *r, true
}

// moveRuler brings the ruler's value up to date; its text, which only the twin
// has, waits until it is asked for.
func (b *Bench) moveRuler() {
	if c := b.ruler(); c != nil {
		c.Value = b.Value(idPlayhead)
	}
}

func (b *Bench) ruler() *widget.Control {
	for i := range b.controls {
		if b.controls[i].Kind == widget.Ruler {
			return &b.controls[i]
		}
	}
	return nil
}

// planFor is what a plan was made for.
type planFor struct {
	frame         Frame
	lanes         int
	compare, over bool
}
