package words

import (
	"fmt"
	"math"
	"math/big"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/duet"
)

// Duet holds the words for two hands together.
type Duet struct {
	Title        string
	Props, Hands string    // what the spans are of
	Directions   [4]string // by duet.Direction: none, same, opposite, still
	Timings      [5]string // by duet.Timing: none, together, quarter, split, between

	// Of a span. %s, %s: beats; %s: what is said of them.
	Beats, NoRound, Still string
	Ways                  [2]string // same, opposite
	WithTiming            string    // %s: ways, %s: timing
	MoreSpans             string    // %d

	// The bands, as a legend: what each timing is.
	Bands [4]TitledText

	// The summary of a list of spans. %s: props or hands.
	AllSame, AllOpposite, Changing string // how they turn
	AllStill, NoneRound            string
	Throughout                     string // %s: how they turn, %s: the one timing
	Path                           string // %s: how they turn, %s: timings
	PathTimes                      string // %s: how they turn, %s: timings, %d
	PathLong                       string // %s: how they turn
	JustTurns                      string // %s: how they turn
	To                             string // between two timings

	// The tangle.
	Once, Twice, Times    string // %s: a number
	Anticlockwise         string
	Clockwise             string
	Wraps                 string // %s: how often, %s: which way
	Unwrapped             string
	NotWall, NeverBack    string
	Meet                  string // %s: beat
	MeetInPicture         string // %s: beat, %s: metres
	TooLong               string
	WrapsFault            string // %s: how often, %s: which way
	BothHands             string // where a fault is
	Nearest               string // %s: hands, heads or tethers, %s: metres, %s: beat
	AtMost                string // the same, where a smaller one is not ruled out
	Things                [3]string
	HeadsMayHit           string // %s: metres, %s: beat
	HeadsHit              string // %s: beat
	TethersCross          string // %s: a list of times
	TethersClose          string // %s: metres, %s: beat
	CrossTime, CrossAt    string // %s, %s: beats
	MoreTimes             string // %s: a list
	ReadPart              string // %s: beats
	SpansHead             [4]string
	SpanBeats             string // %s, %s: beats
	DegreesFromTo, NoSpan string // %s, %s: degrees
}

var englishDuet = Duet{
	Title: "two hands",
	Props: "Props", Hands: "Hands",
	Directions: [4]string{"–", "same", "opposite", "still"},
	Timings:    [5]string{"–", "together", "quarter", "split", "between"},

	Beats:      "Beats %s to %s: %s.",
	NoRound:    "the hands are not both on circles",
	Still:      "one of the two does not turn",
	Ways:       [2]string{"same direction", "opposite directions"},
	WithTiming: "%s, %s",
	MoreSpans:  "and %d more; --json gives them all",

	Bands: [4]TitledText{
		{"together", "Both point the same way (or, turning opposite ways, mirror each other), give or take 22.5°."},
		{"quarter", "One is a quarter turn ahead, 90° give or take 22.5°."},
		{"split", "One is half a turn ahead, 180° give or take 22.5°: one up while the other is down."},
		{"between", "Anywhere else, on the way from one of these to the next."},
	},

	AllSame:     "%s turn the same way throughout",
	AllOpposite: "%s turn opposite ways throughout",
	Changing:    "%s turn now the same way, now opposite ways",
	AllStill:    "%s: one of the two does not turn, so there is no direction and no timing.",
	NoneRound:   "%s: they are not both on circles, so there is no direction and no timing.",
	Throughout:  "%s: %s all the time.",
	Path:        "%s: %s.",
	PathTimes:   "%s: %s, %d times.",
	PathLong:    "%s; the timing wanders through every band.",
	JustTurns:   "%s.",
	To:          " → ",

	Once: "once", Twice: "twice", Times: "%s times",
	Anticlockwise: "anticlockwise",
	Clockwise:     "clockwise",
	Wraps:         "The arms wrap round each other %s before the pattern begins again, %s seen from the front. Unwind them by as many rounds the other way, or build it of C-caps, which turn back before they tangle.",
	Unwrapped:     "The arms come back untangled: whatever they wrap, they unwrap again.",
	NotWall:       "The hands are not both in the wall plane, where the arms would wrap, so no wraps are counted.",
	NeverBack:     "A hand does not come back to where it began, so it cannot be said how often the arms wrap.",
	Meet:          "The hands meet at beat %s, so it cannot be said how the arms wrap. Let one hand pass well in front of the other, or move them apart.",
	MeetInPicture: "Seen from the front the hands meet at beat %s, one %s m in front of the other, so it cannot be said how the arms wrap: that depends on which hand stays in front.",
	TooLong:       "The two rounds take too long to come together again for the wraps of the arms to be counted.",
	WrapsFault:    "the arms wrap round each other %s before the pattern begins again, %s seen from the front",
	BothHands:     "both hands",
	Nearest:       "%s: nearest %s m, at beat %s",
	AtMost:        "%s: nearest %s m or less, at beat %s",
	Things:        [3]string{"hands", "heads", "tethers"},
	HeadsMayHit:   "Take care: the heads come as near as %s m, at beat %s. They may hit each other. Use soft props, go slowly, and keep the hands further apart.",
	HeadsHit:      "Take care: the heads meet at beat %s and would hit each other. Use soft props, go slowly, and let one hand pass well in front of the other.",
	TethersCross:  "The tethers cross: %s. Real ones would catch on each other there; with one hand well in front of the other they pass.",
	TethersClose:  "The tethers come as near as %s m, at beat %s: little room for a hand that strays.",
	CrossTime:     "beats %s to %s",
	CrossAt:       "beat %s",
	MoreTimes:     "%s, and again later",
	ReadPart:      "Only the first %s beats are read here; the whole takes longer to come back.",
	SpansHead:     [4]string{"beats", "direction", "timing", "apart"},
	SpanBeats:     "%s to %s",
	DegreesFromTo: "%s° to %s°",
	NoSpan:        "–",
}

