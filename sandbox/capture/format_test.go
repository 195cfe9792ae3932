package capture

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"image"
	"image/color"
	"image/draw"
	"image/gif"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/paint"
)

// written is a take's file.
func written(t testing.TB, take *Take, f Format) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := take.Write(context.Background(), &out, f, nil); err != nil {
		t.Fatalf("%s: %v", formatted[f].name, err)
	}
	return out.Bytes()
}

// small is for tests that need every frame of several formats.
func small(o *Options) { o.Width, o.Height = 120, 96 }

func onNothing(o *Options) { small(o); o.Ground = Clear }

// TestGIFWhole: a GIF decodes whole, with as many frames as there are, the
// time of the beats, and no end; its pictures are near to the frames.
func TestGIFWhole(t *testing.T) {
	for _, tt := range []struct {
		id     string
		change func(o *Options)
		frames int
		time   int // hundredths of a second
	}{
		{"half-moon", small, 50, 200},
		{"half-moon", func(o *Options) { small(o); o.FPS = f("30") }, 60, 200},
		{"half-moon", func(o *Options) { small(o); o.FPS = f("50"); o.Slow = f("0.337") }, 33, 67}, // 33.7 frames, but 2/100 s each
		{"half-moon", func(o *Options) { small(o); o.FPS = f("1") }, 2, 200},
		{"half-moon", onNothing, 50, 200},
		{"paper-star", func(o *Options) { small(o); o.Night, o.Rounds = true, 1 }, -1, -1},
	} {
		take := libraryTake(t, tt.id, tt.change)
		take.Workers = 2
		l, err := take.gifTimeline()
		if err != nil {
			t.Fatal(err)
		}
		shown, g := shownGIF(t, written(t, take, GIF))
		all := 0
		for _, d := range g.Delay {
			all += d
			if d < 2 {
				t.Errorf("%s: a frame lasts %d hundredths, want 2 at least", tt.id, d)
			}
		}
		if tt.frames > 0 && (len(shown) != tt.frames || all != tt.time) {
			t.Errorf("%s: %d frames, %d hundredths, want %d, %d", tt.id, len(shown), all, tt.frames, tt.time)
		}
		if g.LoopCount != 0 {
			t.Errorf("%s: loop count %d, want 0, for ever", tt.id, g.LoopCount)
		}
		frames := allFrames(t, take, l)
		for _, m := range frames {
			take.matte(m, whollyNew(m))
		}
		const most = 0.5 // 255ths: what is seen as the same picture
		if len(shown) != len(frames) {
			t.Fatalf("%s: %d frames, want %d", tt.id, len(shown), len(frames))
		}
		if off := meanOff(shown, frames); off > most {
			t.Errorf("%s: off by %.3f in the mean, want at most %v", tt.id, off, most)
		}
	}
}

// TestGIFExact: ground and inks are in the palette as they are, and a picture
// of few colours is shown exactly.
func TestGIFExact(t *testing.T) {
	frames := make([]*image.RGBA, 5)
	for k := range frames {
		frames[k] = image.NewRGBA(image.Rect(0, 0, 40, 30))
		draw.Draw(frames[k], frames[k].Rect, image.NewUniform(color.RGBA{252, 249, 242, 255}), image.Point{}, draw.Src)
		draw.Draw(frames[k], image.Rect(4*k, 5, 4*k+7, 17), image.NewUniform(color.RGBA{213, 94, uint8(40 * k), 255}), image.Point{}, draw.Src)
	}
	seen := tally{}
	for _, m := range frames {
		seen.add(m)
	}
	var out bytes.Buffer
	g := newGIF(&out, 40, 30, seen.palette(), false, 2)
	for _, m := range frames {
		if err := g.add(whollyNew(m), 4); err != nil {
			t.Fatal(err)
		}
	}
	if err := g.close(); err != nil {
		t.Fatal(err)
	}
	shown, anim := shownGIF(t, out.Bytes())
	for k, m := range frames {
		if !bytes.Equal(shown[k].Pix, m.Pix) {
			t.Errorf("frame %d is not shown as it is", k)
		}
		if want := image.Rect(4*k-4, 5, 4*k+7, 17); k > 0 && !anim.Image[k].Rect.In(want) {
			t.Errorf("frame %d covers %v, want no more than %v, in which it changes", k, anim.Image[k].Rect, want)
		}
	}
	take := libraryTake(t, "half-moon", small)
	l := take.Timeline()
	seen = tally{}
	for _, m := range allFrames(t, take, l) {
		seen.add(m)
	}
	p := seen.palette()
	for _, c := range []color.NRGBA{take.theme.Stage, take.theme.Right, take.theme.Ink} {
		if _, off := p.index(rgbOf([]byte{c.R, c.G, c.B, 255})); off != 0 {
			t.Errorf("%v is off by %d in the palette, want it as it is", c, off)
		}
	}
	if len(p.colours) > mostInks {
		t.Errorf("%d colours, want at most %d", len(p.colours), mostInks)
	}
}

