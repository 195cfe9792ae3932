package presets

import (
	"fmt"
	"strconv"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/words"
)

// Encode writes p as a pattern file: defaults left out, keys in the order of
// the format, so that equal patterns give equal bytes and Decode gives back a
// pattern equal to p. What Validate objects to is not written, nor more than
// MaxFileSize bytes, which only thousands of very long decimals come to.
func Encode(p engine.Pattern) ([]byte, error) {
	if err := Validate(p); err != nil {
		return nil, err
	}
	var w writer
	w.pattern(p)
	if len(w.buf) > MaxFileSize {
		return nil, Errors{{What: fmt.Sprintf(words.Said.Preset.TooLarge, len(w.buf), MaxFileSize)}}
	}
	return w.buf, nil
}

// writer writes a valid pattern.
type writer struct{ buf []byte }

func (w *writer) key(name, value string) {
	w.buf = append(w.buf, name...)
	w.buf = append(w.buf, " = "...)
	w.buf = append(w.buf, value...)
	w.buf = append(w.buf, '\n')
}

// header begins a table, after an empty line.
func (w *writer) header(name string) {
	w.buf = append(w.buf, '\n')
	w.buf = append(w.buf, name...)
	w.buf = append(w.buf, '\n')
}

// number writes a key whose value is not its default.
func (w *writer) number(name string, x, def float64) {
	if x != def {
		w.key(name, decimal(x))
	}
}

func (w *writer) pattern(p engine.Pattern) {
	w.key("format", strconv.Itoa(Format))
	w.key("title", quote(p.Title))
	if p.Notes != "" {
		w.key("notes", quoteLines(p.Notes))
	}
	w.key("tempo", decimal(p.Tempo))
	if def := engine.DefaultPerformer(); p.Performer != def {
		w.header("[performer]")
		w.number("tether", p.Performer.Tether, def.Tether)
		w.flag("rigid", p.Performer.Rigid)
		w.number("shoulders", p.Performer.Shoulders, def.Shoulders)
		w.number("reach", p.Performer.Reach, def.Reach)
		w.number("head_mass", p.Performer.HeadMass, def.HeadMass)
	}
	for _, l := range p.Lanes {
		w.header("[[hand]]")
		w.lane(l, p.Performer)
	}
}

func (w *writer) lane(l engine.Lane, p engine.Performer) {
	w.key("side", quote(sideNames[l.Side]))
	w.choice("plane", int(l.Plane), planeNames)
	w.number("offset", l.Offset, p.DefaultOffset(l.Side, l.Plane))
	w.place("centre", l.Centre)
	w.number("tether", l.Tether, p.Tether)
	w.number("arm_at", float64(l.ArmAt), float64(defaultStart))
	w.number("prop_at", float64(l.PropAt), float64(l.ArmAt))
	for _, p := range l.Pieces {
		w.header("[[hand.piece]]")
		w.piece(p, l.Tether)
	}
}

func (w *writer) piece(p engine.Piece, tether float64) {
	w.fraction("arm", p.Arm)
	w.fraction("prop", p.Prop)
	w.fraction("cycles", p.Cycles)
	if !p.Beats.Equal(defaultBeats) {
		w.fraction("beats", p.Beats)
	}
	if !p.IsWhole() {
		from, _ := literal(p.From)
		to, _ := literal(p.To)
		w.key("part", fmt.Sprintf("[%s, %s]", from, to))
	}
	w.choice("path", int(p.Path.Kind), pathNames)
	switch p.Path.Kind {
	case engine.OnPoint:
	case engine.OnEllipse:
		w.key("radius", fmt.Sprintf("[%s, %s]", decimal(p.Path.A), decimal(p.Path.B)))
	default:
		w.number("radius", p.Path.A, tether)
	}
	w.place("centre", p.Path.Centre)
	w.number("tilt", float64(p.Path.Tilt), 0)
	w.angle("arm_at", p.ArmAt)
	w.angle("prop_at", p.PropAt)
	w.choice("law", int(p.Law), lawNames)
	w.number("swing", float64(p.Swing), 0)
	w.flag("swing_back", p.SwingBack)
}

// choice writes the name of a choice that is not the first one.
func (w *writer) choice(name string, i int, names []string) {
	if i != 0 {
		w.key(name, quote(names[i]))
	}
}

func (w *writer) flag(name string, on bool) {
	if on {
		w.key(name, "true")
	}
}

func (w *writer) place(name string, c complex128) {
	if c != 0 {
		w.key(name, fmt.Sprintf("[%s, %s]", decimal(real(c)), decimal(imag(c))))
	}
}

func (w *writer) angle(name string, a engine.Opt) {
	if a.Set {
		w.key(name, decimal(float64(a.At)))
	}
}

func (w *writer) fraction(name string, f frac.Frac) {
	s, _ := literal(f)
	w.key(name, s)
}
