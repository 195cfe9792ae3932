package tether_test

import (
	"math"
	"math/rand/v2"
	"reflect"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/room"
	"whorlbench/engine/tether"
)

// randomLane returns a lane of any sort that closes after a few rounds, or never.
func randomLane(r *rand.Rand) engine.Lane {
	size := func() float64 { return 0.1 + r.Float64() }
	angle := func() engine.Degrees { return engine.Degrees(15 * (r.IntN(49) - 24)) }
	l := engine.Lane{
		Side: engine.Side(r.IntN(2)), Plane: engine.Plane(r.IntN(3)), Offset: r.Float64() - 0.5, Tether: size(),
		ArmAt: angle(), PropAt: angle(), Centre: complex(r.Float64()-0.5, r.Float64()-0.5),
	}
	for range 1 + r.IntN(4) {
		paths := []engine.Path{
			engine.CirclePath(0, size()), engine.LinePath(0.1, size(), angle()), engine.EllipsePath(0.1i, size(), size(), angle()), engine.PointPath(0.1),
		}
		p := engine.Stroke(paths[min(r.IntN(7), 4)%4], frac.New(int64(r.IntN(7)-3), int64(1+r.IntN(2))), frac.New(int64(r.IntN(13)-6), int64(1+r.IntN(2))),
			frac.New(int64(1+r.IntN(4)), 2), frac.New(int64(1+r.IntN(6)), 2))
		if r.IntN(3) == 0 {
			p.Law = engine.Law(r.IntN(4))
		}
		if r.IntN(8) == 0 {
			p.Swing = engine.Degrees(1 + r.IntN(180))
		}
		if r.IntN(8) == 0 {
			p.From = frac.New(1, 3)
		}
		l.Pieces = append(l.Pieces, p)
	}
	return l
}

// brute looks at a lane's pull at very many moments of some rounds.
type brute struct {
	least, most float64
	low, high   float64 // squared tempos, (beats a second)²
	speed       float64 // m a beat
}

const bruteMoments = 3000

func bruteForce(l engine.Lane, rounds int, tempo float64) brute {
	track := engine.NewTrack(l)
	b := brute{math.Inf(1), math.Inf(-1), 0, math.Inf(1), 0}
	for round := range rounds {
		for i := range l.Pieces {
			for k := range bruteMoments + 1 {
				at := track.AtPiece(round, i, float64(k)/bruteMoments)
				p := tether.Pull(l, at, tempo)
				b.least, b.most = math.Min(b.least, p), math.Max(b.most, p)
				b.speed = math.Max(b.speed, math.Hypot(real(at.HeadVel), imag(at.HeadVel)))
				// The pull is KA + B: B alone at no tempo, A + B at 60.
				rest := tether.Pull(l, at, 0)
				a := tether.Pull(l, at, 60) - rest
				switch {
				case math.Abs(a) < 1e-12: // at rest, but for rounding
					if rest < -1e-9 {
						b.high = -1
					}
				case a > 0:
					b.low = math.Max(b.low, -rest/a)
				case a < 0:
					b.high = math.Min(b.high, rest/-a)
				}
			}
		}
	}
	return b
}

