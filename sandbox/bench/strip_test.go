package bench_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// offered returns the option of the list offered last whose label has a part.
func (r *rig) offered(part string) (list, option string) {
	r.t.Helper()
	if len(r.host.Offered) == 0 {
		r.t.Fatal("nothing was offered")
	}
	c := r.host.Offered[len(r.host.Offered)-1]
	for _, o := range c.Options {
		if strings.Contains(o.Label, part) {
			return c.ID, o.ID
		}
	}
	r.t.Fatalf("%q offers no %q: %+v", c.Label, part, c.Options)
	return "", ""
}

func (r *rig) choose(part string) {
	r.t.Helper()
	list, option := r.offered(part)
	r.b.Chosen(list, option, r.now)
	r.b.Draw()
}

// long presses a control for some milliseconds and then lets go.
func (r *rig) long(id string, ms float64) {
	r.t.Helper()
	r.next++
	p := r.control(id).Rect.Centre().Scale(r.b.Zoom())
	r.now += 8
	r.b.Pointers([]widget.Pointer{{ID: r.next, Phase: widget.Down, At: p, Time: r.now}}, r.now)
	r.now += ms
	r.b.Step(0, r.now)
	r.b.Pointers([]widget.Pointer{{ID: r.next, Phase: widget.Up, At: p, Time: r.now}}, r.now)
	r.b.Draw()
}

func TestSecondHandByTouch(t *testing.T) {
	for _, f := range frames {
		r := newRig(t, f, "half-moon")
		start := r.s.Pattern()
		r.tap("add-hand")
		r.choose("Split, same direction")
		if n := len(r.s.Tracks()); n != 2 {
			t.Fatalf("%vx%v: hands = %d, want 2", f.W, f.H, n)
		}
		if d := float64((r.s.Pattern().Lanes[1].PropAt - r.s.Pattern().Lanes[0].PropAt).Wrap()); d != 180 {
			t.Errorf("%vx%v: props start %v° apart, want 180", f.W, f.H, d)
		}
		r.tap("hand-1")
		r.choose("Hide the left hand")
		if !r.s.Hidden(1) || !strings.HasSuffix(r.control("hand-1").Label, "hidden") {
			t.Errorf("%vx%v: after hiding: hidden %v, tag %q", f.W, f.H, r.s.Hidden(1), r.control("hand-1").Label)
		}
		r.tap("hand-0")
		r.choose("Show both")
		r.tap("hand-0")
		r.choose("Only the right hand")
		if r.s.Hidden(0) || !r.s.Hidden(1) {
			t.Errorf("%vx%v: only the right hand: hidden %v, %v", f.W, f.H, r.s.Hidden(0), r.s.Hidden(1))
		}
		r.tap("hand-1")
		r.choose("Take the left hand away")
		if !r.s.Pattern().Equal(start) {
			t.Errorf("%vx%v: the hand that was added is not taken away", f.W, f.H)
		}
		r.tap("undo")
		r.tap("undo")
		if !r.s.Pattern().Equal(start) || r.s.CanUndo() {
			t.Errorf("%vx%v: two undos do not lead back", f.W, f.H)
		}
	}
}

func TestSeamSheet(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.tap("seam-0-0")
	if len(r.host.Sheets) != 1 {
		t.Fatalf("sheets = %d after a tap on a seam, want 1", len(r.host.Sheets))
	}
	got := r.host.Sheets[0]
	// Extension into four-petal antispin at R = L, met where the hand turns
	// back: no jump at all (common practice).
	if got.Lead != "Smooth" || !strings.Contains(got.Title, "from piece 1 into piece 2") {
		t.Errorf("sheet = %q: %q, want a smooth join of piece 1 and 2", got.Title, got.Lead)
	}
	want := map[string]string{"Gap of the hand": "none", "The hand": "turns back, by 180°", "The arm": "changes its direction",
		"The prop": "keeps its direction", "Jump across the tether": "none"}
	for _, l := range got.Sections[0].Lines {
		if w, ok := want[l.Name]; ok && w != l.Text {
			t.Errorf("%s: %q, want %q", l.Name, l.Text, w)
		}
		delete(want, l.Name)
	}
	if len(want) > 0 {
		t.Errorf("the sheet does not tell of %v", want)
	}
	r.b.Answer("prop", "-3", 0) // piece 1 now turns the other way than piece 2
	r.b.Do(widget.Intent{ID: "seam-0-0", Act: widget.Press}, 0)
	if got := r.host.Sheets[1]; got.Lead != "Stop" || !strings.Contains(got.Text, "slack") {
		t.Errorf("with props that turn opposite ways the sheet says %q: %q, want a stop", got.Lead, got.Text)
	}
	for _, id := range []string{"seam-0-9", "seam-5-0", "seam-x"} {
		r.b.Do(widget.Intent{ID: id, Act: widget.Press}, 0) // a stale twin must do no harm
	}
	if len(r.host.Sheets) != 2 {
		t.Error("a seam that is not there has a sheet")
	}
}

