//go:build browser

package browser

import (
	"archive/zip"
	"bytes"
	"encoding/binary"
	"encoding/json"
	"encoding/xml"
	"errors"
	"fmt"
	"image"
	"image/gif"
	"image/png"
	"io"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"

	"whorlbench/sandbox/capture/outside"
	"whorlbench/sandbox/words"
)

// The loop that is asked for: the first pattern's round of 4 beats at 120 beats
// a minute, which is two seconds.
const (
	filmSide    = 180
	filmFPS     = 10
	filmFrames  = 20
	filmSeconds = 2
)

// openFilm opens the capture sheet as a person does.
func (v *visit) openFilm() {
	v.t.Helper()
	v.click("show-more")
	v.click("show-film")
	v.wait(`document.getElementById("film").open`)
}

// wishes sets controls of the capture sheet, and waits for the preview of them.
func (v *visit) wishes(values map[string]any) {
	v.t.Helper()
	text, err := json.Marshal(values)
	must(v.t, err)
	eval[bool](v, fmt.Sprintf(`(() => {
		for (const [name, value] of Object.entries(%s)) {
			const el = document.querySelector("[data-film=" + name + "]");
			if (el.type === "checkbox") el.checked = value; else el.value = value;
			el.dispatchEvent(new Event("input"));
		}
		return true;
	})()`, text))
}

var small = map[string]any{"size": "own", "width": filmSide, "height": filmSide, "fps": strconv.Itoa(filmFPS), "ground": "theme", "slow": "1", "length": "0", "clicks": false}

// made presses Make and returns the file that comes.
func (v *visit) made() (name string, data []byte) {
	v.t.Helper()
	v.click("film-make")
	return v.arrived()
}

// arrived is the file that is being made, when it has come.
func (v *visit) arrived() (name string, data []byte) {
	v.t.Helper()
	v.wait(`document.getElementById("film-said").textContent !== "" && document.getElementById("film-stop").hidden`)
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(50 * time.Millisecond) {
		files, _ := filepath.Glob(filepath.Join(v.downloads, "*"))
		if len(files) != 1 || strings.HasSuffix(files[0], ".crdownload") {
			continue
		}
		if data, err := os.ReadFile(files[0]); err == nil && len(data) > 0 {
			must(v.t, os.Remove(files[0]))
			if dir := os.Getenv("WHORLBENCH_SHOTS"); dir != "" {
				must(v.t, os.WriteFile(filepath.Join(dir, filepath.Base(files[0])), data, 0o644))
			}
			return filepath.Base(files[0]), data
		}
	}
	v.t.Fatalf("no file came; the sheet says %q", eval[string](v, `document.getElementById("film-said").textContent`))
	return "", nil
}

func picture(data []byte, side int) error {
	m, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return err
	}
	if b := m.Bounds(); b.Dx() != side || b.Dy() != side {
		return fmt.Errorf("the picture is %v, want %d by %d", b, side, side)
	}
	return nil
}

// seeThrough fails unless a picture has a clear corner and something that is not.
func seeThrough(data []byte) error {
	m, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return err
	}
	n, ok := m.(*image.NRGBA)
	if !ok || n.NRGBAAt(0, 0).A != 0 {
		return fmt.Errorf("the corner of a %T is not clear", m)
	}
	for i := 3; i < len(n.Pix); i += 4 {
		if n.Pix[i] == 255 {
			return nil
		}
	}
	return errors.New("nothing is on it")
}

// chunks counts a PNG's chunks by name and returns the acTL's numbers.
func chunks(data []byte) (count map[string]int, frames, plays uint32) {
	count = map[string]int{}
	for b := data[8:]; len(b) >= 12; {
		n := int(binary.BigEndian.Uint32(b))
		kind := string(b[4:8])
		count[kind]++
		if kind == "acTL" {
			frames, plays = binary.BigEndian.Uint32(b[8:]), binary.BigEndian.Uint32(b[12:])
		}
		b = b[12+n:]
	}
	return count, frames, plays
}

