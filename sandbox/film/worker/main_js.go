//go:build js

// Command worker makes pictures and films in a worker of the page, beside the
// bench and without stopping it. The page ends the worker to stop the making.
//
// Its script calls whorlbenchFilm.look(toml, wish) and .make(toml, wish). What
// comes of them is posted: {look, about, note, refused} with the preview's
// PNG in look, {done, of}, parts of the file in order as {part}, at the end
// {made, type}, or {failed}. Likewise whorlbenchFilm.steps(toml, wish) tells the
// pattern step by step.
package main

import (
	"bytes"
	"context"
	"io"
	"syscall/js"
	"time"

	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/film"
	"whorlbench/sandbox/words"
)

func main() {
	if table := js.Global().Get("whorlbenchWords").String(); table != "" {
		t, err := words.Read([]byte(table))
		if err != nil {
			post(map[string]any{"failed": err.Error()})
			return
		}
		words.Use(t)
	}
	functions := js.Global().Get("Object").New()
	for name, do := range map[string]func(toml, wish []byte){"look": look, "make": makeFile, "steps": steps, "card": makeCard} {
		functions.Set(name, js.FuncOf(func(_ js.Value, args []js.Value) any {
			toml, wish := []byte(args[0].String()), []byte(args[1].String())
			go do(toml, wish)
			return nil
		}))
	}
	js.Global().Set("whorlbenchFilm", functions)
	post(map[string]any{"ready": true})
	select {}
}

func post(message map[string]any, transfer ...any) {
	js.Global().Call("postMessage", message, transfer)
}

// postBytes posts a message that owns the bytes under a name.
func postBytes(message map[string]any, name string, data []byte) {
	a := js.Global().Get("Uint8Array").New(len(data))
	js.CopyBytesToJS(a, data)
	message[name] = a
	post(message, a.Get("buffer"))
}

// look posts what would be made, and a preview.
func look(toml, wish []byte) {
	w, answer := words.Said, map[string]any{"about": "", "note": "", "refused": ""}
	job, err := film.Read(toml, wish, w)
	if err == nil && job.Film != film.NoFilm {
		_, err = settingsOf(job)
		if err == nil && job.Clicks {
			err = canClick()
		}
	}
	if err != nil {
		answer["refused"] = err.Error()
	} else {
		answer["about"], answer["note"] = job.About(w)
	}
	var picture bytes.Buffer
	if small, err := film.Preview(toml, wish, w); err == nil {
		if err := small.Write(context.Background(), &picture, small.Format, nil); err != nil {
			picture.Reset()
			answer["refused"] = err.Error()
		}
	}
	postBytes(answer, "look", picture.Bytes())
}

// partSize is how much of a file is handed over at a time (bytes): little
// enough to be nothing in memory, enough to be few.
const partSize = 1 << 20

// parts hands a file over part by part.
type parts struct{ waiting []byte }

func (p *parts) Write(data []byte) (int, error) {
	p.waiting = append(p.waiting, data...)
	if len(p.waiting) >= partSize {
		p.flush()
	}
	return len(data), nil
}

func (p *parts) flush() {
	postBytes(map[string]any{}, "part", p.waiting)
	p.waiting = p.waiting[:0]
}

// tellEvery is how often at most the page is told how far a file is: each time it
// draws itself anew, which takes from what the film has.
const tellEvery = 200 * time.Millisecond

func makeFile(toml, wish []byte) {
	job, err := film.Read(toml, wish, words.Said)
	if err != nil {
		post(map[string]any{"failed": err.Error()})
		return
	}
	var told time.Time
	tell := capture.Progress(func(done, of int) {
		if now := time.Now(); done == of || now.Sub(told) >= tellEvery {
			told = now
			post(map[string]any{"done": done, "of": of})
		}
	})
	var out parts
	if err := write(job, &out, tell); err != nil {
		post(map[string]any{"failed": err.Error()})
		return
	}
	out.flush()
	post(map[string]any{"made": job.FileName(), "type": job.Type()})
}

func write(job film.Job, out io.Writer, tell capture.Progress) error {
	if job.Film != film.NoFilm {
		return writeFilm(job, out, tell)
	}
	return job.Write(context.Background(), out, job.Format, tell)
}
