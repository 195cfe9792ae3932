package capture

import (
	"context"
	"fmt"
	"image"
	"io"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/paint"
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
	seen, ground := tally{}, a.paintGround()
	sample := paint.NewLayer(ground)
	all := paint.NewCells(ground.Rect.Size())
	all.Fill()
	matted := image.NewRGBA(ground.Rect)
	var list display.List
	n := min(l.N, sampleFrames)
	for k := range n {
		if err := context.Cause(ctx); err != nil {
			return err
		}
		a.paint(sample, ground, &list, l.Beat(k*l.N/n))
		seen.add(t.matte(matted, Frame{sample.RGBA, all}))
	}
	g := newGIF(w, t.Width, t.Height, seen.palette(), t.Ground == Clear, max(t.Workers, 1))
	clock := l.Clock(perSecond)
	if err := t.EachFrame(ctx, l, tell, func(k int, f Frame) error {
		return g.add(Frame{t.matte(matted, f), f.Changed}, clock.Delay(k))
	}); err != nil {
		return err
	}
	return g.close()
}

// faintest is the least opacity, in 255ths, of what a GIF shows: its pixels are
// either opaque or clear, and the end of a trail is to be seen.
const faintest = 24

// matte returns a frame with each pixel either opaque, on the theme's ground, or
// clear. It is held in dst where it must be another; what of dst has not
// changed stays.
func (t *Take) matte(dst *image.RGBA, f Frame) *image.RGBA {
	if t.Ground != Clear {
		return f.RGBA
	}
	s := t.theme.Stage
	ground := [3]uint32{uint32(s.R), uint32(s.G), uint32(s.B)}
	f.eachRun(func(at, to int) {
		for i := at; i < to; i += 4 {
			px, out := f.Pix[i:i+4:i+4], dst.Pix[i:i+4:i+4]
			a := uint32(px[3])
			if a < faintest {
				copy(out, []byte{0, 0, 0, 0})
				continue
			}
			for k := range 3 {
				out[k] = uint8(min(uint32(px[k])+(ground[k]*(255-a)+127)/255, 255))
			}
			out[3] = 255
		}
	})
	return dst
}
