package presets_test

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"whorlbench/presets"
)

// file fills a small good file's places; an empty string leaves one out.
type file struct{ root, performer, hand, piece string }

// The good file has its root keys in lines 1 to 3, its [performer], if any,
// from line 5, else [[hand]] in line 5 and [[hand.piece]] in line 8.
func (f file) String() string {
	var b strings.Builder
	b.WriteString(or(f.root, "format = 1\ntitle = \"T\"\ntempo = 120\n"))
	if f.performer != "" {
		b.WriteString("\n[performer]\n" + f.performer)
	}
	b.WriteString("\n[[hand]]\n" + or(f.hand, "side = \"right\"\n"))
	b.WriteString("\n[[hand.piece]]\n" + or(f.piece, "arm = 1\nprop = 1\ncycles = 1\n"))
	return b.String()
}

func or(s, otherwise string) string {
	if s == "" {
		return otherwise
	}
	return s
}

func root(s string) string      { return file{root: s}.String() }
func performer(s string) string { return file{performer: s}.String() }
func hand(s string) string      { return file{hand: "side = \"right\"\n" + s}.String() }
func piece(s string) string     { return file{piece: s}.String() }
func more(s string) string      { return piece("arm = 1\nprop = 1\ncycles = 1\n" + s) }
func one(arm string) string     { return piece("arm = " + arm + "\nprop = 1\ncycles = 1\n") }

const (
	turns    = `a number or a fraction such as "1/3" with a denominator up to 1000000, -64 to 64`
	rootKeys = "format, title, notes, tempo, performer, hand"
)

// at writes the beginning of an expected line.
func at(line, col int, where string) string {
	return fmt.Sprintf("x.toml:%d:%d: %s: ", line, col, where)
}

