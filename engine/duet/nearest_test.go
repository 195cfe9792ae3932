package duet_test

import (
	"math"
	"reflect"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/duet"
	"whorlbench/engine/room"
)

// apart is how far hands, heads and tethers are at a beat, in the room. The
// distance from a place of one tether to the other is a convex function of the
// place, so that thirds find the least.
func apart(l, r *engine.Track, beat float64) (out [3]float64) {
	a, b := l.At(beat), r.At(beat)
	lh, lz := room.Place(l.Lane, a.Hand), room.Place(l.Lane, a.Head)
	rh, rz := room.Place(r.Lane, b.Hand), room.Place(r.Lane, b.Head)
	out[0], out[1] = r3.Norm(r3.Sub(lh, rh)), r3.Norm(r3.Sub(lz, rz))
	to := func(s float64) float64 {
		p := r3.Add(lh, r3.Scale(s, r3.Sub(lz, lh)))
		d := r3.Sub(rz, rh)
		u := min(max(r3.Dot(r3.Sub(p, rh), d)/r3.Norm2(d), 0), 1)
		return r3.Norm(r3.Sub(p, r3.Add(rh, r3.Scale(u, d))))
	}
	lo, hi := 0.0, 1.0
	for range 60 {
		x, y := lo+(hi-lo)/3, hi-(hi-lo)/3
		if to(x) <= to(y) {
			hi = y
		} else {
			lo = x
		}
	}
	out[2] = min(to(lo), to(0), to(1))
	return out
}

// TestLeastDistances in closed form. Hands on circles of radius R about ∓c,
// split, both anticlockwise: their gap is 2c + 2R e^{iα}, least 2(c − R) at
// α = 180°. Extensions likewise with R + L for the heads.
func TestLeastDistances(t *testing.T) {
	l := moved(lane(engine.Left, 0, 0, stroke(circle(0.2), "1", "1", "1", "4")), 1)
	r := moved(lane(engine.Right, 180, 180, stroke(circle(0.2), "1", "1", "1", "4")), -1)
	got := read(l, r)
	for _, test := range []struct {
		name string
		got  duet.Nearest
		want duet.Nearest
	}{
		{"hands", got.Hand, duet.Nearest{Distance: 1.6, Beat: 2}},
		{"heads", got.Head, duet.Nearest{Distance: 0.4, Beat: 2}},
		{"tethers", got.Tether, duet.Nearest{Distance: 0.4, Beat: 2}},
	} {
		if !near(test.got.Distance, test.want.Distance, 1e-9) || !near(test.got.Beat, test.want.Beat, 1e-6) {
			t.Errorf("%s nearest %v, want %v", test.name, test.got, test.want)
		}
	}
	if len(got.Crossings) > 0 {
		t.Errorf("crossings %v, want none", got.Crossings)
	}
	// A constant distance is told at the first beat.
	l, r = moved(l, 0), moved(r, 0)
	if got := read(l, r); !near(got.Hand.Distance, 0.4, 1e-12) || got.Hand.Beat != 0 || got.Tether.Beat != 0 {
		t.Errorf("about one middle: hands %v, tethers %v, want 0.4 m at beat 0", got.Hand, got.Tether)
	}
}

