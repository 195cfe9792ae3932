package bench

import (
	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/words"
)

// Judged tells what each reading of a word of the glossary, by its key, says of
// the open pattern; nothing if the word does not judge patterns.
func (b *Bench) Judged(key string) []Section {
	b.nameNow()
	if key == "hybrid" {
		return b.hybridJudged()
	}
	var out []Section
	for i, t := range b.Session.Tracks() {
		lines := definitionLines(b.laneJudged(key, i, t)...)
		if len(lines) == 0 {
			return nil
		}
		part := Section{Lines: lines}
		if len(b.Session.Tracks()) > 1 {
			part.Head = b.Words.HandName(t.Lane.Side)
		}
		out = b.joined(out, part)
	}
	return out
}

// definedBy has the first and the last of a hand's definitions that a word is
// judged by.
var definedBy = map[string][2]int{
	"elementary":   {words.DefElementary, words.DefElementary},
	"cap":          {words.DefBroad, words.DefStrict},
	"broad-sense":  {words.DefBroad, words.DefBroad},
	"strict-sense": {words.DefStrict, words.DefStrict},
	"c-cap":        {words.DefC, words.DefC},
	"s-cap":        {words.DefS, words.DefS},
	"diamond":      {words.DefDiamond, words.DefDiamond},
}

// laneJudged tells what each reading of a word says of one hand's lane.
func (b *Bench) laneJudged(key string, lane int, t *engine.Track) []words.Definition {
	defs := b.Words.Definitions(&b.study.Wholes[lane])
	if span, ok := definedBy[key]; ok {
		return defs[span[0] : span[1]+1]
	}
	if key == "isolation" {
		w := &b.Words.Explain
		return []words.Definition{
			b.Words.PieceReading(w.Loose, key, naming.Any(t, sortOf(key)), t),
			b.Words.PieceReading(w.Exact, key, naming.ExactIsolation(t), t),
		}
	}
	if sort := sortOf(key); sort != nil {
		return []words.Definition{b.Words.PieceReading("", key, naming.Any(t, sort), t)}
	}
	return nil
}

// hybridJudged tells what each use of the word hybrid says of two hands.
func (b *Bench) hybridJudged() []Section {
	w, tracks := &b.Words.Explain, b.Session.Tracks()
	l, r, two := study.LeftRight(tracks)
	if !two {
		return []Section{{Text: w.OneHand}}
	}
	return []Section{{Lines: definitionLines(
		b.Words.Reading(w.HybridHere, b.study.Hybrid),
		b.Words.Reading(w.HybridApart, naming.Apart(tracks[l], tracks[r])),
		b.Words.Reading(w.HybridBeside, naming.Beside(tracks[l], tracks[r])),
	)}}
}

// sortOf returns what a piece must be for a word that names pieces, nil for any
// other word.
func sortOf(key string) func(naming.Figure) bool {
	kind := func(k naming.Kind) func(naming.Figure) bool {
		return func(f naming.Figure) bool { return f.Kind == k }
	}
	petals := func(n float64) func(naming.Figure) bool {
		return func(f naming.Figure) bool {
			return f.Kind == naming.Flower && f.Spin == naming.SpinAnti && f.Petals.Float() == n
		}
	}
	mode := func(m naming.Mode) func(naming.Figure) bool {
		return func(f naming.Figure) bool { return f.Mode == m }
	}
	spin := func(s naming.Spin) func(naming.Figure) bool {
		return func(f naming.Figure) bool { return f.Spin == s }
	}
	switch key {
	case "extension":
		return kind(naming.Extension)
	case "isolation":
		return kind(naming.Isolation)
	case "unit-turn":
		return spin(naming.SpinUnit)
	case "flower":
		return kind(naming.Flower)
	case "star-flower":
		return kind(naming.Star)
	case "in-spin":
		return spin(naming.SpinIn)
	case "antispin":
		return spin(naming.SpinAnti)
	case "cateye":
		return petals(2)
	case "triquetra":
		return petals(3)
	case "box-mode":
		return mode(naming.Box)
	case "diamond-mode":
		return mode(naming.Diamond)
	case "static-spin":
		return kind(naming.StaticSpin)
	case "pendulum":
		return kind(naming.Pendulum)
	case "linear-extension":
		return kind(naming.LinearExtension)
	case "linear-isolation":
		return kind(naming.LinearIsolation)
	}
	return nil
}
