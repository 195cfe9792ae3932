package bench_test

import (
	"math"
	"strings"
	"testing"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/practice"
	"whorlbench/sandbox/words"
)

// practiceFrame is a phone while practising.
var practiceFrame = bench.Frame{W: 390, H: 844, Top: 250, Bottom: 140, StageOnly: true, Practice: true}

// heard lets time pass in frames until some second of the practice is heard, and
// returns the last count that was shown.
func (r *rig) heard(seconds float64) bench.Count {
	for r.host.Sounded < seconds {
		r.host.Sounded = min(r.host.Sounded+0.016, seconds)
		r.b.Clicks(r.host.Sounded + 0.25)
		r.now += 16
		r.b.Step(5, r.now) // what the frame's clock says counts for nothing
		r.b.Draw()
	}
	if len(r.host.Counts) == 0 {
		return bench.Count{}
	}
	return r.host.Counts[len(r.host.Counts)-1]
}

var ladderWish = bench.PractiseWish{Tempo: "60", CountIn: "4", Ladder: true, Up: "30", Rounds: "2", Ceiling: "120"}

// TestPractise: reckoned by hand. Four beats are counted in at 60 a minute, two
// rounds of four beats take eight seconds, two at 90 take 5⅓ and all after are at
// 120.
func TestPractise(t *testing.T) {
	r := newRig(t, practiceFrame, "half-moon")
	r.s.Playing = false
	r.s.GoTo(1.5)
	before, rev := r.s.Pattern(), r.s.Revision()
	w := ladderWish
	w.Mirror = true
	if refused := r.b.Practise(w); refused != "" {
		t.Fatal(refused)
	}
	if !r.s.Mirror || r.s.Beat() != 0 {
		t.Errorf("mirror %v, playhead at %v, want it mirrored and at 0", r.s.Mirror, r.s.Beat())
	}
	for _, x := range []struct {
		seconds, beat float64
		want          bench.Count
	}{
		{0.5, 0, bench.Count{Beat: -4, CountIn: true, Number: "4", Round: "Round 1", Tempo: "60", Next: "Next: 90, after two rounds"}},
		{3.9, 0, bench.Count{Beat: -1, CountIn: true, Number: "1", Round: "Round 1", Tempo: "60", Next: "Next: 90, after two rounds"}},
		{4.25, 0.25, bench.Count{Beat: 0, First: true, Number: "1", Round: "Round 1", Tempo: "60", Next: "Next: 90, after two rounds"}},
		{7.5, 3.5, bench.Count{Beat: 3, Number: "4", Round: "Round 1", Tempo: "60", Next: "Next: 90, after two rounds"}},
		{9, 1, bench.Count{Beat: 5, Number: "2", Round: "Round 2", Tempo: "60", Next: "Next: 90, after this round"}},
		{13, 1.5, bench.Count{Beat: 9, Number: "2", Round: "Round 3", Tempo: "90", Next: "Next: 120, after two rounds"}},
		{12 + 16.0/3 + 0.75, 1.5, bench.Count{Beat: 17, Number: "2", Round: "Round 5", Tempo: "120", Next: "No faster than this"}},
	} {
		got := r.heard(x.seconds)
		x.want.Slack = got.Slack
		if got != x.want || math.Abs(r.s.RoundBeat()-x.beat) > 1e-9 {
			t.Errorf("at %v s: %+v, playhead at %v, want %+v, %v", x.seconds, got, r.s.RoundBeat(), x.want, x.beat)
		}
		if slack := got.Tempo != "120"; (got.Slack != "") != slack { // taut from 109.2, as the README has it
			t.Errorf("at %v s and %s beats a minute: %q, want a caution: %v", x.seconds, got.Tempo, got.Slack, slack)
		}
	}
	r.b.StopPractice()
	if r.s.Playing || r.s.Mirror || r.s.Beat() != 1.5 {
		t.Errorf("afterwards it plays: %v, mirror %v, at beat %v, want it as before", r.s.Playing, r.s.Mirror, r.s.Beat())
	}
	if !r.s.Pattern().Equal(before) || r.s.Revision() != rev || r.host.Changes != 0 {
		t.Error("the pattern has changed")
	}
}

