package display

import (
	"image/color"
	"slices"
)

// stillPart is a copy of the marks that stay, to tell whether they have.
type stillPart struct {
	back   color.NRGBA
	marks  []Mark
	points []Pt
	alpha  []float32
}

// Keep says that all marks so far stay; those that follow move over them. The
// version changes only where they are others than at the last Keep.
func (l *List) Keep() {
	l.Still = len(l.Marks)
	k := &l.kept
	if l.Version > 0 && k.back == l.Back && slices.Equal(k.marks, l.Marks) && slices.Equal(k.points, l.Points) && slices.Equal(k.alpha, l.Alpha) {
		return
	}
	k.back = l.Back
	k.marks = append(k.marks[:0], l.Marks...)
	k.points = append(k.points[:0], l.Points...)
	k.alpha = append(k.alpha[:0], l.Alpha...)
	l.Version++
}

// Again adds what stays once more, where it lies in r.
func (l *List) Again(r Rect) { l.Marks = append(l.Marks, Mark{Kind: Again, Rect: r}) }

// Rewind drops the marks that move.
func (l *List) Rewind() {
	l.Marks, l.Points, l.Alpha = l.Marks[:l.Still], l.Points[:len(l.kept.points)], l.Alpha[:len(l.kept.alpha)]
}
