package mend

import (
	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// What is a thing that a fix can change.
type What uint8

// The things, with the field of Value that holds them.
const (
	Beats  What = iota // Frac: of the whole stroke
	Arm                // Frac: turns a cycle
	Prop               // Frac: turns a cycle
	Cycles             // Frac
	From               // Frac: part of the stroke that is kept, its beginning
	To                 // Frac: its end
	Law                // Law
	ArmAt              // Angle: absent where the piece carries on
	PropAt             // Angle
	Centre             // Place
	Size               // Place: semi-axes A and B as real and imaginary part
	Tilt               // Angle
	Pieces             // Frac: how many pieces the lane has
)

// Value is what something was or became; which field counts depends on What.
type Value struct {
	Frac  frac.Frac
	Angle engine.Opt
	Place complex128 // m
	Law   engine.Law
}

// Change is one thing that is not as it was: of a piece, or of the lane
// itself where Piece is Whole.
type Change struct {
	Piece    int
	What     What
	From, To Value
}

// changes lists every difference between two lanes of one hand, whoever made
// it. Where the number of pieces differs, the pieces are compared as far as
// both go.
func changes(was, now engine.Lane) []Change {
	var list []Change
	add := func(piece int, what What, from, to Value) {
		list = append(list, Change{piece, what, from, to})
	}
	angle := func(piece int, what What, from, to engine.Opt) {
		if from != to {
			add(piece, what, Value{Angle: from}, Value{Angle: to})
		}
	}
	number := func(piece int, what What, from, to frac.Frac) {
		if !from.Equal(to) {
			add(piece, what, Value{Frac: from}, Value{Frac: to})
		}
	}
	place := func(piece int, what What, from, to complex128) {
		if from != to {
			add(piece, what, Value{Place: from}, Value{Place: to})
		}
	}
	angle(Whole, ArmAt, engine.Some(was.ArmAt), engine.Some(now.ArmAt))
	angle(Whole, PropAt, engine.Some(was.PropAt), engine.Some(now.PropAt))
	number(Whole, Pieces, frac.Int(int64(len(was.Pieces))), frac.Int(int64(len(now.Pieces))))
	for i := range min(len(was.Pieces), len(now.Pieces)) {
		a, b := was.Pieces[i], now.Pieces[i]
		number(i, Beats, a.Beats, b.Beats)
		number(i, Arm, a.Arm, b.Arm)
		number(i, Prop, a.Prop, b.Prop)
		number(i, Cycles, a.Cycles, b.Cycles)
		number(i, From, a.From, b.From)
		number(i, To, a.To, b.To)
		if a.Law != b.Law {
			add(i, Law, Value{Law: a.Law}, Value{Law: b.Law})
		}
		angle(i, ArmAt, a.ArmAt, b.ArmAt)
		angle(i, PropAt, a.PropAt, b.PropAt)
		place(i, Centre, a.Path.Centre, b.Path.Centre)
		place(i, Size, complex(a.Path.A, a.Path.B), complex(b.Path.A, b.Path.B))
		angle(i, Tilt, engine.Some(a.Path.Tilt), engine.Some(b.Path.Tilt))
	}
	return list
}
