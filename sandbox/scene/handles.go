package scene

import (
	"image/color"
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
)

// Grip is what of the piece in hand can be dragged on the stage.
type Grip uint8

// The grips.
const (
	NoGrip     Grip = iota
	GripCentre      // of the hand path: a cross
	GripRadius      // of the hand path: a knob on it
	GripTilt        // of a line or an ellipse: a square at its + end
	GripProp        // the prop at the piece's start: a knob at its head
	GripEnd         // the end of the slice: a bar across the curve
	GripBegin       // its beginning, where the piece before it ends: another bar
)

// Handle is a grip with its place in the plane (m).
type Handle struct {
	Grip Grip
	At   complex128
	From complex128 // what it turns about or hangs on: the path's centre, the hand
	Dir  complex128 // of the curve, at the end
}

// radiusAngle is where on a circle the knob of its radius stands: below right,
// out of the way of starts and ends, which mostly lie on quarter turns.
const radiusAngle = -math.Pi / 4

// Handles returns what can be dragged of the piece in hand, in the round that
// the playhead is in. The prop's start can be where it is written: at the
// lane's beginning, or where a piece is placed.
func Handles(s *session.Session) []Handle {
	sel := s.Selected()
	t := s.Tracks()[sel.Lane]
	g := &t.Legs[sel.Piece]
	round, _, _ := t.Locate(s.Beat())
	path := g.Path()
	c := path.Centre
	hs := []Handle{{Grip: GripCentre, At: c, From: c}}
	along := cmplx.Rect(1, path.Tilt.Radians())
	switch path.Kind {
	case engine.OnCircle:
		hs = append(hs, Handle{Grip: GripRadius, At: c + cmplx.Rect(path.A, radiusAngle), From: c})
	case engine.OnLine, engine.OnEllipse:
		hs = append(hs,
			Handle{Grip: GripRadius, At: c - complex(path.A, 0)*along, From: c},
			Handle{Grip: GripTilt, At: c + complex(path.A, 0)*along, From: c})
	}
	end := t.AtPiece(round, sel.Piece, 1)
	hs = append(hs, Handle{Grip: GripEnd, At: end.Head, From: end.Hand, Dir: heading(t, round, sel.Piece, 1, end)})
	if PropWritten(t.Lane, sel.Piece) {
		at := t.PointAt(round, sel.Piece, 0)
		head := at.Head
		if cmplx.Abs(head-end.Head) < 0.2*g.Tether() {
			// The curve closes: the end has its place, the prop is taken by its tether.
			head = at.Hand + (head-at.Hand)*0.55
		}
		hs = append(hs, Handle{Grip: GripProp, At: head, From: at.Hand})
	} else if sel.Piece > 0 {
		begin := t.AtPiece(round, sel.Piece, 0)
		if cmplx.Abs(begin.Head-end.Head) >= 0.2*g.Tether() { // else the end has its place
			hs = append(hs, Handle{Grip: GripBegin, At: begin.Head, From: begin.Hand, Dir: heading(t, round, sel.Piece, 0, begin)})
		}
	}
	return hs
}

// PropWritten reports whether a piece's prop angle at its start stands in the
// pattern: its own, or the lane's.
func PropWritten(l engine.Lane, i int) bool {
	p := l.Pieces[i]
	return p.Swing == 0 && (p.PropAt.Set || i == 0)
}

