package bench_test

import (
	"math"
	"math/cmplx"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/widget"
)

// The half-moon, by its file: a circle of 0.6 m with tether 0.6, arm and prop
// from 90°, half a turn in extension in two beats, and back in four-petal
// antispin. In the extension the head is 1.2 m out at the arm's angle.

// on returns where a place of the plane is seen.
func (r *rig) on(z complex128) display.Pt { return r.b.StageView().ToScreen(z) }

// handle returns where a handle of the piece in hand is seen.
func (r *rig) handle(g scene.Grip) display.Pt {
	r.t.Helper()
	for _, h := range scene.Handles(r.s) {
		if h.Grip == g {
			return r.on(h.At)
		}
	}
	r.t.Fatalf("no handle %d", g)
	return display.Pt{}
}

// haul drags from a place to a place of the plane, seen as the stage is at
// the start, in small steps.
func (r *rig) haul(from display.Pt, to ...complex128) {
	places := []display.Pt{from}
	for _, z := range to {
		a, b := places[len(places)-1], r.on(z)
		for k := 1; k <= 12; k++ {
			places = append(places, a.Add(b.Sub(a).Scale(float64(k)/12)))
		}
	}
	r.drag(places...)
}

// doubleTap taps twice in quick succession.
func (r *rig) doubleTap(at display.Pt) {
	r.drag(at)
	r.now += 60
	r.drag(at)
}

func angle(degrees float64, out float64) complex128 {
	return cmplx.Rect(out, degrees*math.Pi/180)
}

func TestTapOnTheCurveTakesThePlace(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.s.Playing = true
	r.drag(r.on(angle(130, 1.2))) // beat 4/9 of the extension
	if r.s.Playing || r.s.Selected().Piece != 0 || math.Abs(r.s.Beat()-4.0/9) > 0.05 {
		t.Errorf("after a tap at 130°: playing %v, piece %d, beat %v, want it to stand in piece 0 at 0.44", r.s.Playing, r.s.Selected().Piece, r.s.Beat())
	}
	r.drag(r.on(angle(178, 1.21))) // near the quarter turn
	if r.s.Beat() != 1 {
		t.Errorf("a tap near the quarter turn puts the playhead at %v, want 1", r.s.Beat())
	}
	// Another piece: the middle of the way back is a petal tip of its own
	// (antispin, four petals: tips at 0°, 90°, 180°, 270°) so ask between.
	k := r.s.Tracks()[0]
	r.s.GoTo(3.999)
	r.drag(r.on(k.PointAt(0, 1, 0.3).Head))
	if got := r.s.Selected().Piece; got != 1 || math.Abs(r.s.Beat()-2.6) > 0.1 {
		t.Errorf("a tap on the other piece takes piece %d at beat %v, want 1 at 2.6", got, r.s.Beat())
	}
	if r.s.CanUndo() {
		t.Error("taps have edited the pattern")
	}
}

func TestCutOnTheCurve(t *testing.T) {
	for _, way := range []string{"double tap", "Cut here", "Cut"} {
		r := newRig(t, phone, "half-moon")
		at := r.on(angle(178, 1.21))
		switch way {
		case "double tap":
			r.doubleTap(at)
		case "Cut here":
			r.drag(at)
			r.tap("cut-here")
		case "Cut":
			r.drag(at)
			r.tap("cut")
		}
		ps := r.s.Pattern().Lanes[0].Pieces
		if len(ps) != 3 || !ps[0].Length().Equal(frac.Int(1)) || r.s.Selected().Piece != 1 {
			t.Errorf("%s: %d pieces, the first of %v beats, piece %d in hand, want 3, 1, 1", way, len(ps), ps[0].Length(), r.s.Selected().Piece)
		}
		if said := r.host.Said; len(said) == 0 || !strings.Contains(strings.Join(said, "|"), "Cut: pieces 1 and 2") {
			t.Errorf("%s: said %q, want the cut told", way, said)
		}
		for _, c := range r.b.Controls() {
			if c.ID == "cut-here" {
				t.Errorf("%s: the mark stays after the cut", way)
			}
		}
		r.tap("undo")
		if n := len(r.s.Pattern().Lanes[0].Pieces); n != 2 {
			t.Errorf("%s: after one undo %d pieces, want 2", way, n)
		}
	}
}

