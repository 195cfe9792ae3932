//go:build js

// Command sandbox is the bench in the browser: an Ebitengine program that
// runs in the page that web holds.
package main

import (
	"whorlbench/sandbox/host"
	"whorlbench/sandbox/words"
)

func main() {
	page := host.NewPage()
	if table := page.Words(); table != "" {
		t, err := words.Read([]byte(table))
		if err != nil {
			page.Fail(err.Error())
			return
		}
		words.Use(t)
	}
	if err := run(page); err != nil {
		page.Fail(err.Error())
	}
}
