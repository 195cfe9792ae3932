package widget

import (
	"image/color"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/theme"
)

// Looks draws controls.
type Looks struct {
	Theme *theme.Theme
	Faces *face.Set
	// Pressed reports whether a control is being pressed.
	Pressed func(id string) bool
	// Focus is the control whose twin has the keyboard, empty for none.
	Focus string
	// Text is how many times the usual size text is wanted, 1 to 2; 0 is 1.
	Text float64
}

// Draw adds a control to l.
func (k *Looks) Draw(l *display.List, c *Control) {
	if c.Twin {
		return
	}
	switch c.Kind {
	case Slider:
		k.slider(l, c)
	case Ruler:
		k.ruler(l, c)
	case Piece:
		k.piece(l, c)
	case Edge: // its mark is the seam's
	default:
		k.button(l, c)
	}
	if c.Kind != Ruler { // its ring lies over its grip
		k.ring(l, c)
	}
}

// ring shows that a control's twin has the keyboard.
func (k *Looks) ring(l *display.List, c *Control) {
	if c.ID == k.Focus {
		l.StrokeRect(c.Rect.Inset(-2), theme.Corner+2, 3, k.Theme.Focus)
	}
}

func (k *Looks) button(l *display.List, c *Control) {
	t := k.Theme
	ink, edge, fill := t.Ink, t.Edge, t.Panel
	pressed := k.Pressed != nil && k.Pressed(c.ID)
	switch {
	case c.Disabled || c.Faint:
		ink, edge, fill = display.Mix(t.Ground, t.Muted, 0.55), t.Hair, t.Ground
	case pressed:
		fill = t.Pressed
	case c.On:
		fill, ink, edge = t.Ink, t.Ground, t.Ink
	}
	if c.Bare {
		if pressed {
			l.FillRect(c.Rect, theme.Corner, display.Clear(t.Ink, 0.08))
		}
		return
	}
	r := c.Rect.Inset(2)
	if !c.Quiet || pressed {
		l.FillRect(r, theme.Corner, fill)
	}
	if !c.Quiet {
		l.StrokeRect(r, theme.Corner, 1.25, edge)
	}
	k.words(l, c, r, ink)
}

// centred writes one line about the middle of base.
func (k *Looks) centred(l *display.List, s string, size float64, bold bool, base display.Pt, room float64, c color.NRGBA) {
	s = k.Faces.Fit(s, size, bold, room)
	w := k.Faces.Width(s, size, bold)
	l.Text(display.Pt{X: base.X - w/2, Y: base.Y}, size, bold, c, s)
}

// slider draws the track, a tick at each whole number, and the knob; zero,
// where a movement stops, has a taller tick.
func (k *Looks) slider(l *display.List, c *Control) {
	t := k.Theme
	mid := c.Track.Y + c.Track.H/2
	l.FillRect(display.Rect{X: c.Track.X - 3, Y: mid - 3, W: c.Track.W + 6, H: 6}, 3, display.Mix(t.Ground, t.Edge, 0.35))
	if c.Max-c.Min <= 32 {
		for v := c.Min; v <= c.Max; v++ {
			h := 4.0
			if v == 0 {
				h = 9
			}
			x := c.At(v)
			l.Segment(display.Pt{X: x, Y: mid - h}, display.Pt{X: x, Y: mid + h}, 1.25, t.Edge)
		}
	}
	k.pictures(l, c)
	zero := c.At(min(max(0, c.Min), c.Max))
	at := c.At(min(max(c.Value, c.Min), c.Max))
	lo, hi := min(zero, at), max(zero, at)
	l.FillRect(display.Rect{X: lo, Y: mid - 3, W: hi - lo, H: 6}, 3, t.Ink)
	knob := 11.0
	if k.Pressed != nil && k.Pressed(c.ID) {
		knob = 14
	}
	l.Disc(display.Pt{X: at, Y: mid}, knob, t.Ink)
	l.Disc(display.Pt{X: at, Y: mid}, knob-3, t.Panel)
	if c.Disabled {
		return
	}
	if c.Value < c.Min || c.Value > c.Max { // beyond the slider's ends: typed
		l.Disc(display.Pt{X: at, Y: mid}, knob-6, t.Warn)
	}
}

// pictures draws what each whole value gives, the present one in its hue.
func (k *Looks) pictures(l *display.List, c *Control) {
	t := k.Theme
	room := c.Track.W / (c.Max - c.Min)
	half := min(room, c.Rule.H)/2 - 1
	for _, p := range c.Pictures {
		at := display.Pt{X: c.At(p.Value), Y: c.Rule.Y + c.Rule.H/2}
		ink, width := t.Muted, 1.1
		if p.Value == c.Value {
			ink, width = c.Hue, 2
		}
		drawCurve(l, p.Curve, at, half, width, ink)
		if p.Good { // the mark that smooth joins have on the strip
			l.Disc(display.Pt{X: at.X, Y: c.Rule.Y + c.Rule.H + 4}, 3, t.Ink)
		}
	}
}

// drawCurve draws a picture about a place; of a single point a dot.
func drawCurve(l *display.List, curve []display.Pt, at display.Pt, half, width float64, ink color.NRGBA) {
	if len(curve) == 1 {
		l.Disc(at, 1.5, ink)
		return
	}
	l.BeginLine(width, ink, false)
	for _, q := range curve {
		l.To(at.Add(q.Scale(half)), 1)
	}
}

