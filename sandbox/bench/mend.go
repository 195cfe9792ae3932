package bench

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/mend"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// What sheets offer: fixPrefix and a number is one way of mending a join;
// joinPrefix and a piece leads to a join's own sheet.
const (
	fixPrefix  = "fix-"
	mendLane   = "mend-lane"
	closeLane  = "close-lane"
	idApart    = "apart" // to let each hand spin at its own side
	idTaken    = "taken" // whether the hand that is really taken is shown
	joinPrefix = "join-"
)

// fixActions offers every way of mending the join after a piece, and keeps them
// to be tried out.
func (b *Bench) fixActions(at session.Select) []Option {
	p := b.Session.Pattern()
	b.ways = b.proposals(at.Lane, mend.Of(p.Lanes[at.Lane], p.Performer, p.Tempo, at.Piece))
	options := make([]Option, len(b.ways))
	for i, w := range b.ways {
		options[i] = Option{ID: fixPrefix + strconv.Itoa(i), Label: w.name, Detail: w.result}
	}
	if len(options) > 0 {
		options[0].Head = b.Words.Told.Ways
	}
	return options
}

// proposals makes fixes of a lane into changes that can be tried out.
func (b *Bench) proposals(lane int, fixes []mend.Fix) []proposal {
	p := b.Session.Pattern()
	ways := make([]proposal, len(fixes))
	for i, f := range fixes {
		r := b.Words.Remedy(p.Lanes[lane], f)
		ways[i] = proposal{
			name:    r.Label,
			result:  sentences([]string{r.Left}, r.Costs, r.Also),
			text:    sentences([]string{r.Label, r.Left}, r.Costs, r.Also, r.Does),
			pattern: p.WithLane(lane, f.Lane),
			lane:    lane, edit: session.DidMend, sel: b.Session.Selected(),
		}
	}
	return ways
}

// sentences puts what is said one after the other, each with its full stop.
func sentences(parts ...[]string) string {
	var all []string
	for _, s := range slices.Concat(parts...) {
		if s != "" {
			all = append(all, strings.TrimSuffix(s, ".")+".")
		}
	}
	return strings.Join(all, " ")
}

// laneActions offers what mends a whole lane: to make all its joins smooth, to
// make it close.
func (b *Bench) laneActions(lane int) []Option {
	w := &b.Words.Told
	var options []Option
	add := func(id string, t words.TitledText) {
		if len(b.Session.Tracks()) > 1 {
			t.Label = fmt.Sprintf(w.OfHand, t.Label, b.Words.Side(b.Session.Tracks()[lane].Lane.Side))
		}
		options = append(options, Option{ID: id + "-" + strconv.Itoa(lane), Label: t.Label, Detail: t.Detail})
	}
	for _, x := range b.Session.Seams()[lane] {
		if x.Verdict == seam.Kink {
			add(mendLane, w.MendLane)
			break
		}
	}
	if c := b.Session.Tracks()[lane].Closing(); !c.Closes() || c.Rounds.IsInt64() && c.Rounds.Int64() > 1 {
		add(closeLane, w.CloseLane)
	}
	return options
}

// apart lets each hand spin before its own shoulder.
func (b *Bench) apart() proposal {
	p := b.Session.Pattern()
	for i, l := range p.Lanes {
		x := p.Performer.Shoulders / 2
		if l.Side == engine.Right {
			x = -x
		}
		l.Centre = complex(x, imag(l.Centre))
		p = p.WithLane(i, l)
	}
	w := b.Words.Told.Apart
	return proposal{name: w.Label, result: w.Detail, text: sentences([]string{w.Label, w.Detail}), pattern: p,
		lane: b.Session.Selected().Lane, edit: session.DidMend, sel: b.Session.Selected()}
}

// chosenMend does what was picked of all this; ok is false if option is none.
func (b *Bench) chosenMend(option string, now float64) (ok bool) {
	s := b.Session
	if option == idApart {
		b.try([]proposal{b.apart()}, 0)
		return true
	}
	if option == idTaken {
		b.view.Taken = !b.view.Taken
		b.host.Settled()
		return true
	}
	if n, err := strconv.Atoi(strings.TrimPrefix(option, fixPrefix)); err == nil && strings.HasPrefix(option, fixPrefix) {
		if n >= 0 && n < len(b.ways) {
			b.try(b.ways, n)
		}
		return true
	}
	if at, ok := b.pieceOf(strings.TrimPrefix(option, followPrefix)); ok && strings.HasPrefix(option, followPrefix) {
		b.offerFollow(at)
		return true
	}
	if at, ok := b.pieceOf("piece-" + strings.TrimPrefix(option, joinPrefix)); ok && strings.HasPrefix(option, joinPrefix) {
		b.showSeam(at)
		return true
	}
	p := s.Pattern()
	for _, x := range []struct {
		id   string
		ways func(lane int) []mend.Fix
		none string
	}{
		{mendLane, func(i int) []mend.Fix { return mend.SmoothLane(p.Lanes[i], p.Performer, p.Tempo) }, b.Words.Told.NoMend},
		{closeLane, func(i int) []mend.Fix { return mend.CloseLane(p.Lanes[i], p.Performer, p.Tempo) }, b.Words.Told.NoClose},
	} {
		rest, found := strings.CutPrefix(option, x.id+"-")
		lane, err := strconv.Atoi(rest)
		if !found || err != nil || lane < 0 || lane >= len(p.Lanes) {
			continue
		}
		ways := b.proposals(lane, x.ways(lane))
		if len(ways) == 0 {
			b.say(x.none, now)
		}
		b.try(ways, 0)
		return true
	}
	return false
}
