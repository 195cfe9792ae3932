package shelf

import (
	"errors"
	"testing"

	"whorlbench/presets"
)

// newDesk is a tab that is opened, which plays as the program does.
func newDesk(t *testing.T, m *Memory, name string, c *clock) *Desk {
	t.Helper()
	d, _, problem := NewDesk(newTab(m, name, c), halfMoon(t))
	if problem != nil {
		t.Fatal(problem)
	}
	return d
}

func (d *Desk) titles(t *testing.T) []string {
	t.Helper()
	entries, problems := d.List()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	var out []string
	for _, e := range entries {
		out = append(out, e.Title)
	}
	return out
}

func (d *Desk) renames(t *testing.T, title string) {
	t.Helper()
	if err := d.Session.Rename(title, ""); err != nil {
		t.Fatal(err)
	}
	if err := d.Keep(); err != nil {
		t.Fatal(err)
	}
}

func (d *Desk) undo(t *testing.T) {
	t.Helper()
	if _, ok := d.Session.Undo(); !ok {
		t.Fatal("there is nothing to undo")
	}
	if err := d.Keep(); err != nil {
		t.Fatal(err)
	}
}

func listed(t *testing.T, what string, got []string, want ...string) {
	t.Helper()
	if len(got) != len(want) {
		t.Fatalf("%s: %q, want %q", what, got, want)
	}
	for i := range got {
		if got[i] != want[i] {
			t.Fatalf("%s: %q, want %q", what, got, want)
		}
	}
}

// What is only looked at makes no work; what is edited does, by itself, and undo
// behind an opening leads back to the work before.
func TestDeskOpenings(t *testing.T) {
	m, c := &Memory{}, &clock{}
	d := newDesk(t, m, "a", c)
	if err := d.Keep(); err != nil || d.Kept() {
		t.Fatalf("the first pattern, untouched: %v, kept %v", err, d.Kept())
	}
	listed(t, "untouched", d.titles(t))
	d.renames(t, "One")
	one := d.ID()
	other := presets.Library()[5]
	p, err := other.Pattern()
	if err != nil {
		t.Fatal(err)
	}
	if err := errors.Join(d.Session.Open(p), d.Keep()); err != nil {
		t.Fatal(err)
	}
	if d.Kept() {
		t.Error("what is only looked at is said to be kept")
	}
	listed(t, "looked at", d.titles(t), "One")
	d.renames(t, "Two")
	listed(t, "edited", d.titles(t), "Two", "One")
	d.undo(t) // the title
	listed(t, "title undone", d.titles(t), p.Title, "One")
	d.undo(t) // the opening
	if d.ID() != one || d.Session.Pattern().Title != "One" {
		t.Errorf("behind the opening is %q of %q, want One", d.Session.Pattern().Title, d.ID())
	}
	d.undo(t) // the first title
	listed(t, "all undone", d.titles(t), halfMoon(t).Title, p.Title)
	if _, ok := d.Session.Redo(); !ok || d.Keep() != nil {
		t.Error("redo fails")
	}

	// Another tab begins with what was open last, and has only its own edits.
	again := newDesk(t, m, "b", c)
	if again.ID() != one || again.Session.Pattern().Title != "One" {
		t.Errorf("the next tab has %q, want One", again.Session.Pattern().Title)
	}
	again.undo(t)
	if again.Session.CanUndo() || again.Session.CanRedo() == false {
		t.Error("the next tab has edits of other work")
	}
}

// What comes from outside is kept at once.
func TestDeskTakes(t *testing.T) {
	d := newDesk(t, &Memory{}, "a", &clock{})
	p := halfMoon(t)
	p.Title = "Sent"
	if err := errors.Join(d.Take(p), d.Keep()); err != nil || !d.Kept() {
		t.Fatalf("taken: %v, kept %v", err, d.Kept())
	}
	listed(t, "taken", d.titles(t), "Sent")
	d.undo(t)
	if d.ID() != "" {
		t.Error("behind it is work that nobody has edited")
	}
}