// Every seam has a control of its own with a name, on all screens; where it can
// be touched it leaves its pieces the greater part of themselves, and it is
// never less than WCAG 2.2 asks of a target (2.5.8: 24 by 24).
func TestSeamsAreNamedAndLeaveRoom(t *testing.T) {
	for _, f := range frames {
		for _, id := range []string{"half-moon", twoHands, "rounds-of-the-watch"} {
			r := newRig(t, f, id)
			for lane, k := range r.s.Tracks() {
				for i := range k.Legs {
					c := r.control(fmt.Sprintf("seam-%d-%d", lane, i))
					if !strings.Contains(c.Label, ": ") || !strings.Contains(c.Label, "join") {
						t.Errorf("%s: seam %d is called %q", id, i+1, c.Label)
					}
					if c.Twin {
						continue
					}
					if c.Rect.W < 24-0.01 || c.Rect.H < 44 {
						t.Errorf("%vx%v %s: %s is touched in %v, want at least 24 by 44", f.W, f.H, id, c.ID, c.Rect)
					}
					p := r.control(fmt.Sprintf("piece-%d-%d", lane, i))
					if left := p.Rect.W - c.Rect.W; left < c.Rect.W {
						t.Errorf("%vx%v %s: %s leaves its piece %v of %v px", f.W, f.H, id, c.ID, left, p.Rect.W)
					}
				}
			}
		}
	}
}

func TestEdgeDrag(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	start := r.s.Pattern()
	second := start.Lanes[0].Pieces[1]
	c, ruler := r.control("seam-0-0"), r.control("playhead")
	perBeat := ruler.Track.W / ruler.Max
	at := func(beats float64) display.Pt {
		return display.Pt{X: c.Track.X + (beats-2)*perBeat, Y: c.Rect.Centre().Y}
	}
	for _, tt := range []struct {
		to   float64
		want frac.Frac
	}{
		{2.5, frac.New(5, 2)}, {3.1, frac.Int(3)}, {2.88, frac.Int(3)}, {1.27, frac.New(5, 4)}, {0.03, frac.New(1, 4)}, {-1, frac.New(1, 4)},
	} {
		r.drag(at(2), at((2+tt.to)/2), at(tt.to))
		if got := r.s.Pattern().Lanes[0].Pieces[0].Length(); !got.Equal(tt.want) {
			t.Errorf("edge dragged to %v beats: length = %v, want %v", tt.to, got, tt.want)
		}
		if got := r.s.Pattern().Lanes[0].Pieces[1]; !got.Equal(second) {
			t.Errorf("edge dragged to %v: the next piece has changed", tt.to)
		}
		if at := r.s.Tracks()[0].Legs[1].Start; at != tt.want.Float() {
			t.Errorf("edge dragged to %v: the next piece begins at %v", tt.to, at)
		}
		r.tap("undo")
		if !r.s.Pattern().Equal(start) {
			t.Fatalf("edge dragged to %v: one undo does not bring it back", tt.to)
		}
	}
}

