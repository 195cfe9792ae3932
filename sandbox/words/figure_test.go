package words

import (
	"fmt"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
)

// flower is a figure with petals, in-spin or antispin.
func flower(kind naming.Kind, spin naming.Spin, petals int64) naming.Figure {
	return naming.Figure{Kind: kind, Spin: spin, HasPetals: true, Petals: frac.Int(petals)}
}

func ratio(kind naming.Kind, num, den int64) naming.Figure {
	return naming.Figure{Kind: kind, HasRatio: true, Ratio: frac.New(num, den)}
}

// TestName: the trade's words (common practice).
func TestName(t *testing.T) {
	for _, tt := range []struct {
		f    naming.Figure
		want string
	}{
		{flower(naming.Flower, naming.SpinIn, 1), "one-petal in-spin flower"},
		{flower(naming.Flower, naming.SpinIn, 2), "two-petal in-spin flower"},
		{flower(naming.Flower, naming.SpinIn, 3), "three-petal in-spin flower"},
		{flower(naming.Flower, naming.SpinAnti, 2), "two-petal antispin flower, cateye"},
		{flower(naming.Flower, naming.SpinAnti, 3), "three-petal antispin flower, triquetra"},
		{flower(naming.Flower, naming.SpinAnti, 4), "four-petal antispin flower"},
		{flower(naming.Flower, naming.SpinAnti, 12), "twelve-petal antispin flower"},
		{flower(naming.Flower, naming.SpinAnti, 13), "13-petal antispin flower"},
		{flower(naming.Flower, naming.SpinIn, 63), "63-petal in-spin flower"},
		{flower(naming.Star, naming.SpinIn, 3), "three-petal in-spin star flower"},
		{flower(naming.Star, naming.SpinAnti, 2), "two-petal antispin star flower"},
		{flower(naming.Star, naming.SpinAnti, 1_000_001), "1000001-petal antispin star flower"},
		{naming.Figure{Kind: naming.Extension}, "extension"},
		{naming.Figure{Kind: naming.Isolation}, "isolation"},
		{naming.Figure{Kind: naming.UnitTurn, Offset: 90}, "unit turn, 90° off the arm"},
		{naming.Figure{Kind: naming.UnitTurn, Offset: -12.54}, "unit turn, −12.5° off the arm"},
		{naming.Figure{Kind: naming.Carried}, "carried prop"},
		{naming.Figure{Kind: naming.StaticSpin}, "static spin"},
		{naming.Figure{Kind: naming.HeldStill}, "held still"},
		{naming.Figure{Kind: naming.LinearExtension}, "linear extension"},
		{naming.Figure{Kind: naming.LinearIsolation}, "linear isolation"},
		{naming.Figure{Kind: naming.LinearBetween}, "linear, between"},
		{ratio(naming.LinearOther, 2, 1), "linear hand path, ratio 2"},
		{ratio(naming.LinearOther, -7, 3), "linear hand path, ratio −7/3"},
		{ratio(naming.EllipsePath, 3, 1), "elliptical hand path, ratio 3"},
		{ratio(naming.EllipsePath, -1, 2), "elliptical hand path, ratio −1/2"},
		{naming.Figure{Kind: naming.Pendulum}, "pendulum"},
	} {
		if got := English.Name(tt.f); got != tt.want {
			t.Errorf("Name(%+v) = %q, want %q", tt.f, got, tt.want)
		}
	}
}

// TestNameOfEveryKind: each kind has a name, in lower case, with all its places
// filled, at whatever spin.
func TestNameOfEveryKind(t *testing.T) {
	for kind := naming.Flower; kind <= naming.Pendulum; kind++ {
		for spin := naming.SpinIn; spin <= naming.SpinSwing; spin++ {
			for _, petals := range []int64{0, 1, 2, 3, 4, 12, 13, 128} {
				f := flower(kind, spin, petals)
				f.HasRatio, f.Ratio, f.Offset = true, frac.New(-22, 7), 12.5
				what := fmt.Sprintf("Name(kind %d, spin %d, %d petals)", kind, spin, petals)
				got := English.Name(f)
				written(t, what, got)
				if r, _ := utf8.DecodeRuneInString(got); unicode.IsUpper(r) {
					t.Errorf("%s = %q, want lower case", what, got)
				}
			}
		}
	}
}

func TestSpinModeSide(t *testing.T) {
	for spin, want := range map[naming.Spin]string{
		naming.SpinIn: "in", naming.SpinAnti: "anti", naming.SpinUnit: "unit", naming.SpinCarried: "carried",
		naming.SpinLine: "line", naming.SpinEllipse: "ellipse", naming.SpinStatic: "static", naming.SpinSwing: "swing",
	} {
		if got := English.Spin(spin); got != want {
			t.Errorf("Spin(%d) = %q, want %q", spin, got, want)
		}
	}
	for mode, want := range map[naming.Mode]string{naming.NoMode: "", naming.Diamond: "diamond", naming.Box: "box"} {
		if got := English.Mode(mode); got != want {
			t.Errorf("Mode(%d) = %q, want %q", mode, got, want)
		}
	}
	for side, want := range map[engine.Side][2]string{engine.Left: {"left", "L"}, engine.Right: {"right", "R"}} {
		if got := [2]string{English.Side(side), English.Letter(side)}; got != want {
			t.Errorf("Side, Letter(%d) = %q, want %q", side, got, want)
		}
	}
}

func TestPieceName(t *testing.T) {
	f := naming.Figure{Kind: naming.Extension}
	if got, want := English.PieceName(engine.Right, 0, 2, f), "Right hand, piece 1 of 2: extension"; got != want {
		t.Errorf("PieceName = %q, want %q", got, want)
	}
	if got, want := English.PieceName(engine.Left, 9999, 10_000, f), "Left hand, piece 10000 of 10000: extension"; got != want {
		t.Errorf("PieceName = %q, want %q", got, want)
	}
	if got, want := English.PieceTag(engine.Left, 2, 12), "L · 3 of 12"; got != want {
		t.Errorf("PieceTag = %q, want %q", got, want)
	}
	if got := English.PieceName(engine.Left, 0, 1, f); strings.Contains(got, "%") {
		t.Errorf("PieceName = %q, want every place filled", got)
	}
}

// A program reads a ratio as the file writes it; a person reads a minus sign.
func TestPlainName(t *testing.T) {
	f := naming.Figure{Kind: naming.LinearOther, HasRatio: true, Ratio: frac.New(-1234567, 7654321)}
	if got, want := English.PlainName(f), "linear hand path, ratio -1234567/7654321"; got != want {
		t.Errorf("PlainName = %q, want %q", got, want)
	}
	f.Ratio = frac.New(-1, 2)
	if got, want := English.Name(f), "linear hand path, ratio −1/2"; got != want {
		t.Errorf("Name = %q, want %q", got, want)
	}
}
