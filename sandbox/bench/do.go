package bench

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// Do carries an intent out, whether a finger or a twin meant it; now is in
// milliseconds.
func (b *Bench) Do(in widget.Intent, now float64) {
	if b.compare != nil {
		b.doCompare(in)
		return
	}
	b.hintUntil = 0
	s := b.Session
	id := in.ID
	from := b.several
	b.several = nil
	switch {
	case b.doOnStage(in, now):
	case id == idPlayhead:
		if in.Act == widget.Set {
			s.Seek(in.Value)
			if !s.Playing {
				s.SelectUnderPlayhead() // the piece that Cut would divide
			}
		}
	case b.dial(id) != nil && in.Act != widget.Press:
		b.slide(b.dial(id), in)
	case strings.HasPrefix(id, "piece-"):
		b.doPiece(in, from, now)
	case strings.HasPrefix(id, seamPrefix):
		b.doSeam(in, now)
	case in.Act == widget.Press:
		b.press(id, now)
	}
	b.settle()
}

func (b *Bench) slide(d *dial, in widget.Intent) {
	s := b.Session
	switch in.Act {
	case widget.Hold:
		s.Hold()
	case widget.Release:
		s.Release()
	case widget.Reset:
		_ = b.turn(d, d.start(s)) // a default is within the file's range
	case widget.Set:
		// Values come from the dial's own grid, so the fraction is exact.
		v := frac.Near(in.Value, d.step.Float()/100, 1_000_000)
		if d.min.Cmp(v) <= 0 && v.Cmp(d.max) <= 0 {
			_ = b.turn(d, v) // within the file's range, so it can be written
		}
	}
}

// step moves a dial to the next whole multiple of its step above or below; a
// speed, to the next whole number.
func (b *Bench) step(d *dial, up bool) {
	by := d.step
	if d.catch > 0 {
		by = frac.Int(1)
	}
	v := d.get(b.Session).Div(by)
	next := v.Floor().Add(frac.Int(1))
	if !up {
		next = v.Neg().Floor().Add(frac.Int(1)).Neg()
	}
	if next = next.Mul(by); d.min.Cmp(next) <= 0 && next.Cmp(d.max) <= 0 {
		_ = b.turn(d, next)
	}
}

func (b *Bench) press(id string, now float64) {
	s, w := b.Session, &b.Words.Bench
	if base, what, ok := cutSuffix(id, suffixLess, suffixMore, suffixType, suffixSwap); ok && b.dial(base) != nil {
		switch what {
		case suffixType:
			b.ask(b.dial(base))
		case suffixSwap:
			b.offerDials(base)
		default:
			b.step(b.dial(base), what == suffixMore)
		}
		return
	}
	if b.plan.big && b.pressBig(id, now) {
		return
	}
	switch id {
	case idTold:
		b.showTold()
	case idStepBack, idStepOn:
		s.Playing = false
		by := 1
		if id == idStepBack {
			by = -1
		}
		s.Step(by)
	case idLoop:
		b.nextLoop(now)
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
		if what, ok := s.Undo(); ok {
			b.stage.reach = 0 // the view goes back, too
			b.say(fmt.Sprintf(w.Undone, b.editName(what)), now)
		}
	case idRedo:
		if what, ok := s.Redo(); ok {
			b.stage.reach = 0
			b.say(fmt.Sprintf(w.Redid, b.editName(what)), now)
		}
	case idCut:
		b.report(s.Cut(), now, func() string { return fmt.Sprintf(w.CutDone, s.Selected().Piece, s.Selected().Piece+1) })
	case idRejoin:
		b.report(s.Rejoin(), now, b.saidPiece(w.Rejoined))
	case idBack:
		b.report(s.ThereAndBack(), now, b.saidPiece(w.Added))
	case idFlip:
		b.report(s.Flip(), now, b.saidPiece(w.Flipped))
	case idRepeat:
		b.report(s.Repeat(), now, b.saidPieces(w.Added, b.Words.Strip.AddedAll))
	case idDelete:
		b.report(s.Delete(), now, counted(s, w.Deleted, b.Words.Strip.DeletedAll))
	default:
		if !b.pressTryout(id, now) {
			b.pressStrip(id, now)
		}
	}
}

