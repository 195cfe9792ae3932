//go:build js

// Command parity is the command line's answers in a browser, for the test
// that holds native code and WebAssembly to the same results.
package main

import (
	"syscall/js"

	"whorlbench/cmd/whorlbench/report"
	"whorlbench/presets"
	"whorlbench/web/browser/parity/sample"
)

func main() {
	js.Global().Set("parityCheck", js.FuncOf(func(_ js.Value, args []js.Value) any {
		name, text := args[0].String(), args[1].String()
		p, err := presets.Decode(name, []byte(text))
		if err != nil {
			return err.Error()
		}
		data, err := report.JSON([]report.Report{report.Of(name, p)}, false)
		if err != nil {
			return err.Error()
		}
		return string(data)
	}))
	js.Global().Set("paritySample", js.FuncOf(func(_ js.Value, args []js.Value) any {
		p, err := presets.Decode(args[0].String(), []byte(args[1].String()))
		if err != nil {
			return err.Error()
		}
		var out []any
		for _, x := range sample.Of(p, args[2].Int()) {
			out = append(out, x)
		}
		return out
	}))
	js.Global().Set("parityReady", true)
	select {}
}
