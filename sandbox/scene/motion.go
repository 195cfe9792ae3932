package scene

import (
	"math"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
)

// Motion is a small moving picture of a leg in the square from −50 to 50, y
// downward: its head's way and the whole elementary pattern as SVG paths, and
// where hand and head are at even times.
type Motion struct {
	Left    bool      `json:"left"`
	Whole   string    `json:"whole"`
	Slice   string    `json:"slice"`
	Points  []float64 `json:"points"` // hand x, y, head x, y at even times
	Seconds float64   `json:"seconds"`
}

// motionPoints is at how many times a moving picture knows hand and head.
const motionPoints = 48

// MotionOf returns the moving picture of a leg of a hand at a tempo in beats a
// minute, drawn as in a mirror or not.
func MotionOf(g *engine.Leg, side engine.Side, tempo float64, mirror bool) *Motion {
	const margin = 4
	p := g.Path()
	reach := max(p.A, p.B) + g.Tether()
	v := View{Scale: (50 - margin) / max(reach, 1e-9), Mirror: mirror}
	place := func(z complex128) display.Pt { return v.ToScreen(z - p.Centre) }
	m := &Motion{Left: side == engine.Left, Seconds: g.Span * 60 / tempo}
	w := g.Whole()
	var whole, slice svgPath
	n := WholePoints(w)
	for k := 0; k <= n; k++ {
		whole.to(place(w.Point(float64(k)/float64(n)).Head), k == 0)
	}
	n = legPoints(g, mostPoints)
	for k := 0; k <= n; k++ {
		slice.to(place(g.Point(float64(k)/float64(n)).Head), k == 0)
	}
	m.Whole, m.Slice = string(whole), string(slice)
	for k := 0; k <= motionPoints; k++ {
		at := g.Point(float64(k) / motionPoints)
		hand, head := place(at.Hand), place(at.Head)
		for _, x := range []float64{hand.X, hand.Y, head.X, head.Y} {
			m.Points = append(m.Points, math.Round(x*10)/10)
		}
	}
	return m
}
