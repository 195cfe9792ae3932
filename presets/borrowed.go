package presets

import "whorlbench/engine"

// Borrowed reports whether p bears the title of a built-in pattern that it no
// longer is.
func Borrowed(p engine.Pattern) bool {
	for _, e := range Library() {
		built, err := e.Pattern()
		if err != nil || built.Title != p.Title {
			continue
		}
		built.Notes = p.Notes
		return !built.Equal(p)
	}
	return false
}

// OwnNotes returns p's notes, or none if they are still those of a built-in
// pattern that p, whatever it is called, no longer is: they tell of that one.
func OwnNotes(p engine.Pattern) string {
	for _, e := range Library() {
		built, err := e.Pattern()
		if err != nil || built.Notes != p.Notes {
			continue
		}
		built.Title = p.Title
		if !built.Equal(p) {
			return ""
		}
	}
	return p.Notes
}
