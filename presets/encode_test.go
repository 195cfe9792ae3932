package presets_test

import (
	"math"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

const everyKey = `format = 1
title = "Lamps \"on\" the quay"
notes = """
One line, a "word" and a \\.
\u0007""\"" three, tab\there,
and one at the end: \""""
tempo = 96.5

[performer]
tether = 0.7
rigid = true
shoulders = 0.45
reach = 0.65
head_mass = 0.2

[[hand]]
side = "left"
plane = "wheel"
offset = 0.3
centre = [0.1, -0.25]
tether = 0.5
arm_at = 45
prop_at = -30.5

[[hand.piece]]
arm = "-1/3"
prop = 2.5
cycles = 0.000001
beats = "1/128"
part = [0.25, "2/3"]
path = "ellipse"
radius = [0.5, 0.4]
centre = [0, 0.1]
tilt = 12.25
arm_at = 0
prop_at = 180
law = "ease-start"
swing = 60
swing_back = true

[[hand.piece]]
arm = 0
prop = -1
cycles = 1
path = "point"

[[hand]]
side = "right"

[[hand.piece]]
arm = 1
prop = 1
cycles = 1
beats = 0.00000095367431640625
path = "line"
radius = 0.35
law = "ease-end"
`

func everyPattern() engine.Pattern {
	return engine.Pattern{
		Title:     `Lamps "on" the quay`,
		Notes:     "One line, a \"word\" and a \\.\n\a\"\"\"\" three, tab\there,\nand one at the end: \"",
		Tempo:     96.5,
		Performer: engine.Performer{Tether: 0.7, Rigid: true, Shoulders: 0.45, Reach: 0.65, HeadMass: 0.2},
		Lanes: []engine.Lane{
			{Side: engine.Left, Plane: engine.Wheel, Offset: 0.3, Centre: 0.1 - 0.25i, Tether: 0.5, ArmAt: 45, PropAt: -30.5,
				Pieces: []engine.Piece{
					{Path: engine.EllipsePath(0.1i, 0.5, 0.4, 12.25), Arm: frac.New(-1, 3), Prop: frac.New(5, 2),
						Cycles: frac.New(1, 1_000_000), Beats: frac.New(1, 128), From: frac.New(1, 4), To: frac.New(2, 3),
						ArmAt: engine.Some(0), PropAt: engine.Some(180), Law: engine.EaseStart, Swing: 60, SwingBack: true},
					engine.Stroke(engine.PointPath(0), frac.Int(0), frac.Int(-1), frac.Int(1), frac.Int(1)),
				}},
			{Side: engine.Right, Tether: 0.7, ArmAt: 90, PropAt: 90,
				Pieces: []engine.Piece{
					{Path: engine.LinePath(0, 0.35, 0), Arm: frac.Int(1), Prop: frac.Int(1),
						Cycles: frac.Int(1), Beats: frac.New(1, 1<<20), To: frac.Int(1), Law: engine.EaseEnd},
				}},
		},
	}
}

func TestEncode(t *testing.T) {
	for _, test := range []struct {
		name string
		in   engine.Pattern
		want string
	}{
		{"defaults left out", plainPattern(), file{}.String()},
		{"every key", everyPattern(), everyKey},
	} {
		got, err := presets.Encode(test.in)
		if err != nil || string(got) != test.want {
			t.Errorf("%s: Encode() = \n%s\n%v, want\n%s", test.name, got, err, test.want)
		}
		back, err := presets.Decode("x.toml", got)
		if err != nil || !back.Equal(test.in) {
			t.Errorf("%s: Decode(Encode()) = %+v, %v, want %+v", test.name, back, err, test.in)
		}
	}
}

// TestEncodeDefaults holds that what depends on something else is left out
// when it agrees with it, and only then.
func TestEncodeDefaults(t *testing.T) {
	for _, test := range []struct {
		name   string
		in     engine.Pattern
		has    []string
		hasNot []string
	}{
		{"a hand's tether like the performer's", change(func(p pat, l lane, q pc) { p.Performer.Tether, l.Tether, q.Path.A, q.Path.B = 1, 1, 1, 1 }),
			[]string{"[performer]\ntether = 1\n"}, []string{"side = \"right\"\ntether", "radius"}},
		{"a hand's tether of its own", change(func(p pat, l lane, q pc) { l.Tether = 1 }), []string{"tether = 1\n", "radius = 0.6\n"}, []string{"performer"}},
		{"the default offset of the wheel plane", change(func(p pat, l lane, q pc) { l.Plane, l.Offset = engine.Wheel, -0.2 }), []string{"wheel"}, []string{"offset"}},
		{"no offset in the wheel plane", change(func(p pat, l lane, q pc) { l.Plane = engine.Wheel }), []string{"offset = 0\n"}, nil},
		{"prop in line with the arm", change(func(p pat, l lane, q pc) { l.ArmAt, l.PropAt = 0, 0 }), []string{"arm_at = 0\n"}, []string{"prop_at"}},
		{"prop up, arm not", change(func(p pat, l lane, q pc) { l.ArmAt = 0 }), []string{"arm_at = 0\nprop_at = 90\n"}, nil},
		{"placed where it is", change(func(p pat, l lane, q pc) { q.ArmAt, q.PropAt = engine.Some(90), engine.Some(0) }), []string{"arm_at = 90\nprop_at = 0\n"}, nil},
		{"one line of notes", change(func(p pat, l lane, q pc) { p.Notes = "a \"b\"\r\tc" }), []string{"notes = \"a \\\"b\\\"\\r\\tc\"\n"}, nil},
		{"small numbers", change(func(p pat, l lane, q pc) { l.Offset, l.Centre = 1e-7, complex(-2.5e-9, math.Copysign(0, -1)) }), []string{"offset = 1e-07\n", "centre = [-2.5e-09, 0]\n"}, nil},
	} {
		data, err := presets.Encode(test.in)
		if err != nil {
			t.Errorf("%s: Encode() gives %v, want no error", test.name, err)
			continue
		}
		for _, s := range test.has {
			if !strings.Contains(string(data), s) {
				t.Errorf("%s: Encode() = \n%s, want it to have %q", test.name, data, s)
			}
		}
		for _, s := range test.hasNot {
			if strings.Contains(string(data), s) {
				t.Errorf("%s: Encode() = \n%s, want it not to have %q", test.name, data, s)
			}
		}
		if back, err := presets.Decode("x.toml", data); err != nil || !back.Equal(test.in) {
			t.Errorf("%s: Decode(Encode()) = %+v, %v, want %+v", test.name, back, err, test.in)
		}
	}
}

// TestEncodeExact holds every form that an exact number may be written in.
func TestEncodeExact(t *testing.T) {
	two64 := frac.Int(1 << 32).Mul(frac.Int(1 << 32))
	long := strings.Repeat("1", presets.MaxDigits-2)
	longest, err := frac.Parse("0." + long)
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		in   frac.Frac
		want string
	}{
		{frac.Int(0), "0"},
		{frac.Int(-64), "-64"},
		{frac.New(1, 2), "0.5"},
		{frac.New(-1, 64), "-0.015625"}, // six places
		{frac.New(1, 128), `"1/128"`},   // seven
		{frac.New(-22, 7), `"-22/7"`},
		{frac.New(1, 1_000_000), "0.000001"},
		{frac.New(1, 999_999), `"1/999999"`},
		{frac.New(1, 10_000_000), "0.0000001"},
		{frac.Int(1).Div(two64), "0.0000000000000000000542101086242752217003726400434970855712890625"}, // 2⁻⁶⁴ from memory; read back below
		{longest, "0." + long},
	} {
		p := change(func(p pat, l lane, q pc) { q.Arm = test.in })
		data, err := presets.Encode(p)
		if err != nil || !strings.Contains(string(data), "\narm = "+test.want+"\n") {
			t.Errorf("Encode() of %v = %s, %v, want arm = %s", test.in, data, err, test.want)
			continue
		}
		if back, err := presets.Decode("x.toml", data); err != nil || !back.Equal(p) {
			t.Errorf("Decode(Encode()) of %v gives %v, want it back", test.in, err)
		}
	}
}

