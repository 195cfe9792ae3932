package bench_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"whorlbench/engine/seam"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// sheet returns what was shown to be read last.
func (r *rig) sheet() bench.Sheet {
	r.t.Helper()
	if len(r.host.Sheets) == 0 {
		r.t.Fatal("no sheet was shown")
	}
	return r.host.Sheets[len(r.host.Sheets)-1]
}

// action picks what a sheet offers whose label has a part.
func (r *rig) action(part string) {
	r.t.Helper()
	s := r.sheet()
	for _, o := range s.Actions {
		if strings.Contains(o.Label, part) {
			r.b.Chosen(s.ID, o.ID, r.now)
			r.b.Draw()
			return
		}
	}
	r.t.Fatalf("%q offers no %q: %+v", s.Title, part, s.Actions)
}

// kinked opens the C-cap whose hand path is smaller than its tether, so that
// extension and four-petal antispin no longer meet without a kink: the jump is
// |2R − 2L|ω.
func kinked(t *testing.T) *rig {
	r := newRig(t, phone, "half-moon")
	r.b.Answer("radius", "0.4", 0)
	r.b.Draw()
	if _, worst, _ := r.s.WorstSeam(); worst.Verdict != seam.Kink {
		t.Fatalf("with R ≠ L the worst join is %v, want a kink", worst.Verdict)
	}
	return r
}

func TestThreeWaysToMend(t *testing.T) {
	for _, way := range []string{"ease into the turn", "Share the beats for the least jolt", "circle of piece"} {
		r := kinked(t)
		before := r.s.Pattern()
		r.tap("seam-0-0")
		r.action(way)
		if !r.s.Pattern().Equal(before) {
			t.Errorf("%s: the pattern is changed before the way is taken", way)
		}
		r.tap("take")
		if s := r.s.Seams()[0][0]; s.Verdict != seam.Smooth {
			t.Errorf("%s: the join is %v, want smooth", way, s.Verdict)
		}
		r.b.Draw()
		r.tap("undo")
		if !r.s.Pattern().Equal(before) {
			t.Errorf("%s: undo does not bring back what was", way)
		}
	}
}

func TestTryoutIsLeft(t *testing.T) {
	r := kinked(t)
	before := r.s.Pattern()
	r.tap("seam-0-0")
	r.action("ease into the turn")
	said := len(r.host.Said)
	r.tap("next-way")
	if len(r.host.Said) == said {
		t.Error("the next way is not spoken")
	}
	r.tap("leave")
	for _, c := range r.b.Controls() {
		if c.ID == "take" {
			t.Error("after it was left, the way can still be taken")
		}
	}
	if !r.s.Pattern().Equal(before) || r.s.CanUndo() && r.s.Pattern().Equal(pattern(t, "half-moon")) {
		t.Error("what was left has changed the pattern")
	}
	// An edit in between ends it, as the ways were made from another pattern.
	r.tap("seam-0-0")
	r.action("ease into the turn")
	r.b.Answer("tempo", "100", 0)
	r.b.Draw()
	for _, c := range r.b.Controls() {
		if c.ID == "take" {
			t.Error("after an edit, a way made from the pattern before can still be taken")
		}
	}
}

// When the pattern is changed while a way is shown, the person is told, and an undo
// shows the way again; undoing more says that it was left.
func TestTryoutIsPutAside(t *testing.T) {
	r := kinked(t)
	r.tap("seam-0-0")
	r.action("ease into the turn")
	way := r.host.Said[len(r.host.Said)-1]
	shows := func() bool {
		r.b.Draw()
		return slices.ContainsFunc(r.b.Controls(), func(c widget.Control) bool { return c.ID == "take" })
	}
	r.b.Do(widget.Intent{ID: "prop", Act: widget.Set, Value: 2}, r.now) // as a tap on a little flower does
	r.b.Step(0.016, r.now)
	if want := r.b.Words.Tryout.Aside; shows() || !strings.Contains(strings.Join(r.host.Said, "|"), want) {
		t.Errorf("the way can still be taken, or of %q nothing is %q", r.host.Said, want)
	}
	said := len(r.host.Said)
	r.b.Step(0.016, r.now)
	if len(r.host.Said) > said {
		t.Errorf("it is said again: %q", r.host.Said[said:])
	}
	r.tap("undo")
	r.b.Step(0.016, r.now)
	if !shows() || !slices.Contains(r.host.Said[said:], way) {
		t.Error("an undo does not show the way again")
	}
	r.tap("undo")
	r.b.Step(0.016, r.now)
	if last := r.host.Said[len(r.host.Said)-1]; shows() || last != r.b.Words.Tryout.Left {
		t.Errorf("after a second undo %q is said last", last)
	}
}

