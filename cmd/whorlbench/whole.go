package main

import (
	"fmt"
	"io"

	"whorlbench/cmd/whorlbench/report"
	"whorlbench/sandbox/words"
)

// writeWhole tells what each definition says of a hand's pattern.
func writeWhole(w io.Writer, h report.Hand) {
	t := table{right: []bool{false, false}}
	for _, d := range words.Said.Definitions(&h.Whole) {
		t.add(d.Name, d.Because)
	}
	t.write(w, nil)
}

// writeCalled tells what the whole pattern is called, and with two hands
// whether they do different patterns.
func writeCalled(w io.Writer, r report.Report) {
	fmt.Fprintln(w, r.Called())
	if _, _, ok := r.LeftRight(); ok {
		d := words.Said.HybridDefinition(r.Hybrid)
		fmt.Fprintf(w, "%s  %s\n", d.Name, d.Because)
	}
}
