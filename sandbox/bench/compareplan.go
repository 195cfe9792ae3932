package bench

import (
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
)

// comparePlan is where everything stands while two patterns are compared: their
// stages, one and the same where they are laid over each other, and under them
// what is said of each. The way out is in the upper right corner of the last.
type comparePlan struct {
	stages [2]display.Rect
	names  [2]display.Rect
	ruler  display.Rect
	play   display.Rect // the transport
	acts   display.Rect // what can be done with both
	leave  display.Rect
	rows   int // of acts
}

// Sizes of a comparison, in bench pixels.
const (
	nameRow      = 48  // two lines
	transportRow = 232 // the width of four buttons
	actsRow      = 372 // the width of four more
	sideColumn   = 236 // on a screen that lies on its side: all controls
	aloneFrom    = 900 // the width from which one row holds all controls
)

// planCompare lays a comparison out; over lays one stage over the other.
func planCompare(f Frame, over bool) (p plan, c comparePlan) {
	p = plan{text: min(max(f.Text, 1), mostText), stageOnly: true}
	all, desk := p.room(f)
	p.desk = desk
	c.rows = 1
	switch {
	case f.H < sideHeight && f.W > f.H:
		p.text = min(p.text, foldActions) // no height to give
		c.planSide(&p, all, over)
	case all.W < all.H:
		c.planUpright(&p, all, over, !f.Beside)
	default:
		c.planWide(&p, all, over)
	}
	p.stage = c.stages[0]
	if !over {
		p.stage = around(c.stages[0], c.stages[1])
	}
	last, inset := c.stages[1], 4.0
	const least = 40.0 // its grip and its numbers; more would part them
	if more := c.ruler.H - p.taller(least, 8); more > 0 {
		c.ruler.Y, c.ruler.H = c.ruler.Y+more/2, c.ruler.H-more
	}
	c.leave = display.Rect{X: last.X + last.W - theme.Finger - inset, Y: last.Y + inset, W: theme.Finger, H: theme.Finger}
	if !over && last.Y > c.stages[0].Y {
		c.leave.Y = c.stages[0].Y + inset
	}
	return p, c
}

// around returns the least rectangle that holds both.
func around(a, b display.Rect) display.Rect {
	x, y := min(a.X, b.X), min(a.Y, b.Y)
	return display.Rect{X: x, Y: y, W: max(a.X+a.W, b.X+b.W) - x, H: max(a.Y+a.H, b.Y+b.H) - y}
}

// planUpright has one stage above the other, and what is touched at the foot, where
// all four buttons take two rows of large text.
func (c *comparePlan) planUpright(p *plan, all display.Rect, over, four bool) {
	body := display.Rect{X: all.X + edge, Y: all.Y, W: all.W - 2*edge, H: all.H - edge}
	high := p.taller(theme.Finger, 16)
	if four && p.text > foldActions {
		c.rows, high = 2, 2*high+actionGap
	}
	c.acts = row(&body, high)
	c.play = row(&body, p.taller(theme.Finger, 16))
	c.play, c.ruler = c.play.CutLeft(transportRow)
	_, c.ruler = c.ruler.CutLeft(edge)
	high = p.taller(nameRow, 44)
	stage := func(r display.Rect) display.Rect { return display.Rect{X: all.X, Y: r.Y, W: all.W, H: r.H} }
	if over {
		c.names[1], body = body.CutBottom(high)
		c.names[0], body = body.CutBottom(high)
		c.stages = [2]display.Rect{stage(body), stage(body)}
		return
	}
	upper, lower := body.CutTop(body.H / 2)
	for i, half := range []display.Rect{upper, lower} {
		c.names[i], half = half.CutBottom(high)
		c.stages[i] = stage(half)
	}
}

// planSide has the stages beside each other and the controls in a column at
// their right.
func (c *comparePlan) planSide(p *plan, all display.Rect, over bool) {
	p.side = true
	column, rest := all.CutRight(sideColumn)
	body := display.Rect{X: column.X + edge, Y: column.Y, W: column.W - 2*edge, H: column.H - edge}
	c.rows = 2
	c.acts = row(&body, 2*theme.Finger+actionGap)
	c.play = row(&body, theme.Finger)
	c.ruler = row(&body, rulerRow)
	c.beside(p, rest, over)
}

// planWide has the stages beside each other and the controls along the foot.
func (c *comparePlan) planWide(p *plan, all display.Rect, over bool) {
	body := display.Rect{X: all.X + 2*edge, Y: all.Y, W: all.W - 4*edge, H: all.H - edge}
	if body.W < aloneFrom*p.text {
		c.acts = row(&body, p.taller(theme.Finger, 16))
		c.play = row(&body, p.taller(theme.Finger, 16))
	} else {
		c.play = row(&body, p.taller(actionRow, 8))
		c.acts, c.play = c.play.CutRight(actsRow * p.text)
		_, c.play = c.play.CutRight(2 * edge)
	}
	c.play, c.ruler = c.play.CutLeft(transportRow)
	_, c.ruler = c.ruler.CutLeft(2 * edge)
	c.beside(p, display.Rect{X: all.X, Y: all.Y, W: all.W, H: body.Y + body.H - all.Y}, over)
}

// beside lays out two stages that stand beside each other, or the one.
func (c *comparePlan) beside(p *plan, all display.Rect, over bool) {
	foot, stage := all.CutBottom(p.taller(nameRow, 44))
	left, right := stage.CutLeft(stage.W / 2)
	c.stages = [2]display.Rect{left, right}
	if over {
		c.stages = [2]display.Rect{stage, stage}
	}
	a, b := foot.CutLeft(foot.W / 2)
	in, out := 2.0*edge, 1.0*edge
	if p.side {
		in, out = edge, 2
	}
	c.names = [2]display.Rect{{X: a.X + in, Y: a.Y, W: a.W - in - out, H: a.H}, {X: b.X + in, Y: b.Y, W: b.W - in - out, H: b.H}}
}

// spread lays out what can be done with both, in one row or two.
func (c *comparePlan) spread(shares ...float64) []display.Rect {
	if c.rows == 1 {
		return spread(c.acts, actionGap, shares...)
	}
	upper, lower := c.acts.CutTop((c.acts.H - actionGap) / 2)
	_, lower = lower.CutTop(actionGap)
	half := len(shares) / 2
	return append(spread(upper, actionGap, shares[:half]...), spread(lower, actionGap, shares[half:]...)...)
}
