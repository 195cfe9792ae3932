package presets_test

import (
	"slices"
	"testing"
	"time"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/mend"
	"whorlbench/presets"
	"whorlbench/presets/dice"
)

// marred returns the library's pattern with one number of one piece put wrong.
func marred(t *testing.T, d dice.Dice) engine.Pattern {
	library := presets.Library()
	p, err := library[d.IntN(len(library))].Pattern()
	if err != nil {
		t.Fatal(err)
	}
	i := d.IntN(len(p.Lanes))
	l := p.Lanes[i]
	l.Pieces = slices.Clone(l.Pieces)
	x := &l.Pieces[d.IntN(len(l.Pieces))]
	switch d.IntN(7) {
	case 0:
		x.Prop = x.Prop.Add(frac.New(int64(d.IntN(9)-4), 2))
	case 1:
		x.Beats = x.Beats.Mul(frac.New(int64(1+d.IntN(7)), int64(1+d.IntN(7))))
	case 2:
		x.Path.Centre += complex(d.In(-1, 1), d.In(-1, 1))
	case 3:
		x.PropAt = engine.Some(engine.Degrees(d.In(0, 360)))
	case 4:
		x.ArmAt = engine.Some(engine.Degrees(d.In(0, 360)))
	case 5:
		x.Prop = x.Prop.Neg()
	case 6:
		x.Cycles = x.Cycles.Mul(frac.New(int64(1+d.IntN(5)), 4))
	}
	return p.WithLane(i, l)
}

// TestFixesAreWritable: whatever a fix makes of a lane, a file can hold it.
func TestFixesAreWritable(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	d := dice.New(seed)
	fixes := 0
	for i := range 250 {
		p := marred(t, d)
		if i%5 == 0 {
			p = d.Pattern()
		}
		if presets.Validate(p) != nil {
			continue
		}
		for i, l := range p.Lanes {
			list := append(mend.SmoothLane(l, p.Performer, p.Tempo), mend.CloseLane(l, p.Performer, p.Tempo)...)
			for k := range l.Pieces {
				list = append(list, mend.Of(l, p.Performer, p.Tempo, k)...)
			}
			fixes += len(list)
			for _, f := range list {
				if err := presets.Validate(p.WithLane(i, f.Lane)); err != nil {
					t.Errorf("kind %d of seam %d: %v, from %+v", f.Kind, f.Seam+1, err, l)
				}
			}
		}
	}
	if fixes < 300 {
		t.Errorf("only %d fixes seen", fixes)
	}
}
