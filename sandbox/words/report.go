package words

import "whorlbench/engine/seam"

// Report holds the words for how pieces join.
type Report struct {
	Gap, Stops, Kinks, Smooth string // verdicts
	AfterPiece                string // %s: left or right, %d: piece
	HandGap, PropGap, HeadGap string // %s: metres or degrees
	Stop                      string
	Kink                      string // %s: m/s
}

var englishReport = Report{
	Gap:    "gap",
	Stops:  "stop",
	Kinks:  "kink",
	Smooth: "smooth",

	AfterPiece: "%s, after piece %d",
	HandGap:    "the hand jumps %s m",
	PropGap:    "the prop jumps %s°",
	HeadGap:    "the head jumps %s m",
	Stop:       "the prop would have to stop and turn back, which nothing at the end of a tether does",
	Kink:       "the head's velocity jumps %s m/s across the tether, which only pulls along itself",
}

// Verdict returns the word for what a seam is.
func (t *Table) Verdict(v seam.Verdict) string {
	w := &t.Report
	return [...]string{w.Gap, w.Stops, w.Kinks, w.Smooth}[v]
}
