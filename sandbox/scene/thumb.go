package scene

import (
	"math"
	"strconv"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
)

// Thumb is a head's whole course as an SVG path in the square from −50 to 50,
// y downward.
type Thumb struct {
	Left bool
	Path string
}

// thumbRect is the square of a thumb, and thumbMargin what stays clear in it.
var thumbRect = display.Rect{X: -50, Y: -50, W: 100, H: 100}

const thumbMargin = 3

// thumbRounds bounds how many rounds of a lane that closes late are drawn.
const thumbRounds = 8

// Thumbs returns a small picture of each lane, all to one scale.
func Thumbs(tracks []*engine.Track) []Thumb {
	v := Fit(tracks, thumbRect, thumbMargin, false)
	var out []Thumb
	for _, t := range tracks {
		rounds := float64(thumbRounds)
		if c := t.Closing(); c.Closes() {
			n, _ := c.Rounds.Float64()
			rounds = math.Min(n, thumbRounds)
		}
		var d svgPath
		Trail(t, 0, t.Beats*rounds, func(p engine.Point, _ int, _ float64, broken bool) {
			d.to(v.ToScreen(p.Head), broken)
		})
		out = append(out, Thumb{Left: t.Lane.Side == engine.Left, Path: string(d)})
	}
	return out
}

// svgPath is the d of an SVG path while it is written, to a tenth of its unit.
type svgPath []byte

func (d *svgPath) to(p display.Pt, begins bool) {
	const decimals = 1
	cmd := byte('L')
	if begins {
		cmd = 'M'
	}
	*d = append(*d, cmd)
	*d = strconv.AppendFloat(*d, p.X, 'f', decimals, 64)
	*d = append(*d, ' ')
	*d = strconv.AppendFloat(*d, p.Y, 'f', decimals, 64)
}
