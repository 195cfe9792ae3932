// Package theme holds every colour and size of the bench.
package theme

import "image/color"

// Theme is a palette and the sizes that go with it. Text has at least 4.5:1
// against Ground and Panel, controls and inks at least 3:1 (WCAG 2.2, 1.4.3
// and 1.4.11); a test computes it.
type Theme struct {
	Night   bool
	Ground  color.NRGBA // behind everything
	Stage   color.NRGBA // behind the pattern
	Panel   color.NRGBA // behind a control
	Pressed color.NRGBA
	Ink     color.NRGBA // text
	Muted   color.NRGBA // lesser text
	Edge    color.NRGBA // outline of a control
	Hair    color.NRGBA // decoration: grid, dividers
	Focus   color.NRGBA // ring of what has the keyboard
	Warn    color.NRGBA
	Left    color.NRGBA
	Right   color.NRGBA
	Pieces  []color.NRGBA // for telling pieces apart on a slide
}

func rgb(hex uint32) color.NRGBA {
	return color.NRGBA{uint8(hex >> 16), uint8(hex >> 8), uint8(hex), 255}
}

// The hues of the hands are from Okabe and Ito, "Color Universal Design"
// (2008): vermilion and blue by day, orange and bluish green by night. The
// pieces' are from the same set, by day darkened to 3:1.
var (
	Day = Theme{
		Ground: rgb(0xF6F0E4), Stage: rgb(0xFCF9F2), Panel: rgb(0xFFFDF8), Pressed: rgb(0xE9DFCB),
		Ink: rgb(0x2A251E), Muted: rgb(0x62594C), Edge: rgb(0x857A69), Hair: rgb(0xDDD3C0),
		Focus: rgb(0x5A3FA0), Warn: rgb(0x9E1B32), Left: rgb(0x0072B2), Right: rgb(0xD55E00),
		Pieces: []color.NRGBA{rgb(0xD55E00), rgb(0x0072B2), rgb(0x00805C), rgb(0xB0578D), rgb(0x8A6D00), rgb(0x2A251E)},
	}
	Night = Theme{
		Night:  true,
		Ground: rgb(0x15171D), Stage: rgb(0x0E1014), Panel: rgb(0x22252E), Pressed: rgb(0x363B48),
		Ink: rgb(0xF2EDE3), Muted: rgb(0xB3AEA3), Edge: rgb(0x7C8291), Hair: rgb(0x2D313B),
		Focus: rgb(0xC9B6FF), Warn: rgb(0xFF9A9A), Left: rgb(0x009E73), Right: rgb(0xE69F00),
		Pieces: []color.NRGBA{rgb(0xE69F00), rgb(0x56B4E9), rgb(0x009E73), rgb(0xCC79A7), rgb(0xF0E442), rgb(0xF2EDE3)},
	}
)

// Sizes, in CSS pixels.
const (
	Finger    = 44.0 // least height and width of what is touched
	TextSmall = 12.0
	TextBody  = 14.0
	TextLarge = 17.0
	Corner    = 10.0
	Gap       = 8.0
)

// Of returns the ink of a hand.
func (t *Theme) Of(left bool) color.NRGBA {
	if left {
		return t.Left
	}
	return t.Right
}

// Piece returns the colour of its own of a lane's piece.
func (t *Theme) Piece(i int) color.NRGBA { return t.Pieces[i%len(t.Pieces)] }
