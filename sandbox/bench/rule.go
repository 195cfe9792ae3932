package bench

import (
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/widget"
)

// pictureKey is all that a tiny drawing of an elementary pattern depends on.
type pictureKey struct {
	path      engine.Path
	tether    float64
	arm, prop string
	arm0, at0 float64
	swing     engine.Degrees
	mirror    bool
}

// mostPictures bounds how many drawings are kept.
const mostPictures = 600

// pointsPerPicture bounds how finely a picture of some twenty pixels is drawn.
const pointsPerPicture = 96

// petalRule is the prop slider's scale: at each whole speed a tiny drawing of
// the flower that it gives with this arm speed, path and start. A pendulum has
// none, as its speed changes no shape.
func (b *Bench) petalRule() []widget.Picture {
	sel := b.Session.Selected()
	g := &b.Session.Tracks()[sel.Lane].Legs[sel.Piece]
	if g.Piece.Swing != 0 {
		return nil
	}
	rule := make([]widget.Picture, 0, 2*propReach+1)
	fits := b.fitting()
	for v := int64(-propReach); v <= propReach; v++ {
		rule = append(rule, widget.Picture{Value: float64(v), Curve: b.picture(g, frac.Int(v)), Good: fits[v+propReach]})
	}
	return rule
}

// fitting tells at which whole prop speeds both joins of the piece in hand are
// smooth, everything else being as it is.
type fitting struct {
	rev int
	sel session.Select
	at  [2*propReach + 1]bool
}

// mostFitted bounds how long a lane may be to be tried with each speed.
const mostFitted = 200

// fitting returns, from −propReach on, at which whole prop speeds both joins of
// the piece in hand are smooth. While a finger drags, what holds is what held
// before: the prop's own drag changes nothing of it.
func (b *Bench) fitting() [2*propReach + 1]bool {
	s, f := b.Session, &b.fits
	if f.rev == s.Revision() && f.sel == s.Selected() || f.sel == s.Selected() && s.Holding() {
		return f.at
	}
	*f = fitting{rev: s.Revision(), sel: s.Selected()}
	p := s.Pattern()
	lane, i := p.Lanes[f.sel.Lane], f.sel.Piece
	n := len(lane.Pieces)
	if n > mostFitted {
		return f.at
	}
	for k := range f.at {
		piece := lane.Pieces[i]
		piece.Prop = frac.Int(int64(k) - propReach)
		l, _ := lane.Replace(i, piece) // it is there
		t := engine.NewTrack(l)
		smooth := func(i int) bool {
			return seam.At(t, i, p.Tempo, p.Performer.Rigid).Verdict == seam.Smooth
		}
		f.at[k] = smooth(i) && smooth((i+n-1)%n)
	}
	return f.at
}

// picture returns the whole elementary pattern that a leg would be a slice of
// with some prop speed, drawn anew only where it is not known yet.
func (b *Bench) picture(g *engine.Leg, prop frac.Frac) []display.Pt {
	p := g.Piece
	key := pictureKey{g.Path(), g.Tether(), p.Arm.String(), prop.String(), g.Arm0, g.Prop0, p.Swing, b.Session.Mirror}
	if c, ok := b.pictures[key]; ok {
		return c
	}
	if b.pictures == nil || len(b.pictures) >= mostPictures {
		b.pictures = map[pictureKey][]display.Pt{}
	}
	c := b.drawPicture(g, prop)
	b.pictures[key] = c
	return c
}

// drawPicture draws it in the square from −1 to 1.
func (b *Bench) drawPicture(g *engine.Leg, prop frac.Frac) []display.Pt {
	one := engine.Stroke(g.Path(), g.Piece.Arm, prop, frac.Int(1), frac.Int(1))
	one.Swing, one.SwingBack = g.Piece.Swing, g.Piece.SwingBack
	lane := engine.Lane{Tether: g.Tether(), ArmAt: engine.ToDegrees(g.Arm0), PropAt: engine.ToDegrees(g.Prop0), Pieces: []engine.Piece{one}}
	w := engine.NewTrack(lane).Legs[0].Whole()
	still := w.ArmTurns == 0 // the hand stays: the picture is about the hand
	if still && w.PropTurns == 0 && one.Swing == 0 {
		return []display.Pt{{}}
	}
	path := g.Path()
	centre, size := path.Centre, max(path.A, path.B)+g.Tether()
	if still {
		centre, size = w.Point(0).Hand, g.Tether()
	}
	curve := make([]display.Pt, 0, pointsPerPicture+1)
	for k := 0; k <= pointsPerPicture; k++ {
		z := (w.Point(float64(k)/pointsPerPicture).Head - centre) / complex(size, 0)
		if b.Session.Mirror {
			z = -cmplx.Conj(z)
		}
		curve = append(curve, display.Pt{X: real(z), Y: -imag(z)})
	}
	return curve
}
