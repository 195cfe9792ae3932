package presets

import (
	"fmt"
	"math"
	"unicode/utf8"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/words"
)

// Decode reads a pattern file. The name is what its problems are reported
// under. Defaults are filled in: a hand's own tether, plane offset and start,
// a piece's radius.
//
// What cannot be used is refused with Errors: all problems at once if the
// file is TOML and of a format that is read, else the one that says why not.
// The time taken grows with the size of the file and no faster.
func Decode(name string, data []byte) (engine.Pattern, error) {
	src, err := newSource(name, data)
	if err != nil {
		return engine.Pattern{}, err
	}
	var bad problems
	root, err := parse(src, &bad)
	if err != nil {
		return engine.Pattern{}, err
	}
	s := &section{table: root, bad: &bad, known: rootKeys}
	if !s.format() {
		// Another format has other keys: what they mean is not ours to say.
		return engine.Pattern{}, bad.list(name, src.position)
	}
	p := s.pattern()
	if err := bad.list(name, src.position); err != nil {
		return engine.Pattern{}, err
	}
	return p, nil
}

// format checks the key format; it is false for a format that is not read.
func (s *section) format() bool {
	v := s.need("format", fmt.Sprintf(words.Said.Preset.AFormat, Format))
	if v == nil || v.kind == isWhole && v.float() == Format {
		return true
	}
	s.wrong(v.off, "format", v.found(), fmt.Sprintf(words.Said.Preset.AFormat, Format))
	return false
}

func (s *section) pattern() engine.Pattern {
	p := engine.Pattern{
		Title:     s.text("title", 1, MaxTitle),
		Notes:     s.text("notes", 0, MaxNotes),
		Tempo:     s.needNumber("tempo", tempoSpan),
		Performer: s.performer(),
	}
	p.Lanes = s.hands(p.Performer)
	s.done()
	return p
}

// text returns a text of so many characters; at least 1 makes it required.
func (s *section) text(key string, least, most int) string {
	w := &words.Said.Preset
	allowed := fmt.Sprintf(w.Characters, least, most)
	v := s.take(key)
	switch {
	case v == nil && least > 0:
		s.missing(key, allowed)
	case v == nil:
	case v.kind != isText:
		s.wrong(v.off, key, v.found(), allowed)
	default:
		if n := utf8.RuneCountInString(v.text); n < least || n > most {
			s.wrong(v.off, key, fmt.Sprintf(w.TextLength, n), allowed)
		}
		return v.text
	}
	return ""
}

func (s *section) performer() engine.Performer {
	p := engine.DefaultPerformer()
	v := s.take("performer")
	if v == nil {
		return p
	}
	if v.kind != isTable {
		s.wrong(v.off, "performer", v.found(), words.Said.Preset.OneTable)
		return p
	}
	in := &section{table: v.table, bad: s.bad, place: Error{Key: "performer"}, known: performerKeys}
	p.Tether = in.number("tether", tetherSpan, p.Tether)
	p.Rigid, _ = in.flag("rigid")
	p.Shoulders = in.number("shoulders", shouldersSpan, p.Shoulders)
	p.Reach = in.number("reach", reachSpan, p.Reach)
	p.HeadMass = in.number("head_mass", headMassSpan, p.HeadMass)
	in.done()
	return p
}

func (s *section) hands(p engine.Performer) []engine.Lane {
	w := &words.Said.Preset
	allowed := fmt.Sprintf(w.Hands, 1, MaxHands)
	v := s.need("hand", allowed)
	if v == nil {
		return nil
	}
	if v.kind != isList {
		s.wrong(v.off, "hand", v.found(), allowed)
		return nil
	}
	if v.count < 1 || v.count > MaxHands {
		off := v.off
		if v.count > MaxHands {
			off = v.items[MaxHands].off
		}
		s.wrong(off, "hand", fmt.Sprintf(w.Count, v.count), allowed)
	}
	var lanes []engine.Lane
	sides := map[engine.Side]int{}
	for i, item := range v.items[:min(len(v.items), MaxHands)] {
		if item.kind != isTable {
			e := Error{Key: "hand", Hand: i + 1}
			s.bad.add(item.off, e, func() string { return fmt.Sprintf(w.FoundAllowed, item.found(), w.OneTable) })
			continue
		}
		in := &section{table: item.table, bad: s.bad, place: Error{Key: "hand", Hand: i + 1}, known: handKeys}
		lanes = append(lanes, in.hand(p, sides))
	}
	return lanes
}

// hand reads one hand. The map says in which hand each side has been met.
func (s *section) hand(p engine.Performer, sides map[engine.Side]int) engine.Lane {
	w := &words.Said.Preset
	var l engine.Lane
	if i, ok := s.choice("side", sideNames, true); ok {
		l.Side = engine.Side(i)
		if first := sides[l.Side]; first > 0 {
			found := fmt.Sprintf(w.Again, quoted(sideNames[i]), first)
			s.wrong(s.table.find("side").value.off, "side", found, w.SideOnce)
		}
		sides[l.Side] = s.place.Hand
	}
	plane, _ := s.choice("plane", planeNames, false)
	l.Plane = engine.Plane(plane)
	l.Offset = s.number("offset", offsetSpan, p.DefaultOffset(l.Side, l.Plane))
	l.Centre = s.centre()
	l.Tether = s.number("tether", tetherSpan, p.Tether)
	l.ArmAt = s.degrees("arm_at", defaultStart)
	l.PropAt = s.degrees("prop_at", l.ArmAt)
	l.Pieces = s.pieces(l.Tether)
	s.done()
	return l
}

