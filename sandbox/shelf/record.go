package shelf

import (
	"bytes"
	"encoding/json"
	"errors"
	"strings"
)

const (
	// kind is the version of a record.
	kind = 1
	// MaxSteps is how many edits are kept on each side of the present.
	MaxSteps = 50
	// MaxTrail (bytes) bounds all edits that are kept of one work.
	MaxTrail = 64 << 10
)

// header is the first line of a record. The work's file and the trail follow.
type header struct {
	Kind     int    `json:"kind"`
	Title    string `json:"title"`
	Stamp    string `json:"stamp"`  // changes with every writing, and says by which tab
	Edited   int64  `json:"edited"` // ms since 1970
	Work     int    `json:"work"`   // bytes
	WorkSum  uint32 `json:"workSum"`
	Trail    int    `json:"trail"` // bytes
	TrailSum uint32 `json:"trailSum"`
}

// record is one work as it is kept.
type record struct {
	header
	work  string
	trail string // JSON
}

var (
	errDamaged = errors.New("damaged")
	errNewer   = errors.New("newer")
)

// String returns the record as it is stored.
func (r record) String() string {
	r.Kind = kind
	r.Work, r.WorkSum = len(r.work), sum(r.work)
	r.Trail, r.TrailSum = len(r.trail), sum(r.trail)
	return marshal(r.header) + "\n" + r.work + r.trail
}

// parse reads a record. With errDamaged the work may still be whole: then it is
// there, and only the trail is missing.
func parse(text string) (record, error) {
	line, rest, _ := strings.Cut(text, "\n")
	var r record
	if json.Unmarshal([]byte(line), &r.header) != nil || r.Kind < 1 {
		return record{}, errDamaged
	}
	if r.Kind > kind {
		return record{}, errNewer
	}
	if r.Work < 0 || r.Work > len(rest) || sum(rest[:r.Work]) != r.WorkSum {
		return record{header: r.header}, errDamaged
	}
	r.work = rest[:r.Work]
	if r.Trail != len(rest)-r.Work || sum(rest[r.Work:]) != r.TrailSum {
		return r, errDamaged
	}
	r.trail = rest[r.Work:]
	return r, nil
}

// marshal writes JSON on one line. What is written here always can be.
func marshal(v any) string {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false) // texts stay as short as they are
	if err := e.Encode(v); err != nil {
		return ""
	}
	return strings.TrimSuffix(b.String(), "\n")
}
