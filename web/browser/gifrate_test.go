//go:build browser

package browser

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"image"
	"os"
	"os/exec"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/capture/outside"
	"whorlbench/sandbox/words"
)

// TestGIFRate measures, it judges nothing: how many frames a second a GIF is
// made at in the browser, painting and all, from the press of the button to the
// file, next to ffmpeg with the same frames painted already; of a program that has
// just come and of one that the browser has compiled to the end. `make
// bench-capture` runs it.
func TestGIFRate(t *testing.T) {
	if os.Getenv("WHORLBENCH_CAPTURE") == "" {
		t.Skip("measures only for make bench-capture")
	}
	const side, rounds = 360, 10
	o := capture.Defaults()
	o.Width, o.Height, o.Rounds = side, side, rounds
	var frames []*image.RGBA
	p, err := presets.First().Pattern()
	must(t, err)
	take, err := capture.New(p, o, &words.English)
	must(t, err)
	must(t, take.EachFrame(context.Background(), take.Timeline(), nil, func(_ int, f capture.Frame) error {
		frames = append(frames, &image.RGBA{Pix: bytes.Clone(f.Pix), Stride: f.Stride, Rect: f.Rect})
		return nil
	}))
	v := newVisit(t, desk)
	v.pause()
	v.openFilm()
	v.wishes(map[string]any{"format": "gif", "size": "own", "width": side, "height": side, "fps": "25", "ground": "theme", "slow": "1", "length": "own", "rounds": rounds})
	v.wait(`document.getElementById("film-about").textContent.includes(` + quote(fmt.Sprint(len(frames))) + `)`)
	first, _ := v.timed()
	v.wishes(map[string]any{"format": "gif"}) // the sheet forgets what was made
	second, _ := v.timed()
	_, wall, _, err := outside.GIF(frames)
	if errors.Is(err, exec.ErrNotFound) {
		t.Skip("ffmpeg is not here")
	}
	must(t, err)
	n, theirs := float64(len(frames)), wall.Seconds()
	t.Logf("%.0f frames of %d by %d: %.1f a second from the button to the file, the second time %.1f; ffmpeg %.1f with painted ones: %.2f and %.2f times as fast",
		n, side, side, n/first, n/second, n/theirs, theirs/first, theirs/second)
}
