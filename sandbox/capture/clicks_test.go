package capture

import (
	"encoding/binary"
	"testing"
)

// TestClicks: at 120 beats a minute a beat is half a second (common practice),
// which is 24000 of 48000 samples; the round, joins and beats sound different.
func TestClicks(t *testing.T) {
	for _, tt := range []struct {
		slow   string
		starts []int
	}{
		{"1", []int{0, 24_000, 48_000, 72_000}},
		{"2", []int{0, 48_000, 96_000, 144_000}},
		{"1/3", []int{0, 8000, 16_000, 24_000}},
	} {
		take := libraryTake(t, "half-moon", func(o *Options) { o.Slow = f(tt.slow) })
		data, err := take.Clicks()
		if err != nil {
			t.Fatal(err)
		}
		if want := 2 * 4 * tt.starts[1]; len(data) != want {
			t.Errorf("slow %s: %d bytes, want %d", tt.slow, len(data), want)
		}
		sample := func(i int) int { return int(int16(binary.LittleEndian.Uint16(data[2*i:]))) }
		for _, at := range tt.starts {
			if sample(at) < 20_000 {
				t.Errorf("slow %s: sample %d is %d, want the beginning of a click", tt.slow, at, sample(at))
			}
			if at > 0 && (sample(at-1) > 500 || sample(at-1) < -500) {
				t.Errorf("slow %s: sample %d before a click is %d, want quiet", tt.slow, at-1, sample(at-1))
			}
		}
		// The first half of a wave of 1000, 1500, 2000 Hz: a beat, a join, a round.
		for beat, half := range []int{12, 24, 16, 24} {
			i := tt.starts[beat]
			for sample(i) > 0 {
				i++
			}
			if n := 2 * (i - tt.starts[beat]); n < half-1 || n > half+1 {
				t.Errorf("slow %s: beat %d falls below nothing after %d half samples, want about %d", tt.slow, beat, n, half)
			}
		}
	}
}