func TestHandlesShapeThePiece(t *testing.T) {
	line := func(p engine.Pattern) engine.Pattern {
		l := p.Lanes[0]
		l.Pieces = append([]engine.Piece(nil), l.Pieces...)
		l.Pieces[0].Path = engine.LinePath(0, 0.6, 0)
		return p.WithLane(0, l)
	}
	for _, tt := range []struct {
		name   string
		change func(engine.Pattern) engine.Pattern
		grip   scene.Grip
		to     complex128
		want   func(l engine.Lane) bool
	}{
		{"centre", nil, scene.GripCentre, complex(0.31, -0.19), func(l engine.Lane) bool { return l.Pieces[0].Path == engine.CirclePath(complex(0.3, -0.2), 0.6) }},
		{"radius", nil, scene.GripRadius, angle(-45, 0.36), func(l engine.Lane) bool { return l.Pieces[0].Path == engine.CirclePath(0, 0.35) }},
		{"radius inside out", nil, scene.GripRadius, 0, func(l engine.Lane) bool { return l.Pieces[0].Path == engine.CirclePath(0, 0.05) }},
		{"prop, caught by 45°", nil, scene.GripProp, complex(0, 0.6) + angle(35, 0.6), func(l engine.Lane) bool { return l.PropAt == 45 && l.ArmAt == 90 }},
		{"prop, on the grid of 15°", nil, scene.GripProp, complex(0, 0.6) + angle(-32, 0.5), func(l engine.Lane) bool { return l.PropAt == -30 }},
		{"tilt", line, scene.GripTilt, angle(62, 0.7), func(l engine.Lane) bool { return l.Pieces[0].Path == engine.LinePath(0, 0.6, 60) }},
		{"length of a line", line, scene.GripRadius, -0.42, func(l engine.Lane) bool { return l.Pieces[0].Path == engine.LinePath(0, 0.4, 0) }},
	} {
		for _, mirror := range []bool{false, true} {
			r := newRig(t, phone, "half-moon")
			if tt.change != nil {
				if err := r.s.Open(tt.change(r.s.Pattern())); err != nil {
					t.Fatal(err)
				}
			}
			r.s.Mirror = mirror
			r.b.Draw()
			before := r.s.Pattern()
			r.haul(r.handle(tt.grip), tt.to)
			if l := r.s.Pattern().Lanes[0]; !tt.want(l) {
				t.Errorf("%s, mirror %v: %+v, arm at %v, prop at %v", tt.name, mirror, l.Pieces[0].Path, l.ArmAt, l.PropAt)
			}
			if r.host.Changes != 1 {
				t.Errorf("%s: complete edits told = %d, want 1 for the drag", tt.name, r.host.Changes)
			}
			r.tap("undo")
			if !r.s.Pattern().Equal(before) {
				t.Errorf("%s: one undo does not bring the pattern back", tt.name)
			}
		}
	}
}

// A piece that carries on has no start of its own to drag; a placed one has.
func TestPropHandleOnlyWhereItIsWritten(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	has := func() bool {
		for _, h := range scene.Handles(r.s) {
			if h.Grip == scene.GripProp {
				return true
			}
		}
		return false
	}
	if !has() {
		t.Error("the first piece has no prop handle")
	}
	r.tap("piece-0-1")
	if has() {
		t.Error("a piece that carries on has a prop handle")
	}
	l, err := r.s.Pattern().Lanes[0].Place(1, engine.Opt{}, engine.Some(0))
	if err != nil {
		t.Fatal(err)
	}
	if err := r.s.Open(r.s.Pattern().WithLane(0, l)); err != nil {
		t.Fatal(err)
	}
	r.tap("piece-0-1")
	if !has() {
		t.Error("a placed piece has no prop handle")
	}
	hand := r.s.Tracks()[0].PointAt(0, 1, 0).Hand
	r.haul(r.handle(scene.GripProp), hand+angle(92, 0.6))
	if got := r.s.Pattern().Lanes[0]; got.Pieces[1].PropAt != engine.Some(90) || got.PropAt != l.PropAt {
		t.Errorf("prop at %v, the lane's at %v, want the piece's own at 90", got.Pieces[1].PropAt, got.PropAt)
	}
}

