package scene

import (
	"image/color"
	"strings"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
)

// The pictures of a lesson card stand still on paper, so the way of a head does
// not fade: thin where it goes at all, bold where it goes next.
const (
	thinWay  = 1.25
	boldWay  = 3.0
	rightWay = 5.0 // where there is a left hand too, whose way lies on it
	leftWay  = 2.0
	paleWay  = 0.5  // how much of the ink is in a thin way
	arrow    = 12.0 // CSS pixels, along it
	aheadOf  = 0.02 // of a way, by which its arrow is aimed
	chipSize = 13.0
)

// DrawStep adds to l where hands and heads are at a beat, and their way to the
// next picture's, with an arrow at its end; pale, what the heads do from beat 0
// to all and where the hands go, unless all is 0.
func (st *Stage) DrawStep(l *display.List, s *session.Session, beat, next, all float64) {
	still := *st
	still.HideHandPath = still.HideHandPath || all == 0
	still.DrawStill(l, s)
	for _, t := range s.Tracks() {
		st.pale(l, t, all)
	}
	st.bold(l, s, beat, next)
	st.moment(l, s, beat)
	for _, t := range s.Tracks() {
		st.arrow(l, t, beat, next)
	}
}

// DrawRound adds to l all that the heads do from beat 0 to all, with arrows and
// with letters where pieces are joined, and hands and heads at beat 0.
func (st *Stage) DrawRound(l *display.List, s *session.Session, all float64, joins []Joined) {
	st.DrawStill(l, s)
	st.bold(l, s, 0, all)
	for _, t := range s.Tracks() {
		if len(t.Legs) <= mostArrows {
			for i := range t.Legs {
				g := &t.Legs[i]
				st.arrow(l, t, g.Start, g.Start+g.Span/2)
			}
		}
	}
	for _, j := range joins {
		t := s.Tracks()[j.Lane]
		at := t.AtPiece(0, j.Piece, 1)
		st.cutEnd(l, at.Head, heading(t, 0, j.Piece, 1, at), st.ink(t))
	}
	st.moment(l, s, 0)
	st.letters(l, s, joins)
}

// mostArrows bounds the pieces of a lane whose way is shown by arrows each.
const mostArrows = 16

// Joined is a place where a lane's piece ends, and the letter that stands for
// it.
type Joined struct {
	Lane, Piece int
	Letter      string
}

// bold draws the ways of the heads from one beat to another, a thick one for
// the right hand below a thin one for the left, so that both are seen where they
// are the same, and told apart without their hue.
func (st *Stage) bold(l *display.List, s *session.Session, from, to float64) {
	tracks := s.Tracks()
	for _, side := range []engine.Side{engine.Right, engine.Left} {
		for lane, t := range tracks {
			if t.Lane.Side != side {
				continue
			}
			width := boldWay
			if len(tracks) > 1 {
				width = map[engine.Side]float64{engine.Right: rightWay, engine.Left: leftWay}[side]
			}
			st.draw(l, s, course{lane, from, to, width, func(float64) float64 { return 1 }})
		}
	}
}

// pale draws the way of a head from beat 0 to all.
func (st *Stage) pale(l *display.List, t *engine.Track, all float64) {
	if all == 0 {
		return
	}
	c := display.Mix(st.Theme.Stage, st.ink(t), paleWay)
	begun := false
	Trail(t, 0, all, func(p engine.Point, _ int, _ float64, broken bool) {
		if broken || !begun {
			l.BeginLine(thinWay, c, false)
			begun = true
		}
		l.To(st.View.ToScreen(p.Head), 1)
	})
}

// arrow draws the point of an arrow at the end of a head's way; none where the
// head hardly moves.
func (st *Stage) arrow(l *display.List, t *engine.Track, from, to float64) {
	head := func(beat float64) complex128 { return t.At(beat).Head }
	st.arrowOf(l, st.ink(t), head, from, to)
}

// arrowOf draws the point of an arrow at the end of a way.
func (st *Stage) arrowOf(l *display.List, ink color.NRGBA, way func(beat float64) complex128, from, to float64) {
	tip, was := st.View.ToScreen(way(to-1e-6*(to-from))), st.View.ToScreen(way(to-aheadOf*(to-from)))
	d := tip.Sub(was)
	if d.Len() < 0.05 { // px
		return
	}
	along := d.Scale(arrow / d.Len())
	across := display.Pt{X: -along.Y, Y: along.X}.Scale(0.42)
	back := tip.Sub(along)
	l.Poly(ink, tip, back.Add(across), back.Sub(across))
}

// letters writes the letters of joins beyond the heads, those of one place
// together.
func (st *Stage) letters(l *display.List, s *session.Session, joins []Joined) {
	type place struct {
		at, out display.Pt
		letters []string
		c       color.NRGBA
	}
	const near, away = 14.0, 23.0 // px
	const mostLetters = 4         // of one place
	var places []place
next:
	for _, j := range joins {
		t := s.Tracks()[j.Lane]
		p := t.AtPiece(0, j.Piece, 1)
		at, hand := st.View.ToScreen(p.Head), st.View.ToScreen(p.Hand)
		for i := range places {
			if places[i].at.Sub(at).Len() < near {
				places[i].letters = append(places[i].letters, j.Letter)
				continue next
			}
		}
		out := at.Sub(hand)
		if n := out.Len(); n > 0 {
			out = out.Scale(away / n)
		}
		places = append(places, place{at, out, []string{j.Letter}, st.ink(t)})
	}
	for _, p := range places {
		if len(p.letters) > mostLetters {
			p.letters = append(p.letters[:mostLetters], "…")
		}
		text := strings.Join(p.letters, " ")
		w := st.Faces.Width(text, chipSize, true) + 8
		mid := p.at.Add(p.out)
		r := display.Rect{X: mid.X - w/2, Y: mid.Y - 9, W: w, H: 18}
		r.X = min(max(r.X, st.Area.X+1), st.Area.X+st.Area.W-w-1)
		r.Y = min(max(r.Y, st.Area.Y+1), st.Area.Y+st.Area.H-r.H-1)
		l.FillRect(r, theme.Corner/2, st.Theme.Stage)
		l.StrokeRect(r, theme.Corner/2, 1.25, st.Theme.Ink)
		l.Text(display.Pt{X: r.X + 4, Y: r.Y + 13.5}, chipSize, true, st.Theme.Ink, text)
	}
}