// While it is dragged the boundary stays under the finger and the picture
// follows; the strip finds its new scale when it is let go.
func TestEdgeStaysUnderTheFinger(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	c := r.control("seam-0-0")
	y := c.Rect.Centre().Y
	send := func(phase widget.Phase, x float64) {
		r.b.Pointers([]widget.Pointer{{ID: 5, Phase: phase, At: display.Pt{X: x, Y: y}}}, 0)
		r.b.Draw()
	}
	send(widget.Down, c.Track.X+3)
	ruler := r.control("playhead")
	perBeat := ruler.Track.W / ruler.Max
	send(widget.Move, c.Track.X+3+perBeat)
	if got := r.control("seam-0-0").Track.X; got < c.Track.X+perBeat-0.01 || got > c.Track.X+perBeat+0.01 {
		t.Errorf("held, the boundary stands at %v, want one beat on, %v", got, c.Track.X+perBeat)
	}
	if got := r.s.SelectedPiece().Length(); !got.Equal(frac.Int(3)) || !r.s.Holding() {
		t.Errorf("held, the piece is %v beats long, want 3, live", got)
	}
	if got, right := r.control("piece-0-1").Rect, c.Track.X+2*perBeat; got.X+got.W > right+0.01 {
		t.Errorf("the piece after it is drawn to %v, beyond the strip's end, %v", got.X+got.W, right)
	}
	send(widget.Up, c.Track.X+3+perBeat)
	if ruler := r.control("playhead"); ruler.Max != 5 || ruler.Track.W < 5*perBeat/2 {
		t.Errorf("let go, the strip is %v beats long on %v px", ruler.Max, ruler.Track.W)
	}
	if r.s.Holding() {
		t.Error("let go, the session still holds")
	}
	// A second finger, or the system, taking it away ends it too.
	c = r.control("seam-0-0")
	send(widget.Down, c.Track.X)
	send(widget.Move, c.Track.X-30)
	send(widget.Cancel, c.Track.X-30)
	if r.s.Holding() {
		t.Error("taken away, the session still holds")
	}
}

func TestSeamTwinChangesTheLength(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	if got := r.b.Value("seam-0-0"); got != 2 {
		t.Errorf("Value(seam) = %v, want the piece's beats, 2", got)
	}
	r.b.Do(widget.Intent{ID: "seam-0-0", Act: widget.Set, Value: 2.25}, 0)
	if got := r.s.Pattern().Lanes[0].Pieces[0].Length(); !got.Equal(frac.New(9, 4)) {
		// A quarter from a whole is beyond its catch.
		t.Errorf("length set by the seam's twin = %v, want 9/4", got)
	}
}

func TestLongPressOpensThePieceSheet(t *testing.T) {
	for _, tt := range []struct {
		ms   float64
		want int
	}{{440, 0}, {460, 1}, {2000, 1}} {
		r := newRig(t, phone, "half-moon")
		r.long("piece-0-1", tt.ms)
		if got := len(r.host.Offered); got != tt.want {
			t.Errorf("pressed for %v ms: sheets = %d, want %d", tt.ms, got, tt.want)
		}
		if r.s.Selected().Piece != 1 {
			t.Errorf("pressed for %v ms the piece is not in hand", tt.ms)
		}
		r.tap("piece-0-0") // nothing is left of the press
		if r.s.Selected().Piece != 0 {
			t.Errorf("after a press of %v ms a tap takes no piece in hand", tt.ms)
		}
	}
	// Events of one frame: their own times tell, though no frame fell between.
	r := newRig(t, phone, "half-moon")
	p := r.control("piece-0-0").Rect.Centre()
	r.b.Pointers([]widget.Pointer{{ID: 1, Phase: widget.Down, At: p, Time: 100}, {ID: 1, Phase: widget.Up, At: p, Time: 700}}, 5000)
	if len(r.host.Offered) != 1 {
		t.Error("a long press within one frame opens nothing")
	}
	// A finger that moves carries.
	r = newRig(t, phone, "half-moon")
	r.b.Pointers([]widget.Pointer{{ID: 1, Phase: widget.Down, At: p}, {ID: 1, Phase: widget.Move, At: p.Add(display.Pt{X: 20})}}, 0)
	if r.b.Step(0, 1000); len(r.host.Offered) != 0 {
		t.Error("a carried piece opens its sheet")
	}
}

func TestBenchWakesForALongPress(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	p := r.control("piece-0-0").Rect.Centre()
	r.b.Pointers([]widget.Pointer{{ID: 1, Phase: widget.Down, At: p}}, 1000)
	at, ok := r.b.NextChange()
	if !ok || at != 1450 {
		t.Fatalf("NextChange() = %v, %v, want 450 ms after the finger came down", at, ok)
	}
	r.b.Step(0, at)
	if len(r.host.Offered) != 1 {
		t.Error("at that time the sheet is not opened")
	}
	if _, ok := r.b.NextChange(); ok {
		t.Error("NextChange() goes on after the sheet")
	}
}