// DrawHandles adds the handles to l; held is the one that a finger has.
func (st *Stage) DrawHandles(l *display.List, s *session.Session, held Grip) {
	th, v := st.Theme, st.View
	hue := st.inkOf(s, s.Selected())
	knob := func(at display.Pt, r float64) {
		l.Disc(at, r+1.5, th.Stage)
		l.Disc(at, r, th.Ink)
		l.Disc(at, r-2, th.Panel)
	}
	for _, h := range Handles(s) {
		at, from := v.ToScreen(h.At), v.ToScreen(h.From)
		r := 6.5
		if h.Grip == held {
			r = 10
			l.Segment(from, at, 1.25, th.Muted)
		}
		switch h.Grip {
		case GripCentre:
			for _, d := range []display.Pt{{X: r + 1}, {Y: r + 1}} {
				l.Segment(at.Sub(d), at.Add(d), 5, th.Stage)
			}
			for _, d := range []display.Pt{{X: r + 1}, {Y: r + 1}} {
				l.Segment(at.Sub(d), at.Add(d), 2, th.Ink)
			}
		case GripRadius:
			knob(at, r)
		case GripTilt:
			box := display.Rect{X: at.X - r, Y: at.Y - r, W: 2 * r, H: 2 * r}
			l.FillRect(box.Inset(-1.5), 2, th.Stage)
			l.FillRect(box, 2, th.Ink)
			l.FillRect(box.Inset(2), 1, th.Panel)
		case GripProp:
			l.Segment(from, at, 1.5, display.Mix(th.Stage, th.Ink, 0.5))
			knob(at, r)
			l.Disc(at, r-4, hue)
		case GripEnd, GripBegin:
			along := h.Dir / complex(cmplx.Abs(h.Dir), 0) * complex(1/v.Scale, 0)
			bar := func(half, width float64, c color.NRGBA) {
				d := along * complex(0, half)
				l.Segment(v.ToScreen(h.At-d), v.ToScreen(h.At+d), width, c)
			}
			bar(r+8, 11, th.Stage)
			bar(r+7, 8, th.Ink)
			bar(r+5, 4, th.Panel)
		}
	}
}

// DrawPath draws the hand path of the piece in hand in full, faintly: what the
// knobs shape. It goes under the rest of the stage.
func (st *Stage) DrawPath(l *display.List, s *session.Session) {
	const steps = 72
	sel := s.Selected()
	path := s.Tracks()[sel.Lane].Legs[sel.Piece].Path()
	along := cmplx.Rect(1, path.Tilt.Radians())
	l.BeginLine(1.25, st.Theme.Hair, false)
	for k := range steps + 1 {
		sin, cos := math.Sincos(2 * math.Pi * float64(k) / steps)
		l.To(st.View.ToScreen(path.Centre+complex(path.A*cos, path.B*sin)*along), 1)
	}
}

// DrawCut marks across the curve where a cut would fall: at the share u of a
// piece, in the round that the playhead is in.
func (st *Stage) DrawCut(l *display.List, s *session.Session, piece int, u float64) {
	t := s.Tracks()[s.Selected().Lane]
	round, _, _ := t.Locate(s.Beat())
	at := t.AtPiece(round, piece, u)
	dir := heading(t, round, piece, u, at)
	d := dir / complex(cmplx.Abs(dir), 0) * 1i
	for _, k := range []float64{-22, -15, 11, 18} { // dashes on either side of the head
		a := st.View.ToScreen(at.Head + d*complex(k/st.View.Scale, 0))
		b := st.View.ToScreen(at.Head + d*complex((k+4)/st.View.Scale, 0))
		l.Segment(a, b, 6, st.Theme.Stage)
		l.Segment(a, b, 3, st.Theme.Focus)
	}
}

// DrawReading writes, beside a handle that is held, what it stands at.
func (st *Stage) DrawReading(l *display.List, at display.Pt, text string) {
	const pad = 10.0
	size := theme.TextBody * max(st.Text, 1)
	high := size + 12
	up := 33 + high/2 // clear of the finger
	w := st.Faces.Width(text, size, true) + 2*pad
	box := display.Rect{X: at.X - w/2, Y: at.Y - up - high/2, W: w, H: high}
	if box.Y < st.Area.Y+4 {
		box.Y = at.Y + up - high/2
	}
	box.X = min(max(box.X, st.Area.X+4), st.Area.X+st.Area.W-w-4)
	box.Y = min(max(box.Y, st.Area.Y+4), st.Area.Y+st.Area.H-high-4)
	l.FillRect(box, high/2, st.Theme.Ink)
	l.Text(display.Pt{X: box.X + pad, Y: box.Y + high/2 + size*0.36}, size, true, st.Theme.Ground, text)
}
