package main

import (
	"io"

	"whorlbench/cmd/whorlbench/report"
	"whorlbench/sandbox/words"
)

// writeTether tells what a real tether would do; check's caution stands below
// it.
func writeTether(w io.Writer, h report.Hand, tempo float64) {
	t := table{right: []bool{0: false, 1: false}}
	for _, l := range words.Said.TetherLines(h.Track, &h.Tether.Result, tempo) {
		t.add(l.Name, l.Text)
	}
	t.write(w, nil)
}
