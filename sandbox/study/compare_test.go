package study_test

import (
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/words"
)

func builtIn(t *testing.T, id string) engine.Pattern {
	t.Helper()
	for _, e := range presets.Library() {
		if e.ID == id {
			p, err := e.Pattern()
			if err != nil {
				t.Fatal(err)
			}
			return p
		}
	}
	t.Fatalf("no built-in pattern %s", id)
	return engine.Pattern{}
}

// TestCompare: what differs, and nothing else. What the patterns are is in their
// files; a head in extension on a circle of radius R + L stays taut at its top
// from ω = √(g/(R + L)) on (any text on the vertical circle): at a quarter turn
// a beat, R + L = 1.2, 1 and 0.9 m, that is from 109.2, 119.7 and 126.1 beats a
// minute, rounded up to a tenth.
func TestCompare(t *testing.T) {
	const four = "Played to one beat, both are back at their start together after four beats."
	for _, test := range []struct {
		left, right string
		want        []string
	}{
		{"half-moon", "half-moon", []string{words.English.Compare.Alike, four}},
		{"half-moon", "bump-at-the-quay", []string{
			"Name. A: C-cap of extension and four-petal antispin flower, strict sense. B: C-cap of extension and six-petal antispin flower, strict sense.",
			"Prop turns to one of the arm. A: 1 the same way, 3 the other way. B: 1 the same way, 5 the other way.",
			"Joins. A: All smooth. B: Two kinks.",
			four,
		}},
		{"half-moon", "two-ferries", []string{
			"Name. A: C-cap of extension and four-petal antispin flower, strict sense. B: Both hands: C-cap of extension and four-petal antispin flower, strict sense.",
			"Hands. A: The right hand only. B: Both hands.",
			"Hand circle, right hand. A: Radius 0.6 m. B: Radius 0.5 m.",
			"Tether, right hand. A: Taut from 109.2 bpm. B: Taut from 119.7 bpm.",
			"Tempo. A: 120 beats a minute. B: 128 beats a minute.",
			four,
		}},
		{"pier-end", "two-ferries", []string{
			"Name. A: Hybrid: both hands C-cap of extension and four-petal antispin flower, strict sense, but not the same part at once. B: Both hands: C-cap of extension and four-petal antispin flower, strict sense.",
			"Hand circle, left hand. A: Radius 0.45 m. B: Radius 0.5 m.",
			"Tether, left hand. A: Taut from 126.1 bpm. B: Taut from 119.7 bpm.",
			"Hand circle, right hand. A: Radius 0.45 m. B: Radius 0.5 m.",
			"Tether, right hand. A: Taut from 126.1 bpm. B: Taut from 119.7 bpm.",
			"Hybrid. A: Yes: both share their patterns, but left is a four-petal antispin flower while right is extension. B: No: both hands do the same pattern at all times.",
			"Props together. A: Props turn opposite ways throughout: together → quarter → split → quarter → together, 2 times. B: Props turn the same way throughout: split all the time.",
			"Hands together. A: Hands turn the same way throughout: together all the time. B: Hands turn the same way throughout: split all the time.",
			"Arms. A: Seen from the front the hands meet at beat 0, one 0.12 m in front of the other, so it cannot be said how the arms wrap: that depends on which hand stays in front. B: The arms come back untangled: whatever they wrap, they unwrap again.",
			"Tempo. A: 132 beats a minute. B: 128 beats a minute.",
			four,
		}},
		{"half-moon", "turned-back", []string{
			"Name. A: C-cap of extension and four-petal antispin flower, strict sense. B: Extension, there and back.",
			"Elementary. A: No: piece 1 is extension and piece 2 is a four-petal antispin flower. B: Yes: it is one pattern, extension, played there and back.",
			"CAP (broad). A: Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower. B: No: it is only one pattern, extension, and a CAP needs two.",
			"CAP (strict). A: Yes: all pieces are slices of flowers, and the hand turns back after piece 1. B: No: it is no CAP in the broad sense.",
			"C-cap. A: Yes: the hand goes to and fro on one arc of one circle. B: No: it is no CAP in the strict sense.",
			"Prop turns to one of the arm. A: 1 the same way, 3 the other way. B: 1 the same way.",
			"Joins. A: All smooth. B: Two stops.",
			four,
		}},
	} {
		got := compared(builtIn(t, test.left), builtIn(t, test.right), 1<<20)
		if !slices.Equal(got, test.want) {
			t.Errorf("%s and %s:\n%s\nwant\n%s", test.left, test.right, strings.Join(got, "\n"), strings.Join(test.want, "\n"))
		}
		if small := compared(builtIn(t, test.left), builtIn(t, test.right), 37); !slices.Equal(small, got) {
			t.Errorf("%s and %s, in small steps:\n%s\nwant\n%s", test.left, test.right, strings.Join(small, "\n"), strings.Join(got, "\n"))
		}
	}
}

func compared(left, right engine.Pattern, n int) []string {
	c := study.Compare(left, right)
	for !c.Step(n) {
	}
	return c.Lines(&words.English)
}

// TestComparisonWaits: nothing is said before all is known.
func TestComparisonWaits(t *testing.T) {
	c := study.Compare(builtIn(t, "pier-end"), builtIn(t, "two-ferries"))
	if c.Step(1); c.Lines(&words.English) != nil {
		t.Errorf("Lines() = %q after one step, want nothing yet", c.Lines(&words.English))
	}
}

