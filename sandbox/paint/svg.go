package paint

import (
	"fmt"
	"html"
	"image/color"
	"io"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
)

// SVG writes l as a picture of width by height CSS pixels, shown scale times
// as large, that any program which knows SVG 1.1 shows alike: letters are
// outlines, a line that fades does so by a mask. about says what it shows.
func SVG(w io.Writer, l *display.List, faces *face.Set, width, height, scale float64, about string) error {
	s := &svg{faces: faces}
	s.text(`<svg xmlns="http://www.w3.org/2000/svg" width="`).number(width * scale).text(`" height="`).number(height * scale)
	s.text(`" viewBox="0 0 `).number(width).text(" ").number(height).text(`" role="img">` + "\n<title>").escaped(about).text("</title>\n")
	if l.Back.A > 0 {
		s.text(`<rect width="`).number(width).text(`" height="`).number(height).text(`"`).paint("fill", l.Back, 1).text("/>\n")
	}
	for _, m := range l.Marks {
		s.mark(l, m)
	}
	s.text("</svg>\n")
	_, err := w.Write(s.out)
	return err
}

// svg is a picture being written.
type svg struct {
	out   []byte
	faces *face.Set
	masks int
}

func (s *svg) text(t string) *svg {
	s.out = append(s.out, t...)
	return s
}

// escaped writes a text of any characters; those that XML has no place for are
// written as blanks.
func (s *svg) escaped(t string) *svg {
	return s.text(html.EscapeString(strings.Map(func(r rune) rune {
		if r < ' ' || r == utf8.RuneError || r == 0xfffe || r == 0xffff {
			return ' '
		}
		return r
	}, t)))
}

// number writes x to a hundredth, which is less than a screen can show.
func (s *svg) number(x float64) *svg {
	x = math.Round(x*100) / 100
	if x == 0 {
		x = 0 // and not −0
	}
	s.out = strconv.AppendFloat(s.out, x, 'f', -1, 64)
	return s
}

// attr writes a number as an attribute.
func (s *svg) attr(name string, x float64) *svg {
	return s.text(" " + name + `="`).number(x).text(`"`)
}

// paint writes a colour as fill or stroke, its opacity times pale.
func (s *svg) paint(what string, c color.NRGBA, pale float64) *svg {
	s.text(fmt.Sprintf(` %s="#%02x%02x%02x"`, what, c.R, c.G, c.B))
	if a := float64(c.A) / 255 * pale; a < 1 {
		s.text(" " + what + `-opacity="` + strconv.FormatFloat(a, 'f', 3, 64) + `"`)
	}
	return s
}

func (s *svg) mark(l *display.List, m display.Mark) {
	switch m.Kind {
	case display.FillRect:
		s.rect(m.Rect, m.Radius).paint("fill", m.Color, 1).text("/>\n")
	case display.StrokeRect:
		s.rect(m.Rect.Inset(m.Width/2), m.Radius-m.Width/2).text(` fill="none"`).paint("stroke", m.Color, 1).attr("stroke-width", m.Width).text("/>\n")
	case display.Disc:
		s.circle(m).paint("fill", m.Color, 1).text("/>\n")
	case display.Ring:
		s.circle(m).text(` fill="none"`).paint("stroke", m.Color, 1).attr("stroke-width", m.Width).text("/>\n")
	case display.Poly:
		s.text("<path").course(l.Of(m), true).paint("fill", m.Color, 1).text("/>\n")
	case display.Line:
		s.line(l, m)
	case display.Text:
		s.letters(m)
	}
}

func (s *svg) rect(r display.Rect, radius float64) *svg {
	s.text("<rect").attr("x", r.X).attr("y", r.Y).attr("width", max(r.W, 0)).attr("height", max(r.H, 0))
	if radius = min(radius, r.W/2, r.H/2); radius > 0 {
		s.attr("rx", radius)
	}
	return s
}

func (s *svg) circle(m display.Mark) *svg {
	return s.text("<circle").attr("cx", m.At.X).attr("cy", m.At.Y).attr("r", m.Radius)
}

// course writes points as a path.
func (s *svg) course(pts []display.Pt, closed bool) *svg {
	s.text(` d="`)
	for i, p := range pts {
		s.text(map[bool]string{true: "M", false: "L"}[i == 0]).number(p.X).text(" ").number(p.Y)
	}
	if closed {
		s.text("Z")
	}
	return s.text(`"`)
}

