//go:build browser

package browser

import "testing"

func TestStates(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.frames(3)
			v.shot("first")
			v.clean()
		})
	}
}
