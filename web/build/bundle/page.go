package bundle

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"html/template"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	plain "text/template"

	"whorlbench/sandbox/words"
)

// Page is what index.html is filled with.
type Page struct {
	Words     words.Table
	Table     string // name of the file with Words, for the program; empty for those it has itself
	Manifest  string // name of the page's web manifest
	Languages []Language
	WasmSize  int64  // bytes of the program unpacked, for a true loading bar
	Version   string // of the whole build; changes when any file does
}

// filled are the page's files that are templates: the page itself, the
// manifest that makes it a program of the device, and the script that keeps it for
// when there is no network. A page can do without the last two.
var filled = []string{IndexName, webManifest, "sw.js"}

const webManifest = "manifest.webmanifest"

// fillPages fills every template of the folder from into the folder to, the
// page and its manifest once for each further language too.
func fillPages(from, to string, data Page, more []words.Table) error {
	for _, name := range filled {
		source := filepath.Join(from, name)
		if _, err := os.Stat(source); name != IndexName && errors.Is(err, fs.ErrNotExist) {
			continue
		}
		if err := renderFile(source, filepath.Join(to, name), data); err != nil {
			return err
		}
		for _, t := range more {
			other := pageOf(t)
			other.Languages, other.WasmSize, other.Version = data.Languages, data.WasmSize, data.Version
			out := map[string]string{IndexName: pageName(t.Lang), webManifest: other.Manifest}[name]
			if out == "" {
				continue // speaks no language
			}
			if err := renderFile(source, filepath.Join(to, out), other); err != nil {
				return err
			}
		}
	}
	return nil
}

func renderFile(from, to string, data Page) error {
	t, err := parseTemplate(from)
	if err != nil {
		return fmt.Errorf("failed to read the page: %w", err)
	}
	var page bytes.Buffer
	if err := t.Execute(&page, data); err != nil {
		return fmt.Errorf("failed to fill the page: %w", err)
	}
	return os.WriteFile(to, page.Bytes(), 0o644)
}

// parseTemplate reads a template; the page's may use the other ones of its
// folder that end in .html, by their names. HTML escapes by itself; elsewhere {{json .X}}
// writes a text as JSON, which is JavaScript too.
func parseTemplate(file string) (interface {
	Execute(io.Writer, any) error
}, error) {
	const strict = "missingkey=error"
	if filepath.Ext(file) == ".html" {
		t, err := template.New(filepath.Base(file)).Option(strict).ParseGlob(filepath.Join(filepath.Dir(file), "*.html"))
		if err != nil {
			return nil, err
		}
		return t, nil
	}
	asJSON := func(v any) (string, error) {
		text, err := json.Marshal(v)
		return string(text), err
	}
	t, err := plain.New(filepath.Base(file)).Option(strict).Funcs(plain.FuncMap{"json": asJSON}).ParseFiles(file)
	return t, err
}
