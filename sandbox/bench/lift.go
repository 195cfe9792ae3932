package bench

import (
	"whorlbench/sandbox/session"
)

// lift is a piece being carried along its lane: it follows the finger, and
// the others make room where it would be put down.
type lift struct {
	lane, from, to int
	x              float64 // of its left edge
	cut            float64 // how much of it lies left of what is seen
}

// order returns the order in which a lane's pieces are shown.
func (b *Bench) order(lane, n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	if k := b.lift; k != nil && k.lane == lane && k.from < n && k.to < n {
		out = append(out[:k.from], out[k.from+1:]...)
		out = append(out[:k.to], append([]int{k.from}, out[k.to:]...)...)
	}
	return out
}

// carryTo moves the lifted piece so that its left edge is at x, and finds
// where it would be put down: after every piece whose middle lies before its
// own.
func (b *Bench) carryTo(x float64) {
	k := b.lift
	t := b.Session.Tracks()[k.lane]
	track := b.stripTrack(b.plan.lanes[k.lane])
	perBeat := track.W / b.Session.Round()
	k.x = x - k.cut
	middle := k.x + t.Legs[k.from].Span*perBeat/2
	k.to = 0
	at := track.X
	for i := range t.Legs {
		if i == k.from {
			continue
		}
		w := t.Legs[i].Span * perBeat
		if at+w/2 < middle {
			k.to++
		}
		at += w
	}
}

// lifted takes a piece off its place; it is then the piece in hand.
func (b *Bench) lifted(lane, i int) {
	b.Session.Select(session.Select{Lane: lane, Piece: i})
	row := b.plan.lanes[lane]
	at := b.stripTrack(row).X + b.Session.Tracks()[lane].Legs[i].Start*b.perBeat()
	b.lift = &lift{lane: lane, from: i, to: i, x: at, cut: max(b.stripShown(row).X-at, 0)}
}
