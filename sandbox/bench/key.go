package bench

import (
	"image/color"

	"whorlbench/engine/naming"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
)

// keyEntry is one kind of stroke and its place in a key that is laid out in
// lines.
type keyEntry struct {
	spin naming.Spin
	text string
	x    float64
	line int
}

// layKey lays out which stroke means what, in lines of a width: of the kinds that
// are there, and nothing where all are plain.
func (b *Bench) layKey(st *scene.Stage, size, room float64, all ...*session.Session) (entries []keyEntry, lines int) {
	for _, f := range st.Kinds(all...) {
		text := b.Words.StrokeName(f)
		if n := len(entries); n > 0 && entries[n-1].spin == f.Spin { // they have one stroke
			entries[n-1].text += ", " + text
			continue
		}
		entries = append(entries, keyEntry{spin: f.Spin, text: text})
	}
	x := 0.0
	for i := range entries {
		wide := b.keyWide(entries[i].text, size)
		if i == 0 || x+wide-size > room {
			x, lines = 0, lines+1
		}
		entries[i].x, entries[i].line = x, lines-1
		x += wide
	}
	return entries, lines
}

// keyWide is how wide an entry is, with its sample, in letters of a size, and the
// gap after it.
func (b *Bench) keyWide(text string, size float64) float64 {
	return keySample*size + b.faces.Width(text, size, false) + size
}

// keySample is the room for a stroke's sample, in the letters' size.
const keySample = 2.4

// drawKey draws entries whose first line of letters stands at a place.
func (b *Bench) drawKey(l *display.List, entries []keyEntry, at display.Pt, size, width float64, ground, ink color.NRGBA) {
	for _, e := range entries {
		p := at.Add(display.Pt{X: e.x, Y: float64(e.line) * size * wordLine})
		scene.Sample(l, e.spin, p.Sub(display.Pt{Y: size * 0.34}), (keySample-0.4)*size, width, ink, ground)
		l.Text(p.Add(display.Pt{X: keySample * size}), size, false, ink, e.text)
	}
}
