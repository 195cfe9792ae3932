//go:build js

// Command sandbox is the bench in the browser: an Ebitengine program that
// runs in the page that web holds.
package main

import (
	"whorlbench/sandbox/host"
)

func main() {
	page := host.NewPage()
	if err := run(page); err != nil {
		page.Fail(err.Error())
	}
}
