package naming_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
)

// randomPattern is one lane of one piece of any sort, in the wall plane.
func randomPattern(r *rand.Rand) engine.Pattern {
	angle := func() engine.Degrees { return engine.Degrees(r.IntN(1441) - 720) }
	size := func() float64 { return 0.1 + float64(r.IntN(1200))/1000 }
	speed := func() frac.Frac { return frac.New(int64(r.IntN(13)-6), int64(1+r.IntN(3))) }
	place := complex(float64(r.IntN(200))/100-1, float64(r.IntN(200))/100-1)
	path := engine.CirclePath(place, size())
	switch r.IntN(6) {
	case 0:
		path = engine.LinePath(place, size(), angle())
	case 1:
		path = engine.EllipsePath(place, size(), size(), angle())
	case 2:
		path = engine.PointPath(place)
	case 3:
		path = engine.EllipsePath(place, 0, size(), angle())
	}
	p := engine.Stroke(path, speed(), speed(), frac.New(int64(1+r.IntN(6)), 4), frac.Int(int64(1+r.IntN(4))))
	if r.IntN(3) == 0 { // make unit turns and their like no rarity
		p.Prop = p.Arm
		if r.IntN(2) == 0 {
			p.Prop = p.Arm.Neg()
		}
	}
	p.Law = engine.Law(r.IntN(4))
	if r.IntN(10) == 0 {
		p.Swing = engine.Degrees(1 + r.IntN(180))
	}
	l := engine.Lane{Side: engine.Right, Tether: size(), ArmAt: angle(), PropAt: angle(), Pieces: []engine.Piece{p}}
	if r.IntN(3) == 0 {
		l.PropAt = l.ArmAt + engine.Degrees(180*r.IntN(2))
	}
	return engine.Pattern{Tempo: 90, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}}
}

// alike reports whether two figures are one but for where they stand.
func alike(f, g naming.Figure) bool {
	return f.Kind == g.Kind && f.Spin == g.Spin && f.HasRatio == g.HasRatio && f.Ratio.Equal(g.Ratio) &&
		f.HasPetals == g.HasPetals && f.Petals.Equal(g.Petals) && f.HasTip == g.HasTip
}

// tipsApart returns how far two tips are apart, modulo the angle from petal to
// petal.
func tipsApart(f, g naming.Figure, moved float64) float64 {
	step := 360 / f.Petals.Float()
	return math.Abs(math.Remainder(float64(g.FirstTip)-moved, step))
}

// TestNameStays: cutting, mirroring, turning and resizing change neither kind
// nor spin nor ratio nor petals, and the tip goes where the flower goes.
func TestNameStays(t *testing.T) {
	r := chance.New(t)
	seen := map[naming.Kind]int{}
	for range 2000 {
		p := randomPattern(r)
		was := naming.Of(&engine.NewTrack(p.Lanes[0]).Legs[0])
		seen[was.Kind]++
		of := func(l engine.Lane, i int) naming.Figure { return naming.Of(&engine.NewTrack(l).Legs[i]) }

		den := int64(2 + r.IntN(97))
		cut, err := p.Lanes[0].Cut(0, p.Lanes[0].Beats().Mul(frac.New(1+r.Int64N(den-1), den)))
		if err != nil {
			t.Fatal(err)
		}
		d := engine.Degrees(r.IntN(720) - 360)
		k := 0.3 + 2*r.Float64()
		tip := float64(was.FirstTip)
		for _, test := range []struct {
			name string
			got  naming.Figure
			tip  float64
		}{
			{"first half", of(cut, 0), tip},
			{"second half", of(cut, 1), tip},
			{"mirrored", of(p.Mirror().Lanes[0], 0), 180 - tip},
			{"turned", of(p.Turn(d).Lanes[0], 0), tip + float64(d)},
			{"scaled", of(p.Scale(k).Lanes[0], 0), tip},
		} {
			if !alike(was, test.got) {
				t.Fatalf("%s: %q, was %q; lane %+v", test.name, text(test.got), text(was), p.Lanes[0])
			}
			// A tip within half a degree of either end is written as 0.
			slack := 1e-6
			for _, f := range []naming.Figure{was, test.got} {
				if f.FirstTip == 0 {
					slack += 0.5
				}
			}
			if was.HasTip && tipsApart(was, test.got, test.tip) > slack {
				t.Fatalf("%s: tip at %v, want %v; lane %+v", test.name, test.got.FirstTip, test.tip, p.Lanes[0])
			}
		}
		if c := of(cut, 1); was.Kind == naming.UnitTurn && math.Abs(float64((c.Offset-was.Offset).Wrap())) > 1e-9 {
			t.Fatalf("second half: offset %v, was %v", c.Offset, was.Offset)
		}
	}
	for kind, name := range kinds {
		if seen[kind] == 0 {
			t.Errorf("no %s among the patterns tried", name)
		}
	}
}

// TestFirstTipIsATip: the head of a whole flower is farthest from the middle of
// the hand's circle just where a petal has its tip.
func TestFirstTipIsATip(t *testing.T) {
	r := chance.New(t)
	for range 300 {
		n := frac.New(int64(r.IntN(15)-7), int64(1+r.IntN(3)))
		if n.IsZero() || n.Equal(frac.Int(1)) {
			continue
		}
		p := engine.Stroke(engine.CirclePath(0, 0.6), frac.Int(1), n, frac.FromBig(n.Den()), frac.Int(1))
		l := engine.Lane{Tether: 0.5, ArmAt: engine.Degrees(r.IntN(360)), PropAt: engine.Degrees(r.IntN(360)), Pieces: []engine.Piece{p}}
		track := engine.NewTrack(l)
		figure := naming.Of(&track.Legs[0])
		tip := float64(figure.FirstTip)
		// Where the arm passes the tip's angle in some turn, the head is 1.1 m out.
		found := false
		for turn := range int(n.Den().Int64()) {
			u := (math.Mod(tip-float64(l.ArmAt)+720, 360)/360 + float64(turn)) / float64(n.Den().Int64())
			at := track.AtPiece(0, 0, u)
			found = found || math.Hypot(real(at.Head), imag(at.Head)) > 1.1-1e-3
		}
		if !found {
			t.Fatalf("ratio %v from arm %v, prop %v: no petal tip at %v", n, l.ArmAt, l.PropAt, tip)
		}
	}
}
