package words

import (
	"math/big"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

func TestValue(t *testing.T) {
	for _, tt := range []struct {
		f    frac.Frac
		want string
	}{
		{frac.Int(0), "0"},
		{frac.Int(3), "3"},
		{frac.Int(-3), "−3"},
		{frac.New(1, 2), "0.5"},
		{frac.New(-5, 4), "−1.25"},
		{frac.New(1, 8), "0.125"},
		{frac.New(1, 3), "1/3"},
		{frac.New(-7, 3), "−7/3"},
		{frac.New(1, 16), "1/16"},
		{frac.New(10_001, 1000), "10.001"},
		// A number just off a limit must not read as the limit.
		{frac.New(640_001, 10_000), "64.0001"},
		{frac.New(1, 1_000_000), "0.000001"},
		{frac.New(-1, 1_000_000), "−0.000001"},
		{frac.New(1_000_003, 3_000_000), "0.333"},
		{frac.New(1, 3_000_000), "0.0000003"},
		{frac.New(-1, 3_000_000), "−0.0000003"},
	} {
		if got := Value(tt.f); got != tt.want {
			t.Errorf("Value(%v) = %q, want %q", tt.f, got, tt.want)
		}
	}
}

func TestBeats(t *testing.T) {
	for _, tt := range []struct {
		f    frac.Frac
		want string
	}{
		{frac.Int(1), "1 beat"},
		{frac.Int(2), "2 beats"},
		{frac.New(1, 2), "0.5 beats"},
		{frac.New(4, 3), "4/3 beats"},
		{frac.Int(10_000), "10000 beats"},
	} {
		if got := English.Beats(tt.f); got != tt.want {
			t.Errorf("Beats(%v) = %q, want %q", tt.f, got, tt.want)
		}
	}
}

// round is a lane of one circle of radius 0.5 m.
func round(side engine.Side, arm, prop, beats frac.Frac) *engine.Track {
	return engine.NewTrack(engine.Lane{Side: side, Tether: 0.6, ArmAt: 90, PropAt: 90, Pieces: []engine.Piece{
		engine.Stroke(engine.CirclePath(0, 0.5), arm, prop, frac.Int(1), beats),
	}})
}

func TestClosing(t *testing.T) {
	one, four := frac.Int(1), frac.Int(4)
	// A prop that needs more rounds than any float can count.
	power := frac.FromBig(new(big.Int).Exp(big.NewInt(10), big.NewInt(400), nil))
	// The hand ends a round 0.2 mm off: 2·0.5·sin(π·arm) with arm = 0.2e-3/π
	// of a turn less than one.
	slip := frac.New(1_000_000-64, 1_000_000)
	for _, tt := range []struct {
		name   string
		tempo  float64
		tracks []*engine.Track
		want   string
	}{
		{"one round", 90, []*engine.Track{round(engine.Right, one, frac.Int(-3), four)}, "Closes every round · 4 beats · 2.7 s"},
		{"one beat", 60, []*engine.Track{round(engine.Right, one, one, one)}, "Closes every round · 1 beat · 1 s"},
		{"three rounds", 120, []*engine.Track{round(engine.Right, one, frac.New(1, 3), four)}, "Closes after 3 rounds · 12 beats · 6 s"},
		{"very many", 60, []*engine.Track{round(engine.Right, one, one.Div(power), four)}, "Closes after about 1e400 rounds · about 4e400 beats · about 4e400 s"},
		{"never", 90, []*engine.Track{round(engine.Right, frac.New(1, 2), one, four)}, "Never closes: a round ends 1 m from its start"},
		{"never, by a hair", 90, []*engine.Track{round(engine.Right, slip, one, four)}, "Never closes: a round ends 0.0002011 m from its start"},
		{"two", 120, []*engine.Track{round(engine.Left, one, one, four), round(engine.Right, one, one, frac.Int(6))}, "Both close together after 12 beats · 6 s"},
		{"two alike", 120, []*engine.Track{round(engine.Left, one, one, one), round(engine.Right, one, one, one)}, "Both close together after 1 beat · 0.5 s"},
		{"one of two never", 90, []*engine.Track{round(engine.Left, one, one, four), round(engine.Right, frac.New(1, 2), one, four)}, "Never closes: the right hand’s round ends 1 m from its start"},
		{"neither of two", 90, []*engine.Track{round(engine.Left, frac.New(1, 2), one, four), round(engine.Right, frac.New(1, 2), one, four)}, "Never closes: the left hand’s round ends 1 m from its start"},
	} {
		got := English.Closing(tt.tempo, tt.tracks...)
		if got != tt.want {
			t.Errorf("%s: Closing(%v) = %q, want %q", tt.name, tt.tempo, got, tt.want)
		}
		if strings.Contains(got, "%") || strings.Contains(got, "Inf") {
			t.Errorf("%s: Closing(%v) = %q, want every place filled", tt.name, tt.tempo, got)
		}
	}
}

func TestNumber(t *testing.T) {
	for _, tt := range []struct {
		x      float64
		places int
		want   string
	}{
		{0, 2, "0"}, {-0.001, 2, "0"}, {1.005, 0, "1"}, {100, 0, "100"}, {100, 2, "100"},
		{-2.5, 1, "−2.5"}, {2.50, 3, "2.5"}, {1234.5678, 2, "1234.57"},
	} {
		if got := Number(tt.x, tt.places); got != tt.want {
			t.Errorf("Number(%v, %d) = %q, want %q", tt.x, tt.places, got, tt.want)
		}
	}
	for in, want := range map[string]string{"": "", "-3": "−3", "3-4": "3-4", "5": "5"} {
		if got := Minus(in); got != want {
			t.Errorf("Minus(%q) = %q, want %q", in, got, want)
		}
	}
}