// TestBruteForce holds extremes, window and spans against plain looking: what
// is looked for can only be a little beyond what is seen.
func TestBruteForce(t *testing.T) {
	r := chance.New(t)
	taut, both := 0, 0
	for range 60 {
		l := randomLane(r)
		tempo := 40 + 200*r.Float64()
		track := engine.NewTrack(l)
		got := tether.Of(track, tempo, false)
		want := bruteForce(l, got.Rounds, tempo)
		within := 2e-3 * (1 + want.most - want.least) // (2πT/N)²/8 of T = 60 turns
		if got.Least.Value > want.least+1e-9*(1+want.most-want.least) || got.Least.Value < want.least-within {
			t.Fatalf("least pull %v, want %v; tempo %v, lane %+v", got.Least.Value, want.least, tempo, l)
		}
		if got.Greatest.Value < want.most-1e-9*(1+want.most-want.least) || got.Greatest.Value > want.most+within {
			t.Fatalf("greatest pull %v, want %v; tempo %v, lane %+v", got.Greatest.Value, want.most, tempo, l)
		}
		if speed := want.speed * tempo / 60; !near(got.TopSpeed.Value, speed, 1e-4) {
			t.Fatalf("top speed %v, want %v; lane %+v", got.TopSpeed.Value, speed, l)
		}
		for _, e := range []struct {
			name string
			at   tether.Extreme
		}{{"least", got.Least}, {"greatest", got.Greatest}} {
			at, before := track.At(e.at.Beat), track.At(e.at.Beat-1e-9) // at a seam, either side
			a, b := tether.Pull(l, at, tempo), tether.Pull(l, before, tempo)
			if !near(a, e.at.Value, 1e-5) && !near(b, e.at.Value, 1e-5) {
				t.Fatalf("%s pull %v at beat %v, where it is %v or %v; lane %+v", e.name, e.at.Value, e.at.Beat, b, a, l)
			}
		}
		checkSpans(t, track, tempo, got)

		w := got.Window
		if !w.OK {
			// Where gravity and the hand cancel, looking leaves some 1e-16 by rounding:
			// tempos up to a beat in many days.
			const rounding = 1e-12
			if want.low < 0.999*want.high && want.low < 1e3 && want.high > rounding {
				t.Fatalf("no window, want from %v to %v; lane %+v", 60*math.Sqrt(want.low), 60*math.Sqrt(want.high), l)
			}
			continue
		}
		taut++
		if low := 60 * math.Sqrt(want.low); w.From < low*(1-1e-9) || w.From > low*1.02+0.1 {
			t.Fatalf("window %+v, want from %v; lane %+v", w, low, l)
		}
		if high := 60 * math.Sqrt(want.high); w.Open != math.IsInf(high, 1) || !w.Open && (w.To > high*(1+1e-9) || w.To < high*0.98) {
			t.Fatalf("window %+v, want to %v; lane %+v", w, high, l)
		}
		// What the window means.
		for _, x := range []struct {
			tempo float64
			slack bool
		}{{w.From*0.999 - 0.01, true}, {w.From*1.001 + 0.01, false}, {w.To*0.999 - 0.01, false}, {w.To*1.001 + 0.01, true}} {
			if x.tempo <= 0 || x.tempo > w.From*1.002 && w.Open || !w.Open && w.To-w.From < 1 {
				continue
			}
			if x.tempo > w.From*1.5 {
				both++
			}
			if now := tether.Of(track, x.tempo, false); now.Slack != x.slack {
				t.Fatalf("window %+v: at %v slack %v, least pull %v; lane %+v", w, x.tempo, now.Slack, now.Least.Value, l)
			}
		}
	}
	if taut < 5 {
		t.Errorf("%d lanes with a window, %d with an upper end: too few to tell", taut, both)
	}
}

// checkSpans holds the spans against the pull at many moments: slack in them
// and nowhere else.
func checkSpans(t *testing.T, track *engine.Track, tempo float64, r tether.Result) {
	t.Helper()
	if r.Slack != (len(r.Spans) > 0) {
		t.Fatalf("slack %v with %d spans; lane %+v", r.Slack, len(r.Spans), track.Lane)
	}
	total := float64(r.Rounds) * track.Beats
	in := func(beat float64) (inside, near bool) {
		for _, s := range r.Spans {
			for _, at := range []float64{beat, beat + total} {
				inside = inside || at > s.From && at < s.To
				near = near || math.Abs(at-s.From) < 1e-6*total || math.Abs(at-s.To) < 1e-6*total
			}
		}
		return inside, near
	}
	const n = 2000
	for k := range n {
		beat := total * (float64(k) + 0.5) / n
		p := tether.Pull(track.Lane, track.At(beat), tempo)
		if slack, edge := in(beat); !edge && math.Abs(p) > 1e-7 && slack != (p < 0) {
			t.Fatalf("pull %v at beat %v, spans %v; tempo %v, lane %+v", p, beat, r.Spans, tempo, track.Lane)
		}
	}
	for i := 1; i < len(r.Spans); i++ {
		if !(r.Spans[i-1].To < r.Spans[i].From) {
			t.Fatalf("spans %v, want them in order and apart", r.Spans)
		}
	}
}

// alike reports where two results differ in what does not depend on where
// rounds and pieces begin.
func alike(t *testing.T, what string, a, b tether.Result, l engine.Lane) {
	t.Helper()
	const tolerance = 1e-7
	for _, x := range []struct {
		name string
		a, b float64
	}{
		{"least pull", a.Least.Value, b.Least.Value}, {"greatest pull", a.Greatest.Value, b.Greatest.Value},
		{"top speed", a.TopSpeed.Value, b.TopSpeed.Value},
		{"lowest tempo", a.Window.From, b.Window.From}, {"highest", a.Window.To, b.Window.To},
		{"astray", a.Astray.Value, b.Astray.Value},
	} {
		if !near(x.a, x.b, tolerance) {
			t.Fatalf("%s: %s %v, was %v; lane %+v", what, x.name, x.b, x.a, l)
		}
	}
	if a.Slack != b.Slack || a.Window.OK != b.Window.OK || a.Window.Open != b.Window.Open || a.HasAstray != b.HasAstray {
		t.Fatalf("%s: %+v, was %+v; lane %+v", what, b, a, l)
	}
	// A wobble of 1° is not quite in proportion, by about the angle in radians,
	// and so again each time that it has grown by e.
	if a.HasGrowth && b.HasGrowth && !near(a.Growth, b.Growth, 0.03*max(1, math.Log(a.Growth))) {
		t.Fatalf("%s: growth %v, was %v; lane %+v", what, b.Growth, a.Growth, l)
	}
}

