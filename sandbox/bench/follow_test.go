package bench_test

import (
	"slices"
	"strings"
	"testing"

	"whorlbench/engine/seam"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/session"
)

// A C-cap from two flowers: half of extension's circle, and what can follow
// there, turning back. That this is four-petal antispin is common practice.
func TestMakeACapOfWhatCanFollow(t *testing.T) {
	r := newRig(t, phone, "beam-from-the-mole")
	for r.b.Learn() {
	}
	r.b.Answer("cycles", "1/2", 0)
	r.b.Draw()
	r.tap("follow")
	c := r.host.Offered[len(r.host.Offered)-1]
	pick := slices.IndexFunc(c.Options, func(o bench.Option) bool { return strings.HasSuffix(o.Label, "turning back") })
	if pick < 0 {
		t.Fatalf("nothing smooth that turns back among %d", len(c.Options))
	}
	if p := c.Options[pick].Picture; p == nil || len(p.Points) == 0 || p.Slice == "" {
		t.Error("it has no moving picture")
	}
	r.b.Chosen(c.ID, c.Options[pick].ID, 0)
	for r.b.Learn() {
	}
	l := r.s.Pattern().Lanes[0]
	if len(l.Pieces) != 2 || l.Pieces[1].Prop.String() != "3" || r.s.Selected() != (session.Select{Piece: 1}) {
		t.Fatalf("pieces %d, want the way back in four-petal antispin, in hand", len(l.Pieces))
	}
	for _, s := range r.s.Seams()[0] {
		if s.Verdict != seam.Smooth {
			t.Errorf("the join after piece %d is %v, want smooth", s.After+1, s.Verdict)
		}
	}
	if said := strings.Join(r.host.Said, "|"); !strings.Contains(said, "C-cap of extension and four-petal antispin flower, strict sense") ||
		!strings.Contains(said, "C-cap. Yes: the hand goes to and fro on one arc of one circle.") {
		t.Errorf("said %q, want the name and the clause", said)
	}
	// A list that was made for another pattern does nothing.
	before := r.s.Pattern()
	r.b.Chosen(c.ID, c.Options[pick].ID, 0)
	if !r.s.Pattern().Equal(before) {
		t.Error("a list made for the pattern before was taken")
	}
}

func TestWhatCanFollowFromTheSheets(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.tap("seam-0-0")
	r.action("What can follow here")
	if c := r.host.Offered[len(r.host.Offered)-1]; !strings.Contains(c.Label, "piece 1") || len(c.Options) == 0 {
		t.Errorf("the join's sheet leads to %q with %d", c.Label, len(c.Options))
	}
	r.long("piece-0-1", 500)
	r.choose("What can follow here")
	if c := r.host.Offered[len(r.host.Offered)-1]; !strings.Contains(c.Label, "piece 2") {
		t.Errorf("the piece's sheet leads to %q", c.Label)
	}
}

// Extension and four-petal antispin in diamond mode on one circle meet at the
// four petal tips (common practice).
func TestWhereTheyMeet(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.long("piece-0-0", 500)
	r.choose("Where do they meet")
	c := r.host.Offered[len(r.host.Offered)-1]
	r.b.Chosen(c.ID, "compass-card", 0)
	s := r.sheet()
	if n := len(s.Sections[0].Lines); !strings.Contains(s.Text, "4 places") || n != 4 {
		t.Errorf("%s: %s, with %d lines, want 4 places", s.Lead, s.Text, n)
	}
}

// A whole circle cannot turn back; half of it can, and is offered.
func TestHalfOfTheCircleFirst(t *testing.T) {
	r := newRig(t, phone, "beam-from-the-mole")
	r.tap("follow")
	c := r.host.Offered[len(r.host.Offered)-1]
	if c.Options[0].Label != "Keep half of the circle first" {
		t.Fatalf("the first option is %q", c.Options[0].Label)
	}
	r.b.Chosen(c.ID, c.Options[0].ID, 0)
	if p := r.s.SelectedPiece(); p.Cycles.String() != "1/2" {
		t.Errorf("the piece makes %v cycles, want half of one", p.Cycles)
	}
	if again := r.host.Offered[len(r.host.Offered)-1]; len(r.host.Offered) != 2 || again.Options[0].ID == "half" {
		t.Error("what can follow the half is not asked at once")
	}
}

// The line under the name tells of heads that would hit each other, though
// every join is smooth.
func TestTheLineWarnsOfHeads(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.tap("add-hand")
	r.choose("Split, opposite")
	for r.b.Learn() {
	}
	said := false
	for _, m := range r.b.Draw().Marks {
		said = said || strings.HasPrefix(m.Text, "The heads hit each other at beat 1")
	}
	if !said {
		t.Error("nothing on the screen tells that the heads hit each other")
	}
	r.tap("told")
	r.action("Move the hands apart")
	r.tap("take")
	for r.b.Learn() {
	}
	for _, m := range r.b.Draw().Marks {
		if strings.HasPrefix(m.Text, "The heads hit each other") {
			t.Error("moved apart, the heads still hit each other")
		}
	}
}

// A smaller circle looks smaller: the view stays.
func TestTheViewStays(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	before := r.b.StageView()
	r.b.Answer("radius", "0.45", 0)
	r.b.Draw()
	if after := r.b.StageView(); after != before {
		t.Errorf("with a smaller radius the view went from %v to %v", before, after)
	}
	r.b.Answer("radius", "1.2", 0)
	r.b.Draw()
	if after := r.b.StageView(); after.Scale >= before.Scale {
		t.Error("a larger circle is not fitted into view")
	}
}
