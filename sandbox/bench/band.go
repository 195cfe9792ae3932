package bench

import (
	"math"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/theme"
)

// bandRow is the height of the band under the strip that tells how the props
// stand to each other.
const bandRow = 22

// drawBand draws the band over the strip's round that the playhead is in.
func (b *Bench) drawBand(l *display.List) {
	k := &b.study
	if k.Of(b.Session); k.Duet == nil || b.plan.band.H == 0 || b.edge != nil || b.lift != nil {
		return
	}
	row := b.plan.band
	title := b.Words.Duet.Props
	size := b.shrinkPlain(title, theme.TextSmall, 8, laneTag-6)
	l.Text(display.Pt{X: row.X, Y: row.Y + row.H/2 + size*0.36}, size, false, b.theme.Muted, title)
	seen := b.stripShown(row)
	band := scene.Band{
		Theme: b.theme, Faces: b.faces, Words: b.Words, Row: display.Rect{X: seen.X, Y: row.Y, W: seen.W, H: row.H},
		X: b.stripTrack(row).X, Start: b.lapStart(), PerBeat: b.perBeat(),
	}
	band.Draw(l, k.Duet.Props)
}

// lapStart returns the beat at which the strip's round begins that the playhead
// is in, within what has been read of the two hands.
func (b *Bench) lapStart() float64 {
	round := b.Session.Round()
	start := math.Floor(b.Session.Beat()/round) * round
	if d := b.study.Duet; d != nil && d.Until > 0 {
		start = math.Mod(start, d.Until)
	}
	return start
}

func (b *Bench) shrinkPlain(text string, size, least, room float64) float64 {
	for size > least && b.faces.Width(text, size, false) > room {
		size -= 0.5
	}
	return size
}
