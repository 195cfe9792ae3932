package capture

import (
	"bytes"
	"compress/lzw"
	"io"
	"math/rand/v2"
	"testing"
)

// TestLZW: the standard library's reader finds in the codes what is to be
// seen, whatever the pixels are, over many times as many codes as there may be.
func TestLZW(t *testing.T) {
	const seed = 5
	r := rand.New(rand.NewPCG(seed, 0))
	z := new(packer)
	for _, tt := range []struct {
		name    string
		bits, n int
		change  float64
		clear   bool
	}{
		{"one pixel", 2, 1, 1, false}, {"all stays", 8, 100_000, 0, false}, {"all changes", 8, 20_000, 1, false},
		{"some change", 8, 50_000, 0.1, false}, {"few colours", 2, 50_000, 0.3, false}, {"on nothing", 5, 50_000, 0.2, true},
	} {
		z.bits = tt.bits
		dots := make([]dot, tt.n)
		is := uint8(1)
		for i := range dots {
			if r.IntN(9) == 0 {
				is = 1 + uint8(r.IntN(1<<tt.bits-1))
			}
			d := dot{is: is, to: is, stays: 1}
			if tt.clear {
				d = dot{stays: 1}
			}
			if r.Float64() < tt.change {
				d.to, d.stays = 1+uint8(r.IntN(1<<tt.bits-1)), 0
			}
			dots[i] = d
		}
		got, err := io.ReadAll(lzw.NewReader(bytes.NewReader(z.pack(dots)), lzw.LSB, tt.bits))
		if err != nil || len(got) != len(dots) {
			t.Fatalf("%s (seed %d): %d pixels, %v, want %d", tt.name, seed, len(got), err, len(dots))
		}
		for i, c := range got {
			if d := dots[i]; c != d.to && (c != asBefore || d.stays == 0) {
				t.Fatalf("%s (seed %d): pixel %d is %d, want %+v", tt.name, seed, i, c, d)
			}
		}
	}
}