// The end of a whole stroke goes on along it; the end of one that was cut
// moves the seam, and the movement stays.
func TestDragTheEnd(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.haul(r.handle(scene.GripEnd), angle(290, 1.2), angle(312, 1.2), angle(358, 1.22))
	p := r.s.Pattern().Lanes[0].Pieces[0]
	if !p.Cycles.Equal(frac.New(3, 4)) || !p.Beats.Equal(frac.Int(3)) || len(r.s.Pattern().Lanes[0].Pieces) != 2 {
		t.Errorf("dragged a quarter on: %v cycles in %v beats, want 3/4 in 3", p.Cycles, p.Beats)
	}
	r.tap("undo")
	r.doubleTap(r.on(angle(180, 1.2)))
	whole := engine.NewTrack(r.s.Pattern().Lanes[0])
	r.tap("piece-0-0")
	r.haul(r.handle(scene.GripEnd), angle(200, 1.2), angle(226, 1.2))
	l := r.s.Pattern().Lanes[0]
	// 135° of half a turn in two beats: 3/2 beats, a twelfth of a beat off at most.
	if got := l.Pieces[0].Length().Float(); math.Abs(got-1.5) > 1.0/12 || len(l.Pieces) != 3 || !l.Pieces[0].Length().Add(l.Pieces[1].Length()).Equal(frac.Int(2)) {
		t.Errorf("the seam moved to %v of %d pieces, want near 1.5 of 3, two beats together", got, len(l.Pieces))
	}
	moved := engine.NewTrack(l)
	for beat := 0.0; beat < 4; beat += 0.01 {
		if cmplx.Abs(moved.At(beat).Head-whole.At(beat).Head) > 1e-9 {
			t.Fatalf("moving the seam has moved the head at beat %v", beat)
		}
	}
}

// The beginning of a piece is the end of the one before it.
func TestDragTheBeginning(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.doubleTap(r.on(angle(180, 1.2)))
	whole := engine.NewTrack(r.s.Pattern().Lanes[0])
	r.tap("piece-0-1")
	r.haul(r.handle(scene.GripBegin), angle(200, 1.2), angle(226, 1.2))
	l := r.s.Pattern().Lanes[0]
	if got := l.Pieces[0].Length().Float(); math.Abs(got-1.5) > 1.0/12 || r.s.Selected().Piece != 1 {
		t.Errorf("dragged, piece 1 has %v beats and piece %d is in hand, want near 1.5 and 2", got, r.s.Selected().Piece+1)
	}
	moved := engine.NewTrack(l)
	for beat := 0.0; beat < 4; beat += 0.01 {
		if cmplx.Abs(moved.At(beat).Head-whole.At(beat).Head) > 1e-9 {
			t.Fatalf("moving the beginning has moved the head at beat %v", beat)
		}
	}
	r.b.Draw()
	r.b.Do(widget.Intent{ID: "begin", Act: widget.Set, Value: 0.5}, 0)
	if got := r.s.Pattern().Lanes[0].Pieces[0].Length(); !got.Equal(frac.New(1, 2)) || r.b.Value("begin") != 0.5 {
		t.Errorf("its twin set to 1/2 gives piece 1 %v beats and reads %v", got, r.b.Value("begin"))
	}
}

func TestTwinOfTheEnd(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	if c := r.control("end"); !c.Twin || c.Value != 2 || c.Text != "½ turn · 2 beats" || c.Max < 8 {
		t.Errorf("the end's twin = %+v, want 2 beats of at least 8", c)
	}
	r.b.Do(widget.Intent{ID: "end", Act: widget.Set, Value: 3}, 0)
	r.b.Draw()
	if p := r.s.SelectedPiece(); !p.Cycles.Equal(frac.New(3, 4)) || r.b.Value("end") != 3 {
		t.Errorf("set to 3 beats: %v cycles, value %v, want 3/4, 3", p.Cycles, r.b.Value("end"))
	}
	r.tap("undo")
	if got := r.b.Value("end"); got != 2 {
		t.Errorf("after undo the end is at %v, want 2", got)
	}
}

