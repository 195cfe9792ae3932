//go:build browser

package browser

import (
	"math"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// ground is where the half-moon is seen: its hand path's centre, and pixels a metre.
// Its first piece ends straight below the centre, 1.2 m out, and 26 px above
// the stage's foot, which begins under the header of 48 px.
type ground struct{ cx, cy, scale float64 }

func (v *visit) ground() ground {
	v.t.Helper()
	x, y := v.place("slider", "End of the piece in hand, along its curve").middle()
	const head, margin, out = 48, 26, 1.2
	high := y - head + margin
	return ground{x, head + high/2, (high/2 - margin) / out}
}

// at returns where a place is seen, out metres from the centre at an angle in degrees.
func (g ground) at(degrees, out float64) [2]float64 {
	s, c := math.Sincos(degrees * math.Pi / 180)
	return [2]float64{g.cx + out*c*g.scale, g.cy - out*s*g.scale}
}

// doubleTap taps twice, with the times of a quick hand whatever the machine.
func (v *visit) doubleTap(at [2]float64) {
	v.t.Helper()
	now := eval[float64](v, "Date.now() / 1000")
	for _, second := range []float64{0, 0.04, 0.14, 0.18} {
		down := second == 0 || second == 0.14
		stamp := input.TimeSinceEpoch(now + second)
		if v.screen.touch {
			touch := input.DispatchTouchEventParams{Type: input.DispatchTouchEventTypeTouchEnd, TouchPoints: []*input.TouchPoint{}, Timestamp: stamp}
			if down {
				touch.Type, touch.TouchPoints = input.DispatchTouchEventTypeTouchStart, []*input.TouchPoint{{X: at[0], Y: at[1]}}
			}
			_, err := chromedp.Call(v.ctx, input.DispatchTouchEvent, touch)
			must(v.t, err)
			continue
		}
		mouse := input.DispatchMouseEventParams{Type: input.DispatchMouseEventTypeMouseReleased, X: at[0], Y: at[1],
			Button: input.MouseButtonLeft, ClickCount: 1, Timestamp: stamp}
		if down {
			mouse.Type, mouse.Buttons = input.DispatchMouseEventTypeMousePressed, 1
		}
		_, err := chromedp.Call(v.ctx, input.DispatchMouseEvent, mouse)
		must(v.t, err)
	}
}

// fingers moves two fingers from two places to two others, in steps.
func (v *visit) fingers(a0, b0, a1, b1 [2]float64) {
	v.t.Helper()
	mix := func(p, q [2]float64, t float64) [2]float64 {
		return [2]float64{p[0] + (q[0]-p[0])*t, p[1] + (q[1]-p[1])*t}
	}
	two := func(kind input.DispatchTouchEventType, t float64) {
		points := []*input.TouchPoint{}
		for id, p := range [][2]float64{mix(a0, a1, t), mix(b0, b1, t)} {
			name := float64(id + 1)
			points = append(points, &input.TouchPoint{X: p[0], Y: p[1], ID: &name})
		}
		_, err := chromedp.Call(v.ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
		must(v.t, err)
	}
	two(input.DispatchTouchEventTypeTouchStart, 0)
	for k := 1; k <= 8; k++ {
		two(input.DispatchTouchEventTypeTouchMove, float64(k)/8)
	}
	v.finger(input.DispatchTouchEventTypeTouchEnd)
}

func (v *visit) wheel(at [2]float64, pixels float64) {
	v.t.Helper()
	_, err := chromedp.Call(v.ctx, input.DispatchMouseEvent, input.DispatchMouseEventParams{
		Type: input.DispatchMouseEventTypeMouseWheel, X: at[0], Y: at[1], DeltaX: 1, DeltaY: pixels, // 0 would not be sent
	})
	must(v.t, err)
}

const end = "End of the piece in hand, along its curve"

// TestHandsOnTheStage works the drawn pattern itself: cut on the curve, drag
// the handles, look closer, by touch on a phone and by mouse and keys at a desk.
func TestHandsOnTheStage(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) { handsOnTheStage(t, newVisit(t, s)) })
	}
}

