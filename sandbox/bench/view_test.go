package bench_test

import (
	"testing"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
)

func TestSettings(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	first := r.b.Settings()
	want := bench.Settings{Trail: 2, Step: 1, Loop: 2, Grid: true, ByPiece: true}
	r.b.SetSettings(want)
	if got := r.b.Settings(); got != want {
		t.Errorf("Settings() = %+v, want %+v", got, want)
	}
	text := r.b.WriteSettings()
	r.b.SetSettings(first)
	r.b.ReadSettings(text)
	if got := r.b.Settings(); got != want {
		t.Errorf("written and read, Settings() = %+v, want %+v", got, want)
	}
	for _, bad := range []string{"", "x", "[]", `{"trail": "long"}`} {
		r.b.ReadSettings(bad)
		if got := r.b.Settings(); got != want {
			t.Errorf("ReadSettings(%q) changed them to %+v", bad, got)
		}
	}
	r.b.ReadSettings(`{"trail": 99, "loop": -1, "step": 7}`)
	if got := r.b.Settings(); got != want {
		t.Errorf("values out of range changed the settings to %+v", got)
	}
	if r.s.CanUndo() {
		t.Error("a setting left something to undo")
	}
}

func TestStepButtonsPauseAndStep(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.s.Playing = true
	r.s.Seek(1.4)
	r.tap("step-on")
	if got := r.s.RoundBeat(); r.s.Playing || got != 2 {
		t.Errorf("after a step on from beat 1.4: playing %v at beat %v, want paused at 2", r.s.Playing, got)
	}
	if got := r.s.Selected().Piece; got != 1 {
		t.Errorf("the piece in hand is %d, want the one that begins there, 1", got)
	}
	r.tap("step-back")
	if got := r.s.RoundBeat(); got != 1 {
		t.Errorf("after a step back the playhead stands at %v, want 1", got)
	}
}

func TestLoopGoesRound(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	for _, want := range []session.Loop{session.LoopRound, session.LoopPiece, session.LoopWhole} {
		r.b.Do(widget.Intent{ID: "loop", Act: widget.Press}, 0)
		if r.s.Loop != want {
			t.Errorf("Loop = %v, want %v", r.s.Loop, want)
		}
	}
}
