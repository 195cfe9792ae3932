package bundle

import (
	"bytes"
	"compress/gzip"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"

	"whorlbench/sandbox/words"
)

// testQuality packs quickly.
const testQuality = 1

// filler makes a page that packing makes smaller.
var filler = strings.Repeat("<p>and so on</p>\n", 50)

// project makes the current folder a small project with a program for the
// browser and a page, and returns how to build it.
func project(t *testing.T) Options {
	t.Helper()
	t.Chdir(t.TempDir())
	for name, text := range map[string]string{
		"go.mod":                   "module tiny\n\ngo 1.26\n",
		"sandbox/main.go":          "package main\n\nfunc main() { println(\"on the bench\") }\n",
		"web/index.html":           `<html lang="{{.Words.Lang}}"><body data-size="{{.WasmSize}}" data-version="{{.Version}}"><p>{{.Words.Figure.Isolation}}` + filler,
		"web/style.css":            strings.Repeat("p { margin: 0 }\n", 50),
		"web/page.js":              strings.Repeat("start();\n", 50),
		"web/icon.svg":             `<svg viewBox="0 0 9 9"/>`, // too short to become smaller
		"web/sw.js":                "const version = {{json .Version}};" + strings.Repeat("keep();\n", 50),
		"web/photo.png":            "picture",
		"web/manifest.webmanifest": `{"name": {{json .Words.Page.AppName}}, "description": {{json .Words.Page.Description}}}`,
		"web/notes.md":             "not for the page",
		"web/browser/test.js":      "not for the page",
	} {
		write(t, name, text)
	}
	return Options{Package: "./sandbox", Pages: "web", Out: "web/dist", Words: words.English, Brotli: testQuality}
}

