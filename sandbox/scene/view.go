// Package scene says what is to be seen on the stage, as a display list.
package scene

import (
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
)

// View maps a plane (m, y up) to the screen (CSS pixels, y down) and back:
// the one transform between the two.
type View struct {
	Origin display.Pt // where the plane's origin is seen
	Scale  float64    // pixels a metre, > 0
	Mirror bool       // x is seen reversed
}

// ToScreen returns where a place of the plane is seen.
func (v View) ToScreen(z complex128) display.Pt {
	x := real(z) * v.Scale
	if v.Mirror {
		x = -x
	}
	return display.Pt{X: v.Origin.X + x, Y: v.Origin.Y - imag(z)*v.Scale}
}

// ToPlane returns the place of the plane that is seen at p.
func (v View) ToPlane(p display.Pt) complex128 {
	x := (p.X - v.Origin.X) / v.Scale
	if v.Mirror {
		x = -x
	}
	return complex(x, (v.Origin.Y-p.Y)/v.Scale)
}

// Fit returns the view that shows everything the lanes can reach, whatever
// their speeds, centred in r with a margin in pixels.
func Fit(tracks []*engine.Track, r display.Rect, margin float64, mirror bool) View {
	return FitReach(Reach(tracks), r, margin, mirror)
}

// Reach returns how far (m) from the middle the lanes can come, whatever their
// speeds.
func Reach(tracks []*engine.Track) float64 {
	reach := 0.3 // never closer than an arm's width: a tiny pattern looks tiny
	for _, t := range tracks {
		for i := range t.Legs {
			p := t.Legs[i].Path()
			reach = max(reach, cmplx.Abs(p.Centre)+max(p.A, p.B)+t.Legs[i].Tether())
		}
	}
	return reach
}

// FitReach returns the view that shows what comes so far (m) from the middle.
func FitReach(reach float64, r display.Rect, margin float64, mirror bool) View {
	half := max(min(r.W, r.H)/2-margin, 1)
	return View{Origin: r.Centre(), Scale: half / reach, Mirror: mirror}
}
