package words

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"whorlbench/sandbox/words/texts"
)

// wordless are controls that show a drawing only, and a column of remarks that
// needs no head.
var wordless = []string{
	"English.Bench.Play.Short", "English.Bench.Pause.Short",
	"EnglishCommand.Check.SeamHead[5]",
}

// otherNames are the other names of a word, of which there may be none.
var otherNames = regexp.MustCompile(`^EnglishGlossary\.Terms\[\d+\]\.Others$`)

func TestTableIsComplete(t *testing.T) {
	n := 0
	holds := func(path, text string) {
		n++
		if text == "" && otherNames.MatchString(path) {
			return
		}
		if (text == "") != slices.Contains(wordless, path) {
			t.Errorf("%s = %q, want a text, but in %v", path, text, wordless)
		}
		if !utf8.ValidString(text) || strings.ContainsRune(text, utf8.RuneError) {
			t.Errorf("%s = %q, want UTF-8", path, text)
		}
		if strings.Contains(text, " \n") || strings.Contains(text, "\t") || strings.Contains(text, " .") && !strings.Contains(text, "...") {
			t.Errorf("%s = %q, want no stray blanks", path, text)
		}
	}
	texts.Each("English", English, holds)
	texts.Each("EnglishCommand", EnglishCommand, holds)
	texts.Each("EnglishGlossary", EnglishGlossary, holds)
	if n < 250 {
		t.Errorf("only %d texts found, want the whole table", n)
	}
}

// verb is a place for a value, as package fmt's documentation has it.
var verb = regexp.MustCompile(`%[-+# 0]*\d*(?:\.\d+)?[vTtbcdoOqxXUeEfFgGsp%]`)

// TestTableVerbs: no text holds a % that would be taken for a place.
func TestTableVerbs(t *testing.T) {
	holds := func(path, text string) {
		if rest := verb.ReplaceAllString(text, ""); strings.Contains(rest, "%") {
			t.Errorf("%s = %q has a %% that stands for nothing", path, text)
		}
	}
	texts.Each("English", English, holds)
	texts.Each("EnglishCommand", EnglishCommand, holds)
	texts.Each("EnglishGlossary", EnglishGlossary, holds)
}

// written fails on a text in which fmt has found a value too many or too few.
func written(t *testing.T, what, text string) {
	t.Helper()
	if text == "" || strings.Contains(text, "%") {
		t.Errorf("%s = %q, want every place filled and nothing left over", what, text)
	}
}

func TestLabelsAreWhole(t *testing.T) {
	// Shown as they stand, or with one value, which the source's comment names.
	b := &English.Bench
	for text, places := range map[string]int{
		b.Less: 1, b.More: 1, b.Type: 1, b.LaneOf: 1, b.PieceOf: 4, b.PieceLine: 3, b.Ratio: 1, b.ManyBeats: 1,
		b.BeatOf: 2, b.ClosesOne: 2, b.ClosesMany: 3, b.Never: 1, b.Together: 2,
		b.NeverTogether: 2, b.CutDone: 2, b.Rejoined: 1, b.Moved: 1, b.Added: 1, b.Unwritable: 1, b.AskNumber: 3,
		b.NotNumber: 1, b.OutOfRange: 3, b.Opened: 1,
		b.OneBeat: 0, b.Playhead: 0, b.FirstHint: 0, b.Deleted: 0, b.Undone: 1, b.Redid: 1, b.RoundOf: 2, b.Turns: 1, b.NoCut: 0, b.NoRejoin: 0,
		b.LastPiece: 0, b.TempoCaution: 0, b.AllSmooth: 0, b.GapAfter: 2, b.PropGapAfter: 2, b.StopAfter: 1, b.KinkAfter: 2, b.MirrorOn: 0, b.MirrorOff: 0,
	} {
		if got := len(verb.FindAllString(text, -1)); got != places {
			t.Errorf("%q has %d places, want %d", text, got, places)
		}
	}
	d := English.Dials
	for _, x := range []Dial{d.Arm, d.Prop, d.Cycles, d.Length, d.Radius, d.Tilt, d.CentreX, d.CentreY, d.ArmStart, d.PropStart, d.From, d.To, d.Tether, d.Tempo, d.Turn, d.Scale} {
		if got := len(verb.FindAllString(x.Reads, -1)); got != 1 {
			t.Errorf("%q has %d places, want 1", x.Reads, got)
		}
	}
}
