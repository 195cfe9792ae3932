package bench_test

import (
	"fmt"
	"strings"
	"testing"

	"whorlbench/sandbox/words"
)

// TestJudged: each reading of a word says yes or no of the open pattern, and why.
// What they say follows from the glossary's sentences and the patterns' notes.
func TestJudged(t *testing.T) {
	for _, tt := range []struct{ pattern, key, want string }{
		{"half-moon", "cap", "CAP (broad): Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower.|" +
			"CAP (strict): Yes: all pieces are slices of flowers, and the hand turns back after piece 1."},
		{"kite", "cap", "CAP (broad): Yes: it closes;|CAP (strict): No: piece 1 is a stroke along a straight line, and this sense takes flowers only."},
		{"three-sails", "elementary", "Elementary: Yes: it is one pattern, a triquetra, and nothing jumps."},
		{"three-sails", "triquetra", ": Yes: piece 1 is one."},
		{"three-sails", "cateye", ": No: no piece is one."},
		{"half-moon", "antispin", ": Yes: piece 2 is one."},
		{"tide-ring", "isolation", "Loose sense: Yes: piece 1 is one.|Exact sense: Yes: in piece 1 hand and head share one circle."},
		{"gangway-and-bell", "hybrid", "Some moment: Yes: |Nothing shared: |Flower and simple: "},
		{"half-moon", "hybrid", words.English.Explain.OneHand},
		{"half-moon", "tempo", ""},
	} {
		r := newRig(t, phone, tt.pattern)
		var got []string
		for _, part := range r.b.Judged(tt.key) {
			if part.Text != "" {
				got = append(got, part.Text)
			}
			for _, l := range part.Lines {
				got = append(got, fmt.Sprintf("%s: %s", l.Name, l.Text))
			}
		}
		all := strings.Join(got, "|")
		for want := range strings.SplitSeq(tt.want, "|") {
			if !strings.Contains("|"+all, "|"+want) {
				t.Errorf("%s under %s: %q, want %q in it", tt.pattern, tt.key, all, want)
			}
		}
		if n := len(strings.Split(tt.want, "|")); tt.want == "" && all != "" || tt.want != "" && len(got) != n {
			t.Errorf("%s under %s: %d readings, want %d: %q", tt.pattern, tt.key, len(got), n, all)
		}
	}
}

// TestJudgedKeys: every word that judges is one of the glossary's.
func TestJudgedKeys(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	n := 0
	for _, x := range words.EnglishGlossary.Terms {
		if len(r.b.Judged(x.Key)) > 0 {
			n++
		}
	}
	if want := 23; n != want {
		t.Errorf("%d words judge the pattern, want %d", n, want)
	}
}
