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
				seen := tally{}
				for k := range sampleFrames {
					seen.add(frames[k*len(frames)/sampleFrames].RGBA)
				}
				g := newGIF(io.Discard, take.Width, take.Height, seen.palette(), false, 1)
				for _, f := range frames {
					if err := g.add(f, 4); err != nil {
						b.Fatal(err)
					}
				}
				if err := g.close(); err != nil {
					b.Fatal(err)
				}
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
