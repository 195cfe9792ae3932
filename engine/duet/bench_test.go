package duet_test

import (
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/duet"
)

// Fifty pieces a hand: even and eased, wanted in a few milliseconds.
func BenchmarkFifty(b *testing.B) {
	for _, test := range []struct {
		name string
		law  engine.Law
	}{{"even", engine.Even}, {"eased", engine.EaseBoth}} {
		b.Run(test.name, func(b *testing.B) {
			l, r := engine.NewTrack(fifty(engine.Left, test.law, 1)), engine.NewTrack(fifty(engine.Right, test.law, -1))
			for b.Loop() {
				duet.Read(l, r)
			}
		})
	}
}
