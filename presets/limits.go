package presets

import (
	"fmt"
	"strconv"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/words"
)

// span is a range of numbers; its upper end is always in it.
type span struct {
	lo, hi float64
	above  bool // the lower end itself is not in it
}

// The ranges of every number in a file, in the units that the file has.
var (
	tempoSpan     = span{lo: 10, hi: 400}
	tetherSpan    = span{lo: 0.05, hi: 3}
	shouldersSpan = span{lo: 0.1, hi: 1}
	reachSpan     = span{lo: 0.2, hi: 2}
	headMassSpan  = span{lo: 0.01, hi: 5}
	offsetSpan    = span{lo: -10, hi: 10}
	angleSpan     = span{lo: -36_000, hi: 36_000}
	turnsSpan     = span{lo: -64, hi: 64}
	cyclesSpan    = span{lo: 0, hi: 1000, above: true}
	beatsSpan     = span{lo: 0, hi: 10_000, above: true}
	partSpan      = span{lo: 0, hi: 1}
	radiusSpan    = span{lo: 0, hi: 5, above: true}
	swingSpan     = span{lo: 0, hi: 180}
)

// maxCentre (m) bounds the distance of a centre from the origin.
const maxCentre = 10

// Defaults of a file that depend on nothing else.
const defaultStart = engine.Degrees(90)

var defaultBeats = frac.Int(1)

// has reports whether x lies in the range; NaN lies in none.
func (s span) has(x float64) bool {
	return x <= s.hi && (x > s.lo || x == s.lo && !s.above)
}

// hasExactly is has without rounding; the ends are whole.
func (s span) hasExactly(f frac.Frac) bool {
	c := f.Cmp(frac.Int(int64(s.lo)))
	return (c > 0 || c == 0 && !s.above) && !frac.Int(int64(s.hi)).Less(f)
}

func (s span) String() string {
	w := &words.Said.Preset
	form := w.Between
	if s.above {
		form = w.Above
	}
	return fmt.Sprintf(form, plain(s.lo), plain(s.hi))
}

// plain writes x in its shortest form, as a file would.
func plain(x float64) string { return strconv.FormatFloat(x+0, 'f', -1, 64) }

// The names of choices, in the order of the engine's constants.
var (
	sideNames  = []string{"left", "right"}
	planeNames = []string{"wall", "wheel", "floor"}
	pathNames  = []string{"circle", "line", "ellipse", "point"}
	lawNames   = []string{"even", "ease-start", "ease-end", "ease-both"}
)

// The keys of each table, in the order in which they are written.
var (
	rootKeys      = []string{"format", "title", "notes", "tempo", "performer", "hand"}
	performerKeys = []string{"tether", "rigid", "shoulders", "reach", "head_mass"}
	handKeys      = []string{"side", "plane", "offset", "centre", "tether", "arm_at", "prop_at", "piece"}
	pieceKeys     = []string{"arm", "prop", "cycles", "beats", "part", "path", "radius", "centre", "tilt",
		"arm_at", "prop_at", "law", "swing", "swing_back"}
)