func handsOnTheStage(t *testing.T, v *visit) {
	v.pause()
	eval[bool](v, `(whorlbenchProgram.act("playhead", "set", 0), true)`)
	v.still()
	first := v.pattern()
	g := v.ground()
	v.shot("stage-1-handles")
	undo := func() {
		t.Helper()
		v.tap("Undo")
		v.wait(`whorlbenchProgram.file().text === ` + quote(first))
	}
	pieces := func(n string) {
		t.Helper()
		v.wait(`document.querySelectorAll("#bench [data-id^=piece-]").length === ` + n)
	}

	// A tap, then the button that it shows.
	v.touch(g.at(179, 1.2))
	v.wait("!!" + twin("button", "Cut here, where the head stands"))
	v.shot("stage-2-tapped")
	v.tap("Cut here, where the head stands")
	pieces("3")
	undo()
	// A double tap.
	v.doubleTap(g.at(226, 1.2))
	pieces("3")
	v.still() // messages gone
	undo()

	// The end of the first piece, a quarter turn on.
	v.press("button", "Right hand, piece 1", " ")
	g = v.ground()
	x, y := v.place("slider", end).middle()
	way := [][2]float64{{x, y}}
	for a := 275.0; a <= 360; a += 5 {
		way = append(way, g.at(a, 1.2))
	}
	if v.screen.touch {
		v.finger(input.DispatchTouchEventTypeTouchStart, way[0])
		for _, p := range way[1:] {
			v.finger(input.DispatchTouchEventTypeTouchMove, p)
		}
		v.refreshes(20)
		v.shot("stage-3-dragging-the-end")
		v.finger(input.DispatchTouchEventTypeTouchEnd)
	} else {
		v.touch(way...)
	}
	v.wait(twin("slider", end) + `.getAttribute("aria-valuetext").includes("3 beats")`)
	undo()

	// The hand path's centre.
	v.touch(g.at(0, 0), g.at(0, 0.1), g.at(0, 0.2))
	v.wait(`whorlbenchProgram.file().text.includes("centre = [0.2, 0]")`)
	undo()

	// By keyboard, the end.
	v.press("slider", end, kb.ArrowRight)
	if got := v.value(end); !strings.HasSuffix(got, "2.25 beats") {
		t.Errorf("an arrow key puts the end at %q, want 2.25 beats", got)
	}
	v.shot("stage-4-focus")
	undo()

	// Look closer, and all of it again.
	before := v.pattern()
	if v.screen.touch {
		v.fingers(g.at(180, 0.3), g.at(0, 0.3), g.at(170, 0.9), g.at(-10, 0.9))
	} else {
		v.wheel(g.at(200, 1.1), -300)
	}
	v.wait("!!" + twin("button", "Fit the whole pattern in view"))
	v.refreshes(20)
	v.shot("stage-5-closer")
	if v.screen.touch {
		v.tap("Fit the whole pattern in view")
	} else {
		must(t, chromedp.Do(v.ctx, chromedp.KeyEvent("0")))
	}
	v.wait("!" + twin("button", "Fit the whole pattern in view"))
	must(t, chromedp.Do(v.ctx, chromedp.KeyEvent("z")))
	v.wait("!!" + twin("button", "Fit the whole pattern in view"))
	must(t, chromedp.Do(v.ctx, chromedp.KeyEvent("0")))
	v.wait("!" + twin("button", "Fit the whole pattern in view"))
	if got := v.pattern(); got != before {
		t.Error("looking closer has edited the pattern")
	}

	// One finger on a slider while another drags the radius.
	if v.screen.touch {
		r := v.place("slider", "Prop speed")
		const pad, reach, low = 16, 6, 22
		at := func(value float64) [2]float64 {
			return [2]float64{r.X + pad + (r.W-2*pad)*(value+reach)/(2*reach), r.Y + r.H - low}
		}
		v.fingers(at(1), g.at(-45, 0.6), at(3), g.at(-45, 0.3))
		v.wait(twin("slider", "Prop speed") + `.getAttribute("aria-valuetext").startsWith("3 ")`)
		v.wait(`whorlbenchProgram.file().text.includes("radius = 0.3")`)
		v.shot("stage-6-two-at-once")
		undo()
	}
	v.clean()
}
