package words

import (
	"math"
	"math/big"
	"strings"
	"testing"

	"whorlbench/engine/duet"
)

func path(direction duet.Direction, timings ...duet.Timing) []duet.Span {
	var spans []duet.Span
	for i, m := range timings {
		spans = append(spans, duet.Span{From: float64(i), To: float64(i + 1), Direction: direction, Timing: m})
	}
	return spans
}

func TestSpansSaid(t *testing.T) {
	const no, tog, qua, spl, bet = duet.NoTiming, duet.Together, duet.Quarter, duet.Split, duet.Between
	stroke := []duet.Timing{tog, bet, qua, bet, spl, bet, qua, bet, tog}
	for _, tt := range []struct {
		spans []duet.Span
		want  string
	}{
		{path(duet.Same, spl), "Props turn the same way throughout: split all the time."},
		{path(duet.Opposite, bet), "Props turn opposite ways throughout: between all the time."},
		{path(duet.Opposite, stroke...), "Props turn opposite ways throughout: together → quarter → split → quarter → together."},
		{path(duet.Opposite, append(append([]duet.Timing(nil), stroke...), stroke...)...), "Props turn opposite ways throughout: together → quarter → split → quarter → together, 2 times."},
		{path(duet.Same, tog, bet, tog), "Props turn the same way throughout: together all the time."},
		{append(path(duet.Same, tog), path(duet.Opposite, qua)...), "Props turn now the same way, now opposite ways: together → quarter."},
		{path(duet.Still, no), "Props: one of the two does not turn, so there is no direction and no timing."},
		{path(duet.NoDirection, no), "Props: they are not both on circles, so there is no direction and no timing."},
		{path(duet.Same, tog, qua, spl, qua, spl, tog, qua, tog, spl, qua, tog, spl), "Props turn the same way throughout; the timing wanders through every band."},
	} {
		if got := English.SpansSaid(English.Duet.Props, tt.spans); got != tt.want {
			t.Errorf("SpansSaid(%v) = %q, want %q", tt.spans, got, tt.want)
		}
	}
}

func TestSpanSaid(t *testing.T) {
	for _, tt := range []struct {
		span duet.Span
		want string
	}{
		{duet.Span{To: 0.125, Direction: duet.Opposite, Timing: duet.Together}, "Beats 0 to 0.125: opposite directions, together."},
		{duet.Span{From: 1, To: 2.5, Direction: duet.Same, Timing: duet.Between}, "Beats 1 to 2.5: same direction, between."},
		{duet.Span{To: 2, Direction: duet.Still}, "Beats 0 to 2: one of the two does not turn."},
		{duet.Span{To: 2}, "Beats 0 to 2: the hands are not both on circles."},
	} {
		if got := English.SpanSaid(tt.span); got != tt.want {
			t.Errorf("SpanSaid(%v) = %q, want %q", tt.span, got, tt.want)
		}
	}
}

// TestTangleSaid: every reason is told, and every number fits its sentence.
func TestTangleSaid(t *testing.T) {
	seen := map[string]bool{}
	for _, tt := range []struct {
		tangle duet.Tangle
		apart  float64
		has    string
	}{
		{duet.Tangle{Winding: big.NewInt(0)}, 1, "untangled"},
		{duet.Tangle{Winding: big.NewInt(1)}, 1, "once before the pattern begins again, anticlockwise"},
		{duet.Tangle{Winding: big.NewInt(-2)}, 1, "twice before the pattern begins again, clockwise"},
		{duet.Tangle{Winding: big.NewInt(5)}, 1, "5 times before"},
		{duet.Tangle{Why: duet.NotWall}, 1, "wall plane"},
		{duet.Tangle{Why: duet.NeverBack}, 1, "does not come back"},
		{duet.Tangle{Why: duet.HandsMeet, Meets: true, MeetAt: 1.5}, 0, "meet at beat 1.5"},
		{duet.Tangle{Why: duet.HandsMeet, Meets: true, MeetAt: 1.5}, 0.12, "0.12 m in front"},
		{duet.Tangle{Why: duet.TooLong}, 1, "too long"},
	} {
		got := English.TangleSaid(&duet.Reading{Tangle: tt.tangle, Hand: duet.Nearest{Distance: tt.apart}})
		written(t, "TangleSaid", got)
		if !strings.Contains(got, tt.has) || seen[got] {
			t.Errorf("TangleSaid(%v) = %q, want a sentence of its own with %q", tt.tangle, got, tt.has)
		}
		seen[got] = true
	}
}

// TestDuetCautions: what may hit or catch is said, and nothing else.
func TestDuetCautions(t *testing.T) {
	far := duet.Nearest{Distance: 0.5}
	for _, tt := range []struct {
		name string
		r    duet.Reading
		has  []string
	}{
		{"far apart", duet.Reading{Head: far, Tether: far}, nil},
		{"heads near", duet.Reading{Head: duet.Nearest{Distance: 0.05, Beat: 1}, Tether: duet.Nearest{Distance: 0.05}}, []string{"0.05 m, at beat 1"}},
		{"heads meet", duet.Reading{Head: duet.Nearest{}, Tether: duet.Nearest{}, Crossings: []duet.Crossing{{From: 1, To: 2}}}, []string{"meet at beat 0", "beats 1 to 2"}},
		{"tethers near", duet.Reading{Head: far, Tether: duet.Nearest{Distance: 0.02}}, []string{"0.02 m"}},
		{"many crossings", duet.Reading{Head: far, Crossings: make([]duet.Crossing, 12)}, []string{"and again later"}},
		{"read in part", duet.Reading{Head: far, Tether: far, Closes: true, Until: 64}, []string{"first 64 beats"}},
	} {
		got := English.DuetCautions(&tt.r)
		if len(got) != len(tt.has) {
			t.Errorf("%s: %q, want %d sentences", tt.name, got, len(tt.has))
			continue
		}
		for i, has := range tt.has {
			written(t, tt.name, got[i])
			if !strings.Contains(got[i], has) {
				t.Errorf("%s: %q, want %q in it", tt.name, got[i], has)
			}
		}
	}
	if got := English.NearestSaid(&duet.Reading{Hand: duet.Nearest{Distance: 0.5, AtMost: true}, Head: duet.Nearest{Distance: math.Inf(1), AtMost: true}, Tether: far}); len(got) != 2 || !strings.Contains(got[0], "or less") {
		t.Errorf("NearestSaid of a bound and of nothing = %q, want two lines, the first of a bound", got)
	}
	for _, line := range English.NearestSaid(&duet.Reading{Hand: far, Head: far, Tether: far}) {
		written(t, "NearestSaid", line)
	}
}
