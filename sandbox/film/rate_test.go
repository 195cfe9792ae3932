package film

import (
	"context"
	"os"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/words"
)

// BenchmarkFrames paints a film's frames of 720 by 720 pixels and brings them
// to their colours: all that is done for an encoder.
func BenchmarkFrames(b *testing.B) {
	data, err := os.ReadFile("../../presets/library/c-caps/half-moon.toml")
	if err != nil {
		b.Fatal(err)
	}
	p, err := presets.Decode("half-moon.toml", data)
	if err != nil {
		b.Fatal(err)
	}
	o := capture.Defaults()
	o.Width, o.Height = 720, 720
	take, err := capture.New(p, o, &words.English)
	if err != nil {
		b.Fatal(err)
	}
	dst := make([]byte, 720*720*3/2)
	n := 0
	for b.Loop() {
		if err := take.EachFrame(context.Background(), take.Timeline(), nil, func(_ int, f capture.Frame) error {
			ToYUV(dst, f)
			n++
			return nil
		}); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(float64(n)/b.Elapsed().Seconds(), "frames/s")
}
