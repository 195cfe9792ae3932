// Package display holds the display list: what is to be seen, as plain data.
//
// Scene and widgets fill a list; a painter turns it into pixels. Lengths are
// CSS pixels with y downward, so one list serves every pixel density.
package display

import (
	"image/color"
	"math"
)

// Pt is a place on the screen.
type Pt struct{ X, Y float64 }

// Add returns p + q.
func (p Pt) Add(q Pt) Pt { return Pt{p.X + q.X, p.Y + q.Y} }

// Sub returns p − q.
func (p Pt) Sub(q Pt) Pt { return Pt{p.X - q.X, p.Y - q.Y} }

// Scale returns k·p.
func (p Pt) Scale(k float64) Pt { return Pt{k * p.X, k * p.Y} }

// Len returns the length of p.
func (p Pt) Len() float64 { return math.Hypot(p.X, p.Y) }

// Rect is a rectangle with its corner at X, Y.
type Rect struct{ X, Y, W, H float64 }

// Contains reports whether p lies in r, the left and upper edges included.
func (r Rect) Contains(p Pt) bool {
	return p.X >= r.X && p.X < r.X+r.W && p.Y >= r.Y && p.Y < r.Y+r.H
}

// Inset returns r made smaller by d on all sides.
func (r Rect) Inset(d float64) Rect { return Rect{r.X + d, r.Y + d, r.W - 2*d, r.H - 2*d} }

// Centre returns r's middle.
func (r Rect) Centre() Pt { return Pt{r.X + r.W/2, r.Y + r.H/2} }

// AtLeast returns r grown about its middle to at least w by h.
func (r Rect) AtLeast(w, h float64) Rect {
	if r.W < w {
		r.X, r.W = r.X-(w-r.W)/2, w
	}
	if r.H < h {
		r.Y, r.H = r.Y-(h-r.H)/2, h
	}
	return r
}

// CutTop splits r into its upper h and the rest.
func (r Rect) CutTop(h float64) (top, rest Rect) {
	h = min(h, r.H)
	return Rect{r.X, r.Y, r.W, h}, Rect{r.X, r.Y + h, r.W, r.H - h}
}

// CutBottom splits r into its lower h and the rest.
func (r Rect) CutBottom(h float64) (bottom, rest Rect) {
	h = min(h, r.H)
	return Rect{r.X, r.Y + r.H - h, r.W, h}, Rect{r.X, r.Y, r.W, r.H - h}
}

// CutLeft splits r into its left w and the rest.
func (r Rect) CutLeft(w float64) (left, rest Rect) {
	w = min(w, r.W)
	return Rect{r.X, r.Y, w, r.H}, Rect{r.X + w, r.Y, r.W - w, r.H}
}

// CutRight splits r into its right w and the rest.
func (r Rect) CutRight(w float64) (right, rest Rect) {
	w = min(w, r.W)
	return Rect{r.X + r.W - w, r.Y, w, r.H}, Rect{r.X, r.Y, r.W - w, r.H}
}

// Kind is a sort of mark.
type Kind uint8

// The sorts of mark.
const (
	FillRect   Kind = iota // Rect, Radius
	StrokeRect             // Rect, Radius, Width
	Disc                   // At, Radius
	Ring                   // At, Radius, Width
	Line                   // points, Width; Fade
	Poly                   // points of a convex polygon
	Text                   // At (left end of the base line), Size, Bold, Text
	Again                  // Rect: what stays, over what has moved there
)

// Mark is one thing to be painted. Its points, if any, are
// List.Points[First:First+Count].
type Mark struct {
	Kind         Kind
	Rect         Rect
	At           Pt
	Radius       float64
	Width        float64
	Color        color.NRGBA
	First, Count int
	Fade         bool // a line whose points carry their own opacity
	Closed       bool
	Size         float64
	Bold         bool
	Text         string
}

// List is a display list. What adds a mark is called, not copied into each place
// that does: there are hundreds, and the program is to be loaded. Its slices are
// reused from frame to frame. What
// stays from frame to frame comes first, so that it need be painted only once.
type List struct {
	Back   color.NRGBA
	Marks  []Mark
	Points []Pt
	Alpha  []float32 // one a point; read only for a line with Fade
	// Still is how many of the marks, from the first, stay as they are as long as
	// Version, and Back with it, is the same.
	Still   int
	Version int
	kept    stillPart
}