// lively returns a random lane that turns fast enough to be taut now and then.
func lively(r *rand.Rand) (engine.Lane, float64) {
	l := randomLane(r)
	for i := range l.Pieces {
		l.Pieces[i].Prop = frac.New(int64(2+r.IntN(4)), 1)
		l.Pieces[i].Swing = 0
	}
	return l, 150 + 200*r.Float64()
}

// TestUnchanged: turned about the vertical, mirrored, begun later, or cut where
// nothing changes, a pattern asks the same of a tether.
func TestUnchanged(t *testing.T) {
	r := chance.New(t)
	taut := 0
	for range 15 {
		l, tempo := lively(r)
		was := tether.Of(engine.NewTrack(l), tempo, false)
		if was.HasGrowth {
			taut++
		}
		// The wall plane turned about the vertical is the wheel plane, mirrored or
		// not; the floor plane turns in itself.
		turned := l
		p := engine.Pattern{Tempo: tempo, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}}
		switch l.Plane {
		case engine.Floor:
			turned = p.Turn(engine.Degrees(r.IntN(360))).Lanes[0]
		default:
			turned.Plane = engine.Wall + engine.Wheel - l.Plane
		}
		alike(t, "turned", was, tether.Of(engine.NewTrack(turned), tempo, false), l)
		alike(t, "mirrored", was, tether.Of(engine.NewTrack(p.Mirror().Lanes[0]), tempo, false), l)

		// Where a torn join becomes the round's end, the lane begun there never
		// closes, and of such a one a single round is read.
		begunLater := engine.NewTrack(l.Later(frac.New(int64(1+r.IntN(20)), 7)))
		if engine.NewTrack(l).Closing().Closes() && begunLater.Closing().Closes() {
			later := tether.Of(begunLater, tempo, false)
			later.Growth = was.Growth // put off at another moment
			alike(t, "begun later", was, later, l)
		}

		cut := l
		for range 3 {
			i := r.IntN(len(cut.Pieces))
			at := cut.Pieces[i].Length().Mul(frac.New(int64(1+r.IntN(6)), 7))
			next, err := cut.Cut(i, at)
			if err != nil {
				t.Fatal(err)
			}
			cut = next
		}
		alike(t, "cut", was, tether.Of(engine.NewTrack(cut), tempo, false), l)
	}
	if taut < 2 {
		t.Errorf("%d lanes with a growth: too few to tell", taut)
	}
}

// TestShifted: a lane that comes back after one round may begin with any of
// its pieces.
func TestShifted(t *testing.T) {
	c := engine.CirclePath(0, 0.6)
	l := halfMoon()
	shifted := lane(engine.Wall, 270, stroke(c, "-1", "3", "1/2", "2"), stroke(c, "1", "1", "1/2", "2"))
	for _, tempo := range []float64{90, 120, 200} {
		a, b := tether.Of(engine.NewTrack(l), tempo, false), tether.Of(engine.NewTrack(shifted), tempo, false)
		b.Growth = a.Growth // put off at another moment
		alike(t, "begun with the second piece", a, b, l)
	}
}

// TestSlices: however little is done at a time, the result is the same.
func TestSlices(t *testing.T) {
	r := chance.New(t)
	for range 10 {
		l, tempo := lively(r)
		want := tether.Of(engine.NewTrack(l), tempo, false)
		s := tether.New(engine.NewTrack(l), tempo, false)
		steps := 0
		for budget := 1; !s.Step(budget); budget = 1 + r.IntN(500) {
			steps++
		}
		if got := s.Result(); !reflect.DeepEqual(got, want) {
			t.Fatalf("in %d slices %+v, at once %+v; lane %+v", steps, got, want, l)
		}
		if !s.Step(1) {
			t.Fatal("done, and then not")
		}
	}
}

