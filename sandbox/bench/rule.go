package bench

import (
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
)

// petalRule is the prop slider's scale: at each whole speed a tiny drawing of
// the flower that it gives with this arm speed, path and start. It is made
// anew only when one of these changes.
type petalRule struct {
	key      ruleKey
	mirror   bool
	pictures []widget.Picture
}

// ruleKey is all that the pictures depend on.
type ruleKey struct {
	path      engine.Path
	tether    float64
	arm       string
	arm0, at0 float64
	pendulum  bool
}

// pointsPerPicture bounds how finely a picture of some twenty pixels is drawn.
const pointsPerPicture = 96

// pictures returns the rule for the piece in hand; a pendulum has none, as its
// speed changes no shape.
func (b *Bench) pictures() []widget.Picture {
	s := b.Session
	sel := s.Selected()
	g := &s.Tracks()[sel.Lane].Legs[sel.Piece]
	p := g.Piece
	key := ruleKey{p.Path, g.Tether(), p.Arm.String(), g.Arm0, g.Prop0, p.Swing != 0}
	r := &b.rule
	if r.pictures != nil && r.key == key && r.mirror == s.Mirror {
		return r.pictures
	}
	r.key, r.mirror, r.pictures = key, s.Mirror, []widget.Picture{}
	if key.pendulum {
		return r.pictures
	}
	for v := int64(-propReach); v <= propReach; v++ {
		r.pictures = append(r.pictures, widget.Picture{Value: float64(v), Curve: b.picture(g, frac.Int(v))})
	}
	return r.pictures
}

// picture draws the whole elementary pattern that a leg would be a slice of
// with another prop speed.
func (b *Bench) picture(g *engine.Leg, prop frac.Frac) []display.Pt {
	one := engine.Stroke(g.Path(), g.Piece.Arm, prop, frac.Int(1), frac.Int(1))
	lane := engine.Lane{Tether: g.Tether(), ArmAt: engine.ToDegrees(g.Arm0), PropAt: engine.ToDegrees(g.Prop0), Pieces: []engine.Piece{one}}
	w := engine.NewTrack(lane).Legs[0].Whole()
	if w.ArmTurns == 0 && w.PropTurns == 0 {
		return []display.Pt{{}}
	}
	path := g.Path()
	size := max(path.A, path.B) + g.Tether()
	if w.ArmTurns == 0 {
		size = g.Tether()
	}
	centre := path.Centre
	if w.ArmTurns == 0 {
		centre = w.Point(0).Hand
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
