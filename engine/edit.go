package engine

import (
	"errors"
	"fmt"
	"slices"

	"whorlbench/engine/frac"
)

// Edits are pure: each returns a new lane or pattern and leaves its receiver
// alone. What follows an edited piece carries on; placed pieces keep their
// place; nothing becomes placed by itself.

// Errors that an edit may give.
var (
	ErrNoPiece   = errors.New("no such piece")
	ErrCutAtEnd  = errors.New("a cut must fall inside a piece")
	ErrLastPiece = errors.New("a lane keeps at least one piece")
	ErrNotOne    = errors.New("these two are not one stroke continued")
)

func (l Lane) has(i int) error {
	if i < 0 || i >= len(l.Pieces) {
		return fmt.Errorf("piece %d of %d: %w", i+1, len(l.Pieces), ErrNoPiece)
	}
	return nil
}

// with returns l with its pieces [i, j) replaced by ps, in a slice of its own.
func (l Lane) with(i, j int, ps ...Piece) Lane {
	out := make([]Piece, 0, len(l.Pieces)+len(ps)-(j-i))
	out = append(out, l.Pieces[:i]...)
	out = append(out, ps...)
	l.Pieces = append(out, l.Pieces[j:]...)
	return l
}

// Cut divides piece i at a beat counted from the piece's beginning, strictly
// inside it. Nothing moves. A whole even spinning stroke becomes two strokes;
// anything else becomes two parts of its stroke.
func (l Lane) Cut(i int, at frac.Frac) (Lane, error) {
	if err := l.has(i); err != nil {
		return l, err
	}
	p := l.Pieces[i]
	if at.Sign() <= 0 || !at.Less(p.Length()) {
		return l, ErrCutAtEnd
	}
	a, b := p, p
	b.ArmAt, b.PropAt = Opt{}, Opt{}
	share := at.Div(p.Beats)
	if p.Steady() && p.IsWhole() {
		rest := frac.Int(1).Sub(share)
		a.Cycles, a.Beats = p.Cycles.Mul(share), at
		b.Cycles, b.Beats = p.Cycles.Mul(rest), p.Beats.Sub(at)
	} else {
		a.To = p.From.Add(share)
		b.From = a.To
	}
	return l.with(i, i+1, a, b), nil
}

// CanRejoin reports whether pieces i and i+1 are one stroke continued: the
// second is not placed, and they are touching parts of one stroke, or whole
// even spinning strokes on one path with equal exact speeds per beat.
func (l Lane) CanRejoin(i int) bool {
	if i < 0 || i+1 >= len(l.Pieces) {
		return false
	}
	a, b := l.Pieces[i], l.Pieces[i+1]
	if b.ArmAt.Set || b.PropAt.Set {
		return false
	}
	return touching(a, b) || continued(a, b)
}

func touching(a, b Piece) bool {
	if !a.To.Equal(b.From) {
		return false
	}
	a.From, a.To, a.ArmAt, a.PropAt = b.From, b.To, Opt{}, Opt{}
	return a.Equal(b)
}

func continued(a, b Piece) bool {
	if !a.Steady() || !b.Steady() || !a.IsWhole() || !b.IsWhole() || a.Path != b.Path {
		return false
	}
	armA, armB := a.Arm.Mul(a.Cycles).Mul(b.Beats), b.Arm.Mul(b.Cycles).Mul(a.Beats)
	propA, propB := a.Prop.Mul(a.Cycles).Mul(b.Beats), b.Prop.Mul(b.Cycles).Mul(a.Beats)
	return armA.Equal(armB) && propA.Equal(propB)
}

// Rejoin makes pieces i and i+1 one; cut then rejoin is the identity.
func (l Lane) Rejoin(i int) (Lane, error) {
	if err := errors.Join(l.has(i), l.has(i+1)); err != nil {
		return l, err
	}
	if !l.CanRejoin(i) {
		return l, ErrNotOne
	}
	a, b := l.Pieces[i], l.Pieces[i+1]
	one := a
	if touching(a, b) {
		one.To = b.To
	} else {
		one.Beats = a.Beats.Add(b.Beats)
		one.Cycles = a.Cycles.Mul(one.Beats).Div(a.Beats)
	}
	return l.with(i, i+2, one), nil
}

// Move takes piece i out and puts it back so that it becomes piece j.
func (l Lane) Move(i, j int) (Lane, error) {
	if err := errors.Join(l.has(i), l.has(j)); err != nil {
		return l, err
	}
	p := l.Pieces[i]
	out := slices.Delete(slices.Clone(l.Pieces), i, i+1)
	l.Pieces = slices.Insert(out, j, p)
	return l, nil
}

// Repeat puts a copy of piece i after it. The copy carries on.
func (l Lane) Repeat(i int) (Lane, error) {
	if err := l.has(i); err != nil {
		return l, err
	}
	p := l.Pieces[i]
	p.ArmAt, p.PropAt = Opt{}, Opt{}
	return l.with(i+1, i+1, p), nil
}

// Delete takes piece i out. The last piece of a lane stays.
func (l Lane) Delete(i int) (Lane, error) {
	if err := l.has(i); err != nil {
		return l, err
	}
	if len(l.Pieces) == 1 {
		return l, ErrLastPiece
	}
	return l.with(i, i+1), nil
}

// Insert puts p in so that it becomes piece i, 0 ≤ i ≤ number of pieces.
func (l Lane) Insert(i int, p Piece) (Lane, error) {
	if i < 0 || i > len(l.Pieces) {
		return l, l.has(i)
	}
	return l.with(i, i, p), nil
}

// Replace puts p in the place of piece i.
func (l Lane) Replace(i int, p Piece) (Lane, error) {
	if err := l.has(i); err != nil {
		return l, err
	}
	return l.with(i, i+1, p), nil
}

// Flip changes the sign of piece i's arm speed; the prop's sense stays. The
// piece starts where the lane is, so it sweeps the other way from there.
func (l Lane) Flip(i int) (Lane, error) {
	if err := l.has(i); err != nil {
		return l, err
	}
	p := l.Pieces[i]
	p.Arm = p.Arm.Neg()
	return l.Replace(i, p)
}

// ThereAndBack puts after piece i the same path the other way, with the prop
// going on as it was: half a circle becomes a C. The way back runs the arm's
// movement backwards, easing and kept part too.
func (l Lane) ThereAndBack(i int) (Lane, error) {
	if err := l.has(i); err != nil {
		return l, err
	}
	p := l.Pieces[i]
	p.Arm, p.Law = p.Arm.Neg(), p.Law.Reversed()
	// An even pendulum keeps its part, which is its prop's swing; an eased one
	// cannot, or its hand would not come back.
	if p.Swing == 0 || p.Law != Even {
		one := frac.Int(1)
		p.From, p.To = one.Sub(p.To), one.Sub(p.From)
	}
	p.ArmAt, p.PropAt = Opt{}, Opt{}
	return l.Insert(i+1, p)
}

// Place gives piece i its own start angles, those that are set; one that is not
// carries on. The lane becomes pinned if a prop angle is placed.
func (l Lane) Place(i int, arm, prop Opt) (Lane, error) {
	if err := l.has(i); err != nil {
		return l, err
	}
	p := l.Pieces[i]
	p.ArmAt, p.PropAt = arm, prop
	return l.Replace(i, p)
}

// CarryOn takes piece i's own start angles away.
func (l Lane) CarryOn(i int) (Lane, error) { return l.Place(i, Opt{}, Opt{}) }
