//go:build unix

package capture

import (
	"bytes"
	"errors"
	"image"
	"os"
	"os/exec"
	"syscall"
	"testing"
	"time"

	"whorlbench/sandbox/capture/outside"
)

func cpu(r *syscall.Rusage) time.Duration {
	return time.Duration(r.Utime.Nano() + r.Stime.Nano())
}

// TestAgainstFFmpeg measures GIFs next to those that ffmpeg's palettegen and
// paletteuse make of the same frames, as they are without options. It judges
// nothing, and runs only where it is asked for: make bench-capture.
func TestAgainstFFmpeg(t *testing.T) {
	if os.Getenv("WHORLBENCH_CAPTURE") == "" {
		t.Skip("measures only for make bench-capture")
	}
	night := func(o *Options) { o.Night, o.Show.Names, o.Show.Title, o.Show.Beats = true, true, true, true }
	for _, tt := range []struct {
		id     string
		change func(o *Options)
	}{{"half-moon", nil}, {"swan", nil}, {"four-corners", nil}, {"starfish", nil}, {"two-bell-buoys", night}, {"lock-gates", night},
		{"half-moon", func(o *Options) { o.Width, o.Height = 720, 720 }},
	} {
		take := libraryTake(t, tt.id, tt.change)
		l, err := take.gifTimeline()
		if err != nil {
			t.Fatal(err)
		}
		kept, frames := keptFrames(t, take, l), []*image.RGBA{}
		for _, f := range kept {
			frames = append(frames, f.RGBA)
		}
		var before, after syscall.Rusage
		var out bytes.Buffer
		const times = 3
		_ = syscall.Getrusage(syscall.RUSAGE_SELF, &before)
		begin := time.Now()
		for range times {
			out.Reset()
			packGIF(t, &out, take, kept, 2)
		}
		wall := time.Since(begin) / times
		_ = syscall.Getrusage(syscall.RUSAGE_SELF, &after)
		own := (cpu(&after) - cpu(&before)) / times

		data, theirWall, theirCPU, err := outside.GIF(frames)
		if errors.Is(err, exec.ErrNotFound) {
			t.Skip("ffmpeg is not here")
		} else if err != nil {
			t.Fatal(err)
		}
		ours, _ := shownGIF(t, out.Bytes())
		other, _ := shownGIF(t, data)
		t.Logf("%s %dx%d, %d frames: bytes %d to %d (%.2f), mean off %.4f to %.4f, CPU %v to %v (%.1f times as fast), wall %v to %v (%.1f)",
			tt.id, take.Width, take.Height, len(frames), out.Len(), len(data), float64(out.Len())/float64(len(data)), meanOff(ours, frames), meanOff(other, frames),
			own.Round(time.Millisecond), theirCPU.Round(time.Millisecond), theirCPU.Seconds()/own.Seconds(), wall.Round(time.Millisecond), theirWall.Round(time.Millisecond), theirWall.Seconds()/wall.Seconds())
	}
}
