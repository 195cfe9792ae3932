package words_test

import (
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/sandbox/words"
)

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
