package bench_test

import (
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/host"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
)

// rig is a bench with a stand-in for the browser.
type rig struct {
	t    *testing.T
	b    *bench.Bench
	s    *session.Session
	host *host.Memory
	now  float64
	next int

	faces *face.Set
}

var phone = bench.Frame{W: 390, H: 844, Top: 48}

func newRig(t *testing.T, f bench.Frame, id string) *rig {
	t.Helper()
	faces, err := face.New()
	if err != nil {
		t.Fatal(err)
	}
	s := session.New(pattern(t, id))
	m := &host.Memory{}
	r := &rig{t: t, b: bench.New(s, words.Said, faces, m), s: s, host: m, faces: faces}
	r.b.SetFrame(f)
	r.b.Draw()
	return r
}

// inBothLanguages runs a test in each language.
func inBothLanguages(t *testing.T, test func(t *testing.T)) {
	for _, table := range []*words.Table{&words.English, &german.German} {
		t.Run(table.Lang, func(t *testing.T) {
			words.Use(table)
			t.Cleanup(func() { words.Use(&words.English) })
			test(t)
		})
	}
}

// pattern returns a library pattern by ID, the first for an empty one.
func pattern(t *testing.T, id string) engine.Pattern {
	t.Helper()
	e := presets.First()
	for _, x := range presets.Library() {
		if x.ID == id {
			e = x
		}
	}
	p, err := e.Pattern()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func (r *rig) control(id string) widget.Control {
	r.t.Helper()
	for _, c := range r.b.Controls() {
		if c.ID == id {
			return c
		}
	}
	r.t.Fatalf("no control %q", id)
	return widget.Control{}
}

// drag goes down at the first place and up at the last, all within one frame.
func (r *rig) drag(places ...display.Pt) {
	r.next++
	var evs []widget.Pointer
	for i, p := range places {
		r.now += 8
		phase := widget.Move
		if i == 0 {
			phase = widget.Down
		}
		evs = append(evs, widget.Pointer{ID: r.next, Phase: phase, At: p.Scale(r.b.Zoom()), Time: r.now})
	}
	last := evs[len(evs)-1]
	last.Phase = widget.Up
	r.b.Pointers(append(evs, last), r.now)
	r.b.Draw()
}

func (r *rig) tap(id string) {
	r.t.Helper()
	r.drag(r.control(id).Rect.Centre())
}

func (r *rig) slide(id string, v float64) {
	r.t.Helper()
	c := r.control(id)
	y := c.Rect.Centre().Y
	r.drag(display.Pt{X: c.At(c.Value), Y: y}, display.Pt{X: (c.At(c.Value) + c.At(v)) / 2, Y: y}, display.Pt{X: c.At(v), Y: y})
}

func TestSliderChangesWhatThePieceIs(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.slide("prop", 3)
	if got := r.s.SelectedPiece().Prop; !got.Equal(frac.Int(3)) {
		t.Fatalf("prop after the drag = %v, want 3", got)
	}
	if got, want := r.control("piece-0-0").Caption, "two-petal in-spin flower"; got != want {
		t.Errorf("the piece reads %q, want %q", got, want)
	}
	if r.host.Changes != 1 {
		t.Errorf("complete edits told to the page = %d, want 1 for a whole drag", r.host.Changes)
	}
	if n := len(r.host.Said); n == 0 || !strings.Contains(r.host.Said[n-1], "two-petal in-spin flower") {
		t.Errorf("spoken: %q, want the new name last", r.host.Said)
	}
	r.tap("undo")
	if got := r.s.SelectedPiece().Prop; !got.Equal(frac.Int(1)) {
		t.Errorf("prop after undo = %v, want 1", got)
	}
}

func TestSteppersGoToWholeNumbers(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.b.Answer("arm", "-1/3", 0)
	for _, tt := range []struct {
		press string
		want  frac.Frac
	}{{"arm-more", frac.Int(0)}, {"arm-more", frac.Int(1)}, {"arm-less", frac.Int(0)}, {"arm-less", frac.Int(-1)}, {"arm-less", frac.Int(-2)}} {
		r.tap(tt.press)
		if got := r.s.SelectedPiece().Arm; !got.Equal(tt.want) {
			t.Errorf("after %s: arm = %v, want %v", tt.press, got, tt.want)
		}
	}
}

// A tap on a picture of the petal rule goes to its whole value, however far
// from its middle it falls.
func TestPetalRule(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	c := r.control("prop")
	if got, want := len(c.Pictures), 13; got != want {
		t.Fatalf("pictures = %d, want one for each whole number from -6 to 6, %d", got, want)
	}
	for _, tt := range []struct {
		v    float64
		want string
	}{{3, "two-petal in-spin flower"}, {-2, "three-petal antispin flower, triquetra"}, {1, "extension"}, {-1, "two-petal antispin flower, cateye"}} {
		r.drag(display.Pt{X: c.At(tt.v + 0.4), Y: c.Rule.Centre().Y})
		if got := r.control("piece-0-0").Caption; got != tt.want {
			t.Errorf("a tap near %v on the rule gives %q, want %q", tt.v, got, tt.want)
		}
	}
	// The picture of −2 is the triquetra: with arm and tether alike its tips
	// lie as far out as it goes, three of them (common practice).
	for _, p := range c.Pictures {
		if p.Value == -2 && tips(p.Curve) != 3 {
			t.Errorf("the picture at -2 has %d petals, want 3", tips(p.Curve))
		}
		if p.Value == 3 && tips(p.Curve) != 2 {
			t.Errorf("the picture at 3 has %d petals, want 2", tips(p.Curve))
		}
	}
}

// tips counts how often a closed curve comes out to the edge of the picture.
func tips(curve []display.Pt) int {
	n := 0
	pts := curve[:len(curve)-1]
	for i, p := range pts {
		prev, next := pts[(i+len(pts)-1)%len(pts)], pts[(i+1)%len(pts)]
		if p.Len() > 0.9 && p.Len() >= prev.Len() && p.Len() > next.Len() {
			n++
		}
	}
	return n
}

func TestCutMoveRejoinUndoByTouch(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	start := r.s.Pattern()
	ruler := r.control("playhead")
	r.drag(display.Pt{X: ruler.At(1), Y: ruler.Rect.Centre().Y})
	r.tap("cut")
	if got := len(r.s.Pattern().Lanes[0].Pieces); got != 3 {
		t.Fatalf("pieces after Cut = %d, want 3", got)
	}
	r.tap("rejoin")
	if !r.s.Pattern().Equal(start) {
		t.Error("cut then rejoin by touch is not the identity")
	}
	// Carry the first piece beyond the second.
	a, b := r.control("piece-0-0"), r.control("piece-0-1")
	before := r.s.Pattern().Lanes[0].Pieces
	r.drag(a.Rect.Centre(), display.Pt{X: a.Rect.Centre().X + 20, Y: a.Rect.Centre().Y}, b.Rect.Centre().Add(display.Pt{X: 20}))
	after := r.s.Pattern().Lanes[0].Pieces
	if !after[0].Equal(before[1]) || !after[1].Equal(before[0]) {
		t.Errorf("the two pieces have not changed places")
	}
	if got := r.s.Selected().Piece; got != 1 {
		t.Errorf("Selected() after the carry = %d, want the carried piece, 1", got)
	}
	for r.s.CanUndo() {
		r.tap("undo")
	}
	if !r.s.Pattern().Equal(start) {
		t.Error("undo to the start does not give the first pattern")
	}
}

func TestCarriedPieceLetsOthersMakeRoom(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	a, b := r.control("piece-0-0"), r.control("piece-0-1")
	down := widget.Pointer{ID: 9, Phase: widget.Down, At: a.Rect.Centre()}
	over := widget.Pointer{ID: 9, Phase: widget.Move, At: b.Rect.Centre().Add(display.Pt{X: 10})}
	r.b.Pointers([]widget.Pointer{down, over}, 0)
	r.b.Draw()
	if got := r.control("piece-0-1").Rect.X; got != a.Rect.X {
		t.Errorf("the other piece stands at %v, want the room left, %v", got, a.Rect.X)
	}
	over.Phase = widget.Cancel
	r.b.Pointers([]widget.Pointer{over}, 0)
	r.b.Draw()
	if got := r.control("piece-0-0").Rect.X; got != a.Rect.X {
		t.Errorf("after the finger was taken away the piece stands at %v, want %v", got, a.Rect.X)
	}
	if r.s.CanUndo() {
		t.Error("a carry that was taken away left an edit")
	}
}

func TestTypedValues(t *testing.T) {
	for _, tt := range []struct {
		id, text string
		taken    bool
		refusal  string
	}{
		{"prop", "−2", true, ""},
		{"prop", "1/3", true, ""},
		{"prop", "2,5", true, ""},
		{"arm", "64", true, ""},
		{"arm", "65", false, "from −64 to 64"},
		{"prop", "many", false, "“many” is not a number"},
		{"prop", "", false, "is not a number"},
		{"prop", "1/0", false, "is not a number"},
		{"tempo", "132", true, ""},
		{"tempo", "9", false, "from 10 to 400"},
		{"length", "3/2", true, ""},
		{"length", "0", false, "out of range"},
		{"length", "10001", false, "out of range"},
	} {
		r := newRig(t, phone, "half-moon")
		before := r.s.Pattern()
		got := r.b.Answer(tt.id, tt.text, 0)
		if (got == "") != tt.taken || !strings.Contains(got, tt.refusal) {
			t.Errorf("Answer(%s, %q) = %q, want taken %v, or a text with %q", tt.id, tt.text, got, tt.taken, tt.refusal)
		}
		if changed := !r.s.Pattern().Equal(before); changed != tt.taken {
			t.Errorf("Answer(%s, %q): pattern changed = %v, want %v", tt.id, tt.text, changed, tt.taken)
		}
	}
}

func TestTwinsMeanTheSame(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.b.Do(widget.Intent{ID: "prop", Act: widget.Set, Value: -2}, 0)
	if got := r.s.SelectedPiece().Prop; !got.Equal(frac.Int(-2)) {
		t.Errorf("prop set by its twin = %v, want -2", got)
	}
	r.b.Do(widget.Intent{ID: "piece-0-0", Act: widget.Set, Value: 1}, 0)
	if got := r.s.Selected().Piece; got != 1 {
		t.Errorf("a piece moved by its twin stands at %d, want 1", got)
	}
	for _, id := range []string{"piece-7-0", "piece-0-99", "piece-x", "nothing"} {
		r.b.Do(widget.Intent{ID: id, Act: widget.Press}, 0) // a stale twin must do no harm
	}
}

func TestMirrorChangesTheViewOnly(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	before := r.s.Pattern()
	r.tap("mirror")
	if !r.s.Mirror || !r.s.Pattern().Equal(before) {
		t.Errorf("after one tap: Mirror = %v, pattern changed = %v, want true, false", r.s.Mirror, !r.s.Pattern().Equal(before))
	}
}

func TestMessageGoesByItself(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.tap("mirror")
	at, ok := r.b.NextChange()
	if !ok {
		t.Fatal("NextChange() = none though a message is shown")
	}
	r.b.Step(0, at)
	if _, ok := r.b.NextChange(); ok {
		t.Error("NextChange() still set after its time")
	}
	if r.b.Step(0, at) {
		t.Error("Step() = moving on a paused bench, want still")
	}
}
