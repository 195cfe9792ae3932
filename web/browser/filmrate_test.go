//go:build browser

package browser

import (
	"bytes"
	"encoding/base64"
	"encoding/binary"
	"encoding/json"
	"fmt"
	"os"
	"testing"

	"github.com/chromedp/chromedp"
)

// boxBody returns the body of the first MP4 box of a kind (ISO/IEC 14496-12, 4.2),
// found by its name, which is sure enough to measure with.
func boxBody(data []byte, kind string) []byte {
	at := bytes.Index(data, []byte(kind))
	if at < 4 {
		return nil
	}
	return data[at+4 : at-4+int(binary.BigEndian.Uint32(data[at-4:]))]
}

// bareRate has the browser decode a film, keeps the frames in memory, and
// returns how many a second the bare encoder packs of them, with the settings
// that the bench has for it.
const bareRate = `(async (file, avcC, sizes, first, side, high, fps, codec) => {
	const bytes = (text) => Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
	const data = bytes(file), frames = [];
	const kept = [];
	const decoder = new VideoDecoder({ output: (f) => {
		kept.push((async () => {
			const pixels = new Uint8Array(f.allocationSize());
			await f.copyTo(pixels);
			frames.push({ pixels, format: f.format, timestamp: f.timestamp, width: f.visibleRect.width, height: f.visibleRect.height });
			f.close();
		})());
	}, error: (e) => { throw e; } });
	decoder.configure({ codec: "avc1.640033", description: bytes(avcC), codedWidth: side, codedHeight: high });
	let at = first;
	sizes.forEach((n, k) => {
		decoder.decode(new EncodedVideoChunk({ type: k %% 100 ? "delta" : "key", timestamp: k * 1e6 / fps, data: data.subarray(at, at + n) }));
		at += n;
	});
	await decoder.flush();
	await Promise.all(kept);
	frames.sort((a, b) => a.timestamp - b.timestamp);
	const settings = { codec, width: side, height: high, framerate: fps, bitrate: Math.max(0.25 * fps * side * high, 500000), bitrateMode: "variable", latencyMode: "quality" };
	if (codec.startsWith("avc1")) settings.avc = { format: "avc" };
	let packed = 0;
	const began = performance.now();
	const encoder = new VideoEncoder({ output: () => packed++, error: (e) => { throw e; } });
	encoder.configure(settings);
	for (const [k, f] of frames.entries()) {
		while (encoder.encodeQueueSize >= 4) await new Promise((r) => encoder.addEventListener("dequeue", r, { once: true }));
		const picture = new VideoFrame(f.pixels, { format: f.format, codedWidth: f.width, codedHeight: f.height, timestamp: f.timestamp });
		encoder.encode(picture, { keyFrame: k %% 100 === 0 });
		picture.close();
	}
	await encoder.flush();
	return packed * 1000 / (performance.now() - began);
})(%s, %s, %s, %d, %d, %d, %d, %s)`

// timed presses Make and returns the file, and the seconds until it is there.
func (v *visit) timed() (seconds float64, data []byte) {
	v.t.Helper()
	eval[bool](v, `(() => {
		const said = document.getElementById("film-said"), began = performance.now();
		new MutationObserver((_, o) => { if (said.textContent) { window.filmTook = performance.now() - began; o.disconnect(); } }).observe(said, { childList: true, characterData: true, subtree: true });
		return true;
	})()`)
	_, data = v.made()
	return eval[float64](v, `window.filmTook`) / 1000, data
}

// TestFilmRate measures, it judges nothing: how many frames a second a film is
// made at, from the press of the button to the file, next to what the bare
// encoder packs of the same film's frames out of memory. `make bench-capture`
// runs it.
func TestFilmRate(t *testing.T) {
	if os.Getenv("WHORLBENCH_CAPTURE") == "" {
		t.Skip("measures only for make bench-capture")
	}
	v := newVisit(t, desk)
	v.pause()
	v.openFilm()
	for _, tt := range []struct {
		format, codec      string
		wide, high, rounds int
	}{
		{"mp4", "avc1.640033", 720, 720, 4}, {"mp4", "avc1.640033", 720, 720, 20}, {"mp4", "avc1.640033", 1920, 1080, 4},
		{"webm", "vp09.00.51.08", 720, 720, 4}, {"webm", "vp09.00.51.08", 1920, 1080, 4},
	} {
		const fps, kept = 25, 50 // kept: in memory for the bare encoder
		frames := float64(50 * tt.rounds)
		wish := map[string]any{"format": "mp4", "size": "own", "width": tt.wide, "height": tt.high, "fps": "25", "ground": "theme", "slow": "1", "length": "own", "rounds": tt.rounds, "clicks": false}
		name := fmt.Sprintf("half-moon-%dx%d-25fps.", tt.wide, tt.high)
		ask := func(format string) (rate float64, data []byte) {
			wish["format"] = format
			v.wishes(wish)
			v.wait(`document.getElementById("film-about").textContent.startsWith(` + quote(name+format) + `)`)
			if eval[bool](v, `document.getElementById("film-make").disabled`) {
				t.Skipf("this browser has no encoder for %s", format)
			}
			took, data := v.timed()
			return frames / took, data
		}
		_, film := ask("mp4")
		whole, _ := ask(tt.format)
		table := boxBody(film, "stsz")
		var sizes []uint32
		for k := range kept {
			sizes = append(sizes, binary.BigEndian.Uint32(table[12+4*k:]))
		}
		text := func(b []byte) string { return quote(base64.StdEncoding.EncodeToString(b)) }
		list, err := json.Marshal(sizes)
		must(t, err)
		first := binary.BigEndian.Uint32(boxBody(film, "stco")[8:])
		bare, err := chromedp.Run(v.ctx, chromedp.Evaluate[float64](fmt.Sprintf(bareRate, text(film), text(boxBody(film, "avcC")), list, first, tt.wide, tt.high, fps, quote(tt.codec)), chromedp.EvalAwaitPromise))
		if err != nil {
			t.Fatal(err)
		}
		t.Logf("%s %dx%d, %.0f frames: %.1f a second from the button to the file, the bare encoder %.1f: %.2f of it", tt.format, tt.wide, tt.high, frames, whole, bare, whole/bare)
	}
}
