package bench

import (
	"strings"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// What large text does to the layout: from foldActions on, an upright phone
// has its actions in two rows, actionGap apart.
const (
	foldActions = 1.25
	actionGap   = 4
	deskHead    = 188 // height of what is said of the piece in hand, at a desk
)

// taller returns a height, or a width, with what is added where text is twice
// as large.
func (p *plan) taller(h, more float64) float64 { return h + more*(p.text-1) }

// A screen that lies on its side has no height to give.
func (p *plan) laneHeight() float64 {
	if p.side {
		return laneRow
	}
	return p.taller(laneRow, 10)
}

func (p *plan) rulerHeight() float64 {
	if p.side {
		return rulerRow
	}
	return p.taller(rulerRow, 12)
}

// chip returns the width of a slider's name, and of its value.
func (p *plan) chip() float64 {
	if p.side && !p.lone {
		return chipWidth
	}
	return p.taller(chipWidth, 30)
}

// firstSlot returns which dial has the first slider.
func (p *plan) firstSlot() int {
	if p.lone {
		return 1
	}
	return 0
}

// spreadActions lays the actions out in one row or, for large text, in two.
func (p *plan) spreadActions(shares ...float64) []display.Rect {
	if p.desk || p.side || p.text <= foldActions {
		return spread(p.actions, actionGap, shares...)
	}
	upper, lower := p.actions.CutTop((p.actions.H - actionGap) / 2)
	_, lower = lower.CutTop(actionGap)
	half := (len(shares) + 1) / 2
	return append(spread(upper, actionGap, shares[:half]...), spread(lower, actionGap, shares[half:]...)...)
}

// shorter leaves out the last parts of a line that does not fit at a size.
func (b *Bench) shorter(line string, size, room float64) string {
	const between = " · "
	for b.faces.Width(line, size, false) > room {
		at := strings.LastIndex(line, between)
		if at < 0 {
			break
		}
		line = line[:at]
	}
	return line
}

// looks returns how controls are drawn.
func (b *Bench) looks() widget.Looks {
	return widget.Looks{Theme: b.theme, Faces: b.faces, Focus: b.focus, Pressed: b.pressed, Text: min(b.frame.Text, mostText)}
}

// grow returns the size at which a line is written: what the person wants of
// it, as far as it fits across and, in a line of its own, down.
func (b *Bench) grow(text string, size float64, bold bool, room, high float64) float64 {
	k := b.looks()
	return k.Grown(text, size, bold, room, high)
}
