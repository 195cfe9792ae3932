package words_test

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/sandbox/words"
)

// The definitions are the project's own, each word of them in the trade's
// sense; which patterns are extensions, C-caps, S-caps, triquetras and so on
// is common practice. Read it as a glossary: a pattern, what it is called,
// the definitions that say yes, and the clauses that decided.
var glossary = []struct {
	lane, line, yes string
	because         []string // definition: clause
}{
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
	// CAPs in the broad sense only.
	{
		"180 0: 1/2 -3/2 1 beats=4; 1/2 -1/2 1 line=0",
		"CAP of four-petal antispin flower and linear isolation, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is a four-petal antispin flower and piece 2 is linear isolation.",
			"strict: No: piece 2 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: in piece 1 the hand does not go straight.",
		},
	},
	{
		"90 90: 1 1 1; 1 3 1",
		"CAP of extension and two-petal in-spin flower, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a two-petal in-spin flower.",
			"strict: No: all pieces are slices of flowers, but the hand never changes its direction.",
		},
	},
	{
		"90 90: 1 1 1; 1 -3 1",
		"CAP of extension and four-petal antispin flower, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower.",
			"strict: No: all pieces are slices of flowers, but the hand never changes its direction.",
		},
	},
	{
		"90 90: 1 1 1; 0 1 1 point c=0,0.6",
		"CAP of extension and static spin, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is static spin.",
			"strict: No: in piece 2 the hand stays where it is, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1; 0 0 1 point c=0,0.6",
		"CAP of extension and held still, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is held still.",
			"strict: No: in piece 2 nothing moves, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 3/2 1/2",
		"CAP of extension, unit turn 90° off the arm, isolation and more, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a five-petal antispin star flower.",
			"strict: No: piece 2 is a star, whose ratio is a fraction, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 0 1/2",
		"CAP of extension, isolation and carried prop, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a carried prop.",
			"strict: No: in piece 2 the prop does not turn, and this sense takes flowers only.",
		},
	},
	{
		"0 0: 1 1 1; 1 1 1 c=1.2,0 arm@180",
		"CAP of extension and isolation, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: from piece 1 on the hand goes all the way round its circle.",
		},
	},
	{
		"90 90: 1 1 1/2 oval=0.6,0.4,0; -1 3 1/2 oval=0.6,0.4,0",
		"CAP of elliptical path of ratio 1 and elliptical path of ratio −3, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is an elliptical path of ratio 1 and piece 2 is an elliptical path of ratio −3.",
			"strict: No: in piece 1 the hand goes along an ellipse, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 3 1/2; 0 1 1 point c=0,0.6 swing=20",
		"CAP of extension, four-petal antispin flower and pendulum, broad sense; not joined up: after piece 2 the prop jumps by 160°", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower.",
			"strict: No: in piece 3 the prop only swings, and this sense takes flowers only.",
		},
	},
	// CAPs in the strict sense, without a shape.
	{
		"0 0: 1 1 1; -1 3 1 c=1.2,0 arm@180",
		"CAP of extension and four-petal antispin flower, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the arm reverses after piece 1.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: from piece 1 on the hand goes all the way round its circle.",
		},
	},
	{
		"90 90: 1 1 1; -1 3 1",
		"CAP of extension and four-petal antispin flower, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: from piece 1 on the hand goes all the way round its circle.",
			"S: No: from piece 1 on the hand goes all the way round its circle.",
		},
	},
	{
		"90 90: 1 1 3/4; -1 3 1/4; 1 1 1/4; -1 3 3/4",
		"CAP of extension and four-petal antispin flower, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: the way that begins with piece 2 is not as long as the way before it.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"180 180: 1 1 1/2 c=-0.6,0; 1 1 1/2 c=0.6,0 arm@180; -1 3 1/2 c=0.6,0; -1 3 1/2 c=-0.6,0 arm@360",
		"CAP of extension, isolation and four-petal antispin flower, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the hand sweeps one arc before it turns back, and an S has two.",
		},
	},
	// C-caps.
	{
		"90 90: 1 1 1/2; -1 3 1/2",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/4; -1 3 1/4",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 3/4; -1 3 3/4",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 270: 1 1 1/2 r=0.3; -1 3 1/2 r=0.3 beats=7",
		"C-cap of isolation and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 3 1/2; -1 5 1/2",
		"C-cap of two-petal in-spin flower and six-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 -2 1/2; -1 -2 1/2",
		"C-cap of triquetra and one-petal in-spin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"180 180: 1 1 1/4; -1 3 1/2; 1 1 1/4",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/4; 1 1 1/4 beats=3; -1 3 1/8; -1 3 3/8",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/4; 1 -3 1/4; -1 -1 1/4; -1 3 1/4",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 3 1/2; 1 1 1/2; -1 5 1/2",
		"C-cap of extension, four-petal antispin flower and six-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/2 end; -1 2 1/2 start; 1 1 1/2 end; -1 2 1/2 start",
		"C-cap of extension, triquetra and isolation, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/2 oval=0.6,0.6,30; -1 3 1/2",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	// S-caps.
	{
		"180 180: 1 1 1/2 r=0.3 c=-0.3,0; -1 2 1/2 r=0.3 c=0.3,0 arm@180; 1 1 1/2 r=0.3 c=0.3,0; -1 2 1/2 r=0.3 c=-0.3,0 arm@0",
		"S-cap of extension and triquetra, strict sense", "broad strict S", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: Yes: the hand sweeps two arcs that bend opposite ways, to and fro.",
		},
	},
	{
		"180 90: -1 2 1/2 r=0.3 c=0.3,0; 1 1 1/2 r=0.3 c=0.3,0; -1 2 1/2 r=0.3 c=-0.3,0 arm@0; 1 1 1/2 r=0.3 c=-0.3,0",
		"S-cap of triquetra and unit turn 90° off the arm, strict sense", "broad strict S", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: piece 3 lies on another circle than piece 1.",
			"S: Yes: the hand sweeps two arcs that bend opposite ways, to and fro.",
		},
	},
	{
		"270 270: 1 1 1/4 r=0.3 c=-0.3,0; -1 2 1/2 r=0.3 c=0.3,0 arm@180; 1 1 1/2 r=0.3 c=0.3,0; -1 2 1/2 r=0.3 c=-0.3,0 arm@0; 1 1 1/4 r=0.3 c=-0.3,0",
		"S-cap of extension and triquetra, strict sense", "broad strict S", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: No: piece 4 lies on another circle than piece 2.",
			"S: Yes: the hand sweeps two arcs that bend opposite ways, to and fro.",
		},
	},
	// Two arcs, and yet no S: they bend one way; four arcs; no way back.
	{
		"180 180: 1 1 1/2 r=0.3 c=-0.3,0; 1 3 1/4 r=0.3 c=0,0.3 arm@270; -1 1 1/4 r=0.3 c=0,0.3; -1 1 1/2 r=0.3 c=-0.3,0 arm@360",
		"CAP of extension, two-petal in-spin flower and cateye, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the arcs of pieces 1 and 2 bend the same way.",
		},
	},
	{
		"180 180: 1 1 1/2 r=0.3 c=-0.3,0; -1 2 1/2 r=0.3 c=0.3,0 arm@180; 1 1 1/2 r=0.3 c=0.9,0 arm@180; -1 2 1/2 r=0.3 c=0.9,0; 1 1 1/2 r=0.3 c=0.3,0 arm@0; -1 2 1/2 r=0.3 c=-0.3,0 arm@0",
		"CAP of extension, isolation and triquetra, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 3.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the hand sweeps three arcs before it turns back, and an S has two.",
		},
	},
	{
		"180 180: 1 1 1/2 r=0.3 c=-0.3,0; -1 2 1/2 r=0.3 c=0.3,0 arm@180; 1 1 1/2 r=0.4 c=0.2,0 arm@0; -1 2 1/2 r=0.2 c=-0.4,0 arm@0",
		"CAP of extension and triquetra, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the hand does not come back along the arcs by which it went.",
		},
	},
	{
		"45 45: 1 1 3/4 r=0.70710678119 c=-0.5,0; -1 1 1/4 r=0.70710678119 c=0.5,0 arm@225",
		"CAP of extension and cateye, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the arm reverses after piece 1.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the hand never turns back.",
		},
	},
	// Diamonds.
	{
		"0 0: 1 1 1/2 r=0.25 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; 1 1 1/2 r=0.25 c=0,-0.25 line=180 arm@180; 1 1 1/2 r=0.25 c=0.25,0 line=270 arm@270",
		"Diamond of linear extension, linear in-between and linear isolation", "broad diamond", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: Yes: the hand goes round four equal straight sides with square corners.",
		},
	},
	{
		"0 0: 1 -1 1/2 r=0.25 c=0,0.25 line=0; 0 -1 1/4 c=-0.25,0.25 point; 1 -1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; 0 -1 1/4 c=-0.25,-0.25 point; 1 -1 1/2 r=0.25 c=0,-0.25 line=180 arm@180; 0 -1 1/4 c=0.25,-0.25 point; 1 -1 1/2 r=0.25 c=0.25,0 line=270 arm@270; 0 -1 1/4 c=0.25,0.25 point",
		"Diamond of linear extension and static spin", "broad diamond", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is static spin.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: Yes: the hand goes round four equal straight sides with square corners.",
		},
	},
	{
		"90 90: 1 1 1/4 r=0.25 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; 1 1 1/2 r=0.25 c=0,-0.25 line=180 arm@180; 1 1 1/2 r=0.25 c=0.25,0 line=270 arm@270; 1 1 1/4 r=0.25 c=0,0.25 line=0 arm@0",
		"Diamond of linear extension, linear in-between and linear isolation", "broad diamond", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: Yes: the hand goes round four equal straight sides with square corners.",
		},
	},
	{
		"0 0: 1 1 1/2 r=0.25 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; -1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@270; -1 1 1/2 r=0.25 c=0,0.25 line=0 arm@180",
		"CAP of linear extension and linear in-between, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: the hand turns at three places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 1 1/2 r=0.25 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; 1 1 1/2 r=0.35355339059 line=225 arm@225",
		"CAP of linear extension, linear isolation and linear in-between, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: the hand turns at three places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 1 1/2 r=0.5 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.5,0 line=90 arm@90; 1 1 1/2 r=0.5 c=0,-0.25 line=180 arm@180; 1 1 1/2 r=0.25 c=0.5,0 line=270 arm@270",
		"CAP of linear extension, linear in-between and linear isolation, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: its sides are not equal, or its corners not square.",
		},
	},
	{
		"0 0: 1 1 1/2 r=0.25 c=0.25,0 line=0; 1 1 1/2 r=0.25 c=0,-0.25 line=90 arm@90; 1 1 1/2 r=0.25 c=-0.25,-0.5 line=0 arm@0; 1 1 1/2 r=0.5 c=-0.5,0 line=270 arm@270; 1 1 1/2 r=0.5 c=0,0.5 line=180 arm@180; 1 1 1/2 r=0.25 c=0.5,0.25 line=90 arm@90",
		"CAP of linear extension, linear in-between and linear isolation, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: the hand turns at more than four places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 1 3 line=0",
		"Linear extension", "elementary", []string{
			"elementary: Yes: it is one pattern, linear extension, and nothing jumps.",
			"broad: No: it is only one pattern, linear extension, and a CAP needs two.",
			"diamond: No: the hand turns at two places, and a diamond has four corners.",
		},
	},
	{
		"45 45: 1 1 1/2 r=0.35355339059 c=-0.25,0.25 line=45; 1 1 1/2 r=0.35355339059 c=-0.25,-0.25 line=135 arm@135; 1 1 1/2 r=0.35355339059 c=0.25,-0.25 line=225 arm@225; 1 1 1/2 r=0.35355339059 c=0.25,0.25 line=315 arm@315",
		"Diamond of linear extension, linear in-between and linear isolation", "broad diamond", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: Yes: the hand goes round four equal straight sides with square corners.",
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

// pairs are two hands, left and right, of the notation above.
var pairs = []struct{ left, right, line, clause string }{
	{
		"90 90: 1 1 1", "90 90: 1 1 1 r=0.3",
		"Both hands: extension", "No: both hands do the same pattern at all times.",
	},
	{
		"90 90: -1 -1 1", "270 270: 1 1 2 beats=3",
		"Both hands: extension", "No: both hands do the same pattern at all times.",
	},
	{
		"90 180: 1 1 1", "90 0: 1 1 1",
		"Left unit turn 90° off the arm; right unit turn −90° off the arm", "No: both hands do the same pattern at all times.",
	},
	{
		"0 0: 1 1 1 line=0", "90 90: 1 -1 1 line=90",
		"Both hands: linear extension", "No: both hands do the same pattern at all times.",
	},
	{
		"90 90: 1 1 1", "90 270: 1 1 1",
		"Hybrid: left extension; right isolation", "Yes: left is extension while right is isolation.",
	},
	{
		"90 90: 1 1 1", "90 90: 1 -3 1",
		"Hybrid: left extension; right four-petal antispin flower", "Yes: left is extension while right is a four-petal antispin flower.",
	},
	{
		"90 90: 0 1 1 point swing=40", "90 90: 1 -2 1",
		"Hybrid: left pendulum; right triquetra", "Yes: left is a pendulum while right is a triquetra.",
	},
	{
		"90 90: 1 0 1", "90 90: 1 0 1 line=90",
		"Hybrid: left carried prop; right carried prop", "Yes: both are carried prop, but along paths of different kinds.",
	},
	{
		"90 90: 1 1 1/2; -1 3 1/2", "270 270: 1 1 1/2; -1 3 1/2",
		"Both hands: C-cap of extension and four-petal antispin flower, strict sense", "No: both hands do the same pattern at all times.",
	},
	{ // one C, the parts changed over
		"90 90: 1 -3 1/2; -1 -1 1/2", "90 90: 1 1 1/2; -1 3 1/2",
		"Hybrid: both hands C-cap of extension and four-petal antispin flower, strict sense, but not the same part at once",
		"Yes: both share their patterns, but left is a four-petal antispin flower while right is extension.",
	},
	{
		"90 90: 1 1 1/2; -1 3 1/2", "90 90: 1 1 1/2; -1 5 1/2",
		"Hybrid: left C-cap of extension and four-petal antispin flower, strict sense; right C-cap of extension and six-petal antispin flower, strict sense",
		"Yes: left is a four-petal antispin flower while right is a six-petal antispin flower, from beat 1.",
	},
	{ // the same in unequal rounds
		"90 90: 1 1 1/2; -1 3 1/2", "90 90: 1 1 1/2 beats=2; -1 3 1/2 beats=2",
		"Hybrid: both hands C-cap of extension and four-petal antispin flower, strict sense, but not the same part at once",
		"Yes: both share their patterns, but left is a four-petal antispin flower while right is extension.",
	},
	{ // in round 2 the left hand's extension is isolation
		"90 90: 1 1 1/2; -1 2 1/2", "90 90: 1 1 1/2; -1 2 1/2 prop@270",
		"Hybrid: left C-cap of extension, isolation and triquetra, strict sense; right C-cap of extension and triquetra, strict sense; not joined up: after piece 2 the prop jumps by 180°",
		"Yes: both share their patterns, but left is isolation while right is extension.",
	},
}

func TestHybridGlossary(t *testing.T) {
	for _, p := range pairs {
		l, r := lane(p.left), lane(p.right)
		left, right := judge(l), judge(r)
		hybrid := naming.Hybrid(engine.NewTrack(l), engine.NewTrack(r))
		if got := words.English.HandsLine(&left, &right, hybrid); got != p.line {
			t.Errorf("%s with %s: is %q, want %q", p.left, p.right, got, p.line)
		}
		d := words.English.HybridDefinition(hybrid)
		if d.Because != p.clause || d.Name != "Hybrid" || d.Yes != strings.HasPrefix(p.clause, "Yes") {
			t.Errorf("%s with %s: %q, want %q", p.left, p.right, d.Because, p.clause)
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
