// Package browser holds the tests that drive the built bench in a real
// Chromium: go test -tags browser ./web/browser. They read web/dist, so
// `make dist` comes first, and WHORLBENCH_CHROME may name the browser.
package browser
