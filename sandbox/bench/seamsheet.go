package bench

import (
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// Sheet is something to be read: what it is about, the point of it in a
// sentence, the particulars, and what can be done about it, which comes back
// through Bench.Chosen.
type Sheet struct {
	ID       string    `json:"id"`
	Title    string    `json:"title"`
	Lead     string    `json:"lead"`
	Text     string    `json:"text"`
	Sections []Section `json:"sections"`
	Actions  []Option  `json:"actions"`
}

// Section is a part of a sheet under a heading of its own, which may be empty,
// with a drawing or none.
type Section struct {
	Head  string       `json:"head"`
	Text  string       `json:"text"`
	Lines []words.Line `json:"lines"`
	Plot  *Plot        `json:"plot"` // nil for none
}

// Plot is a small drawing in the square from −50 to 50, y downward: SVG paths
// by the class that colours them, and what it shows in words.
type Plot struct {
	Label string     `json:"label"`
	Box   string     `json:"box"` // the SVG view box
	Paths []PlotPath `json:"paths"`
}

// PlotPath is one line of a plot.
type PlotPath struct {
	Class string `json:"class"`
	D     string `json:"d"`
}

// showSeam tells all of the join after a piece, and how it can be mended.
func (b *Bench) showSeam(at session.Select) {
	t := b.Session.Tracks()[at.Lane]
	x := b.Session.Seams()[at.Lane][at.Piece]
	w := &b.Words.Strip
	next := b.Words.Follow.Ask
	actions := append(append(b.fixActions(at), b.laneActions(at.Lane)...),
		Option{ID: followPrefix + pieceID(at.Lane, at.Piece), Label: next.Label, Detail: next.Detail, Head: b.Words.Told.Else})
	b.host.ShowSheet(Sheet{
		ID:       seamID(at.Lane, at.Piece),
		Title:    b.Words.JoinTitle(t.Lane.Side, len(t.Legs), x),
		Lead:     w.Verdicts[x.Verdict],
		Text:     w.Meanings[x.Verdict],
		Sections: []Section{{Lines: b.Words.JoinLines(x)}},
		Actions:  actions,
	})
}
