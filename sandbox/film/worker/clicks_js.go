//go:build js

package main

import (
	"errors"
	"syscall/js"

	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/film"
	"whorlbench/sandbox/words"
)

// spoken are the encoder's settings for a click track: Opus, which both sorts
// of film can hold, so that each click stands on its sample in either.
var spoken = map[string]any{"codec": "opus", "sampleRate": capture.ClickRate, "numberOfChannels": 1, "bitrate": 96_000}

// canClick tells what keeps this browser from packing a click track.
func canClick() error {
	lacking := errors.New(words.Said.Film.NoClicks)
	e := js.Global().Get("AudioEncoder")
	if e.IsUndefined() {
		return lacking
	}
	answer, err := await(e.Call("isConfigSupported", spoken))
	if err != nil || !answer.Get("supported").Bool() {
		return lacking
	}
	return nil
}

// packClicks has the browser pack a film's click track, with some quiet after
// it, which the last packets need.
func packClicks(job film.Job) (*film.Sound, error) {
	samples, err := job.Take.Clicks()
	if err != nil {
		return nil, err
	}
	const bytesEach, micro = 2, 1_000_000
	sound := &film.Sound{Samples: len(samples) / bytesEach}
	var fault error
	output := js.FuncOf(func(_ js.Value, args []js.Value) any {
		data := js.Global().Get("Uint8Array").New(args[0].Get("byteLength"))
		args[0].Call("copyTo", data)
		sound.Packets = append(sound.Packets, bytesOf(data))
		if len(args) > 1 && args[1].Truthy() {
			if c := args[1].Get("decoderConfig"); sound.Head == nil && c.Truthy() && c.Get("description").Truthy() {
				sound.Head = bytesOf(viewOf(c.Get("description")))
			}
		}
		return nil
	})
	failed := js.FuncOf(func(_ js.Value, args []js.Value) any {
		fault = errors.New(args[0].Get("message").String())
		return nil
	})
	defer output.Release()
	defer failed.Release()
	e := js.Global().Get("AudioEncoder").New(map[string]any{"output": output, "error": failed})
	e.Call("configure", spoken)
	const part = capture.ClickRate * bytesEach
	samples = append(samples, make([]byte, part/4)...) // a quarter of a second is more than any encoder holds back
	for at := 0; at < len(samples); at += part {
		some := samples[at:min(at+part, len(samples))]
		data := js.Global().Get("Uint8Array").New(len(some))
		js.CopyBytesToJS(data, some)
		heard := js.Global().Get("AudioData").New(map[string]any{
			"format": "s16", "sampleRate": capture.ClickRate, "numberOfFrames": len(some) / bytesEach, "numberOfChannels": 1,
			"timestamp": float64(at/bytesEach) * micro / capture.ClickRate, "data": data.Get("buffer"),
		})
		e.Call("encode", heard)
		heard.Call("close")
	}
	if _, err := await(e.Call("flush")); err != nil && fault == nil {
		fault = err
	}
	e.Call("close")
	if fault == nil && !sound.Complete() {
		fault = errors.New(words.Said.Film.NoClicks)
	}
	return sound, fault
}
