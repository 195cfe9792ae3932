package engine_test

import (
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
	"whorlbench/engine/frac"
)

// TestLaterMovesAlike: begun b beats later, a lane is at each moment where the
// first one is b beats after (the definition).
func TestLaterMovesAlike(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 300 {
		l := r.lane()
		first := engine.NewTrack(l)
		// Hands that do not come back jump at the end of a round: not inside
		// one that begins elsewhere, where the piece that began it is placed.
		b := frac.New(int64(r.IntN(400)-200), int64(1+r.IntN(9)))
		later := engine.NewTrack(l.Later(b))
		for range 20 {
			at := frac.New(int64(r.IntN(4001)-2000), 211)
			g, w := later.AtExact(at), first.AtExact(at.Add(b))
			if d := apart(g, w); !(d <= 1e-8) {
				t.Fatalf("%+v\n%v later at %v: hand %v, head %v, want %v, %v: %.3g m apart", l, b, at, g.Hand, g.Head, w.Hand, w.Head, d)
			}
		}
		if later.Pinned != first.Pinned || !later.Lane.Beats().Equal(l.Beats()) {
			t.Fatalf("later: pinned %v, %v beats, want %v, %v", later.Pinned, later.Lane.Beats(), first.Pinned, l.Beats())
		}
	}
}

// TestLaterIsWrittenPlainly: a canon of a C that is cut nowhere new: its
// pieces change places, and nothing becomes placed.
func TestLaterIsWrittenPlainly(t *testing.T) {
	c := lane(0.6, 90, stroke(circle(0.6), "1", "1", "1/2", "2"), stroke(circle(0.6), "-1", "3", "1/2", "2"))
	want := lane(0.6, -90, c.Pieces[1], c.Pieces[0])
	for _, b := range []int64{2, 6, -2, -6} {
		if got := c.Later(frac.Int(b)); !got.Equal(want) {
			t.Errorf("Later(%d) = %+v, want %+v", b, got, want)
		}
	}
	for _, b := range []int64{0, 4, -400} {
		if got := c.Later(frac.Int(b)); !got.Equal(c) {
			t.Errorf("Later(%d) = %+v, want the same lane", b, got)
		}
	}
	if got := c.Later(frac.Int(1)); len(got.Pieces) != 3 || got.ArmAt != 180 || got.PropAt != 180 {
		t.Errorf("Later(1) = %+v, want three pieces from 180°", got)
	}
	if len(c.Pieces) != 2 || c.Pieces[0].ArmAt.Set {
		t.Errorf("Later changed its lane to %+v", c)
	}
}
