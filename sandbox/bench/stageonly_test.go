package bench_test

import (
	"testing"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// A stage that stands alone has all the room, one control, and no words; a tap
// anywhere, or two quick ones, play and pause, and nothing changes the pattern.
func TestStageOnly(t *testing.T) {
	r := newRig(t, bench.Frame{W: 560, H: 420, StageOnly: true}, twoHands)
	before, rev := r.s.Pattern(), r.s.Revision()
	r.b.ShowHint(0)
	r.b.Say("a message", 0)
	r.b.Draw()
	if cs := r.b.Controls(); len(cs) != 1 || cs[0].ID != "play" || cs[0].Label == "" {
		t.Fatalf("the controls are %+v, want play alone", cs)
	}
	for _, m := range r.b.Draw().Marks {
		if m.Kind == display.Text && len([]rune(m.Text)) > 2 {
			t.Errorf("%q is written, want no words but the letters of sides", m.Text)
		}
	}
	tap := func(x, y, at float64) {
		p := display.Pt{X: x, Y: y}
		r.b.Pointers([]widget.Pointer{{ID: 1, Phase: widget.Down, At: p, Time: at}, {ID: 1, Phase: widget.Up, At: p, Time: at + 40}}, at)
		r.b.Draw()
	}
	playing := r.s.Playing
	for i, at := range []float64{1000, 1100, 5000, 9000} {
		tap([]float64{280, 281, 40, 535}[i], []float64{210, 210, 60, 395}[i], at)
		if playing = !playing; r.s.Playing != playing {
			t.Errorf("after tap %d it plays: %v, want %v", i+1, r.s.Playing, playing)
		}
	}
	r.s.Playing = false
	r.b.Draw()
	r.b.Pointers([]widget.Pointer{
		{ID: 1, Phase: widget.Down, At: display.Pt{X: 280, Y: 210}, Time: 20000}, {ID: 1, Phase: widget.Move, At: display.Pt{X: 350, Y: 260}, Time: 20100},
		{ID: 1, Phase: widget.Up, At: display.Pt{X: 400, Y: 300}, Time: 20200},
	}, 20200)
	if r.b.Wheel(display.Pt{X: 280, Y: 210}, 300) {
		t.Error("the wheel is taken from the page around")
	}
	if !r.s.Pattern().Equal(before) || r.s.Revision() != rev || r.host.Changes != 0 {
		t.Error("the pattern has changed")
	}
}
