package capture

import (
	"fmt"
	"math"
	"slices"

	"whorlbench/engine/duet"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/theme"
)

// underCaption returns the rows of the caption, if there is one, and the rest
// of r.
func (a *artist) underCaption(r display.Rect) (foot, rest display.Rect) {
	return r.CutBottom(captionHeight(a.captionLines(r.W)))
}

// captionLines breaks the caption into lines for a width.
func (a *artist) captionLines(width float64) []string {
	if a.Show.Caption == "" {
		return nil
	}
	room := width - 2*inset
	lines := a.faces.Wrap(a.Show.Caption, theme.TextBody, false, room)
	if len(lines) > mostLines {
		lines = lines[:mostLines]
		lines[mostLines-1] += " …"
	}
	for i, line := range lines {
		lines[i] = a.faces.Fit(line, theme.TextBody, false, room)
	}
	return lines
}

func captionHeight(lines []string) float64 {
	if len(lines) == 0 {
		return 0
	}
	return captionLine*float64(len(lines)) + captionFoot
}

// caption writes the caption, in the middle.
func (a *artist) caption(l *display.List, r display.Rect) {
	for i, line := range a.captionLines(r.W) {
		x := r.X + (r.W-a.faces.Width(line, theme.TextBody, false))/2
		l.Text(display.Pt{X: x, Y: r.Y + captionLine*(float64(i)+0.72)}, theme.TextBody, false, a.theme.Ink, line)
	}
}

// band tells how the props stand to each other at a beat, and over the round
// that it is in.
func (a *artist) band(l *display.List, r display.Rect, beat float64) {
	if r.H == 0 {
		return
	}
	text, rest := r.CutTop(nameRow)
	a.timingText(l, text, beat)
	row := display.Rect{X: r.X + inset, Y: rest.Y, W: r.W - 2*inset, H: timingBand}
	round, now := a.round.Float(), a.read(beat)
	b := scene.Band{
		Theme: &a.theme, Faces: a.faces, Words: a.words, Row: row,
		X: row.X, Start: math.Floor((now+hair)/round) * round, PerBeat: row.W / round, Plain: true,
	}
	b.Draw(l, a.props)
	x := b.X + (now-b.Start)*b.PerBeat
	l.FillRect(display.Rect{X: x - 1, Y: row.Y, W: 2, H: row.H}, 1, a.theme.Ink)
}

// read returns the beat in what is read of two hands that is like a beat.
func (a *artist) read(beat float64) float64 {
	if until := a.props[len(a.props)-1].To; beat > until-hair {
		return max(math.Mod(beat+hair, until)-hair, 0)
	}
	return beat
}

// timingText tells how the props stand to each other at a beat.
func (a *artist) timingText(l *display.List, r display.Rect, beat float64) {
	now := a.read(beat)
	i := slices.IndexFunc(a.props, func(s duet.Span) bool { return now < s.To-hair })
	s := a.props[max(i, 0)]
	text := fmt.Sprintf(a.words.Card.Props, a.words.Direction(s.Direction), a.words.Timing(s.Timing))
	l.Text(display.Pt{X: r.X + inset, Y: r.Y + nameRow*0.62}, theme.TextBody, false, a.theme.Ink, a.faces.Fit(text, theme.TextBody, false, r.W-2*inset))
}
