package bench

import (
	"whorlbench/engine/tether"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
)

// slackIn returns when, in beats counted from the start, a lane's tether is
// slack in the lane's round that the playhead is in; nothing while it is not
// known.
func (b *Bench) slackIn(lane int) []tether.Span {
	k := &b.study
	if k.Of(b.Session); lane >= len(k.Tethers) || len(k.Tethers[lane].Spans) == 0 {
		return nil
	}
	r := &k.Tethers[lane]
	t := b.Session.Tracks()[lane]
	round, _, _ := t.Locate(b.Session.Beat())
	return r.InRound(t.Beats, round)
}

// drawSlack marks on the stage where tethers go slack and, if that is wanted,
// the way of the hands that are really taken.
func (b *Bench) drawSlack(l *display.List, st *scene.Stage) {
	s := b.Session
	for i, t := range s.Tracks() {
		if s.Hidden(i) {
			continue
		}
		if !b.view.HideSlack {
			st.DrawSlack(l, t, b.slackIn(i))
		}
		if k := &b.study; b.view.Taken && i < len(k.Tethers) && k.Tethers[i].HasAstray {
			round, _, _ := t.Locate(s.Beat())
			st.DrawTaken(l, t, s.Pattern().Tempo, round)
		}
	}
}

// drawSlackOnStrip marks it on the pieces: a dotted line along their upper edge.
func (b *Bench) drawSlackOnStrip(l *display.List) {
	if b.view.HideSlack || b.lift != nil {
		return
	}
	const between, radius = 5.0, 1.6
	s := b.Session
	for i, t := range s.Tracks() {
		row := b.plan.lanes[i]
		track, seen := b.stripTrack(row), b.stripShown(row)
		round, _, _ := t.Locate(s.Beat())
		start := float64(round) * t.Beats
		for _, x := range b.slackIn(i) {
			from, to := track.X+(x.From-start)*b.perBeat(), track.X+(x.To-start)*b.perBeat()
			for at := max(from, seen.X); at <= min(to, seen.X+seen.W); at += between {
				l.Disc(display.Pt{X: at, Y: row.Y + 6}, radius, b.theme.Warn)
			}
		}
	}
}
