//go:build browser

package browser

import (
	"strings"
	"testing"

	"whorlbench/sandbox/words"
)

// The browser's store does what the shelf asks of one, and fails with the
// errors that it knows: full, and forbidden.
func TestStorage(t *testing.T) {
	w := &words.English.Share.Shelf
	v := programVisit(t, "storage", "")
	const all = "set <nil>, get true true <nil>, listed true <nil>, deleted <nil> false"
	for _, text := range []string{"", "plain", "漢字 😀 \\u0000 é", strings.Repeat("a line\\n", 1000)} {
		if got := eval[string](v, "storageTry('whorlbench.test', `"+text+"`)"); got != all {
			t.Errorf("%.20q: %s, want %s", text, got, all)
		}
	}
	if got, want := eval[string](v, "storageFill()"), w.Full+"; the one before is there: true"; got != want {
		t.Errorf("filled: %s, want %s", got, want)
	}
	v.clean()

	v = programVisit(t, "storage", noStorage)
	want := "set " + w.Blocked + ", get false false " + w.Blocked + ", listed false " + w.Blocked + ", deleted " + w.Blocked + " false"
	if got := eval[string](v, "storageTry('whorlbench.test', 'plain')"); got != want {
		t.Errorf("forbidden: %s, want %s", got, want)
	}
	v.clean()
}
