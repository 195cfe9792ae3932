// Package grip tells what fingers mean on the stage: a tap, a double tap, a
// drag, a pinch. It knows no pattern and no clock; events carry their times.
package grip

import (
	"slices"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// Act is what one finger or two mean.
type Act uint8

// The acts. A tap is told at once; if another follows soon and near, that one
// is a double tap.
const (
	Tap       Act = iota
	DoubleTap     // the second of two
	Take          // one finger has begun to drag what is at From
	Carry         // it is at At
	Drop          // it is let go at At
	PutBack       // the drag is called off: undo what it did
	Pinch         // what two fingers held at From is at At now, Scale times as large
)

// Gesture is an act, in the pixels of the events.
type Gesture struct {
	Act      Act
	From, At display.Pt
	Scale    float64
}

// Slop is how far, in pixels, a finger may stray and still tap. Two taps are
// a double tap within doubleTime (ms) and doubleReach (px) of each other.
// leastSpread (px) keeps two fingers that meet from a scale without bounds.
const (
	Slop        = 8
	doubleTime  = 350
	doubleReach = 28
	leastSpread = 20
)

// finger is a pointer that is down on the stage.
type finger struct {
	id        int
	start, at display.Pt
	dragging  bool
	spent     bool // was one of two: means nothing more by itself
}

// Machine follows the fingers on the stage. The zero value has none.
type Machine struct {
	fingers []finger
	tapAt   display.Pt
	tapTime float64
	tapped  bool // a first tap waits for a second
}

// Holds reports whether any finger is down on the stage.
func (m *Machine) Holds() bool { return len(m.fingers) > 0 }

// Handle takes an event of a pointer that came down on the stage and appends
// what it means to dst. Of more than two fingers the first two count; events of a pointer
// that did not come down here mean nothing.
func (m *Machine) Handle(dst []Gesture, ev widget.Pointer) []Gesture {
	i := slices.IndexFunc(m.fingers, func(f finger) bool { return f.id == ev.ID })
	if ev.Phase == widget.Down {
		if i >= 0 { // its end was lost
			dst = m.lift(dst, i, widget.Pointer{Phase: widget.Cancel, At: ev.At})
		}
		return m.down(dst, ev)
	}
	if i < 0 {
		return dst
	}
	dst = m.move(dst, i, ev)
	if ev.Phase == widget.Move {
		return dst
	}
	return m.lift(dst, i, ev)
}

func (m *Machine) down(dst []Gesture, ev widget.Pointer) []Gesture {
	for i := range m.fingers {
		f := &m.fingers[i]
		if f.dragging { // two fingers seldom come down in one moment
			dst = append(dst, Gesture{Act: PutBack, From: f.start, At: f.at})
			f.dragging = false
		}
		f.spent = true
	}
	m.fingers = append(m.fingers, finger{id: ev.ID, start: ev.At, at: ev.At, spent: len(m.fingers) > 0})
	if len(m.fingers) > 1 {
		m.tapped = false
	}
	return dst
}

func (m *Machine) move(dst []Gesture, i int, ev widget.Pointer) []Gesture {
	if ev.Phase == widget.Cancel {
		return dst
	}
	f := &m.fingers[i]
	if len(m.fingers) > 1 {
		if i > 1 || ev.At == f.at {
			return dst
		}
		a, b := &m.fingers[0], &m.fingers[1]
		mid := func() display.Pt { return a.at.Add(b.at).Scale(0.5) }
		spread := func() float64 { return max(a.at.Sub(b.at).Len(), leastSpread) }
		from, was := mid(), spread()
		f.at = ev.At
		return append(dst, Gesture{Act: Pinch, From: from, At: mid(), Scale: spread() / was})
	}
	if f.spent || ev.At == f.at {
		return dst
	}
	f.at = ev.At
	if !f.dragging && f.at.Sub(f.start).Len() > Slop {
		f.dragging = true
		m.tapped = false
		dst = append(dst, Gesture{Act: Take, From: f.start, At: f.at})
	}
	if f.dragging {
		dst = append(dst, Gesture{Act: Carry, From: f.start, At: f.at})
	}
	return dst
}

// lift ends a finger.
func (m *Machine) lift(dst []Gesture, i int, ev widget.Pointer) []Gesture {
	f := m.fingers[i]
	m.fingers = slices.Delete(m.fingers, i, i+1)
	switch {
	case f.spent:
	case f.dragging && ev.Phase == widget.Up:
		dst = append(dst, Gesture{Act: Drop, From: f.start, At: f.at})
	case f.dragging:
		dst = append(dst, Gesture{Act: PutBack, From: f.start, At: f.at})
	case ev.Phase == widget.Up:
		act := Tap
		if m.tapped && ev.Time-m.tapTime <= doubleTime && f.start.Sub(m.tapAt).Len() <= doubleReach {
			act = DoubleTap
		}
		m.tapped, m.tapAt, m.tapTime = act == Tap, f.start, ev.Time
		dst = append(dst, Gesture{Act: act, From: f.start, At: f.start})
	}
	return dst
}
