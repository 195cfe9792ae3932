package main

import (
	"bytes"
	"context"
	"errors"
	"image"
	"image/gif"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"whorlbench/sandbox/capture/outside"
)

const halfMoon = `format = 1
title = "Half-moon"
tempo = 120
[[hand]]
side = "right"
[[hand.piece]]
arm = 1
prop = 1
cycles = 0.5
beats = 2
[[hand.piece]]
arm = -1
prop = 3
cycles = 0.5
beats = 2
`

// rendered runs render in a folder of its own, on half-moon.toml.
func rendered(t *testing.T, ctx context.Context, out io.Writer, args ...string) (status int, errs string) {
	t.Helper()
	if err := os.WriteFile("half-moon.toml", []byte(halfMoon), 0o600); err != nil {
		t.Fatal(err)
	}
	var said bytes.Buffer
	status = run(ctx, append(append([]string{"render", "--size", "64x64"}, args...), "half-moon.toml"), strings.NewReader(""), out, &said)
	return status, said.String()
}

// left are the files in a folder but for the pattern.
func left(t *testing.T) (names []string) {
	t.Helper()
	files, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if f.Name() != "half-moon.toml" {
			names = append(names, f.Name())
		}
	}
	return names
}

// TestRenderFormats: each format makes one file that its reader takes, of the
// size that was asked for.
func TestRenderFormats(t *testing.T) {
	picture := func(data []byte) (image.Config, error) { return png.DecodeConfig(bytes.NewReader(data)) }
	for format, tt := range map[string]struct {
		name string
		read func(data []byte) (image.Config, error)
		w, h int
	}{
		"png":        {"half-moon-64x64.png", picture, 64, 64},
		"strobe":     {"half-moon-strobe-64x64.png", picture, 64, 64},
		"sheet":      {"half-moon-sheet-281x74.png", picture, 4*64 + 5*5, 64 + 2*5}, // four beats, gaps of 12·64/150
		"apng":       {"half-moon-apng-64x64-25fps.png", picture, 64, 64},
		"gif":        {"half-moon-64x64-25fps.gif", func(data []byte) (image.Config, error) { return gif.DecodeConfig(bytes.NewReader(data)) }, 64, 64},
		"svg":        {"half-moon-64x64.svg", nil, 0, 0},
		"sheet-svg":  {"half-moon-sheet-281x74.svg", nil, 0, 0},
		"strobe-svg": {"half-moon-strobe-64x64.svg", nil, 0, 0},
		"frames":     {"half-moon-frames-64x64-25fps.zip", nil, 0, 0},
	} {
		t.Run(format, func(t *testing.T) {
			t.Chdir(t.TempDir())
			var out bytes.Buffer
			status, errs := rendered(t, context.Background(), &out, "--format", format)
			if status != fine || errs != "" || out.String() != tt.name+"\n" {
				t.Fatalf("status %d, %q, %q, want 0, the name %s, nothing", status, out.String(), errs, tt.name)
			}
			if got := left(t); len(got) != 1 || got[0] != tt.name {
				t.Fatalf("files %v, want %s", got, tt.name)
			}
			data, err := os.ReadFile(tt.name)
			if err != nil {
				t.Fatal(err)
			}
			if tt.read != nil {
				if c, err := tt.read(data); err != nil || c.Width != tt.w || c.Height != tt.h {
					t.Errorf("%dx%d, %v, want %dx%d", c.Width, c.Height, err, tt.w, tt.h)
				}
			}
			// The same on standard output.
			out.Reset()
			if status, errs := rendered(t, context.Background(), &out, "--format", format, "-o", "-"); status != fine || errs != "" || !bytes.Equal(out.Bytes(), data) {
				t.Errorf("on standard output: status %d, %q, %d bytes, want the file's %d", status, errs, out.Len(), len(data))
			}
		})
	}
}

var errGone = errors.New("broken pipe")

type goneAfter int

func (n *goneAfter) Write(p []byte) (int, error) {
	if *n -= goneAfter(len(p)); *n < 0 {
		return 0, &os.PathError{Op: "write", Path: "|1", Err: errGone}
	}
	return len(p), nil
}

