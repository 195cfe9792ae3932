package widget

import (
	"math"
	"slices"

	"whorlbench/sandbox/display"
)

// Phase is a pointer's moment.
type Phase uint8

// A pointer goes down, moves, and goes up or is taken away.
const (
	Down Phase = iota
	Move
	Up
	Cancel
)

// Pointer is one event of a finger, pen or mouse, with its own time.
type Pointer struct {
	ID    int
	Phase Phase
	At    display.Pt
	Time  float64 // milliseconds, on any clock that all events share
}

// Act is what a person wants of a control.
type Act uint8

// The acts.
const (
	Press   Act = iota // a tap or click, or the twin's
	Hold               // a slider is taken hold of
	Set                // to Value
	Release            // a slider is let go
	Reset              // a slider was tapped twice: back to its start value
	Lift               // a piece leaves its place
	Carry              // a lifted piece is over Value (pixels from the left)
	Drop               // a lifted piece is put down at Value
	PutBack            // a lifted piece goes back to its place
	Menu               // a piece is pressed for long: what can be done with it
	Extend             // a piece is selected too, with all up to it
)

// Intent is an act on a control.
type Intent struct {
	ID    string
	Act   Act
	Value float64
}

// LongPress is how long, in milliseconds, a piece is pressed to be asked what
// can be done with it.
const LongPress = 450

// How far, in pixels, a finger may stray and still tap; and how near a
// slider's knob it must come down to move the knob without a jump.
const (
	tapSlop  = 8
	knobGrab = 26
)

// doubleTap is how soon after one tap, in milliseconds from down to down, a
// second makes a double tap.
const doubleTap = 400

// grab is a pointer that a control has captured.
type grab struct {
	pointer int
	id      string
	kind    Kind
	start   display.Pt
	offset  float64 // of the finger from the knob or the piece's left edge
	moved   bool
	time    float64
	sent    float64
}

// Router gives each pointer to the control it came down on until it goes up.
// Several fingers work several controls at once.
type Router struct {
	grabs []grab
	last  grab // the slider tapped last
}

// Idle reports whether no pointer holds a control.
func (r *Router) Idle() bool { return len(r.grabs) == 0 }

// Grabbed reports whether a pointer holds the control, and whether it is
// still where a tap would be.
func (r *Router) Grabbed(id string) (held, tap bool) {
	for _, g := range r.grabs {
		if g.id == id {
			return true, !g.moved
		}
	}
	return false, false
}

// Handle takes one pointer event and appends the intents that follow to dst.
// Controls later in the list lie above earlier ones. Captured reports whether
// a control has the pointer, so that the stage leaves it alone.
func (r *Router) Handle(dst []Intent, ev Pointer, controls []Control) (intents []Intent, captured bool) {
	i := slices.IndexFunc(r.grabs, func(g grab) bool { return g.pointer == ev.ID })
	if ev.Phase == Down {
		if i >= 0 { // its end was lost
			dst = r.end(dst, i, Pointer{ID: ev.ID, Phase: Cancel, At: ev.At}, controls)
		}
		return r.down(dst, ev, controls)
	}
	if i < 0 {
		return dst, false
	}
	if ev.Phase == Move {
		return r.move(dst, &r.grabs[i], ev, controls), true
	}
	return r.end(dst, i, ev, controls), true
}

func find(controls []Control, id string) *Control {
	for i := range controls {
		if controls[i].ID == id {
			return &controls[i]
		}
	}
	return nil
}

func (r *Router) down(dst []Intent, ev Pointer, controls []Control) ([]Intent, bool) {
	c := under(ev.At, controls)
	if c == nil {
		return dst, false
	}
	if held, _ := r.Grabbed(c.ID); held || c.Disabled {
		return dst, true // a second finger on one control does nothing
	}
	g := grab{pointer: ev.ID, id: c.ID, kind: c.Kind, start: ev.At, time: ev.Time, sent: c.Value}
	switch c.Kind {
	case Slider, Ruler:
		dst = append(dst, Intent{ID: c.ID, Act: Hold})
		d := ev.At.X - c.At(c.Value)
		switch {
		case c.Rule.Contains(ev.At):
			dst = g.send(dst, c.WholeAt(ev.At.X))
		case math.Abs(d) <= knobGrab && c.Kind == Slider:
			g.offset = d
		default:
			// A tap on a track that catches whole numbers means one.
			g.moved = c.Catch == 0 // then the knob stays under the finger
			v := c.ValueAt(ev.At.X)
			if c.Catch > 0 {
				v = c.WholeAt(ev.At.X)
			}
			dst = g.send(dst, v)
		}
	case Piece:
		g.offset = ev.At.X - c.Rect.X
	case Edge:
		g.offset = ev.At.X - c.Track.X // where the pieces meet
	}
	r.grabs = append(r.grabs, g)
	return dst, true
}

