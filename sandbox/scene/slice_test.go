package scene

import (
	"fmt"
	"image/color"
	"math"
	"slices"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
)

// lines returns the lines of a width, not faded, in the order drawn.
func lines(l *display.List, width float64, c color.NRGBA) [][]display.Pt {
	var out [][]display.Pt
	for _, m := range l.Marks {
		if m.Kind == display.Line && m.Width == width && !m.Fade && m.Color == c {
			out = append(out, l.Of(m))
		}
	}
	return out
}

// off is the distance of p from the line through pts.
func off(p display.Pt, pts []display.Pt) float64 {
	z := func(p display.Pt) complex128 { return complex(p.X, p.Y) }
	least := math.Inf(1)
	for i := 1; i < len(pts); i++ {
		least = min(least, offChord(z(p), z(pts[i-1]), z(pts[i])))
	}
	return least
}

// headOf is where a steady, spinning leg's head is at the share u of its kept
// time, from the definition: z = h + L e^{iψ}, and on the path about c with
// semi-axes A, B and tilt δ, h = c + e^{iδ}(A cos(α − δ) + i B sin(α − δ)).
func headOf(g *engine.Leg, turned, u float64) complex128 {
	p, path := g.Piece, g.Path()
	share := p.Kept().Float() * p.Cycles.Float() * u
	arm := g.Arm0 + 2*math.Pi*p.Arm.Float()*share
	prop := g.Prop0 + 2*math.Pi*(p.Prop.Float()*share+turned)
	d := path.Tilt.Radians()
	x, y := path.A*math.Cos(arm-d), path.B*math.Sin(arm-d)
	hand := path.Centre + complex(x*math.Cos(d)-y*math.Sin(d), x*math.Sin(d)+y*math.Cos(d))
	return hand + complex(g.Tether()*math.Cos(prop), g.Tether()*math.Sin(prop))
}

// TestStageSlice: the piece in hand is drawn from its beginning to its end
// along its own curve, and the whole elementary pattern, drawn pale, is a
// closed curve of which it keeps a part; in later rounds too, where the prop
// has turned on.
func TestStageSlice(t *testing.T) {
	faces := newFaces(t)
	half := circular("1", "-5/3", "1/2")
	half.From, half.To = fr("1/4"), fr("1")
	lane := func(pieces ...engine.Piece) engine.Pattern {
		return engine.Pattern{Title: fmt.Sprintf("steady %v", pieces[0].Prop), Tempo: 90, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{
			{Side: engine.Left, Tether: 0.6, ArmAt: 20, PropAt: 75, Centre: complex(0.1, 0), Pieces: pieces}}}
	}
	// Those of the library that turn steadily and go round, as headOf has it, the
	// C-caps among them.
	steady := slices.DeleteFunc(everyPattern(t), func(p engine.Pattern) bool {
		return slices.ContainsFunc(p.Lanes[0].Pieces, func(x engine.Piece) bool { return !x.Steady() || x.Path.IsPoint() })
	})
	patterns := append(steady[:22],
		lane(circular("1", "1/3", "1")), // comes round in three
		lane(half, circular("-1", "2", "3/4")),
		lane(circular("0", "2", "1/3")),
		lane(engine.Stroke(engine.LinePath(0, 0.5, 30), frac.Int(2), frac.Int(-3), fr("2/5"), frac.Int(2))),
	)
	for _, p := range patterns {
		for _, round := range []int{0, 1, 2} {
			s := seek(session.New(p), 0)
			seek(s, float64(round)*s.Round())
			for lane, k := range s.Tracks() {
				for piece := range k.Legs {
					s.Select(session.Select{Lane: lane, Piece: piece})
					name := fmt.Sprintf("%s, lane %d, piece %d, round %d", p.Title, lane, piece, round)
					g := &k.Legs[piece]
					l, v := drawn(s, faces, false)
					ink := theme.Day.Of(k.Lane.Side == engine.Left)
					slices, ghosts := lines(l, 3.5, ink), lines(l, 1.5, display.Mix(theme.Day.Stage, ink, 0.38))
					if len(slices) != 1 || len(ghosts) != 1 {
						t.Fatalf("%s: %d slices, %d ghosts, want one of each", name, len(slices), len(ghosts))
					}
					slice, ghost := slices[0], ghosts[0]

					now, _, _ := k.Locate(s.Beat())
					turned := k.PerRound.Float() * float64(now)
					for _, end := range []struct{ got, want display.Pt }{
						{slice[0], v.ToScreen(headOf(g, turned, 0))},
						{slice[len(slice)-1], v.ToScreen(headOf(g, turned, 1))},
					} {
						if end.got.Sub(end.want).Len() > 1e-6 {
							t.Errorf("%s: an end of the slice at %v, want %v", name, end.got, end.want)
						}
					}
					// Chords lie off the curve by a fraction of a pixel.
					const fine = 0.35
					for u := 0.0; u <= 1; u += 1.0 / 64 {
						want := v.ToScreen(headOf(g, turned, u))
						if d := off(want, slice); d > fine {
							t.Fatalf("%s: the slice is %.2f px off at share %v", name, d, u)
						}
						if d := off(want, ghost); d > fine {
							t.Fatalf("%s: the whole is %.2f px off at share %v", name, d, u)
						}
					}
					if gap := ghost[0].Sub(ghost[len(ghost)-1]).Len(); gap > 1e-6 {
						t.Errorf("%s: the whole ends %.2g px from its beginning, want it closed", name, gap)
					}
				}
			}
		}
	}
}

