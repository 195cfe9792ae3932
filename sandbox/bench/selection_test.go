package bench_test

import (
	"fmt"
	"slices"
	"testing"

	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
)

// props returns the prop speeds of a lane's pieces, which tell them apart.
func (r *rig) props() (out []string) {
	for _, p := range r.s.Pattern().Lanes[0].Pieces {
		out = append(out, p.Prop.String())
	}
	return out
}

// five is a lane of five pieces with the prop speeds 1 to 5.
func five(t *testing.T) *rig {
	r := newRig(t, bench.Frame{W: 1440, H: 900, Top: 48}, "half-moon")
	r.s.Select(session.Select{})
	for len(r.s.Pattern().Lanes[0].Pieces) < 5 {
		r.tap("repeat")
		r.b.Draw()
	}
	for i := range 5 {
		r.s.Select(session.Select{Piece: i})
		r.b.Answer("prop", fmt.Sprint(i+1), 0)
	}
	r.b.Draw()
	return r
}

func TestSeveralPieces(t *testing.T) {
	for _, tt := range []struct {
		name string
		do   func(r *rig)
		want []string
	}{
		{"repeat", func(r *rig) { r.tap("repeat") }, []string{"1", "2", "3", "2", "3", "4", "5"}},
		{"delete", func(r *rig) { r.tap("delete") }, []string{"1", "4", "5"}},
		{"cut out and paste at the end", func(r *rig) {
			r.b.Do(widget.Intent{ID: "cut-out"}, 0)
			r.b.Draw()
			r.tap("piece-0-2")
			r.b.Do(widget.Intent{ID: "paste"}, 0)
		}, []string{"1", "4", "5", "2", "3"}},
		{"carry to the front", func(r *rig) {
			from, to := r.control("piece-0-2").Rect.Centre(), r.control("piece-0-0").Rect
			r.drag(from, from.Add(display.Pt{X: -20}), display.Pt{X: to.X - 40, Y: from.Y})
		}, []string{"2", "3", "1", "4", "5"}},
		{"carry to the end", func(r *rig) {
			from, to := r.control("piece-0-1").Rect.Centre(), r.control("piece-0-4").Rect
			r.drag(from, from.Add(display.Pt{X: 20}), display.Pt{X: to.X + to.W + 10, Y: from.Y})
		}, []string{"1", "4", "5", "2", "3"}},
	} {
		r := five(t)
		before := r.s.Pattern()
		r.tap("piece-0-1")
		r.b.Do(widget.Intent{ID: "piece-0-2", Act: widget.Extend}, 0)
		r.b.Draw()
		for i := range 5 {
			if got, want := r.control(fmt.Sprintf("piece-0-%d", i)).Along, i == 1 || i == 2; got != want {
				t.Errorf("%s: piece %d selected = %v, want %v", tt.name, i+1, got, want)
			}
		}
		if tt.do(r); !slices.Equal(r.props(), tt.want) {
			t.Errorf("%s: the pieces are %v, want %v", tt.name, r.props(), tt.want)
		}
		r.b.Draw()
		for r.s.CanUndo() && !r.s.Pattern().Equal(before) {
			r.s.Undo()
		}
		if !r.s.Pattern().Equal(before) {
			t.Errorf("%s: undo does not lead back", tt.name)
		}
	}
}

func TestSeveralByThumb(t *testing.T) {
	r := five(t)
	r.long("piece-0-3", 500)
	r.choose("Select several")
	r.tap("piece-0-1")
	if first, last := r.s.Range(); first != 1 || last != 3 {
		t.Errorf("selected = %d to %d, want 1 to 3 (from 0)", first, last)
	}
	if !slices.Contains(r.host.Said, "Pieces 2 to 4 selected") {
		t.Errorf("said %q, want it to say what is selected", r.host.Said)
	}
	r.tap("piece-0-0") // a plain tap takes one again
	if first, last := r.s.Range(); first != 0 || last != 0 {
		t.Errorf("after a plain tap, selected = %d to %d, want 0", first, last)
	}
	r.long("piece-0-0", 500)
	r.choose("Select all")
	if first, last := r.s.Range(); first != 0 || last != 4 {
		t.Errorf("selected = %d to %d, want all five", first, last)
	}
	if r.s.CanDelete() {
		t.Error("all pieces of a lane can be deleted at once, want one to stay")
	}
}
