package main

import (
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/sandbox/words"
)

// writeReport tells what a pattern is made of, hand by hand.
func writeReport(w io.Writer, name string, p engine.Pattern) {
	fmt.Fprintf(w, "%s: %s\n", name, oneLine(p.Title))
	var tracks []*engine.Track
	for _, lane := range p.Lanes {
		track := engine.NewTrack(lane)
		tracks = append(tracks, track)
		fmt.Fprintf(w, say.Check.Hand+"\n", words.English.Side(lane.Side))
		writePieces(w, track)
		fmt.Fprintf(w, "  %s\n", laneCloses(track, p.Tempo))
	}
	fmt.Fprintln(w, wholeCloses(tracks, p.Tempo))
}

func laneCloses(track *engine.Track, tempo float64) string {
	t := &words.English
	c := track.Closing()
	if !c.Closes() {
		return fmt.Sprintf(say.Check.LaneNever, words.Metres(c.HandGap))
	}
	return fmt.Sprintf(say.Check.LaneCloses, t.CountRounds(c.Rounds), t.CountBeats(c.Beats), t.Seconds(c.Beats, tempo))
}

func wholeCloses(tracks []*engine.Track, tempo float64) string {
	t := &words.English
	beats, ok := engine.ClosingTime(tracks...)
	if !ok {
		return say.Check.WholeNever
	}
	return fmt.Sprintf(say.Check.WholeCloses, t.CountBeats(beats), t.Seconds(beats, tempo))
}

// row is one line of the table: piece, pattern, ratio, beats, petals.
type row [5]string

// rightAligned says which columns hold numbers.
var rightAligned = [len(row{})]bool{0: true, 2: true, 3: true}

func writePieces(w io.Writer, track *engine.Track) {
	rows := []row{row(say.Check.Head)}
	for i := range track.Legs {
		leg := &track.Legs[i]
		f := naming.Of(leg)
		rows = append(rows, row{
			strconv.Itoa(i + 1),
			words.English.Name(f),
			ratio(f),
			words.English.Fraction(leg.Piece.Length()),
			petals(f),
		})
	}
	writeTable(w, rows)
}

func ratio(f naming.Figure) string {
	if !f.HasRatio {
		return say.Check.None
	}
	return words.English.Quotient(f.Ratio)
}

// petals says how many there are and where they stand.
func petals(f naming.Figure) string {
	if !f.HasPetals {
		return say.Check.None
	}
	s := words.English.Fraction(f.Petals)
	if mode := words.English.Mode(f.Mode); mode != "" {
		s = fmt.Sprintf(say.Check.PetalsMode, s, mode)
	}
	if f.HasTip {
		s = fmt.Sprintf(say.Check.PetalsTip, s, words.Number(float64(f.FirstTip), 1))
	}
	return s
}

func writeTable(w io.Writer, rows []row) {
	var widths [len(row{})]int
	for _, r := range rows {
		for i, cell := range r {
			widths[i] = max(widths[i], utf8.RuneCountInString(cell))
		}
	}
	for _, r := range rows {
		line := "  "
		for i, cell := range r {
			space := strings.Repeat(" ", widths[i]-utf8.RuneCountInString(cell))
			if rightAligned[i] {
				cell = space + cell
			} else {
				cell += space
			}
			line += cell + "  "
		}
		fmt.Fprintln(w, strings.TrimRight(line, " "))
	}
}