// TestRenderPipeGone: a reader that leaves is told of in one line.
func TestRenderPipeGone(t *testing.T) {
	t.Chdir(t.TempDir())
	for _, format := range []string{"png", "svg", "gif", "apng", "frames"} {
		gone := goneAfter(100)
		status, errs := rendered(t, context.Background(), &gone, "--format", format, "-o", "-")
		if want := "<stdout>: cannot be written: broken pipe\n"; status != unusable || errs != want {
			t.Errorf("%s: status %d, %q, want %d, %q", format, status, errs, unusable, want)
		}
	}
}

// TestRenderStopped: what was not finished is not kept, and what was there
// stays.
func TestRenderStopped(t *testing.T) {
	t.Chdir(t.TempDir())
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	status, errs := rendered(t, ctx, io.Discard, "--force")
	if status != unusable || errs != say.Render.Stopped+"\n" || len(left(t)) > 0 {
		t.Errorf("status %d, %q, files %v, want %d, that it was stopped, none", status, errs, left(t), unusable)
	}
}

// TestRenderFilmStopped: a film that is stopped while it is made leaves no part
// of itself, and no file of its clicks.
func TestRenderFilmStopped(t *testing.T) {
	if _, err := exec.LookPath(videoTool); err != nil {
		t.Skip("ffmpeg is not here (Debian: ffmpeg)")
	}
	for _, format := range videoNames {
		t.Chdir(t.TempDir())
		aside := t.TempDir()
		t.Setenv("TMPDIR", aside)
		ctx, cancel := context.WithCancel(context.Background())
		defer cancel()
		go func() { // as soon as something of it is there
			for ctx.Err() == nil {
				if parts, _ := filepath.Glob(".half-moon*.part*"); len(parts) > 0 {
					cancel()
				}
			}
		}()
		status, errs := rendered(t, ctx, io.Discard, "--format", format, "--clicks", "--rounds", "40", "--size", "720x720")
		if status != unusable || errs != say.Render.Stopped+"\n" || len(left(t)) > 0 {
			t.Errorf("%s: status %d, %q, files %v, want that it was stopped, none", format, status, errs, left(t))
		}
		if files, err := os.ReadDir(aside); err != nil || len(files) > 0 {
			t.Errorf("%s: %v is left aside, %v", format, files, err)
		}
	}
}

