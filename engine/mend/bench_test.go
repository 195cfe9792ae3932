package mend_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/mend"
)

// long makes a lane of n pieces that closes after the rounds given.
func long(n int, rounds int64) engine.Lane {
	l := engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: 90, PropAt: 90}
	for i := range n {
		p := stroke(circle(0.5), "1", "1", "1/2", "2")
		if i%2 == 1 {
			p = stroke(circle(0.5), "-1", "3", "1/2", "2")
		}
		l.Pieces = append(l.Pieces, p)
	}
	last := &l.Pieces[n-1]
	last.Prop = last.Prop.Add(frac.New(2, rounds))
	return l
}

func BenchmarkOf(b *testing.B) {
	for _, n := range []int{2, 4, 8, 50} {
		for _, rounds := range []int64{1, 3, 64} {
			b.Run(fmt.Sprintf("%dpieces/%drounds", n, rounds), func(b *testing.B) {
				l := long(n, rounds)
				for b.Loop() {
					mend.Of(l, who, 90, 0)
				}
			})
		}
	}
}

func BenchmarkFirst(b *testing.B) {
	l := long(50, 1)
	for b.Loop() {
		for range mend.Each(l, who, 90, 0) {
			break
		}
	}
}

func BenchmarkSmoothLane(b *testing.B) {
	rnd := lanes{rand.New(rand.NewPCG(1, 0))}
	for _, n := range []int{4, 50} {
		l := long(n, 1)
		for i := range l.Pieces {
			l.Pieces[i].Beats = frac.Int(int64(1 + rnd.IntN(3)))
		}
		b.Run(fmt.Sprintf("%dpieces", n), func(b *testing.B) {
			for b.Loop() {
				mend.SmoothLane(l, who, 90)
			}
		})
	}
}