// TestPractiseClicks: each event is given out once, in order, also where the
// tempo is changed on the way; a change comes as soon as what has been given
// out is over, and nothing is given out while it is paused.
func TestPractiseClicks(t *testing.T) {
	r := newRig(t, practiceFrame, "half-moon")
	r.b.Practise(bench.PractiseWish{Tempo: "60", CountIn: "2"})
	var at []float64
	take := func(to float64) {
		for _, e := range r.b.Clicks(to) {
			at = append(at, e.Seconds)
		}
	}
	take(2.25)
	take(2.25)
	take(3.5)
	r.b.PracticeTempo(60)
	take(6)
	// At 60 until 3.5 s, beat 1.5; then half a second a beat: 2 at 3.75.
	want := []float64{0, 1, 2, 3, 3.75, 4.25, 4.75, 5.25, 5.75}
	if len(at) != len(want) {
		t.Fatalf("events at %v, want %v", at, want)
	}
	for i := range at {
		if math.Abs(at[i]-want[i]) > 1e-9 {
			t.Errorf("event %d at %v s, want %v", i+1, at[i], want[i])
		}
	}
	r.b.PracticeTempo(-1000)
	r.host.Sounded = 6
	r.b.Step(0, 0)
	if c := r.host.Counts[len(r.host.Counts)-1]; c.Tempo != "10" {
		t.Errorf("at its slowest it shows %q, want 10", c.Tempo)
	}
	r.b.PausePractice()
	if e := r.b.Clicks(20); len(e) > 0 || r.b.Step(1, 0) {
		t.Errorf("paused, it has %v", e)
	}
}

// ladder90 climbs from 90 over 100 to 110, each for a round of four beats: a
// beat takes 2/3 s at first, so that round 2 begins after 8 beats, at 16/3 s.
var ladder90 = bench.PractiseWish{Tempo: "90", CountIn: "4", Ladder: true, Up: "10", Rounds: "1", Ceiling: "110"}

// TestPractiseHeard: the tempo that is shown is the one that is heard, however
// far ahead sounds have been given out.
func TestPractiseHeard(t *testing.T) {
	for _, ahead := range []float64{0.25, 0.75, 2.5} {
		r := newRig(t, practiceFrame, "half-moon")
		r.b.Practise(ladder90)
		const step = 16.0 / 3
		for _, x := range []struct {
			at                  float64
			round, tempo, nextW string
		}{
			{step - 0.5, "Round 1", "90", "Next: 100, after this round"},
			{step - 0.001, "Round 1", "90", "Next: 100, after this round"},
			{step, "Round 2", "100", "Next: 110, after this round"},
			{step + 2.4 - 0.001, "Round 2", "100", "Next: 110, after this round"},
			{step + 2.4, "Round 3", "110", "No faster than this"},
		} {
			r.b.Clicks(x.at + ahead)
			r.host.Sounded = x.at
			r.b.Step(0, 0)
			if c := r.host.Counts[len(r.host.Counts)-1]; c.Round != x.round || c.Tempo != x.tempo || c.Next != x.nextW {
				t.Errorf("%v s ahead, at %v s: %s at %s, %q; want %s at %s, %q", ahead, x.at, c.Round, c.Tempo, c.Next, x.round, x.tempo, x.nextW)
			}
		}
	}
}

// TestPractisePauseBeforeAStep: what is paused and kept is what was heard: a
// moment before a step, the round and the tempo before it; with it, those after.
func TestPractisePauseBeforeAStep(t *testing.T) {
	const step = 16.0 / 3
	for _, x := range []struct {
		at                 float64
		round, tempo, next string
		kept               float64
	}{
		{step - 0.75, "Round 1", "90", "Next: 100, after this round", 90},
		{step - 0.001, "Round 1", "90", "Next: 100, after this round", 90},
		{step, "Round 2", "100", "Next: 110, after this round", 100},
		{step + 0.001, "Round 2", "100", "Next: 110, after this round", 100},
	} {
		r := newRig(t, practiceFrame, "half-moon")
		r.b.Practise(ladder90)
		r.b.Clicks(x.at + 1)
		r.host.Sounded = x.at
		r.b.PausePractice()
		r.b.KeepPracticeTempo()
		if got := r.s.Pattern().Tempo; got != x.kept {
			t.Errorf("paused at %v s: %v is kept, want %v", x.at, got, x.kept)
		}
		r.host.Sounded = 0
		r.b.ResumePractice()
		if c := r.host.Counts[len(r.host.Counts)-1]; c.Round != x.round || c.Tempo != x.tempo || c.Next != x.next || !c.CountIn {
			t.Errorf("paused at %v s, it goes on with %+v; want the count-in of %s at %s", x.at, c, x.round, x.tempo)
		}
	}
}

