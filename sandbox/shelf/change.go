package shelf

import (
	"errors"
	"hash/crc32"
	"strings"
)

// change is what makes one text of another: whole lines in the middle are
// replaced. It can be gone through both ways.
type change struct {
	head, tail    int // bytes at the beginning and end that stay
	before, after string
	sums          [2]uint32 // of the texts before and after
	large         bool      // more than any trail has room for, so it is not here
}

// between returns the change from one text to another.
func between(a, b string) change {
	head := 0
	for head < min(len(a), len(b)) && a[head] == b[head] {
		head++
	}
	head = strings.LastIndexByte(a[:head], '\n') + 1 // lines, so that no character is torn
	most := min(len(a), len(b)) - head
	tail := 0
	for tail < most && a[len(a)-1-tail] == b[len(b)-1-tail] {
		tail++
	}
	if i := strings.IndexByte(a[len(a)-tail:], '\n'); i >= 0 {
		tail -= i + 1 // what follows the line's end
	} else {
		tail = 0
	}
	before, after := a[head:len(a)-tail], b[head:len(b)-tail]
	if len(before)+len(after) > MaxTrail {
		return change{large: true}
	}
	// Copies, so that a small change does not hold two large texts.
	return change{head: head, tail: tail, before: strings.Clone(before), after: strings.Clone(after), sums: [2]uint32{sum(a), sum(b)}}
}

// step is one direction of a change as it is kept.
type step struct {
	Head  int    `json:"head"`
	Tail  int    `json:"tail"`
	Put   string `json:"put"`
	Sum   uint32 `json:"sum"`          // of the text that it makes
	By    string `json:"by"`           // the sort of edit between the two
	Of    string `json:"of,omitempty"` // what it changed
	Lane  int    `json:"lane,omitempty"`
	Piece int    `json:"piece,omitempty"` // in hand, in the state that it makes
}

func (c change) on() step   { return step{Head: c.head, Tail: c.tail, Put: c.after, Sum: c.sums[1]} }
func (c change) back() step { return step{Head: c.head, Tail: c.tail, Put: c.before, Sum: c.sums[0]} }

var errBroken = errors.New("a step does not fit its text")

// from returns the text that a step makes.
func (s step) from(text string) (string, error) {
	if s.Head < 0 || s.Tail < 0 || s.Head > len(text) || s.Tail > len(text)-s.Head {
		return "", errBroken
	}
	made := text[:s.Head] + s.Put + text[len(text)-s.Tail:]
	if sum(made) != s.Sum {
		return "", errBroken
	}
	return made, nil
}

func sum(s string) uint32 { return crc32.ChecksumIEEE([]byte(s)) }
