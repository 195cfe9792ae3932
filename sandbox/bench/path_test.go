package bench_test

import (
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/sandbox/session"
)

// radii returns the size of each piece's path.
func radii(p engine.Pattern) (out []float64) {
	for _, x := range p.Lanes[0].Pieces {
		out = append(out, x.Path.A)
	}
	return out
}

func TestOneCircleStaysOneCircle(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.b.Answer("radius", "0.4", 0)
	if got := radii(r.s.Pattern()); !slices.Equal(got, []float64{0.4, 0.4}) {
		t.Errorf("radii after one is changed = %v, want both 0.4: they are arcs of one circle", got)
	}
	r.b.Answer("centre-x", "0.1", 0)
	for i, p := range r.s.Pattern().Lanes[0].Pieces {
		if p.Path.Centre != 0.1 {
			t.Errorf("centre of piece %d = %v, want 0.1", i+1, p.Path.Centre)
		}
	}
	r.b.Chosen("arm", "together", 0)
	if r.host.Settles != 1 {
		t.Errorf("the page was told %d times of a new setting, want 1", r.host.Settles)
	}
	r.b.Answer("radius", "0.5", 0)
	if got := radii(r.s.Pattern()); !slices.Equal(got, []float64{0.5, 0.4}) {
		t.Errorf("radii after one is changed alone = %v, want 0.5 and 0.4", got)
	}
	other := newRig(t, phone, "half-moon")
	other.b.ReadSettings(r.b.WriteSettings())
	other.b.Answer("radius", "0.5", 0)
	if got := radii(other.s.Pattern()); !slices.Equal(got, []float64{0.5, 0.6}) {
		t.Errorf("with the setting read back, radii = %v, want 0.5 and 0.6", got)
	}
}

// The start of a piece that carries on is where it begins; to change it is to
// turn what it carries on from.
func TestStartOfACarriedPiece(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.s.Select(session.Select{Piece: 1})
	if got := r.b.Value("arm-start"); got != -90 {
		t.Errorf("arm at the start of piece 2 = %v, want -90: half a turn from 90", got)
	}
	r.b.Answer("arm-start", "-45", 0)
	if got := r.s.Pattern().Lanes[0].ArmAt; got != 135 {
		t.Errorf("arm at the lane's start = %v, want 135", got)
	}
	if got := r.b.Value("arm-start"); got != -45 {
		t.Errorf("arm at the start of piece 2 reads %v after -45 was typed", got)
	}
	r.b.Chosen("menu-piece-0-1", "place", 0)
	r.b.Answer("prop-start", "30", 0)
	if got := r.s.Pattern().Lanes[0]; got.Pieces[1].PropAt.At != 30 || got.PropAt != 90 {
		t.Errorf("prop of the placed piece at %v, of the lane at %v, want 30 and 90", got.Pieces[1].PropAt.At, got.PropAt)
	}
}

// Extension joins four-petal antispin on one circle with R = L without a jump:
// m = n₁ + 2R/L (common practice; the identity is the model's).
func TestRuleMarksWhatJoins(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.s.Select(session.Select{Piece: 1})
	good := func() (at []float64) {
		r.b.Draw()
		for _, p := range r.control("prop").Pictures {
			if p.Good {
				at = append(at, p.Value)
			}
		}
		return at
	}
	if got := good(); !slices.Equal(got, []float64{3}) {
		t.Errorf("marked prop speeds = %v, want 3 alone", got)
	}
	if text := r.control("prop").Text; !strings.Contains(text, "both joins smooth") {
		t.Errorf("the slider reads %q, want it to say that both joins are smooth", text)
	}
	r.b.Answer("radius", "1.2", 0) // R = 2L: m = 1 + 4
	if got := good(); !slices.Equal(got, []float64{5}) {
		t.Errorf("with R = 2L, marked prop speeds = %v, want 5 alone", got)
	}
}

func TestUndoNamesTheNumber(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	for _, tt := range []struct {
		do   func()
		want string
	}{
		{func() { r.b.Answer("radius", "0.4", 0) }, "Undone: “Radius of the hand path” changed"},
		{func() { r.b.Chosen("path", "1", 0) }, "Undone: another hand path"},
		{func() { r.b.Chosen("law", "1", 0) }, "Undone: another sharing of the arm’s turn"},
		{func() { r.tap("flip") }, "Undone: the flip"},
	} {
		tt.do()
		r.b.Draw()
		r.tap("undo")
		if said := r.host.Said; !slices.Contains(said, tt.want) {
			t.Errorf("undo says %q, want %q among it", said, tt.want)
		}
	}
}

func TestSlidersAreBackAfterOpening(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.b.Chosen("arm", "radius", 0)
	if err := r.s.Open(pattern(t, "swan")); err != nil {
		t.Fatal(err)
	}
	r.b.Opened(0)
	r.b.Draw()
	r.control("arm") // fails if it is not there
}