// line strokes a line: its ends are square, corners keep their point, but for
// those that turn further than a right angle, which are round.
func (s *svg) line(l *display.List, m display.Mark) {
	pts, alpha := apart(l.Of(m), l.Alpha[m.First:m.First+m.Count])
	if len(pts) < 2 {
		return
	}
	pen := ""
	for i := 1; i+1 < len(pts); i++ {
		if sharp(pts[i-1], pts[i], pts[i+1]) {
			pen = ` stroke-linejoin="round"`
			break
		}
	}
	pale := 1.0
	if m.Fade {
		if !even(alpha) {
			s.fading(m, pts, alpha, pen)
			return
		}
		pale = float64(alpha[0])
	}
	s.text("<path").course(pts, m.Closed).text(` fill="none"`+pen).attr("stroke-width", m.Width).paint("stroke", m.Color, pale).text("/>\n")
}

// even reports whether a line is everywhere as opaque.
func even(alpha []float32) bool {
	for _, a := range alpha {
		if a != alpha[0] {
			return false
		}
	}
	return true
}

// apart returns the points without doubles.
func apart(pts []display.Pt, alpha []float32) ([]display.Pt, []float32) {
	var out []display.Pt
	var a []float32
	for i, p := range pts {
		if n := len(out); n == 0 || !same(p, out[n-1]) {
			out, a = append(out, p), append(a, alpha[i])
		}
	}
	return out, a
}

// fadeSteps is how many opacities a line that fades is drawn in.
const fadeSteps = 64

// fading strokes a line whose points have their own opacity. Its parts cannot
// be see-through and touch: where they do, edges would show. So they are drawn
// in a mask, opaque greys, each a little over the part before, and the ink is
// poured through.
func (s *svg) fading(m display.Mark, pts []display.Pt, alpha []float32, pen string) {
	x0, y0, x1, y1 := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, p := range pts {
		x0, y0, x1, y1 = min(x0, p.X), min(y0, p.Y), max(x1, p.X), max(y1, p.Y)
	}
	box := display.Rect{X: x0, Y: y0, W: x1 - x0, H: y1 - y0}.Inset(-m.Width)
	s.masks++
	id := "fade" + strconv.Itoa(s.masks)
	s.text(`<mask id="`+id+`" maskUnits="userSpaceOnUse"`).attr("x", box.X).attr("y", box.Y).attr("width", box.W).attr("height", box.H)
	s.text(">\n<g fill=\"none\""+pen).attr("stroke-width", m.Width).text(">\n")
	step := func(i int) int { return int(math.Round(float64(alpha[i]+alpha[i+1]) / 2 * fadeSteps)) } // of the part from point i
	for i := 0; i+1 < len(pts); {
		from, k := max(i-1, 0), step(i)
		for i++; i+1 < len(pts) && step(i) == k; i++ {
		}
		grey := uint8(math.Round(255 * float64(k) / fadeSteps))
		s.text("<path").course(pts[from:i+1], false).paint("stroke", color.NRGBA{grey, grey, grey, 255}, 1).text("/>\n")
	}
	s.text("</g>\n</mask>\n")
	s.rect(box, 0).paint("fill", m.Color, 1).text(` mask="url(#` + id + ")\"/>\n")
}

// letters writes a text's outlines.
func (s *svg) letters(m display.Mark) {
	s.text(`<path data-text="`).escaped(m.Text).text(`" d="`)
	pen := m.At
	for _, r := range m.Text {
		open := false
		for _, step := range s.faces.Outline(r, m.Bold) {
			if step.Op == face.MoveTo && open {
				s.text("Z")
			}
			open = true
			s.text([...]string{"M", "L", "Q", "C"}[step.Op])
			for i := range max(int(step.Op), 1) {
				if i > 0 {
					s.text(" ")
				}
				s.number(pen.X + m.Size*step.Points[i][0]).text(" ").number(pen.Y + m.Size*step.Points[i][1])
			}
		}
		if open {
			s.text("Z")
		}
		pen.X += s.faces.Advance(r, m.Bold) * m.Size
	}
	s.text(`"`).paint("fill", m.Color, 1).text("/>\n")
}