// TestPractiseAsked: a tempo asked for by hand is shown at once, adds up when
// asked for twice, and is what a pause keeps.
func TestPractiseAsked(t *testing.T) {
	r := newRig(t, practiceFrame, "half-moon")
	r.b.Practise(ladder90)
	r.b.Clicks(5.5) // beyond the step at 16/3 s
	r.host.Sounded = 5
	r.b.PracticeTempo(2)
	r.b.PracticeTempo(2)
	for _, at := range []float64{5, 5.4, 5.6} {
		r.host.Sounded = at
		r.b.Step(0, 0)
		if c := r.host.Counts[len(r.host.Counts)-1]; c.Tempo != "94" || !strings.HasPrefix(c.Next, "Next: 104") {
			t.Errorf("asked for 4 more at 5 s, at %v s it shows %s, %q; want 94, then 104", at, c.Tempo, c.Next)
		}
	}
	r.b.PausePractice()
	r.b.KeepPracticeTempo()
	if got := r.s.Pattern().Tempo; got != 94 {
		t.Errorf("%v is kept, want 94", got)
	}
}

// TestPractisePause: going on counts in again, at the tempo that was reached, and
// begins the broken round anew.
func TestPractisePause(t *testing.T) {
	r := newRig(t, practiceFrame, "half-moon")
	r.b.Practise(ladderWish)
	r.heard(13) // in round 3, at 90
	r.b.PausePractice()
	at := r.s.Beat()
	r.host.Sounded = 14
	r.b.Step(1, 0)
	if r.s.Beat() != at || r.s.Playing {
		t.Errorf("paused, the playhead went from %v to %v", at, r.s.Beat())
	}
	r.b.PracticeTempo(5)
	if c := r.host.Counts[len(r.host.Counts)-1]; c.Tempo != "95" {
		t.Errorf("faster while paused: %q, want 95", c.Tempo)
	}
	r.host.Sounded = 0
	r.b.ResumePractice()
	if c := r.heard(0.1); !c.CountIn || c.Number != "4" || c.Round != "Round 3" || c.Tempo != "95" || c.Next != "Next: 120, after two rounds" {
		t.Errorf("going on: %+v, want the count-in of round 3 at 95", c)
	}
	if c := r.heard(5 * 60.0 / 95); c.Number != "2" || c.Round != "Round 3" || math.Abs(r.s.RoundBeat()-1) > 1e-9 {
		t.Errorf("a beat after the count-in: %+v at %v, want the second of round 3", c, r.s.RoundBeat())
	}
	if said := r.b.KeepPracticeTempo(); r.s.Pattern().Tempo != 95 || !strings.Contains(said, "95") {
		t.Errorf("the tempo that is kept is %v (%q), want 95", r.s.Pattern().Tempo, said)
	}
	r.b.StopPractice()
	if r.s.Undo(); r.s.Pattern().Tempo != 120 {
		t.Errorf("undone, the tempo is %v, want 120", r.s.Pattern().Tempo)
	}
}

