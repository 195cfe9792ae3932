package bench_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// compares is a bench that compares two patterns of the library.
func compares(t *testing.T, f bench.Frame, left, right string) *rig {
	t.Helper()
	r := newRig(t, f, left)
	r.b.Compare(pattern(t, right))
	r.b.Draw()
	return r
}

// whole returns a frame without the header, which a comparison does away with.
func whole(f bench.Frame, text float64, beside bool) bench.Frame {
	f.Top = max(f.Top-48, 0)
	f.Text = text
	if f.Beside = beside; beside {
		f.Right = 0.27 * f.W
	}
	return f
}

func TestComparisonFitsEveryScreen(t *testing.T) {
	for _, f := range frames {
		for _, text := range []float64{1, 1.5, 2} {
			for _, over := range []bool{false, true} {
				f := whole(f, text, f.W >= 1000)
				t.Run(fmt.Sprintf("%vx%v, text %v, over %v", f.W, f.H, text, over), func(t *testing.T) {
					r := compares(t, f, twoHands, "rounds-of-the-watch")
					if over {
						r.tap("compare-over")
					}
					r.fitsComparison(f, over)
				})
			}
		}
	}
}

// fitsComparison holds that nothing is outside, cut or over anything else.
func (r *rig) fitsComparison(f bench.Frame, over bool) {
	t, z := r.t, r.b.Zoom()
	room := display.Rect{X: f.Left / z, Y: f.Top / z, W: (f.W - f.Left - f.Right) / z, H: (f.H - f.Top - f.Bottom) / z}
	within := func(x display.Rect) bool {
		return x.X >= room.X-0.01 && x.Y >= room.Y-0.01 && x.X+x.W <= room.X+room.W+0.01 && x.Y+x.H <= room.Y+room.H+0.01
	}
	cs, l := r.b.Controls(), r.b.Draw()
	for i, c := range cs {
		if !within(c.Rect) {
			t.Errorf("%s stands at %v, outside %v", c.ID, c.Rect, room)
		}
		if h := c.Hit(); h.W < 44 || h.H < 44 {
			t.Errorf("%s is touched in %v, want at least 44 by 44", c.ID, h)
		}
		for _, d := range cs[i+1:] {
			if overlap(c.Rect, d.Rect) {
				t.Errorf("%s %v lies over %s %v", c.ID, c.Rect, d.ID, d.Rect)
			}
		}
	}
	var texts []display.Rect
	for _, m := range l.Marks {
		switch {
		case m.Kind == display.Text:
			x := display.Rect{X: m.At.X, Y: m.At.Y - m.Size*0.75, W: r.faces.Width(m.Text, m.Size, m.Bold), H: m.Size}
			if !within(x) {
				t.Errorf("%q is written in %v, outside %v", m.Text, x, room)
			}
			// A title may be of any length; it is whole in what is told of both.
			if strings.HasSuffix(m.Text, "…") && f.Text == 1 && (f.H >= 400 || !m.Bold) {
				t.Errorf("%q is cut", m.Text)
			}
			if len([]rune(m.Text)) > 2 || m.Text == "A" || m.Text == "B" {
				for _, y := range texts {
					if overlap(x, y) {
						t.Errorf("%q lies over another text", m.Text)
					}
				}
				texts = append(texts, x)
			}
		default:
			for _, p := range l.Of(m) {
				if !within(display.Rect{X: p.X, Y: p.Y}.AtLeast(0, 0)) {
					t.Errorf("a mark of kind %d has a point at %v, outside %v", m.Kind, p, room)
					break
				}
			}
		}
	}
	for _, want := range []string{"A", "B", "R "} {
		if !slices.ContainsFunc(l.Marks, func(m display.Mark) bool { return m.Kind == display.Text && strings.HasPrefix(m.Text, want) }) {
			t.Errorf("no text begins with %q", want)
		}
	}
	a, b := r.b.CompareViews()
	if a.Scale != b.Scale || a.Scale <= 0 {
		t.Errorf("the scales are %v and %v pixels a metre, want one", a.Scale, b.Scale)
	}
	if same := a.Origin == b.Origin; same != over {
		t.Errorf("the middles are at %v and %v, laid over each other: %v", a.Origin, b.Origin, over)
	}
}