// under returns the topmost control at p: first one drawn there, then one
// whose finger-sized surroundings reach it.
func under(p display.Pt, controls []Control) *Control {
	for i := len(controls) - 1; i >= 0; i-- {
		if controls[i].Rect.Contains(p) && !controls[i].Twin {
			return &controls[i]
		}
	}
	for i := len(controls) - 1; i >= 0; i-- {
		if controls[i].Hit().Contains(p) && !controls[i].Twin {
			return &controls[i]
		}
	}
	return nil
}

// send passes a slider's value on, if it is another one.
func (g *grab) send(dst []Intent, v float64) []Intent {
	if v == g.sent {
		return dst
	}
	g.sent = v
	return append(dst, Intent{ID: g.id, Act: Set, Value: v})
}

func (r *Router) move(dst []Intent, g *grab, ev Pointer, controls []Control) []Intent {
	c := find(controls, g.id)
	if c == nil {
		return dst
	}
	far := ev.At.Sub(g.start).Len() > tapSlop
	switch g.kind {
	case Slider, Ruler:
		// A small tremble must not move a value that was not just set there.
		g.moved = g.moved || far
		if g.moved {
			dst = g.send(dst, c.ValueAt(ev.At.X-g.offset))
		}
	case Piece:
		if far && !g.moved {
			g.moved = true
			dst = append(dst, Intent{ID: g.id, Act: Lift})
		}
		if g.moved {
			dst = append(dst, Intent{ID: g.id, Act: Carry, Value: ev.At.X - g.offset})
		}
	case Edge:
		if far && !g.moved {
			g.moved = true
			dst = append(dst, Intent{ID: g.id, Act: Hold})
		}
		if g.moved {
			dst = append(dst, Intent{ID: g.id, Act: Carry, Value: ev.At.X - g.offset})
		}
	default:
		g.moved = !c.Hit().Contains(ev.At)
	}
	return dst
}

func (r *Router) end(dst []Intent, i int, ev Pointer, controls []Control) []Intent {
	if ev.Phase == Up {
		dst = r.move(dst, &r.grabs[i], ev, controls)
	}
	g := r.grabs[i]
	r.grabs = slices.Delete(r.grabs, i, i+1)
	switch {
	case g.kind == Slider || g.kind == Ruler || g.kind == Edge && g.moved:
		return r.release(dst, g, ev)
	case g.kind == Piece && g.moved && ev.Phase == Up:
		return append(dst, Intent{ID: g.id, Act: Drop, Value: ev.At.X - g.offset})
	case g.kind == Piece && g.moved:
		return append(dst, Intent{ID: g.id, Act: PutBack})
	case g.kind == Piece && ev.Phase == Up && ev.Time-g.time >= LongPress:
		return append(dst, Intent{ID: g.id, Act: Menu})
	case ev.Phase == Up && !g.moved:
		return append(dst, Intent{ID: g.id, Act: Press})
	}
	return dst
}

// Waited says that the pointer on a control has stayed for LongPress, as no
// event tells that nothing happens. It appends what that means to dst.
func (r *Router) Waited(dst []Intent, id string) []Intent {
	for i := range r.grabs {
		if g := r.grabs[i]; g.id == id && g.kind == Piece && !g.moved {
			r.grabs = slices.Delete(r.grabs, i, i+1) // its end means nothing any more
			return append(dst, Intent{ID: id, Act: Menu})
		}
	}
	return dst
}

// Drop lets go of every pointer that holds one of the controls, as if the
// system had taken it; its end will mean nothing.
func (r *Router) Drop(dst []Intent, held func(id string) bool, controls []Control) []Intent {
	for i := len(r.grabs) - 1; i >= 0; i-- {
		if g := r.grabs[i]; held(g.id) {
			dst = r.end(dst, i, Pointer{ID: g.pointer, Phase: Cancel, At: g.start}, controls)
		}
	}
	return dst
}

// release lets a slider go; its second tap in a row resets it.
func (r *Router) release(dst []Intent, g grab, ev Pointer) []Intent {
	dst = append(dst, Intent{ID: g.id, Act: Release})
	tap := g.kind == Slider && ev.Phase == Up && ev.At.Sub(g.start).Len() <= tapSlop
	if tap && r.last.id == g.id && g.time-r.last.time <= doubleTap && g.start.Sub(r.last.start).Len() <= knobGrab {
		r.last = grab{}
		return append(dst, Intent{ID: g.id, Act: Reset})
	}
	r.last = grab{}
	if tap {
		r.last = g
	}
	return dst
}
