package paint

import "testing"

// ShowSVG is what an SVG shows, by svgPicture: red, green, blue, opacity,
// multiplied in, 0 to 255.
func ShowSVG(t testing.TB, data []byte, w, h int, scale float64) []float64 {
	t.Helper()
	p := &svgPicture{t: t, w: w, h: h, scale: scale}
	out := make([]float64, 0, 4*w*h)
	for _, px := range p.render(data) {
		out = append(out, px[:]...)
	}
	return out
}
