package words_test

import (
	"fmt"
	"strconv"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/words"
)

// A lane in one line: where arm and prop start (degrees), a colon, then the
// pieces between semicolons. A piece is arm, prop and cycles, and then what is not usual:
//
//	r=0.3           radius of a circle, half length of a line; 0.6 else
//	c=0.3,0         centre
//	line=45         straight stroke, its + end at 45°
//	oval=0.6,0.3,0  ellipse: semi-axes and tilt
//	point           the hand stays at the centre
//	beats=2         1 else
//	part=0,1/2      the kept part of the stroke
//	arm@180 prop@0  placed
//	swing=40        pendulum
//	start end both  easing
//
// The tether is 0.6 m. So "90 90: 1 1 1/2; -1 3 1/2" is half a circle in
// extension and back in four-petal antispin.
func lane(text string) engine.Lane {
	start, rest, ok := strings.Cut(text, ":")
	at := strings.Fields(start)
	if !ok || len(at) != 2 {
		panic("fixture " + text + ": want arm and prop, a colon, and pieces")
	}
	l := engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: degrees(at[0]), PropAt: degrees(at[1])}
	for _, p := range strings.Split(rest, ";") {
		l.Pieces = append(l.Pieces, piece(p))
	}
	return l
}

func piece(text string) engine.Piece {
	words := strings.Fields(text)
	p := engine.Stroke(engine.CirclePath(0, 0.6), fraction(words[0]), fraction(words[1]), fraction(words[2]), frac.Int(1))
	for _, w := range words[3:] {
		key, value, _ := strings.Cut(w, "=")
		values := strings.Split(value, ",")
		if where, at, ok := strings.Cut(w, "@"); ok {
			key, values = where+"@", []string{at}
		}
		switch key {
		case "r":
			p.Path.A = metres(values[0])
			if p.Path.Kind == engine.OnCircle {
				p.Path.B = p.Path.A
			}
		case "c":
			p.Path.Centre = complex(metres(values[0]), metres(values[1]))
		case "line":
			p.Path = engine.LinePath(p.Path.Centre, p.Path.A, degrees(values[0]))
		case "oval":
			p.Path = engine.EllipsePath(p.Path.Centre, metres(values[0]), metres(values[1]), degrees(values[2]))
		case "point":
			p.Path = engine.PointPath(p.Path.Centre)
		case "beats":
			p.Beats = fraction(values[0])
		case "part":
			p.From, p.To = fraction(values[0]), fraction(values[1])
		case "arm@":
			p.ArmAt = engine.Some(degrees(values[0]))
		case "prop@":
			p.PropAt = engine.Some(degrees(values[0]))
		case "swing":
			p.Swing = degrees(values[0])
		case "start":
			p.Law = engine.EaseStart
		case "end":
			p.Law = engine.EaseEnd
		case "both":
			p.Law = engine.EaseBoth
		default:
			panic(fmt.Sprintf("fixture %s: %q means nothing", text, w))
		}
	}
	return p
}

func metres(s string) float64 {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		panic("fixture: " + err.Error())
	}
	return x
}

func degrees(s string) engine.Degrees { return engine.Degrees(metres(s)) }

func fraction(s string) frac.Frac {
	f, err := frac.Parse(s)
	if err != nil {
		panic("fixture " + s + ": " + err.Error())
	}
	return f
}

func judge(l engine.Lane) naming.Whole {
	t := engine.NewTrack(l)
	return naming.Judge(t, seam.Of(t, 60, false))
}

// short names the definitions in a table.
var short = []string{"elementary", "broad", "strict", "C", "S", "diamond"}

// yeses lists the definitions that say yes.
func yeses(defs []words.Definition) string {
	var yes []string
	for i, d := range defs {
		if d.Yes {
			yes = append(yes, short[i])
		}
	}
	return strings.Join(yes, " ")
}