// TestCompareAll: whatever is compared with whatever, each line is whole, and
// the two sides change places with the patterns.
func TestCompareAll(t *testing.T) {
	all := presets.Library()
	facts := make([]*words.Facts, len(all))
	for i, e := range all {
		p, _ := e.Pattern()
		c := study.Compare(p, p)
		for !c.Step(1 << 20) {
		}
		facts[i], _ = c.Facts()
		if d := words.English.Differences(facts[i], facts[i]); len(d) > 0 {
			t.Errorf("%s differs from itself: %v", e.ID, d)
		}
	}
	for i := range all {
		for j := range i {
			there, back := words.English.Differences(facts[i], facts[j]), words.English.Differences(facts[j], facts[i])
			if len(there) != len(back) {
				t.Fatalf("%s and %s: %d differences one way, %d the other", all[i].ID, all[j].ID, len(there), len(back))
			}
			for k := range there {
				if there[k].Left != back[k].Right || there[k].Right != back[k].Left || there[k].Left == there[k].Right {
					if !slices.ContainsFunc(back, func(c words.Contrast) bool { return c.Left == there[k].Right && c.Right == there[k].Left }) {
						t.Errorf("%s and %s: %v one way is not there the other", all[i].ID, all[j].ID, there[k])
					}
				}
				if said := words.English.Said(there[k]); strings.Contains(said, "%!") || !strings.HasSuffix(said, ".") {
					t.Errorf("%s and %s: %q is no whole line", all[i].ID, all[j].ID, said)
				}
			}
		}
	}
}

// TestSenses: where the broad and the strict sense of CAP disagree about one of
// two patterns, what each makes of both is told, once. Strokes along a line are no
// flowers, and the strict sense takes flowers only; that a triquetra-and-extension
// S is a CAP in both senses is common practice.
func TestSenses(t *testing.T) {
	for _, test := range []struct {
		left, right string
		want        []words.Contrast
	}{
		{"half-moon", "two-bends", nil},
		{"gangway", "two-bends", []words.Contrast{
			{What: "CAP (broad)", Left: "Yes: it closes; piece 1 is a four-petal antispin flower and piece 2 is linear isolation.", Right: "Yes: it closes; piece 1 is extension and piece 2 is a triquetra."},
			{What: "CAP (strict)", Left: "No: piece 2 is a stroke along a straight line, and this sense takes flowers only.", Right: "Yes: all pieces are slices of flowers, and the hand turns back after piece 2."},
		}},
		{"two-bends", "gangway-and-bell", []words.Contrast{
			{What: "CAP (broad)", Left: "Yes: it closes; piece 1 is extension and piece 2 is a triquetra.", Right: "Left hand. No: it is only one pattern, a pendulum, and a CAP needs two. Right hand. Yes: it closes; piece 1 is a four-petal antispin flower and piece 2 is linear isolation."},
			{What: "CAP (strict)", Left: "Yes: all pieces are slices of flowers, and the hand turns back after piece 2.", Right: "Left hand. No: it is no CAP in the broad sense. Right hand. No: piece 2 is a stroke along a straight line, and this sense takes flowers only."},
		}},
	} {
		c := study.Compare(builtIn(t, test.left), builtIn(t, test.right))
		for !c.Step(1 << 20) {
		}
		left, right := c.Facts()
		if got := words.English.Senses(left, right); !slices.Equal(got, test.want) {
			t.Errorf("%s and %s: %q, want %q", test.left, test.right, got, test.want)
		}
		if test.want == nil {
			continue
		}
		for _, d := range words.English.Differences(left, right) {
			if strings.HasPrefix(d.What, "CAP (") {
				t.Errorf("%s and %s: %s is told twice", test.left, test.right, d.What)
			}
		}
	}
}

// TestPropTurns: petals and prop turns to one of the arm, in-spin n − 1, antispin
// 1 − n (common practice); a straight stroke is as much the one way as the other.
func TestPropTurns(t *testing.T) {
	for _, test := range []struct{ left, right, want string }{
		{"four-buoys", "compass-card", "Prop turns to one of the arm. A: 5 the same way. B: 3 the other way."},
		{"three-sails", "oar-stroke", "Prop turns to one of the arm. A: 2 the other way. B: Not counted: the hand goes straight or stays, or the prop swings."},
		{"lamp-under-the-bridge", "half-moon", "Prop turns to one of the arm. A: Not counted: the hand goes straight or stays, or the prop swings. B: 1 the same way, 3 the other way."},
	} {
		if got := compared(builtIn(t, test.left), builtIn(t, test.right), 1<<20); !slices.Contains(got, test.want) {
			t.Errorf("%s and %s:\n%s\nwant in it\n%s", test.left, test.right, strings.Join(got, "\n"), test.want)
		}
	}
}

// How fast the arm goes and how large its circle is are told where they differ:
// once round in four beats against six, by the files, and pieces among themselves.
func TestCompareArms(t *testing.T) {
	a, b := builtIn(t, "compass-card"), builtIn(t, "starfish")
	got := strings.Join(compared(a, b, 1<<20), "\n")
	for _, want := range []string{"Arm speed. A: 90° a beat. B: 60° a beat.", "Hand circle. A: Radius 0.45 m. B: Radius 0.5 m."} {
		if !strings.Contains(got, want) {
			t.Errorf("%s\nlacks %q", got, want)
		}
	}
	b = builtIn(t, "half-moon")
	b.Lanes[0].Pieces[1].Beats = frac.Int(4)
	if got := strings.Join(compared(builtIn(t, "half-moon"), b, 1<<20), "\n"); !strings.Contains(got, "Arm speed. A: 90° a beat. B: 45 to 90° a beat.") {
		t.Errorf("half the arm's speed in one piece: %s", got)
	}
}
