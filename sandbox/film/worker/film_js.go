//go:build js

package main

import (
	"context"
	"errors"
	"fmt"
	"image"
	"io"
	"syscall/js"
	"unsafe"

	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/film"
	"whorlbench/sandbox/words"
)

// avcLevels are the levels of H.264 (Annex A, table A-1) by what they may hold,
// in macroblocks of 16 by 16 pixels: of a frame, and a second.
var avcLevels = []struct {
	code          int
	frame, second float64
}{
	{0x1f, 3600, 108_000}, {0x28, 8192, 245_760}, {0x2a, 8704, 522_240}, {0x33, 36_864, 983_040}, {0x34, 36_864, 2_073_600},
}

// bitsPerPixel is what an encoder may spend on a pixel of a frame on average:
// thin lines on a plain ground keep their edges with it.
const bitsPerPixel = 0.25

// leastBits is spent on the smallest film (bits a second).
const leastBits = 500_000

// keyEvery is how often a frame stands alone, so that a player can go there
// (frames).
const keyEvery = 100

// ahead is how many frames may wait for the encoder, which bounds the memory.
const ahead = 4

// settingsOf returns the encoder's settings for a film, tried out.
func settingsOf(job film.Job) (map[string]any, error) {
	lacking := errors.New(words.Said.Film.NoEncoder)
	if js.Global().Get("VideoEncoder").IsUndefined() {
		return nil, lacking
	}
	rate := job.Take.Timeline().Rate().Float()
	settings := map[string]any{
		"codec": "vp09.00.51.08", "width": job.Width, "height": job.Height, "framerate": rate,
		"bitrate":     max(bitsPerPixel*rate*float64(job.Width*job.Height), leastBits),
		"bitrateMode": "variable", "latencyMode": "quality",
	}
	if job.Film == film.MP4 {
		blocks := float64((job.Width + 15) / 16 * ((job.Height + 15) / 16))
		code := 0
		for _, l := range avcLevels {
			if blocks <= l.frame && blocks*rate <= l.second {
				code = l.code
				break
			}
		}
		settings["codec"] = fmt.Sprintf("avc1.6400%02x", code)
		settings["avc"] = map[string]any{"format": "avc"}
	}
	asked := fmt.Sprint(settings)
	can, known := supported[asked]
	if !known {
		answer, err := await(js.Global().Get("VideoEncoder").Call("isConfigSupported", settings))
		if err != nil {
			return nil, lacking
		}
		can = answer.Get("supported").Bool()
		supported[asked] = can
	}
	if !can {
		return nil, lacking
	}
	return settings, nil
}

// supported is what the browser has answered so far: it takes up to a fifth of a
// second, for the preview and again for the film.
var supported = map[string]bool{}

// await waits for a promise, and lets the worker hear of other things meanwhile.
func await(promise js.Value) (js.Value, error) {
	type result struct {
		value js.Value
		err   error
	}
	done := make(chan result, 1)
	came := js.FuncOf(func(_ js.Value, args []js.Value) any {
		v := js.Undefined()
		if len(args) > 0 {
			v = args[0]
		}
		done <- result{v, nil}
		return nil
	})
	failed := js.FuncOf(func(_ js.Value, args []js.Value) any {
		done <- result{err: errors.New(args[0].Call("toString").String())}
		return nil
	})
	defer came.Release()
	defer failed.Release()
	promise.Call("then", came, failed)
	r := <-done
	return r.value, r.err
}

// encoder packs frames one after the other.
type encoder struct {
	js.Value
	frames   []film.Sample
	packed   func(n int) // is told how many frames are packed
	config   []byte
	err      error
	dequeued chan struct{}
}

func newEncoder(settings map[string]any, packed func(n int)) *encoder {
	e := &encoder{packed: packed, dequeued: make(chan struct{}, 1)}
	wake := func() {
		select {
		case e.dequeued <- struct{}{}:
		default:
		}
	}
	output := js.FuncOf(func(_ js.Value, args []js.Value) any {
		chunk := args[0]
		data := js.Global().Get("Uint8Array").New(chunk.Get("byteLength"))
		chunk.Call("copyTo", data)
		e.frames = append(e.frames, film.Sample{Data: bytesOf(data), Key: chunk.Get("type").String() == "key"})
		if len(args) > 1 && args[1].Truthy() {
			if c := args[1].Get("decoderConfig"); e.config == nil && c.Truthy() && c.Get("description").Truthy() {
				e.config = bytesOf(viewOf(c.Get("description")))
			}
		}
		e.packed(len(e.frames))
		return nil
	})
	failed := js.FuncOf(func(_ js.Value, args []js.Value) any {
		e.err = errors.New(args[0].Get("message").String())
		wake()
		return nil
	})
	e.Value = js.Global().Get("VideoEncoder").New(map[string]any{"output": output, "error": failed})
	e.Call("addEventListener", "dequeue", js.FuncOf(func(js.Value, []js.Value) any { wake(); return nil }))
	e.Call("configure", settings)
	return e
}

