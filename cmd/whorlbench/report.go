package main

import (
	"fmt"
	"io"
	"strconv"

	"whorlbench/cmd/whorlbench/report"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/words"
)

// writeReport tells a person what a pattern is made of, hand by hand, how its
// pieces join and when it closes.
func writeReport(w io.Writer, r report.Report, tempo float64, colour bool) {
	fmt.Fprintf(w, "%s: %s\n", r.File, oneLine(r.Title))
	for _, h := range r.Hands {
		fmt.Fprintf(w, say.Check.Hand+"\n", h.Side)
		writePieces(w, h)
		writeSeams(w, h, colour)
		fmt.Fprintf(w, "  %s\n", laneCloses(h, tempo))
		writeWhole(w, h)
		writeTether(w, h, tempo)
	}
	fmt.Fprintln(w, wholeCloses(r, tempo))
	writeCalled(w, r)
	writeDuet(w, r.Duet)
	for _, f := range r.Faults {
		fmt.Fprintf(w, "%s\n", paint(fmt.Sprintf(say.Check.Fault, f.Level, f.Where, f.What), levelColour[f.Level], colour))
	}
}

func laneCloses(h report.Hand, tempo float64) string {
	t := words.Said
	c := h.Track.Closing()
	if !c.Closes() {
		return fmt.Sprintf(say.Check.LaneNever, words.Metres(c.HandGap))
	}
	return fmt.Sprintf(say.Check.LaneCloses, t.CountRounds(c.Rounds), t.CountBeats(c.Beats), t.Seconds(c.Beats, tempo))
}

func wholeCloses(r report.Report, tempo float64) string {
	t := words.Said
	if !r.Closes {
		return say.Check.WholeNever
	}
	return fmt.Sprintf(say.Check.WholeCloses, t.CountBeats(r.Period), t.Seconds(r.Period, tempo))
}

func writePieces(w io.Writer, h report.Hand) {
	t := table{right: []bool{0: true, 2: true, 3: true, 4: false}}
	t.add(say.Check.Head[:]...)
	for i, p := range h.Pieces {
		t.add(
			strconv.Itoa(i+1),
			words.Said.Name(p.Figure),
			ratio(p.Figure),
			words.Said.Fraction(h.Track.Legs[i].Piece.Length()),
			petals(p.Figure),
		)
	}
	t.write(w, nil)
}

func ratio(f naming.Figure) string {
	if !f.HasRatio {
		return say.Check.None
	}
	return words.Said.Quotient(f.Ratio)
}

// petals says how many there are and where they stand.
func petals(f naming.Figure) string {
	if !f.HasPetals {
		return say.Check.None
	}
	s := words.Said.Fraction(f.Petals)
	if mode := words.Said.Mode(f.Mode); mode != "" {
		s = fmt.Sprintf(say.Check.PetalsMode, s, mode)
	}
	if f.HasTip {
		s = fmt.Sprintf(say.Check.PetalsTip, s, words.Number(float64(f.FirstTip), 1))
	}
	return s
}

func writeSeams(w io.Writer, h report.Hand, colour bool) {
	t := table{right: []bool{0: false, 1: false, 2: true, 3: true, 4: true, 5: false}}
	t.add(say.Check.SeamHead[:]...)
	colours := []string{""}
	for i, s := range h.Seams {
		turn := say.Check.None
		if s.Turn != nil {
			turn = fmt.Sprintf(say.Check.Degrees, words.Number(float64(*s.Turn), 1))
		}
		t.add(
			fmt.Sprintf(say.Check.From, s.After, (i+1)%len(h.Seams)+1),
			s.Verdict,
			turn,
			words.Number(float64(s.JumpAlong), 3),
			words.Number(float64(s.JumpAcross), 3),
			turns(s),
		)
		colours = append(colours, verdictColour[s.Is])
	}
	if !colour {
		colours = nil
	}
	t.write(w, colours)
}

// turns says in words what turns round at a seam.
func turns(s report.Seam) string {
	c := &say.Check
	out := ""
	for _, t := range []struct {
		is   bool
		said string
	}{{s.HandTurnsBack, c.HandBack}, {s.ArmReverses, c.ArmReverses}, {s.PropReverses, c.PropReverses}} {
		if !t.is {
			continue
		}
		if out != "" {
			out += ", "
		}
		out += t.said
	}
	return out
}

// Colours of a terminal, by their SGR numbers.
const (
	red    = "31"
	yellow = "33"
	green  = "32"
)

var (
	verdictColour = map[seam.Verdict]string{seam.Gap: red, seam.Stop: red, seam.Kink: yellow, seam.Smooth: green}
	levelColour   = map[string]string{"gap": red, "stop": red, "kink": yellow, "slack": yellow}
)

func paint(s, sgr string, colour bool) string {
	if !colour || sgr == "" {
		return s
	}
	return "\x1b[" + sgr + "m" + s + "\x1b[0m"
}