// TestTethersCross: two static spins 0.6 m apart, tethers of 0.5 m, opposite
// ways. The heads meet above and below the middle where 0.3 = 0.5 sin ψ; the
// tethers cross while they point further inward than that.
func TestTethersCross(t *testing.T) {
	spin := func(side engine.Side, x complex128, prop string, at engine.Degrees) engine.Lane {
		l := moved(lane(side, 0, at, stroke(engine.PointPath(0), "0", prop, "1", "4")), x)
		l.Tether = 0.5
		return l
	}
	l, r := spin(engine.Left, 0.3, "1", 90), spin(engine.Right, -0.3, "-1", 90)
	got := read(l, r)
	edge := math.Asin(0.3/0.5) / (math.Pi / 2) // beats from straight up, a quarter turn a beat
	want := duet.Crossing{From: edge, To: 2 - edge}
	// A millimetre before they touch they are nearer than the tolerance.
	if len(got.Crossings) != 1 || !near(got.Crossings[0].From, want.From, 2e-3) || !near(got.Crossings[0].To, want.To, 2e-3) {
		t.Errorf("crossings %v, want %v", got.Crossings, want)
	}
	if got.Tether.Distance != 0 || got.Tether.Beat < edge || got.Tether.Beat > 2-edge {
		t.Errorf("tethers nearest %v, want 0 while they cross", got.Tether)
	}
	r.Offset = 0.05
	if got := read(l, r); len(got.Crossings) > 0 || !near(got.Tether.Distance, 0.05, 1e-12) {
		t.Errorf("5 cm between the planes: crossings %v, tethers %v, want none, 0.05", got.Crossings, got.Tether)
	}
}

// TestLeastDistancesOfRandomPatterns: nothing sampled is nearer than the least
// that is told, and at its beat it is come to.
func TestLeastDistancesOfRandomPatterns(t *testing.T) {
	r := chance.New(t)
	for k := range 60 {
		planes := [2]engine.Plane{engine.Wall, engine.Wall}
		if k%2 == 1 {
			planes = [2]engine.Plane{engine.Plane(r.IntN(3)), engine.Plane(r.IntN(3))}
		}
		l := engine.NewTrack(closedLane(r, engine.Left, planes[0]))
		m := engine.NewTrack(closedLane(r, engine.Right, planes[1]))
		got := duet.Read(l, m)
		told := [3]duet.Nearest{got.Hand, got.Head, got.Tether}
		for i, n := range told {
			// The limits from both sides where a hand jumps.
			d := min(apart(l, m, n.Beat)[i], apart(l, m, n.Beat-1e-9)[i], apart(l, m, n.Beat+1e-9)[i])
			if !near(d, n.Distance, 1e-6) {
				t.Errorf("pattern %d, least %d: %v told, but %v there", k, i, n, d)
			}
		}
		const samples = 1500
		cross := 0
		for j := range samples {
			beat := got.Until * (float64(j) + r.Float64()) / samples
			d := apart(l, m, beat)
			for i, n := range told {
				if d[i] < n.Distance-1e-6 {
					t.Fatalf("pattern %d: at beat %v least %d is %v, less than %v told (planes %v)", k, beat, i, d[i], n, planes)
				}
			}
			if len(got.Crossings) == duet.MostCrossings && beat > got.Crossings[len(got.Crossings)-1].From {
				continue
			}
			inside := false
			for _, c := range got.Crossings {
				inside = inside || c.From <= beat && beat <= c.To
			}
			if inside {
				cross++
			}
			if inside && d[2] > engine.TolMeet+1e-6 || !inside && d[2] < 1e-4 {
				t.Errorf("pattern %d: at beat %v tethers are %v apart, crossing told: %v", k, beat, d[2], inside)
			}
		}
	}
}

// TestStepsDoNotMatter: however the work is shared out, the same is read.
func TestStepsDoNotMatter(t *testing.T) {
	r := chance.New(t)
	for range 20 {
		l := engine.NewTrack(closedLane(r, engine.Left, engine.Wall))
		m := engine.NewTrack(closedLane(r, engine.Right, engine.Plane(r.IntN(2))))
		want := duet.Read(l, m)
		reader := duet.NewReader(l, m)
		for !reader.Step(1 + r.IntN(9)) {
		}
		if got := reader.Reading(); !reflect.DeepEqual(got, want) {
			t.Fatalf("in steps %+v, want %+v", got, want)
		}
	}
}

