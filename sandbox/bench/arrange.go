package bench

import (
	"fmt"
	"image/color"
	"slices"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// Names of the controls, as intents and twins know them.
const (
	idStepBack  = "step-back"
	idStepOn    = "step-on"
	idLoop      = "loop"
	idPlay      = "play"
	idSpeed     = "speed"
	idTempo     = "tempo"
	idMirror    = "mirror"
	idUndo      = "undo"
	idRedo      = "redo"
	idCut       = "cut"
	idRejoin    = "rejoin"
	idBack      = "there-and-back"
	idFlip      = "flip"
	idRepeat    = "repeat"
	idDelete    = "delete"
	idLength    = "length"
	idPlayhead  = "playhead"
	idArm       = "arm"
	idProp      = "prop"
	idRadius    = "radius"
	idTilt      = "tilt"
	idPropStart = "prop-start"
	// A slider's steppers, its typed value, and the way to another dial.
	suffixLess = "-less"
	suffixMore = "-more"
	suffixType = "-type"
	suffixSwap = "-swap"
)

// propReach is how far the prop's slider reaches, in turns a cycle; more can
// be typed.
const propReach = 6

// arrange lays everything out anew and declares the controls, where any of it
// has changed.
func (b *Bench) arrange() {
	b.replan()
	if b.compare == nil {
		b.keepReach()
		b.follow()
		b.followBig()
	}
	if b.keeps() {
		b.moveRuler()
		return
	}
	b.controls = b.controls[:0]
	if b.compare != nil {
		b.arrangeCompare()
		return
	}
	if b.plan.stageOnly {
		b.arrangeStageOnly()
		return
	}
	b.arrangeTold()
	b.arrangeTransport()
	b.arrangeActions()
	b.arrangeSliders()
	b.arrangeStrip()
	b.arrangeStage()
	b.arrangeTryout()
}

// replan finds the places of everything, where what they depend on has changed.
func (b *Bench) replan() {
	now := planFor{frame: b.frame, lanes: len(b.Session.Tracks()), compare: b.compare != nil}
	if now.compare {
		now.over = b.compare.over
	}
	if b.planned == now {
		return
	}
	if b.planned = now; now.compare {
		b.plan, b.beside = planCompare(b.frame, now.over)
		return
	}
	b.plan = newPlan(b.frame, now.lanes)
}

func (b *Bench) add(c widget.Control) { b.controls = append(b.controls, c) }

func (b *Bench) arrangeTransport() {
	w, s := &b.Words.Bench, b.Session
	r := spread(b.plan.transport, 4, 44, 58, 44, 54, 44, 44, 44)
	v := &b.Words.View
	b.add(widget.Control{ID: idStepBack, Label: v.StepBack, Icon: widget.IconStepBack, Rect: r[0], Keys: ","})
	b.addPlay(r[1])
	b.add(widget.Control{ID: idStepOn, Label: v.StepOn, Icon: widget.IconStepOn, Rect: r[2], Keys: "."})
	b.add(widget.Control{ID: idSpeed, Label: w.Speed.Label, Caption: w.Speed.Short, Text: speedText(s.Speed), Rect: r[3]})
	b.add(widget.Control{ID: idMirror, Kind: widget.Toggle, Label: w.Mirror.Label, Icon: widget.IconMirror, On: s.Mirror, Rect: r[4], Keys: "M"})
	b.add(widget.Control{ID: idUndo, Label: w.Undo.Label, Icon: widget.IconUndo, Disabled: !s.CanUndo(), Rect: r[5], Keys: "Control+Z"})
	b.add(widget.Control{ID: idRedo, Label: w.Redo.Label, Icon: widget.IconRedo, Disabled: !s.CanRedo(), Rect: r[6], Keys: "Control+Shift+Z"})
}

// addPlay adds what lets the pattern play and stand still.
func (b *Bench) addPlay(r display.Rect) {
	w := &b.Words.Bench
	c := widget.Control{ID: idPlay, Label: w.Play.Label, Icon: widget.IconPlay, Rect: r, Keys: "Space"}
	if b.playing() {
		c.Label, c.Icon = w.Pause.Label, widget.IconPause
	}
	b.add(c)
}

// speeds are the shares of the tempo at which the bench plays.
var speeds = []float64{1, 0.5, 0.25, 0.1, 2}

func speedText(v float64) string {
	switch v {
	case 0.5:
		return "½×"
	case 0.25:
		return "¼×"
	}
	return words.Number(v, 1) + "×"
}

func (b *Bench) arrangeActions() {
	w, s := &b.Words.Bench, b.Session
	actions := []struct {
		id   string
		name words.Named
		icon widget.Icon
		off  bool
		keys string
	}{
		{idCut, w.Cut, widget.IconCut, false, "C"},
		{idRejoin, w.Rejoin, widget.IconRejoin, !s.CanRejoin(), "J"},
		{idBack, w.ThereBack, widget.IconThereBack, false, "B"},
		{idFlip, w.Flip, widget.IconFlip, false, "F"},
		{idRepeat, w.Repeat, widget.IconRepeat, false, "R"},
		{idDelete, w.Delete, widget.IconDelete, !s.CanDelete(), "Delete"},
		{idFollow, w.Next, widget.IconPlus, false, "N"},
	}
	const beside = 22.0 // room beside a word
	shares := make([]float64, len(actions))
	for i, a := range actions {
		shares[i] = beside + b.faces.Width(a.name.Short, theme.TextSmall, false)
	}
	r := b.plan.spreadActions(shares...)
	for i, a := range actions {
		c := widget.Control{ID: a.id, Label: a.name.Label, Caption: a.name.Short, Icon: a.icon, Rect: r[i], Faint: a.off, Keys: a.keys}
		if b.plan.actions.H < actionRow { // room for the word or the drawing: the word says more
			c.Icon = widget.NoIcon
		}
		b.add(c)
	}
}

func (b *Bench) arrangeSliders() {
	shown := b.slots[b.plan.firstSlot():][:len(b.plan.sliders)]
	for i, r := range b.plan.sliders {
		b.addSlider(b.dial(shown[i]), r)
	}
	if r := b.plan.tempo; !slices.Contains(shown, idTempo) {
		d := b.dial(idTempo)
		short, _ := b.reads(d)
		b.add(widget.Control{ID: d.id + suffixType, Label: d.name.Label, Caption: d.name.Short, Text: short, Rect: r})
	}
}

// addSlider adds a dial's slider: its name at the left, which leads to other
// dials, its value at the right, which can be typed, and where there is room and no
// rule a stepper at each end. A row that is high enough has the pictures of
// the prop's whole speeds above the track.
func (b *Bench) addSlider(d *dial, r display.Rect) {
	w := &b.Words.Bench
	var rule display.Rect
	var pictures []widget.Picture
	if d.id == idProp && r.H >= theme.Finger+ruleRow {
		pictures = b.petalRule()
	}
	if pictures != nil {
		rule, r = r.CutTop(r.H - theme.Finger)
	} else {
		r.Y, r.H = r.Y+(r.H-theme.Finger)/2, theme.Finger
	}
	off := d.fits != nil && !d.fits(b.Session.SelectedPiece())
	short, full := b.reads(d)
	name, rest := r.CutLeft(b.plan.chip())
	value, rest := rest.CutRight(b.plan.chip())
	b.add(widget.Control{ID: d.id + suffixSwap, Label: fmt.Sprintf(b.Words.Dials.Swap, d.name.Label), Caption: d.name.Short, Rect: name, Quiet: true})
	var more display.Rect
	steppers := rest.W >= steppersFrom && pictures == nil
	if steppers {
		var less display.Rect
		less, rest = rest.CutLeft(theme.Finger)
		b.add(widget.Control{ID: d.id + suffixLess, Label: fmt.Sprintf(w.Less, d.name.Label), Icon: widget.IconMinus, Rect: less, Disabled: off})
		more, rest = rest.CutRight(theme.Finger)
	}
	v := 0.0
	if !off {
		v = d.get(b.Session).Float()
	}
	c := widget.Control{ID: d.id, Kind: widget.Slider, Label: d.name.Label, Rect: rest, Track: rest.Inset(16),
		Value: v, Min: d.lo.Float(), Max: d.hi.Float(), Step: d.step.Float(), KeyStep: d.keyStep.Float(), Catch: d.catch,
		Text: full, Pictures: pictures, Disabled: off,
		Hue: b.hue(b.Session.Selected())}
	for _, p := range pictures {
		if p.Good && p.Value == v {
			c.Text = fmt.Sprintf(w.Fits, full)
		}
	}
	if pictures != nil {
		c.Rule = display.Rect{X: rest.X, Y: rule.Y, W: rest.W, H: rule.H}
		c.Rect.Y, c.Rect.H = rule.Y, rule.H+rest.H
	}
	b.add(c)
	if steppers {
		b.add(widget.Control{ID: d.id + suffixMore, Label: fmt.Sprintf(w.More, d.name.Label), Icon: widget.IconPlus, Rect: more, Disabled: off})
	}
	b.add(widget.Control{ID: d.id + suffixType, Label: fmt.Sprintf(w.Type, d.name.Label), Text: short, Rect: value, Disabled: off})
}

// steppersFrom is the width that a slider and its two steppers need; with
// less, the slider's length counts for more. ruleRow is the least height of
// the pictures of a rule, chipWidth the width of a slider's name and value.
const (
	steppersFrom = 220
	ruleRow      = 22
	chipWidth    = 58
)

// pieceID names a piece's control.
func pieceID(lane, i int) string { return fmt.Sprintf("piece-%d-%d", lane, i) }

func (b *Bench) arrangeStrip() {
	b.arrangeHands()
	_, r := b.plan.ruler.CutLeft(laneTag)
	b.addRuler(b.Words.Bench.Playhead, b.Session.Round(), r, b.stripTrack(b.plan.ruler))
	for i, t := range b.Session.Tracks() {
		b.arrangeLane(i, t)
	}
}

// addRuler adds the playhead's ruler, of so many beats, with a mark at each.
func (b *Bench) addRuler(label string, beats float64, r, track display.Rect) {
	ruler := widget.Control{ID: idPlayhead, Kind: widget.Ruler, Label: label, Rect: r, Track: track,
		Value: b.Value(idPlayhead), Max: beats, Step: 1.0 / engine.CutGrid, Text: b.playheadReads()}
	const mostMarks = 2000
	for beat := 0.0; beat <= beats && len(ruler.Marks) < mostMarks; beat++ {
		ruler.Marks = append(ruler.Marks, beat)
	}
	b.add(ruler)
}

// playheadReads says where the playhead stands.
func (b *Bench) playheadReads() string {
	if b.compare != nil {
		return b.compareReads()
	}
	s := b.Session
	return fmt.Sprintf(b.Words.Bench.BeatOf, words.Value(frac.Near(s.RoundBeat(), 0.005, 1000)), words.Value(frac.Near(s.Round(), 1e-9, 1_000_000)))
}

// laneTag is the room at a lane's left for its tag, with a gap.
const laneTag = 44

// hue returns the colour that a piece is drawn in.
func (b *Bench) hue(at session.Select) color.NRGBA {
	if b.view.ByPiece {
		return b.theme.Piece(at.Piece)
	}
	return b.theme.Of(b.Session.Tracks()[at.Lane].Lane.Side == engine.Left)
}

// leastPicture is the width in pixels from which a piece has room for a tiny
// picture of what it is a slice of.
const leastPicture = 22

func (b *Bench) arrangeLane(lane int, t *engine.Track) {
	s := b.Session
	track, seen := b.stripTrack(b.plan.lanes[lane]), b.stripShown(b.plan.lanes[lane])
	per := b.perBeat()
	group := fmt.Sprintf(b.Words.Bench.LaneOf, b.Words.Side(t.Lane.Side))
	x := track.X
	for _, i := range b.order(lane, len(t.Legs)) {
		g := &t.Legs[i]
		at := session.Select{Lane: lane, Piece: i}
		f := s.Figure(at)
		c := widget.Control{
			ID: pieceID(lane, i), Kind: widget.Piece, Group: group, Lane: lane, Index: i,
			Label:   b.Words.PieceName(t.Lane.Side, i, len(t.Legs), f) + ", " + b.Words.Join(s.Seams()[lane][i].Verdict),
			Caption: b.Words.Name(f), Short: b.Words.ShortName(f), Hue: b.hue(at),
			On:    s.Selected() == at,
			Faint: s.Hidden(lane),
			Along: s.InRange(at),
			Rect:  display.Rect{X: x, Y: track.Y, W: per * g.Span, H: track.H},
		}
		x += c.Rect.W
		if c.Rect.W >= leastPicture {
			c.Pictures = []widget.Picture{{Curve: b.picture(g, g.Piece.Prop)}}
		}
		if k := b.lift; k.has(lane, i) {
			x := k.x + (g.Start-t.Legs[k.from].Start)*per
			c.Rect.X = min(max(x, seen.X-c.Rect.W/2), seen.X+seen.W-c.Rect.W/2)
		} else {
			c.Rect = clip(c.Rect, seen)
			c.Twin = c.Rect.W == 0
		}
		b.add(c)
	}
	b.arrangeSeams(lane, t, group)
}
