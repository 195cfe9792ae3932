package scene

import (
	"image/color"
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
			st.number(l, t, beat, i+1, strong)
		}
	}
}

// number writes which moment it is into a head whose ink is strong: on a
// disc in whichever of ink and ground stands out.
func (st *Stage) number(l *display.List, t *engine.Track, beat float64, n int, strong float64) {
	const size = 11
	text, c := strconv.Itoa(n), st.Theme.Ink
	if t.Lane.Side == engine.Right {
		disc := light(display.Mix(st.Theme.Stage, st.ink(t), strong))
		if math.Abs(light(st.Theme.Stage)-disc) > math.Abs(light(c)-disc) {
			c = st.Theme.Stage
		}
	}
	at := st.View.ToScreen(t.At(beat).Head)
	l.Text(display.Pt{X: at.X - st.Faces.Width(text, size, true)/2, Y: at.Y + size*0.36}, size, true, c, text)
}

// light returns how light a colour looks, from 0 to 255 (the luma of ITU-R
// BT.601).
func light(c color.NRGBA) float64 {
	return 0.299*float64(c.R) + 0.587*float64(c.G) + 0.114*float64(c.B)
}
