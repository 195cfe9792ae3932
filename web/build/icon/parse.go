// Package icon draws the program's icon as PNG, from the same SVG that the
// page shows. It reads as much of SVG as that icon is made of: rect with rx,
// circle, and path with M, m, A, a, C and c.
package icon

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"image/color"
	"io"
	"math"
	"strconv"
	"strings"
)

type pt struct{ x, y float64 }

// shape is one thing to draw, in the view box's units. It covers all places
// within reach of its points' line, or of its rectangle.
type shape struct {
	ink   color.NRGBA
	line  []pt    // one point is a disc
	reach float64 // half the stroke's width, a disc's radius
	box   *[4]float64
	round float64 // radius of the box's corners
}

// Icon is an icon that can be drawn at any size.
type Icon struct {
	side   float64 // of the square view box, which begins at 0 0
	shapes []shape
}

// Parse reads an icon. What it does not know is an error: an icon that is
// drawn in part would not be the same.
func Parse(svg []byte) (Icon, error) {
	var c Icon
	d := xml.NewDecoder(bytes.NewReader(svg))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return Icon{}, fmt.Errorf("failed to read the icon: %w", err)
		}
		if e, ok := token.(xml.StartElement); ok {
			if err := c.element(e); err != nil {
				return Icon{}, fmt.Errorf("failed to read the icon: <%s>: %w", e.Name.Local, err)
			}
		}
	}
	if c.side <= 0 {
		return Icon{}, errors.New("failed to read the icon: found no square viewBox")
	}
	return c, nil
}

// attributes are those of one element; the first error stays.
type attributes struct {
	of  map[string]string
	err error
}

func (a *attributes) number(name string) float64 {
	x, err := strconv.ParseFloat(a.of[name], 64)
	if err != nil && a.of[name] != "" && a.err == nil {
		a.err = fmt.Errorf("%s: %w", name, err)
	}
	return x
}

func (a *attributes) ink(name string) color.NRGBA {
	n, err := strconv.ParseUint(strings.TrimPrefix(a.of[name], "#"), 16, 32)
	if (err != nil || len(a.of[name]) != len("#000000")) && a.err == nil {
		a.err = fmt.Errorf("%s: found %q, allowed a colour such as #e69f00", name, a.of[name])
	}
	return color.NRGBA{uint8(n >> 16), uint8(n >> 8), uint8(n), 255}
}

func (c *Icon) element(e xml.StartElement) error {
	a := attributes{of: map[string]string{}}
	for _, x := range e.Attr {
		a.of[x.Name.Local] = x.Value
	}
	switch e.Name.Local {
	case "svg":
		var w, h float64
		if n, _ := fmt.Sscanf(a.of["viewBox"], "0 0 %g %g", &w, &h); n == 2 && w == h {
			c.side = w
		}
	case "rect":
		box := [4]float64{a.number("x"), a.number("y"), a.number("width"), a.number("height")}
		c.shapes = append(c.shapes, shape{ink: a.ink("fill"), box: &box, round: a.number("rx")})
	case "circle":
		c.shapes = append(c.shapes, shape{ink: a.ink("fill"), line: []pt{{a.number("cx"), a.number("cy")}}, reach: a.number("r")})
	case "path":
		// Distance to a line has round ends and corners of itself.
		if a.of["fill"] != "none" || a.of["stroke-linecap"] != "round" {
			return errors.New("a path that is no line with round ends")
		}
		line, err := flatten(a.of["d"])
		if err != nil {
			return err
		}
		c.shapes = append(c.shapes, shape{ink: a.ink("stroke"), line: line, reach: a.number("stroke-width") / 2})
	default:
		return errors.New("an element that is not known")
	}
	return a.err
}

// pieces is how many straight pieces stand for a curve.
const pieces = 64

// flatten turns path data (SVG 1.1, section 8.3) into one line of points.
func flatten(d string) ([]pt, error) {
	var line []pt
	var at pt
	for d = strings.TrimLeft(d, " "); d != ""; {
		letter := d[0]
		end := strings.IndexAny(d[1:], "MmAaCc") + 1
		if end == 0 {
			end = len(d)
		}
		n, err := numbers(d[1:end])
		if err != nil {
			return nil, err
		}
		d = d[end:]
		var from pt
		if letter >= 'a' {
			from = at
		}
		size := map[byte]int{'M': 2, 'A': 7, 'C': 6}[letter&^0x20]
		if size == 0 || len(n) == 0 || len(n)%size != 0 || letter&^0x20 == 'M' && len(n) != 2 {
			return nil, fmt.Errorf("%c with %d numbers", letter, len(n))
		}
		for ; len(n) > 0; n = n[size:] {
			if letter >= 'a' {
				from = at
			}
			to := pt{from.x + n[size-2], from.y + n[size-1]}
			switch size {
			case 7:
				if n[0] != n[1] {
					return nil, errors.New("an arc of an ellipse")
				}
				line = append(line, arc(at, to, n[0], n[3] != 0, n[4] != 0)...)
			case 6:
				line = append(line, cubic(at, pt{from.x + n[0], from.y + n[1]}, pt{from.x + n[2], from.y + n[3]}, to)...)
			default:
				line = append(line, to)
			}
			at = to
		}
	}
	return line, nil
}

// numbers reads numbers that are told apart by blanks, commas or signs.
func numbers(s string) (out []float64, err error) {
	for _, f := range strings.FieldsFunc(strings.ReplaceAll(s, "-", " -"), func(r rune) bool { return r == ' ' || r == ',' }) {
		x, err := strconv.ParseFloat(f, 64)
		if err != nil {
			return nil, err
		}
		out = append(out, x)
	}
	return out, nil
}

// arc returns points of a circle's arc after a, b included (SVG 1.1, appendix
// F.6.5).
func arc(a, b pt, r float64, large, sweep bool) []pt {
	dx, dy := (a.x-b.x)/2, (a.y-b.y)/2
	half := math.Hypot(dx, dy)
	r = math.Max(r, half)
	k := 0.0
	if half > 0 {
		k = math.Sqrt(r*r-half*half) / half
	}
	if large == sweep {
		k = -k
	}
	c := pt{(a.x+b.x)/2 + k*dy, (a.y+b.y)/2 - k*dx}
	from := math.Atan2(a.y-c.y, a.x-c.x)
	turn := math.Atan2(b.y-c.y, b.x-c.x) - from
	if sweep && turn < 0 {
		turn += 2 * math.Pi
	}
	if !sweep && turn > 0 {
		turn -= 2 * math.Pi
	}
	var out []pt
	for i := 1; i < pieces; i++ {
		s, co := math.Sincos(from + turn*float64(i)/pieces)
		out = append(out, pt{c.x + r*co, c.y + r*s})
	}
	return append(out, b)
}

// cubic returns points of a cubic Bézier curve after a, d included.
func cubic(a, b, c, d pt) []pt {
	var out []pt
	for i := 1; i <= pieces; i++ {
		t := float64(i) / pieces
		u := 1 - t
		w := [4]float64{u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t}
		out = append(out, pt{
			w[0]*a.x + w[1]*b.x + w[2]*c.x + w[3]*d.x,
			w[0]*a.y + w[1]*b.y + w[2]*c.y + w[3]*d.y,
		})
	}
	return out
}