// rulerSeen returns where a ruler can be seen, and whether a place along it
// can: its track may reach beyond that at both ends.
func rulerSeen(c *Control) (seen display.Rect, inside func(x float64) bool) {
	seen = display.Rect{X: max(c.Track.X, c.Rect.X), Y: c.Track.Y, H: c.Track.H}
	seen.W = min(c.Track.X+c.Track.W, c.Rect.X+c.Rect.W) - seen.X
	return seen, func(x float64) bool { return x >= seen.X-0.5 && x <= seen.X+seen.W+0.5 }
}

// DrawGrip adds what moves over a ruler: the playhead's grip.
func (k *Looks) DrawGrip(l *display.List, c *Control) {
	_, inside := rulerSeen(c)
	if x := c.At(c.Value); inside(x) {
		top := c.Rect.Y + 4
		l.Poly(k.Theme.Ink, display.Pt{X: x - 8, Y: top}, display.Pt{X: x + 8, Y: top}, display.Pt{X: x + 8, Y: top + 9}, display.Pt{X: x, Y: top + 18}, display.Pt{X: x - 8, Y: top + 9})
	}
	k.ring(l, c)
}

// ruler draws the beats.
func (k *Looks) ruler(l *display.List, c *Control) {
	t := k.Theme
	base := c.Rect.Y + c.Rect.H - 4
	seen, inside := rulerSeen(c)
	room := c.Track.W / max(c.Max-c.Min, 1e-9)
	every := 1
	for room*float64(every) < 22 && every < 1<<20 {
		every *= 2
	}
	for i, v := range c.Marks {
		x := c.At(v)
		if !inside(x) {
			continue
		}
		h := 5.0
		if i%every == 0 {
			h = 9
			s := trim(v)
			if x < seen.X+seen.W-12 || seen.W < 60 || i == 0 {
				size := k.Grown(s, theme.TextSmall, false, room*float64(every)-8, c.Rect.H-18)
				l.Text(display.Pt{X: x + 4, Y: base - 7}, size, false, t.Muted, s)
			}
		}
		if room >= 5 || i%every == 0 {
			l.Segment(display.Pt{X: x, Y: base - h}, display.Pt{X: x, Y: base}, 1, t.Edge)
		}
	}
	l.Segment(display.Pt{X: seen.X, Y: base}, display.Pt{X: seen.X + seen.W, Y: base}, 1, t.Edge)
}

// piece draws a piece of a lane: a block with the hand's colour at its foot.
func (k *Looks) piece(l *display.List, c *Control) {
	t := k.Theme
	hue := c.Hue
	if c.Faint { // its hand is hidden
		hue = display.Mix(t.Ground, hue, 0.35)
	}
	r := c.Rect
	r.W = max(r.W-2, 1)
	r = display.Rect{X: r.X + 1, Y: r.Y + 2, W: max(r.W, 1), H: r.H - 4}
	fill, ink := t.Panel, t.Ink
	if c.Faint {
		fill, ink = t.Ground, t.Muted
	}
	if k.Pressed != nil && k.Pressed(c.ID) {
		fill = t.Pressed
	}
	l.FillRect(r, 6, fill)
	if c.On {
		l.FillRect(r, 6, display.Mix(t.Panel, hue, 0.28))
		l.StrokeRect(r, 6, 2.5, t.Ink)
	} else if c.Along {
		l.FillRect(r, 6, display.Mix(t.Panel, hue, 0.28))
		l.StrokeRect(r, 6, 1.5, t.Ink)
	} else if r.W > 6 {
		l.StrokeRect(r, 6, 1.25, t.Edge)
	}
	foot := display.Rect{X: r.X + 5, Y: r.Y + r.H - 8, W: r.W - 10, H: 4}
	if foot.W > 0 {
		l.FillRect(foot, 2, hue)
	}
	k.pieceFace(l, c, r, ink)
}

// pieceFace draws what a piece is: a tiny picture of its elementary pattern,
// and its name where there is room for a good part of it.
func (k *Looks) pieceFace(l *display.List, c *Control, r display.Rect, ink color.NRGBA) {
	const half, pad, gap, leastName = 11, 8, 8, 70
	mid := r.Y + (r.H-8)/2
	if len(c.Pictures) == 0 {
		return
	}
	room, picture := r.W-2*pad, 2.0*half+gap
	wanted := theme.TextSmall * max(k.Text, 1)
	caption := c.Caption
	if k.Faces.Width(caption, wanted, c.On) > room-picture {
		caption = c.Short
	}
	if k.Text > 1 && k.Faces.Width(caption, wanted, c.On) > room-picture && room >= leastName {
		picture = 0 // whoever wants large text wants to read
	}
	size := k.Grown(caption, theme.TextSmall, c.On, room-picture, r.H-14)
	name := ""
	if room-picture >= leastName {
		name = k.Faces.Fit(caption, size, c.On, room-picture)
	}
	wide := k.Faces.Width(name, size, c.On)
	if name == "" {
		picture = 2 * half
	}
	x := r.X + (r.W-wide-picture)/2
	if picture > 0 {
		drawCurve(l, c.Pictures[0].Curve, display.Pt{X: x + half, Y: mid}, min(half, r.W/2-2), 1.25, ink)
	}
	l.Text(display.Pt{X: x + picture, Y: mid + size/3}, size, c.On, ink, name)
}
