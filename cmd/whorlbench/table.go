package main

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// table is rows of cells, each column as wide as its widest cell.
type table struct {
	right  []bool // columns that hold numbers
	rows   [][]string
	widths []int
}

func (t *table) add(cells ...string) {
	if t.widths == nil {
		t.widths = make([]int, len(cells))
	}
	for i, c := range cells {
		t.widths[i] = max(t.widths[i], utf8.RuneCountInString(c))
	}
	t.rows = append(t.rows, cells)
}

// write writes the table, a row in its colour if colours are given.
func (t *table) write(w io.Writer, colours []string) {
	for k, row := range t.rows {
		line := ""
		for i, cell := range row {
			space := strings.Repeat(" ", t.widths[i]-utf8.RuneCountInString(cell))
			if t.right[i] {
				cell = space + cell
			} else {
				cell += space
			}
			line += cell + "  "
		}
		line = strings.TrimRight(line, " ")
		if colours != nil {
			line = paint(line, colours[k], true)
		}
		fmt.Fprintf(w, "  %s\n", line)
	}
}
