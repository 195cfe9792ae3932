package presets_test

import (
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/pelletier/go-toml/v2"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
)

// dice makes random valid patterns in which every key turns up.
type dice struct{ *rand.Rand }

func (d dice) chance() bool { return d.IntN(3) == 0 }

// in returns a number from lo to hi, often a short one.
func (d dice) in(lo, hi float64) float64 {
	x := lo + (hi-lo)*d.Float64()
	if d.chance() {
		return x
	}
	short := float64(int(x*100)) / 100
	return min(max(short, lo), hi)
}

func (d dice) or(x, def float64) float64 {
	if d.chance() {
		return x
	}
	return def
}

// frac returns a fraction from lo to hi, never 0 if lo is, in every form that
// can be written: whole, short decimal, fraction, long decimal.
func (d dice) frac(lo, hi int64) frac.Frac {
	for {
		var f frac.Frac
		switch d.IntN(4) {
		case 0:
			f = frac.Int(lo + d.Int64N(hi-lo+1))
		case 1:
			f = frac.New(lo*1000+d.Int64N((hi-lo)*1000), 1000)
		case 2:
			den := 1 + d.Int64N(presets.MaxDenominator)
			f = frac.New(lo*den+d.Int64N((hi-lo)*den), den)
		case 3:
			den := frac.Int(1 << 40).Mul(frac.Int(1 << 40)) // 80 places
			f = frac.Int(lo).Add(frac.Int(1 + d.Int64N(1<<60)).Div(den))
		}
		if lo != 0 || !f.IsZero() {
			return f
		}
	}
}

var letters = []rune("abc XYZ 0\"\"\"\\\\\n\n\t\r\b\f\x00\x1f\x7f\u0085éß–漢😀\u200d\ufeff\u202e#='[]{}")

func (d dice) text(least, most int) string {
	n := least + d.IntN(most-least+1)
	var b strings.Builder
	for range n {
		b.WriteRune(letters[d.IntN(len(letters))])
	}
	return b.String()
}

func (d dice) centre() complex128 {
	if d.chance() {
		return complex(d.in(-7, 7), d.in(-7, 7))
	}
	return 0
}

func (d dice) angle() engine.Degrees { return engine.Degrees(d.in(-36000, 36000)) }

func (d dice) opt() engine.Opt {
	if d.chance() {
		return engine.Some(d.angle())
	}
	return engine.Opt{}
}

func (d dice) path(tether float64) engine.Path {
	r := d.or(d.in(0.01, 5), tether)
	p := engine.Path{Kind: engine.PathKind(d.IntN(4)), Centre: d.centre(), Tilt: engine.Degrees(d.or(d.in(-36000, 36000), 0))}
	switch p.Kind {
	case engine.OnCircle:
		p.A, p.B = r, r
	case engine.OnLine:
		p.A = r
	case engine.OnEllipse:
		p.A, p.B = r, d.in(0.01, 5)
	}
	return p
}

func (d dice) piece(tether float64) engine.Piece {
	p := engine.Piece{
		Path: d.path(tether), Arm: d.frac(-64, 64), Prop: d.frac(-64, 64), Cycles: d.frac(0, 1000),
		Beats: frac.Int(1), To: frac.Int(1), ArmAt: d.opt(), PropAt: d.opt(), Law: engine.Law(d.IntN(4)),
	}
	if !d.chance() {
		p.Beats = d.frac(0, 10_000)
	}
	for d.chance() {
		a, b := d.frac(0, 1), d.frac(0, 1)
		if a.Less(b) {
			p.From, p.To = a, b
			break
		}
	}
	if d.chance() {
		p.Swing = engine.Degrees(d.in(0.01, 180))
		p.SwingBack = d.chance()
	}
	return p
}