// TestTaken reckons in the room from the head's places alone, by differences
// of fourth order: the head's acceleration less gravity points at the hand
// that is really taken, which is a tether's length away.
func TestTaken(t *testing.T) {
	const g = 9.80665
	r := chance.New(t)
	for range 300 {
		l := randomLane(r)
		track := engine.NewTrack(l)
		tempo := 30 + 150*r.Float64()
		i := r.IntN(len(l.Pieces))
		p := l.Pieces[i]
		u := 0.1 + 0.8*r.Float64()
		turns := math.Abs(p.Arm.Mul(p.Cycles).Float()) + math.Abs(p.Prop.Mul(p.Cycles).Float())*(1+p.Swing.Radians())
		h := 2e-3 / (1 + turns)
		seconds := h * p.Length().Float() * 60 / tempo
		head := func(k float64) r3.Vec { return room.Place(l, track.PointAt(0, i, u+k*h).Head) }
		sum := r3.Scale(-30, head(0))
		sum = r3.Add(sum, r3.Scale(16, r3.Add(head(1), head(-1))))
		sum = r3.Sub(sum, r3.Add(head(2), head(-2)))
		force := r3.Sub(r3.Scale(1/(12*seconds*seconds), sum), r3.Vec{Y: -g})
		if r3.Norm(force) < 0.5 {
			continue // too little to tell a direction from
		}
		want := r3.Add(head(0), r3.Scale(l.Tether, r3.Unit(force)))

		v := tether.Taken(l, track.AtPiece(0, i, u), tempo)
		got := room.Place(l, complex(v.X, v.Y))
		switch l.Plane { // the way of the plane's normal
		case engine.Floor:
			got.Y += v.N
		default:
			if v.N != 0 {
				t.Fatalf("Taken leaves an upright plane: %+v", v)
			}
		}
		if d := r3.Norm(r3.Sub(got, want)); d > 1e-4 {
			t.Fatalf("Taken = %v, want %v (%v off); tempo %v, lane %+v", got, want, d, tempo, l)
		}
	}
}

// TestAstray: on paper. A level static spin leans by atan(g/(ω²L)) from
// level; its hand is the chord of that above the ideal one. A head that hangs
// still has its hand where it is.
func TestAstray(t *testing.T) {
	for _, tempo := range []float64{40, 60, 200} {
		w := 2 * math.Pi * tempo / 60
		lean := math.Atan(g0 / (w * w * 0.6))
		r := tether.Of(engine.NewTrack(static(0.6, engine.Floor)), tempo, false)
		if want := 2 * 0.6 * math.Sin(lean/2); !r.HasAstray || !near(r.Astray.Value, want, 1e-12) || r.Astray.Beat != 0 {
			t.Errorf("level spin at %v: %+v, want %v m", tempo, r.Astray, want)
		}
	}
	still := static(0.6, engine.Wall)
	still.Pieces[0].Prop = frac.Int(0)
	if r := tether.Of(engine.NewTrack(still), 100, false); !r.HasAstray || r.Astray.Value > 1e-12 || !near(r.Growth, 1, 0.2) {
		t.Errorf("hanging still: %+v, want the hand where it is and a wobble that stays", r)
	}
}

// TestAstrayBruteForce: plain looking finds the hand nowhere farther off.
func TestAstrayBruteForce(t *testing.T) {
	r := chance.New(t)
	seen := 0
	for range 12 {
		l, tempo := lively(r)
		track := engine.NewTrack(l)
		got := tether.Of(track, tempo, false)
		if !got.HasAstray {
			continue
		}
		seen++
		want := 0.0
		for round := range got.Rounds {
			for i := range l.Pieces {
				for k := range bruteMoments + 1 {
					at := track.AtPiece(round, i, float64(k)/bruteMoments)
					v := tether.Taken(l, at, tempo)
					want = math.Max(want, math.Hypot(math.Hypot(v.X-real(at.Hand), v.Y-imag(at.Hand)), v.N))
				}
			}
		}
		if got.Astray.Value < want-1e-9 || got.Astray.Value > want+1e-3 {
			t.Fatalf("astray %v, want %v; tempo %v, lane %+v", got.Astray.Value, want, tempo, l)
		}
	}
	if seen < 2 {
		t.Errorf("%d taut lanes: too few to tell", seen)
	}
}