// HeadsNear (m): heads nearer than a fist's breadth are told to take care, and
// so are tethers (common practice: the hands of two people learning stray by
// as much).
const HeadsNear = 0.1

// maxTold is how many timings, or times of crossing, a sentence has room for.
const maxTold = 9

// beat writes a beat as a person reads it.
func beat(x float64) string { return number(x, 3) }

// Direction returns the word for a direction, a dash for none.
func (t *Table) Direction(d duet.Direction) string { return t.Duet.Directions[d] }

// Timing returns the word for a timing, a dash for none.
func (t *Table) Timing(m duet.Timing) string { return t.Duet.Timings[m] }

// SpanSaid tells a span as a sentence.
func (t *Table) SpanSaid(s duet.Span) string {
	w := &t.Duet
	said := w.NoRound
	switch s.Direction {
	case duet.Still:
		said = w.Still
	case duet.Same:
		said = fmt.Sprintf(w.WithTiming, w.Ways[0], t.Timing(s.Timing))
	case duet.Opposite:
		said = fmt.Sprintf(w.WithTiming, w.Ways[1], t.Timing(s.Timing))
	}
	return fmt.Sprintf(w.Beats, beat(s.From), beat(s.To), said)
}

// SpansSaid tells a list of spans, of t.Duet.Props or t.Duet.Hands, in one
// line.
func (t *Table) SpansSaid(of string, spans []duet.Span) string {
	w := &t.Duet
	var turn [4]bool // which directions there are
	var path []duet.Timing
	named := false
	for _, s := range spans {
		turn[s.Direction] = true
		named = named || s.Timing != duet.NoTiming && s.Timing != duet.Between
	}
	for _, s := range spans {
		if s.Timing == duet.NoTiming || named && s.Timing == duet.Between {
			continue
		}
		if n := len(path); n == 0 || path[n-1] != s.Timing {
			path = append(path, s.Timing)
		}
	}
	var turns string
	switch {
	case turn[duet.Same] && turn[duet.Opposite]:
		turns = fmt.Sprintf(w.Changing, of)
	case turn[duet.Same]:
		turns = fmt.Sprintf(w.AllSame, of)
	case turn[duet.Opposite]:
		turns = fmt.Sprintf(w.AllOpposite, of)
	case turn[duet.Still]:
		return fmt.Sprintf(w.AllStill, of)
	default:
		return fmt.Sprintf(w.NoneRound, of)
	}
	return t.pathSaid(turns, path)
}

func (t *Table) pathSaid(turns string, path []duet.Timing) string {
	w := &t.Duet
	if len(path) == 1 {
		return fmt.Sprintf(w.Throughout, turns, t.Timing(path[0]))
	}
	once, times := lap(path)
	if len(once) > maxTold {
		return fmt.Sprintf(w.PathLong, turns)
	}
	said := make([]string, len(once))
	for i, m := range once {
		said[i] = t.Timing(m)
	}
	text := strings.Join(said, w.To)
	if times > 1 {
		return fmt.Sprintf(w.PathTimes, turns, text, times)
	}
	return fmt.Sprintf(w.Path, turns, text)
}

