package naming_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
)

func judge(l engine.Lane) naming.Whole {
	t := engine.NewTrack(l)
	return naming.Judge(t, seam.Of(t, 90, false))
}

// whole makes lanes of every sort that has a name.
type whole struct{ *rand.Rand }

func (r whole) pick(of ...int64) int64 { return of[r.IntN(len(of))] }

func (r whole) angle() engine.Degrees { return engine.Degrees(r.IntN(1441) - 720) }

func (r whole) size() float64 { return 0.1 + float64(r.IntN(1200))/1000 }

func (r whole) place() complex128 {
	return complex(float64(r.IntN(200))/100-1, float64(r.IntN(200))/100-1)
}

func (r whole) beats() frac.Frac { return frac.New(int64(1+r.IntN(6)), int64(1+r.IntN(3))) }

func (r whole) law(p engine.Piece) engine.Piece {
	if r.IntN(3) == 0 {
		p.Law = engine.Law(r.IntN(4))
	}
	return p
}

func at(p engine.Piece, arm engine.Degrees) engine.Piece {
	p.ArmAt = engine.Some(arm)
	return p
}

// c goes to and fro on one arc, in whole ratios mostly.
func (r whole) c() []engine.Piece {
	path := engine.CirclePath(r.place(), r.size())
	turns := frac.New(r.pick(1, 2, 3, 5, 8), 6) // 8/6: more than the circle
	var out []engine.Piece
	for range 1 + r.IntN(2) {
		for _, arm := range []int64{1, -1} {
			p := engine.Stroke(path, frac.Int(arm), frac.Int(r.pick(-3, -2, -1, 1, 2, 3, 0)), turns, r.beats())
			if r.IntN(12) == 0 {
				p.Prop = frac.New(3, 2)
			}
			if r.IntN(12) == 0 {
				p.Cycles = frac.New(1, 6)
			}
			out = append(out, r.law(p))
		}
	}
	return out
}

// s goes to and fro on two arcs that touch where they meet.
func (r whole) s() []engine.Piece {
	a, b := r.size(), r.size()
	c := r.place()
	left, right := engine.CirclePath(c-complex(a, 0), a), engine.CirclePath(c+complex(b, 0), b)
	piece := func(path engine.Path, arm int64) engine.Piece {
		return r.law(engine.Stroke(path, frac.Int(arm), frac.Int(r.pick(-2, -1, 1, 2)), frac.New(1, 2), r.beats()))
	}
	out := []engine.Piece{at(piece(left, 1), 180), at(piece(right, -1), 180), piece(right, 1), at(piece(left, -1), 0)}
	if r.IntN(6) == 0 { // as an eight
		for i := range out {
			out[i].Cycles = frac.Int(1)
		}
		out[1].ArmAt = engine.Some(180)
		out[0].ArmAt, out[3].ArmAt = engine.Some(0), engine.Some(0)
		out[2].ArmAt = engine.Some(180)
	}
	return out
}

// square goes round four sides, at times with waits or back again.
func (r whole) square() []engine.Piece {
	half := r.size()
	tilt, c := float64(r.angle()), r.place()
	speed := r.pick(-1, 1, 1, 3)
	var out, back []engine.Piece
	for k := range 4 {
		turn := engine.Degrees(tilt + float64(90*k))
		sin, cos := math.Sincos(turn.Radians() + math.Pi/2)
		path := engine.LinePath(c+complex(half*cos, half*sin), half, turn)
		if k == 2 && r.IntN(10) == 0 {
			path.A = half / 2
		}
		p := at(r.law(engine.Stroke(path, frac.Int(1), frac.Int(speed), frac.New(1, 2), r.beats())), turn)
		out = append(out, p)
		q := p
		q.Arm = q.Arm.Neg()
		q.ArmAt.At += 180
		back = append(back, q)
		if r.IntN(8) == 0 {
			end := c + complex(half*cos, half*sin) - complex(half*math.Cos(turn.Radians()), half*math.Sin(turn.Radians()))
			out = append(out, engine.Stroke(engine.PointPath(end), frac.Frac{}, frac.Int(speed), frac.New(1, 4), r.beats()))
		}
	}
	if r.IntN(3) == 0 {
		slices.Reverse(back)
		out = append(out, back...)
	}
	return out
}

