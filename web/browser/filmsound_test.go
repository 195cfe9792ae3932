//go:build browser

package browser

import (
	"bytes"
	"encoding/binary"
	"encoding/json"
	"encoding/xml"
	"errors"
	"fmt"
	"math"
	"os/exec"
	"strconv"

	"whorlbench/sandbox/capture/outside"
)

// both makes one check of two. What the second finds counts where the first cannot
// be made.
func both(a, b func(data []byte) error) func(data []byte) error {
	return func(data []byte) error {
		first, second := a(data), b(data)
		if second != nil && (first == nil || errors.Is(first, exec.ErrNotFound)) {
			return second
		}
		return first
	}
}

// moving fails unless ffmpeg decodes all frames of an APNG, of the size that was
// asked for.
func moving(data []byte) error {
	got, err := outside.Decode(data, []string{"-f", "apng"}, []string{"-fps_mode", "passthrough", "-f", "rawvideo", "-pix_fmt", "rgba"})
	if err != nil {
		return err
	}
	if want := filmFrames * 4 * filmSide * filmSide; len(got) != want {
		return fmt.Errorf("ffmpeg finds %d bytes of pictures, want %d", len(got), want)
	}
	return picture(data, filmSide)
}

// filmOpacity fails unless each frame is clear in the corner, opaque somewhere
// and between at edges, as libvpx's decoder has it.
func filmOpacity(data []byte) error {
	if list, err := exec.Command("ffmpeg", "-v", "error", "-decoders").Output(); err != nil || !bytes.Contains(list, []byte("libvpx-vp9")) {
		return exec.ErrNotFound
	}
	got, err := outside.Decode(data, []string{"-c:v", "libvpx-vp9"}, []string{"-f", "rawvideo", "-pix_fmt", "rgba"})
	if err != nil {
		return err
	}
	const size = 4 * filmSide * filmSide
	if len(got) != filmFrames*size {
		return fmt.Errorf("%d bytes of pixels, want %d frames", len(got), filmFrames)
	}
	for k := range filmFrames {
		frame := got[k*size : (k+1)*size]
		var clear, opaque, between int
		for i := 3; i < size; i += 4 {
			switch a := frame[i]; {
			case a < 8:
				clear++
			case a > 247:
				opaque++
			default:
				between++
			}
		}
		if frame[3] > 8 || clear < size/8 || opaque == 0 || between == 0 {
			return fmt.Errorf("frame %d: %d clear, %d opaque, %d between, corner %d", k, clear, opaque, between, frame[3])
		}
	}
	return nil
}

// clicks fails unless a film has a click on each beat, 60 seconds over the
// tempo apart (common practice), and as much sound as pictures.
func clicks(data []byte) error {
	got, err := outside.Decode(data, nil, []string{"-f", "s16le", "-ac", "1", "-ar", "48000"})
	if err != nil {
		return err
	}
	const hz, loud, quiet, beat, most = 48_000, 8000, 48_000 / 20, 0.5, 0.005
	var at []float64
	last := -quiet
	for i := 0; 2*i+1 < len(got); i++ {
		if x := int(int16(binary.LittleEndian.Uint16(got[2*i:]))); x > loud || x < -loud {
			if i-last >= quiet {
				at = append(at, float64(i)/hz)
			}
			last = i
		}
	}
	if len(at) != filmSeconds/beat {
		return fmt.Errorf("clicks at %v, want %v", at, filmSeconds/beat)
	}
	for k, s := range at {
		if math.Abs(s-beat*float64(k)) > most {
			return fmt.Errorf("clicks at %v, want one each %v s", at, beat)
		}
	}
	// Of an MP4 ffmpeg plays the last packet, 20 ms, to its end.
	if heard := float64(len(got)) / 2 / hz; heard < filmSeconds-most || heard > filmSeconds+0.02 {
		return fmt.Errorf("%v s of sound, want %v", heard, filmSeconds)
	}
	probe := exec.Command("ffprobe", "-v", "error", "-count_frames", "-show_entries", "stream=codec_name,nb_read_frames:format=duration", "-of", "json", "-")
	probe.Stdin = bytes.NewReader(data)
	out, err := probe.CombinedOutput()
	var is struct {
		Streams []struct {
			Codec  string `json:"codec_name"`
			Frames string `json:"nb_read_frames"`
		}
		Format struct{ Duration string }
	}
	if err != nil || json.Unmarshal(out, &is) != nil || len(is.Streams) != 2 || is.Streams[1].Codec != "opus" || is.Streams[0].Frames != strconv.Itoa(filmFrames) {
		return fmt.Errorf("ffprobe: %v: %s, want %d pictures, and Opus", err, out, filmFrames)
	}
	if seconds, _ := strconv.ParseFloat(is.Format.Duration, 64); math.Abs(seconds-filmSeconds) > 0.015 {
		return fmt.Errorf("%v s, want %v", seconds, filmSeconds)
	}
	return nil
}

// drawing fails unless a file is an SVG with something on it.
func drawing(data []byte) error {
	var root struct {
		XMLName xml.Name
		Parts   []struct{} `xml:",any"`
	}
	if err := xml.Unmarshal(data, &root); err != nil || root.XMLName.Local != "svg" || len(root.Parts) < 2 {
		return fmt.Errorf("%v with %d parts, %v, want a drawing", root.XMLName, len(root.Parts), err)
	}
	return nil
}
