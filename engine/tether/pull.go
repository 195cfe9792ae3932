// Package tether asks whether a real tether would do what a pattern draws.
package tether

import "whorlbench/engine"

// Pull returns what the ideal tether would carry at a moment, in multiples of
// the head's weight, at a tempo in beats a minute: ((z″ − g)·(h − z))/(L g).
// Negative: a tether cannot push, so there it would be slack. Impulses at
// seams are left out.
func Pull(l engine.Lane, at engine.State, tempo float64) float64 {
	perSecond := tempo / 60
	acc := engine.Product(at.HeadAcc, complex(perSecond*perSecond, 0)) - l.Down()
	in := at.Hand - at.Head
	dot := float64(real(acc)*real(in)) + float64(imag(acc)*imag(in))
	return dot / (l.Tether * engine.Gravity)
}
