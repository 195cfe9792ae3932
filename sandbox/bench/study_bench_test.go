package bench_test

import (
	"testing"
	"time"

	"whorlbench/engine"
	"whorlbench/sandbox/session"
)

// BenchmarkStudyInAFrame holds the longest step of the study of fifty pieces in
// two hands against the making of one frame of the bench: what a frame is held
// up by at the most.
func BenchmarkStudyInAFrame(b *testing.B) {
	t := &testing.T{}
	r := newRig(t, phone, "half-moon")
	l := r.s.Pattern().Lanes[0]
	for len(l.Pieces) < 50 {
		l.Pieces = append(l.Pieces, l.Pieces[:2]...)
	}
	p := r.s.Pattern()
	p.Lanes = []engine.Lane{l, session.SecondHand(l, session.SplitOpposite)}
	if err := r.s.Open(p); err != nil {
		b.Fatal(err)
	}
	var frame, longest time.Duration
	for b.Loop() {
		r.b.Answer("tempo", []string{"119", "121"}[int(r.now)%2], 0)
		r.now++
		from := time.Now()
		r.b.Draw()
		frame += time.Since(from)
		for more := true; more; {
			from := time.Now()
			more = r.b.Learn()
			longest = max(longest, time.Since(from))
		}
	}
	mean := frame / time.Duration(b.N)
	b.ReportMetric(float64(longest)/float64(mean), "step/frame")
	b.ReportMetric(mean.Seconds()*1e3, "ms-frame")
	b.ReportMetric(longest.Seconds()*1e3, "ms-step")
}