// Work that is opened from the list brings its own edits, and is the same work
// wherever it stands in the session.
func TestDeskEnters(t *testing.T) {
	m, c := &Memory{}, &clock{}
	d := newDesk(t, m, "a", c)
	d.renames(t, "One")
	one := d.ID()
	p := halfMoon(t)
	p.Title = "Two"
	if err := errors.Join(d.Take(p), d.Keep()); err != nil {
		t.Fatal(err)
	}
	d.renames(t, "Two, changed")
	before, _, _ := m.Get(ownKey(one))
	if note, err := d.Enter(one); note != nil || err != nil {
		t.Fatal(note, err)
	}
	if err := d.Keep(); err != nil || !d.Kept() || d.ID() != one {
		t.Fatalf("entered: %v, kept %v as %q", err, d.Kept(), d.ID())
	}
	if after, _, _ := m.Get(ownKey(one)); after != before {
		t.Error("to look at a work writes it anew")
	}
	d.renames(t, "One, again")
	d.undo(t) // "One, again"
	d.undo(t) // its own first edit
	if got := d.Session.Pattern().Title; got != halfMoon(t).Title {
		t.Errorf("its own edits undone lead to %q", got)
	}
	d.undo(t) // the opening
	if got := d.Session.Pattern().Title; got != "Two, changed" {
		t.Errorf("behind the opening is %q, want what was open", got)
	}
	d.undo(t)
	d.undo(t) // the opening of Two: One as it was, and no other tab is to be blamed
	if got := d.Session.Pattern().Title; got != "One" || d.ID() != one {
		t.Errorf("at the beginning is %q of %q", got, d.ID())
	}
	if got := d.titles(t); len(got) != 2 {
		t.Errorf("the works are %q, want two", got)
	}
}

// Deleted while it is open, work stays to be seen, is kept anew only by an edit,
// and is itself again if it is had back before.
func TestDeskDeletes(t *testing.T) {
	d := newDesk(t, &Memory{}, "a", &clock{})
	d.renames(t, "One")
	one := d.ID()
	if err := d.Delete(one); err != nil || d.ID() != "" || d.Kept() {
		t.Fatalf("deleted: %v, %q", err, d.ID())
	}
	if err := d.Undelete(one); err != nil || d.ID() != one {
		t.Fatalf("had back: %v, %q", err, d.ID())
	}
	if err := d.Delete(one); err != nil {
		t.Fatal(err)
	}
	d.renames(t, "Two")
	if err := d.Undelete(one); err != nil || d.ID() == one {
		t.Fatalf("had back after an edit: %v, %q", err, d.ID())
	}
	listed(t, "both", d.titles(t), "Two", "One")
}

// Another tab's change is told, never written over.
func TestDeskStale(t *testing.T) {
	m, c := &Memory{}, &clock{}
	a := newDesk(t, m, "a", c)
	a.renames(t, "One")
	b := newDesk(t, m, "b", c)
	b.renames(t, "One, theirs")
	if !a.Stale() || b.Stale() {
		t.Fatalf("stale: %v and %v, want the first", a.Stale(), b.Stale())
	}
	if _, err := a.Enter(a.ID()); err != nil || a.Stale() || a.Session.Pattern().Title != "One, theirs" {
		t.Fatalf("the other's: %v, %q", err, a.Session.Pattern().Title)
	}
	b.renames(t, "One, theirs again")
	if err := a.Session.Rename("Mine", ""); err != nil {
		t.Fatal(err)
	}
	if err := a.Keep(); !errors.Is(err, ErrChangedElsewhere) {
		t.Fatalf("Keep = %v, want ErrChangedElsewhere", err)
	}
	listed(t, "both", a.titles(t), "Mine", "One, theirs again")
}

// A full store keeps nothing more and loses nothing; with room the work is kept.
func TestDeskFull(t *testing.T) {
	m := &Memory{}
	d := newDesk(t, m, "a", &clock{})
	d.renames(t, "One")
	m.Quota = 100
	if err := d.Session.Rename("Two", ""); err != nil {
		t.Fatal(err)
	}
	if err := d.Keep(); !errors.Is(err, ErrFull) || d.Kept() {
		t.Fatalf("full: %v, kept %v", err, d.Kept())
	}
	listed(t, "full", d.titles(t), "One")
	m.Quota = 0
	if err := d.Keep(); err != nil || !d.Kept() {
		t.Fatalf("with room: %v, kept %v", err, d.Kept())
	}
}
