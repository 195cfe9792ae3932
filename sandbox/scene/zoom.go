package scene

import (
	"math"

	"whorlbench/sandbox/display"
)

// Zoom is how a person looks closer: K times as large as fits, the place At
// (m) in the middle. The zero value fits. It belongs to the eye, not to the
// pattern.
type Zoom struct {
	K  float64
	At complex128
}

// MostZoom is the closest look; nearer than nearFit the whole is meant.
const (
	MostZoom = 12
	nearFit  = 1.02
)

// On reports whether less than everything is seen.
func (z Zoom) On() bool { return z.K > 1 }

// Of returns the view of an area, given the one that fits it.
func (z Zoom) Of(fit View, area display.Rect) View {
	if !z.On() {
		return fit
	}
	v := View{Scale: fit.Scale * z.K, Mirror: fit.Mirror}
	v.Origin = area.Centre().Sub(v.ToScreen(z.At))
	return v
}

// Moved returns the zoom after what was seen at from has been brought to to
// and made k times as large. It stays within what fits.
func (z Zoom) Moved(fit View, area display.Rect, from, to display.Pt, k float64) Zoom {
	held := z.Of(fit, area).ToPlane(from)
	next := Zoom{K: min(max(z.K, 1)*k, MostZoom)}
	if !(next.K > nearFit) {
		return Zoom{}
	}
	v := next.Of(fit, area) // with the plane's origin in the middle
	at := held - v.ToPlane(to)
	x := area.W / 2 / fit.Scale * (1 - 1/next.K)
	y := area.H / 2 / fit.Scale * (1 - 1/next.K)
	next.At = complex(math.Min(math.Max(real(at), -x), x), math.Min(math.Max(imag(at), -y), y))
	return next
}