// one is slices of one pattern, there and back at times.
func (r whole) one() []engine.Piece {
	p := randomPattern(r.Rand).Lanes[0].Pieces[0]
	p.Law = engine.Even
	if p.Prop.IsZero() {
		p.Swing = 0 // a prop that neither swings nor hangs down
	}
	out := []engine.Piece{p}
	// What is left of the turn of the arm.
	left := frac.Int(4).Sub(p.Arm.Abs().Mul(p.Cycles).Mod1())
	if !p.Arm.IsZero() && p.Swing == 0 {
		q := p
		q.Cycles, q.Beats = left.Div(p.Arm.Abs()), r.beats()
		if r.IntN(2) == 0 {
			q.Arm, q.Prop, q.Cycles = p.Arm.Neg(), p.Prop.Neg(), p.Cycles
		}
		out = append(out, q)
	}
	return out
}

func (r whole) lane() engine.Lane {
	l := engine.Lane{Side: engine.Right, Tether: r.size(), ArmAt: r.angle(), PropAt: r.angle(), Centre: r.place()}
	if r.IntN(2) == 0 {
		l.PropAt = l.ArmAt + engine.Degrees(180*r.IntN(2))
	}
	switch r.IntN(6) {
	case 0, 1:
		l.Pieces = r.c()
	case 2:
		l.Pieces = r.s()
	case 3:
		l.Pieces = r.square()
	case 4:
		l.Pieces = r.one()
	default:
		for range 1 + r.IntN(3) {
			l.Pieces = append(l.Pieces, r.one()...)
		}
	}
	return l
}

// rulings in the order of a report.
func rulings(w naming.Whole) [6]naming.Ruling {
	return [6]naming.Ruling{w.Elementary, w.Broad, w.Strict, w.C, w.S, w.Diamond}
}

// names writes what a lane is called, and nothing that goes with where it
// stands or where it begins.
func names(w naming.Whole) string {
	var parts []string
	for _, p := range w.Parts {
		f := p.Figure
		f.Offset = engine.Degrees(math.Abs(float64(f.Offset)))
		f.HasTip, f.Mode = false, naming.NoMode
		if f.Spin == naming.SpinLine {
			f.Ratio = f.Ratio.Abs() // either sign is one pattern
		}
		s := fmt.Sprintf("%s %v", text(f), p.Shifts)
		if !slices.Contains(parts, s) {
			parts = append(parts, s)
		}
	}
	slices.Sort(parts)
	s := fmt.Sprintf("shape %d closes %v:", w.Shape(), w.Closes)
	for _, r := range rulings(w) {
		s += fmt.Sprintf(" %v", r.Yes)
	}
	return s + "; " + strings.Join(parts, ", ")
}

// clauses writes which clauses decided.
func clauses(w naming.Whole) string {
	s := fmt.Sprintf("jumps %v:", w.Jump.Yes)
	for _, r := range rulings(w) {
		s += fmt.Sprintf(" %d", r.Clause)
	}
	return s
}

// beganAt returns the lane as it is when it begins at piece k.
func beganAt(l engine.Lane, k int) engine.Lane {
	t := engine.NewTrack(l)
	pieces := slices.Clone(l.Pieces)
	// The first piece begins each round at the lane's start: now that place has
	// to be its own.
	if !pieces[0].ArmAt.Set {
		pieces[0].ArmAt = engine.Some(l.ArmAt)
	}
	if t.Pinned && !pieces[0].PropAt.Set && pieces[0].Swing == 0 {
		pieces[0].PropAt = engine.Some(l.PropAt)
	}
	l.ArmAt, l.PropAt = engine.ToDegrees(t.Legs[k].Arm0), engine.ToDegrees(t.Legs[k].Prop0)
	l.Pieces = append(slices.Clone(pieces[k:]), pieces[:k]...)
	return l
}

