package icon

import (
	"bytes"
	"image/color"
	"image/png"
	"math"
	"os"
	"testing"
)

func parse(t *testing.T, svg string) Icon {
	t.Helper()
	c, err := Parse([]byte(svg))
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// The page's own icon: which colour lies where is read off its SVG.
func TestPagesIcon(t *testing.T) {
	svg, err := os.ReadFile("../../icon.svg")
	if err != nil {
		t.Fatal(err)
	}
	c := parse(t, string(svg))
	ground, right := color.NRGBA{0x0e, 0x10, 0x14, 255}, color.NRGBA{0xe6, 0x9f, 0x00, 255}
	left, head := color.NRGBA{0x00, 0x9e, 0x73, 255}, color.NRGBA{0xf2, 0xed, 0xe3, 255}
	const side = 192 // two pixels a unit
	img := c.draw(side, false)
	for _, tt := range []struct {
		x, y int // in units
		want color.NRGBA
	}{
		{0, 0, color.NRGBA{}},   // outside the rounded corner
		{6, 6, ground},          // within it
		{84, 48, right},         // the rightmost place of the half circle
		{48, 83, left},          // both lines meet here, and the left hand's is drawn later
		{60, 48, ground},        // inside the half circle
		{12, 48, left},          // the leftmost place of the curves
		{48, 12, head},          // the disc lies over both
		{48, 5, head},           // up to its edge
		{73, 23, right},         // 45° up on the half circle: 48 + 36/√2
		{95, 95, color.NRGBA{}}, // outside again
	} {
		if got := img.NRGBAAt(2*tt.x, 2*tt.y); got != tt.want {
			t.Errorf("at %d %d the colour is %v, want %v", tt.x, tt.y, got, tt.want)
		}
	}
	// Maskable: no see-through place, and nothing but the ground outside four
	// fifths of the inscribed circle.
	img = c.draw(side, true)
	for y := range side {
		for x := range side {
			got := img.NRGBAAt(x, y)
			far := math.Hypot(float64(x)+0.5-side/2, float64(y)+0.5-side/2)
			if got.A != 255 || far > 0.8*side/2+1 && got != ground {
				t.Fatalf("maskable, at %d %d the colour is %v, want the ground", x, y, got)
			}
		}
	}
	data, err := c.PNG(512, false)
	if err != nil {
		t.Fatal(err)
	}
	back, err := png.Decode(bytes.NewReader(data))
	if err != nil || back.Bounds().Dx() != 512 || back.Bounds().Dy() != 512 {
		t.Errorf("the PNG is %v, %v, want 512 by 512", back.Bounds(), err)
	}
	if again, _ := c.PNG(512, false); !bytes.Equal(again, data) {
		t.Error("the second PNG has other bytes")
	}
}

// Areas that geometry knows: a disc πr², a line with round ends 2rl + πr², a
// half circle's ring πRw + a round end on each side.
func TestAreas(t *testing.T) {
	for _, tt := range []struct {
		name, shape string
		want        float64
	}{
		{"disc", `<circle cx="50" cy="50" r="20" fill="#ffffff"/>`, math.Pi * 400},
		{"square", `<rect x="10" y="10" width="50" height="40" fill="#ffffff"/>`, 2000},
		{"rounded", `<rect width="100" height="100" rx="20" fill="#ffffff"/>`, 10000 - (4-math.Pi)*400},
		{"line", `<path d="M20 50 c10 0 20 0 60 0" fill="none" stroke="#ffffff" stroke-width="10" stroke-linecap="round"/>`, 600 + math.Pi*25},
		{"half ring", `<path d="M20 50a30 30 0 0 1 60 0" fill="none" stroke="#ffffff" stroke-width="10" stroke-linecap="round"/>`, math.Pi*300 + math.Pi*25},
		{"half ring below", `<path d="M20 50A30 30 0 0 0 80 50" fill="none" stroke="#ffffff" stroke-width="10" stroke-linecap="round"/>`, math.Pi*300 + math.Pi*25},
		{"most of a ring", `<path d="M50 20a30 30 0 1 1-30 30" fill="none" stroke="#ffffff" stroke-width="10" stroke-linecap="round"/>`, math.Pi*450 + math.Pi*25},
	} {
		const side = 400
		img := parse(t, `<svg viewBox="0 0 100 100">`+tt.shape+`</svg>`).draw(side, false)
		sum := 0.0
		for i := 3; i < len(img.Pix); i += 4 {
			sum += float64(img.Pix[i]) / 255
		}
		if got := sum * 10000 / (side * side); math.Abs(got-tt.want) > 0.003*tt.want {
			t.Errorf("%s covers %.1f, want %.1f", tt.name, got, tt.want)
		}
	}
}

func TestRefusals(t *testing.T) {
	for name, svg := range map[string]string{
		"nothing":     ``,
		"no viewBox":  `<svg/>`,
		"not square":  `<svg viewBox="0 0 10 20"/>`,
		"no XML":      `<svg viewBox="0 0 10 10"><rect`,
		"text":        `<svg viewBox="0 0 10 10"><text>a</text></svg>`,
		"colour name": `<svg viewBox="0 0 10 10"><circle r="1" fill="red"/></svg>`,
		"number":      `<svg viewBox="0 0 10 10"><circle r="one" fill="#ffffff"/></svg>`,
		"filled path": `<svg viewBox="0 0 10 10"><path d="M1 1"/></svg>`,
		"ellipse":     `<svg viewBox="0 0 10 10"><path d="M1 1a2 3 0 0 1 4 4" fill="none" stroke="#ffffff" stroke-linecap="round"/></svg>`,
		"letter":      `<svg viewBox="0 0 10 10"><path d="M1 1q2 3 0 0" fill="none" stroke="#ffffff" stroke-linecap="round"/></svg>`,
		"too few":     `<svg viewBox="0 0 10 10"><path d="M1" fill="none" stroke="#ffffff" stroke-linecap="round"/></svg>`,
	} {
		if _, err := Parse([]byte(svg)); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
