package capture

import (
	"bytes"
	"context"
	"testing"
)

// BenchmarkPNG makes the formats of PNGs.
func BenchmarkPNG(b *testing.B) {
	for _, format := range []Format{APNG, Frames} {
		for _, id := range []string{"half-moon", "two-bell-buoys"} {
			b.Run(formatted[format].name+"/"+id, func(b *testing.B) {
				take := libraryTake(b, id, nil)
				n := 0
				for b.Loop() {
					var out bytes.Buffer
					if err := take.Write(context.Background(), &out, format, nil); err != nil {
						b.Fatal(err)
					}
					n = out.Len()
				}
				frames := take.Timeline().N
				b.ReportMetric(float64(b.N*frames)/b.Elapsed().Seconds(), "frames/s")
				b.ReportMetric(float64(n)/float64(frames), "bytes/frame")
			})
		}
	}
}