// apngParts takes an APNG apart by the PNG specification: the frames' control
// chunks, and each frame as the PNG that it would be by itself.
func apngParts(t *testing.T, data []byte) (plays uint32, frames int, ctl [][]byte, parts []image.Image) {
	t.Helper()
	var ihdr []byte
	var body bytes.Buffer
	seq := uint32(0)
	number := func(b []byte) {
		if n := binary.BigEndian.Uint32(b); n != seq {
			t.Errorf("chunk number %d, want %d", n, seq)
		}
		seq++
	}
	chunk := func(w *bytes.Buffer, name string, b []byte) {
		binary.Write(w, binary.BigEndian, uint32(len(b)))
		w.WriteString(name)
		w.Write(b)
		binary.Write(w, binary.BigEndian, crc32.ChecksumIEEE(append([]byte(name), b...)))
	}
	flush := func() {
		if body.Len() == 0 {
			return
		}
		last := ctl[len(ctl)-1]
		var file bytes.Buffer
		file.WriteString("\x89PNG\r\n\x1a\n")
		chunk(&file, "IHDR", append(bytes.Clone(last[4:12]), ihdr[8:]...))
		chunk(&file, "IDAT", body.Bytes())
		chunk(&file, "IEND", nil)
		m, err := png.Decode(&file)
		if err != nil {
			t.Fatalf("frame %d: %v", len(parts), err)
		}
		parts = append(parts, m)
		body.Reset()
	}
	for b := data[8:]; len(b) > 0; {
		n := binary.BigEndian.Uint32(b)
		name, d := string(b[4:8]), b[8:8+n]
		if sum := binary.BigEndian.Uint32(b[8+n:]); sum != crc32.ChecksumIEEE(b[4:8+n]) {
			t.Errorf("%s: wrong checksum", name)
		}
		switch name {
		case "IHDR":
			ihdr = d
		case "acTL":
			frames, plays = int(binary.BigEndian.Uint32(d)), binary.BigEndian.Uint32(d[4:])
		case "fcTL":
			flush()
			number(d)
			ctl = append(ctl, d)
		case "IDAT":
			body.Write(d)
		case "fdAT":
			number(d)
			body.Write(d[4:])
		}
		b = b[12+n:]
	}
	flush()
	return plays, frames, ctl, parts
}

// TestAPNGWhole: an APNG has every frame, exactly, for its time and for ever;
// one without a ground has true opacity.
func TestAPNGWhole(t *testing.T) {
	for _, tt := range []struct {
		change   func(o *Options)
		num, den uint16 // of each frame; 0: not all alike
		ms       int
	}{
		{small, 1, 25, 2000},
		{onNothing, 1, 25, 2000},
		{func(o *Options) { small(o); o.FPS = f("30"); o.Slow = f("1.0001") }, 0, 1000, 2000}, // 2.0002 s in 60 frames
	} {
		take := libraryTake(t, "half-moon", tt.change)
		take.Workers = 2
		data := written(t, take, APNG)
		if _, err := png.Decode(bytes.NewReader(data)); err != nil {
			t.Fatalf("as a still: %v", err)
		}
		plays, n, ctl, parts := apngParts(t, data)
		want := allFrames(t, take, take.Timeline())
		if plays != 0 || n != len(want) || len(parts) != n || len(ctl) != n {
			t.Fatalf("plays %d, %d frames said, %d found, want 0, %d", plays, n, len(parts), len(want))
		}
		screen := image.NewNRGBA(image.Rect(0, 0, take.Width, take.Height))
		all := 0
		for k, m := range parts {
			at := image.Pt(int(binary.BigEndian.Uint32(ctl[k][12:])), int(binary.BigEndian.Uint32(ctl[k][16:])))
			num, den := binary.BigEndian.Uint16(ctl[k][20:]), binary.BigEndian.Uint16(ctl[k][22:])
			if tt.num != 0 && (num != tt.num || den != tt.den) {
				t.Errorf("frame %d lasts %d/%d, want %d/%d", k, num, den, tt.num, tt.den)
			}
			all += int(num) * 1000 / int(den)
			if ctl[k][24] != 0 || ctl[k][25] != 0 {
				t.Errorf("frame %d: disposal %d, blend %d, want 0, 0", k, ctl[k][24], ctl[k][25])
			}
			draw.Draw(screen, m.Bounds().Add(at), m, image.Point{}, draw.Src)
			if !bytes.Equal(screen.Pix, whollyNew(want[k]).Straight()) {
				t.Fatalf("frame %d is not what was painted", k)
			}
		}
		if all != tt.ms {
			t.Errorf("lasts %d ms, want %d", all, tt.ms)
		}
	}
}

