package bench

import (
	"whorlbench/engine/seam"
	"whorlbench/sandbox/display"
)

// narrowPiece is the width in pixels below which pieces show no marks of smooth
// seams: what they are counts for more.
const narrowPiece = 34

// drawSeams marks each seam on the strip by its verdict, told apart by form:
// a small filled circle is smooth, a chevron a kink, a square a stop, a broken
// bar a gap. The last seam leads back into the first piece.
func (b *Bench) drawSeams(l *display.List) {
	for lane, seams := range b.Session.Seams() {
		t := b.Session.Tracks()[lane]
		row := b.plan.lanes[lane]
		track, seen := b.stripTrack(row), b.stripShown(row)
		perBeat := track.W / b.Session.Round()
		for _, s := range seams {
			g := &t.Legs[s.After]
			if g.Span*perBeat < narrowPiece && s.Verdict == seam.Smooth {
				continue
			}
			x := track.X + (g.Start+g.Span)*perBeat
			if x < seen.X || x > seen.X+seen.W+1 {
				continue
			}
			b.seamMark(l, display.Pt{X: x, Y: row.Y + row.H/2}, s.Verdict)
		}
	}
}

func (b *Bench) seamMark(l *display.List, at display.Pt, v seam.Verdict) {
	t := b.theme
	const r = 5.0
	p := func(x, y float64) display.Pt { return at.Add(display.Pt{X: x, Y: y}) }
	if v != seam.Gap {
		l.Disc(at, r+3, t.Ground)
	}
	switch v {
	case seam.Smooth:
		l.Disc(at, r-1, t.Muted)
	case seam.Kink:
		l.Polyline(3, t.Warn, false, p(-3, -r), p(3, 0), p(-3, r))
	case seam.Stop:
		l.FillRect(display.Rect{X: at.X - r + 0.5, Y: at.Y - r + 0.5, W: 2*r - 1, H: 2*r - 1}, 1, t.Warn)
	case seam.Gap:
		const half = 19
		l.Segment(p(0, -half), p(0, half), 7, t.Ground)
		l.Segment(p(0, -half), p(0, -4), 3, t.Warn)
		l.Segment(p(0, 4), p(0, half), 3, t.Warn)
	}
}
