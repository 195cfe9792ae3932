package bench

import (
	"fmt"
	"strings"

	"whorlbench/engine"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// What a piece's sheet offers besides the buttons under the strip, as keys
// and options name it.
const (
	idCopy      = "copy"
	idCutOut    = "cut-out"
	idPaste     = "paste"
	idPlace     = "place"
	idCarry     = "carry-on"
	idFlipAll   = "mirror-pattern"
	idTurnAll   = "turn-pattern"
	idJoin      = "join"
	idSeveral   = "several"
	idAllPieces = "all-pieces"
	menu        = "menu-"
)

// eighth is what the whole is turned by: a diamond becomes a box.
const eighth engine.Degrees = 45

// offerPiece asks what to do with the piece in hand.
func (b *Bench) offerPiece() {
	s, w := b.Session, &b.Words.Strip
	at := s.Selected()
	t := s.Tracks()[at.Lane]
	c := Choice{ID: menu + pieceID(at.Lane, at.Piece), Label: b.Words.PieceName(t.Lane.Side, at.Piece, len(t.Legs), s.Figure(at))}
	add := func(id string, x words.TitledText) {
		c.Options = append(c.Options, Option{ID: id, Label: x.Label, Detail: x.Detail})
	}
	k := &b.Words.Bench
	add(idFollow, b.Words.Follow.Ask)
	add(idMeet, b.Words.Follow.AskMeet)
	if n := len(t.Legs); n > 1 {
		add(idSeveral, w.Several)
		add(idAllPieces, words.TitledText{Label: w.AllPieces.Label, Detail: fmt.Sprintf(w.AllPieces.Detail, n)})
	}
	add(idCopy, w.Copy)
	if s.CanPaste() {
		add(idPaste, w.Paste)
	}
	if s.CanDelete() {
		add(idCutOut, w.CutOut)
	}
	add(idRepeat, words.TitledText{Label: k.Repeat.Label, Detail: w.Plain[0]})
	add(idBack, words.TitledText{Label: k.ThereBack.Short, Detail: w.Plain[1]})
	add(idFlip, words.TitledText{Label: k.Flip.Short, Detail: w.Plain[2]})
	if s.Placed() {
		add(idCarry, w.Carry)
	} else {
		add(idPlace, w.PlaceHere)
	}
	add(idJoin, words.TitledText{Label: w.JoinNext, Detail: w.Verdicts[s.Seams()[at.Lane][at.Piece].Verdict]})
	if s.CanDelete() {
		add(idDelete, words.TitledText{Label: k.Delete.Label, Detail: w.Plain[3]})
	}
	add(idFlipAll, w.MirrorAll)
	add(idTurnAll, w.TurnAll)
	b.host.Choose(c)
}

// pressStrip does what a key or an option of the strip's sheets asks for; ok
// is false if id is none of them.
func (b *Bench) pressStrip(id string, now float64) (ok bool) {
	s, w := b.Session, &b.Words.Strip
	piece := func(format string) func() string {
		return func() string { return fmt.Sprintf(format, s.Selected().Piece+1) }
	}
	switch id {
	case idAddHand:
		b.offerHand(0, true)
	case idCopy:
		s.Copy()
		b.say(b.saidPieces(w.Copied, w.CopiedAll)(), now)
	case idPaste:
		if !s.CanPaste() {
			b.say(w.CopyNothing, now)
			return true
		}
		b.report(s.Paste(), now, piece(w.Pasted))
	case idCutOut:
		b.report(s.CutOut(), now, counted(s, w.CutOutDone, w.CutOutAll))
	case idPlace:
		b.report(s.Place(), now, piece(w.Placed))
	case idCarry:
		b.report(s.CarryOn(), now, piece(w.CarriesOn))
	case idFlipAll:
		b.report(s.MirrorPattern(), now, func() string { return w.Mirrored })
	case idTurnAll:
		b.report(s.TurnPattern(eighth), now, func() string { return w.Turned })
	case idSeveral:
		from := s.Selected()
		b.several = &from
		b.say(w.SeveralNow, now)
	case idAllPieces:
		s.Select(session.Select{Lane: s.Selected().Lane})
		b.extend(len(s.Tracks()[s.Selected().Lane].Legs)-1, now)
	case idFollow:
		_, last := s.Range()
		b.offerFollow(session.Select{Lane: s.Selected().Lane, Piece: last})
	case idMeet:
		b.offerMeet(s.Selected())
	case idJoin:
		b.showSeam(s.Selected())
	case idZoomIn, idZoomOut:
		b.zoomKey(id == idZoomIn, now)
	default:
		lane, found := handOf(id)
		if found {
			b.offerHand(lane, false)
		}
		return found
	}
	return true
}

func handOf(id string) (lane int, ok bool) {
	_, err := fmt.Sscanf(id, handPrefix+"%d", &lane)
	return lane, err == nil && strings.HasPrefix(id, handPrefix)
}

// chosenStrip takes a pick on one of the strip's sheets; ok is false if id is
// none of them.
func (b *Bench) chosenStrip(id, option string, now float64) (ok bool) {
	if lane, ok := handOf(id); ok {
		b.chosenHand(lane, option, now)
		return true
	}
	rest, ok := strings.CutPrefix(id, menu)
	if !ok {
		return false
	}
	if at, ok := b.pieceOf(rest); ok {
		if !b.Session.InRange(at) {
			b.Session.Select(at)
		}
		if !b.pressStrip(option, now) {
			b.press(option, now)
		}
	}
	return true
}

// menuPiece takes a piece in hand, if it is not selected with others, and asks
// what to do.
func (b *Bench) menuPiece(at session.Select) {
	if !b.Session.InRange(at) {
		b.Session.Select(at)
	}
	b.offerPiece()
}

// extend selects all pieces up to one, and says which.
func (b *Bench) extend(piece int, now float64) {
	b.Session.Extend(piece)
	b.say(b.saidPieces(b.Words.Strip.OneInHand, b.Words.Strip.SeveralInHand)(), now)
}

// waiting is a pointer that may become a long press.
type waiting struct {
	id string
	at float64 // milliseconds, when it has become one
}

// await begins or ends the wait for a long press after a pointer event.
func (b *Bench) await(ev widget.Pointer, now float64) {
	if ev.Phase == widget.Down {
		b.wait = waiting{}
		for i := range b.controls {
			c := &b.controls[i]
			if held, tap := b.router.Grabbed(c.ID); held && tap && c.Kind == widget.Piece {
				b.wait = waiting{c.ID, now + widget.LongPress}
			}
		}
		return
	}
	if held, tap := b.router.Grabbed(b.wait.id); !held || !tap {
		b.wait = waiting{}
	}
}

// waited opens the sheet of a piece that has been pressed for long enough.
func (b *Bench) waited(now float64) {
	if b.wait.id == "" || now < b.wait.at {
		return
	}
	id := b.wait.id
	b.wait = waiting{}
	b.arrange()
	b.intents = b.router.Waited(b.intents[:0], id)
	for _, in := range b.intents {
		b.Do(in, now)
	}
}

// editName says what an edit was.
func (b *Bench) editName(e session.Edit) string {
	if i, ok := e.What.StripEdit(); ok {
		return b.Words.Strip.Edits[i]
	}
	if i, ok := e.What.ShownEdit(); ok {
		return b.Words.Tryout.Edits[i]
	}
	d := &b.Words.Dials
	switch {
	case e.What != session.Dialled:
	case e.Of == choosePath:
		return d.PathEdit
	case e.Of == chooseLaw:
		return d.LawEdit
	case e.Of == idEnd:
		return d.EndEdit
	case e.Of == editCentre:
		return d.CentreEdit
	case b.dial(e.Of) != nil:
		return fmt.Sprintf(d.Edit, b.dial(e.Of).name.Label)
	}
	return b.Words.Bench.Edits[e.What]
}
