package host

import (
	"encoding/binary"
	"slices"
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// written is what the page's script writes: little-endian float64s.
func written(t *testing.T, numbers ...float64) []byte {
	t.Helper()
	raw, err := binary.Append(nil, binary.LittleEndian, numbers)
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

func TestDecodePointers(t *testing.T) {
	raw := written(t,
		1, 0, 10.5, 20.25, 1000.125,
		1, 1, 11, 21, 1004,
		7, 0, -3, 1e4, 1004.5,
		1, 2, 11, 21, 1e12,
		7, 3, 0, 0, 0,
	)
	want := []widget.Pointer{
		{ID: 1, Phase: widget.Down, At: display.Pt{X: 10.5, Y: 20.25}, Time: 1000.125},
		{ID: 1, Phase: widget.Move, At: display.Pt{X: 11, Y: 21}, Time: 1004},
		{ID: 7, Phase: widget.Down, At: display.Pt{X: -3, Y: 1e4}, Time: 1004.5},
		{ID: 1, Phase: widget.Up, At: display.Pt{X: 11, Y: 21}, Time: 1e12},
		{ID: 7, Phase: widget.Cancel},
	}
	if got := DecodePointers(nil, raw); !slices.Equal(got, want) {
		t.Errorf("DecodePointers = %+v, want %+v", got, want)
	}
	before := widget.Pointer{ID: 42}
	if got := DecodePointers([]widget.Pointer{before}, raw); got[0] != before || !slices.Equal(got[1:], want) {
		t.Errorf("DecodePointers after one = %+v, want it kept and the rest appended", got)
	}
	const event = 5 * 8
	for n := range raw {
		if got := DecodePointers(nil, raw[:n]); !slices.Equal(got, want[:n/event]) {
			t.Errorf("DecodePointers(%d bytes) = %d events, want the %d whole ones", n, len(got), n/event)
		}
	}
	buf := DecodePointers(nil, raw)
	if got := testing.AllocsPerRun(20, func() { buf = DecodePointers(buf[:0], raw) }); got != 0 {
		t.Errorf("allocations with room to spare = %v, want 0", got)
	}
}