// Reset empties the list and sets the ground's colour.
func (l *List) Reset(back color.NRGBA) {
	l.Back, l.Still = back, 0
	l.Marks, l.Points, l.Alpha = l.Marks[:0], l.Points[:0], l.Alpha[:0]
}

// FillRect adds a filled rectangle with rounded corners.
//
//go:noinline
func (l *List) FillRect(r Rect, radius float64, c color.NRGBA) {
	l.Marks = append(l.Marks, Mark{Kind: FillRect, Rect: r, Radius: radius, Color: c})
}

// StrokeRect adds a rectangle's outline, width inward.
//
//go:noinline
func (l *List) StrokeRect(r Rect, radius, width float64, c color.NRGBA) {
	l.Marks = append(l.Marks, Mark{Kind: StrokeRect, Rect: r, Radius: radius, Width: width, Color: c})
}

// Disc adds a filled circle.
//
//go:noinline
func (l *List) Disc(at Pt, radius float64, c color.NRGBA) {
	l.Marks = append(l.Marks, Mark{Kind: Disc, At: at, Radius: radius, Color: c})
}

// Ring adds a circle's outline, its middle line at radius.
//
//go:noinline
func (l *List) Ring(at Pt, radius, width float64, c color.NRGBA) {
	l.Marks = append(l.Marks, Mark{Kind: Ring, At: at, Radius: radius, Width: width, Color: c})
}

// Segment adds a straight line from a to b.
//
//go:noinline
func (l *List) Segment(a, b Pt, width float64, c color.NRGBA) {
	l.Polyline(width, c, false, a, b)
}

// Polyline adds a line through the points.
//
//go:noinline
func (l *List) Polyline(width float64, c color.NRGBA, closed bool, pts ...Pt) {
	l.BeginLine(width, c, false)
	for _, p := range pts {
		l.To(p, 1)
	}
	l.Marks[len(l.Marks)-1].Closed = closed
}

// BeginLine begins a line whose points follow by To; fade says that each
// point has its own opacity.
//
//go:noinline
func (l *List) BeginLine(width float64, c color.NRGBA, fade bool) {
	l.Marks = append(l.Marks, Mark{Kind: Line, Width: width, Color: c, First: len(l.Points), Fade: fade})
}

// To adds a point, with an opacity from 0 to 1, to the line begun last.
func (l *List) To(p Pt, alpha float32) {
	l.Points = append(l.Points, p)
	l.Alpha = append(l.Alpha, alpha)
	l.Marks[len(l.Marks)-1].Count++
}

// Poly adds a filled convex polygon.
//
//go:noinline
func (l *List) Poly(c color.NRGBA, pts ...Pt) {
	l.Marks = append(l.Marks, Mark{Kind: Poly, Color: c, First: len(l.Points), Count: len(pts)})
	for _, p := range pts {
		l.Points = append(l.Points, p)
		l.Alpha = append(l.Alpha, 1)
	}
}

// Text adds a line of text whose base line begins at p.
//
//go:noinline
func (l *List) Text(p Pt, size float64, bold bool, c color.NRGBA, s string) {
	if s == "" {
		return
	}
	l.Marks = append(l.Marks, Mark{Kind: Text, At: p, Size: size, Bold: bold, Color: c, Text: s})
}

// Of returns the points of a mark.
func (l *List) Of(m Mark) []Pt { return l.Points[m.First : m.First+m.Count] }

// Mix returns a + t(b − a), for t from 0 to 1.
func Mix(a, b color.NRGBA, t float64) color.NRGBA {
	f := func(x, y uint8) uint8 { return uint8(math.Round(float64(x) + t*(float64(y)-float64(x)))) }
	return color.NRGBA{f(a.R, b.R), f(a.G, b.G), f(a.B, b.B), f(a.A, b.A)}
}

// Clear returns c with its opacity multiplied by a.
func Clear(c color.NRGBA, a float64) color.NRGBA {
	c.A = uint8(math.Round(float64(c.A) * min(max(a, 0), 1)))
	return c
}

// Light returns how light c looks, from 0 to 255 (the luma of ITU-R BT.601).
func Light(c color.NRGBA) float64 {
	return 0.299*float64(c.R) + 0.587*float64(c.G) + 0.114*float64(c.B)
}
