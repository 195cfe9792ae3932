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
		type pixel struct {
			is, to uint8
			stays  bool
		}
		pixels := make([]pixel, tt.n)
		is := uint8(1)
		var all dots
		gap := 0
		was := func(end int) func(after int) uint8 { return func(after int) uint8 { return pixels[end-1-after].is } }
		for i := range pixels {
			if r.IntN(9) == 0 {
				is = 1 + uint8(r.IntN(1<<tt.bits-1))
			}
			p := pixel{is, is, true}
			if tt.clear {
				p = pixel{stays: true}
			}
			gap++
			if r.Float64() < tt.change {
				p.to, p.stays = 1+uint8(r.IntN(1<<tt.bits-1)), false
				all.stay(gap-1, was(i))
				all.change(p.to)
				gap = 0
			}
			pixels[i] = p
		}
		all.stay(gap, was(tt.n))
		got, err := io.ReadAll(lzw.NewReader(bytes.NewReader(z.pack(all)), lzw.LSB, tt.bits))
		if err != nil || len(got) != tt.n {
			t.Fatalf("%s (seed %d): %d pixels, %v, want %d", tt.name, seed, len(got), err, tt.n)
		}
		for i, c := range got {
			if p := pixels[i]; c != p.to && (c != asBefore || !p.stays) {
				t.Fatalf("%s (seed %d): pixel %d is %d, want %+v", tt.name, seed, i, c, p)
			}
		}
	}
}
