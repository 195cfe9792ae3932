package scene

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// Handles stand where what they shape is: found here by the definitions of
// hand path and head, h = c + e^{iδ}(A cos(α−δ) + iB sin(α−δ)) and z = h + L e^{iψ}.
func TestHandlesStandWhereTheyBelong(t *testing.T) {
	for _, p := range everyPattern(t) {
		s := session.New(p)
		for lane, k := range s.Tracks() {
			for i := range min(len(k.Legs), 6) {
				s.Select(session.Select{Lane: lane, Piece: i})
				path := s.SelectedPiece().Path
				c := path.Centre + k.Lane.Centre
				var end complex128
				sized := false
				for _, h := range Handles(s) {
					sized = sized || h.Grip == GripRadius
					if h.Grip == GripEnd {
						end = h.At
					}
					away := cmplx.Abs(h.At - c)
					switch h.Grip {
					case GripCentre:
						if away > 1e-12 {
							t.Errorf("%s %d.%d: the cross is at %v, want %v", p.Title, lane, i, h.At, c)
						}
					case GripRadius, GripTilt:
						if math.Abs(away-path.A) > 1e-12 {
							t.Errorf("%s %d.%d: grip %d is %v from the centre, want %v", p.Title, lane, i, h.Grip, away, path.A)
						}
					case GripEnd:
						if d := cmplx.Abs(h.At - h.From); math.Abs(d-k.Lane.Tether) > 1e-9 || cmplx.Abs(h.Dir) == 0 {
							t.Errorf("%s %d.%d: the end is %v from the hand, direction %v, want %v, some", p.Title, lane, i, d, h.Dir, k.Lane.Tether)
						}
					case GripProp:
						if i > 0 && !s.SelectedPiece().PropAt.Set || s.SelectedPiece().Swing != 0 {
							t.Errorf("%s %d.%d: a prop handle where no angle is written", p.Title, lane, i)
						}
						if cmplx.Abs(h.At-end) < 0.1*k.Lane.Tether {
							t.Errorf("%s %d.%d: prop and end are at one place, %v", p.Title, lane, i, h.At)
						}
					}
				}
				if sized == path.IsPoint() {
					t.Errorf("%s %d.%d: a knob for the radius %v, a path of kind %d", p.Title, lane, i, sized, path.Kind)
				}
			}
		}
	}
}

func TestHandlesFinite(t *testing.T) {
	faces := newFaces(t)
	for _, p := range everyPattern(t) {
		s := session.New(p)
		st := Stage{Theme: &theme.Day, Faces: faces, Words: &words.English, Area: area, View: Fit(s.Tracks(), area, 26, false)}
		for _, held := range []Grip{NoGrip, GripEnd, GripProp} {
			var l display.List
			st.DrawPath(&l, s)
			st.DrawHandles(&l, s, held)
			st.DrawCut(&l, s, 0, 0.5)
			st.DrawReading(&l, display.Pt{X: area.X, Y: area.Y}, "x")
			for _, m := range l.Marks {
				pts := append([]display.Pt{m.At}, l.Of(m)...)
				for _, q := range pts {
					if math.IsNaN(q.X+q.Y) || math.IsInf(q.X+q.Y, 0) {
						t.Errorf("%s: a mark of kind %d is at %v", p.Title, m.Kind, q)
					}
				}
			}
		}
	}
}

func TestPropWritten(t *testing.T) {
	swing := circular("1", "1", "1")
	swing.Swing = 60
	placed := circular("1", "1", "1")
	placed.PropAt = engine.Some(30)
	l := engine.Lane{Tether: 0.6, Pieces: []engine.Piece{circular("1", "1", "1"), circular("1", "2", "1"), placed, swing}}
	for i, want := range []bool{true, false, true, false} {
		if got := PropWritten(l, i); got != want {
			t.Errorf("PropWritten(%d) = %v, want %v", i, got, want)
		}
	}
}
