package follow_test

import (
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/follow"
)

// long is a lane of n pieces, C-caps in a row.
func long(n int) engine.Lane {
	l := lane(0.6, 90, 90)
	for k := range n {
		p := stroke(circle(0.6), "1", "1", "1/2", "2")
		if k%2 == 1 {
			p = stroke(circle(0.6), "-1", "3", "1/2", "2")
		}
		l.Pieces = append(l.Pieces, p)
	}
	return l
}

func BenchmarkAfter(b *testing.B) {
	for _, test := range []struct {
		name string
		lane engine.Lane
	}{
		{"50 pieces", long(50)},
		{"one piece", lane(0.6, 90, 90, stroke(circle(0.3), "1", "1", "1/2", "2"))},
		{"sevenths", lane(0.6, 90, 90, stroke(circle(0.3), "1", "2/7", "1/2", "2"), stroke(circle(0.5), "1", "1/9", "1/2", "2"))},
	} {
		b.Run(test.name, func(b *testing.B) {
			p := pattern(test.lane)
			track := engine.NewTrack(test.lane)
			b.ReportAllocs()
			for b.Loop() {
				follow.After(p, track, 0)
			}
		})
	}
}
