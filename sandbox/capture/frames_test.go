package capture

import (
	"bytes"
	"image"
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
)

// TestFrames: a frame is the picture that is painted of its beat at once, as
// a still is, and differs from the one before only where it says so, however
// many paint.
func TestFrames(t *testing.T) {
	for _, tt := range []struct {
		id      string
		workers int
		change  func(o *Options)
	}{
		{"half-moon", 1, nil},
		{"two-bell-buoys", 3, func(o *Options) {
			o.Night, o.Show.Names, o.Show.Title, o.Show.Beats, o.Show.Timing, o.Show.Caption = true, true, true, true, true, "Split time"
		}},
		{"starfish", 2, func(o *Options) { o.Ground, o.Show.Beats, o.Show.Taken = Clear, true, true }},
		{"swan", 2, func(o *Options) { o.Show.Title, o.Show.Trail, o.Rounds = true, scene.NoTrail, 2 }},
	} {
		take := libraryTake(t, tt.id, func(o *Options) {
			small(o)
			if tt.change != nil {
				tt.change(o)
			}
		})
		take.Workers = tt.workers
		l := take.Timeline()
		a, err := take.artist()
		if err != nil {
			t.Fatal(err)
		}
		var was *image.RGBA
		left := 0
		for k, f := range keptFrames(t, take, l) {
			var list display.List
			list.Reset(take.ground())
			a.draw(&list, l.Beat(k))
			want := image.NewRGBA(f.Rect)
			a.pixels.Paint(want, &list, take.unit())
			if !bytes.Equal(f.Pix, want.Pix) {
				t.Errorf("%s: frame %d is not what is painted at once", tt.id, k)
			}
			changed := make([]bool, len(f.Pix))
			f.eachRun(func(from, to int) {
				for i := from; i < to; i++ {
					changed[i] = true
				}
			})
			for i, may := range changed {
				if !may {
					left++
					if was == nil || was.Pix[i] != f.Pix[i] {
						t.Fatalf("%s: frame %d has changed at pixel %d, %d without saying so", tt.id, k, i%f.Stride/4, i/f.Stride)
					}
				}
			}
			was = f.RGBA
		}
		if all := l.N * len(was.Pix); left < all/2 {
			t.Errorf("%s: %d of %d values are said to stay, want most", tt.id, left, all)
		}
	}
}
