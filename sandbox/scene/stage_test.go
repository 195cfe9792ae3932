package scene

import (
	"fmt"
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

var area = display.Rect{X: 0, Y: 48, W: 390, H: 360}

func newFaces(t testing.TB) *face.Set {
	t.Helper()
	f, err := face.New()
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// drawn is the stage of a session.
func drawn(s *session.Session, faces *face.Set, mirror bool) (*display.List, View) {
	st := Stage{Theme: &theme.Day, Faces: faces, Words: &words.English, Area: area,
		View: Fit(s.Tracks(), area, 26, mirror)}
	var l display.List
	st.Draw(&l, s)
	return &l, st.View
}

// seek moves a fresh session's playhead to a beat.
func seek(s *session.Session, beat float64) *session.Session {
	s.Advance(beat * 60 / s.Pattern().Tempo)
	return s
}

// everyPattern is the library, and some that it has nothing like.
func everyPattern(t *testing.T) []engine.Pattern {
	t.Helper()
	var out []engine.Pattern
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, p)
	}
	// Nothing moves, and hand and shoulder are one place; a prop that takes
	// three rounds, an eased arm, pendulums, a carried prop, another plane.
	still := engine.Stroke(engine.PointPath(complex(-0.2, 0)), frac.Int(0), frac.Int(0), frac.Int(1), frac.Int(1))
	slow := circular("1", "1/3", "1")
	slow.Law = engine.EaseBoth
	swing := circular("1", "1", "1")
	swing.Swing = 90
	hanging := engine.Stroke(engine.PointPath(0), frac.Int(0), frac.Int(1), fr("1/2"), frac.Int(1))
	hanging.Swing = 60
	carried := engine.Stroke(engine.LinePath(0, 0.5, 20), frac.Int(1), frac.Int(0), fr("1/2"), frac.Int(1))
	carried.Law = engine.EaseBoth
	for _, l := range []engine.Lane{
		{Side: engine.Right, Tether: 0.6, Pieces: []engine.Piece{still}},
		{Side: engine.Left, Tether: 0.4, Pieces: []engine.Piece{slow}},
		{Side: engine.Left, Plane: engine.Wheel, Tether: 0.4, Pieces: []engine.Piece{swing, slow}},
		{Side: engine.Right, Tether: 0.4, Pieces: []engine.Piece{hanging, carried}},
		{Side: engine.Right, Tether: 0.4, Pieces: []engine.Piece{carried}},
		wide(),
	} {
		out = append(out, engine.Pattern{Title: fmt.Sprintf("odd %d", len(out)), Tempo: 90, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}})
	}
	return out
}

// TestStageFinite: every number of every mark can be drawn.
func TestStageFinite(t *testing.T) {
	faces := newFaces(t)
	for _, p := range everyPattern(t) {
		for _, beat := range []float64{0, 0.7, 2, 4.25, 100.1} {
			for _, playing := range []bool{false, true} {
				for _, mirror := range []bool{false, true} {
					s := seek(session.New(p), beat)
					s.Playing = playing
					l, _ := drawn(s, faces, mirror)
					if len(l.Marks) < 10 {
						t.Errorf("%s: %d marks, want a whole stage", p.Title, len(l.Marks))
					}
					finite(t, p.Title, l)
				}
			}
		}
	}
}

func finite(t *testing.T, what string, l *display.List) {
	t.Helper()
	for i, m := range l.Marks {
		for _, x := range []float64{m.At.X, m.At.Y, m.Radius, m.Width, m.Size, m.Rect.X, m.Rect.Y, m.Rect.W, m.Rect.H} {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%s: mark %d = %+v, want it finite", what, i, m)
			}
		}
		if m.Kind == display.Line && m.Count < 2 {
			t.Errorf("%s: mark %d is a line of %d points", what, i, m.Count)
		}
	}
	for i, p := range l.Points {
		if d := p.Len(); math.IsNaN(d) || math.IsInf(d, 0) {
			t.Fatalf("%s: point %d = %v, want it finite", what, i, p)
		}
	}
	for i, a := range l.Alpha {
		if !(a >= 0 && a <= 1) {
			t.Fatalf("%s: opacity %d = %v, want 0 to 1", what, i, a)
		}
	}
}

// TestStageMirror: in the mirror all is reflected in the upright through the
// middle, but for letters, which stay legible about the reflected place.
func TestStageMirror(t *testing.T) {
	faces := newFaces(t)
	for _, p := range everyPattern(t) {
		s := seek(session.New(p), 0.7)
		plain, v := drawn(s, faces, false)
		mirrored, _ := drawn(s, faces, true)
		if len(plain.Marks) != len(mirrored.Marks) {
			t.Fatalf("%s: %d marks mirrored, want %d", p.Title, len(mirrored.Marks), len(plain.Marks))
		}
		check := func(i int, got, of display.Pt) {
			t.Helper()
			want := display.Pt{X: 2*v.Origin.X - of.X, Y: of.Y}
			if got.Sub(want).Len() > 1e-9 {
				t.Fatalf("%s: mark %d mirrored is at %v, want %v", p.Title, i, got, want)
			}
		}
		for i, m := range plain.Marks {
			n := mirrored.Marks[i]
			if m.Kind != n.Kind || m.Color != n.Color || m.Radius != n.Radius || m.Width != n.Width || m.Text != n.Text || m.Count != n.Count {
				t.Fatalf("%s: mark %d mirrored = %+v, want the like of %+v", p.Title, i, n, m)
			}
			switch m.Kind {
			case display.Disc, display.Ring:
				check(i, n.At, m.At)
			case display.Text:
				half := display.Pt{X: faces.Width(m.Text, m.Size, m.Bold) / 2}
				check(i, n.At.Add(half), m.At.Add(half))
			case display.Line, display.Poly:
				if i < 2 {
					continue // the middle lines run the other way
				}
				a, b := plain.Of(m), mirrored.Of(n)
				for k := range a {
					check(i, b[k], a[k])
				}
			}
		}
	}
}

// TestStageMoving: at the playhead the right hand's head is a disc of its own
// ink, the left one's a ring, each with its letter by its hand.
func TestStageMoving(t *testing.T) {
	faces := newFaces(t)
	for _, p := range everyPattern(t) {
		for _, beat := range []float64{0, 1.3, 5.9} {
			s := seek(session.New(p), beat)
			l, v := drawn(s, faces, false)
			for _, k := range s.Tracks() {
				left := k.Lane.Side == engine.Left
				kind, letter := display.Disc, "R"
				if left {
					kind, letter = display.Ring, "L"
				}
				at := k.At(s.Beat())
				head, hand := v.ToScreen(at.Head), v.ToScreen(at.Hand)
				found, lettered := false, false
				for _, m := range l.Marks {
					if m.Kind == kind && m.Color == theme.Day.Of(left) && m.At.Sub(head).Len() < 1e-9 {
						found = true
					}
					lettered = lettered || m.Kind == display.Text && m.Text == letter && m.At.Sub(hand).Len() < 30
				}
				if !found || !lettered {
					t.Errorf("%s at beat %v: head of %s found %v, its letter %v, want both", p.Title, beat, letter, found, lettered)
				}
			}
		}
	}
}
