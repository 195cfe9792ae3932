package widget

import (
	"image/color"
	"math"

	"whorlbench/sandbox/display"
)

// Icon is a small drawing on a button.
type Icon uint8

// The icons.
const (
	NoIcon Icon = iota
	IconPlay
	IconPause
	IconStepBack
	IconStepOn
	IconCut
	IconRejoin
	IconThereBack
	IconFlip
	IconRepeat
	IconDelete
	IconUndo
	IconRedo
	IconMirror
	IconMinus
	IconPlus
	IconPrevious
	IconNext
	IconPoint
	IconDark
)

// drawIcon draws an icon in a square of side s about at.
func drawIcon(l *display.List, k Icon, at display.Pt, s float64, c color.NRGBA) {
	u := s / 20 // icons are drawn on a grid of 20
	p := func(x, y float64) display.Pt { return display.Pt{X: at.X + (x-10)*u, Y: at.Y + (y-10)*u} }
	r := func(x, y, w, h float64) display.Rect {
		q := p(x, y)
		return display.Rect{X: q.X, Y: q.Y, W: w * u, H: h * u}
	}
	line := func(w float64, pts ...display.Pt) { l.Polyline(w*u, c, false, pts...) }
	switch k {
	case IconPlay:
		l.Poly(c, p(5, 2.5), p(17, 10), p(5, 17.5))
	case IconPause:
		l.FillRect(r(4, 3, 4.5, 14), 1, c)
		l.FillRect(r(11.5, 3, 4.5, 14), 1, c)
	case IconStepBack:
		l.FillRect(r(14, 3.5, 2.5, 13), 0.5, c)
		l.Poly(c, p(12, 3.5), p(12, 16.5), p(3, 10))
	case IconStepOn:
		l.FillRect(r(3.5, 3.5, 2.5, 13), 0.5, c)
		l.Poly(c, p(8, 3.5), p(17, 10), p(8, 16.5))
	case IconCut:
		l.StrokeRect(r(0.5, 6, 7, 8), 1.5, 1.8, c)
		l.StrokeRect(r(12.5, 6, 7, 8), 1.5, 1.8, c)
		for y := 1.0; y < 19; y += 5 {
			line(1.8, p(10, y), p(10, y+3))
		}
	case IconRejoin:
		l.StrokeRect(r(1, 6, 18, 8), 1.5, 1.8, c)
		l.Poly(c, p(5, 7.5), p(9, 10), p(5, 12.5))
		l.Poly(c, p(15, 7.5), p(15, 12.5), p(11, 10))
	case IconThereBack:
		// A C: out along one line of it and back along the other.
		arc(l, p(11, 10), 8.2*u, 1.9*u, 60, 300, c)
		arc(l, p(11, 10), 4.4*u, 1.9*u, 60, 300, c)
		l.Poly(c, p(12.5, 3.6), p(17.2, 6.2), p(12.6, 8.6))
	case IconFlip:
		line(2, p(2, 6.5), p(14, 6.5))
		l.Poly(c, p(13, 3), p(18.5, 6.5), p(13, 10))
		line(2, p(6, 14), p(18, 14))
		l.Poly(c, p(7, 10.5), p(7, 17.5), p(1.5, 14))
	case IconRepeat:
		l.StrokeRect(r(1.5, 5, 8, 10), 1.5, 1.8, c)
		l.FillRect(r(11.5, 5, 8, 10), 1.5, c)
	case IconDelete:
		line(2.2, p(4.5, 4.5), p(15.5, 15.5))
		line(2.2, p(15.5, 4.5), p(4.5, 15.5))
	case IconUndo, IconRedo:
		flip := func(x, y float64) display.Pt { return p(x, y) }
		if k == IconRedo {
			flip = func(x, y float64) display.Pt { return p(20-x, y) }
		}
		l.BeginLine(2.1*u, c, false)
		l.To(flip(4, 7), 1)
		l.To(flip(12, 7), 1)
		for a := -90.0; a <= 90; a += 10 {
			s, cs := math.Sincos(a * math.Pi / 180)
			l.To(flip(12+4.5*cs, 11.5+4.5*s), 1)
		}
		l.To(flip(7, 16), 1)
		a, b, d := flip(7.5, 2), flip(2, 7), flip(7.5, 12)
		if k == IconRedo {
			a, d = d, a
		}
		l.Poly(c, a, d, b)
	case IconMirror:
		for y := 1.0; y < 19; y += 4 {
			line(1.6, p(10, y), p(10, y+2.4))
		}
		l.Poly(c, p(7.5, 4), p(7.5, 16), p(1, 16))
		l.Polyline(1.6*u, c, true, p(12.8, 5.2), p(12.8, 15.4), p(18.2, 15.4))
	case IconMinus:
		line(2.2, p(4.5, 10), p(15.5, 10))
	case IconPlus:
		line(2.2, p(4.5, 10), p(15.5, 10))
		line(2.2, p(10, 4.5), p(10, 15.5))
	case IconPrevious, IconNext:
		way := 6.0
		if k == IconNext {
			way = -6
		}
		for _, x := range []float64{7, 13} {
			line(2.2, p(x+way/2, 3.5), p(x-way/2, 10), p(x+way/2, 16.5))
		}
	case IconPoint: // one piece of a ring in full ink
		arc(l, at, 7.5*u, 1.2*u, 0, 360, c)
		arc(l, at, 7.5*u, 4*u, 200, 300, c)
	case IconDark: // a screen without a picture
		l.FillRect(r(1, 3, 18, 12), 1.5, c)
		line(2.2, p(6, 18), p(14, 18))
	}
}

// arc strokes a part of a circle, from and to in degrees clockwise from +x.
func arc(l *display.List, at display.Pt, radius, width, from, to float64, c color.NRGBA) {
	l.BeginLine(width, c, false)
	const step = 12
	for a := from; a <= to; a += step {
		s, cs := math.Sincos(a * math.Pi / 180)
		l.To(at.Add(display.Pt{X: radius * cs, Y: radius * s}), 1)
	}
}