// TestFilmFormats: each sort of file comes as a download, named after title,
// size and frames a second, and other programs read it.
func TestFilmFormats(t *testing.T) {
	v := newVisit(t, desk)
	v.openFilm()
	var painted []byte // the frames, which the loops are held against
	inStep := func(data []byte) error { return outside.InStep(data, painted) }
	for _, tt := range []struct {
		format, name string
		more         map[string]any
		check        func(data []byte) error
	}{
		{"png", "half-moon-180x180.png", nil, func(data []byte) error { return picture(data, filmSide) }},
		{"png", "half-moon-180x180.png", map[string]any{"ground": "clear"}, seeThrough},
		{"svg", "half-moon-180x180.svg", nil, func(data []byte) error {
			var root struct {
				XMLName xml.Name
				Width   string `xml:"width,attr"`
			}
			if err := xml.Unmarshal(data, &root); err != nil || root.XMLName.Local != "svg" || root.Width != "180" {
				return fmt.Errorf("%+v, %v, want an svg 180 wide", root, err)
			}
			return nil
		}},
		{"sheet", "half-moon-sheet-755x194.png", nil, func(data []byte) error {
			m, err := png.Decode(bytes.NewReader(data))
			if err != nil || m.Bounds().Dx() < 4*filmSide {
				return fmt.Errorf("%v, want four pictures side by side", err)
			}
			return nil
		}},
		{"strobe", "half-moon-strobe-180x180.png", nil, func(data []byte) error { return picture(data, filmSide) }},
		{"sheet-svg", "half-moon-sheet-755x194.svg", nil, drawing},
		{"strobe-svg", "half-moon-strobe-180x180.svg", nil, drawing},
		{"frames", "half-moon-frames-180x180-10fps.zip", nil, func(data []byte) error {
			painted = data
			z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
			if err != nil || len(z.File) != filmFrames {
				return fmt.Errorf("%v, want %d files", err, filmFrames)
			}
			for _, f := range z.File {
				r, err := f.Open()
				if err != nil {
					return err
				}
				frame, err := io.ReadAll(r)
				if err != nil {
					return err
				}
				if err := picture(frame, filmSide); err != nil {
					return fmt.Errorf("%s: %w", f.Name, err)
				}
			}
			return nil
		}},
		{"gif", "half-moon-180x180-10fps.gif", nil, both(inStep, func(data []byte) error {
			g, err := gif.DecodeAll(bytes.NewReader(data))
			if err != nil {
				return err
			}
			all := 0
			for _, d := range g.Delay {
				all += d
			}
			if len(g.Image) != filmFrames || all != 100*filmSeconds || g.LoopCount != 0 {
				return fmt.Errorf("%d frames, %d hundredths, loop %d, want %d, %d, for ever", len(g.Image), all, g.LoopCount, filmFrames, 100*filmSeconds)
			}
			return nil
		})},
		{"apng", "half-moon-apng-180x180-10fps.png", map[string]any{"ground": "clear"}, both(moving, func(data []byte) error {
			count, frames, plays := chunks(data)
			if frames != filmFrames || plays != 0 || count["fcTL"] != filmFrames || count["fdAT"] != filmFrames-1 {
				return fmt.Errorf("%d frames, %d plays, chunks %v, want %d, for ever", frames, plays, count, filmFrames)
			}
			return seeThrough(data)
		})},
		{"apng", "half-moon-apng-180x180-10fps.png", nil, inStep},
		{"webm", "half-moon-180x180-10fps.webm", nil, both(film("vp9"), inStep)},
		{"webm", "half-moon-180x180-10fps.webm", map[string]any{"ground": "clear"}, both(film("vp9"), filmOpacity)},
		{"webm", "half-moon-180x180-10fps.webm", map[string]any{"clicks": true}, clicks},
		{"mp4", "half-moon-180x180-10fps.mp4", map[string]any{"clicks": true}, clicks},
		{"mp4", "half-moon-180x180-10fps.mp4", nil, both(film("h264"), inStep)},
	} {
		t.Run(tt.format, func(t *testing.T) {
			v.t = t
			all := maps.Clone(small)
			maps.Copy(all, tt.more)
			all["format"] = tt.format
			v.wishes(all)
			v.wait(`document.getElementById("film-about").textContent.startsWith(` + quote(tt.name) + `) || document.getElementById("film-refused").textContent === ` + quote(words.English.Film.NoEncoder))
			if eval[string](v, `document.getElementById("film-refused").textContent`) != "" {
				if !eval[bool](v, `document.getElementById("film-make").disabled`) {
					t.Error("what cannot be made can be asked for")
				}
				t.Skip("this browser has no encoder for it, and the sheet says so")
			}
			name, data := v.made()
			if name != tt.name {
				t.Errorf("the file is called %q, want %q", name, tt.name)
			}
			if err := tt.check(data); errors.Is(err, exec.ErrNotFound) {
				t.Skipf("%d bytes came; ffprobe is not here to read them (Debian: ffmpeg)", len(data))
			} else if err != nil {
				t.Error(err)
			}
		})
	}
	v.t = t
	v.clean()
}

// film holds a film against ffprobe (FFmpeg), where that is installed.
func film(codec string) func(data []byte) error {
	return func(data []byte) error {
		probe, err := exec.LookPath("ffprobe")
		if err != nil {
			return exec.ErrNotFound
		}
		cmd := exec.Command(probe, "-v", "error", "-count_frames", "-show_entries", "stream=codec_name,width,height,r_frame_rate,nb_read_frames,color_space,color_range:format=duration", "-of", "json", "-")
		cmd.Stdin = bytes.NewReader(data)
		out, err := cmd.CombinedOutput()
		var got struct {
			Streams []struct {
				Codec         string `json:"codec_name"`
				Rate          string `json:"r_frame_rate"`
				Frames        string `json:"nb_read_frames"`
				Space         string `json:"color_space"`
				Range         string `json:"color_range"`
				Width, Height int
			}
			Format struct{ Duration string }
		}
		if err != nil || json.Unmarshal(out, &got) != nil || len(got.Streams) != 1 {
			return fmt.Errorf("ffprobe: %v: %s", err, out)
		}
		s := got.Streams[0]
		seconds, _ := strconv.ParseFloat(got.Format.Duration, 64)
		if s.Codec != codec || s.Width != filmSide || s.Height != filmSide || s.Frames != strconv.Itoa(filmFrames) || s.Rate != "10/1" || seconds < 1.99 || seconds > 2.01 || s.Space != "bt709" || s.Range != "tv" {
			return fmt.Errorf("ffprobe finds %s, want %s, %d frames of %d pixels, %d a second, bt709, tv", out, codec, filmFrames, filmSide, filmFPS)
		}
		return nil
	}
}

