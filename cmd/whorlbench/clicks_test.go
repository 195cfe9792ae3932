package main

import (
	"bytes"
	"context"
	"encoding/binary"
	"encoding/json"
	"io"
	"math"
	"os/exec"
	"strconv"
	"strings"
	"testing"
)

// onsets are the seconds at which a film's sound begins anew after quiet, as
// ffmpeg decodes it.
func onsets(t *testing.T, file string) []float64 {
	t.Helper()
	const hz = 48_000
	data, err := exec.Command(videoTool, "-v", "error", "-i", file, "-f", "s16le", "-ac", "1", "-ar", strconv.Itoa(hz), "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	const loud, quiet = 8000, hz / 20
	var out []float64
	last := -quiet
	for i := 0; 2*i+1 < len(data); i++ {
		if x := int(int16(binary.LittleEndian.Uint16(data[2*i:]))); x > loud || x < -loud {
			if i-last >= quiet {
				out = append(out, float64(i)/hz)
			}
			last = i
		}
	}
	return out
}

// TestRenderClicks: a film with a click track has one at each beat, 60 seconds
// over the tempo apart (common practice), and as much sound as pictures.
func TestRenderClicks(t *testing.T) {
	if _, err := exec.LookPath("ffprobe"); err != nil {
		t.Skip("ffmpeg is not here (Debian: ffmpeg)")
	}
	for _, format := range []string{"webm", "mp4"} {
		t.Chdir(t.TempDir())
		file := "half-moon." + format
		if status, errs := rendered(t, context.Background(), io.Discard, "--clicks", "--rounds", "2", "-o", file, "--format", format); status != fine || errs != "" {
			t.Fatalf("%s: status %d, %q", format, status, errs)
		}
		const beat, beats, most = 60.0 / 120, 8, 0.005
		got := onsets(t, file)
		if len(got) != beats {
			t.Fatalf("%s: clicks at %v, want %d", format, got, beats)
		}
		for k, s := range got {
			if math.Abs(s-beat*float64(k)) > most {
				t.Errorf("%s: click %d at %.4f s, want %.4f", format, k, s, beat*float64(k))
			}
		}
		out, err := exec.Command("ffprobe", "-v", "error", "-show_entries", "stream=codec_type,duration:format=duration", "-of", "json", file).Output()
		var is struct {
			Streams []struct {
				Kind     string `json:"codec_type"`
				Duration string
			}
			Format struct{ Duration string }
		}
		if err != nil || json.Unmarshal(out, &is) != nil || len(is.Streams) != 2 {
			t.Fatalf("%s: %s, %v, want pictures and sound", format, out, err)
		}
		if is.Streams[0].Duration != is.Streams[1].Duration {
			t.Errorf("%s: pictures and sound last %v, want both alike", format, is.Streams)
		}
		seconds, _ := strconv.ParseFloat(is.Format.Duration, 64)
		sound, err := exec.Command(videoTool, "-v", "error", "-i", file, "-vn", "-f", "s16le", "-ac", "1", "-ar", "48000", "-").Output()
		// AAC goes on to the end of its last 1024 samples, which ffmpeg leaves in.
		tail := map[string]float64{"mp4": 1024. / 48_000}[format]
		if heard := float64(len(sound)) / 2 / 48_000; err != nil || heard < beat*beats-most || heard > beat*beats+most+tail || math.Abs(seconds-beat*beats) > 0.02 {
			t.Errorf("%s: %v s of sound in %v s, %v, want %v of both", format, heard, seconds, err, beat*beats)
		}
	}
}

// TestRenderClicksRefused: what has no sound says so, and nothing is left.
func TestRenderClicksRefused(t *testing.T) {
	t.Chdir(t.TempDir())
	status, errs := rendered(t, context.Background(), io.Discard, "--clicks")
	if status != unusable || strings.Count(errs, "\n") != 1 || !strings.Contains(errs, "not in gif") || len(left(t)) > 0 {
		t.Errorf("status %d, %q, files %v, want one line about sound and none", status, errs, left(t))
	}
}

// TestRenderAlpha: a see-through WebM has its opacity in each frame, as
// libvpx's decoder finds it: clear in the corner, opaque somewhere, and between.
func TestRenderAlpha(t *testing.T) {
	decoders, err := exec.Command(videoTool, "-v", "error", "-decoders").Output()
	if err != nil || !bytes.Contains(decoders, []byte("libvpx-vp9")) {
		t.Skip("an ffmpeg with the decoder libvpx-vp9 is not here")
	}
	t.Chdir(t.TempDir())
	const side = 64
	if status, errs := rendered(t, context.Background(), io.Discard, "--format", "webm", "--background", "clear", "-o", "moon.webm"); status != fine || errs != "" {
		t.Fatalf("status %d, %q", status, errs)
	}
	data, err := exec.Command(videoTool, "-v", "error", "-c:v", "libvpx-vp9", "-i", "moon.webm", "-f", "rawvideo", "-pix_fmt", "rgba", "-").Output()
	if err != nil || len(data) != 50*side*side*4 {
		t.Fatalf("%d bytes, %v, want 50 frames", len(data), err)
	}
	for k := range 50 {
		frame := data[k*side*side*4 : (k+1)*side*side*4]
		var clear, opaque, between int
		for i := 3; i < len(frame); i += 4 {
			switch a := frame[i]; {
			case a < 8:
				clear++
			case a > 247:
				opaque++
			default:
				between++
			}
		}
		if frame[3] > 8 || clear < side*side/2 || opaque == 0 || between == 0 {
			t.Errorf("frame %d: %d clear, %d opaque, %d between, corner %d, want some of each and a clear corner", k, clear, opaque, between, frame[3])
		}
	}
}
