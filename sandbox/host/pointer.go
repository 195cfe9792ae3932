package host

import (
	"encoding/binary"
	"math"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// pointerNumbers is how many float64s the page writes for each pointer event:
// identifier, phase, x, y, time.
const pointerNumbers = 5

// DecodePointers appends the events that the page has written as
// little-endian float64s to dst.
func DecodePointers(dst []widget.Pointer, raw []byte) []widget.Pointer {
	const size = 8
	num := func(at int) float64 {
		return math.Float64frombits(binary.LittleEndian.Uint64(raw[at*size:]))
	}
	for i := 0; (i+pointerNumbers)*size <= len(raw); i += pointerNumbers {
		dst = append(dst, widget.Pointer{
			ID:    int(num(i)),
			Phase: widget.Phase(num(i + 1)),
			At:    display.Pt{X: num(i + 2), Y: num(i + 3)},
			Time:  num(i + 4),
		})
	}
	return dst
}
