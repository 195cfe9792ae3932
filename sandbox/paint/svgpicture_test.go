package paint

import (
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"
)

// svgPicture shows an SVG by its specification, in exact geometry and 16
// samples a pixel: rectangles, circles, paths of lines and curves, filled where
// they wind about a place, strokes with square ends, and masks of their own
// luminance. It is what a browser makes of what SVG writes.
type svgPicture struct {
	t     testing.TB
	w, h  int
	scale float64
	masks map[string][]float64
}

const fineness = 4 // samples a pixel, each way

type attrs map[string]string

func (a attrs) num(name string) float64 {
	x, _ := strconv.ParseFloat(a[name], 64)
	return x
}

// rgb returns a colour and its opacity; ok is false for none.
func (a attrs) ink(what string) (c [3]float64, alpha float64, ok bool) {
	s := a[what]
	if len(s) != 7 {
		return c, 0, false
	}
	n, _ := strconv.ParseUint(s[1:], 16, 32)
	alpha = 1
	if o := a[what+"-opacity"]; o != "" {
		alpha, _ = strconv.ParseFloat(o, 64)
	}
	return [3]float64{float64(n >> 16), float64(n >> 8 & 255), float64(n & 255)}, alpha, true
}

// shape reports whether a place lies in it, and where it can be at all.
type shape struct {
	x0, y0, x1, y1 float64
	holds          func(x, y float64) bool
	near           func(x, y float64) bool // not far, if that is sooner told
}

// render returns the picture, opacity multiplied in, 0 to 255.
func (p *svgPicture) render(data []byte) []texel {
	pix := make([]texel, p.w*p.h)
	p.masks = map[string][]float64{}
	d := xml.NewDecoder(strings.NewReader(string(data)))
	into, mask := pix, ""
	var group attrs
	for {
		tok, err := d.Token()
		if err == io.EOF {
			return pix
		}
		if err != nil {
			p.t.Fatalf("SVG: %v", err)
		}
		switch e := tok.(type) {
		case xml.StartElement:
			a := attrs{}
			for k, v := range group {
				a[k] = v
			}
			for _, x := range e.Attr {
				a[x.Name.Local] = x.Value
			}
			switch e.Name.Local {
			case "mask":
				mask = a["id"]
				into = make([]texel, p.w*p.h)
			case "g":
				group = a
			case "rect", "circle", "path":
				p.element(into, e.Name.Local, a)
			}
		case xml.EndElement:
			switch e.Name.Local {
			case "mask":
				lum := make([]float64, len(into))
				for i, t := range into { // of a colour with its opacity multiplied in
					lum[i] = (0.2125*t[0] + 0.7154*t[1] + 0.0721*t[2]) / 255
				}
				p.masks[mask] = lum
				into, mask = pix, ""
			case "g":
				group = nil
			}
		}
	}
}

func (p *svgPicture) element(into []texel, name string, a attrs) {
	var through []float64
	if m := a["mask"]; m != "" {
		through = p.masks[strings.TrimSuffix(strings.TrimPrefix(m, "url(#"), ")")]
		if through == nil {
			p.t.Fatalf("SVG: no mask %s", m)
		}
	}
	fill, stroke := p.shapes(name, a)
	for _, part := range []struct {
		what string
		s    shape
	}{{"fill", fill}, {"stroke", stroke}} {
		c, alpha, ok := a.ink(part.what)
		if !ok {
			continue
		}
		k := p.scale
		for y := max(int(part.s.y0*k), 0); y < min(int(part.s.y1*k)+1, p.h); y++ {
			for x := max(int(part.s.x0*k), 0); x < min(int(part.s.x1*k)+1, p.w); x++ {
				if part.s.near != nil && !part.s.near((float64(x)+0.5)/k, (float64(y)+0.5)/k) {
					continue
				}
				in := 0
				for j := range fineness * fineness {
					sx := (float64(x) + (float64(j%fineness)+0.5)/fineness) / k
					sy := (float64(y) + (float64(j/fineness)+0.5)/fineness) / k
					if part.s.holds(sx, sy) {
						in++
					}
				}
				cover := float64(in) / (fineness * fineness) * alpha
				if through != nil {
					cover *= through[y*p.w+x]
				}
				t := &into[y*p.w+x]
				for i := range 3 {
					t[i] = c[i]*cover + t[i]*(1-cover)
				}
				t[3] = 255*cover + t[3]*(1-cover)
			}
		}
	}
}