// viewOf returns the bytes of a buffer or of a view on one.
func viewOf(v js.Value) js.Value {
	u := js.Global().Get("Uint8Array")
	if v.InstanceOf(js.Global().Get("ArrayBuffer")) {
		return u.New(v)
	}
	return u.New(v.Get("buffer"), v.Get("byteOffset"), v.Get("byteLength"))
}

func bytesOf(a js.Value) []byte {
	b := make([]byte, a.Get("length").Int())
	js.CopyBytesToGo(b, a)
	return b
}

// frame is one as an encoder takes it.
type frame struct {
	pixels        []byte // as film.ToYUV has them
	width, height int
	begins, lasts float64 // microseconds
}

// add packs a frame.
func (e *encoder) add(k int, f frame) error {
	for e.err == nil && e.Get("encodeQueueSize").Int() >= ahead {
		<-e.dequeued
	}
	if e.err != nil {
		return e.err
	}
	settings := js.ValueOf(map[string]any{
		"format": "I420", "codedWidth": f.width, "codedHeight": f.height, "timestamp": f.begins, "duration": f.lasts, "colorSpace": filmed,
	})
	at := uintptr(unsafe.Pointer(unsafe.SliceData(f.pixels)))
	picture := js.Global().Call("whorlbenchFrame", int(at), len(f.pixels), settings)
	e.Call("encode", picture, map[string]any{"keyFrame": k%keyEvery == 0})
	picture.Call("close")
	return nil
}

// filmed are the colours of frames.
var filmed = map[string]any{"primaries": "bt709", "transfer": "iec61966-2-1", "matrix": "bt709", "fullRange": false}

func (e *encoder) finish() error {
	if e.err != nil {
		return e.err
	}
	_, err := await(e.Call("flush"))
	if e.err != nil {
		err = e.err
	}
	return err
}

// writeFilm has the browser pack the frames, and writes the film.
func writeFilm(job film.Job, out io.Writer, tell capture.Progress) error {
	settings, err := settingsOf(job)
	if err != nil {
		return err
	}
	var sound *film.Sound
	if job.Clicks {
		if sound, err = packClicks(job); err != nil {
			return err
		}
	}
	l := job.Take.Timeline()
	// What counts is what is packed: the encoder is behind the painting.
	encoders := []*encoder{newEncoder(settings, func(n int) { tell(n, l.N) })}
	clear := job.Ground == capture.Clear
	if clear {
		encoders = append(encoders, newEncoder(settings, func(int) {}))
	}
	const micro = 1_000_000
	clock := l.Clock(micro)
	colours, opacity := film.NewGrey(job.Width, job.Height), film.NewGrey(job.Width, job.Height)
	straight := image.NewRGBA(image.Rect(0, 0, job.Width, job.Height))
	err = job.EachFrame(context.Background(), l, nil, func(k int, f capture.Frame) error {
		if clear {
			f = f.Unmultiply(straight)
		}
		add := func(e *encoder, pixels []byte) error {
			return e.add(k, frame{pixels, job.Width, job.Height, float64(clock.At(int64(k))), float64(clock.Delay(k))})
		}
		film.ToYUV(colours, f)
		if err := add(encoders[0], colours); err != nil || !clear {
			return err
		}
		film.OpacityToYUV(opacity, f)
		return add(encoders[1], opacity)
	})
	for _, e := range encoders {
		if err == nil {
			err = e.finish()
		}
	}
	if err != nil {
		return err
	}
	track := film.Track{Width: job.Width, Height: job.Height, Timeline: l, Config: encoders[0].config, Samples: encoders[0].frames, Sound: sound}
	if len(track.Samples) != l.N || clear && len(encoders[1].frames) != l.N {
		return fmt.Errorf("the browser packed %d of %d frames", len(track.Samples), l.N)
	}
	if clear {
		for k := range track.Samples {
			track.Samples[k].Alpha = encoders[1].frames[k].Data
		}
	}
	if job.Film == film.MP4 {
		return track.WriteMP4(out)
	}
	return track.WriteWebM(out)
}