// lap returns the part of a path that comes back to its own beginning again
// and again, with that beginning at both ends, and how often; the whole path,
// once, if there is none.
func lap(path []duet.Timing) (once []duet.Timing, times int) {
	n := len(path) - 1
	for p := 1; p <= n/2; p++ {
		if n%p == 0 && slices.Equal(path[p:], path[:n+1-p]) {
			return path[:p+1], n / p
		}
	}
	return path, 1
}

// howOften says how often, and which way, the arms wrap.
func (t *Table) howOften(n *big.Int) (often, way string) {
	w := &t.Duet
	way = w.Anticlockwise
	if n.Sign() < 0 {
		way = w.Clockwise
	}
	size := new(big.Int).Abs(n)
	switch {
	case size.IsInt64() && size.Int64() == 1:
		return w.Once, way
	case size.IsInt64() && size.Int64() == 2:
		return w.Twice, way
	}
	return fmt.Sprintf(w.Times, size), way
}

// TangleSaid tells in a sentence or two whether the arms wrap.
func (t *Table) TangleSaid(r *duet.Reading) string {
	w := &t.Duet
	switch r.Tangle.Why {
	case duet.NotWall:
		return w.NotWall
	case duet.NeverBack:
		return w.NeverBack
	case duet.HandsMeet:
		at := beat(r.Tangle.MeetAt)
		if r.Hand.Distance >= engine.TolMeet {
			return fmt.Sprintf(w.MeetInPicture, at, Metres(r.Hand.Distance))
		}
		return fmt.Sprintf(w.Meet, at)
	case duet.TooLong:
		return w.TooLong
	}
	if r.Tangle.Winding.Sign() == 0 {
		return w.Unwrapped
	}
	often, way := t.howOften(r.Tangle.Winding)
	return fmt.Sprintf(w.Wraps, often, way)
}

// TangleFault says what is wrong with arms that wrap.
func (t *Table) TangleFault(winding *big.Int) string {
	often, way := t.howOften(winding)
	return fmt.Sprintf(t.Duet.WrapsFault, often, way)
}

// NearestSaid tells the least distances, a line each: hands, heads, tethers.
func (t *Table) NearestSaid(r *duet.Reading) []string {
	w := &t.Duet
	var lines []string
	for i, n := range []duet.Nearest{r.Hand, r.Head, r.Tether} {
		line := w.Nearest
		if math.IsInf(n.Distance, 1) {
			continue // nothing was read
		}
		if n.AtMost {
			line = w.AtMost
		}
		lines = append(lines, fmt.Sprintf(line, w.Things[i], Metres(n.Distance), beat(n.Beat)))
	}
	return lines
}

// DuetCautions tells what to take care of when two hands are so near, and
// what was not read.
func (t *Table) DuetCautions(r *duet.Reading) []string {
	w := &t.Duet
	var lines []string
	switch {
	case r.Head.Distance < engine.TolMeet:
		lines = append(lines, fmt.Sprintf(w.HeadsHit, beat(r.Head.Beat)))
	case r.Head.Distance < HeadsNear:
		lines = append(lines, fmt.Sprintf(w.HeadsMayHit, Metres(r.Head.Distance), beat(r.Head.Beat)))
	}
	switch {
	case len(r.Crossings) > 0:
		var times []string
		for _, c := range r.Crossings[:min(len(r.Crossings), maxTold)] {
			from, to := beat(c.From), beat(c.To)
			if from == to {
				times = append(times, fmt.Sprintf(w.CrossAt, from))
			} else {
				times = append(times, fmt.Sprintf(w.CrossTime, from, to))
			}
		}
		said := strings.Join(times, ", ")
		if len(r.Crossings) > maxTold {
			said = fmt.Sprintf(w.MoreTimes, said)
		}
		lines = append(lines, fmt.Sprintf(w.TethersCross, said))
	case r.Tether.Distance < HeadsNear && r.Tether.Distance < r.Head.Distance:
		lines = append(lines, fmt.Sprintf(w.TethersClose, Metres(r.Tether.Distance), beat(r.Tether.Beat)))
	}
	if r.Closes && !r.Whole {
		lines = append(lines, fmt.Sprintf(w.ReadPart, beat(r.Until)))
	}
	return lines
}
