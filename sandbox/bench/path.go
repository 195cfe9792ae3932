package bench

import (
	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/session"
)

// onPath changes the piece in hand and, unless each is to change alone, every
// piece of its lane on the very same hand path: the arcs of one circle stay
// arcs of one circle.
func (b *Bench) onPath(l *engine.Lane, at session.Select, change func(*engine.Piece)) {
	path := l.Pieces[at.Piece].Path
	l.Pieces = append([]engine.Piece(nil), l.Pieces...)
	for i := range l.Pieces {
		if i == at.Piece || !b.alone && l.Pieces[i].Path == path {
			change(&l.Pieces[i])
		}
	}
}

func (b *Bench) togetherNow() string {
	if b.alone {
		return b.Words.Dials.TogetherOff
	}
	return b.Words.Dials.TogetherOn
}

// setRadius makes the path as large as v, an ellipse in its own proportions.
func setRadius(p *engine.Piece, v frac.Frac) {
	r := v.Float()
	switch p.Path.Kind {
	case engine.OnLine:
		p.Path.A = r
	case engine.OnEllipse:
		p.Path.A, p.Path.B = r, r*p.Path.B/p.Path.A
	default:
		p.Path.A, p.Path.B = r, r
	}
}

// setPathKind gives a piece another sort of path of the same size.
func setPathKind(p *engine.Piece, kind engine.PathKind, tether float64) {
	size := max(p.Path.A, p.Path.B)
	if size == 0 {
		size = tether
	}
	c, tilt := p.Path.Centre, p.Path.Tilt
	switch kind {
	case engine.OnLine:
		p.Path = engine.LinePath(c, size, tilt)
	case engine.OnEllipse:
		p.Path = engine.EllipsePath(c, size, size/2, tilt)
	case engine.OnPoint:
		p.Path = engine.PointPath(c)
	default:
		p.Path = engine.CirclePath(c, size)
	}
}
