package qr

import (
	"errors"
	"fmt"
	"image"
	"image/color"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"

	"whorlbench/presets"
	"whorlbench/presets/link"
	"whorlbench/sandbox/display"
)

const page = "https://spin.example/harbour-lane/bench/"

var black, white = color.NRGBA{A: 255}, color.NRGBA{255, 255, 255, 255}

// picture is a code drawn as black on white, some pixels a module.
type picture struct{ *image.Gray }

func newPicture(side int) picture {
	p := picture{image.NewGray(image.Rect(0, 0, side, side))}
	for i := range p.Pix {
		p.Pix[i] = 0x80 // neither: what is not drawn is seen
	}
	return p
}

func (p picture) fill(x, y, w, h int, grey uint8) {
	for j := y; j < y+h; j++ {
		for i := x; i < x+w; i++ {
			p.SetGray(i, j, color.Gray{Y: grey})
		}
	}
}

// read is what an independent decoder finds in a picture, and the level.
func (p picture) read(t *testing.T) (text, level string) {
	t.Helper()
	bitmap, err := gozxing.NewBinaryBitmapFromImage(p)
	if err != nil {
		t.Fatal(err)
	}
	hints := map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true}
	found, err := qrcode.NewQRCodeReader().Decode(bitmap, hints)
	if err != nil {
		t.Fatalf("the decoder finds no code: %v", err)
	}
	return found.GetText(), fmt.Sprint(found.GetResultMetadata()[gozxing.ResultMetadataType_ERROR_CORRECTION_LEVEL])
}

var stretch = regexp.MustCompile(`M(\d+) (\d+)h(\d+)v1H(\d+)z`)

// pathPicture draws the path as SVG 1.1, section 8.3, says.
func pathPicture(t *testing.T, c Code) picture {
	t.Helper()
	const scale = 3
	p := newPicture(c.Width() * scale)
	p.fill(0, 0, c.Width()*scale, c.Width()*scale, 255)
	path := c.Path()
	if rest := stretch.ReplaceAllString(path, ""); rest != "" {
		t.Fatalf("the path has %q in it", rest)
	}
	for _, m := range stretch.FindAllStringSubmatch(path, -1) {
		var n [4]int
		for i := range n {
			n[i], _ = strconv.Atoi(m[i+1])
		}
		if n[3] != n[0] {
			t.Fatalf("the stretch %q does not come back to where it began", m[0])
		}
		p.fill(n[0]*scale, n[1]*scale, n[2]*scale, scale, 0)
	}
	return p
}

// listPicture draws the display list's rectangles.
func listPicture(t *testing.T, c Code, side int) picture {
	t.Helper()
	var l display.List
	c.Draw(&l, display.Rect{W: float64(side), H: float64(side) + 7}, black, white)
	p := newPicture(side + 7)
	for _, m := range l.Marks {
		if m.Kind != display.FillRect || m.Rect.X < 0 || m.Rect.Y < 0 || m.Rect.X+m.Rect.W > float64(side) {
			t.Fatalf("a mark %+v, want rectangles within the place given", m)
		}
		grey := uint8(255)
		if m.Color == black {
			grey = 0
		}
		p.fill(int(m.Rect.X), int(m.Rect.Y), int(m.Rect.W), int(m.Rect.H), grey)
	}
	for i, grey := range p.Pix {
		if grey == 0x80 {
			p.Pix[i] = 255
		}
	}
	return p
}

// Every built-in pattern's code is read by an independent decoder, and what
// it says opens the same pattern.
func TestLibraryCodes(t *testing.T) {
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		s, err := link.Share(p, page, "")
		if err != nil {
			t.Fatal(err)
		}
		c, err := Of(s)
		if err != nil {
			t.Fatalf("%s: %v", e.ID, err)
		}
		for what, p := range map[string]picture{"path": pathPicture(t, c), "list": listPicture(t, c, 420)} {
			got, _ := p.read(t)
			if got != s.URL {
				t.Errorf("%s: the %s reads %q, want %q", e.ID, what, got, s.URL)
			}
		}
		_, fragment, _ := strings.Cut(s.URL, "#")
		if back, err := link.Decode(fragment); err != nil || !back.Equal(p) {
			t.Errorf("%s: the link opens %+v, %v, want the pattern", e.ID, back, err)
		}
	}
}

