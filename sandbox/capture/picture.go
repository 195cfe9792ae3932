package capture

import (
	"image"
	"math"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
)

// A picture is laid out for designSide CSS pixels and shown larger or smaller
// as a whole, so that a projector's has the looks of a phone's; but no smaller
// than leastUnit, where letters and lines would be lost, unless even leastSide
// CSS pixels find no room.
const (
	designSide = 360
	leastUnit  = 0.6
	leastSide  = 150
)

// The layout of a picture, in CSS pixels.
const (
	margin   = 8 // beyond everything drawn
	inset    = 14
	headRow  = 34
	nameRow  = 21
	nameFoot = 9
)

// unit returns how many pixels a CSS pixel has.
func (t *Take) unit() float64 {
	side := float64(min(t.Width, t.Height))
	return max(side/designSide, min(leastUnit, side/leastSide))
}

// frame returns the whole picture, in CSS pixels.
func (t *Take) frame() display.Rect {
	u := t.unit()
	return display.Rect{W: float64(t.Width) / u, H: float64(t.Height) / u}
}

// stage returns the stage in what is left of r.
func (a *artist) stage(r display.Rect) *scene.Stage {
	return &scene.Stage{
		Theme: &a.theme, Faces: a.faces, Words: a.words, Area: r, Clear: a.Ground == Clear,
		View: a.Extent.View(r, margin, a.Mirror), Options: a.Show.Options,
	}
}

// draw adds what is seen at a beat to l, within r.
func (a *artist) draw(l *display.List, r display.Rect, beat float64) {
	area := r
	if a.Show.Title || a.Show.Beats {
		var top display.Rect
		top, area = area.CutTop(headRow)
		aside := ""
		if a.Show.Beats {
			aside = a.beatText(beat)
		}
		a.head(l, top, aside)
	}
	a.figure(l, area, beat)
}

// figure adds the pattern at a beat to l, within r, and what its pieces are
// called.
func (a *artist) figure(l *display.List, r display.Rect, beat float64) {
	if a.Show.Names {
		var foot display.Rect
		foot, r = r.CutBottom(nameRow*float64(len(a.tracks)) + nameFoot)
		a.names(l, foot, beat)
	}
	a.session.GoTo(beat)
	st := a.stage(r)
	st.Draw(l, a.session)
	a.drawTethers(l, st, beat)
}

// drawTethers marks, if that is wanted, where tethers go slack and the way of
// the hands that is really taken, in the round that a beat is in.
func (a *artist) drawTethers(l *display.List, st *scene.Stage, beat float64) {
	for i := range a.tethers {
		r, t := &a.tethers[i], a.tracks[i]
		round, _, _ := t.Locate(beat)
		if !a.Show.HideSlack {
			st.DrawSlack(l, t, r.InRound(t.Beats, round))
		}
		if a.Show.Taken && r.HasAstray {
			st.DrawTaken(l, t, a.pattern.Tempo, round)
		}
	}
}

// beatText says which beat of the round it is, as dancers count: from 1.
func (a *artist) beatText(beat float64) string {
	const hair = 1e-9 // beats: a beat that was rounded down has begun
	round := a.round.Float()
	now := int(math.Floor(math.Mod(beat, round)+hair)) + 1
	return a.words.BeatCount(now, max(int(math.Ceil(round-hair)), 1))
}

// head writes the title, if it is shown, and a text on the right.
func (a *artist) head(l *display.List, r display.Rect, aside string) {
	right, line := r.X+r.W-inset, r.Y+headRow*0.68
	if aside != "" {
		right -= a.faces.Width(aside, theme.TextBody, false)
		l.Text(display.Pt{X: right, Y: line}, theme.TextBody, false, a.theme.Muted, aside)
		right -= inset
	}
	if a.Show.Title {
		const size = theme.TextLarge
		l.Text(display.Pt{X: r.X + inset, Y: line}, size, true, a.theme.Ink, a.faces.Fit(a.pattern.Title, size, true, right-r.X-inset))
	}
}

// names writes, hand by hand, the elementary pattern of the piece that plays.
func (a *artist) names(l *display.List, r display.Rect, beat float64) {
	for i, t := range a.tracks {
		_, piece, _ := t.Locate(beat)
		x, y := r.X+inset, r.Y+nameRow*(float64(i)+0.72)
		if !a.Show.HideLetters {
			c := a.theme.Of(t.Lane.Side == engine.Left)
			l.Text(display.Pt{X: x, Y: y}, theme.TextBody, true, c, a.words.Letter(t.Lane.Side))
			x += 20
		}
		name := a.words.Name(a.session.Figure(session.Select{Lane: i, Piece: piece}))
		l.Text(display.Pt{X: x, Y: y}, theme.TextBody, false, a.theme.Ink, a.faces.Fit(name, theme.TextBody, false, r.X+r.W-inset-x))
	}
}

// paint paints the picture of a beat on dst.
func (a *artist) paint(dst *image.RGBA, l *display.List, beat float64) {
	l.Reset(a.ground())
	a.draw(l, a.frame(), beat)
	a.pixels.Paint(dst, l, a.unit())
}
