package scene

import (
	"math"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// Hit is a place on a head's curve.
type Hit struct {
	session.Select
	Round int
	U     float64 // share of the piece's kept time
	Away  float64 // px from the place asked for
	Pace  float64 // px a beat there, by the steps that the curve is drawn in
}

// How much nearer, in pixels, the piece and the lane in hand seem than others
// where curves cross.
const (
	handFavour = 8
	laneFavour = 3
)

// Nearest returns the place of the heads' curves that is seen nearest to p,
// within reach pixels: of the piece in hand, and of every lane's last round.
func Nearest(s *session.Session, v View, p display.Pt, reach float64) (hit Hit, ok bool) {
	best := math.Inf(1)
	sel := s.Selected()
	for lane, t := range s.Tracks() {
		now := s.Beat()
		round, _, _ := t.Locate(now)
		for i := range t.Legs {
			g := &t.Legs[i]
			at := session.Select{Lane: lane, Piece: i}
			favour := 0.0
			if lane == sel.Lane {
				favour = laneFavour
			}
			if at == sel {
				favour = handFavour
			}
			n := legPoints(g, mostPoints/len(t.Legs))
			for _, r := range []int{round, round - 1} {
				start := float64(r)*t.Beats + g.Start
				a := v.ToScreen(t.PointAt(r, i, 0).Head)
				for k := range n {
					u0, u1 := float64(k)/float64(n), float64(k+1)/float64(n)
					b := v.ToScreen(t.PointAt(r, i, u1).Head)
					drawn := at == sel && r == round || start+u0*g.Span <= now && start+u1*g.Span >= now-t.Beats
					if drawn {
						share, away := onSegment(a, b, p)
						if away <= reach && away-favour < best {
							best, ok = away-favour, true
							hit = Hit{at, r, u0 + share*(u1-u0), away, b.Sub(a).Len() / ((u1 - u0) * g.Span)}
						}
					}
					a = b
				}
			}
		}
	}
	return hit, ok
}

// onSegment returns the share of the way from a to b that is nearest to p,
// and how far it is.
func onSegment(a, b, p display.Pt) (share, away float64) {
	d, q := b.Sub(a), p.Sub(a)
	if l := d.X*d.X + d.Y*d.Y; l > 0 {
		share = min(max((q.X*d.X+q.Y*d.Y)/l, 0), 1)
	}
	return share, q.Sub(d.Scale(share)).Len()
}
