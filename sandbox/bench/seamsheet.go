package bench

import (
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// Sheet is something to be read: what it is about, the point of it in a
// sentence, and the particulars.
type Sheet struct {
	Title, Lead, Text string
	Lines             []words.Line
}

// showSeam tells all of the join after a piece.
func (b *Bench) showSeam(at session.Select) {
	t := b.Session.Tracks()[at.Lane]
	x := b.Session.Seams()[at.Lane][at.Piece]
	w := &b.Words.Strip
	b.host.ShowSheet(Sheet{
		Title: b.Words.JoinTitle(t.Lane.Side, len(t.Legs), x),
		Lead:  w.Verdicts[x.Verdict],
		Text:  w.Meanings[x.Verdict],
		Lines: b.Words.JoinLines(x),
	})
}
