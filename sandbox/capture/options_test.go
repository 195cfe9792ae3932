package capture

import (
	"bytes"
	"go/parser"
	"go/token"
	"image"
	"image/color"
	"image/png"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"whorlbench/sandbox/words"
)

// TestOptionsChecked: the defaults are fine, and each number out of range is
// told, all at once.
func TestOptionsChecked(t *testing.T) {
	o := Defaults()
	if err := o.Check(&words.English); err != nil {
		t.Errorf("defaults: %v", err)
	}
	for _, tt := range []struct {
		change func(o *Options)
		lines  int
	}{
		{func(o *Options) { o.Width = 31 }, 1},
		{func(o *Options) { o.Height = 4097 }, 1},
		{func(o *Options) { o.FPS = f("0.9") }, 1},
		{func(o *Options) { o.FPS = f("121") }, 1},
		{func(o *Options) { o.Slow = f("0.05") }, 1},
		{func(o *Options) { o.Rounds = -1 }, 1},
		{func(o *Options) { o.Rounds = 1001 }, 1},
		{func(o *Options) { o.Moments = 1 }, 1},
		{func(o *Options) { o.At = f("-1/2") }, 1},
		{func(o *Options) { *o = Options{} }, 4}, // size, frames a second, slow motion, moments
		{func(o *Options) { o.Width, o.Height, o.FPS, o.Slow, o.At = 4096, 32, f("120"), f("100"), f("1000.5") }, 0},
	} {
		o := Defaults()
		tt.change(&o)
		lines := 0
		if err := o.Check(&words.English); err != nil {
			lines = len(strings.Split(err.Error(), "\n"))
			if strings.Contains(err.Error(), "%!") {
				t.Errorf("%v: a place is filled wrongly", err)
			}
		}
		if lines != tt.lines {
			t.Errorf("%+v: %d faults, want %d", o, lines, tt.lines)
		}
	}
}

// TestFileNames: names tell what a file is.
func TestFileNames(t *testing.T) {
	take := libraryTake(t, "half-moon", func(o *Options) { o.Width, o.Height, o.FPS = 640, 480, f("29.97") })
	var got []string
	for i := range formatted {
		got = append(got, take.FileName(Format(i)))
	}
	want := []string{"half-moon-640x480.png", "half-moon-640x480.svg", "half-moon-sheet-2640x512.png", "half-moon-strobe-640x480.png",
		"half-moon-640x480-29.97fps.gif", "half-moon-apng-640x480-29.97fps.png", "half-moon-frames-640x480-29.97fps.zip",
		"half-moon-sheet-2640x512.svg", "half-moon-strobe-640x480.svg"}
	if m, err := png.DecodeConfig(bytes.NewReader(written(t, take, Sheet))); err != nil || m.Width != 2640 || m.Height != 512 {
		t.Errorf("the sheet is %d by %d, %v, want as its name says", m.Width, m.Height, err)
	}
	if !slices.Equal(got, want) {
		t.Errorf("names %q, want %q", got, want)
	}
	for i, name := range Names() {
		if f, ok := Named(name); !ok || f != Format(i) {
			t.Errorf("Named(%q) = %v, %v, want %d", name, f, ok, i)
		}
	}
}

// TestGround: the corner has the colour that was asked for, and the pattern is
// the same on each.
func TestGround(t *testing.T) {
	for _, tt := range []struct {
		change func(o *Options)
		want   color.RGBA
	}{
		{nil, color.RGBA{0xFC, 0xF9, 0xF2, 255}},
		{func(o *Options) { o.Night = true }, color.RGBA{0x0E, 0x10, 0x14, 255}},
		{func(o *Options) { o.Ground, o.Colour = Coloured, color.NRGBA{1, 2, 3, 0} }, color.RGBA{1, 2, 3, 255}},
		{func(o *Options) { o.Ground = Clear }, color.RGBA{}},
	} {
		take := libraryTake(t, "tide-ring", tt.change)
		a, err := take.artist()
		if err != nil {
			t.Fatal(err)
		}
		m := image.NewRGBA(image.Rect(0, 0, take.Width, take.Height))
		a.pixels.Paint(m, &a.still().list, 1)
		if got := m.RGBAAt(1, 1); got != tt.want {
			t.Errorf("ground %v, want %v", got, tt.want)
		}
	}
}

// TestFrameAlike: takes of one framing put one place of the plane in one place
// of the picture.
func TestFrameAlike(t *testing.T) {
	a, b := libraryTake(t, "half-moon", nil), libraryTake(t, "swan", nil)
	if a.Extent == b.Extent {
		t.Fatal("two patterns of one extent show nothing")
	}
	FrameAlike(a, b)
	for _, z := range []complex128{0, complex(1, 0.5), complex(-0.3, -1)} {
		var at []any
		for _, take := range []*Take{a, b} {
			x, err := take.artist()
			if err != nil {
				t.Fatal(err)
			}
			at = append(at, x.stage(x.frame()).View.ToScreen(z))
		}
		if at[0] != at[1] {
			t.Errorf("%v is at %v and at %v", z, at[0], at[1])
		}
	}
}

// TestImports: what captures can run in a page: no files, processes, network
// or clock.
func TestImports(t *testing.T) {
	files, err := filepath.Glob("*.go")
	if err != nil || len(files) == 0 {
		t.Fatal(err)
	}
	for _, file := range files {
		if strings.HasSuffix(file, "_test.go") {
			continue
		}
		tree, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.ImportsOnly)
		if err != nil {
			t.Fatal(err)
		}
		for _, spec := range tree.Imports {
			switch path := strings.Trim(spec.Path.Value, `"`); {
			case path == "os", path == "time", path == "syscall", strings.HasPrefix(path, "os/"), strings.HasPrefix(path, "net"), strings.HasPrefix(path, "math/rand"):
				t.Errorf("%s imports %s", file, path)
			}
		}
	}
}

// TestTethers: slack and the hand really taken are drawn when they are wanted,
// and change nothing else.
func TestTethers(t *testing.T) {
	drawn := func(tempo float64, change func(o *Options)) int {
		p := libraryTake(t, "half-moon", nil).pattern
		p.Tempo = tempo
		o := Defaults()
		change(&o)
		take, err := New(p, o, &words.English)
		if err != nil {
			t.Fatal(err)
		}
		return len(written(t, take, SVG))
	}
	taken := func(o *Options) { o.Show.Taken = true }
	slack := func(o *Options) { o.Show.HideSlack = false }
	none := func(*Options) {}
	for _, tt := range []struct {
		name   string
		tempo  float64 // the half-moon is taut from 109.2 (README)
		change func(o *Options)
		more   bool
	}{
		{"the hand that is really taken", 120, taken, true},
		{"slack, where none is", 120, slack, false},
		{"slack", 60, slack, true},
	} {
		with, without := drawn(tt.tempo, tt.change), drawn(tt.tempo, none)
		if (with > without) != tt.more || with < without {
			t.Errorf("%s: a drawing of %d bytes, without %d", tt.name, with, without)
		}
	}
}
