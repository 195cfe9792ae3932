package bundle

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"testing"

	"whorlbench/sandbox/words"
)

// absolute finds addresses that hold only at the top of one host: an
// attribute, a script's text or a style's url() that begins with a slash, and
// whole addresses, except names of XML kinds, which nothing is fetched from.
var (
	absolute  = regexp.MustCompile(`(?i)(?:(?:src|href|action|poster|srcset)\s*=\s*["']?|url\(\s*["']?|(?:fetch|import|register|Worker|URL)\(\s*["'` + "`" + `])/[^"')\s]*|(?:https?|wss?):[^"')\s]*`)
	namespace = regexp.MustCompile(`^http://www\.w3\.org/`)
)

func foreign(text []byte) (found []string) {
	for _, m := range absolute.FindAll(text, -1) {
		if !namespace.Match(m) {
			found = append(found, string(m))
		}
	}
	return found
}

// The page works below any path of any host, and asks nothing of another.
func TestPageIsRelative(t *testing.T) {
	const pages = "../.."
	page := filepath.Join(t.TempDir(), IndexName)
	if err := renderFile(filepath.Join(pages, IndexName), page, Page{Words: words.English, WasmSize: 1, Version: "v"}); err != nil {
		t.Fatal(err)
	}
	files := []string{page}
	for _, ending := range []string{"js", "css", "svg", "webmanifest"} {
		more, err := filepath.Glob(filepath.Join(pages, "*."+ending))
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, more...)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if found := foreign(text); len(found) > 0 {
			t.Errorf("%s: addresses that are not relative: %q", filepath.Base(file), found)
		}
	}
}

func TestForeign(t *testing.T) {
	for _, tt := range []struct {
		text string
		want []string
	}{
		{`<script src="page.js">`, nil},
		{`<svg xmlns="http://www.w3.org/2000/svg">`, nil},
		{`fetch("whorlbench.wasm"); a / b`, nil},
		{`<script src="/page.js">`, []string{`src="/page.js`}},
		{`<a href='/'>`, []string{`href='/`}},
		{`<img src="https://elsewhere.example/x.png">`, []string{`https://elsewhere.example/x.png`}},
		{`p { background: url(/x.png) }`, []string{`url(/x.png`}},
		{`fetch('/whorlbench.wasm')`, []string{`fetch('/whorlbench.wasm`}},
		{`@import "http://elsewhere.example/a.css"`, []string{`http://elsewhere.example/a.css`}},
	} {
		if got := foreign([]byte(tt.text)); !slices.Equal(got, tt.want) {
			t.Errorf("foreign(%s) = %q, want %q", tt.text, got, tt.want)
		}
	}
}