// centre reads a place in the plane, (0, 0) if absent.
func (s *section) centre() complex128 {
	w := &words.Said.Preset
	v := s.take("centre")
	if v == nil {
		return 0
	}
	if v.kind == isList && v.count == 2 && v.items[0].isNumber() && v.items[1].isNumber() {
		c := complex(v.items[0].float(), v.items[1].float())
		if !centreFits(c) {
			found := fmt.Sprintf(w.Place, v.items[0].found(), v.items[1].found())
			s.wrong(v.off, "centre", found, fmt.Sprintf(w.APlace, plain(maxCentre)))
		}
		return c
	}
	s.wrong(v.off, "centre", v.found(), fmt.Sprintf(w.APlace, plain(maxCentre)))
	return 0
}

// centreFits reports whether a centre is near enough to the origin; one that
// is not a number is not.
func centreFits(c complex128) bool { return math.Hypot(real(c), imag(c)) <= maxCentre }

func (s *section) pieces(tether float64) []engine.Piece {
	w := &words.Said.Preset
	allowed := fmt.Sprintf(w.Pieces, 1, MaxPieces)
	v := s.need("piece", allowed)
	switch {
	case v == nil:
		return nil
	case v.kind != isList:
		s.wrong(v.off, "piece", v.found(), allowed)
		return nil
	case v.count < 1 || v.count > MaxPieces:
		s.wrong(v.off, "piece", fmt.Sprintf(w.Count, v.count), allowed)
		return nil // what is wrong inside so many is of no use to anyone
	}
	pieces := make([]engine.Piece, 0, len(v.items))
	for i, item := range v.items {
		place := Error{Key: "hand.piece", Hand: s.place.Hand, Piece: i + 1}
		if item.kind != isTable {
			s.bad.add(item.off, place, func() string { return fmt.Sprintf(w.FoundAllowed, item.found(), w.OneTable) })
			continue
		}
		in := &section{table: item.table, bad: s.bad, place: place, known: pieceKeys}
		pieces = append(pieces, in.piece(tether))
	}
	return pieces
}

func (s *section) piece(tether float64) engine.Piece {
	w := &words.Said.Preset
	var p engine.Piece
	p.Arm = s.needFraction("arm", turnsSpan)
	p.Prop = s.needFraction("prop", turnsSpan)
	p.Cycles = s.needFraction("cycles", cyclesSpan)
	p.Beats = s.fraction("beats", beatsSpan, defaultBeats)
	p.From, p.To = s.part()
	if p.Length().Float() == 0 {
		s.wrong(s.table.off, "part", fmt.Sprintf(w.TooSmall, w.KeptTime), w.LongerTime)
	}
	p.Path = s.path(tether)
	p.ArmAt = s.angle("arm_at")
	p.PropAt = s.angle("prop_at")
	law, _ := s.choice("law", lawNames, false)
	p.Law = engine.Law(law)
	p.Swing = engine.Degrees(s.number("swing", swingSpan, 0))
	back, at := s.flag("swing_back")
	if back && p.Swing == 0 {
		s.wrong(at.off, "swing_back", at.found(), w.SwingBackOnly)
	}
	p.SwingBack = back
	s.done()
	return p
}

// part reads which share of a stroke's time is kept.
func (s *section) part() (from, to frac.Frac) {
	w := &words.Said.Preset
	from, to = frac.Int(0), frac.Int(1)
	v := s.take("part")
	if v == nil {
		return from, to
	}
	if v.kind != isList || v.count != 2 {
		s.wrong(v.off, "part", v.found(), w.APart)
		return from, to
	}
	var ends [2]frac.Frac
	for i, item := range v.items {
		f, found, allowed := item.exact(partSpan)
		if found != "" {
			s.wrong(item.off, "part", found, allowed)
			return from, to
		}
		ends[i] = f
	}
	if !ends[0].Less(ends[1]) {
		found := fmt.Sprintf(w.Place, v.items[0].found(), v.items[1].found())
		s.wrong(v.off, "part", found, w.APart)
		return from, to
	}
	return ends[0], ends[1]
}

// path reads where the hand goes; the shape of radius depends on its kind.
func (s *section) path(tether float64) engine.Path {
	w := &words.Said.Preset
	i, ok := s.choice("path", pathNames, false)
	p := engine.Path{Kind: engine.PathKind(i), Centre: s.centre(), Tilt: s.degrees("tilt", 0)}
	switch {
	case !ok:
		s.take("radius") // what it should be is not known
	case p.Kind == engine.OnPoint:
		if v := s.take("radius"); v != nil {
			s.wrong(v.off, "radius", v.found(), w.NoRadius)
		}
	case p.Kind == engine.OnEllipse:
		if v := s.need("radius", fmt.Sprintf(w.APair, radiusSpan)); v != nil {
			p.A, p.B, _ = s.pair(v, "radius", radiusSpan)
		}
	default:
		p.A = s.number("radius", radiusSpan, tether)
		if p.Kind == engine.OnCircle {
			p.B = p.A
		}
	}
	return p
}
