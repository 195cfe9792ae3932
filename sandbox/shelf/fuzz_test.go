package shelf

import (
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/session"
)

// FuzzRecord starts with any text at all as a kept work. Whatever it is, it is
// not lost, the bench begins, and what is opened is kept again.
func FuzzRecord(f *testing.F) {
	m := &Memory{}
	tab := newTab(m, "a", &clock{})
	first, err := presets.First().Pattern()
	if err != nil {
		f.Fatal(err)
	}
	s, w := session.New(first), tab.Begin()
	for _, edit := range []func() error{s.Flip, s.Repeat, s.ThereAndBack} {
		if err := edit(); err != nil {
			f.Fatal(err)
		}
	}
	s.Undo()
	if err := w.Keep(s); err != nil {
		f.Fatal(err)
	}
	text, _, _ := m.Get(ownKey(w.ID()))
	r, err := parse(text)
	if err != nil {
		f.Fatal(err)
	}
	f.Add(text, false)
	f.Add(r.work, true)
	f.Add(r.trail, true)
	f.Add(`{"kind":1}`, false)
	f.Fuzz(func(t *testing.T, text string, sealed bool) {
		if sealed { // past the sums
			x := r
			x.work, x.trail = r.work, text
			text = x.String()
		}
		m := &Memory{}
		must(t, m.Set(ownKey("x"), text))
		tab := newTab(m, "a", &clock{})
		o, ok, _ := tab.Start()
		if ok {
			s := o.Session()
			for s.CanUndo() {
				s.Undo()
			}
			must(t, s.Flip())
			must(t, o.Work.Keep(s))
			same(t, open(t, tab, o.Work.ID()).Session(), s)
		}
		if !ok || o.Note != nil {
			where, _, _ := m.Get(ownKey("x"))
			for _, a := range tab.Asides() {
				if a.Text == text {
					where = text
				}
			}
			if where != text {
				t.Errorf("the text %q is lost", text)
			}
		}
	})
}
