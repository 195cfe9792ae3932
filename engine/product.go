package engine

// Go may round a product and the sum it goes into as one operation on a
// processor that can, and WebAssembly cannot. So that a pattern gives the same
// numbers everywhere, each product that is added to something stands in an
// explicit float64(...), which is rounded by itself, here and in every room on
// engine. The sines and cosines of package math are still its own: where it
// fuses, they may differ in the last place, which 1e-12 allows.

// Product returns a·b with each of its four products rounded by itself, which
// the language's own complex product does not promise.
func Product(a, b complex128) complex128 {
	return complex(
		float64(real(a)*real(b))-float64(imag(a)*imag(b)),
		float64(real(a)*imag(b))+float64(imag(a)*real(b)),
	)
}

// polar returns r·e^{iθ} from θ's sine and cosine.
func polar(r, sin, cos float64) complex128 {
	return complex(float64(r*cos), float64(r*sin))
}

// scale returns k·z.
func scale(k float64, z complex128) complex128 {
	return complex(float64(k*real(z)), float64(k*imag(z)))
}

// turnBy returns x + iy turned by the angle of a sine and cosine.
func turnBy(x, y, sin, cos float64) complex128 {
	return complex(float64(x*cos)-float64(y*sin), float64(x*sin)+float64(y*cos))
}
