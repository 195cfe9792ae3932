package presets

import (
	"fmt"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/words"
)

// section is one table while it is read: it hands out typed values, notes
// what is wrong with them, and knows in the end which keys nobody asked for.
type section struct {
	table *table
	bad   *problems
	place Error // with the section's own key, hand and piece
	known []string
}

// refuse notes a problem with one of the section's keys.
func (s *section) refuse(off int, key string, what func() string) {
	e := s.place
	if e.Key != "" {
		key = e.Key + "." + key
	}
	e.Key = key
	s.bad.add(off, e, what)
}

// wrong notes that what was found under a key is not what is allowed.
func (s *section) wrong(off int, key, found, allowed string) {
	s.refuse(off, key, func() string {
		return fmt.Sprintf(words.Said.Preset.FoundAllowed, found, allowed)
	})
}

// missing notes that the table lacks a key.
func (s *section) missing(key, allowed string) {
	s.refuse(s.table.off, key, func() string {
		return fmt.Sprintf(words.Said.Preset.Missing, allowed)
	})
}

// take returns the value of a key, nil if it is absent.
func (s *section) take(key string) *node {
	e := s.table.find(key)
	if e == nil {
		return nil
	}
	e.used = true
	return e.value
}

// need is take, for a key that must be there.
func (s *section) need(key, allowed string) *node {
	v := s.take(key)
	if v == nil {
		s.missing(key, allowed)
	}
	return v
}

// done notes every key that was not taken.
func (s *section) done() {
	for i := range s.table.entries {
		e := &s.table.entries[i]
		if e.used {
			continue
		}
		s.refuse(e.off, e.name, func() string {
			return fmt.Sprintf(words.Said.Preset.Unknown, strings.Join(s.known, words.Said.Preset.Comma))
		})
	}
}

// found shows a value on one line.
func (n *node) found() string {
	w := &words.Said.Preset
	switch n.kind {
	case isText:
		return fmt.Sprintf(w.Text, quoted(n.text))
	case isDate:
		return fmt.Sprintf(w.Date, short(n.text))
	case isList:
		return fmt.Sprintf(w.List, n.count)
	case isTable:
		return w.Table
	}
	return short(n.text)
}

// number returns a float64 in a range, def if the key is absent or wrong.
func (s *section) number(key string, lim span, def float64) float64 {
	v := s.take(key)
	if v == nil {
		return def
	}
	x, ok := s.numberOf(v, key, lim)
	if !ok {
		return def
	}
	return x
}

// needNumber is number, for a key that must be there.
func (s *section) needNumber(key string, lim span) float64 {
	if s.table.find(key) == nil {
		s.missing(key, lim.String())
	}
	return s.number(key, lim, 0)
}

func (s *section) numberOf(v *node, key string, lim span) (float64, bool) {
	if !v.isNumber() {
		s.wrong(v.off, key, v.found(), fmt.Sprintf(words.Said.Preset.ANumber, lim))
		return 0, false
	}
	x := v.float()
	if !lim.has(x) {
		s.wrong(v.off, key, v.found(), lim.String())
		return 0, false
	}
	return x, true
}

// degrees is number, for an angle.
func (s *section) degrees(key string, def engine.Degrees) engine.Degrees {
	return engine.Degrees(s.number(key, angleSpan, float64(def)))
}

// angle returns an angle that may be absent.
func (s *section) angle(key string) engine.Opt {
	v := s.take(key)
	if v == nil {
		return engine.Opt{}
	}
	x, ok := s.numberOf(v, key, angleSpan)
	return engine.Opt{Set: ok, At: engine.Degrees(x)}
}

// fraction returns an exact number in a range, def if the key is absent or
// wrong.
func (s *section) fraction(key string, lim span, def frac.Frac) frac.Frac {
	v := s.take(key)
	if v == nil {
		return def
	}
	f, found, allowed := v.exact(lim)
	if found != "" {
		s.wrong(v.off, key, found, allowed)
		return def
	}
	return f
}

// needFraction is fraction, for a key that must be there. A wrong one counts
// as 1, which no later check objects to.
func (s *section) needFraction(key string, lim span) frac.Frac {
	if s.table.find(key) == nil {
		s.missing(key, lim.String())
	}
	return s.fraction(key, lim, frac.Int(1))
}

// flag returns a bool.
func (s *section) flag(key string) (on bool, at *node) {
	v := s.take(key)
	if v == nil {
		return false, nil
	}
	if v.kind != isBool {
		s.wrong(v.off, key, v.found(), words.Said.Preset.TrueFalse)
		return false, nil
	}
	return v.text == "true", v
}

// choice returns which of the names a text is; ok is false if it is none.
func (s *section) choice(key string, names []string, need bool) (i int, ok bool) {
	v := s.take(key)
	if v == nil {
		if need {
			s.missing(key, oneOf(names))
		}
		return 0, !need
	}
	if v.kind == isText {
		for i, name := range names {
			if v.text == name {
				return i, true
			}
		}
	}
	s.wrong(v.off, key, v.found(), oneOf(names))
	return 0, false
}

// pair returns the two numbers of a list, def if the key is absent or wrong.
// Both must be in the range.
func (s *section) pair(v *node, key string, lim span) (a, b float64, ok bool) {
	if v.kind == isList && v.count == 2 && v.items[0].isNumber() && v.items[1].isNumber() {
		a, okA := s.numberOf(v.items[0], key, lim)
		b, okB := s.numberOf(v.items[1], key, lim)
		return a, b, okA && okB
	}
	s.wrong(v.off, key, v.found(), fmt.Sprintf(words.Said.Preset.APair, lim))
	return 0, 0, false
}

// oneOf lists names.
func oneOf(names []string) string {
	w := &words.Said.Preset
	q := make([]string, len(names))
	for i, n := range names {
		q[i] = `"` + n + `"`
	}
	last := len(q) - 1
	return fmt.Sprintf(w.OneOf, strings.Join(q[:last], w.Comma), q[last])
}
