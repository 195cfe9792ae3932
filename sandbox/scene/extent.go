package scene

import (
	"math"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
)

// Extent is what of the plane is to be seen, edge by edge, and how far what is
// drawn there reaches beyond its place.
type Extent struct{ boxes [2]box }

// box is a part of the plane (m) whose marks reach pad CSS pixels further.
type box struct {
	x0, y0, x1, y1 float64
	some           bool
}

// What is drawn about a head, and about a hand with its letter, reaches this
// far, in CSS pixels.
const (
	padHead = 14.0
	padHand = 23.0
)

var pads = [2]float64{padHead, padHand}

func (b *box) add(z complex128) {
	x, y := real(z), imag(z)
	if !b.some {
		*b = box{x, y, x, y, true}
		return
	}
	b.x0, b.y0, b.x1, b.y1 = min(b.x0, x), min(b.y0, y), max(b.x1, x), max(b.y1, y)
}

// ExtentOf returns what the lanes' hands and heads reach from one beat to
// another, with the performer unless arms are hidden: it is for pictures, which
// have no room to spare, where Fit holds still while speeds are tried out.
func ExtentOf(p engine.Pattern, tracks []*engine.Track, from, to float64, o Options) Extent {
	var e Extent
	for _, t := range tracks {
		hand := 1
		if o.HideLetters {
			hand = 0
		}
		Trail(t, from, to, func(p engine.Point, _ int, _ float64, _ bool) {
			e.boxes[0].add(p.Head)
			e.boxes[hand].add(p.Hand)
		})
		if !o.HideArms && t.Lane.Plane == engine.Wall {
			half := p.Performer.Shoulders / 2
			e.boxes[0].add(complex(-half, 0))
			e.boxes[0].add(complex(half, half*(faceUp+faceRadius)))
		}
	}
	return e
}

// With returns what holds both e and f.
func (e Extent) With(f Extent) Extent {
	for i, b := range f.boxes {
		if b.some {
			e.boxes[i].add(complex(b.x0, b.y0))
			e.boxes[i].add(complex(b.x1, b.y1))
		}
	}
	return e
}

// leastReach (m): a picture never shows less than this to either side of its
// middle, so that a tiny pattern looks tiny.
const leastReach = 0.3

// View returns the closest view of e that leaves a margin within r, in CSS
// pixels, beyond everything drawn, as much on the left as on the right and
// above as below.
func (e Extent) View(r display.Rect, margin float64, mirror bool) View {
	room := r.Inset(margin)
	scale := max(min(room.W, room.H)/2-padHead, 1) / leastReach
	each := func(f func(a, b box, pa, pb float64)) {
		for i, a := range e.boxes {
			for j, b := range e.boxes {
				if a.some && b.some {
					f(a, b, pads[i], pads[j])
				}
			}
		}
	}
	each(func(a, b box, pa, pb float64) { // a's upper edge against b's lower one
		if w := a.x1 - b.x0; w > 0 {
			scale = min(scale, max(room.W-pa-pb, 1)/w)
		}
		if h := a.y1 - b.y0; h > 0 {
			scale = min(scale, max(room.H-pa-pb, 1)/h)
		}
	})
	x0, y0, x1, y1 := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for i, b := range e.boxes {
		if b.some {
			x0, y0 = min(x0, b.x0*scale-pads[i]), min(y0, b.y0*scale-pads[i])
			x1, y1 = max(x1, b.x1*scale+pads[i]), max(y1, b.y1*scale+pads[i])
		}
	}
	v := View{Origin: r.Centre(), Scale: scale, Mirror: mirror}
	if x0 > x1 {
		return v
	}
	mid := display.Pt{X: (x0 + x1) / 2, Y: (y0 + y1) / 2}
	if mirror {
		mid.X = -mid.X
	}
	v.Origin = display.Pt{X: v.Origin.X - mid.X, Y: v.Origin.Y + mid.Y}
	return v
}
