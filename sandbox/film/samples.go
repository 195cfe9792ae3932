package film

import (
	"whorlbench/sandbox/capture"
)

// Sample is a frame as an encoder has packed it, in the order of the frames.
type Sample struct {
	Data, Alpha []byte // Alpha: its opacity, as a frame of its own
	Key         bool
}

// Track is a film's pictures with all that a container says of them.
type Track struct {
	Width, Height int
	Timeline      capture.Timeline
	Config        []byte // the decoder's, of H.264: an AVC decoder configuration record
	Samples       []Sample
	Sound         *Sound // nil: silent
}

// clock returns when frame k begins in so many ticks a second, and how long
// frames before it last.
func (t *Track) clock(perSecond int64) func(k int) int64 {
	c := t.Timeline.Clock(perSecond)
	return func(k int) int64 { return c.At(int64(k)) }
}
