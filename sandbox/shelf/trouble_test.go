package shelf

import (
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/session"
)

func file(t *testing.T, p engine.Pattern) string {
	t.Helper()
	data, err := presets.Encode(p)
	must(t, err)
	return string(data)
}

// Two tabs on the same work: who writes second keeps both.
func TestTwoTabs(t *testing.T) {
	m := &Memory{}
	c := &clock{}
	a, b := newTab(m, "a", c), newTab(m, "b", c)
	id, err := a.Add(halfMoon(t))
	must(t, err)
	inA, inB := open(t, a, id), open(t, b, id)
	sA, sB := inA.Session(), inB.Session()

	dial(t, sA, 5)
	must(t, inA.Work.Keep(sA))
	if inA.Work.Stale() || !inB.Work.Stale() {
		t.Error("the other tab's work is not said to be stale, or this one's is")
	}
	dial(t, sB, 7)
	wantError(t, "Keep() of what was changed elsewhere", inB.Work.Keep(sB), ErrChangedElsewhere)
	if inB.Work.ID() == id {
		t.Fatal("the second tab still writes the first one's work")
	}
	for id, want := range map[string]*session.Session{id: sA, inB.Work.ID(): sB} {
		same(t, open(t, newTab(m, "c", c), id).Session(), want)
	}
	// From here on each has its own.
	dial(t, sA, 8)
	must(t, inA.Work.Keep(sA))
	dial(t, sB, 9)
	must(t, inB.Work.Keep(sB))
	// Undo on the copy still goes back to where both began.
	sC := open(t, newTab(m, "d", c), inB.Work.ID()).Session()
	for sC.CanUndo() {
		sC.Undo()
	}
	if !sC.Pattern().Equal(halfMoon(t)) {
		t.Errorf("undone the copy is %+v, want where it began", sC.Pattern())
	}

	must(t, a.Delete(id))
	dial(t, sA, 10)
	wantError(t, "Keep() of what was deleted elsewhere", inA.Work.Keep(sA), ErrGoneElsewhere)
	same(t, open(t, b, inA.Work.ID()).Session(), sA)
}

// A full store refuses in words, holds what it held, and loses nothing of the
// session; with room again all is kept.
func TestFull(t *testing.T) {
	m, tab := one(t)
	s, w := session.New(halfMoon(t)), tab.Begin()
	for i := range 30 {
		dial(t, s, int64(i%60))
		must(t, w.Keep(s))
	}
	held, _, _ := m.Get(ownKey(w.ID()))

	m.Quota = 1
	dial(t, s, 61)
	wantError(t, "Keep() in a full store", w.Keep(s), ErrFull)
	if got, _, _ := m.Get(ownKey(w.ID())); got != held {
		t.Error("what was kept has changed, want it as it was")
	}
	if got := s.SelectedPiece().Prop; !got.Equal(frac.Int(61)) {
		t.Errorf("the session has prop speed %v, want 61", got)
	}
	fresh := tab.Begin()
	wantError(t, "Keep() of new work in a full store", fresh.Keep(s), ErrFull)
	if fresh.ID() != "" {
		t.Error("new work that was not kept has an ID")
	}

	// Room for the work, not for its edits: the work goes first.
	m.Quota = 1400
	must(t, w.Keep(s))
	o := open(t, tab, w.ID())
	if o.Note != nil || len(o.States) >= 30 {
		t.Errorf("with little room %d states are kept, note %v, want fewer than 30 and no note", len(o.States), o.Note)
	}
	same(t, o.Session(), s)
	m.Quota = 0
	dial(t, s, 62)
	must(t, w.Keep(s))
	if o := open(t, tab, w.ID()); len(o.States) != 33 {
		t.Errorf("with room again %d states are kept, want all 33", len(o.States))
	}

	// What was deleted makes room for what is being done.
	for range 5 {
		id, err := tab.Add(halfMoon(t))
		must(t, err)
		must(t, tab.Delete(id))
	}
	used := 0
	for k, x := range m.texts {
		used += units(k) + units(x)
	}
	m.Quota = used
	for i := range 3 {
		dial(t, s, int64(i))
		must(t, w.Keep(s))
	}
	if o := open(t, tab, w.ID()); len(o.States) != 36 {
		t.Errorf("%d states are kept, want all 36", len(o.States))
	}
	if got := len(tab.Deleted()); got != 5 {
		t.Errorf("this tab brings %d back, want all 5", got)
	}
}

