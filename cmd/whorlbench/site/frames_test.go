package site_test

import (
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"whorlbench/cmd/whorlbench/site"
)

// Another page may have the stage in a frame, and only that: a query that is
// not letter for letter what the page goes by comes with the usual policy.
func TestFrames(t *testing.T) {
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "index.html"), []byte("<!doctype html>"), 0o644); err != nil {
		t.Fatal(err)
	}
	s := site.New(dir, nil)
	for target, want := range map[string]string{
		"/?view=stage": "frame-ancestors *", "/index.html?view=stage": "frame-ancestors *",
		"/": "frame-ancestors 'self'", "/?view=stage&x=1": "frame-ancestors 'self'", "/?x=1&view=stage": "frame-ancestors 'self'",
		"/?view=st%61ge": "frame-ancestors 'self'", "/?view=%zz&view=stage": "frame-ancestors 'self'", "/?view=Stage": "frame-ancestors 'self'",
	} {
		w := httptest.NewRecorder()
		r := httptest.NewRequest(http.MethodGet, target, nil)
		s.ServeHTTP(w, r)
		policy := w.Header().Get("Content-Security-Policy")
		if !strings.HasSuffix(policy, "; "+want) || strings.Count(policy, "frame-ancestors") != 1 {
			t.Errorf("%s: the policy is %q, want it to end in %s", target, policy, want)
		}
		if rest, _, _ := strings.Cut(policy, "frame-ancestors"); !strings.HasPrefix(site.Policy, rest) {
			t.Errorf("%s: the policy differs in more than its frames: %q", target, policy)
		}
	}
}
