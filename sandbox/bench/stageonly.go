package bench

import (
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/grip"
	"whorlbench/sandbox/theme"
)

// arrangeStageOnly declares the one control of a stage that stands alone, in
// its lower right corner.
func (b *Bench) arrangeStageOnly() {
	const inset = 4
	st := b.plan.stage
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
	for i := range b.controls {
		looks.Draw(l, &b.controls[i])
	}
	return l
}

// onStageOnly lets a tap anywhere play or pause.
func (b *Bench) onStageOnly(gestures []grip.Gesture, now float64) {
	for _, g := range gestures {
		if g.Act == grip.Tap || g.Act == grip.DoubleTap {
			b.press(idPlay, now)
		}
	}
}
