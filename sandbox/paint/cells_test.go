package paint

import (
	"image"
	"testing"

	"whorlbench/engine/chance"
)

// TestCells: what is put in is in, and no more than the rest of its cells; runs
// go from left to right, each as long as can be.
func TestCells(t *testing.T) {
	r := chance.New(t)
	for range 200 {
		size := image.Pt(1+r.IntN(2300), 1+r.IntN(6))
		sets := [2]*Cells{NewCells(size), NewCells(size)}
		in := make([]bool, size.X*size.Y)
		for range r.IntN(30) {
			y, from := r.IntN(size.Y), r.IntN(size.X)
			to := min(from+1+r.IntN(1+r.IntN(600)), size.X)
			sets[r.IntN(2)].mark(y, from, to)
			for x := from >> cellShift << cellShift; x < min((to-1)>>cellShift<<cellShift+1<<cellShift, size.X); x++ {
				in[y*size.X+x] = true
			}
		}
		all := NewCells(size)
		all.Union(sets[0], sets[1])
		if r.IntN(20) == 0 {
			all.Fill()
			for i := range in {
				in[i] = true
			}
		}
		got := NewCells(size)
		got.Copy(all)
		rows := 1 + r.IntN(size.Y)
		for y := 0; y+rows <= size.Y; y++ {
			last := -1
			seen := make([]bool, size.X)
			got.Runs(y, rows, func(from, to int) {
				if !(last < from && from < to && to <= size.X) {
					t.Fatalf("a run from %d to %d after one to %d of %d", from, to, last, size.X)
				}
				last = to
				for x := from; x < to; x++ {
					seen[x] = true
				}
			})
			for x := range seen {
				want := false
				for k := range rows {
					want = want || in[(y+k)*size.X+x]
				}
				if seen[x] != want {
					t.Fatalf("rows %d to %d, pixel %d: in %v, want %v", y, y+rows-1, x, seen[x], want)
				}
			}
		}
		got.Clear()
		got.Runs(0, size.Y, func(from, to int) { t.Fatalf("%d to %d are left", from, to) })
	}
}
