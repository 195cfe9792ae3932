package main

import (
	"bufio"
	"bytes"
	"context"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"strings"
	"syscall"
	"testing"
)

// serving is a running serve command.
type serving struct {
	url    string
	errs   *bytes.Buffer // to be read when it has ended
	status chan int
}

// startServe runs serve at addr and returns when it has printed its address.
func startServe(t *testing.T, ctx context.Context, addr string) serving {
	t.Helper()
	t.Chdir(t.TempDir())
	if err := os.WriteFile("index.html", []byte("the page"), 0o644); err != nil {
		t.Fatal(err)
	}
	read, write := io.Pipe()
	s := serving{errs: new(bytes.Buffer), status: make(chan int, 1)}
	go func() {
		s.status <- run(ctx, []string{"serve", "--dir", ".", "--addr", addr}, strings.NewReader(""), write, s.errs)
		write.Close()
	}()
	lines := bufio.NewScanner(read)
	if !lines.Scan() {
		t.Fatalf("serve printed nothing; standard error: %s", s.errs)
	}
	url, ok := strings.CutPrefix(lines.Text(), "the bench is at ")
	if !ok {
		t.Fatalf("serve printed %q, want the address first", lines.Text())
	}
	s.url = url
	go func() { // the rest must be read, or serve would wait
		for lines.Scan() {
		}
	}()
	return s
}

func TestServePrintsTheRealAddress(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	s := startServe(t, ctx, "127.0.0.1:0")
	if strings.HasSuffix(s.url, ":0/") || !strings.HasPrefix(s.url, "http://127.0.0.1:") {
		t.Errorf("address %q, want that of the port taken", s.url)
	}
	resp, err := http.Get(s.url)
	if err != nil {
		t.Fatal(err)
	}
	text, err := io.ReadAll(resp.Body)
	resp.Body.Close()
	if err != nil || string(text) != "the page" {
		t.Errorf("GET %s = %q, %v, want the page", s.url, text, err)
	}
	if got, want := resp.Header.Get("X-Content-Type-Options"), "nosniff"; got != want {
		t.Errorf("X-Content-Type-Options %q, want %q", got, want)
	}
	foreign, err := http.NewRequest("GET", s.url, nil)
	if err != nil {
		t.Fatal(err)
	}
	foreign.Host = "elsewhere.example"
	resp, err = http.DefaultClient.Do(foreign)
	if err != nil {
		t.Fatal(err)
	}
	resp.Body.Close()
	if got, want := resp.StatusCode, http.StatusMisdirectedRequest; got != want {
		t.Errorf("with a foreign Host: %d, want %d", got, want)
	}
	cancel()
	if got := <-s.status; got != fine {
		t.Errorf("status %d, want %d", got, fine)
	}
	if got := s.errs.String(); got != "" {
		t.Errorf("standard error %q, want none", got)
	}
	if _, err := http.Get(s.url); err == nil {
		t.Errorf("it still answers after its end")
	}
}

func TestServeEndsOnSignals(t *testing.T) {
	self, err := os.FindProcess(os.Getpid())
	if err != nil {
		t.Fatal(err)
	}
	for _, sig := range []os.Signal{syscall.SIGINT, syscall.SIGTERM} {
		s := startServe(t, context.Background(), "127.0.0.1:0")
		if err := self.Signal(sig); err != nil {
			t.Skipf("signals cannot be sent here: %v", err)
		}
		if got := <-s.status; got != fine {
			t.Errorf("%v: status %d, want %d", sig, got, fine)
		}
	}
}

func TestServeWarnsWhenExposed(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	s := startServe(t, ctx, "0.0.0.0:0")
	if !strings.HasPrefix(s.url, "http://127.0.0.1:") {
		t.Errorf("address %q, want one that a browser opens", s.url)
	}
	cancel()
	<-s.status
	if got := s.errs.String(); !strings.HasPrefix(got, "WARNING: listening at ") {
		t.Errorf("standard error %q, want a warning", got)
	}
}

func TestServePortTaken(t *testing.T) {
	ln, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer ln.Close()
	t.Chdir(t.TempDir())
	if err := os.WriteFile("index.html", nil, 0o644); err != nil {
		t.Fatal(err)
	}
	addr := ln.Addr().(*net.TCPAddr)
	var out, errs bytes.Buffer
	status := run(context.Background(), []string{"serve", "--dir", ".", "--addr", addr.String()}, nil, &out, &errs)
	if status != unusable {
		t.Errorf("status %d, want %d", status, unusable)
	}
	if out.Len() > 0 {
		t.Errorf("standard output %q, want none", out.String())
	}
	next := fmt.Sprintf("127.0.0.1:%d", (addr.Port+1)%65536)
	want := fmt.Sprintf("whorlbench serve: %v is taken; try: whorlbench serve --addr %s (or port 0 for a free one)\n", addr, next)
	if got := errs.String(); got != want {
		t.Errorf("standard error %q, want %q", got, want)
	}
}

func TestPageURL(t *testing.T) {
	for _, tt := range []struct {
		ip   string
		want string
	}{
		{"127.0.0.1", "http://127.0.0.1:8377/"},
		{"::1", "http://[::1]:8377/"},
		{"192.0.2.1", "http://192.0.2.1:8377/"},
		{"0.0.0.0", "http://127.0.0.1:8377/"},
		{"::", "http://127.0.0.1:8377/"},
	} {
		if got := pageURL(&net.TCPAddr{IP: net.ParseIP(tt.ip), Port: 8377}); got != tt.want {
			t.Errorf("pageURL(%s) = %q, want %q", tt.ip, got, tt.want)
		}
	}
}
