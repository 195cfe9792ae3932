package german

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/texts"
)

// alike are texts that are the same in both languages: units, keys, letters,
// words of the trade, and words that both have.
var alike = []string{
	"%s m", "%s cm", "%s s", "%s cm %s %s",
	"C, J", "B, F, R", "Alt ← →", "S, L", "+, R, L", "P", "M", "N", "I", "G", "K", "Tab", "L", "R", "C", "S",
	"whorlbench serve: %v", "whorlbench serve: --public-url: %v", "whorlbench link: --public-url: %v", "whorlbench render: %v", "whorlbench render: --public-url: %v",
	"%s. A: %s B: %s", "%s. A: %s. B: %s.", "A", "B", "D", "O", "X", "T", "H", "H, − +, T, B", "Escape",
	"Props: %s, %s",
	"Whorlbench", "CAP", "Diamond", "Hybrid", "Arm, Prop", "Arm", "Prop", "Props", "Tempo", "Radius", "Name", "Hand", "Link", "Diamonds",
}

// coded are texts that are read by the program, not by a person.
var coded = regexp.MustCompile(`\.(Value|Stdin|Stdout|Render\.Whole|Parts\[\d+\]\.Of|Rests\[\d+\]\.Of)$|Terms\[\d+\]\.(Key|Shows|Related\[\d+\])$`)

// wordy is a text's words, without the places for values.
func wordy(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) {
			return r
		}
		return -1
	}, place.ReplaceAllString(text, ""))
}

// place is where a value goes: as package fmt has it, or in braces for a script.
var place = regexp.MustCompile(`%[-+# 0]*\d*(?:\.\d+)?[vTtbcdoOqxXUeEfFgGsp%]|\{\w+\}`)

// lists are as long as each language has them.
var lists = regexp.MustCompile(`\.(Others|Endings)(\[\d+\])?$`)

// keys are the keys in a text that bear a letter or a number.
func keys(text string) []string {
	words := strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	return slices.DeleteFunc(words, func(w string) bool { return len(w) > 1 || strings.ToUpper(w) != w })
}

// pair walks two tables side by side, English first.
func pair(name string, english, german any, found func(path, english, german string)) (missing []string) {
	of := map[string]string{}
	texts.Each(name, german, func(path, text string) { of[path] = text })
	texts.Each(name, english, func(path, text string) {
		in, ok := of[path]
		if lists.MatchString(path) {
			return
		}
		if !ok || in == "" && text != "" {
			missing = append(missing, path)
			return
		}
		found(path, text, in)
	})
	return missing
}

// tables are all that is said, by language.
var tables = []struct {
	name            string
	english, german any
}{
	{"Table", words.English, German},
	{"Command", words.EnglishCommand, Command},
	{"Glossary", words.EnglishGlossary, Glossary},
}

// TestGermanIsComplete: every English text has a German one, which has the same
// places for values in the same order and is another text, but for what both
// languages share.
func TestGermanIsComplete(t *testing.T) {
	for _, x := range tables {
		missing := pair(x.name, x.english, x.german, func(path, english, german string) {
			if got, want := place.FindAllString(german, -1), place.FindAllString(english, -1); !slices.Equal(got, want) {
				t.Errorf("%s = %q has the places %v, want %v as in %q", path, german, got, want, english)
			}
			switch same := german == english; {
			case coded.MatchString(path):
				if !same {
					t.Errorf("%s = %q, want %q, which is read by the program", path, german, english)
				}
			case same && wordy(english) != "" && !slices.Contains(alike, english):
				t.Errorf("%s = %q in both languages", path, german)
			}
			if strings.HasSuffix(path, ".Keys") && !slices.Equal(keys(german), keys(english)) {
				t.Errorf("%s = %q, want the keys of %q", path, german, english)
			}
			if strings.Contains(german, "!") || strings.Contains(german, "bitte") || strings.Contains(german, "'") {
				t.Errorf("%s = %q, want no call, no plea and no typewriter's apostrophe", path, german)
			}
		})
		for _, path := range missing {
			t.Errorf("%s has no German text", path)
		}
	}
}
