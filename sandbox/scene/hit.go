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
	sel, now := s.Selected(), s.Beat()
	return nearest(s, v, p, reach, func(at session.Select, thisRound bool, from, to float64) bool {
		return at == sel && thisRound || from <= now && to >= now-s.Tracks()[at.Lane].Beats
	})
}

// NearestInRound is Nearest where each lane's whole round is drawn, the one that
// the playhead is in. Hidden lanes are not hit.
func NearestInRound(s *session.Session, v View, p display.Pt, reach float64) (hit Hit, ok bool) {
	return nearest(s, v, p, reach, func(at session.Select, thisRound bool, _, _ float64) bool {
		return thisRound && !s.Hidden(at.Lane)
	})
}

// nearest looks at what is drawn: of a piece, in this round or the one before,
// from a beat to a beat.
func nearest(s *session.Session, v View, p display.Pt, reach float64, drawn func(at session.Select, thisRound bool, from, to float64) bool) (hit Hit, ok bool) {
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
					if drawn(at, r == round, start+u0*g.Span, start+u1*g.Span) {
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