// Before the start: what is wrong, as found and allowed, and what a tether will
// not bear. The C-cap is taut from 109.2 beats a minute, as the README has it.
func TestBeforePractice(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	change := func(f func(w *bench.PractiseWish)) bench.PractiseWish {
		w := ladderWish
		f(&w)
		return w
	}
	for _, x := range []struct {
		wish    bench.PractiseWish
		refused string
	}{
		{change(func(w *bench.PractiseWish) { w.Tempo = "quick" }), "Starting tempo: found “quick”, allowed 10 to 400."},
		{change(func(w *bench.PractiseWish) { w.Tempo = "401" }), "Starting tempo: found “401”, allowed 10 to 400."},
		{change(func(w *bench.PractiseWish) { w.CountIn = "2.5" }), "Count-in beats: found “2.5”, allowed a whole number from 0 to 32."},
		{change(func(w *bench.PractiseWish) { w.CountIn = "1e99" }), "Count-in beats: found “1e99”, allowed a whole number from 0 to 32."},
		{change(func(w *bench.PractiseWish) { w.Up = "0.1" }), "Faster by: found “0.1”, allowed 0.5 to 400."},
		{change(func(w *bench.PractiseWish) { w.Rounds = "" }), "Rounds each: found “”, allowed a whole number from 1 to 1000."},
		{change(func(w *bench.PractiseWish) { w.Ceiling = "59" }), "Up to: found “59”, allowed 60 to 400."},
		{change(func(w *bench.PractiseWish) { w.Ceiling, w.Ladder = "59", false }), ""},
		{change(func(w *bench.PractiseWish) { w.Tempo = "62,5" }), ""},
	} {
		if _, _, got := r.b.BeforePractice(x.wish); got != x.refused {
			t.Errorf("%+v: %q, want %q", x.wish, got, x.refused)
		}
		if got := r.b.Practise(x.wish); got != x.refused {
			t.Errorf("Practise(%+v) = %q, want %q", x.wish, got, x.refused)
		}
		r.b.StopPractice()
	}
	tempo, cautions, _ := r.b.BeforePractice(ladderWish)
	if tempo != "From 60 beats a minute, 30 more after every two rounds, up to 120." || len(cautions) != 1 || !strings.Contains(cautions[0], "until you reach 109.2 beats a minute") {
		t.Errorf("before it: %q, %q", tempo, cautions)
	}
	_, cautions, _ = r.b.BeforePractice(bench.PractiseWish{Tempo: "120", CountIn: "0"})
	if len(cautions) != 0 {
		t.Errorf("at 120, where it is taut: %q", cautions)
	}
}

// Events that fall together are one click of several kinds: of the C-cap of two
// pieces of two beats, the round and its joins.
func TestPractiseKinds(t *testing.T) {
	r := newRig(t, practiceFrame, "half-moon")
	r.b.Practise(bench.PractiseWish{Tempo: "60", CountIn: "1"})
	var kinds []practice.Kind
	for _, e := range r.b.Clicks(5.5) {
		kinds = append(kinds, e.Kind)
	}
	const beat, join, round = practice.Beat, practice.RightJoin, practice.Round
	want := []practice.Kind{practice.CountIn, beat | join | round, beat, beat | join, beat, beat | join | round}
	for i := range want {
		if len(kinds) != len(want) || kinds[i] != want[i] {
			t.Fatalf("kinds %v, want %v", kinds, want)
		}
	}
}

// While practising, the stage has no controls of its own, and its line leaves
// the beat to the counter.
func TestPractiseStage(t *testing.T) {
	r := newRig(t, practiceFrame, "half-moon")
	r.b.Practise(ladderWish)
	r.heard(4.5)
	if cs := r.b.Controls(); len(cs) != 0 {
		t.Errorf("the controls are %+v, want none", cs)
	}
	beat, _, _ := strings.Cut(words.English.View.BeatNow, "%")
	for _, m := range r.b.Draw().Marks {
		if m.Kind == display.Text && strings.Contains(m.Text, beat) {
			t.Errorf("the stage says %q", m.Text)
		}
	}
	// While it is counted in, arrows show which way hand and head set off.
	arrows := func() (n int) {
		for _, m := range r.b.Draw().Marks {
			if m.Kind == display.Poly {
				n++
			}
		}
		return n
	}
	going := arrows()
	r.b.PausePractice()
	r.host.Sounded = 0
	r.b.ResumePractice()
	if got := arrows(); got != going+2 {
		t.Errorf("%d arrows in the count-in, want one for the hand and one for the head", got-going)
	}
	if r.heard(4.5); arrows() != going {
		t.Errorf("%d arrows after the count-in", arrows()-going)
	}
	r.b.StopPractice()
	r.b.Draw()
	if cs := r.b.Controls(); len(cs) != 1 {
		t.Errorf("afterwards the controls are %+v, want to play", cs)
	}
}
