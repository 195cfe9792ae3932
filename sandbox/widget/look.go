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
}

// Draw adds a control to l.
func (k *Looks) Draw(l *display.List, c *Control) {
	switch c.Kind {
	case Slider:
		k.slider(l, c)
	case Ruler:
		k.ruler(l, c)
	case Piece:
		k.piece(l, c)
	default:
		k.button(l, c)
	}
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
	r := c.Rect.Inset(2)
	if !c.Quiet || pressed {
		l.FillRect(r, theme.Corner, fill)
	}
	if !c.Quiet {
		l.StrokeRect(r, theme.Corner, 1.25, edge)
	}
	mid := r.Centre()
	switch {
	case c.Icon != NoIcon && c.Caption != "":
		drawIcon(l, c.Icon, display.Pt{X: mid.X, Y: r.Y + r.H*0.36}, min(18, r.H*0.42), ink)
		k.centred(l, c.Caption, theme.TextSmall, false, display.Pt{X: mid.X, Y: r.Y + r.H - 7}, r.W-2, ink)
	case c.Icon != NoIcon:
		drawIcon(l, c.Icon, mid, 20, ink)
	case c.Quiet:
		// A label that leads elsewhere: a small wedge says so.
		k.centred(l, c.Caption, theme.TextBody, true, display.Pt{X: mid.X, Y: mid.Y + 2}, r.W-4, ink)
		l.Poly(t.Muted, display.Pt{X: mid.X - 5, Y: mid.Y + 9}, display.Pt{X: mid.X + 5, Y: mid.Y + 9}, display.Pt{X: mid.X, Y: mid.Y + 14})
	case c.Text != "" && c.Caption == "":
		k.centred(l, c.Text, theme.TextBody, true, display.Pt{X: mid.X, Y: mid.Y + 5}, r.W-6, ink)
	case c.Text != "":
		// A value that can be typed: its name above it.
		k.centred(l, c.Caption, theme.TextSmall, false, display.Pt{X: mid.X, Y: mid.Y - 4}, r.W-4, t.Muted)
		k.centred(l, c.Text, theme.TextBody, true, display.Pt{X: mid.X, Y: mid.Y + 13}, r.W-4, ink)
	default:
		k.centred(l, c.Caption, theme.TextBody, true, display.Pt{X: mid.X, Y: mid.Y + 5}, r.W-4, ink)
	}
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

// ruler draws beats and the playhead's grip.
func (k *Looks) ruler(l *display.List, c *Control) {
	t := k.Theme
	base := c.Rect.Y + c.Rect.H - 4
	room := c.Track.W / max(float64(len(c.Marks)-1), 1)
	every := 1
	for room*float64(every) < 22 {
		every *= 2
	}
	for i, v := range c.Marks {
		x := c.At(v)
		h := 5.0
		if i%every == 0 {
			h = 9
			s := trim(v)
			if x < c.Track.X+c.Track.W-4 || c.Track.W < 60 || i == 0 {
				l.Text(display.Pt{X: x + 4, Y: base - 7}, theme.TextSmall, false, t.Muted, s)
			}
		}
		if room*float64(every) >= 22 && (room >= 5 || i%every == 0) {
			l.Segment(display.Pt{X: x, Y: base - h}, display.Pt{X: x, Y: base}, 1, t.Edge)
		}
	}
	l.Segment(display.Pt{X: c.Track.X, Y: base}, display.Pt{X: c.Track.X + c.Track.W, Y: base}, 1, t.Edge)
	x := c.At(c.Value)
	top := c.Rect.Y + 4
	l.Poly(t.Ink, display.Pt{X: x - 8, Y: top}, display.Pt{X: x + 8, Y: top}, display.Pt{X: x + 8, Y: top + 9}, display.Pt{X: x, Y: top + 18}, display.Pt{X: x - 8, Y: top + 9})
}

// piece draws a piece of a lane: a block with the hand's colour at its foot.
func (k *Looks) piece(l *display.List, c *Control) {
	t := k.Theme
	hue := c.Hue
	r := c.Rect
	r.W = max(r.W-2, 1)
	r = display.Rect{X: r.X + 1, Y: r.Y + 2, W: max(r.W, 1), H: r.H - 4}
	fill, ink := t.Panel, t.Ink
	if k.Pressed != nil && k.Pressed(c.ID) {
		fill = t.Pressed
	}
	l.FillRect(r, 6, fill)
	if c.On {
		l.FillRect(r, 6, display.Mix(t.Panel, hue, 0.28))
		l.StrokeRect(r, 6, 2.5, t.Ink)
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
	size := theme.TextSmall
	room := r.W - 2*pad - 2*half - gap
	name := ""
	if room >= leastName {
		name = k.Faces.Fit(c.Caption, size, c.On, room)
	}
	wide := k.Faces.Width(name, size, c.On)
	if name != "" {
		wide += gap
	}
	x := r.X + (r.W-wide-2*half)/2
	drawCurve(l, c.Pictures[0].Curve, display.Pt{X: x + half, Y: mid}, min(half, r.W/2-2), 1.25, ink)
	l.Text(display.Pt{X: x + 2*half + gap, Y: mid + 4}, size, c.On, ink, name)
}
