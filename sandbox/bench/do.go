package bench

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// Do carries an intent out, whether a finger or a twin meant it; now is in
// milliseconds.
func (b *Bench) Do(in widget.Intent, now float64) {
	b.hint = false
	s := b.Session
	id := in.ID
	switch {
	case id == idPlayhead:
		if in.Act == widget.Set {
			s.Seek(in.Value)
		}
	case id == idArm || id == idProp:
		b.slide(id, in)
	case strings.HasPrefix(id, "piece-"):
		b.doPiece(in, now)
	case in.Act == widget.Press:
		b.press(id, now)
	}
	b.settle()
}

func (b *Bench) slide(id string, in widget.Intent) {
	s := b.Session
	switch in.Act {
	case widget.Hold:
		s.Hold()
	case widget.Release:
		s.Release()
	case widget.Set:
		// Values come from a grid of twentieths, so the fraction is exact.
		v := frac.New(int64(math.Round(in.Value/speedStep)), int64(math.Round(1/speedStep)))
		b.try(id, v)
	}
}

// try shows a speed of the piece in hand.
func (b *Bench) try(id string, v frac.Frac) error {
	return b.Session.Try(func(p engine.Piece) engine.Piece {
		if id == idArm {
			p.Arm = v
		} else {
			p.Prop = v
		}
		return p
	})
}

func (b *Bench) speed(id string) frac.Frac {
	p := b.Session.SelectedPiece()
	if id == idArm {
		return p.Arm
	}
	return p.Prop
}

// step moves a speed to the next whole number above or below.
func (b *Bench) step(id string, up bool) {
	v := b.speed(id)
	next := v.Floor().Add(frac.Int(1))
	if !up {
		next = v.Neg().Floor().Add(frac.Int(1)).Neg()
	}
	if next.Abs().Cmp(frac.Int(64)) <= 0 {
		b.try(id, next)
	}
}

func (b *Bench) press(id string, now float64) {
	s, w := b.Session, &b.Words.Bench
	for _, base := range []string{idArm, idProp} {
		switch id {
		case base + suffixLess:
			b.step(base, false)
			return
		case base + suffixMore:
			b.step(base, true)
			return
		}
	}
	switch id {
	case idStart:
		s.ToStart()
	case idPlay:
		s.Playing = !s.Playing
	case idSpeed:
		s.Speed = speeds[(slices.Index(speeds, s.Speed)+1)%len(speeds)]
	case idMirror:
		s.Mirror = !s.Mirror
		text := w.MirrorOff
		if s.Mirror {
			text = w.MirrorOn
		}
		b.say(text, now)
	case idUndo:
		if s.Undo() {
			b.say(w.Undone, now)
		}
	case idRedo:
		if s.Redo() {
			b.say(w.Redid, now)
		}
	case idCut:
		b.report(s.Cut(), now, func() string { return fmt.Sprintf(w.CutDone, s.Selected().Piece, s.Selected().Piece+1) })
	case idRejoin:
		b.report(s.Rejoin(), now, b.saidPiece(w.Rejoined))
	case idBack:
		b.report(s.ThereAndBack(), now, b.saidPiece(w.Added))
	case idFlip:
		b.report(s.Flip(), now, func() string { return "" })
	case idRepeat:
		b.report(s.Repeat(), now, b.saidPiece(w.Added))
	case idDelete:
		b.report(s.Delete(), now, func() string { return w.Deleted })
	case idTempo, idLength, idArm + suffixType, idProp + suffixType:
		b.ask(id)
	}
}

func (b *Bench) saidPiece(format string) func() string {
	return func() string { return fmt.Sprintf(format, b.Session.Selected().Piece+1) }
}

// report says what an edit did, or why it was not done.
func (b *Bench) report(err error, now float64, done func() string) {
	if err != nil {
		b.say(b.reason(err), now)
		return
	}
	b.say(done(), now)
}

