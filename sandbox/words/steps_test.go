package words_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

// library tells every built-in pattern, as an audience sees it.
func library(t *testing.T) string {
	var out strings.Builder
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		in := words.English.StepByStep(p, false)
		fmt.Fprintf(&out, "[%s]\n%s\n", e.ID, in.Text())
	}
	return out.String()
}

// TestStepsOfTheLibrary: the steps of every built-in pattern are those of a
// text that was read line by line beside the patterns' files and drawings.
func TestStepsOfTheLibrary(t *testing.T) {
	read, err := os.ReadFile("testdata/steps.txt")
	if err != nil {
		t.Fatal(err)
	}
	got, want := strings.Split(library(t), "\n"), strings.Split(string(read), "\n")
	for i := range max(len(got), len(want)) {
		if i >= len(got) || i >= len(want) || got[i] != want[i] {
			t.Fatalf("line %d on:\n%s\nwant\n%s", i+1, strings.Join(got[min(i, len(got)):min(i+4, len(got))], "\n"),
				strings.Join(want[min(i, len(want)):min(i+4, len(want))], "\n"))
		}
	}
}

// TestStepsOfPieces: what the library has none of, each read off a drawing.
func TestStepsOfPieces(t *testing.T) {
	for _, test := range []struct {
		lane, start string
		steps       []string
		end         string
	}{
		{"90 90: 1 1 1/4 beats=1/2; 1 1 1/4 beats=1/2; 1 1 1/4 beats=1/2; 1 1 1/4 beats=1/2", "", []string{
			"1. A quarter of a circle anticlockwise, from the top past the upper left to the left; the prop makes a quarter turn anticlockwise, always pointing straight out from the middle; half a beat. Then go straight on.",
			"2. A quarter of a circle anticlockwise, from the left past the lower left to the bottom; the prop makes a quarter turn anticlockwise, as before, always pointing straight out from the middle; half a beat. Then go straight on.",
			"3. A quarter of a circle anticlockwise, from the bottom past the lower right to the right; the prop makes a quarter turn anticlockwise, as before, always pointing straight out from the middle; half a beat. Then go straight on.",
			"4. A quarter of a circle anticlockwise, from the right past the upper right to the top; the prop makes a quarter turn anticlockwise, as before, always pointing straight out from the middle; half a beat. Then go straight on.",
		}, ""},
		{"90 90: 1 -2 1; 1 -2 1; 1 -2 1", "", []string{
			"1. Once round the circle anticlockwise, from the top and back to it; the prop makes two turns clockwise; one beat. Do this three times. Then go straight on.",
		}, "Now hand and prop are back where they began, after three beats: begin again."},
		{"90 90: 1 1 1/2; -1 3 1/2; 1 1 1/2; -1 3 1/2", "", []string{
			"1. Half a circle anticlockwise, from the top down the left side to the bottom; the prop makes half a turn anticlockwise, always pointing straight out from the middle; one beat. Then turn the hand back while the prop points down.",
			"2. Half a circle clockwise, from the bottom up the left side to the top; the prop makes one and a half turns anticlockwise, as before; one beat. Then turn the hand back while the prop points up.",
			"Do all of that twice.",
		}, "Now hand and prop are back where they began, after four beats: begin again."},
		{"90 90: 1 1 1; 1 1 1; -1 3 1", "", []string{
			"1. Once round the circle anticlockwise, from the top and back to it; the prop makes one turn anticlockwise, always pointing straight out from the middle; one beat. Do this twice. Then turn the hand back while the prop points up.",
			"2. Once round the circle clockwise, from the top and back to it; the prop makes three turns anticlockwise, as before; one beat. Then turn the hand back while the prop points up.",
		}, ""},
		{"0 0: 1 0 1/2 line=0 r=0.3 both beats=3/2; 1 0 1/2 line=0 r=0.3", "Start with the hand at the right end of its straight line and the prop pointing right. The middle of that line is midway between your shoulders.", []string{
			"1. Straight across to the left for 60 cm, starting and ending softly; the prop does not turn and keeps pointing right; one and a half beats. Then turn the hand back while the prop points right.",
			"2. Straight across to the right for 60 cm; the prop does not turn and keeps pointing right; one beat. Then turn the hand back while the prop points right.",
		}, ""},
		{"90 0: 1 1 1 line=90 r=0.25; 0 1 1 point c=0,0.25; 0 -1 1/2 point c=0,0.25", "", []string{
			"1. Straight down for 50 cm and back again; the prop makes one turn anticlockwise; one beat. Then stop the hand and wait.",
			"2. The hand stays where it is; the prop makes one turn anticlockwise, as before; one beat. The hand still waits. There the prop would have to stop and turn back: a staff can, a poi cannot.",
			"3. The hand stays where it is; the prop makes half a turn clockwise; one beat. Then set off. There the prop would have to stop and turn back: a staff can, a poi cannot.",
		}, "Now the hand is back where it began, but the prop is not: go on until you have done two rounds, which is six beats."},
		{"0 0: 1 2 2 line=0 r=0.3", "", []string{
			"1. To and fro, setting out straight across to the left for 60 cm, twice; the prop makes four turns anticlockwise; one beat.",
		}, ""},
		{"0 90: -1 1 1 oval=0.6,0.3,0", "Start with the hand at the right of its ellipse and the prop pointing up.", []string{
			"1. Once round the circle clockwise, from the right and back to it, the circle squashed to an ellipse; the prop makes one turn anticlockwise; one beat.",
		}, ""},
		{"90 90: 1 5/4 2/5 c=0.1,-0.2", "Start with the hand at the top of its circle and the prop pointing up. The circle is 60 cm from its middle to its edge; its middle is 10 cm to the right of and 20 cm below the point midway between your shoulders.", []string{
			"1. An arc of 144° anticlockwise, from the top down the left side to the lower left; the prop makes half a turn anticlockwise; one beat. Then the hand would have to jump 114 cm, so this cannot be spun as it stands.",
		}, "The hand ends 114 cm from where it began, so it has to be brought back before you can begin again."},
	} {
		in := words.English.StepByStep(engine.Pattern{Tempo: 60, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{lane(test.lane)}}, false)
		h := in.Hands[0]
		if test.start != "" && h.Start != test.start {
			t.Errorf("%s: starts\n%s\nwant\n%s", test.lane, h.Start, test.start)
		}
		if !slices.Equal(h.Steps, test.steps) {
			t.Errorf("%s: steps\n%s\nwant\n%s", test.lane, strings.Join(h.Steps, "\n"), strings.Join(test.steps, "\n"))
		}
		if test.end != "" && h.Close != test.end {
			t.Errorf("%s: ends\n%s\nwant\n%s", test.lane, h.Close, test.end)
		}
	}
}

