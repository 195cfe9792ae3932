package capture

import (
	"bytes"
	"context"
	"image"
	"image/draw"
	"image/gif"
	"io"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/paint"
	"whorlbench/sandbox/words"
)

// libraryTake is a built-in pattern with options changed.
func libraryTake(t testing.TB, id string, change func(o *Options)) *Take {
	t.Helper()
	for _, e := range presets.Library() {
		if e.ID != id {
			continue
		}
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		o := Defaults()
		if change != nil {
			change(&o)
		}
		take, err := New(p, o, &words.English)
		if err != nil {
			t.Fatal(err)
		}
		return take
	}
	t.Fatalf("no pattern %s in the library", id)
	return nil
}

// keptFrames are the frames of a loop, each its own.
func keptFrames(t testing.TB, take *Take, l Timeline) []Frame {
	t.Helper()
	var out []Frame
	err := take.EachFrame(context.Background(), l, nil, func(_ int, f Frame) error {
		changed := paint.NewCells(f.Rect.Size())
		changed.Copy(f.Changed)
		out = append(out, Frame{f.clone(), changed})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// packGIF writes a take's frames as a GIF, palette and all, with so many
// workers.
func packGIF(t testing.TB, w io.Writer, take *Take, frames []Frame, workers int) {
	t.Helper()
	seen := tally{}
	for k := range sampleFrames {
		seen.add(frames[k*len(frames)/sampleFrames].RGBA)
	}
	g := newGIF(w, take.Width, take.Height, seen.palette(), false, workers)
	for _, f := range frames {
		if err := g.add(f, 4); err != nil {
			t.Fatal(err)
		}
	}
	if err := g.close(); err != nil {
		t.Fatal(err)
	}
}

// allFrames are the pictures of a loop's frames.
func allFrames(t testing.TB, take *Take, l Timeline) []*image.RGBA {
	t.Helper()
	var out []*image.RGBA
	for _, f := range keptFrames(t, take, l) {
		out = append(out, f.RGBA)
	}
	return out
}

// whollyNew is a picture as a frame of which all may have changed.
func whollyNew(m *image.RGBA) Frame {
	f := Frame{m, paint.NewCells(m.Rect.Size())}
	f.Changed.Fill()
	return f
}

// shownGIF are the pictures that a GIF shows, one after the other, as the
// standard library's decoder has them.
func shownGIF(t testing.TB, data []byte) ([]*image.RGBA, *gif.GIF) {
	t.Helper()
	g, err := gif.DecodeAll(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	screen := image.NewRGBA(image.Rect(0, 0, g.Config.Width, g.Config.Height))
	var out []*image.RGBA
	for k, m := range g.Image {
		draw.Draw(screen, m.Rect, m, m.Rect.Min, draw.Over)
		c := *screen
		c.Pix = bytes.Clone(screen.Pix)
		out = append(out, &c)
		if g.Disposal[k] == gif.DisposalBackground {
			draw.Draw(screen, m.Rect, image.Transparent, image.Point{}, draw.Src)
		}
	}
	return out, g
}

// meanOff is how far two series of pictures are apart, in 255ths, in the mean
// over all channels of colour.
func meanOff(a, b []*image.RGBA) float64 {
	sum, n := 0.0, 0
	for k := range a {
		for i := range a[k].Pix {
			if i%4 != 3 {
				sum += max(float64(a[k].Pix[i])-float64(b[k].Pix[i]), float64(b[k].Pix[i])-float64(a[k].Pix[i]))
				n++
			}
		}
	}
	return sum / float64(n)
}
