package bench

import (
	"slices"

	"whorlbench/sandbox/session"
)

// lift is what is being carried along its lane, a piece or all that are
// selected with it: it follows the finger, and the others make room where it
// would be put down.
type lift struct {
	lane, from, n, to int
	x                 float64 // of its left edge
	off               float64 // from there to the edge that the finger carries
}

// has reports whether a piece is among those carried.
func (k *lift) has(lane, i int) bool {
	return k != nil && k.lane == lane && k.from <= i && i < k.from+k.n
}

// order returns the order in which a lane's pieces are shown.
func (b *Bench) order(lane, n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	if k := b.lift; k != nil && k.lane == lane && k.from+k.n <= n && k.to+k.n <= n {
		carried := slices.Clone(out[k.from : k.from+k.n])
		out = slices.Delete(out, k.from, k.from+k.n)
		out = slices.Insert(out, k.to, carried...)
	}
	return out
}

// carryTo moves what is lifted so that the edge the finger carries is at x, and
// finds where it would be put down: after every piece whose middle lies before
// its own.
func (b *Bench) carryTo(x float64) {
	k := b.lift
	t := b.Session.Tracks()[k.lane]
	track := b.stripTrack(b.plan.lanes[k.lane])
	perBeat := track.W / b.Session.Round()
	k.x = x - k.off
	last := &t.Legs[k.from+k.n-1]
	middle := k.x + (last.Start+last.Span-t.Legs[k.from].Start)*perBeat/2
	k.to = 0
	at := track.X
	for i := range t.Legs {
		if k.has(k.lane, i) {
			continue
		}
		w := t.Legs[i].Span * perBeat
		if at+w/2 < middle {
			k.to++
		}
		at += w
	}
}

// lifted takes a piece off its place, and what is selected with it; a piece
// that is not selected is then the one in hand.
func (b *Bench) lifted(lane, i int) {
	s := b.Session
	if at := (session.Select{Lane: lane, Piece: i}); !s.InRange(at) {
		s.Select(at)
	}
	first, last := s.Range()
	row := b.plan.lanes[lane]
	place := func(i int) float64 {
		return b.stripTrack(row).X + s.Tracks()[lane].Legs[i].Start*b.perBeat()
	}
	held := max(place(i), b.stripShown(row).X) // what is beyond the edge is not under the finger
	b.lift = &lift{lane: lane, from: first, n: last - first + 1, to: first, x: place(first), off: held - place(first)}
}
