package presets_test

import (
	"math"
	"math/cmplx"
	"testing"

	"gonum.org/v1/gonum/mat"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

func track(t *testing.T, id string, hand int) *engine.Track {
	t.Helper()
	return engine.NewTrack(pattern(t, id).Lanes[hand])
}

// TestLibraryPetals counts petals on the drawn curve: places where the head
// is furthest from the middle of the hand's circle, over the closing rounds
// (common practice for the numbers).
func TestLibraryPetals(t *testing.T) {
	for _, test := range []struct {
		id   string
		want int
	}{
		{"whelk-shell", 1}, {"twin-lanterns", 2}, {"three-gulls", 3}, {"four-buoys", 4},
		{"ships-cat", 2}, {"three-sails", 3}, {"compass-card", 4}, {"harbour-square", 4}, {"starfish", 5},
		{"coil-of-rope", 3}, {"paper-star", 5}, {"net-mender", 7},
	} {
		tr := track(t, test.id, 0)
		c, n := tr.Legs[0].Path().Centre, 7200*int(tr.Closing().Rounds.Int64())
		step := tr.Beats / 7200
		far := func(k int) float64 { return cmplx.Abs(tr.At((float64(k)+0.5)*step).Head - c) }
		got := 0
		for k := range n {
			if far(k-1) < far(k) && far(k) >= far(k+1) {
				got++
			}
		}
		if got != test.want {
			t.Errorf("%s: the head is furthest out %d times, want %d", test.id, got, test.want)
		}
	}
}

// TestLibraryCCaps: the hand goes to and fro on one arc (common practice).
func TestLibraryCCaps(t *testing.T) {
	for _, test := range []struct {
		id   string
		hand int
	}{{"half-moon", 0}, {"bell-buoy", 0}, {"wind-in-the-rigging", 0}, {"two-ferries", 0}, {"two-ferries", 1}, {"two-bell-buoys", 1}, {"pier-end", 1}} {
		tr := track(t, test.id, test.hand)
		for k := range 11 {
			u := float64(k) / 10
			there, back := tr.AtPiece(0, 0, u), tr.AtPiece(0, 1, 1-u)
			if d := cmplx.Abs(there.Hand - back.Hand); d > 1e-9 {
				t.Errorf("%s: at share %v there and back are %v m apart, want one arc", test.id, u, d)
			}
		}
	}
}

// TestSwan: on an S-cap of equal beats the head's speed jumps across the
// tether by |2R − L|ω at the ends and by Lω in the middle: the hand comes
// with ω(R + L) into the middle and leaves with ω(R + 2L), and so on.
func TestSwan(t *testing.T) {
	const r, l = 0.3, 0.6
	p := pattern(t, "swan")
	tr := engine.NewTrack(p.Lanes[0])
	omega := math.Pi / 2 * p.Tempo / 60 // half a turn in two beats, rad/s
	for i, s := range seam.Of(tr, p.Tempo, false) {
		want := []float64{l * omega, math.Abs(2*r-l) * omega}[i%2]
		if got := math.Abs(s.JumpAcross); math.Abs(got-want) > 1e-9 {
			t.Errorf("swan: jump across after piece %d = %v m/s, want %v", i+1, got, want)
		}
	}
	if got := tr.PerRound.String(); got != "3" {
		t.Errorf("swan: the prop turns %s times a round, want 3", got)
	}
}

// TestTwoBends: an arm that starts each arc softly comes to its end π/2 times
// as fast as an even one. Then the end of the S asks for 2L − (π/2)R = L and
// its middle for (π/2)R + L = 2L: both say R = 2L/π.
func TestTwoBends(t *testing.T) {
	p := pattern(t, "two-bends")
	want := 2 * p.Lanes[0].Tether / math.Pi
	for i, piece := range p.Lanes[0].Pieces {
		if got := piece.Path.A; math.Abs(got-want) > 5e-5 {
			t.Errorf("two-bends: radius of piece %d = %v, want %v to four places", i+1, got, want)
		}
	}
}

// TestTriquetraHand: half a circle and its diameter draw two petals on the
// diagonals and one straight away from the half circle, at beats of R + 3L to
// L; the hand with the bell is the other turned by half a turn.
func TestTriquetraHand(t *testing.T) {
	for _, test := range []struct {
		id   string
		r, l float64
		turn float64 // degrees
		want float64 // beats of the circle to one of the stroke
	}{{"gangway", 0.3, 0.6, 0, 3.5}, {"gangway-and-bell", 0.6, 0.6, 180, 4}} {
		tr := track(t, test.id, 0)
		if got := tr.Legs[0].Span / tr.Legs[1].Span; math.Abs(got-test.want) > 1e-12 || math.Abs(test.want*test.l-(test.r+3*test.l)) > 1e-12 {
			t.Errorf("%s: beats are %v to 1, want %v", test.id, got, test.want)
		}
		c := tr.Lane.Centre
		for _, tip := range []struct {
			piece      int
			u          float64
			far, angle float64
		}{{0, 0.25, test.r + test.l, 225}, {0, 0.75, test.r + test.l, 315}, {1, 0.5, test.l, 90}} {
			want := c + cmplx.Rect(tip.far, (tip.angle+test.turn)*math.Pi/180)
			if got := tr.AtPiece(0, tip.piece, tip.u).Head; cmplx.Abs(got-want) > 1e-9 {
				t.Errorf("%s: piece %d has the head at %v at share %v, want %v", test.id, tip.piece+1, got, tip.u, want)
			}
		}
	}
}

// strokes returns the indices of a diamond's straight strokes.
func strokes(tr *engine.Track) []int {
	var at []int
	for i := range tr.Legs {
		if tr.Legs[i].Path().IsLine() {
			at = append(at, i)
		}
	}
	return at
}

// TestDiamonds: straight strokes round a square that stands on a corner; the
// forms go round with the prop, against it, or switch (common practice). With
// the prop, all four sides can be slices of linear extensions. Against it, no
// three sides running can: with φ the turn since a stroke's beginning, 0° to
// 180°, a corner asks for φ after = φ before + 90°. So the hand waits while
// the prop turns on, or only every other side has the prop in line.
func TestDiamonds(t *testing.T) {
	for _, test := range []struct {
		id   string
		want []float64 // by stroke: +1 with the prop, -1 against it
	}{
		{"kite", []float64{1, 1, 1, 1}},
		{"sluice", []float64{-1, -1, -1, -1}},
		{"four-corners", []float64{-1, -1, -1, -1}},
		{"rounds-of-the-watch", []float64{1, 1, 1, 1, -1, -1, -1, -1}},
	} {
		tr := track(t, test.id, 0)
		c := tr.Lane.Centre
		at := strokes(tr)
		if len(at) != len(test.want) {
			t.Errorf("%s: %d straight strokes, want %d", test.id, len(at), len(test.want))
			continue
		}
		for k, i := range at {
			a, b := tr.AtPiece(0, i, 0), tr.AtPiece(0, i, 1)
			from, to := a.Hand-c, b.Hand-c
			round := to / from // a quarter turn about the middle
			if math.Abs(real(round)) > 1e-9 || math.Abs(math.Abs(imag(round))-1) > 1e-9 {
				t.Errorf("%s: stroke %d goes from %v to %v, want a quarter round the middle", test.id, k+1, from, to)
			}
			if math.Abs(real(from)*imag(from)) > 1e-9 {
				t.Errorf("%s: stroke %d begins at %v, want a corner above, below or beside", test.id, k+1, from)
			}
			if got := math.Copysign(1, imag(round)*(b.Prop-a.Prop)); got != test.want[k] {
				t.Errorf("%s: stroke %d goes with the prop %v, want %v", test.id, k+1, got, test.want[k])
			}
		}
	}
}

// TestDiamondStrokesAreEllipses fits a conic to the head's path of every
// stroke: one with B² < 4AC is an ellipse (any text on analytic geometry; the
// fact itself is common practice).
func TestDiamondStrokesAreEllipses(t *testing.T) {
	for _, id := range []string{"kite", "sluice", "four-corners", "rounds-of-the-watch"} {
		tr := track(t, id, 0)
		for _, i := range strokes(tr) {
			const n = 90
			middle := tr.Legs[i].Path().Centre
			m := mat.NewDense(n, 6, nil)
			for k := range n {
				z := tr.AtPiece(0, i, float64(k)/(n-1)).Head - middle
				x, y := real(z), imag(z)
				m.SetRow(k, []float64{x * x, x * y, y * y, x, y, 1})
			}
			var svd mat.SVD
			if !svd.Factorize(m, mat.SVDThin) {
				t.Fatalf("%s: no singular values for stroke %d", id, i+1)
			}
			size := svd.Values(nil)
			var v mat.Dense
			svd.VTo(&v)
			// Only one conic fits: the least singular value alone vanishes.
			if size[5] > 1e-12*size[0] || size[4] < 1e-6*size[0] {
				t.Errorf("%s: piece %d has singular values %v, want the last alone to vanish", id, i+1, size)
			}
			if a, b, c := v.At(0, 5), v.At(1, 5), v.At(2, 5); b*b-4*a*c >= -1e-6 {
				t.Errorf("%s: piece %d lies on a conic with B² − 4AC = %v, want less than 0", id, i+1, b*b-4*a*c)
			}
		}
	}
}

// TestLampSwingsByItself: the built-in pendulum keeps the time of a real one.
// Its period is reckoned by integrating θ″ = −(g/L) sin θ from 50° down to the
// bottom, a quarter of it (any mechanics text).
func TestLampSwingsByItself(t *testing.T) {
	p := pattern(t, "lamp-under-the-bridge")
	k := 9.80665 / p.Lanes[0].Tether
	const dt = 1e-5 // s
	theta, speed, quarter := 50*math.Pi/180, 0.0, 0.0
	for theta > 0 {
		// The middle of the step, then the step: second order.
		half := theta + speed*dt/2
		speed -= k * math.Sin(half) * dt
		theta = half + speed*dt/2
		quarter += dt
	}
	got := p.Lanes[0].Beats().Float() * 60 / p.Tempo
	if want := 4 * quarter; math.Abs(got-want) > 0.01*want {
		t.Errorf("period %v s, want %v within a hundredth", got, want)
	}
}
