package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strconv"
	"strings"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/words"
)

// video is a format that ffmpeg makes.
type video struct {
	ext    string
	clear  bool     // it can be seen through
	even   bool     // its pictures have even sides
	codec  []string // of one on a ground
	codecA []string // of one that is seen through
	audio  []string // of a click track
	tail   []string
}

var videos = map[string]video{
	"webm": {ext: ".webm", clear: true, even: true,
		codec:  []string{"-c:v", "libvpx-vp9", "-pix_fmt", "yuv420p", "-crf", "24", "-b:v", "0", "-row-mt", "1"},
		codecA: []string{"-c:v", "libvpx-vp9", "-pix_fmt", "yuva420p", "-crf", "24", "-b:v", "0", "-auto-alt-ref", "0"},
		audio:  []string{"-c:a", "libopus", "-b:a", "96k"},
		tail:   []string{"-f", "webm"}},
	"mp4": {ext: ".mp4", even: true,
		codec: []string{"-c:v", "libx264", "-pix_fmt", "yuv420p", "-crf", "18", "-preset", "slow"},
		audio: []string{"-c:a", "aac", "-b:a", "160k"},
		tail:  []string{"-movflags", "+faststart", "-f", "mp4"}},
}

var videoNames = []string{"webm", "mp4"}

// videoTool is the program that makes films.
const videoTool = "ffmpeg"

// maker returns what makes the film, if it can be made here.
func (v video) maker(req request) (maker, error) {
	tool, err := exec.LookPath(videoTool)
	if err != nil {
		return maker{}, fmt.Errorf(say.Render.NoVideo, req.format)
	}
	if req.Ground == capture.Clear && !v.clear {
		return maker{}, fmt.Errorf(say.Render.Opaque, req.format)
	}
	if v.even && (req.Width%2 == 1 || req.Height%2 == 1) {
		return maker{}, fmt.Errorf(say.Render.Fault, fmt.Sprintf(words.Said.Capture.Even, req.Width, req.Height, req.format))
	}
	return maker{
		ready: req.take,
		name:  func(t *capture.Take) string { return t.FilmName() + v.ext },
		loops: true,
		write: func(ctx context.Context, w io.Writer, file string, t *capture.Take, tell capture.Progress) error {
			if file == "" {
				return v.pass(ctx, w, tool, t, req.clicks, tell)
			}
			return v.write(ctx, tool, file, t, req.clicks, tell)
		},
	}, nil
}

// pass makes the film in a file for a while and copies that to w: ffmpeg goes
// back in what it writes.
func (v video) pass(ctx context.Context, w io.Writer, tool string, t *capture.Take, clicks bool, tell capture.Progress) error {
	f, err := os.CreateTemp("", program+"-film*"+v.ext)
	if err != nil {
		return err
	}
	defer os.Remove(f.Name())
	defer f.Close()
	if err := v.write(ctx, tool, f.Name(), t, clicks, tell); err != nil {
		return err
	}
	_, err = io.Copy(w, f)
	return err
}

// clickFile makes the click track a file for a while, and returns how ffmpeg
// reads it.
func clickFile(t *capture.Take) (args []string, done func(), err error) {
	sound, err := t.Clicks()
	if err != nil {
		return nil, nil, err
	}
	f, err := os.CreateTemp("", program+"-clicks")
	if err != nil {
		return nil, nil, err
	}
	_, err = f.Write(sound)
	if e := f.Close(); err == nil {
		err = e
	}
	done = func() { os.Remove(f.Name()) }
	if err != nil {
		done()
		return nil, nil, err
	}
	return []string{"-f", "s16le", "-ar", strconv.Itoa(capture.ClickRate), "-ac", "1", "-i", "file:" + f.Name()}, done, nil
}

// write has ffmpeg make the film from frames that it is given as they are
// painted.
func (v video) write(ctx context.Context, tool, file string, t *capture.Take, clicks bool, tell capture.Progress) error {
	l := t.Timeline()
	codec := v.codec
	if t.Ground == capture.Clear {
		codec = v.codecA
	}
	args := []string{"-v", "error", "-nostdin", "-y", "-f", "rawvideo", "-pix_fmt", "rgba", "-s", fmt.Sprintf("%dx%d", t.Width, t.Height),
		"-framerate", rate(l.Rate()), "-i", "pipe:0"}
	if clicks {
		sound, done, err := clickFile(t)
		if err != nil {
			return err
		}
		defer done()
		args = append(append(args, sound...), v.audio...)
	}
	args = append(args, "-map_metadata", "-1", "-fflags", "+bitexact", "-metadata", "title="+t.Title(),
		"-vf", "scale=out_color_matrix=bt709:out_range=tv", "-colorspace", "bt709", "-color_primaries", "bt709", "-color_trc", "iec61966-2-1")
	args = append(append(append(args, codec...), v.tail...), "file:"+file)
	cmd := exec.CommandContext(ctx, tool, args...)
	in, err := cmd.StdinPipe()
	if err != nil {
		return err
	}
	var said bytes.Buffer
	cmd.Stderr = &said
	if err := cmd.Start(); err != nil {
		return err
	}
	painted := t.EachFrame(ctx, l, tell, func(_ int, f capture.Frame) error {
		_, err := in.Write(f.Straight())
		return err
	})
	in.Close()
	err = cmd.Wait()
	switch {
	case ctx.Err() != nil:
		return context.Cause(ctx)
	case err != nil:
		return fmt.Errorf(say.Render.VideoFailed, err, lastLine(said.String()))
	case said.Len() > 0: // a full disk does not always change its exit status
		return fmt.Errorf(say.Render.VideoSaid, lastLine(said.String()))
	}
	return painted
}

// rate writes frames a second as ffmpeg takes them, whose parts have 31 bits.
func rate(f frac.Frac) string {
	const most = 1 << 30
	if f.Num().IsInt64() && f.Num().Int64() < most && f.Den().IsInt64() && f.Den().Int64() < most {
		return f.String()
	}
	return strconv.FormatFloat(f.Float(), 'f', 6, 64)
}

// lastLine returns the last line that a program has written.
func lastLine(s string) string {
	s = strings.TrimSpace(s)
	return oneLine(s[strings.LastIndexByte(s, '\n')+1:])
}
