package bench

import (
	"strings"

	"whorlbench/engine/seam"
	"whorlbench/sandbox/display"
)

// told is what is written of a pattern that only an edit changes, so that a
// frame need not work it out anew.
type told struct {
	rev     int
	closing string
	short   string // the closing, where there is little room
	closes  bool
	worst   seam.Seam
	faulty  bool
}

// tell returns what is written of the pattern as it is now.
func (b *Bench) tell() *told {
	s := b.Session
	if b.told.rev == s.Revision() {
		return &b.told
	}
	b.told = told{rev: s.Revision(), closes: true}
	b.told.closing = b.Words.Closing(s.Pattern().Tempo, s.Tracks()...)
	b.told.short = b.Words.ClosingShort(s.Pattern().Tempo, s.Tracks()...)
	for _, k := range s.Tracks() {
		b.told.closes = b.told.closes && k.Closing().Closes()
	}
	_, b.told.worst, b.told.faulty = s.WorstSeam()
	return &b.told
}

// noteLines are the pattern's notes, broken into the lines that a place of a
// size holds.
type noteLines struct {
	notes string
	in    display.Rect
	size  float64
	at    []display.Pt
	texts []string
}

// breakNotes breaks the notes anew only where they, their place or their size
// have changed.
func (b *Bench) breakNotes(r display.Rect, size, high float64) *noteLines {
	n, notes := &b.notes, b.Session.Pattern().Notes
	if n.notes == notes && n.in == r && n.size == size {
		return n
	}
	*n = noteLines{notes: notes, in: r, size: size, at: n.at[:0], texts: n.texts[:0]}
	y, foot := r.Y+size, r.Y+r.H-size*0.3
	for para := range strings.SplitSeq(notes, "\n") {
		for _, line := range b.faces.Wrap(para, size, false, r.W) {
			if y > foot {
				if last := len(n.texts) - 1; last >= 0 {
					n.texts[last] = b.faces.Fit(n.texts[last]+" …", size, false, r.W)
				}
				return n
			}
			n.at, n.texts = append(n.at, display.Pt{X: r.X, Y: y}), append(n.texts, line)
			y += high
		}
		y += high / 3
	}
	return n
}