// Whatever is done with the playhead, both patterns stand at its one beat.
func TestComparisonHasOneBeat(t *testing.T) {
	for _, pair := range [][2]string{{"four-buoys", "compass-card"}, {twoHands, "coil-of-rope"}, {"half-moon", "missing-plank"}} {
		r := compares(t, phone, pair[0], pair[1])
		beat := func(want float64) {
			t.Helper()
			c, ok := r.b.Compared()
			if !ok || c.Beats[0] != c.Beats[1] || c.Beats[0] != want {
				t.Fatalf("%v: beats %v, want %v for both", pair, c.Beats, want)
			}
		}
		beat(0)
		r.tap("step-on")
		r.tap("step-on")
		beat(2)
		r.tap("step-back")
		beat(1)
		r.b.Do(widget.Intent{ID: "playhead", Act: widget.Set, Value: 2.5}, 0)
		beat(2.5)
		if got := r.b.Value("playhead"); got != 2.5 {
			t.Errorf("%v: the playhead's value is %v, want 2.5", pair, got)
		}
		r.tap("step-back")
		beat(2)
		// The left one's tempo carries both, and the playing speed.
		tempo := r.s.Pattern().Tempo
		r.tap("play")
		r.b.Step(0.25, 0)
		beat(2 + 0.25*tempo/60)
		r.tap("speed") // half
		r.b.Step(0.25, 0)
		beat(2 + 0.25*tempo/60 + 0.25*tempo/120)
	}
	// Both begin again where both are back: eight and four beats (the files).
	r := compares(t, phone, "four-buoys", "compass-card")
	r.b.Do(widget.Intent{ID: "playhead", Act: widget.Set, Value: 7}, 0)
	r.tap("step-on")
	if c, _ := r.b.Compared(); c.Beats != [2]float64{} {
		t.Errorf("a step on from beat 7 of 8 leads to %v, want the start", c.Beats)
	}
	r.tap("step-back")
	if c, _ := r.b.Compared(); c.Beats != [2]float64{} {
		t.Errorf("a step back from the start leads to %v, want the start", c.Beats)
	}
}

// Comparing makes no work, no undo and no change; leaving it gives the bench back,
// with its playhead, playing or not.
func TestComparingLeavesTheBench(t *testing.T) {
	for _, playing := range []bool{false, true} {
		r := newRig(t, phone, "half-moon")
		r.tap("flip")
		r.s.GoTo(1.5)
		r.s.Playing = playing
		changes, rev, before := r.host.Changes, r.s.Revision(), r.s.Pattern()
		r.b.Draw()
		ids := func() (out []string) {
			for _, c := range r.b.Controls() {
				out = append(out, c.ID)
			}
			return out
		}
		was := ids()
		r.b.Compare(pattern(t, twoHands))
		if c, _ := r.b.Compared(); c.Playing != playing || r.host.Pairs != 1 {
			t.Errorf("it plays: %v, as the bench: %v; the page was told %d times", c.Playing, playing, r.host.Pairs)
		}
		r.b.Draw()
		for _, id := range []string{"play", "compare-swap", "compare-over", "compare-over", "compare-swap", "speed"} {
			r.tap(id)
		}
		for _, id := range []string{"cut", "undo", "flip", "mirror", "paste", "told", "piece-0-0", "seam-0-0", "arm", "strip-zoom-in"} { // stale twins and keys
			for _, act := range []widget.Act{widget.Press, widget.Set, widget.Menu, widget.Hold} {
				r.b.Do(widget.Intent{ID: id, Act: act, Value: 2}, 0)
			}
		}
		st := display.Pt{X: 190, Y: 200}
		r.drag(st, st.Add(display.Pt{X: 60}), st.Add(display.Pt{Y: 80})) // a drag across the stages
		r.b.Wheel(st, 200)
		r.b.ZoomKey(2)
		for range 20 {
			r.b.Step(0.1, 0)
		}
		r.tap("compare-leave")
		if _, ok := r.b.Compared(); ok || r.host.Pairs != 0 {
			t.Fatal("it still compares")
		}
		if !r.s.Pattern().Equal(before) || r.s.Revision() != rev || r.host.Changes != changes || r.s.Beat() != 1.5 || r.s.Playing != playing || r.s.Mirror {
			t.Errorf("the bench has changed: beat %v, plays %v, %d edits told", r.s.Beat(), r.s.Playing, r.host.Changes-changes)
		}
		if now := ids(); !slices.Equal(now, was) {
			t.Errorf("the controls are %v, want %v", now, was)
		}
	}
}

// A tap on a stage plays and pauses; opening anything leaves the comparison; the
// other pattern is asked for on whichever side it stands.
func TestComparisonIsLeftByOpening(t *testing.T) {
	r := compares(t, phone, "half-moon", "three-sails")
	at := display.Pt{X: 190, Y: 200}
	r.drag(at)
	if c, _ := r.b.Compared(); !c.Playing {
		t.Error("a tap on a stage does not play")
	}
	if got := r.control("compare-take"); got.Caption != "Open B" || !strings.Contains(got.Label, "Three sails") {
		t.Errorf("the other pattern is offered as %q, %q", got.Caption, got.Label)
	}
	r.tap("compare-swap")
	if got := r.control("compare-take"); got.Caption != "Open A" || !strings.Contains(got.Label, "Three sails") {
		t.Errorf("after a swap the other pattern is offered as %q, %q", got.Caption, got.Label)
	}
	r.tap("compare-take")
	if r.host.Takes != 1 {
		t.Fatalf("asked for %d times, want once", r.host.Takes)
	}
	if err := r.s.Open(pattern(t, "three-sails")); err != nil {
		t.Fatal(err)
	}
	r.b.Opened(0)
	if _, ok := r.b.Compared(); ok || r.host.Pairs != 0 {
		t.Error("what has been opened is not shown")
	}
}

