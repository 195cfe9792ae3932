package scene

import (
	"image/color"
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// course is a head's way that is to be drawn: from one beat to another, its
// opacity by the beat.
type course struct {
	lane     int
	from, to float64
	width    float64
	alpha    func(beat float64) float64
}

// trail draws where the head has been, fading with age.
func (st *Stage) trail(l *display.List, lane int, s *session.Session) {
	length := st.Trail.Beats(s, lane)
	if length == 0 {
		return
	}
	now, strong := s.Beat(), 0.95
	if !s.Playing {
		strong = 0.55 // paused, the slice in hand is what counts
	}
	st.draw(l, s, course{lane, now - length, now, 3, func(beat float64) float64 {
		young := 1 - (now-beat)/length
		return strong * (0.12 + 0.88*young*young)
	}})
}

// slice draws the part that the piece in hand keeps of its elementary
// pattern, in full ink, with its two cut ends marked.
func (st *Stage) slice(l *display.List, s *session.Session, sel session.Select) {
	if s.Playing {
		st.sliceIn(l, s, sel, 2, 0.55)
	} else {
		st.sliceIn(l, s, sel, 3.5, 1)
	}
}

// sliceIn draws it with a stroke of a width, in pixels, and an opacity.
func (st *Stage) sliceIn(l *display.List, s *session.Session, sel session.Select, width, strong float64) {
	t := s.Tracks()[sel.Lane]
	g := &t.Legs[sel.Piece]
	round, _, _ := t.Locate(s.Beat())
	c := display.Clear(st.inkOf(s, sel), strong)
	n := legPoints(g, mostPoints)
	line := func(width float64, c color.NRGBA) {
		l.BeginLine(width, c, false)
		for k := 0; k <= n; k++ {
			l.To(st.View.ToScreen(t.PointAt(round, sel.Piece, float64(k)/float64(n)).Head), 1)
		}
	}
	line(width, c)
	if !st.PlainInk {
		if st.isDouble(s, sel) {
			if st.Clear {
				double(l, len(l.Marks)-1)
			} else {
				line(width*coreShare, st.Theme.Stage)
			}
		}
		start := float64(round)*t.Beats + g.Start
		st.ticksOf(l, s, sel, round, course{sel.Lane, start, start + g.Span, width, func(float64) float64 { return strong }})
	}
	for _, u := range []float64{0, 1} {
		at := t.AtPiece(round, sel.Piece, u)
		st.cutEnd(l, at.Head, heading(t, round, sel.Piece, u, at), st.inkOf(s, sel))
	}
}

// draw draws a course in the ink of each piece: in-spin a plain stroke,
// antispin with fine ticks across it, a unit turn a double stroke.
func (st *Stage) draw(l *display.List, s *session.Session, c course) {
	t := s.Tracks()[c.lane]
	last := -1
	var core []int // where the double strokes' lines begin in l.Marks
	Trail(t, c.from, c.to, func(p engine.Point, leg int, beat float64, broken bool) {
		at := st.View.ToScreen(p.Head)
		if broken || leg != last {
			// The new line begins where the last ended.
			join, was := display.Pt{}, float32(0)
			joined := !broken && last >= 0
			if joined {
				join, was = l.Points[len(l.Points)-1], l.Alpha[len(l.Alpha)-1]
			}
			sel := session.Select{Lane: c.lane, Piece: leg}
			if st.isDouble(s, sel) {
				core = append(core, len(l.Marks))
			}
			l.BeginLine(c.width, st.inkOf(s, sel), true)
			if joined {
				l.To(join, was)
			}
			last = leg
		}
		l.To(at, float32(c.alpha(beat)))
	})
	if st.PlainInk {
		return
	}
	for _, i := range core {
		if st.Clear {
			double(l, i)
			continue
		}
		m := l.Marks[i]
		l.BeginLine(c.width*coreShare, st.Theme.Stage, true)
		for k := range m.Count {
			l.To(l.Points[m.First+k], l.Alpha[m.First+k])
		}
	}
	st.ticks(l, s, c)
}

// ticksPerTurn is how close an antispin stroke's ticks stand, by the turns of
// arm and prop together.
const ticksPerTurn = 13

// isDouble reports whether a piece's stroke is a double one.
func (st *Stage) isDouble(s *session.Session, at session.Select) bool {
	return !st.PlainInk && s.Figure(at).Spin == naming.SpinUnit
}

// coreShare is how much of a double stroke's width lies between its lines.
const coreShare = 0.38

// double makes two lines of the one at l.Marks[i], side by side within its
// width, for a ground that is to be seen between them.
func double(l *display.List, i int) {
	m := l.Marks[i]
	apart := m.Width * (1 + coreShare) / 4 // of each line's middle, from the stroke's
	l.Marks[i].Width = m.Width * (1 - coreShare) / 2
	l.BeginLine(l.Marks[i].Width, m.Color, m.Fade)
	var was, across display.Pt
	for k := range m.Count {
		pts := l.Of(m) // anew, as the list grows
		at, next := pts[k], pts[min(k+1, m.Count-1)]
		if k == 0 {
			was = at
		}
		if d := next.Sub(was); d.Len() > 1e-6 { // px; where the head stands still it goes on as it was
			across = display.Pt{X: -d.Y, Y: d.X}.Scale(apart / d.Len())
		}
		was = at
		pts[k] = at.Add(across)
		l.To(at.Sub(across), l.Alpha[m.First+k])
	}
}

// ticks draws fine strokes across the antispin pieces of a course.
func (st *Stage) ticks(l *display.List, s *session.Session, c course) {
	t := s.Tracks()[c.lane]
	round, piece, _ := t.Locate(c.from)
	for float64(round)*t.Beats+t.Legs[piece].Start < c.to {
		st.ticksOf(l, s, session.Select{Lane: c.lane, Piece: piece}, round, c)
		if piece++; piece == len(t.Legs) {
			round, piece = round+1, 0
		}
	}
}

// ticksOf draws the ticks of one piece, if it is antispin, at places of the
// piece, so that they stand still while the trail goes on.
func (st *Stage) ticksOf(l *display.List, s *session.Session, at session.Select, round int, c course) {
	if s.Figure(at).Spin != naming.SpinAnti {
		return
	}
	t := s.Tracks()[at.Lane]
	g := &t.Legs[at.Piece]
	start := float64(round)*t.Beats + g.Start
	n := int(math.Min(math.Ceil(ticksPerTurn*g.Turns()), mostPoints/8))
	for k := range n {
		u := (float64(k) + 0.5) / float64(n)
		if beat := start + u*g.Span; beat > c.from && beat < c.to {
			st.tick(l, t.AtPiece(round, at.Piece, u), c.width, c.alpha(beat), st.inkOf(s, at))
		}
	}
}

// tickBeyond is how far, in pixels, a tick goes beyond its stroke, both sides
// together, and tickStroke its own width.
const (
	tickBeyond = 5
	tickStroke = 1.3
)

func (st *Stage) tick(l *display.List, at engine.State, width, alpha float64, c color.NRGBA) {
	v := cmplx.Abs(at.HeadVel)
	if v < 1e-9 {
		return
	}
	half := (width + tickBeyond) / 2
	across := at.HeadVel / complex(v, 0) * complex(0, half/st.View.Scale)
	l.Segment(st.View.ToScreen(at.Head-across), st.View.ToScreen(at.Head+across), tickStroke, display.Clear(c, alpha))
}

// inkOf returns the colour of a piece: its hand's, or one of its own.
func (st *Stage) inkOf(s *session.Session, at session.Select) color.NRGBA {
	if st.ByPiece {
		return st.Theme.Piece(at.Piece)
	}
	return st.ink(s.Tracks()[at.Lane])
}