// shapes returns what an element fills and what it strokes.
func (p *svgPicture) shapes(name string, a attrs) (fill, stroke shape) {
	half := a.num("stroke-width") / 2
	switch name {
	case "circle":
		cx, cy, r := a.num("cx"), a.num("cy"), a.num("r")
		at := func(x, y float64) float64 { return math.Hypot(x-cx, y-cy) }
		out := r + half
		fill = shape{cx - r, cy - r, cx + r, cy + r, func(x, y float64) bool { return at(x, y) <= r }, nil}
		stroke = shape{cx - out, cy - out, cx + out, cy + out, func(x, y float64) bool { return math.Abs(at(x, y)-r) <= half }, nil}
	case "rect":
		x0, y0, w, h, rx := a.num("x"), a.num("y"), a.num("width"), a.num("height"), a.num("rx")
		// How far a place is outside, negative inside.
		out := func(x, y float64) float64 {
			dx, dy := math.Abs(x-x0-w/2)-w/2+rx, math.Abs(y-y0-h/2)-h/2+rx
			return math.Hypot(max(dx, 0), max(dy, 0)) + min(max(dx, dy), 0) - rx
		}
		fill = shape{x0, y0, x0 + w, y0 + h, func(x, y float64) bool { return out(x, y) <= 0 }, nil}
		stroke = shape{x0 - half, y0 - half, x0 + w + half, y0 + h + half, func(x, y float64) bool { return math.Abs(out(x, y)) <= half }, nil}
	case "path":
		contours, closed := p.contours(a["d"])
		x0, y0, x1, y1 := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
		for _, c := range contours {
			for _, q := range c {
				x0, y0, x1, y1 = min(x0, q[0]), min(y0, q[1]), max(x1, q[0]), max(y1, q[1])
			}
		}
		fill = shape{x0, y0, x1, y1, func(x, y float64) bool { return winding(contours, x, y) != 0 }, nil}
		r := 3 * half // as far as a corner's point reaches
		round := a["stroke-linejoin"] == "round"
		stroke = shape{x0 - r, y0 - r, x1 + r, y1 + r, func(x, y float64) bool {
			for _, c := range contours {
				if onStroke(c, closed, round, half, x, y) {
					return true
				}
			}
			return false
		}, func(x, y float64) bool {
			reach := r + 1/p.scale
			for _, c := range contours {
				for i, a := range c {
					b := c[(i+1)%len(c)]
					if x > min(a[0], b[0])-reach && x < max(a[0], b[0])+reach && y > min(a[1], b[1])-reach && y < max(a[1], b[1])+reach {
						return true
					}
				}
			}
			return false
		}}
	}
	return fill, stroke
}

type place [2]float64

// contours reads a path of M, L, Q, C and Z, curves as chords too short to be
// told from them.
func (p *svgPicture) contours(d string) (out [][]place, closed bool) {
	var nums []float64
	var op byte
	end := func() {
		pt := func(i int) place { return place{nums[2*i], nums[2*i+1]} }
		last := func() place { c := out[len(out)-1]; return c[len(c)-1] }
		curve := func(q ...place) {
			a := last()
			for k := 1; k <= 12; k++ {
				pts := append([]place{a}, q...)
				for u := float64(k) / 12; len(pts) > 1; pts = pts[:len(pts)-1] { // de Casteljau
					for i := range len(pts) - 1 {
						pts[i] = place{pts[i][0] + u*(pts[i+1][0]-pts[i][0]), pts[i][1] + u*(pts[i+1][1]-pts[i][1])}
					}
				}
				out[len(out)-1] = append(out[len(out)-1], pts[0])
			}
		}
		switch op {
		case 'M':
			out = append(out, []place{pt(0)})
		case 'L':
			out[len(out)-1] = append(out[len(out)-1], pt(0))
		case 'Q':
			curve(pt(0), pt(1))
		case 'C':
			curve(pt(0), pt(1), pt(2))
		case 'Z':
			closed = true
		}
		nums = nums[:0]
	}
	for i := 0; i < len(d); {
		if strings.IndexByte("MLQCZ", d[i]) >= 0 {
			if op != 0 {
				end()
			}
			op = d[i]
			i++
			continue
		}
		j := i
		for j < len(d) && strings.IndexByte("0123456789.-", d[j]) >= 0 {
			j++
		}
		if j == i {
			i++
			continue
		}
		x, err := strconv.ParseFloat(d[i:j], 64)
		if err != nil {
			p.t.Fatal(fmt.Errorf("SVG path %q: %w", d, err))
		}
		nums = append(nums, x)
		i = j
	}
	if op != 0 {
		end()
	}
	return out, closed
}

// winding is how often contours go round a place.
func winding(contours [][]place, x, y float64) (n int) {
	for _, c := range contours {
		for i, a := range c {
			b := c[(i+1)%len(c)]
			if (a[1] <= y) == (b[1] <= y) {
				continue
			}
			if left := (b[0]-a[0])*(y-a[1]) - (x-a[0])*(b[1]-a[1]); b[1] > a[1] && left > 0 {
				n++
			} else if b[1] <= a[1] && left < 0 {
				n--
			}
		}
	}
	return n
}

// onStroke reports whether a place lies on a line: beside one of its parts, or
// in the corner between two, which is round or comes to a point.
func onStroke(c []place, closed, round bool, half, x, y float64) bool {
	n := len(c)
	parts := n - 1
	if closed {
		parts = n
	}
	for i := range parts {
		a, b := c[i], c[(i+1)%n]
		dx, dy := b[0]-a[0], b[1]-a[1]
		l := math.Hypot(dx, dy)
		if l == 0 {
			continue
		}
		u, v := ((x-a[0])*dx+(y-a[1])*dy)/l, ((x-a[0])*dy-(y-a[1])*dx)/l
		if u >= 0 && u <= l && math.Abs(v) <= half {
			return true
		}
		if i+2 < n || closed { // the corner at b
			e := c[(i+2)%n]
			ex, ey := e[0]-b[0], e[1]-b[1]
			m := math.Hypot(ex, ey)
			if m == 0 {
				continue
			}
			ahead, behind := ((x-b[0])*dx+(y-b[1])*dy)/l, ((x-b[0])*ex+(y-b[1])*ey)/m
			if ahead < 0 || behind > 0 {
				continue
			}
			if round && math.Hypot(x-b[0], y-b[1]) <= half {
				return true
			}
			// Within both outer edges.
			w := ((x-b[0])*ey - (y-b[1])*ex) / m
			if !round && math.Abs(v) <= half && math.Abs(w) <= half {
				return true
			}
		}
	}
	return false
}
