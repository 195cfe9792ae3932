package bench

import (
	"math"

	"whorlbench/engine/duet"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
)

// bandRow is the height of the band under the strip that tells how the props
// stand to each other.
const bandRow = 22

// drawBand draws the band: together a full bar, quarter a half one, split an
// outline, what lies between a line; ticks lean where the props turn opposite
// ways. It shows the strip's round that the playhead is in.
func (b *Bench) drawBand(l *display.List) {
	k := &b.study
	if k.Of(b.Session); k.Duet == nil || b.plan.band.H == 0 || b.edge != nil || b.lift != nil {
		return
	}
	t, w := b.theme, &b.Words.Duet
	row := b.plan.band
	track, seen := b.stripTrack(row), b.stripShown(row)
	title := w.Props
	size := b.shrinkPlain(title, theme.TextSmall, 8, laneTag-6)
	l.Text(display.Pt{X: row.X, Y: row.Y + row.H/2 + size*0.36}, size, false, t.Muted, title)
	start := b.lapStart()
	for _, s := range k.Duet.Props {
		from, to := track.X+(s.From-start)*b.perBeat(), track.X+(s.To-start)*b.perBeat()
		r := clip(display.Rect{X: from, Y: row.Y + 2, W: to - from, H: row.H - 4}, seen)
		if r.W <= 0 {
			continue
		}
		bar := display.Rect{X: r.X + 0.5, Y: r.Y, W: max(r.W-1, 1), H: r.H}
		grey := display.Mix(t.Ground, t.Muted, 0.35)
		switch s.Timing {
		case duet.Together:
			l.FillRect(bar, 3, grey)
		case duet.Quarter:
			l.FillRect(display.Rect{X: bar.X, Y: bar.Y + bar.H/2, W: bar.W, H: bar.H / 2}, 2, grey)
		case duet.Split:
			l.StrokeRect(bar.Inset(0.75), 3, 1.5, t.Muted)
		default:
			l.Segment(display.Pt{X: bar.X, Y: bar.Y + bar.H/2}, display.Pt{X: bar.X + bar.W, Y: bar.Y + bar.H/2}, 1.5, t.Muted)
		}
		text := b.Words.BandText(s)
		if b.faces.Width(text, theme.TextSmall, false) > bar.W-8 {
			text = b.Words.Timing(s.Timing)
		}
		if s.Timing != duet.Between && b.faces.Width(text, theme.TextSmall, false) <= bar.W-8 {
			l.Text(display.Pt{X: bar.X + (bar.W-b.faces.Width(text, theme.TextSmall, false))/2, Y: bar.Y + bar.H/2 + 3.8}, theme.TextSmall, false, t.Ink, text)
		}
	}
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
