package bench

import (
	"fmt"
	"strings"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/grip"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// idSmall leads back from the big view.
const idSmall = "small"

// arrangeStageOnly declares the one control of a stage that stands alone, in
// its lower right corner.
func (b *Bench) arrangeStageOnly() {
	const inset = 4
	st := b.plan.stage
	if b.plan.line.H > 0 {
		b.add(widget.Control{ID: idSmall, Label: b.Words.View.LeaveBig, Icon: widget.IconDelete, Keys: "Escape",
			Rect: display.Rect{X: st.X + st.W - theme.Finger - inset, Y: st.Y + inset, W: theme.Finger, H: theme.Finger}})
	}
	b.addPlay(display.Rect{X: st.X + st.W - theme.Finger - inset, Y: st.Y + st.H - theme.Finger - inset, W: theme.Finger, H: theme.Finger})
}

// drawStageOnly draws the pattern and that control, and no words.
func (b *Bench) drawStageOnly() *display.List {
	l, looks, st := &b.list, b.looks(), b.stageLook()
	if b.kept.drawn {
		l.Rewind()
	} else {
		l.Reset(b.theme.Ground)
		b.drawStageStill(l, &st)
		l.Keep()
		b.kept.drawn = b.kept.ok
	}
	st.DrawMoving(l, b.Session)
	b.drawLine(l)
	for i := range b.controls {
		looks.Draw(l, &b.controls[i])
	}
	return l
}

// drawLine writes what each hand does at the playhead, and the beat, as large as
// the line holds.
func (b *Bench) drawLine(l *display.List) {
	r := b.plan.line
	if r.H == 0 {
		return
	}
	l.FillRect(r, 0, b.theme.Ground)
	parts := append(b.doings(b.Session), fmt.Sprintf(b.Words.View.BeatNow, int(b.Session.RoundBeat())+1))
	text := strings.Join(parts, " · ")
	size := b.shrink(text, r.H*0.62, theme.TextBody, r.W-24)
	text = b.faces.Fit(text, size, true, r.W-24)
	l.Text(display.Pt{X: r.X + (r.W-b.faces.Width(text, size, true))/2, Y: r.Y + r.H/2 + size*0.36}, size, true, b.theme.Ink, text)
}

// onStageOnly lets a tap anywhere play or pause.
func (b *Bench) onStageOnly(gestures []grip.Gesture, now float64) {
	for _, g := range gestures {
		if g.Act == grip.Tap || g.Act == grip.DoubleTap {
			b.Do(widget.Intent{ID: idPlay}, now)
		}
	}
}
