package capture

import (
	"math"
	"slices"
	"strings"
	"testing"

	"whorlbench/sandbox/display"
)

// TestCells: a sheet has a picture for each beat, or for each petal where
// there are any; hands that reach their petals together share one.
func TestCells(t *testing.T) {
	petals := func(o *Options) { o.Per = PerPetal }
	for _, tt := range []struct {
		id     string
		change func(o *Options)
		want   []float64
	}{
		{"half-moon", nil, []float64{0, 1, 2, 3}},
		{"half-moon", func(o *Options) { o.Rounds = 2 }, []float64{0, 1, 2, 3, 4, 5, 6, 7}},
		// Five petals in six beats, the first at the start (the file's arm and
		// prop both begin at 90°), evenly apart.
		{"starfish", petals, []float64{0, 1.2, 2.4, 3.6, 4.8}},
		// Four petals a turn: half a turn back has tips at both ends and in its
		// middle, the extension none of its own.
		{"half-moon", petals, []float64{2, 3}},
		{"lock-gates", petals, []float64{0, 1}}, // isolations have no petals
	} {
		got, err := libraryTake(t, tt.id, tt.change).cells()
		if err != nil {
			t.Fatal(err)
		}
		if !slices.EqualFunc(got, tt.want, func(a, b float64) bool { return math.Abs(a-b) < 1e-9 }) {
			t.Errorf("%s: pictures at %v, want %v", tt.id, got, tt.want)
		}
	}
}

// TestSheetLimits: a sheet that is too long or too large is refused before it
// is drawn.
func TestSheetLimits(t *testing.T) {
	for _, change := range []func(o *Options){
		func(o *Options) { o.Rounds = 31 }, // 124 beats
		func(o *Options) { o.Per, o.Rounds = PerPetal, 100 },
		func(o *Options) { o.Width, o.Height = 4000, 4000 },
	} {
		take := libraryTake(t, "half-moon", change)
		a, err := take.artist()
		if err != nil {
			t.Fatal(err)
		}
		if _, err := a.sheet(); err == nil {
			t.Errorf("%+v: want it refused", take.Options)
		}
	}
}

// TestColumns: no more than a few places of a sheet stay empty, and it is
// neither a strip nor a ladder.
func TestColumns(t *testing.T) {
	for n := 1; n <= mostCells; n++ {
		c := columns(n)
		rows := (n + c - 1) / c
		if empty := c*rows - n; empty >= c || n > 4 && empty > 2+n/12 {
			t.Errorf("%d pictures in %d columns: %d places empty", n, c, empty)
		}
		if n > 4 && (c > 2*rows+1 || rows > c) {
			t.Errorf("%d pictures stand in %d columns, %d rows", n, c, rows)
		}
	}
}

// TestLayoutWithin: whatever is shown, at every size, all of it is within the
// picture; and of a sheet, each picture within its own place.
func TestLayoutWithin(t *testing.T) {
	for _, id := range []string{"half-moon", "two-bell-buoys", "mooring-post", "swan", "oar-stroke", "capstan"} {
		for _, size := range [][2]int{{360, 360}, {1920, 1080}, {200, 600}, {48, 32}} {
			for _, words := range []bool{false, true} {
				take := libraryTake(t, id, func(o *Options) {
					o.Width, o.Height = size[0], size[1]
					o.Show.Title, o.Show.Beats, o.Show.Names = words, words, words
				})
				a, err := take.artist()
				if err != nil {
					t.Fatal(err)
				}
				sheet, err := a.sheet()
				if err != nil && !strings.Contains(err.Error(), "too large") {
					t.Fatal(err)
				}
				for what, p := range map[string]*picture{"still": a.still(), "strobe": a.strobe(), "sheet": sheet} {
					if p == nil {
						continue
					}
					all := display.Rect{W: float64(p.width) / p.unit, H: float64(p.height) / p.unit}
					for i, m := range p.list.Marks {
						x0, y0, x1, y1 := bounds(a, &p.list, m)
						if x0 < -1 || y0 < -1 || x1 > all.W+1 || y1 > all.H+1 {
							t.Errorf("%s %v, %s: mark %d, %+v, reaches %.1f %.1f to %.1f %.1f, want it within %.1f × %.1f", id, size, what, i, m, x0, y0, x1, y1, all.W, all.H)
						}
					}
				}
			}
		}
	}
}

// bounds is what a mark covers.
func bounds(a *artist, l *display.List, m display.Mark) (x0, y0, x1, y1 float64) {
	switch m.Kind {
	case display.FillRect, display.StrokeRect:
		return m.Rect.X, m.Rect.Y, m.Rect.X + m.Rect.W, m.Rect.Y + m.Rect.H
	case display.Disc, display.Ring:
		r := m.Radius + m.Width/2
		return m.At.X - r, m.At.Y - r, m.At.X + r, m.At.Y + r
	case display.Text:
		return m.At.X, m.At.Y - 0.75*m.Size, m.At.X + a.faces.Width(m.Text, m.Size, m.Bold), m.At.Y + 0.2*m.Size
	}
	x0, y0, x1, y1 = math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, p := range l.Of(m) {
		x0, y0, x1, y1 = min(x0, p.X), min(y0, p.Y), max(x1, p.X), max(y1, p.Y)
	}
	return x0 - m.Width/2, y0 - m.Width/2, x1 + m.Width/2, y1 + m.Width/2
}
