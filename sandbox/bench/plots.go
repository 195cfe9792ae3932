package bench

import (
	"math"
	"strconv"

	"whorlbench/engine"
	"whorlbench/engine/tether"
)

// plotPoints is how finely a small drawing on a sheet is drawn.
const plotPoints = 200

// svgLine is the d of an SVG path while it is written.
type svgLine []byte

func (d *svgLine) to(x, y float64, anew bool) {
	cmd := byte('L')
	if anew {
		cmd = 'M'
	}
	*d = append(*d, cmd)
	*d = strconv.AppendFloat(*d, x, 'f', 1, 64)
	*d = append(*d, ' ')
	*d = strconv.AppendFloat(*d, y, 'f', 1, 64)
}

// pullPlot draws the pull over one round, with the line at which it is nothing
// and the joins.
func (b *Bench) pullPlot(t *engine.Track, r *tether.Result) *Plot {
	const wide, high, margin = 200.0, 80.0, 4.0
	traces := tether.Graph(t, b.Session.Pattern().Tempo, 0, plotPoints)
	low, top := math.Min(r.Least.Value, 0), math.Max(r.Greatest.Value, 1)
	y := func(v float64) float64 { return margin + (high-2*margin)*(top-v)/(top-low) }
	x := func(beat float64) float64 { return wide * beat / t.Beats }
	var pull, zero, joins svgLine
	zero.to(0, y(0), true)
	zero.to(wide, y(0), false)
	for _, tr := range traces {
		for k, v := range tr.Pull {
			pull.to(x(tr.From+(tr.To-tr.From)*float64(k)/float64(len(tr.Pull)-1)), y(v), k == 0)
		}
		if tr.From > 0 {
			joins.to(x(tr.From), 0, true)
			joins.to(x(tr.From), high, false)
		}
	}
	return &Plot{
		Label: b.Words.PullPlot(r), Box: "-4 0 208 80",
		Paths: []PlotPath{{"faint", string(joins)}, {"axis", string(zero)}, {"line", string(pull)}},
	}
}

// aroundPlot draws the left hand about the right one.
func (b *Bench) aroundPlot() *Plot {
	around := b.study.Duet.Around
	if len(around) < 2 {
		return nil
	}
	reach := 1e-9
	for _, z := range around {
		reach = max(reach, math.Abs(real(z)), math.Abs(imag(z)))
	}
	const half = 46.0
	var way, cross svgLine
	for k, z := range around {
		way.to(half*real(z)/reach, -half*imag(z)/reach, k == 0)
	}
	cross.to(-4, 0, true)
	cross.to(4, 0, false)
	cross.to(0, -4, true)
	cross.to(0, 4, false)
	return &Plot{
		Label: b.Words.Told.Around, Box: "-100 -50 200 100",
		Paths: []PlotPath{{"left", string(way)}, {"axis", string(cross)}},
	}
}
