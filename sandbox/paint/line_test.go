package paint

import (
	"math"
	"testing"

	"whorlbench/sandbox/display"
)

// rose returns n points once round r = a·cos(kφ) about (c, c): with whole k it
// passes the middle, where its branches cross, 2k times.
func rose(c, a float64, k float64, n int) []display.Pt {
	pts := make([]display.Pt, n)
	for i := range pts {
		phi := 2 * math.Pi * float64(i) / float64(n)
		s, cos := math.Sincos(phi)
		r := a * math.Cos(k*phi)
		pts[i] = display.Pt{X: c + r*cos, Y: c + r*s}
	}
	return pts
}

// astroid returns n points once round x = a·cos³φ, y = a·sin³φ, a curve of
// four cusps; phase shifts the points along it, off the cusps.
func astroid(c, a, phase float64, n int) []display.Pt {
	pts := make([]display.Pt, n)
	for i := range pts {
		s, cos := math.Sincos(2*math.Pi*float64(i)/float64(n) + phase)
		pts[i] = display.Pt{X: c + a*cos*cos*cos, Y: c + a*s*s*s}
	}
	return pts
}

// distance is that of p from the line through pts.
func distance(p display.Pt, pts []display.Pt, closed bool) float64 {
	least := math.Inf(1)
	last := len(pts) - 1
	if closed {
		last++
	}
	for i := range last {
		a, b := pts[i], pts[(i+1)%len(pts)]
		d := b.Sub(a)
		t := 0.0
		if l2 := d.X*d.X + d.Y*d.Y; l2 > 0 {
			q := p.Sub(a)
			t = min(max((q.X*d.X+q.Y*d.Y)/l2, 0), 1)
		}
		least = min(least, p.Sub(a.Add(d.Scale(t))).Len())
	}
	return least
}

// TestLineStaysNear: no corner throws a spike, and no place of the line is
// left out. A mitre at a right angle reaches √2 half widths.
func TestLineStaysNear(t *testing.T) {
	for _, tt := range []struct {
		name   string
		pts    []display.Pt
		closed bool
	}{
		{"cusp", []display.Pt{{X: 10, Y: 30}, {X: 80, Y: 30}, {X: 10, Y: 30.5}}, false},
		{"there and back", []display.Pt{{X: 10, Y: 30}, {X: 80, Y: 30}, {X: 10, Y: 30}}, false},
		{"needle", []display.Pt{{X: 10, Y: 10}, {X: 50, Y: 80}, {X: 51, Y: 10}, {X: 90, Y: 90}}, false},
		{"tiny steps at a cusp", []display.Pt{{X: 10, Y: 30}, {X: 79.8, Y: 30}, {X: 80, Y: 30}, {X: 79.9, Y: 30.1}, {X: 79.7, Y: 30}, {X: 10, Y: 35}}, false},
		{"right angle", []display.Pt{{X: 10, Y: 10}, {X: 80, Y: 10}, {X: 80, Y: 80}}, false},
		{"hexagon", []display.Pt{{X: 90, Y: 50}, {X: 70, Y: 85}, {X: 30, Y: 85}, {X: 10, Y: 50}, {X: 30, Y: 15}, {X: 70, Y: 15}}, true},
		{"closed needle", []display.Pt{{X: 10, Y: 10}, {X: 90, Y: 15}, {X: 12, Y: 18}}, true},
		{"closed on its first point", []display.Pt{{X: 10, Y: 10}, {X: 90, Y: 10}, {X: 90, Y: 80}, {X: 10, Y: 10}}, true},
		{"closed there and back", []display.Pt{{X: 10, Y: 10}, {X: 90, Y: 10}}, true},
		{"astroid on its cusps", astroid(50, 45, 0, 112), true},
		{"astroid off its cusps", astroid(50, 45, 0.013, 112), true},
		{"rose", rose(50, 45, 2, 112), true},
	} {
		for _, width := range []float64{1.25, 3.5} {
			for _, scale := range []float64{1, 3} {
				m := built(t, scale, func(l *display.List) { l.Polyline(width, black, tt.closed, tt.pts...) })
				reach := math.Sqrt2*(width*scale+feather)/2 + 0.1
				for _, v := range m.Vertices {
					p := display.Pt{X: float64(v.X), Y: float64(v.Y)}.Scale(1 / scale)
					if d := distance(p, tt.pts, tt.closed) * scale; d > reach {
						t.Fatalf("%s, width %v@%v: vertex %v is %.2f px off the line, want at most %.2f", tt.name, width, scale, p, d, reach)
					}
				}
				if at, got := palest(m, tt.pts, tt.closed, scale); got < 0.98 {
					t.Errorf("%s, width %v@%v: opacity on the line at %v = %.3f, want 1", tt.name, width, scale, at, got)
				}
			}
		}
	}
}

