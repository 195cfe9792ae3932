package bench_test

import (
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
)

// Every dial that is offered takes a value, shows it, and is undone at once.
func TestEveryDialTurns(t *testing.T) {
	for _, tt := range []struct {
		dial, typed string
		get         func(p engine.Pattern) float64
		want        float64
	}{
		{"arm", "-1.5", func(p engine.Pattern) float64 { return p.Lanes[0].Pieces[0].Arm.Float() }, -1.5},
		{"prop", "1/3", func(p engine.Pattern) float64 { return p.Lanes[0].Pieces[0].Prop.Float() }, 1.0 / 3},
		{"cycles", "1", func(p engine.Pattern) float64 { return p.Lanes[0].Pieces[0].Cycles.Float() }, 1},
		{"length", "3", func(p engine.Pattern) float64 { return p.Lanes[0].Pieces[0].Length().Float() }, 3},
		{"radius", "0.3", func(p engine.Pattern) float64 { return p.Lanes[0].Pieces[0].Path.B }, 0.3},
		{"centre-x", "-0.2", func(p engine.Pattern) float64 { return real(p.Lanes[0].Pieces[0].Path.Centre) }, -0.2},
		{"centre-y", "0.25", func(p engine.Pattern) float64 { return imag(p.Lanes[0].Pieces[0].Path.Centre) }, 0.25},
		{"arm-start", "45", func(p engine.Pattern) float64 { return float64(p.Lanes[0].ArmAt) }, 45},
		{"prop-start", "180", func(p engine.Pattern) float64 { return float64(p.Lanes[0].PropAt) }, 180},
		{"from", "1/4", func(p engine.Pattern) float64 { return p.Lanes[0].Pieces[0].From.Float() }, 0.25},
		{"to", "0.5", func(p engine.Pattern) float64 { return p.Lanes[0].Pieces[0].To.Float() }, 0.5},
		{"tether", "0.5", func(p engine.Pattern) float64 { return p.Lanes[0].Tether }, 0.5},
		{"turn", "135", func(p engine.Pattern) float64 { return float64(p.Lanes[0].ArmAt + p.Lanes[0].PropAt) }, 270},
		{"scale", "0.3", func(p engine.Pattern) float64 { return p.Lanes[0].Tether + p.Lanes[0].Pieces[1].Path.A }, 0.6},
		{"tempo", "111", func(p engine.Pattern) float64 { return p.Tempo }, 111},
	} {
		r := newRig(t, phone, "half-moon")
		before := r.s.Pattern()
		if refused := r.b.Answer(tt.dial, tt.typed, 0); refused != "" {
			t.Errorf("%s = %s was refused: %s", tt.dial, tt.typed, refused)
			continue
		}
		if got := tt.get(r.s.Pattern()); got != tt.want {
			t.Errorf("%s typed %s gives %v, want %v", tt.dial, tt.typed, got, tt.want)
		}
		r.tap("undo")
		if !r.s.Pattern().Equal(before) {
			t.Errorf("%s: one undo does not bring the pattern back", tt.dial)
		}
	}
}

func TestSwapSliders(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.tap("arm-swap")
	if n := len(r.host.Offered); n != 1 {
		t.Fatalf("lists offered = %d, want 1", n)
	}
	r.b.Chosen("arm", "radius", 0)
	r.b.Draw()
	r.slide("radius", 0.3)
	if got := r.s.SelectedPiece().Path; got.A != 0.3 || got.B != 0.3 {
		t.Errorf("the path after the drag is %v, want a circle of 0.3 m", got)
	}
	r.b.Chosen("prop", "radius", 0) // it has a place already: the two change places
	r.b.Draw()
	if prop, radius := r.control("prop").Rect.Y, r.control("radius").Rect.Y; prop >= radius {
		t.Errorf("prop stands at %v and radius at %v, want them to have changed places", prop, radius)
	}
}

func TestPathAndLawAreChosen(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	for _, tt := range []struct {
		list, pick string
		want       func(p engine.Piece) bool
	}{
		{"path", "1", func(p engine.Piece) bool { return p.Path == engine.LinePath(0, 0.6, 0) }},
		{"path", "3", func(p engine.Piece) bool { return p.Path.IsPoint() }},
		{"path", "2", func(p engine.Piece) bool { return p.Path == engine.EllipsePath(0, 0.6, 0.3, 0) }},
		{"path", "0", func(p engine.Piece) bool { return p.Path == engine.CirclePath(0, 0.6) }},
		{"law", "3", func(p engine.Piece) bool { return p.Law == engine.EaseBoth }},
	} {
		r.b.Chosen(tt.list, tt.pick, 0)
		if !tt.want(r.s.SelectedPiece()) {
			t.Errorf("after %s %s the piece is %+v", tt.list, tt.pick, r.s.SelectedPiece())
		}
	}
	before := r.s.Pattern()
	for _, bad := range []string{"9", "-1", "", "x"} {
		r.b.Chosen("path", bad, 0)
		r.b.Chosen("law", bad, 0)
	}
	if !r.s.Pattern().Equal(before) {
		t.Error("a pick that there is not changed the pattern")
	}
}

// A dial that the piece in hand does not have is shown, and does nothing.
func TestDialThatDoesNotFit(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.b.Chosen("arm", "radius", 0)
	r.b.Chosen("path", "3", 0)
	r.b.Draw()
	if c := r.control("radius"); !c.Disabled {
		t.Error("the radius of a point can be dragged, want it off")
	}
}

func TestStartOfPlacedPiece(t *testing.T) {
	r := newRig(t, bench.Frame{W: 1440, H: 900, Top: 48}, "half-moon")
	p := r.s.Pattern()
	l, err := p.Lanes[0].Place(0, engine.Some(30), engine.Opt{})
	if err != nil {
		t.Fatal(err)
	}
	if err := r.s.Open(p.WithLane(0, l)); err != nil {
		t.Fatal(err)
	}
	r.b.Answer("arm-start", "60", 0)
	got := r.s.Pattern().Lanes[0]
	if got.Pieces[0].ArmAt != engine.Some(60) || got.ArmAt != 90 {
		t.Errorf("a placed piece's start = %v, the lane's = %v, want 60 and the lane's own 90", got.Pieces[0].ArmAt, got.ArmAt)
	}
	if v := r.s.SelectedPiece().Beats; !v.Equal(frac.Int(2)) {
		t.Errorf("beats = %v, want them left alone at 2", v)
	}
}

// Two quick taps on a knob bring the file's default back.
func TestDoubleTapResets(t *testing.T) {
	r := newRig(t, bench.Frame{W: 1440, H: 900, Top: 48}, "half-moon")
	for _, tt := range []struct {
		dial, typed string
		want        float64
	}{{"prop", "-2", 1}, {"arm", "3", 1}, {"radius", "0.25", 0.6}} {
		r.b.Answer(tt.dial, tt.typed, 0)
		r.b.Draw()
		c := r.control(tt.dial)
		at := display.Pt{X: c.At(c.Value), Y: c.Rect.Y + c.Rect.H - 20}
		r.drag(at)
		r.drag(at)
		if got := r.b.Value(tt.dial); got != tt.want {
			t.Errorf("%s %s, tapped twice, is %v, want %v", tt.dial, tt.typed, got, tt.want)
		}
	}
}
