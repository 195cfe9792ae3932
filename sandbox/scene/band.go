package scene

import (
	"whorlbench/engine/duet"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// Band tells how the props of two hands stand to each other, beat by beat.
type Band struct {
	Theme   *theme.Theme
	Faces   *face.Set
	Words   *words.Table
	Row     display.Rect // what of it is seen
	X       float64      // where Start is
	Start   float64      // beats
	PerBeat float64      // CSS pixels
	Plain   bool         // no words in the bars
}

// Draw adds the spans to l: together a full bar, quarter a half one, split an
// outline, what lies between a line.
func (b *Band) Draw(l *display.List, spans []duet.Span) {
	t := b.Theme
	for _, s := range spans {
		left, right := b.X+(s.From-b.Start)*b.PerBeat, b.X+(s.To-b.Start)*b.PerBeat
		left, right = max(left, b.Row.X), min(right, b.Row.X+b.Row.W)
		if right <= left {
			continue
		}
		bar := display.Rect{X: left + 0.5, Y: b.Row.Y + 2, W: max(right-left-1, 1), H: b.Row.H - 4}
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
		if s.Timing == duet.Between || b.Plain {
			continue
		}
		text := b.Words.BandText(s)
		if b.Faces.Width(text, theme.TextSmall, false) > bar.W-8 {
			text = b.Words.Timing(s.Timing)
		}
		if w := b.Faces.Width(text, theme.TextSmall, false); w <= bar.W-8 {
			l.Text(display.Pt{X: bar.X + (bar.W-w)/2, Y: bar.Y + bar.H/2 + 3.8}, theme.TextSmall, false, t.Ink, text)
		}
	}
}
