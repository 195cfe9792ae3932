package bench

import (
	"math"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
)

// plan is where everything stands, in bench pixels. Three screens are
// designed: a phone upright, a phone on its side, and a desk; a projector is
// a desk seen from afar. Within another page there is the stage alone.
type plan struct {
	zoom      float64
	stageOnly bool         // nothing but the stage
	line      display.Rect // stage only: what each hand does, if it has a height
	big       bool         // nothing but the stage, to be seen from the last row
	say       display.Rect // big: the words
	word      float64      // big: the size of their letters
	least     float64      // big: that of what is longest
	keys      display.Rect // big: the controls
	bigRows   int          // big: into how many rows they go
	text      float64      // how many times the usual size text may be
	lone      bool         // the first slider has no place
	roomy     bool         // all rows have their height, the stage enough
	desk      bool
	side      bool // lies on its side
	stage     display.Rect
	name      display.Rect // what the piece in hand is, and when the whole closes
	tempo     display.Rect // the tempo, that can be typed
	transport display.Rect
	actions   display.Rect
	ruler     display.Rect
	lanes     []display.Rect
	band      display.Rect // under two lanes: how the props stand to each other
	sliders   []display.Rect
	notes     display.Rect // desk: what the pattern's notes say
}

// Heights of rows, in bench pixels.
const (
	rowGap     = 6
	edge       = 8
	rulerRow   = 34
	laneRow    = 46
	actionRow  = 54
	sliderRow  = 50
	propRow    = 70 // with the pictures of its whole values
	headRow    = 46
	deskPanel  = 420
	deskTool   = 56
	sideHeight = 520 // lower than this, a screen lies on its side
	phoneWidth = 700
	deskWidth  = 1440
	deskHeight = 900
	mostZoom   = 1.5
	valueWidth = 72 // of a value that can be typed
	mostText   = 2
	leastStage = 150 // an upright stage's height beside large text
)

// newPlan finds the largest text, up to what is wanted, that leaves the stage
// room; where a small phone cannot have both large text and two sliders, the
// first slider goes.
func newPlan(f Frame, lanes int) plan {
	if f.StageOnly {
		return planStage(f, lanes)
	}
	want := min(max(f.Text, 1), mostText)
	for text := want; ; text = max(text-0.1, 1) {
		for _, lone := range []bool{false, true} {
			p := plan{text: text, lone: lone && text > 1}
			p.layOut(f, lanes)
			if text == 1 || p.roomy {
				return p
			}
		}
	}
}

// room returns what a frame leaves, in bench pixels, and finds how large these
// are; desk says that it is not a phone's.
func (p *plan) room(f Frame) (all display.Rect, desk bool) {
	p.zoom = 1
	desk = f.W >= phoneWidth && f.H >= sideHeight
	if desk {
		p.zoom = min(max(min(f.W/deskWidth, f.H/deskHeight), 1), mostZoom)
	}
	z := p.zoom
	return display.Rect{X: f.Left / z, Y: f.Top / z, W: (f.W - f.Left - f.Right) / z, H: (f.H - f.Top - f.Bottom) / z}, desk
}

func (p *plan) layOut(f Frame, lanes int) {
	all, desk := p.room(f)
	switch {
	case desk && all.W >= 2*deskPanel:
		p.planDesk(all, lanes)
	case f.H < sideHeight && f.W > f.H:
		p.planSide(all, lanes)
	default:
		p.planUpright(all, lanes)
	}
}

// A big view's letters have a thirtieth of the screen's height at least, as is
// common practice for what is to be read from the last row: leastShare of it and,
// where the words stand at the side and have room, up to mostShare.
const (
	leastShare = 1.0 / 29
	mostShare  = 1.0 / 24
	lineWords  = 13  // letters' sizes that a line is wide where they grow
	leastWord  = 20  // px
	leastWhole = 16  // px: of what the whole is called, on a screen in the hand
	sayLines   = 7   // of words: two for the title, four for hands, one for the beat
	wholeLines = 4   // for what the whole is called
	wordLine   = 1.2 // of the letters' size
	bigKeyRow  = 54
	tallKeyRow = 62  // where the words on controls, too, are read from afar
	bigSide    = 600 // a big view's short side, in bench pixels, from which all is drawn larger
	mostBig    = 2.5
	figureWide = 1.05 // of the height: the stage's width that a figure needs
	leastPanel = 0.3  // of the width
	mostPanel  = 0.42 // of the width
)

