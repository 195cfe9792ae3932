package capture

import (
	"context"
	"fmt"
	"image"
	"io"
	"strings"

	"whorlbench/sandbox/words"
)

// Format is a sort of file.
type Format uint8

// The sorts of file.
const (
	PNG       Format = iota // a still of one beat
	SVG                     // the same as a drawing
	Sheet                   // a PNG: a picture a beat or a petal, numbered
	Strobe                  // a PNG: several moments in one picture
	GIF                     // a loop
	APNG                    // a loop, exact, that can be seen through
	Frames                  // a ZIP: the frames of a loop, a PNG each
	SheetSVG                // a contact sheet as a drawing
	StrobeSVG               // several moments as a drawing
	formats
)

// format is what there is to say of one.
type format struct {
	name  string // as it is asked for
	ext   string
	loops bool
}

var formatted = [formats]format{
	{"png", ".png", false}, {"svg", ".svg", false}, {"sheet", ".png", false}, {"strobe", ".png", false},
	{"gif", ".gif", true}, {"apng", ".png", true}, {"frames", ".zip", true}, {"sheet-svg", ".svg", false}, {"strobe-svg", ".svg", false},
}

// Names returns what the formats are called, in order.
func Names() []string {
	var out []string
	for _, f := range formatted {
		out = append(out, f.name)
	}
	return out
}

// Named returns the format of a name.
func Named(name string) (f Format, ok bool) {
	for i, x := range formatted {
		if x.name == name {
			return Format(i), true
		}
	}
	return 0, false
}

// Ext returns how the names of such files end.
func (f Format) Ext() string { return formatted[f].ext }

// Loops reports whether a file has several frames, one after the other.
func (f Format) Loops() bool { return formatted[f].loops }

// FileName returns a name for the file: the title, what it is, the size, and
// of a loop the frames a second.
func (t *Take) FileName(f Format) string {
	kind := ""
	switch f {
	case Sheet, Strobe, APNG, Frames, SheetSVG, StrobeSVG:
		kind = "-" + strings.TrimSuffix(formatted[f].name, "-svg")
	}
	size, err := t.SizeOf(f)
	if err != nil {
		size = t.size() // there will be no file, and that is told elsewhere
	}
	return t.baseName(kind, size, f.Loops()) + formatted[f].ext
}

// SizeOf returns the size of a format's pictures (pixels), or why there cannot be
// one.
func (t *Take) SizeOf(f Format) (image.Point, error) {
	if f != Sheet && f != SheetSVG {
		return t.size(), nil
	}
	a, err := t.artist()
	if err != nil {
		return image.Point{}, err
	}
	g, err := a.sheetGrid()
	return g.size, err
}

func (t *Take) size() image.Point { return image.Pt(t.Width, t.Height) }

// FilmName returns the name of a film without its ending.
func (t *Take) FilmName() string { return t.baseName("", t.size(), true) }

// baseName returns the name of a file without its ending; kind stands after
// the title.
func (t *Take) baseName(kind string, size image.Point, loops bool) string {
	name := fmt.Sprintf("%s%s-%dx%d", words.FileName(t.pattern.Title), kind, size.X, size.Y)
	if loops {
		name += fmt.Sprintf("-%sfps", t.FPS.Decimal(2))
	}
	return name
}

// Write writes a file. An end of ctx ends it with ctx's error; what was
// written by then is no file.
func (t *Take) Write(ctx context.Context, w io.Writer, f Format, tell Progress) error {
	if err := context.Cause(ctx); err != nil {
		return err
	}
	switch f {
	case GIF:
		return t.gif(ctx, w, tell)
	case APNG:
		return t.apng(ctx, w, tell)
	case Frames:
		return t.zipped(ctx, w, tell)
	}
	a, err := t.artist()
	if err != nil {
		return err
	}
	var p *picture
	switch f {
	case Sheet, SheetSVG:
		if p, err = a.sheet(); err != nil {
			return err
		}
	case Strobe, StrobeSVG:
		p = a.strobe()
	default:
		p = a.still()
	}
	if formatted[f].ext == ".svg" {
		err = a.writeSVG(w, p)
	} else {
		err = a.writePNG(w, p)
	}
	tell.tell(1, 1)
	return err
}

// FrameAlike gives takes one framing, which holds what each of them reaches.
func FrameAlike(takes ...*Take) {
	for _, t := range takes[1:] {
		takes[0].Extent = takes[0].Extent.With(t.Extent)
	}
	for _, t := range takes {
		t.Extent = takes[0].Extent
	}
}
