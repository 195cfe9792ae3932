package display

import (
	"image/color"
	"slices"
	"testing"
)

var (
	white = color.NRGBA{255, 255, 255, 255}
	ink   = color.NRGBA{10, 20, 30, 255}
)

// fill adds every kind of mark, lines and polygons by turns.
func fill(l *List) {
	l.Reset(white)
	l.FillRect(Rect{1, 2, 3, 4}, 5, ink)
	l.Polyline(2, ink, true, Pt{0, 0}, Pt{1, 0}, Pt{1, 1})
	l.Text(Pt{5, 6}, 12, true, ink, "poi")
	l.Poly(ink, Pt{7, 7}, Pt{8, 7}, Pt{8, 8}, Pt{7, 8})
	l.Disc(Pt{3, 3}, 2, ink)
	l.BeginLine(3, ink, true)
	for i := range 5 {
		l.To(Pt{float64(i), 9}, float32(i)/4)
	}
	l.Ring(Pt{4, 4}, 3, 1, ink)
	l.StrokeRect(Rect{4, 3, 2, 1}, 1, 2, ink)
	l.Segment(Pt{2, 2}, Pt{5, 5}, 1.5, ink)
}

func TestListArena(t *testing.T) {
	var l List
	fill(&l)
	fill(&l) // the second time over what the first has left
	want := []struct {
		kind   Kind
		points []Pt
		alpha  []float32
		closed bool
		fade   bool
	}{
		{kind: FillRect},
		{kind: Line, points: []Pt{{0, 0}, {1, 0}, {1, 1}}, alpha: []float32{1, 1, 1}, closed: true},
		{kind: Text},
		{kind: Poly, points: []Pt{{7, 7}, {8, 7}, {8, 8}, {7, 8}}, alpha: []float32{1, 1, 1, 1}},
		{kind: Disc},
		{kind: Line, points: []Pt{{0, 9}, {1, 9}, {2, 9}, {3, 9}, {4, 9}}, alpha: []float32{0, 0.25, 0.5, 0.75, 1}, fade: true},
		{kind: Ring},
		{kind: StrokeRect},
		{kind: Line, points: []Pt{{2, 2}, {5, 5}}, alpha: []float32{1, 1}},
	}
	if len(l.Marks) != len(want) {
		t.Fatalf("len(Marks) = %d, want %d", len(l.Marks), len(want))
	}
	if len(l.Points) != len(l.Alpha) {
		t.Errorf("len(Points), len(Alpha) = %d, %d, want the same", len(l.Points), len(l.Alpha))
	}
	for i, w := range want {
		m := l.Marks[i]
		if m.Kind != w.kind || m.Closed != w.closed || m.Fade != w.fade {
			t.Errorf("Marks[%d] = kind %v, closed %v, fade %v, want %v, %v, %v", i, m.Kind, m.Closed, m.Fade, w.kind, w.closed, w.fade)
		}
		if got := l.Of(m); !slices.Equal(got, w.points) {
			t.Errorf("Of(Marks[%d]) = %v, want %v", i, got, w.points)
		}
		if got := l.Alpha[m.First : m.First+m.Count]; !slices.Equal(got, w.alpha) {
			t.Errorf("alpha of Marks[%d] = %v, want %v", i, got, w.alpha)
		}
	}
	if l.Back != white {
		t.Errorf("Back = %v, want %v", l.Back, white)
	}
}

func TestListReset(t *testing.T) {
	var l List
	fill(&l)
	l.Reset(ink)
	if len(l.Marks) != 0 || len(l.Points) != 0 || len(l.Alpha) != 0 || l.Back != ink {
		t.Errorf("after Reset: %d marks, %d points, %d alphas, back %v, want none on %v", len(l.Marks), len(l.Points), len(l.Alpha), l.Back, ink)
	}
	fill(&l)
	if got := testing.AllocsPerRun(20, func() { fill(&l) }); got != 0 {
		t.Errorf("allocations of a later fill = %v, want 0", got)
	}
}

func TestListText(t *testing.T) {
	var l List
	l.Text(Pt{}, 12, false, ink, "")
	if len(l.Marks) != 0 {
		t.Errorf("marks of an empty text = %d, want 0", len(l.Marks))
	}
	l.Text(Pt{1, 2}, 12, true, ink, "L")
	if m := l.Marks[0]; m.At != (Pt{1, 2}) || m.Size != 12 || !m.Bold || m.Text != "L" || m.Color != ink {
		t.Errorf("Text mark = %+v", m)
	}
}

func TestMix(t *testing.T) {
	a, b := color.NRGBA{0, 100, 200, 255}, color.NRGBA{255, 0, 201, 0}
	for _, tt := range []struct {
		t    float64
		want color.NRGBA
	}{
		{0, a},
		{1, b},
		{0.5, color.NRGBA{128, 50, 201, 128}}, // 127.5, 200.5, 127.5: halves go up
		{0.25, color.NRGBA{64, 75, 200, 191}},
	} {
		if got := Mix(a, b, tt.t); got != tt.want {
			t.Errorf("Mix(%v, %v, %v) = %v, want %v", a, b, tt.t, got, tt.want)
		}
	}
}

func TestClear(t *testing.T) {
	c := color.NRGBA{1, 2, 3, 200}
	for _, tt := range []struct {
		a    float64
		want uint8
	}{
		{0, 0}, {0.5, 100}, {1, 200}, {-1, 0}, {2, 200},
	} {
		if got := Clear(c, tt.a); got != (color.NRGBA{1, 2, 3, tt.want}) {
			t.Errorf("Clear(%v, %v) = %v, want opacity %d and the same hue", c, tt.a, got, tt.want)
		}
	}
}

// TestLight: black, white and the primaries, by the weights of ITU-R BT.601.
func TestLight(t *testing.T) {
	for c, want := range map[color.NRGBA]float64{
		{}: 0, {255, 255, 255, 255}: 255, {R: 255}: 76.245, {G: 255}: 149.685, {B: 255}: 29.07,
	} {
		if got := Light(c); got < want-1e-9 || got > want+1e-9 {
			t.Errorf("Light(%v) = %v, want %v", c, got, want)
		}
	}
}
