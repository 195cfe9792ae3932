package bench

import (
	"slices"
	"strconv"

	"whorlbench/engine"
)

// IDs of choices that are not a slider's.
const (
	choosePath = "path"
	chooseLaw  = "law"
	// chooseTogether is whether pieces on one path change together.
	chooseTogether = "together"
)

// offerDials asks which dial shall stand in the place of another; what is no
// number, hand path and arm law, is offered with them.
func (b *Bench) offerDials(slot string) {
	w := &b.Words.Dials
	c := Choice{ID: slot, Label: w.SwapTitle}
	for i := range b.dials {
		d := &b.dials[i]
		_, full := b.reads(d)
		c.Options = append(c.Options, Option{ID: d.id, Label: d.name.Label, Detail: full, On: d.id == slot})
	}
	p := b.Session.SelectedPiece()
	c.Options = append(c.Options,
		Option{ID: choosePath, Label: w.PathTitle, Detail: w.Paths[p.Path.Kind]},
		Option{ID: chooseLaw, Label: w.LawTitle, Detail: w.Laws[p.Law]},
		Option{ID: chooseTogether, Label: w.Together, Detail: b.togetherNow()})
	b.host.Choose(c)
}

// Chosen takes a pick; now is in milliseconds.
func (b *Bench) Chosen(id, option string, now float64) {
	w := &b.Words.Dials
	p := b.Session.SelectedPiece()
	switch {
	case b.chosenFollow(id, option, now):
	case b.chosenMeet(id, option):
	case b.chosenMend(option, now):
	case b.chosenStrip(id, option, now):
	case id == choosePath:
		if k, err := strconv.Atoi(option); err == nil && k >= 0 && k < len(w.Paths) {
			tether := b.Session.Tracks()[b.Session.Selected().Lane].Lane.Tether
			at := b.Session.Selected()
			b.report(b.Session.TryPattern(choosePath, func(p engine.Pattern) engine.Pattern {
				return editLane(p, at, func(l *engine.Lane) {
					b.onPath(l, at, func(p *engine.Piece) { setPathKind(p, engine.PathKind(k), tether) })
				})
			}), now, nothing)
		}
	case id == chooseLaw:
		if k, err := strconv.Atoi(option); err == nil && k >= 0 && k < len(w.Laws) {
			b.report(b.Session.Try(chooseLaw, func(p engine.Piece) engine.Piece { p.Law = engine.Law(k); return p }), now, nothing)
		}
	case option == choosePath:
		b.host.Choose(list(choosePath, w.PathTitle, w.Paths[:], int(p.Path.Kind)))
	case option == chooseTogether:
		b.alone = !b.alone
		b.host.Settled()
		b.say(w.Together+": "+b.togetherNow(), now)
	case option == chooseLaw:
		b.host.Choose(list(chooseLaw, w.LawTitle, w.Laws[:], int(p.Law)))
	case b.dial(option) != nil:
		b.swap(id, option)
	}
	b.settle()
}

// swap puts a dial in the place of another; one that has a place elsewhere
// changes places with it.
func (b *Bench) swap(slot, with string) {
	i, j := slices.Index(b.slots, slot), slices.Index(b.slots, with)
	if i < 0 {
		return
	}
	if j >= 0 {
		b.slots[j] = slot
	}
	b.slots[i] = with
}

// list makes a choice of names, the present one marked.
func list(id, label string, names []string, now int) Choice {
	c := Choice{ID: id, Label: label}
	for i, n := range names {
		c.Options = append(c.Options, Option{ID: strconv.Itoa(i), Label: n, On: i == now})
	}
	return c
}

func nothing() string { return "" }
