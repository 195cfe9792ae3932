package tether_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/room"
	"whorlbench/engine/tether"
)

// static is a hand that stays while the prop goes round once a beat, from the
// bottom.
func static(length float64, plane engine.Plane) engine.Lane {
	p := engine.Stroke(engine.PointPath(0), frac.Int(0), frac.Int(1), frac.Int(1), frac.Int(1))
	return engine.Lane{Plane: plane, Tether: length, PropAt: -90, Pieces: []engine.Piece{p}}
}

func pullAt(l engine.Lane, beat, tempo float64) float64 {
	return tether.Pull(l, engine.NewTrack(l).At(beat), tempo)
}

// TestVerticalCircle: at constant speed, with v² = ω²L, the tether pulls
// mv²/L + mg at the bottom, mv²/L − mg at the top and mv²/L at the sides: two
// weights from bottom to top, nothing at the top when ω = √(g/L). Halliday,
// Resnick & Walker, Fundamentals of Physics, on circular motion; from memory,
// confirmed by TestNewton.
func TestVerticalCircle(t *testing.T) {
	const g = 9.80665
	for _, length := range []float64{0.05, 0.6, 1, 3} {
		for _, fast := range []float64{1, 0.5, 1.5, 4} { // of the least speed that keeps it taut
			w := fast * math.Sqrt(g/length)
			tempo := w / (2 * math.Pi) * 60
			for _, plane := range []engine.Plane{engine.Wall, engine.Wheel} {
				l := static(length, plane)
				for _, place := range []struct {
					name string
					beat float64
					want float64
				}{
					{"bottom", 0, fast*fast + 1}, {"side", 0.25, fast * fast}, {"top", 0.5, fast*fast - 1}, {"other side", 0.75, fast * fast},
				} {
					if got := pullAt(l, place.beat, tempo); math.Abs(got-place.want) > 1e-12*(1+place.want) {
						t.Errorf("L = %v, %v √(g/L), plane %d: pull at the %s = %v, want %v", length, fast, plane, place.name, got, place.want)
					}
				}
				if got := pullAt(l, 0, tempo) - pullAt(l, 0.5, tempo); math.Abs(got-2) > 1e-12*(2+fast*fast) {
					t.Errorf("L = %v, %v √(g/L): bottom − top = %v weights, want 2", length, fast, got)
				}
			}
		}
	}
}

// TestLevelCircle: in the floor plane the tether pulls mω²L all the way round.
func TestLevelCircle(t *testing.T) {
	const g = 9.80665
	for beat := 0.0; beat < 1; beat += 0.0625 {
		if got, want := pullAt(static(0.6, engine.Floor), beat, 60), 4*math.Pi*math.Pi*0.6/g; math.Abs(got-want) > 1e-12*want {
			t.Errorf("pull at beat %v = %v, want %v", beat, got, want)
		}
	}
}

// TestHanging: nothing moves, and the tether carries one weight; a head that
// is held up on it would have to be pushed with one weight; level, it carries
// nothing along itself.
func TestHanging(t *testing.T) {
	for _, test := range []struct {
		at   engine.Degrees
		want float64
	}{{-90, 1}, {90, -1}, {0, 0}, {180, 0}, {-60, math.Sqrt(3) / 2}} {
		l := static(0.6, engine.Wall)
		l.Pieces[0].Prop, l.PropAt = frac.Int(0), test.at
		if got := pullAt(l, 0.3, 90); math.Abs(got-test.want) > 1e-12 {
			t.Errorf("at %v°: pull = %v, want %v", test.at, got, test.want)
		}
	}
}

// TestReleasedPendulum: a pendulum that swings as far as level is at rest there
// and carries nothing; the movement is the model's, steady in phase, whose
// speed at the bottom is swing·2π a beat: 1 + Lω²/g.
func TestReleasedPendulum(t *testing.T) {
	const g, length = 9.80665, 0.6
	l := static(length, engine.Wall)
	l.Pieces[0].Swing = 90
	w := math.Pi / 2 * 2 * math.Pi
	for _, test := range []struct{ beat, want float64 }{{0, 0}, {0.25, 1 + length*w*w/g}, {0.5, 0}} {
		if got := pullAt(l, test.beat, 60); math.Abs(got-test.want) > 1e-12*(1+test.want) {
			t.Errorf("pull at beat %v = %v, want %v", test.beat, got, test.want)
		}
	}
}

