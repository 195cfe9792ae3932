package bench

import (
	"math"

	"whorlbench/sandbox/display"
)

// tapZoom is how much closer a double tap beside the curves looks, and
// wheelZoom how many pixels of a wheel make it e times as close.
const (
	tapZoom   = 2.0
	wheelZoom = 400.0
)

func (b *Bench) zoomAt(at display.Pt, k float64) {
	if b.stage.drag == nil {
		b.stage.zoom = b.stage.zoom.Moved(b.fitView(), b.plan.stage, at, at, k)
	}
}

// Wheel looks closer at what is under a place in CSS pixels, or from further
// away, by so many pixels of a wheel; it reports whether the place is on the stage.
func (b *Bench) Wheel(at display.Pt, pixels float64) bool {
	b.arrange()
	at = at.Scale(1 / b.plan.zoom)
	if !b.plan.stage.Contains(at) || b.plan.stageOnly { // there it scrolls the page around
		return false
	}
	b.zoomAt(at, math.Exp(-pixels/wheelZoom))
	return true
}

// ZoomKey looks k times closer at the head of the lane in hand.
func (b *Bench) ZoomKey(k float64) {
	b.arrange()
	if b.plan.stageOnly {
		return
	}
	s := b.Session
	v := b.StageView()
	at := v.ToScreen(s.Tracks()[s.Selected().Lane].At(s.Beat()).Head)
	st := b.plan.stage
	to := st.Centre()
	if k < 1 || !st.Contains(at) {
		at = to
	}
	if b.stage.drag == nil {
		b.stage.zoom = b.stage.zoom.Moved(b.fitView(), st, at, to, k)
	}
}

// coverSurroundings keeps what is seen closer within the stage: it covers all
// round it.
func (b *Bench) coverSurroundings(cover func(display.Rect)) {
	z, st := b.plan.zoom, b.plan.stage
	w, h := b.frame.W/z, b.frame.H/z
	for _, r := range []display.Rect{
		{W: w, H: st.Y}, {Y: st.Y + st.H, W: w, H: h - st.Y - st.H},
		{Y: st.Y, W: st.X, H: st.H}, {X: st.X + st.W, Y: st.Y, W: w - st.X - st.W, H: st.H},
	} {
		if r.W > 0 && r.H > 0 {
			cover(r)
		}
	}
}
