package site

import (
	"net/http"
	"path"
	"strings"
)

// Policy is the Content-Security-Policy of every answer: the page may load
// and reach its own origin only. Only WebAssembly may be compiled, no script
// from a string.
const Policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; " +
	"img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; " +
	"base-uri 'none'; form-action 'none'; frame-ancestors " + ownFrames

const ownFrames = "'self'"

// stageOnly is the query, letter for letter, with which the page is the stage alone:
// it keeps nothing, so any page may have it in a frame. The page goes by the same
// letters, so that nothing else comes with this policy.
const stageOnly = "view=stage"

// policyFor returns the policy of the answer to a request.
func policyFor(query string) string {
	if query == stageOnly {
		return strings.TrimSuffix(Policy, ownFrames) + "*"
	}
	return Policy
}

func setHeaders(h http.Header, query string) {
	h.Set("Content-Security-Policy", policyFor(query))
	h.Set("X-Content-Type-Options", "nosniff")
	h.Set("Referrer-Policy", "no-referrer")
	h.Set("Cross-Origin-Opener-Policy", "same-origin")
	// Kept, but asked about each time: a new build shows at the next load.
	h.Set("Cache-Control", "no-cache")
}

// types are given here and not taken from the machine, whose own table may
// lack one or have it wrong: a browser compiles WebAssembly as it streams only
// under its right type.
var types = map[string]string{
	".css":         "text/css; charset=utf-8",
	".gif":         "image/gif",
	".html":        "text/html; charset=utf-8",
	".ico":         "image/x-icon",
	".js":          "text/javascript; charset=utf-8",
	".json":        "application/json",
	".mp4":         "video/mp4",
	".png":         "image/png",
	".svg":         "image/svg+xml",
	".toml":        "application/toml; charset=utf-8",
	".txt":         "text/plain; charset=utf-8",
	".wasm":        "application/wasm",
	".webm":        "video/webm",
	".webmanifest": "application/manifest+json",
}

func contentType(name string) string {
	if t, ok := types[strings.ToLower(path.Ext(name))]; ok {
		return t
	}
	return "application/octet-stream"
}
