package engine_test

import (
	"math"
	"math/big"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
)

// rat copies a fraction into the standard library's own.
func rat(f frac.Frac) *big.Rat { return new(big.Rat).SetFrac(f.Num(), f.Den()) }

// propTurns adds up a round's prop turns without the engine.
func propTurns(l engine.Lane) *big.Rat {
	sum := new(big.Rat)
	for _, p := range l.Pieces {
		kept := new(big.Rat).Sub(rat(p.To), rat(p.From))
		turns := new(big.Rat).Mul(rat(p.Prop), rat(p.Cycles))
		sum.Add(sum, turns.Mul(turns, kept))
	}
	return sum
}

// roundsByCounting plays round after round until the prop has turned a whole
// number of turns.
func roundsByCounting(l engine.Lane) int64 {
	for _, p := range l.Pieces {
		if p.PropAt.Set || p.Swing != 0 {
			return 1
		}
	}
	one, sum := propTurns(l), new(big.Rat)
	for k := int64(1); ; k++ {
		if sum.Add(sum, one).IsInt() {
			return k
		}
	}
}

// closedLane is a lane whose hand comes back: the last piece is a whole turn
// of the arm on the path where the round begins, placed there.
func (r randomLanes) closedLane() engine.Lane {
	l := r.lane()
	l.Pieces[0].Law, l.Pieces[0].From, l.Pieces[0].To = engine.Even, frac.Frac{}, frac.Int(1)
	start := l.ArmAt
	if at := l.Pieces[0].ArmAt; at.Set {
		start = at.At
	}
	last := engine.Stroke(l.Pieces[0].Path, frac.Int(int64(r.IntN(5)-2)), r.signed(12, 6), frac.Int(1), r.positive(20, 7))
	last.ArmAt = engine.Some(start)
	l.Pieces = append(l.Pieces, last)
	return l
}

func TestClosing(t *testing.T) {
	r := randomLanes{Rand: chance.New(t), noParts: true}
	for range 400 {
		l := r.closedLane()
		track := engine.NewTrack(l)
		want := roundsByCounting(l)
		got := track.Closing()
		if !got.Closes() || got.Rounds.Cmp(big.NewInt(want)) != 0 {
			t.Fatalf("Closing() = %v rounds, want %d; lane %+v", got.Rounds, want, l)
		}
		beats := new(big.Rat)
		for _, p := range l.Pieces {
			beats.Add(beats, new(big.Rat).Mul(rat(p.Beats), new(big.Rat).Sub(rat(p.To), rat(p.From))))
		}
		if beats.Mul(beats, new(big.Rat).SetInt64(want)); rat(got.Beats).Cmp(beats) != 0 {
			t.Fatalf("Closing() after %v beats, want %v; lane %+v", got.Beats, beats, l)
		}
		if got.HandGap > 1e-9 {
			t.Fatalf("Closing() with a hand gap of %v m; lane %+v", got.HandGap, l)
		}
		// Then, and at no earlier round, hand and head are where they began.
		for _, k := range []int64{want, 2 * want, want - 1, 1 + r.Int64N(want)} {
			moved := apart(track.AtPiece(int(k), 0, 0), track.AtPiece(0, 0, 0))
			if back := k%want == 0; back != (moved < 1e-9) {
				t.Fatalf("after %d rounds of a lane that closes after %d: %v m away; lane %+v", k, want, moved, l)
			}
		}
	}
}

func TestNeverCloses(t *testing.T) {
	arc := func(r float64) engine.Lane { return lane(0.5, 90, stroke(circle(r), "1", "1/3", "1/2", "2")) }
	pinned := arc(0.4)
	pinned.Pieces[0].PropAt = engine.Some(10)
	// A start angle that puts the end of a whole turn a hair off: 0.6 m · angle.
	nearly := func(gap float64) engine.Lane {
		l := lane(0.5, 0, stroke(circle(0.6), "1", "1", "1", "2"), stroke(circle(0.6), "1", "1", "1", "2"))
		l.Pieces[1].ArmAt = engine.Some(engine.ToDegrees(gap / 0.6))
		return l
	}
	for _, test := range []struct {
		name string
		lane engine.Lane
		gap  float64
		ever bool
	}{
		{"half a circle", arc(0.4), 0.8, false},
		{"half a circle, pinned", pinned, 0.8, false},
		{"hardly any circle", arc(0.49e-6), 0.98e-6, true},
		{"one micrometre and more", arc(0.51e-6), 1.02e-6, false},
		{"back but for 0.9 µm", nearly(0.9e-6), 0.9e-6, true},
		{"back but for 1.1 µm", nearly(1.1e-6), 1.1e-6, false},
	} {
		track := engine.NewTrack(test.lane)
		got := track.Closing()
		if got.Closes() != test.ever {
			t.Errorf("%s: Closes() = %v, want %v", test.name, got.Closes(), test.ever)
		}
		if math.Abs(got.HandGap-test.gap) > 1e-12 {
			t.Errorf("%s: HandGap = %v, want %v", test.name, got.HandGap, test.gap)
		}
		if test.ever {
			continue
		}
		if got.Rounds.Sign() != 0 || !got.Beats.IsZero() {
			t.Errorf("%s: Closing() = %v rounds, %v beats, want 0, 0", test.name, got.Rounds, got.Beats)
		}
		closed := engine.NewTrack(lane(0.5, 90, stroke(circle(0.6), "1", "1", "1", "1")))
		if beats, ok := engine.ClosingTime(closed, track); ok || !beats.IsZero() {
			t.Errorf("%s: ClosingTime = %v, %v, want 0, false", test.name, beats, ok)
		}
	}
	if beats, ok := engine.ClosingTime(); ok || !beats.IsZero() {
		t.Errorf("ClosingTime() = %v, %v, want 0, false", beats, ok)
	}
}