// cut divides a random piece at a random place.
func (r whole) cut(t *testing.T, l engine.Lane) engine.Lane {
	t.Helper()
	i := r.IntN(len(l.Pieces))
	den := int64(2 + r.IntN(11))
	out, err := l.Cut(i, l.Pieces[i].Length().Mul(frac.New(1+r.Int64N(den-1), den)))
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// asEllipses writes every circle and stroke as an ellipse.
func (r whole) asEllipses(l engine.Lane) engine.Lane {
	l.Pieces = slices.Clone(l.Pieces)
	for i := range l.Pieces {
		p := &l.Pieces[i].Path
		switch p.Kind {
		case engine.OnCircle:
			*p = engine.EllipsePath(p.Centre, p.A, p.B, r.angle())
		case engine.OnLine:
			*p = engine.EllipsePath(p.Centre, 0, p.A, p.Tilt-90)
		}
	}
	return l
}

// TestNamesStay: the same pattern turned, mirrored, resized, written otherwise,
// cut into needless pieces or begun elsewhere has the same names; but where it
// begins elsewhere, another clause may be the first to decide.
func TestNamesStay(t *testing.T) {
	r := whole{chance.New(t)}
	yes, seen := [6]int{}, map[naming.Clause]int{}
	for range 1000 {
		l := r.lane()
		p := engine.Pattern{Tempo: 90, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}}
		was := judge(l)
		for i, ruling := range rulings(was) {
			seen[ruling.Clause]++
			if ruling.Yes {
				yes[i]++
			}
		}
		cut := r.cut(t, r.cut(t, l))
		// A jump of the hand is where a lane begins or it is not: that decides
		// whether it closes.
		jumps := slices.ContainsFunc(seam.Of(engine.NewTrack(l), 90, false), func(s seam.Seam) bool { return s.HandGap > engine.TolGap })
		// A pendulum hangs down as before, whatever is turned beside it.
		hangs := slices.ContainsFunc(l.Pieces, func(p engine.Piece) bool { return p.Swing != 0 })
		for _, test := range []struct {
			name    string
			lane    engine.Lane
			clauses bool // must stay too
		}{
			{"mirrored", p.Mirror().Lanes[0], true},
			{"turned", p.Turn(r.angle() + 0.3).Lanes[0], true},
			{"scaled", p.Scale(0.3 + 2*r.Float64()).Lanes[0], true},
			{"cut", cut, true},
			{"written as ellipses", r.asEllipses(l), true},
			{"begun at another piece", beganAt(l, r.IntN(len(l.Pieces))), false},
			{"begun within a piece", beganAt(cut, r.IntN(len(cut.Pieces))), false},
		} {
			begun := strings.HasPrefix(test.name, "begun")
			if begun && jumps || test.name == "turned" && hangs {
				continue
			}
			got := judge(test.lane)
			if g, w := names(got), names(was); g != w {
				t.Fatalf("%s: %s\nwas %s\n%+v\nwas %+v", test.name, g, w, test.lane, l)
			}
			if g, w := clauses(got), clauses(was); g != w && test.clauses {
				t.Fatalf("%s: clauses %s\nwas %s\n%+v\nwas %+v", test.name, g, w, test.lane, l)
			}
		}
	}
	for i, name := range []string{"elementary", "broad", "strict", "C", "S", "diamond"} {
		if yes[i] < 10 {
			t.Errorf("only %d patterns tried are %s", yes[i], name)
		}
	}
	t.Logf("yes: %v; clauses: %v", yes, seen)
}

// fifty is a lane of fifty pieces whose prop comes back after 20 rounds.
func fifty() engine.Lane {
	l := engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: 90, PropAt: 90}
	for i := range int64(50) {
		arm := frac.Int(1 - 2*(i%2))
		l.Pieces = append(l.Pieces, engine.Stroke(engine.CirclePath(0, 0.6), arm, frac.New(i+1, 10), frac.New(1, 2), frac.Int(1)))
	}
	return l
}

func BenchmarkJudge(b *testing.B) {
	t := engine.NewTrack(fifty())
	seams := seam.Of(t, 90, false)
	for b.Loop() {
		naming.Judge(t, seams)
	}
}

func BenchmarkHybrid(b *testing.B) {
	t := engine.NewTrack(fifty())
	for b.Loop() {
		naming.Hybrid(t, t)
	}
}
