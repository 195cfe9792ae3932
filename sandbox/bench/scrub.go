package bench

import (
	"math"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
)

// scrub is a prop's head that is being dragged: the playhead goes where the
// head comes nearest to the finger. The view stays as it was.
type scrub struct {
	lane    int
	off     display.Pt // of the head from the finger
	view    scene.View
	before  float64 // beat
	playing bool    // and plays on when it is let go
}

// How a head that is dragged finds its beat: no further than scrubAhead beats
// from where it was, in steps of scrubStep; a beat away costs as much as
// scrubCost pixels, so that where its curve comes back the head stays on its way.
const (
	scrubAhead = 0.75
	scrubStep  = 1.0 / 256
	scrubCost  = 12.0
)

// takeHead begins to drag the head nearest to a place, if one is near.
func (b *Bench) takeHead(at display.Pt) {
	s, v := b.Session, b.StageView()
	best := handleReach + 0.0
	for lane, t := range s.Tracks() {
		if s.Hidden(lane) {
			continue
		}
		head := v.ToScreen(t.At(s.Beat()).Head)
		if d := head.Sub(at).Len(); d < best {
			best = d
			b.stage.scrub = &scrub{lane: lane, off: head.Sub(at), view: v, before: s.Beat(), playing: s.Playing}
		}
	}
	if b.stage.scrub != nil {
		s.Playing = false
	}
}

// scrubTo brings the head that is held to a place.
func (b *Bench) scrubTo(to display.Pt) {
	s, d := b.Session, b.stage.scrub
	if d.lane >= len(s.Tracks()) {
		b.letHeadGo(true)
		return
	}
	t := s.Tracks()[d.lane]
	to = to.Add(d.off)
	best, beat := math.Inf(1), s.Beat()
	for k := -scrubAhead / scrubStep; k <= scrubAhead/scrubStep; k++ {
		at := s.Beat() + k*scrubStep
		cost := d.view.ToScreen(t.At(at).Head).Sub(to).Len() + scrubCost*math.Abs(k*scrubStep)
		if cost < best {
			best, beat = cost, at
		}
	}
	s.GoTo(beat)
	s.SelectUnderPlayhead()
}

// letHeadGo ends the drag of a head; one that is called off leaves the playhead
// where it was.
func (b *Bench) letHeadGo(keep bool) {
	d := b.stage.scrub
	b.stage.scrub = nil
	if !keep {
		b.Session.GoTo(d.before)
	}
	b.Session.Playing = d.playing
}
