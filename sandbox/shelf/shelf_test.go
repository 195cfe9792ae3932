package shelf

import (
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"whorlbench/presets/dice"
	"whorlbench/sandbox/session"
)

// What is kept after each edit is there when the tab is closed at any moment:
// the pattern, what is in hand, and fifty edits on both sides.
func TestWorkOutlivesItsTab(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	r := rand.New(rand.NewPCG(seed, 0))
	for range 20 {
		m := &Memory{}
		c := &clock{}
		tab := newTab(m, "a", c)
		s := session.New(halfMoon(t))
		w := tab.Begin()
		for range 1 + r.IntN(120) {
			switch r.IntN(5) {
			case 0:
				s.Undo()
			case 1:
				s.Redo()
			default:
				edit(s, r)
			}
			must(t, w.Keep(s))
		}
		o, ok, problem := newTab(m, "b", c).Start()
		if !ok || problem != nil || o.Note != nil {
			t.Fatalf("Start() finds %v, %v, note %v, want the work", ok, problem, o.Note)
		}
		again := o.Session()
		same(t, again, s)
		for range MaxSteps {
			x, okX := s.Undo()
			y, okY := again.Undo()
			if x != y || okX != okY {
				t.Fatalf("undone is %v, %v, want %v, %v", y, okY, x, okX)
			}
			same(t, again, s)
		}
	}
}

// same holds that one session shows what another does.
func same(t *testing.T, got, want *session.Session) {
	t.Helper()
	if !got.Pattern().Equal(want.Pattern()) || got.Selected() != want.Selected() {
		t.Fatalf("the work is %+v with %v in hand, want %+v with %v", got.Pattern(), got.Selected(), want.Pattern(), want.Selected())
	}
}

// Ten thousand edits, kept each time and taken up again now and then, undone
// as far as is kept give the states of that time.
func TestTenThousandEdits(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	r := rand.New(rand.NewPCG(seed, 0))
	m := &Memory{}
	tab := newTab(m, "a", &clock{})
	s, w := session.New(halfMoon(t)), tab.Begin()
	for i := range 10_000 {
		edit(s, r)
		must(t, w.Keep(s))
		if i%1000 != 999 {
			continue
		}
		o := open(t, tab, w.ID())
		again := o.Session()
		want, at := s.Trail(MaxSteps)
		same(t, again, s)
		for j := at - 1; j >= 0; j-- {
			again.Undo()
			if !again.Pattern().Equal(want[j].Pattern) {
				t.Fatalf("after %d edits, undone %d times, the pattern is %+v, want %+v", i+1, at-j, again.Pattern(), want[j].Pattern)
			}
		}
		if again.CanUndo() {
			t.Errorf("more than %d edits were kept", MaxSteps)
		}
		s, w = open(t, tab, w.ID()).Session(), open(t, tab, w.ID()).Work
	}
	text, _, _ := m.Get(ownKey(w.ID()))
	if r, err := parse(text); err != nil || r.Trail > MaxTrail {
		t.Errorf("the trail has %d bytes, %v, want at most %d", r.Trail, err, MaxTrail)
	}
}