// badFiles is every way of being refused that has a text of its own.
var badFiles = []struct {
	name string
	in   string
	want string // one problem a line
}{
	// Whole files.
	{"empty", "", "x.toml:1:1: the file is empty"},
	{"only a byte order mark", "\uFEFF", "x.toml:1:1: the file is empty"},
	{"zero byte", "format = 1\n\x00", "x.toml:2:1: not a text file: a zero byte"},
	{"not UTF-8", "title = \"\u00e9\xff\"", "x.toml:1:11: not a text file: byte 0xFF is not UTF-8"},
	{"not UTF-8 behind a mark for it", "title = \"\uFFFD\xff\"", "x.toml:1:11: not a text file: byte 0xFF is not UTF-8"},
	{"UTF-16", "\xff\xfef\x00o\x00", "x.toml:1:1: not a text file: byte 0xFF is not UTF-8"},
	{"prose", "Once round and back again", "x.toml:1:6: not TOML: expected '=' after key"},
	{"cut off in a value", "format = 1\ntempo = ", "x.toml:2:8: not TOML: expected value, not end of input"},
	{"cut off in a text", "title = \"Half", "x.toml:1:13: not TOML: unterminated basic string"},
	{"cut off in a list", "format = 1\nhand = [", "x.toml:2:8: not TOML: array is incomplete"},
	{"carriage return alone", "format = 1\rtempo = 2", "x.toml:1:11: not TOML: expected newline but got U+000D"},
	{"a syntax error hides what is before it", "colour = 1\ntempo = [1 2]", "x.toml:2:12: not TOML: expected ',' or ']' after array value"},
	{"nothing but a comment", "# later\n", at(1, 1, `key "format"`) + "found nothing, required 1, the only format that is read\n" +
		at(1, 1, `key "title"`) + "found nothing, required a text of 1 to 200 characters\n" +
		at(1, 1, `key "tempo"`) + "found nothing, required 10 to 400\n" +
		at(1, 1, `key "hand"`) + "found nothing, required 1 or 2 tables [[hand]]"},
	{"nested beyond the parser", "a = " + strings.Repeat("[", 20_000), "x.toml:1:10005: not TOML: arrays and inline tables are nested more than the maximum of 10000 levels deep"},

	// The format.
	{"format 2, unknown keys of its own", root("format = 2\nname = \"T\"\n"), at(1, 10, `key "format"`) + "found 2, allowed 1, the only format that is read"},
	{"format as text", root("format = \"1\"\n"), at(1, 10, `key "format"`) + `found the text "1", allowed 1, the only format that is read`},
	{"format as a decimal", root("format = 1.0\n"), at(1, 10, `key "format"`) + "found 1.0, allowed 1, the only format that is read"},

	// Missing keys, each in the table that lacks it.
	{"no format", root("title = \"T\"\ntempo = 120\n"), at(1, 1, `key "format"`) + "found nothing, required 1, the only format that is read"},
	{"no title", root("format = 1\ntempo = 120\n"), at(1, 1, `key "title"`) + "found nothing, required a text of 1 to 200 characters"},
	{"no tempo", root("format = 1\ntitle = \"T\"\n"), at(1, 1, `key "tempo"`) + "found nothing, required 10 to 400"},
	{"no hand", "format = 1\ntitle = \"T\"\ntempo = 120\n", at(1, 1, `key "hand"`) + "found nothing, required 1 or 2 tables [[hand]]"},
	{"no side", file{hand: "plane = \"wall\"\n"}.String(), at(5, 1, `key "hand.side" in hand 1`) + `found nothing, required "left" or "right"`},
	{"no piece", "format = 1\ntitle = \"T\"\ntempo = 120\n  [[ hand ]]\nside = \"left\"\n", at(4, 3, `key "hand.piece" in hand 1`) + "found nothing, required 1 to 10000 tables [[hand.piece]]"},
	{"no arm", piece("prop = 1\ncycles = 1\n"), at(8, 1, `key "hand.piece.arm" in hand 1, piece 1`) + "found nothing, required -64 to 64"},
	{"no prop", piece("arm = 1\ncycles = 1\n"), at(8, 1, `key "hand.piece.prop" in hand 1, piece 1`) + "found nothing, required -64 to 64"},
	{"no cycles", piece("arm = 1\nprop = 1\n"), at(8, 1, `key "hand.piece.cycles" in hand 1, piece 1`) + "found nothing, required more than 0 up to 1000"},
	{"no radius on an ellipse", more("path = \"ellipse\"\n"), at(8, 1, `key "hand.piece.radius" in hand 1, piece 1`) + "found nothing, required two numbers [A, B], each more than 0 up to 5"},

	// Unknown keys, all at once, wrong values between them.
	{"unknown keys everywhere", "colour = 1\nformat = 1\ntitle = \"T\"\ntempo = 5\n[performer]\nheight = 2\n[[hand]]\nside = \"right\"\ngrip = 1\n[[hand.piece]]\narm = 1\nprop = 1\ncycles = 1\nradus = 1\n[lights]\na = 1\n",
		at(1, 1, `key "colour"`) + "found an unknown key, allowed " + rootKeys + "\n" +
			at(4, 9, `key "tempo"`) + "found 5, allowed 10 to 400\n" +
			at(6, 1, `key "performer.height"`) + "found an unknown key, allowed tether, rigid, shoulders, reach, head_mass\n" +
			at(9, 1, `key "hand.grip" in hand 1`) + "found an unknown key, allowed side, plane, offset, centre, tether, arm_at, prop_at, piece\n" +
			at(14, 1, `key "hand.piece.radus" in hand 1, piece 1`) + "found an unknown key, allowed arm, prop, cycles, beats, part, path, radius, centre, tilt, arm_at, prop_at, law, swing, swing_back\n" +
			at(15, 2, `key "lights"`) + "found an unknown key, allowed " + rootKeys},
	{"keys are case sensitive", root("format = 1\ntitle = \"T\"\nTempo = 9\ntempo = 90\n"), at(3, 1, `key "Tempo"`) + "found an unknown key, allowed " + rootKeys},
	{"a key that would break the line", root("format = 1\ntitle = \"T\"\ntempo = 90\n\"a\\nb\" = 1\n"), at(4, 1, `key "a\nb"`) + "found an unknown key, allowed " + rootKeys},

	// Keys and tables written twice.
	{"tempo twice", root("format = 1\ntitle = \"T\"\ntempo = 90\ntempo = 100\n"), at(4, 1, `key "tempo"`) + "found a second time, first in line 3, allowed once"},
	{"performer twice", file{performer: "reach = 1\n[performer]\nreach = 2\n"}.String(), at(7, 2, `key "performer"`) + "found a second time, first in line 5, allowed once"},
	{"a table and a dotted key", root("format = 1\ntitle = \"T\"\ntempo = 90\nperformer.reach = 1\n[performer]\n"), at(5, 2, `key "performer"`) + "found with another meaning in line 4, allowed one"},
	{"a list and a header", root("format = 1\ntitle = \"T\"\ntempo = 90\nhand = []\n"),
		at(4, 8, `key "hand"`) + "found 0, allowed 1 or 2 tables [[hand]]\n" +
			at(6, 3, `key "hand"`) + "found with another meaning in line 4, allowed one\n" +
			at(9, 3, `key "hand"`) + "found with another meaning in line 4, allowed one"},
	{"a key twice between braces", more("centre = {x = 1, x = 2}\n"), at(12, 10, `key "hand.piece.centre" in hand 1, piece 1`) + "found a table, allowed two numbers [x, y], at most 10 m from the origin\n" +
		at(12, 18, `key "x"`) + "found a second time, first in line 12, allowed once"},

	// The root's values.
	{"title empty", root("format = 1\ntitle = \"\"\ntempo = 90\n"), at(2, 9, `key "title"`) + "found 0 characters, allowed a text of 1 to 200 characters"},
	{"title long", root("format = 1\ntitle = \"" + strings.Repeat("é", 201) + "\"\ntempo = 90\n"), at(2, 9, `key "title"`) + "found 201 characters, allowed a text of 1 to 200 characters"},
	{"title a number", root("format = 1\ntitle = 7\ntempo = 90\n"), at(2, 9, `key "title"`) + "found 7, allowed a text of 1 to 200 characters"},
	{"notes long", root("format = 1\ntitle = \"T\"\ntempo = 90\nnotes = \"" + strings.Repeat("n", 10_001) + "\"\n"), at(4, 9, `key "notes"`) + "found 10001 characters, allowed a text of 0 to 10000 characters"},
	{"tempo low", root("format = 1\ntitle = \"T\"\ntempo = 9.9\n"), at(3, 9, `key "tempo"`) + "found 9.9, allowed 10 to 400"},
	{"tempo high", root("format = 1\ntitle = \"T\"\ntempo = 400.5\n"), at(3, 9, `key "tempo"`) + "found 400.5, allowed 10 to 400"},
	{"tempo beyond numbers", root("format = 1\ntitle = \"T\"\ntempo = 1e999\n"), at(3, 9, `key "tempo"`) + "found 1e999, allowed 10 to 400"},
	{"tempo a text", root("format = 1\ntitle = \"T\"\ntempo = \"90\"\n"), at(3, 9, `key "tempo"`) + `found the text "90", allowed a number, 10 to 400`},
	{"tempo a date", root("format = 1\ntitle = \"T\"\ntempo = 2024-06-01\n"), at(3, 9, `key "tempo"`) + "found the date or time 2024-06-01, allowed a number, 10 to 400"},
	{"tempo nan", root("format = 1\ntitle = \"T\"\ntempo = nan\n"), at(3, 9, `key "tempo"`) + "found nan, allowed 10 to 400"},
	{"tempo inf", root("format = 1\ntitle = \"T\"\ntempo = +inf\n"), at(3, 9, `key "tempo"`) + "found +inf, allowed 10 to 400"},

	// The performer.
	{"performer a number", root("format = 1\ntitle = \"T\"\ntempo = 90\nperformer = 1\n"), at(4, 13, `key "performer"`) + "found 1, allowed a table"},
	{"performer's tether", performer("tether = 0.04\n"), at(6, 10, `key "performer.tether"`) + "found 0.04, allowed 0.05 to 3"},
	{"rigid", performer("rigid = 1\n"), at(6, 9, `key "performer.rigid"`) + "found 1, allowed true or false"},
	{"shoulders", performer("shoulders = 1.1\n"), at(6, 13, `key "performer.shoulders"`) + "found 1.1, allowed 0.1 to 1"},
	{"reach", performer("reach = 0\n"), at(6, 9, `key "performer.reach"`) + "found 0, allowed 0.2 to 2"},
	{"head mass", performer("head_mass = 5.1\n"), at(6, 13, `key "performer.head_mass"`) + "found 5.1, allowed 0.01 to 5"},

	// Hands.
	{"a hand in one bracket", "format = 1\ntitle = \"T\"\ntempo = 90\n[hand]\nside = \"left\"\n", at(4, 1, `key "hand"`) + "found a table, allowed 1 or 2 tables [[hand]]"},
	{"a hand that is a number", "format = 1\ntitle = \"T\"\ntempo = 90\nhand = [1]\n", at(4, 9, `key "hand" in hand 1`) + "found 1, allowed a table"},
	{"no hands in a list", "format = 1\ntitle = \"T\"\ntempo = 90\nhand = []\n", at(4, 8, `key "hand"`) + "found 0, allowed 1 or 2 tables [[hand]]"},
	{"a side twice", file{}.String() + "[[hand]]\nside = \"right\"\n[[hand.piece]]\narm = 1\nprop = 1\ncycles = 1\n", at(13, 8, `key "hand.side" in hand 2`) + `found "right" as in hand 1, allowed each side once`},
	{"three hands", file{}.String() + "[[hand]]\nside = \"left\"\n[[hand.piece]]\narm = 1\nprop = 1\ncycles = 1\n[[hand]]\n", at(18, 1, `key "hand"`) + "found 3, allowed 1 or 2 tables [[hand]]"},
	{"side unknown", file{hand: "side = \"both\"\n"}.String(), at(6, 8, `key "hand.side" in hand 1`) + `found the text "both", allowed "left" or "right"`},
	{"plane", hand("plane = \"roof\"\n"), at(7, 9, `key "hand.plane" in hand 1`) + `found the text "roof", allowed "wall", "wheel" or "floor"`},
	{"offset", hand("offset = -10.5\n"), at(7, 10, `key "hand.offset" in hand 1`) + "found -10.5, allowed -10 to 10"},
	{"centre far", hand("centre = [8, 8]\n"), at(7, 10, `key "hand.centre" in hand 1`) + "found [8, 8], allowed two numbers [x, y], at most 10 m from the origin"},
	{"centre nan", hand("centre = [0, nan]\n"), at(7, 10, `key "hand.centre" in hand 1`) + "found [0, nan], allowed two numbers [x, y], at most 10 m from the origin"},
	{"centre of three", hand("centre = [1, 2, 3]\n"), at(7, 10, `key "hand.centre" in hand 1`) + "found a list of 3, allowed two numbers [x, y], at most 10 m from the origin"},
	{"centre of texts", hand("centre = [\"1\", \"2\"]\n"), at(7, 10, `key "hand.centre" in hand 1`) + "found a list of 2, allowed two numbers [x, y], at most 10 m from the origin"},
	{"hand's tether", hand("tether = 3.01\n"), at(7, 10, `key "hand.tether" in hand 1`) + "found 3.01, allowed 0.05 to 3"},
	{"hand's arm_at", hand("arm_at = 36001\n"), at(7, 10, `key "hand.arm_at" in hand 1`) + "found 36001, allowed -36000 to 36000"},
	{"hand's prop_at", hand("prop_at = -36000.1\n"), at(7, 11, `key "hand.prop_at" in hand 1`) + "found -36000.1, allowed -36000 to 36000"},

	// Pieces.
	{"no pieces in a list", "format = 1\ntitle = \"T\"\ntempo = 90\nhand = [{side = \"left\", piece = []}]\n", at(4, 33, `key "hand.piece" in hand 1`) + "found 0, allowed 1 to 10000 tables [[hand.piece]]"},
	{"a piece that is a text", "format = 1\ntitle = \"T\"\ntempo = 90\nhand = [{side = \"left\", piece = [\"arm\"]}]\n", at(4, 34, `key "hand.piece" in hand 1, piece 1`) + `found the text "arm", allowed a table`},
	{"a piece in one bracket", "format = 1\ntitle = \"T\"\ntempo = 90\n[[hand]]\nside = \"left\"\n[hand.piece]\narm = 1\n", at(6, 1, `key "hand.piece" in hand 1`) + "found a table, allowed 1 to 10000 tables [[hand.piece]]"},
	{"10,001 pieces", file{}.String() + strings.Repeat("[[hand.piece]]\n", 10_000), at(8, 1, `key "hand.piece" in hand 1`) + "found 10001, allowed 1 to 10000 tables [[hand.piece]]"},
	{"tables in pieces too many", file{}.String() + strings.Repeat("[[hand.piece]]\n[hand.piece.x]\n", 10_005), at(8, 1, `key "hand.piece" in hand 1`) + "found 10006, allowed 1 to 10000 tables [[hand.piece]]"},
	{"half a million pieces", file{}.String() + strings.Repeat("[[hand.piece]]\n", 500_000), at(8, 1, `key "hand.piece" in hand 1`) + "found 500001, allowed 1 to 10000 tables [[hand.piece]]"},
	{"a million pieces in one line", "format = 1\ntitle = \"T\"\ntempo = 90\nhand = [{side = \"left\", piece = [" + strings.Repeat("{},", 1_000_000) + "]}]\n", at(4, 33, `key "hand.piece" in hand 1`) + "found 1000000, allowed 1 to 10000 tables [[hand.piece]]"},

	{"arm", one("64.5"), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + "found 64.5, allowed -64 to 64"},
	{"arm a little too much", one("64.00000000000000000000001"), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + "found 64.00000000000000000000001, allowed -64 to 64"},
	{"arm true", one("true"), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + "found true, allowed " + turns},
	{"arm a word", one(`"fast"`), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + `found the text "fast", allowed ` + turns},
	{"arm a decimal in quotes", one(`"0.5"`), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + `found the text "0.5", allowed ` + turns},
	{"arm over nothing", one(`"1/0"`), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + `found the text "1/0", allowed ` + turns},
	{"arm over too much", one(`"1/1000001"`), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + `found the text "1/1000001", allowed ` + turns},
	{"arm with blanks", one(`"1 / 3"`), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + `found the text "1 / 3", allowed ` + turns},
	{"arm a fraction out of range", one(`"-193/3"`), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + `found the text "-193/3", allowed -64 to 64`},
	{"arm beyond whole numbers", one("99999999999999999999"), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + "found 99999999999999999999, allowed -64 to 64"},
	{"arm beyond, in base 16", one("0xFFFFFFFFFFFFFFFFF"), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + "found 0xFFFFFFFFFFFFFFFFF, allowed -64 to 64"},
	{"arm of nearly nothing", one("1e-400"), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + "found 1e-400, which cannot be told from 0, allowed -64 to 64"},
	{"arm of many digits", one("0." + strings.Repeat("3", 4000)), at(9, 7, `key "hand.piece.arm" in hand 1, piece 1`) + "found 0." + strings.Repeat("3", 38) + "…, a number of 4002 characters, allowed at most 4000"},
	{"prop", piece("arm = 1\nprop = -65\ncycles = 1\n"), at(10, 8, `key "hand.piece.prop" in hand 1, piece 1`) + "found -65, allowed -64 to 64"},
	{"prop nan", piece("arm = 1\nprop = nan\ncycles = 1\n"), at(10, 8, `key "hand.piece.prop" in hand 1, piece 1`) + "found nan, allowed -64 to 64"},
	{"cycles 0", piece("arm = 1\nprop = 1\ncycles = 0\n"), at(11, 10, `key "hand.piece.cycles" in hand 1, piece 1`) + "found 0, allowed more than 0 up to 1000"},
	{"cycles high", piece("arm = 1\nprop = 1\ncycles = 1001\n"), at(11, 10, `key "hand.piece.cycles" in hand 1, piece 1`) + "found 1001, allowed more than 0 up to 1000"},
	{"cycles infinite", piece("arm = 1\nprop = 1\ncycles = inf\n"), at(11, 10, `key "hand.piece.cycles" in hand 1, piece 1`) + "found inf, allowed more than 0 up to 1000"},
	{"beats", more("beats = -1\n"), at(12, 9, `key "hand.piece.beats" in hand 1, piece 1`) + "found -1, allowed more than 0 up to 10000"},
	{"beats high", more("beats = 10_000.5\n"), at(12, 9, `key "hand.piece.beats" in hand 1, piece 1`) + "found 10_000.5, allowed more than 0 up to 10000"},
	{"part of one", more("part = [0.5]\n"), at(12, 8, `key "hand.piece.part" in hand 1, piece 1`) + "found a list of 1, allowed [from, to] with 0 ≤ from < to ≤ 1"},
	{"part a number", more("part = 0.5\n"), at(12, 8, `key "hand.piece.part" in hand 1, piece 1`) + "found 0.5, allowed [from, to] with 0 ≤ from < to ≤ 1"},
	{"part backwards", more("part = [\"2/3\", 0.5]\n"), at(12, 8, `key "hand.piece.part" in hand 1, piece 1`) + `found [the text "2/3", 0.5], allowed [from, to] with 0 ≤ from < to ≤ 1`},
	{"part of nothing", more("part = [0.5, \"1/2\"]\n"), at(12, 8, `key "hand.piece.part" in hand 1, piece 1`) + `found [0.5, the text "1/2"], allowed [from, to] with 0 ≤ from < to ≤ 1`},
	{"part beyond", more("part = [0, 1.1]\n"), at(12, 12, `key "hand.piece.part" in hand 1, piece 1`) + "found 1.1, allowed 0 to 1"},
	{"part of a list", more("part = [[0], 1]\n"), at(12, 8, `key "hand.piece.part" in hand 1, piece 1`) + `found a list of 1, allowed a number or a fraction such as "1/3" with a denominator up to 1000000, 0 to 1`},
	{"kept time of nearly nothing", more("beats = 1e-300\npart = [0, 1e-300]\n"), at(8, 1, `key "hand.piece.part" in hand 1, piece 1`) + "found a kept time, which cannot be told from 0, allowed a longer one"},
	{"path", more("path = \"square\"\nradius = true\n"), at(12, 8, `key "hand.piece.path" in hand 1, piece 1`) + `found the text "square", allowed "circle", "line", "ellipse" or "point"`},
	{"radius negative", more("radius = -2\n"), at(12, 10, `key "hand.piece.radius" in hand 1, piece 1`) + "found -2, allowed more than 0 up to 5"},
	{"radius 0", more("radius = 0\n"), at(12, 10, `key "hand.piece.radius" in hand 1, piece 1`) + "found 0, allowed more than 0 up to 5"},
	{"radius of a line", more("path = \"line\"\nradius = 5.5\n"), at(13, 10, `key "hand.piece.radius" in hand 1, piece 1`) + "found 5.5, allowed more than 0 up to 5"},
	{"two radii on a circle", more("radius = [1, 1]\n"), at(12, 10, `key "hand.piece.radius" in hand 1, piece 1`) + "found a list of 2, allowed a number, more than 0 up to 5"},
	{"one radius on an ellipse", more("path = \"ellipse\"\nradius = 1\n"), at(13, 10, `key "hand.piece.radius" in hand 1, piece 1`) + "found 1, allowed two numbers [A, B], each more than 0 up to 5"},
	{"an ellipse's flat axis", more("path = \"ellipse\"\nradius = [1, 0]\n"), at(13, 14, `key "hand.piece.radius" in hand 1, piece 1`) + "found 0, allowed more than 0 up to 5"},
	{"a point's radius", more("path = \"point\"\nradius = 0.6\n"), at(13, 10, `key "hand.piece.radius" in hand 1, piece 1`) + "found 0.6, allowed no radius, as the path is a point"},
	{"piece's centre", more("centre = [0, -10.1]\n"), at(12, 10, `key "hand.piece.centre" in hand 1, piece 1`) + "found [0, -10.1], allowed two numbers [x, y], at most 10 m from the origin"},
	{"tilt", more("tilt = 36_000.1\n"), at(12, 8, `key "hand.piece.tilt" in hand 1, piece 1`) + "found 36_000.1, allowed -36000 to 36000"},
	{"arm_at", more("arm_at = \"top\"\n"), at(12, 10, `key "hand.piece.arm_at" in hand 1, piece 1`) + `found the text "top", allowed a number, -36000 to 36000`},
	{"prop_at", more("prop_at = -inf\n"), at(12, 11, `key "hand.piece.prop_at" in hand 1, piece 1`) + "found -inf, allowed -36000 to 36000"},
	{"law", more("law = \"ease\"\n"), at(12, 7, `key "hand.piece.law" in hand 1, piece 1`) + `found the text "ease", allowed "even", "ease-start", "ease-end" or "ease-both"`},
	{"swing", more("swing = 181\n"), at(12, 9, `key "hand.piece.swing" in hand 1, piece 1`) + "found 181, allowed 0 to 180"},
	{"swing negative", more("swing = -1\n"), at(12, 9, `key "hand.piece.swing" in hand 1, piece 1`) + "found -1, allowed 0 to 180"},
	{"swing_back without swing", more("swing_back = true\n"), at(12, 14, `key "hand.piece.swing_back" in hand 1, piece 1`) + "found true, allowed true only where swing is not 0"},
	{"swing_back a number", more("swing = 30\nswing_back = 1\n"), at(13, 14, `key "hand.piece.swing_back" in hand 1, piece 1`) + "found 1, allowed true or false"},

	// Columns count characters, lines end in either way, a mark counts nothing.
	{"columns", "\uFEFFformat = 1\r\ntitle = \"T\"\r\ntempo = 120\r\n\"é😀\" = 1\r\nhand = [{ side = \"right\", \"ü\" = 1, piece = [{arm = 1, prop = 1, cycles = 1, swing = 999}] }]\r\n",
		at(4, 1, `key "é😀"`) + "found an unknown key, allowed " + rootKeys + "\n" +
			at(5, 27, `key "hand.ü" in hand 1`) + "found an unknown key, allowed side, plane, offset, centre, tether, arm_at, prop_at, piece\n" +
			at(5, 85, `key "hand.piece.swing" in hand 1, piece 1`) + "found 999, allowed 0 to 180"},
}

