package words

import (
	"fmt"
	"strings"
	"testing"

	"whorlbench/engine/naming"
)

// TestEveryClauseHasWords: whatever decided, yes or no, for one piece or many,
// there is a whole sentence for it.
func TestEveryClauseHasWords(t *testing.T) {
	for c := naming.NeverCloses; c <= naming.NoneBeside; c++ {
		for kind := naming.Flower; kind <= naming.Pendulum; kind++ {
			for d := naming.NoDifference; d <= naming.DiffersInPhase; d++ {
				for _, yes := range []bool{false, true} {
					for count := range 20 {
						f := flower(kind, naming.SpinAnti, int64(count))
						g := flower(naming.Flower, naming.SpinIn, int64(count/2))
						r := naming.Ruling{
							Yes: yes, Clause: c, Other: count, Figures: [2]naming.Figure{f, g}, Difference: d,
							Round: count, Count: count, Gap: 0.25, Beat: float64(count),
						}
						if count%3 == 0 {
							r.Figures[1] = f
						}
						def := English.definition(DefBroad, r)
						what := fmt.Sprintf("clause %d of kind %d, difference %d, count %d", c, kind, d, count)
						written(t, what, def.Because)
						if want := map[bool]string{true: "Yes: ", false: "No: "}[yes]; !strings.HasPrefix(def.Because, want) || !strings.HasSuffix(def.Because, ".") || def.Yes != yes {
							t.Fatalf("%s = %q, want a sentence that begins with %q", what, def.Because, want)
						}
					}
				}
			}
		}
	}
}

// TestArticles: common English.
func TestArticles(t *testing.T) {
	for _, test := range []struct {
		f    naming.Figure
		want string
	}{
		{flower(naming.Flower, naming.SpinAnti, 3), "a triquetra"},
		{flower(naming.Flower, naming.SpinAnti, 2), "a cateye"},
		{flower(naming.Flower, naming.SpinIn, 1), "a one-petal in-spin flower"},
		{flower(naming.Flower, naming.SpinIn, 8), "an eight-petal in-spin flower"},
		{flower(naming.Flower, naming.SpinAnti, 11), "an eleven-petal antispin flower"},
		{flower(naming.Star, naming.SpinAnti, 18), "an 18-petal antispin star flower"},
		{flower(naming.Star, naming.SpinAnti, 16), "a 16-petal antispin star flower"},
		{flower(naming.Star, naming.SpinAnti, 83), "an 83-petal antispin star flower"},
		{naming.Figure{Kind: naming.UnitTurn, Offset: -90}, "a unit turn −90° off the arm"},
		{ratio(naming.EllipsePath, -3, 1), "an elliptical path of ratio −3"},
		{ratio(naming.LinearOther, -3, 1), "a linear path of ratio 3"},
		{naming.Figure{Kind: naming.Extension}, "extension"},
		{naming.Figure{Kind: naming.LinearBetween}, "linear in-between"},
		{naming.Figure{Kind: naming.HeldStill}, "held still"},
	} {
		if got := English.one(test.f); got != test.want {
			t.Errorf("one(%+v) = %q, want %q", test.f, got, test.want)
		}
	}
}
