package site

import (
	"bytes"
	"compress/gzip"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const secret = "not to be given out"

// folder makes a folder to serve beside a file that must not be served.
func folder(t *testing.T) string {
	t.Helper()
	top := t.TempDir()
	write(t, top, "go.mod", secret)
	dir := filepath.Join(top, "dist")
	for name, text := range map[string]string{
		"index.html":            "<!doctype html>",
		"page.js":               "plain script",
		"page.js.br":            "br script", // bytes stand for what a coder would make
		"page.js.gz":            "gz script",
		"bench.wasm":            "\x00asm",
		"bench.wasm.gz":         "gz wasm",
		"style.css":             "css",
		"icon.svg":              "<svg/>",
		"manifest.webmanifest":  "{}",
		"half-moon.toml":        "format = 1",
		"build.json":            "{}",
		"something.else":        "bytes",
		".hidden":               secret,
		".git/config":           secret,
		"bare/file.txt":         "text",
		"room/index.html":       "room",
		"room/.secret/page.txt": secret,
	} {
		write(t, dir, name, text)
	}
	for link, target := range map[string]string{
		"out.txt":  filepath.Join(top, "go.mod"),
		"up.txt":   "../go.mod",
		"outside":  top,
		"room/up":  "../../go.mod",
		"page.ln":  "page.js",
		"note.txt": "nowhere",
	} {
		if err := os.Symlink(target, filepath.Join(dir, link)); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

func write(t *testing.T, dir, name, text string) {
	t.Helper()
	file := filepath.Join(dir, name)
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// ask sends one request straight to the site.
func ask(s http.Handler, method, target string, header ...string) *http.Response {
	r := httptest.NewRequest(method, "http://localhost"+target, nil)
	for i := 0; i < len(header); i += 2 {
		r.Header.Add(header[i], header[i+1])
	}
	w := httptest.NewRecorder()
	s.ServeHTTP(w, r)
	return w.Result()
}

func body(t *testing.T, resp *http.Response) string {
	t.Helper()
	b, err := io.ReadAll(resp.Body)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func TestFilesAndTypes(t *testing.T) {
	s := New(folder(t), nil)
	for _, tt := range []struct {
		target, contentType, body string
	}{
		{"/", "text/html; charset=utf-8", "<!doctype html>"},
		{"/index.html", "text/html; charset=utf-8", "<!doctype html>"},
		{"/?from=elsewhere", "text/html; charset=utf-8", "<!doctype html>"},
		{"/page.js", "text/javascript; charset=utf-8", "plain script"},
		{"/bench.wasm", "application/wasm", "\x00asm"},
		{"/style.css", "text/css; charset=utf-8", "css"},
		{"/icon.svg", "image/svg+xml", "<svg/>"},
		{"/manifest.webmanifest", "application/manifest+json", "{}"},
		{"/half-moon.toml", "application/toml; charset=utf-8", "format = 1"},
		{"/build.json", "application/json", "{}"},
		{"/something.else", "application/octet-stream", "bytes"},
		{"/room/", "text/html; charset=utf-8", "room"},
		{"/bare/file.txt", "text/plain; charset=utf-8", "text"},
		{"/page.ln", "application/octet-stream", "plain script"}, // a link that stays inside
	} {
		resp := ask(s, "GET", tt.target)
		if resp.StatusCode != 200 {
			t.Errorf("GET %s = %d, want 200", tt.target, resp.StatusCode)
		}
		if got := resp.Header.Get("Content-Type"); got != tt.contentType {
			t.Errorf("GET %s: type %q, want %q", tt.target, got, tt.contentType)
		}
		if got := body(t, resp); got != tt.body {
			t.Errorf("GET %s: body %q, want %q", tt.target, got, tt.body)
		}
		if got, want := resp.Header.Get("Cache-Control"), "no-cache"; got != want {
			t.Errorf("GET %s: Cache-Control %q, want %q", tt.target, got, want)
		}
	}
}

func TestFolderWithoutSlash(t *testing.T) {
	resp := ask(New(folder(t), nil), "GET", "/room")
	if got, want := resp.StatusCode, http.StatusMovedPermanently; got != want {
		t.Errorf("GET /room = %d, want %d", got, want)
	}
	if got, want := resp.Header.Get("Location"), "./room/"; got != want {
		t.Errorf("GET /room: Location %q, want %q", got, want)
	}
}

// The header names and values are those of the Fetch standard, the Content
// Security Policy Level 3 and the Referrer Policy recommendation.
func TestHeadersOnEveryAnswer(t *testing.T) {
	s := New(folder(t), []string{"localhost"})
	for _, tt := range []struct {
		method, target, host string
		status               int
	}{
		{"GET", "/", "localhost", 200},
		{"GET", "/nothing", "localhost", 404},
		{"GET", "/room", "localhost", 301},
		{"POST", "/", "localhost", 405},
		{"GET", "/", "elsewhere.example", 421},
	} {
		r := httptest.NewRequest(tt.method, "http://"+tt.host+tt.target, nil)
		w := httptest.NewRecorder()
		s.ServeHTTP(w, r)
		if w.Code != tt.status {
			t.Errorf("%s %s at %s = %d, want %d", tt.method, tt.target, tt.host, w.Code, tt.status)
		}
		for key, want := range map[string]string{
			"Content-Security-Policy":    "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'",
			"X-Content-Type-Options":     "nosniff",
			"Referrer-Policy":            "no-referrer",
			"Cross-Origin-Opener-Policy": "same-origin",
		} {
			if got := w.Header().Get(key); got != want {
				t.Errorf("%s %s at %s: %s %q, want %q", tt.method, tt.target, tt.host, key, got, want)
			}
		}
	}
}

func TestMethods(t *testing.T) {
	s := New(folder(t), nil)
	for _, method := range []string{"POST", "PUT", "DELETE", "OPTIONS", "TRACE", "PATCH", "PROPFIND"} {
		resp := ask(s, method, "/page.js")
		if got, want := resp.StatusCode, http.StatusMethodNotAllowed; got != want {
			t.Errorf("%s = %d, want %d", method, got, want)
		}
		if got, want := resp.Header.Get("Allow"), "GET, HEAD"; got != want {
			t.Errorf("%s: Allow %q, want %q", method, got, want)
		}
	}
}

func TestFolderGoneWhileServing(t *testing.T) {
	dir := folder(t)
	s := New(dir, nil)
	if err := os.Rename(dir, dir+"-old"); err != nil {
		t.Fatal(err)
	}
	if got, want := ask(s, "GET", "/").StatusCode, http.StatusServiceUnavailable; got != want {
		t.Errorf("with the folder gone: %d, want %d", got, want)
	}
	write(t, dir, "index.html", "new")
	if got, want := body(t, ask(s, "GET", "/")), "new"; got != want {
		t.Errorf("with a new folder: %q, want %q", got, want)
	}
}

func TestCheck(t *testing.T) {
	dir := folder(t)
	for _, tt := range []struct {
		dir  string
		want error
	}{
		{dir, nil},
		{filepath.Join(dir, "nowhere"), ErrNoFolder},
		{filepath.Join(dir, "page.js"), ErrNoFolder},
		{filepath.Join(dir, "bare"), ErrNoIndex},
	} {
		if got := Check(tt.dir); got != tt.want {
			t.Errorf("Check(%q) = %v, want %v", tt.dir, got, tt.want)
		}
	}
}

// Over a real connection the encoded bytes, decoded by the standard
// library's own gzip, are the file.
func TestGzipDecodes(t *testing.T) {
	dir := folder(t)
	text := strings.Repeat("in-spin, antispin, ", 100)
	var packed bytes.Buffer
	z := gzip.NewWriter(&packed)
	io.WriteString(z, text)
	z.Close()
	write(t, dir, "page.js", text)
	write(t, dir, "page.js.gz", packed.String())
	srv := httptest.NewServer(New(dir, nil))
	defer srv.Close()
	resp, err := http.Get(srv.URL + "/page.js") // the client asks for gzip and undoes it
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	if !resp.Uncompressed {
		t.Errorf("answer came unpacked, want it as gzip")
	}
	if got := body(t, resp); got != text {
		t.Errorf("decoded answer has %d bytes, want %d", len(got), len(text))
	}
}