func TestDecodeRefuses(t *testing.T) {
	for _, test := range badFiles {
		p, err := presets.Decode("x.toml", []byte(test.in))
		if err == nil {
			t.Errorf("%s: Decode() gives no error, want %s", test.name, test.want)
			continue
		}
		if err.Error() != test.want {
			t.Errorf("%s: Decode() = \n%s\nwant\n%s", test.name, err, test.want)
		}
		if p.Title != "" || p.Lanes != nil {
			t.Errorf("%s: Decode() = %v with an error, want nothing", test.name, p)
		}
		var all presets.Errors
		var one presets.Error
		if !errors.As(err, &all) || !errors.As(err, &one) {
			t.Errorf("%s: Decode() error is a %T, want Errors of Error", test.name, err)
			continue
		}
		for i, e := range all {
			if e.File != "x.toml" || e.Line < 1 || e.Col < 1 {
				t.Errorf("%s: problem %d is at %q:%d:%d, want a place", test.name, i+1, e.File, e.Line, e.Col)
			}
		}
	}
}

// TestDecodeRefusesLarge holds that size is looked at before anything else.
func TestDecodeRefusesLarge(t *testing.T) {
	noise := make([]byte, 10_000_000)
	for i := range noise {
		noise[i] = byte(i*i>>3 ^ i)
	}
	const want = "x.toml:1:1: the file has 10000000 bytes, allowed at most 8388608"
	if _, err := presets.Decode("x.toml", noise); err == nil || err.Error() != want {
		t.Errorf("Decode() = %v, want %v", err, want)
	}
	good := file{}.String()
	full := good + "#" + strings.Repeat("~", presets.MaxFileSize-len(good)-1)
	if _, err := presets.Decode("x.toml", []byte(full)); err != nil {
		t.Errorf("Decode() of exactly MaxFileSize bytes = %v, want nil", err)
	}
}

