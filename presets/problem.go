package presets

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"whorlbench/sandbox/words"
)

// maxListed is how many problems of one file are listed; the rest are counted.
const maxListed = 20

// Error is one thing that is wrong with a pattern file, or with a pattern
// that is to be written to one.
type Error struct {
	File        string // as given to Decode; empty for a pattern
	Line, Col   int    // from 1, columns in characters; 0 for a pattern
	Key         string // dotted as in a file, such as hand.piece.radius; empty for a whole file
	Hand, Piece int    // from 1; 0 outside hands, outside pieces
	What        string // what was found and what is allowed
}

// Error returns the problem as one line.
func (e Error) Error() string {
	w := &words.Said.Preset
	var b strings.Builder
	if e.Line > 0 {
		fmt.Fprintf(&b, w.At, e.File, e.Line, e.Col)
	}
	if e.Key != "" {
		fmt.Fprintf(&b, w.Key, quoted(e.Key))
		switch {
		case e.Piece > 0:
			fmt.Fprintf(&b, w.InPiece, e.Hand, e.Piece)
		case e.Hand > 0:
			fmt.Fprintf(&b, w.InHand, e.Hand)
		}
		b.WriteString(": ")
	}
	b.WriteString(e.What)
	return b.String()
}

// Errors are the problems of one file in order of position, or of one
// pattern in the order of its parts. Beyond twenty the last one says how many
// more there are.
type Errors []Error

// Error returns the problems, one a line.
func (es Errors) Error() string {
	lines := make([]string, len(es))
	for i, e := range es {
		lines[i] = e.Error()
	}
	return strings.Join(lines, "\n")
}

// Unwrap returns the problems one by one.
func (es Errors) Unwrap() []error {
	out := make([]error, len(es))
	for i, e := range es {
		out[i] = e
	}
	return out
}

// problems collects what is wrong. However many are added, it keeps only
// those that will be listed, so that a hostile file cannot fill the memory.
type problems struct {
	kept  []problem // in order of position, at most maxListed + 1
	total int
}

type problem struct {
	off int
	err Error
}

// add notes a problem at a byte offset. The text is only made if the problem
// will be listed.
func (p *problems) add(off int, err Error, what func() string) {
	p.total++
	full := len(p.kept) > maxListed
	if full && p.kept[maxListed].off <= off {
		return
	}
	err.What = what()
	at, _ := slices.BinarySearchFunc(p.kept, off+1, func(q problem, t int) int { return q.off - t })
	if full {
		p.kept = p.kept[:maxListed]
	}
	p.kept = slices.Insert(p.kept, at, problem{off, err})
}

// list returns nil if there are no problems, else Errors with positions as
// the function gives them.
func (p *problems) list(file string, position func(off int) (line, col int)) error {
	if p.total == 0 {
		return nil
	}
	out := make(Errors, len(p.kept))
	for i, q := range p.kept {
		out[i] = q.err
		out[i].File = file
		out[i].Line, out[i].Col = position(q.off)
	}
	if len(out) > maxListed {
		last := &out[maxListed]
		more := p.total - maxListed
		*last = Error{File: file, Line: last.Line, Col: last.Col,
			What: fmt.Sprintf(words.Said.Preset.More, more)}
	}
	return out
}

// maxShown is how many characters of something found are shown.
const maxShown = 40

// short cuts a long text for showing.
func short(s string) string {
	n := 0
	for i := range s {
		if n == maxShown {
			return s[:i] + words.Said.Preset.Rest
		}
		n++
	}
	return s
}

// quoted shows a text on one line whatever it holds.
func quoted(s string) string { return strconv.Quote(short(s)) }
