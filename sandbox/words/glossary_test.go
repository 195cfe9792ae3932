package words_test

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"whorlbench/engine/naming"
	"whorlbench/sandbox/words"
)

// The definitions are the project's own, each word of them in the trade's
// sense; which patterns are extensions, C-caps, S-caps, triquetras and so on
// is common practice. Read it as a glossary: a pattern, what it is called,
// the definitions that say yes, and the clauses that decided.
var glossary = append(oneOf, assembled...)

// entry is a line of the glossary.
type entry struct {
	lane, line, yes string
	because         []string // definition: clause
}

var oneOf = []entry{
	// One elementary pattern.
	{
		"90 90: 1 1 1",
		"Extension", "elementary", []string{
			"elementary: Yes: it is one pattern, extension, and nothing jumps.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 90: -1 -1 1",
		"Extension", "elementary", []string{
			"elementary: Yes: it is one pattern, extension, and nothing jumps.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 1 3",
		"Extension", "elementary", []string{
			"elementary: Yes: it is one pattern, extension, and nothing jumps.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 1 1/4; 1 1 3/4",
		"Extension", "elementary", []string{
			"elementary: Yes: both pieces belong to one pattern, extension, and nothing jumps.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 1 1/4; 1 1 3/4 beats=7",
		"Extension", "elementary", []string{
			"elementary: Yes: both pieces belong to one pattern, extension, and nothing jumps.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 1 1 both",
		"Extension", "elementary", []string{
			"elementary: Yes: it is one pattern, extension, and nothing jumps.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 1 1 both part=0,1/3; 1 1 1 both part=1/3,1",
		"Extension", "elementary", []string{
			"elementary: Yes: both pieces belong to one pattern, extension, and nothing jumps.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 270: 1 1 1 r=0.3",
		"Isolation", "elementary", []string{
			"elementary: Yes: it is one pattern, isolation, and nothing jumps.",
			"broad: No: it is only one pattern, isolation, and a CAP needs two.",
		},
	},
	{
		"90 180: 1 1 1",
		"Unit turn 90° off the arm", "elementary", []string{
			"elementary: Yes: it is one pattern, a unit turn 90° off the arm, and nothing jumps.",
			"broad: No: it is only one pattern, a unit turn 90° off the arm, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 0 1",
		"Carried prop", "elementary", []string{
			"elementary: Yes: it is one pattern, a carried prop, and nothing jumps.",
			"broad: No: it is only one pattern, a carried prop, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 3 1",
		"Two-petal in-spin flower", "elementary", []string{
			"elementary: Yes: it is one pattern, a two-petal in-spin flower, and nothing jumps.",
			"broad: No: it is only one pattern, a two-petal in-spin flower, and a CAP needs two.",
		},
	},
	{
		"0 0: 1 -1 1",
		"Cateye", "elementary", []string{
			"elementary: Yes: it is one pattern, a cateye, and nothing jumps.",
			"broad: No: it is only one pattern, a cateye, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 -2 1",
		"Triquetra", "elementary", []string{
			"elementary: Yes: it is one pattern, a triquetra, and nothing jumps.",
			"broad: No: it is only one pattern, a triquetra, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 -3 1; 1 -3 2",
		"Four-petal antispin flower", "elementary", []string{
			"elementary: Yes: both pieces belong to one pattern, a four-petal antispin flower, and nothing jumps.",
			"broad: No: it is only one pattern, a four-petal antispin flower, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 -7 1",
		"Eight-petal antispin flower", "elementary", []string{
			"elementary: Yes: it is one pattern, an eight-petal antispin flower, and nothing jumps.",
			"broad: No: it is only one pattern, an eight-petal antispin flower, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 5/2 1",
		"Three-petal in-spin star flower", "elementary", []string{
			"elementary: Yes: it is one pattern, a three-petal in-spin star flower, and nothing jumps.",
			"broad: No: it is only one pattern, a three-petal in-spin star flower, and a CAP needs two.",
		},
	},
	{
		"90 90: 2 -3 1/2",
		"Five-petal antispin star flower", "elementary", []string{
			"elementary: Yes: it is one pattern, a five-petal antispin star flower, and nothing jumps.",
			"broad: No: it is only one pattern, a five-petal antispin star flower, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 -3/2 1/3; 1 -3/2 2/3",
		"Five-petal antispin star flower", "elementary", []string{
			"elementary: Yes: both pieces belong to one pattern, a five-petal antispin star flower, and nothing jumps.",
			"broad: No: it is only one pattern, a five-petal antispin star flower, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 2 1 oval=0.6,0.3,20",
		"Elliptical path of ratio 2", "elementary", []string{
			"elementary: Yes: it is one pattern, an elliptical path of ratio 2, and nothing jumps.",
			"broad: No: it is only one pattern, an elliptical path of ratio 2, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 1 1 oval=0.6,0.6,20",
		"Extension", "elementary", []string{
			"elementary: Yes: it is one pattern, extension, and nothing jumps.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 90: 0 2 1 point",
		"Static spin", "elementary", []string{
			"elementary: Yes: it is one pattern, static spin, and nothing jumps.",
			"broad: No: it is only one pattern, static spin, and a CAP needs two.",
		},
	},
	{
		"90 90: 0 2 1; 0 3 1/2 point c=0,0.6",
		"Static spin", "elementary", []string{
			"elementary: Yes: both pieces belong to one pattern, static spin, and nothing jumps.",
			"broad: No: it is only one pattern, static spin, and a CAP needs two.",
		},
	},
	{
		"90 90: 0 0 1 point",
		"Held still", "elementary", []string{
			"elementary: Yes: it is one pattern, held still, and nothing jumps.",
			"broad: No: it is only one pattern, held still, and a CAP needs two.",
		},
	},
	{
		"90 90: 0 1 1 point swing=50",
		"Pendulum", "elementary", []string{
			"elementary: Yes: it is one pattern, a pendulum, and nothing jumps.",
			"broad: No: it is only one pattern, a pendulum, and a CAP needs two.",
		},
	},
	{
		"0 0: 1 1 1 line=0",
		"Linear extension", "elementary", []string{
			"elementary: Yes: it is one pattern, linear extension, and nothing jumps.",
			"broad: No: it is only one pattern, linear extension, and a CAP needs two.",
			"diamond: No: the hand turns at two places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 1 1/2 line=0; -1 1 1/2 line=0",
		"Linear extension", "elementary", []string{
			"elementary: Yes: both pieces belong to one pattern, linear extension, and nothing jumps.",
			"broad: No: it is only one pattern, linear extension, and a CAP needs two.",
			"diamond: No: the hand turns at two places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 1 1/2 line=0; 1 1 1/2 line=180",
		"Linear extension", "elementary", []string{
			"elementary: Yes: both pieces belong to one pattern, linear extension, and nothing jumps.",
			"broad: No: it is only one pattern, linear extension, and a CAP needs two.",
			"diamond: No: the hand turns at two places, and a diamond has four corners.",
		},
	},
	{
		"0 180: 1 1 1 line=0",
		"Linear isolation", "elementary", []string{
			"elementary: Yes: it is one pattern, linear isolation, and nothing jumps.",
			"broad: No: it is only one pattern, linear isolation, and a CAP needs two.",
			"diamond: No: the hand turns at two places, and a diamond has four corners.",
		},
	},
	{
		"0 90: 1 1 1 line=0",
		"Linear in-between", "elementary", []string{
			"elementary: Yes: it is one pattern, linear in-between, and nothing jumps.",
			"broad: No: it is only one pattern, linear in-between, and a CAP needs two.",
			"diamond: No: the hand turns at two places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 3 1 line=0",
		"Linear path of ratio 3", "elementary", []string{
			"elementary: Yes: it is one pattern, a linear path of ratio 3, and nothing jumps.",
			"broad: No: it is only one pattern, a linear path of ratio 3, and a CAP needs two.",
			"diamond: No: the hand turns at two places, and a diamond has four corners.",
		},
	},
	// Played there and back: nothing jumps, though a tethered prop cannot.
	{
		"90 90: 1 1 1/2; -1 -1 1/2",
		"Extension, there and back", "elementary", []string{
			"elementary: Yes: it is one pattern, extension, played there and back.",
			"broad: No: it is only one pattern, extension, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 -2 1/2; -1 2 1/2",
		"Triquetra, there and back", "elementary", []string{
			"elementary: Yes: it is one pattern, a triquetra, played there and back.",
			"broad: No: it is only one pattern, a triquetra, and a CAP needs two.",
		},
	},
	{
		"90 90: 1 0 1/2; -1 0 1/2",
		"Carried prop, there and back", "elementary", []string{
			"elementary: Yes: it is one pattern, a carried prop, played there and back.",
			"broad: No: it is only one pattern, a carried prop, and a CAP needs two.",
		},
	},
	// Never closes, or does not join up.
	{
		"90 90: 1 1 1/2",
		"Extension; never closes, the hand ends a round 1.2 m away", "", []string{
			"elementary: No: after piece 1 the hand jumps by 1.2 m.",
			"broad: No: it never closes; the hand ends a round 1.2 m from where it began.",
		},
	},
	{
		"90 90: 1 1 1/2; 1 -3 1/4",
		"Extension and four-petal antispin flower; never closes, the hand ends a round 0.849 m away", "", []string{
			"elementary: No: piece 1 is extension and piece 2 is a four-petal antispin flower.",
			"broad: No: it never closes; the hand ends a round 0.849 m from where it began.",
		},
	},
	{
		"90 90: 1 1 1 prop@90; 1 1 1 prop@100",
		"CAP of extension and unit turn 10° off the arm, broad sense; not joined up: after piece 1 the prop jumps by 10°", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a unit turn 10° off the arm.",
			"strict: No: all pieces are slices of flowers, but the hand never changes its direction.",
		},
	},
	{
		"90 90: 1 1 1 prop@90; 1 1 1/2",
		"Extension; never closes, the hand ends a round 1.2 m away", "", []string{
			"elementary: No: after piece 2 the hand jumps by 1.2 m.",
			"broad: No: it never closes; the hand ends a round 1.2 m from where it began.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 3 1/2 prop@300",
		"C-cap of extension and four-petal antispin flower, strict sense; not joined up: after piece 1 the prop jumps by 30°", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/2; 1 1 1/2 arm@90",
		"Extension and isolation; never closes, the hand ends a round 1.2 m away", "", []string{
			"elementary: No: piece 1 is extension and piece 2 is isolation.",
			"broad: No: it never closes; the hand ends a round 1.2 m from where it began.",
		},
	},
	// The prop is not back after a round.
	{
		"90 90: 1 1 1; 0 1 1/2",
		"CAP of extension, isolation and static spin, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is static spin.",
			"strict: No: in piece 2 the hand stays where it is, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 2 1/2",
		"C-cap of extension, isolation and triquetra, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1/2 1/2 line=0",
		"CAP of linear path of ratio 1/2 standing different ways, broad sense", "broad", []string{
			"broad: Yes: it closes, and round 2 is another pattern than the first.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 11/5 1/2",
		"CAP of unit turn (another each round) and 16-petal antispin star flower, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a 16-petal antispin star flower.",
			"strict: No: piece 2 is a star, whose ratio is a fraction, and this sense takes flowers only.",
		},
	},
	{
		"0 0: 1 0 1; 1 1/7 1",
		"CAP of carried prop (another each round) and six-petal in-spin star flower, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is a carried prop and piece 2 is a six-petal in-spin star flower.",
			"strict: No: in piece 1 the prop does not turn, and this sense takes flowers only.",
		},
	},
	// One name, and yet two patterns.
	{
		"0 0: 1 1 1; 1 1 1 r=0.3 c=0.3,0",
		"CAP of extension in different places, broad sense", "broad", []string{
			"broad: Yes: it closes; pieces 1 and 2 are both extension, but the hand goes along another path.",
			"strict: No: all pieces are slices of flowers, but the hand never changes its direction.",
		},
	},
	{
		"0 0: 1 -2 1 prop@0; 1 -2 1 prop@90",
		"CAP of triquetra standing different ways, broad sense; not joined up: after piece 1 the prop jumps by 90°", "broad", []string{
			"broad: Yes: it closes; pieces 1 and 2 are both triquetra, but the prop points another way.",
			"strict: No: all pieces are slices of flowers, but the hand never changes its direction.",
		},
	},
	{
		"0 0: 2 5 1; 4 7 1",
		"CAP of three-petal in-spin star flower standing different ways, broad sense", "broad", []string{
			"broad: Yes: it closes; pieces 1 and 2 are both three-petal in-spin star flower, but the prop turns more in one.",
			"strict: No: piece 1 is a star, whose ratio is a fraction, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 0 1 1 point swing=40; 0 1 1 point swing=60",
		"CAP of pendulum standing different ways, broad sense; not joined up: after piece 1 the prop jumps by 20°", "broad", []string{
			"broad: Yes: it closes; pieces 1 and 2 are both pendulum, but one swings wider.",
			"strict: No: in piece 1 the prop only swings, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 0 1 1 swing=40; 1 1 1 swing=40",
		"CAP of pendulum standing different ways, broad sense", "broad", []string{
			"broad: Yes: it closes; pieces 1 and 2 are both pendulum, but the hand moves in another way.",
			"strict: No: in piece 1 the prop only swings, and this sense takes flowers only.",
		},
	},
}

// widest is how many letters a clause may have, so that a phone shows it in
// three lines.
const widest = 120

func TestGlossary(t *testing.T) {
	for _, g := range glossary {
		w := judge(lane(g.lane))
		defs := words.English.Definitions(&w)
		if got := words.English.LaneLine(&w); got != g.line {
			t.Errorf("%s: is %q, want %q", g.lane, got, g.line)
		}
		if got := yeses(defs); got != g.yes {
			t.Errorf("%s: yes of %q, want %q", g.lane, got, g.yes)
		}
		for _, want := range g.because {
			name, clause, _ := strings.Cut(want, ": ")
			d := defs[slices.Index(short, name)]
			if d.Because != clause {
				t.Errorf("%s: %s: %q, want %q", g.lane, d.Name, d.Because, clause)
			}
		}
		for _, d := range defs {
			if n := utf8.RuneCountInString(d.Because); n > widest {
				t.Errorf("%s: %s: %q has %d letters, want %d at most", g.lane, d.Name, d.Because, n, widest)
			}
		}
	}
}

func TestAloud(t *testing.T) {
	c := judge(lane("90 90: 1 1 1/2; -1 3 1/2"))
	e := judge(lane("90 90: 1 1 1"))
	want := "C-cap of extension and four-petal antispin flower, strict sense." +
		" Elementary? No: piece 1 is extension and piece 2 is a four-petal antispin flower." +
		" CAP (broad)? Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower." +
		" CAP (strict)? Yes: all pieces are slices of flowers, and the hand turns back after piece 1." +
		" C-cap? Yes: the hand goes to and fro on one arc of one circle." +
		" S-cap? No: the hand stays on one circle, and an S needs two." +
		" Diamond? No: in piece 1 the hand does not go straight."
	if got := words.English.LaneAloud(&c); got != want {
		t.Errorf("LaneAloud = %q, want %q", got, want)
	}
	got := words.English.HandsAloud(&e, &e, naming.Ruling{Clause: naming.HandsAlike})
	for _, part := range []string{
		"Both hands: extension. Hybrid? No: both hands do the same pattern at all times. Left hand. Elementary? Yes: ",
		" Right hand. Elementary? Yes: it is one pattern, extension, and nothing jumps.",
	} {
		if !strings.Contains(got, part) {
			t.Errorf("HandsAloud = %q, want %q in it", got, part)
		}
	}
}