func TestBlocked(t *testing.T) {
	m, tab := one(t)
	m.Blocked = true
	s, w := session.New(halfMoon(t)), tab.Begin()
	wantError(t, "Keep()", w.Keep(s), ErrBlocked)
	_, ok, problem := tab.Start()
	if ok {
		t.Error("Start() finds work where nothing can be kept")
	}
	wantError(t, "Start()", problem, ErrBlocked)
	_, problems := tab.List()
	wantError(t, "List()", problems[0], ErrBlocked)
	wantError(t, "Delete()", tab.Delete("a1"), ErrBlocked)
	wantError(t, "Undelete()", tab.Undelete("a1"), ErrBlocked)
	wantError(t, "Open()", openError(tab, "a1"), ErrBlocked)
	m.Blocked = false
	must(t, w.Keep(s))
	m.Blocked = true
	dial(t, s, 7)
	wantError(t, "Keep() later", w.Keep(s), ErrBlocked)
	m.Blocked = false
	must(t, w.Keep(s))
	same(t, open(t, tab, w.ID()).Session(), s)
}

// kept returns a store with one work of three edits, and its record.
func kept(t *testing.T) (m *Memory, tab *Shelf, id, text string) {
	t.Helper()
	m, tab = one(t)
	s, w := session.New(halfMoon(t)), tab.Begin()
	for i := range 3 {
		dial(t, s, int64(10+i))
		must(t, w.Keep(s))
	}
	text, _, _ = m.Get(ownKey(w.ID()))
	return m, tab, w.ID(), text
}

// aside returns the one text that was put aside.
func aside(t *testing.T, tab *Shelf) string {
	t.Helper()
	all := tab.Asides()
	if len(all) != 1 {
		t.Fatalf("%d texts are put aside, want one", len(all))
	}
	return all[0].Text
}

// A record that cannot be read is skipped with a reason, and can be had as it
// was; the others are not touched by it.
func TestDamagedWork(t *testing.T) {
	for name, damage := range map[string]func(text string) string{
		"no record":       func(string) string { return "no record at all" },
		"nothing":         func(string) string { return "" },
		"cut short":       func(text string) string { return text[:len(text)/3] },
		"a changed digit": func(text string) string { return strings.Replace(text, "tempo = 120", "tempo = 121", 1) },
		"no header":       func(text string) string { return text[5:] },
	} {
		t.Run(name, func(t *testing.T) {
			m, tab, id, text := kept(t)
			good, err := tab.Add(halfMoon(t))
			must(t, err)
			broken := damage(text)
			must(t, m.Set(ownKey(id), broken))
			entries, problems := tab.List()
			if len(entries) != 1 || entries[0].ID != good || len(problems) != 1 {
				t.Fatalf("List() = %+v, %v, want the good one and a problem", entries, problems)
			}
			wantError(t, "List()", problems[0], ErrDamaged)
			if broken == "" {
				return // nothing is nothing to put aside
			}
			if got := aside(t, tab); got != broken {
				t.Errorf("put aside is %q, want %q", got, broken)
			}
			must(t, tab.Discard(tab.Asides()[0].Key))
			wantError(t, "Discard() twice", tab.Discard(asidePrefix+"x"), ErrUnknown)
			if len(tab.Asides()) != 0 {
				t.Error("discarded, it is still there")
			}
		})
	}
}

// A work whose edits cannot be read is opened without them, and said so.
func TestDamagedTrail(t *testing.T) {
	m, tab, id, text := kept(t)
	broken := strings.Replace(text, `"put":"prop = 1`, `"put":"prop = 2`, 1)
	if broken == text {
		t.Fatal("the record has no such step")
	}
	must(t, m.Set(ownKey(id), broken))
	o := open(t, tab, id)
	wantError(t, "the note", o.Note, ErrTrailLost)
	if len(o.States) != 1 || !o.Session().SelectedPiece().Prop.Equal(frac.Int(12)) {
		t.Errorf("opened %+v, want the work alone", o.States)
	}
	s := o.Session()
	dial(t, s, 20)
	must(t, o.Work.Keep(s))
	if got := aside(t, tab); got != broken {
		t.Errorf("put aside is %q, want %q", got, broken)
	}
	// A step that fits no more ends the trail, though its sum is right.
	r, err := parse(text)
	must(t, err)
	r.trail = strings.Replace(r.trail, `"put":"prop = 10`, `"put":"prop = 99`, 1)
	must(t, m.Set(ownKey("x"), r.String()))
	o = open(t, tab, "x")
	wantError(t, "the note", o.Note, ErrTrailLost)
	if len(o.States) != 2 {
		t.Errorf("%d states, want the present and the one before that still fits", len(o.States))
	}
}

