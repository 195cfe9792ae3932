// Package host is the browser as the bench sees it: storage, dialogs, the
// live region, the accessible twins and the pointers. Page talks to a real
// page; Memory stands in for it in tests.
package host

import "whorlbench/sandbox/bench"

// Memory is a host without a browser: it remembers what it was asked.
type Memory struct {
	Said    []string
	Asked   []bench.Question
	Offered []bench.Choice
	Sheets  []bench.Sheet
	Changes int
	Settles int
	Pairs   int // comparisons begun and not left
	Takes   int
	Sounded float64 // seconds, that Heard returns
	Counts  []bench.Count
}

// Announce remembers a text.
func (m *Memory) Announce(text string) { m.Said = append(m.Said, text) }

// Ask remembers a question.
func (m *Memory) Ask(q bench.Question) { m.Asked = append(m.Asked, q) }

// Choose remembers a list.
func (m *Memory) Choose(c bench.Choice) { m.Offered = append(m.Offered, c) }

// ShowSheet remembers what was to be read.
func (m *Memory) ShowSheet(s bench.Sheet) { m.Sheets = append(m.Sheets, s) }

// SheetOpen reports whether a sheet was the last to be shown: nobody closes it.
func (m *Memory) SheetOpen(id string) bool {
	n := len(m.Sheets)
	return n > 0 && m.Sheets[n-1].ID == id
}

// LeaveBig does nothing: there is no page to show.
func (m *Memory) LeaveBig() {}

// Comparing counts comparisons.
func (m *Memory) Comparing(on bool) {
	if m.Pairs--; on {
		m.Pairs += 2
	}
}

// TakeCompared counts what was asked for.
func (m *Memory) TakeCompared() { m.Takes++ }

// Changed counts complete edits.
func (m *Memory) Changed() { m.Changes++ }

// Settled counts changes of settings.
func (m *Memory) Settled() { m.Settles++ }

// Heard returns what was put into Sounded.
func (m *Memory) Heard() float64 { return m.Sounded }

// Count remembers where practice was.
func (m *Memory) Count(c bench.Count) { m.Counts = append(m.Counts, c) }
