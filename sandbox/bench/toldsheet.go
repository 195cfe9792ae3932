package bench

import (
	"strings"

	"whorlbench/engine/seam"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// idTold is what is said of the piece in hand and of the whole, at a tap more.
const idTold = "told"

// learn goes on with the study of the pattern while no finger drags; it returns
// whether there is more to come.
func (b *Bench) learn() (more bool) {
	if b.Session.Holding() {
		return false
	}
	b.study.Of(b.Session)
	if b.study.Done() {
		return false
	}
	b.study.Step(b.Session)
	return true
}

// studied returns the study of the pattern as it is, whole.
func (b *Bench) studied() *study.Study {
	b.study.Of(b.Session)
	for !b.study.Done() {
		b.study.Step(b.Session)
	}
	return &b.study
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
	s, w := b.Session, &b.Words.Told
	k := b.studied()
	out := Sheet{ID: idTold, Title: s.Pattern().Title, Lead: b.wholeLine(), Text: b.tell().closing + "."}
	if len(k.Wholes) > 1 {
		out.Sections = append(out.Sections, Section{Lines: definitionLines(b.Words.HybridDefinition(k.Hybrid))})
	}
	for i, t := range s.Tracks() {
		head := w.Called
		if len(k.Wholes) > 1 {
			head = b.Words.HandName(t.Lane.Side)
		}
		out.Sections = append(out.Sections, Section{Head: head, Lines: definitionLines(b.Words.Definitions(&k.Wholes[i])...)})
	}
	if joins := b.joinActions(); len(joins) > 0 {
		joins[0].Head = w.Joins
		out.Actions = append(out.Actions, joins...)
	}
	for i := range s.Tracks() {
		out.Actions = append(out.Actions, b.laneActions(i)...)
	}
	b.host.ShowSheet(out)
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