func TestListRenameDelete(t *testing.T) {
	m, tab := one(t)
	var ids []string
	for _, title := range []string{"First", "Second", "Third"} {
		p := halfMoon(t)
		p.Title = title
		id, err := tab.Add(p)
		must(t, err)
		ids = append(ids, id)
	}
	if got, want := titles(t, tab), "Third, Second, First"; got != want {
		t.Errorf("List() = %s, want %s", got, want)
	}
	must(t, tab.Rename(ids[0], "Once first"))
	if got, want := titles(t, tab), "Once first, Third, Second"; got != want {
		t.Errorf("renamed, List() = %s, want %s", got, want)
	}
	s := open(t, tab, ids[0]).Session()
	if what, ok := s.Undo(); !ok || what.What != session.Renamed || s.Pattern().Title != "First" {
		t.Errorf("undone is %v, %v, the title %q, want the renaming", what, ok, s.Pattern().Title)
	}
	if err := tab.Rename(ids[0], strings.Repeat("x", 201)); err == nil {
		t.Error("Rename() takes a title of 201 characters")
	}

	before, _, _ := m.Get(ownKey(ids[1]))
	must(t, tab.Delete(ids[1]))
	if got, want := titles(t, tab), "Once first, Third"; got != want {
		t.Errorf("deleted, List() = %s, want %s", got, want)
	}
	if gone := tab.Deleted(); len(gone) != 1 || gone[0].Title != "Second" || gone[0].ID != ids[1] {
		t.Errorf("Deleted() = %+v, want Second", gone)
	}
	wantError(t, "Open() of a deleted work", openError(tab, ids[1]), ErrUnknown)
	wantError(t, "Delete() twice", tab.Delete(ids[1]), ErrUnknown)
	later := newTab(m, "b", &clock{}) // another day
	must(t, later.Undelete(ids[1]))
	if after, _, _ := m.Get(ownKey(ids[1])); after != before {
		t.Errorf("brought back it is %q, want %q", after, before)
	}
	wantError(t, "Undelete() of nothing", later.Undelete("zz"), ErrUnknown)
	for range mostBin + 5 {
		id, err := tab.Add(halfMoon(t))
		must(t, err)
		must(t, tab.Delete(id))
	}
	if got := len(newTab(m, "c", &clock{}).Deleted()); got != mostBin {
		t.Errorf("%d deleted works are kept, want %d", got, mostBin)
	}
	if got := len(tab.Deleted()); got != mostBin+5 {
		t.Errorf("this tab brings %d back, want all %d", got, mostBin+5)
	}
}

func openError(s *Shelf, id string) error {
	_, err := s.Open(id)
	return err
}

// The work that was open last is opened again, else the one edited last.
func TestStart(t *testing.T) {
	m, tab := one(t)
	if _, ok, problem := tab.Start(); ok || problem != nil {
		t.Errorf("Start() at a first visit = %v, %v, want nothing", ok, problem)
	}
	p := halfMoon(t)
	p.Title = "Old"
	old, err := tab.Add(p)
	must(t, err)
	p.Title = "New"
	_, err = tab.Add(p)
	must(t, err)
	started := func() string {
		o, ok, problem := newTab(m, "b", &clock{}).Start()
		if !ok || problem != nil {
			t.Fatalf("Start() = %v, %v, want work", ok, problem)
		}
		return o.Session().Pattern().Title
	}
	if got := started(); got != "New" {
		t.Errorf("Start() opens %q, want what was edited last", got)
	}
	open(t, tab, old)
	if got := started(); got != "Old" {
		t.Errorf("Start() opens %q, want what was open last", got)
	}
	must(t, tab.Delete(old))
	if got := started(); got != "New" {
		t.Errorf("Start() opens %q, want what is left", got)
	}
}

// Work that is not edited is not kept, and work that has not changed is not
// written again.
func TestNothingToKeep(t *testing.T) {
	m, tab := one(t)
	w := tab.Begin()
	if w.ID() != "" || w.Stale() {
		t.Error("new work has an ID or is stale")
	}
	s := session.New(halfMoon(t))
	must(t, w.Keep(s))
	before, _, _ := m.Get(ownKey(w.ID()))
	must(t, w.Keep(s))
	if after, _, _ := m.Get(ownKey(w.ID())); after != before {
		t.Error("unchanged work was written again")
	}
}

// All goes out as one ZIP file, and comes in again on another device.
func TestPackAllAndTakeIn(t *testing.T) {
	_, tab := one(t)
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	d := dice.New(seed)
	want := map[string]int{}
	for range 12 {
		p := d.Pattern()
		_, err := tab.Add(p)
		must(t, err)
		want[file(t, p)]++
	}
	zip, problems := tab.PackAll()
	if len(problems) > 0 {
		t.Fatalf("PackAll() gives %v, want no problems", problems)
	}
	m, other := one(t)
	ids, problems := other.TakeIn(zip)
	if len(problems) > 0 || len(ids) != 12 {
		t.Fatalf("TakeIn() gives %d works, %v, want 12", len(ids), problems)
	}
	for _, id := range ids {
		p, err := other.Pattern(id)
		must(t, err)
		want[file(t, p)]--
	}
	for text, n := range want {
		if n != 0 {
			t.Errorf("%+d of\n%s", n, text)
		}
	}
	m.Quota = 1
	if ids, problems := other.TakeIn(zip); len(ids) != 0 || len(problems) != 12 {
		t.Errorf("TakeIn() without room gives %d works, %d problems, want 0 and 12", len(ids), len(problems))
	} else {
		wantError(t, "without room", problems[0], ErrFull)
	}
}