func TestDragCalledOff(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	before := r.s.Pattern()
	at := r.handle(scene.GripCentre)
	ev := func(id int, phase widget.Phase, p display.Pt) widget.Pointer {
		r.now += 8
		return widget.Pointer{ID: id, Phase: phase, At: p, Time: r.now}
	}
	far := at.Add(display.Pt{X: 60, Y: 20})
	r.b.Pointers([]widget.Pointer{ev(1, widget.Down, at), ev(1, widget.Move, far)}, 0)
	if r.s.Pattern().Equal(before) {
		t.Fatal("the drag shows nothing while it goes on")
	}
	r.b.Pointers([]widget.Pointer{ev(2, widget.Down, far.Add(display.Pt{X: 30})), ev(1, widget.Up, far), ev(2, widget.Up, far)}, 0)
	if !r.s.Pattern().Equal(before) || r.s.CanUndo() || r.s.Holding() {
		t.Errorf("a drag that a second finger called off left: changed %v, undo %v, held %v", !r.s.Pattern().Equal(before), r.s.CanUndo(), r.s.Holding())
	}
}

// One finger on a slider while another works the stage: both count, and one
// undo takes both back, as they went on together.
func TestSliderAndStageTogether(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	before := r.s.Pattern()
	c := r.control("prop")
	y := c.Rect.Y + c.Rect.H - 22
	at := r.handle(scene.GripRadius)
	to := r.on(angle(-45, 0.3))
	ev := func(id int, phase widget.Phase, p display.Pt) {
		r.now += 8
		r.b.Pointers([]widget.Pointer{{ID: id, Phase: phase, At: p, Time: r.now}}, r.now)
		r.b.Draw()
	}
	ev(1, widget.Down, display.Pt{X: c.At(1), Y: y})
	ev(2, widget.Down, at)
	ev(1, widget.Move, display.Pt{X: c.At(2), Y: y})
	ev(2, widget.Move, at.Add(to.Sub(at).Scale(0.5)))
	ev(1, widget.Move, display.Pt{X: c.At(3), Y: y})
	ev(2, widget.Move, to)
	ev(1, widget.Up, display.Pt{X: c.At(3), Y: y})
	ev(2, widget.Up, to)
	p := r.s.SelectedPiece()
	if !p.Prop.Equal(frac.Int(3)) || p.Path.A != 0.3 {
		t.Errorf("prop %v, radius %v, want 3 and 0.3", p.Prop, p.Path.A)
	}
	r.tap("undo")
	if !r.s.Pattern().Equal(before) || r.s.CanUndo() {
		t.Error("one undo does not bring back what two fingers did together")
	}
}

func TestPinchPanAndFit(t *testing.T) {
	for _, f := range []bench.Frame{phone, {W: 1920, H: 1080, Top: 48}} {
		r := newRig(t, f, "half-moon")
		before := r.s.Pattern()
		fit := r.b.StageView()
		z := r.b.Zoom()
		mid := fit.Origin.Add(display.Pt{X: 20, Y: -30})
		held := fit.ToPlane(mid)
		send := func(id int, phase widget.Phase, p display.Pt) {
			r.now += 8
			r.b.Pointers([]widget.Pointer{{ID: id, Phase: phase, At: p.Scale(z), Time: r.now}}, r.now)
		}
		send(1, widget.Down, mid.Sub(display.Pt{X: 20}))
		send(2, widget.Down, mid.Add(display.Pt{X: 20}))
		send(1, widget.Move, mid.Sub(display.Pt{X: 50}))
		send(2, widget.Move, mid.Add(display.Pt{X: 50}))
		send(1, widget.Up, mid.Sub(display.Pt{X: 50}))
		send(2, widget.Up, mid.Add(display.Pt{X: 50}))
		r.b.Draw()
		v := r.b.StageView()
		if got := v.ToScreen(held); math.Abs(v.Scale/fit.Scale-2.5) > 1e-9 || got.Sub(mid).Len() > 1e-6 {
			t.Errorf("pinched: %v times as large, the middle at %v, want 2.5 and %v", v.Scale/fit.Scale, got, mid)
		}
		if c := r.control("fit"); c.Rect.W < 44 || c.Rect.H < 44 || c.Keys != "0" {
			t.Errorf("Fit stands at %v with key %q, want a finger's room and 0", c.Rect, c.Keys)
		}
		// One finger beside the handles pans.
		r.s.Playing = true
		from := fit.Origin.Add(display.Pt{X: -60, Y: 60})
		was := v.ToPlane(from)
		to := from.Add(display.Pt{X: 12, Y: -10})
		r.drag(from, from.Add(display.Pt{X: 10}), to)
		if got := r.b.StageView().ToScreen(was); got.Sub(to).Len() > 1e-6 {
			t.Errorf("panned: the place is at %v, want under the finger at %v", got, to)
		}
		r.s.Playing = false
		r.tap("fit")
		if r.b.StageView() != fit {
			t.Errorf("after Fit the view is %+v, want %+v", r.b.StageView(), fit)
		}
		if !r.s.Pattern().Equal(before) || r.s.CanUndo() {
			t.Error("looking closer has edited the pattern")
		}
	}
}

