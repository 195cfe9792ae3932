package capture

import (
	"io"
	"testing"
)

// BenchmarkGIF makes GIFs of frames that are painted already, palette and all.
func BenchmarkGIF(b *testing.B) {
	for _, id := range []string{"half-moon", "two-bell-buoys"} {
		b.Run(id, func(b *testing.B) {
			take := libraryTake(b, id, nil)
			frames := keptFrames(b, take, take.Timeline())
			b.ReportAllocs()
			for b.Loop() {
				packGIF(b, io.Discard, take, frames, 1)
			}
			b.ReportMetric(float64(b.N*len(frames))/b.Elapsed().Seconds(), "frames/s")
		})
	}
}

// BenchmarkPaint paints frames.
func BenchmarkPaint(b *testing.B) {
	take := libraryTake(b, "two-bell-buoys", nil)
	l := take.Timeline()
	for b.Loop() {
		if len(allFrames(b, take, l)) != l.N {
			b.Fatal("frames are missing")
		}
	}
	b.ReportMetric(float64(b.N*l.N)/b.Elapsed().Seconds(), "frames/s")
}
