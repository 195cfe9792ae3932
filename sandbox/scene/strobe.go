package scene

import (
	"math"
	"strconv"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// The first of several moments in one picture, and their heads' courses, are
// as opaque as this.
const (
	firstMoment  = 0.3
	strobeCourse = 0.4
)

// DrawStrobe adds several moments of the same movement to l as one picture,
// the earlier the paler: in order, over the course of the heads from the first
// beat to to. The heads are numbered, unless letters are hidden.
func (st *Stage) DrawStrobe(l *display.List, s *session.Session, beats []float64, to float64) {
	if len(beats) == 0 {
		return
	}
	st.performer(l, s)
	for lane, t := range s.Tracks() {
		if s.Hidden(lane) {
			continue
		}
		if !st.HideHandPath {
			st.handPath(l, t)
		}
		if st.Trail != NoTrail {
			st.draw(l, s, course{lane, beats[0], to, 2, func(float64) float64 { return strobeCourse }})
		}
	}
	one := *st
	one.HideLetters = true
	for i, beat := range beats {
		from := len(l.Marks)
		one.moment(l, s, beat)
		strong := 1.0
		if n := len(beats); n > 1 {
			strong = firstMoment + (1-firstMoment)*float64(i)/float64(n-1)
		}
		for k := range l.Marks[from:] {
			m := &l.Marks[from+k]
			if st.Clear {
				m.Color = display.Clear(m.Color, strong)
			} else { // what lies below is not to be seen through a paler disc
				whole := m.Color
				whole.A = 255
				m.Color = display.Mix(st.Theme.Stage, whole, strong*float64(m.Color.A)/255)
			}
		}
		if st.HideLetters {
			continue
		}
		for _, t := range seen(s) {
			st.number(l, t, beats[:i+1], strong)
		}
	}
}

// The size of a moment's number and of the smallest that is written where
// several moments share a head's place, the room that a head has, and what is
// free within a ring, in CSS pixels.
const (
	ringInside  = 10.0
	numberSize  = 11.0
	leastNumber = 7.0
	numberRoom  = 16.0
	samePlace   = 4.0
)

// number writes which moment the last of beats is into a head whose ink is
// strong, with those before that had the head in the same place; on a disc in
// whichever of ink and ground stands out.
func (st *Stage) number(l *display.List, t *engine.Track, beats []float64, strong float64) {
	last := len(beats) - 1
	at, c := st.View.ToScreen(t.At(beats[last]).Head), st.Theme.Ink
	text := strconv.Itoa(last + 1)
	for i := last - 1; i >= 0; i-- {
		if st.View.ToScreen(t.At(beats[i]).Head).Sub(at).Len() < samePlace {
			if more := strconv.Itoa(i+1) + "·" + text; st.Faces.Width(more, leastNumber, true) <= numberRoom {
				text = more
			}
		}
	}
	size := min(numberSize, numberSize*numberRoom/st.Faces.Width(text, numberSize, true))
	if t.Lane.Side == engine.Right {
		disc := display.Light(display.Mix(st.Theme.Stage, st.ink(t), strong))
		if math.Abs(display.Light(st.Theme.Stage)-disc) > math.Abs(display.Light(c)-disc) {
			c = st.Theme.Stage
		}
	} else if !st.Clear { // no tether is to strike the number out
		l.Disc(at, ringInside, st.Theme.Stage)
	}
	l.Text(display.Pt{X: at.X - st.Faces.Width(text, size, true)/2, Y: at.Y + size*0.36}, size, true, c, text)
}
