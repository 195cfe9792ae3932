// Package capture makes files of a pattern: stills, contact sheets and loops.
//
// Frames are computed from beats and never recorded: the same pattern and
// options give the same frames, however fast the machine. Nothing here knows a
// file system or a clock; what is written goes to an io.Writer, and whoever
// asked can stop it.
package capture

import (
	"errors"
	"fmt"
	"image/color"
	"strconv"
	"strings"
	"unicode/utf8"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// Options say what is captured and how it looks. A value is made by Defaults
// and changed.
type Options struct {
	Width, Height int       // pixels, of a frame, a still or one picture of a sheet
	FPS           frac.Frac // frames a second
	Rounds        int       // of the longest lane; 0: to the closing of the whole, so that the loop joins
	Slow          frac.Frac // how many times as slow as the tempo says
	At            frac.Frac // the beat that a still shows, from 0
	Per           Per       // what a contact sheet has a picture of
	Moments       int       // of a strobe still
	Night         bool
	Ground        Ground
	Colour        color.NRGBA // of a Ground that is Coloured
	Mirror        bool        // as in a learner's mirror
	Show          Show
	// Extent is what of the plane is seen; its zero value is what this pattern
	// reaches. Takes that share one are framed alike.
	Extent scene.Extent
}

// Per is what a contact sheet has a picture of.
type Per uint8

// A contact sheet goes by beats or by petals.
const (
	PerBeat Per = iota
	PerPetal
)

// Ground is what is behind the pattern.
type Ground uint8

// The grounds: the theme's, one colour, nothing.
const (
	Themed Ground = iota
	Coloured
	Clear
)

// Show says what is seen of the pattern, and what is written beside it.
type Show struct {
	scene.Options
	Title   bool   // above
	Beats   bool   // above, on the right: which beat it is
	Names   bool   // below: the elementary pattern of the piece that plays
	Timing  bool   // below, of two hands: how the props stand to each other
	Caption string // below all: a text of one's own
}

// Defaults are those of a lesson's loop: the pattern and no writing.
func Defaults() Options {
	return Options{
		Width: 360, Height: 360,
		FPS: frac.Int(25), Slow: frac.Int(1), Moments: 8,
		Show: Show{Options: scene.Options{HideWhole: true, HideGrid: true, HideSlack: true}},
	}
}

// The limits of options. A picture of mostSide has more than any projector
// shows; more than mostFrames at once is a mistake rather than a loop.
const (
	LeastSide   = 32
	MostSide    = 4096
	MostFPS     = 120
	mostGIFFPS  = 50 // shorter frames than 2 hundredths of a second are not shown as such
	mostRounds  = 1000
	mostMoments = 64
	mostFrames  = 10_000
	mostCells   = 120
	mostPixels  = 40_000_000 // of a sheet: 160 MB
	mostCaption = 300        // characters
)

var leastSlow, mostSlow = frac.New(1, 10), frac.Int(100)

// Check returns all that is wrong with o, a line each, whatever the pattern.
func (o *Options) Check(t *words.Table) error {
	w := &t.Capture
	var wrong []error
	refuse := func(bad bool, format string, args ...any) {
		if bad {
			wrong = append(wrong, fmt.Errorf(format, args...))
		}
	}
	side := func(n int) bool { return n < LeastSide || n > MostSide }
	refuse(side(o.Width) || side(o.Height), w.Size, o.Width, o.Height, LeastSide, MostSide)
	refuse(o.FPS.Less(frac.Int(1)) || frac.Int(MostFPS).Less(o.FPS), w.FPS, words.Value(o.FPS), 1, MostFPS)
	refuse(o.Slow.Less(leastSlow) || mostSlow.Less(o.Slow), w.Slow, words.Value(o.Slow), words.Value(leastSlow), words.Value(mostSlow))
	refuse(o.Rounds < 0 || o.Rounds > mostRounds, w.Rounds, o.Rounds, mostRounds)
	refuse(o.Moments < 2 || o.Moments > mostMoments, w.Moments, o.Moments, mostMoments)
	refuse(utf8.RuneCountInString(o.Show.Caption) > mostCaption, w.Caption, utf8.RuneCountInString(o.Show.Caption), mostCaption)
	refuse(o.At.Sign() < 0, w.At, words.Value(o.At))
	return errors.Join(wrong...)
}

func (o *Options) theme() *theme.Theme {
	if o.Night {
		return &theme.Night
	}
	return &theme.Day
}

// ground returns the colour behind the pattern, clear or opaque.
func (o *Options) ground() color.NRGBA {
	switch o.Ground {
	case Clear:
		return color.NRGBA{}
	case Coloured:
		c := o.Colour
		c.A = 255
		return c
	}
	return o.theme().Stage
}

// dark is how light a ground may look (0 to 255) to be drawn on as by night.
const dark = 128

// SetGround takes a ground by its name: theme, clear, or a colour as #rrggbb,
// which brings the theme that can be seen on it. It reports whether it is one.
func (o *Options) SetGround(name string) bool {
	switch name {
	case "theme":
		o.Ground = Themed
		return true
	case "clear":
		o.Ground = Clear
		return true
	}
	n, err := strconv.ParseUint(strings.TrimPrefix(name, "#"), 16, 32)
	if err != nil || len(name) != len("#rrggbb") || name[0] != '#' {
		return false
	}
	o.Ground, o.Colour = Coloured, color.NRGBA{uint8(n >> 16), uint8(n >> 8), uint8(n), 255}
	o.Night = display.Light(o.Colour) < dark
	return true
}
