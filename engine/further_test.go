package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// TestFurther holds the third and fourth derivative against the slopes of the
// second and third.
func TestFurther(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 1000 {
		l := r.lane()
		track := engine.NewTrack(l)
		i := r.IntN(len(l.Pieces))
		p := l.Pieces[i]
		span := p.Length().Float()
		w := (1 + abs(p.Arm.Float()) + abs(p.Prop.Float())*(1+rad(float64(p.Swing)))) * p.Cycles.Float() * 2 * math.Pi / p.Beats.Float()
		w += 2 / p.Beats.Float()
		size := 1 + p.Path.A + p.Path.B + l.Tether
		h := min(1e-3/w, span/10)
		u := 0.25 + r.Float64()/2
		round := r.IntN(4)
		st, third, fourth := track.Further(round, i, u)
		wantThird := slope(func(dt float64) complex128 { return track.AtPiece(round, i, u+dt/span).HeadAcc }, h)
		wantFourth := slope(func(dt float64) complex128 { _, x, _ := track.Further(round, i, u+dt/span); return x }, h)
		if want := track.AtPiece(round, i, u); st != want {
			t.Fatalf("state %+v, want %+v; piece %+v", st, want, p)
		}
		if d := cmplx.Abs(third - wantThird); !(d <= 1e-8*w*w*w*size) {
			t.Fatalf("third = %v, want the slope %v; piece %+v", third, wantThird, p)
		}
		if d := cmplx.Abs(fourth - wantFourth); !(d <= 1e-8*w*w*w*w*size) {
			t.Fatalf("fourth = %v, want the slope %v; piece %+v", fourth, wantFourth, p)
		}
	}
}
