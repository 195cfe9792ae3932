// Package study works out what there is to say of the open pattern beyond what
// every frame needs: what the whole is called, hands against each other,
// tethers. It does so a little at a time, so that no drag waits for it, and
// anew for each revision of the pattern.
package study

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/duet"
	"whorlbench/engine/naming"
	"whorlbench/engine/tether"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// Study is what is known of one revision of a pattern so far.
type Study struct {
	rev    int
	named  bool
	reader *duet.Reader
	tether *tether.Study
	done   bool

	Wholes  []naming.Whole  // of each lane, in the pattern's order
	Hybrid  naming.Ruling   // of two hands
	Duet    *duet.Reading   // of two hands; nil while it is not known
	Tethers []tether.Result // of each lane; fewer while they are not known
}

// How much is worked out in one step: moments at which hands or a tether are
// looked at. A step then takes a fraction of a frame.
const (
	duetMoments   = 400
	tetherMoments = 96
)

// Of brings the study up to the session's pattern: what belongs to another
// revision is forgotten. Step then goes on with it.
func (k *Study) Of(s *session.Session) {
	if k.rev != s.Revision() {
		*k = Study{rev: s.Revision()}
	}
}

// Done reports whether there is nothing more to work out.
func (k *Study) Done() bool { return k.done }

// Named reports whether it is known what the whole is called.
func (k *Study) Named() bool { return k.named }

// Step works out the next part.
func (k *Study) Step(s *session.Session) {
	tracks := s.Tracks()
	l, r, two := LeftRight(tracks)
	switch {
	case k.done:
	case len(k.Wholes) < len(tracks):
		i := len(k.Wholes)
		k.Wholes = append(k.Wholes, naming.Judge(tracks[i], s.Seams()[i]))
	case !k.named:
		if two {
			k.Hybrid = naming.Hybrid(tracks[l], tracks[r])
		}
		k.named = true
	case two && k.Duet == nil:
		if k.reader == nil {
			k.reader = duet.NewReader(tracks[l], tracks[r])
		}
		if k.reader.Step(duetMoments) {
			read := k.reader.Reading()
			k.Duet, k.reader = &read, nil
		}
	case len(k.Tethers) < len(tracks):
		if k.tether == nil {
			p := s.Pattern()
			k.tether = tether.New(tracks[len(k.Tethers)], p.Tempo, p.Performer.Rigid)
		}
		if k.tether.Step(tetherMoments) {
			k.Tethers, k.tether = append(k.Tethers, k.tether.Result()), nil
		}
	default:
		k.done = true
	}
}

// Line says in one line what a session's whole pattern is called.
func Line(w *words.Table, s *session.Session) string { return named(s).Line(w, s) }

// named is a study of what the whole is called.
func named(s *session.Session) *Study {
	k := new(Study)
	for k.Of(s); !k.Named(); {
		k.Step(s)
	}
	return k
}

// Listed is Line for a list, where two flowers that stand otherwise are to be told
// apart: with their mode.
func Listed(w *words.Table, s *session.Session) string {
	k := named(s)
	line := k.Line(w, s)
	if one := &k.Wholes[0]; len(k.Wholes) == 1 && one.Elementary.Yes && len(one.Parts) == 1 {
		if mode := w.Mode(s.Figure(session.Select{}).Mode); mode != "" {
			line = fmt.Sprintf(w.Library.InMode, line, mode)
		}
	}
	return line
}

// Line says in one line what the whole is called, empty while that is not
// known.
func (k *Study) Line(w *words.Table, s *session.Session) string {
	if !k.Named() {
		return ""
	}
	if l, r, ok := LeftRight(s.Tracks()); ok {
		return w.HandsLine(&k.Wholes[l], &k.Wholes[r], k.Hybrid)
	}
	return w.LaneLine(&k.Wholes[0])
}

// LeftRight returns the places of the left and the right hand's lane; ok is
// false if there is one hand only.
func LeftRight(tracks []*engine.Track) (left, right int, ok bool) {
	if len(tracks) < 2 {
		return 0, 0, false
	}
	if tracks[0].Lane.Side == engine.Left {
		return 0, 1, true
	}
	return 1, 0, true
}
