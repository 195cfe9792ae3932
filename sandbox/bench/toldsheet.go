package bench

import (
	"fmt"
	"slices"
	"strings"

	"whorlbench/engine/duet"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// idTold is what is said of the piece in hand and of the whole, at a tap more.
const idTold = "told"

// Learn goes on a little with the study of the pattern, while no finger drags;
// it returns whether there is more to come. What the whole has become is spoken
// when it is known, and an open sheet is filled in.
func (b *Bench) Learn() (more bool) {
	if b.compare != nil {
		return b.learnCompare()
	}
	if b.Session.Holding() {
		return false
	}
	b.study.Of(b.Session)
	if b.study.Done() {
		return false
	}
	b.study.Step(b.Session)
	b.settleWhole()
	if b.study.Done() && b.host.SheetOpen(idTold) {
		b.host.ShowSheet(b.toldSheet())
	}
	return true
}

// wholeLine says in one line what the whole is called, empty while that is not
// known.
func (b *Bench) wholeLine() string {
	b.study.Of(b.Session)
	return b.study.Line(b.Words, b.Session)
}

// sortLine is wholeLine in the fewest words.
func (b *Bench) sortLine() string {
	k := &b.study
	if k.Of(b.Session); !k.Named() {
		return ""
	}
	if len(k.Wholes) > 1 && k.Hybrid.Yes {
		return b.Words.Told.Hybrid
	}
	return b.Words.Sort(&k.Wholes[0])
}

// arrangeTold lets what is said of the pattern be tapped for all of it.
func (b *Bench) arrangeTold() {
	b.add(widget.Control{ID: idTold, Bare: true, Label: b.Words.Told.Open, Text: b.wholeLine(), Rect: b.toldPlace(), Keys: "I"})
}

// toldPlace is where what is said can be tapped: at a desk the lines that run
// on below the tempo.
func (b *Bench) toldPlace() display.Rect {
	r := b.plan.name
	if b.plan.desk {
		_, r = r.CutTop(60 * b.plan.text)
		r.W = b.plan.tempo.X + b.plan.tempo.W - r.X
	}
	return r
}

// showTold tells all that is known of the pattern.
func (b *Bench) showTold() {
	b.nameNow()
	b.host.ShowSheet(b.toldSheet())
}

// nameNow works out what the whole is called, if that is not known.
func (b *Bench) nameNow() {
	for b.study.Of(b.Session); !b.study.Named(); b.study.Of(b.Session) {
		b.study.Step(b.Session)
	}
	b.settleWhole()
}

// toldSheet is what is known of the pattern so far.
func (b *Bench) toldSheet() Sheet {
	s, w := b.Session, &b.Words.Told
	k := &b.study
	out := Sheet{ID: idTold, Title: s.Pattern().Title, Lead: b.wholeLine(), Text: b.tell().closing + "."}
	out.Sections = append(out.Sections, b.handsSections()...)
	if len(k.Wholes) > 1 {
		out.Sections = append(out.Sections, Section{Head: w.Called, Lines: definitionLines(b.Words.HybridDefinition(k.Hybrid))})
	}
	for i, t := range s.Tracks() {
		part := Section{Head: w.Called, Lines: definitionLines(b.Words.Definitions(&k.Wholes[i])...)}
		if len(k.Wholes) > 1 {
			part.Head = b.Words.HandName(t.Lane.Side)
		}
		out.Sections = b.joined(out.Sections, part)
	}
	takenShown := false
	for i := range k.Tethers {
		takenShown = takenShown || k.Tethers[i].HasAstray
	}
	if joins := b.joinActions(); len(joins) > 0 {
		joins[0].Head = w.Joins
		out.Actions = append(out.Actions, joins...)
	}
	for i := range s.Tracks() {
		out.Actions = append(out.Actions, b.laneActions(i)...)
	}
	if d := k.Duet; d != nil && d.Tangle.Why == duet.HandsMeet {
		out.Actions = append(out.Actions, Option{ID: idApart, Label: w.Apart.Label, Detail: w.Apart.Detail})
	}
	if takenShown {
		out.Actions = append(out.Actions, Option{ID: idTaken, Label: b.Words.View.Taken, Detail: w.TakenDetail, On: b.view.Taken})
	}
	if notes := s.Pattern().Notes; notes != "" {
		out.Sections = append(out.Sections, Section{Head: b.Words.Page.Notes, Text: notes})
	}
	out.Sections = append(out.Sections, b.tetherSections()...)
	return out
}

// joined adds what is said of one hand; where the other's says the very same, it
// is said once, of both.
func (b *Bench) joined(sections []Section, part Section) []Section {
	if n := len(sections); n > 0 && len(part.Lines) > 0 && slices.Equal(sections[n-1].Lines, part.Lines) {
		sections[n-1].Head = b.Words.Told.BothHands
		return sections
	}
	return append(sections, part)
}

func definitionLines(defs ...words.Definition) []words.Line {
	lines := make([]words.Line, len(defs))
	for i, d := range defs {
		lines[i] = words.Line{Name: d.Name, Text: d.Because}
	}
	return lines
}

// mostJoins bounds how many joins a sheet lists.
const mostJoins = 24

// joinActions lists the joins that are not smooth, each of which leads to its
// own sheet.
func (b *Bench) joinActions() []Option {
	var options []Option
	for i, seams := range b.Session.Seams() {
		side := b.Session.Tracks()[i].Lane.Side
		for _, x := range seams {
			if x.Verdict != seam.Smooth && len(options) < mostJoins {
				id := joinPrefix + strings.TrimPrefix(pieceID(i, x.After), "piece-")
				options = append(options, Option{ID: id, Label: b.Words.SeamFault(x), Detail: b.Words.JoinTitle(side, len(seams), x)})
			}
		}
	}
	return options
}

// spoken says what the whole is called and by which clauses, for the live
// region.
func (b *Bench) spoken() string {
	k := &b.study
	if !k.Named() {
		return ""
	}
	var defs []words.Definition
	if len(k.Wholes) > 1 {
		defs = append(defs, b.Words.HybridDefinition(k.Hybrid))
	} else {
		defs = b.Words.Definitions(&k.Wholes[0])
	}
	out := []string{b.wholeLine() + "."}
	for _, d := range defs {
		if d.Yes {
			out = append(out, d.Name+". "+d.Because)
		}
	}
	return strings.Join(out, " ")
}

// handsSections tells how two hands stand to each other, and whether the arms
// wrap.
func (b *Bench) handsSections() []Section {
	w, d := b.Words, b.study.Duet
	switch {
	case len(b.Session.Tracks()) < 2:
		return nil
	case d == nil:
		return []Section{{Head: w.Told.Hands, Text: w.Told.Working}}
	}
	var out []Section
	if cautions := w.DuetCautions(d); len(cautions) > 0 {
		out = append(out, Section{Head: w.Told.Mind, Text: strings.Join(cautions, " ")})
	}
	return append(out,
		Section{Head: w.Told.Tangle, Text: w.TangleSaid(d), Plot: b.aroundPlot()},
		Section{Head: w.Told.Hands, Lines: []words.Line{
			{Name: w.Duet.Props, Text: w.SpansSaid(w.Duet.Props, d.Props)},
			{Name: w.Duet.Hands, Text: w.SpansSaid(w.Duet.Hands, d.Hands)},
			{Name: w.Told.Nearest, Text: strings.Join(w.NearestSaid(d), " ")},
		}})
}

// tetherSections tells what real tethers would do, with the caution that
// belongs to it.
func (b *Bench) tetherSections() []Section {
	s, w := b.Session, b.Words
	var out []Section
	for i, t := range s.Tracks() {
		head := w.Told.Tether
		if len(s.Tracks()) > 1 {
			head = fmt.Sprintf(w.Told.OfHand, head, w.Side(t.Lane.Side))
		}
		if i >= len(b.study.Tethers) {
			out = append(out, Section{Head: head, Text: w.Told.Working})
			continue
		}
		r := &b.study.Tethers[i]
		out = b.joined(out, Section{Head: head, Lines: w.TetherLines(t, r, s.Pattern().Tempo), Plot: b.pullPlot(t, r)})
	}
	return append(out, Section{Text: w.Bench.TempoCaution})
}