// TestEncodeCuts holds that a piece cut over and over can still be written:
// its numbers grow long, but stay exact.
func TestEncodeCuts(t *testing.T) {
	p := plainPattern()
	var err error
	for i := range 60 {
		at := p.Lanes[0].Pieces[i].Length().Div(frac.Int(2))
		if p.Lanes[0], err = p.Lanes[0].Cut(i, at); err != nil {
			t.Fatal(err)
		}
	}
	data, err := presets.Encode(p)
	if err != nil {
		t.Fatal(err)
	}
	if back, err := presets.Decode("x.toml", data); err != nil || !back.Equal(p) {
		t.Errorf("Decode(Encode()) of 60 cuts gives %v, want the pattern back", err)
	}
}

// TestEncodeTooLarge holds that no file is written that would not be read.
func TestEncodeTooLarge(t *testing.T) {
	small := frac.FromFloat(1e-300)
	p := change(func(p pat, l lane, q pc) {
		q.Arm, q.Prop, q.Cycles, q.Beats = small, small, small, small
		for len(l.Pieces) < presets.MaxPieces {
			l.Pieces = append(l.Pieces, *q)
		}
	})
	// 60 bytes, then 10,000 times 16 for [[hand.piece]] in its lines and four
	// keys with numbers of 302 characters and 7, 8, 10 and 9 more.
	const want = "the file has 12580060 bytes, allowed at most 8388608"
	if data, err := presets.Encode(p); data != nil || err == nil || err.Error() != want {
		t.Errorf("Encode() = %d bytes, %v, want none and %s", len(data), err, want)
	}
}

