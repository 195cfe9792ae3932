package film

import (
	"image"
	"testing"

	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/paint"
)

// frameOf is a frame of pixels (red, green, blue, opacity) that have all changed.
func frameOf(width int, rgba []byte) capture.Frame {
	m := &image.RGBA{Pix: rgba, Stride: 4 * width, Rect: image.Rect(0, 0, width, len(rgba)/4/width)}
	f := capture.Frame{RGBA: m, Changed: paint.NewCells(m.Rect.Size())}
	f.Changed.Fill()
	return f
}

// TestToYUV: the 75 % and 100 % colour bars have the code values that are
// printed with them (SMPTE RP 219 for BT.709, 8 bits, from memory; they follow
// from BT.709's items 3 and 5 by hand).
func TestToYUV(t *testing.T) {
	for _, tt := range []struct{ rgb, want [3]byte }{
		{[3]byte{255, 255, 255}, [3]byte{235, 128, 128}},
		{[3]byte{0, 0, 0}, [3]byte{16, 128, 128}},
		{[3]byte{255, 0, 0}, [3]byte{63, 102, 240}},
		{[3]byte{0, 255, 0}, [3]byte{173, 42, 26}},
		{[3]byte{0, 0, 255}, [3]byte{32, 240, 118}},
		{[3]byte{191, 191, 0}, [3]byte{168, 44, 136}},
		{[3]byte{0, 191, 191}, [3]byte{145, 147, 44}},
	} {
		var rgba []byte
		for range 4 {
			rgba = append(rgba, tt.rgb[0], tt.rgb[1], tt.rgb[2], 255)
		}
		got := make([]byte, 6)
		ToYUV(got, frameOf(2, rgba))
		if got[0] != got[3] || [3]byte{got[0], got[4], got[5]} != tt.want {
			t.Errorf("%v becomes %v, want %v", tt.rgb, got, tt.want)
		}
	}
}

// TestToYUVMixed: of a block of four colours each has its own light, and the
// differences are those of the middle of them, by BT.709's formulas in doubles.
func TestToYUVMixed(t *testing.T) {
	rgba := []byte{255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255, 10, 200, 90, 255}
	got := make([]byte, 6)
	ToYUV(got, frameOf(2, rgba))
	// Light by hand: 63.1, 172.6, 31.8; the fourth 16 + 219/255·(2.126+143.04+6.498) = 146.3.
	// The middle is 66.25, 113.75, 86.25, its light 101.66: blue 128 + 224/255·(86.25−101.66)/1.8556 = 120.7,
	// red 128 + 224/255·(66.25−101.66)/1.5748 = 108.2.
	if want := [6]byte{63, 173, 32, 146, 121, 108}; [6]byte(got) != want {
		t.Errorf("%v, want %v", got, want)
	}
}

// BenchmarkToYUV turns a frame of 720 by 720 pixels, a tenth of it not plain.
func BenchmarkToYUV(b *testing.B) {
	const side = 720
	rgba, dst := make([]byte, 4*side*side), make([]byte, side*side*3/2)
	for i := range rgba {
		if rgba[i] = 240; i%3600 < 360 {
			rgba[i] = byte(i * 7)
		}
	}
	b.SetBytes(side * side)
	f := frameOf(side, rgba)
	for b.Loop() {
		ToYUV(dst, f)
	}
}