// TestManySteps: more than anyone reads are cut short, and it says so.
func TestManySteps(t *testing.T) {
	l := lane("90 90: 1 1 1")
	p := l.Pieces[0]
	for k := range int64(2 * words.MostSteps) {
		p.Beats = frac.Int(k + 2)
		l.Pieces = append(l.Pieces, p)
	}
	in := words.English.StepByStep(engine.Pattern{Tempo: 60, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}}, false)
	got := in.Hands[0].Steps
	if n := len(got); n != words.MostSteps+1 || got[n-1] != words.English.Steps.NotAll {
		t.Errorf("%d steps, the last %q, want %d and then %q", n, got[n-1], words.MostSteps, words.English.Steps.NotAll)
	}
}

// TestStepsInMirror: in a mirror left is right and clockwise anticlockwise, up
// stays up, what turns anticlockwise from above still does, and in the wheel plane nothing changes; the hands keep their names.
func TestStepsInMirror(t *testing.T) {
	l := lane("90 0: 1 1 1/2; -1 3 1/2")
	tell := func(plane engine.Plane) words.HandSteps {
		l.Plane = plane
		in := words.English.StepByStep(engine.Pattern{Tempo: 60, Performer: engine.DefaultPerformer(), Lanes: []engine.Lane{l}}, true)
		return in.Hands[0]
	}
	for plane, want := range []string{
		"1. Half a circle clockwise, from the top down the right side to the bottom; the prop makes half a turn clockwise, always at the same slant to the arm; one beat. Then turn the hand back while the prop points right.",
		"1. Half a circle backward over the top, from the top down the back side to the bottom; the prop makes half a turn backward over the top, always at the same slant to the arm; one beat. Then turn the hand back while the prop points back.",
		"1. Half a circle anticlockwise as seen from above, from the back past the right to the front; the prop makes half a turn anticlockwise as seen from above, always at the same slant to the arm; one beat. Then turn the hand back while the prop points right.",
	} {
		h := tell(engine.Plane(plane))
		if !strings.HasPrefix(h.Steps[0], strings.Split(want, " Then ")[0]) || !strings.Contains(h.Steps[0], strings.Split(want, " Then ")[1]) {
			t.Errorf("plane %d: %s\nwant\n%s", plane, h.Steps[0], want)
		}
		if !strings.HasPrefix(h.Head, "Right hand, ") {
			t.Errorf("plane %d: %q, want the right hand to stay the right one", plane, h.Head)
		}
	}
}

// TestStepsAreSentences: every line, seen either way, begins like a sentence and
// ends like one, with no place left open.
func TestStepsAreSentences(t *testing.T) {
	for _, e := range presets.Library() {
		p, _ := e.Pattern()
		for _, mirror := range []bool{false, true} {
			in := words.English.StepByStep(p, mirror)
			for _, line := range in.Lines() {
				if !strings.HasSuffix(line, ".") || strings.Contains(line, "%") || strings.ToUpper(line[:1]) != line[:1] || strings.Contains(line, "  ") {
					t.Errorf("%s: %q is no whole sentence", e.ID, line)
				}
			}
		}
	}
}
