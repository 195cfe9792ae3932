package report

import (
	"fmt"
	"math"

	"whorlbench/engine"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/words"
)

// Fault is something that a person should know before spinning the pattern.
type Fault struct {
	Where string `json:"where"`
	Level string `json:"level"`
	What  string `json:"what"`
}

// Levels are the kinds of fault, worst first, as --strict names them.
var Levels = []string{"gap", "stop", "kink", "slack", "tangle"}

// levelOf ties a seam's verdict to a level.
var levelOf = map[seam.Verdict]string{seam.Gap: "gap", seam.Stop: "stop", seam.Kink: "kink"}

func (r *Report) findFaults() {
	w := words.Said
	for _, h := range r.Hands {
		for _, s := range h.Seams {
			level, bad := levelOf[s.Is]
			if !bad {
				continue
			}
			r.Faults = append(r.Faults, Fault{
				Where: fmt.Sprintf(w.Report.AfterPiece, h.Side, s.After),
				Level: level,
				What:  what(s),
			})
		}
	}
}

func what(s Seam) string {
	w := &words.Said.Report
	switch s.Is {
	case seam.Gap:
		switch {
		case float64(s.HandGap) > engine.TolGap:
			return fmt.Sprintf(w.HandGap, words.Decimals(Fixed(float64(s.HandGap), 3)))
		case float64(s.PropGap) > engine.TolPropGap:
			return fmt.Sprintf(w.PropGap, words.Decimals(Fixed(float64(s.PropGap), 3)))
		}
		return fmt.Sprintf(w.HeadGap, words.Decimals(Fixed(float64(s.HeadGap), 3)))
	case seam.Stop:
		return w.Stop
	}
	return fmt.Sprintf(w.Kink, words.Decimals(Fixed(math.Abs(float64(s.JumpAcross)), 3)))
}

// AtLeast reports whether the report has a fault of a level or a worse one.
func (r *Report) AtLeast(level string) bool {
	for _, f := range r.Faults {
		for _, l := range Levels {
			if f.Level == l {
				return true
			}
			if l == level {
				break
			}
		}
	}
	return false
}