// The line under the stage of who practises: its share of the height, and its
// least height.
const (
	practiceLine = 1.0 / 14
	leastLine    = 44
)

// planStage gives the stage everything. In a big view the figure has all the
// height of a wide screen, and the words and controls what is left at its side;
// on an upright one they stand below.
func planStage(f Frame, lanes int) plan {
	z := 1.0
	if f.Line || f.Practice { // strokes and letters are seen from afar
		z = min(max(min(f.W, f.H)/bigSide, 1), mostBig)
	}
	all := display.Rect{X: f.Left / z, Y: f.Top / z, W: (f.W - f.Left - f.Right) / z, H: (f.H - f.Top - f.Bottom) / z}
	p := plan{zoom: z, text: min(max(f.Text, 1), mostText), stageOnly: true, stage: all, lanes: make([]display.Rect, lanes)}
	if f.Practice {
		p.line, p.stage = all.CutBottom(max(practiceLine*all.H, leastLine))
	}
	if !f.Line {
		return p
	}
	p.big, p.word, p.least, p.bigRows = true, max(f.H/z*leastShare, leastWord), leastWhole, 2
	if min(f.W, f.H) >= bigSide { // else it is in the hand
		p.least, p.bigRows = f.H/z*leastShare, 3
	}
	keys := float64(p.bigRows)*(p.bigKey()+rowGap) - rowGap
	var panel display.Rect
	if all.W > all.H {
		panel, p.stage = all.CutRight(min(max(all.W-figureWide*all.H, leastPanel*all.W), mostPanel*all.W))
		p.word = max(p.word, min(f.H/z*mostShare, panel.W/lineWords))
	} else {
		panel, p.stage = all.CutBottom(p.sayHigh() + keys + rowGap + 2*edge)
	}
	panel = panel.Inset(edge)
	p.keys, p.say = panel.CutBottom(keys)
	_, p.say = p.say.CutBottom(rowGap)
	p.say.X, p.say.W = p.say.X+edge, p.say.W-2*edge
	return p
}

// bigKey is the height of a big view's control.
func (p *plan) bigKey() float64 {
	if p.bigRows > 2 {
		return p.taller(tallKeyRow, 14)
	}
	return p.taller(bigKeyRow, 14)
}

// sayHigh is how high a big view's words stand, with the gaps between.
func (p *plan) sayHigh() float64 { return ((sayLines+1)*p.word + wholeLines*p.least) * wordLine }

// bigText is how many times their usual size letters on a big view's stage and
// controls are, so that they, too, can be read from the last row; on a screen that
// is held in the hand they stay as they are.
func (p *plan) bigText() float64 {
	if p.bigRows > 2 {
		return p.least / theme.TextSmall
	}
	return 1
}

// row cuts a row off the lower edge, with the gap above it.
func row(r *display.Rect, h float64) display.Rect {
	out, rest := r.CutBottom(h)
	_, rest = rest.CutBottom(rowGap)
	*r = rest
	return out
}

// planUpright gives one thumb everything: what is used most lies lowest.
func (p *plan) planUpright(all display.Rect, lanes int) {
	body := display.Rect{X: all.X + edge, Y: all.Y, W: all.W - 2*edge, H: all.H - edge}
	p.sliders = []display.Rect{row(&body, propRow)}
	if !p.lone {
		p.sliders = []display.Rect{row(&body, p.taller(sliderRow, 4)), p.sliders[0]}
	}
	actions := p.taller(actionRow, 8)
	if p.text > foldActions {
		actions = 2*actions + actionGap
	}
	p.actions = row(&body, actions)
	p.strip(&body, lanes)
	p.transport = row(&body, p.taller(theme.Finger, 26))
	p.heading(row(&body, p.taller(headRow, 30)))
	p.stage = display.Rect{X: all.X, Y: all.Y, W: all.W, H: body.Y + body.H - all.Y}
	p.roomy = p.stage.H >= leastStage
}