// TestStraight: colours come back out of what their opacity is multiplied
// into, as package color has it.
func TestStraight(t *testing.T) {
	m := image.NewRGBA(image.Rect(0, 0, 256, 3))
	for a := range 256 {
		for y, c := range []uint8{0, uint8(a / 2), uint8(a)} {
			m.SetRGBA(a, y, color.RGBA{c, uint8(a), 0, uint8(a)})
		}
	}
	got := unmultiplied(m)
	for a := range 256 {
		for y := range 3 {
			want := color.NRGBAModel.Convert(m.RGBAAt(a, y)).(color.NRGBA)
			g := got.NRGBAAt(a, y)
			if d := int(g.R) - int(want.R); d < -1 || d > 1 || g.A != want.A || a > 0 && g.G != 255 {
				t.Fatalf("%v = %v, want %v", m.RGBAAt(a, y), g, want)
			}
		}
	}
}

// TestClear: without a ground, the corner is clear, the head's middle opaque,
// and edges are between; the ground's colour is nowhere.
func TestClear(t *testing.T) {
	take := libraryTake(t, "tide-ring", func(o *Options) { o.Ground = Clear })
	m, err := png.Decode(bytes.NewReader(written(t, take, PNG)))
	if err != nil {
		t.Fatal(err)
	}
	n := map[string]int{}
	for y := range take.Height {
		for x := range take.Width {
			c := color.NRGBAModel.Convert(m.At(x, y)).(color.NRGBA)
			switch {
			case c.A == 0:
				n["clear"]++
			case c.A == 255:
				n["opaque"]++
			default:
				n["between"]++
			}
			if c.A > 128 && int(c.R)+int(c.G)+int(c.B) > 720 {
				t.Fatalf("pixel %d, %d = %v, want no ground painted", x, y, c)
			}
		}
	}
	if n["clear"] < take.Width*take.Height/2 || n["opaque"] < 200 || n["between"] < 200 {
		t.Errorf("%v, want most clear, and some of each", n)
	}
	if c := m.At(0, 0); c != (color.NRGBA{}) {
		t.Errorf("corner = %v, want nothing", c)
	}
}

// TestZIP: the frames are there by name, each once, and each is what was
// painted.
func TestZIP(t *testing.T) {
	take := libraryTake(t, "half-moon", onNothing)
	take.Workers = 2
	data := written(t, take, Frames)
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	want := allFrames(t, take, take.Timeline())
	if len(z.File) != len(want) {
		t.Fatalf("%d files, want %d", len(z.File), len(want))
	}
	for k, file := range z.File {
		if name := "half-moon-" + strconv.Itoa(k + 101)[1:] + ".png"; file.Name != name {
			t.Errorf("file %d is %s, want %s", k, file.Name, name)
		}
		r, err := file.Open()
		if err != nil {
			t.Fatal(err)
		}
		m, err := png.Decode(r)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(m.(*image.NRGBA).Pix, whollyNew(want[k]).Straight()) {
			t.Errorf("frame %d is not what was painted", k)
		}
	}
}

// TestLoopJoins: the step from the last frame to the first is one like any
// other, and one more frame would be the first.
func TestLoopJoins(t *testing.T) {
	for _, id := range []string{"half-moon", "two-bell-buoys", "paper-star", "swan", "four-corners", "lock-gates"} {
		take := libraryTake(t, id, small)
		a, err := take.artist()
		if err != nil {
			t.Fatal(err)
		}
		l := take.Timeline()
		ground := a.paintGround()
		var list display.List
		at := func(beat float64) *image.RGBA {
			c := paint.NewLayer(ground)
			a.paint(c, ground, &list, beat)
			return c.RGBA
		}
		first, m := at(0), at(l.Beat(l.N))
		// Round by round beats lose a little accuracy, which may round a pixel
		// the other way.
		if d := largest(m, first); d > 2 {
			t.Errorf("%s: the frame after the last differs from the first by %d, want none", id, d)
		}
		// Heads go as far over the join as in the mean step beside it.
		step := func(from, to float64) (all float64) {
			for _, track := range take.tracks {
				p, q := track.At(from).Head, track.At(to).Head
				all += real((p - q) * complex(real(p-q), -imag(p-q)))
			}
			return all
		}
		last, next := step(l.Beat(l.N-1), 0), step(l.Beat(l.N-1), l.Beat(l.N))
		if d := last - next; d > 1e-9 || d < -1e-9 {
			t.Errorf("%s: the step into the first frame is %g, want %g", id, last, next)
		}
	}
}

