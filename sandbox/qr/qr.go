// Package qr makes the square code of a link, which a phone's camera opens
// (QR code, ISO/IEC 18004), as a path for the page or as a display list.
package qr

import (
	"errors"
	"fmt"
	"image/color"
	"strconv"

	"whorlbench/presets/link"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/words"
)

// ErrTooLong says that a link makes more modules than a phone reads.
var ErrTooLong = errors.New("too long for a code")

const (
	// easyVersion (77 modules a side) and mostVersion (117) are the codes that
	// phones read off a screen at arm's length with ease, and still: common
	// practice.
	easyVersion, mostVersion = 15, 25
	// mostBytes is what the largest one holds at the lowest level (ISO/IEC
	// 18004, table 7).
	mostBytes = 1273
	// Quiet is the width in modules of the empty border that belongs to a code
	// (ISO/IEC 18004, section 5.3.8).
	Quiet = 4
)

// Code is a code as its modules.
type Code struct {
	size int
	dark []bool // row by row from the top
}

// Of returns the code of a link: of level M or better while it is easily
// read, of level L when it has to hold more. It refuses with s.NoCode a link
// that another device could not open, and with ErrTooLong one of more than 1273 bytes.
func Of(s link.Shared) (Code, error) {
	if s.NoCode != nil {
		return Code{}, s.NoCode
	}
	return encode(s.URL)
}

func encode(text string) (Code, error) {
	w := &words.Said.Share.Link
	if len(text) > mostBytes {
		return Code{}, link.Error{Cause: ErrTooLong, What: fmt.Sprintf(w.CodeTooLong, len(text), mostBytes)}
	}
	version, l, ok := choose(len(text), medium, easyVersion)
	if !ok {
		version, l, _ = choose(len(text), low, mostVersion) // mostBytes have room
	}
	return made(text, version, l), nil
}

// Size returns the number of modules a side, without the border.
func (c Code) Size() int { return c.size }

// Width returns the number of modules a side with the border.
func (c Code) Width() int { return c.size + 2*Quiet }

// runs hands every row's stretches of dark modules to found, with their places
// counted from the border's corner.
func (c Code) runs(found func(x, y, n int)) {
	for y := range c.size {
		row := c.dark[y*c.size : (y+1)*c.size]
		for x := 0; x < c.size; x++ {
			n := 0
			for x+n < c.size && row[x+n] {
				n++
			}
			if n > 0 {
				found(x+Quiet, y+Quiet, n)
				x += n
			}
		}
	}
}

// Path returns the dark modules as an SVG path in the square from 0 to Width,
// y downward, one unit a module. The ground below it must be light and as wide.
func (c Code) Path() string {
	var d []byte
	c.runs(func(x, y, n int) {
		d = append(d, 'M')
		d = strconv.AppendInt(d, int64(x), 10)
		d = append(d, ' ')
		d = strconv.AppendInt(d, int64(y), 10)
		d = append(d, 'h')
		d = strconv.AppendInt(d, int64(n), 10)
		d = append(d, "v1H"...)
		d = strconv.AppendInt(d, int64(x), 10)
		d = append(d, 'z')
	})
	return string(d)
}

// Draw adds the code with its border to a list, as large as r lets it be and
// in its middle. A module is a whole number of pixels where there is room.
func (c Code) Draw(l *display.List, r display.Rect, dark, light color.NRGBA) {
	module := min(r.W, r.H) / float64(c.Width())
	if module >= 1 {
		module = float64(int(module))
	}
	side := module * float64(c.Width())
	x0, y0 := r.X+(r.W-side)/2, r.Y+(r.H-side)/2
	l.FillRect(display.Rect{X: x0, Y: y0, W: side, H: side}, 0, light)
	c.runs(func(x, y, n int) {
		l.FillRect(display.Rect{X: x0 + float64(x)*module, Y: y0 + float64(y)*module, W: float64(n) * module, H: module}, 0, dark)
	})
}
