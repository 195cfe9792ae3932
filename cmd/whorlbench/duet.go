package main

import (
	"fmt"
	"io"

	"whorlbench/cmd/whorlbench/report"
	"whorlbench/engine/duet"
	"whorlbench/sandbox/words"
)

// mostSpans is how many spans of a list a person is shown.
const mostSpans = 24

// writeDuet tells how two hands go together: direction and timing span by
// span, whether the arms wrap, and how near things come.
func writeDuet(w io.Writer, d *report.Duet) {
	if d == nil {
		return
	}
	t := words.Said
	fmt.Fprintln(w, t.Duet.Title)
	for _, list := range []struct {
		of    string
		spans []duet.Span
	}{{t.Duet.Props, d.Reading.Props}, {t.Duet.Hands, d.Reading.Hands}} {
		fmt.Fprintf(w, "  %s\n", t.SpansSaid(list.of, list.spans))
		writeSpans(w, list.spans)
	}
	fmt.Fprintf(w, "  %s\n", t.TangleSaid(&d.Reading))
	for _, line := range append(t.NearestSaid(&d.Reading), t.DuetCautions(&d.Reading)...) {
		fmt.Fprintf(w, "  %s\n", line)
	}
}

func writeSpans(w io.Writer, spans []duet.Span) {
	say := &words.Said.Duet
	t := table{right: []bool{false, false, false, false}}
	t.add(say.SpansHead[:]...)
	for _, s := range spans[:min(len(spans), mostSpans)] {
		apart := say.NoSpan
		if s.Timing != duet.NoTiming {
			apart = fmt.Sprintf(say.DegreesFromTo, words.Number(float64(s.DeltaFrom), 1), words.Number(float64(s.DeltaTo), 1))
		}
		t.add(fmt.Sprintf(say.SpanBeats, words.Number(s.From, 3), words.Number(s.To, 3)),
			words.Said.Direction(s.Direction), words.Said.Timing(s.Timing), apart)
	}
	t.write(w, nil)
	if more := len(spans) - mostSpans; more > 0 {
		fmt.Fprintf(w, "  "+say.MoreSpans+"\n", more)
	}
}
