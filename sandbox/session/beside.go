package session

import "whorlbench/engine"

// Beside returns another session with p open, which plays as s does from the
// start: at its speed, by its steps, seen in the mirror if s is. As long as
// nothing is edited in it, it has no revision in common with s, nor with those of
// another n ≥ 1.
func (s *Session) Beside(p engine.Pattern, n int) *Session {
	out := &Session{Speed: s.Speed, Loop: s.Loop, Steps: s.Steps, Mirror: s.Mirror, rev: -n - 1}
	out.show(moment{pattern: p})
	return out
}
