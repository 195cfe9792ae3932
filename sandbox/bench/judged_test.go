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
		{"three-sails", "triquetra", ": Yes: piece 1 is one: arm anticlockwise, prop clockwise, the prop turns twice to one of the arm."},
		{"three-sails", "cateye", ": No: no piece is one. It takes a circle, the prop turning once to one of the arm, the other way. In piece 1: arm anticlockwise, prop clockwise, the prop turns twice to one of the arm."},
		{"half-moon", "antispin", ": Yes: piece 2 is one: arm clockwise, prop anticlockwise."},
		{"half-moon", "in-spin", ": No: no piece is one. It takes a circle, arm and prop turning the same way, the prop not just once to one of the arm. In piece 1: arm and prop both anticlockwise, the prop turns once to one of the arm. In piece 2: arm clockwise, prop anticlockwise."},
		{"half-moon", "isolation", "Loose sense: No: |Exact sense: No: "},
		{"half-moon", "box-mode", ": No: no piece is one. It takes a circle and four petals, the first tip at 45°. In piece 1: arm and prop both anticlockwise, the prop turns once to one of the arm, no petals. In piece 2: arm clockwise, prop anticlockwise, the prop turns three times to one of the arm, petals: 4, the first tip at 0°."},
		{"half-moon", "static-spin", ": No: no piece is one. It takes a hand that stays where it is, and a prop that turns. In piece 1: the hand goes round a circle."},
		{"ferry-run", "linear-isolation", ": No: no piece is one. It takes a straight line, the prop turning once to one of the arm and pointing inward at the ends. In piece 1: the prop turns once to one of the arm, it points outward at the ends."},
		{"ferry-run", "extension", ": No: no piece is one. It takes a circle, the prop turning once to one of the arm, the same way, and pointing straight out from the middle. In piece 1: the hand goes along a straight line."},
		{"paper-star", "star-flower", ": Yes: piece 1 is one: "},
		{"lamp-under-the-bridge", "pendulum", ": Yes: piece 1 is one: the prop swings to and fro."},
		{"paddle-steamer", "antispin", ": No: no piece is one. It takes a circle, arm and prop turning opposite ways. In piece 1: arm and prop both forward over the top."},
		{"capstan", "isolation", "Loose sense: No: |Exact sense: No: no piece is one. It takes a circle, the prop turning once to one of the arm, the same way, and pointing back at the middle. In piece 1: arm and prop both anticlockwise, the prop turns once to one of the arm, it stands 90° off the arm."},
		{"tide-ring", "isolation", "Loose sense: Yes: piece 1 is one: arm and prop both anticlockwise, the prop turns once to one of the arm, it points back at the middle.|" +
			"Exact sense: Yes: in piece 1 hand and head share one circle: 0.3 m from its middle to its edge, half the tether of 0.6 m."},
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
