package scene

import (
	"math"
	"testing"

	"whorlbench/sandbox/display"
)

func TestZoomHoldsThePlaceUnderTheFinger(t *testing.T) {
	for _, mirror := range []bool{false, true} {
		fit := View{Origin: area.Centre(), Scale: 120, Mirror: mirror}
		var z Zoom
		for _, step := range []struct {
			from, to display.Pt
			k        float64
		}{
			{display.Pt{X: 150, Y: 200}, display.Pt{X: 150, Y: 200}, 3},
			{display.Pt{X: 200, Y: 250}, display.Pt{X: 215, Y: 240}, 1},
			{display.Pt{X: 180, Y: 220}, display.Pt{X: 190, Y: 230}, 1.5},
		} {
			was := z.Of(fit, area).ToPlane(step.from)
			z = z.Moved(fit, area, step.from, step.to, step.k)
			if got := z.Of(fit, area).ToScreen(was); got.Sub(step.to).Len() > 1e-9 {
				t.Errorf("mirror %v: the place that was at %v is at %v, want %v", mirror, step.from, got, step.to)
			}
		}
		if math.Abs(z.K-4.5) > 1e-12 {
			t.Errorf("mirror %v: K = %v, want 3·1.5", mirror, z.K)
		}
	}
}

// The edge of what fits never comes inside the area, and zooming out ends in
// the view that fits.
func TestZoomStaysWithin(t *testing.T) {
	fit := View{Origin: area.Centre(), Scale: 120}
	corner := fit.ToPlane(display.Pt{X: area.X, Y: area.Y})
	z := Zoom{}.Moved(fit, area, area.Centre(), area.Centre(), 4)
	z = z.Moved(fit, area, area.Centre(), display.Pt{X: 9000, Y: 9000}, 1)
	if got := z.Of(fit, area).ToScreen(corner); got.Sub(display.Pt{X: area.X, Y: area.Y}).Len() > 1e-9 {
		t.Errorf("panned as far as it goes the corner is at %v, want the area's own, %v,%v", got, area.X, area.Y)
	}
	if z = z.Moved(fit, area, area.Centre(), area.Centre(), 1e9); z.K != MostZoom {
		t.Errorf("K = %v, want at most %v", z.K, MostZoom)
	}
	if z = z.Moved(fit, area, display.Pt{X: 1, Y: 90}, display.Pt{X: 1, Y: 90}, 1e-9); z != (Zoom{}) || z.On() || z.Of(fit, area) != fit {
		t.Errorf("zoomed out it is %+v, want the view that fits", z)
	}
}
