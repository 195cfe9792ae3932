package film

import "testing"

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
		ToYUV(got, rgba, 2, 2)
		if got[0] != got[3] || [3]byte{got[0], got[4], got[5]} != tt.want {
			t.Errorf("%v becomes %v, want %v", tt.rgb, got, tt.want)
		}
	}
}
