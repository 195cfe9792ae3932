package bench_test

import (
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
)

func threePatterns(t *testing.T) []engine.Pattern {
	t.Helper()
	return []engine.Pattern{pattern(t, "half-moon"), pattern(t, twoHands), pattern(t, "pier-end")}
}

// A running order is walked by a clicker's keys and by swipes, stays at its
// ends, and says where it is; then the bench has what it had, with its undo, and
// nothing was kept.
func TestRunningOrder(t *testing.T) {
	small, f := bench.Frame{W: 1920, H: 1080, Top: 48}, bigFrames()[0]
	r := newRig(t, small, "half-moon")
	r.b.Do(widget.Intent{ID: "flip"}, 0)
	r.s.Playing, r.s.Speed = false, 0.5
	r.s.GoTo(1.25)
	r.b.ZoomKey(2)
	r.b.Draw()
	want, changes, sel, beat, view := r.s.Pattern(), r.host.Changes, r.s.Selected(), r.s.Beat(), r.b.StageView()

	order := threePatterns(t)
	r.b.SetFrame(f)
	r.b.StartOrder(order, 0, true)
	r.b.Draw()
	shows := func(i int) {
		t.Helper()
		if !r.b.Session.Pattern().Equal(order[i]) || r.b.OrderAt() != i {
			t.Fatalf("%q is shown, want %q", r.b.Session.Pattern().Title, order[i].Title)
		}
		if said := r.said(f); !strings.HasPrefix(said, []string{"1 of 3 · ", "2 of 3 · ", "3 of 3 · "}[i]+order[i].Title) {
			t.Errorf("%q is written", said)
		}
	}
	shows(0)
	for _, step := range []struct {
		id string
		at int
	}{{"previous", 0}, {"next", 1}, {"next", 2}, {"next", 2}, {"previous", 1}} {
		before := r.b.OrderAt()
		r.b.Do(widget.Intent{ID: step.id}, r.now)
		r.b.Draw()
		if said := r.said(f); (r.b.OrderAt() == before) != strings.HasPrefix(said, "This is the ") {
			t.Errorf("after %s from %d, at %d, %q is written", step.id, before, step.at, said)
		}
		r.now += 10_000
		r.b.Step(0, r.now)
		shows(step.at)
	}
	if !slices.Contains(r.host.Said, "Pattern 2 of 3: "+order[1].Title) {
		t.Errorf("%q was spoken", r.host.Said)
	}
	swipe := func(dx, dy float64) {
		r.now += 2000
		at := display.Pt{X: 500, Y: 500}
		ev := widget.Pointer{ID: 1, At: at, Time: r.now}
		r.b.Pointers([]widget.Pointer{ev}, r.now)
		ev.Phase, ev.At = widget.Move, at.Add(display.Pt{X: dx, Y: dy})
		r.b.Pointers([]widget.Pointer{ev}, r.now)
		ev.Phase = widget.Up
		r.b.Pointers([]widget.Pointer{ev}, r.now)
		r.b.Draw()
	}
	swipe(-200, 20)
	shows(2)
	swipe(200, 20)
	shows(1)
	swipe(60, 400) // neither
	shows(1)

	// What is done on the way is that pattern's alone, or goes along.
	r.b.Do(widget.Intent{ID: "faster"}, 0)
	r.b.Do(widget.Intent{ID: "point"}, 0)
	r.b.Do(widget.Intent{ID: "next"}, 0)
	r.b.Draw()
	if s := r.b.Session; s.Speed != 1 || s.Loop != session.LoopWhole || r.control("point").On || !s.Playing {
		t.Errorf("the third plays: %v at speed %v, over and over: %v", s.Playing, s.Speed, s.Loop)
	}
	r.b.Do(widget.Intent{ID: "point"}, 0)
	r.b.SetFrame(small)
	r.b.Draw()
	if r.b.Session != r.s || !r.s.Pattern().Equal(want) || r.s.Selected() != sel || r.s.Beat() != beat || r.s.Speed != 0.5 || r.s.Playing || r.b.StageView() != view {
		t.Error("the bench is not as it was")
	}
	if r.host.Changes != changes {
		t.Errorf("the work was to be kept %d times more", r.host.Changes-changes)
	}
	r.b.Learn()
	r.b.Do(widget.Intent{ID: "undo"}, 0)
	if !r.s.Pattern().Equal(order[0]) {
		t.Error("what was done before cannot be undone")
	}
}

// Frames of a running order that keep what stays are the frames drawn anew.
func TestRunningOrderKept(t *testing.T) {
	r := newRig(t, bigFrames()[0], "half-moon")
	r.b.StartOrder(threePatterns(t), 0, true)
	kept := 0
	for i := range 400 {
		if i%7 == 0 {
			id := []string{"next", "previous", "point", "blank", "slower", "faster", "step-on", "play", "play", "mirror"}[(i/7*i)%10]
			r.b.Do(widget.Intent{ID: id}, 0)
		}
		r.b.Step(0.03, 0)
		if r.b.Keeps() {
			kept++
		}
		got := copyOf(r.b.Draw())
		gotControls := slices.Clone(r.b.Controls())
		r.b.Forget()
		if d := differs(got, r.b.Draw()); d != "" {
			t.Fatalf("frame %d: kept and drawn anew differ: %s", i, d)
		}
		if len(gotControls) != len(r.b.Controls()) {
			t.Fatalf("frame %d: the controls are not those arranged anew", i)
		}
	}
	if kept < 40 {
		t.Errorf("%d frames kept anything, want at least 40", kept)
	}
}