// TestValidate lists what Encode will not write, and that nothing is written.
func TestValidate(t *testing.T) {
	nan := math.NaN()
	in := `key "hand.piece.`
	tooLong, err := frac.Parse("0." + strings.Repeat("1", presets.MaxDigits-2))
	if err != nil {
		t.Fatal(err)
	}
	tooLong = tooLong.Div(frac.Int(10))
	for _, test := range []struct {
		name string
		in   engine.Pattern
		want string
	}{
		{"title", change(func(p pat, l lane, q pc) { p.Title = "" }), `key "title": found 0 characters, allowed a text of 1 to 200 characters`},
		{"title not UTF-8", change(func(p pat, l lane, q pc) { p.Title = "\xff" }), `key "title": found a text that is not UTF-8, allowed a text of 1 to 200 characters`},
		{"notes", change(func(p pat, l lane, q pc) { p.Notes = strings.Repeat("n", 10_001) }), `key "notes": found 10001 characters, allowed a text of 0 to 10000 characters`},
		{"tempo", change(func(p pat, l lane, q pc) { p.Tempo = nan }), `key "tempo": found NaN, allowed 10 to 400`},
		{"performer", change(func(p pat, l lane, q pc) { p.Performer = engine.Performer{Tether: math.Inf(1)} }),
			"key \"performer.tether\": found +Inf, allowed 0.05 to 3\nkey \"performer.shoulders\": found 0, allowed 0.1 to 1\nkey \"performer.reach\": found 0, allowed 0.2 to 2\nkey \"performer.head_mass\": found 0, allowed 0.01 to 5"},
		{"no hands", change(func(p pat, l lane, q pc) { p.Lanes = nil }), `key "hand": found 0, allowed 1 or 2 tables [[hand]]`},
		{"one side twice", change(func(p pat, l lane, q pc) { p.Lanes = append(p.Lanes, p.Lanes[0]) }), `key "hand.side" in hand 2: found "right" as in hand 1, allowed each side once`},
		{"three hands", change(func(p pat, l lane, q pc) {
			left := p.Lanes[0]
			left.Side = engine.Left
			p.Lanes = append(p.Lanes, left, left)
		}), "key \"hand\": found 3, allowed 1 or 2 tables [[hand]]\nkey \"hand.side\" in hand 3: found \"left\" as in hand 2, allowed each side once"},
		{"choices", change(func(p pat, l lane, q pc) { l.Side, l.Plane, q.Path.Kind, q.Law = 7, 8, 9, 10 }),
			"key \"hand.side\" in hand 1: found number 7, allowed \"left\" or \"right\"\nkey \"hand.plane\" in hand 1: found number 8, allowed \"wall\", \"wheel\" or \"floor\"\n" +
				in + "path\" in hand 1, piece 1: found number 9, allowed \"circle\", \"line\", \"ellipse\" or \"point\"\n" +
				in + "law\" in hand 1, piece 1: found number 10, allowed \"even\", \"ease-start\", \"ease-end\" or \"ease-both\""},
		{"hand's numbers", change(func(p pat, l lane, q pc) {
			l.Offset, l.Centre, l.Tether, l.ArmAt, l.PropAt = 11, complex(nan, 0), 0, 1e9, -1e9
		}),
			"key \"hand.offset\" in hand 1: found 11, allowed -10 to 10\nkey \"hand.centre\" in hand 1: found [NaN, 0], allowed two numbers [x, y], at most 10 m from the origin\nkey \"hand.tether\" in hand 1: found 0, allowed 0.05 to 3\nkey \"hand.arm_at\" in hand 1: found 1000000000, allowed -36000 to 36000\nkey \"hand.prop_at\" in hand 1: found -1000000000, allowed -36000 to 36000"},
		{"no pieces", change(func(p pat, l lane, q pc) { l.Pieces = nil }), `key "hand.piece" in hand 1: found 0, allowed 1 to 10000 tables [[hand.piece]]`},
		{"too many pieces", change(func(p pat, l lane, q pc) { l.Pieces = make([]engine.Piece, 10_001) }), `key "hand.piece" in hand 1: found 10001, allowed 1 to 10000 tables [[hand.piece]]`},
		{"the zero piece", change(func(p pat, l lane, q pc) { *q = engine.Piece{} }),
			in + "cycles\" in hand 1, piece 1: found 0, allowed more than 0 up to 1000\n" + in + "beats\" in hand 1, piece 1: found 0, allowed more than 0 up to 10000\n" +
				in + "part\" in hand 1, piece 1: found [0, 0], allowed [from, to] with 0 ≤ from < to ≤ 1\n" + in + "radius\" in hand 1, piece 1: found 0, allowed more than 0 up to 5"},
		{"speeds", change(func(p pat, l lane, q pc) { q.Arm, q.Prop = frac.Int(65), frac.Int(-65) }),
			in + "arm\" in hand 1, piece 1: found 65, allowed -64 to 64\n" + in + "prop\" in hand 1, piece 1: found -65, allowed -64 to 64"},
		{"part", change(func(p pat, l lane, q pc) { q.From, q.To = frac.Int(-1), frac.Int(2) }),
			in + "part\" in hand 1, piece 1: found -1, allowed 0 to 1\n" + in + "part\" in hand 1, piece 1: found 2, allowed 0 to 1"},
		{"a fraction with no form", change(func(p pat, l lane, q pc) { q.Arm = frac.New(1, 1_000_003) }),
			in + `arm" in hand 1, piece 1: found 1/1000003, which has no exact form short enough, allowed a finite decimal of at most 4000 characters or a denominator up to 1000000`},
		{"a decimal too long", change(func(p pat, l lane, q pc) { q.Arm = tooLong }),
			in + `arm" in hand 1, piece 1: found ` + strings.Repeat("1", 40) + `…, which has no exact form short enough, allowed a finite decimal of at most 4000 characters or a denominator up to 1000000`},
		{"nearly nothing", change(func(p pat, l lane, q pc) { q.Beats = frac.FromFloat(1e-300).Mul(frac.FromFloat(1e-300)) }),
			in + `beats" in hand 1, piece 1: found 1/` + "1" + strings.Repeat("0", 37) + `…, which cannot be told from 0, allowed more than 0 up to 10000`},
		{"a kept time of nearly nothing", change(func(p pat, l lane, q pc) { q.Beats, q.To = frac.FromFloat(1e-300), frac.FromFloat(1e-300) }),
			in + `part" in hand 1, piece 1: found a kept time, which cannot be told from 0, allowed a longer one`},
		{"a circle's axes", change(func(p pat, l lane, q pc) { q.Path.B = 0.5 }), in + `radius" in hand 1, piece 1: found [0.6, 0.5], allowed one radius, as the path is a circle`},
		{"a line's axes", change(func(p pat, l lane, q pc) { q.Path.Kind = engine.OnLine }), in + `radius" in hand 1, piece 1: found [0.6, 0.6], allowed one half length, as the path is a line`},
		{"a point's axes", change(func(p pat, l lane, q pc) { q.Path.Kind = engine.OnPoint }), in + `radius" in hand 1, piece 1: found [0.6, 0.6], allowed no radius, as the path is a point`},
		{"an ellipse's axes", change(func(p pat, l lane, q pc) { q.Path = engine.EllipsePath(0, 6, 0, 0) }),
			in + "radius\" in hand 1, piece 1: found 6, allowed more than 0 up to 5\n" + in + "radius\" in hand 1, piece 1: found 0, allowed more than 0 up to 5"},
		{"path's numbers", change(func(p pat, l lane, q pc) { q.Path.Centre, q.Path.Tilt = 11, 36_001 }),
			in + "centre\" in hand 1, piece 1: found [11, 0], allowed two numbers [x, y], at most 10 m from the origin\n" + in + "tilt\" in hand 1, piece 1: found 36001, allowed -36000 to 36000"},
		{"placed nowhere", change(func(p pat, l lane, q pc) { q.ArmAt, q.PropAt = engine.Some(engine.Degrees(nan)), engine.Some(36_001) }),
			in + "arm_at\" in hand 1, piece 1: found NaN, allowed -36000 to 36000\n" + in + "prop_at\" in hand 1, piece 1: found 36001, allowed -36000 to 36000"},
		{"swing", change(func(p pat, l lane, q pc) { q.Swing = 181 }), in + `swing" in hand 1, piece 1: found 181, allowed 0 to 180`},
		{"swing back without swing", change(func(p pat, l lane, q pc) { q.SwingBack = true }), in + `swing_back" in hand 1, piece 1: found true, allowed true only where swing is not 0`},
	} {
		err := presets.Validate(test.in)
		if err == nil || err.Error() != test.want {
			t.Errorf("%s: Validate() = \n%v\nwant\n%v", test.name, err, test.want)
		}
		if data, err := presets.Encode(test.in); data != nil || err == nil || err.Error() != test.want {
			t.Errorf("%s: Encode() = %s, %v, want nothing and Validate's error", test.name, data, err)
		}
	}
	for _, p := range []engine.Pattern{plainPattern(), everyPattern()} {
		if err := presets.Validate(p); err != nil {
			t.Errorf("Validate(%s) = %v, want nil", p.Title, err)
		}
	}
}
