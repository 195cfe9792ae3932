package bench_test

import (
	"math"
	"testing"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
)

// The half-moon's extension has the head 1.2 m out at the arm's angle, from 90°
// on, half a turn in two beats: 45° more a half beat.

func TestDragTheHead(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.s.Playing = true
	r.s.GoTo(0.5)
	r.haul(r.on(angle(135, 1.2)), angle(150, 1.2), angle(180, 1.2), angle(225, 1.2))
	if got := r.s.Beat(); math.Abs(got-1.5) > 0.02 {
		t.Errorf("the head dragged from 135° to 225° is at beat %v, want 1.5", got)
	}
	if !r.s.Playing {
		t.Error("it does not play on")
	}
	r.s.Playing = false
	r.haul(r.on(angle(225, 1.2)), angle(180, 1.3), angle(112.5, 1.25))
	if got := r.s.Beat(); math.Abs(got-0.25) > 0.02 {
		t.Errorf("dragged back to 112.5°, and a little off its curve, it is at beat %v, want 0.25", got)
	}
	if r.s.Playing || r.s.CanUndo() {
		t.Errorf("playing %v, can undo %v, want neither", r.s.Playing, r.s.CanUndo())
	}
}

// At the end of the first piece the curve goes on in the second, which comes
// under the playhead and so into the hand.
func TestDragTheHeadIntoTheNextPiece(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	k := r.s.Tracks()[0]
	r.s.GoTo(1.9)
	r.haul(r.on(k.At(1.9).Head), k.At(2).Head, k.At(2.2).Head, k.At(2.5).Head)
	if got := r.s.Beat(); math.Abs(got-2.5) > 0.05 || r.s.Selected().Piece != 1 {
		t.Errorf("dragged on into the second piece: beat %v, piece %d, want 2.5, 1", got, r.s.Selected().Piece)
	}
}

// A message lies over the foot of the stage, where handles may be: a touch of
// the stage takes it away.
func TestATouchOfTheStageTakesTheMessageAway(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.b.Say("Nine lanterns", r.now)
	if linesOf(r)["Nine lanterns"] == 0 {
		t.Fatal("the message is not shown")
	}
	r.drag(r.on(angle(20, 0.2)))
	if linesOf(r)["Nine lanterns"] != 0 {
		t.Error("the message is still there after a touch of the stage")
	}
}

// Where the stage is wide, a message stands beside the figure's foot: the head of
// the half-moon passes there, 1.2 m below the middle.
func TestAMessageLeavesTheFootFree(t *testing.T) {
	r := newRig(t, bench.Frame{W: 1440, H: 900, Top: 48}, "half-moon")
	r.b.Say("Nine lanterns", r.now)
	foot := r.on(angle(270, 1.2))
	for _, m := range r.b.Draw().Marks {
		if m.Kind == display.Text && m.Text == "Nine lanterns" && foot.X < m.At.X+200 {
			t.Errorf("the message begins at %v, too near the foot at %v", m.At, foot)
		}
	}
}