// What differs is worked out a little in each frame, told when it is known, and
// filled in where it can be seen.
func TestComparisonLearns(t *testing.T) {
	r := compares(t, phone, "four-buoys", "compass-card")
	r.tap("compare-differs")
	first := r.host.Sheets[0]
	if first.ID != "compare-differs" || len(first.Sections) != 0 || first.Text != "Still being worked out …" {
		t.Fatalf("before anything is known the sheet says %q with %d sections", first.Text, len(first.Sections))
	}
	steps := 0
	for r.b.Learn() {
		steps++
	}
	if steps < 4 {
		t.Errorf("all was worked out in %d steps, want small ones", steps)
	}
	sheet := r.host.Sheets[len(r.host.Sheets)-1]
	var heads []string
	for _, s := range sheet.Sections {
		heads = append(heads, s.Head)
	}
	// What has no heading is the caution.
	if want := []string{"Name", "Prop turns to one of the arm", "Arm speed", "Hand circle", "Tether", "Closing", "Tempo", ""}; !slices.Equal(heads, want) {
		t.Errorf("the sheet tells of %q, want %q", heads, want)
	}
	if said := r.host.Said[len(r.host.Said)-1]; !strings.Contains(said, "A: Four-petal in-spin flower. B: Four-petal antispin flower.") {
		t.Errorf("spoken last is %q, want what differs", said)
	}
	r.b.Do(widget.Intent{ID: "compare-swap"}, 0)
	if s := r.host.Sheets[len(r.host.Sheets)-1]; !strings.HasPrefix(s.Lead, "A is Compass on the harbour wall. B is Four buoys") {
		t.Errorf("after a swap the sheet says %q", s.Lead)
	}
	n := len(r.host.Sheets)
	f := whole(bench.Frame{W: 1440, H: 900}, 1, true)
	r.b.SetFrame(f) // what differs has a place beside the stages now
	if len(r.host.Sheets) != n+1 {
		t.Errorf("the place beside the stages is filled %d times, want once", len(r.host.Sheets)-n)
	}
	r.b.Draw()
	for _, c := range r.b.Controls() {
		if c.ID == "compare-differs" {
			t.Error("what stands beside the stages has a button, too")
		}
	}
}

// TestComparisonIsKeptAsDrawnAnew: whatever happens, a frame that keeps what stays is
// the frame drawn anew, and while both play most of it stays.
func TestComparisonIsKeptAsDrawnAnew(t *testing.T) {
	const seed = 20261127
	t.Logf("seed %d", seed)
	g := rand.New(rand.NewPCG(seed, 5))
	all := presets.Library()
	screens := []bench.Frame{whole(phone, 1, false), whole(bench.Frame{W: 844, H: 390}, 1, false), whole(bench.Frame{W: 1440, H: 900}, 1, true), whole(phone, 1.5, false)}
	kept := 0
	for i, e := range all {
		r := compares(t, screens[i%len(screens)], e.ID, all[g.IntN(len(all))].ID)
		r.b.Do(widget.Intent{ID: "play"}, 0)
		for k := range 25 {
			said := ""
			if cs := r.b.Controls(); g.IntN(3) == 0 {
				c := cs[g.IntN(len(cs)-1)] // but not the last, which leaves
				switch g.IntN(6) {
				case 0:
					r.b.SetTheme([]*theme.Theme{&theme.Day, &theme.Night}[g.IntN(2)])
				case 1:
					r.b.SetFrame(screens[g.IntN(len(screens))])
				case 2:
					r.b.SetFocus(c.ID)
				default:
					said = c.ID
					r.b.Do(widget.Intent{ID: c.ID, Act: widget.Press}, 0)
				}
			}
			r.b.Learn()
			r.b.Step(0.016+g.Float64()*0.6*float64(g.IntN(2)), r.now)
			if r.b.Keeps() {
				kept++
			}
			got, gotControls := copyOf(r.b.Draw()), slices.Clone(r.b.Controls())
			r.b.Forget()
			want, wantControls := r.b.Draw(), r.b.Controls()
			if d := differs(got, want); d != "" {
				t.Fatalf("%s: frame %d after %q: kept and drawn anew differ: %s", e.ID, k, said, d)
			}
			if !reflect.DeepEqual(gotControls, wantControls) {
				t.Fatalf("%s: frame %d after %q: the controls are not those arranged anew", e.ID, k, said)
			}
		}
	}
	if kept < 100 {
		t.Errorf("%d frames kept anything, want at least 100 for the test to mean something", kept)
	}
}

// A pattern of ten thousand pieces is compared without a frame that waits for all
// of it.
func TestComparisonOfManyPieces(t *testing.T) {
	p := pattern(t, "half-moon")
	l := p.Lanes[0]
	for len(l.Pieces) < 2000 {
		l.Pieces = append(slices.Clone(l.Pieces), l.Pieces...)
	}
	p.Lanes = []engine.Lane{l}
	r := newRig(t, phone, "half-moon")
	r.b.Compare(p)
	r.b.Draw()
	n := 0
	for r.b.Learn() {
		n++
	}
	if n < 50 {
		t.Errorf("%d pieces were looked at in %d steps, want many small ones", len(l.Pieces), n)
	}
}
