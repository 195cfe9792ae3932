package bench_test

import (
	"slices"
	"strings"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// bigFrames are a projector, a laptop, a phone upright and on its side, and an
// old projector.
func bigFrames() []bench.Frame {
	out := []bench.Frame{{W: 1920, H: 1080}, {W: 1440, H: 900}, {W: 390, H: 844}, {W: 844, H: 390}, {W: 1024, H: 768}}
	for i := range out {
		out[i].StageOnly, out[i].Line = true, true
	}
	return out
}

// said returns what is written in letters that can be read from the last row: of
// a thirtieth of the screen's height at least (common practice for slides).
// Its words are those beside the stage, as they are read.
func (r *rig) said(f bench.Frame) string {
	return r.readable(f, func(m display.Mark) bool {
		return m.Bold && m.Text != "R" && m.Text != "L" && m.At.Y < r.control("step-back").Rect.Y
	})
}

// readable returns all that is written in such letters and is meant.
func (r *rig) readable(f bench.Frame, meant func(m display.Mark) bool) string {
	var parts []string
	for _, m := range r.b.Draw().Marks {
		if m.Kind == display.Text && m.Size*r.b.Zoom() >= f.H/30 && meant(m) {
			parts = append(parts, m.Text)
		}
	}
	return strings.Join(parts, " ")
}

// Whatever a built-in pattern's pieces are called, the big view says it whole, in
// letters for the last row, and so does the piece that is pointed at.
func TestBigWordsAreLarge(t *testing.T) {
	for _, f := range bigFrames() {
		for _, e := range presets.Library() {
			r := newRig(t, f, e.ID)
			for lane, k := range r.s.Tracks() {
				for i := range k.Legs {
					at := session.Select{Lane: lane, Piece: i}
					r.s.GoTo(k.Legs[i].Start + k.Legs[i].Span/2)
					for r.b.Learn() {
					}
					said := r.said(f)
					if f.H > f.W { // in the hand: there what the whole is called may be smaller
						said = r.readable(bench.Frame{H: 16 * 30}, func(m display.Mark) bool { return m.Bold })
					}
					for _, want := range []string{r.s.Pattern().Title, study.Line(r.b.Words, r.s), r.b.Words.ShortName(r.s.Figure(at)), "beat "} {
						if !strings.Contains(said, want) || strings.Contains(said, "…") {
							t.Errorf("%vx%v: %s: %q is written, want %q whole", f.W, f.H, e.ID, said, want)
						}
					}
					r.tap("point")
					for r.s.Selected() != at {
						r.tap("step-on")
					}
					said = r.said(f)
					if want := r.b.Words.PieceName(k.Lane.Side, i, len(k.Legs), r.s.Figure(at)); !strings.Contains(said, want) || strings.Contains(said, "…") {
						t.Errorf("%vx%v: %s: %q is written, want %q whole", f.W, f.H, e.ID, said, want)
					}
					r.tap("small")
				}
			}
		}
	}
}

// What is named, and what the pale curve is the whole of, is the piece under the
// playhead, also after another one was pointed at; the bench has in hand what it
// had.
func TestBigHasOnePiece(t *testing.T) {
	r := newRig(t, frames[0], "half-moon")
	r.s.Select(session.Select{Piece: 1})
	r.b.SetFrame(bigFrames()[0])
	r.s.GoTo(0.5)
	for _, pointed := range []bool{false, true} {
		if pointed {
			r.tap("point")
			r.tap("step-on")
			r.tap("small")
			r.s.GoTo(0.5)
		}
		if r.b.Draw(); r.s.Selected().Piece != 0 {
			t.Errorf("pointed before: %v; piece %d is drawn whole, the playhead is in the first", pointed, r.s.Selected().Piece+1)
		}
	}
	if r.b.SetFrame(frames[0]); r.s.Selected().Piece != 1 {
		t.Error("the bench has another piece in hand than before")
	}
}

// On a screen that is seen from afar, the words on controls and the hands' letters
// can be read from the last row, and a key says what the strokes stand for that
// are there.
func TestBigControlsAndKey(t *testing.T) {
	for _, f := range bigFrames()[:2] {
		r := newRig(t, f, twoHands)
		r.b.StartOrder(threePatterns(t), 1, false)
		said := r.readable(f, func(display.Mark) bool { return true })
		for _, want := range []string{"Previous", "Next", "Point", "Dark", "Leave", "speed", "1×", "R", "antispin"} {
			if !strings.Contains(said, want) {
				t.Errorf("%vx%v: %q can be read from afar, want %q in it", f.W, f.H, said, want)
			}
		}
	}
	for _, x := range []struct{ id, key string }{
		{"half-moon", "antispin extension"}, {"four-buoys", ""}, {"starfish", "antispin"},
	} {
		r := newRig(t, bigFrames()[0], x.id)
		var key []string
		for _, m := range r.b.Draw().Marks {
			if m.Kind == display.Text && !m.Bold && slices.Contains([]string{"in-spin", "antispin", "extension", "isolation"}, m.Text) {
				key = append(key, m.Text)
			}
		}
		if got := strings.Join(key, " "); got != x.key {
			t.Errorf("%s: the key has %q, want %q", x.id, got, x.key)
		}
	}
}

// A long title ends in an ellipsis on its second line, as large as the rest.
func TestBigLongTitle(t *testing.T) {
	for _, f := range bigFrames() {
		r := newRig(t, f, "")
		if err := r.b.Rename(strings.Repeat("Lantern parade, the long way round. ", 5), ""); err != nil {
			t.Fatal(err)
		}
		if said := r.said(f); strings.Count(said, "…") != 1 || !strings.HasPrefix(said, "Lantern parade") || !strings.Contains(said, "beat 1") {
			t.Errorf("%vx%v: %q is written, want the title's beginning and all of the rest", f.W, f.H, said)
		}
	}
}

// The figure has all of the short side of a screen; words and controls lie in it
// nowhere, and each control has a finger's size.
func TestBigLeavesTheFigureItsRoom(t *testing.T) {
	frames := bigFrames()
	for _, f := range bigFrames() {
		f.Text = 2
		frames = append(frames, f)
	}
	for _, f := range frames {
		r := newRig(t, f, twoHands)
		r.b.StartOrder(threePatterns(t), 1, false)
		for _, pointing := range []bool{false, true} {
			if pointing {
				r.tap("point")
			}
			l := r.b.Draw()
			var stage display.Rect
			for _, m := range l.Marks {
				if m.Kind == display.FillRect && m.Color == theme.Day.Stage {
					stage = m.Rect
					break
				}
			}
			z := r.b.Zoom()
			if least := 0.99 * min(f.W, f.H); f.W > f.H && stage.H*z < least || stage.W*z < min(least, 0.58*f.W) {
				t.Errorf("%vx%v: the stage is %v by %v", f.W, f.H, stage.W*z, stage.H*z)
			}
			for i, c := range r.b.Controls() {
				if c.Rect.W*z < theme.Finger || c.Rect.H*z < theme.Finger || overlap(c.Rect, stage) ||
					c.Rect.X < 0 || (c.Rect.X+c.Rect.W)*z > f.W || (c.Rect.Y+c.Rect.H)*z > f.H {
					t.Errorf("%vx%v: %s stands at %v on a stage of %v", f.W, f.H, c.ID, c.Rect, stage)
				}
				for _, d := range r.b.Controls()[:i] {
					if overlap(c.Rect, d.Rect) {
						t.Errorf("%vx%v: %s and %s overlap", f.W, f.H, c.ID, d.ID)
					}
				}
			}
			for _, m := range l.Marks {
				onControl := slices.ContainsFunc(r.b.Controls(), func(c widget.Control) bool { return m.Text == c.Text || m.Text == c.Caption })
				if m.Kind != display.Text || m.Size*z < f.H/30 || onControl || m.Text == "R" || m.Text == "L" {
					continue
				}
				at := m.At
				if lowest := r.control("step-back").Rect.Y; overlap(display.Rect{X: at.X, Y: at.Y - m.Size, W: 10, H: m.Size}, stage) || at.Y > lowest {
					t.Errorf("%vx%v: %q stands at %v, stage %v, controls from %v", f.W, f.H, m.Text, at, stage, lowest)
				}
			}
		}
	}
}

// Speeds go from a tenth to twice the tempo by keys and are shown; the dark shows
// nothing, and any press brings the picture back and does no more.
func TestBigSpeedAndDark(t *testing.T) {
	f := bigFrames()[0]
	r := newRig(t, f, "half-moon")
	var got []float64
	for range 5 {
		r.b.Do(widget.Intent{ID: "slower"}, 0)
		got = append(got, r.s.Speed)
	}
	if got[0] != 0.5 || got[4] != 0.1 || !strings.Contains(r.said(f), "beat 1 · 0.1×") {
		t.Errorf("slower and slower leads to %v, and %q is written", got, r.said(f))
	}
	for range 9 {
		r.b.Do(widget.Intent{ID: "faster"}, 0)
	}
	if r.s.Speed != 2 {
		t.Errorf("faster and faster leads to %v, want 2", r.s.Speed)
	}
	r.b.Do(widget.Intent{ID: "steps"}, 0)
	if r.s.Steps != session.ByPetal || r.host.Settles == 0 {
		t.Error("steps do not go by petals, or the page was not told to keep it")
	}
	lit := r.b.Draw().Version
	r.tap("blank")
	if l := r.b.Draw(); len(l.Marks) != 0 || l.Still != 0 || l.Back.R+l.Back.G+l.Back.B != 0 || l.Version == lit {
		t.Errorf("in the dark %d marks are drawn on %v, and what stays is version %d; in the light it was %d", len(l.Marks), l.Back, l.Version, lit)
	}
	before := r.s.Beat()
	r.b.Do(widget.Intent{ID: "next"}, 0)
	if len(r.b.Draw().Marks) == 0 || r.s.Beat() != before {
		t.Error("a press in the dark does not bring the picture back, or does more")
	}
	r.b.Do(widget.Intent{ID: "next"}, 0) // a clicker's key, where there is no running order
	if r.s.Beat() == before {
		t.Error("a clicker's key does not step")
	}
}