func write(t *testing.T, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

func read(t *testing.T, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func build(t *testing.T, o Options) Manifest {
	t.Helper()
	m, err := Build(context.Background(), o)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

func TestBuildIsWhole(t *testing.T) {
	m := build(t, project(t))
	entries, err := os.ReadDir("web/dist")
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	want := "build.json icon-192.png icon-512.png icon-maskable-192.png icon-maskable-512.png icon.svg " +
		"index.html index.html.br index.html.gz manifest.webmanifest manifest.webmanifest.br manifest.webmanifest.gz " +
		"page.js page.js.br page.js.gz photo.png public.json style.css style.css.br style.css.gz sw.js sw.js.br sw.js.gz " +
		"wasm_exec.js wasm_exec.js.br wasm_exec.js.gz whorlbench.wasm whorlbench.wasm.br whorlbench.wasm.gz"
	if got := strings.Join(names, " "); got != want {
		t.Errorf("files %s\nwant  %s", got, want)
	}
	wasm := read(t, "web/dist/whorlbench.wasm")
	// WebAssembly Core Specification 5.5.16: magic and version 1.
	if !bytes.HasPrefix(wasm, []byte("\x00asm\x01\x00\x00\x00")) {
		t.Errorf("the program begins with %q", wasm[:8])
	}
	page := string(read(t, "web/dist/index.html"))
	if got, want := page, fmt.Sprintf(`<html lang="en"><body data-size="%d" data-version="%s"><p>isolation`+filler, len(wasm), m.Version); got != want {
		t.Errorf("page %s, want %s", got, want)
	}
	if got, want := string(read(t, "web/dist/sw.js")), fmt.Sprintf("const version = %q;keep();\n", m.Version); !strings.HasPrefix(got, want) {
		t.Errorf("sw.js begins %.40s, want %s", got, want)
	}
	var app struct{ Name, Description string }
	if err := json.Unmarshal(read(t, "web/dist/manifest.webmanifest"), &app); err != nil || app.Name != words.English.Page.AppName || app.Description != words.English.Page.Description {
		t.Errorf("the manifest says %+v, %v, want the page's words", app, err)
	}
	if got, want := string(read(t, "web/dist/public.json")), "{\"url\": \"\"}\n"; got != want {
		t.Errorf("public.json says %s, want %s", got, want)
	}
	if len(m.Version) != 12 {
		t.Errorf("version %q, want 12 digits", m.Version)
	}
	leftovers(t)
}

// TestGlossaryIsWritten: as JSON, by language, packed, with all its words.
func TestGlossaryIsWritten(t *testing.T) {
	o := project(t)
	o.Glossaries = map[string]*words.Glossary{"en": &words.EnglishGlossary}
	m := build(t, o)
	const name = "glossary.en.json"
	var g words.Glossary
	if err := json.Unmarshal(read(t, "web/dist/"+name), &g); err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(g, words.EnglishGlossary) {
		t.Errorf("%s holds %d words, want the %d of the glossary as they are", name, len(g.Terms), len(words.EnglishGlossary.Terms))
	}
	if f := m.Files[name]; f.Brotli == nil || f.Gzip == nil {
		t.Errorf("%s is not packed: %+v", name, f)
	}
}

// leftovers complains about folders that a build should have taken away.
func leftovers(t *testing.T) {
	t.Helper()
	left, err := filepath.Glob("web/.dist-*")
	if err != nil || len(left) > 0 {
		t.Errorf("left over: %v, %v", left, err)
	}
}

func TestPackedIsTheSame(t *testing.T) {
	build(t, project(t))
	var m Manifest // as it is read by others
	if err := json.Unmarshal(read(t, "web/dist/build.json"), &m); err != nil {
		t.Fatal(err)
	}
	for _, name := range m.Names() {
		plain := read(t, "web/dist/"+name)
		f := m.Files[name]
		if f.Size != int64(len(plain)) {
			t.Errorf("%s: size %d, want %d", name, f.Size, len(plain))
		}
		for _, c := range []struct {
			suffix string
			packed *Packed
			open   func(io.Reader) (io.Reader, error)
		}{
			{".br", f.Brotli, func(r io.Reader) (io.Reader, error) { return brotli.NewReader(r), nil }},
			{".gz", f.Gzip, func(r io.Reader) (io.Reader, error) { return gzip.NewReader(r) }},
		} {
			if c.packed == nil {
				continue
			}
			packed := read(t, "web/dist/"+name+c.suffix)
			if c.packed.Size != int64(len(packed)) || len(packed) >= len(plain) {
				t.Errorf("%s%s: %d bytes, manifest %d, plain %d", name, c.suffix, len(packed), c.packed.Size, len(plain))
			}
			r, err := c.open(bytes.NewReader(packed))
			if err != nil {
				t.Fatal(err)
			}
			if got, err := io.ReadAll(r); err != nil || !bytes.Equal(got, plain) {
				t.Errorf("%s%s unpacks to other bytes (%v)", name, c.suffix, err)
			}
		}
	}
}

func TestVersion(t *testing.T) {
	o := project(t)
	o.Brotli = 0
	first := build(t, o)
	if again := build(t, o); again.Version != first.Version {
		t.Errorf("the same sources give version %s, then %s", first.Version, again.Version)
	}
	for _, change := range []struct{ name, text string }{
		{"web/style.css", "p { margin: 1px }"},
		{"web/sw.js", "another script, version {{.Version}}"},
		{"web/manifest.webmanifest", "{}"},
		{"web/index.html", "<html>another page, version {{.Version}}"},
		{"sandbox/main.go", "package main\n\nfunc main() { println(\"off the bench\") }\n"},
	} {
		write(t, change.name, change.text)
		next := build(t, o)
		if next.Version == first.Version {
			t.Errorf("%s changed, the version did not", change.name)
		}
		first = next
	}
}

func TestFailedBuildLeavesTheOld(t *testing.T) {
	o := project(t)
	o.Brotli = 0
	build(t, o)
	before := read(t, "web/dist/index.html")
	for _, tt := range []struct{ name, file, text, want string }{
		{"no such word", "web/index.html", "{{.Words.Nothing}}", "failed to fill the page"},
		{"no template", "web/index.html", "{{", "failed to read the page"},
		{"no program", "sandbox/main.go", "package main\n\nfunc main() { nothing() }\n", "undefined: nothing"},
	} {
		was := string(read(t, tt.file))
		write(t, tt.file, tt.text)
		if _, err := Build(context.Background(), o); err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: error %v, want %q in it", tt.name, err, tt.want)
		}
		write(t, tt.file, was)
		if got := read(t, "web/dist/index.html"); !bytes.Equal(got, before) {
			t.Errorf("%s: the old page is gone", tt.name)
		}
		leftovers(t)
	}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if _, err := Build(ctx, o); err == nil {
		t.Errorf("interrupted: no error")
	}
	leftovers(t)
}

func TestOtherFoldersAreLeftAlone(t *testing.T) {
	o := project(t)
	write(t, "letters/first.txt", "dear reader")
	o.Out = "letters"
	if _, err := Build(context.Background(), o); err == nil || !strings.Contains(err.Error(), "left alone") {
		t.Errorf("error %v, want a refusal", err)
	}
	if got := string(read(t, "letters/first.txt")); got != "dear reader" {
		t.Errorf("the letter now reads %q", got)
	}
}
