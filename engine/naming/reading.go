package naming

import (
	"math"

	"whorlbench/engine"
)

// Any rules whether some piece of a track is a slice of a sort of pattern.
func Any(t *engine.Track, sort func(Figure) bool) Ruling {
	for i := range t.Legs {
		if sort(Of(&t.Legs[i])) {
			return Ruling{Yes: true, Clause: PieceIsOne, Piece: i}
		}
	}
	return Ruling{Clause: NoPieceIs}
}

// ExactIsolation rules whether some piece is an isolation in which hand and head
// share one circle. The head's circle is |A − tether| from middle to edge, so
// the hand's is as wide as the tether is long: A is half the tether.
func ExactIsolation(t *engine.Track) Ruling {
	r := Ruling{Clause: NoPieceIs}
	for i := range t.Legs {
		g := &t.Legs[i]
		if Of(g).Kind != Isolation {
			continue
		}
		hand := g.Path().A
		off := math.Abs(math.Abs(hand-g.Tether()) - hand)
		if off < engine.TolPath {
			return Ruling{Yes: true, Clause: OneCircle, Piece: i}
		}
		if r.Clause == NoPieceIs {
			r = Ruling{Clause: TwoCircles, Piece: i, Gap: off}
		}
	}
	return r
}

// Apart rules on the hybrid in the sense that the hands share no pattern,
// not even at different times.
func Apart(left, right *engine.Track) Ruling {
	a, b := walkerOf(left), walkerOf(right)
	for i := range a.figures {
		for k := range b.figures {
			if alike(&a.figures[i], &b.figures[k]) {
				return Ruling{Clause: HandsShare, Piece: i, Other: k, Figures: [2]Figure{a.figures[i], b.figures[k]}}
			}
		}
	}
	return Ruling{Yes: true, Clause: HandsShareNone}
}

// Beside rules on the hybrid in the sense that at some moment one hand does a
// flower and the other something simpler.
func Beside(left, right *engine.Track) Ruling {
	r := Ruling{Clause: NoneBeside}
	eachMoment(left, right, func(beat float64, a, b *walker) bool {
		f, g := a.figure(), b.figure()
		if f.hasFlower() == g.hasFlower() || !f.hasFlower() && !f.simple() || !g.hasFlower() && !g.simple() {
			return true
		}
		r = Ruling{Yes: true, Clause: FlowerBeside, Beat: beat, Piece: a.piece, Other: b.piece, Figures: [2]Figure{f, g}}
		return false
	})
	return r
}

func (f *Figure) hasFlower() bool { return f.Kind == Flower || f.Kind == Star }

// simple reports whether a figure has no petals to draw: hand and prop turn as
// one, or one of them does not turn.
func (f *Figure) simple() bool {
	switch f.Kind {
	case Extension, Isolation, UnitTurn, Carried, StaticSpin, HeldStill, Pendulum:
		return true
	}
	return false
}
