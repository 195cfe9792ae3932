package words

import (
	"math/big"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/follow"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// extension is half a circle of extension, R = L, at a beat a second.
func extension() engine.Pattern {
	l := engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: 90, PropAt: 90}
	l.Pieces = []engine.Piece{engine.Stroke(engine.CirclePath(0, 0.6), frac.Int(1), frac.Int(1), frac.New(1, 2), frac.Int(2))}
	return engine.Pattern{Tempo: 60, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}}
}

func TestFollowLabel(t *testing.T) {
	p := extension()
	cs := follow.After(p, engine.NewTrack(p.Lanes[0]), 0)
	got := map[string]string{}
	for k := range cs {
		label := English.FollowLabel(&cs[k])
		written(t, "label", label)
		detail := English.FollowDetail(&cs[k])
		written(t, "detail", detail)
		if _, there := got[label]; !there {
			got[label] = detail
		}
	}
	for label, want := range map[string]string{
		"Extension, the same again":                "On the same path, 2 beats, at the pace you have, closes the round, smooth",
		"Four-petal antispin flower, turning back": "On the same path, 2 beats, at the pace you have, closes the round, smooth",
		"Six-petal antispin flower, turning back":  "On the same path, 4 beats, at a slower pace, closes the round, smooth",
		// The prop has made a half turn more where the hand's circle ends.
		"Two-petal antispin flower, cateye, to the other side": "On a circle of 0.6 m, 2 beats, at the pace you have, leaves a gap after it",
	} {
		if detail, there := got[label]; detail != want {
			t.Errorf("%q: %q (there: %v), want %q", label, detail, there, want)
		}
	}
	if got, want := English.FollowTitle(engine.Right, 0), "Right hand: what can follow piece 1"; got != want {
		t.Errorf("FollowTitle = %q, want %q", got, want)
	}
}

func TestFollowEnd(t *testing.T) {
	join := func(v seam.Verdict) seam.Seam { return seam.Seam{Verdict: v} }
	for _, test := range []struct {
		c    follow.Candidate
		want string
	}{
		{follow.Candidate{Join: join(seam.Smooth), Next: join(seam.Smooth), Fits: true, Rounds: big.NewInt(1)}, "closes the round, smooth"},
		{follow.Candidate{Join: join(seam.Smooth), Next: join(seam.Kink), Fits: true, Rounds: big.NewInt(1)}, "closes the round"},
		{follow.Candidate{Join: join(seam.Smooth), Next: join(seam.Smooth), Fits: true, Rounds: big.NewInt(2)}, "closes after 2 rounds"},
		{follow.Candidate{Join: join(seam.Smooth), Next: join(seam.Smooth), Fits: true, Later: true, Rounds: big.NewInt(1)}, "joins what follows"},
		{follow.Candidate{Join: join(seam.Smooth), Next: join(seam.Gap), Rounds: big.NewInt(0)}, "leaves a gap after it"},
	} {
		if got := English.followEnd(&test.c); got != test.want {
			t.Errorf("followEnd(%+v) = %q, want %q", test.c, got, test.want)
		}
	}
}

func TestMeetText(t *testing.T) {
	leg := func(path engine.Path, ratio int64, prop engine.Degrees) *engine.Leg {
		l := engine.Lane{Tether: 0.6, PropAt: prop, Pieces: []engine.Piece{engine.Stroke(path, frac.Int(1), frac.Int(ratio), frac.Int(1), frac.Int(1))}}
		return &engine.NewTrack(l).Legs[0]
	}
	circle := engine.CirclePath(0, 0.6)
	for _, test := range []struct {
		a, b *engine.Leg
		want string
	}{
		{leg(circle, 1, 0), leg(circle, -3, 0), "They meet at 4 places."},
		{leg(circle, 1, 0), leg(circle, 2, 0), "They meet at one place."},
		{leg(circle, 1, 0), leg(circle, 1, 0), "They are one and the same pattern, so they meet everywhere."},
		{leg(circle, 1, 0), leg(circle, 1, 30),
			"The hands share places, but the props never point the same way there. Turn the second prop by 30° clockwise and they are one and the same pattern."},
		{leg(circle, 1, 0), leg(engine.CirclePath(1.2, 0.6), 1, 150),
			"The hands share places, but the props never point the same way there. Turn the second prop by 30° anticlockwise and they meet at one place."},
		{leg(circle, 1, 0), leg(engine.CirclePath(3, 0.6), 1, 0),
			"The hands share no place, so one of the two has to move, or be made larger or smaller."},
	} {
		if got := English.MeetText(follow.Between(test.a, test.b, 60, false)); got != test.want {
			t.Errorf("MeetText = %q, want %q", got, test.want)
		}
	}
	m := follow.Between(leg(circle, 1, 0), leg(circle, -3, 0), 60, false)
	lines := English.MeetLines(m)
	if want := (Line{"Arm at 90°, prop at 90°", "At best: smooth, from the first to the second, the hand turning back"}); len(lines) != 4 || lines[1] != want {
		t.Errorf("MeetLines = %q, want four, the second %q", lines, want)
	}
}
