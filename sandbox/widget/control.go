// Package widget holds the instrument's controls: each is declared once, as
// plain data, and serves two presentations, the drawn one and its accessible
// twin. The router turns pointers into intents; looks turn controls into marks.
package widget

import (
	"image/color"
	"math"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
)

// Kind is a sort of control.
type Kind uint8

// The sorts of control.
const (
	Button Kind = iota // pressed once
	Toggle             // on or off
	Slider             // a value between two ends
	Ruler              // the playhead's slider, along the strip
	Piece              // a piece on the strip: chosen by a tap, carried by a drag
	Edge               // where two pieces meet: told of by a tap, moved by a drag
)

// Control is one control as it is now.
type Control struct {
	ID       string
	Kind     Kind
	Label    string // what it is called, in full
	Caption  string // what is written on it
	Short    string // a piece: what is written where the caption has no room
	Icon     Icon
	Rect     display.Rect
	Track    display.Rect // slider, ruler: where its value runs, left to right
	Value    float64
	Min, Max float64
	Step     float64
	KeyStep  float64 // of the twin's arrow keys
	Catch    float64 // slider: how near a whole number the value is caught
	Text     string  // how the value reads
	Keys     string  // shortcut, as aria-keyshortcuts writes it
	Group    string  // what it belongs to, such as a lane
	On       bool
	Disabled bool
	Quiet    bool // a button that reads as a label
	Bare     bool // a button over something else that is drawn
	Faint    bool // drawn as if off, but a press says why
	Along    bool // a piece: selected, in hand or with the one that is
	Twin     bool // for its twin alone: not drawn, and no pointer takes it
	Lane     int
	Index    int
	Marks    []float64    // ruler: labelled values
	Rule     display.Rect // slider: where the pictures of its whole values stand
	Pictures []Picture    // of a slider's whole values, or of what a piece is
	Scale    float64      // of its letters, as Even finds it; 0 is 1
	Hue      color.NRGBA  // of the picture that is chosen
}

// Picture is what a slider gives at a value, as a curve in the square from
// −1 to 1, y downward.
type Picture struct {
	Value float64
	Curve []display.Pt
	Good  bool // the value is one that fits what stands around it
}

// Hit returns where the control is touched: at least a finger's size.
func (c *Control) Hit() display.Rect {
	if c.Kind == Piece || c.Kind == Edge {
		return c.Rect // neighbours share their edges
	}
	return c.Rect.AtLeast(theme.Finger, theme.Finger)
}

// At returns where along the track a value is shown.
func (c *Control) At(v float64) float64 {
	return c.Track.X + c.Track.W*(v-c.Min)/(c.Max-c.Min)
}

// ValueAt returns the value shown at x: within the ends, caught by a near
// whole number, else on a whole step from the lower end.
func (c *Control) ValueAt(x float64) float64 {
	v := c.under(x)
	if whole := math.Round(v); c.Catch > 0 && math.Abs(v-whole) <= c.Catch {
		return whole + 0
	}
	switch {
	case c.Step >= 1:
		v = math.Round(v/c.Step) * c.Step
	case c.Step > 0:
		// Steps are counted, not summed, so that 0.1·3 reads as 0.3.
		per := math.Round(1 / c.Step)
		v = math.Round(v*per) / per
	}
	return min(max(v, c.Min), c.Max) + 0
}

// under returns the value at x, within the ends and otherwise as it is.
func (c *Control) under(x float64) float64 {
	return min(max(c.Min+(c.Max-c.Min)*(x-c.Track.X)/c.Track.W, c.Min), c.Max)
}

// WholeAt returns the whole value nearest to x, as a tap on the rule means it.
func (c *Control) WholeAt(x float64) float64 {
	return min(max(math.Round(c.under(x)), math.Ceil(c.Min)), math.Floor(c.Max)) + 0
}