func largest(a, b *image.RGBA) (most int) {
	for i := range a.Pix {
		most = max(most, int(a.Pix[i])-int(b.Pix[i]), int(b.Pix[i])-int(a.Pix[i]))
	}
	return most
}

// TestWorkers: how many work at a time changes nothing.
func TestWorkers(t *testing.T) {
	for _, format := range []Format{GIF, APNG, Frames} {
		take := libraryTake(t, "half-moon", small)
		one := written(t, take, format)
		take.Workers = 3
		if many := written(t, take, format); !bytes.Equal(one, many) {
			t.Errorf("%s: three workers make another file than one", formatted[format].name)
		}
	}
}

var errFull = errors.New("no room")

// fullAfter takes so many bytes.
type fullAfter int

func (n *fullAfter) Write(p []byte) (int, error) {
	if *n -= fullAfter(len(p)); *n < 0 {
		return 0, errFull
	}
	return len(p), nil
}

// TestStops: an end of the context and a writer's fault end every format with
// that error, wherever they come.
func TestStops(t *testing.T) {
	for i := range formatted {
		take := libraryTake(t, "half-moon", small)
		take.Workers = 2
		for _, room := range []fullAfter{0, 500} {
			if err := take.Write(context.Background(), &room, Format(i), nil); !errors.Is(err, errFull) {
				t.Errorf("%s: %v from a full writer, want its error", formatted[i].name, err)
			}
		}
		ctx, cancel := context.WithCancel(context.Background())
		if Format(i).Loops() {
			err := take.Write(ctx, &bytes.Buffer{}, Format(i), func(done, _ int) {
				if done == 7 {
					cancel()
				}
			})
			if !errors.Is(err, context.Canceled) {
				t.Errorf("%s: %v after 7 frames, want it cancelled", formatted[i].name, err)
			}
		}
		cancel()
		if err := take.Write(ctx, &bytes.Buffer{}, Format(i), nil); !errors.Is(err, context.Canceled) {
			t.Errorf("%s: %v, want it cancelled", formatted[i].name, err)
		}
	}
}

// TestFFprobe: an independent decoder finds the same frames and time in what
// is written.
func TestFFprobe(t *testing.T) {
	probe, err := exec.LookPath("ffprobe")
	if err != nil {
		t.Skip("ffprobe is not here (Debian has it in ffmpeg)")
	}
	take := libraryTake(t, "half-moon", small)
	for format, want := range map[Format]string{GIF: "gif,120,96,50", APNG: "apng,120,96,50", PNG: "png,120,96,1"} {
		file := filepath.Join(t.TempDir(), "file"+formatted[format].ext)
		if err := os.WriteFile(file, written(t, take, format), 0o600); err != nil {
			t.Fatal(err)
		}
		out, err := exec.Command(probe, "-v", "error", "-count_frames", "-show_entries", "stream=codec_name,width,height,nb_read_frames", "-of", "csv=p=0", file).CombinedOutput()
		if got := strings.TrimSpace(string(out)); err != nil || got != want {
			t.Errorf("%s: %q, %v, want %q", formatted[format].name, got, err, want)
		}
	}
}

// TestGIFLoops: the first frame draws over all that the last has left.
func TestGIFLoops(t *testing.T) {
	_, g := shownGIF(t, written(t, libraryTake(t, "half-moon", small), GIF))
	if first := g.Image[0]; first.Rect != image.Rect(0, 0, 120, 96) {
		t.Errorf("the first frame covers %v, want all", first.Rect)
	}
	for i, c := range g.Image[0].Pix {
		if c == asBefore {
			t.Fatalf("pixel %d of the first frame is left as before", i)
		}
	}
	if g.Disposal[0] != gif.DisposalNone {
		t.Errorf("disposal %d, want %d", g.Disposal[0], gif.DisposalNone)
	}
}