// planSide puts the stage at the left, as square as the height allows.
func (p *plan) planSide(all display.Rect, lanes int) {
	p.side = true
	side := min(all.H, all.W*0.4)
	stage, rest := all.CutLeft(side)
	p.stage = stage
	body := display.Rect{X: rest.X + edge, Y: rest.Y + 2, W: rest.W - 2*edge, H: rest.H - 2 - edge/2}
	if p.lone {
		p.sliders = []display.Rect{row(&body, theme.Finger)}
	} else if lanes == 1 { // room for two long sliders
		second := row(&body, theme.Finger)
		p.sliders = []display.Rect{row(&body, theme.Finger), second}
	} else {
		first, second := row(&body, theme.Finger).CutLeft((body.W - edge) / 2)
		_, second = second.CutLeft(edge)
		p.sliders = []display.Rect{first, second}
	}
	p.actions = row(&body, theme.Finger)
	p.strip(&body, lanes)
	p.transport = row(&body, theme.Finger)
	p.heading(body)
	p.roomy = p.lone || p.text <= foldActions
}

// planDesk has the strip along the foot, a tool row over it, and what is
// known of the piece in hand at the right.
func (p *plan) planDesk(all display.Rect, lanes int) {
	p.desk = true
	body := display.Rect{X: all.X + 2*edge, Y: all.Y, W: all.W - 4*edge, H: all.H - 2*edge}
	p.strip(&body, lanes)
	tools := row(&body, p.taller(deskTool, 16))
	const transport = 480
	p.transport, p.actions = tools.CutLeft(transport)
	_, p.actions = p.actions.CutLeft(3 * edge)
	p.actions.W = min(p.actions.W, 660)
	panel, stage := display.Rect{X: all.X, Y: body.Y, W: all.W - 2*edge, H: body.H}.CutRight(deskPanel)
	p.stage = stage
	panel = display.Rect{X: panel.X + 3*edge, Y: panel.Y + 2*edge, W: panel.W - 3*edge, H: panel.H - 2*edge}
	head, panel := panel.CutTop(deskHead * p.text)
	p.heading(head)
	_, panel = panel.CutTop(2 * edge)
	p.roomy = true
	for _, h := range []float64{sliderRow, propRow + 4, sliderRow, sliderRow} {
		var r display.Rect
		p.roomy = p.roomy && panel.H >= h
		r, panel = panel.CutTop(h)
		p.sliders = append(p.sliders, r)
		_, panel = panel.CutTop(edge)
	}
	_, p.notes = panel.CutTop(2 * edge)
}

// strip takes the ruler and the lanes.
func (p *plan) strip(body *display.Rect, lanes int) {
	if lanes > 1 && !p.side {
		p.band, *body = body.CutBottom(bandRow)
	}
	p.lanes = make([]display.Rect, lanes)
	for i := lanes - 1; i >= 0; i-- {
		r, rest := body.CutBottom(p.laneHeight())
		*body = rest
		p.lanes[i] = r
	}
	p.ruler = row(body, p.rulerHeight())
}

func (p *plan) heading(r display.Rect) {
	p.tempo, p.name = r.CutRight(p.taller(valueWidth, 34))
	p.tempo.H = min(p.tempo.H, p.taller(headRow, 26))
}

// spread lays n buttons in r side by side, widths in the given shares.
func spread(r display.Rect, gap float64, shares ...float64) []display.Rect {
	sum := 0.0
	for _, s := range shares {
		sum += s
	}
	room := r.W - gap*float64(len(shares)-1)
	out := make([]display.Rect, len(shares))
	x := r.X
	for i, s := range shares {
		w := math.Floor(room * s / sum)
		if i == len(shares)-1 {
			w = r.X + r.W - x
		}
		out[i] = display.Rect{X: x, Y: r.Y, W: w, H: r.H}
		x += w + gap
	}
	return out
}