// TestStageCutEnds: both ends of the slice are marked by a bar across the
// curve, 14 px long, also where the head comes to rest; where it never moves,
// across the prop.
func TestStageCutEnds(t *testing.T) {
	faces := newFaces(t)
	for _, p := range everyPattern(t) {
		s := seek(session.New(p), 0.4)
		l, v := drawn(s, faces, false)
		sel := s.Selected()
		k := s.Tracks()[sel.Lane]
		bars := lines(l, 2, theme.Day.Of(k.Lane.Side == engine.Left))
		if len(bars) != 2 {
			t.Errorf("%s: %d bars, want one at each end", p.Title, len(bars))
			continue
		}
		for i, u := range []float64{0, 1} {
			at := k.AtPiece(0, sel.Piece, u)
			mid := bars[i][0].Add(bars[i][1]).Scale(0.5)
			along := bars[i][1].Sub(bars[i][0])
			if d := mid.Sub(v.ToScreen(at.Head)).Len(); d > 1e-6 || math.Abs(along.Len()-14) > 1e-6 {
				t.Errorf("%s: bar %d is %.3g px off its end and %.3g px long, want 0 and 14", p.Title, i, d, along.Len())
			}
			// The head a hair further on lies off the bar at a right angle.
			du := 1e-4 * (1 - 2*u)
			move := v.ToScreen(k.AtPiece(0, sel.Piece, u+du).Head).Sub(v.ToScreen(at.Head))
			if move.Len() == 0 {
				move = v.ToScreen(at.Head).Sub(v.ToScreen(at.Hand))
			}
			if cos := (move.X*along.X + move.Y*along.Y) / (move.Len() * along.Len()); math.Abs(cos) > 0.01 {
				t.Errorf("%s: cosine of bar %d and curve = %v, want 0", p.Title, i, cos)
			}
		}
	}
}

// TestStageTrail: paused or playing, the trail ends at each head and is
// strongest there.
func TestStageTrail(t *testing.T) {
	faces := newFaces(t)
	for _, p := range everyPattern(t) {
		for _, playing := range []bool{false, true} {
			s := seek(session.New(p), 3.3)
			s.Playing = playing
			l, v := drawn(s, faces, false)
			for _, k := range s.Tracks() {
				head := v.ToScreen(k.At(s.Beat()).Head)
				found := false
				for _, m := range l.Marks {
					if !m.Fade {
						continue
					}
					pts, alpha := l.Of(m), l.Alpha[m.First:m.First+m.Count]
					for i := 1; i < len(alpha); i++ {
						if alpha[i] < alpha[i-1] {
							t.Fatalf("%s: the trail fades from %v to %v towards the head", p.Title, alpha[i-1], alpha[i])
						}
					}
					if pts[len(pts)-1].Sub(head).Len() < 1e-6 && (alpha[len(alpha)-1] > 0.9) == playing {
						found = true
					}
				}
				if !found {
					t.Errorf("%s, playing %v: no trail ends at the head", p.Title, playing)
				}
			}
		}
	}
}
