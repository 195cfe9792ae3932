package site

import (
	"bufio"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
)

// rawAsk sends a request line as it is written, past any client that would
// tidy it, and returns the answer's status and body.
func rawAsk(t *testing.T, addr, target, host string) (int, string) {
	t.Helper()
	conn, err := net.Dial("tcp", addr)
	if err != nil {
		t.Fatal(err)
	}
	defer conn.Close()
	fmt.Fprintf(conn, "GET %s HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n\r\n", target, host)
	resp, err := http.ReadResponse(bufio.NewReader(conn), nil)
	if err != nil {
		t.Fatalf("GET %q: %v", target, err)
	}
	defer resp.Body.Close()
	b, err := io.ReadAll(resp.Body)
	if err != nil {
		t.Fatalf("GET %q: %v", target, err)
	}
	return resp.StatusCode, string(b)
}

func TestNoPathEscapes(t *testing.T) {
	srv := httptest.NewServer(New(folder(t), nil))
	defer srv.Close()
	addr := srv.Listener.Addr().String()
	for _, tt := range []struct {
		target string
		status int
	}{
		{"/page.js", 200}, // the way itself works
		{"/../go.mod", 404},
		{"/../../../../../../../../etc/passwd", 404},
		{"/room/../../go.mod", 404},
		{"/room/../page.js", 404}, // stays inside, but no page of ours asks so
		{"/%2e%2e/go.mod", 404},
		{"/%2E%2E%2Fgo.mod", 404},
		{"/..%2fgo.mod", 404},
		{"/..%5cgo.mod", 404},
		{`/..\go.mod`, 404},
		{"/%252e%252e/go.mod", 404},
		{"/./page.js", 404},
		{"//", 404},
		{"//go.mod", 404},
		{"///", 404},
		{"//page.js", 404},
		{"/page.js%00.txt", 404},
		{"/page.js/", 404},
		{"/page.js/../../go.mod", 404},
		{"/out.txt", 404},
		{"/up.txt", 404},
		{"/outside/go.mod", 404},
		{"/outside/", 404},
		{"/room/up", 404},
		{"/note.txt", 404},
		{"/.hidden", 404},
		{"/%2ehidden", 404},
		{"/.git/config", 404},
		{"/room/.secret/page.txt", 404},
		{"/bare/", 404}, // no listing
		{"/bare", 404},
		{"/nothing", 404},
		{"/C:/go.mod", 404},
		{"*", 404},
		{"go.mod", 400},
		{"/%zz", 400},
	} {
		status, text := rawAsk(t, addr, tt.target, "localhost")
		if status != tt.status {
			t.Errorf("GET %q = %d, want %d", tt.target, status, tt.status)
		}
		if strings.Contains(text, secret) || strings.Contains(text, "root:") {
			t.Errorf("GET %q gives out what lies outside: %q", tt.target, text)
		}
	}
}

func TestForeignHost(t *testing.T) {
	bound := &net.TCPAddr{IP: net.ParseIP("127.0.0.5"), Port: 8377}
	srv := httptest.NewServer(New(folder(t), LoopbackHosts(bound)))
	defer srv.Close()
	addr := srv.Listener.Addr().String()
	for _, tt := range []struct {
		host   string
		status int
	}{
		{"localhost", 200},
		{"LocalHost:8377", 200},
		{"127.0.0.1", 200},
		{"127.0.0.1:8377", 200},
		{"127.0.0.1:9999", 200}, // a forwarded port
		{"[::1]", 200},
		{"[::1]:8377", 200},
		{"127.0.0.5:8377", 200},
		{"127.0.0.6:8377", 421},
		{"localhost.example", 421},
		{"localhost.example:8377", 421},
		{"elsewhere.example", 421},
		{"127.0.0.1.elsewhere.example", 421},
		{"192.0.2.1:8377", 421},
		{"", 421},
	} {
		if status, _ := rawAsk(t, addr, "/", tt.host); status != tt.status {
			t.Errorf("Host %q = %d, want %d", tt.host, status, tt.status)
		}
	}
	// A request for another's address in full is for that host, whatever
	// its Host header says (RFC 9112, 3.2.2).
	if status, _ := rawAsk(t, addr, "http://elsewhere.example/", "localhost"); status != 421 {
		t.Errorf("a full foreign address = %d, want 421", status)
	}
}

func TestLoopbackHosts(t *testing.T) {
	for _, tt := range []struct {
		ip       string
		loopback bool
	}{
		{"127.0.0.1", true}, {"127.9.9.9", true}, {"::1", true},
		{"0.0.0.0", false}, {"::", false}, {"192.0.2.1", false},
	} {
		got := LoopbackHosts(&net.TCPAddr{IP: net.ParseIP(tt.ip)})
		if (got != nil) != tt.loopback {
			t.Errorf("LoopbackHosts(%s) = %v, want some: %v", tt.ip, got, tt.loopback)
		}
	}
}
