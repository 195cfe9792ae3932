package words_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"whorlbench/sandbox/words"
)

func TestFind(t *testing.T) {
	for _, test := range []struct {
		text string
		want []string // what stands there, and its key
	}{
		{"A CAP of extension and two-petal in-spin flowers", []string{"CAP cap", "extension extension", "petal petal", "in-spin in-spin", "flowers flower"}},
		{"An S-cap; C-caps too. A sailor’s cap is none.", []string{"S-cap s-cap", "C-caps c-cap"}},
		{"Linear extension, not extensions alone", []string{"Linear extension linear-extension", "extensions extension"}},
		{"Antispin is not spin", []string{"Antispin antispin", "spin spin"}},
		{"armour, beats and petals’ ends", []string{"beats beat", "petals petal"}},
		{"Box mode and diamond mode; a diamond", []string{"Box mode box-mode", "diamond mode diamond-mode", "diamond diamond"}},
		{"box-mode four-petal antispin", []string{"box-mode box-mode", "petal petal", "antispin antispin"}},
		{"put together", nil},
		{"star flower", []string{"star flower star-flower"}},
		{"the triquetra’s tips", []string{"triquetra’s triquetra"}},
		{"stop the hand and go round", nil},
		{"ſmooth and K\xff, smooth", []string{"smooth smooth"}},
		{"", nil},
	} {
		var got []string
		for _, m := range words.EnglishGlossary.Find(test.text) {
			got = append(got, test.text[m.From:m.To]+" "+m.Key)
		}
		if !slices.Equal(got, test.want) {
			t.Errorf("Find(%q) = %q, want %q", test.text, got, test.want)
		}
	}
}

// TestGlossaryIsWhole: keys and names of one's own, sentences that are
// sentences, and no word that leads nowhere.
func TestGlossaryIsWhole(t *testing.T) {
	g := &words.EnglishGlossary
	names := map[string]string{}
	for i, x := range g.Terms {
		if got, ok := g.Term(x.Key); !ok || got.Word != x.Word {
			t.Errorf("key %q stands twice", x.Key)
		}
		for _, n := range append([]string{x.Word}, x.Others...) {
			if other, ok := names[strings.ToLower(n)]; ok {
				t.Errorf("%q names both %s and %s", n, other, x.Key)
			}
			names[strings.ToLower(n)] = x.Key
			if got := g.Find(n); len(got) != 1 || got[0] != (words.Mention{From: 0, To: strings.LastIndexAny(n, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ)") + 1, Key: x.Key}) {
				t.Errorf("Find(%q) = %v, want all of it, as %s", n, got, x.Key)
			}
		}
		if len(x.Says) < 1 || len(x.Says) > 4 {
			t.Errorf("%s: %d sentences, want 1 to 4", x.Key, len(x.Says))
		}
		for _, s := range x.Says {
			if !strings.HasSuffix(s, ".") || utf8.RuneCountInString(s) > 240 || strings.Contains(s, "!") || strings.ToUpper(s[:1]) != s[:1] {
				t.Errorf("%s: %q, want a sentence of at most 240 characters", x.Key, s)
			}
		}
		if len(x.Related) == 0 {
			t.Errorf("%s has nothing related", x.Key)
		}
		for _, r := range x.Related {
			if _, ok := g.Term(r); !ok || r == x.Key || slices.Index(x.Related, r) != slices.Index(g.Terms[i].Related, r) {
				t.Errorf("%s is related to %q, want another word of the glossary", x.Key, r)
			}
		}
	}
	if _, ok := g.Term("none such"); ok {
		t.Error("a word that is not there is found")
	}
	// Where people differ about a word, every use is told.
	for key, least := range map[string]int{"cap": 3, "isolation": 3, "hybrid": 3, "fountain": 2, "triquetra": 2} {
		if x, _ := g.Term(key); len(x.Says) < least {
			t.Errorf("%s: %d sentences, want the %d uses", key, len(x.Says), least)
		}
	}
	for _, s := range []string{fmt.Sprintf(g.Others, "x"), fmt.Sprintf(g.Shows, "x")} {
		if strings.Contains(s, "%!") {
			t.Errorf("%q, want one place", s)
		}
	}
}