func TestDoubleTapBesideTheCurvesZooms(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	fit := r.b.StageView()
	beside := r.on(complex(0.9, 1.0))
	r.doubleTap(beside)
	if got := r.b.StageView().Scale / fit.Scale; math.Abs(got-2) > 1e-9 {
		t.Fatalf("a double tap beside the curves makes it %v times as large, want 2", got)
	}
	r.now += 1000
	r.doubleTap(r.on(complex(0.9, 1.0)))
	if r.b.StageView() != fit {
		t.Error("a second double tap does not fit the view again")
	}
	if len(r.s.Pattern().Lanes[0].Pieces) != 2 {
		t.Error("a double tap beside the curves has cut")
	}
}

func TestWheelAndKeysZoom(t *testing.T) {
	r := newRig(t, bench.Frame{W: 1440, H: 900, Top: 48}, "half-moon")
	fit := r.b.StageView()
	at := fit.Origin.Add(display.Pt{X: 100, Y: 80})
	held := fit.ToPlane(at)
	if !r.b.Wheel(at.Scale(r.b.Zoom()), -200) {
		t.Fatal("Wheel() over the stage = false, want true")
	}
	if v := r.b.StageView(); !(v.Scale > 1.3*fit.Scale) || v.ToScreen(held).Sub(at).Len() > 1e-6 {
		t.Errorf("after the wheel: scale %v of %v, the place at %v, want closer and at %v", v.Scale, fit.Scale, v.ToScreen(held), at)
	}
	if ruler := r.control("playhead"); r.b.Wheel(ruler.Rect.Centre().Scale(r.b.Zoom()), -200) {
		t.Error("Wheel() over the strip = true, want it left to the browser")
	}
	for range 30 {
		r.b.Wheel(at.Scale(r.b.Zoom()), 200)
	}
	if r.b.StageView() != fit {
		t.Error("wheeled all the way out the view does not fit")
	}
	r.b.ZoomKey(1.5)
	r.b.ZoomKey(1.5)
	v := r.b.StageView()
	head := v.ToScreen(r.s.Tracks()[0].At(r.s.Beat()).Head)
	if math.Abs(v.Scale/fit.Scale-2.25) > 1e-9 || head.Y < 48 || head.Y > r.control("playhead").Rect.Y {
		t.Errorf("two keys: scale %v times, the head at %v, want 2.25 and on the stage", v.Scale/fit.Scale, head)
	}
	r.b.ZoomKey(1.0 / 10)
	if r.b.StageView() != fit {
		t.Error("zoomed out by key the view does not fit")
	}
}