// Sizes: version v has 17 + 4v modules a side, and at level M version 4 holds
// 62 bytes, version 5 84 and version 15 412; at level L version 13 holds 425 and version 25 1273
// (ISO/IEC 18004, tables 1 and 7).
func TestSizesAndLevels(t *testing.T) {
	for _, tt := range []struct {
		bytes, version int
		levels         string
	}{
		{62, 4, "MQH"}, {63, 5, "MQH"}, {84, 5, "MQH"}, {85, 6, "MQH"}, {412, 15, "MQH"},
		{413, 13, "L"}, {425, 13, "L"}, {426, 14, "L"}, {1273, 25, "L"},
	} {
		c, err := encode(strings.Repeat("x", tt.bytes))
		if err != nil {
			t.Fatalf("%d bytes: %v", tt.bytes, err)
		}
		if got, want := c.Size(), 17+4*tt.version; got != want {
			t.Errorf("%d bytes: %d modules a side, want %d", tt.bytes, got, want)
		}
		if got, want := c.Width(), c.Size()+8; got != want {
			t.Errorf("%d bytes: with its border %d modules, want %d", tt.bytes, got, want)
		}
		text, level := pathPicture(t, c).read(t)
		if len(text) != tt.bytes || !strings.Contains(tt.levels, level) {
			t.Errorf("%d bytes: the decoder reads %d at level %s, want one of %s", tt.bytes, len(text), level, tt.levels)
		}
	}
}

// A tenth of the modules of a code of level M may be wrong in one place.
func TestCodeBearsDirt(t *testing.T) {
	c, err := encode(page + "#w1.uHATx8IW8B6JOWm6ufn5eUooAYsz1OjuaEAAAAD__w")
	if err != nil {
		t.Fatal(err)
	}
	p := pathPicture(t, c)
	middle := c.Width() * 3 / 2
	p.fill(middle, middle, 18, 18, 0)
	if got, _ := p.read(t); !strings.HasPrefix(got, page) {
		t.Errorf("with a blot the decoder reads %q", got)
	}
}

func TestRefusals(t *testing.T) {
	p, err := presets.First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	here, err := link.Share(p, "http://127.0.0.1:8377/", "")
	if err != nil || !strings.HasPrefix(here.URL, "http://127.0.0.1:8377/#w1.") {
		t.Fatalf("Share() on this device = %+v, %v, want a link that is good here", here, err)
	}
	if _, err := Of(here); !errors.Is(err, link.ErrOnlyHere) || !strings.Contains(err.Error(), "--public-url") {
		t.Errorf("Of() a link that is good here only gives %v, want what to do about it", err)
	}
	there, err := link.Share(p, "http://127.0.0.1:8377/", page)
	if err != nil || !strings.HasPrefix(there.URL, page+"#w1.") {
		t.Fatalf("Share() with a public address = %+v, %v, want it first", there, err)
	}
	if _, err := Of(there); err != nil {
		t.Errorf("Of() the same with a public address gives %v, want no error", err)
	}
	if _, err := link.Share(p, "file:///index.html", ""); !errors.Is(err, link.ErrNotPublic) {
		t.Errorf("Share() of a page in a file gives %v, want %v", err, link.ErrNotPublic)
	}
	if _, err := Of(link.Shared{URL: strings.Repeat("x", mostBytes+1)}); !errors.Is(err, ErrTooLong) || !strings.Contains(err.Error(), "at most 1273") {
		t.Errorf("Of() 1274 bytes gives %v, want %v", err, ErrTooLong)
	}
}