func TestPieceSheet(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	start := r.s.Pattern()
	sheet := func(choice string) {
		r.b.Do(widget.Intent{ID: pieceInHand(r), Act: widget.Menu}, r.now)
		r.choose(choice)
	}
	pieces := func() []engine.Piece { return r.s.Pattern().Lanes[r.s.Selected().Lane].Pieces }
	sheet("Copy")
	sheet("Paste after")
	if got := pieces(); len(got) != 3 || !got[1].Equal(got[0]) {
		t.Errorf("after Copy and Paste: %d pieces", len(got))
	}
	sheet("Cut out")
	sheet("Place here")
	if !r.s.Placed() {
		t.Error("Place here has placed nothing")
	}
	sheet("Let it carry on")
	sheet("Mirror the whole")
	if got := r.s.Pattern().Lanes[0].Side; got != engine.Left {
		t.Errorf("mirrored, the hand is %v, want the left", got)
	}
	sheet("Mirror the whole")
	sheet("How it joins")
	if len(r.host.Sheets) != 1 {
		t.Error("the join's sheet is not opened")
	}
	if !r.s.Pattern().Equal(start) {
		t.Error("what was done and done back is not the first pattern")
	}
	sheet("Turn the whole")
	sheet("Repeat")
	sheet("And back")
	sheet("Flip arm")
	sheet("Delete")
	n := 0
	for r.s.CanUndo() {
		r.tap("undo")
		n++
	}
	if want := 11; n != want || !r.s.Pattern().Equal(start) {
		t.Errorf("%d undos lead back, want %d, each edit one", n, want)
	}
}

func pieceInHand(r *rig) string {
	return fmt.Sprintf("piece-%d-%d", r.s.Selected().Lane, r.s.Selected().Piece)
}

func TestInsertFromTheLibrary(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	p := pattern(t, "bump-at-the-quay")
	if refused := r.b.Insert(p, 0); refused != "" {
		t.Fatal(refused)
	}
	if got := len(r.s.Pattern().Lanes[0].Pieces); got != 2+len(p.Lanes[0].Pieces) {
		t.Errorf("pieces = %d, want %d more than 2", got, len(p.Lanes[0].Pieces))
	}
	if !slices.ContainsFunc(r.host.Said, func(s string) bool { return strings.Contains(s, p.Title) }) {
		t.Errorf("said %q, want the pattern's title", r.host.Said)
	}
	r.tap("undo")
	if said := r.host.Said[len(r.host.Said)-1]; len(r.s.Pattern().Lanes[0].Pieces) != 2 {
		t.Errorf("one undo (%s) does not take it out", said)
	}
}

// many makes a lane of n pieces of a beat each.
func many(t *testing.T, n int) *rig {
	t.Helper()
	r := newRig(t, phone, "half-moon")
	p := r.s.Pattern()
	l := p.Lanes[0]
	one := l.Pieces[0]
	one.Beats = frac.Int(1)
	l.Pieces = slices.Repeat([]engine.Piece{one}, n)
	if err := r.s.Open(p.WithLane(0, l)); err != nil {
		t.Fatal(err)
	}
	r.b.Draw()
	return r
}

func TestLongLaneHasAWindow(t *testing.T) {
	r := many(t, 40)
	strip := display.Rect{X: 8 + 44, W: 390 - 8 - 8 - 44 - 6}
	shown := func() (first, last int) {
		first, last = -1, -1
		for _, c := range r.b.Controls() {
			if c.Kind != widget.Piece || c.Twin {
				continue
			}
			if c.Rect.X < strip.X-0.01 || c.Rect.X+c.Rect.W > strip.X+strip.W+0.01 {
				t.Errorf("%s is drawn at %v, beyond the strip %v", c.ID, c.Rect, strip)
			}
			if first < 0 {
				first = c.Index
			}
			last = c.Index
		}
		return first, last
	}
	if c := r.control("piece-0-1"); c.Rect.W < 26-0.01 {
		t.Errorf("a piece of 40 is %v px wide, want at least 26", c.Rect.W)
	}
	if first, last := shown(); first != 0 || last > 13 {
		t.Errorf("at the start pieces %d to %d are seen, want the first dozen", first, last)
	}
	r.s.Seek(30)
	r.b.Draw()
	if first, last := shown(); first > 30 || last < 30 {
		t.Errorf("at beat 30 pieces %d to %d are seen, want the playhead's", first, last)
	}
	// The ruler scrubs within what is seen, and the window stays meanwhile.
	c := r.control("playhead")
	y := c.Rect.Centre().Y
	r.drag(display.Pt{X: c.At(30), Y: y}, display.Pt{X: c.At(31), Y: y}, display.Pt{X: c.At(32), Y: y})
	if got := r.s.RoundBeat(); got != 32 {
		t.Errorf("scrubbed to beat %v, want 32", got)
	}
	// A piece taken by its twin comes into view.
	r.b.Do(widget.Intent{ID: "piece-0-2", Act: widget.Press}, 0)
	r.b.Draw()
	if first, last := shown(); first > 2 || last < 2 {
		t.Errorf("piece 3 taken in hand: pieces %d to %d are seen", first, last)
	}
	// Keys draw the strip together until all of it is seen.
	for range 10 {
		r.b.Do(widget.Intent{ID: "strip-zoom-out", Act: widget.Press}, 0)
		r.b.Draw()
	}
	if first, last := shown(); first != 0 || last != 39 {
		t.Errorf("drawn together pieces %d to %d are seen, want all", first, last)
	}
	perBeat := func() float64 { c := r.control("playhead"); return c.Track.W / c.Max }
	before := perBeat()
	r.b.Do(widget.Intent{ID: "strip-zoom-in", Act: widget.Press}, 0)
	r.b.Draw()
	if got := perBeat(); got < before*1.4 {
		t.Errorf("drawn out a beat is %v px wide, was %v", got, before)
	}
}

