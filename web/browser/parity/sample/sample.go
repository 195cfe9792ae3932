// Package sample takes from a pattern what native code and WebAssembly must
// agree about.
package sample

import "whorlbench/engine"

// Of returns places, velocities and accelerations of hand and head at n beats
// of each lane.
func Of(p engine.Pattern, n int) (out []float64) {
	const step = 0.37 // beats; no whole part of a beat, so that it meets no seam by design
	for _, l := range p.Lanes {
		t := engine.NewTrack(l)
		for k := range n {
			s := t.At(float64(k) * step)
			for _, z := range []complex128{s.Hand, s.Head, s.HandVel, s.HeadVel, s.HandAcc, s.HeadAcc} {
				out = append(out, real(z), imag(z))
			}
		}
	}
	return out
}
