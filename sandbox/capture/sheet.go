package capture

import (
	"fmt"
	"image"
	"image/color"
	"math"
	"slices"
	"strconv"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// The layout of a contact sheet, in CSS pixels.
const (
	sheetGap  = 12
	cellRow   = 32 // over the pattern: number and beat
	badgeSide = 11
)

// sameMoment (beats): hands whose petals are closer together share a picture.
const sameMoment = 1e-6

// cells returns the beats that a contact sheet shows, in order.
func (t *Take) cells() ([]float64, error) {
	end := t.beats.Float()
	var beats []float64
	most := func() error {
		if len(beats) > mostCells {
			return fmt.Errorf(t.words.Capture.SheetMost, len(beats), mostCells)
		}
		return nil
	}
	if t.Per == PerPetal {
		for _, track := range t.tracks {
			tips := track.Tips()
			for round := 0; float64(round)*track.Beats < end && len(tips) > 0; round++ {
				for _, x := range tips {
					if b := float64(round)*track.Beats + x; b < end-sameMoment {
						beats = append(beats, b)
					}
				}
				if err := most(); err != nil && len(t.tracks) == 1 {
					return nil, err
				}
			}
		}
		slices.Sort(beats)
		beats = slices.CompactFunc(beats, func(a, b float64) bool { return math.Abs(a-b) < sameMoment })
	}
	if len(beats) == 0 {
		n := t.beats.Neg().Floor().Neg() // ⌈beats⌉
		if frac.Int(mostCells).Less(n) {
			return nil, fmt.Errorf(t.words.Capture.SheetMost, n.Num(), mostCells)
		}
		for k := range int(n.Float()) {
			beats = append(beats, float64(k))
		}
	}
	return beats, most()
}

// columns returns how many pictures of a sheet stand in a row: about as many
// as there are rows, few places left over.
func columns(n int) int {
	if n <= 4 {
		return n
	}
	best, left := 0, n
	side := int(math.Ceil(math.Sqrt(float64(n))))
	for c := side; c <= side+1; c++ {
		if over := (c - n%c) % c; over < left {
			best, left = c, over
		}
	}
	return best
}

// sheetGrid is how the pictures of a contact sheet stand on it, in pixels.
type sheetGrid struct {
	beats []float64
	size  image.Point
	cols  int
	gap   int
	head  int     // over the pictures
	foot  float64 // under them, in CSS pixels
}

func (a *artist) sheetGrid() (g sheetGrid, err error) {
	if g.beats, err = a.cells(); err != nil {
		return sheetGrid{}, err
	}
	u := a.unit()
	g.cols, g.gap = columns(len(g.beats)), int(math.Round(sheetGap*u))
	if a.Show.Title {
		g.head = int(math.Round(headRow * u))
	}
	rows := (len(g.beats) + g.cols - 1) / g.cols
	g.size = image.Pt(g.cols*(a.Width+g.gap)+g.gap, rows*(a.Height+g.gap)+g.gap+g.head)
	g.foot = captionHeight(a.captionLines(float64(g.size.X) / u))
	g.size.Y += int(math.Round(g.foot * u))
	if float64(g.size.X)*float64(g.size.Y) > mostPixels {
		return sheetGrid{}, fmt.Errorf(a.words.Capture.TooLarge, len(g.beats), a.Width, a.Height)
	}
	return g, nil
}

// sheet draws a contact sheet: a picture for each beat or petal, numbered, all
// framed alike.
func (a *artist) sheet() (*picture, error) {
	g, err := a.sheetGrid()
	if err != nil {
		return nil, err
	}
	u := a.unit()
	p := &picture{width: g.size.X, height: g.size.Y, unit: u}
	p.list.Reset(a.sheetGround())
	if a.Show.Title {
		a.title(&p.list, display.Rect{Y: float64(g.gap) / u / 2, W: float64(p.width) / u, H: headRow}, "")
	}
	a.caption(&p.list, display.Rect{Y: float64(p.height)/u - g.foot, W: float64(p.width) / u, H: g.foot})
	cell := a.frame()
	for i, beat := range g.beats {
		cell.X = float64(g.gap+i%g.cols*(a.Width+g.gap)) / u
		cell.Y = float64(g.head+g.gap+i/g.cols*(a.Height+g.gap)) / u
		a.cell(&p.list, cell, i+1, beat)
	}
	return p, nil
}

// sheetGround returns the colour between the pictures of a sheet.
func (a *artist) sheetGround() color.NRGBA {
	if a.Ground == Themed {
		return a.theme.Ground
	}
	return a.ground()
}

// cell draws one picture of a sheet.
func (a *artist) cell(l *display.List, r display.Rect, n int, beat float64) {
	if a.Ground != Clear {
		l.FillRect(r, theme.Corner, a.theme.Stage)
	}
	l.StrokeRect(r, theme.Corner, 1, a.theme.Hair)
	top, area := r.CutTop(cellRow)
	at := display.Pt{X: top.X + badgeSide + 9, Y: top.Y + badgeSide + 9}
	l.Disc(at, badgeSide, a.theme.Ink)
	text := strconv.Itoa(n)
	const size = theme.TextSmall
	l.Text(display.Pt{X: at.X - a.faces.Width(text, size, true)/2, Y: at.Y + size*0.36}, size, true, a.theme.Stage, text)
	label := fmt.Sprintf(a.words.Capture.BeatAt, words.Value(frac.Near(beat+1, 0.005, 1000)))
	x := r.X + r.W - inset - a.faces.Width(label, theme.TextBody, false)
	l.Text(display.Pt{X: x, Y: at.Y + theme.TextBody*0.36}, theme.TextBody, false, a.theme.Muted, label)
	a.cellFigure(l, area, beat)
}
