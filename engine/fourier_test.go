package engine_test

import (
	"math/cmplx"
	"testing"

	"gonum.org/v1/gonum/dsp/fourier"

	"whorlbench/engine"
)

// TestTwoLines: by the definition of the discrete Fourier transform, the
// closed track of R e^{iQθ} + L e^{iPθ} has two lines, at Q and P, of heights
// R and L, and nothing else. The arm turns anticlockwise.
func TestTwoLines(t *testing.T) {
	const (
		n              = 128
		radius, tether = 0.6, 0.45
		armAt, propAt  = 37, -110
	)
	for _, test := range []struct {
		ratio string
		q, p  int
	}{
		{"-3", 1, -3}, {"-2", 1, -2}, {"-1", 1, -1}, {"0", 1, 0}, {"1", 1, 1}, {"2", 1, 2}, {"7", 1, 7},
		{"3/2", 2, 3}, {"-7/3", 3, -7}, {"1/5", 5, 1}, {"-11/6", 6, -11},
	} {
		l := lane(tether, armAt, stroke(circle(radius), "1", test.ratio, "1", "4"))
		l.PropAt = propAt
		cut, err := l.Cut(0, fr("5/7"))
		if err != nil {
			t.Fatal(err)
		}
		for name, l := range map[string]engine.Lane{"whole": l, "cut": cut} {
			track := engine.NewTrack(l)
			round := 4 * float64(test.q) // beats in which it closes
			heads := make([]complex128, n)
			for k := range heads {
				heads[k] = track.At(round * float64(k) / n).Head
			}
			want := make([]complex128, n)
			want[(test.q+n)%n] += cmplx.Rect(radius, rad(armAt))
			want[(test.p+n)%n] += cmplx.Rect(tether, rad(propAt)) // merges with the other when P = Q
			for k, got := range fourier.NewCmplxFFT(n).Coefficients(nil, heads) {
				if got /= n; cmplx.Abs(got-want[k]) > 1e-12 {
					t.Errorf("ratio %s, %s: line %d = %v, want %v", test.ratio, name, k, got, want[k])
				}
			}
		}
	}
}
