package words

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Mention is a place in a text, in bytes, where a word of the glossary stands.
type Mention struct {
	From, To int
	Key      string
}

// Term returns the word that is kept under a key.
func (g *Glossary) Term(key string) (term Term, ok bool) {
	i := slices.IndexFunc(g.Terms, func(t Term) bool { return t.Key == key })
	if i < 0 {
		return Term{}, false
	}
	return g.Terms[i], true
}

// Find returns where words of the glossary, or their other names, stand in a
// text, from left to right; of two that begin at one place, the longer. Case
// counts only for a name that begins with a capital, such as CAP.
func (g *Glossary) Find(text string) []Mention {
	names := g.names()
	var found []Mention
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		if !inWord(r) {
			i += size
			continue
		}
		if m, ok := g.longest(names, text, i); ok {
			found = append(found, m)
			i = m.To
		}
		for i < len(text) { // on to the end of this word
			r, size = utf8.DecodeRuneInString(text[i:])
			if !inWord(r) {
				break
			}
			i += size
		}
	}
	return found
}

// inWord reports whether a letter or digit is part of a word. A hyphen is not:
// there are petals in two-petal.
func inWord(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// named is a name and what it stands for.
type named struct{ name, key string }

// names lists all names, longer ones first.
func (g *Glossary) names() []named {
	var names []named
	for _, t := range g.Terms {
		names = append(names, named{t.Word, t.Key})
		for _, o := range t.Others {
			names = append(names, named{o, t.Key})
		}
	}
	slices.SortStableFunc(names, func(a, b named) int { return len(b.name) - len(a.name) })
	return names
}

func (g *Glossary) longest(names []named, text string, at int) (m Mention, ok bool) {
	endings := slices.Concat(g.Endings, []string{""})
	for _, n := range names {
		if !begins(text[at:], n.name) {
			continue
		}
		end := at + len(n.name)
		for _, e := range endings {
			if strings.HasPrefix(text[end:], e) && wordEnds(text[end+len(e):]) {
				return Mention{at, end + len(e), n.key}, true
			}
		}
	}
	return Mention{}, false
}

// wordEnds reports whether no word goes on at the beginning of rest.
func wordEnds(rest string) bool {
	r, _ := utf8.DecodeRuneInString(rest)
	return rest == "" || !inWord(r)
}

// begins reports whether a text begins with a name, whatever its case unless the
// name begins with a capital. A hyphen stands for a blank: box-mode is box mode.
func begins(text, name string) bool {
	if len(text) < len(name) {
		return false
	}
	text, plain := blanks.Replace(text[:len(name)]), blanks.Replace(name)
	if r, _ := utf8.DecodeRuneInString(name); unicode.IsUpper(r) {
		return text == plain
	}
	return strings.EqualFold(text, plain)
}

var blanks = strings.NewReplacer("-", " ")
