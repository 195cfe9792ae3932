package site

import (
	"net/http"
	"net/http/httptest"
	"testing"
)

// The page is told the address that the server was started with, under the
// same strictness as everything else; without one, the folder's own file tells.
func TestPublicURL(t *testing.T) {
	dir := folder(t)
	write(t, dir, PublicFile, `{"url":""}`)
	plain := New(dir, []string{"localhost"})
	told := plain.WithPublicURL("https://Spin.example/bench/")
	for _, tt := range []struct {
		site         *Site
		method, host string
		status       int
		body         string
	}{
		{plain, "GET", "localhost", 200, `{"url":""}`},
		{plain.WithPublicURL(""), "GET", "localhost:8377", 200, `{"url":""}`},
		{plain, "GET", "spin.example", 421, ""},
		{told, "GET", "localhost", 200, `{"url":"https://Spin.example/bench/"}`},
		{told, "HEAD", "localhost", 200, ""},
		{told, "GET", "spin.example", 200, `{"url":"https://Spin.example/bench/"}`}, // through a proxy
		{told, "GET", "elsewhere.example", 421, ""},
		{told, "POST", "localhost", 405, ""},
	} {
		r := httptest.NewRequest(tt.method, "http://"+tt.host+"/"+PublicFile, nil)
		w := httptest.NewRecorder()
		tt.site.ServeHTTP(w, r)
		if w.Code != tt.status {
			t.Errorf("%s at %s = %d, want %d", tt.method, tt.host, w.Code, tt.status)
		}
		if got := w.Body.String(); tt.status == 200 && got != tt.body {
			t.Errorf("%s at %s: body %q, want %q", tt.method, tt.host, got, tt.body)
		}
		if got := w.Header().Get("Content-Type"); tt.status == 200 && got != "application/json" {
			t.Errorf("%s at %s: type %q, want application/json", tt.method, tt.host, got)
		}
		if got := w.Header().Get("X-Content-Type-Options"); got != "nosniff" {
			t.Errorf("%s at %s: X-Content-Type-Options %q, want nosniff", tt.method, tt.host, got)
		}
	}
	if open := New(dir, nil).WithPublicURL("https://spin.example/"); ask(open, "GET", "/").StatusCode != http.StatusOK {
		t.Error("a site for any host has become one for some")
	}
}