// A record of a newer bench is left where it is.
func TestNewerRecord(t *testing.T) {
	m, tab, id, text := kept(t)
	newer := strings.Replace(text, `{"kind":1,`, `{"kind":2,`, 1)
	must(t, m.Set(ownKey(id), newer))
	entries, problems := tab.List()
	if len(entries) != 0 || len(problems) != 1 {
		t.Fatalf("List() = %+v, %v, want a problem", entries, problems)
	}
	wantError(t, "List()", problems[0], ErrNewer)
	wantError(t, "Open()", openError(tab, id), ErrNewer)
	if got, _, _ := m.Get(ownKey(id)); got != newer || len(tab.Asides()) != 0 {
		t.Error("it has been moved or changed")
	}
}

// The one work of earlier benches becomes one of the shelf's.
func TestOldWork(t *testing.T) {
	m, tab := one(t)
	mine := halfMoon(t)
	mine.Title = "Kept before"
	must(t, m.Set(oldName, file(t, mine)))
	m.Quota = 800 // for one, not for two
	o, ok, problem := tab.Start()
	wantError(t, "Start() without room", problem, ErrFull)
	if !ok || !o.Session().Pattern().Equal(mine) {
		t.Fatal("Start() without room does not show the work")
	}
	if text, _, _ := m.Get(oldName); text == "" {
		t.Fatal("without room the old record is gone")
	}
	m.Quota = 0
	o, ok, problem = tab.Start()
	if !ok || problem != nil || !o.Session().Pattern().Equal(mine) {
		t.Fatalf("Start() = %v, %v, want the old work", ok, problem)
	}
	if _, there, _ := m.Get(oldName); there {
		t.Error("the old record is still there, so it would come again")
	}
	if got := titles(t, tab); got != "Kept before" {
		t.Errorf("List() = %s, want the old work once", got)
	}
	again, ok, problem := newTab(m, "b", &clock{}).Start()
	if !ok || problem != nil || again.Work.ID() != o.Work.ID() {
		t.Errorf("the next Start() = %v, %v, want the same work", ok, problem)
	}

	must(t, m.Set(oldName, "no pattern at all"))
	must(t, m.Set(oldAside, "put aside by an earlier bench"))
	_, ok, problem = tab.Start()
	wantError(t, "Start() with an unreadable old record", problem, ErrOldUnreadable)
	if !ok {
		t.Error("the other work is not opened")
	}
	var texts []string
	for _, a := range tab.Asides() {
		texts = append(texts, a.Text)
	}
	if got := strings.Join(texts, ", "); got != "no pattern at all, put aside by an earlier bench" {
		t.Errorf("put aside are %s, want both", got)
	}
}

// Notes of many lines, large patterns: a change is small, and too large a one
// ends the trail.
func TestChanges(t *testing.T) {
	for _, tt := range []struct{ a, b string }{
		{"", ""}, {"a\n", ""}, {"", "a\n"}, {"a\nb\nc\n", "a\nc\n"}, {"a\nb\n", "a\nb\nb\n"}, {"aa\naa\n", "aa\n"},
		{"é\n", "è\n"}, {"x", "y"}, {"a\nb", "a\nbb"}, {"a\nb\nc", "z\nb\nc"}, {"same\n", "same\n"},
	} {
		c := between(tt.a, tt.b)
		if got, err := c.on().from(tt.a); err != nil || got != tt.b {
			t.Errorf("from %q on: %q, %v, want %q", tt.a, got, err, tt.b)
		}
		if got, err := c.back().from(tt.b); err != nil || got != tt.a {
			t.Errorf("from %q back: %q, %v, want %q", tt.b, got, err, tt.a)
		}
	}
	for _, s := range []step{{Head: 3}, {Tail: 3}, {Head: 1, Tail: 2}, {Head: -1}, {Tail: -1}, {Put: "other"}} {
		if got, err := s.from("ab"); err == nil {
			t.Errorf("the step %+v makes %q, want it refused", s, got)
		}
	}
	_, tab := one(t)
	p := halfMoon(t)
	for range 3000 {
		p.Lanes[0].Pieces = append(p.Lanes[0].Pieces, p.Lanes[0].Pieces[1])
	}
	s, w := session.New(p), tab.Begin()
	dial(t, s, 5)
	must(t, s.TryPattern("mirror", func(p engine.Pattern) engine.Pattern { return p.Mirror() })) // every line
	dial(t, s, 6)
	must(t, w.Keep(s))
	o := open(t, tab, w.ID())
	if o.Note != nil || len(o.States) != 2 || o.At != 1 {
		t.Errorf("%d states are kept, note %v, want the present and one before it", len(o.States), o.Note)
	}
	same(t, o.Session(), s)
}
