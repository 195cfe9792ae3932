package study

import (
	"whorlbench/engine"
	"whorlbench/engine/duet"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/engine/tether"
	"whorlbench/sandbox/words"
)

// Comparison works out what two patterns differ in, a little at a time.
type Comparison struct {
	patterns [2]engine.Pattern
	sides    []side // as far as begun
	done     bool
}

// side is one of two patterns being looked at.
type side struct {
	facts   words.Facts
	tethers []*tether.Study // of each hand, as facts has them
	reader  *duet.Reader    // of two hands
}

// Compare begins to compare the pattern on the left with the one on the right.
func Compare(left, right engine.Pattern) *Comparison {
	return &Comparison{patterns: [2]engine.Pattern{left, right}}
}

func sideOf(p engine.Pattern) side {
	s := side{facts: words.Facts{Tempo: p.Tempo}}
	var tracks []*engine.Track
	for _, l := range p.Lanes {
		tracks = append(tracks, engine.NewTrack(l))
	}
	s.facts.Beats, s.facts.Closes = engine.ClosingTime(tracks...)
	if l, r, ok := LeftRight(tracks); ok {
		tracks = []*engine.Track{tracks[l], tracks[r]}
		s.facts.Hybrid = naming.Hybrid(tracks[0], tracks[1])
		s.reader = duet.NewReader(tracks[0], tracks[1])
	}
	rigid := p.Performer.Rigid
	for _, t := range tracks {
		seams := seam.Of(t, p.Tempo, rigid)
		s.facts.Hands = append(s.facts.Hands, words.HandFacts{
			Side: t.Lane.Side, Plane: t.Lane.Plane, Whole: naming.Judge(t, seams), Seams: seams, Rigid: rigid, Pieces: t.Lane.Pieces,
		})
		s.tethers = append(s.tethers, tether.New(t, p.Tempo, rigid))
	}
	return s
}

// Step does at most n small steps and reports whether all is known.
func (c *Comparison) Step(n int) (done bool) {
	if len(c.sides) < len(c.patterns) { // a step of its own each: joins and names
		c.sides = append(c.sides, sideOf(c.patterns[len(c.sides)]))
		return false
	}
	for i := range c.sides {
		if !c.sides[i].step(n) {
			return false
		}
	}
	c.done = true
	return true
}

func (s *side) step(n int) (done bool) {
	for k, study := range s.tethers {
		if !study.Step(n) {
			return false
		}
		s.facts.Hands[k].Window = study.Result().Window
	}
	if s.reader != nil {
		if !s.reader.Step(n) {
			return false
		}
		s.facts.Reading = s.reader.Reading()
	}
	return true
}

// Done reports whether all is known.
func (c *Comparison) Done() bool { return c.done }

// Facts returns what is known of the left and the right pattern, once Step has
// said that all is.
func (c *Comparison) Facts() (left, right *words.Facts) { return &c.sides[0].facts, &c.sides[1].facts }

// Lines tells what differs, a line each, and last when both are back together;
// nothing until all is known.
func (c *Comparison) Lines(w *words.Table) []string {
	if !c.done {
		return nil
	}
	left, right := c.Facts()
	var lines []string
	for _, d := range w.Differences(left, right) {
		lines = append(lines, w.Said(d))
	}
	if len(lines) == 0 {
		lines = append(lines, w.Compare.Alike)
	}
	for _, d := range w.Senses(left, right) {
		lines = append(lines, w.Said(d))
	}
	return append(lines, w.OnePlayhead(left, right))
}