func (b *Bench) reason(err error) string {
	w := &b.Words.Bench
	switch {
	case errors.Is(err, engine.ErrCutAtEnd):
		return w.NoCut
	case errors.Is(err, engine.ErrNotOne):
		return w.NoRejoin
	case errors.Is(err, engine.ErrLastPiece):
		return w.LastPiece
	}
	return fmt.Sprintf(w.Unwritable, err)
}

// say shows a message over the stage and speaks it.
func (b *Bench) say(text string, now float64) {
	if text == "" {
		return
	}
	b.toast = toast{text, now + toastTime}
	b.host.Announce(text)
}

// Say shows and speaks a message of the page's.
func (b *Bench) Say(text string, now float64) { b.say(text, now) }

// pieceOf returns which piece a control stands for.
func (b *Bench) pieceOf(id string) (at session.Select, ok bool) {
	_, err := fmt.Sscanf(id, "piece-%d-%d", &at.Lane, &at.Piece)
	ok = err == nil && at.Lane >= 0 && at.Lane < len(b.Session.Tracks()) &&
		at.Piece >= 0 && at.Piece < len(b.Session.Tracks()[at.Lane].Legs)
	return at, ok
}

func (b *Bench) doPiece(in widget.Intent, now float64) {
	at, ok := b.pieceOf(in.ID)
	if !ok {
		b.lift = nil
		return
	}
	s := b.Session
	switch in.Act {
	case widget.Press:
		s.Select(at)
	case widget.Lift:
		b.lifted(at.Lane, at.Piece)
	case widget.Carry:
		if b.lift != nil {
			b.carryTo(in.Value)
		}
	case widget.Drop:
		if b.lift != nil {
			b.carryTo(in.Value)
			to, from := b.lift.to, b.lift.from
			b.lift = nil
			if to != from {
				b.report(s.Move(to), now, b.saidPiece(b.Words.Bench.Moved))
			}
		}
	case widget.PutBack:
		b.lift = nil
	case widget.Set: // from the twin: the piece's new place
		s.Select(at)
		to := min(max(int(in.Value), 0), len(s.Tracks()[at.Lane].Legs)-1)
		if to != at.Piece {
			b.report(s.Move(to), now, b.saidPiece(b.Words.Bench.Moved))
		}
	}
}

// settle tells the page of a complete edit, and speaks what the piece in hand
// has become.
func (b *Bench) settle() {
	s := b.Session
	if s.Holding() || b.seen.rev == s.Revision() && b.seen.sel == s.Selected() {
		return
	}
	if b.seen.rev != s.Revision() {
		b.host.Changed()
	}
	b.seen.rev, b.seen.sel = s.Revision(), s.Selected()
	if said := b.pieceSentence(); said != b.seen.said {
		b.seen.said = said
		b.host.Announce(said)
	}
}

func (b *Bench) pieceSentence() string {
	sel := b.Session.Selected()
	t := b.Session.Tracks()[sel.Lane]
	return b.Words.PieceName(t.Lane.Side, sel.Piece, len(t.Legs), b.Session.Figure(sel))
}

// figureLine tells ratio and length of the piece in hand.
func (b *Bench) figureLine() string {
	f := b.Session.Figure(b.Session.Selected())
	parts := []string{}
	if f.HasRatio {
		parts = append(parts, fmt.Sprintf(b.Words.Bench.Ratio, words.Value(f.Ratio)))
	}
	if m := b.Words.Mode(f.Mode); m != "" {
		parts = append(parts, m)
	}
	parts = append(parts, b.Words.Beats(b.Session.SelectedPiece().Length()))
	return strings.Join(parts, " · ")
}

// Opened takes over a pattern that the session has just opened, and says so.
func (b *Bench) Opened(now float64) {
	b.hint = false
	b.lift = nil
	b.say(fmt.Sprintf(b.Words.Bench.Opened, b.Session.Pattern().Title), now)
	b.settle()
}

// Rename changes title and notes.
func (b *Bench) Rename(title, notes string) error {
	err := b.Session.Rename(title, notes)
	b.settle()
	return err
}