// TestNewton reckons the pull in the room from the head's places alone: mass
// times acceleration, by second differences of fourth order, is the tether's
// force and the weight. What the tether would have to carry is the part along it.
func TestNewton(t *testing.T) {
	const g = 9.80665
	r := chance.New(t)
	paths := []engine.Path{
		engine.CirclePath(0.2i, 0.6), engine.LinePath(0.1, 0.5, 33), engine.EllipsePath(0, 0.7, 0.3, 110), engine.PointPath(1),
	}
	for range 500 {
		p := engine.Stroke(paths[r.IntN(len(paths))],
			frac.New(int64(r.IntN(9)-4), int64(1+r.IntN(3))), frac.New(int64(r.IntN(13)-6), int64(1+r.IntN(3))), frac.New(int64(1+r.IntN(6)), 3), frac.New(int64(1+r.IntN(6)), 2))
		p.Law = engine.Law(r.IntN(4))
		if r.IntN(4) == 0 {
			p.Swing = engine.Degrees(1 + r.IntN(180))
		}
		l := engine.Lane{
			Plane: engine.Plane(r.IntN(3)), Offset: r.Float64() - 0.5, Tether: 0.3 + r.Float64(),
			ArmAt: engine.Degrees(r.IntN(360)), PropAt: engine.Degrees(r.IntN(360)), Pieces: []engine.Piece{p},
		}
		track := engine.NewTrack(l)
		tempo := 30 + 150*r.Float64()
		u := 0.1 + 0.8*r.Float64()
		turns := math.Abs(p.Arm.Mul(p.Cycles).Float()) + math.Abs(p.Prop.Mul(p.Cycles).Float())*(1+p.Swing.Radians())
		h := 2e-3 / (1 + turns)
		seconds := h * p.Length().Float() * 60 / tempo
		head := func(k float64) r3.Vec { return room.Place(l, track.PointAt(0, 0, u+k*h).Head) }

		sum := r3.Scale(-30, head(0))
		sum = r3.Add(sum, r3.Scale(16, r3.Add(head(1), head(-1))))
		sum = r3.Sub(sum, r3.Add(head(2), head(-2)))
		force := r3.Sub(r3.Scale(1/(12*seconds*seconds), sum), r3.Vec{Y: -g}) // of the tether, a unit of mass
		in := r3.Sub(room.Place(l, track.PointAt(0, 0, u).Hand), head(0))
		want := r3.Dot(force, r3.Unit(in)) / g

		got := tether.Pull(l, track.AtPiece(0, 0, u), tempo)
		if math.Abs(got-want) > 1e-6*(1+r3.Norm(force)/g) {
			t.Fatalf("Pull = %v, want %v; tempo %v, share %v, lane %+v", got, want, tempo, u, l)
		}
	}
}

// TestFreeHead: a head that keeps its energy is faster at the bottom by
// v² = 4gL; with the least speed at the top, √(gL), the tether pulls with six
// weights at the bottom. Halliday, Resnick & Walker, on the conservation of
// energy; from memory, the speeds confirmed by ½v² + gy.
func TestFreeHead(t *testing.T) {
	const g, length = 9.80665, 0.6
	top, bottom := math.Sqrt(g*length), math.Sqrt(5*g*length)
	if a, b := top*top/2+2*g*length, bottom*bottom/2; math.Abs(a-b) > 1e-12 {
		t.Fatalf("energy %v at the top, %v at the bottom", a, b)
	}
	tempo := func(v float64) float64 { return v / length / (2 * math.Pi) * 60 }
	l := static(length, engine.Wall)
	if got := pullAt(l, 0, tempo(bottom)) - pullAt(l, 0.5, tempo(top)); math.Abs(got-6) > 1e-12 {
		t.Errorf("bottom − top = %v weights, want 6", got)
	}
}