// TestLongReadingsEnd: closing times without end, very many turns and very
// many rounds are read in bounded work, and what was not read is said.
func TestLongReadingsEnd(t *testing.T) {
	one := lane(engine.Right, 0, 0, stroke(circle(0.5), "1", "1", "1", "1"))
	for _, test := range []struct {
		name  string
		l     engine.Lane
		until float64
		why   duet.Untold
	}{
		{"rounds that hardly ever meet", lane(engine.Left, 180, 0, stroke(circle(0.5), "1", "1", "1", "1000001/1000000")), 64 * 1.000001, duet.TooLong},
		{"a prop that takes a million rounds", lane(engine.Left, 180, 0, stroke(circle(0.5), "1", "1/1000003", "1", "1")), 64, duet.Told},
		{"a long piece against many rounds", lane(engine.Left, 180, 0, stroke(circle(0.5), "1", "1", "1", "9000")), 9000, duet.Told},
		{"very many turns", lane(engine.Left, 180, 0, stroke(circle(0.3), "64", "64", "1000", "10000")), -1, duet.TooLong},
		{"rounds of no time to speak of", lane(engine.Left, 180, 0, stroke(circle(0.5), "1", "1", "1", "1e-300")), -1, duet.TooLong},
		{"very short rounds", lane(engine.Left, 180, 0, stroke(circle(0.5), "1", "64", "1000", "1e-9")), -1, duet.TooLong},
		{"many swings", lane(engine.Left, 0, 0, swing(30, "64", "1000", "1")), -1, duet.Told},
		{"never back", lane(engine.Left, 180, 0, stroke(circle(0.5), "1", "1", "1/2", "3")), 3, duet.NeverBack},
	} {
		reader := duet.NewReader(engine.NewTrack(test.l), engine.NewTrack(one))
		steps := 0
		for !reader.Step(1000) {
			steps += 1000
			if steps > 20_000_000 {
				t.Fatalf("%s: no end after %d steps", test.name, steps)
			}
		}
		got := reader.Reading()
		if test.until > 0 && !near(got.Until, test.until, 1e-6) {
			t.Errorf("%s: read until %v, want %v", test.name, got.Until, test.until)
		}
		if got.Tangle.Why != test.why && got.Tangle.Why != duet.HandsMeet {
			t.Errorf("%s: why %v, want %v", test.name, got.Tangle.Why, test.why)
		}
		if got.Whole != (got.Closes && near(got.Until, got.Period.Float(), 0)) || len(got.Props) > duet.MostSpans || len(got.Around) > 2049 {
			t.Errorf("%s: whole %v, period %v, %d spans, %d places", test.name, got.Whole, got.Period, len(got.Props), len(got.Around))
		}
	}
}

// swing is a pendulum at a place.
func swing(wide engine.Degrees, prop, cycles, beats string) engine.Piece {
	p := stroke(engine.PointPath(0.3), "0", prop, cycles, beats)
	p.Swing = wide
	return p
}

// TestAround: the small drawing begins and ends where the hands do and keeps
// to their gap.
func TestAround(t *testing.T) {
	l, r := moved(lane(engine.Left, 270, 270, stroke(circle(0.5), "1", "1", "1", "4")), 0.1), lane(engine.Right, 90, 90, stroke(circle(0.5), "1", "1", "1", "4"))
	got := read(l, r).Around
	if len(got) < 500 {
		t.Fatalf("%d places, want a smooth line", len(got))
	}
	for i, z := range got { // 0.1 − i e^{iα}·1
		want := 0.1 + 1*complexUnit(270+360*float64(i)/float64(len(got)-1))
		if d := z - want; math.Hypot(real(d), imag(d)) > 1e-9 {
			t.Fatalf("place %d = %v, want %v", i, z, want)
		}
	}
	r.Plane = engine.Floor
	if got := read(l, r).Around; len(got) > 0 {
		t.Errorf("%d places for a wall and a floor plane, want none", len(got))
	}
}

func complexUnit(deg float64) complex128 {
	s, c := math.Sincos(deg * math.Pi / 180)
	return complex(c, s)
}