// TestGrowth: at a tempo at which weight counts for nothing the wobble x of a
// head that goes round evenly at the radius r with the rate ω obeys
// x″ = −(r/L − 1)ω²x, as the tether carries rω² and turns with ω; from the
// pendulum's equation in a frame that turns, on paper. For extension r = R + L
// and it goes to and fro, for isolation r = L − R and it runs away.
func TestGrowth(t *testing.T) {
	const length, round = 0.6, 2 * math.Pi // a round in radians of the arm
	for _, x := range []struct {
		name   string
		radius float64 // of the hand
		prop   engine.Degrees
	}{
		{"extension, a wobble a round", length, 0},
		{"extension, wide", 1.37 * length, 0},
		{"isolation", length / 2, 180},
		{"isolation, small", length / 10, 180},
	} {
		l := lane(engine.Wall, 0, stroke(engine.CirclePath(0, x.radius), "1", "1", "1", "1"))
		l.PropAt = x.prop
		r := length + x.radius
		if x.prop != 0 {
			r = length - x.radius
		}
		// The size counts the rate at √(ρ/L) = √(r/L)·ω.
		q := r/length - 1
		k := math.Sqrt(math.Abs(q))
		sin, cos := math.Sincos(8 * k * round)
		angle, rate := cos, k*sin
		if q < 0 {
			angle, rate = math.Cosh(8*k*round), k*math.Sinh(8*k*round)
		}
		want := math.Pow(math.Hypot(angle, rate/math.Sqrt(r/length)), 1.0/8)
		got := tether.Of(engine.NewTrack(l), 4e4, false)
		if !got.HasGrowth || !near(got.Growth, want, 2e-3) {
			t.Errorf("%s: growth %v, want %v", x.name, got.Growth, want)
		}
	}
}

// TestGrowthOfNothing: under a hand that stays, hanging still for minutes, the
// wobble is a plain pendulum's, of which the size, its energy, stays.
func TestGrowthOfNothing(t *testing.T) {
	for _, beats := range []string{"1", "7", "100"} {
		l := lane(engine.Wall, -90, stroke(engine.PointPath(0), "0", "0", "1", beats))
		if r := tether.Of(engine.NewTrack(l), 60, false); !r.HasGrowth || !near(r.Growth, 1, 1e-3) {
			t.Errorf("%s beats: growth %v (%v), want 1", beats, r.Growth, r.HasGrowth)
		}
	}
}

// TestLong: what turns for ever is answered in a bounded time.
func TestLong(t *testing.T) {
	l := lane(engine.Wall, 90, engine.Stroke(engine.CirclePath(0, 0.6), frac.Int(1), frac.Int(64), frac.Int(1000), frac.Int(1000)))
	r := tether.Of(engine.NewTrack(l), 120, false)
	if r.Slack || r.HasGrowth || !r.HasAstray {
		t.Errorf("%+v, want taut, a hand, and no growth after 65,000 turns", r)
	}
}

// TestGraphAndLines: both end where the pieces do, and hold as many points as
// was asked for or a few more.
func TestGraphAndLines(t *testing.T) {
	track := engine.NewTrack(halfMoon())
	traces := tether.Graph(track, 120, 0, 100)
	points := 0
	for i, tr := range traces {
		points += len(tr.Pull)
		if tr.From != float64(2*i) || tr.To != float64(2*i+2) {
			t.Errorf("trace %d from beat %v to %v", i, tr.From, tr.To)
		}
		for _, end := range []struct{ share, got float64 }{{0, tr.Pull[0]}, {1, tr.Pull[len(tr.Pull)-1]}} {
			if want := tether.Pull(track.Lane, track.AtPiece(0, i, end.share), 120); end.got != want {
				t.Errorf("trace %d at %v: %v, want %v", i, end.share, end.got, want)
			}
		}
	}
	if points != 100 {
		t.Errorf("%d points, want 100", points)
	}
	lines := tether.Lines(track, 120, 0, 100)
	points = 0
	for i, line := range lines {
		points += len(line)
		if got, want := line[len(line)-1], tether.Taken(track.Lane, track.AtPiece(0, i, 1), 120); got != want {
			t.Errorf("line %d ends at %v, want %v", i, got, want)
		}
	}
	if len(lines) != 2 || points < 100 || points > 106 {
		t.Errorf("%d lines of %d points, want 2 of about 100", len(lines), points)
	}
}

// BenchmarkFifty studies fifty pieces, taut, that close after one round.
func BenchmarkFifty(b *testing.B) {
	l := lane(engine.Wall, 90)
	c := engine.CirclePath(0, 0.6)
	for range 25 {
		l.Pieces = append(l.Pieces, stroke(c, "1", "1", "1/2", "2"), stroke(c, "-1", "3", "1/2", "2"))
	}
	track := engine.NewTrack(l)
	for _, x := range []struct {
		name  string
		tempo float64
	}{{"taut", 160}, {"slack", 90}} {
		b.Run(x.name, func(b *testing.B) {
			for b.Loop() {
				tether.Of(track, x.tempo, false)
			}
		})
	}
}