// TestFilmStops: what is stopped leaves nothing behind, the bench draws all the
// while, and the choices are there again.
func TestFilmStops(t *testing.T) {
	v := newVisit(t, phone)
	v.openFilm()
	v.wishes(map[string]any{"format": "frames", "size": "1080x1080", "fps": "60", "length": "own", "rounds": 20})
	v.wait(`document.getElementById("film-about").textContent.includes("2400")`)
	v.shot("film-sheet")
	v.click("film-make")
	v.wait(`document.getElementById("film-left-text").textContent.includes(" of 2400")`)
	v.frames(3)
	v.shot("film-making")
	v.click("film-stop")
	v.wait(`document.getElementById("film-said").textContent === ` + quote(words.English.Film.Said.Stopped))
	if files, _ := filepath.Glob(filepath.Join(v.downloads, "*")); len(files) > 0 {
		t.Errorf("files %v are left, want none", files)
	}
	v.wait(`!document.getElementById("film-make").disabled && !document.getElementById("film-make").hidden`)
	v.load()
	v.openFilm()
	if got := eval[string](v, `document.querySelector("[data-film=format]").value + document.querySelector("[data-film=rounds]").value`); got != "frames20" {
		t.Errorf("after loading again the choices are %q, want frames20", got)
	}
	v.clean()
}

// TestFilmBesideTheBench: a film of many frames, for which the program's memory
// grows, is made while the sheet is closed; the bench says how far it is, leads back
// to it, and says what went wrong until that is looked at.
func TestFilmBesideTheBench(t *testing.T) {
	v := newVisit(t, phone)
	v.openFilm()
	v.wishes(map[string]any{"format": "webm", "size": "own", "width": 64, "height": 64, "fps": "60", "length": "own", "rounds": 10})
	v.wait(`document.getElementById("film-about").textContent.includes("1200")`)
	v.click("film-make")
	v.closeAll()
	const going = `document.getElementById("film-going")`
	v.wait(`!` + going + `.hidden && ` + going + `.textContent.includes(" of 1200")`)
	v.shot("film-going")
	v.click("film-going")
	v.wait(`document.getElementById("film").open && ` + going + `.hidden`)
	_, data := v.arrived()
	if len(data) < 10_000 {
		t.Errorf("a film of 1200 frames has %d bytes", len(data))
	}
	v.wait(`document.getElementById("film-said").textContent.includes(".webm")`)

	// At once after a number was typed, before its preview has come.
	eval[bool](v, `{ const r = document.querySelector("[data-film=rounds]"); r.value = "0"; r.dispatchEvent(new Event("input", { bubbles: true })); document.getElementById("film-make").click(); document.getElementById("film").close(); true }`)
	v.wait(`!` + going + `.hidden && ` + going + `.textContent.includes("rounds: found")`)
	v.click("film-going")
	v.wait(`document.getElementById("film").open && document.getElementById("film-said").textContent.includes("rounds: found")`)
	v.closeAll()
	v.wait(going + `.hidden`)
	v.clean()
}

// TestFilmRefuses: what cannot be is told in words, and cannot be asked for.
func TestFilmRefuses(t *testing.T) {
	v := newVisit(t, desk)
	v.openFilm()
	for _, tt := range []struct {
		wish map[string]any
		want string
	}{
		{map[string]any{"format": "mp4", "ground": "clear"}, words.English.Film.Opaque},
		{map[string]any{"format": "gif", "ground": "theme", "fps": "60"}, "at most 50 in a GIF"},
		{map[string]any{"fps": "quick"}, `found "quick"`},
		{map[string]any{"fps": "25", "size": "own", "width": 8}, "found 8x"},
	} {
		v.wishes(tt.wish)
		v.wait(`document.getElementById("film-refused").textContent.includes(` + quote(tt.want) + `) && document.getElementById("film-make").disabled`)
	}
	v.clean()
}

// TestFilmByKeyboard: the sheet opens and closes by keyboard alone.
func TestFilmByKeyboard(t *testing.T) {
	v := newVisit(t, desk)
	eval[bool](v, `(document.getElementById("show-more").click(), document.getElementById("show-film").focus(), true)`)
	must(t, chromedp.Do(v.ctx, chromedp.KeyEvent("\r")))
	v.wait(`document.getElementById("film").open && !document.getElementById("more").open`)
	must(t, chromedp.Do(v.ctx, chromedp.KeyEvent("\x1b")))
	v.wait(`!document.getElementById("film").open`)
	v.clean()
}