// TestRenderNoRoom: a folder that cannot be written to is told in one line.
func TestRenderNoRoom(t *testing.T) {
	t.Chdir(t.TempDir())
	if err := os.WriteFile("file", nil, 0o600); err != nil {
		t.Fatal(err)
	}
	status, errs := rendered(t, context.Background(), io.Discard, "-o", filepath.Join("file", "moon.gif"))
	if want := filepath.Join("file", "moon.gif") + ": cannot be written: not a directory\n"; status != unusable || errs != want {
		t.Errorf("status %d, %q, want %d, %q", status, errs, unusable, want)
	}
	if err := os.Mkdir("folder.gif", 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("nowhere", "link.gif"); err != nil {
		t.Fatal(err)
	}
	if status, errs := rendered(t, context.Background(), io.Discard, "-o", "link.gif"); status != unusable || !strings.Contains(errs, "already there") {
		t.Errorf("onto a link: status %d, %q, want it to stay", status, errs)
	}
	if got := strings.Join(left(t), " "); got != "file folder.gif link.gif" {
		t.Errorf("files %s, want nothing new", got)
	}
}

// TestRenderVideo: films have every frame, the time and the size, by ffprobe;
// a see-through one has its opacity.
func TestRenderVideo(t *testing.T) {
	probe, err := exec.LookPath("ffprobe")
	if err != nil {
		t.Skip("ffmpeg is not here (Debian: ffmpeg)")
	}
	for _, tt := range []struct {
		args []string
		name string
		want string
	}{
		{[]string{"--format", "webm"}, "half-moon-64x64-25fps.webm", "vp9,64,64,25/1,50"},
		{[]string{"--format", "webm", "--background", "clear"}, "half-moon-64x64-25fps.webm", "vp9,64,64,25/1,50"},
		{[]string{"--format", "mp4", "--fps", "30", "--slow", "2"}, "half-moon-64x64-30fps.mp4", "h264,64,64,30/1,120"},
	} {
		t.Chdir(t.TempDir())
		var out bytes.Buffer
		if status, errs := rendered(t, context.Background(), &out, tt.args...); status != fine || errs != "" || out.String() != tt.name+"\n" {
			t.Fatalf("%v: status %d, %q, %q", tt.args, status, out.String(), errs)
		}
		got, err := exec.Command(probe, "-v", "error", "-count_frames", "-show_entries", "stream=codec_name,width,height,r_frame_rate,nb_read_frames", "-of", "csv=p=0", tt.name).CombinedOutput()
		if s := strings.TrimSpace(string(got)); err != nil || s != tt.want {
			t.Errorf("%v: %q, %v, want %q", tt.args, s, err, tt.want)
		}
		if !strings.Contains(strings.Join(tt.args, " "), "clear") {
			film, err := os.ReadFile(tt.name)
			if err != nil {
				t.Fatal(err)
			}
			var frames bytes.Buffer
			if status, errs := rendered(t, context.Background(), &frames, append(slices.Clone(tt.args), "--format", "frames", "-o", "-")...); status != fine || errs != "" {
				t.Fatalf("%v: status %d, %q", tt.args, status, errs)
			}
			if err := outside.InStep(film, frames.Bytes()); err != nil {
				t.Errorf("%v: %v", tt.args, err)
			}
		} else {
			tags, err := exec.Command(probe, "-v", "error", "-show_entries", "stream_tags=alpha_mode", "-of", "csv=p=0", tt.name).CombinedOutput()
			if s := strings.TrimSpace(string(tags)); err != nil || s != "1" {
				t.Errorf("alpha mode %q, %v, want 1", s, err)
			}
		}
	}
}

// TestRenderVideoPiped: a film comes out of standard output whole.
func TestRenderVideoPiped(t *testing.T) {
	probe, err := exec.LookPath("ffprobe")
	if err != nil {
		t.Skip("ffmpeg is not here (Debian: ffmpeg)")
	}
	for _, format := range []string{"webm", "mp4"} {
		t.Chdir(t.TempDir())
		var out bytes.Buffer
		if status, errs := rendered(t, context.Background(), &out, "--format", format, "-o", "-"); status != fine || errs != "" || len(left(t)) > 0 {
			t.Fatalf("%s: status %d, %q, files %v", format, status, errs, left(t))
		}
		cmd := exec.Command(probe, "-v", "error", "-count_frames", "-show_entries", "stream=nb_read_frames", "-of", "csv=p=0", "-")
		cmd.Stdin = &out
		if got, err := cmd.CombinedOutput(); err != nil || strings.TrimSpace(string(got)) != "50" {
			t.Errorf("%s: %q frames, %v, want 50", format, got, err)
		}
	}
}

// TestRenderVideoRefused: what a film cannot be is told before anything is
// drawn.
func TestRenderVideoRefused(t *testing.T) {
	t.Chdir(t.TempDir())
	if _, err := exec.LookPath(videoTool); err == nil {
		for _, args := range [][]string{{"--format", "mp4", "--background", "clear"}, {"--format", "mp4", "--size", "65x64"}} {
			if status, errs := rendered(t, context.Background(), io.Discard, args...); status != unusable || strings.Count(errs, "\n") != 1 {
				t.Errorf("%v: status %d, %q, want %d and one line", args, status, errs, unusable)
			}
		}
	}
	t.Setenv("PATH", t.TempDir())
	status, errs := rendered(t, context.Background(), io.Discard, "--format", "webm")
	if status != unusable || !strings.Contains(errs, "ffmpeg, which is not installed") || len(left(t)) > 0 {
		t.Errorf("without ffmpeg: status %d, %q, files %v", status, errs, left(t))
	}
}
