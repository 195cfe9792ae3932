package words

import (
	"reflect"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
	"whorlbench/engine/mend"
)

func TestMixed(t *testing.T) {
	for _, tt := range []struct {
		f    frac.Frac
		want string
	}{
		{frac.Int(2), "2"}, {frac.New(4, 3), "1⅓"}, {frac.New(8, 3), "2⅔"}, {frac.New(1, 2), "½"}, {frac.New(12, 7), "1 5/7"},
		{frac.New(5, 12), "5/12"}, {frac.New(40, 37), "40/37"}, {frac.New(-1, 2), "−0.5"}, {frac.New(1, 16), "1/16"},
	} {
		if got := Mixed(tt.f); got != tt.want {
			t.Errorf("Mixed(%v) = %q, want %q", tt.f, got, tt.want)
		}
	}
}

// bay is a C: half a circle of radius r from above and back, on a tether of
// 0.6 m, two beats each way.
func bay(r float64, out, back int64) engine.Lane {
	path := engine.CirclePath(0, r)
	half, two := frac.New(1, 2), frac.Int(2)
	return engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: 90, PropAt: 90, Pieces: []engine.Piece{
		engine.Stroke(path, frac.Int(1), frac.Int(out), half, two),
		engine.Stroke(path, frac.Int(-1), frac.Int(back), half, two),
	}}
}

// TestRemedy: whole sentences, for fixes whose numbers stand in the model: at a
// petal tip antispin −m after extension is smooth with m = 1 + 2R/L, else with
// beats as R + L to mL − R.
func TestRemedy(t *testing.T) {
	turnedBack, placed := bay(0.6, 1, -1), bay(0.6, 1, 3)
	placed.Pieces[1].PropAt = engine.Some(300)
	for _, test := range []struct {
		name string
		lane engine.Lane
		kind mend.Kind
		want Remedy
	}{
		{"ratio", bay(0.6, 1, 5), mend.PropNext, Remedy{
			Label: "Turn piece 2 into a four-petal antispin flower",
			Does:  []string{"In piece 2 the prop makes 1½ turns instead of 2½ turns"},
			Left:  "Smooth now", Also: []string{"The join after piece 2 becomes smooth too"}}},
		// 1.2 to 2.4.
		{"beats", bay(0.6, 1, 5), mend.LeastJump, Remedy{
			Label: "Share the beats for the least jolt",
			Does:  []string{"Piece 1 takes 1⅓ beats, piece 2 takes 2⅔"},
			Left:  "Smooth now", Also: []string{"The join after piece 2 becomes smooth too"}}},
		{"size", bay(0.3, 1, 3), mend.Radius, Remedy{
			Label: "Make the circle of piece 2 larger",
			Does:  []string{"The paths of pieces 1 and 2 get larger: a radius of 60 cm instead of 30 cm"},
			Left:  "Smooth now", Also: []string{"The join after piece 2 becomes smooth too"}}},
		{"flip", turnedBack, mend.FlipProp, Remedy{
			Label: "Turn the prop the other way in piece 2",
			Does:  []string{"In piece 2 the prop makes ½ turn the other way"},
			// 0.6 m·(1 + 1) less 0.6 m·(1 − 1), at π/2 a beat and 60 beats a minute.
			Left: "The prop no longer turns back; 1.88 m/s sideways are left", Also: []string{"The join after piece 2 gets better too"}}},
		{"carried", placed, mend.CarryOn, Remedy{
			Label: "Let the prop carry on into piece 2",
			Does:  []string{"In piece 2 the prop goes on as it comes"},
			Left:  "Smooth now", Also: []string{"The join after piece 2 becomes smooth too"}}},
	} {
		found := false
		for _, f := range mend.Of(test.lane, engine.DefaultPerformer(), 60, 0) {
			if f.Kind != test.kind || found {
				continue
			}
			found = true
			if got := English.Remedy(test.lane, f); !reflect.DeepEqual(got, test.want) {
				t.Errorf("%s: %+v, want %+v", test.name, got, test.want)
			}
		}
		if !found {
			t.Errorf("%s: no such fix", test.name)
		}
	}
}

// TestEaseSaysItsCost: an eased C bends the curve, and the other end, where the
// beats no longer fit, gets a kink.
func TestEaseSaysItsCost(t *testing.T) {
	l := bay(0.5, 1, 3)
	for _, f := range mend.Of(l, engine.DefaultPerformer(), 60, 0) {
		if f.Kind != mend.Ease {
			continue
		}
		r := English.Remedy(l, f)
		if r.Label != "Let the hand ease into the turn" || r.Left != "Smooth now" || len(r.Does) != 3 ||
			r.Does[0] != "Piece 1 takes 1 beat, piece 2 takes 3" || r.Does[1] != "In piece 1 the hand eases into the end" ||
			!strings.HasPrefix(r.Costs[0], "The curve bends by up to ") || !strings.HasPrefix(r.Costs[1], "The kink after piece 2 grows to ") {
			t.Errorf("%+v, want it to say what the ease does and costs", r)
		}
		return
	}
	t.Error("no ease")
}

// TestEveryRemedyIsWhole: whatever the fix, no text has a place left empty or
// a value too many.
func TestEveryRemedyIsWhole(t *testing.T) {
	rnd := chance.New(t)
	kinds := map[mend.Kind]bool{}
	who := engine.DefaultPerformer()
	who.Reach = 2 // so that no circle is refused for its size
	for range 300 {
		l := engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: engine.Degrees(45 * rnd.IntN(8)), PropAt: engine.Degrees(90 * rnd.IntN(4))}
		for range 1 + rnd.IntN(7) {
			path := engine.CirclePath(0, 0.3*float64(1+rnd.IntN(2)))
			if rnd.IntN(5) == 0 {
				path = engine.LinePath(0, path.A, engine.Degrees(45*rnd.IntN(4)))
			}
			p := engine.Stroke(path, frac.Int(int64(1-2*rnd.IntN(2))), frac.Int(int64(rnd.IntN(7)-1)), frac.New(int64(1+rnd.IntN(4)), 4), frac.Int(int64(1+rnd.IntN(3))))
			if rnd.IntN(6) == 0 {
				p.PropAt = engine.Some(engine.Degrees(90 * rnd.IntN(4)))
			}
			if rnd.IntN(6) == 0 {
				p.ArmAt = engine.Some(engine.Degrees(90 * rnd.IntN(4)))
			}
			l.Pieces = append(l.Pieces, p)
		}
		fixes := append(mend.SmoothLane(l, who, 90), mend.CloseLane(l, who, 90)...)
		for i := range l.Pieces {
			list := mend.Of(l, who, 90, i)
			labels := map[string]bool{}
			for _, f := range list {
				label := English.Remedy(l, f).Label
				if labels[label] {
					t.Errorf("two buttons of one join say %q; %+v", label, l)
				}
				labels[label] = true
			}
			fixes = append(fixes, list...)
		}
		for _, f := range fixes {
			kinds[f.Kind] = true
			r := English.Remedy(l, f)
			written(t, "label", r.Label)
			written(t, "left", r.Left)
			if len(r.Does) == 0 {
				t.Errorf("%q says nothing of what it does: %+v", r.Label, f.Changes)
			}
			for _, lines := range [][]string{r.Does, r.Costs, r.Also} {
				for _, s := range lines {
					written(t, r.Label, s)
				}
			}
		}
	}
	if len(kinds) != int(mend.Kinds) {
		t.Errorf("fixes of %d kinds, want all %d", len(kinds), mend.Kinds)
	}
}
