//go:build js

package main

import (
	"encoding/json"
	"syscall/js"

	"github.com/hajimehoshi/ebiten/v2"

	"whorlbench/sandbox/bench"
)

// practising are the functions for the page's practice sheet and view.
func (a *app) practising() map[string]func(args []js.Value) any {
	b := a.bench
	seen := func(f func(args []js.Value) any) func(args []js.Value) any {
		return func(args []js.Value) any {
			ebiten.ScheduleFrame()
			return f(args)
		}
	}
	return map[string]func(args []js.Value) any{
		"practiseTempo": func([]js.Value) any { return b.PractiseTempo() },
		// practiseBefore(wish) says what is to be known of it.
		"practiseBefore": func(args []js.Value) any {
			tempo, cautions, refused := b.BeforePractice(wished(args[0]))
			lines := make([]any, len(cautions))
			for i, c := range cautions {
				lines[i] = c
			}
			return map[string]any{"tempo": tempo, "cautions": lines, "refused": refused}
		},
		// practise(wish) begins; it returns what is wrong.
		"practise": seen(func(args []js.Value) any { return b.Practise(wished(args[0])) }),
		// practiseClicks(to) returns seconds and kind of each event up to a second.
		"practiseClicks": func(args []js.Value) any {
			var out []any
			for _, e := range b.Clicks(args[0].Float()) {
				out = append(out, e.Seconds, int(e.Kind))
			}
			return out
		},
		"practisePause":  seen(func([]js.Value) any { b.PausePractice(); return nil }),
		"practiseResume": seen(func([]js.Value) any { b.ResumePractice(); return nil }),
		"practiseFaster": seen(func(args []js.Value) any { b.PracticeTempo(args[0].Float()); return nil }),
		"practiseMirror": seen(func(args []js.Value) any { b.MirrorPractice(args[0].Bool()); return nil }),
		"practiseKeep":   func([]js.Value) any { return b.KeepPracticeTempo() },
		"practiseStop":   seen(func([]js.Value) any { b.StopPractice(); return nil }),
	}
}

// wished reads what the sheet asks for.
func wished(v js.Value) (w bench.PractiseWish) {
	_ = json.Unmarshal([]byte(v.String()), &w) // our own script wrote it
	return w
}
