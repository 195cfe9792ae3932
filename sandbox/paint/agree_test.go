package paint_test

import (
	"bytes"
	"flag"
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/paint"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// The painters agree: of two pictures of one list, in 255ths, no more than a
// share of the pixels is further apart than an eye could see, and the whole is
// hardly apart at all. An edge in pixels is feathered over one of them, in an
// SVG it is as much as is covered; where a fading line crosses itself the SVG
// shows the younger part, the pixels both.
const (
	farApart  = 40   // of 255
	mostFar   = 0.01 // of the pixels
	meanApart = 1    // of 255
)

// agree holds two pictures against the limits.
func agree(t *testing.T, what string, a, b []float64) {
	t.Helper()
	sum, far := 0.0, 0
	for i := 0; i < len(a); i += 4 {
		worst := 0.0
		for k := range 4 {
			d := math.Abs(a[i+k] - b[i+k])
			sum += d
			worst = max(worst, d)
		}
		if worst > farApart {
			far++
		}
	}
	n := float64(len(a) / 4)
	if mean := sum / (4 * n); mean > meanApart || float64(far)/n > mostFar {
		t.Errorf("%s: %.3f apart in the mean, %.2f%% of pixels far apart, want at most %v, %v%%", what, mean, 100*float64(far)/n, meanApart, 100*mostFar)
	}
}

func values(m *image.RGBA) []float64 {
	out := make([]float64, len(m.Pix))
	for i, x := range m.Pix {
		out[i] = float64(x)
	}
	return out
}

// bothWays paints a list into memory, and as an SVG that is then shown.
func bothWays(t *testing.T, l *display.List, w, h int, scale float64) (pixels *image.RGBA, drawn []float64) {
	t.Helper()
	faces, err := face.New()
	if err != nil {
		t.Fatal(err)
	}
	pixels = image.NewRGBA(image.Rect(0, 0, w, h))
	paint.NewPixels(faces).Paint(pixels, l, scale)
	var file bytes.Buffer
	if err := paint.SVG(&file, l, faces, float64(w)/scale, float64(h)/scale, scale, "a & b < c \"d\" \x01\xff"); err != nil {
		t.Fatal(err)
	}
	return pixels, paint.ShowSVG(t, file.Bytes(), w, h, scale)
}

// everyMark is a list with every sort of mark.
func everyMark(back color.NRGBA) *display.List {
	var l display.List
	l.Reset(back)
	ink, hue := color.NRGBA{42, 37, 30, 255}, color.NRGBA{213, 94, 0, 255}
	pale := color.NRGBA{0, 114, 178, 110}
	l.FillRect(display.Rect{X: 6, Y: 6, W: 40, H: 24}, 6, hue)
	l.FillRect(display.Rect{X: 20, Y: 14, W: 40, H: 30}, 0, pale)
	l.StrokeRect(display.Rect{X: 70, Y: 8, W: 44, H: 30}, 8, 3, ink)
	l.Disc(display.Pt{X: 30, Y: 70}, 14.3, hue)
	l.Ring(display.Pt{X: 40, Y: 74}, 16, 4, pale)
	l.Segment(display.Pt{X: 62, Y: 50.5}, display.Pt{X: 112, Y: 84}, 2.25, ink)
	l.Polyline(4, hue, true, display.Pt{X: 66, Y: 60}, display.Pt{X: 90, Y: 62}, display.Pt{X: 88, Y: 86}, display.Pt{X: 64, Y: 84})
	l.Poly(pale, display.Pt{X: 96, Y: 46}, display.Pt{X: 114, Y: 46}, display.Pt{X: 105, Y: 62})
	l.BeginLine(5, hue, true)
	for k := range 41 {
		a := float64(k) / 40 * 2 * math.Pi * 0.8
		l.To(display.Pt{X: 60 + 45*math.Cos(a), Y: 128 + 26*math.Sin(a)}, float32(k)/40)
	}
	l.Text(display.Pt{X: 8, Y: 130}, 20, true, ink, "Poi 3·8")
	l.Text(display.Pt{X: 8, Y: 150}, 12, false, pale, "beat ½ of é")
	return &l
}

// TestPaintersAgree: pixels and SVG show every sort of mark alike, at any
// density, on a ground and on none, and stages of the library in both themes.
func TestPaintersAgree(t *testing.T) {
	for _, back := range []color.NRGBA{{252, 249, 242, 255}, {}} {
		for _, scale := range []float64{1, 2.5} {
			m, drawn := bothWays(t, everyMark(back), int(120*scale), int(160*scale), scale)
			agree(t, "every mark", values(m), drawn)
		}
	}
	faces, err := face.New()
	if err != nil {
		t.Fatal(err)
	}
	for i, e := range presets.Library() {
		if i%9 != 0 {
			continue
		}
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		th := &theme.Day
		if i%2 == 0 {
			th = &theme.Night
		}
		s := session.New(p)
		s.Playing = true
		s.GoTo(1.3)
		area := display.Rect{W: 180, H: 180}
		st := scene.Stage{Theme: th, Faces: faces, Words: &words.English, Area: area, View: scene.Fit(s.Tracks(), area, 20, false)}
		var l display.List
		l.Reset(th.Stage)
		st.Draw(&l, s)
		m, drawn := bothWays(t, &l, 180, 180, 1)
		agree(t, p.Title, values(m), drawn)
	}
}

var regenerate = flag.Bool("update", false, "paint the golden pictures anew")

// TestGolden: every sort of mark looks as it did when somebody last looked.
func TestGolden(t *testing.T) {
	const scale = 2
	m, _ := bothWays(t, everyMark(color.NRGBA{252, 249, 242, 255}), 120*scale, 160*scale, scale)
	file := filepath.Join("..", "..", "testdata", "pictures", "marks.png")
	if *regenerate {
		var out bytes.Buffer
		if err := png.Encode(&out, m); err != nil {
			t.Fatal(err)
		}
		if err := os.MkdirAll(filepath.Dir(file), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, out.Bytes(), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	want, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	const most = 2 // of 255: what another processor may round otherwise
	off := 0
	for y := range m.Rect.Dy() {
		for x := range m.Rect.Dx() {
			r, g, b, a := want.At(x, y).RGBA()
			c := m.RGBAAt(x, y)
			for _, d := range []int{int(c.R) - int(r>>8), int(c.G) - int(g>>8), int(c.B) - int(b>>8), int(c.A) - int(a>>8)} {
				if d > most || d < -most {
					off++
				}
			}
		}
	}
	if off > 0 {
		t.Errorf("%d values differ from %s by more than %d; look, and if it is meant: go test ./sandbox/paint -update", off, file, most)
	}
}
