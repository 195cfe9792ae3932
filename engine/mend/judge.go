package mend

import (
	"cmp"
	"math"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// acrossStep (m/s) is how much a jump across the tether must change to count
// as better or worse: a fifth of engine.TolKink, which nobody feels.
const acrossStep = engine.TolKink / 5

// slack returns how far (m/s) a jump may be from the least there is for the
// sake of beats that can be counted: where some jump is left anyway, by a
// tenth of it.
func slack(least float64) float64 { return math.Max(acrossStep/2, least/10) }

// judge holds a lane as it is against what a fix would make of it.
type judge struct {
	lane  engine.Lane
	track *engine.Track
	who   engine.Performer
	tempo float64
	seams []seam.Seam // found when they are first asked for
}

func newJudge(lane engine.Lane, who engine.Performer, tempo float64) judge {
	return judge{lane: lane, track: engine.NewTrack(lane), who: who, tempo: tempo}
}

// before returns the lane's seams as they are.
func (j *judge) before() []seam.Seam {
	if j.seams == nil {
		j.seams = seam.Of(j.track, j.tempo, j.who.Rigid)
	}
	return j.seams
}

// fix says of a new lane all but what it does to one seam: Others are all
// seams that differ. Where it has more pieces than the lane before, each seam
// is held against the one that it repeats.
func (j *judge) fix(kind Kind, t *engine.Track) Fix {
	f := Fix{Kind: kind, Seam: Whole, Lane: t.Lane, Closed: j.track.Closing(), Closing: t.Closing(), RoundWas: j.lane.Beats()}
	was := j.before()
	for i, now := range seam.Of(t, j.tempo, j.who.Rigid) {
		old := was[i%len(was)]
		if c := compare(old, now); c != 0 {
			f.Others = append(f.Others, Other{Before: old, After: now, Better: c > 0})
		}
		if i == 0 || worse(now, f.After) {
			f.After = now
		}
		if i == 0 || worse(old, f.Before) {
			f.Before = old
		}
	}
	f.Bend = bend(j.track, t)
	f.Changes = changes(j.lane, t.Lane)
	return f
}

// compare returns 1 if a seam is better than it was, −1 if it is worse, 0 if
// neither can be said. The verdict comes first; of gaps none may grow, of
// jumps the one across counts.
func compare(was, now seam.Seam) int {
	if c := cmp.Compare(now.Verdict, was.Verdict); c != 0 {
		return c
	}
	switch now.Verdict {
	case seam.Gap:
		hand := step(was.HandGap, now.HandGap, engine.TolGap)
		prop := step(float64(was.PropGap), float64(now.PropGap), engine.TolPropGap)
		if hand < 0 || prop < 0 {
			return -1
		}
		return max(hand, prop)
	case seam.Kink:
		return step(math.Abs(was.JumpAcross), math.Abs(now.JumpAcross), acrossStep)
	}
	return 0
}

// step returns 1 if a figure has gone down by more than within, −1 if up.
func step(was, now, within float64) int {
	switch {
	case now < was-within:
		return 1
	case now > was+within:
		return -1
	}
	return 0
}

// worse orders seams by how bad they are.
func worse(a, b seam.Seam) bool {
	if a.Verdict != b.Verdict {
		return a.Verdict < b.Verdict
	}
	if a.Verdict == seam.Gap {
		return a.HeadGap > b.HeadGap
	}
	return math.Abs(a.JumpAcross) > math.Abs(b.JumpAcross)
}

// order puts first what a person would rather have.
func order(a, b Fix) int {
	return cmp.Or(
		cmp.Compare(class(&a), class(&b)),
		-cmp.Compare(a.After.Verdict, b.After.Verdict),
		unlike(a.Unclosed(), b.Unclosed()),
		unlike(a.Stretches(), b.Stretches()),
		unlike(a.Bend > 0, b.Bend > 0),
		cmp.Compare(len(a.Changes), len(b.Changes)),
		cmp.Compare(a.Kind, b.Kind),
	)
}

func class(f *Fix) int {
	switch {
	case f.After.Verdict != seam.Smooth && f.Worsens():
		return 3
	case f.After.Verdict != seam.Smooth:
		return 2
	case f.Worsens():
		return 1
	}
	return 0
}

// unlike puts false before true.
func unlike(a, b bool) int {
	switch {
	case a == b:
		return 0
	case b:
		return -1
	}
	return 1
}
