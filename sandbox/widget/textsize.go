package widget

import (
	"image/color"
	"math"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
)

// Grown returns the size at which a line is written where text is wanted Text
// times as large: as much of that as room (px, across) and high (px, for
// capitals and what hangs below the line) allow, but never less than size.
func (k *Looks) Grown(text string, size float64, bold bool, room, high float64) float64 {
	const tall = 1.05 // of a line of letters, in its size
	return k.grown(size, k.Faces.Width(text, 1, bold), room, high/tall)
}

func (k *Looks) grown(size, wide, room, most float64) float64 {
	if wide > 0 {
		most = math.Min(most, 0.999*room/wide) // so that rounding does not cut it
	}
	return math.Max(size, math.Min(most, size*math.Max(k.Text, 1)))
}

// Even gives the buttons of a row letters of one size, the largest that all
// of them can hold.
func (k *Looks) Even(controls []Control) {
	if k.Text <= 1 {
		return
	}
	alike := func(a, b *Control) bool {
		return a.Rect.Y == b.Rect.Y && a.Rect.H == b.Rect.H && (a.Icon == NoIcon) == (b.Icon == NoIcon)
	}
	for i := range controls {
		if k.worded(&controls[i]) {
			controls[i].Scale = k.scaleOf(&controls[i])
		}
	}
	for i := range controls {
		for j := range controls {
			if k.worded(&controls[i]) && k.worded(&controls[j]) && alike(&controls[i], &controls[j]) {
				controls[i].Scale = math.Min(controls[i].Scale, controls[j].Scale)
			}
		}
	}
}

func (k *Looks) worded(c *Control) bool {
	return (c.Kind == Button || c.Kind == Toggle) && !c.Quiet && c.Caption != ""
}

// scaleOf returns how many times the usual size a button's words can be.
func (k *Looks) scaleOf(c *Control) float64 {
	r := c.Rect.Inset(2)
	fit := func(text string, size float64, bold bool, room, most float64) float64 {
		return k.grown(size, k.Faces.Width(text, 1, bold), room, most) / size
	}
	switch {
	case c.Icon != NoIcon:
		return fit(c.Caption, theme.TextSmall, false, r.W-10, (r.H-24)/1.1) // under the icon
	case c.Text != "":
		high := (r.H/2 - 1) / 16 // of either line, with what hangs below the lower one
		return math.Min(fit(c.Caption, theme.TextSmall, false, r.W-10, theme.TextSmall*high),
			fit(c.Text, theme.TextBody, true, r.W-4, theme.TextBody*high))
	}
	return fit(c.Caption, theme.TextBody, true, r.W-10, r.H*0.7)
}

// twoLines is the height below which a button has room for one line only.
const twoLines = 28

// words writes what stands on a button.
func (k *Looks) words(l *display.List, c *Control, r display.Rect, ink color.NRGBA) {
	t, mid := k.Theme, r.Centre()
	s := c.Scale
	if s == 0 {
		s = 1
		if k.Text > 1 && k.worded(c) {
			s = k.scaleOf(c)
		}
	}
	small, body := theme.TextSmall*s, theme.TextBody*s
	switch {
	case c.Icon != NoIcon && c.Caption != "":
		base := r.H - 3 - small/3
		above := base - small*0.75 // the room over the words
		side := math.Min(18, r.H*0.42)
		if s > 1 {
			side = math.Max(side, math.Min(18*s, above*0.7))
		}
		drawIcon(l, c.Icon, display.Pt{X: mid.X, Y: r.Y + math.Min(r.H*0.36, above/2+1)}, side, ink)
		k.centred(l, c.Caption, small, false, display.Pt{X: mid.X, Y: r.Y + base}, r.W-2, ink)
	case c.Icon != NoIcon:
		drawIcon(l, c.Icon, mid, math.Max(20, math.Min(20*k.Text, math.Min(r.W, r.H)*0.5)), ink)
	case c.Quiet:
		// A label that leads elsewhere: a small wedge says so.
		size := k.Grown(c.Caption, theme.TextBody, true, r.W-4, r.H-14)
		base := mid.Y + 2 + (size-theme.TextBody)/4
		k.centred(l, c.Caption, size, true, display.Pt{X: mid.X, Y: base}, r.W-4, ink)
		l.Poly(t.Muted, display.Pt{X: mid.X - 5, Y: base + 7}, display.Pt{X: mid.X + 5, Y: base + 7}, display.Pt{X: mid.X, Y: base + 12})
	case c.Text != "" && (c.Caption == "" || r.H < twoLines):
		size := k.Grown(c.Text, theme.TextBody, true, r.W-6, r.H-6)
		k.centred(l, c.Text, size, true, display.Pt{X: mid.X, Y: mid.Y + size*0.36}, r.W-6, ink)
	case c.Text != "":
		// A value that can be typed: its name above it.
		k.centred(l, c.Caption, small, false, display.Pt{X: mid.X, Y: mid.Y - 4*s}, r.W-4, t.Muted)
		k.centred(l, c.Text, body, true, display.Pt{X: mid.X, Y: mid.Y + 13*s}, r.W-4, ink)
	default:
		k.centred(l, c.Caption, body, true, display.Pt{X: mid.X, Y: mid.Y + body*0.36}, r.W-4, ink)
	}
}
