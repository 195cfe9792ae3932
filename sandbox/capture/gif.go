package capture

import (
	"context"
	"fmt"
	"image"
	"io"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/words"
)

// sampleFrames is how many frames of a loop a palette is made from.
const sampleFrames = 12

// gifTimeline returns a GIF's frames: no more than have two hundredths of a
// second each, which is the least that is shown as it is.
func (t *Take) gifTimeline() (Timeline, error) {
	if frac.Int(mostGIFFPS).Less(t.FPS) {
		return Timeline{}, fmt.Errorf(t.words.Capture.GIFRate, words.Value(t.FPS), mostGIFFPS)
	}
	l := t.Timeline()
	l.N = max(min(l.N, int(l.Clock(perSecond).ticks/2)), 1)
	return l, nil
}

// perSecond is how many ticks of a GIF's clock there are.
const perSecond = 100

// TimelineOf returns the frames that a loop of a format has, or why it cannot
// have them.
func (t *Take) TimelineOf(f Format) (Timeline, error) {
	if f == GIF {
		return t.gifTimeline()
	}
	return t.Timeline(), nil
}

// gif writes the loop as a GIF that plays for ever.
func (t *Take) gif(ctx context.Context, w io.Writer, tell Progress) error {
	l, err := t.gifTimeline()
	if err != nil {
		return err
	}
	a, err := t.artist()
	if err != nil {
		return err
	}
	seen := tally{}
	m := image.NewRGBA(image.Rect(0, 0, t.Width, t.Height))
	var list display.List
	n := min(l.N, sampleFrames)
	for k := range n {
		if err := context.Cause(ctx); err != nil {
			return err
		}
		a.paint(m, &list, l.Beat(k*l.N/n))
		t.matte(m)
		seen.add(m)
	}
	g := newGIF(w, t.Width, t.Height, seen.palette(), t.Ground == Clear, max(t.Workers, 1))
	clock := l.Clock(perSecond)
	if err := t.EachFrame(ctx, l, tell, func(k int, m *image.RGBA) error {
		t.matte(m)
		return g.add(m, clock.Delay(k))
	}); err != nil {
		return err
	}
	return g.close()
}

// faintest is the least opacity, in 255ths, of what a GIF shows: its pixels are
// either opaque or clear, and the end of a trail is to be seen.
const faintest = 24

// matte makes each pixel of a frame without a ground either opaque, on the
// theme's ground, or clear.
func (t *Take) matte(m *image.RGBA) {
	if t.Ground != Clear {
		return
	}
	s := t.theme.Stage
	ground := [3]uint32{uint32(s.R), uint32(s.G), uint32(s.B)}
	for i := 0; i < len(m.Pix); i += 4 {
		px := m.Pix[i : i+4 : i+4]
		a := uint32(px[3])
		if a < faintest {
			copy(px, []byte{0, 0, 0, 0})
			continue
		}
		for k := range 3 {
			px[k] = uint8(min(uint32(px[k])+(ground[k]*(255-a)+127)/255, 255))
		}
		px[3] = 255
	}
}