// TestCorner: a right angle keeps its outer corner, a sharper turn is rounded.
func TestCorner(t *testing.T) {
	const width = 8.0
	for _, tt := range []struct {
		name string
		pts  []display.Pt
		at   display.Pt
		want float64
	}{
		{"right angle", []display.Pt{{X: 10, Y: 30}, {X: 60, Y: 30}, {X: 60, Y: 80}}, display.Pt{X: 63.2, Y: 26.8}, 1},
		{"turning back", []display.Pt{{X: 10, Y: 30}, {X: 60, Y: 30}, {X: 10, Y: 30}}, display.Pt{X: 63.2, Y: 30}, 1},
		{"turning back", []display.Pt{{X: 10, Y: 30}, {X: 60, Y: 30}, {X: 10, Y: 30}}, display.Pt{X: 63.6, Y: 26.4}, 0},
		{"its own end", []display.Pt{{X: 10, Y: 30}, {X: 60, Y: 30}}, display.Pt{X: 60.6, Y: 30}, 0},
	} {
		m := built(t, 1, func(l *display.List) { l.Polyline(width, black, false, tt.pts...) })
		if got := opacity(m, tt.at.X, tt.at.Y); math.Abs(got-tt.want) > 0.02 {
			t.Errorf("%s: opacity at %v = %.3f, want %v", tt.name, tt.at, got, tt.want)
		}
	}
}

// palest walks the line, but for a pixel at the ends of an open one, and
// returns where it is painted least.
func palest(m *Mesh, pts []display.Pt, closed bool, scale float64) (at display.Pt, least float64) {
	least = 2
	n := len(pts)
	for i := range n {
		if i+1 == n && !closed {
			break
		}
		a, b := pts[i], pts[(i+1)%n]
		steps := int(math.Ceil(b.Sub(a).Len() * scale / 2))
		for k := range steps + 1 {
			p := a.Add(b.Sub(a).Scale(float64(k) / float64(max(steps, 1))))
			if !closed && (p.Sub(pts[0]).Len()*scale < feather || p.Sub(pts[n-1]).Len()*scale < feather) {
				continue
			}
			// A hair off the middle, where no two triangles meet.
			if got := opacity(m, p.X*scale+1e-4, p.Y*scale+1.7e-4); got < least {
				at, least = p, got
			}
		}
	}
	return at, least
}

// TestOutlineCloses: rings and rounded outlines are whole all the way round.
func TestOutlineCloses(t *testing.T) {
	for _, scale := range []float64{1, 2, 3} {
		for _, r := range []float64{3, 5, 8.5, 40} {
			m := built(t, scale, func(l *display.List) { l.Ring(display.Pt{X: 50, Y: 50}, r, 2, black) })
			for a := 0.0; a < 360; a += 1.7 {
				s, c := math.Sincos(a * math.Pi / 180)
				if got := opacity(m, (50+r*c)*scale, (50+r*s)*scale); got < 0.98 {
					t.Errorf("Ring(%v)@%v: opacity at %v° = %.3f, want 1", r, scale, a, got)
				}
			}
		}
		m := built(t, scale, func(l *display.List) {
			l.StrokeRect(display.Rect{X: 10, Y: 10, W: 60, H: 24}, 12, 3, black)
		})
		const in = 1.5 // the middle of the outline
		for x := 22.0; x <= 58; x += 0.7 {
			for _, y := range []float64{10 + in, 34 - in} {
				if got := opacity(m, x*scale, y*scale); got < 0.98 {
					t.Errorf("StrokeRect@%v: opacity at (%v, %v) = %.3f, want 1", scale, x, y, got)
				}
			}
		}
		for a := 90.5; a < 270; a += 1.7 {
			s, c := math.Sincos(a * math.Pi / 180)
			if got := opacity(m, (22+(12-in)*c)*scale, (22+(12-in)*s)*scale); got < 0.98 {
				t.Errorf("StrokeRect@%v: opacity at %v° of its left end = %.3f, want 1", scale, a, got)
			}
		}
	}
}

// TestFade: a line's points carry their own opacity, linear in between, and
// the colour's opacity counts too.
func TestFade(t *testing.T) {
	c := black
	c.A = 204 // 0.8
	for _, scale := range []float64{1, 2, 3} {
		m := built(t, scale, func(l *display.List) {
			l.Segment(display.Pt{X: 0, Y: 5}, display.Pt{X: 1, Y: 5}, 1, black) // shifts where its points lie
			l.BeginLine(4, c, true)
			l.To(display.Pt{X: 10, Y: 30}, 1)
			l.To(display.Pt{X: 50, Y: 30}, 0.5)
			l.To(display.Pt{X: 50.01, Y: 30}, 0.5) // too near to count
			l.To(display.Pt{X: 90, Y: 30}, 0)
		})
		for x := 12.0; x <= 88; x++ {
			want := 0.8 * (90 - x) / 80
			if got := opacity(m, x*scale, 30.3*scale); math.Abs(got-want) > 0.02 {
				t.Errorf("scale %v: opacity at %v = %.3f, want %.3f", scale, x, got, want)
			}
		}
	}
}

// TestNoFade: without it opacities are not read.
func TestNoFade(t *testing.T) {
	m := built(t, 1, func(l *display.List) {
		l.BeginLine(4, black, false)
		l.To(display.Pt{X: 10, Y: 30}, 0.2)
		l.To(display.Pt{X: 90, Y: 30}, 0.2)
	})
	if got := opacity(m, 50, 30.3); math.Abs(got-1) > 1e-6 {
		t.Errorf("opacity = %v, want 1", got)
	}
}
