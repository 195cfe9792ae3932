package bundle

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"

	"whorlbench/sandbox/words"
)

// Language is a language that the page can be had in.
type Language struct {
	Lang    string // BCP 47
	Endonym string // what it is called in itself
	Page    string // address of its page
}

// languages lists what a build has, that of index.html first.
func languages(o Options) []Language {
	list := []Language{{o.Words.Lang, o.Words.Endonym, "./"}}
	for _, t := range o.More {
		list = append(list, Language{t.Lang, t.Endonym, pageName(t.Lang)})
	}
	return list
}

func pageName(lang string) string { return lang + ".html" }

// pageOf returns what the page of a language is filled with, as far as the
// language tells.
func pageOf(t words.Table) Page {
	if t.Lang == words.English.Lang { // which the program has itself
		return Page{Words: t, Manifest: webManifest}
	}
	return Page{Words: t, Table: "words." + t.Lang + ".json", Manifest: t.Lang + filepath.Ext(webManifest)}
}

// writeTables writes the words of further languages for the program, as
// words.Read takes them.
func writeTables(dir string, tables []words.Table) error {
	for _, t := range tables {
		data, err := json.Marshal(t)
		if err != nil {
			return fmt.Errorf("failed to write the words in %s: %w", t.Endonym, err)
		}
		if err := os.WriteFile(filepath.Join(dir, pageOf(t).Table), data, 0o644); err != nil {
			return err
		}
	}
	return nil
}
