package presets

import (
	"fmt"
	"unicode/utf8"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/words"
)

// Validate reports whether p can be written to a file and read back equal:
// nil, or Errors with every value that is out of range, or is a fraction that
// has neither a finite decimal of at most MaxDigits characters nor a
// denominator up to MaxDenominator.
func Validate(p engine.Pattern) error {
	v := &validator{}
	v.pattern(p)
	return v.bad.list("", func(int) (line, col int) { return 0, 0 })
}

// validator walks a pattern with the same ranges with which a file is read.
type validator struct {
	bad   problems
	place Error
}

// wrong notes a problem with a key of the place the walk is at.
func (v *validator) wrong(key, found, allowed string) {
	e := v.place
	if e.Key != "" && key != "" {
		key = "." + key
	}
	e.Key += key
	v.bad.add(v.bad.total, e, func() string {
		return fmt.Sprintf(words.Said.Preset.FoundAllowed, found, allowed)
	})
}

func (v *validator) pattern(p engine.Pattern) {
	w := &words.Said.Preset
	v.text("title", p.Title, 1, MaxTitle)
	v.text("notes", p.Notes, 0, MaxNotes)
	v.number("tempo", p.Tempo, tempoSpan)
	v.place = Error{Key: "performer"}
	v.number("tether", p.Performer.Tether, tetherSpan)
	v.number("shoulders", p.Performer.Shoulders, shouldersSpan)
	v.number("reach", p.Performer.Reach, reachSpan)
	v.number("head_mass", p.Performer.HeadMass, headMassSpan)
	v.place = Error{Key: "hand"}
	if n := len(p.Lanes); n < 1 || n > MaxHands {
		v.wrong("", fmt.Sprintf(w.Count, n), fmt.Sprintf(w.Hands, 1, MaxHands))
	}
	for i, l := range p.Lanes {
		v.place = Error{Key: "hand", Hand: i + 1}
		for j := range i {
			if p.Lanes[j].Side == l.Side && int(l.Side) < len(sideNames) {
				v.wrong("side", fmt.Sprintf(w.Again, quoted(sideNames[l.Side]), j+1), w.SideOnce)
			}
		}
		v.lane(l)
	}
}

func (v *validator) lane(l engine.Lane) {
	w := &words.Said.Preset
	v.choice("side", int(l.Side), sideNames)
	v.choice("plane", int(l.Plane), planeNames)
	v.number("offset", l.Offset, offsetSpan)
	v.centre(l.Centre)
	v.number("tether", l.Tether, tetherSpan)
	v.number("arm_at", float64(l.ArmAt), angleSpan)
	v.number("prop_at", float64(l.PropAt), angleSpan)
	if n := len(l.Pieces); n < 1 || n > MaxPieces {
		v.wrong("piece", fmt.Sprintf(w.Count, n), fmt.Sprintf(w.Pieces, 1, MaxPieces))
		return
	}
	v.place.Key = "hand.piece"
	for i, p := range l.Pieces {
		v.place.Piece = i + 1
		v.piece(p)
	}
}

func (v *validator) piece(p engine.Piece) {
	w := &words.Said.Preset
	v.fraction("arm", p.Arm, turnsSpan)
	v.fraction("prop", p.Prop, turnsSpan)
	v.fraction("cycles", p.Cycles, cyclesSpan)
	beats := v.fraction("beats", p.Beats, beatsSpan)
	from, to := v.fraction("part", p.From, partSpan), v.fraction("part", p.To, partSpan)
	switch {
	case !from || !to:
	case !p.From.Less(p.To):
		found := fmt.Sprintf(w.Place, short(p.From.String()), short(p.To.String()))
		v.wrong("part", found, w.APart)
	case beats && p.Length().Float() == 0:
		v.wrong("part", fmt.Sprintf(w.TooSmall, w.KeptTime), w.LongerTime)
	}
	v.path(p.Path)
	if p.ArmAt.Set {
		v.number("arm_at", float64(p.ArmAt.At), angleSpan)
	}
	if p.PropAt.Set {
		v.number("prop_at", float64(p.PropAt.At), angleSpan)
	}
	v.choice("law", int(p.Law), lawNames)
	v.number("swing", float64(p.Swing), swingSpan)
	if p.SwingBack && p.Swing == 0 {
		v.wrong("swing_back", "true", w.SwingBackOnly)
	}
}

// path checks that the axes are those of the path's kind: a file has no way
// to say anything else.
func (v *validator) path(p engine.Path) {
	w := &words.Said.Preset
	if !v.choice("path", int(p.Kind), pathNames) {
		return
	}
	v.centre(p.Centre)
	v.number("tilt", float64(p.Tilt), angleSpan)
	found := fmt.Sprintf(w.Place, plain(p.A), plain(p.B))
	switch {
	case p.Kind == engine.OnPoint:
		if !p.IsPoint() {
			v.wrong("radius", found, w.NoRadius)
		}
		return
	case p.Kind == engine.OnCircle && p.A != p.B:
		v.wrong("radius", found, w.OneRadius)
		return
	case p.Kind == engine.OnLine && p.B != 0:
		v.wrong("radius", found, w.OneLength)
		return
	}
	v.number("radius", p.A, radiusSpan)
	if p.Kind == engine.OnEllipse {
		v.number("radius", p.B, radiusSpan)
	}
}

func (v *validator) text(key, s string, least, most int) {
	w := &words.Said.Preset
	allowed := fmt.Sprintf(w.Characters, least, most)
	n := utf8.RuneCountInString(s)
	switch {
	case !utf8.ValidString(s):
		v.wrong(key, w.BadText, allowed)
	case n < least || n > most:
		v.wrong(key, fmt.Sprintf(w.TextLength, n), allowed)
	}
}

func (v *validator) number(key string, x float64, lim span) {
	if !lim.has(x) {
		v.wrong(key, plain(x), lim.String())
	}
}

func (v *validator) centre(c complex128) {
	w := &words.Said.Preset
	if !centreFits(c) {
		v.wrong("centre", fmt.Sprintf(w.Place, plain(real(c)), plain(imag(c))), fmt.Sprintf(w.APlace, plain(maxCentre)))
	}
}

func (v *validator) choice(key string, i int, names []string) bool {
	if i < len(names) {
		return true
	}
	v.wrong(key, fmt.Sprintf(words.Said.Preset.Nameless, i), oneOf(names))
	return false
}

func (v *validator) fraction(key string, f frac.Frac, lim span) bool {
	w := &words.Said.Preset
	shown := short(f.String())
	if _, found, allowed := within(f, lim, shown); found != "" {
		v.wrong(key, found, allowed)
		return false
	}
	if _, ok := literal(f); !ok {
		v.wrong(key, fmt.Sprintf(w.NotWritable, shown), fmt.Sprintf(w.Writable, MaxDigits, MaxDenominator))
		return false
	}
	return true
}
