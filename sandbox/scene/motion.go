package scene

import (
	"math"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
)

// Motion is a small moving picture of a hand in the square from −50 to 50, y
// downward: its head's way and, of one leg, the whole elementary pattern as SVG
// paths, and where hand and head are at even times.
type Motion struct {
	Left    bool      `json:"left"`
	Whole   string    `json:"whole"` // empty for a whole pattern
	Slice   string    `json:"slice"`
	Points  []float64 `json:"points"` // hand x, y, head x, y at even times
	Seconds float64   `json:"seconds"`
	Rest    float64   `json:"rest"` // seconds until it begins again
}

// motionRest (s) parts the end of what does not close from its beginning.
const motionRest = 0.4

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
	m := &Motion{Left: side == engine.Left, Seconds: g.Span * 60 / tempo, Rest: motionRest}
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
		m.add(place(at.Hand), place(at.Head))
	}
	return m
}

// add notes where hand and head are, to a tenth.
func (m *Motion) add(hand, head display.Pt) {
	for _, x := range [...]float64{hand.X, hand.Y, head.X, head.Y} {
		m.Points = append(m.Points, math.Round(x*10)/10)
	}
}

// How finely the moving picture of a whole pattern is sampled: times a beat, and
// at most.
const (
	motionPerBeat = 24
	mostTimes     = 600
)

// Motions returns the moving pictures of a pattern's hands, all to one scale and
// in one time, until all is as it was; thumbRounds of the longest lane at most.
func Motions(tracks []*engine.Track, tempo float64) []Motion {
	longest := 0.0
	for _, t := range tracks {
		longest = max(longest, t.Beats)
	}
	beats, rest := longest, motionRest
	if c, ok := engine.ClosingTime(tracks...); ok && c.Float() <= longest*thumbRounds {
		beats, rest = c.Float(), 0
	}
	n := min(int(math.Ceil(beats*motionPerBeat)), mostTimes)
	v := Fit(tracks, thumbRect, thumbMargin, false)
	var out []Motion
	for i, d := range Thumbs(tracks) {
		m := Motion{Left: d.Left, Slice: d.Path, Seconds: beats * 60 / tempo, Rest: rest}
		for k := 0; k <= n; k++ {
			at := tracks[i].PointAt(tracks[i].Locate(beats * float64(k) / float64(n)))
			m.add(v.ToScreen(at.Hand), v.ToScreen(at.Head))
		}
		out = append(out, m)
	}
	return out
}