// TestClosingTime counts whole closings of the one until they are whole
// closings of the other.
func TestClosingTime(t *testing.T) {
	r := randomLanes{Rand: chance.New(t), noParts: true}
	one := func() (engine.Lane, *big.Rat) {
		l := lane(0.5, r.angle())
		for range 1 + r.IntN(3) {
			p := stroke(circle(0.6), "1", "0", "1", "1")
			p.Prop, p.Beats = r.signed(6, 5), r.positive(6, 4)
			l.Pieces = append(l.Pieces, p)
		}
		beats := new(big.Rat)
		for _, p := range l.Pieces {
			beats.Add(beats, rat(p.Beats))
		}
		return l, beats.Mul(beats, new(big.Rat).SetInt64(roundsByCounting(l)))
	}
	for range 200 {
		a, beatsA := one()
		b, beatsB := one()
		want := new(big.Rat)
		for want.Add(want, beatsA); !new(big.Rat).Quo(want, beatsB).IsInt(); want.Add(want, beatsA) {
		}
		got, ok := engine.ClosingTime(engine.NewTrack(a), engine.NewTrack(b))
		if !ok || rat(got).Cmp(want) != 0 {
			t.Fatalf("ClosingTime = %v, %v, want %v; lanes %+v and %+v", got, ok, want, a, b)
		}
		if got, _ := engine.ClosingTime(engine.NewTrack(b), engine.NewTrack(a)); rat(got).Cmp(want) != 0 {
			t.Fatalf("ClosingTime the other way round = %v, want %v", got, want)
		}
	}
}

// TestClosingOfAnyDenominator: a speed with a denominator of any size counts.
func TestClosingOfAnyDenominator(t *testing.T) {
	track := engine.NewTrack(lane(0.5, 90, stroke(circle(0.6), "1", "0.30000000000000000000000000000000000001", "1", "1/3")))
	got := track.Closing()
	want, _ := new(big.Int).SetString("100000000000000000000000000000000000000", 10)
	if got.Rounds.Cmp(want) != 0 {
		t.Errorf("Closing() = %v rounds, want %v", got.Rounds, want)
	}
	if want := fr("100000000000000000000000000000000000000/3"); !got.Beats.Equal(want) {
		t.Errorf("Closing() after %v beats, want %v", got.Beats, want)
	}
}

// TestPropCarriesOnOverRounds: a third of a turn a round, and the same pinned.
func TestPropCarriesOnOverRounds(t *testing.T) {
	l := lane(0.5, 90, stroke(circle(0.6), "1", "1/3", "1", "3"))
	pinned := clone(l)
	pinned.Pieces[0].PropAt = engine.Some(90) // the angle it has anyway
	free, held := engine.NewTrack(l), engine.NewTrack(pinned)
	for _, round := range []int{-4, -3, -1, 0, 1, 2, 3, 7, 1000000, 1000001} {
		turned := 120 * float64(((round%3)+3)%3)
		for _, u := range []float64{0, 0.25, 0.9} {
			prop := 90 + turned + 120*u
			hand := cmplx.Rect(0.6, rad(90+360*u))
			want := hand + cmplx.Rect(0.5, rad(prop))
			if got := free.At(3 * (float64(round) + u)).Head; cmplx.Abs(got-want) > 1e-8 {
				t.Errorf("round %d, share %v: head %v, want %v", round, u, got, want)
			}
			want = hand + cmplx.Rect(0.5, rad(90+120*u))
			if got := held.At(3 * (float64(round) + u)).Head; cmplx.Abs(got-want) > 1e-8 {
				t.Errorf("round %d of the pinned lane, share %v: head %v, want %v", round, u, got, want)
			}
		}
	}
	if got := held.Closing().Rounds.Int64(); got != 1 {
		t.Errorf("pinned: Closing() = %d rounds, want 1", got)
	}
	if got := free.Closing().Rounds.Int64(); got != 3 {
		t.Errorf("Closing() = %d rounds, want 3", got)
	}
}

// TestPropInFarRounds: speeds of denominators on both sides of 2³¹, reckoned
// here in the standard library's fractions.
func TestPropInFarRounds(t *testing.T) {
	for _, speed := range []string{"2147483646/2147483647", "-2147483646/2147483647", "1/2147483648", "-4294967310/4294967311", "5/7", "-5/7", "123456789123/1000"} {
		track := engine.NewTrack(lane(0.5, 0, stroke(circle(0.6), "1", speed, "1", "1")))
		for _, round := range []int64{-1_000_003, -2, -1, 0, 1, 2, 3, 999_999_937} {
			turns := new(big.Rat).Mul(rat(fr(speed)), new(big.Rat).SetInt64(round))
			whole := new(big.Int).Div(turns.Num(), turns.Denom())
			part, _ := turns.Sub(turns, new(big.Rat).SetInt(whole)).Float64()
			want := 0.6 + cmplx.Rect(0.5, 2*math.Pi*part)
			if got := track.AtPiece(int(round), 0, 0).Head; cmplx.Abs(got-want) > 1e-12 {
				t.Errorf("prop %s, round %d: head %v, want %v", speed, round, got, want)
			}
		}
	}
}
