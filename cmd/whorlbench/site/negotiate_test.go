package site

import (
	"net/http"
	"strconv"
	"testing"
)

// RFC 9110, 12.5.3: weights, "*", identity, and an empty header.
func TestNegotiation(t *testing.T) {
	s := New(folder(t), nil)
	const script, wasm = "/page.js", "/bench.wasm" // wasm has no br
	for _, tt := range []struct {
		target string
		accept []string
		coding string // as in Content-Encoding
		body   string
	}{
		{script, nil, "", "plain script"},
		{script, []string{""}, "", "plain script"},
		{script, []string{"gzip, deflate, br, zstd"}, "br", "br script"},
		{script, []string{"gzip", "br"}, "br", "br script"}, // two header lines
		{script, []string{"gzip"}, "gzip", "gz script"},
		{script, []string{"x-gzip"}, "gzip", "gz script"},
		{script, []string{"GZIP ; Q=0.5"}, "gzip", "gz script"},
		{script, []string{"br;q=0.5, gzip;q=0.8"}, "gzip", "gz script"},
		{script, []string{"br;q=0, gzip"}, "gzip", "gz script"},
		{script, []string{"br;q=0, gzip;q=0.000"}, "", "plain script"},
		{script, []string{"br;q=0.001"}, "br", "br script"},
		{script, []string{"identity, br;q=0.5"}, "", "plain script"},
		{script, []string{"*"}, "br", "br script"},
		{script, []string{"*;q=0.1, gzip;q=0.2"}, "gzip", "gz script"},
		{script, []string{"*;q=0, gzip"}, "gzip", "gz script"},
		{script, []string{"deflate"}, "", "plain script"},
		{script, []string{"br;q=abc, gzip;q=2"}, "", "plain script"},
		{script, []string{"br;level=4"}, "br", "br script"},
		{wasm, []string{"br, gzip"}, "gzip", "gz wasm"},
		{wasm, []string{"br"}, "", "\x00asm"},
	} {
		var header []string
		for _, a := range tt.accept {
			header = append(header, "Accept-Encoding", a)
		}
		resp := ask(s, "GET", tt.target, header...)
		if got := resp.Header.Get("Content-Encoding"); got != tt.coding {
			t.Errorf("%s with %q: coding %q, want %q", tt.target, tt.accept, got, tt.coding)
		}
		if got := body(t, resp); got != tt.body {
			t.Errorf("%s with %q: body %q, want %q", tt.target, tt.accept, got, tt.body)
		}
		if got := resp.Header.Get("Vary"); got != "Accept-Encoding" {
			t.Errorf("%s with %q: Vary %q, want Accept-Encoding", tt.target, tt.accept, got)
		}
		if got, want := resp.Header.Get("Content-Length"), strconv.Itoa(len(tt.body)); got != want {
			t.Errorf("%s with %q: Content-Length %q, want %q", tt.target, tt.accept, got, want)
		}
		if got, want := resp.Header.Get("Content-Type"), contentType(tt.target); got != want {
			t.Errorf("%s with %q: type %q, want %q", tt.target, tt.accept, got, want)
		}
	}
}

func TestNothingAcceptable(t *testing.T) {
	s := New(folder(t), nil)
	for _, accept := range []string{"identity;q=0", "*;q=0", "br, identity;q=0"} {
		resp := ask(s, "GET", "/style.css", "Accept-Encoding", accept)
		if got, want := resp.StatusCode, http.StatusNotAcceptable; got != want {
			t.Errorf("with %q: %d, want %d", accept, got, want)
		}
	}
}

func TestHead(t *testing.T) {
	s := New(folder(t), nil)
	for _, accept := range []string{"", "br", "gzip"} {
		get := ask(s, "GET", "/page.js", "Accept-Encoding", accept)
		head := ask(s, "HEAD", "/page.js", "Accept-Encoding", accept)
		if head.StatusCode != 200 {
			t.Errorf("HEAD with %q = %d, want 200", accept, head.StatusCode)
		}
		if got := body(t, head); got != "" {
			t.Errorf("HEAD with %q: body %q, want none", accept, got)
		}
		for _, key := range []string{"Content-Length", "Content-Type", "Content-Encoding", "Etag", "Vary"} {
			if got, want := head.Header.Get(key), get.Header.Get(key); got != want {
				t.Errorf("HEAD with %q: %s %q, want %q as for GET", accept, key, got, want)
			}
		}
	}
}

// RFC 9110, 8.8.3 and 13: a tag for each representation; a kept copy is
// confirmed without its bytes; a changed file has another tag.
func TestConditional(t *testing.T) {
	dir := folder(t)
	s := New(dir, nil)
	tags := map[string]string{}
	for _, accept := range []string{"", "br", "gzip"} {
		tag := ask(s, "GET", "/page.js", "Accept-Encoding", accept).Header.Get("Etag")
		if other, twice := tags[tag]; twice || tag == "" {
			t.Errorf("tag with %q is %s, want one of its own, not that of %q", accept, tag, other)
		}
		tags[tag] = accept
		for _, tt := range []struct {
			ifNoneMatch string
			status      int
		}{
			{tag, 304},
			{"W/" + tag, 304},
			{`"other", ` + tag, 304},
			{"*", 304},
			{`"other"`, 200},
		} {
			resp := ask(s, "GET", "/page.js", "Accept-Encoding", accept, "If-None-Match", tt.ifNoneMatch)
			if resp.StatusCode != tt.status {
				t.Errorf("with %q, If-None-Match %s: %d, want %d", accept, tt.ifNoneMatch, resp.StatusCode, tt.status)
			}
			if tt.status == 304 {
				if got := body(t, resp); got != "" {
					t.Errorf("304 has the body %q, want none", got)
				}
				if got := resp.Header.Get("Etag"); got != tag {
					t.Errorf("304 has the tag %s, want %s", got, tag)
				}
			}
		}
	}
	before := ask(s, "GET", "/page.js").Header.Get("Etag")
	write(t, dir, "page.js", "PLAIN SCRIPT") // as long as before
	if after := ask(s, "GET", "/page.js").Header.Get("Etag"); after == before {
		t.Errorf("a changed file keeps the tag %s, want another", after)
	}
}

func TestRange(t *testing.T) {
	s := New(folder(t), nil)
	resp := ask(s, "GET", "/page.js", "Range", "bytes=6-11")
	if got, want := resp.StatusCode, http.StatusPartialContent; got != want {
		t.Errorf("range = %d, want %d", got, want)
	}
	if got, want := body(t, resp), "script"; got != want {
		t.Errorf("range: body %q, want %q", got, want)
	}
}
