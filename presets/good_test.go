package presets_test

import (
	"math"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

// plainPattern is what the smallest file means, every default in its place.
func plainPattern() engine.Pattern {
	return engine.Pattern{
		Title: "T", Tempo: 120,
		Performer: engine.Performer{Tether: 0.6, Shoulders: 0.4, Reach: 0.7, HeadMass: 0.15},
		Lanes: []engine.Lane{{
			Side: engine.Right, Plane: engine.Wall, Tether: 0.6, ArmAt: 90, PropAt: 90,
			Pieces: []engine.Piece{{
				Path: engine.Path{Kind: engine.OnCircle, A: 0.6, B: 0.6},
				Arm:  frac.Int(1), Prop: frac.Int(1), Cycles: frac.Int(1), Beats: frac.Int(1), To: frac.Int(1),
			}},
		}},
	}
}

// change returns the plain pattern with changes.
func change(f func(p *engine.Pattern, l *engine.Lane, q *engine.Piece)) engine.Pattern {
	p := plainPattern()
	f(&p, &p.Lanes[0], &p.Lanes[0].Pieces[0])
	return p
}

type (
	pat  = *engine.Pattern
	lane = *engine.Lane
	pc   = *engine.Piece
)

var goodFiles = []struct {
	name string
	in   string
	want engine.Pattern
}{
	{"smallest", file{}.String(), plainPattern()},
	{"every default written", "format = 1\ntitle = \"T\"\nnotes = \"\"\ntempo = 120.0\n[performer]\ntether = 0.6\nrigid = false\nshoulders = 0.4\nreach = 0.7\nhead_mass = 0.15\n[[hand]]\nside = \"right\"\nplane = \"wall\"\noffset = 0.0\ncentre = [0.0, 0]\ntether = 0.6\narm_at = 90\nprop_at = 90\n[[hand.piece]]\narm = 1\nprop = 1\ncycles = 1\nbeats = 1\npart = [0, 1]\npath = \"circle\"\nradius = 0.6\ncentre = [0, 0]\ntilt = 0\nlaw = \"even\"\nswing = 0\nswing_back = false\n", plainPattern()},
	{"one expression", "format=1\ntitle='T'\ntempo=120\nhand=[{side=\"right\",piece=[{arm=1,prop=1,cycles=1}]}]", plainPattern()},
	{"dotted keys and quoted keys", "\"format\" = 1\ntitle = \"T\"\ntempo = 120\nperformer.tether = 0.6\n'performer' . \"reach\" = 0.7\nhand = [{side = \"right\", piece = [{arm = 1, prop = 1, cycles = 1}]}]\n", plainPattern()},
	{"pieces in line under a header", "format = 1\ntitle = \"T\"\ntempo = 120\n[[hand]]\npiece = [\n  {arm = 1, prop = 1, cycles = 1}, # one\n]\nside = \"right\"\n", plainPattern()},
	{"performer after the hands", file{}.String() + "[performer]\nreach = 0.7", plainPattern()},
	{"carriage returns", strings.ReplaceAll(file{}.String(), "\n", "\r\n"), plainPattern()},
	{"byte order mark", "\uFEFF" + file{}.String(), plainPattern()},
	{"no line end at the end", strings.TrimSuffix(file{}.String(), "\n"), plainPattern()},
	{"comments", "# é\n" + file{}.String() + "# end", plainPattern()},

	{"text", root("format = 1\ntitle = \"\\u00e9 \\\"T\\\" \\\\\"\nnotes = \"\"\"\na\n\"b\" \\\n   c\"\"\"\ntempo = 120\n"),
		change(func(p pat, l lane, q pc) { p.Title, p.Notes = `é "T" \`, "a\n\"b\" c" })},
	{"longest title counts characters", root("format = 1\ntitle = \"" + strings.Repeat("😀", 200) + "\"\ntempo = 120\n"),
		change(func(p pat, l lane, q pc) { p.Title = strings.Repeat("😀", 200) })},
	{"tempo at its ends", root("format = 1\ntitle = \"T\"\ntempo = 4e2\n"), change(func(p pat, l lane, q pc) { p.Tempo = 400 })},

	{"performer", performer("tether = 1\nrigid = true\nshoulders = 0.5\nreach = 2\nhead_mass = 5\n"),
		change(func(p pat, l lane, q pc) {
			p.Performer = engine.Performer{Tether: 1, Rigid: true, Shoulders: 0.5, Reach: 2, HeadMass: 5}
			l.Tether, q.Path.A, q.Path.B = 1, 1, 1
		})},
	{"wheel plane before the right shoulder", hand("plane = \"wheel\"\n"),
		change(func(p pat, l lane, q pc) { l.Plane, l.Offset = engine.Wheel, -0.2 })},
	{"wheel plane before the left shoulder", file{performer: "shoulders = 0.5\n", hand: "side = \"left\"\nplane = \"wheel\"\n"}.String(),
		change(func(p pat, l lane, q pc) {
			p.Performer.Shoulders = 0.5
			l.Side, l.Plane, l.Offset = engine.Left, engine.Wheel, 0.25
		})},
	{"floor plane", hand("plane = \"floor\"\noffset = -1\n"), change(func(p pat, l lane, q pc) { l.Plane, l.Offset = engine.Floor, -1 })},
	{"centre at its bound", hand("centre = [6, -8.0]\n"), change(func(p pat, l lane, q pc) { l.Centre = 6 - 8i })},
	{"prop starts where the arm does", hand("arm_at = -45.5\n"), change(func(p pat, l lane, q pc) { l.ArmAt, l.PropAt = -45.5, -45.5 })},
	{"prop starts elsewhere", hand("prop_at = 0\n"), change(func(p pat, l lane, q pc) { l.PropAt = 0 })},
	{"radius follows the hand's tether", hand("tether = 0.45\n"), change(func(p pat, l lane, q pc) { l.Tether, q.Path.A, q.Path.B = 0.45, 0.45, 0.45 })},
	{"minus nothing is nothing", hand("offset = -0.0\ncentre = [-0.0, -0]\n"), plainPattern()},

	{"fractions", piece("arm = \"-1/3\"\nprop = \"+8/6\"\ncycles = \"2\"\nbeats = \"999999/1000000\"\npart = [\"1/3\", \"02/03\"]\n"),
		change(func(p pat, l lane, q pc) {
			q.Arm, q.Prop, q.Cycles, q.Beats = frac.New(-1, 3), frac.New(4, 3), frac.Int(2), frac.New(999_999, 1_000_000)
			q.From, q.To = frac.New(1, 3), frac.New(2, 3)
		})},
	{"decimals are their own digits", piece("arm = 0.1\nprop = -6_3.5e-1\ncycles = 0.3333333333333333\nbeats = 1.000000000000000000000000000001\n"),
		change(func(p pat, l lane, q pc) {
			q.Arm, q.Prop = frac.New(1, 10), frac.New(-635, 100)
			q.Cycles = frac.New(3333333333333333, 10_000_000_000_000_000)
			q.Beats = frac.Int(1).Add(frac.New(1, 1_000_000_000_000_000).Mul(frac.New(1, 1_000_000_000_000_000)))
		})},
	{"whole numbers in every base", piece("arm = 0x1F\nprop = -1_0\ncycles = 0b101\nbeats = 0o17\n"),
		change(func(p pat, l lane, q pc) {
			q.Arm, q.Prop, q.Cycles, q.Beats = frac.Int(31), frac.Int(-10), frac.Int(5), frac.Int(15)
		})},
	{"ends of the ranges", piece("arm = -64\nprop = 64.0\ncycles = 1000\nbeats = 10000\n"),
		change(func(p pat, l lane, q pc) {
			q.Arm, q.Prop, q.Cycles, q.Beats = frac.Int(-64), frac.Int(64), frac.Int(1000), frac.Int(10_000)
		})},
	{"nothing with an exponent", piece("arm = 0e-99999\nprop = -0.0e9999\ncycles = 1\n"),
		change(func(p pat, l lane, q pc) { q.Arm, q.Prop = frac.Int(0), frac.Int(0) })},
	{"line", more("path = \"line\"\nradius = 1\ntilt = 30\n"),
		change(func(p pat, l lane, q pc) { q.Path = engine.Path{Kind: engine.OnLine, A: 1, Tilt: 30} })},
	{"line as long as the tether", more("path = \"line\"\n"), change(func(p pat, l lane, q pc) { q.Path = engine.Path{Kind: engine.OnLine, A: 0.6} })},
	{"ellipse", more("path = \"ellipse\"\nradius = [5, 0.25]\ncentre = [0.5, 1]\n"),
		change(func(p pat, l lane, q pc) {
			q.Path = engine.Path{Kind: engine.OnEllipse, Centre: 0.5 + 1i, A: 5, B: 0.25}
		})},
	{"point", more("path = \"point\"\ncentre = [0.1, 0]\n"), change(func(p pat, l lane, q pc) { q.Path = engine.Path{Kind: engine.OnPoint, Centre: 0.1} })},
	{"a circle's tilt is kept", more("tilt = -36000\n"), change(func(p pat, l lane, q pc) { q.Path.Tilt = -36000 })},
	{"placed", more("arm_at = 0\nprop_at = -180.25\n"), change(func(p pat, l lane, q pc) { q.ArmAt, q.PropAt = engine.Some(0), engine.Some(-180.25) })},
	{"law", more("law = \"ease-both\"\n"), change(func(p pat, l lane, q pc) { q.Law = engine.EaseBoth })},
	{"pendulum", more("swing = 180\nswing_back = true\n"), change(func(p pat, l lane, q pc) { q.Swing, q.SwingBack = 180, true })},
}

func TestDecode(t *testing.T) {
	for _, test := range goodFiles {
		got, err := presets.Decode("x.toml", []byte(test.in))
		if err != nil {
			t.Errorf("%s: Decode() gives %v, want no error", test.name, err)
			continue
		}
		if !got.Equal(test.want) {
			t.Errorf("%s: Decode() = \n%+v\nwant\n%+v", test.name, got, test.want)
		}
		if c := got.Lanes[0].Centre; math.Signbit(real(c)) && real(c) == 0 || math.Signbit(imag(c)) && imag(c) == 0 {
			t.Errorf("%s: Decode() has a centre with −0, want 0", test.name)
		}
	}
}

// TestDecodeTwoHands holds that the hands stay in the order of the file.
func TestDecodeTwoHands(t *testing.T) {
	in := file{}.String() + "[[hand]]\nside = \"left\"\n[[hand.piece]]\narm = -1\nprop = -1\ncycles = 1\n[[hand.piece]]\narm = 1\nprop = -1\ncycles = 1\n"
	p, err := presets.Decode("x.toml", []byte(in))
	if err != nil {
		t.Fatal(err)
	}
	if len(p.Lanes) != 2 || p.Lanes[0].Side != engine.Right || p.Lanes[1].Side != engine.Left {
		t.Fatalf("Decode() has lanes %+v, want right, left", p.Lanes)
	}
	if n, m := len(p.Lanes[0].Pieces), len(p.Lanes[1].Pieces); n != 1 || m != 2 {
		t.Errorf("Decode() has %d and %d pieces, want 1 and 2", n, m)
	}
}

// TestDecodeFull reads as much as a file may hold.
func TestDecodeFull(t *testing.T) {
	in := file{}.String() + strings.Repeat("[[hand.piece]]\narm = \"1/3\"\nprop = -0.125\ncycles = 1\n", presets.MaxPieces-1)
	p, err := presets.Decode("x.toml", []byte(in))
	if err != nil {
		t.Fatal(err)
	}
	if n := len(p.Lanes[0].Pieces); n != presets.MaxPieces {
		t.Errorf("Decode() has %d pieces, want %d", n, presets.MaxPieces)
	}
}