func TestPinchOnTheStrip(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	start := r.s.Pattern()
	a, b := r.control("piece-0-0").Rect.Centre(), r.control("piece-0-1").Rect.Centre()
	ruler := r.control("playhead")
	before := ruler.Track.W / ruler.Max
	ev := func(id int, phase widget.Phase, p display.Pt) {
		r.now += 8
		r.b.Pointers([]widget.Pointer{{ID: id, Phase: phase, At: p, Time: r.now}}, r.now)
		r.b.Draw()
	}
	beatAt := func(x float64) float64 {
		c := r.control("playhead")
		return (x - c.Track.X) / (c.Track.W / c.Max)
	}
	middle := beatAt((a.X + b.X) / 2)
	near := func(p, q display.Pt) (display.Pt, display.Pt) {
		m := p.Add(q).Scale(0.5)
		return m.Add(p.Sub(m).Scale(0.5)), m.Add(q.Sub(m).Scale(0.5))
	}
	p, q := near(a, b)
	middle = beatAt((p.X + q.X) / 2)
	ev(1, widget.Down, p)
	ev(2, widget.Down, q)
	ev(1, widget.Move, a)
	ev(2, widget.Move, b)
	ruler = r.control("playhead")
	if got := ruler.Track.W / ruler.Max; got < 1.99*before || got > 2.01*before {
		t.Errorf("fingers twice as far apart: %v px a beat, want twice %v", got, before)
	}
	if got := beatAt((a.X + b.X) / 2); got < middle-0.01 || got > middle+0.01 {
		t.Errorf("between the fingers is beat %v, want it to stay %v", got, middle)
	}
	ev(1, widget.Up, a)
	ev(2, widget.Up, b)
	if !r.s.Pattern().Equal(start) || r.s.CanUndo() {
		t.Error("a pinch has edited the pattern")
	}
	// And afterwards one finger works as ever.
	r.drag(r.control("piece-0-0").Rect.Centre())
	if r.s.Selected().Piece != 0 || len(r.host.Offered) != 0 {
		t.Error("after a pinch a tap takes no piece in hand")
	}
}

// One hand may follow the other by some beats.
func TestLaterHand(t *testing.T) {
	r := newRig(t, phone, "half-moon")
	r.tap("add-hand")
	r.choose("some beats later")
	q := r.host.Asked[len(r.host.Asked)-1]
	if refused := r.b.Answer(q.ID, "nonsense", 0); refused == "" {
		t.Error("nonsense was taken for a number of beats")
	}
	if refused := r.b.Answer(q.ID, "1/2", 0); refused != "" {
		t.Fatal(refused)
	}
	first, later := r.s.Tracks()[0], r.s.Tracks()[1]
	for beat := 0.0; beat < 4; beat += 0.1 {
		if a, b := first.At(beat).Head, later.At(beat+0.5).Head; math.Hypot(real(a-b), imag(a-b)) > 1e-9 {
			t.Fatalf("half a beat after %v the later hand's head is at %v, want %v, where the first was", beat, b, a)
		}
	}
}