func TestDecodeListsTwenty(t *testing.T) {
	var b strings.Builder
	b.WriteString(file{}.String())
	for i := range 50 {
		fmt.Fprintf(&b, "k%02d = 1\n", i)
	}
	_, err := presets.Decode("x.toml", []byte(b.String()))
	var all presets.Errors
	if !errors.As(err, &all) || len(all) != 21 {
		t.Fatalf("Decode() = %v, want 21 lines", err)
	}
	for i, e := range all[:20] {
		if want := fmt.Sprintf("hand.piece.k%02d", i); e.Key != want || e.Line != 12+i {
			t.Errorf("problem %d: %s in line %d, want %s in line %d", i+1, e.Key, e.Line, want, 12+i)
		}
	}
	if got, want := all[20].Error(), "x.toml:32:1: and 30 more from here on"; got != want {
		t.Errorf("last problem = %s, want %s", got, want)
	}
}

// TestDecodeListsFirst holds that the twenty that are listed are the first in
// the file, in whatever order they are found.
func TestDecodeListsFirst(t *testing.T) {
	var b strings.Builder
	for i := range 15 {
		fmt.Fprintf(&b, "r%02d = 1\n", i)
	}
	b.WriteString(file{}.String())
	for i := range 30 {
		fmt.Fprintf(&b, "p%02d = 1\n", i)
	}
	_, err := presets.Decode("x.toml", []byte(b.String()))
	var all presets.Errors
	if !errors.As(err, &all) || len(all) != 21 {
		t.Fatalf("Decode() = %v, want 21 lines", err)
	}
	for i, e := range all[:20] {
		want, line := fmt.Sprintf("r%02d", i), 1+i
		if i >= 15 {
			want, line = fmt.Sprintf("hand.piece.p%02d", i-15), 12+i
		}
		if e.Key != want || e.Line != line {
			t.Errorf("problem %d: %s in line %d, want %s in line %d", i+1, e.Key, e.Line, want, line)
		}
	}
	if got, want := all[20].Error(), "x.toml:32:1: and 25 more from here on"; got != want {
		t.Errorf("last problem = %s, want %s", got, want)
	}
}