func TestMendTheWholeLane(t *testing.T) {
	r := kinked(t)
	r.tap("told")
	r.action("Make all joins smooth")
	r.tap("take")
	if _, worst, bad := r.s.WorstSeam(); bad {
		t.Errorf("after all joins were made smooth the worst is %v", worst.Verdict)
	}
}

func TestMakeItClose(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.s.Select(session.Select{Piece: 1})
	r.b.Answer("cycles", "1/4", 0)
	if r.s.Tracks()[0].Closing().Closes() {
		t.Fatal("half a way back closes")
	}
	r.b.Draw()
	r.tap("told")
	r.action("Make it close")
	r.tap("take")
	if !r.s.Tracks()[0].Closing().Closes() {
		t.Error("made to close, it does not")
	}
}

// The sheet tells by which clause each definition says yes or no, and leads to
// the joins that are not smooth.
func TestToldSheet(t *testing.T) {
	r := kinked(t)
	r.tap("told")
	s := r.sheet()
	if !strings.HasPrefix(s.Lead, "C-cap of extension") {
		t.Errorf("it is called %q, want a C-cap of extension and what follows", s.Lead)
	}
	found := false
	for _, l := range s.Sections[0].Lines {
		found = found || l.Name == "C-cap" && strings.HasPrefix(l.Text, "Yes: ")
	}
	if !found {
		t.Errorf("the definitions are %+v, want C-cap with yes and why", s.Sections)
	}
	r.action("Kink after piece 1")
	if got := r.sheet().Lead; got != "Kink" {
		t.Errorf("a bad join leads to %q, want its own sheet", got)
	}
}

// What the whole has become is spoken once an edit is complete.
func TestWholeIsSpoken(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	for r.b.Learn() {
	}
	r.s.Select(session.Select{Piece: 1})
	r.b.Answer("prop", "5", 0)
	for r.b.Learn() {
	}
	for _, said := range r.host.Said {
		if strings.Contains(said, "six-petal antispin flower, strict sense. ") && strings.Contains(said, "C-cap. Yes:") {
			return
		}
	}
	t.Errorf("said %q, want the definition that holds now with its clause", r.host.Said)
}

// The way a hand would really take is shown at a tap, and stays a setting.
func TestTakenHandIsShown(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	for r.b.Learn() {
	}
	before := len(r.b.Draw().Points)
	r.tap("told")
	r.action("really take")
	if after := len(r.b.Draw().Points); after <= before || r.host.Settles != 1 || !r.b.Settings().Taken {
		t.Errorf("points %d, then %d; settings kept %d times, taken %v", before, after, r.host.Settles, r.b.Settings().Taken)
	}
}

// What is put behind a piece that it does not join on to is said to tear, with what
// helps; what joins on is not.
func TestInsertSaysWhereItTears(t *testing.T) {
	for _, x := range []struct {
		id    string
		tears bool
	}{{"oar-stroke", true}, {"half-moon", false}} {
		r := newRig(t, phone, "half-moon")
		r.s.Select(session.Select{Piece: 1})
		r.b.Insert(pattern(t, x.id), 0)
		said := strings.Join(r.host.Said, "|")
		if got := strings.Contains(said, r.b.Words.Strip.InsertGap); got != x.tears {
			t.Errorf("%s after the C-cap: %q was said, want the tear in it: %v", x.id, said, x.tears)
		}
	}
}

// Where every join is smooth with a way, no join is named besides.
func TestAllSmoothSaysItOnce(t *testing.T) {
	r := kinked(t)
	r.b.Chosen("told", "mend-lane-0", r.now)
	r.b.Draw()
	said := r.host.Said[len(r.host.Said)-1]
	if !strings.Contains(said, "Every join is smooth now.") || strings.Contains(said, "smooth too") {
		t.Errorf("%q is said, want that every join is smooth, once", said)
	}
}

// What a way costs may be more than its box holds: then the last sentences are
// left out, and none is cut.
func TestTryoutWordsAreWhole(t *testing.T) {
	for _, f := range []bench.Frame{phone, {W: 844, H: 390, Top: 48}, {W: 1440, H: 900, Top: 48}} {
		r := newRig(t, f, "half-moon")
		r.b.Answer("radius", "0.4", 0)
		r.tap("seam-0-0")
		for i := range r.sheet().Actions {
			r.b.Chosen(r.sheet().ID, fmt.Sprintf("fix-%d", i), r.now)
			r.b.Step(0.016, r.now)
			for _, m := range r.b.Draw().Marks {
				if m.Kind == display.Text && m.Color == theme.Day.Ground && strings.HasSuffix(m.Text, "…") {
					t.Errorf("%vx%v: way %d: %q is cut", f.W, f.H, i, m.Text)
				}
			}
		}
	}
}
