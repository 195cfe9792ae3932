package words

import (
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/tether"
)

func TestTautWindow(t *testing.T) {
	for _, tt := range []struct {
		w    tether.Window
		want string
	}{
		{tether.Window{}, "Slack somewhere at every tempo"},
		{tether.Window{OK: true, Open: true}, "Taut at any tempo"},
		{tether.Window{OK: true, From: 109.1946, Open: true}, "Taut from 109.2 bpm"},
		{tether.Window{OK: true, From: 109.2001, Open: true}, "Taut from 109.3 bpm"}, // at 109.2 it is not
		{tether.Window{OK: true, From: 60, Open: true}, "Taut from 60 bpm"},
		{tether.Window{OK: true, To: 88.19}, "Taut up to 88.1 bpm"},
		{tether.Window{OK: true, From: 50.01, To: 70.09}, "Taut from 50.1 to 70 bpm"},
	} {
		if got := English.TautWindow(tt.w); got != tt.want {
			t.Errorf("TautWindow(%+v) = %q, want %q", tt.w, got, tt.want)
		}
	}
}

func TestTetherLines(t *testing.T) {
	spin := engine.Stroke(engine.PointPath(0), frac.Int(0), frac.Int(1), frac.Int(1), frac.Int(4))
	track := func(plane engine.Plane) *engine.Track {
		return engine.NewTrack(engine.Lane{Side: engine.Right, Plane: plane, Tether: 0.6, Pieces: []engine.Piece{spin}})
	}
	taut := tether.Result{
		Rounds: 1, Least: tether.Extreme{Value: 0.21}, Greatest: tether.Extreme{Value: 4.44}, Window: tether.Window{OK: true, From: 88, Open: true},
		TopSpeed: tether.Extreme{Value: 5}, Clear: 2.2, HasAstray: true, Astray: tether.Extreme{Value: 0.1234}, HasGrowth: true, Growth: 1.31,
	}
	slack := tether.Result{
		Rounds: 1, Slack: true, Least: tether.Extreme{Value: -0.4, Prop: 100}, Greatest: tether.Extreme{Value: 2}, Window: tether.Window{OK: true, From: 109.1946, Open: true},
		Spans: []tether.Span{{From: 1, To: 1.25}}, Clear: 1.6000000001,
	}
	with := func(r tether.Result, change func(r *tether.Result)) tether.Result {
		change(&r)
		return r
	}
	for _, tt := range []struct {
		name  string
		r     tether.Result
		plane engine.Plane
		line  int
		want  string
	}{
		{"taut", taut, engine.Wall, 0, "Taut from 88 bpm; at 90 it stays taut."},
		{"pull", taut, engine.Wall, 1, "From 0.2 to 4.4 times the head's weight."},
		{"speed", taut, engine.Wall, 2, "The head reaches 5 m/s, which is 18 km/h."},
		{"room", taut, engine.Wall, 3, "Keep everyone 2.2 m away; a metre for them is in it."},
		{"room, but for rounding", slack, engine.Wall, 3, "Keep everyone 1.6 m away; a metre for them is in it."},
		{"hand", taut, engine.Wall, 4, "It would really move up to 12 cm off this path, as a tether pulls along itself only."},
		{"wobble", taut, engine.Wall, 5, "A small wobble grows 1.3 times each round if the hand does not answer it."},
		{"hand that is where it is", with(taut, func(r *tether.Result) { r.Astray.Value = 0.004 }), engine.Wall, 4, "It would really move along this path, to within a centimetre."},
		{"even pull", with(taut, func(r *tether.Result) { r.Least.Value = 4.41 }), engine.Floor, 1, "Up to 4.4 times the head's weight."},
		{"wobble stays", with(taut, func(r *tether.Result) { r.Growth = 0.93 }), engine.Wall, 5, "A small wobble stays small by itself."},
		{"wobble dies", with(taut, func(r *tether.Result) { r.Growth = 0.5 }), engine.Wall, 5, "A small wobble dies away by itself."},
		{"wobble runs away", with(taut, func(r *tether.Result) { r.Growth = 1e9 }), engine.Wall, 5, "A small wobble grows more than a hundred times each round if the hand does not answer it."},
		{"wobble lost", with(taut, func(r *tether.Result) { r.HasGrowth = false }), engine.Wall, 5, "The round is too long, or its pull too near nothing, to follow a wobble."},

		{"slack", slack, engine.Wall, 0, "Taut from 109.2 bpm; at 90 it goes slack for about 0.25 beats at the top."},
		{"slack below", with(slack, func(r *tether.Result) { r.Least.Prop = -90 }), engine.Wall, 0, "Taut from 109.2 bpm; at 90 it goes slack for about 0.25 beats at the bottom."},
		{"slack beside", with(slack, func(r *tether.Result) { r.Least.Prop = 180 }), engine.Wall, 0, "Taut from 109.2 bpm; at 90 it goes slack for about 0.25 beats at the side."},
		{"slack and level", slack, engine.Floor, 0, "Taut from 109.2 bpm; at 90 it goes slack for about 0.25 beats."},
		{"slack for a beat", with(slack, func(r *tether.Result) { r.Spans = []tether.Span{{From: 1, To: 2}} }), engine.Floor, 0, "Taut from 109.2 bpm; at 90 it goes slack for about 1 beat."},
		{"slack for a moment", with(slack, func(r *tether.Result) { r.Spans = []tether.Span{{From: 1, To: 1.001}} }), engine.Floor, 0, "Taut from 109.2 bpm; at 90 it goes slack for a moment."},
		{"slack often", with(slack, func(r *tether.Result) { r.Rounds, r.Spans = 3, []tether.Span{{From: 1, To: 2}, {From: 4, To: 6}} }), engine.Wall, 0, "Taut from 109.2 bpm; at 90 it goes slack 2 times in 3 rounds, for up to about 2 beats."},
		{"slack always", with(slack, func(r *tether.Result) { r.Spans = []tether.Span{{From: 0, To: 4}} }), engine.Wall, 0, "Taut from 109.2 bpm; at 90 it is slack all the time."},
		{"slack pull", slack, engine.Wall, 1, "Up to 2 times the head's weight."},
		{"no hand", slack, engine.Wall, 4, "Where the tether goes slack, no hand can lead the head this way."},
		{"no wobble", slack, engine.Wall, 5, "None to follow where the tether goes slack."},

		{"rigid", tether.Result{Rigid: true}, engine.Wall, 0, "A rigid prop can push as well as pull: nothing goes slack."},
		{"rigid push", tether.Result{Rigid: true, Least: tether.Extreme{Value: -0.3}, Greatest: tether.Extreme{Value: 2}}, engine.Wall, 1, "From a push of 0.3 to a pull of 2 times the head's weight."},
		{"rigid hand", tether.Result{Rigid: true}, engine.Wall, 4, "It would really move along this path, to within a centimetre."},
		{"rigid wobble", tether.Result{Rigid: true}, engine.Wall, 5, "A rigid prop is led by the hand: there is none to follow."},
	} {
		lines := English.TetherLines(track(tt.plane), &tt.r, 90)
		if got := lines[tt.line].Text; got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		for _, l := range lines {
			written(t, tt.name+": "+l.Name, l.Text)
		}
	}
	if got, want := English.SlackFault(-0.3206), "the tether would have to push with 0.321 times the head's weight; it cannot, and goes slack"; got != want {
		t.Errorf("SlackFault = %q, want %q", got, want)
	}
}