// What the stage adds fits every screen too, zoomed and marked, over nothing.
func TestStageControlsFit(t *testing.T) {
	var all []bench.Frame
	for _, f := range frames {
		all = append(all, f)
		f.Text = 2
		all = append(all, f)
	}
	for _, f := range all {
		r := newRig(t, f, "half-moon")
		r.b.ZoomKey(1.5)
		r.b.Draw()
		for _, a := range []float64{95, 130, 180, 222, 264} {
			r.now += 1000
			at := r.on(angle(a, 1.2))
			r.drag(at)
			var mine []widget.Control
			for _, c := range r.b.Controls() {
				if c.ID == "fit" || c.ID == "cut-here" {
					mine = append(mine, c)
				}
			}
			for i, c := range mine {
				if c.Rect.W < 44 || c.Rect.H < 44 || c.ID == "cut-here" && c.Rect.Inset(-6).Contains(at) {
					t.Errorf("%v×%v, tapped at %v°: %s stands at %v, over the place %v or too small", f.W, f.H, a, c.ID, c.Rect, at)
				}
				for _, d := range mine[i+1:] {
					if overlap(c.Rect, d.Rect) {
						t.Errorf("%v×%v, tapped at %v°: %s lies over %s", f.W, f.H, a, c.ID, d.ID)
					}
				}
				for _, d := range r.b.Controls() {
					if d.ID != c.ID && d.ID != "end" && d.ID != "begin" && d.ID != "fit" && d.ID != "cut-here" && overlap(c.Rect, d.Rect) {
						t.Errorf("%v×%v: %s %v lies over %s %v", f.W, f.H, c.ID, c.Rect, d.ID, d.Rect)
					}
				}
			}
		}
	}
}

func TestOpenedFitsTheView(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.b.ZoomKey(3)
	if err := r.s.Open(pattern(t, twoHands)); err != nil {
		t.Fatal(err)
	}
	r.b.Opened(0)
	r.b.Draw()
	for _, c := range r.b.Controls() {
		if c.ID == "fit" {
			t.Error("another pattern opens zoomed")
		}
	}
}

// On a pattern of two hands a tap takes the lane whose curve it hits.
func TestTapTakesTheOtherHand(t *testing.T) {
	r := newRig(t, phone, twoHands)
	for lane, k := range r.s.Tracks() {
		r.now += 1000
		at := r.on(k.PointAt(0, 0, 0.31).Head)
		other := r.s.Tracks()[1-lane]
		r.s.GoTo(r.s.Round() * 0.99)
		r.drag(at)
		if got := r.s.Selected().Lane; got != lane {
			// Both may pass there.
			near := math.Inf(1)
			for u := 0.0; u < 1; u += 0.001 {
				for i := range other.Legs {
					near = min(near, r.on(other.PointAt(0, i, u).Head).Sub(at).Len())
				}
			}
			if near > 12 {
				t.Errorf("a tap on lane %d's curve takes lane %d", lane, got)
			}
		}
	}
}

// What is seen closer stays on the stage: everything round it is covered, by
// the ground, before the controls are drawn.
func TestCloserStaysOnTheStage(t *testing.T) {
	for _, f := range frames {
		r := newRig(t, f, twoHands)
		z := r.b.Zoom()
		fit := r.b.StageView()
		r.b.Draw()
		for range 6 {
			r.b.ZoomKey(1.5)
		}
		l := r.b.Draw()
		covered := 0.0
		for _, m := range l.Marks {
			if m.Kind == display.FillRect && m.Color == l.Back && m.Radius == 0 {
				covered += m.Rect.W * m.Rect.H
				if m.Rect.Contains(fit.Origin) {
					t.Errorf("%v×%v: %v covers the stage itself", f.W, f.H, m.Rect)
				}
			}
		}
		stage := 0.0
		for _, m := range l.Marks {
			if m.Kind == display.FillRect && m.Rect.Contains(fit.Origin) {
				stage = m.Rect.W * m.Rect.H
				break
			}
		}
		if all := f.W / z * f.H / z; math.Abs(covered+stage-all) > 1 {
			t.Errorf("%v×%v: %v px² are covered and %v are the stage, want all %v together", f.W, f.H, covered, stage, all)
		}
	}
}

func TestFocusOnTheEnd(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.b.SetFocus("end")
	c := r.control("end")
	for _, m := range r.b.Draw().Marks {
		if m.Kind == display.StrokeRect && m.Rect == c.Rect {
			return
		}
	}
	t.Error("the end's twin has the keyboard, and nothing shows it")
}
