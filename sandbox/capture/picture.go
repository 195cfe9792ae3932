package capture

import (
	"image"
	"math"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/paint"
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
	headLine = 0.68 * headRow // its base line
	nameRow  = 21
	nameFoot = 9
	// nameIndent is the room of a hand's letter.
	nameIndent = 20

	timingRow   = nameRow + timingBand + 8
	timingBand  = 22
	captionLine = 19
	captionFoot = 10
	// mostLines bounds a caption; what is left over ends in an ellipsis.
	mostLines = 4
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

// rows are the parts of a whole picture, one under the other; what is not
// shown has no height.
type rows struct{ head, figure, names, timing, caption display.Rect }

// rows shares a picture out, each time alike.
func (a *artist) rows() rows {
	if a.parts == nil {
		r := a.share()
		a.parts = &r
	}
	return *a.parts
}

func (a *artist) share() (r rows) {
	r.figure = a.frame()
	if a.Show.Title || a.Show.Beats {
		r.head, r.figure = r.figure.CutTop(headRow)
	}
	r.caption, r.figure = a.underCaption(r.figure)
	if len(a.props) > 0 {
		r.timing, r.figure = r.figure.CutBottom(timingRow)
	}
	if a.Show.Names {
		r.names, r.figure = r.figure.CutBottom(a.namesHeight(r.figure.W))
	}
	return r
}

// draw adds what is seen at a beat to l, over the whole picture.
func (a *artist) draw(l *display.List, beat float64) {
	a.drawStill(l)
	a.drawMoving(l, beat)
}

// drawStill adds what is seen at every beat alike.
func (a *artist) drawStill(l *display.List) {
	r := a.rows()
	if a.Show.Title {
		aside := ""
		if a.Show.Beats {
			aside = a.words.BeatCount(a.count(), a.count()) // the widest
		}
		a.title(l, r.head, aside)
	}
	a.caption(l, r.caption)
	a.session.GoTo(0)
	a.stage(r.figure).DrawStill(l, a.session)
}

// drawMoving adds what is another at another beat, which lies over the rest.
func (a *artist) drawMoving(l *display.List, beat float64) {
	r := a.rows()
	if a.Show.Beats {
		a.aside(l, r.head, a.beatText(beat))
	}
	if a.Show.Names {
		a.names(l, r.names, beat)
	}
	a.band(l, r.timing, beat)
	a.moving(l, a.stage(r.figure), beat)
}

// cellFigure adds the pattern at a beat to l, within r, and what its pieces are
// called and how the props stand, if that is shown.
func (a *artist) cellFigure(l *display.List, r display.Rect, beat float64) {
	var foot display.Rect
	if len(a.props) > 0 {
		foot, r = r.CutBottom(nameRow)
		a.timingText(l, foot, beat)
	}
	if a.Show.Names {
		foot, r = r.CutBottom(a.namesHeight(r.W))
		a.names(l, foot, beat)
	}
	a.session.GoTo(beat)
	st := a.stage(r)
	st.DrawStill(l, a.session)
	a.moving(l, st, beat)
}

// moving adds what of a figure is another at another beat.
func (a *artist) moving(l *display.List, st *scene.Stage, beat float64) {
	a.session.GoTo(beat)
	st.DrawMoving(l, a.session)
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

// count returns how many beats a round has, the last perhaps not a whole one.
func (a *artist) count() int { return max(int(math.Ceil(a.round.Float()-hair)), 1) }

const hair = 1e-9 // beats: a beat that was rounded down has begun

// beatText says which beat of the round it is, as dancers count: from 1.
func (a *artist) beatText(beat float64) string {
	return a.words.BeatCount(int(math.Floor(math.Mod(beat, a.round.Float())+hair))+1, a.count())
}

// aside writes a text at the right of the row for the title.
func (a *artist) aside(l *display.List, r display.Rect, text string) {
	x := r.X + r.W - inset - a.faces.Width(text, theme.TextBody, false)
	l.Text(display.Pt{X: x, Y: r.Y + headLine}, theme.TextBody, false, a.theme.Muted, text)
}

// title writes the title, with room for a text at its right.
func (a *artist) title(l *display.List, r display.Rect, aside string) {
	room := r.W - 2*inset
	if aside != "" {
		room -= a.faces.Width(aside, theme.TextBody, false) + inset
	}
	size := float64(theme.TextLarge)
	for size > theme.TextBody && a.faces.Width(a.pattern.Title, size, true) > room {
		size--
	}
	l.Text(display.Pt{X: r.X + inset, Y: r.Y + headLine}, size, true, a.theme.Ink, a.faces.Fit(a.pattern.Title, size, true, room))
}

// naming is how the hands' names are written: beside each other where even the
// longest fit, in short if need be, else one under the other.
type naming struct{ beside, short bool }

func (a *artist) naming(width float64) naming {
	if a.width != width {
		a.width, a.named = width, a.fitting(width)
	}
	return a.named
}

func (a *artist) fitting(width float64) naming {
	if len(a.tracks) < 2 {
		return naming{}
	}
	room := a.nameRoom(width / float64(len(a.tracks)))
	for _, n := range []naming{{true, false}, {true, true}} {
		fits := true
		for i, t := range a.tracks {
			for piece := range t.Legs {
				fits = fits && a.faces.Width(a.nameOf(i, piece, n), theme.TextBody, false) <= room
			}
		}
		if fits {
			return n
		}
	}
	return naming{}
}

// nameRoom returns the width for a name in that of its place.
func (a *artist) nameRoom(width float64) float64 {
	if a.Show.HideLetters {
		return width - 2*inset
	}
	return width - 2*inset - nameIndent
}

func (a *artist) nameOf(lane, piece int, n naming) string {
	f := a.session.Figure(session.Select{Lane: lane, Piece: piece})
	if n.short {
		return a.words.ShortName(f)
	}
	return a.words.Name(f)
}

// namesHeight is the height of the rows for names in a width.
func (a *artist) namesHeight(width float64) float64 {
	if a.naming(width).beside {
		return nameRow + nameFoot
	}
	return nameRow*float64(len(a.tracks)) + nameFoot
}

// names writes, hand by hand, the elementary pattern of the piece that plays.
func (a *artist) names(l *display.List, r display.Rect, beat float64) {
	n := a.naming(r.W)
	for i, t := range a.tracks {
		_, piece, _ := t.Locate(beat)
		at := display.Rect{X: r.X, Y: r.Y + nameRow*float64(i), W: r.W}
		if n.beside {
			at.W /= float64(len(a.tracks))
			at.X, at.Y = at.X+at.W*float64(i), r.Y
		}
		x, y := at.X+inset, at.Y+nameRow*0.72
		if !a.Show.HideLetters {
			c := a.theme.Of(t.Lane.Side == engine.Left)
			l.Text(display.Pt{X: x, Y: y}, theme.TextBody, true, c, a.words.Letter(t.Lane.Side))
			x += nameIndent
		}
		l.Text(display.Pt{X: x, Y: y}, theme.TextBody, false, a.theme.Ink, a.faces.Fit(a.nameOf(i, piece, n), theme.TextBody, false, a.nameRoom(at.W)))
	}
}

// paintGround paints what is seen at every beat alike.
func (a *artist) paintGround() *image.RGBA {
	var l display.List
	l.Reset(a.ground())
	a.drawStill(&l)
	dst := image.NewRGBA(image.Rect(0, 0, a.Width, a.Height))
	a.pixels.Paint(dst, &l, a.unit())
	return dst
}

// paint paints the picture of a beat on dst, whose ground is paintGround's.
func (a *artist) paint(dst *paint.Layer, ground *image.RGBA, l *display.List, beat float64) {
	l.Reset(a.ground())
	a.drawMoving(l, beat)
	a.pixels.PaintOver(dst, ground, l, a.unit())
}