// TestDecodeManyKeys holds that the work grows with the file: looking each
// key up among all before it would be 10¹¹ steps here.
func TestDecodeManyKeys(t *testing.T) {
	var b strings.Builder
	b.WriteString("format = 1\ntitle = \"T\"\ntempo = 120\n")
	for i := range 600_000 {
		fmt.Fprintf(&b, "k%d=1\n", i)
	}
	_, err := presets.Decode("x.toml", []byte(b.String()))
	var all presets.Errors
	if !errors.As(err, &all) || len(all) != 21 {
		t.Errorf("Decode() = %v, want 21 lines", err)
	}
}

// TestBadFixtures holds the lines that the small bad files give, which the
// command line's tests and the page's use as well.
func TestBadFixtures(t *testing.T) {
	dir := filepath.Join("..", "testdata", "presets", "bad")
	want := map[string]string{
		"truncated.toml":   "truncated.toml:10:7: not TOML: expected value, not end of input",
		"wrong-type.toml":  "wrong-type.toml:3:9: key \"tempo\": found the text \"brisk\", allowed a number, 10 to 400\nwrong-type.toml:11:10: key \"hand.piece.cycles\" in hand 1, piece 1: found true, allowed a number or a fraction such as \"1/3\" with a denominator up to 1000000, more than 0 up to 1000",
		"unknown-key.toml": "unknown-key.toml:4:1: key \"colour\": found an unknown key, allowed " + rootKeys + "\nunknown-key.toml:7:1: key \"performer.height\": found an unknown key, allowed tether, rigid, shoulders, reach, head_mass\nunknown-key.toml:11:1: key \"hand.grip\" in hand 1: found an unknown key, allowed side, plane, offset, centre, tether, arm_at, prop_at, piece\nunknown-key.toml:17:1: key \"hand.piece.radus\" in hand 1, piece 1: found an unknown key, allowed arm, prop, cycles, beats, part, path, radius, centre, tilt, arm_at, prop_at, law, swing, swing_back",
		"nan.toml":         "nan.toml:10:8: key \"hand.piece.prop\" in hand 1, piece 1: found nan, allowed -64 to 64\nnan.toml:12:10: key \"hand.piece.radius\" in hand 1, piece 1: found inf, allowed more than 0 up to 5",
		"binary.toml":      "binary.toml:1:1: not a text file: byte 0x89 is not UTF-8",
		"format-2.toml":    "format-2.toml:2:10: key \"format\": found 2, allowed 1, the only format that is read",
		"no-pieces.toml":   "no-pieces.toml:5:1: key \"hand.piece\" in hand 1: found nothing, required 1 to 10000 tables [[hand.piece]]",
		"three-hands.toml": "three-hands.toml:19:1: key \"hand\": found 3, allowed 1 or 2 tables [[hand]]",
	}
	names, err := filepath.Glob(filepath.Join(dir, "*"))
	if err != nil || len(names) != len(want) {
		t.Errorf("%s has %d files, want %d", dir, len(names), len(want))
	}
	for _, path := range names {
		name := filepath.Base(path)
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := presets.Decode(name, data); err == nil || err.Error() != want[name] {
			t.Errorf("Decode(%s) = \n%v\nwant\n%s", name, err, want[name])
		}
	}
}
