package mend

import (
	"cmp"
	"math"
	"slices"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/seam"
)

// SmoothLane returns what would make all joins of a lane smooth together, as
// far as that can be, by its beats: sharing them out for the least jumps, and,
// where that is not enough, easing the hand at the joins that jump most. The
// round keeps its length. Gaps, and props that turn back, are left alone, as
// beats do not move them.
func SmoothLane(lane engine.Lane, who engine.Performer, tempo float64) []Fix {
	j := newJudge(lane, who, tempo)
	if len(kinks(j.before())) == 0 {
		return nil
	}
	var fixes []Fix
	offer := func(kind Kind, t *engine.Track) (left int) {
		if t.Lane.Equal(lane) || !fits(t.Lane) {
			return len(t.Legs)
		}
		f := j.fix(kind, t)
		if len(fixes) > 0 && !eases(&f, &fixes[0]) || len(f.Others) == 0 || f.Worsens() && compare(f.Before, f.After) <= 0 {
			return len(t.Legs)
		}
		fixes = append(fixes, f)
		return len(kinks(seam.Of(t, tempo, who.Rigid)))
	}
	if offer(ShareAll, engine.NewTrack(sharedAll(j.track, tempo, who.Rigid))) > 0 {
		if l, ok := easedWhereNeeded(j.track, tempo, who.Rigid); ok {
			offer(EaseAll, engine.NewTrack(l))
		}
	}
	return fixes
}

// eases reports whether a fix leaves less than another.
func eases(f, than *Fix) bool { return compare(than.After, f.After) > 0 }

// kinks returns the seams at which the head's velocity jumps, worst first.
func kinks(seams []seam.Seam) []seam.Seam {
	list := slices.DeleteFunc(slices.Clone(seams), func(s seam.Seam) bool { return s.Verdict != seam.Kink })
	slices.SortStableFunc(list, func(a, b seam.Seam) int { return cmp.Compare(math.Abs(b.JumpAcross), math.Abs(a.JumpAcross)) })
	return list
}

// easedWhereNeeded eases the hand at the worst kink that is left after sharing
// the beats, and so on until none is. With the hand at rest at every seam and
// one prop sense, beats in proportion to prop turns leave no jump at all.
func easedWhereNeeded(t *engine.Track, tempo float64, rigid bool) (engine.Lane, bool) {
	// More than this are eased all at once: nobody waits for the careful way.
	const most = 24
	l := t.Lane
	left := kinks(seam.Of(engine.NewTrack(sharedAll(t, tempo, rigid)), tempo, rigid))
	any := false
	for len(left) > 0 {
		done := false
		for _, s := range left {
			if e, ok := eased(l, s.After); ok {
				l, done = e, true
				if len(left) <= most {
					break
				}
			}
		}
		if !done {
			break
		}
		any = true
		left = kinks(seam.Of(engine.NewTrack(sharedAll(engine.NewTrack(l), tempo, rigid)), tempo, rigid))
	}
	return sharedAll(engine.NewTrack(l), tempo, rigid), any
}

// sharedAll returns the lane with its beats shared out for the least jumps at
// all seams that have neither gap nor stop: again from where that leads, until
// it leads no further, as the sum of squares may have several low places.
func sharedAll(t *engine.Track, tempo float64, rigid bool) engine.Lane {
	const times = 8
	for range times {
		l := sharedOnce(t, tempo, rigid)
		if l.Equal(t.Lane) {
			break
		}
		t = engine.NewTrack(l)
	}
	return t.Lane
}

func sharedOnce(t *engine.Track, tempo float64, rigid bool) engine.Lane {
	l := t.Lane
	n := len(l.Pieces)
	if n == 1 {
		return l
	}
	var list []row
	for _, s := range seam.Of(t, tempo, rigid) {
		if s.Verdict > seam.Stop {
			list = append(list, rows(t, s.After, tempo)...)
		}
	}
	if len(list) == 0 {
		return l
	}
	now := make([]float64, n)
	steady := make([]float64, n)
	even := 0.0
	for i, p := range l.Pieces {
		now[i] = p.Length().Float()
		steady[i] = math.Abs(p.PropTurns().Float())
		even += steady[i]
	}
	best := leastJumps(list, now)
	if slices.Min(steady) > 0 {
		for i := range steady {
			steady[i] *= t.Beats / even
		}
		if other := leastJumps(list, steady); worstJump(list, other) < worstJump(list, best) {
			best = other
		}
	}
	total := l.Beats()
	worst := worstJump(list, best)
	if worst > worstJump(list, now)-2*slack(worst) || slices.Min(best) < edge*t.Beats/float64(n) {
		return l
	}
	times, ok := counted(list, best, total)
	if !ok {
		return l
	}
	l.Pieces = slices.Clone(l.Pieces)
	for i, beats := range times {
		l.Pieces[i] = lasting(l.Pieces[i], beats)
	}
	return l
}

// worstJump returns the greatest jump across at times in beats.
func worstJump(list []row, beats []float64) float64 {
	worst := 0.0
	for _, r := range list {
		worst = math.Max(worst, math.Abs(r.across(beats[r.seam], beats[(r.seam+1)%len(beats)])))
	}
	return worst
}

// counted returns fractions near the times in beats that add up to the round:
// whole multiples of a countable unit where that costs no more than
// slack, else of the least part of the round with which it does. ok is false
// if none does.
func counted(list []row, beats []float64, total frac.Frac) (out []frac.Frac, ok bool) {
	const parts = 240 // of the round, to try
	most := worstJump(list, beats)
	most += slack(most)
	var units []frac.Frac
	for _, den := range []int64{1, 2, 3, 4, 6, 8, 12} {
		units = append(units, frac.New(1, den))
	}
	for d := len(beats); d <= max(parts, 8*len(beats)); d++ {
		units = append(units, total.Div(frac.Int(int64(d))))
	}
	for _, d := range []int64{1000, 10_000, 100_000} {
		units = append(units, total.Div(frac.Int(d)))
	}
	rounded := make([]float64, len(beats))
	for _, u := range units {
		n, ok := multiples(beats, u.Float(), total.Div(u))
		if !ok {
			continue
		}
		for i := range n {
			rounded[i] = float64(n[i]) * u.Float()
		}
		if worstJump(list, rounded) > most {
			continue
		}
		out = make([]frac.Frac, len(n))
		for i := range n {
			out[i] = u.Mul(frac.Int(n[i]))
		}
		return out, true
	}
	return nil, false
}

// multiples rounds times to whole multiples of a unit, at least one each, that
// add up to a whole number of them: those most above their multiple get the
// units that are left. ok is false where that cannot be.
func multiples(beats []float64, unit float64, total frac.Frac) (n []int64, ok bool) {
	if !total.IsInt() || !total.Num().IsInt64() {
		return nil, false
	}
	left := total.Num().Int64()
	n = make([]int64, len(beats))
	rest := make([]float64, len(beats))
	order := make([]int, len(beats))
	for i, b := range beats {
		n[i] = max(1, int64(math.Floor(b/unit)))
		rest[i] = b/unit - float64(n[i])
		left -= n[i]
		order[i] = i
	}
	if left < 0 || left > int64(len(beats)) {
		return nil, false
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(rest[b], rest[a]) })
	for _, i := range order[:left] {
		n[i]++
	}
	return n, true
}
