package words

import (
	"fmt"

	"whorlbench/engine/frac"
)

// Stage holds the words of what hands do on the drawn pattern itself.
type Stage struct {
	Fit, CutHere               Named
	End, Begin                 string // the handles at the ends of the piece in hand
	EndReads                   string // %s, %s: turns, beats
	Centre, Radius, Tilt, Prop string // %s: numbers, as they read beside the finger
}

var englishStage = Stage{
	Fit:      Named{"Fit the whole pattern in view", "Fit"},
	CutHere:  Named{"Cut here, where the head stands", "Cut here"},
	End:      "End of the piece in hand, along its curve",
	Begin:    "Beginning of the piece in hand: the end of the one before, along its curve",
	EndReads: "%s · %s",
	Centre:   "centre %s, %s m",
	Radius:   "radius %s m",
	Tilt:     "tilt %s°",
	Prop:     "prop at %s°",
}

// EndOfPiece writes how far a piece goes: the turns of its arm, or of its
// prop where the arm stays, and its beats.
func (t *Table) EndOfPiece(arm, prop, beats frac.Frac) string {
	turns := arm
	if turns.IsZero() {
		turns = prop
	}
	return fmt.Sprintf(t.Stage.EndReads, t.ArmTurns(turns), t.Beats(beats))
}

// StagePlace writes a place of the plane, in metres.
func (t *Table) StagePlace(x, y float64) string {
	return fmt.Sprintf(t.Stage.Centre, number(x, 3), number(y, 3))
}

// StageNumber writes a number into one of the stage's texts.
func (t *Table) StageNumber(format string, x float64) string {
	return fmt.Sprintf(format, number(x, 3))
}
