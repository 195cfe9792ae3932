package bench

import (
	"fmt"
	"strconv"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// A lane's tag opens the sheet of its hand; where there is one hand, a plus
// over it offers the second.
const (
	handPrefix = "hand-"
	idAddHand  = "add-hand"
	// What the sheet offers besides a timing.
	handHide    = "hide"
	handShow    = "show"
	handSolo    = "solo"
	handTake    = "take"
	handLater   = "later"
	laterPrefix = "later-" // a question, with its lane
)

// arrangeHands adds the tags at the strip's left.
func (b *Bench) arrangeHands() {
	s, w := b.Session, &b.Words.Strip
	tracks := s.Tracks()
	if len(tracks) == 1 {
		r, _ := b.plan.ruler.CutLeft(laneTag - 8) // clear of the playhead's grip at the start
		other := b.Words.Side(tracks[0].Lane.Side.Other())
		b.add(widget.Control{ID: idAddHand, Label: fmt.Sprintf(w.AddHand, other), Icon: widget.IconPlus, Rect: r})
	}
	for i, t := range tracks {
		r, _ := b.plan.lanes[i].CutLeft(laneTag - 4)
		label := b.Words.HandName(t.Lane.Side)
		if s.Hidden(i) {
			label += w.HiddenTag
		}
		b.add(widget.Control{ID: handPrefix + strconv.Itoa(i), Label: label, Quiet: true, Rect: r})
	}
}

// drawTags writes each hand's letter on its tag: a disc for the right hand, a
// ring for the left, struck out where the hand is hidden.
func (b *Bench) drawTags(l *display.List) {
	t := b.theme
	for i, k := range b.Session.Tracks() {
		r, _ := b.plan.lanes[i].CutLeft(laneTag - 4)
		left := k.Lane.Side == engine.Left
		hue := t.Of(left)
		at := display.Pt{X: r.Centre().X, Y: r.Y + r.H/2 - 5}
		letter := b.Words.Letter(k.Lane.Side)
		if !left {
			l.Disc(at, 10, display.Mix(t.Ground, hue, 0.3))
		}
		l.Ring(at, 10, 2, hue)
		w := b.faces.Width(letter, theme.TextSmall, true)
		l.Text(display.Pt{X: at.X - w/2, Y: at.Y + 4.5}, theme.TextSmall, true, t.Ink, letter)
		if b.Session.Hidden(i) {
			d := display.Pt{X: 10, Y: -10}
			l.Segment(at.Sub(d), at.Add(d), 5, t.Ground)
			l.Segment(at.Sub(d), at.Add(d), 2.5, t.Ink)
		}
	}
}

// offerHand asks what to do with a lane's hand, and how the other may go
// with it.
func (b *Bench) offerHand(lane int, add bool) {
	s, w := b.Session, &b.Words.Strip
	tracks := s.Tracks()
	if lane < 0 || lane >= len(tracks) {
		return
	}
	side := b.Words.Side(tracks[lane].Lane.Side)
	other := b.Words.Side(tracks[lane].Lane.Side.Other())
	c := Choice{ID: handPrefix + strconv.Itoa(lane), Label: b.Words.HandName(tracks[lane].Lane.Side)}
	if add {
		c.Label = fmt.Sprintf(w.AddHand, other)
	}
	one := func(id string, t words.TitledText) {
		c.Options = append(c.Options, Option{ID: id, Label: fmt.Sprintf(t.Label, side), Detail: t.Detail})
	}
	if len(tracks) > 1 {
		if s.Hidden(0) || s.Hidden(1) {
			c.Options = append(c.Options, Option{ID: handShow, Label: w.BothHands.Label, Detail: w.BothHands.Detail})
		}
		if !s.Hidden(lane) {
			one(handHide, w.HideHand)
		}
		if !s.Hidden(1 - lane) {
			one(handSolo, w.SoloHand)
		}
		one(handTake, w.TakeHand)
	}
	for i, t := range w.Timings {
		label := fmt.Sprintf(w.AddLabel, other, t.Label)
		switch {
		case add:
			label = b.Words.TimingTitle(i)
		case len(tracks) > 1:
			label = fmt.Sprintf(w.AnewLabel, other, t.Label)
		}
		c.Options = append(c.Options, Option{ID: strconv.Itoa(i), Label: label, Detail: t.Detail})
	}
	c.Options = append(c.Options, Option{ID: handLater, Label: fmt.Sprintf(w.Later.Label, other), Detail: w.Later.Detail})
	b.host.Choose(c)
}

// askLater asks by how many beats the other hand is to be later.
func (b *Bench) askLater(lane int) {
	w := &b.Words.Strip
	b.host.Ask(Question{
		ID: laterPrefix + strconv.Itoa(lane), Label: fmt.Sprintf(w.Later.Label, b.Words.Side(b.Session.Tracks()[lane].Lane.Side.Other())),
		Hint: w.LaterHint, Value: "1",
	})
}

// answerLater makes the other hand that many beats later.
func (b *Bench) answerLater(lane int, v frac.Frac, now float64) error {
	s, w := b.Session, &b.Words.Strip
	if lane < 0 || lane >= len(s.Tracks()) {
		return nil
	}
	// Who follows is where the other was.
	err := s.MakeHandLater(lane, session.TogetherSame, v.Neg())
	if err == nil {
		b.say(fmt.Sprintf(w.LaterDone, b.Words.Side(s.Tracks()[lane].Lane.Side.Other()), b.Words.Beats(v)), now)
	}
	return err
}

// chosenHand does what was picked on a hand's sheet.
func (b *Bench) chosenHand(lane int, option string, now float64) {
	s, w := b.Session, &b.Words.Strip
	if lane < 0 || lane >= len(s.Tracks()) {
		return
	}
	from := s.Tracks()[lane].Lane.Side
	side, other := b.Words.Side(from), b.Words.Side(from.Other())
	switch option {
	case handHide:
		s.HideHand(lane)
		b.say(fmt.Sprintf(w.HandHidden, side), now)
	case handSolo:
		s.HideHand(1 - lane)
		b.say(fmt.Sprintf(w.HandSolo, side), now)
	case handShow:
		s.ShowHands()
		b.say(w.HandShown, now)
	case handLater:
		b.askLater(lane)
	case handTake:
		b.report(s.TakeHand(lane), now, func() string { return fmt.Sprintf(w.HandTaken, side) })
	default:
		if k, err := strconv.Atoi(option); err == nil && k >= 0 && k < session.Timings {
			b.report(s.MakeHand(lane, session.Timing(k)), now, func() string {
				return fmt.Sprintf(w.HandAdded, other, w.Timings[k].Label)
			})
		}
	}
}