func (d dice) pattern() engine.Pattern {
	def := engine.DefaultPerformer()
	p := engine.Pattern{Title: d.text(1, presets.MaxTitle), Tempo: d.in(10, 400), Performer: engine.Performer{
		Tether: d.or(d.in(0.05, 3), def.Tether), Rigid: d.chance(), Shoulders: d.or(d.in(0.1, 1), def.Shoulders),
		Reach: d.or(d.in(0.2, 2), def.Reach), HeadMass: d.or(d.in(0.01, 5), def.HeadMass),
	}}
	if d.chance() {
		p.Notes = d.text(0, 500)
	}
	side := engine.Side(d.IntN(2))
	for i := range 1 + d.IntN(2) {
		l := engine.Lane{Side: side, Plane: engine.Plane(d.IntN(3)), Centre: d.centre(), Tether: d.or(d.in(0.05, 3), p.Performer.Tether)}
		if i == 1 {
			l.Side = side.Other()
		}
		l.Offset = d.or(d.in(-10, 10), p.Performer.DefaultOffset(l.Side, l.Plane))
		l.ArmAt = engine.Degrees(d.or(float64(d.angle()), 90))
		l.PropAt = engine.Degrees(d.or(float64(d.angle()), float64(l.ArmAt)))
		for range 1 + d.IntN(8) {
			l.Pieces = append(l.Pieces, d.piece(l.Tether))
		}
		p.Lanes = append(p.Lanes, l)
	}
	return p
}

// TestRoundTrip writes random patterns, reads them back equal and writes the
// same bytes again. The TOML library reads the same bytes as TOML, and
// together they have every key of the format.
func TestRoundTrip(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	d := dice{rand.New(rand.NewPCG(seed, 1))}
	seen := map[string]bool{}
	for i := range 500 {
		p := d.pattern()
		data, err := presets.Encode(p)
		if err != nil {
			t.Fatalf("pattern %d: Encode() gives %v, want no error\n%+v", i, err, p)
		}
		back, err := presets.Decode("x.toml", data)
		if err != nil || !back.Equal(p) {
			t.Fatalf("pattern %d: Decode(Encode()) = %+v, %v, want %+v\n%s", i, back, err, p, data)
		}
		again, err := presets.Encode(back)
		if err != nil || string(again) != string(data) {
			t.Fatalf("pattern %d: Encode(Decode(Encode())) = \n%s\n%v, want\n%s", i, again, err, data)
		}
		var doc map[string]any
		if err := toml.Unmarshal(data, &doc); err != nil {
			t.Fatalf("pattern %d: toml.Unmarshal() gives %v, want no error\n%s", i, err, data)
		}
		if doc["title"] != p.Title {
			t.Fatalf("pattern %d: toml.Unmarshal() has the title %q, want %q", i, doc["title"], p.Title)
		}
		if notes, _ := doc["notes"].(string); notes != p.Notes {
			t.Fatalf("pattern %d: toml.Unmarshal() has the notes %q, want %q", i, notes, p.Notes)
		}
		note(seen, "", doc)
	}
	for _, key := range strings.Fields(`format title notes tempo
		performer.tether performer.rigid performer.shoulders performer.reach performer.head_mass
		hand.side hand.plane hand.offset hand.centre hand.tether hand.arm_at hand.prop_at
		hand.piece.arm hand.piece.prop hand.piece.cycles hand.piece.beats hand.piece.part hand.piece.path
		hand.piece.radius hand.piece.centre hand.piece.tilt hand.piece.arm_at hand.piece.prop_at
		hand.piece.law hand.piece.swing hand.piece.swing_back`) {
		if !seen[key] {
			t.Errorf("no pattern had the key %s, want every key tried", key)
		}
	}
}

// note adds the dotted names of a document's keys to seen.
func note(seen map[string]bool, prefix string, v any) {
	switch v := v.(type) {
	case map[string]any:
		for name, v := range v {
			key := strings.TrimPrefix(prefix+"."+name, ".")
			seen[key] = true
			note(seen, key, v)
		}
	case []any:
		for _, v := range v {
			note(seen, prefix, v)
		}
	}
}
