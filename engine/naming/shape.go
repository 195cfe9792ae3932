package naming

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// arc is as much of a round as the hand spends on one circle in one sense,
// however many pieces that is.
type arc struct {
	piece     int // the first
	circle    engine.Path
	sweep     float64 // radians, signed
	turnsBack bool    // the hand turns back at its end
}

// arcs rules on C-cap and S-cap.
func (w *Whole) arcs(t *engine.Track, seams []seam.Seam) {
	if !w.Strict.Yes {
		w.C, w.S = Ruling{Clause: NotStrict}, Ruling{Clause: NotStrict}
		return
	}
	if r, jumps := handJump(seams); jumps {
		w.C, w.S = r, r
		return
	}
	arcs := arcsOf(t, seams)
	w.C, w.S = ruleC(arcs), ruleS(arcs)
}

// handJump returns the first join where the hand jumps.
func handJump(seams []seam.Seam) (Ruling, bool) {
	for i := range seams {
		if gap := seams[i].HandGap; gap > engine.TolGap {
			return Ruling{Clause: HandJumps, Piece: i, Other: (i + 1) % len(seams), Gap: gap}, true
		}
	}
	return Ruling{}, false
}

// arcsOf returns a round's arcs, from a place where one begins.
func arcsOf(t *engine.Track, seams []seam.Seam) []arc {
	n := len(t.Legs)
	first := 0
	for i := range n {
		if !goesOn(t, (i+n-1)%n) {
			first = i
			break
		}
	}
	var arcs []arc
	for k := range n {
		i := (first + k) % n
		g := &t.Legs[i]
		sweep := g.State(1).Arm - g.State(0).Arm
		if k > 0 && goesOn(t, (i+n-1)%n) {
			last := &arcs[len(arcs)-1]
			last.sweep += sweep
			last.turnsBack = seams[i].HandTurnsBack
			continue
		}
		arcs = append(arcs, arc{i, g.Path(), sweep, seams[i].HandTurnsBack})
	}
	return arcs
}

// goesOn reports whether the hand goes on along its circle after piece i.
func goesOn(t *engine.Track, i int) bool {
	a, b := &t.Legs[i], &t.Legs[(i+1)%len(t.Legs)]
	return a.Piece.Arm.Sign() == b.Piece.Arm.Sign() && a.Path().Same(b.Path())
}

// wholeCircle rules out an arc that goes all the way round.
func wholeCircle(arcs []arc) (Ruling, bool) {
	for i := range arcs {
		a := &arcs[i]
		if a.circle.A*(2*math.Pi-math.Abs(a.sweep)) < engine.TolPath {
			return Ruling{Clause: WholeCircle, Piece: a.piece}, true
		}
	}
	return Ruling{}, false
}

// oneCircle reports whether all arcs lie on one circle.
func oneCircle(arcs []arc) bool {
	for i := range arcs {
		if !arcs[i].circle.Same(arcs[0].circle) {
			return false
		}
	}
	return true
}

// retraces reports whether b is a's way back.
func (a *arc) retraces(b *arc) bool {
	return a.circle.Same(b.circle) && a.circle.A*math.Abs(a.sweep+b.sweep) < engine.TolPath
}

// ruleC: arcs on one circle follow each other where the hand turns back; they
// are one arc if each is the way back of the one before.
func ruleC(arcs []arc) Ruling {
	for i := range arcs {
		if !arcs[i].circle.Same(arcs[0].circle) {
			return Ruling{Clause: OtherCircle, Piece: arcs[i].piece, Other: arcs[0].piece}
		}
	}
	if r, whole := wholeCircle(arcs); whole {
		return r
	}
	for i := range arcs {
		next := &arcs[(i+1)%len(arcs)]
		if !arcs[i].retraces(next) {
			return Ruling{Clause: UnequalArcs, Piece: next.piece}
		}
	}
	return Ruling{Yes: true, Clause: OneArc, Piece: arcs[0].piece}
}

// ruleS: from one turning back to the next the hand sweeps two arcs that
// bend opposite ways, and then the same two the other way about.
func ruleS(arcs []arc) Ruling {
	if r, whole := wholeCircle(arcs); whole {
		return r
	}
	n := len(arcs)
	first := -1
	for i := range arcs {
		if arcs[(i+n-1)%n].turnsBack {
			first = i
			break
		}
	}
	if first < 0 {
		return Ruling{Clause: NoTurnBack}
	}
	at := func(k int) *arc { return &arcs[(first+k)%n] }
	for k := 0; k < n; {
		way := 1
		for !at(k + way - 1).turnsBack {
			way++
		}
		if way == 1 && oneCircle(arcs) {
			return Ruling{Clause: OnlyOneArc}
		}
		if way != 2 {
			return Ruling{Clause: NotTwoArcs, Piece: at(k).piece, Count: way}
		}
		a, b := at(k), at(k+1)
		if a.sweep*b.sweep > 0 {
			return Ruling{Clause: BendOneWay, Piece: a.piece, Other: b.piece}
		}
		if !b.retraces(at(k+2)) || !a.retraces(at(k+3)) {
			return Ruling{Clause: OtherWayBack, Piece: at(k + 2).piece}
		}
		k += way
	}
	return Ruling{Yes: true, Clause: TwoArcs, Piece: at(0).piece, Other: at(1).piece}
}
