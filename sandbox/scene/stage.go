package scene

import (
	"image/color"
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// Stage draws the pattern: the performer, hand paths, trails, the piece in
// hand as a slice of its whole elementary pattern, and hands, arms, tethers
// and heads at the playhead.
type Stage struct {
	Theme *theme.Theme
	Faces *face.Set
	Words *words.Table
	View  View
	Area  display.Rect
	Text  float64 // how many times the usual size letters are; 0 is 1
	Clear bool    // nothing is behind the pattern: no ground may be painted into it
	Options
}

// Draw adds the stage to l.
func (st *Stage) Draw(l *display.List, s *session.Session) {
	st.DrawStill(l, s)
	st.DrawMoving(l, s)
}

func (st *Stage) showsWhole(s *session.Session) bool {
	return !st.HideWhole && !s.Hidden(s.Selected().Lane)
}

// DrawStill adds what lies under the trails and depends on the playhead no
// further than by the round that it is in.
func (st *Stage) DrawStill(l *display.List, s *session.Session) {
	st.performer(l, s)
	if !st.HideHandPath {
		for _, t := range seen(s) {
			st.handPath(l, t)
		}
	}
	if st.showsWhole(s) {
		st.whole(l, s, s.Selected())
	}
}

// DrawMoving adds what the playhead moves, and what lies over that.
func (st *Stage) DrawMoving(l *display.List, s *session.Session) {
	for lane := range s.Tracks() {
		if !s.Hidden(lane) {
			st.trail(l, lane, s)
		}
	}
	if st.showsWhole(s) {
		st.slice(l, s, s.Selected())
	}
	st.moment(l, s, s.Beat())
}

// moment draws hands, arms, tethers and heads at a beat.
func (st *Stage) moment(l *display.List, s *session.Session, beat float64) {
	for _, t := range seen(s) {
		st.arms(l, t, t.At(beat), s.Pattern().Performer)
	}
	for _, t := range seen(s) {
		st.ends(l, t, t.At(beat), seen(s), beat)
	}
}

// seen returns the lanes that are not hidden.
func seen(s *session.Session) []*engine.Track {
	var out []*engine.Track
	for i, t := range s.Tracks() {
		if !s.Hidden(i) {
			out = append(out, t)
		}
	}
	return out
}

func (st *Stage) ink(t *engine.Track) color.NRGBA { return st.Theme.Of(t.Lane.Side == engine.Left) }

// performer sketches head and shoulders and the middle lines, so that a
// learner sees up, down and sides.
func (st *Stage) performer(l *display.List, s *session.Session) {
	v, hair := st.View, st.Theme.Hair
	o := v.Origin
	if !st.HideGrid {
		mid, reach := st.Area.Centre(), min(st.Area.W, st.Area.H)/2
		l.Segment(display.Pt{X: mid.X - reach, Y: o.Y}, display.Pt{X: mid.X + reach, Y: o.Y}, 1, hair)
		l.Segment(display.Pt{X: o.X, Y: mid.Y - reach}, display.Pt{X: o.X, Y: mid.Y + reach}, 1, hair)
	}
	if st.HideArms {
		return
	}
	half := s.Pattern().Performer.Shoulders / 2
	if len(s.Tracks()) > 0 && s.Tracks()[0].Lane.Plane != engine.Wall {
		return
	}
	a, b := v.ToScreen(complex(-half, 0)), v.ToScreen(complex(half, 0))
	l.Segment(a, b, 5, hair)
	l.Ring(v.ToScreen(complex(0, half*faceUp)), half*faceRadius*v.Scale, 3, hair)
}

// Where the sketched face stands above the shoulders, and how large it is, in
// half shoulders.
const (
	faceUp     = 1.15
	faceRadius = 0.55
)

// handPath draws where the hand goes, over one round.
func (st *Stage) handPath(l *display.List, t *engine.Track) {
	c := display.Mix(st.Theme.Stage, st.Theme.Muted, 0.55)
	begun := false
	Trail(t, 0, t.Beats, func(p engine.Point, _ int, _ float64, broken bool) {
		if broken || !begun {
			l.BeginLine(1.25, c, false)
			begun = true
		}
		l.To(st.View.ToScreen(p.Hand), 1)
	})
}

// whole draws the elementary pattern of which the piece in hand is a slice,
// pale.
func (st *Stage) whole(l *display.List, s *session.Session, sel session.Select) {
	l.BeginLine(1.5, display.Mix(st.Theme.Stage, st.ink(s.Tracks()[sel.Lane]), 0.38), false)
	st.wholeTo(s, sel, func(at display.Pt) { l.To(at, 1) })
}

// wholeTo goes along that elementary pattern, as it lies in the round that the
// playhead is in.
func (st *Stage) wholeTo(s *session.Session, sel session.Select, to func(display.Pt)) {
	w, turned := s.Tracks()[sel.Lane].Legs[sel.Piece].Whole(), st.turned(s, sel)
	n := WholePoints(w)
	for k := 0; k <= n; k++ {
		p := w.Point(float64(k) / float64(n))
		to(st.View.ToScreen(p.Hand + (p.Head-p.Hand)*turned))
	}
}

// turned returns by which the prop of the selected lane is turned in the
// round that the playhead is in, as a unit complex number.
func (st *Stage) turned(s *session.Session, sel session.Select) complex128 {
	t := s.Tracks()[sel.Lane]
	round, _, _ := t.Locate(s.Beat())
	a, b := t.PointAt(0, 0, 0), t.PointAt(round, 0, 0)
	z := (b.Head - b.Hand) / (a.Head - a.Hand)
	return z / complex(cmplx.Abs(z), 0)
}

// heading returns a vector along the curve at an end of a piece, not zero.
func heading(t *engine.Track, round, piece int, u float64, at engine.State) complex128 {
	const still = 1e-9 // m, m a beat
	if cmplx.Abs(at.HeadVel) > still {
		return at.HeadVel
	}
	// A pendulum's end or an eased one: where the head comes from or goes to.
	const in = 1e-3
	if d := t.PointAt(round, piece, math.Abs(u-in)).Head - at.Head; cmplx.Abs(d) > still {
		return d
	}
	return at.Head - at.Hand // it never moves: the bar goes across the prop
}

// cutEnd marks an end of a slice by a bar across the curve.
func (st *Stage) cutEnd(l *display.List, head, dir complex128, c color.NRGBA) {
	across := dir / complex(cmplx.Abs(dir), 0) * 1i
	const half = 7 // px
	d := across * complex(half/st.View.Scale, 0)
	if !st.Clear {
		l.Segment(st.View.ToScreen(head-d), st.View.ToScreen(head+d), 4.5, st.Theme.Stage)
	}
	l.Segment(st.View.ToScreen(head-d), st.View.ToScreen(head+d), 2, c)
}

// arms draws arm and tether.
func (st *Stage) arms(l *display.List, t *engine.Track, at engine.State, p engine.Performer) {
	v := st.View
	hand, head := v.ToScreen(at.Hand), v.ToScreen(at.Head)
	side := 1.0
	if t.Lane.Side == engine.Right {
		side = -1
	}
	if t.Lane.Plane == engine.Wall && !st.HideArms {
		shoulder := v.ToScreen(complex(side*p.Shoulders/2, 0))
		l.Segment(shoulder, hand, 5, display.Clear(st.Theme.Muted, 0.4))
	}
	l.Segment(hand, head, 2.25, st.Theme.Ink)
}

// ends draws hand and head, with the hand's letter. The right hand is a disc,
// the left a ring, so that they differ without their hue.
func (st *Stage) ends(l *display.List, t *engine.Track, at engine.State, all []*engine.Track, beat float64) {
	v, c, th := st.View, st.ink(t), st.Theme
	hand, head := v.ToScreen(at.Hand), v.ToScreen(at.Head)
	// The ring is open and wider than the disc, so that hands at one place are
	// both seen.
	if t.Lane.Side == engine.Right {
		l.Disc(hand, 6, c)
		l.Disc(head, 9, c)
	} else {
		l.Ring(hand, 8.5, 3, c)
		l.Ring(head, 12, 3.5, c)
	}
	if st.HideLetters {
		return
	}
	letter := st.Words.Letter(t.Lane.Side)
	// The letter stands beside the hand, across the tether, left and right on
	// sides of their own.
	size := 12 * max(st.Text, 1)
	away := 11 + size/2
	along, apart := hand.Sub(head), display.Pt{}
	const near = 44 // px
	for _, other := range all {
		if other == t {
			continue
		}
		o := other.At(beat)
		d := hand.Sub(v.ToScreen(o.Hand))
		switch {
		case d.Len() <= 1 && t.Lane.Side == engine.Left: // at one place: on the two sides of one tether
			along = v.ToScreen(o.Hand).Sub(v.ToScreen(o.Head))
		case d.Len() > 1 && d.Len() < near*max(st.Text, 1): // on the far side of its own hand
			apart = d.Scale((away + 2) / d.Len())
		}
	}
	beside := display.Pt{X: away}
	if along.Len() > 0 {
		beside = display.Pt{X: along.Y, Y: -along.X}.Scale(away / along.Len())
	}
	if (t.Lane.Side == engine.Left) != v.Mirror {
		beside = beside.Scale(-1)
	}
	if apart.Len() > 0 {
		beside = apart
	}
	w := st.Faces.Width(letter, size, true)
	l.Text(hand.Add(beside).Add(display.Pt{X: -w / 2, Y: size / 3}), size, true, th.Ink, letter)
}
