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
