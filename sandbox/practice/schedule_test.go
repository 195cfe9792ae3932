package practice_test

import (
	"math"
	"slices"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/practice"
)

// hand is a lane of still pieces of the lengths given.
func hand(side engine.Side, beats ...frac.Frac) engine.Lane {
	l := engine.Lane{Side: side, Tether: 0.6}
	for _, b := range beats {
		l.Pieces = append(l.Pieces, engine.Stroke(engine.PointPath(0), frac.Int(0), frac.Int(1), frac.Int(1), b))
	}
	return l
}

func beats(n ...int64) (out []frac.Frac) {
	for _, b := range n {
		out = append(out, frac.Int(b))
	}
	return out
}

func made(t *testing.T, p practice.Plan) *practice.Schedule {
	t.Helper()
	s, err := practice.New(p)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

const join = practice.RightJoin

// TestByHand: reckoned by hand. At 60 a beat is a second, at 120 half a one.
func TestByHand(t *testing.T) {
	one := engine.Pattern{Lanes: []engine.Lane{hand(engine.Right, beats(1, 2)...)}}
	two := engine.Pattern{Lanes: []engine.Lane{hand(engine.Right, beats(2)...), hand(engine.Left, frac.New(3, 2), frac.New(3, 2))}}
	const beat, round, left, count, faster = practice.Beat, practice.Round, practice.LeftJoin, practice.CountIn, practice.Faster
	for _, test := range []struct {
		name    string
		plan    practice.Plan
		to      float64
		seconds []float64
		kinds   []practice.Kind
	}{
		{
			"count-in, then a round of three beats", practice.Plan{Pattern: one, Tempo: 60, CountIn: 2}, 6,
			[]float64{0, 1, 2, 3, 4, 5},
			[]practice.Kind{count, count, beat | round | join, beat | join, beat, beat | round | join},
		},
		{
			"twice as fast after each round", practice.Plan{Pattern: one, Tempo: 60, Ladder: practice.Ladder{Up: 60, Rounds: 1, Ceiling: 120}}, 5,
			[]float64{0, 1, 2, 3, 3.5, 4, 4.5},
			[]practice.Kind{beat | round | join, beat | join, beat, beat | round | join | faster, beat | join, beat, beat | round | join},
		},
		{
			"two hands, whose rounds of 2 and 3 begin together after 6", practice.Plan{Pattern: two, Tempo: 60}, 6.5,
			[]float64{0, 1, 1.5, 2, 3, 4, 4.5, 5, 6},
			[]practice.Kind{beat | round | join | left, beat, left, beat | join, beat | left, beat | join, left, beat, beat | round | join | left},
		},
	} {
		s := made(t, test.plan)
		events := s.Between(0, test.to)
		if len(events) != len(test.seconds) {
			t.Errorf("%s: %v, want %d events", test.name, events, len(test.seconds))
			continue
		}
		for i, e := range events {
			if math.Abs(e.Seconds-test.seconds[i]) > 1e-12 || e.Kind != test.kinds[i] {
				t.Errorf("%s: event %d at %v s of kind %b, want %v, %b", test.name, i+1, e.Seconds, e.Kind, test.seconds[i], test.kinds[i])
			}
		}
	}
}

// TestLadderSteps: 60, 70, 80, 85 beats a minute for two rounds of four beats
// each: eight beats take 8, 48/7 and 6 seconds.
func TestLadderSteps(t *testing.T) {
	p := engine.Pattern{Lanes: []engine.Lane{hand(engine.Left, beats(4)...)}}
	s := made(t, practice.Plan{Pattern: p, Tempo: 60, CountIn: 4, Ladder: practice.Ladder{Up: 10, Rounds: 2, Ceiling: 85}})
	want := []practice.Step{{0, -4, 60}, {12, 8, 70}, {12 + 48.0/7, 16, 80}, {18 + 48.0/7, 24, 85}}
	got := s.Steps()
	if len(got) != len(want) {
		t.Fatalf("Steps() = %v, want %v", got, want)
	}
	for i := range want {
		if math.Abs(got[i].Seconds-want[i].Seconds) > 1e-12 || got[i].Beat != want[i].Beat || got[i].Tempo != want[i].Tempo {
			t.Errorf("step %d is %v, want %v", i+1, got[i], want[i])
		}
	}
	// The playhead at a time: three seconds before the first step it is 3 beats back.
	for _, test := range [][3]float64{{0, -4, 60}, {4, 0, 60}, {9, 5, 60}, {12, 8, 70}, {18, 15, 70}, {1000, 24 + (1000-18-48.0/7)*85/60, 85}} {
		if beat, tempo := s.BeatAt(test[0]), s.TempoOn(s.BeatAt(test[0])); math.Abs(beat-test[1]) > 1e-9 || tempo != test[2] {
			t.Errorf("at %v s: beat %v at %v, want %v at %v", test[0], beat, tempo, test[1], test[2])
		}
	}
}

// TestStepsOnTheBeat: a step's tempo is that of its first beat and of none before
// it, whenever the sounds of that beat are asked for.
func TestStepsOnTheBeat(t *testing.T) {
	p := engine.Pattern{Lanes: []engine.Lane{hand(engine.Left, beats(4)...)}}
	s := made(t, practice.Plan{Pattern: p, Tempo: 90, CountIn: 4, Ladder: practice.Ladder{Up: 10, Rounds: 1, Ceiling: 110}})
	for _, test := range []struct{ beat, tempo, next, at float64 }{
		{-4, 90, 100, 4}, {0, 90, 100, 4}, {3, 90, 100, 4}, {3.999999, 90, 100, 4},
		{4, 100, 110, 8}, {7.999999, 100, 110, 8}, {8, 110, 0, 0}, {100, 110, 0, 0},
	} {
		step, ok := s.NextStep(test.beat)
		if tempo := s.TempoOn(test.beat); tempo != test.tempo || ok != (test.next > 0) || step.Tempo != test.next || step.Beat != test.at {
			t.Errorf("beat %v: %v, then %+v; want %v, then %v at beat %v", test.beat, tempo, step, test.tempo, test.next, test.at)
		}
	}
}

// TestRetempo: at 60 for ten seconds, then at 120; the playhead is at beat 10
// either way and goes on twice as fast.
func TestRetempo(t *testing.T) {
	p := engine.Pattern{Lanes: []engine.Lane{hand(engine.Left, beats(4)...)}}
	s := made(t, practice.Plan{Pattern: p, Tempo: 60})
	u, err := s.Retempo(10, 120)
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range [][2]float64{{0, 0}, {9, 9}, {10, 10}, {11, 12}, {20, 30}} {
		if got := u.BeatAt(test[0]); math.Abs(got-test[1]) > 1e-12 {
			t.Errorf("BeatAt(%v) = %v, want %v", test[0], got, test[1])
		}
	}
	if got := s.BeatAt(20); got != 20 {
		t.Errorf("the first schedule has beat %v at 20 s, want 20 as before", got)
	}
	if _, err := s.Retempo(10, 1000); err == nil {
		t.Error("Retempo to 1000 gives no error")
	}
	// A ladder goes on up from the new tempo, the next whole rounds on.
	s = made(t, practice.Plan{Pattern: p, Tempo: 60, Ladder: practice.Ladder{Up: 30, Rounds: 1, Ceiling: 120}})
	u, _ = s.Retempo(2, 60)
	want := []practice.Step{{0, 0, 60}, {2, 2, 60}, {8, 8, 90}, {8 + 8.0/3, 12, 120}}
	if got := u.Steps(); !slices.Equal(got, want) {
		t.Errorf("Steps() = %v, want %v", got, want)
	}
}

func TestCheck(t *testing.T) {
	p := engine.Pattern{Lanes: []engine.Lane{hand(engine.Left, beats(4)...)}}
	for _, bad := range []practice.Plan{
		{Tempo: 60}, {Pattern: p, Tempo: 9}, {Pattern: p, Tempo: math.NaN()}, {Pattern: p, Tempo: 401}, {Pattern: p, Tempo: 60, CountIn: -1}, {Pattern: p, Tempo: 60, CountIn: 33},
		{Pattern: p, Tempo: 60, Ladder: practice.Ladder{Up: 0.1, Rounds: 1, Ceiling: 90}},
		{Pattern: p, Tempo: 60, Ladder: practice.Ladder{Up: 1, Rounds: 0, Ceiling: 90}},
		{Pattern: p, Tempo: 60, Ladder: practice.Ladder{Up: 1, Rounds: 1, Ceiling: 59}},
		{Pattern: p, Tempo: 60, Ladder: practice.Ladder{Up: 1, Rounds: 1, Ceiling: math.Inf(1)}},
	} {
		if _, err := practice.New(bad); err == nil {
			t.Errorf("New(%+v) gives no error", bad)
		}
	}
}

// TestNothingLostOrDoubled: however a time is cut into stretches, and however
// often the tempo is changed on the way, the events are those of the music:
// every whole beat, every join and every round once, in their order.
func TestNothingLostOrDoubled(t *testing.T) {
	r := chance.New(t)
	for range 150 {
		var lengths []frac.Frac
		for range 1 + r.IntN(4) {
			lengths = append(lengths, frac.New(1+r.Int64N(12), 1+r.Int64N(7)))
		}
		p := engine.Pattern{Lanes: []engine.Lane{hand(engine.Right, lengths...)}}
		if r.IntN(2) == 0 {
			p.Lanes = append(p.Lanes, hand(engine.Left, frac.New(1+r.Int64N(9), 1+r.Int64N(4))))
		}
		plan := practice.Plan{Pattern: p, Tempo: 30 + 200*r.Float64(), CountIn: r.IntN(5)}
		if r.IntN(2) == 0 {
			plan.Ladder = practice.Ladder{Up: 0.5 + 20*r.Float64(), Rounds: 1 + r.IntN(3), Ceiling: plan.Tempo + 100*r.Float64()}
		}
		s := made(t, plan)
		var all []practice.Event
		var now float64
		for now < 40 {
			// Stretches of the length of a frame, and some that end right on an event.
			next := now + 0.3*r.Float64()
			if e := s.Between(now, now+2); r.IntN(3) == 0 && len(e) > 0 {
				next = e[r.IntN(len(e))].Seconds
			}
			all = append(all, s.Between(now, next)...)
			now = next
			if r.IntN(20) == 0 {
				before := s.BeatAt(now)
				u, err := s.Retempo(now, 30+200*r.Float64())
				if err != nil {
					t.Fatalf("%v", err)
				}
				if after := u.BeatAt(now); math.Abs(after-before) > 1e-6 {
					t.Fatalf("the playhead jumps from beat %v to %v", before, after)
				}
				s = u
			}
		}
		music(t, plan, all, s.BeatAt(now))
	}
}

// music checks events against the music, counted without a clock.
func music(t *testing.T, plan practice.Plan, all []practice.Event, until float64) {
	t.Helper()
	want := map[string]practice.Kind{}
	for b := -plan.CountIn; float64(b) < until-1e-6; b++ {
		want[frac.Int(int64(b)).String()] |= map[bool]practice.Kind{true: practice.CountIn, false: practice.Beat}[b < 0]
	}
	for _, l := range plan.Pattern.Lanes {
		kind := practice.RightJoin
		if l.Side == engine.Left {
			kind = practice.LeftJoin
		}
		at := frac.Int(0)
		for i := 0; at.Float() < until-1e-6; i = (i + 1) % len(l.Pieces) {
			want[at.String()] |= kind
			at = at.Add(l.Pieces[i].Beats)
		}
	}
	round := plan.Round()
	for at := frac.Int(0); at.Float() < until-1e-6; at = at.Add(round) {
		want[at.String()] |= practice.Round
	}
	got := 0
	for i, e := range all {
		if i > 0 && (!all[i-1].Beat.Less(e.Beat) || e.Seconds < all[i-1].Seconds) {
			t.Fatalf("event %v after %v", e, all[i-1])
		}
		if e.Beat.Float() >= until-1e-6 {
			continue
		}
		got++
		if kind := e.Kind &^ practice.Faster; want[e.Beat.String()] != kind {
			t.Fatalf("beat %v has kind %b, want %b", e.Beat, kind, want[e.Beat.String()])
		}
	}
	if got != len(want) {
		t.Fatalf("%d events, want %d", got, len(want))
	}
}