// cutSuffix splits an ID into its dial and what is wanted of it.
func cutSuffix(id string, suffixes ...string) (base, suffix string, ok bool) {
	for _, x := range suffixes {
		if base, ok = strings.CutSuffix(id, x); ok {
			return base, x, true
		}
	}
	return id, "", false
}

// saidPieces says which pieces are selected: one, or several.
func (b *Bench) saidPieces(one, several string) func() string {
	return func() string {
		first, last := b.Session.Range()
		if first == last {
			return fmt.Sprintf(one, first+1)
		}
		return fmt.Sprintf(several, first+1, last+1)
	}
}

// counted says how many pieces were selected before an edit: one, or several.
func counted(s *session.Session, one, several string) func() string {
	first, last := s.Range()
	return func() string {
		if first == last {
			return one
		}
		return fmt.Sprintf(several, last-first+1)
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
	b.toast = toast{text, now + max(toastTime, toastLetter*float64(len(text)))}
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

// doPiece carries out an intent on a piece; where several are to be selected, a
// tap selects all from the piece that it began with.
func (b *Bench) doPiece(in widget.Intent, from *session.Select, now float64) {
	at, ok := b.pieceOf(in.ID)
	if !ok {
		b.lift = nil
		return
	}
	s := b.Session
	switch in.Act {
	case widget.Menu:
		b.menuPiece(at)
	case widget.Press:
		if from != nil && from.Lane == at.Lane {
			s.Select(*from)
			b.extend(at.Piece, now)
			return
		}
		s.Select(at)
	case widget.Extend:
		if at.Lane == s.Selected().Lane {
			b.extend(at.Piece, now)
		}
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
				b.report(s.Move(to), now, b.saidPieces(b.Words.Bench.Moved, b.Words.Strip.MovedAll))
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

// settleWhole speaks what the whole has become, once that is known.
func (b *Bench) settleWhole() {
	if !b.study.Named() || b.Session.Holding() || b.seen.told == b.Session.Revision() {
		return
	}
	b.seen.told = b.Session.Revision()
	if said := b.spoken(); said != b.seen.whole {
		first := b.seen.whole == ""
		b.seen.whole = said
		if !first { // nobody has asked yet
			b.host.Announce(said)
		}
	}
}

func (b *Bench) pieceSentence() string {
	sel := b.Session.Selected()
	t := b.Session.Tracks()[sel.Lane]
	return b.Words.PieceName(t.Lane.Side, sel.Piece, len(t.Legs), b.Session.Figure(sel))
}

// sweep says how far the arm goes in the piece in hand.
func (b *Bench) sweep() string {
	p := b.Session.SelectedPiece()
	return b.Words.ArmTurns(p.Arm.Mul(p.Cycles).Mul(p.Kept()))
}

// figureLine tells how much of its pattern the piece in hand makes, its ratio and length of the piece in hand.
func (b *Bench) figureLine() string {
	f := b.Session.Figure(b.Session.Selected())
	parts := []string{b.sweep()}
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
	b.openings++
	b.endCompare()
	b.hintUntil, b.tryout = 0, nil
	b.fitAgain()
	b.slots = firstSlots()
	b.say(fmt.Sprintf(b.Words.Bench.Opened, b.Session.Pattern().Title), now)
	b.settle()
}

// fitAgain lets another pattern be seen all of it, with nothing in the hand.
func (b *Bench) fitAgain() {
	b.lift = nil
	b.stage.zoom, b.stage.reach = scene.Zoom{}, 0
}

// Rename changes title and notes.
func (b *Bench) Rename(title, notes string) error {
	err := b.Session.Rename(title, notes)
	b.settle()
	return err
}
